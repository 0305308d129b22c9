"""Families of what is put right after it was said, with sizes that are drawn."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict
from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_strangers import Lengths, Sizes, hole, sizes
from support.strategies.enquiry_wordings import sizes_of

SAID: Final[dict[str, Any]] = phrases("enquiry_afterthoughts")


def _slab(s: Sizes, at: int = 0) -> Lengths:
    return sizes_of(s.l, s.w, s.t, f"/slabs/{at}")


TAKEN: Final[dict[str, Callable[[Sizes], Lengths]]] = {
    "radius_meant": lambda s: {
        "/slabs/0/outline/diameter": 2.0 * s.w,
        "/slabs/0/thickness": float(s.t),
    },
    "other_side": lambda s: _slab(s) | hole("0/0", length=s.a, width=s.b, x=s.x, y=s.y),
    "hole_left_out": lambda s: _slab(s) | hole("0/0", length=s.a, width=s.b, x=s.x, y=s.y),
    "numbers_put_right": _slab,
    "one_tap_after_all": lambda s: _slab(s) | hole("0/0", diameter=s.d, x=s.x, y=s.w - s.z),
    "opinions_taken": _slab,
    "makes_it": _slab,
    "leg_put_right": lambda s: (
        sizes_of(s.l, s.m, s.t, "/slabs/0")
        | {
            "/slabs/0/outline/notch/length": float(s.l - s.v),
            "/slabs/0/outline/notch/width": float(s.m - s.v),
        }
    ),
    "settled_for_gaps": _slab,
    "same_two": lambda s: _slab(s) | sizes_of(s.m, s.w, s.t, "/slabs/1"),
    "under_window": lambda s: _slab(s) | hole("0/0", length=s.a, width=s.b, x=s.x + s.m / 2, y=s.y),
    "converted_otherwise": lambda s: {
        "/slabs/0/outline/width": float(s.w),
        "/slabs/0/thickness": float(s.t),
    },
    "under_unknown_window": lambda s: _slab(s) | hole("0/0", length=s.a, width=s.b),
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
        "half": said.w,
        "r": said.l - said.x,
        "old": said.t - 5,
        "wrong": said.l + 40,
        "wrong_w": said.w + 20,
        "wrong_m": said.m + 40,
        "near": said.l + 12,
        "short": said.l + said.x,
    }
