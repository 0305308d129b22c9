"""Ordinary tops round a hob, moved on edge and laid on units: none is refused for its pallet."""

from typing import Final

import pytest

from ledgerstone.quote import Quote
from ledgerstone.workshop import Workshop
from support.calibration import on_units
from support.slabs import box, cut, slab_json
from support.whole_orders import COLLECT, answered, stops


@pytest.mark.parametrize("delivery", ["collect", "pallet"])
@pytest.mark.parametrize("x", range(500, 901, 100))
def test_a_hob_top_of_2400_is_not_refused_for_its_pallet(
    x: int, delivery: str, workshop: Workshop
) -> None:
    """It is turned, carried and packed on edge; it quotes, with the rails that it needs."""
    hob = cut("rectangle", (560, 490), (x, 310), label="hob", rim="covered", heat=True)
    left = x - 300
    right = 2400 - left - 600
    rests = on_units(left, (600, "hob"), *_units_of(right), front=20)
    where = COLLECT if delivery == "collect" else {"kind": "pallet", "postcode": "HR9 7XX"}
    answer = answered(workshop, slab_json(box(2400, 620), hob, rests=rests), delivery=where)
    assert isinstance(answer, Quote), stops(answer)


def _hob_top(length: int, width: int, left: int, workshop: Workshop) -> set[str]:
    """What stops a hob over its unit, so far from the left end, collected."""
    hob = cut("rectangle", (560, 490), (left + 300, width / 2), label="hob", rim="covered")
    right = _units_of(length - left - 600)
    rests = on_units(*_units_of(left), (600, "hob"), *right, front=width - 600)
    return stops(answered(workshop, slab_json(box(length, width), hob, rests=rests)))


HOB_TOPS: Final = [
    (length, width, left)
    for length in (2100, 2400, 2700)
    for width in (600, 620, 650)
    for left in (300, 600, 900, 1200)
]


@pytest.mark.parametrize(("length", "width", "left"), HOB_TOPS[3::13])
def test_an_ordinary_hob_top_quotes(length: int, width: int, left: int, workshop: Workshop) -> None:
    """2100 mm and longer, 40 mm thick: it lies on no pallet, and none is refused."""
    assert _hob_top(length, width, left, workshop) == set()


@pytest.mark.long
def test_none_of_36_ordinary_hob_tops_is_refused(workshop: Workshop) -> None:
    """Three lengths, three widths, four places of the hob."""
    refused = {top: found for top in HOB_TOPS if (found := _hob_top(*top, workshop))}
    assert refused == {}


def _units_of(width: int) -> list[int]:
    """Units of 600 mm, and one of what is left."""
    whole, rest = divmod(width, 600)
    return [600] * whole + ([rest] if rest else [])
