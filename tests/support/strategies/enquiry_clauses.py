"""Families of clauses: asides set off by dashes, sides that name legs, quoted questions, rows."""

from __future__ import annotations

from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import SLAB, a_slab, lengths_of

SAID: Final[dict[str, Any]] = phrases("enquiry_clauses")


@st.composite
def after_dashes(draw: st.DrawFn) -> Several:
    """A slab told after, or around, an aside that a dash sets off."""
    slab = draw(a_slab())
    text = draw(st.sampled_from(SAID["after_dash"])).format(
        thing=draw(st.sampled_from(SAID["things"])), l=slab[0], w=slab[1], t=slab[2]
    )
    return Several(text, lengths_of(slab))


@st.composite
def sided_legs(draw: st.DrawFn) -> Several:
    """An L whose legs are named by the side that they are on."""
    side = draw(st.sampled_from(("left", "right")))
    long, reach = draw(st.integers(220, 340)) * 10, draw(st.integers(140, 210)) * 10
    deep, thick = draw(st.integers(58, 66)) * 10, draw(st.sampled_from((30, 40, 50)))
    text = draw(st.sampled_from(SAID["legs"])).format(
        l=long, r=reach, d=deep, t=thick, en=side, de={"left": "links", "right": "rechts"}[side]
    )
    sizes = {"outline/length": long, "outline/width": reach, "thickness": thick}
    sizes |= {"outline/notch/length": long - deep, "outline/notch/width": reach - deep}
    return Several(text, {f"{SLAB}/{key}": float(mm) for key, mm in sizes.items()}, {"side": side})


@st.composite
def asked_openings(draw: st.DrawFn) -> Several:
    """Openings that the workshop only asked about are not asked for."""
    slab = draw(a_slab())
    x, y = draw(st.integers(50, 120)) * 10, draw(st.integers(28, 32)) * 10
    hole = f"Hole 560 x 480, middle of it {x} from the left and {y} from the front."
    text = (
        f"Hi Tom, answers below.\n\n> What size is the worktop?\n\n{slab[0]} long, {slab[1]} deep,"
        f" {slab[2]} thick.\n\n"
        + draw(st.sampled_from(SAID["questions"])).format(what="hob", hole=hole)
        + "\n\nGethin"
    )
    return Several(text, lengths_of(slab, length=560, width=480, centre_x=x, centre_y=y))


@st.composite
def confirmed_in_part(draw: st.DrawFn) -> Several:
    """Two sizes said again by the workshop, of which the customer lets one stand."""
    slab = draw(a_slab())
    text = (
        f"Hi, about the worktop.\n\n> How thick?\n\n{slab[2]} mm.\n\n"
        + draw(st.sampled_from(SAID["in_part"])).format(l=slab[0], old=slab[1] - 20, w=slab[1])
        + "\n\nPjotr"
    )
    return Several(text, lengths_of(slab))


@st.composite
def rows(draw: st.DrawFn) -> Several:
    """Two openings told one by one, or in one breath."""
    slab = (draw(st.integers(240, 320)) * 10, 640, draw(st.sampled_from((30, 40))))
    a, y = draw(st.integers(40, 60)) * 10, draw(st.integers(28, 34)) * 10
    b = slab[0] - draw(st.integers(40, 60)) * 10
    text = f"Please quote for a worktop {slab[0]} x {slab[1]} x {slab[2]}. " + draw(
        st.sampled_from(SAID["rows"])
    ).format(a=a, b=b, y=y, hole="420 x 340")
    lengths = lengths_of(slab)
    for i, x in enumerate((a, b)):
        own = f"{SLAB}/cutouts/{i}"
        lengths |= {f"{own}/length": 420.0, f"{own}/width": 340.0}
        lengths |= {f"{own}/centre/x": float(x), f"{own}/centre/y": float(y)}
    return Several(text, lengths)


@st.composite
def flowed(draw: st.DrawFn) -> Several:
    """A slab told in lines that a mail program broke, at no width that they have in common."""
    slab = draw(a_slab())
    text = draw(st.sampled_from(SAID["flowed"])).format(l=slab[0], w=slab[1], t=slab[2])
    return Several(text, lengths_of(slab))


@st.composite
def no_holes(draw: st.DrawFn) -> Several:
    """Holes that others make, that are elsewhere, or a drawing's number: none of ours."""
    slab = draw(a_slab())
    aside = draw(st.sampled_from(SAID["no_holes"]))
    text = f"Please quote for a worktop {slab[0]} x {slab[1]} x {slab[2]} mm. {aside}"
    return Several(text, lengths_of(slab), {"none": aside})


@st.composite
def all_round(draw: st.DrawFn) -> Several:
    """A slab about which something is so much "all round", which rounds no edge."""
    slab = draw(a_slab())
    text = f"Please quote for a table top {slab[0]} x {slab[1]} x {slab[2]} mm. "
    return Several(text + draw(st.sampled_from(SAID["all_round"])), lengths_of(slab))


@st.composite
def set_in(draw: st.DrawFn) -> Several:
    """A tap hole so far "in" from the side that it is at."""
    slab = draw(a_slab())
    y = draw(st.integers(6, 9)) * 10
    text = f"Please quote for a worktop {slab[0]} x {slab[1]} x {slab[2]} mm. "
    text += draw(st.sampled_from(SAID["set_in"])).format(y=y)
    place = {"centre_x": slab[0] / 2, "centre_y": float(slab[1] - y)}
    return Several(text, lengths_of(slab, diameter=35.0, **place))


@st.composite
def in_the_run(draw: st.DrawFn) -> Several:
    """An L with a sink in the middle of its long run, which lies behind the corner left out."""
    side = draw(st.sampled_from(("left", "right")))
    long, reach = draw(st.integers(240, 340)) * 10, draw(st.integers(140, 210)) * 10
    deep, thick = draw(st.integers(58, 66)) * 10, 40
    text = draw(st.sampled_from(SAID["in_the_run"])).format(
        l=long, r=reach, d=deep, t=thick, en=side, de={"left": "links", "right": "rechts"}[side]
    )
    sizes = {"outline/length": long, "outline/width": reach, "thickness": thick}
    sizes |= {"outline/notch/length": long - deep, "outline/notch/width": reach - deep}
    sizes |= {"cutouts/0/length": 500, "cutouts/0/width": 400}
    place = {"cutouts/0/centre/x": long / 2, "cutouts/0/centre/y": reach - deep / 2}
    every = {key: float(mm) for key, mm in sizes.items()} | place
    return Several(text, {f"{SLAB}/{key}": mm for key, mm in every.items()})
