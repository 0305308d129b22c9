"""Families in which a size has several readings, or a slab several names, of which one is meant."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import SLAB, a_slab, lengths_of, sizes_of

SAID: Final[dict[str, Any]] = phrases("enquiry_weighed")
ASK: Final = "Please quote for a worktop {} x {} x {} mm."


def _said(draw: st.DrawFn, family: str) -> str:
    return str(draw(st.sampled_from(SAID[family])))


def _hole(draw: st.DrawFn, length: int, width: int) -> dict[str, int]:
    """A rectangular opening and its middle, mm, on a slab of a length and a width."""
    along, deep = draw(st.integers(40, 56)) * 10, draw(st.integers(34, 40)) * 10
    x = draw(st.integers(along // 2 + 60, length - along // 2 - 60)) // 10 * 10
    return {"ol": along, "ow": deep, "x": x, "y": width // 20 * 10}


def _opening(hole: Mapping[str, float], at: str = f"{SLAB}/cutouts/0") -> dict[str, float]:
    keys = {"ol": "length", "ow": "width", "x": "centre/x", "y": "centre/y"}
    return {f"{at}/{key}": float(hole[name]) for name, key in keys.items()}


@st.composite
def with_asides(draw: st.DrawFn) -> Several:
    """A slab, and a sentence whose sizes are of something else."""
    slab = draw(a_slab())
    a, b = draw(st.integers(38, 48)) * 10 + 5, draw(st.integers(70, 110)) * 10 + 5
    aside = _said(draw, "asides").format(a=a, b=b, small=draw(st.integers(10, 18)) * 10)
    return Several(f"{ASK.format(*slab)} {aside}", lengths_of(slab))


@st.composite
def old_and_new(draw: st.DrawFn) -> Several:
    """A new slab beside the old one, each with three sizes."""
    slab = draw(a_slab())
    text = _said(draw, "old_and_new").format(
        l=slab[0], w=slab[1], t=slab[2], a=slab[0] - 35, b=slab[1] - 25
    )
    return Several(f"Please quote. {text}", lengths_of(slab))


@st.composite
def unknown(draw: st.DrawFn) -> Several:
    """A slab by a name that no table need have."""
    length, width = draw(st.integers(60, 120)) * 10, draw(st.integers(30, 58)) * 10
    slab = (length, width, draw(st.sampled_from((50, 60, 75))))
    text = _said(draw, "unknown").format(
        noun=draw(st.sampled_from(SAID["nouns"])), l=slab[0], w=slab[1], t=slab[2]
    )
    return Several(text, lengths_of(slab))


def _two(draw: st.DrawFn) -> dict[str, int]:
    """Two slabs of which no size of one is the other's, mm."""
    sizes = {"l": draw(st.integers(200, 300)) * 10, "w": draw(st.sampled_from((600, 620, 640)))}
    sizes |= {"m": draw(st.integers(140, 190)) * 10, "n": draw(st.sampled_from((800, 900, 950)))}
    return sizes | {"t": draw(st.sampled_from((30, 40, 50)))}


@st.composite
def told_of_one(draw: st.DrawFn) -> Several:
    """Two slabs, then an opening that a sentence puts in one of them, named before or last."""
    sizes = _two(draw)
    slabs = _said(draw, "two_slabs")
    it = draw(st.sampled_from(("worktop", "island")))
    whose = (sizes["l"], sizes["w"]) if it == "worktop" else (sizes["m"], sizes["n"])
    hole = _hole(draw, *whose)
    what = draw(st.sampled_from(("sink", "hob")))
    told = _said(draw, "told_of")
    told = told.format(it=it, hole=what.capitalize() if told.startswith("{") else what, **hole)
    places = sorted(("worktop", "island"), key=slabs.index)
    text = f"{slabs.format(**sizes)} {told}"
    return Several(
        text, _both(sizes, places.index("worktop")) | _opening_of(hole, places.index(it))
    )


def _both(sizes: dict[str, int], first: int) -> dict[str, float]:
    """The sizes of both slabs by their pointers, the longer at its place in the order."""
    longer = sizes_of(sizes["l"], sizes["w"], sizes["t"], f"/slabs/{first}")
    return longer | sizes_of(sizes["m"], sizes["n"], sizes["t"], f"/slabs/{1 - first}")


def _opening_of(hole: Mapping[str, float], place: int) -> dict[str, float]:
    return _opening(hole, f"/slabs/{place}/cutouts/0")


@st.composite
def lettered(draw: st.DrawFn) -> Several:
    """Two slabs by their letters, and an opening in one."""
    sizes, place = _two(draw), draw(st.integers(0, 1))
    whose = (sizes["l"], sizes["w"]) if place == 0 else (sizes["m"], sizes["n"])
    hole, told = _hole(draw, *whose), _said(draw, "lettered")
    it = ("ab" if told.startswith("a") else "AB")[place]
    text = f"Please price these:\n\n{told.format(it=it, **sizes, **hole)}"
    return Several(text, _both(sizes, 0) | _opening_of(hole, place))


@st.composite
def in_centimetres(draw: st.DrawFn) -> Several:
    """A slab whose numbers are all centimetres, those of its opening's place too."""
    slab = draw(a_slab())
    hole = _hole(draw, *slab[:2])
    hole["x"] = min(hole["x"], 5 * hole["ol"] - 20)  # as millimetres it would stick out
    cm = {"l": slab[0] // 10, "w": slab[1] // 10, "t": slab[2] // 10}
    text = _said(draw, "in_centimetres").format(**cm, **{k: mm // 10 for k, mm in hole.items()})
    return Several(f"Please quote.\n{text}", lengths_of(slab) | _opening(hole))


@st.composite
def one_each(draw: st.DrawFn) -> Several:
    """Two bowls that stand on a slab, each with a hole for its waste."""
    slab = (draw(st.integers(150, 200)) * 10, 540, 40)
    a, b = draw(st.integers(32, 48)) * 10, draw(st.integers(32, 48)) * 10
    d, y = draw(st.sampled_from((42, 45, 48))), draw(st.integers(22, 27)) * 10
    text = f"{ASK.format(*slab)} {_said(draw, 'one_each').format(a=a, b=b, d=d, y=y)}"
    lengths = lengths_of(slab)
    for i, x in enumerate((a, slab[0] - b)):
        at = f"{SLAB}/cutouts/{i}"
        lengths |= {f"{at}/diameter": float(d), f"{at}/centre/x": x, f"{at}/centre/y": y}
    return Several(text, lengths)


@st.composite
def also_a_hole(draw: st.DrawFn) -> Several:
    """A sink, and a round hole told after it with its own place."""
    slab = draw(a_slab())
    hole = _hole(draw, *slab[:2])
    d, u, v = draw(st.sampled_from((28, 32, 35))), draw(st.integers(8, 15)) * 10, slab[1] - 70
    told = _said(draw, "also_a_hole").format(d=d, u=u, v=v, **hole)
    at = f"{SLAB}/cutouts/1"
    lengths = {f"{at}/diameter": float(d), f"{at}/centre/x": u, f"{at}/centre/y": v}
    return Several(f"{ASK.format(*slab)} {told}", lengths_of(slab) | _opening(hole) | lengths)


@st.composite
def letters(draw: st.DrawFn) -> Several:
    """An opening whose two sizes have letters before or after them."""
    slab = draw(a_slab())
    hole = _hole(draw, *slab[:2])
    text = f"{ASK.format(*slab)} {_said(draw, 'letters').format(**hole)}"
    return Several(text, lengths_of(slab) | _opening(hole))


@st.composite
def one_and_one(draw: st.DrawFn) -> Several:
    """Two slabs that differ in their length alone."""
    long, short = draw(st.integers(120, 160)) * 10, draw(st.integers(85, 110)) * 10
    width, thick = draw(st.integers(18, 26)) * 10, draw(st.sampled_from((30, 40, 50)))
    text = _said(draw, "one_and_one").format(l=long, m=short, w=width, t=thick)
    lengths = sizes_of(long, width, thick) | sizes_of(short, width, thick, "/slabs/1")
    return Several(f"Price please. {text}", lengths)


@st.composite
def turned(draw: st.DrawFn) -> Several:
    """An opening that its slab has room for one way alone, told the other way, in the middle."""
    slab = (draw(st.integers(180, 320)) * 10, draw(st.integers(58, 66)) * 10, 40)
    along, deep = draw(st.integers(70, 86)) * 10, draw(st.integers(38, 46)) * 10
    hole = {"ol": along, "ow": deep, "x": slab[0] // 2, "y": slab[1] // 2}
    text = f"{ASK.format(*slab)} {_said(draw, 'turned').format(**hole)}"
    return Several(text, lengths_of(slab) | _opening(hole))


@st.composite
def by_its_edge(draw: st.DrawFn) -> Several:
    """An opening so near to the front that only its edge can be: its middle would leave no slab."""
    slab = draw(a_slab())
    hole, edge = _hole(draw, *slab[:2]), draw(st.integers(5, 9)) * 10
    text = f"{ASK.format(*slab)} {_said(draw, 'by_its_edge').format(e=edge, **hole)}"
    lengths = lengths_of(slab) | _opening({**hole, "y": edge + hole["ow"] / 2})
    return Several(text, lengths)


@st.composite
def lists(draw: st.DrawFn) -> Several:
    """Slabs of one kind in a row, each by its room."""
    sizes = {"l": draw(st.integers(100, 150)) * 10, "w": draw(st.integers(22, 30)) * 10}
    sizes |= {"m": draw(st.integers(160, 190)) * 10, "n": draw(st.integers(22, 30)) * 10}
    text = _said(draw, "lists").format(t=40, **sizes)
    first = sizes_of(sizes["l"], sizes["w"], 40)
    return Several(text, first | sizes_of(sizes["m"], sizes["n"], 40, "/slabs/1"))


@st.composite
def across(draw: st.DrawFn) -> Several:
    """Two tables of which only the distance across is told, so that both are round."""
    large, small = draw(st.integers(90, 130)) * 10, draw(st.integers(40, 60)) * 10
    text = f"Please quote. {_said(draw, 'across').format(d=large, s=small, t=40, u=30)}"
    lengths = {f"{SLAB}/outline/diameter": float(large), f"{SLAB}/thickness": 40.0}
    lengths |= {"/slabs/1/outline/diameter": float(small), "/slabs/1/thickness": 30.0}
    return Several(text, lengths)


@st.composite
def corrected(draw: st.DrawFn) -> Several:
    """A slab of which something is taken back in the same breath or below the name."""
    slab = draw(a_slab())
    sizes = {"l": slab[0], "w": slab[1], "t": slab[2], "a": slab[0] - 60, "b": slab[1] - 50}
    return Several(_said(draw, "corrected").format(**sizes), lengths_of(slab))


@st.composite
def for_no_slab(draw: st.DrawFn) -> str:
    """Who looks for work and tells of a slab that was cast."""
    slab = draw(a_slab())
    return _said(draw, "for_no_slab").format(l=slab[0], w=slab[1], t=slab[2])
