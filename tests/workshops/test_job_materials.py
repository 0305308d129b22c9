"""What a job is made of, on its sheet and on the desk, in each country's words and units."""

import re
from collections.abc import Iterator
from typing import Any, Final

import pytest

from workshops.conftest import WorkshopCase, workshop_case

# What another country's workshop would write, in any case: a list of names is no sentence.
STRANGE: Final = {
    "germany": r"(?i)\b(?:white|grey|cement|mou?ld board|foam|screws?|tubes?|sealant|release"
    r"|sheets?|bars?|mesh|litres?|sealer)\b",
    "united_states": r"(?i)\b(?:grey|mould\w*|litres?|kg|mm)\b|m²|\bl\b",
}


def texts(document: Any) -> Iterator[str]:  # noqa: ANN401  a part of an answer
    """Every text of an answer."""
    if isinstance(document, str):
        yield document
    elif isinstance(document, dict | list):
        for part in document.values() if isinstance(document, dict) else document:
            yield from texts(part)


@pytest.mark.parametrize("country", sorted(STRANGE))
def test_what_a_job_is_made_of_is_in_the_country_s_words(country: str) -> None:
    """In each cement: what is weighed, bought, charged and printed."""
    shop: WorkshopCase = workshop_case(country)
    cements = {shade.cement: shade.name for shade in shop.workshop.palette}
    assert set(cements) == {"grey", "white"}
    for name in cements.values():
        order = shop.order(shade={"name": name})
        sheet = shop.asked_by_the_maker("/v1/job-sheets", {"order": order})
        told = [sheet["materials"], sheet["costs"], sheet["pages"]]
        assert [text for text in texts(told) if re.search(STRANGE[country], text)] == []


@pytest.mark.parametrize(("country", "word"), [("germany", "weiß"), ("united_states", "white")])
def test_white_cement_is_named_where_it_is_weighed(country: str, word: str) -> None:
    """Beside the recipe's own cement, whose name does not tell its colour."""
    shop: WorkshopCase = workshop_case(country)
    own = next(part.name for part in shop.workshop.recipe.parts if part.role == "cement")
    shade = next(shade.name for shade in shop.workshop.palette if shade.cement == "white")
    order = shop.order(shade={"name": shade})
    sheet = shop.asked_by_the_maker("/v1/job-sheets", {"order": order})
    named = [text for text in texts(sheet["pages"]) if own in text]
    assert named
    assert all(word in text for text in named)
