"""Laws of moving a slab: no case of handling reads low beside a mesh that is much finer."""

from __future__ import annotations

from collections.abc import Callable, Iterable

import pytest
from shapely.geometry import Polygon

from ledgerstone.codec.order_in import read_order
from ledgerstone.outline import XY
from ledgerstone.shape import shape_of
from ledgerstone.strength.concrete import POISSON
from ledgerstone.strength.handling import Handling
from ledgerstone.strength.plate import Plate
from ledgerstone.strength.slabs import (
    MESHED_AS_MM,
    Plates,
    ThinnerZone,
    handling_of,
)
from ledgerstone.transport import slab_kg
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.strategies.moved_slabs import moved_disc, moved_slab

EVERYDAY, LONG = 3, 200
WORKSHOP_TEMP_C = 10.0
FINER = 2.5
LOW = 0.95
LOW_AT_A_CORNER = 0.88


class FinerPlates(Plates):
    """Plates of the same plans on meshes that are so many times finer."""

    def of(
        self,
        outline: Polygon,
        thickness_mm: float,
        e_mpa: float,
        reliefs: tuple[ThinnerZone, ...] = (),
        turning: tuple[XY, ...] = (),
        *,
        mesh_mm: float | None = None,  # noqa: ARG002 - finer than the rule's, whatever is asked
    ) -> Plate:
        """Return a plate of this plan on a mesh finer than the rule's."""
        usual = super().of(outline, thickness_mm, e_mpa, reliefs, turning)
        return Plate(
            outline,
            thickness_mm=MESHED_AS_MM,
            e_mpa=e_mpa,
            nu=POISSON,
            mesh_mm=usual.model.mesh.coarse_mm / FINER,
            turning=turning,
        ).at(thickness_mm=thickness_mm)


def _moved(document: Json, workshop: Workshop, plates: Plates) -> Handling:
    slab = read_order({"slabs": [document]}, workshop).slabs[0]
    shape = shape_of(slab, workshop)
    kg = slab_kg(slab, shape, workshop)
    return handling_of(
        slab, shape, workshop, slab_kg=kg, workshop_temp_c=WORKSHOP_TEMP_C, plates=plates
    )


def stresses_of(handling: Handling) -> dict[tuple[int, str], float | None]:
    """Stress of every case of every way there is, MPa; None if the slab tips."""
    ways = handling.workshop.handling.ways
    return {
        (k, verdict.case): None if verdict.tips else verdict.stress_mpa
        for k, way in enumerate(ways)
        for verdict in handling._handled(way).verdicts
    }


def low_cases(document: Json, workshop: Workshop) -> dict[tuple[int, str], tuple[float, float]]:
    """Every case whose stress is too low beside that of the finer mesh, with both stresses.

    Beside a sharp corner that turns inward the stress is singular: there two meshes so fine, alike
    but for the corner's elements, differ by up to 8 % themselves.
    """
    least = LOW if document["outline"]["kind"] in ("rectangle", "round") else LOW_AT_A_CORNER
    usual, finer = (
        stresses_of(_moved(document, workshop, plates)) for plates in (Plates(), FinerPlates())
    )
    assert usual.keys() == finer.keys()
    return {
        case: (mpa, fine)
        for case, mpa in usual.items()
        if mpa is not None and (fine := finer[case]) is not None and mpa < least * fine
    }


def _reads_none_low(
    seeds: Iterable[int], workshop: Workshop, kind: Callable[[int], Json] = moved_slab
) -> None:
    low = {seed: found for seed in seeds if (found := low_cases(kind(seed), workshop))}
    assert low == {}


def test_no_case_of_handling_reads_low(workshop: Workshop) -> None:
    """Turned, lifted, carried, on bearers: at most 5 % under a mesh 2.5 times finer.

    At an L's inner corner and on askew sides, 12 %.
    """
    _reads_none_low(range(EVERYDAY), workshop)


def test_nor_does_a_round_slab_where_the_tables_edge_ends_at_its_rim(workshop: Workshop) -> None:
    """A disc of 1420 mm, seed 71, read 5.5 % low with nodes 15 mm apart there."""
    _reads_none_low([71], workshop)
    _reads_none_low(range(2), workshop, moved_disc)


@pytest.mark.long
@pytest.mark.parametrize("kind", [moved_slab, moved_disc])
def test_no_case_of_handling_reads_low_on_hundreds(
    kind: Callable[[int], Json], workshop: Workshop
) -> None:
    """The same on slabs that are not in the everyday run."""
    _reads_none_low(range(2, LONG), workshop, kind)
