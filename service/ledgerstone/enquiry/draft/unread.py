"""What was said and was neither read nor set aside: sizes, openings and slabs, so none is lost."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Any, Final

from ledgerstone.enquiry.draft.left_out import spans_of
from ledgerstone.enquiry.facts.message_facts import MessageFacts
from ledgerstone.enquiry.scene.said import NOWHERE, SaidOpening
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.values.pieces import PieceFound

_NEAR: Final = 12  # characters between the sizes of one group


def unread(
    found: MessageFacts, entries: Iterable[Mapping[str, Any]], ignored: Sequence[Mapping[str, Any]]
) -> list[dict[str, Any]]:
    """Return every size, opening and slab that a message tells and that no list accounts for.

    Parameters
    ----------
    entries
        What was read and what is doubtful, with the words that each rests on.
    ignored
        What was left out, each with why.
    """
    used = [(span["start"], span["end"]) for entry in entries for span in spans_of(entry)]
    known = _merged([*used, *((one["start"], one["end"]) for one in ignored)])
    text = found.mail.text
    listed = [("size", span) for span in _grouped(text, _free(found.scene.sizes, known))]
    listed += [("opening", span) for span in _free(_openings(found), known)]
    listed += [("slab", span) for span in _free(_slabs(found), known)]
    return [
        {"kind": kind, "start": start, "end": end, "text": text[start:end]}
        for kind, (start, end) in sorted(set(listed), key=lambda one: one[1])
    ]


def _merged(spans: Iterable[TextSpan]) -> list[TextSpan]:
    """Return spans in order, those that touch made one."""
    merged: list[TextSpan] = []
    for start, end in sorted(spans):
        if merged and start <= merged[-1][1]:
            merged[-1] = (merged[-1][0], max(end, merged[-1][1]))
        else:
            merged.append((start, end))
    return merged


def _free(spans: Iterable[TextSpan], known: Sequence[TextSpan]) -> Iterator[TextSpan]:
    """Yield those spans of which no part is in what is known; both go through the text once."""
    at = 0
    for start, end in sorted(set(spans) - {NOWHERE}):
        while at < len(known) and known[at][1] <= start:
            at += 1
        if at == len(known) or known[at][0] >= end:
            yield start, end


def _grouped(text: str, spans: Iterable[TextSpan]) -> list[TextSpan]:
    """Make one of sizes with only "x" or the like between them: "300 x 25"."""
    joined: list[TextSpan] = []
    for start, end in spans:
        between = text[joined[-1][1] : start] if joined else ""
        if joined and len(between) <= _NEAR and between.strip() in ("x", "X", "×", "by", "mal"):
            joined[-1] = (joined[-1][0], end)
        else:
            joined.append((start, end))
    return joined


def _openings(found: MessageFacts) -> Iterator[TextSpan]:
    """Yield where openings are named that no slab of the order has; a bowl that stands has none."""
    made = {id(opening.opening) for piece in found.pieces for opening in piece.openings}
    for piece in found.scene.pieces:
        for opening in piece.openings:
            if id(opening) not in made and not opening.is_refused and not _stands(opening):
                yield from opening.spans


def _stands(opening: SaidOpening) -> bool:
    return opening.rim is not None and opening.rim.value == "covered"


def _slabs(found: MessageFacts) -> Iterator[TextSpan]:
    """Yield where slabs are named that the order has not."""
    made = {id(piece.piece) for piece in found.pieces}
    known = {_use(piece) for piece in found.pieces}
    for piece in found.scene.pieces:
        if id(piece) not in made and piece.use not in known:
            yield from piece.spans


def _use(found: PieceFound) -> str:
    return found.piece.use
