"""Ratio of our plate's time to scikit-fem's Morley plate's, errors of both named.

Run ``python tests/benchmarks/plate_benchmark.py``. The same work by both: assembly, factor, own
weight and forty placed loads, moments everywhere; ours makes its mesh in that time and the Morley
plate is given one. Errors are against a fine mesh of ours, largest over the forty-one cases, of

* the sag beside the opening,
* the moment at the strip's rim, averaged over 20 mm as the verdict is,
* the strip's mean moment across its width, by the balance of the elements that are cut.

Time is processor time on one thread, so that a busy machine changes it little.
"""

from __future__ import annotations

import os

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ[name] = "1"  # before NumPy is first imported

import sys
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path

import numpy as np
from shapely.geometry import Point, Polygon, box

HERE = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(HERE), str(HERE.parent / "service")]

from ledgerstone.strength import Cases, LineSupport, OwnWeight, PatchLoad, Plate, PlateLoad
from ledgerstone.strength._loads import SIXTEEN
from ledgerstone.strength._stress import corner_moments
from ledgerstone.strength.mesh import Mesh, mesh_of
from support.one_piece import less
from support.oracles.morley import MorleyPlate

THICKNESS, E, NU, WEIGHT = 40.0, 33_000.0, 0.2, 25e-6
LENGTH, WIDTH = 2000.0, 650.0
TIMES = 7
StripSize = tuple[float, float, float]  # x, and from which y to which


def circle(x: float, y: float, diameter: float) -> Polygon:
    """A disc of ninety-six sides."""
    return Point(x, y).buffer(diameter / 2.0, quad_segs=24)


BENCH = box(0, 0, LENGTH, WIDTH)
BASINS = less(BENCH, circle(560, 300, 400), circle(1440, 300, 400))
SLABS: dict[str, tuple[Polygon, StripSize]] = {
    "one 440 mm hole": (less(BENCH, circle(1000, 325, 440)), (1000.0, 0.0, 105.0)),
    "two basins and a tap": (less(BASINS, circle(1000, 530, 35)), (1440.0, 0.0, 100.0)),
}
PLACES = np.array([(80.0 + 97.0 * i, y) for y in (45.0, 605.0) for i in range(20)])
LOADS: list[list[PlateLoad]] = [
    [OwnWeight(WEIGHT)],
]
LOADS += [[PatchLoad(x=x, y=y, length=60, width=60, newtons=1000)] for x, y in PLACES.tolist()]


def rim_places(strip: StripSize) -> np.ndarray:
    """Nineteen places in a disc of 20 mm that touches the strip's rim."""
    turn = np.arange(12) * np.pi / 6.0
    ring = np.column_stack([np.cos(turn), np.sin(turn)])
    disc = np.concatenate([[[0.0, 0.0]], 10.0 * ring[::2], 17.4 * ring])
    return np.asarray(disc + np.array([strip[0], strip[2] - 20.0]))


def ours(slab: Polygon, size: float | None = None) -> Cases:
    """All of our work."""
    plate = Plate(slab, thickness_mm=THICKNESS, e_mpa=E, nu=NU, mesh_mm=size)
    ends = [LineSupport([(x, 0), (x, WIDTH)], holds_down=True) for x in (0.0, LENGTH)]
    cases = plate.on(ends).cases(LOADS)
    cases.worst_stresses()
    return cases


def our_results(cases: Cases, strip: StripSize) -> list[np.ndarray]:
    """Sag, rim moment and mean strip moment of every case, each read as Morley's is."""
    model = cases.rested.plate.model
    corner = corner_moments(model, cases._found.u)[:, :, 0]
    answers = [cases.answer(k) for k in range(len(cases.tips))]
    found = [np.array([a.deflection_at(strip[0], strip[1] + 20.0) for a in answers])]
    triangle, share, _ = model.mesh.nearest(rim_places(strip))
    found.append(np.einsum("pk,pkc->pc", share, corner[triangle]).mean(axis=0))
    x, low, high = strip
    found.append(np.array([a.moment_across((x, low), (x, high)) for a in answers]))
    return found


def morley(mesh: Mesh) -> tuple[MorleyPlate, np.ndarray, np.ndarray]:
    """All of the baseline's work, its mesh given."""
    x = mesh.nodes[:, 0]
    held = np.flatnonzero((np.abs(x) < 1e-6) | (np.abs(x - LENGTH) < 1e-6))
    plate = MorleyPlate(mesh.nodes, mesh.triangles, held, THICKNESS, E, NU)
    own = plate.pressure(WEIGHT * THICKNESS)
    u = plate.solved(np.column_stack([own, plate.patches(PLACES, 60.0, 1000.0)]))
    m = plate.moments(u)
    middle, reach = 0.5 * (m[:, 0] + m[:, 1]), np.hypot(0.5 * (m[:, 0] - m[:, 1]), m[:, 2])
    np.maximum(middle + reach, reach - middle).max(axis=0)
    return plate, u, m


def morley_results(
    found: tuple[MorleyPlate, np.ndarray, np.ndarray], strip: StripSize
) -> list[np.ndarray]:
    """Sag, rim moment and mean strip moment of every case."""
    plate, u, m = found
    sag = plate.deflection_at(u, np.array([[strip[0], strip[1] + 20.0]]))[0]
    rim = m[plate.triangle_at(rim_places(strip)), 0].mean(axis=0)
    x, low, high = strip
    return [sag, rim, plate.mean_across(u, x, (low, high), point_loads(plate))]


def point_loads(plate: MorleyPlate) -> list[tuple[np.ndarray, np.ndarray]]:
    """Every case's load as points: sixteen in each triangle, or the nine by nine of a patch."""
    corners = plate.nodes[plate.triangles]
    every = np.einsum("pk,tki->tpi", SIXTEEN, corners).reshape(-1, 2)
    area = np.repeat(plate.basis.mesh.mapping().detA[:, None] / 2.0, len(SIXTEEN), axis=1).ravel()
    own = (every, WEIGHT * THICKNESS * area / len(SIXTEEN))
    places = plate.patch_places(PLACES, 60.0)
    return [own, *((one, np.full(len(one), 1000.0 / len(one))) for one in places)]


def errors(found: list[np.ndarray], fine: list[np.ndarray]) -> list[float]:
    """Largest error of each quantity over its own largest value."""
    return [float(np.abs(a - b).max() / np.abs(b).max()) for a, b in zip(found, fine, strict=True)]


def median_ms(work: Callable[[], object]) -> float:
    """Median processor time of a few runs."""
    times = []
    for _ in range(TIMES):
        start = time.process_time()
        work()
        times.append(time.process_time() - start)
    return 1e3 * float(np.median(times))


def said(found: list[float]) -> str:
    """The three errors in words."""
    return "sag {:.2%}, rim moment {:.2%}, mean strip moment {:.2%}".format(*found)


def compare(name: str, slab: Polygon, strip: StripSize) -> None:
    """Print our line and the baseline's, finer and finer until it is as good."""
    fine = our_results(ours(slab, 7.0), strip)
    mine = errors(our_results(ours(slab), strip), fine)
    time_ms = median_ms(lambda: ours(slab))
    print(f"{name}: ours {time_ms:.0f} ms with its mesh; errors: {said(mine)}")
    for size in (45.0, 32.0, 22.0, 16.0, 12.0):
        mesh = mesh_of(slab, thickness_mm=THICKNESS, mesh_mm=size)
        theirs = errors(morley_results(morley(mesh), strip), fine)
        their_ms = median_ms(partial(morley, mesh))
        as_good = [a <= b for a, b in zip(theirs, mine, strict=True)]
        which = [n for n, good in zip(("sag", "rim", "mean"), as_good, strict=True) if good]
        print(
            f"  Morley, {len(mesh.triangles)} triangles: {their_ms:.0f} ms, ratio "
            f"{their_ms / time_ms:.1f}; errors: {said(theirs)}; as good as ours in: "
            f"{', '.join(which) or 'none'}"
        )
        if all(as_good):
            return


if __name__ == "__main__":
    for slab_name, (slab_outline, slab_strip) in SLABS.items():
        compare(slab_name, slab_outline, slab_strip)
