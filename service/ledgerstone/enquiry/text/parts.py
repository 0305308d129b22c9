"""A message's text in parts: the newest words, what they quote, and what to leave out."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Final, Literal

from ledgerstone.enquiry.text.lines import TextLine
from ledgerstone.enquiry.text.mail import Person
from ledgerstone.enquiry.text.signatures import CLOSING, POSTSCRIPT, signed_from
from ledgerstone.enquiry.text.tokens import TextSpan

PartKind = Literal["newest", "quoted", "forwarded"]

_ADDRESS: Final = re.compile(r"[\w.+%-]{1,64}@[\w-]{1,63}(?:\.[\w-]{1,63}){1,8}")
_FIRST_HEADER: Final = re.compile(
    r"[> \t*]*(?:from|von|de|da|van)[ \t*]*:[ \t*]*(\S.{0,300})", re.IGNORECASE
)
_NEXT_HEADER: Final = re.compile(
    r"[> \t*]*(?:sent|date|subject|to|cc|gesendet|datum|betreff|an|enviado|enviada|para"
    r"|assunto|asunto"
    r"|envoyé|à|objet|verzonden|aan|onderwerp|inviato|a|oggetto|reply-to)[ \t*]*:",
    re.IGNORECASE,
)
_DATE_HEADER: Final = re.compile(
    r"[> \t*]*(?:sent|date|gesendet|datum|enviado|enviada|envoyé|verzonden"
    r"|inviato)[ \t*]*:(.{1,120})",
    re.IGNORECASE,
)
_SEPARATOR: Final = re.compile(
    r"[> \t]*(?:[-_*]{2,}[ \t]{0,3}(?:forwarded|original|ursprüngliche|weitergeleitete)"
    r"|begin forwarded message|anfang der weitergeleiteten)",
    re.IGNORECASE,
)
_FORWARDS: Final = re.compile(r"forward|weitergeleitet", re.IGNORECASE)
_ATTRIBUTION: Final = re.compile(
    r"[> \t]*(?:(?:on|am|le|el|op|il)\s.{1,200}(?:wrote|schrieb|écrit|escribió|schreef|scritto)"
    r"(?:\s.{0,120})?:|on\s.{1,120},.{1,60}wrote:|\S.{0,80}\b(?:wrote|schrieb)\s(?:on"
    r"|am)?.{0,60}:)\s*\Z",
    re.IGNORECASE,
)
_QUOTE: Final = re.compile(r"[ \t]*>")
_DEVICE: Final = re.compile(
    r"[ \t]*(?:sent from my|sent via|gesendet von|von meinem|get outlook for)", re.IGNORECASE
)
_FOOTER: Final = re.compile(
    r"[ \t]*(?:this (?:e-?mail|mail|message) (?:and any|was sent|is (?:confidential|intended)"
    r"|has been"
    r"|may contain)|confidential|disclaimer|diese e-?mail|registered (?:office|in)|unsubscribe"
    r"|you (?:get|received) this|company (?:no|reg)|vat (?:no|reg))",
    re.IGNORECASE,
)
_DELIMITER: Final = re.compile(r"(?:--|__+|—)[ \t]*\Z")
_LONGEST_HEAD: Final = 400
MAX_LINES: Final = 20_000


@dataclass(slots=True)
class MailPart:
    """A stretch of one message: newest first in the text, who wrote it, when it says it was."""

    kind: PartKind
    lines: list[TextLine]
    author: Person = field(default_factory=Person)
    dated: str = ""
    signature: list[TextLine] = field(default_factory=list)

    @property
    def span(self) -> TextSpan:
        """From its first line to the end of its last."""
        return (self.lines[0].start, self.lines[-1].end) if self.lines else (0, 0)


@dataclass(slots=True)
class Parts:
    """The parts in the order of the text, and what to leave out with why.

    ``is_inline``: replies stand between the quoted lines.
    """

    parts: list[MailPart]
    ignored: list[tuple[int, int, str]]
    is_inline: bool = False


def lines_of(text: str) -> list[TextLine]:
    """Return the lines of a text, at most a fixed number."""
    lines, at = [], 0
    barred = False
    for raw in text.split("\n")[:MAX_LINES]:
        marks = "> \t|" if barred and raw.startswith("|") else "> \t"
        stripped = raw.lstrip(marks) if _QUOTE.match(raw) or "|" in marks else raw
        prefix = raw[: len(raw) - len(stripped)]
        lines.append(TextLine(at, at + len(raw), prefix.count(">") + prefix.count("|"), stripped))
        barred = "|" in marks or (len(raw) < _LONGEST_HEAD and bool(_ATTRIBUTION.match(raw)))
        at += len(raw) + 1
    return lines


def parts_of(text: str, sender: Person | None = None) -> Parts:
    """Divide a text into its newest words and what they quote or pass on.

    Parameters
    ----------
    sender
        Who sent it: a line near the end that is only their name signs it.
    """
    lines = lines_of(text)
    found = Parts([], [])
    found.is_inline = _is_inline(lines)
    _divide(lines, found)
    for part in found.parts:
        author = sender if part.kind == "newest" and sender is not None else part.author
        _leave_out(part, found, author.name)
    found.parts = [part for part in found.parts if part.lines]
    return found


def _is_inline(lines: Sequence[TextLine]) -> bool:
    """Return whether new words stand after a quoted line more than once, or before and after it."""
    turns = 0
    last = 0
    for line in lines:
        if not line.words.strip() or CLOSING.match(line.words) or line.depth > 1:
            continue
        if last == 1 and line.depth == 0 and len(line.words.split()) > 0:
            turns += 1
        last = line.depth
    return turns >= 2


def _divide(lines: list[TextLine], found: Parts) -> None:
    part = MailPart("newest", [])
    found.parts.append(part)
    is_forward = False
    i = 0
    while i < len(lines):
        line = lines[i]
        if _SEPARATOR.match(line.words):
            is_forward = bool(_FORWARDS.search(line.words))
            found.ignored.append((line.start, line.end, "separator"))
            part = MailPart("forwarded" if is_forward else "quoted", [])
            found.parts.append(part)
            i += 1
            continue
        taken = _header_block(lines, i)
        if taken:
            if part.lines or part.kind == "newest":
                part = MailPart("quoted", [])
                found.parts.append(part)
            i = _enter(part, lines, i, taken, found)
            continue
        taken = _attribution(lines, i)
        if taken:
            if not found.is_inline:
                part = MailPart("quoted", [])
                found.parts.append(part)
            part.author = _person_in(" ".join(line.words for line in lines[i : i + taken]))
            found.ignored.append((line.start, lines[i + taken - 1].end, "attribution"))
            i += taken
            continue
        part.lines.append(line)
        i += 1


def _enter(part: MailPart, lines: list[TextLine], i: int, taken: int, found: Parts) -> int:
    header = _FIRST_HEADER.match(lines[i].words)
    part.author = _person_in(header[1]) if header else Person()
    for line in lines[i : i + taken]:
        dated = _DATE_HEADER.match(line.words)
        part.dated = dated[1].strip() if dated else part.dated
    found.ignored.append((lines[i].start, lines[i + taken - 1].end, "header of an earlier message"))
    return i + taken


def _header_block(lines: list[TextLine], i: int) -> int:
    """Return how many lines of headers begin here: a From line and at least two that follow it."""
    if not _FIRST_HEADER.match(lines[i].words):
        return 0
    taken, j = 1, i + 1
    while j < min(i + 9, len(lines)) and _NEXT_HEADER.match(lines[j].words):
        taken, j = j - i + 1, j + 1
    return taken if taken >= 3 else 0


def _attribution(lines: list[TextLine], i: int) -> int:
    """Return how many lines an attribution takes: "On … wrote:" over one or two of them."""
    for count in (1, 2):
        if i + count > len(lines):
            break
        joined = " ".join(line.words.strip() for line in lines[i : i + count])
        follows = next(
            (line for line in lines[i + count : i + count + 3] if line.words.strip()), None
        )
        is_quoting = follows is not None and follows.depth > lines[i].depth
        if len(joined) < 400 and _ATTRIBUTION.match(joined) and (is_quoting or count == 1):
            return count
    return 0


def _person_in(text: str) -> Person:
    """Return the name and address that a header or an attribution holds."""
    found = _ADDRESS.search(text)
    before = text[: found.start()] if found else text
    name = re.split(r"[<\[(\"]|mailto:", before)[0].strip(" ,:*\"'")
    if re.match(r"(?:on|am|le|op)\s", name, re.IGNORECASE):
        name = name.rpartition(",")[2].strip()
        name = re.sub(
            r"\s(?:wrote|schrieb)\b.*",
            "",
            re.sub(r".*?\d\d:\d\d\S*\s?(?:[AaPp][Mm])?,?\s?", "", name),
        )
    name = re.sub(r"\s(?:wrote|schrieb)\b.*", "", name)
    return Person(name.strip(), found[0] if found else "")


def _leave_out(part: MailPart, found: Parts, name: str) -> None:
    """Set the signature and the footers of a part apart from its lines."""
    kept: list[TextLine] = []
    why = ""
    signed_at = signed_from(part.lines, name)
    for i, line in enumerate(part.lines):
        if _DEVICE.match(line.words):
            found.ignored.append((line.start, line.end, "signature"))
            continue
        if POSTSCRIPT.match(line.words):
            why = ""
        elif _FOOTER.match(line.words):
            why = "footer"
        elif _DELIMITER.match(line.words) and i:
            why = "signature"
        elif i == signed_at:
            why = why or "signature"
        if why == "signature" and line.depth > part.lines[0].depth:
            why = ""  # what is quoted under a signature is no part of it
        if why:
            found.ignored.append((line.start, line.end, why))
            if why == "signature":
                part.signature.append(line)
        else:
            kept.append(line)
    part.lines = kept
