"""Rests push and never pull."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pytest
from shapely.geometry import box

from ledgerstone.errors import ContactNotSettledError
from ledgerstone.strength import LineSupport, OwnWeight, PatchLoad, Plate, PointSupport, contact
from ledgerstone.strength._exchange import solved_each
from ledgerstone.strength._together import Contact

G = OwnWeight(25e-6)


def rests(
    corners: Sequence[tuple[float, float]], pushes_only: Sequence[bool] | None = None
) -> contact.SupportFlexibility:
    """Rests of a made-up slab whose flexibility falls with distance."""
    places = np.asarray(corners, dtype=float)
    away = np.hypot(*(places[:, None] - places[None]).transpose(2, 0, 1))
    rigid = np.column_stack([np.ones(len(places)), places])
    only = np.ones(len(places), dtype=bool) if pushes_only is None else np.asarray(pushes_only)
    return contact.rests_of(np.exp(-away), rigid, only)


SQUARE: list[tuple[float, float]] = [(0, 0), (1, 0), (1, 1), (0, 1)]


def pull(load: float, x: float, y: float) -> np.ndarray:
    """Force and moments of a load at a place."""
    return np.array([load, load * x, load * y], dtype=float)


def test_three_rests_share_by_statics() -> None:
    """Nothing but balance decides: the shares are area coordinates (statics)."""
    found = contact.balance_of(rests([(0, 0), (1, 0), (0, 1)]), np.zeros(3), pull(10, 0.2, 0.3))
    assert found.reactions == pytest.approx([5.0, 2.0, 3.0])


def test_a_load_outside_the_hull_leaves_an_imbalance() -> None:
    """Inside, nothing; outside, something."""
    square = rests(SQUARE)
    assert contact.imbalance(square, pull(10, 0.5, 0.5)) < 1e-9
    assert contact.imbalance(square, pull(10, 1.0, 0.5)) < 1e-9
    assert contact.imbalance(square, pull(10, 1.1, 0.5)) > 1e-3


def test_a_rest_that_holds_down_may_pull() -> None:
    """The same load is carried once the far rests hold down."""
    held = rests(SQUARE, [False, True, True, False])
    found = contact.balance_of(held, np.zeros(4), pull(10, 1.5, 0.5))
    assert found.reactions[[0, 3]].max() < 0
    assert found.reactions.sum() == pytest.approx(10)


def test_rests_on_one_line_do_not_span() -> None:
    """Their hull has no width."""
    assert rests(SQUARE).spans
    assert not rests([(0, 0), (1, 1), (2, 2), (3, 3)]).spans


def test_held_rests_that_cannot_balance_a_load_are_reported() -> None:
    """Rests that all hold down, on one line, have no answer to a load beside it, and say so."""
    line = np.array([[1.0, 0.0, 0.0], [1.0, 100.0, 0.0], [1.0, 200.0, 0.0]])
    rests = contact.rests_of(1e-3 * np.eye(3), line, np.zeros(3, dtype=bool))
    with pytest.raises(ContactNotSettledError):
        contact.balance_of(rests, np.zeros(3), np.array([100.0, 100.0, 5000.0]))


def test_cases_settled_together_and_alone_agree() -> None:
    """However many others a case is settled with, its reactions are its own, random problems."""
    rng = np.random.default_rng(7)
    for _ in range(60):
        places = rng.uniform(0, 1, (rng.integers(4, 24), 2))
        some = rests(places.tolist(), (rng.random(len(places)) < 0.9).tolist())
        free = rng.normal(size=(len(places), 9))
        shares = rng.dirichlet(np.ones(len(places)), 9)
        loads = 5.0 * np.vstack([np.ones(9), (shares @ places).T])
        together = Contact(some).balances(free, loads)
        for k, found in enumerate(together):
            alone = contact.balance_of(some, free[:, k], loads[:, k])
            assert found.reactions == pytest.approx(alone.reactions, abs=1e-6)
            assert found.motion == pytest.approx(alone.motion, abs=1e-6)


def test_where_a_case_begins_does_not_change_where_it_settles() -> None:
    """Low rests first taken apart, or other rests' cases first looked at: the same reactions."""
    rng = np.random.default_rng(11)
    for _ in range(40):
        places = rng.uniform(0, 1, (rng.integers(6, 24), 2))
        some = rests(places.tolist())
        softer = contact.rests_of(some.flexibility, some.rigid, some.pushes_only)
        gaps = (rng.random((len(places), 8)) < 0.3) * rng.uniform(0.0, 2.0, (len(places), 8))
        free = rng.normal(size=(len(places), 8)) - gaps
        shares = rng.dirichlet(np.ones(len(places)), 8)
        loads = 5.0 * np.vstack([np.ones(8), (shares @ places).T])
        other = Contact(softer)
        other.balances(rng.normal(size=free.shape), loads)
        wanted = Contact(some).balances(free, loads)
        for begun in (
            Contact(some).balances(free, loads, gaps > 0.0),
            Contact(some, other).balances(free, loads),
            Contact(some, other).balances(free, loads, np.ones_like(gaps, dtype=bool)),
        ):
            for one, found in zip(wanted, begun, strict=True):
                assert found.reactions == pytest.approx(one.reactions, abs=1e-6)
                assert found.motion == pytest.approx(one.motion, abs=1e-6)


def test_a_case_without_an_answer_spoils_no_other() -> None:
    """Two systems of which the first is singular: the second is solved (by hand)."""
    matrices = np.array([[[1.0, 1.0], [1.0, 1.0]], [[2.0, 0.0], [0.0, 4.0]]])
    found = solved_each(matrices, np.array([[1.0, 2.0], [2.0, 2.0]]))
    assert np.isnan(found[0]).all()
    assert found[1].tolist() == [1.0, 0.5]


def test_coincident_rests_share_their_load() -> None:
    """Two rests in one place are no singular matrix."""
    found = contact.balance_of(rests([*SQUARE, (0, 0)]), np.zeros(5), pull(8, 0.5, 0.5))
    assert found.reactions.sum() == pytest.approx(8)
    assert found.reactions[0] == pytest.approx(found.reactions[4], rel=1e-4)


@pytest.fixture(scope="module")
def plate() -> Plate:
    """A 2 by 0.6 m slab, 40 mm."""
    return Plate(box(0, 0, 2000, 600), thickness_mm=40, e_mpa=33_000)


def lines(*at: float) -> list[LineSupport]:
    """Loose lines across the slab."""
    return [LineSupport([(x, 0), (x, 600)]) for x in at]


def test_a_slab_lifts_off_a_rest_that_a_load_levers_up(plate: Plate) -> None:
    """A load on the overhang lifts the slab off its middle rest; the others carry (statics)."""
    rested = plate.on(lines(50, 1000, 1500))
    load = PatchLoad(x=1950, y=300, length=50, width=500, newtons=1000)
    answer = rested.cases([[OwnWeight(25e-6), load]]).answer(0)
    weight = 25e-6 * 40 * 2000 * 600
    far = (1500 * (weight + 1000) - weight * 1000 - 1000 * 1950) / 1450
    assert answer.reactions[1] == pytest.approx(0, abs=1e-6)
    assert answer.deflection_at(1000, 300) < 0
    assert answer.reactions[0] == pytest.approx(far)


def test_a_low_middle_rest_carries_less_and_raises_the_stress(plate: Plate) -> None:
    """2 mm low under a stiff slab it carries nothing; level it carries the most (statics)."""
    rested = plate.on(lines(0, 1000, 2000))
    level, low = (rested.cases([[G]], gaps_mm=g).answer(0) for g in (None, [0, 2.0, 0]))
    assert level.reactions[1] > level.reactions[0]
    assert low.reactions[1] < level.reactions[1]
    assert low.worst_stress() > level.worst_stress()
    assert low.deflection_at(1000, 300) <= 2.0 + 1e-6


def test_a_gap_that_closes_is_closed_to_the_last_digit(plate: Plate) -> None:
    """0.1 mm low: the slab comes down on to it and no further."""
    rested = plate.on(lines(0, 1000, 2000))
    answer = rested.cases([[G]], gaps_mm=[0, 0.1, 0]).answer(0)
    assert answer.reactions[1] > 0
    assert answer.deflection_at(1000, 300) == pytest.approx(0.1, abs=0.005)


def test_a_slab_that_is_one_beam_over_three_rests_shares_as_the_textbook() -> None:
    """3/16, 10/16, 3/16 of the load on two equal spans; a plate 2 % (beam formula)."""
    strip = Plate(box(0, 0, 2400, 200), thickness_mm=40, e_mpa=33_000, nu=0.0)
    supports = [LineSupport([(x, 0), (x, 200)]) for x in (0, 1200, 2400)]
    found = np.array(strip.solve(supports=supports, loads=[G]).reactions)
    assert found / found.sum() == pytest.approx([3 / 16, 10 / 16, 3 / 16], rel=0.02)


def test_five_legs_never_pull(plate: Plate) -> None:
    """One leg in the middle of four, loaded at a corner."""
    legs = [
        PointSupport(x, y) for x, y in ((50, 50), (1950, 50), (50, 550), (1950, 550), (1000, 300))
    ]
    load = PatchLoad(x=80, y=80, length=50, width=50, newtons=3000)
    answer = plate.solve(supports=legs, loads=[G, load])
    assert min(answer.reactions) >= 0
    assert sum(answer.reactions) == pytest.approx(3000 + 25e-6 * 40 * 2000 * 600)
