"""What of a text was left out, and why: signatures, footers, quotes that nothing rests on."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Any

from ledgerstone.enquiry.facts.message_facts import MessageFacts
from ledgerstone.enquiry.scene.said import NOWHERE, Claim, Claims, SaidPiece, newest
from ledgerstone.enquiry.text.lines import TextLine
from ledgerstone.enquiry.text.tokens import TextSpan

Left = tuple[int, int, str]


def left_out(found: MessageFacts, entries: Iterable[Mapping[str, Any]]) -> list[dict[str, Any]]:
    """Return the parts of a message's text that were left out, in order, each with why.

    Parameters
    ----------
    entries
        What was read and what is doubtful, with the words that each rests on.
    """
    used = [(span["start"], span["end"]) for entry in entries for span in spans_of(entry)]
    marked: list[Left] = [
        *found.parts.ignored,
        *((start, end, "struck out") for start, end in found.mail.struck),
        *_quoted(found, used),
        *((start, end, "more slabs than are read") for start, end in _joined(found.scene.left)),
        *_replaced(found, used),
        *((*span, why) for span, why in found.scene.aside.items() if not _is_in(span, used)),
    ]
    return [{"start": start, "end": end, "why": why} for start, end, why in sorted(set(marked))]


def spans_of(entry: Mapping[str, Any]) -> Iterator[Mapping[str, int]]:
    """Yield the words that an entry rests on, those of each of its readings too."""
    yield from entry.get("from", ())
    for reading in entry.get("readings", ()):
        yield from reading["from"]


def _quoted(found: MessageFacts, used: list[TextSpan]) -> Iterator[Left]:
    """Yield runs of quoted lines that nothing rests on."""
    run: list[TextLine] = []
    for i, part in enumerate(found.parts.parts):
        for line in part.lines:
            is_old = line.depth > 0 or (i > 0 and part.kind == "quoted")
            rests = any(line.start <= start < line.end for start, _ in used)
            if is_old and not rests:
                run.append(line)
            else:
                yield from _whole(run)
                run = []
    yield from _whole(run)


def _whole(run: list[TextLine]) -> Iterator[Left]:
    if any(line.words.strip() for line in run):
        yield run[0].start, run[-1].end, "quoted"


def _joined(spans: Sequence[TextSpan]) -> Iterator[TextSpan]:
    """Yield one span from the first to the last of sentences that follow one another."""
    if spans:
        yield min(spans)[0], max(spans)[1]


def _replaced(found: MessageFacts, used: Sequence[TextSpan]) -> Iterator[Left]:
    """Yield sizes of which others took the place, or that only say again what was said."""
    pieces = {id(piece.piece) for piece in found.pieces}
    for piece in found.scene.pieces:
        for claims in _claims_of(piece) if id(piece) in pieces else ():
            for listed in claims.values():
                kept = newest(listed)
                for one in listed:
                    why = _why_not(one, kept)
                    spans = [span for span in one.spans if span != NOWHERE and why]
                    yield from ((*span, why) for span in spans if not _is_in(span, used))


def _why_not(claim: Claim, kept: Sequence[Claim]) -> str:
    """Give why a size that was said is not one of those that stand; "" where it is."""
    if any(claim is other for other in kept):
        return ""
    if any(claim.agrees(other) for other in kept):
        return "said again"
    if claim.opinion:
        return "somebody's opinion"
    is_hole = claim.strong or not any(other.strong for other in kept)
    return "superseded" if is_hole else "what goes into the hole"


def _is_in(span: TextSpan, used: Sequence[TextSpan]) -> bool:
    return any(start < span[1] and span[0] < end for start, end in used)


def _claims_of(piece: SaidPiece) -> Iterator[Claims]:
    yield piece.claims
    yield from (opening.claims for opening in piece.openings)
