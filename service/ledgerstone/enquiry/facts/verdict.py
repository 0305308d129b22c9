"""Whether a message asks for a slab at all: invoices, news, complaints and thanks do not."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Final

from ledgerstone.enquiry.facts.other_mail import AGAINST
from ledgerstone.enquiry.facts.wrong_goods import WRONG_GOODS

_ASKS: Final = re.compile(
    r"\bquot(?:e|ation|ing)\b(?! (?:the|our|your) (?:invoice|reference|order|number))"
    r"|\bpric(?:e|es|ing)\b"
    r"|how much|what (?:sort|kind) of (?:money|price|figure)|you charge\b"
    r"|set (?:me|us) back|what would (?:\w+ ){1,8}(?:be|come (?:to|in at)|run (?:me|us))\b"
    r"|rough idea|some idea of|idea of (?:the )?(?:cost|price)|what's the damage"
    r"|what’s the damage|whats the (?:damage|dmg)|\bcosts?\b"
    r"|\bestimate\b|\bangebot\b|\bwas kostet\b|\bpreis\b|\bkosten\b"
    r"|\banfrage\b|\benquiry\b"
    r"|\binquiry\b|\bkostenvoranschlag\b|\bballpark\b",
    re.IGNORECASE,
)
_WANTS: Final = re.compile(
    r"(?:i|we)(?:'d|’d| would| should)? (?:like|love|want|need)|looking for|i'm after"
    r"|we're after|i’m after|we’re after|\\bafter (?:a|some) \\w+ for\\b"
    r"|\bafter an?\b|(?:could|can) (?:you|u) (?:make|do|price|cast|give)"
    r"|please (?:make|price|calculate"
    r"|quote)|interested in|hätten? (?:ich |wir )?gerne?|\bbrauchen?\b|\bbenötigen?\b"
    r"|\bsuchen?\b|\bmöchten?\b|we want"
    r"|wants? (?:a|it)|\bjust (?:the )?one\b|we(?:'ll|’ll) (?:collect|pick|fetch)|collecting\b"
    r"|\bto be\b|instead of|go with|fine for me|please\b(?! (?:do not|don['’]t|note))|is fine"
    r"|(?:^|[.,;:!\n]\s{0,3}|\b(?:hi|hiya|hello|hey|morning|evening) )(?:need|needed|wanted|require"
    r"|looking for|and need)\b|\band need\b"
    r"|\breplac\w+ [^.\n]{0,80}\b(?:with|in) concrete\b|\b(?:i|we) search\b"
    r"|\bif you (?:can|could) (?:make|do|deliver|bring)",
    re.IGNORECASE,
)
_WISHES: Final = re.compile(
    r"\b(?:i|we)(?:'d|’d| would| should)? (?:like|love|want|need|search)\b|looking for"
    r"|\bafter an?\b|\bif you (?:can|could) (?:make|do|deliver|bring)"
    r"|could you (?:make|do|price|cast|quote)|can you (?:make|do|price|cast|quote)"
    r"|hätten? (?:ich |wir )?gerne?|\bbrauchen?\b|\bmöchten?\b",
    re.IGNORECASE,
)
_SLABS: Final = (
    r"(?:worktops?|counter ?tops?|counters?|tops?|table ?tops?|tables?|desks?|hearths?"
    r"|shel(?:f|ves)|[sc]ills?|window ?sills?|splash ?backs?|upstands?|bench(?:es)?|mantels?"
    r"|islands?|slabs?|breakfast bars?|\w*(?:platten?|bänke|bank))\b"
)
_A_FEW: Final = (
    r"(?:an?|another|one|two|three|four|five|six|some|new|eine?n?|zwei|drei|\d)"
    r" (?:(?!(?:price|list|refund|job|visit|for|from|of|about|with|the|that|on|to|your)\b)"
    r"[\w-]{1,14} ){0,3}?"
)
# Someone says that they want one: "I need a kitchen worktop", "would you make a splashback".
_ASKS_FOR_ONE: Final = re.compile(
    r"(?:\b(?:i|we)(?:['’]d| would| should)? (?:like|love|want|need|require|order)|\blooking for"
    r"|\b(?:would|could|can|will) you (?:please )?(?:be able to )?(?:make|do|cast|price|quote)"
    r"(?: (?:me|us|for))?|\b(?:quote|price) (?:me |us )?(?:for|on)|\bhätten? (?:ich |wir )?gerne?"
    rf"|\b(?:brauche|suche|möchte|benötige)n?(?: ich| wir)?) {_A_FEW}{_SLABS}",
    re.IGNORECASE,
)
# What stands, or was just right, is no more asked for.
_STANDS: Final = re.compile(
    r"\b(?:the|our|your|my|die|der|das|unsere?|ihre?|meine?) (?:[\w-]{1,14} ){0,2}?"
    rf"{_SLABS} (?:\w{{1,8}} )?(?:arrived|came|(?:stands?|sits|fits|(?:is|are) (?:in|up|here|done)"
    r"|steht|stehen|liegt|passt|sitzt|(?:ist|sind) (?:da|drin))(?=\s*[.!,;]))"
    r"|\b(?:was|were) (?:just|exactly|quite|spot) (?:right|on)\b"
    r"|\bwar(?:en)? (?:\w{1,8} )?(?:genau|gerade) (?:richtig|recht)\b",
    re.IGNORECASE,
)
_FIELDS: Final = re.compile(
    r"^[ \t]*(?:length|width|depth|thickness|product|item|colour|color|länge|tiefe|breite"
    r"|stärke|material|size)\b[^\n:|\t]{0,24}?(?:[:|\t…]|\.{3}|_{3})",
    re.IGNORECASE | re.MULTILINE,
)
_RESTORED: Final = re.compile(
    r"\b(?:quote|price|cost) (?:me |us )?(?:(?:for|on|up) )?(?:a|an|another|one|two|three|this"
    r"|these)\b|how much (?:would|for|is)",
    re.IGNORECASE,
)


# Someone changes what was agreed: "yes, go ahead, but make it 50 thick".
_CHANGES: Final = re.compile(
    r"\b(?:but|only|except|though) (?:please )?(?:make|with|in|at|can|could|change)\b"
    r"|\bmake (?:it|that|them)\b|\binstead of\b|\bchange (?:it|the|that)\b|\bstatt\b"
    r"|\baber (?:bitte )?(?:in|mit|doch)\b",
    re.IGNORECASE,
)
# A new slab is wished for in place of one that broke: "it is broken, I want a new one".
_ANEW: Final = re.compile(
    r"\b(?:a|the|our) (?:brand )?new (?:one|top|slab|worktop|table|hearth|shelf|bench)\b"
    r"|\b(?:want|need|would like|['’]d like|looking for|quote for|price for) (?:a |an )?(?:new\b"
    r"|another\b|replacement\b)|\bneue[nrs]? (?:platte|arbeitsplatte|fensterbank|bitte)\b",
    re.IGNORECASE,
)
_WISHED: Final = 4  # outweighs a word of other mail beside it: "the invoice was 20417"
# Words that stand in enquiries too: "we thought of a sink and decided against it".
_SOFT: Final = frozenset({"thanks", "praise", "past", "delivered"})
_ACCEPTED: Final = "accepted"
_OURS_TOO: Final = "trade"  # speaks against only where no slab of ours is named
# What was made for someone else speaks neither for nor against: "Joyce, whose hearth you made".
_OF_OTHERS: Final = re.compile(
    r"\b(?:whose|neighbou?r\w*|friends?|sister\w*|brother\w*|parents|mum\w*|colleague\w*)\b"
    r"[^.;(\n]{0,60}?\byou (?:\w+ )?(?:made|fitted|cast|installed|delivered|did)\b[^.;(\n]{0,60}"
    r"|\b(?:a|our|my|the|some) (?:\w+ )?(?:neighbou?rs?|friends?|sister|brother|parents|mum"
    r"|colleague|cousin|aunt|uncle|in-laws?)\b[^.;(\n]{0,20}? (?:had|has|got|bought|ordered)"
    r" [^.;(\n]{0,40}? (?:from|off|by) (?:you|tom|pat)\b"
    r"|\byou (?:made|fitted|cast|installed|delivered|did) (?:\w+ ){0,2}?(?:for )?(?:our|my|the)"
    r" (?:\w+ )?(?:neighbou?r|friend|sister|brother|parent|mum|colleague|cousin|aunt|uncle|in-law)"
    r"[^.;(\n]{0,60}",
    re.IGNORECASE,
)
# An opening that was thought of and dropped is no dropped order: "decided against a sink".
_DROPPED_HOLE: Final = re.compile(
    r"\b(?:sinks?|hobs?|basins?|bowls?|taps?|cooktops?|holes?|cut-?outs?|drip ?tray)\b[^.;]{0,60}?"
    r"\bdecided\s+against\b|\bdecided against (?:having )?(?:an?|the|any) (?:\w+ ){0,2}?"
    r"(?:sink|hob|basin|bowl|tap|cooktop|hole|cut-?out|drip ?tray)\b",
    re.IGNORECASE,
)
# What is out of order and none of ours is no complaint: "second floor, and the lift is broken".
_OUT_OF_ORDER: Final = re.compile(
    r"\b(?:lift|elevator|escalator|(?:door)?bell|buzzer|van|car|lorry|truck|trailer|phone|printer"
    r"|scanner|camera|website|link|boiler|oven|cooker|hob|dishwasher|fridge|aufzug|fahrstuhl"
    r"|klingel|anhänger)(?: (?:is|was|has been|ist|war)|['’]s)?(?: \w+)?"
    r" (?:broken|damaged|kaputt|defekt)\b",
    re.IGNORECASE,
)
# A drive that the van comes by is none to be laid: "gravel drive, no steps", "park on the drive".
_WAY_IN: Final = re.compile(
    r"\b(?:gravel(?:led)?|tarmac|steep|long|narrow|short|shared|private|sloping|rough|farm|level"
    r"|bumpy|(?:up|down|on|onto|along|at|off) (?:the|our|my|a)) drive(?:way)?\b"
    r"|\bdrive(?:way)? (?:is|has|can|will|won['’]t|takes)\b",
    re.IGNORECASE,
)
COMMERCIAL: Final = frozenset({"invoice", "news", "notice", "pitch"})


@dataclass(frozen=True, slots=True)
class SlabEvidence:
    """What a message says of slabs.

    Attributes
    ----------
    has_pieces, has_sizes
        Whether it names any slab, or gives one a size.
    is_whole
        Whether length, width and thickness of a slab are all said.
    is_outlined
        Whether two sizes of a slab's outline, or its diameter, are said.
    is_sized_anew
        Whether its newest words give a slab any size.
    names_ours
        Whether it names what we make: a worktop, a hearth, and not only a slab.
    """

    has_pieces: bool
    has_sizes: bool
    is_whole: bool
    is_outlined: bool
    is_sized_anew: bool
    names_ours: bool


def _without_asides(newest: str) -> str:
    """Return a message without what only sounds like other mail."""
    for aside in (_OF_OTHERS, _OUT_OF_ORDER, _WAY_IN, _DROPPED_HOLE):
        newest = aside.sub(" ", newest)
    return newest


def verdict(
    newest: str, whole: str, slabs: SlabEvidence, *, is_automatic: bool
) -> tuple[bool, str]:
    """Return whether someone asks for a slab, and what the message is where nobody does.

    Parameters
    ----------
    newest
        The newest words of the message and its subject: what speaks against stands there.
    whole
        These and the messages that they quote or pass on.
    """
    newest = _without_asides(newest)
    against = [
        (weight, name)
        for name, weight, pattern in (*AGAINST, WRONG_GOODS)
        if pattern.search(newest) and not (slabs.names_ours and name == _OURS_TOO)
    ]
    changes = slabs.is_sized_anew and bool(_CHANGES.search(newest))
    is_anew = slabs.is_sized_anew and slabs.is_outlined and bool(_ANEW.search(newest))
    put_aside = {_ACCEPTED, "declined"} if changes else set()
    put_aside |= {"complaint"} if is_anew else set()
    is_wished = slabs.is_whole and slabs.is_sized_anew
    is_wished = is_wished and bool(_ASKS_FOR_ONE.search(newest) or _ASKS.search(newest))
    put_aside |= {"application", "press"} if is_wished else set()
    against = [one for one in against if one[1] not in put_aside]
    ranked = sorted(against, key=lambda one: (one[1] not in COMMERCIAL, -one[0]))
    why = ranked[0][1] if ranked else ""
    asks = 2 * bool(_ASKS.search(whole)) + bool(_WANTS.search(whole)) + bool(_FIELDS.search(whole))
    asks += slabs.is_whole and bool(_ASKS_FOR_ONE.search(newest))
    if not asks:  # what stands under a message speaks against it too: "Unsubscribe"
        found = {name for _, name in against}
        against += [
            (weight, name)
            for name, weight, pattern in AGAINST
            if name == "news" and name not in found and pattern.search(whole)
        ]
        why = why or (against[0][1] if against else "")
    if not slabs.has_pieces or (against and not asks):
        return False, why
    # "Concrete hearth, 1200 wide" may be all that a customer writes; "the bench stands!" is thanks.
    is_ours = slabs.names_ours and slabs.has_sizes and not _STANDS.search(newest)
    if not (asks or slabs.is_outlined or is_ours or "?" in newest):
        return False, why  # it names a slab, and nobody asks for one
    score = asks + slabs.has_sizes + 2 * bool(_RESTORED.search(newest))
    is_wish = slabs.is_whole and bool(_WISHES.search(newest))
    score += 2 * is_wish + 2 * (is_wish and {name for _, name in against} <= _SOFT)
    score += _WISHED * (slabs.is_whole and bool(_ASKS_FOR_ONE.search(newest)))
    score -= sum(weight for weight, _ in against) + 3 * is_automatic
    return score > 0, why
