"""How the slab is to come: collected, on a pallet, by van, fitted; and the way in."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Final

from ledgerstone.enquiry.lexicon import NUMBERS
from ledgerstone.enquiry.scene import Span, Word

_KINDS: Final = (
    (
        "fitted",
        re.compile(
            r"\b(?:fit(?:ted|ting|s)?\b(?! (?:it|them) (?:in|into) (?:the|our) (?:car|van))"
            r"|install(?:ed|ation|ing|s)?\b|put (?:it|them) in\b(?! (?:the|our|your|my) (?:van"
            r"|car|trailer))|put (?:it |them )?in place\b|(?:brought|bring it) and put in\b"
            r"|(?:brought|bring)(?: it| them)?(?: up| in| round)? and (?:put|set|lay|lift)\b"
            r"|set (?:it|them) down in place|einbauen|eingebaut|einbau\b"
            r"|montage|montieren|deliver(?:y|ed)? (?:and|\+|&) fit\w*)",
            re.IGNORECASE,
        ),
    ),
    (
        "own-van",
        re.compile(
            r"\b(?:your|you[^.\n]{0,24}?your) (?:own )?(?:van|vehicle|truck|transport)\b"
            r"|with (?:the |your )?own van|\b(?:own|by) van\b|\bvan (?:is )?(?:ok(?:ay)?|fine)\b"
            r"|\b(?:ihrem|eurem|ihr|euer) (?:eigenen )?"
            r"(?:fahrzeug|transporter|lkw|wagen)\b",
            re.IGNORECASE,
        ),
    ),
    (
        "pallet",
        re.compile(
            r"\b(?:on a |by |a )?(?:pallet|palette|skid)\b|\bspedition\b|kerb ?side"
            r"|\bbordstein|\bcrate it\b|to the kerb|curb ?side|\bpalette\b",
            re.IGNORECASE,
        ),
    ),
    (
        "collect",
        re.compile(
            r"\b(?:collect(?:s|ed|ing|ion)?\b|pick(?:ed|ing)? (?:it |them |everything "
            r"|the \w+ |all )?up|pick ?up\b(?! truck)|fetch(?:ed|es)? |fetch it|abhol\w*"
            r"|holen (?:\w+ ){0,3}(?:selbst )?ab\b"
            r"|come to (?:take|get|fetch)|come (?:myself|with (?:my|our|a) (?:own )?(?:car|van"
            r"|trailer|truck))|take (?:it |them )?(?:away )?from you\b"
            r"|take it (?:by )?(?:myself|with (?:my|a|the) (?:car|van|trailer))"
            r"|take it (?:away )?(?:with us|ourselves"
            r"|in our)|call for it|selbstabhol\w*|self.?collect|hole (?:\w+ ){0,3}ab\b)",
            re.IGNORECASE,
        ),
    ),
)
_DELIVERED: Final = re.compile(
    r"\bdeliver(?:y|ed|ing)?\b|\bship(?:ped|ping)?\b|\blieferung\b|\bliefern\b|\bgeliefert\b"
    r"|\bbring it\b|\bsend it\b(?! to me)|hold delivery",
    re.IGNORECASE,
)
_NOT_FITTED: Final = re.compile(
    r"(?:our|my|the|own|a|kitchen) (?:\w+ )?fitter|we(?:'ll|’ll| will| can)? (?:fit"
    r"|install) (?:it|them)|fit (?:it|them) (?:ourselves|myself)|plot \d+ fits|so it fits"
    r"|it fits\b|no fitting|without fitting|fitter has|fits on|if it fits|(?:i|we)(?:'ll|’ll"
    r"| will| can| shall) (?:be )?(?:fitting|installing)|outfit|fits in|fitted kitchen"
    r"|selbst ein|fitted wardrobe|have (?:it|them) fitted by our|to fit (?:the|our|my|in"
    r"|between|under|over|round|a|on|an|onto)",
    re.IGNORECASE,
)
_UNSURE: Final = re.compile(
    r"(?:deliver\w*|\bpost(?:ed)?\b)[^.\n]{0,60}\bor\b[^.\n]{0,30}(?:collect|pick|fetch)"
    r"|(?:collect|pick"
    r"|fetch)[^.\n]{0,50}\bor\b[^.\n]{0,40}deliver|not decided|haven't decided how"
    r"|lieferung oder abholung|abholung oder lieferung",
    re.IGNORECASE,
)
_LABEL: Final = re.compile(
    r"(?:delivery|collection|abholung|lieferung)[ \t]*(?:or|/|oder)[ \t]*(?:delivery|collection"
    r"|abholung|lieferung)"
    r"[ \t]*[:|\t]",
    re.IGNORECASE,
)
_POSTCODE: Final = re.compile(r"\b[A-Z]{1,2}\d{1,2}[A-Z]?[ \u00a0]?\d[A-Z]{2}\b")
_POSTCODE_LABEL: Final = re.compile(
    r"\b(?:post ?code|plz|zip(?: code)?"
    r"|code postal)\b[^\w\n]{0,4}(?:is )?([A-Z]{0,2}-?\d{4,5}\b"
    r"|[A-Z]{1,2}\d{1,2}[A-Z]?[ \u00a0]?\d[A-Z]{2}\b)",
    re.IGNORECASE,
)
_NUMBER_WORDS: Final = "|".join(
    sorted(
        (w for w in NUMBERS if w not in ("a", "an", "half", "zero", "null", "halben", "halber")),
        key=len,
        reverse=True,
    )
)
_STEPS: Final = re.compile(
    rf"\b(?P<count>\d{{1,3}}|{_NUMBER_WORDS}|a|no)\s(?:\w{{1,12}}\s)?(?:steps?|stairs"
    rf"|stufen?)\b(?! \d)|(?P<one>\bone step\b)|(?P<ohne>\bkeine stufen\b)",
    re.IGNORECASE,
)
_FLAT: Final = re.compile(
    r"\bflat access\b|\blevel (?:access|from|throughout)\b|\bno steps\b|,\s?level\b|step-free"
    r"|ebenerdig|level all the way|all on the level",
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
            r"\bground floor\b|\bmain floor\b|\berdgeschoss\b|\bground level\b|\bim eg\b",
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
    """What was said of the delivery; each value with its words."""

    kind: Word | None = None
    postcode: Word | None = None
    steps: Word | None = None
    floor: Word | None = None
    is_delivered: bool = False
    unsure: tuple[Span, ...] = field(default_factory=tuple)


def delivery_of(text: str, spans: Sequence[Span], whole: Sequence[Span]) -> DeliveryFound:
    """Read the newest words first, then older ones for what they leave unsaid.

    Parameters
    ----------
    spans
        The parts of the text, the newest first.
    whole
        The same with their signatures, for an address stands there.
    """
    found = DeliveryFound()
    for start, end in spans:
        _read(text, start, end, found)
    is_collected = found.kind is not None and found.kind.value == "collect"
    for start, end in [*spans, *(() if is_collected else whole)]:
        if found.postcode is None:
            found.postcode = _postcode(text, start, end)
    return found


def _read(text: str, start: int, end: int, found: DeliveryFound) -> None:
    unsure = _UNSURE.search(text, start, end)
    if unsure and not _LABEL.search(unsure[0]) and found.kind is None and not found.unsure:
        labelled = text[unsure.start() : unsure.end() + 1].rstrip().endswith(":")
        if not labelled:
            found.unsure = (unsure.span(),)
    if found.kind is None and not found.unsure:
        found.kind = _kind(text, start, end)
    found.is_delivered = found.is_delivered or bool(_DELIVERED.search(text, start, end))
    if found.steps is None:
        found.steps = _steps(text, start, end)
    if found.floor is None:
        found.floor = next(
            (
                Word(str(level), (one.span(),))
                for level, pattern in _FLOORS
                if (one := pattern.search(text, start, end))
            ),
            None,
        )


def _kind(text: str, start: int, end: int) -> Word | None:
    for kind, pattern in _KINDS:
        for one in pattern.finditer(text, start, end):
            around = text[max(start, one.start() - 40) : min(end, one.end() + 24)]
            if kind == "fitted" and _NOT_FITTED.search(around):
                continue
            if re.search(
                r"\b(?:not?|don't|don’t|won't|can't|cannot|nicht|kein\w*)\s(?:\w{1,12}\s)?\Z",
                text[max(start, one.start() - 24) : one.start()],
                re.IGNORECASE,
            ):
                continue
            if _in_label(text, start, one):
                continue
            return Word(kind, (one.span(),))
    return None


def _in_label(text: str, start: int, found: re.Match[str]) -> bool:
    """Whether words stand in a field's name: "Delivery or collection:"."""
    return any(
        one.start() <= found.start() < one.end()
        for one in _LABEL.finditer(text, max(start, found.start() - 24), found.end() + 24)
    )


def _steps(text: str, start: int, end: int) -> Word | None:
    for found in _STEPS.finditer(text, start, end):
        said = (found["count"] or "").lower()
        if found["ohne"] or said == "no":
            return Word("0", (found.span(),))
        if found["one"] or said in ("a", "one"):
            return Word("1", (found.span(),))
        count = int(said) if said.isdigit() else int(NUMBERS.get(said, 0))
        return Word(str(count), (found.span(),))
    flat = _FLAT.search(text, start, end)
    return Word("0", (flat.span(),)) if flat else None


def _postcode(text: str, start: int, end: int) -> Word | None:
    labelled = _POSTCODE_LABEL.search(text, start, end)
    if labelled:
        return Word(labelled[1], (labelled.span(1),))
    found = _POSTCODE.search(text, start, end)
    return Word(" ".join(found[0].split()), (found.span(),)) if found else None
