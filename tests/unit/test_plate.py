"""The documented entry: rests, loads and what an answer can be asked."""

from __future__ import annotations

import numpy as np
import pytest
from shapely.geometry import Point, Polygon, box

from ledgerstone.strength import (
    AreaSupport,
    LineLoad,
    LineSupport,
    OffTheSlabError,
    OutlineUnusableError,
    OwnWeight,
    PatchLoad,
    Plate,
    PlateLoad,
    PointSupport,
    Pressure,
    SlabTipsError,
    Support,
)
from support.one_piece import less

G = OwnWeight(25e-6)
ENDS = [LineSupport([(0, 0), (0, 500)]), LineSupport([(1200, 0), (1200, 500)])]


@pytest.fixture(scope="module")
def plate() -> Plate:
    """A 1.2 by 0.5 m slab, 40 mm."""
    return Plate(box(0, 0, 1200, 500), thickness_mm=40, e_mpa=33_000, nu=0.2)


def test_the_entry_takes_shapely_and_plain_tuples() -> None:
    """The documented call works as it is documented."""
    slab = box(0, 0, 600, 400)
    plate = Plate(slab, thickness_mm=40, e_mpa=30_000, nu=0.2, mesh_mm=40)
    answer = plate.solve(
        supports=[
            LineSupport([(0, 0), (0, 400)], clamped=False, holds_down=True),
            PointSupport(600, 200, holds_down=False),
            AreaSupport(box(250, 150, 350, 250), holds_down=False),
        ],
        loads=[
            Pressure(0.001),
            PatchLoad(x=300, y=200, length=100, width=100, newtons=500),
            LineLoad([(100, 50), (500, 50)], 0.5),
        ],
    )
    assert len(answer.reactions) == 3
    assert sum(answer.reactions) == pytest.approx(0.001 * 600 * 400 + 500 + 0.5 * 400)
    assert len(answer.moments_at(300, 100)) == 3
    assert isinstance(answer.deflection_at(300, 100), float)
    assert answer.worst_stress() > 0


def test_deflection_is_down_and_sagging_is_positive(plate: Plate) -> None:
    """A slab on its ends sags down, and ``mx`` bends it along x."""
    answer = plate.solve(supports=ENDS, loads=[G])
    assert answer.deflection_at(600, 250) > 0
    mx, my, mxy = answer.moments_at(600, 250)
    assert mx == pytest.approx(25e-6 * 40 * 1200**2 / 8, rel=0.02)
    assert abs(my) < 0.2 * mx
    assert abs(mxy) < 0.01 * mx


def test_an_overhang_hogs_and_cracks_at_the_top() -> None:
    """Held at its middle, the worst stress is on the top face over the rests."""
    slab = Plate(box(0, 0, 1200, 500), thickness_mm=40, e_mpa=33_000)
    rests = [LineSupport([(x, 0), (x, 500)]) for x in (590, 610)]
    worst = slab.solve(supports=rests, loads=[G]).worst_stress()
    assert worst.face == "top"
    assert worst.x_mm == pytest.approx(600, abs=30)


def test_worst_stress_of_a_strip_on_its_ends_is_the_beams(plate: Plate) -> None:
    """6 M / h² with M = q L²/8, within the 5 % that a plate's free edges add (beam theory)."""
    worst = plate.solve(supports=ENDS, loads=[G]).worst_stress()
    assert worst == pytest.approx(6 * 25e-6 * 40 * 1200**2 / 8 / 40**2, rel=0.05)
    assert worst.face == "bottom"
    assert worst.x_mm == pytest.approx(600, abs=60)


def test_thickness_and_stiffness_reuse_the_geometry(plate: Plate) -> None:
    """``at`` shares mesh and factor, and gives what a plate of that thickness gives."""
    thick = plate.at(thickness_mm=60, e_mpa=20_000)
    assert thick.model is plate.model
    own = thick.solve(supports=ENDS, loads=[Pressure(0.002)])
    ratio = 33_000 * 40**3 / (20_000 * 60**3)
    base = plate.solve(supports=ENDS, loads=[Pressure(0.002)])
    assert own.deflection_at(600, 250) == pytest.approx(ratio * base.deflection_at(600, 250))
    assert own.moments_at(600, 250) == pytest.approx(base.moments_at(600, 250))
    assert thick.solve(supports=ENDS, loads=[G]).deflection_at(600, 250) == pytest.approx(
        ratio * 1.5 * plate.solve(supports=ENDS, loads=[G]).deflection_at(600, 250)
    )


def test_many_cases_give_what_one_by_one_gives(plate: Plate) -> None:
    """The fast way and the plain way agree to the last digits."""
    loads = [PatchLoad(x=x, y=60, length=100, width=100, newtons=1000) for x in (100, 600, 1100)]
    cases = plate.on(ENDS).cases([[G, load] for load in loads])
    for k, load in enumerate(loads):
        alone = plate.solve(supports=ENDS, loads=[G, load])
        assert cases.answer(k).deflection_at(600, 250) == pytest.approx(
            alone.deflection_at(600, 250), rel=1e-9
        )
        assert cases.worst_stresses()[k] == pytest.approx(alone.worst_stress(), rel=1e-9)
        assert cases.reactions_n()[:, k] == pytest.approx(alone.reactions)


def test_loads_that_differ_in_size_share_a_solution(plate: Plate) -> None:
    """Nine loads of three shapes keep three columns."""
    fresh = Plate(plate.outline, thickness_mm=40, e_mpa=33_000)
    fresh.on(ENDS).cases(
        [
            [OwnWeight(k * 25e-6), Pressure(k * 1e-3), LineLoad([(100, 100), (900, 100)], k)]
            for k in (1.0, 1.35, 2.0)
        ]
    )
    assert len(fresh.model.kept) == 3


def test_a_patch_over_the_edge_puts_its_whole_load_on_the_slab(plate: Plate) -> None:
    """A person sits on the front edge: nothing of the load is lost."""
    load = PatchLoad(x=600, y=0, length=100, width=100, newtons=1000)
    answer = plate.solve(supports=ENDS, loads=[load])
    assert sum(answer.reactions) == pytest.approx(1000)


@pytest.mark.parametrize(
    ("supports", "loads", "what"),
    [
        ([PointSupport(5000, 0)], [G], "rest"),
        ([LineSupport([(0, -900), (1200, -900)])], [G], "rest"),
        ([AreaSupport(box(3000, 0, 3100, 100))], [G], "rest"),
        (ENDS, [PatchLoad(x=9000, y=0, length=10, width=10, newtons=1)], "load"),
        (ENDS, [LineLoad([(0, 900), (10, 900)], 1)], "load"),
    ],
)
def test_rests_and_loads_off_the_slab_are_named(
    plate: Plate, supports: list[Support], loads: list[PlateLoad], what: str
) -> None:
    """A typed error that says which, and where."""
    with pytest.raises(OffTheSlabError) as raised:
        plate.solve(supports=supports, loads=loads)
    assert raised.value.what == what


def test_a_leg_under_a_hole_is_off_the_slab() -> None:
    """There is no concrete for it to carry."""
    slab = less(box(0, 0, 1200, 500), Point(600, 250).buffer(100))
    with pytest.raises(OffTheSlabError):
        Plate(slab, thickness_mm=40, e_mpa=33_000).on([PointSupport(600, 250)])


def test_a_place_off_the_slab_cannot_be_asked_about(plate: Plate) -> None:
    """Neither in a hole nor beyond an edge."""
    answer = plate.solve(supports=ENDS, loads=[G])
    with pytest.raises(OffTheSlabError):
        answer.deflection_at(600, 900)


def test_a_slab_without_rests_under_its_middle_tips(plate: Plate) -> None:
    """Two legs at one end: an error with data, or a value among many cases."""
    legs = [PointSupport(100, 50), PointSupport(100, 450), PointSupport(300, 250)]
    with pytest.raises(SlabTipsError) as raised:
        plate.solve(supports=legs, loads=[G])
    assert raised.value.where_mm == pytest.approx((600, 250))
    assert raised.value.outside_mm == pytest.approx(300, abs=1)
    cases = plate.on(legs).cases([[G], [PatchLoad(x=200, y=250, length=50, width=50, newtons=9)]])
    assert cases.tips[0] is not None
    assert cases.tips[1] is None
    assert cases.worst_stresses()[0] == 0.0
    with pytest.raises(SlabTipsError):
        cases.answer(0)


def test_rests_on_one_line_tip(plate: Plate) -> None:
    """A slab balanced on a line has no answer."""
    with pytest.raises(SlabTipsError):
        plate.solve(supports=[LineSupport([(600, 0), (600, 500)])], loads=[G])


def test_a_clamped_line_holds_a_cantilever(plate: Plate) -> None:
    """One clamped end is enough; its moment is q L²/2 (statics)."""
    answer = plate.solve(supports=[LineSupport([(0, 0), (0, 500)], clamped=True)], loads=[G])
    assert answer.reactions[0] == pytest.approx(25e-6 * 40 * 1200 * 500)
    mean = np.mean([answer.moments_at(0.1, y)[0] for y in range(25, 500, 50)])
    assert mean == pytest.approx(-25e-6 * 40 * 1200**2 / 2, rel=0.03)


def test_a_rest_that_holds_down_keeps_an_overhang_from_tipping(plate: Plate) -> None:
    """The same two lines: loose they tip under a load at the tip, held they do not."""
    load = PatchLoad(x=1150, y=250, length=50, width=50, newtons=2000)
    lines = [[(0, 0), (0, 500)], [(500, 0), (500, 500)]]
    assert plate.on([LineSupport(p) for p in lines]).cases([[load]]).tips[0] is not None
    held = plate.solve(supports=[LineSupport(p, holds_down=True) for p in lines], loads=[load])
    assert held.reactions[0] < 0 < held.reactions[1]


def test_a_relief_is_weaker_and_lighter() -> None:
    """Half the thickness over a drainer: more stress there, less weight in all."""
    outline, drainer = box(0, 0, 1200, 500), box(450, 0, 750, 500)
    plain = Plate(outline, thickness_mm=40, e_mpa=33_000)
    thin = Plate(outline, thickness_mm=40, e_mpa=33_000, zones=[(drainer, 20)])
    before, after = (p.solve(supports=ENDS, loads=[G]) for p in (plain, thin))
    assert sum(after.reactions) == pytest.approx(25e-6 * (1200 * 500 * 40 - 300 * 500 * 20))
    assert after.worst_stress() > 1.5 * before.worst_stress()
    assert drainer.buffer(25).contains(Point(after.worst_stress().x_mm, after.worst_stress().y_mm))


def test_zones_of_full_thickness_change_nothing() -> None:
    """A zone as thick as the slab is only a line in the mesh."""
    outline = box(0, 0, 1200, 500)
    plain = Plate(outline, thickness_mm=40, e_mpa=33_000)
    zoned = Plate(outline, thickness_mm=40, e_mpa=33_000, zones=[(box(333, 80, 777, 420), 40)])
    one, two = (p.solve(supports=ENDS, loads=[G]) for p in (plain, zoned))
    assert two.deflection_at(600, 250) == pytest.approx(one.deflection_at(600, 250), rel=2e-3)


@pytest.mark.parametrize(
    "outline", [Polygon(), Polygon([(0, 0), (9, 9), (9, 0), (0, 9)]), box(0, 0, 0.5, 0.5)]
)
def test_an_outline_that_is_no_slab_is_refused(outline: Polygon) -> None:
    """A typed error, never a singular matrix."""
    with pytest.raises(OutlineUnusableError):
        Plate(outline, thickness_mm=40, e_mpa=33_000)


def test_stress_falls_where_there_is_nothing_to_bend(plate: Plate) -> None:
    """The field has one row a node and one column a case."""
    places, stress = plate.on(ENDS).cases([[G], [Pressure(1e-3)]]).stress_field()
    assert stress.shape == (len(places), 2)
    assert stress.min() > -1e-9
