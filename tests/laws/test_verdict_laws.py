"""Laws of the verdict on a slab: mirror images, a millimetre more, finer meshes, and monotony."""

from __future__ import annotations

import copy
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.shape import shape_of
from ledgerstone.strength._holding import Holding
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength._rails import on_levels
from ledgerstone.strength._search import worst_seats
from ledgerstone.strength._tried import TriedCase
from ledgerstone.strength.plate import Plate
from ledgerstone.strength.rests import turning_places
from ledgerstone.strength.slabs import MESHED_AS_MM, Plates, SlabStrength, slab_strength
from ledgerstone.strength.verdict import CAUTIONS
from ledgerstone.transport import slab_kg
from ledgerstone.workshop import Workshop
from support.calibration import on_units
from support.documents import Json
from support.mirrored import mirrored
from support.placed import placed_of
from support.slabs import box, cut, slab_json
from support.strategies.ordinary_slabs import ordinary_slab
from support.strategies.shaped_slabs import l_slab, round_slab, shaped_slab

EVERYDAY, LONG = 8, 200
WORKSHOP_TEMP_C = 10.0
NEAR_THE_LIMIT = (0.97, 1.03)


def strength_of(document: Json, workshop: Workshop) -> SlabStrength:
    """Work out one slab's strength, from an empty store."""
    slab = read_order({"slabs": [document]}, workshop).slabs[0]
    shape = shape_of(slab, workshop)
    kg = slab_kg(slab, shape, workshop)
    return slab_strength(
        slab, shape, workshop, slab_kg=kg, workshop_temp_c=WORKSHOP_TEMP_C, plates=Plates()
    )


def on_known_rails(seed: int) -> Json:
    """An ordinary slab, its units' rails said: which of them suffices is a step of its own."""
    slab = ordinary_slab(seed)
    if slab["rests"]["kind"] == "units":
        slab["rests"]["rails"] = "hardwood"
    return slab


def used(document: Json, workshop: Workshop) -> float:
    """The largest utilisation of the cases that stop an order."""
    found = strength_of(document, workshop)
    verdicts = [*found.handled.verdicts, *found.in_place.verdicts]
    return max(one.utilisation for one in verdicts if one.case not in CAUTIONS)


# --- mirror images -----------------------------------------------------------------------------


SlabMaker = Callable[[int], Json]


def _mirrors_alike(seeds: range, workshop: Workshop, kind: SlabMaker = on_known_rails) -> None:
    unlike = {}
    for seed in seeds:
        slab = kind(seed)
        as_is = used(slab, workshop)
        for axis in ("x", "y"):
            other = used(mirrored(slab, axis), workshop)
            if max(as_is, other) > 1.02 * min(as_is, other):
                unlike[seed, axis] = (as_is, other)
    assert unlike == {}


def test_a_mirrored_slab_is_used_as_much(workshop: Workshop) -> None:
    """Left and right, and front and back, change the utilisation by at most 2 %."""
    _mirrors_alike(range(EVERYDAY), workshop)


def test_so_is_a_mirrored_round_top_or_l(workshop: Workshop) -> None:
    """The same of slabs that are no rectangles."""
    _mirrors_alike(range(4), workshop, shaped_slab)


@pytest.mark.long
@pytest.mark.parametrize("kind", [on_known_rails, shaped_slab])
def test_hundreds_of_mirrored_slabs_are_used_as_much(kind: SlabMaker, workshop: Workshop) -> None:
    """The same on slabs that are not in the everyday run."""
    _mirrors_alike(range(4, LONG), workshop, kind)


# --- a millimetre more -------------------------------------------------------------------------


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


@pytest.mark.parametrize("strip", [64.8, 85.0, 92.3])
def test_a_strip_ceases_bit_by_bit_to_be_leant_on_as_it_gets_wider(
    strip: float, workshop: Workshop
) -> None:
    """Before a hob: 65 mm are leant on, 92.5 mm sat and stood on, what is between in proportion."""
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
    _moves_little(range(14, 19), workshop)


@pytest.mark.long
def test_a_millimetre_more_moves_none_of_hundreds_of_ls(workshop: Workshop) -> None:
    """The same on slabs that are not in the everyday run."""
    _moves_little(range(LONG), workshop)


@pytest.mark.long
def test_a_millimetre_more_flips_none_of_hundreds(workshop: Workshop) -> None:
    """The same on slabs that are not in the everyday run."""
    _keeps_its_verdict(range(EVERYDAY, LONG), workshop)


# --- the mesh ----------------------------------------------------------------------------------


def _railed(placed: PlacedSlab) -> PlacedSlab:
    units = {bearing.unit for bearing in placed.carrying if bearing.unit is not None}
    return on_levels(placed, dict.fromkeys(units, "hardwood")) if units else placed


def _finer(placed: PlacedSlab) -> PlacedSlab:
    """The same slab on a mesh twice as fine."""
    plate = placed.plate
    size = 0.5 * plate.model.mesh.coarse_mm
    held = Holding(plate.outline).turned_at_mm
    turning = (*turning_places(placed.slab, placed.shape), *held)
    fine = Plate(
        plate.outline,
        thickness_mm=MESHED_AS_MM,
        e_mpa=plate.e_mpa,
        nu=plate.nu,
        mesh_mm=size,
        turning=turning,
    )
    return replace(placed, plate=fine.at(thickness_mm=plate.thickness_mm))


def _worst_of(placed: PlacedSlab, tried: Sequence[TriedCase]) -> float:
    """How far the worst of some cases uses the slab."""
    found = placed.settled(tried).found if tried else ()
    used = [one.mpa / placed.limit_mpa(t.case) for t, one in zip(tried, found, strict=True)]
    return max(used, default=0.0)


def _fine_enough(seeds: Iterable[int], workshop: Workshop, kind: SlabMaker = ordinary_slab) -> None:
    unlike = {}
    for seed in seeds:
        placed = placed_of(kind(seed), workshop)
        if placed is None:
            continue
        coarse, fine = _railed(placed), _railed(_finer(placed))
        batches = worst_seats(coarse, coarse.first)
        for tips in (False, True):
            some = [
                tried
                for batch in batches
                for k, tried in enumerate(batch.tried)
                if tried.place is not None and (k in batch.tipped) is tips
            ]
            worst = [_worst_of(railed, some) for railed in (coarse, fine)]
            if not 0.95 * worst[1] <= worst[0] <= 1.05 * worst[1]:
                unlike[seed, tips] = worst
    assert unlike == {}


def test_a_mesh_twice_as_fine_says_the_same(workshop: Workshop) -> None:
    """Of the places that are searched, those that tip it apart: the worst within 5 %."""
    _fine_enough((13, 14, 52, 59), workshop)


def test_a_mesh_twice_as_fine_says_the_same_of_ls(workshop: Workshop) -> None:
    """About a corner that turns inward too."""
    _fine_enough((5, 14, 18), workshop, l_slab)


def test_a_mesh_twice_as_fine_says_the_same_of_tables_on_a_pedestal(workshop: Workshop) -> None:
    """They turn about the edge of its plate, where the stations under it press most."""
    _fine_enough((1501, 1510), workshop, round_slab)


@pytest.mark.long
@pytest.mark.parametrize("kind", [ordinary_slab, shaped_slab])
def test_a_mesh_twice_as_fine_says_the_same_of_many(kind: SlabMaker, workshop: Workshop) -> None:
    """The same on slabs that are not in the everyday run."""
    _fine_enough(range(60), workshop, kind)


# --- monotony ----------------------------------------------------------------------------------


def in_place_used(document: Json, workshop: Workshop) -> float:
    """The largest utilisation in place of the cases that stop an order."""
    verdicts = strength_of(document, workshop).in_place.verdicts
    return max(one.utilisation for one in verdicts if one.case not in CAUTIONS)


@pytest.mark.parametrize("seed", [1, 5, 11])
def test_a_thicker_slab_is_never_used_more(seed: int, workshop: Workshop) -> None:
    """Stress of a load falls with the square of the thickness, that of own weight with itself."""
    slab = on_known_rails(seed)
    found = [in_place_used({**slab, "thickness": t}, workshop) for t in (30, 35, 40, 50, 60)]
    assert all(later < 1.01 * before for before, later in pairwise(found)), found


def test_a_longer_span_is_never_used_less(workshop: Workshop) -> None:
    """A slab on its two ends: the moment of a person and of its weight grows with the span."""
    spans = range(700, 1701, 200)
    rests = {"kind": "ends", "depth": 40}
    found = [in_place_used(slab_json(box(span, 500), rests=rests), workshop) for span in spans]
    assert all(later > 0.99 * before for before, later in pairwise(found)), found


def test_a_longer_opening_is_never_used_less(workshop: Workshop) -> None:
    """Strips of one width before and behind an opening span the more the longer it is."""
    rests = {**on_units(600, (900, "hob"), 600, front=20), "rails": "hardwood"}
    found = [
        in_place_used(
            slab_json(box(2100, 620), cut("rectangle", (size, 380), (1050, 310)), rests=rests),
            workshop,
        )
        for size in range(400, 801, 80)
    ]
    assert bool(np.all(np.array(found[1:]) > 0.99 * np.array(found[:-1]))), found
