"""Laws of a millimetre more: it changes little, and flips no verdict that is clear."""

from __future__ import annotations

import copy
from collections.abc import Iterator

import pytest

from ledgerstone.workshop import Workshop
from support.calibration import on_units
from support.documents import Json
from support.slabs import box, cut, slab_json
from support.strategies.shaped_slabs import l_slab
from support.used import in_place_used, on_known_rails, used

EVERYDAY, LONG = 3, 200
NEAR_THE_LIMIT = (0.97, 1.03)


def _a_millimetre_more(slab: Json) -> Iterator[Json]:
    for side in ("length", "width"):
        more = copy.deepcopy(slab)
        more["outline"][side] += 1
        yield more
    for k, opening in enumerate(slab["cutouts"]):
        more = copy.deepcopy(slab)
        side = "diameter" if opening["kind"] == "circle" else "length"
        more["cutouts"][k][side] += 1
        yield more

    rests = slab["rests"]
    for end in ("right", "front"):
        if rests.get("overhang", {}).get(end):
            more = copy.deepcopy(slab)
            more["outline"]["length" if end == "right" else "width"] += 1
            more["rests"]["overhang"][end] += 1
            yield more
    for axis in ("x", "y"):
        if "at" in rests:
            more = copy.deepcopy(slab)
            for leg in more["rests"]["at"]:
                leg[axis] += 1
            yield more


def _keeps_its_verdict(seeds: range, workshop: Workshop) -> None:
    low, high = NEAR_THE_LIMIT
    flipped = {}
    for seed in seeds:
        slab = on_known_rails(seed)
        as_is = used(slab, workshop)
        if low <= as_is <= high:
            continue
        for k, more in enumerate(_a_millimetre_more(slab)):
            other = used(more, workshop)
            if (as_is > 1.0) != (other > 1.0):
                flipped[seed, k] = (as_is, other)
    assert flipped == {}


def test_a_millimetre_more_never_flips_a_verdict_away_from_the_limit(workshop: Workshop) -> None:
    """Length, width or an opening 1 mm larger: no flip where utilisation is not 0.97 to 1.03."""
    _keeps_its_verdict(range(EVERYDAY), workshop)


def _table(out: int, aside: int, thickness: int) -> Json:
    """A table on four legs of 60 mm, whose top hangs over so far at its ends and its sides."""
    length, width = 440 + 2 * out, 650 + 2 * aside
    xs, ys = (out + 30, length - out - 30), (aside + 30, width - aside - 30)
    legs = [{"x": x, "y": y} for x in xs for y in ys]
    rests = {"kind": "legs", "pad": 60, "at": legs, "fixed": True}
    return slab_json(box(length, width), thickness=thickness, rests=rests)


@pytest.mark.parametrize("aside", [49, 50, 75, 99])
def test_a_corner_ceases_bit_by_bit_to_be_leant_on_as_it_hangs_over_both_ways(
    aside: int, workshop: Workshop
) -> None:
    """With 50 mm to the side its corners are leant on, with 100 mm sat and stood on."""
    less, more = (in_place_used(_table(250, by, 34), workshop) for by in (aside, aside + 1))
    assert 1.0 / 1.03 < more / less < 1.03


@pytest.mark.parametrize("out", [308, 310, 318, 340, 367])
def test_it_does_so_as_it_hangs_out_farther(out: int, workshop: Workshop) -> None:
    """Past 300 mm from the rests' faces; and at 309 mm the parts of two corners meet between."""
    less, more = (in_place_used(_table(by, 30, 40), workshop) for by in (out, out + 1))
    assert 1.0 / 1.03 < more / less < 1.03


@pytest.mark.parametrize("strip", [69.8, 75.0, 85.0, 92.3])
def test_a_strip_ceases_bit_by_bit_to_be_leant_on_as_it_gets_wider(
    strip: float, workshop: Workshop
) -> None:
    """Before a hob: 70 mm are leant on, 92.5 mm stood on, what is between by its width."""
    rests = {**on_units(600, (900, "hob"), 600, front=20), "rails": "hardwood"}
    less, more = (
        in_place_used(
            slab_json(
                box(2100, 620),
                cut("rectangle", (560, 380), (1050, wide + 190)),
                rests=rests,
                thickness=50,
            ),
            workshop,
        )
        for wide in (strip, strip + 0.5)
    )
    assert 1.0 / 1.03 < more / less < 1.03


def _moves_little(seeds: range, workshop: Workshop) -> None:
    moved = {}
    for seed in seeds:
        slab = l_slab(seed)
        as_is = in_place_used(slab, workshop)
        for k, more in enumerate(_a_millimetre_more(slab)):
            other = in_place_used(more, workshop)
            if max(as_is, other) > 1.03 * min(as_is, other):
                moved[seed, k] = (as_is, other)
    assert moved == {}


def test_a_millimetre_more_moves_an_ls_utilisation_by_3_percent_at_most(
    workshop: Workshop,
) -> None:
    """At a corner that turns inward the stress is singular: the mesh about it is always the same.

    3 % is the width of the band in which a verdict may flip.
    """
    _moves_little(range(14, 17), workshop)


@pytest.mark.long
def test_a_millimetre_more_moves_none_of_hundreds_of_ls(workshop: Workshop) -> None:
    """The same on slabs that are not in the everyday run."""
    _moves_little(range(LONG), workshop)


@pytest.mark.long
def test_a_millimetre_more_flips_none_of_hundreds(workshop: Workshop) -> None:
    """The same on slabs that are not in the everyday run."""
    _keeps_its_verdict(range(EVERYDAY, LONG), workshop)
