"""Families of what strangers wrote: each is told in many wordings, with sizes that are drawn."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict, dataclass
from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import sizes_of

SAID: Final[dict[str, Any]] = phrases("enquiry_strangers")
Lengths = dict[str, float]


@dataclass(frozen=True, slots=True)
class Sizes:
    """Sizes in millimetres that a family's wordings name by a letter.

    ``l``, ``w``, ``t``: a slab's; ``m``, ``v``: the length and width of a shorter one. ``a``,
    ``b``: a cut-out's; ``d``: a bore's. ``x``, ``y``: a place from the left and the front; ``z``:
    from the back.
    """

    l: int  # noqa: E741  its letter in the wordings
    w: int
    t: int
    m: int
    v: int
    a: int
    b: int
    d: int
    x: int
    y: int
    z: int


@st.composite
def sizes(draw: st.DrawFn) -> Sizes:
    """Draw sizes of which no two can be taken for one another."""
    return Sizes(
        l=draw(st.integers(190, 320)) * 10,
        w=draw(st.integers(59, 72)) * 10,
        t=draw(st.sampled_from((30, 40, 50))),
        m=draw(st.integers(100, 170)) * 10,
        v=draw(st.integers(40, 55)) * 10,
        a=draw(st.integers(42, 56)) * 10,
        b=draw(st.integers(30, 40)) * 10,
        d=draw(st.integers(28, 45)),
        x=draw(st.integers(40, 48)) * 10,
        y=draw(st.integers(26, 32)) * 10,
        z=draw(st.integers(6, 9)) * 10,
    )


def hole(at: str, **told: float) -> Lengths:
    """Return the sizes and the place of an opening, ``0/0`` for the first one of the first slab."""
    slab, opening = at.split("/")
    start = f"/slabs/{slab}/cutouts/{opening}"
    names = {"x": "centre/x", "y": "centre/y"}
    return {f"{start}/{names.get(key, key)}": float(mm) for key, mm in told.items()}


def _slab(s: Sizes, at: int = 0) -> Lengths:
    return sizes_of(s.l, s.w, s.t, f"/slabs/{at}")


def _both(s: Sizes) -> Lengths:
    return _slab(s) | sizes_of(s.m, s.w, s.t, "/slabs/1")


def _twice(s: Sizes) -> Lengths:
    return _slab(s) | _slab(s, 1)


def _sink(s: Sizes, at: str) -> Lengths:
    return hole(at, length=s.a, width=s.b, x=s.x, y=s.y)


def _two(s: Sizes, at: float, mm: float, *, first: int = 0) -> Lengths:
    """Return two bores alike so far to either side of a place."""
    return hole(f"0/{first}", diameter=s.d, x=at - mm, y=s.w - s.z) | hole(
        f"0/{first + 1}", diameter=s.d, x=at + mm, y=s.w - s.z
    )


TAKEN: Final[dict[str, Callable[[Sizes], Lengths]]] = {
    "nothing_more": _slab,
    "fitting_refused": _slab,
    "no_postcode_asked": _slab,
    "sums": lambda s: sizes_of(s.l, s.w + 20, s.t),
    "settled_lengths": _slab,
    "as_thin": _slab,
    "same_as_old": _slab,
    "slips": _slab,
    "steps": lambda s: sizes_of(s.m, s.v, s.t),
    "three_by_letter": lambda s: _both(s) | _sink(s, "0/0"),
    "on_its_own_line": lambda s: (
        _both(s) | _sink(s, "0/0") | hole("0/1", diameter=s.d, x=s.x, y=s.w - s.z)
    ),
    "runs_by_name": lambda s: _both(s) | _sink(s, "0/0"),
    "numbered_anew": lambda s: _both(s) | _sink(s, "0/0"),
    "one_of_two": lambda s: _twice(s) | _sink(s, "0/0") | hole("1/0", diameter=s.d, x=s.x, y=s.y),
    "cut_up": lambda s: sizes_of(s.l, s.w, s.t) | sizes_of(s.m, s.w, s.t, "/slabs/1"),
    "longer_ones": lambda s: sizes_of(s.v, s.v, s.t) | sizes_of(s.m, s.v, s.t, "/slabs/1"),
    "apart": lambda s: _slab(s) | _two(s, s.l / 2, s.x / 2),
    "from_its_end": lambda s: (
        _slab(s)
        | hole("0/0", diameter=s.d, x=s.x, y=s.w - s.z)
        | hole("0/1", diameter=s.d, x=s.l - s.x, y=s.w - s.z)
    ),
    "beside_the_sink": lambda s: (
        _slab(s)
        | hole("0/0", length=s.a, width=s.b, x=s.l / 2, y=s.y)
        | _two(s, s.l / 2, s.x, first=1)
    ),
    "vessels": lambda s: (
        _slab(s)
        | hole("0/0", diameter=s.d, x=s.x, y=s.y)
        | hole("0/1", diameter=s.d, x=s.l - s.x, y=s.y)
        | hole("0/2", diameter=35, x=s.x, y=s.w - s.z)
        | hole("0/3", diameter=35, x=s.l - s.x, y=s.w - s.z)
    ),
    "sockets": lambda s: (
        _slab(s)
        | hole("0/0", length=145, width=85, x=s.x, y=s.y)
        | hole("0/1", length=145, width=85, x=s.m, y=s.y)
    ),
    "kinds_of_hob": lambda s: _slab(s) | _sink(s, "0/0"),
    "cut_by_template": lambda s: _slab(s) | _sink(s, "0/0"),
    "from_a_rim": lambda s: (
        {"/slabs/0/outline/diameter": float(s.m), "/slabs/0/thickness": float(s.t)}
        | {f"/slabs/0/cutouts/{i}/diameter": float(s.d) for i in range(2)}
    ),
    "middle_of_it": lambda s: _slab(s) | _sink(s, "0/0"),
    "things_beside": _slab,
    "middle_one": lambda s: (
        sizes_of(s.m, s.w, s.t)
        | _slab(s, 1)
        | sizes_of(s.l + 12, s.w, s.t, "/slabs/2")
        | _sink(s, "1/0")
    ),
    "for_a_pipe": lambda s: _slab(s) | hole("0/0", diameter=s.d, x=s.x, y=s.w - s.z),
    "made_for": _slab,
    "places_after": lambda s: _slab(s) | hole("0/0", diameter=s.a, x=s.x, y=s.y),
    "cills_by_room": _both,
    "at_places": lambda s: _slab(s) | hole("0/0", diameter=s.d, x=s.x, y=s.w - s.z),
    "distances": lambda s: _slab(s) | hole("0/0", diameter=s.d),
    "by_teil": lambda s: _both(s) | _sink(s, "0/0"),
    "middle_of_three": lambda s: _twice(s) | _sink(s, "0/0"),
    "concluded": _slab,
    "short_one_has": lambda s: _both(s) | _sink(s, "1/0"),
    "rooms_as_labels": _both,
    "lettered_in_line": lambda s: _both(s) | _sink(s, "0/0"),
    "four_corners": lambda s: (
        _slab(s)
        | hole("0/0", diameter=s.d, x=s.x, y=s.z)
        | hole("0/1", diameter=s.d, x=s.l - s.x, y=s.z)
        | hole("0/2", diameter=s.d, x=s.x, y=s.w - s.z)
        | hole("0/3", diameter=s.d, x=s.l - s.x, y=s.w - s.z)
    ),
    "nearest_edge": lambda s: (
        _slab(s) | hole("0/0", length=s.a, width=s.b, x=s.z + s.a / 2, y=s.w / 2)
    ),
    "one_more": lambda s: (
        _slab(s)
        | hole("0/0", diameter=s.d, x=s.x, y=s.w - s.z)
        | hole("0/1", diameter=200, x=s.m, y=s.y)
    ),
    "halves": lambda s: sizes_of((s.l + s.m) / 2, s.w, s.t),
    "goes_on": lambda s: _both(s) | _sink(s, "0/0"),
    "german_letters": lambda s: _both(s) | _sink(s, "0/0"),
    "all_good_but": _slab,
    "three_sizes_in_a_column": lambda s: _both(s) | _sink(s, "0/0"),
    "hole_of_a_row": lambda s: _both(s) | hole("0/0", diameter=s.d, x=s.l / 2, y=s.w / 2),
    "left_and_right_one": lambda s: (
        _both(s) | _sink(s, "0/0") | sizes_of(s.l + 12, s.w, s.t, "/slabs/2")
    ),
    "wastes_of_bowls": lambda s: (
        _slab(s)
        | hole("0/0", diameter=s.d, x=s.x, y=s.y)
        | hole("0/1", diameter=50, x=s.m, y=s.w - s.z)
    ),
    "now_and_was": lambda s: _slab(s) | hole("0/0", length=s.a, width=s.b, x=s.m, y=s.y),
    "upright_items": lambda s: _slab(s) | sizes_of(s.l, 120, 20, "/slabs/1"),
    "goes_behind": lambda s: sizes_of(s.m, s.w, s.t),
    "led_by_dashes": _both,
    "one_round": lambda s: _slab(s) | hole("0/0", diameter=s.d, x=s.x, y=s.w - s.z),
    "not_so_far_left": lambda s: (
        _slab(s)
        | hole("0/0", diameter=340, x=s.m, y=s.y)
        | hole("0/1", diameter=s.d, x=s.m - 230, y=s.w - s.z)
    ),
    "said_in_passing": _slab,
    "named_afterwards": lambda s: _slab(s) | hole("0/0", diameter=s.d, x=s.l / 2, y=s.w / 2),
    "feet_by": lambda s: sizes_of(6 * 304.8, 3 * 304.8, s.t),
    "others_have": _slab,
    "more_than_old": lambda s: sizes_of(s.m + 100, s.w, s.t),
    "measured_again": _slab,
    "with_a_reason": _slab,
    "as_the_first": _both,
}


@st.composite
def told(draw: st.DrawFn, family: str) -> Several:
    """A message of a family with what a careful maker takes from it."""
    said = draw(sizes())
    text = draw(st.sampled_from(SAID[family])).format(**_written(said))
    return Several(text, TAKEN[family](said))


def _written(said: Sizes) -> dict[str, Any]:
    """Return sizes by their letters, and those that wordings have besides."""
    whole = asdict(said)
    return whole | {
        "all": said.l + said.m,
        "less": said.w,
        "more": said.w + 20,
        "slab": f"{said.l} x {said.w} x {said.t} mm",
        "near": said.l + 12,
        "other": said.w - 170,
        "r": said.l - said.x,
    }
