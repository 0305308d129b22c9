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


def _round_basin(s: Sizes) -> Lengths:
    return _slab(s) | hole("0/0", diameter=s.b, x=s.x, y=s.y)


def _cut_out(s: Sizes) -> Lengths:
    return _slab(s) | hole("0/0", length=s.a, width=s.b, x=s.x, y=s.y)


def _tops_by_name(s: Sizes) -> Lengths:
    return (
        _slab(s)
        | sizes_of(s.m, s.v, s.t, "/slabs/1")
        | hole("0/0", length=s.a, width=s.b, x=s.m, y=s.y)
        | hole("1/0", diameter=s.d, x=s.x, y=s.y)
        | sizes_of(1215, 585, s.t, "/slabs/2")
    )


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
    "tops_by_name": _tops_by_name,
    "named_by_word": lambda s: (
        _slab(s) | sizes_of(s.m, s.v, 25, "/slabs/1") | sizes_of(s.m + 40, s.v, 25, "/slabs/2")
    ),
    "leg_by_leg_table": lambda s: (
        sizes_of(s.l, 1650, s.t, "/slabs/0")
        | {
            "/slabs/0/outline/notch/length": s.l - s.w - 15.0,
            "/slabs/0/outline/notch/width": 1650.0 - s.w,
        }
    ),
    "ends_in_i": _slab,
    "long_lines_of_a_note": lambda s: (
        _slab(s)
        | hole("0/0", length=560, width=490, x=s.m, y=s.w / 2)
        | hole("0/1", length=s.a, width=s.b, x=s.x, y=s.y)
    ),
    "answers_below": _slab,
    "said_why_not": _slab,
    "thinks_in_units": _slab,
    "none_of_a_list": _slab,
    "german_letters": _slab,
    "high_is_thick": lambda s: _slab(s) | sizes_of(s.m, s.v, s.t, "/slabs/1"),
    "like_another": _slab,
    "pardon": _slab,
    "goes_to": _slab,
    "list_at_the_end": lambda s: (
        _slab(s) | hole("0/0", diameter=s.b, x=s.x, y=s.y) | hole("0/1", diameter=s.d, x=s.x, y=s.v)
    ),
    "drains_away": _round_basin,
    "service_comes_up": _round_basin,
    "taken_away": _slab,
    "by_the_metre": lambda s: {"/slabs/0/thickness": float(s.t)},
    "maker_says_cut": _cut_out,
    "agreed_then_changed": _cut_out,
    "lettered_offers": _slab,
    "comma_table": lambda s: _slab(s) | sizes_of(s.m, s.v, 20, "/slabs/1"),
    "marks_in_a_table": lambda s: (
        _cut_out(s) | hole("0/1", diameter=s.d, x=s.x, y=540) | sizes_of(s.m, s.v, 20, "/slabs/1")
    ),
    "letters_by_size": lambda s: _slab(s) | sizes_of(s.m, s.v, s.t, "/slabs/1"),
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
        "wrong": said.l + 150,
        "wrong_w": said.w + 40,
        "near": said.m + 40,
        "thin": 25,
        "v2": said.w + 15,
        "small": said.z + 20,
        "r": said.l - said.x,
    }
