"""Vanity tops as people order them: for one cabinet, the basin over its middle, so thick."""

from __future__ import annotations

from dataclasses import dataclass

from hypothesis import strategies as st

from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_units import INCH
from support.strategies.enquiry_wordings import lengths_of

_UNIT = (
    "Please quote a concrete vanity top for a {w}{u} cabinet.",
    "Could you quote us for a vanity top for a {w}{u} vanity cabinet?",
    "We need a vanity top to go on a {w}{u} wide base cabinet.",
    "I'm after a vanity top for our {w}{u} bathroom vanity.",
    "It is a vanity top over a {w}{u} sink cabinet.",
)
_UNIT_DE = (
    "Wir suchen eine Waschtischplatte auf einem {w}er Unterschrank.",
    "Was kostet eine Waschtischplatte für einen {w} cm breiten Unterschrank?",
    "Eine Waschtischplatte für unseren {w}er Waschtischunterschrank bitte.",
)
_INCHES = ('"', " inch", " in.", "”", "-inch")
_OVER = (
    "centered on the cabinet",
    "centred over the cabinet",
    "centered on the vanity",
    "centered over the vanity cabinet",
    "centred on our base cabinet",
)
_OVER_DE = ("mittig über dem Schrank", "mittig auf dem Unterschrank", "zentriert über dem Schrank")


@dataclass(frozen=True)
class Vanity:
    """A message, its slab's length and its unit's width, mm, and whether a basin is in it."""

    text: str
    length_mm: float
    unit_mm: float


@st.composite
def on_one_unit(draw: st.DrawFn) -> Vanity:
    """A top as long as its cabinet, or an inch longer at each end at most, with its basin."""
    if draw(st.booleans()):
        width, over = draw(st.sampled_from((60, 70, 80, 90, 120))), draw(st.integers(0, 4))
        text = draw(st.sampled_from(_UNIT_DE)).format(w=width)
        text += f" Die Platte soll {width + over} x 52 cm sein, 4 cm stark. Der Ausschnitt für das"
        text += f" runde Waschbecken hat 38 cm Durchmesser, {draw(st.sampled_from(_OVER_DE))}, und"
        text += " ein Hahnloch, 35 mm, mittig hinter dem Waschbecken."
        return Vanity(text, 10 * (width + over), 10 * width)
    width, over = draw(st.sampled_from((24, 30, 36, 42, 48))), draw(st.integers(0, 2))
    text = draw(st.sampled_from(_UNIT)).format(w=width, u=draw(st.sampled_from(_INCHES)))
    text += f' The top should be {width + over}" wide by 22" deep, 1 1/2" thick. We have a round'
    text += f' undermount sink, the cutout is 15" across, {draw(st.sampled_from(_OVER))}, and one'
    text += ' faucet hole, 1 3/8", centered behind the sink.'
    return Vanity(text, INCH * (width + over), INCH * width)


_NO_UNIT = (
    "It hangs below a {w} mm wall cabinet.",
    "We have a {w} mm cabinet in the hall.",
    "The mirror is for a {w} mm cabinet and another is for a 700 mm cabinet.",
    "It fits on two {w} mm base units.",
    "It stands on a 500 mm cabinet, the rest is open.",
)


@st.composite
def on_no_unit(draw: st.DrawFn) -> Several:
    """A top of which nobody says that it lies on one unit as long as it."""
    width = draw(st.sampled_from((800, 900, 1000)))
    slab = (width + 20, 520, 40)
    said = draw(st.sampled_from(_NO_UNIT)).format(w=width)
    text = f"Please quote for a vanity top {slab[0]} x {slab[1]} x {slab[2]} mm. {said}"
    return Several(text, lengths_of(slab))


_LED = (
    "I need a {t} thick {adjective} {noun}, {l} x {w}.",
    "Price for a {t} thick {adjective} {noun}, {l} by {w}, please.",
    "Could you make us a {t} thick {adjective} {noun} {l} x {w}?",
    "Could you quote for a {t} thick {adjective} {noun}? It is {l} x {w}.",
)
_LOOKS = ("concrete", "polished", "natural gray", "honed dark grey concrete", "smooth", "")
_NOUNS = ("vanity top", "top", "countertop", "worktop")
_LED_DE = (
    "Wir suchen eine {t} dicke {adjective} Platte, {l} x {w}.",
    "Was kostet eine {t} starke {adjective} Waschtischplatte, {l} x {w}?",
)
_LOOKS_DE = ("polierte", "graue", "glatte helle", "")


@st.composite
def thick_first(draw: st.DrawFn) -> Several:
    """A thickness that is told as what a slab is like, other such words before its noun."""
    long, deep = draw(st.integers(30, 60)), draw(st.integers(18, 25))
    if draw(st.booleans()):
        cm = draw(st.sampled_from((4, 5, 6)))
        text = draw(st.sampled_from(_LED_DE)).format(
            t=f"{cm} cm",
            adjective=draw(st.sampled_from(_LOOKS_DE)),
            l=f"{long * 3} cm",
            w=f"{deep * 3} cm",
        )
        return Several(" ".join(text.split()), lengths_of((long * 30, deep * 30, cm * 10)))
    thick = draw(st.sampled_from(("1 1/2", "2", "3")))
    unit = draw(st.sampled_from(('"', " inch")))
    text = draw(st.sampled_from(_LED)).format(
        t=f"{thick}{unit}",
        adjective=draw(st.sampled_from(_LOOKS)),
        noun=draw(st.sampled_from(_NOUNS)),
        l=f"{long}{unit}",
        w=f"{deep}{unit}",
    )
    mm = {"1 1/2": 1.5, "2": 2.0, "3": 3.0}[thick] * INCH
    return Several(" ".join(text.split()), lengths_of((long * INCH, deep * INCH, mm)))
