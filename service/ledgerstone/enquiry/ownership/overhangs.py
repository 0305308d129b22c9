"""A length told by what the slab lies on: "the units come to 2400, the top hangs over 20 each end".

A length of its own, said anywhere, goes before it.
"""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.ownership.differences import in_its_unit
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.said import Claim, say
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_ROWS: Final = word_set(
    "units unit cabinets cupboards carcasses base bases blockwork unterschränke schränke korpusse"
)
_OVER: Final = word_set(
    "overhang overhangs overhanging oversail oversails oversailing stick sticks sticking past"
    " project projects beyond überstehen übersteht überstand hinausragen"
)
_BOTH_ENDS: Final = frozenset(
    (which, end)
    for which in ("each", "either", "both", "jedem", "jeder", "beiden")
    for end in ("end", "ends", "side", "sides", "ende", "enden", "seite", "seiten")
)
_BARE: Final = frozenset({"", "apart"})
_LONG: Final = frozenset({"long", "size"})


def read_overhangs(focus: Focus, parsed: ParsedSentence) -> None:
    """Keep how long the units are; add to it what the slab is said to hang over at both ends."""
    sentence = parsed.sentence
    over = _overhang(sentence, parsed.told)
    rows = [size for size in parsed.told if size is not over and _is_length(size)]
    if _ROWS & set(sentence.words) and len(rows) == 1:
        focus.row = focus.assigner.claim(rows[0], "length", (parsed.rank[0], 0))
    row, piece = focus.row, focus.subjects.piece
    if row is None or over is None or piece is None or focus.is_l() or piece.claims.get("length"):
        return
    by_mm = in_its_unit(over, row.length)
    spans = (*row.spans, (over.size.start, over.size.end))
    length = row.length.in_unit(row.mm + 2 * by_mm)
    whole = Claim(length, spans, parsed.rank, row.order, strong=False, how="worked-out")
    say(piece.claims, "length", whole)


def _is_length(size: Measure) -> bool:
    return not size.side and size.of == 1 and (size.role in _LONG or size.axis == "x")


def _overhang(sentence: Sentence, sizes: list[Measure]) -> Measure | None:
    """Return by how much something hangs over at both ends, if a sentence says that."""
    words = sentence.words
    if not _OVER & set(words) or not _BOTH_ENDS & set(pairwise(words)):
        return None
    over = min(i for i, word in enumerate(words) if word in _OVER)
    near = sorted(
        (size for size in sizes if size.of == 1 and size.role in _BARE and not size.side),
        key=lambda size: abs(size.at - over),
    )
    return near[0] if near else None
