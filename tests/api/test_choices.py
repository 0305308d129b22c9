"""GET /v1/choices: what the workshop offers in public, and nothing besides."""

import re
from typing import TYPE_CHECKING, Any

import pytest

from api.schemas import Schemas
from support.asking import changed, keys

if TYPE_CHECKING:
    from flask.testing import FlaskClient

    from ledgerstone.workshop import Workshop

# Every key that the public may see. A new one is added here by someone who has thought about it.
PUBLIC = {
    "workshop", "name", "town", "country", "email", "telephone", "ring", "currency", "tax",
    "percent",
    "uses", "places", "corners", "thicknesses_mm", "shades", "hex", "by_eye", "cement", "matching",
    "finishes", "surface", "says", "sealers", "edges", "profile", "smallest_mm", "largest_mm",
    "limits", "length_mm", "width_mm", "thinnest_mm", "thickest_mm", "smallest_side_mm",
    "inside_radius_mm", "fitting_gap_mm", "slabs", "quantity", "cutouts", "rests", "points",
    "deliveries", "area", "postcodes", "kinds", "requests", "screens_say", "sample_tile", "price",
    "language", "languages", "templating", "visit", "each", "heated_curing", "warmth_c", "formats",
    "locale", "lengths", "masses", "words", "demonstration", "answering",
    "start", "thickness_mm",
}  # fmt: skip


@pytest.fixture
def choices(client: "FlaskClient") -> dict[str, Any]:
    """What the demonstration workshop offers."""
    answer = client.get("/v1/choices")
    assert answer.status_code == 200
    found: dict[str, Any] = answer.get_json()
    return found


def test_only_public_keys_are_offered(choices: dict[str, Any]) -> None:
    """No key is offered that is not on the list of public ones."""
    assert set(keys(choices)) - PUBLIC == set()


def test_choices_match_their_schema(choices: dict[str, Any], schemas: Schemas) -> None:
    """The choices match the document, and hold no member that it does not know."""
    assert schemas.undocumented("Choices", choices) == []


def test_the_palette_is_the_profiles(choices: dict[str, Any], workshop: "Workshop") -> None:
    """Shades, finishes, sealers and thicknesses are those of the profile, in its order."""
    assert [s["name"] for s in choices["shades"]] == [s.name for s in workshop.palette]
    assert [f["surface"] for f in choices["finishes"]] == [f.surface for f in workshop.finishes]
    assert [s["name"] for s in choices["sealers"]] == [s.name for s in workshop.sealers]
    assert choices["thicknesses_mm"] == list(workshop.shaping.thicknesses_mm)


def test_every_choice_is_understood(client: "FlaskClient", choices: dict[str, Any]) -> None:
    """Each shade, surface, sealer, thickness, use and place on offer is a name that orders take."""
    offered = [
        *(("/slabs/0/shade/name", shade["name"]) for shade in choices["shades"]),
        *(("/slabs/0/finish/surface", finish["surface"]) for finish in choices["finishes"]),
        *(("/slabs/0/finish/sealer", sealer["name"]) for sealer in choices["sealers"]),
        *(("/slabs/0/thickness", mm) for mm in choices["thicknesses_mm"]),
        *(("/slabs/0/use", use) for use in choices["uses"]),
        *(("/slabs/0/place", place) for place in choices["places"]),
    ]
    for pointer, value in offered:
        answer = client.post("/v1/drawings", json=changed((pointer, value)))
        assert answer.status_code == 200, (pointer, value, answer.text[:300])


def test_who_answers_and_by_when_is_the_profiles(choices: dict[str, Any]) -> None:
    """The demonstration's people, within its two working days."""
    assert "Wilf or Ottoline" in choices["answering"]
    assert re.findall(r"\d+", choices["answering"]) == ["2"]
