"""Everything that one message says: sizes, look, delivery, day and customer."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import date

from ledgerstone.enquiry.facts.verdict import COMMERCIAL, SlabEvidence, verdict
from ledgerstone.enquiry.scene.said import SaidOrder, SaidWord
from ledgerstone.enquiry.sender.people import Customer, Own, customer_of
from ledgerstone.enquiry.text.mail import Mail
from ledgerstone.enquiry.text.parts import MailPart, Parts, parts_of
from ledgerstone.enquiry.text.sentences import flattened
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.values.pieces import PieceFound
from ledgerstone.enquiry.values.resolve import resolve
from ledgerstone.enquiry.walk.whole_message import read_scene
from ledgerstone.enquiry.wishes.dates import day_in_note
from ledgerstone.enquiry.wishes.days import Needed, needed_by
from ledgerstone.enquiry.wishes.delivery import DeliveryFound, delivery_of
from ledgerstone.enquiry.wishes.drips import DripSaid, drip_of
from ledgerstone.enquiry.wishes.edges import EdgeSaid, edges_of
from ledgerstone.enquiry.wishes.look import finishes_of
from ledgerstone.enquiry.wishes.odd_shapes import odd_shape
from ledgerstone.enquiry.wishes.pedestals import PedestalSaid, pedestal_of
from ledgerstone.enquiry.wishes.shades import shades_of
from ledgerstone.enquiry.wishes.stands_on import stands_on
from ledgerstone.transport import area_for
from ledgerstone.workshop.records import Workshop


@dataclass(slots=True)
class MessageFacts:
    """What a message says, before it is written as an order."""

    mail: Mail
    parts: Parts
    pieces: list[PieceFound]
    customer: Customer
    scene: SaidOrder
    is_enquiry: bool = False
    shades: list[SaidWord] = field(default_factory=list)
    finishes: list[SaidWord] = field(default_factory=list)
    edges: list[EdgeSaid] = field(default_factory=list)
    drip: DripSaid | None = None
    delivery: DeliveryFound = field(default_factory=DeliveryFound)
    needed: Needed = field(default_factory=Needed)
    odd_shape: SaidWord | None = None
    on_units: SaidWord | None = None
    pedestal: PedestalSaid | None = None
    told: list[TextSpan] = field(default_factory=list)


def facts_of(mail: Mail, own: Own, workshop: Workshop, today: date | None) -> MessageFacts:
    """Read a decoded message; of one without a date ``today`` says what day may be meant."""
    parts = parts_of(mail.text, mail.sender)
    owned = [own.is_own(part.author) for part in parts.parts]
    scene = read_scene(
        mail.text,
        mail.subject,
        parts,
        mail.struck,
        owned,
        in_inches=workshop.place.lengths == "in",
    )
    found = MessageFacts(mail, parts, resolve(scene), customer_of(mail, parts, own), scene)
    newest = "\n".join((mail.subject, *(_words(part) for part in parts.parts[:1])))
    found.is_enquiry, why_not = verdict(
        newest,
        f"{newest}\n{mail.text}",
        _evidence(scene, len(parts.parts)),
        is_automatic=mail.is_automatic,
    )
    if not found.is_enquiry:
        found.pieces = []
        if why_not in COMMERCIAL:
            found.customer = Customer()
        return found
    _gather_words(found, owned, workshop, today)
    return found


def _evidence(scene: SaidOrder, parts: int) -> SlabEvidence:
    """Return what a message of so many parts says of slabs."""
    newest = 2 * (parts - 1) + 1
    keys = [piece.claims.keys() for piece in scene.pieces]
    claims = [one for piece in scene.pieces for listed in piece.claims.values() for one in listed]
    return SlabEvidence(
        has_pieces=bool(scene.pieces),
        has_sizes=any(piece.has_size() for piece in scene.pieces),
        is_whole=any({"length", "width", "thickness"} <= known for known in keys),
        is_outlined=any(len(known - {"thickness"}) > 1 or "diameter" in known for known in keys),
        is_sized_anew=any(claim.rank[0] >= newest for claim in claims),
        names_ours=any(piece.use for piece in scene.pieces),
    )


def _gather_words(
    found: MessageFacts, owned: Sequence[bool], workshop: Workshop, today: date | None
) -> None:
    """Read what is said in words, from what is not the workshop's own, the newest first."""
    text = flattened(found.mail.text, [line for part in found.parts.parts for line in part.lines])
    theirs = [part for part, is_own in zip(found.parts.parts, owned, strict=True) if not is_own]
    spans = [span for part in theirs for span in _spans(part)]
    spans += [span for part in theirs[:1] for span in _spans(part, is_own_quote=True)]
    every = [span for part in found.parts.parts for span in _spans(part)]
    signed = [(line.start, line.end) for part in theirs for line in part.signature]
    palette = [shade.name for shade in workshop.palette]
    shades = shades_of(text, spans, palette) or shades_of(text, every, palette)
    found.shades = [shade for shade in shades if not _is_signed(shade, found)]
    found.finishes = finishes_of(text, spans)
    found.edges = edges_of(text, spans)
    found.drip = drip_of(text, spans)
    found.delivery = delivery_of(
        text, spans, [*signed, *every], lambda code: area_for(code, workshop) is not None
    )
    ours = [span for piece in found.pieces for span in piece.piece.spans]
    steps = found.delivery.steps.spans if found.delivery.steps is not None else ()
    if any(low < end and start < high for start, end in ours for low, high in steps):
        found.delivery.steps = None  # "6 steps for the garden" are what is asked for
    found.odd_shape = odd_shape(text, spans)
    found.on_units = stands_on(text, spans)
    found.pedestal = pedestal_of(text, spans)
    found.told = spans
    written = found.mail.written or _dated(found)
    month_first = workshop.place.is_month_first
    standing = _without(text, found.mail.struck)
    found.needed = needed_by(standing, spans, written, month_first=month_first)
    if written is None and today is not None and found.needed.day is None:
        of_today = tuple(needed_by(standing, spans, today, month_first=month_first).readings())
        found.needed = replace(found.needed, if_today=of_today)


def _without(text: str, struck: Sequence[TextSpan]) -> str:
    """Return a text of the same length with blanks for what was struck out."""
    chars = list(text)
    for start, end in struck:
        chars[start:end] = " " * (end - start)
    return "".join(chars)


def _is_signed(word: SaidWord, found: MessageFacts) -> bool:
    """Return whether a word is only the writer's name where it stands last ("ta, Moss")."""
    name = found.customer.name or ""
    last = found.mail.text.rfind(name)
    return bool(name) and all(
        last <= start and end <= last + len(name) for start, end in word.spans
    )


def _dated(found: MessageFacts) -> date | None:
    """Return the day that the newest message gives itself, or the one it passes on."""
    for part in found.parts.parts:
        day = day_in_note(part.dated) if part.dated else None
        if day is not None:
            return day
    return day_in_note(found.mail.text)


def _spans(part: MailPart, *, is_own_quote: bool = False) -> list[TextSpan]:
    """Return the runs of a part's lines that follow one another, quoted lines left out of a reply.

    Parameters
    ----------
    is_own_quote
        Whether to give what a reply quotes of a quote instead: the writer's own words before.
    """
    runs: list[TextSpan] = []
    before = None
    for line in part.lines:
        is_left_out = line.depth < 2 if is_own_quote else bool(line.depth)
        if part.kind == "newest" and is_left_out:
            before = None
            continue
        if before is not None and line.start == before.end + 1:
            runs[-1] = (runs[-1][0], line.end)
        else:
            runs.append((line.start, line.end))
        before = line
    return runs


def _words(part: MailPart) -> str:
    return "\n".join(line.words for line in part.lines if not line.depth)
