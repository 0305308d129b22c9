"""Laws of the verdict on a slab: what grows on it never lets it be used less, 1 % for the mesh."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise
from typing import Final

import pytest

from ledgerstone.workshop import Workshop
from support.documents import Json
from support.strategies.growing_slabs import GROWING, GrowingSlabs, longer_overhang
from support.used import in_place_used
from support.whole_orders import in_place

EVERYDAY: Final = 2
LONG: Final = range(EVERYDAY, 300)
BEYOND: Final = ("somebody-standing", "somebody-sitting", "somebody-leaning")
MESH: Final = 0.99
NEAR_MM: Final = 100  # of the last rest: where a slab cracks that hangs over


def _falls(found: Sequence[float]) -> bool:
    return any(later < MESH * before for before, later in pairwise(found))


def _never_less(kind: GrowingSlabs, seeds: Iterable[int], workshop: Workshop) -> None:
    found = {seed: [in_place_used(slab, workshop) for slab in kind(seed)] for seed in seeds}
    assert {seed: used for seed, used in found.items() if _falls(used)} == {}


def _used_beyond(slab: Json, workshop: Workshop) -> float:
    """How far the places beyond the last unit are used."""
    last = sum(unit["width"] for unit in slab["rests"]["units"])
    beyond = [
        verdict.utilisation
        for case, verdict in in_place(workshop, slab).items()
        if case in BEYOND and verdict.where_mm[0] > last - NEAR_MM
    ]
    return max(beyond, default=0.0)


def _never_less_beyond(seeds: Iterable[int], workshop: Workshop) -> None:
    found = {s: [_used_beyond(slab, workshop) for slab in longer_overhang(s)] for s in seeds}
    assert {seed: used for seed, used in found.items() if _falls(used)} == {}


@pytest.mark.parametrize("kind", GROWING)
def test_what_grows_is_never_used_less(kind: GrowingSlabs, workshop: Workshop) -> None:
    """A thinner slab, a longer span, a longer opening."""
    _never_less(kind, range(EVERYDAY), workshop)


def test_a_longer_overhang_is_never_used_less(workshop: Workshop) -> None:
    """At the places beyond the rests, whose lever grows."""
    _never_less_beyond(range(EVERYDAY), workshop)


@pytest.mark.long
@pytest.mark.parametrize("kind", GROWING)
def test_hundreds_that_grow_are_never_used_less(kind: GrowingSlabs, workshop: Workshop) -> None:
    """The same on series that are not in the everyday run."""
    _never_less(kind, LONG, workshop)


@pytest.mark.long
def test_hundreds_of_longer_overhangs_are_never_used_less(workshop: Workshop) -> None:
    """The same on series that are not in the everyday run."""
    _never_less_beyond(LONG, workshop)
