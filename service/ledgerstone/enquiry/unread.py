"""What of a text was left out, and why: signatures, footers, quotes that nothing rests on."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from ledgerstone.enquiry.gather import Gathered
from ledgerstone.enquiry.lines import Line
from ledgerstone.enquiry.scene import NOWHERE, Claims, Piece, Span

Left = tuple[int, int, str]


def left_out(found: Gathered, entries: Iterable[Mapping[str, Any]]) -> list[dict[str, Any]]:
    """Give the parts of a message's text that were left out, in order, each with why.

    Parameters
    ----------
    entries
        What was read and what is doubtful, with the words that each rests on.
    """
    used = [(span["start"], span["end"]) for entry in entries for span in _spans_of(entry)]
    marked: list[Left] = [
        *found.parts.ignored,
        *((start, end, "struck out") for start, end in found.mail.struck),
        *_quoted(found, used),
        *((start, end, "superseded") for start, end in _superseded(found, used)),
    ]
    return [{"start": start, "end": end, "why": why} for start, end, why in sorted(set(marked))]


def _spans_of(entry: Mapping[str, Any]) -> Iterator[Mapping[str, int]]:
    yield from entry.get("from", ())
    for reading in entry.get("readings", ()):
        yield from reading["from"]


def _quoted(found: Gathered, used: list[Span]) -> Iterator[Left]:
    """Give runs of quoted lines that nothing rests on."""
    run: list[Line] = []
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


def _whole(run: list[Line]) -> Iterator[Left]:
    if any(line.words.strip() for line in run):
        yield run[0].start, run[-1].end, "quoted"


def _superseded(found: Gathered, used: list[Span]) -> Iterator[Span]:
    """Give sizes that a newer message, or a correction, took the place of."""
    for piece in found.scene.pieces:
        for claims in _claims_of(piece):
            for listed in claims.values():
                top = max((one.rank for one in listed), default=(0, 0))
                for one in listed:
                    spans = [span for span in one.spans if span != NOWHERE]
                    if one.rank < top:
                        yield from (span for span in spans if span not in used)


def _claims_of(piece: Piece) -> Iterator[Claims]:
    yield piece.claims
    yield from (opening.claims for opening in piece.openings)
