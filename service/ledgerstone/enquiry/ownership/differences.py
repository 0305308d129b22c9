"""Changes said as differences: "200 longer", "take 50 off the depth", "drop the length by 100"."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene.focus import ParsedSentence
from ledgerstone.enquiry.scene.said import AGREE_MM, Claim, SaidPiece, newest, say
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import LABELS, ROLES
from ledgerstone.enquiry.words.word_sets import word_set
from ledgerstone.quantities import Length

_COMPARED: Final = {
    "longer": ("length", 1), "shorter": ("length", -1), "wider": ("wide", 1),
    "narrower": ("wide", -1), "deeper": ("width", 1), "shallower": ("width", -1),
    "thicker": ("thickness", 1), "thinner": ("thickness", -1), "länger": ("length", 1),
    "kürzer": ("length", -1), "breiter": ("wide", 1), "schmaler": ("wide", -1),
    "tiefer": ("width", 1), "dicker": ("thickness", 1), "dünner": ("thickness", -1),
    "stärker": ("thickness", 1),
}  # fmt: skip
_KEYS: Final = {"long": "length", "wide": "wide", "deep": "width", "thick": "thickness"}
_MORE: Final = word_set(
    "more extra increase raise extend lengthen add plus mehr up larger bigger on"
)
_LESS: Final = word_set(
    "less reduce cut drop lower shorten lose take knock weniger off down smaller"
)
_BY: Final = frozenset({"by", "um"})
_WISHES: Final = word_set(
    "könnte könnten kann können möchte möchten hätten werden"
    " make made want wants need needs could can should would please like bitte soll sollte lieber"
    " doch now reduce increase drop add take knock cut lose extend lengthen shorten possible"
)
_COMPARES: Final = word_set(
    "than als compared old existing trailer van room alcove wall unit units"
)
_ALONG: Final = word_set("left right links rechts end ends")
_FROM_SIDES: Final = frozenset({"left", "right", "side", "front", "back", "end"})
_TO: Final = (["to"],)
_NEAR: Final = 4


def alter(parsed: ParsedSentence, piece: SaidPiece | None) -> None:
    """Add each difference that a sentence asks for to the size that it is of.

    The differences are marked, so that they are no sizes of their own.
    """
    words = parsed.sentence.words
    if piece is None or not _WISHES & set(words) or _COMPARES & set(words):
        return
    for measure in parsed.sizes:
        found = None if measure.side or measure.of > 1 else difference(parsed.sentence, measure)
        if found is None:
            continue
        key = _key_of(found[0], piece, parsed, measure, found[1])
        known = newest(piece.claims.get(key, []))
        if len(known) == 1 and _altered(piece, key, measure, sign=found[1], rank=parsed.rank[0]):
            measure.replaced = True


def difference(sentence: Sentence, measure: Measure) -> tuple[str, int] | None:
    """Return which size a measure is a difference of, and whether it adds or takes away."""
    words = sentence.words
    after = words[measure.at + 1 : measure.at + 3]
    for word in after:
        if word in _COMPARED:
            return _COMPARED[word]
    before = words[max(0, measure.at - _NEAR) : measure.at]
    following = words[measure.at + 1 : measure.at + 1 + _NEAR]
    label = _label_in(before)
    sign = _sign(after[:1])
    if label and sign and "to" not in before[-1:]:
        return label, sign  # "the depth 50 less"
    if label and _BY & set(before[-1:]):
        sign = _sign(words[max(0, measure.at - _NEAR - 3) : measure.at])
        return (label, sign) if sign else None  # "reduce the length by 100"
    label, sign_before = _label_in(following), _sign(before[-2:])
    sign_before = 0 if before[-2:] == ["cut", "out"] else sign_before  # "cut-out 490 left to right"
    if following[:1] and following[0] in _FROM_SIDES and following[1:2] in _TO:
        return None  # "to cut 460 left to right" tells of a hole
    if label and sign_before and {"to", "off", "from", "on"} & set(following[:2]):
        return label, sign_before  # "take 50 off the depth", "add 100 to the length"
    return None


def key_of_word(said: str) -> str:
    """Return the size of what lies that a difference is of; "wider" is deeper."""
    return "width" if said == "wide" else said


def _label_in(words: list[str]) -> str:
    for table in (LABELS, ROLES):
        for _, _, tag in table.all_in(words):
            if tag in _KEYS:
                return _KEYS[tag]
    return ""


def _sign(words: list[str]) -> int:
    if _LESS & set(words):
        return -1
    return 1 if _MORE & set(words) else 0


def _key_of(
    said: str, piece: SaidPiece, parsed: ParsedSentence, measure: Measure, sign: int
) -> str:
    """Tell what "wider" means: what a size beside it confirms, else the depth of a table."""
    if said != "wide":
        return "diameter" if said == "length" and "diameter" in piece.claims else said
    for key in ("length", "width", "diameter"):
        for one in newest(piece.claims.get(key, [])):
            new = one.mm + sign * in_its_unit(measure, one.length)
            if any(
                abs(in_its_unit(other, one.length) - new) <= AGREE_MM
                for other in parsed.sizes
                if other is not measure
            ):
                return key
    if "diameter" in piece.claims and not piece.claims.get("width"):
        return "diameter"
    near = set(parsed.sentence.words[measure.at + 1 : measure.at + 7])
    return "length" if _ALONG & near or piece.use == "hearth" else "width"


def in_its_unit(measure: Measure, like: Length) -> float:
    """Return a difference, mm; a bare one is in the unit of what it changes, metres aside."""
    usual = like.unit if like.unit in ("mm", "cm", "in") else "mm"
    return Length.of(measure.size.amount, measure.size.unit or usual).mm


def _altered(piece: SaidPiece, key: str, measure: Measure, *, sign: int, rank: int) -> bool:
    """Add a difference to the size that stands; False if that is not one, or nothing is left."""
    known = next(iter(newest(piece.claims[key])))
    difference_mm = in_its_unit(measure, known.length)
    if not 0 < difference_mm < known.mm:
        return False
    spans = (*known.spans, (measure.size.start, measure.size.end))
    length = known.length.in_unit(known.mm + sign * difference_mm)
    say(piece.claims, key, Claim(length, spans, (rank, 1), known.order, how="worked-out"))
    return True
