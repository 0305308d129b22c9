"""Who asks, and where the answer goes: names, addresses and telephones in a message."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

from ledgerstone.enquiry.sender.addresses import address_of
from ledgerstone.enquiry.sender.notes import is_note, name_in_note
from ledgerstone.enquiry.text.lines import TextLine
from ledgerstone.enquiry.text.mail import Mail, Person
from ledgerstone.enquiry.text.parts import MailPart, Parts
from ledgerstone.enquiry.text.signatures import is_closing, name_before_comma, name_words
from ledgerstone.enquiry.words.word_sets import word_set

_ADDRESS: Final = re.compile(r"[\w.+%-]{1,64}@[\w-]{1,63}(?:\.[\w-]{1,63}){1,8}")
_PHONE: Final = re.compile(
    r"(?<![\w.])(?:\+\d{1,3}[ -]?)?\(?0?\d{2,5}\)?[ /-]?\d{3,8}(?:[ -]?\d{2,6}){0,3}(?!\w)"
)
_ASKS: Final = re.compile(
    r"(?:e-?mail|reply|respond|write|send|answer|quote|price|contact|reach|mail|schicken"
    r"|senden|antwort\w*"
    r"|schreiben)\b[^\n@]{0,80}?(?P<address>[\w.+%-]{1,64}@[\w-]{1,63}(?:\.[\w-]{1,63}){1,8})",
    re.IGNORECASE,
)
_FIELD: Final = re.compile(
    r"[ \t]*(?P<label>full name|your name|customer name|contact name|name|customer|client"
    r"|contact|kunde|from"
    r"|vor- und nachname|ansprechpartner|caller|nom)[ \t]*(?:[:|\t]|\.{2,})[ \t]*(?P<value>\S[^\n"
    r"|\t]{0,80})",
    re.IGNORECASE,
)
_HALVES: Final = tuple(
    re.compile(
        rf"^[ \t]*(?:{label})[ \t]*(?:[:|\t]|\.{{2,}})[ \t]*(?P<value>[^\s:|]{{1,40}})",
        re.IGNORECASE | re.MULTILINE,
    )
    for label in (
        "first name|forename|given name|vorname",
        "last name|surname|family name|nachname",
    )
)
_MAIL_FIELD: Final = re.compile(
    r"[ \t]*(?:your )?e-?mail(?:[ -]?(?:address"
    r"|adresse))?[ \t]*(?:[:|\t]|\.{2,})[ \t]*(?P<value>\S[^\n]{0,120})",
    re.IGNORECASE,
)
_DIRECT: Final = re.compile(
    r"(?:direct(?:ly)? (?:with|to)|contact|reply to|write to|answer|price it to|quote) (?:her"
    r"|him|them|the customer"
    r"|the client)\b",
    re.IGNORECASE,
)
_PASSES_ON: Final = re.compile(
    r"\bone for you\b|\bdeal(?:s|ing)? with (?:him|her|them)\b|\bover to you\b|\bcopy me in\b"
    r"|\b(?:quote|price|help|answer|ring|call|ask) (?:mrs?|ms|miss|dr|him|her|them)\b"
    r"|\b(?:quote|price|help) (?:this |it )?(?:for )?my (?:neighbour|neighbor|friend|customer"
    r"|client"
    r"|sister|brother|mother|mum|father|dad|daughter|son|aunt|uncle|colleague|cousin|tenant)\b"
    r"|\b(?:i|we) (?:only|don['’]t) do\b|\bnot (?:my|our) (?:line|trade|thing)\b"
    r"|\bpass(?:ing|ed)? (?:this |it )?on\b|\bdirekt an (?:sie|ihn)\b|\b(?:ihr|ihm) direkt\b"
    r"|\bdirectly? (?:to|with) (?:him|her|them)\b|\b(?:him|her|them) direct(?:ly)?\b",
    re.IGNORECASE,
)
_TO_ME: Final = re.compile(r"(?:to|back to) me\b|to us\b", re.IGNORECASE)
_NO_PERSON: Final = re.compile(
    r"no-?reply|do-?not-?reply|^forms?@|@forms?\.|mailer|notification|postmaster|^web(?:site"
    r"|form)?@|bounce",
    re.IGNORECASE,
)
_CLOSED: Final = re.compile(
    r"(?:^|[\s,.!?])(?:many |kind |best |warm |yours )?(?:thanks|cheers|regards|thank you|ta|gruß"
    r"|grüßen?|danke|best|vg|lg|mfg|thx|tx|rgds|yours|sincerely|faithfully|truly|love)"
    r"(?: (?:a (?:lot|million|bunch)|so much|very much|again|in advance|im voraus|sehr|and"
    r" regards))?"
    r"[ \t]*[,.!–-]+[ \t]*(?P<name>[^\W\d_][\w'’.&-]*(?:[ \t][\w'’.&-]+){0,4})[ \t]*\Z",
    re.IGNORECASE,
)
_CLOSED_BARE: Final = re.compile(
    r"(?i:\b(?:thanks|cheers|regards|ta|gruß|grüßen?|danke|best|vg|lg|mfg|thx|yours))"
    r"[ \t]+(?P<name>[A-ZÀ-Ý][\w'’-]*(?:[ \t][A-ZÀ-Ý][\w'’.-]*){0,3})[ \t]*\Z"
)
_LAST_WORDS: Final = re.compile(
    r"(?:[.?!]|\d{4}|\b[xX]{2,3})[ \t]+"
    r"(?P<name>[A-Z](?:[\w'’-]*|\.)(?:[ \t][A-Z][\w'’.-]*){0,2})\.?[ \t]*\Z"
)
_LOWER_CLOSED: Final = re.compile(
    r"\b(?:thanks|cheers|ta|thx|regards|lg|vg|mfg|gruß|gruss|danke)[ \t]+(?P<name>[a-zà-ÿ]{2,14})"
    r"[ \t]*\Z"
)
_FOR: Final = re.compile(r"[ \t]*(?:i\. ?a\.|i\. ?v\.|p\.? ?p\.|per pro)[ \t]*", re.IGNORECASE)
_NAME_LINE: Final = re.compile(
    r"[ \t]*(?:i\. ?[AV]\.[ \t]*)?(?:(?:Dr|Mr|Mrs|Ms|Miss|Herr|Frau|Familie|Prof)\.?\s)?"
    r"[A-ZÀ-Ý][\w'’.-]*"
    r"(?:[ \t](?:&|\+|and|und|von|van|de|der"
    r"|[A-ZÀ-Ý][\w'’.-]*)){0,5}(?:[ \t]\([^)\n]{1,12}\))?[ \t]*,?[ \t]*\Z"
)
_NOT_NAMES: Final = word_set(
    "hello hi dear thx thanks thank regards cheers enquiry regards best please sent hallo guten "
    "morning kind yours worktop collection delivery quote total everything invoice price eh "
    "mate again all folks everyone both in for and in advance much very so loads lots guys"
)


@dataclass(frozen=True, slots=True)
class Customer:
    """Who asks; what is not said is empty."""

    name: str = ""
    reply_to: str = ""
    phone: str = ""
    differs: bool = False
    address: str = ""


@dataclass(frozen=True, slots=True)
class Own:
    """How the workshop is known: its name and its address, neither of them a customer's."""

    name: str
    address: str

    def is_own(self, person: Person) -> bool:
        """Return whether a name or an address is the workshop's own."""
        wanted = _letters(self.name)
        domain = person.address.rpartition("@")[2].lower()
        own_domain = self.address.rpartition("@")[2].lower()
        return bool(wanted) and (
            wanted in _letters(person.name)
            or wanted in _letters(domain)
            or (bool(domain) and domain == own_domain)
        )


def _letters(text: str) -> str:
    return "".join(c for c in text.lower() if c.isalnum())


def customer_of(mail: Mail, parts: Parts, own: Own) -> Customer:
    """Return who asks, where they want the answer, and their telephone."""
    newest = parts.parts[0] if parts.parts else MailPart("newest", [])
    inner = _inner(parts, own)
    body = _text(newest)
    is_passed = bool(_DIRECT.search(body) or _PASSES_ON.search(body))
    passed_on = inner is not None and is_passed and not _TO_ME.search(body)
    if passed_on and inner is not None:
        name = _signed(inner, inner.author) or inner.author.name
        words = _text(inner)
        address = address_of(words.split("\n"))
        return Customer(name, inner.author.address, _phone(words), address=address)
    sender = (
        Person()
        if own.is_own(mail.sender) or _NO_PERSON.search(mail.sender.address)
        else mail.sender
    )
    is_from_note = is_note(body) and not sender.address
    name = _field(body) or (name_in_note(body) if is_from_note else "")
    name = name or _signed(newest, sender) or sender.name
    reply_to = _asked(mail, body, own, sender)
    return Customer(
        _tidy(name),
        reply_to,
        _phone(body),
        bool(reply_to) and reply_to != mail.sender.address and bool(mail.sender.address),
        address_of(body.split("\n")),
    )


def _inner(parts: Parts, own: Own) -> MailPart | None:
    """Return the first earlier message that is not the workshop's."""
    for part in parts.parts[1:]:
        if part.author.address and not own.is_own(part.author):
            return part
    return None


def _text(part: MailPart) -> str:
    lines = sorted([*part.lines, *part.signature], key=lambda line: line.start)
    return "\n".join(line.words for line in lines if line.depth == 0 or part.kind != "newest")


def _field(body: str) -> str:
    halves = [found["value"] for half in _HALVES if (found := half.search(body))]
    if len(halves) == len(_HALVES):
        return _tidy(" ".join(halves))
    for line in body.split("\n"):
        found = _FIELD.match(line)
        if found:
            return _tidy(re.split(r",|\s{2,}|\d", found["value"])[0])
    return ""


def _signed(part: MailPart, sender: Person) -> str:
    """Return the name under a message: after its closing words, on a line alone, or at its end."""
    for line in part.signature:
        words = name_words(line)
        closed = _CLOSED.search(words) or _CLOSED_BARE.search(words)
        if closed and closed["name"].split()[0].lower() not in _NOT_NAMES:
            return closed["name"]
    signed = [name_words(line) for line in part.signature if not is_closing(line.words)]
    named = [words for words in signed if words and _is_name(words)]
    if named:
        return _FOR.sub("", _like_sender(named, sender) or named[0])
    filled = [line for line in part.lines if line.words.strip() and line.depth == 0]
    if not filled:
        return ""
    alone = [words for words in map(name_words, filled[-6:]) if words and _is_name(words)]
    if alone and (found := _like_sender(alone, sender)):
        return found
    last = next((words for line in reversed(filled) if (words := name_words(line))), "")
    if alone and alone[-1] == last:
        return alone[-1]
    return _at_the_end(filled, sender) or (alone[-1] if alone else "")


def _at_the_end(filled: Sequence[TextLine], sender: Person) -> str:
    for line in reversed(filled[-3:]):
        words = name_words(line)
        for pattern in (_CLOSED, _CLOSED_BARE, _LAST_WORDS, _LOWER_CLOSED):
            found = pattern.search(words)
            if not found or found["name"].split()[0].lower() in _NOT_NAMES:
                continue
            if pattern is _LAST_WORDS and sender.name and not _like_sender([found["name"]], sender):
                continue
            return found["name"]
    for line in filled[1:][-2:] if not sender.name else ():
        name = name_before_comma(line)
        if name and name.split()[0].lower() not in _NOT_NAMES:
            return name
    for line in filled:
        found = _LAST_WORDS.search(line.words.rstrip())
        if found and _like_sender([found["name"]], sender):
            return found["name"]
    return ""


def _is_name(words: str) -> bool:
    words = words.strip()
    return (
        len(words) <= 60
        and bool(_NAME_LINE.match(words))
        and not words.endswith((".", ":", "?"))
        and words.split()[0].lower().strip(",.!") not in _NOT_NAMES
    )


def _like_sender(lines: Iterable[str], sender: Person) -> str:
    known = {word.lower() for word in re.findall(r"[^\W\d_]{2,}", sender.name)}
    for line in lines:
        if known & {word.lower() for word in re.findall(r"[^\W\d_]{2,}", line)}:
            return line
    return ""


def _asked(mail: Mail, body: str, own: Own, sender: Person) -> str:
    """Return the address that the message asks for, else the headers', else one that it has."""
    for found in _ASKS.finditer(body):
        if not own.is_own(Person("", found["address"])) and not _MAIL_FIELD.match(found[0]):
            return found["address"].rstrip(".")
    if (
        mail.reply_to.address
        and not own.is_own(mail.reply_to)
        and not _NO_PERSON.search(mail.reply_to.address)
    ):
        return mail.reply_to.address
    for line in body.split("\n"):
        field = _MAIL_FIELD.match(line)
        in_field = _ADDRESS.search(field["value"]) if field else None
        if in_field:
            return in_field[0]
    for found in _ADDRESS.finditer(body):
        if not own.is_own(Person("", found[0])) and not _NO_PERSON.search(found[0]):
            return found[0].rstrip(".")
    return sender.address


def _phone(body: str) -> str:
    for found in _PHONE.finditer(body):
        if sum(c.isdigit() for c in found[0]) >= 9:
            return found[0].strip()
    return ""


def _tidy(name: str) -> str:
    name = re.sub(r"\s*\([^)]*\)|\s*<[^>]*>?|\S+@\S+", "", name).strip(' ,.-*\t"')
    return " ".join(name.split())[:80]
