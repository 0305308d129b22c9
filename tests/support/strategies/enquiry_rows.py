"""Families of slabs of several lengths that share the rest, and of answers that choose."""

from __future__ import annotations

from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import SLAB, a_slab, lengths_of, sizes_of

SAID: Final[dict[str, Any]] = phrases("enquiry_rows")
_WORDS: Final = {1: "one", 2: "two", 3: "three", 4: "four"}
_WORTE: Final = {1: "eine", 2: "zwei", 3: "drei", 4: "vier"}


def _said(draw: st.DrawFn, family: str) -> str:
    return str(draw(st.sampled_from(SAID[family])))


def _one_slab(draw: st.DrawFn, family: str) -> Several:
    slab = draw(a_slab())
    text = _said(draw, family).format(l=slab[0], w=slab[1], t=slab[2])
    return Several(text, lengths_of(slab))


@st.composite
def counted(draw: st.DrawFn) -> Several:
    """So many shelves of one length and so many of another; ``words`` has how many of each."""
    a, b = draw(st.integers(110, 150)) * 10, draw(st.integers(60, 105)) * 10
    deep, thick = draw(st.integers(20, 30)) * 10, draw(st.sampled_from((30, 40)))
    m, n = draw(st.integers(1, 4)), draw(st.integers(1, 4))
    text = _said(draw, "counted").format(
        a=a, b=b, d=deep, t=thick, m=m, n=n, total=m + n, mw=_WORDS[m], nw=_WORDS[n],
        mw_big=_WORDS[m].capitalize(), md=_WORTE[m], nd=_WORTE[n],
    )  # fmt: skip
    lengths = sizes_of(a, deep, thick) | sizes_of(b, deep, thick, "/slabs/1")
    return Several(text, lengths, {"counts": f"{m} {n}"})


@st.composite
def one_each(draw: st.DrawFn) -> Several:
    """Slabs of two or three lengths, one of each."""
    a, b = draw(st.integers(110, 150)) * 10, draw(st.integers(60, 105)) * 10
    deep, thick = draw(st.integers(20, 30)) * 10, draw(st.sampled_from((30, 40)))
    text = _said(draw, "one_each").format(a=a, b=b, d=deep, t=thick)
    return Several(text, sizes_of(a, deep, thick) | sizes_of(b, deep, thick, "/slabs/1"))


@st.composite
def on_units(draw: st.DrawFn) -> Several:
    """A slab on so many units of one width and so many of another, which are no lengths of it."""
    return _one_slab(draw, "on_units")


@st.composite
def under_sink(draw: st.DrawFn) -> Several:
    """A slab with an opening on two cupboards, whose widths are sizes of neither."""
    p, q = draw(st.integers(70, 95)) * 10, draw(st.integers(50, 65)) * 10
    l, w, t = p + q + 20, draw(st.integers(56, 62)) * 10, draw(st.sampled_from((30, 40)))  # noqa: E741
    a, b = draw(st.integers(42, 48)) * 10, draw(st.integers(30, 40)) * 10
    text = _said(draw, "under_sink").format(l=l, w=w, t=t, a=a, b=b, p=p, q=q)
    return Several(text, lengths_of((l, w, t), length=float(a), width=float(b)))


@st.composite
def made_round(draw: st.DrawFn) -> Several:
    """A rectangle that a newer message wants round instead."""
    across, thick = draw(st.integers(70, 120)) * 10, draw(st.sampled_from((30, 40)))
    text = _said(draw, "made_round").format(d=across, l=across + 210, w=across - 70, t=thick)
    lengths = {f"{SLAB}/outline/diameter": float(across), f"{SLAB}/thickness": float(thick)}
    return Several(text, lengths)


@st.composite
def chosen(draw: st.DrawFn) -> Several:
    """An answer that chooses the thicker or the thinner of what the workshop offered."""
    length, width, _ = draw(a_slab())
    thin = draw(st.sampled_from((30, 40)))
    thick = thin + draw(st.sampled_from((10, 20)))
    kind = draw(st.sampled_from(("thicker", "thinner")))
    answer, offer = _said(draw, kind), _said(draw, "offers").format(a=thin, b=thick)
    text = f"{answer}\n\nOn 12 April 2027 at 08:20 Tarnside Casting wrote:\n> {offer}\n>\n"
    text += "> On 11 April 2027 at 09:10 Ida Moss wrote:\n"
    text += f">> Could I have a price for a vanity top, {length} x {width}, in chalk?\n"
    return Several(text, lengths_of((length, width, thick if kind == "thicker" else thin)))


@st.composite
def beside_supports(draw: st.DrawFn) -> Several:
    """A slab, and the sizes of what bears it, which is called by the slab's name."""
    slab = draw(a_slab())
    text = _said(draw, "supports").format(
        l=slab[0], w=slab[1], t=slab[2], a=slab[0] - 80, b=slab[1] - 60
    )
    return Several(text, lengths_of(slab))


@st.composite
def lying_beside(draw: st.DrawFn) -> Several:
    """A slab, and what is none of it: a bowl that stands on it, what goes apart, a corner's cut."""
    slab = draw(a_slab())
    text = _said(draw, "beside").format(
        l=slab[0], w=slab[1], t=slab[2], a=draw(st.integers(36, 48)) * 10, c=150
    )
    return Several(text, lengths_of(slab, diameter=45.0) if "45 mm" in text else lengths_of(slab))


@st.composite
def named_sizes(draw: st.DrawFn) -> Several:
    """A slab whose sizes are named before all of them, or by its shape and its two ends."""
    return _one_slab(draw, "named_sizes")


@st.composite
def in_a_table(draw: st.DrawFn) -> Several:
    """A top and an upright slab in a table, and a sink told after it, which is in the top."""
    length, width, _ = draw(a_slab())
    upright = draw(st.sampled_from(("Splashback", "Upstand", "Backsplash")))
    text = _said(draw, "in_a_table").format(l=length, w=width, upright=upright, d=340)
    lengths = lengths_of((length, width, 40), diameter=340.0)
    return Several(text, lengths | sizes_of(length, 400, 20, "/slabs/1"))
