"""The span of a slab on ends or on ledges, as the standard has it.

EN 1992-1-1 5.3.2.2(1), figure 5.4: ``l_eff = l_n + a_1 + a_2``, ``a_i = min(h / 2, t / 2)``; of a
cantilever ``l_n + a``. A strip of 100 mm is a beam: ``6 M / h²`` of its width, by hand.
"""

import pytest

from ledgerstone.workshop import Workshop
from support.documents import Json
from support.placed import placed_of
from support.slabs import box, slab_json

OWN_N_PER_MM3 = 24e-6  # EN 1991-1-1 table A.1, as the demonstration's recipe


def _ledges(width: int, depth: int, at: tuple[float, ...]) -> Json:
    ends = [({"x": x, "y": 0}, {"x": x, "y": width}) for x in at]
    lines = [{"start": start, "end": end, "depth": depth} for start, end in ends]
    return {"kind": "ledges", "lines": lines, "fixed": True}


def _stresses(slab: Json, workshop: Workshop) -> tuple[float, float, float]:
    """Under own weight, and with the even load, MPa; own weight, N/mm²."""
    placed = placed_of(slab, workshop)
    assert placed is not None
    own, even = placed.first.found[:2]
    return own.mpa, even.mpa, placed.weight.n_per_mm3 * placed.slab.thickness.mm


@pytest.mark.parametrize("kind", ["ends", "ledges"])
@pytest.mark.parametrize(
    ("length", "thickness", "depth"),
    [(1000, 40, 40), (1000, 40, 60), (1000, 50, 30), (1400, 30, 100), (900, 60, 20)],
)
def test_it_is_the_effective_span(
    kind: str, length: int, thickness: int, depth: int, workshop: Workshop
) -> None:
    """Within 2 %: the averaged stress in mid-span is the beam's ``w l² / 8``."""
    rests: Json = {"kind": "ends", "depth": depth}
    if kind == "ledges":
        rests = _ledges(100, depth, (depth / 2, length - depth / 2))
    slab = slab_json(box(length, 100), thickness=thickness, use="shelf", rests=rests)
    own, even, own_load = _stresses(slab, workshop)
    span = length - 2 * depth + min(thickness, depth)
    for found, load in ((own, own_load), (even, own_load + workshop.loads.even_n_per_m2 * 1e-6)):
        assert found == pytest.approx(6 * load * span**2 / 8 / thickness**2, rel=0.02)


@pytest.mark.parametrize(("thickness", "depth"), [(40, 40), (40, 80), (50, 30)])
def test_an_overhang_turns_as_far_within_its_ledge(
    thickness: int, depth: int, workshop: Workshop
) -> None:
    """450 mm beyond a ledge's face: ``w l² / 2`` at ``l_n + a``, less what half a disc averages.

    The peak over the ledge is averaged over a disc of half the thickness, at least 15 mm: of a
    moment that falls by ``w l`` each mm to one side and ``w l`` a share of it to the other, at most
    8 % (by hand).
    """
    at = (450 + depth / 2, 1150 - depth / 2)
    slab = slab_json(
        box(1600, 100), thickness=thickness, use="shelf", rests=_ledges(100, depth, at)
    )
    own, _, load = _stresses(slab, workshop)
    arm = 450 + min(thickness, depth) / 2
    by_hand = 6 * load * arm**2 / 2 / thickness**2
    assert 0.92 * by_hand <= own <= 1.02 * by_hand


@pytest.mark.parametrize(
    ("length", "thickness", "depth", "middle"),
    [(800, 50, 60, -4.9), (800, 50, 60, -5.1), (1100, 80, 140, -30.1), (800, 40, 40, -0.5)],
)
def test_what_bears_of_a_ledge_is_what_lies_under_the_slab(
    length: int, thickness: int, depth: int, middle: float, workshop: Workshop
) -> None:
    """Within 2 %: a ledge that reaches past the slab's end is as deep as its part beneath it."""
    rests = _ledges(100, depth, (middle, length - middle))
    slab = slab_json(box(length, 100), thickness=thickness, use="shelf", rests=rests)
    own, _, load = _stresses(slab, workshop)
    bears = middle + depth / 2
    span = length - 2 * bears + min(thickness, bears)
    assert own == pytest.approx(6 * load * span**2 / 8 / thickness**2, rel=0.02)


def test_a_single_ledge_holds_by_its_own_depth(workshop: Workshop) -> None:
    """A person 250 mm off it bends the slab there by ``P a``, 3.5 MPa over the whole width by hand.

    Half of the width, or twice that stress, is within a person's reach of the load.
    """
    rests = _ledges(400, 30, (300,))
    slab = slab_json(box(600, 400), thickness=40, use="shelf", rests=rests)
    placed = placed_of(slab, workshop)
    assert placed is not None
    people = [placed.with_person(p, "somebody-standing") for p in placed.places]
    by_hand = 6 * workshop.loads.point_n * 250 / 400 / 40**2
    found = max(one.mpa for one in placed.settled(people).found)
    assert by_hand < found < 2.0 * by_hand
