"""Families of remarks about sizes: whose word they are, what is put right, what they run to."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict
from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_strangers import Lengths, Sizes, hole, sizes
from support.strategies.enquiry_wordings import sizes_of

SAID: Final[dict[str, Any]] = phrases("enquiry_remarks")


def _slab(s: Sizes, at: int = 0) -> Lengths:
    return sizes_of(s.l, s.w, s.t, f"/slabs/{at}")


def _bore(s: Sizes) -> Lengths:
    return _slab(s) | hole("0/0", diameter=s.d, x=s.x, y=s.y)


TAKEN: Final[dict[str, Callable[[Sizes], Lengths]]] = {
    "tradesman_says": _slab,
    "put_right_after_a_dash": _slab,
    "from_the_other_side": lambda s: _slab(s) | hole("0/0", diameter=s.b, x=s.l - s.x, y=s.y),
    "small_square": lambda s: (
        _slab(s) | hole("0/0", length=s.z + 20, width=s.z + 20, x=s.l - s.x, y=s.y)
    ),
    "unit_ends_it": _bore,
    "about_others": _slab,
    "over_the_units": lambda s: sizes_of(s.l + 40, s.w, s.t),
    "old_one_beside": _slab,
    "ends_in_i": _slab,
    "hole_of_its_own": lambda s: (
        _slab(s)
        | hole("0/0", length=s.a, width=s.b, x=s.x, y=s.y)
        | hole("0/1", diameter=s.d, x=s.m, y=s.w - s.z)
    ),
}


@st.composite
def told(draw: st.DrawFn, family: str) -> Several:
    """A message of a family with what a careful maker takes from it."""
    said = draw(sizes())
    text = draw(st.sampled_from(SAID[family])).format(**_written(said))
    return Several(text, TAKEN[family](said))


def _written(said: Sizes) -> dict[str, Any]:
    """Return sizes by their letters, and those that wordings have besides."""
    return asdict(said) | {
        "slab": f"{said.l} x {said.w} x {said.t} mm",
        "old": said.t - 5,
        "small": said.z + 20,
        "r": said.l - said.x,
    }
