"""The sheets speak of this order and its slabs, in its language, and fit their paper."""

import re

import pytest
from flask.testing import FlaskClient

from ledgerstone.drawing.lettering import text_width
from ledgerstone.json_types import JSON
from ledgerstone.papers.own_terms import own_terms
from ledgerstone.wording import Message, english, speech_in
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.asking import changed
from support.demonstration import EXAMPLE_ORDER
from support.offered import MAKER, slabs_order
from support.printed import least_points, letters, page_count, page_texts

KINDS = ("approval", "fitting", "care", "carry")


def _sheet(client: FlaskClient, kind: str, form: str, **asked: JSON) -> JSON:
    answer = client.post(f"/v1/sheets/{kind}", json=asked, headers={**MAKER, "Accept": form})
    assert answer.status_code == 200, answer.text
    return answer.get_json() if form == "application/json" else answer.data


def _said(sheet: JSON) -> list[str]:
    """Every text of a sheet."""
    if isinstance(sheet, dict):
        return [text for value in sheet.values() for text in _said(value)]
    if isinstance(sheet, list):
        return [text for value in sheet for text in _said(value)]
    return [sheet]


def test_the_approval_says_the_whole_order(client: FlaskClient) -> None:
    """Look, edges, openings with sizes and places, rests, delivery, and the price with tax."""
    told = _sheet(client, "approval", "application/json", order=EXAMPLE_ORDER)
    facts = {
        fact["what"]: fact["says"] for fact in [*told["facts"], *told["sections"][-1]["facts"]]
    }
    assert facts["Shade and finish"] == "graphite, honed, matt sealer"
    assert facts["Edge a: front"] == "bevel 5 mm"
    assert facts["A basin"].startswith("round, 360 mm across, centre 980 mm from left, 270 mm from")
    assert "35 mm across" in facts["B tap"]
    assert facts["Where it goes"] == "Outdoors, on units 650 mm, 800 mm (sink)."
    assert facts["How it comes"].startswith(english(Message("paper-delivery-way", way="pallet")))
    assert "VAT" in facts["Price"]


@pytest.mark.parametrize("count", [1, 3, 8])
def test_it_is_signed_under_the_last_drawing(client: FlaskClient, count: int) -> None:
    """The signature's page has the last slab's plan, across the page, its figures 2.5 mm high."""
    pdf = _sheet(client, "approval", "application/pdf", order=slabs_order(count))
    last = page_count(pdf) - 1
    assert "FRONT" in page_texts(pdf)[last]
    assert "Signature" in page_texts(pdf)[last]
    plan = [one for one in letters(pdf) if one.page == last and one.points > 12.1]
    assert max(one.left_mm for one in plan) - min(one.left_mm for one in plan) > 150
    assert min(one.tall_mm for one in plan if one.text.isdigit()) >= 2.5


def test_what_is_of_a_hearth_is_stated_of_hearths_alone(client: FlaskClient) -> None:
    """Fire, ash and the installer by a hearth, never silicone; none of it for a plain shelf."""
    asked: tuple[tuple[str, JSON], ...] = (("/slabs/0/use", "hearth"), ("/slabs/0/cutouts", []))
    hearth = changed(*asked, order=slabs_order(1))
    shelf = changed(("/slabs/0/use", "shelf"), ("/slabs/0/cutouts", []), order=slabs_order(1))
    for kind, words in (("fitting", ("registered installer", "Never polythene, silicone")),
                        ("care", ("cold. Ash stays hot", "spark guard"))):  # fmt: skip
        said = " ".join(_said(_sheet(client, kind, "application/json", order=hearth)))
        plain = " ".join(_said(_sheet(client, kind, "application/json", order=shelf)))
        assert [word for word in words if word not in said] == []
        for word in (*words, "Gas", "stove", "Salt and de-icer"):
            assert word not in plain
    assert "Dots of silicone" not in said


def test_pot_label_and_care_sheet_agree(client: FlaskClient) -> None:
    """Mass, water, minutes and days on the pot are those of the care sheet."""
    label = _sheet(client, "carry", "application/json", order=EXAMPLE_ORDER)["sections"][-1]["says"]
    care = _sheet(client, "care", "application/json", order=EXAMPLE_ORDER)["sections"][-1]["says"]
    figures = [set(re.findall(r"\d+(?:\.\d+)? (?:kg|g|minutes|days|months)", " ".join(said)))
               for said in (label, care)]  # fmt: skip
    assert figures[0] == figures[1]
    assert {"0.25 kg", "30 minutes", "2 days"} <= figures[0]


@pytest.mark.parametrize("count", [1, 4, 8])
def test_carry_cards_are_quarters_of_a_page(client: FlaskClient, count: int) -> None:
    """Four to a sheet, at 9 points or more, each with its slab's own mass."""
    quote = client.post("/v1/quotes", json=slabs_order(count), headers=MAKER).get_json()
    pdf = _sheet(client, "carry", "application/pdf", order=slabs_order(count))
    texts = page_texts(pdf)
    assert least_points(pdf) >= 9 - 0.01
    for i, slab in enumerate(quote["weight"]["slabs"]):
        assert f"{slab['slab_kg']:g} kg" in texts[i // 4]
        assert slab["label"] in texts[i // 4]
    assert len(texts) <= -(-count // 4) + 1


@pytest.mark.parametrize("kind", KINDS)
def test_a_sheet_speaks_the_orders_language(client: FlaskClient, kind: str) -> None:
    """In German nothing is left in English but what the workshop's own file says."""
    order = {**EXAMPLE_ORDER, "language": "de"}
    told = _sheet(client, kind, "application/json", order=order)
    own = load_profile(DEMONSTRATION)
    ours = {*own_terms(own), *(sealer.says for sealer in own.sealers)}
    english = re.compile(r"\b(the|and|of|is|with|each|from|it)\b", re.IGNORECASE)
    said = [text for text in _said(told) if text not in ours]
    assert [text for text in said if english.search(text)] == []
    page = _sheet(client, kind, "text/html", order=order).decode()
    assert '<html lang="de"' in page


@pytest.mark.parametrize("across", range(300, 1201, 150))
@pytest.mark.parametrize("language", ["en", "de"])
def test_where_to_hold_it_is_written_once_or_twice_and_never_over_itself(
    client: FlaskClient, across: int, language: str
) -> None:
    """Beside each pair of arrows; on a small round, whose pairs are near, between the two."""
    slab = {"outline": {"kind": "round", "diameter": f"{across} mm"}, "rests": {"kind": "full"}}
    order = {"slabs": [slab], "delivery": {"kind": "collect"}, "language": language}
    sheet = _sheet(client, "fitting", "text/html", order=order).decode()
    hold = speech_in(language).say(Message("paper-grip-here"))
    places = [float(x) for x in re.findall(rf'<text[^>]* x="([\d.]+)"[^>]*>{hold}</text>', sheet)]
    assert len(places) in (1, 2)
    assert max(places) == min(places) or max(places) - min(places) > text_width(hold, 15, bold=True)
