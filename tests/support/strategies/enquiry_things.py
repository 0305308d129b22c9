"""Families about things that no table knows, asked for or only there, and about ovals."""

from __future__ import annotations

from typing import Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import a_slab, lengths_of

SAID: Final[dict[str, list[str]]] = phrases("enquiry_things")
ASKS: Final = (
    "Please quote for a worktop {} x {} x {}.",
    "We need a worktop {} long and {} deep, {} thick.",
    "Worktop wanted. Length {}, depth {}, thickness {}.",
)
ASKS_DE: Final = ("Wir brauchen eine Arbeitsplatte {} x {} x {}.",)


def _beside(draw: st.DrawFn, things: str, sentences: str) -> str:
    """Give a sentence about a thing, with sizes that no slab of these families has."""
    a, b, c = (draw(st.integers(21, 99)) * 10 + 7 for _ in range(3))
    thing = draw(st.sampled_from(SAID[things]))
    return draw(st.sampled_from(SAID[sentences])).format(n=thing, a=a, b=b, c=c)


@st.composite
def slabs_beside(draw: st.DrawFn) -> Several:
    """A slab, and a thing before it or after it with sizes of its own."""
    slab = draw(a_slab())
    is_german = draw(st.booleans())
    other = _beside(draw, *(("dinge", "saetze") if is_german else ("things", "sentences")))
    ask = draw(st.sampled_from(ASKS_DE if is_german else ASKS)).format(*slab)
    is_after = draw(st.booleans()) or "It " in other  # "it" is what was named before
    parts = [ask, other] if is_after else [other, ask]
    return Several(draw(st.sampled_from((" ", "\n"))).join(parts), lengths_of(slab))


@st.composite
def slabs_by_name(draw: st.DrawFn) -> Several:
    """A slab that is asked for by a name that no table knows."""
    slab = draw(a_slab())
    length, width, thickness = slab
    text = draw(st.sampled_from(SAID["asked"])).format(
        n=draw(st.sampled_from(SAID["asked_for"])), l=length, w=width, t=thickness
    )
    return Several(text, lengths_of(slab))


@st.composite
def ovals(draw: st.DrawFn) -> Several:
    """A slab with an oval opening."""
    a, b = draw(st.integers(38, 46)) * 10, draw(st.integers(28, 34)) * 10
    x, y = draw(st.integers(60, 90)) * 10, 300
    said = draw(st.sampled_from(SAID["ovals"])).format(a=a, b=b, x=x, y=y)
    sizes = {"length": float(a), "width": float(b), "centre/x": float(x), "centre/y": float(y)}
    return Several(f"A worktop 1900 x 620 x 40. {said}", lengths_of((1900, 620, 40), **sizes))


@st.composite
def counts(draw: st.DrawFn) -> Several:
    """A slab's three sizes and how many there are, told before them."""
    slab = draw(a_slab())
    length, width, thickness = slab
    q = draw(st.integers(2, 8))
    text = draw(st.sampled_from(SAID["counted"])).format(l=length, w=width, t=thickness, q=q)
    return Several(f"Steps please. {text}", lengths_of(slab))


@st.composite
def houses(draw: st.DrawFn) -> Several:
    """A slab, and the number of the writer's house."""
    slab = draw(a_slab())
    said = draw(st.sampled_from(SAID["houses"])).format(h=draw(st.integers(11, 240)))
    return Several(f"{ASKS[0].format(*slab)} {said}", lengths_of(slab))


@st.composite
def middles(draw: st.DrawFn) -> Several:
    """A tap hole so far from the back, and in the middle of the length."""
    d, y = draw(st.integers(30, 38)), draw(st.integers(60, 90))
    said = draw(st.sampled_from(SAID["middles"])).format(d=d, y=y)
    places = {"diameter": float(d), "centre/x": 900.0, "centre/y": 600.0 - y}
    return Several(f"A worktop 1800 x 600 x 40. {said}", lengths_of((1800, 600, 40), **places))


@st.composite
def uncut(draw: st.DrawFn) -> Several:
    """A slab beside a sink that needs no cut-out."""
    slab = draw(a_slab())
    return Several(
        f"{ASKS[0].format(*slab)} {draw(st.sampled_from(SAID['uncut']))}", lengths_of(slab)
    )


@st.composite
def in_inches(draw: st.DrawFn) -> Several:
    """An opening whose inches stand right before its name."""
    length, width = draw(st.integers(50, 110)), draw(st.integers(22, 30))
    long, wide = draw(st.integers(14, 34)), draw(st.integers(10, width - 8))
    name = draw(
        st.sampled_from(
            ("sink cut-out", "sink", "sink opening", "undermount sink hole", "cooktop cut-out")
        )
    )
    article = draw(st.sampled_from(("a", "one", "a new")))
    text = (
        f"Please quote a countertop {length} x {width} in with {article} {long} x {wide} in {name}."
    )
    at = "/slabs/0/cutouts/0"
    lengths = {"/slabs/0/outline/length": length, "/slabs/0/outline/width": width}
    lengths |= {f"{at}/length": long, f"{at}/width": wide}
    return Several(text, {key: 25.4 * value for key, value in lengths.items()})
