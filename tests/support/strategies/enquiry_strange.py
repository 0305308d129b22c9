"""Families of messages that tell what no rule knows: strange sizes, openings and slabs."""

from __future__ import annotations

from dataclasses import dataclass

from hypothesis import strategies as st


@dataclass(frozen=True)
class Strange:
    """A message, and the words in it that must not be lost."""

    text: str
    words: tuple[str, ...]


_SAID = ("{n}", "{n}mm", "{n} mm", "{n} cm", "{n} in", '{n}"', "{n} inches", "{n} millimetres")
_PHRASES = (
    "Also {s} on the other one.",
    "Then there is the fascia thing, {s}.",
    "NB {s}!",
    "A zorbel of {s} too.",
    "Plus {s} somewhere near the wembly.",
    "The frint: {s}.",
    "{s} for the plunk.",
    "And maybe {s} along that, I think.",
    "It wants {s} between this and that.",
    "with a length of {s} and the rest to follow",
    "The dog needs {s}.",
    "Die Leiste daneben {s}.",
    "- gable {s}",
    "Skirt, {s}, as before.",
    "The distance you asked for is {s}.",
    "Der Rest hat {s}.",
)
_NAMED = (
    "Also a {what} somewhere near the wembly.",
    "And we'd like a {what} in it, not sure where.",
    "Is a {what} possible too?",
    "My wife wants a {what} as well.",
    "Plus {what}.",
)
_OPENINGS = ("tap hole", "hob", "sink", "cable grommet", "basin", "soap dispenser", "parasol hole")
_ASKS = (
    "Please quote for a worktop 2410 x 630 x 40 mm. ",
    "Hi, how much for a worktop, 2410 mm long, 630 mm deep and 40 mm thick?\n\n",
    "Guten Tag, bitte ein Angebot für eine Arbeitsplatte 2410 x 630 x 40 mm.\n",
)


@st.composite
def strange_sizes(draw: st.DrawFn) -> Strange:
    """A plain slab with one or two sizes that nobody could tell what they are of."""
    numbers = draw(st.lists(st.integers(11, 1999), min_size=1, max_size=2, unique=True))
    numbers = [n for n in numbers if n not in (40, 630)] or [777]
    parts = []
    for number in numbers:
        phrase = draw(st.sampled_from(_PHRASES))
        parts.append(phrase.format(s=draw(st.sampled_from(_SAID)).format(n=number)))
    gap = draw(st.sampled_from((" ", "\n", "\n\n")))
    return Strange(draw(st.sampled_from(_ASKS)) + gap.join(parts), tuple(map(str, numbers)))


@st.composite
def strange_openings(draw: st.DrawFn) -> Strange:
    """A plain slab with an opening of which nothing but its name is told."""
    what = draw(st.sampled_from(_OPENINGS))
    phrase = draw(st.sampled_from(_NAMED)).format(what=what)
    return Strange(draw(st.sampled_from(_ASKS)) + phrase, (what.split()[0],))
