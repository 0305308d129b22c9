"""What a size takes from the words and sizes before it: its role, and whether it is a subject's."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.ownership.chosen import as_chosen, settles_on
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence, Target
from ledgerstone.enquiry.scene.subjects import has_mark
from ledgerstone.enquiry.sentence import scope
from ledgerstone.enquiry.sentence.clauses import JOINS
from ledgerstone.enquiry.sentence.measure import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.sentence.noun_phrases import ARTICLES, PREPOSITIONS, VERBS
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_LEAVES: Final = frozenset({"leaves", "leaving", "bleiben", "leave"})
_MIN_BARE: Final = 100  # a bare number of a length: common practice, no source
_ARTICLES: Final = frozenset({"a", "an", "the", "eine", "einen"})
_ADJECTIVES: Final = 4  # atoms from "thick" to the slab: "thick natural gray concrete top"
_NO_ADJECTIVES: Final = VERBS | PREPOSITIONS | ARTICLES | JOINS


_IS_ONLY: Final = word_set(
    "is ought only just be will should to must needs would about exactly : = same but identical ist"
    " nur soll"
    " sollte wird genau aber gleich a at of the"
)


_COMPARED: Final = {
    **dict.fromkeys(("longer", "shorter", "länger", "kürzer"), "long"),
    **dict.fromkeys(("deeper", "shallower", "tiefer"), "deep"),
    **dict.fromkeys(("wider", "narrower", "breiter", "schmaler"), "wide"),
    **dict.fromkeys(("thicker", "thinner", "dicker", "dünner"), "thick"),
}
_WHICH: Final = frozenset({"the", "that", "die", "diese"})
_ITS_VERB: Final = word_set("is are was should must goes ist sind war soll")
_DASHES: Final = frozenset({"-", "–", "—"})
_ITS: Final = frozenset({("'s",), ("its",), ("is",)})
_LABEL_LONG: Final = 2  # atoms: "The fridge - 600 wide" is of the fridge
_AS_THIN: Final = frozenset({("as", "thin"), ("as", "thick"), ("so", "dünn"), ("so", "dick")})
_THIN_FAR: Final = 8  # atoms
_SO: Final = frozenset({"so", "hence", "therefore", "daher"})
_WANTS_IT: Final = frozenset({("wants", "it"), ("want", "it"), ("like", "it"), ("have", "it")})
_DEPTHS: Final = frozenset({"deep", "wide"})
_THICK: Final = 120  # mm, the most that a slab is thick: common practice, no source
_THINNEST: Final = 15  # mm: common practice, no source
_PAIR: Final = 2
_MAKES: Final = frozenset({"make", "making", "keep", "macht", "machen"})
_MAKES_IT: Final = frozenset({("make", "it"), ("call", "it"), ("making", "it")})
_STOPS: Final = frozenset({("stop", "at"), ("finish", "at"), ("end", "at"), ("come", "to")})
_STOPS_FAR: Final = 7
_TO_BE_FAR: Final = 8
_NEW: Final = word_set("new replacement one top worktop slab hearth neue neuer")
_SHOULD: Final = word_set("should must needs need wants has ought will can to would soll muss")
_ALL_FAR: Final = 4
_ALL: Final = word_set("both all each alle beide everything alles jeweils")
_OF_ALL: Final = word_set(
    "sides pieces tops slabs of them it in at to be is are bits parts runs the lot made zwei drei"
    " two three four platten teile stücke"
)


_STANDS: Final = "stand"
_REACHES: Final = word_set("out comes projects extends sticks reaches")


def reaches_out(sentence: Sentence, measure: Measure) -> bool:
    """Whether a size is how far a slab stands out from the wall: "it comes out 600 from it"."""
    words = sentence.words
    led = set(words[max(0, measure.at - 4) : measure.at])
    after = words[measure.at + 1 : measure.at + 3]
    return (
        bool(_REACHES & led)
        or after == ["out", "from"]
        or (_STANDS in led and words[measure.at + 1 : measure.at + 2] == ["out"])
    )


def carry_on(parsed: ParsedSentence, measure: Measure, active: Mention | None) -> None:
    """Let a bare size be what the size before it was: "…, the shelf 20", "but I'd rather 30"."""
    bare = measure.of == 1 and not measure.role and not measure.side and not measure.axis
    if bare:
        at = next(i for i, size in enumerate(parsed.sizes) if size is measure)
        _as_thickness(parsed, measure, active, at)
        as_chosen(parsed, measure, at)
        _as_conclusion(parsed, measure, at)
    if active is not None and active.kind == "slab" and active.end <= measure.at:
        between = parsed.sentence.atoms[active.end : measure.at]
        is_size = measure.size.unit is not None or measure.size.amount >= _MIN_BARE
        is_linked = all(atom.word in _IS_ONLY for atom in between)
        measure.is_subject = is_linked and is_size and bool(between)  # "Worktop 1" is its number
    if bare:
        _as_subject(parsed.sentence.words, measure, active)


def _as_thickness(
    parsed: ParsedSentence, measure: Measure, active: Mention | None, at: int
) -> None:
    """Take a thickness from a slab's name after another's, or from "all", "both" before it."""
    before = parsed.sizes[at - 1] if at else None
    named = active is not None and active.kind == "slab" and active.end == measure.at
    if named and before is not None and before.role == "thick":
        measure.role = "thick"
    is_leg = active is not None and active.kind == "leg" and active.end == measure.at
    if is_leg and before is not None and before.of == 1 and before.role in _DEPTHS:
        measure.role = before.role  # "the long part is 600 deep, the short part 640"
    led = parsed.sentence.words[max(0, measure.at - _THIN_FAR) : measure.at]
    if _AS_THIN & set(pairwise(led)) and measure.size.amount <= _THICK:
        measure.role = "thick"
    of_all = _is_led_by_all(parsed.sentence.words, measure.at)
    is_sized = measure.size.unit in ("mm", "cm", "in") or _is_bare_thickness(parsed, measure)
    if of_all and is_sized and not roles_said(parsed, at):
        measure.role = "thick"


def _is_bare_thickness(parsed: ParsedSentence, measure: Measure) -> bool:
    """Return whether a bare number may be millimetres of a thickness, beside slabs' two sizes."""
    is_thin = measure.size.unit is None and _THINNEST <= measure.size.amount <= _THICK
    pairs = [one for one in parsed.sizes if one.of == _PAIR and one.at < measure.at]
    return is_thin and bool(pairs) and measure.size.amount.denominator == 1


def _as_conclusion(parsed: ParsedSentence, measure: Measure, at: int) -> None:
    """Take a bare size for what follows from the one before: "for a 48 mm pole, so 52 please"."""
    before = parsed.sizes[at - 1] if at else None
    words = parsed.sentence.words
    is_result = words[max(0, measure.at - 1)] in ("so", "also")
    by = words[before.at + 1] if before is not None and before.at + 1 < len(words) else ""
    if is_result and before is not None and by in _COMPARED:
        measure.role, before.replaced = _COMPARED[by], True
        return
    if is_result and before is not None and before.of == 1 and not (before.role or before.side):
        before.replaced = True


def _as_subject(words: list[str], measure: Measure, active: Mention | None) -> None:
    """Note that a size without a word is a slab's own: "it has to stop at 49 1/2 inches"."""
    two_before = tuple(words[max(0, measure.at - 2) : measure.at])
    if two_before in _STOPS and "it" in words[max(0, measure.at - _STOPS_FAR) : measure.at]:
        measure.is_subject = True
    is_slab = active is not None and active.kind == "slab"
    if is_slab and words[max(0, measure.at - 1)] == "in" and measure.size.unit:
        measure.is_attribute = True  # "the worktop in 4 cm"
    if (
        two_before in _WANTS_IT
        and measure.size.unit in ("mm", None)
        and measure.size.amount <= _THICK
    ):
        measure.role = "thick"  # "top 1600 x 400, wants it 60"
    is_made = words[max(0, measure.at - 1)] == "make"  # "wall to wall 2412, make 2400"
    settles = settles_on(words, measure)
    if two_before in _MAKES_IT or is_made or settles or _is_to_be(words, measure):
        measure.is_subject = True
    if is_slab and active is not None and active.end == measure.at:
        led = words[max(0, active.start - 2) : active.start]
        measure.is_subject = measure.is_subject or bool(_MAKES & set(led))
    if _LEAVES & set(two_before):
        measure.is_subject = True  # "that leaves 2200 for the top"


def _is_to_be(words: list[str], measure: Measure) -> bool:
    """Return whether a size is what the new slab is to be: "the new one should only be 2950"."""
    before = words[max(0, measure.at - _TO_BE_FAR) : measure.at]
    if not before or before[-1] not in ("be", "measure", "is"):
        return False
    near_before = before[-5:]
    return bool(_NEW & set(before)) and (bool(_SHOULD & set(near_before)) or before[-1] == "is")


def _is_led_by_all(words: list[str], at: int) -> bool:
    """Whether "all", "both" or the like leads to a size: "all in 30mm", "both sides 40mm"."""
    for word in reversed(words[max(0, at - _ALL_FAR) : at]):
        if word in _ALL:
            return True
        if word not in _OF_ALL:
            return False
    return False


def roles_said(parsed: ParsedSentence, at: int) -> set[str]:
    """Return the roles of a sentence's single sizes before one of them."""
    return {size.role for size in parsed.sizes[:at] if size.of == 1 and size.role}


def comes_first(parsed: ParsedSentence, mention: Mention, measure: Measure) -> bool:
    """Whether a name is read before a size: it stands before, or is what the size is said of.

    In "a 40 thick polished worktop, 1800 x 600" the worktop is named when its thickness is taken.
    """
    if mention.start <= measure.at:
        return True
    if mention.kind != "slab" or mention.preposition or measure.of > 1:
        return False
    words = parsed.sentence.words
    is_own_size = measure.size.unit is not None or words[max(0, measure.at - 1)] in _ARTICLES
    if not measure.role and is_own_size and mention.start == measure.at + 1:
        measure.is_attribute = True
        return True
    if measure.role != "thick" or measure.cue is None or measure.cue[1] <= measure.at:
        return False
    between = parsed.sentence.atoms[measure.cue[1] : mention.start]
    return 0 <= mention.start - measure.cue[1] <= _ADJECTIVES and all(
        atom.kind == "word" and atom.word not in _NO_ADJECTIVES for atom in between
    )


def is_left(focus: Focus, parsed: ParsedSentence, active: Mention, measure: Measure) -> bool:
    """Return whether a sentence has turned from a thing that is none of ours to what is wanted."""
    sentence = parsed.sentence
    if measure.is_sum or is_resumed(focus, parsed, active, measure):
        return True
    is_ours = active.kind not in ("thing", "room") and not active.is_old
    if not is_ours and measure.side and _tells_which(sentence.words, measure.at):
        return True  # "the waste is on the other side, so the 640 is from the right"
    since = [atom.word for atom in sentence.atoms[active.end : measure.at]]
    if not is_ours and ")" in since and "(" not in since:
        return True  # "1250 wide (there's a gap), 650 deep"
    is_told = bool(measure.role) or measure.of > 1
    is_told = is_told or settles_on(sentence.words, measure)
    concludes = bool(_SO & set(sentence.words[active.end : measure.at])) and is_told
    return not is_ours and (concludes or scope.is_renewed(sentence, active.end, measure.at))


def _tells_which(words: list[str], at: int) -> bool:
    """Return whether a size told before is spoken of again: "that 640 is from the right"."""
    led, after = words[max(0, at - 1) : at], words[at + 1 : at + 2]
    return bool(led) and led[0] in _WHICH and bool(after) and after[0] in _ITS_VERB


def is_resumed(focus: Focus, parsed: ParsedSentence, active: Mention, measure: Measure) -> bool:
    """Return whether a sentence goes on with what is wanted after an aside about a thing.

    A dash ends the aside where sizes of a slab follow that still has none of them, and "it's" does
    in a correction: "we moved the fridge - 2320 x 630"; "found the box, it's 560 x 490".
    """
    if active.kind not in ("thing", "room") or active.start <= _LABEL_LONG:
        return False
    atoms, words = parsed.sentence.atoms, parsed.sentence.words
    since = atoms[active.end : measure.at]
    if has_mark(parsed.sentence, "correct") and tuple(words[measure.at - 1 : measure.at]) in _ITS:
        return any(atom.word == "," for atom in since)
    if not any(atom.word in _DASHES for atom in since):
        return False
    piece = focus.subjects.piece
    claims = piece.claims if piece is not None else {}
    if measure.role == "thick":
        return "thickness" not in claims
    return measure.of > 1 and "length" not in claims and "diameter" not in claims


def note_hole(
    measure: Measure, active: Mention | None, target: Target, waiting: Sequence[Mention]
) -> None:
    """Note whether a size is said of the hole itself; the hole may be named after it."""
    if active is not None and active.kind in ("open", "hole"):
        measure.on_hole = active.names_hole
    elif isinstance(target, tuple):
        later = any(one.kind == "hole" or one.names_hole for one in waiting)
        measure.on_hole = not later and all(one.names_hole for one in target)


def without_counts(found: list[Mention], sizes: list[Measure]) -> list[Measure]:
    """Leave out bare small numbers that count something: "2 round table tops"."""
    counts = {(mention.count, mention.start, mention.end) for mention in found if mention.count}
    kept = []
    for size in sizes:
        counting = any(
            size.size.unit is None
            and size.size.amount == count
            and (0 < start - size.at <= 4 or size.at == end + 1)  # "two taps", "Taps: 2"
            for count, start, end in counts
        )
        roles = ("", "across", "dia") if len(sizes) > 1 else ("", "across")  # "1 round hole, 60"
        if not counting or size.of > 1 or size.role not in roles or size.side:
            kept.append(size)
    return kept
