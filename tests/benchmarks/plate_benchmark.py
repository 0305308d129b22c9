"""Ratio of our plate's time to scikit-fem's Morley plate's, at the same or better error.

Run ``python tests/benchmarks/plate_benchmark.py``. The same work by both: mesh, assembly, factor,
own weight and forty placed loads, moments everywhere. Errors are against a fine mesh, the sag and
the moment through the strip beside the opening apart. The baseline's mesh is refined from ours
until both its errors are as small as ours. BLAS runs on one thread.
"""

from __future__ import annotations

import os

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ[name] = "1"

import sys
import time
from pathlib import Path

import numpy as np
from shapely.geometry import Point, Polygon, box

HERE = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(HERE), str(HERE.parent / "service")]

from ledgerstone.strength import LineSupport, OwnWeight, PatchLoad, Plate  # noqa: E402 - after paths
from ledgerstone.strength.mesh import Mesh, mesh_of  # noqa: E402 - after paths
from oracles.morley import MorleyPlate  # noqa: E402 - after paths

THICKNESS, E, NU, WEIGHT = 40.0, 33_000.0, 0.2, 25e-6
LENGTH, WIDTH = 2000.0, 650.0
TIMES = 7


def circle(x: float, y: float, diameter: float) -> Polygon:
    return Point(x, y).buffer(diameter / 2.0, quad_segs=24)


SLABS = {
    "one 440 mm hole": (
        box(0, 0, LENGTH, WIDTH).difference(circle(1000, 325, 440)),
        (1000.0, 0.0, 105.0),
    ),
    "two basins and a tap": (
        box(0, 0, LENGTH, WIDTH)
        .difference(circle(560, 300, 400))
        .difference(circle(1440, 300, 400))
        .difference(circle(1000, 530, 35)),
        (1440.0, 0.0, 100.0),
    ),
}
PLACES = np.array([(80.0 + 97.0 * i, y) for y in (45.0, 605.0) for i in range(20)])


def strip_places(strip: tuple[float, float, float]) -> np.ndarray:
    x, low, high = strip
    y = low + (np.arange(21) + 0.5) / 21.0 * (high - low)
    return np.column_stack([np.full(21, x), y])


def rim_places(strip: tuple[float, float, float]) -> np.ndarray:
    """Nineteen places within 20 mm of the strip's rim, 20 mm into the strip."""
    x, _, high = strip
    turn = np.arange(12) * np.pi / 6.0
    ring = np.column_stack([np.cos(turn), np.sin(turn)])
    disc = np.concatenate([[[0.0, 0.0]], 10.0 * ring[::2], 17.4 * ring])
    return disc + (x, high - 20.0)


def loads() -> list[list[OwnWeight | PatchLoad]]:
    own = OwnWeight(WEIGHT)
    return [[own]] + [
        [PatchLoad(x=x, y=y, length=60, width=60, newtons=1000.0)] for x, y in PLACES.tolist()
    ]


def ours(slab: Polygon, size: float | None = None):
    plate = Plate(slab, thickness_mm=THICKNESS, e_mpa=E, nu=NU, mesh_mm=size)
    ends = [LineSupport([(x, 0), (x, WIDTH)], holds_down=True) for x in (0.0, LENGTH)]
    cases = plate.on(ends).cases(loads())
    cases.worst_stresses()
    return cases


def our_results(cases, strip) -> tuple[np.ndarray, np.ndarray]:
    answers = [cases.answer(k) for k in range(len(cases.tips))]
    sag = [a.deflection_at(strip[0], strip[1] + 20.0) for a in answers]
    moment = [np.mean([a.moments_at(x, y)[0] for x, y in strip_places(strip)]) for a in answers]
    rim = [np.mean([a.moments_at(x, y)[0] for x, y in rim_places(strip)]) for a in answers]
    return np.array(sag), np.array(moment), np.array(rim)


def morley(mesh: Mesh) -> tuple[MorleyPlate, np.ndarray, np.ndarray]:
    x = mesh.nodes[:, 0]
    held = np.flatnonzero((np.abs(x) < 1e-6) | (np.abs(x - LENGTH) < 1e-6))
    plate = MorleyPlate(mesh.nodes, mesh.triangles, held, THICKNESS, E, NU)
    own = plate.pressure(WEIGHT * THICKNESS)
    u = plate.solved(np.column_stack([own, plate.patches(PLACES, 60.0, 1000.0)]))
    m = plate.moments(u)
    middle, reach = 0.5 * (m[:, 0] + m[:, 1]), np.hypot(0.5 * (m[:, 0] - m[:, 1]), m[:, 2])
    np.maximum(middle + reach, reach - middle).max(axis=0)
    return plate, u, m


def morley_results(found, strip) -> tuple[np.ndarray, np.ndarray]:
    plate, u, m = found
    sag = plate.deflection_at(u, np.array([[strip[0], strip[1] + 20.0]]))[0]
    return (
        sag,
        m[plate.triangle_at(strip_places(strip)), 0].mean(axis=0),
        m[plate.triangle_at(rim_places(strip)), 0].mean(axis=0),
    )


def error(found: np.ndarray, fine: np.ndarray) -> float:
    return float(np.abs(found - fine).max() / np.abs(fine).max())


def best_ms(work) -> float:
    times = []
    for _ in range(TIMES):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return 1e3 * float(np.median(times))


def compare(name: str, slab: Polygon, strip: tuple[float, float, float]) -> None:
    fine = our_results(ours(slab, 9.0), strip)
    mine = our_results(ours(slab), strip)
    sag, moment = error(mine[0], fine[0]), error(mine[1], fine[1])
    time_ms = best_ms(lambda: ours(slab))
    print(f"{name}: ours {time_ms:.0f} ms, sag error {sag:.2%}, strip moment error {moment:.2%}")
    for size in (45.0, 32.0, 22.0, 16.0, 12.0):
        mesh = mesh_of(slab, thickness_mm=THICKNESS, mesh_mm=size)
        theirs = morley_results(morley(mesh), strip)
        errors = error(theirs[0], fine[0]), error(theirs[1], fine[1])
        theirs_ms = best_ms(lambda mesh=mesh: morley(mesh))
        as_good = errors[0] <= sag and errors[1] <= moment
        print(
            f"  Morley {len(mesh.triangles)} triangles: {theirs_ms:.0f} ms without its mesh, "
            f"sag error {errors[0]:.2%}, strip moment error {errors[1]:.2%}; "
            f"ratio {theirs_ms / time_ms:.1f}{' at the same or better error' if as_good else ''}"
        )
        if as_good:
            return
    print("  Morley was nowhere as good: the ratio is more than the last one.")


if __name__ == "__main__":
    for slab_name, (slab_outline, slab_strip) in SLABS.items():
        compare(slab_name, slab_outline, slab_strip)
