"""Families of what is written in another language's words or marks, with sizes that are drawn."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict
from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_strangers import Lengths, Sizes, hole, sizes
from support.strategies.enquiry_wordings import sizes_of

SAID: Final[dict[str, Any]] = phrases("enquiry_abroad")


def _slab(s: Sizes) -> Lengths:
    return sizes_of(s.l, s.w, s.t, "/slabs/0")


TAKEN: Final[dict[str, Callable[[Sizes], Lengths]]] = {
    "apostrophes": _slab,
    "by_abroad": _slab,
    "facets": _slab,
    "listed_holes": lambda s: (
        _slab(s)
        | hole("0/0", length=s.a, width=s.b, x=s.x, y=s.y)
        | hole("0/1", diameter=s.d, x=s.x, y=s.w - s.z)
    ),
    "blanks": lambda s: _slab(s) | hole("0/0", length=s.a, width=s.b, x=s.l - 500, y=s.y),
    "round_by_the_way": lambda s: {
        "/slabs/0/outline/diameter": float(s.m),
        "/slabs/0/thickness": float(s.t),
    },
    "cable_slots": lambda s: _slab(s) | hole("0/0", length=s.a, width=s.d, x=s.l / 2, y=s.w - s.z),
}


@st.composite
def told(draw: st.DrawFn, family: str) -> Several:
    """A message of a family with what a careful maker takes from it."""
    said = draw(sizes())
    text = draw(st.sampled_from(SAID[family])).format(**_written(said))
    return Several(text, TAKEN[family](said))


def _written(said: Sizes) -> dict[str, Any]:
    """Return sizes by their letters, in metres with an apostrophe, and in centimetres."""
    metres = {"L": f"{said.l / 1000:.2f}", "W": f"{said.w / 1000:.2f}"}
    whole = asdict(said) | {key: text.replace(".", "'") for key, text in metres.items()}
    whole |= {f"{key.upper()}c": f"{getattr(said, key) / 10:g}" for key in "lwtz"}
    blanks = {"lb": said.l, "rb": said.l - 500}
    whole |= {key: f"{mm:,}".replace(",", " ") for key, mm in blanks.items()}
    whole |= {"Lr": f"{said.m / 10:g}"}
    return whole | {"slab": f"{said.l} x {said.w} x {said.t} mm"}
