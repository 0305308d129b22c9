"""Families of choices: several sizes are offered and one is picked, or one of several differs."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict
from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_strangers import Lengths, Sizes, hole, sizes
from support.strategies.enquiry_wordings import sizes_of

SAID: Final[dict[str, Any]] = phrases("enquiry_picked")


def _first(s: Sizes) -> Lengths:
    return sizes_of(s.l, s.w, s.t)


def _second(s: Sizes, at: int = 0) -> Lengths:
    return sizes_of(s.m, s.w, s.t, f"/slabs/{at}")


def _shared(s: Sizes) -> Lengths:
    return {"/slabs/0/outline/width": float(s.w), "/slabs/0/thickness": float(s.t)}


TAKEN: Final[dict[str, Callable[[Sizes], Lengths]]] = {
    "picks_second": _second,
    "picks_first": _first,
    "picks_thickness": _first,
    "picks_none": lambda s: {
        "/slabs/0/outline/width": float(s.w),
        "/slabs/0/thickness": float(s.t),
    },
    "keeps_both": lambda s: _first(s) | _second(s, 1),
    "from_below": lambda s: _first(s) | hole("0/0", diameter=300, x=s.l / 2, y=s.y),
    "middle_or_not": lambda s: _first(s) | hole("0/0", diameter=s.d, y=s.w / 2),
    "one_differs": lambda s: _first(s) | _second(s, 1),
    "one_bored": lambda s: (
        _first(s) | sizes_of(s.l, s.w, s.t, "/slabs/1") | hole("1/0", diameter=s.d)
    ),
}


def written(said: Sizes) -> dict[str, Any]:
    """Return sizes by their letters, and those that wordings have besides."""
    return asdict(said) | {
        "slab": f"{said.l} x {said.w} x {said.t}",
        "less": f"{said.m} x {said.w} x {said.t}",
        "thin": said.t - 10,
    }


@st.composite
def told(draw: st.DrawFn, family: str) -> Several:
    """A message of a family with what a careful maker takes from it."""
    said = draw(sizes())
    text = draw(st.sampled_from(SAID[family])).format(**written(said))
    return Several(text, TAKEN[family](said))
