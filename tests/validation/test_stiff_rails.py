"""A hob's front strip on a rail that does not bend: by hand, as a beam on what is under it."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from ledgerstone.strength import PatchLoad
from ledgerstone.strength._placed import PlacedSlab
from ledgerstone.strength.plate import Cases, LineSupport, Plate
from ledgerstone.workshop import Workshop
from support.calibration import on_units
from support.placed import placed_of
from support.slabs import box, cut, slab_json

# 2100 x 620 x 40 over units of 600, 900 and 600, an opening of 860 x 490 with its near side at
# y = 65; 500 N on 100 mm of the middle of the strip; the rail's line at y = 20.
WIDE_MM, THICK_MM, LONG_MM = 65.0, 40.0, 860.0
RAIL_MM = 20
FINE_MM = 15.0  # mesh, and so the stations of the rail, under which the beam is continuous
NEWTONS, PATCH_MM, MIDDLE_MM = 500.0, 100.0, 1050.0


def _top(workshop: Workshop) -> PlacedSlab:
    opening = cut("rectangle", (LONG_MM, 490), (MIDDLE_MM, WIDE_MM + 245), rim="covered")
    rests = on_units(600, (900, "hob"), 600, front=RAIL_MM)
    placed = placed_of(slab_json(box(2100, 620), opening, rests=rests), workshop)
    assert placed is not None
    return placed


def _leant_on(placed: PlacedSlab) -> Cases:
    """The slab's own weight and somebody leaning, then own weight alone."""
    patch = PatchLoad(x=MIDDLE_MM, y=WIDE_MM / 2, length=PATCH_MM, width=PATCH_MM, newtons=NEWTONS)
    return placed.rested.cases([[placed.weight, patch], [placed.weight]])


def test_on_a_stiff_rail_the_strip_only_twists(workshop: Workshop) -> None:
    """The load's middle is 12.5 mm behind the rail: the strip's two halves take half that torque.

    In a thin plate ``m_xy = T / 2 b``: 0.09 MPa, and own weight's 0.055 make 0.145. A check from
    outside the project had 0.37 MPa, on a rail that gave a little: see the next test.

    Source
    ------
    Torsion of a plate strip: Timoshenko and Woinowsky-Krieger, *Theory of Plates and Shells*, from
    memory.
    """
    loaded, alone = _leant_on(_top(workshop)).worst_stresses()
    torque = 0.5 * NEWTONS * (WIDE_MM / 2 - RAIL_MM)
    twisted = 6.0 * torque / (2.0 * WIDE_MM) / THICK_MM**2
    assert loaded == pytest.approx(twisted + alone, rel=0.1)


@pytest.mark.parametrize("n_per_mm2", [400.0, 650.0, 1700.0])
def test_on_a_rail_that_gives_it_bends_as_a_beam_on_a_bed(
    n_per_mm2: float, workshop: Workshop
) -> None:
    """Hetényi: under even load ``p`` over ``2 a``, ``M = p exp(-l a) sin(l a) / 2 l²``.

    ``l = (k / 4 E I)^0.25``. With 650 N/mm², a spring of 1e5 N/mm every 150 mm, it is 0.37 MPa:
    what the outside check took for a rigid rail. A mean over the strip's width, since it tilts; we
    read 5 to 8 % more than Hetényi, whose bed pulls where ours lets go.

    Source
    ------
    Hetényi, *Beams on Elastic Foundation* (1946), infinite beam under an even load, from memory.
    """
    placed = _top(workshop)
    gives = [
        replace(bearing, support=replace(bearing.support, crushes_n_per_mm2=n_per_mm2))
        if isinstance(bearing.support, LineSupport)
        and {y for _, y in bearing.support.points} == {RAIL_MM}
        else bearing
        for bearing in placed.carrying
    ]
    plate = placed.plate
    fine = Plate(
        plate.outline,
        thickness_mm=THICK_MM,
        e_mpa=plate.e_mpa,
        nu=plate.nu,
        mesh_mm=FINE_MM,
    )
    cases = _leant_on(replace(placed, plate=fine, carrying=gives))
    middle = (MIDDLE_MM, 0.0), (MIDDLE_MM, WIDE_MM)
    loaded, alone = (cases.answer(k).moment_across(*middle) for k in (0, 1))
    stiffness = placed.plate.e_mpa * WIDE_MM * THICK_MM**3 / 12.0
    rate = (n_per_mm2 / (4.0 * stiffness)) ** 0.25
    reach = rate * PATCH_MM / 2.0
    moment = NEWTONS / PATCH_MM * math.exp(-reach) * math.sin(reach) / (2.0 * rate**2)
    section = WIDE_MM * THICK_MM**2 / 6.0
    found = (loaded - alone) * WIDE_MM / section
    assert found == pytest.approx(moment / section, rel=0.1)
