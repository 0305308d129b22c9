"""An enquiry in the United States: what is read, taken and asked is in its own words and units."""

import re
from dataclasses import replace
from datetime import date
from functools import cache
from itertools import product
from typing import Any, Final

import pytest

from ledgerstone.application.enquiries import read_message
from ledgerstone.transport import area_for, prices_of
from ledgerstone.workshop import Workshop, load_profile
from support.mails import mailed
from workshops.conftest import FILES
from workshops.strange_words import STRANGE

TODAY: Final = date(2026, 11, 29)
SIZES: Final = (
    '6 ft x 25 1/2"',
    '98 1/2" x 25" x 2"',
    "72 inches long, 2 ft deep and 1 1/2 in thick",
)
OPENINGS: Final = ("hob", "cooktop", "sink", "basin", "tap", "faucet", "bin chute", "soap pump")
PIECES: Final = ("worktop", "countertop", "backsplash", "splashback", "upstand", "hearth")
ORDERS: Final = tuple(product(PIECES, OPENINGS, SIZES))


@cache
def united_states() -> Workshop:
    """The example in the state of Washington."""
    return load_profile(FILES["united_states"])


def read(text: str) -> dict[str, Any]:
    """What is read of a customer's message."""
    return read_message(mailed(text).as_bytes(), united_states(), TODAY)


def told(answer: dict[str, Any]) -> list[str]:
    """Every sentence, and the name of every opening."""
    entries = [*answer["assumed"], *answer["doubtful"], *answer["missing"]]
    said = [entry[key] for entry in entries for key in ("says", "asks") if key in entry]
    slabs = (answer["proposal"] or {"slabs": []})["slabs"]
    return said + [hole["label"] for slab in slabs for hole in slab.get("cutouts", ())]


@pytest.mark.parametrize("piece", PIECES)
def test_an_enquiry_is_answered_in_the_country_s_words_and_units(piece: str) -> None:
    """Whatever word a customer has for it, ours are cooktop, faucet and backsplash, in inches."""
    strange = [
        (opening, sizes, said)
        for _, opening, sizes in (one for one in ORDERS if one[0] == piece)
        for said in told(read(f"Hi, I need a {piece}, {sizes}, with a {opening}. Sam Fields"))
        if re.search(STRANGE["united_states"], said)
    ]
    assert strange == []


@pytest.mark.parametrize("sizes", ["2000 mm x 25 in", "78 x 25 in"])
def test_what_is_taken_beside_mixed_units_is_in_inches(sizes: str) -> None:
    """A thickness that nobody said is in inches, not 31.75 mm."""
    answer = read(f"Please price a backsplash, {sizes}, in charcoal. Sam Fields")
    taken = {one["at"]: one["value"] for one in answer["assumed"]}
    assert taken["/slabs/0/thickness"] == "1 1/2 in"


@pytest.mark.parametrize(
    ("said", "day"),
    [
        ("We need it by 3/5/2027.", "2027-03-05"),
        ("Needed by 2/20.", "2027-02-20"),
        ("Needed by 2/20/27", "2027-02-20"),
        ("Can you do it before 4/3?", "2027-04-03"),
        ("Needed by 25/12/2027.", "2027-12-25"),
    ],
)
def test_the_month_comes_first(said: str, day: str) -> None:
    """A day in figures is read as it is written there, and is no size."""
    answer = read(f"Please price a countertop, 72 in x 25 in x 1 1/2 in. {said}\nSam Fields")
    assert answer["order"]["needed_by"] == day
    assert [one for one in answer["doubtful"] if one["at"] == "/needed_by"] == []
    outline = answer["order"]["slabs"][0]["outline"]
    assert (outline["length"], outline["width"]) == ("72 in", "25 in")


def test_a_fraction_after_by_is_a_size() -> None:
    """A height by a thickness in inches is no day."""
    answer = read('Please price a backsplash, 72" by 4" by 3/4", charcoal. Sam Fields')
    assert "needed_by" not in answer["order"]


def test_a_way_of_delivery_is_taken_that_the_workshop_has() -> None:
    """Where no pallet has a price, our own van does."""
    there = united_states()
    areas = tuple(replace(area, pallet=None) for area in there.areas)
    text = "Please price a countertop, 72 in x 25 in x 1 1/2 in, delivered to 98801. Sam"
    mail = mailed(text).as_bytes()
    for workshop, way in ((there, "pallet"), (replace(there, areas=areas), "own-van")):
        proposal = read_message(mail, workshop, TODAY)["proposal"]
        area = area_for("98801", workshop)
        assert proposal["delivery"]["kind"] == way
        assert area is not None
        assert prices_of(area)[way] is not None


def test_a_pasted_sender_s_line_gives_the_name_alone() -> None:
    """Whoever is greeted is greeted without an address."""
    text = "From: Sam Fields <sam@fields.example>\nI need a countertop, 72 in x 25 in."
    answer = read_message(text, united_states(), TODAY)
    assert answer["customer"]["name"] == "Sam Fields"


def test_cabinets_that_are_said_are_taken_and_told_in_the_country_s_words() -> None:
    """Cabinets of no width are as sold in inches, called so, and their widths are asked."""
    text = "I need a countertop, 72 x 25 1/2 in, 1 1/2 in thick, with a 30 x 16 sink cut-out.\n"
    answer = read_message(f"{text}It sits on base cabinets. Sam", united_states(), TODAY)
    rests = answer["proposal"]["slabs"][0]["rests"]
    assert [unit["width"] for unit in rests["units"]] == ["18 in", "36 in", "18 in"]
    words = told(answer)
    assert len([said for said in words if "cabinet" in said]) == 2
    assert [said for said in words if re.search(r"\bunits?\b", said)] == []
