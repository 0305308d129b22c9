"""A sink over a cupboard: "in the middle of the 600 unit that starts 900 from the left"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Final

from ledgerstone.enquiry.scene.said import Claim
from ledgerstone.enquiry.scene.size_assigner import SizeAssigner
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Atom, Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_UNITS: Final = word_set(
    "unit units cabinet cabinets cupboard cupboards base carcass carcase unterschrank schrank"
    " korpus element spülenschrank"
)
PLURALS: Final = word_set(
    "units cabinets cupboards carcasses unterschränke schränke unterschränken schränken"
)
_UNDER: Final = frozenset({"on", "over", "across", "auf", "über"})
# What stands between the sizes of a list of cupboards: "one 36 wide and the other 24 wide".
_ONES: Final = word_set(
    "one other first second third another einer ein eine andere anderer anderen erste zweite"
)
_LISTED: Final = _ONES | word_set("a the and plus is wide der die den und ist breit")
_MARKS: Final = frozenset({",", ":", "(", ")", "-", "–", "—"})
_STARTS: Final = word_set(
    "starts start starting begins begin beginning beginnt anfängt startet fängt is"
)
_MIDDLES: Final = word_set("middle centre center mitte mittig centred centered central")
_THAT: Final = word_set("it that this dem diesem")
_SO: Final = frozenset({"so", "hence", "daher", "also"})
_MUST: Final = word_set("must should needs need has will ought soll muss sollte")
_TENS: Final = "er"  # a German 60er is 60 cm wide
_FAR: Final = 7
_LED: Final = 4
_PAIR: Final = 2


@dataclass(frozen=True, slots=True)
class Cupboard:
    """A cupboard's width and how far its near end is from an end of the slab.

    ``side`` is "" and ``start`` None if the message does not say where it stands.
    """

    width: Claim
    side: str = ""
    start: Claim | None = None

    def middle(self) -> Claim | None:
        """Return how far its middle is from that end, worked out; None if that is unsaid."""
        if self.start is None:
            return None
        mm = self.start.mm + self.width.mm / 2
        spans = (*self.start.spans, *self.width.spans)
        length = self.start.length.in_unit(mm)
        return Claim(length, spans, self.start.rank, self.start.order, how="worked-out")


def is_row(sentence: Sentence, found: Sequence[Mention]) -> bool:
    """Whether a sentence only tells how wide cupboards are: "Three units: a 600, then a 500"."""
    first = found[0] if found else None
    ours = [one for one in found if one.kind in ("slab", "open", "hole", "leg")]
    is_led = first is not None and first.kind == "thing" and first.start <= _LED
    is_led = is_led and sentence.words[found[0].end - 1] in PLURALS
    return is_led and not ours and not _concludes(sentence)


def _concludes(sentence: Sentence) -> bool:
    """Return whether a sentence goes on to what the slab must be: "so it needs to be 640"."""
    words = sentence.words
    led = [i for i, word in enumerate(words) if word in _SO]
    return any(_THAT & set(words[i + 1 : i + 3]) and _MUST & set(words[i : i + _LED]) for i in led)


def listed_widths(sentence: Sentence, sizes: Sequence[Measure]) -> list[Measure]:
    """Return the widths that are listed of cupboards: "on two units, one 900 and one 600 wide".

    They are of neither the slab nor an opening, whichever was spoken of last.
    """
    words = sentence.words
    named = (i for i, word in enumerate(words) if word in PLURALS)
    start = next((i for i in named if _UNDER & set(words[max(0, i - _FAR) : i])), len(words))
    later = range(start + 1, len(words))
    end = next((i for i in later if not _is_listed(sentence.atoms[i])), len(words))
    listed = [size for size in sizes if start < size.at < end]
    are_widths = all(size.of == 1 and not size.side and _is_one(words, size) for size in listed)
    return listed if len(listed) >= _PAIR and are_widths else []


def _is_one(words: Sequence[str], size: Measure) -> bool:
    """Return whether a size is of one cupboard of a list: "one 900", "900 wide"."""
    return size.role == "wide" or (not size.role and words[size.at - 1] in _ONES)


def _is_listed(atom: Atom) -> bool:
    return atom.kind in ("size", "other") or atom.word in _LISTED | _MARKS


def cupboards_in(
    sentence: Sentence,
    found: Sequence[Mention],
    sizes: Sequence[Measure],
    assigner: SizeAssigner,
    rank: tuple[int, int],
) -> tuple[list[tuple[Mention, Cupboard]], list[Measure]]:
    """Return the cupboards that a sentence names by their width, and the sizes that are theirs."""
    named: list[tuple[Mention, Cupboard]] = []
    theirs: list[Measure] = []
    for mention in found:
        last = sentence.words[mention.end - 1]
        width = next((size for size in sizes if _is_width(sentence, size, mention)), None)
        if mention.kind != "thing" or last not in _UNITS or width is None:
            continue
        is_tens = sentence.words[width.at + 1 : width.at + 2] == [_TENS]
        known = replace(width, unit_from_label="cm") if is_tens else width
        claim = assigner.claim(known, "place", rank)
        if claim is None:
            continue
        theirs.append(width)
        start = next((size for size in sizes if _is_start(sentence, size, mention)), None)
        begun = assigner.claim(start, "place", rank) if start is not None else None
        if start is not None and begun is not None:
            theirs.append(start)
            named.append((mention, Cupboard(claim, start.side, begun)))
        else:
            named.append((mention, Cupboard(claim)))
    return named, theirs


def middles_of(
    sentence: Sentence, named: Sequence[tuple[Mention, Cupboard]]
) -> dict[int, Cupboard]:
    """Give where a sentence says that something is in the middle of which of its cupboards."""
    return {
        i: cupboard
        for i, word in enumerate(sentence.words)
        if word in _MIDDLES
        for mention, cupboard in named
        if 0 < mention.start - i <= _FAR and not _is_parted(sentence, i, mention.start)
    }


def middles_of_it(sentence: Sentence, last: Cupboard | None) -> dict[int, Cupboard]:
    """Give where a sentence says "in the middle of it", after a cupboard was named."""
    if last is None:
        return {}
    return {
        i: last
        for i, word in enumerate(sentence.words)
        if word in _MIDDLES and _THAT & set(sentence.words[i + 1 : i + _LED])
    }


def _is_parted(sentence: Sentence, low: int, high: int) -> bool:
    return any(atom.word in (",", ";", "(") for atom in sentence.atoms[low:high])


def _is_width(sentence: Sentence, measure: Measure, mention: Mention) -> bool:
    """Whether a size stands right before a cupboard's name: "the 600 unit", "ein 60er Schrank"."""
    between = sentence.words[measure.at + 1 : mention.start]
    near = 0 < mention.start - measure.at <= 1 + len(between) and len(between) <= 1
    return (
        near and measure.of == 1 and (not between or between[0] in (_TENS, "base", "wide", "sink"))
    )


def _is_start(sentence: Sentence, measure: Measure, mention: Mention) -> bool:
    """Return whether a size says how far from an end a cupboard starts."""
    if measure.side not in ("left", "right") or not 0 < measure.at - mention.end <= _FAR:
        return False
    return bool(_STARTS & set(sentence.words[mention.end : measure.at + 6]))
