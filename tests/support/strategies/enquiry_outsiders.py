"""Families of what outsiders wrote and met: delivery without a postcode, units each as wide."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import a_slab, lengths_of

SAID: Final[dict[str, Any]] = phrases("enquiry_outsiders")
ASK: Final = "Please quote for a worktop {} x {} x {} mm."


@dataclass(frozen=True, slots=True)
class Delivered:
    """A message, and the postcode that it tells, if any."""

    text: str
    postcode: str = ""


@st.composite
def slabs_and(draw: st.DrawFn, family: str) -> Several:
    """A slab and one sentence of a family of which no size is the slab's."""
    slab = draw(a_slab())
    said = draw(st.sampled_from(SAID[family]))
    return Several(f"{ASK.format(*slab)} {said}", lengths_of(slab))


@st.composite
def places(draw: st.DrawFn) -> Delivered:
    """Figures after a place's name, of the United States."""
    code = draw(st.sampled_from(SAID["codes"]))
    text = draw(st.sampled_from(SAID["places"])).format(
        place=draw(st.sampled_from(SAID["towns"])), code=code
    )
    ask = "Please quote for a countertop 72 x 25 x 1.5 inches. "
    return Delivered(ask + text, code)


@st.composite
def rows_of_units(draw: st.DrawFn) -> Several:
    """A slab on units that are each as wide; ``words`` has how many and how wide."""
    count = draw(st.sampled_from(("two", "three", "four")))
    width = draw(st.sampled_from((400, 500, 600)))
    n = {"two": 2, "three": 3, "four": 4}[count]
    de = {"two": "zwei", "three": "drei", "four": "vier"}[count]
    slab = (n * width, 350, 40)  # no depth is a unit's width, and each is less than the length
    text = draw(st.sampled_from(SAID["units_each"])).format(
        n=count,
        N=count.capitalize(),
        de=de,
        w=width,
        list=", ".join([str(width)] * n),
        ands=" and ".join([f"a {width}"] * n),
    )
    told = {"widths": " ".join([f"{width} mm"] * n)}
    return Several(f"{ASK.format(*slab)} {text}", lengths_of(slab), told)


@st.composite
def units_in_inches(draw: st.DrawFn) -> Several:
    """A slab on a sink's cupboard and two others, in inches, in a row or with one on each side."""
    sink, other = draw(st.sampled_from((30, 33, 36))), draw(st.sampled_from((18, 21, 24, 27)))
    family = draw(st.sampled_from(("units_in_inches", "units_both_sides")))
    row = f'{sink}", {other}", {other}"'
    text = draw(st.sampled_from(SAID[family])).format(a=sink, b=other, list=row)
    length = sink + 2 * other
    widths = (other, sink, other) if family == "units_both_sides" else (sink, other, other)
    told = {"widths": " ".join(f"{width} in" for width in widths)}
    ask = f'Please quote for a countertop {length}" x 25" x 1 1/2".'
    slab = (25.4 * length, 25.4 * 25, 25.4 * 1.5)
    return Several(f"{ask} {text}", lengths_of(slab), told)


@st.composite
def run_on(draw: st.DrawFn) -> Several:
    """A slab's three sizes and a hole with its own, with no mark between them."""
    slab = draw(a_slab())
    size = draw(st.integers(28, 45))
    text = draw(st.sampled_from(SAID["run_on"])).format(l=slab[0], w=slab[1], t=slab[2], d=size)
    return Several(text, lengths_of(slab, diameter=float(size)))


@st.composite
def counted(draw: st.DrawFn) -> Several:
    """A slab and how many there are of it, after its sizes."""
    slab = draw(a_slab())
    n = draw(st.integers(2, 9))
    text = draw(st.sampled_from(SAID["counted"])).format(l=slab[0], w=slab[1], t=slab[2], n=n)
    return Several(text, lengths_of(slab), {"n": str(n)})


@st.composite
def scrapped(draw: st.DrawFn) -> Several:
    """A length that is taken back and another that takes its place."""
    slab = draw(a_slab())
    new = slab[0] - 100
    text = draw(st.sampled_from(SAID["scrapped"])).format(old=slab[0], new=new)
    return Several(f"{ASK.format(*slab)} {text}", lengths_of((new, slab[1], slab[2])))
