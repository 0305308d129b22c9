"""What a sentence is in the middle of: a cupboard, or one of the two sizes of the slab."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from ledgerstone.enquiry.scene.cupboards import (
    PLURALS,
    cupboards_in,
    is_row,
    listed_widths,
    middles_of,
    middles_of_it,
)
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.said import Claim
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.scope import OF_ANOTHER
from ledgerstone.enquiry.words.word_sets import word_set

_IN_THE: Final = (
    ["in", "the"],
    ["across", "the"],
    ["on", "the"],
    ["of", "the"],
    ["along", "the"],
)
_EDGES: Final = frozenset({"edge", "rim", "side", "kante"})

# The one cabinet that a vanity top lies on, whose middle is the top's: "centered on the cabinet".
_ONE_UNIT: Final = frozenset({"unit", "cabinet", "cupboard", "vanity", "unterschrank", "schrank"})
_ON_UNIT: Final = word_set("on over above to with auf über zum")
_THE: Final = word_set("the our my dem den unserem meinem")
_OF_UNIT: Final = word_set("vanity base bathroom")


def note_cupboards(focus: Focus, parsed: ParsedSentence) -> None:
    """Set the sizes of cupboards apart, and note what stands in the middle of which."""
    sentence = parsed.sentence
    focus.has_row = focus.has_row or bool(PLURALS & set(sentence.words))
    if is_row(sentence, parsed.found) and not any(size.is_sum for size in parsed.sizes):
        parsed.sizes, parsed.found = [], []
    widths = listed_widths(sentence, parsed.sizes)
    focus.subjects.scene.set_aside([size.size for size in widths], OF_ANOTHER)
    parsed.sizes = [size for size in parsed.sizes if not any(size is one for one in widths)]
    named, theirs = cupboards_in(sentence, parsed.found, parsed.sizes, focus.assigner, parsed.rank)
    focus.cupboard = named[-1][1] if named else focus.cupboard
    parsed.middles = middles_of(sentence, named) or middles_of_it(sentence, focus.cupboard)
    if not (parsed.middles or focus.cupboard is not None):
        return
    parsed.sizes = [size for size in parsed.sizes if not any(size is two for two in theirs)]
    parsed.found = [
        mention for mention in parsed.found if not any(mention is two for two, _ in named)
    ]
    for size in parsed.sizes if theirs else ():  # it is the cupboard that starts there
        near = sentence.words[theirs[-1].at : size.at]
        size.to_edge = size.to_edge and bool(_EDGES & set(near))


def is_on_one_unit(words: list[str], end: int) -> bool:
    """Return whether "centred", which ends at a word, is on the one cabinet below the slab."""
    led, after = words[end : end + 2], words[end + 2 : end + 5]
    is_led = len(led) == 2 and led[0] in _ON_UNIT and led[1] in _THE
    nouns = [i for i, word in enumerate(after) if word in _ONE_UNIT and word not in _OF_UNIT]
    if is_led and nouns:
        return set(after[: nouns[0]]) <= _OF_UNIT
    return is_led and after[:1] == ["vanity"] and after[1:2] != ["top"]


def note_ways(focus: Focus, parsed: ParsedSentence) -> None:
    """Note "central in the 900", where that is one of the two sizes of the current slab."""
    words = parsed.sentence.words
    ends = {i + count for i, count in parsed.sentence.marks("centred")}
    for measure in list(parsed.sizes) if ends else ():
        two_before = words[max(0, measure.at - 2) : measure.at]
        is_bare = measure.of == 1 and not (measure.role or measure.side)
        if not is_bare or measure.at - 2 not in ends or two_before not in _IN_THE:
            continue
        for axis, known in _extents(focus, parsed, measure):
            claim = focus.assigner.claim(measure, "deep", parsed.rank)
            if claim is not None and any(claim.agrees(one) for one in known):
                parsed.ways[measure.at - 2] = axis
                parsed.sizes = [size for size in parsed.sizes if size is not measure]


def _extents(
    focus: Focus, parsed: ParsedSentence, until: Measure
) -> Iterator[tuple[str, list[Claim]]]:
    """Give what a slab's length and depth are said to be, by their axes, before a size."""
    piece = focus.subjects.piece
    claims = piece.claims if piece is not None else {}
    group = [size for size in parsed.sizes if size.of > 1 and size.at < until.at][:2]
    said = [focus.assigner.claim(one, "deep", parsed.rank) for one in group]
    sizes = sorted((one for one in said if one is not None), key=lambda one: -one.mm)
    for i, (axis, key) in enumerate((("x", "length"), ("y", "width"))):
        yield axis, [*claims.get(key, []), *sizes[i : i + 1]]
