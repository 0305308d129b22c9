"""How the slab is to come: collected, on a pallet, by van, fitted; and the way in."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Final

from ledgerstone.enquiry.scene.said import SaidWord
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.wishes.fitting import REFUSED, is_left_to_others
from ledgerstone.enquiry.wishes.postcodes import postcode_in
from ledgerstone.enquiry.wishes.way_in import climb_in, steps_in

_KINDS: Final = (
    (
        "fitted",
        re.compile(
            r"\b(?:fit(?:ted|ting|s)?\b(?! (?:it|them) (?:in|into) (?:the|our) (?:car|van))"
            r"|install(?:ed|ation|ing|s)?\b|put (?:it|them) in\b(?! (?:the|our|your|my) (?:van"
            r"|car|trailer))|put (?:it |them )?in place\b|(?:brought|bring it) and put in\b"
            r"|(?:brought|bring)(?: it| them)?(?: up| in| round)? and (?:put|set|lay|lift)\b"
            r"|set (?:it|them) down in place|einbauen|einbau\b|bauen [^.\n]{1,24} ein\b"
            r"|(?<!vater )(?<!wieder )eingebaut"
            r"|montage|montieren|(?:come|pass)(?: by)? (?:to|and|for) (?:mount|assembl\w+)\b"
            r"|you (?:would |will )?(?:need )?to (?:\w+ )?(?:mount|lay|position) (?:it|them)\b"
            r"|mounting (?:is )?(?:included|please)|(?:with|and|incl\w*) (?:the )?mounting\b"
            r"(?! (?:brackets?|clips?|kit|holes?|hardware|screws?|plates?|rails?)\b)"
            r"|(?:liefern|bringen) und (?:aufstellen|verlegen)"
            r"|deliver(?:y|ed)? (?:and|\+|&) fit\w*)",
            re.IGNORECASE,
        ),
    ),
    (
        "own-van",
        re.compile(
            r"\b(?:your|you[^.\n]{0,24}?your) (?:own )?(?:van|vehicle|truck|transport)\b"
            r"|(?:dropped|delivered|brought|sent) (?:\w+ )?(?:by|in|with) our van"
            r"|(?<=\n)our van(?=[,.;:]| please)|with (?:the |your )?own van"
            r"|\b(?:own|by) van\b|\bvan (?:is )?(?:ok(?:ay)?|fine)\b"
            r"|\b(?:ihrem|eurem|ihr|euer) (?:eigenen )?"
            r"(?:fahrzeug|transporter|lkw|wagen)\b",
            re.IGNORECASE,
        ),
    ),
    (
        "pallet",
        re.compile(
            r"\b(?:on a |by |a )?(?:pallet(?:i[sz]ed)?|palette|skid)\b|\bspedition\b|kerb ?side"
            r"|\bbordstein|\bcrate it\b|to the kerb|curb ?side|\bpalette\b",
            re.IGNORECASE,
        ),
    ),
    (
        "collect",
        re.compile(
            r"\b(?:collect(?:s|ed|ing|ion)?\b|pick(?:ed|ing|s)? (?:it |them |everything "
            r"|the \w+ |all )?up|pick ?up\b(?! truck)|fetch(?:ed|es)? |fetch it"
            r"|(?:['’]ll|will|can) fetch\b|abhol\w*|abgeholt"
            r"|\bcoll(?=\.)"
            r"|\bfetching\b|\bkommen mit (?:dem|unserem|einem) (?:auto|anhänger|transporter)"
            r"|holen (?:\w+ ){0,3}(?:selbst )?ab\b"
            r"|come (?:to|and) (?:take|get|fetch|search)|come to search"
            r"|come (?:myself|with (?:my|our|a) (?:own )?(?:car|van|trailer|truck))"
            r"|take (?:it |them )?(?:away )?from you\b"
            r"|take (?:it|them) (?:by )?(?:myself|with (?:my|our|a|the) (?:own )?(?:car|van"
            r"|trailer))"
            r"|(?:pass|come)(?: by)? to (?:take|search|get) (?:it|them)\b"
            r"|come (?:and |to |by )?(?:get|for) (?:it|them)\b|take (?:it |them )?by ourselves"
            r"|take it (?:away )?(?:with us|ourselves|in our)|call for it|\bcome to you\b"
            r"|(?:we|i)(?:['’]ll| will)? send (?:a|our|my) (?:driver|man|men|lorry|truck|carrier)\b"
            r"|\bcoming (?:over |round )?to (?:get|fetch|take) (?:it|them)\b"
            r"|selbstabhol\w*|self.?collect|hole (?:\w+ ){0,3}ab\b)",
            re.IGNORECASE,
        ),
    ),
)
_DELIVERED: Final = re.compile(
    r"\bdeliver(?:y|ed|ing)?\b|\bship(?:ped|ping)?\b|\blieferung\b|\bliefern\b|\bgeliefert\b"
    r"|\bbring (?:it|them)\b|\bsend (?:it|them)\b(?! to me)|hold delivery|\bby courier\b"
    r"|\b(?:post(?:ed|ing)?|courier(?:ed)?|shipping|sent) (?:it |them |over )?to\b(?! (?:me|you)\b)"
    r"|\bdrop(?:ped)? (?:it |them )?off\b|\b(?:ver|zu)(?:schick|send|stell)\w+|\bversand\b"
    r"|\b(?:zugeschickt|zugestellt|verschickt)\b|\bangeliefert\b|\banlief\w+",
    re.IGNORECASE,
)
_UNSURE: Final = re.compile(
    r"(?:deliver\w*|\bpost(?:ed)?\b)[^.\n]{0,60}\bor\b[^.\n]{0,30}(?:collect|pick|fetch)"
    r"|(?:collect|pick"
    r"|fetch)[^.\n]{0,50}\bor\b[^.\n]{0,40}deliver\w*|not decided|haven't decided how"
    r"|lieferung oder abholung|abholung oder lieferung"
    r"|(?:collect|pick|fetch|abhol)[^.\n]{0,50}\b(?:else|otherwise|sonst|ansonsten|andernfalls)\b"
    r"[^.\n]{0,20}(?:deliver|send|liefer|schick|\d[A-Z]{2}\b|\d{5}\b)"
    r"|(?:deliver|liefer)[^.\n]{0,50}\b(?:else|otherwise|sonst|ansonsten|andernfalls)\b"
    r"[^.\n]{0,30}(?:collect|pick|fetch|hol)",
    re.IGNORECASE,
)
# What speaks of delivery and asks for none: "no delivery", "delivery time", a sink's delivery.
_NOT_ASKED: Final = re.compile(
    r"\b(?:no|not|without|excluding|excl|ohne|keine?|nicht|don't|don’t|won't|won’t)\b[^.;,\n]{0,24}\Z"
    r"|\b(?:being|been|was|were|get|got|getting|have|having) \Z",
    re.IGNORECASE,
)
_NOT_OURS: Final = re.compile(
    r"(?:time|date|day|week|note|slot|lead)s?\b"
    r"|[ \t]*[:|][ \t]*(?:no|none|nein|keine)\b",
    re.IGNORECASE,
)
_LABEL: Final = re.compile(
    r"(?:delivery|delivered|collection|collected|collect|pick[- ]?up|install(?:ation)?|fitting"
    r"|abholung|lieferung|einbau)[ \t]*(?:or|/|oder)[ \t]*(?:delivery|delivered|collection"
    r"|collected|collect|pick[- ]?up|abholung|lieferung)[ \t]*\??[ \t]*[:|\t]",
    re.IGNORECASE,
)
_FLOORS: Final = (
    (
        -1,
        re.compile(
            r"\bbasement\b|\bcellar\b|\bkeller(?:geschoss)?\b|\bsouterrain\b|lower ground",
            re.IGNORECASE,
        ),
    ),
    (
        0,
        re.compile(
            r"\bground floor\b|\bmain floor\b|\berdgeschoss\b|\bground level\b|\bim eg\b"
            r"|(?-i:\bEG\b)",
            re.IGNORECASE,
        ),
    ),
    (
        1,
        re.compile(
            r"\b(?:first|1st) floor\b|\b1\. ?(?:stock|og|etage|obergeschoss)\b"
            r"|\bersten? (?:stock|etage)\b|\bupstairs\b",
            re.IGNORECASE,
        ),
    ),
    (
        2,
        re.compile(
            r"\b(?:second|2nd) floor\b|\b2\. ?(?:stock|og|etage|obergeschoss)\b|\bzweiten? stock\b",
            re.IGNORECASE,
        ),
    ),
    (
        3,
        re.compile(
            r"\b(?:third|3rd) floor\b|\b3\. ?(?:stock|og|etage)\b|\bdritten? stock\b", re.IGNORECASE
        ),
    ),
)


@dataclass(slots=True)
class DeliveryFound:
    """What was said of the delivery; each value with its words.

    ``climb``: stairs that are told without the number of their steps. ``is_delivered``: delivery
    is spoken of; ``is_asked``: it is asked for, so that no postcode is one to ask for.
    """

    kind: SaidWord | None = None
    postcode: SaidWord | None = None
    steps: SaidWord | None = None
    floor: SaidWord | None = None
    climb: SaidWord | None = None
    is_delivered: bool = False
    is_asked: bool = False
    unsure: tuple[TextSpan, ...] = field(default_factory=tuple)


def delivery_of(
    text: str,
    spans: Sequence[TextSpan],
    whole: Sequence[TextSpan],
    is_ours: Callable[[str], bool],
) -> DeliveryFound:
    """Read the newest words first, then older ones for what they leave unsaid.

    Parameters
    ----------
    spans
        The parts of the text, the newest first.
    whole
        The same with their signatures, for an address stands there.
    is_ours
        Whether the workshop delivers to a postcode.
    """
    found = DeliveryFound()
    for start, end in spans:
        _read(text, start, end, found)
    is_collected = found.kind is not None and found.kind.value == "collect"
    for start, end in [*spans, *(() if is_collected else whole)]:
        if found.postcode is None:
            found.postcode = postcode_in(text, start, end, is_ours)
    return found


def _read(text: str, start: int, end: int, found: DeliveryFound) -> None:
    unsure = _UNSURE.search(text, start, end)
    if (
        unsure
        and not _LABEL.search(text, unsure.start(), unsure.end() + 12)
        and found.kind is None
        and not found.unsure
    ):
        labelled = text[unsure.start() : unsure.end() + 2].rstrip().endswith((":", ":?", "?:"))
        if not labelled:
            found.unsure = (unsure.span(),)
    if found.kind is None and not found.unsure:
        found.kind = _kind(text, start, end)
    found.is_delivered = found.is_delivered or bool(_DELIVERED.search(text, start, end))
    found.is_asked = found.is_asked or _is_asked(text, start, end)
    if found.steps is None:
        found.steps = steps_in(text, start, end)
        found.climb = found.climb or climb_in(text, start, end)
    if found.floor is None:
        found.floor = next(
            (
                SaidWord(str(level), (one.span(),))
                for level, pattern in _FLOORS
                if (one := pattern.search(text, start, end))
            ),
            None,
        )


def _is_asked(text: str, start: int, end: int) -> bool:
    """Return whether delivery is asked for, and not only spoken of: "Delivered please"."""
    for one in _DELIVERED.finditer(text, start, end):
        before = text[max(start, one.start() - 40) : one.start()]
        after = text[one.end() : min(end, one.end() + 60)].lstrip(" -\t")
        is_ours = not (_NOT_OURS.match(after) or REFUSED.match(after))
        if is_ours and not _NOT_ASKED.search(before) and not _in_label(text, start, one):
            return True
    return False


def _kind(text: str, start: int, end: int) -> SaidWord | None:
    for kind, pattern in _KINDS:
        for match in pattern.finditer(text, start, end):
            if kind == "fitted" and is_left_to_others(text, start, end, match):
                continue
            if re.search(
                r"\b(?:not?|don't|don’t|won't|can't|cannot|nicht|kein\w*)\s(?:\w{1,12}\s)?\Z",
                text[max(start, match.start() - 24) : match.start()],
                re.IGNORECASE,
            ):
                continue
            if _in_label(text, start, match):
                continue
            return SaidWord(kind, (match.span(),))
    return None


def _in_label(text: str, start: int, found: re.Match[str]) -> bool:
    """Return whether words stand in a field's name: "Delivery or collection:"."""
    return any(
        match.start() <= found.start() < match.end()
        for match in _LABEL.finditer(text, max(start, found.start() - 24), found.end() + 24)
    )
