"""What differs between two orders, in words; and the letters of revisions."""

import copy
from typing import Any

import pytest

from conftest import EXAMPLE_ORDER
from ledgerstone.codec.changes import say_differences
from ledgerstone.codec.links import next_letter
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.order_out import write_order
from ledgerstone.workshop import Workshop
from support.asking import changed, without

NAME = "“Seed-tray bench”"
L_SHAPE = {"kind": "l-shape", "length": "1450 mm", "width": "560 mm",
           "notch": {"corner": "back-left", "length": "200 mm", "width": "100 mm"}}  # fmt: skip
ROUND = {"outline": {"kind": "round", "diameter": "90 cm"}, "thickness": "40 mm", "label": "Table"}

CASES: dict[str, tuple[tuple[tuple[str, Any], ...], list[str]]] = {
    "nothing": ((), []),
    "another writing of the same": ((("/slabs/0/quantity", 1),), []),
    "thickness": (
        (("/slabs/0/thickness", "50 mm"),),
        [f"{NAME} is 50 mm thick; it was 40 mm."],
    ),
    "size": (
        (("/slabs/0/outline/length", "60 in"),),
        [f"{NAME} is 60 in by 560 mm; it was 1450 mm by 560 mm."],
    ),
    "shape": (
        (("/slabs/0/outline", L_SHAPE),),
        [(f"{NAME} is an L of 1450 mm by 560 mm less 200 mm by 100 mm at its back left;"
         " it was 1450 mm by 560 mm.")],
    ),
    "corners": (
        (("/slabs/0/outline/corner_radius", "12 mm"),),
        [f"{NAME} is 1450 mm by 560 mm with corners of 12 mm; it was 1450 mm by 560 mm."],
    ),
    "shade": (
        (("/slabs/0/shade/name", "chalk"),),
        [f"{NAME} is in chalk; it was in graphite."],
    ),
    "finish": (
        (("/slabs/0/finish/surface", "polished"),),
        [f"{NAME} is polished with the matt sealer; it was honed with the matt sealer."],
    ),
    "place": ((("/slabs/0/place", "indoors"),), [f"{NAME} goes indoors; it was outdoors."]),
    "quantity": (
        (("/slabs/0/quantity", 3),),
        [f"There are 3 of {NAME}; there were 1."],
    ),
    "edges": ((("/slabs/0/edges/front/size", "8 mm"),), [f"The edges of {NAME} are changed."]),
    "an opening's size": (
        (("/slabs/0/cutouts/0/diameter", "300 mm"),),
        ["The basin is 300 mm across; it was 360 mm across."],
    ),
    "an opening's place": (
        (("/slabs/0/cutouts/0/centre/x", "600 mm"),),
        ["The basin is centred 600 mm from the left and 270 mm from the front."],
    ),
    "an opening's rim": (
        (("/slabs/0/cutouts/0/rim", "covered"),),
        ["The basin is made in another way."],
    ),
    "an opening more": (
        (("/slabs/0/cutouts/-", {"label": "soap", "kind": "circle", "diameter": "25 mm",
                                 "centre": {"x": "1300 mm", "y": "500 mm"}}),),
        [f"The soap is added to {NAME}."],
    ),
    "a slab more": ((("/slabs/-", ROUND),), ["“Table” is added."]),
    "delivery": (
        (("/delivery", {"kind": "collect"}),),
        ["It is collected from the workshop; it was to be delivered on a pallet."],
    ),
    "the way in": ((("/delivery/steps", 4),), ["What we know of the way in is changed."]),
    "the day": ((("/needed_by", "2027-04-01"),), ["It is needed by 1 April 2027."]),
    "a label": (
        (("/slabs/0/label", "Potting bench"),),
        ["“Potting bench” was called “Seed-tray bench”."],
    ),
}  # fmt: skip


def _compact(document: dict[str, Any], workshop: Workshop) -> dict[str, Any]:
    return write_order(read_order(document, workshop), compact=True)


@pytest.mark.parametrize(("changes", "says"), CASES.values(), ids=CASES.keys())
def test_a_change_is_said(
    workshop: Workshop, changes: tuple[tuple[str, Any], ...], says: list[str]
) -> None:
    """Each change has one sentence, in the customer's own units; what is the same has none."""
    before = _compact(copy.deepcopy(EXAMPLE_ORDER), workshop)
    now = _compact(changed(*changes), workshop)
    assert list(say_differences(before, now)) == says


def test_what_is_taken_away_is_said(workshop: Workshop) -> None:
    """A slab, an opening or a day that is gone is said to be."""
    before = _compact(changed(("/slabs/-", ROUND)), workshop)
    now = _compact(without("/needed_by", without("/slabs/0/cutouts/1")), workshop)
    assert list(say_differences(before, now)) == [
        f"The tap in {NAME} is left out.",
        "“Table” is left out.",
        "It is no longer needed by a certain day.",
    ]


def test_another_area_is_said(workshop: Workshop) -> None:
    """A postcode in another delivery area is told by the area, never by the postcode."""
    order = _compact(copy.deepcopy(EXAMPLE_ORDER), workshop)
    assert list(say_differences(order, order, "Near", "Far")) == ["The delivery is to: Far."]
    assert list(say_differences(order, order, "Near", "Near")) == []


@pytest.mark.parametrize(
    ("letter", "following"),
    [("", "A"), ("A", "B"), ("Y", "Z"), ("Z", "AA"), ("AA", "AB"), ("AZ", "BA"), ("ZZ", "AAA")],
)
def test_letters_follow_one_another(letter: str, following: str) -> None:
    """Revisions run from A to Z, then AA, as columns of a sheet do."""
    assert next_letter(letter) == following
