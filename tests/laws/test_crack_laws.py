"""Laws of the bars that carry a slab once it has cracked."""

from __future__ import annotations

import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.outline import XY
from ledgerstone.reinforcement import CrackCheck, after_a_crack
from ledgerstone.shape import shape_of
from ledgerstone.strength.cracking import Cracking, Demand
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.mirrored import mirrored
from support.slabs import box, cut, slab_json

DEMAND_MPA, PLAIN_MPA, CRACKS_AT_MPA = 6.0, 1.9, 5.4  # bars one way, plain concrete the other
AN_L = {
    "kind": "l-shape",
    "length": 1500,
    "width": 1100,
    "notch": {"corner": "front-right", "length": 900, "width": 600},
}


def lengthwise(document: Json, at: XY, workshop: Workshop) -> CrackCheck:
    """What carries lengthwise where the largest demand is at a place."""
    slab = read_order({"slabs": [document]}, workshop).slabs[0]
    most, little = Demand(DEMAND_MPA, at), Demand(1.0, at)
    cracking = Cracking(most, little, PLAIN_MPA, CRACKS_AT_MPA)
    return after_a_crack(slab, shape_of(slab, workshop), cracking, workshop).along


@pytest.mark.parametrize("off", [-60.0, -20.0, -2.0, 2.0, 20.0, 60.0])
def test_bars_across_an_inward_corner_are_the_same_on_both_sides_of_it(
    off: float, workshop: Workshop
) -> None:
    """An L's arm is reinforced alike whether its demand is just before its notch or just past.

    Before the notch the slab is as wide as its leg, but what lies before the notch's face carries
    nothing along the bars: no moment acts across a free edge.
    """
    slab = slab_json(AN_L, thickness=50)
    found = lengthwise(slab, (600.0 + off, 605.0), workshop)
    beyond = lengthwise(slab, (700.0, 605.0), workshop)
    assert (found.by, found.spacing_mm) == ("bars", beyond.spacing_mm)
    assert found.limit_mpa == pytest.approx(beyond.limit_mpa, rel=0.04)


def test_an_l_and_its_mirror_image_have_the_same_bars(workshop: Workshop) -> None:
    """A demand 20 mm to one side of the notch needs what one 20 mm to the other side does."""
    slab = slab_json(AN_L, thickness=50)
    for off in (-20.0, 20.0):
        found = lengthwise(slab, (600.0 + off, 605.0), workshop)
        other = lengthwise(mirrored(slab, "x"), (900.0 - off, 605.0), workshop)
        assert found.spacing_mm == other.spacing_mm
        assert found.limit_mpa == pytest.approx(other.limit_mpa, rel=1e-3)


def test_a_demand_deep_behind_the_notch_is_met_by_the_bars_that_are_there(
    workshop: Workshop,
) -> None:
    """Where it is not beside the inward corner, bars that end at the notch count as anchored."""
    slab = slab_json(AN_L, thickness=50)
    behind, beside = (lengthwise(slab, (580.0, y), workshop) for y in (250.0, 600.0))
    assert behind.spacing_mm is not None
    assert beside.spacing_mm is not None
    assert behind.spacing_mm < 0.7 * beside.spacing_mm


def test_bars_before_an_opening_are_those_beside_it(workshop: Workshop) -> None:
    """A demand at a hob's corner needs what one just beside the hob does."""
    hob = cut("rectangle", (560, 380), (900, 310))
    slab = slab_json(box(1800, 620), hob, thickness=50)
    before, beside = (lengthwise(slab, (620.0 + off, 115.0), workshop) for off in (-10.0, 10.0))
    assert (before.by, beside.by) == ("bars", "bars")
    assert before.spacing_mm == pytest.approx(beside.spacing_mm, rel=0.3)


@pytest.mark.parametrize("way", ["x", "y"])
def test_a_round_top_has_no_such_face(way: str, workshop: Workshop) -> None:
    """Its edge turns outward all round: near its rim bars count as far as they are anchored."""
    round_top = slab_json({"kind": "round", "diameter": 900}, thickness=50)
    at = (800.0, 450.0) if way == "x" else (450.0, 800.0)
    found = lengthwise(round_top, at, workshop)
    middle = lengthwise(round_top, (450.0, 450.0), workshop)
    assert middle.spacing_mm is not None
    if way == "x":
        assert found.spacing_mm is None or found.spacing_mm < middle.spacing_mm
    else:
        assert found.spacing_mm == middle.spacing_mm
