"""A message's text in parts: the newest words, what they quote, and what to leave out."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Final, Literal

from ledgerstone.enquiry.mail import Person

Span = tuple[int, int]
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
_CLOSING: Final = re.compile(
    r"[ \t]*(?:(?:with |mit )?(?:many |kind |best |warm |kindest |warmest |friendly "
    r"|very best |all the "
    r"|yours |freundlichen |freundlicher |freundliche |viele |beste |liebe |herzliche |schöne "
    r"|kindly )*"
    r"(?:regards|thanks|thank you|cheers|wishes|greetings|best|faithfully|sincerely|truly|ta"
    r"|rgds|br|kr|thx|tx"
    r"|grüßen|grüße|gruß|gruss|gruessen|grüsse|dank|danke|vg|mfg|lg|obrigado|merci|warmly"
    r"|yours|ttfn"
    r"|cordially|bye|love|respectfully|warmest|many thanks|ciao|sincerest)(?: (?:in advance"
    r"|again|so much|very much|a lot|and regards"
    r"|and best wishes|for reading to the end|eh|aus \w+))?)[ \t]*[,.!-]*[ \t]*(.{0,60})\Z",
    re.IGNORECASE,
)
_POSTSCRIPT: Final = re.compile(r"[ \t]*p\.?\s?s\b", re.IGNORECASE)
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
_TITLES: Final = frozenset({"mr", "mrs", "ms", "miss", "dr", "herr", "frau"})
_LONGEST_SIGNATURE: Final = 8
_LONGEST_HEAD: Final = 400
MOST_LINES: Final = 20_000


@dataclass(frozen=True, slots=True)
class Line:
    """One line: its place in the text, how deep it is quoted, and its own words."""

    start: int
    end: int
    depth: int
    words: str


@dataclass(slots=True)
class Part:
    """A stretch of one message: newest first in the text, who wrote it, when it says it was."""

    kind: PartKind
    lines: list[Line]
    author: Person = field(default_factory=Person)
    dated: str = ""
    signature: list[Line] = field(default_factory=list)

    @property
    def span(self) -> Span:
        """From its first line to the end of its last."""
        return (self.lines[0].start, self.lines[-1].end) if self.lines else (0, 0)


@dataclass(slots=True)
class Parts:
    """The parts in the order of the text, and what to leave out with why.

    ``is_inline``: replies stand between the quoted lines.
    """

    parts: list[Part]
    ignored: list[tuple[int, int, str]]
    is_inline: bool = False


def lines_of(text: str) -> list[Line]:
    """Give the lines of a text, at most so many."""
    lines, at = [], 0
    barred = False
    for raw in text.split("\n")[:MOST_LINES]:
        marks = "> \t|" if barred and raw.startswith("|") else "> \t"
        stripped = raw.lstrip(marks) if _QUOTE.match(raw) or "|" in marks else raw
        prefix = raw[: len(raw) - len(stripped)]
        lines.append(Line(at, at + len(raw), prefix.count(">") + prefix.count("|"), stripped))
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


def _is_inline(lines: Sequence[Line]) -> bool:
    """Whether new words stand after a quoted line more than once, or before and after it."""
    turns = 0
    last = 0
    for line in lines:
        if not line.words.strip() or _CLOSING.match(line.words) or line.depth > 1:
            continue
        if last == 1 and line.depth == 0 and len(line.words.split()) > 0:
            turns += 1
        last = line.depth
    return turns >= 2


def _divide(lines: list[Line], found: Parts) -> None:
    part = Part("newest", [])
    found.parts.append(part)
    is_forward = False
    i = 0
    while i < len(lines):
        line = lines[i]
        if _SEPARATOR.match(line.words):
            is_forward = bool(_FORWARDS.search(line.words))
            found.ignored.append((line.start, line.end, "separator"))
            part = Part("forwarded" if is_forward else "quoted", [])
            found.parts.append(part)
            i += 1
            continue
        taken = _header_block(lines, i)
        if taken:
            if part.lines or part.kind == "newest":
                part = Part("quoted", [])
                found.parts.append(part)
            i = _enter(part, lines, i, taken, found)
            continue
        taken = _attribution(lines, i)
        if taken:
            if not found.is_inline:
                part = Part("quoted", [])
                found.parts.append(part)
            part.author = _person_in(" ".join(one.words for one in lines[i : i + taken]))
            found.ignored.append((line.start, lines[i + taken - 1].end, "attribution"))
            i += taken
            continue
        part.lines.append(line)
        i += 1


def _enter(part: Part, lines: list[Line], i: int, taken: int, found: Parts) -> int:
    header = _FIRST_HEADER.match(lines[i].words)
    part.author = _person_in(header[1]) if header else Person()
    for line in lines[i : i + taken]:
        dated = _DATE_HEADER.match(line.words)
        part.dated = dated[1].strip() if dated else part.dated
    found.ignored.append((lines[i].start, lines[i + taken - 1].end, "header of an earlier message"))
    return i + taken


def _header_block(lines: list[Line], i: int) -> int:
    """Give how many lines of headers begin here: a From line and at least two that follow it."""
    if not _FIRST_HEADER.match(lines[i].words):
        return 0
    taken, j = 1, i + 1
    while j < min(i + 9, len(lines)) and _NEXT_HEADER.match(lines[j].words):
        taken, j = j - i + 1, j + 1
    return taken if taken >= 3 else 0


def _attribution(lines: list[Line], i: int) -> int:
    """Give how many lines an attribution takes: "On … wrote:" over one or two of them."""
    for count in (1, 2):
        if i + count > len(lines):
            break
        joined = " ".join(one.words.strip() for one in lines[i : i + count])
        follows = next((one for one in lines[i + count : i + count + 3] if one.words.strip()), None)
        is_quoting = follows is not None and follows.depth > lines[i].depth
        if len(joined) < 400 and _ATTRIBUTION.match(joined) and (is_quoting or count == 1):
            return count
    return 0


def _person_in(text: str) -> Person:
    """Give the name and address that a header or an attribution holds."""
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


def _leave_out(part: Part, found: Parts, name: str) -> None:
    """Set the signature and the footers of a part apart from its lines."""
    kept: list[Line] = []
    why = ""
    signed_from = _signed_from(part.lines, name)
    for i, line in enumerate(part.lines):
        if _DEVICE.match(line.words):
            found.ignored.append((line.start, line.end, "signature"))
            continue
        if _POSTSCRIPT.match(line.words):
            why = ""
        elif _FOOTER.match(line.words):
            why = "footer"
        elif _DELIMITER.match(line.words) and i:
            why = "signature"
        elif i == signed_from:
            why = why or "signature"
        if why:
            found.ignored.append((line.start, line.end, why))
            if why == "signature":
                part.signature.append(line)
        else:
            kept.append(line)
    part.lines = kept


def is_closing(words: str) -> bool:
    """Whether a line is only the closing words of a letter."""
    found = _CLOSING.match(words.strip())
    return found is not None and not found[1].strip()


def _is_name_of(words: str, name: str) -> bool:
    """Whether a line is only a person's name, or the first or the last part of it."""
    own = {one for one in re.findall(r"[^\W\d_]{2,}", name.lower())}
    said = [one for one in re.findall(r"[^\W\d_]{2,}", words.lower()) if one not in _TITLES]
    is_plain = len(words) <= 60 and not re.search(r"[\d:?!]", words)
    return bool(said) and is_plain and set(said) <= own


def _signed_from(lines: list[Line], name: str = "") -> int:
    """Give the line that closes a letter, or one past the last: few lines follow it."""
    filled = [i for i, line in enumerate(lines) if line.words.strip()]
    for back, i in enumerate(reversed(filled[-14:])):
        words = lines[i].words.strip()
        found = _CLOSING.match(words)
        if found is None or len(found[1].split()) > 6 or re.search(r"\d", found[1]):
            continue
        if back <= 7 or any(_POSTSCRIPT.match(lines[j].words) for j in filled[-back:]):
            return i
    for back, i in enumerate(reversed(filled[-_LONGEST_SIGNATURE:])):
        has_more = back < len(filled) - 1
        if name and has_more and lines[i].depth == 0 and _is_name_of(lines[i].words, name):
            return i
    return len(lines)
