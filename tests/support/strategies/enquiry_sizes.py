"""Families of sizes: in words after a name, as a range, with the trade's short words."""

from __future__ import annotations

from hypothesis import strategies as st

from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import SLAB, a_slab, lengths_of

_TENS = {10: "ten", 20: "twenty", 25: "twenty-five", 40: "forty", 60: "sixty", 80: "eighty"}
_LEADS = ("Worktop", "Price for a slab", "Top", "Please quote for one piece", "Quote: worktop")


@st.composite
def after_a_name(draw: st.DrawFn) -> Several:
    """A size in words right after a slab's name, where "a" or a number is no item's letter."""
    metres = draw(
        st.sampled_from((("a metre", 1), ("one metre", 1), ("two metres", 2), ("2 m", 2)))
    )
    tens = draw(st.sampled_from(sorted(_TENS)))
    said = f"{metres[0]} {tens if metres[0] == '2 m' else _TENS[tens]}"
    slab = (1000 * metres[1] + 10 * tens, draw(st.integers(58, 72)) * 10, 40)
    form = draw(st.sampled_from(("{l} by {w}, {t} thick", "{l} long, {w} deep, {t} thick")))
    sizes = form.format(l=said, w=slab[1], t=slab[2])
    return Several(f"{draw(st.sampled_from(_LEADS))} {sizes} please.", lengths_of(slab))


_RANGES = (
    "between {a} and {b} mm thick",
    "somewhere between {a} and {b} thick",
    "{a} to {b} mm thick",
    "{a}-{b} mm thick",
    "{a} or {b} mm thick",
)


@st.composite
def shortened(draw: st.DrawFn) -> Several:
    """Sizes with the trade's short words, or a depth and a thickness with an x between them."""
    slab = draw(a_slab())
    form = draw(
        st.sampled_from(
            (
                "slab {l} lg x {w} wd x {t} thk",
                "slab {l} lg {w} dp {t} thk",
                "shelf {l} long, {w} deep x {t} thick",
            )
        )
    )
    width = slab[1] if "slab" in form else draw(st.integers(15, 30)) * 10
    sizes = (slab[0], width, slab[2])
    text = form.format(l=sizes[0], w=sizes[1], t=sizes[2])
    return Several(f"Price please for a {text}.", lengths_of(sizes))


@st.composite
def ranges(draw: st.DrawFn) -> Several:
    """A thickness told as a range: two readings, neither of which is taken."""
    slab = draw(a_slab())
    thin = draw(st.sampled_from(_RANGES)).format(a=slab[2], b=slab[2] + 10)
    lengths = lengths_of(slab)
    del lengths[f"{SLAB}/thickness"]
    return Several(f"Price for a worktop {slab[0]} x {slab[1]} please, {thin}.", lengths)


_ACROSS = ("central on the width", "in the middle of the depth", "centred on the depth")


@st.composite
def across(draw: st.DrawFn) -> Several:
    """A hole so far from an end, and in the middle the other way."""
    sizes = draw(a_slab())
    x, side = draw(st.integers(15, 60)) * 10, draw(st.sampled_from(("left", "right")))
    text = (
        f"Please quote: island top {sizes[0]} x {sizes[1]} x {sizes[2]}, a round hole of 100 mm,"
        f" {x} mm in from the {side} hand end and {draw(st.sampled_from(_ACROSS))}."
    )
    along = x if side == "left" else sizes[0] - x
    return Several(text, lengths_of(sizes, diameter=100, centre_x=along, centre_y=sizes[1] / 2))
