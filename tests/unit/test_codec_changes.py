"""What differs between two orders, in words; and the letters of revisions."""

import copy
from datetime import date
from typing import Any

import pytest

from ledgerstone.codec.changes import say_differences
from ledgerstone.codec.links import next_letter
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.order_out import write_order
from ledgerstone.quantities import Length
from ledgerstone.wording import Listed, Message
from ledgerstone.workshop import Workshop
from support.asking import changed, without
from support.demonstration import EXAMPLE_ORDER


def mm(length: float) -> Length:
    """Write a length in millimetres."""
    return Length.parse(f"{length} mm")


NAME = Message("slab-labelled", label="Seed-tray bench")
BASIN = Message("cutout-labelled", label="basin")


def _listed(*things: Message) -> Listed:
    return Listed(things, joined="comma")


WAS = Listed((Message("size-both", length=mm(1450), width=mm(560)),), joined="comma")
L_SHAPE = {"kind": "l-shape", "length": "1450 mm", "width": "560 mm",
           "notch": {"corner": "back-left", "length": "200 mm", "width": "100 mm"}}  # fmt: skip
ROUND = {"outline": {"kind": "round", "diameter": "90 cm"}, "thickness": "40 mm", "label": "Table"}

CASES: dict[str, tuple[tuple[tuple[str, Any], ...], list[Message]]] = {
    "nothing": ((), []),
    "another writing of the same": ((("/slabs/0/quantity", 1),), []),
    "thickness": (
        (("/slabs/0/thickness", "50 mm"),),
        [Message("change-thickness", slab=NAME, now=mm(50), was=mm(40))],
    ),
    "size": (
        (("/slabs/0/outline/length", "60 in"),),
        [Message("change-outline", slab=NAME, was=WAS, now=Listed(
            (Message("size-both", length=Length.parse("60 in"), width=mm(560)),), joined="comma"))],
    ),
    "shape": (
        (("/slabs/0/outline", L_SHAPE),),
        [Message("change-outline", slab=NAME, was=WAS, now=Listed((Message(
            "change-l", length=mm(1450), width=mm(560), notch_length=mm(200), notch_width=mm(100),
            corner="back-left"),), joined="comma"))],
    ),
    "corners": (
        (("/slabs/0/outline/corner_radius", "12 mm"),),
        [Message("change-outline", slab=NAME, was=WAS, now=Listed(
            (*WAS.things, Message("change-corners", radius=mm(12))), joined="comma"))],
    ),
    "shade": (
        (("/slabs/0/shade/name", "chalk"),),
        [Message("change-shade", slab=NAME, now="chalk", was="graphite")],
    ),
    "finish": (
        (("/slabs/0/finish/surface", "polished"),),
        [Message("change-finish", slab=NAME,
                 now=Message("change-finish-name", surface="polished", sealer="matt"),
                 was=Message("change-finish-name", surface="honed", sealer="matt"))],
    ),
    "place": (
        (("/slabs/0/place", "indoors"),),
        [Message("change-place", slab=NAME, now=Message("change-place-name", place="indoors"),
                 was=Message("change-place-name", place="outdoors"))],
    ),
    "quantity": (
        (("/slabs/0/quantity", 3),),
        [Message("change-quantity", slab=NAME, now=3, was=1)],
    ),
    "an edge": (
        (("/slabs/0/edges/front/size", "8 mm"),),
        [Message("change-edge", slab=NAME, sides=_listed(Message("plan-side-word", side="front")),
                 now=_listed(Message("plan-edge-bevel", size=mm(8))),
                 was=_listed(Message("plan-edge-bevel", size=mm(5))))],
    ),
    "rails": (
        (("/slabs/0/rests/rails", "steel"),),
        [Message("change-rails", slab=NAME, rails="steel")],
    ),
    "an overhang": (
        (("/slabs/0/rests/overhang/front", "50 mm"),),
        [Message("change-overhang", slab=NAME, side=Message("side", side="front"), now=mm(50),
                 was=mm(20))],
    ),
    "other rests": (
        (("/slabs/0/rests", {"kind": "full"}),),
        [Message("change-rests", slab=NAME,
                 now=_listed(Message("plan-rest-kind", kind="full", count=0)),
                 was=_listed(Message("rest-units", count=2, units=_listed(
                     Message("rest-unit", use="base", width=mm(650)),
                     Message("rest-unit", use="basin", width=mm(800))))))],
    ),
    "a relief more": (
        (("/slabs/0/reliefs", [{"kind": "recess", "outline": {"kind": "round", "diameter": "90 mm"},
                                "at": {"x": "100 mm", "y": "100 mm"}, "depth": "6 mm"}]),),
        [Message("change-cutout-added", cutout=Message("relief", kind="recess", nth=0),
                 slab=NAME)],
    ),
    "a join": (
        (("/slabs/-", ROUND), ("/joins", [{"one": {"slab": 0, "side": "right"}, "gap": "3 mm",
                                           "other": {"slab": 1, "side": "rim"}}])),
        [Message("change-slab-added", slab=Message("slab-labelled", label="Table")),
         Message("change-joined", one=NAME, other=Message("slab-labelled", label="Table"))],
    ),
    "an opening's size": (
        (("/slabs/0/cutouts/0/diameter", "300 mm"),),
        [Message("change-cutout-size", cutout=BASIN, now=Message("change-across", across=mm(300)),
                 was=Message("change-across", across=mm(360)))],
    ),
    "an opening's place": (
        (("/slabs/0/cutouts/0/centre/x", "600 mm"),),
        [Message("change-cutout-place", cutout=BASIN, x=mm(600), y=mm(270), steps=Listed(
            (Message("move-step", by=mm(380), way="left"),)))],
    ),
    "an opening's rim": (
        (("/slabs/0/cutouts/0/rim", "covered"),),
        [Message("change-cutout-rim", cutout=BASIN, rim="covered")],
    ),
    "an opening's heat": (
        (("/slabs/0/cutouts/0/heat", True),),
        [Message("change-cutout-else", cutout=BASIN)],
    ),
    "an opening that runs out": (
        (("/slabs/0/cutouts/0/open_to", "front"),),
        [Message("change-cutout-open", cutout=BASIN, side=Message("side", side="front"))],
    ),
    "an opening turned": (
        (("/slabs/0/cutouts/0/turn_degrees", 90),),
        [Message("change-cutout-turned", cutout=BASIN, degrees=90.0)],
    ),
    "an opening more": (
        (("/slabs/0/cutouts/-", {"label": "soap", "kind": "circle", "diameter": "25 mm",
                                 "centre": {"x": "1300 mm", "y": "500 mm"}}),),
        [Message("change-cutout-added", cutout=Message("cutout-labelled", label="soap"),
                 slab=NAME)],
    ),
    "a slab more": (
        (("/slabs/-", ROUND),),
        [Message("change-slab-added", slab=Message("slab-labelled", label="Table"))],
    ),
    "delivery": (
        (("/delivery", {"kind": "collect"}),),
        [Message("change-delivery", now=Message("change-way-name", way="collect"),
                 was=Message("change-way-name", way="pallet"))],
    ),
    "the way in": ((("/delivery/steps", 4),), [Message("change-way-in")]),
    "the day": (
        (("/needed_by", "2027-04-01"),),
        [Message("change-needed-by", day=date(2027, 4, 1))],
    ),
    "a label": (
        (("/slabs/0/label", "Potting bench"),),
        [Message("change-label", slab=Message("slab-labelled", label="Potting bench"),
                 old="Seed-tray bench")],
    ),
}  # fmt: skip


def _compact(document: dict[str, Any], workshop: Workshop) -> dict[str, Any]:
    return write_order(read_order(document, workshop), compact=True)


@pytest.mark.parametrize(("changes", "says"), CASES.values(), ids=CASES.keys())
def test_a_change_is_stated(
    workshop: Workshop, changes: tuple[tuple[str, Any], ...], says: list[Message]
) -> None:
    """Each change has one sentence, in the customer's own units; what is the same has none."""
    before = _compact(copy.deepcopy(EXAMPLE_ORDER), workshop)
    now = _compact(changed(*changes), workshop)
    assert list(say_differences(before, now)) == says


def test_what_is_taken_away_is_stated(workshop: Workshop) -> None:
    """A slab, an opening or a day that is gone is said to be."""
    before = _compact(changed(("/slabs/-", ROUND)), workshop)
    now = _compact(without("/needed_by", without("/slabs/0/cutouts/1")), workshop)
    assert list(say_differences(before, now)) == [
        Message(
            "change-cutout-left-out", cutout=Message("cutout-labelled", label="tap"), slab=NAME
        ),
        Message("change-left-out", thing=Message("slab-labelled", label="Table")),
        Message("change-not-needed-by"),
    ]


def test_what_changes_about_a_relief_is_stated(workshop: Workshop) -> None:
    """Its place by how far and which way, its depth and its size by what they were."""
    box = {"kind": "rectangle", "length": "90 mm", "width": "60 mm"}
    place = {"x": "100 mm", "y": "100 mm"}
    recess = {"kind": "recess", "outline": box, "at": place, "depth": "6 mm"}
    before = changed(("/slabs/0/reliefs", [recess]))
    now = changed(
        ("/slabs/0/reliefs", [recess]),
        ("/slabs/0/reliefs/0/at/y", "80 mm"),
        ("/slabs/0/reliefs/0/depth", "4 mm"),
        ("/slabs/0/reliefs/0/outline/width", "50 mm"),
    )
    name = Message("relief", kind="recess", nth=0)
    both = [Message("size-both", length=mm(90), width=mm(width)) for width in (50, 60)]
    assert list(say_differences(_compact(before, workshop), _compact(now, workshop))) == [
        Message(
            "change-relief-place",
            relief=name,
            steps=Listed((Message("move-step", by=mm(20), way="front"),)),
        ),
        Message("change-relief-depth", relief=name, now=mm(4), was=mm(6)),
        Message("change-relief-size", relief=name, now=both[0], was=both[1]),
    ]


def test_another_area_is_stated(workshop: Workshop) -> None:
    """A postcode in another delivery area is reported by the area, never by the postcode."""
    order = _compact(copy.deepcopy(EXAMPLE_ORDER), workshop)
    assert list(say_differences(order, order, "Near", "Far")) == [
        Message("change-area", area="Far")
    ]
    assert list(say_differences(order, order, "Near", "Near")) == []


@pytest.mark.parametrize(
    ("letter", "following"),
    [("", "A"), ("A", "B"), ("Y", "Z"), ("Z", "AA"), ("AA", "AB"), ("AZ", "BA"), ("ZZ", "AAA")],
)
def test_letters_follow_one_another(letter: str, following: str) -> None:
    """Revisions run from A to Z, then AA, as columns of a sheet do."""
    assert next_letter(letter) == following
