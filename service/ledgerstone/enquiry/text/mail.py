"""A message as it arrives becomes text with what its headers say; attachments are named only."""

from __future__ import annotations

import contextlib
import email.policy
import re
from dataclasses import dataclass
from datetime import date
from email.header import decode_header, make_header
from email.message import EmailMessage, Message
from email.parser import BytesParser
from email.utils import getaddresses, parsedate_to_datetime
from typing import Final

from ledgerstone.enquiry.text.html_text import HtmlText, text_of_html

MAX_TEXT: Final = 262_144  # characters of text; an enquiry has a few thousand
MAX_PARTS: Final = 300
_FEW_WORDS: Final = 16
_HEADERS: Final = re.compile(
    rb"(?:message-id|mime-version|received|return-path|from|to|subject|date|content-type)[ \t]*:",
    re.IGNORECASE,
)
_IS_MESSAGE: Final = re.compile(
    rb"^(?:message-id|mime-version|received|return-path)[ \t]*:", re.IGNORECASE
)
_SIZED: Final = re.compile(r"\d\s?(?:mm|cm|m|in|inch|ft|feet|x|×|by|\"|')\s?\d?|\d{3}")
_ADDRESS: Final = re.compile(r"[\w.+%-]{1,64}@[\w-]{1,63}(?:\.[\w-]{1,63}){1,8}")


@dataclass(frozen=True, slots=True)
class Person:
    """A name and an address, either of them possibly empty."""

    name: str = ""
    address: str = ""


@dataclass(frozen=True, slots=True)
class Mail:
    """What arrived: its text, what was struck out in it, and its headers.

    ``written`` is the Date header's day where the message was written, or None.
    """

    text: str
    struck: tuple[tuple[int, int], ...] = ()
    sender: Person = Person()
    reply_to: Person = Person()
    subject: str = ""
    message_id: str = ""
    references: str = ""
    written: date | None = None
    attachments: tuple[str, ...] = ()
    is_automatic: bool = False


def read_mail(message: bytes | str) -> Mail:
    """Decode a whole message, or take a body as it is.

    Anything is read: what cannot be decoded becomes replacement characters.
    """
    raw = message.encode("utf-8", "replace") if isinstance(message, str) else message
    if not _is_whole(raw):
        return Mail(_tidied(_decoded(raw, None))[:MAX_TEXT])
    parsed = BytesParser(policy=email.policy.default).parsebytes(raw)
    return _mail_of(parsed)


def _is_whole(raw: bytes) -> bool:
    """Return whether it begins with mail headers, one of them such as no form writes."""
    head = raw.lstrip(b"\xef\xbb\xbf\r\n").replace(b"\r\n", b"\n").partition(b"\n\n")[0][:65_536]
    lines = [line for line in head.split(b"\n") if line[:1] not in (b" ", b"\t")]
    if not lines or lines[0].startswith(b"From "):
        lines = lines[1:]
    if not lines or not all(re.match(rb"[!-9;-~]+[ \t]*:", line) for line in lines):
        return False
    return any(_IS_MESSAGE.match(line) for line in lines) or (
        sum(bool(_HEADERS.match(line)) for line in lines) >= 3
    )


def _mail_of(parsed: EmailMessage) -> Mail:
    found = _body(parsed)
    _with_subject(found, _header(parsed, "Subject"))
    sender = _person(parsed, "From")
    return Mail(
        text=found.text,
        struck=tuple(found.struck),
        sender=sender,
        reply_to=_person(parsed, "Reply-To"),
        subject=_header(parsed, "Subject"),
        message_id=_header(parsed, "Message-ID"),
        references=" ".join(
            filter(None, (_header(parsed, "References"), _header(parsed, "Message-ID")))
        ),
        written=_written(parsed),
        attachments=tuple(_attachments(parsed)),
        is_automatic=_is_automatic(parsed),
    )


def _with_subject(found: HtmlText, subject: str) -> None:
    """Begin the text with a subject that has sizes where the text itself has none."""
    if _SIZED.search(subject) and not _SIZED.search(found.text):
        found.text = f"{subject}\n\n{found.text}"
        shift = len(subject) + 2
        found.struck = [(start + shift, end + shift) for start, end in found.struck]


def _header(parsed: Message, name: str) -> str:
    """Return a header as plain text, whatever is wrong with it."""
    try:
        value = str(parsed.get(name, ""))
    except (ValueError, LookupError, IndexError, AttributeError, TypeError):
        return ""
    if "=?" in value:
        with contextlib.suppress(ValueError, LookupError):
            value = str(make_header(decode_header(value)))
    return " ".join(value.split())[:998]


def _person(parsed: Message, name: str) -> Person:
    value = _header(parsed, name)
    for shown, address in getaddresses([value])[:1]:
        if _ADDRESS.fullmatch(address):
            return Person(shown.strip(), address)
    found = _ADDRESS.search(value)
    return Person("", found[0]) if found else Person()


def _written(parsed: Message) -> date | None:
    try:
        return parsedate_to_datetime(_header(parsed, "Date")).date()
    except (ValueError, TypeError, OverflowError, IndexError):
        return None


def _is_automatic(parsed: Message) -> bool:
    automatic = _header(parsed, "Auto-Submitted").lower() not in ("", "no")
    bulk = _header(parsed, "Precedence").lower() in ("bulk", "list", "junk")
    return automatic or bulk or bool(parsed["List-Id"] or parsed["List-Unsubscribe"])


def _parts(parsed: Message) -> list[Message]:
    """Return leaf parts in order, not those of attached messages, at most a fixed number."""
    leaves: list[Message] = []
    waiting: list[Message] = [parsed]
    while waiting and len(leaves) < MAX_PARTS:
        part = waiting.pop()
        inner = part.get_payload() if part.get_content_maintype() == "multipart" else None
        if isinstance(inner, list):
            waiting.extend(reversed([one for one in inner if isinstance(one, Message)]))
        else:
            leaves.append(part)
    return leaves


def _is_attachment(part: Message) -> bool:
    try:
        said = part.get_content_disposition() == "attachment" or bool(part.get_filename())
    except (ValueError, LookupError, TypeError, AttributeError):
        said = True
    return said or part.get_content_maintype() != "text"


def _attachments(parsed: Message) -> list[str]:
    names = []
    for part in _parts(parsed):
        if _is_attachment(part):
            try:
                name = part.get_filename() or part.get_content_type()
            except (ValueError, LookupError, TypeError, AttributeError):
                name = "attachment"
            names.append(" ".join(str(name).split())[:120])
    return names


def _body(parsed: Message) -> HtmlText:
    """Choose the plain text, or the HTML where only it shows a table or what is struck out."""
    plain: list[str] = []
    pages: list[str] = []
    for part in _parts(parsed):
        if _is_attachment(part):
            continue
        text = _part_text(part)
        (pages if part.get_content_subtype() == "html" else plain).append(text)
    page = text_of_html("\n".join(pages)[:MAX_TEXT]) if pages else HtmlText("")
    words = _tidied("\n".join(plain))[:MAX_TEXT]
    says_more = len(words.split()) < _FEW_WORDS or page.struck or page.has_table
    if page.text.strip() and says_more:
        return page
    return HtmlText(words)


def _part_text(part: Message) -> str:
    try:
        raw = part.get_payload(decode=True)
    except (ValueError, LookupError, AssertionError):
        raw = None
    if not isinstance(raw, bytes):
        inner = part.get_payload()
        return inner if isinstance(inner, str) else ""
    return _decoded(raw[: 4 * MAX_TEXT], part.get_content_charset())


def _decoded(raw: bytes, charset: str | None) -> str:
    """Decode by the charset that was named, else UTF-8, else Windows-1252."""
    for name in (charset, "utf-8", "cp1252"):
        if name:
            try:
                return raw.decode(name)
            except (UnicodeError, LookupError, ValueError):
                continue
    return raw.decode("latin-1")


def _tidied(text: str) -> str:
    """Make line ends plain; nothing else is changed."""
    return text.replace("\r\n", "\n").replace("\r", "\n").replace("\0", " ").removeprefix("\ufeff")
