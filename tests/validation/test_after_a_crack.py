"""What holds a slab once it has cracked: the bars that are listed for it, or plain concrete.

Source, where none stands beside a figure: EN 1992-1-1 6.1 by hand, worked out independently of
this code. C40, 6 mm bars and 2.5 mm wires of 500 MPa at 50 mm.
"""

from dataclasses import replace
from typing import Final

import pytest
from shapely.geometry import LineString

from ledgerstone.quote import Quote
from ledgerstone.reinforcement import SteelPlan
from ledgerstone.strength.cracked import BarMaterial, SteelLayer, cracked_moment_nmm_per_mm
from ledgerstone.strength.slabs import concrete_of
from ledgerstone.workshop import Workshop
from support.calibration import JOBS
from support.slabs import box, slab_json
from support.whole_orders import answered, in_place, stages, stops

WIRES_MM2: Final = 0.0982  # on each mm: π 2.5² / 4 / 50
BAR_MM2: Final = 28.27
LEDGES: Final = {
    "kind": "ledges",
    "lines": [
        {"start": {"x": x, "y": 0}, "end": {"x": x, "y": 400}, "depth": 40} for x in (150, 1250)
    ],
}
BENCH: Final = slab_json(box(1400, 400), thickness=50, rests=LEDGES)


@pytest.mark.parametrize(
    ("thickness", "carried", "cracks"),
    [(30, 600, 826), (40, 814, 1460), (50, 1027, 2266), (60, 1240, 3242)],
)
def test_mesh_alone_breaks_as_it_cracks(
    thickness: int, carried: float, cracks: float, workshop: Workshop
) -> None:
    """Mesh in mid-depth carries less than the moment at which the slab cracks, N·mm/mm."""
    mesh = [SteelLayer(WIRES_MM2, thickness / 2)]
    found = cracked_moment_nmm_per_mm(mesh, BarMaterial(200_000, 434.8), fck_mpa=40.0, gamma_c=1.5)
    mean = concrete_of(workshop).mean_bending_mpa(thickness, 28.0)
    assert found == pytest.approx(carried, rel=0.01)
    assert mean * thickness**2 / 6.0 == pytest.approx(cracks, rel=0.01)


def _carried_nmm_per_mm(bars: int, width_mm: float, thickness_mm: float) -> float:
    """By hand: the stress block of 22.67 MPa under the pull of bars and wires, both faces."""
    depth = thickness_mm / 2 - 1.25  # a bar on a wire of 2.5 mm, from the nearer face
    pull = (BAR_MM2 * bars / width_mm + WIRES_MM2) * 500 / 1.15
    return pull * (depth - pull / 22.67 / 2)


def test_a_bench_lists_the_bars_that_hold_it(workshop: Workshop) -> None:
    """1400 × 400 × 50 on ledges at 150 and 1250: its bars carry what it cracks at and its loads.

    As plain concrete a strip of it stands at 1.42: 1.35 × 0.48 N/mm and 1.5 × 1000 N over
    1100 mm make 2.9 MPa against 2.03.
    """
    known = stages(workshop, BENCH)
    plan: SteelPlan = known.known.steel[0]
    across = LineString([(700, 0), (700, 400)])
    bars = sum(bar.line.crosses(across) for bar in plan.bars)
    assert plan.after is not None
    assert bars >= 2
    assert _carried_nmm_per_mm(bars, 400, 50) > max(2266, plan.after.along.demand.mpa * 50**2 / 6)
    assert in_place(workshop, BENCH)["after-a-crack"].utilisation < 1.0


def test_without_bars_the_same_bench_is_judged_as_plain_concrete(workshop: Workshop) -> None:
    """No bars are kept: 1.42 at least after a crack (EN 1992-1-1 12.3.1), and it is sent back."""
    bare = replace(workshop, steel=replace(workshop.steel, bar_mm=None))
    assert in_place(bare, BENCH)["after-a-crack"].utilisation >= 1.42
    assert stops(answered(bare, BENCH)) == {"cracks-in-place"}


def test_what_only_fails_after_a_crack_says_so(workshop: Workshop) -> None:
    """A bench on legs does not crack by itself; without bars nothing would hold it if it did."""
    bare = replace(workshop, steel=replace(workshop.steel, bar_mm=None))
    job = JOBS["a bench on legs"]
    answer = answered(bare, *job["slabs"], delivery=job["delivery"])
    assert stops(answer) == {"cracks-in-place"}
    names = [one.message.name for one in answer.findings]
    assert "breaks-after-a-crack" in names


@pytest.mark.parametrize("name", JOBS)
def test_an_ordinary_job_lists_what_holds_it_after_a_crack(name: str, workshop: Workshop) -> None:
    """Each way that plain concrete does not carry has bars that carry what the slab cracks at."""
    answer = answered(workshop, *JOBS[name]["slabs"], delivery=JOBS[name]["delivery"])
    assert isinstance(answer, Quote)
    for slab, plan in zip(answer.order.slabs, answer.steel, strict=True):
        if plan.after is None:
            assert slab.rests is not None
            assert slab.rests.kind == "full"
            continue
        mean = concrete_of(workshop).mean_bending_mpa(slab.thickness.mm, 28.0)
        for held in (plan.after.along, plan.after.across):
            assert held.limit_mpa >= held.demand.mpa
            assert held.by == "plain" or held.limit_mpa >= mean
        assert "bars" in {plan.after.along.by, plan.after.across.by}


def test_what_is_listed_is_cut_and_priced(workshop: Workshop) -> None:
    """Bars and their minutes are in the price: each as long as the bench, three minutes each."""
    known = stages(workshop, BENCH)
    bars = known.known.steel[0].bars
    (cut,) = [one for one in known.scheduled.operations if one.name.name == "step-steel"]
    area_m2 = known.shapes[0].net_area_mm2 / 1e6
    each = workshop.hours.per_piece.bar
    assert cut.hands_hours == pytest.approx(
        workshop.hours.per_piece.steel_per_m2 * area_m2 + each * len(bars)
    )
    assert {bar.length_mm for bar in bars} == {1400 - 2 * 18}
