"""What a size or a name is not: what is there now, a chamfer's, only a reference, only an offer."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.sentence.sums import without_workings
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import mark
from ledgerstone.enquiry.words.word_sets import word_set

# Why a size is of no slab.
OLD: Final = "what is there now"
OF_ANOTHER: Final = "something else"
NO_SIZE: Final = "an edge, a limit or an overhang"
SUM: Final = "worked out from"
NAMES: Final = "which slab it is"
REPLACED: Final = "superseded"
COUNT: Final = "a number of pieces"
OWN: Final = "the workshop's own words"

_OFFERS: Final = word_set("we we'd we'll we've we're i'd i'll our us wir unser unsere longest")
_RESTATES: Final = word_set("have gave said asked mentioned wrote noted haben hatten schrieben")
_OFFERED: Final = word_set("could can would suggest recommend usual können würden empfehlen up")
_SUMS_UP: Final = frozenset(
    {("to", "be"), ("just", "to"), ("to", "confirm"), ("to", "recap"), ("to", "check")}
    | {("so", "that"), ("so", "that's"), ("zur", "sicherheit"), ("noch", "einmal")}
)
_WASTES: Final = word_set("waste drain outlet plug plughole ablauf abfluss")
_APART: Final = (["away"], ["off"], ["apart"])  # "one each side of it 4 in away"
_REFERENCE: Final = word_set("behind beside under above hinter neben between near past over vor")
_EACH: Final = frozenset({"each", "every"})
_AWAY_FROM: Final = frozenset({"left", "right", "side", "sides"})
_LINES: Final = word_set("centreline centerline centrelines centerlines cl")
_ENDS_CLAUSE: Final = frozenset({",", ";", "(", ")", "-", "–", "—"})
_MEASURES: Final = word_set("is was are measures measured ist war misst")
_SPEAKERS: Final = frozenset({"i", "we", "ich", "wir"})
_MATCHES: Final = frozenset({"match", "matches", "matching", "like", "suit"})
_CHANGED: Final = word_set(
    "bigger larger smaller wider narrower longer shorter deeper new newer different other"
)
_LIMITS: Final = frozenset({("up", "to"), ("bis", "zu"), ("as", "much")})
_MIDDLES: Final = word_set("middle centre center")
_AT_MIDDLE: Final = word_set("at in on to line from off")
_EACH_END: Final = frozenset({("each", "end"), ("either", "end"), ("both", "ends")})
_GOES: Final = frozenset({"go", "goes", "going", "move", "increase", "raise"})
_CONCLUDES: Final = word_set("also so daher somit hence therefore thus making")
_CONCLUDED: Final = 22  # atoms
_THERE: Final = word_set(
    "built finished poured already there ready done built schon bereits da fertig vorhanden"
)
_SUBJECT_EARLY: Final = 3
_AFTER_LISTED: Final = frozenset({".", ",", "under", "undermount", "behind", "inset", "dahinter"})
_SHORTEST: Final = 3  # atoms
_NEAR: Final = 5
_PLURAL_FAR: Final = 8


def _has(kind: str, words: list[str]) -> bool:
    return any(True for _ in mark(kind).all_in(words))


def is_offer(sentence: Sentence, sizes: list[Measure]) -> bool:
    """Return whether the workshop speaks of what it does, not of what was asked.

    A slab's two sizes before that are what was asked: "a bench of 1200 x 380: we can do that".
    """
    first = next((i for i, word in enumerate(sentence.words) if word in _OFFERS), None)
    if first is None:
        return False
    asked = [size.at for size in sizes if size.of > 1 and size.at < first]
    return not asked or not any(atom.word == ":" for atom in sentence.atoms[asked[-1] : first])


def is_restated(sentence: Sentence, sizes: list[Measure]) -> bool:
    """Return whether a quoted sentence says again what was asked: "Length we have as 1550"."""
    said = _RESTATES & set(sentence.words) or tuple(sentence.words[:2]) in _SUMS_UP
    return bool(said and sizes) and sentence.is_quoted and not _OFFERED & set(sentence.words)


def is_taken_up(sentence: Sentence, sizes: list[Measure], found: list[Mention]) -> bool:
    """Whether a reply that leans on the workshop's words takes up a sentence of them as a whole.

    It names a slab with its sizes, or says again what was asked: "noted: 1750 long, 800 deep".
    """
    slabs = [one for one in found if one.kind == "slab" and not one.is_old]
    is_whole = bool(slabs) and any(size.of > 1 for size in sizes)
    return is_whole or is_restated(sentence, sizes)


def without_offers(sentence: Sentence, sizes: list[Measure]) -> list[Measure]:
    """Leave out the sizes that come after the workshop began to speak of what it does."""
    first = next((i for i, word in enumerate(sentence.words) if word in _OFFERS), None)
    return sizes if first is None else [size for size in sizes if size.at < first]


def _told(sentence: Sentence, kind: str) -> list[tuple[int, int]]:
    """Return marks of what is there now, but for what the new slab is only to match."""
    words = sentence.words
    led = _MATCHES | _CHANGED  # "the hob is a bigger one now"
    return [mark for mark in sentence.marks(kind) if not led & set(words[: mark[0]][-2:])]


def is_old_scope(sentence: Sentence, measure: Measure) -> bool:
    """Return whether a size is of what is there now, or of someone else's."""
    renewed = [i for i, _ in sentence.marks("new")]
    for i, count in _told(sentence, "gone"):
        if i < measure.at and not any(i + count <= j < measure.at for j in renewed):
            return True
        after = sentence.atoms[_past_bracket(sentence, measure.at, i) : i]
        apart = any(atom.word in _ENDS_CLAUSE for atom in after)
        if i > measure.at and not apart and not any(j < measure.at for j in renewed):
            return True
    for i, count in _told(sentence, "old"):
        apart = any(atom.word in _ENDS_CLAUSE for atom in sentence.atoms[measure.at : i])
        apart = apart or has_own_sizes(sentence, i + count)
        apart = apart or bool(_SPEAKERS & set(sentence.words[measure.at : i]))
        if i > measure.at and not apart and not any(j < measure.at for j in renewed):
            return True
    return False


def _past_bracket(sentence: Sentence, at: int, until: int) -> int:
    """Return where a bracket about a size ends: "the kitchen (a top 2200 x 560) is coming out"."""
    words = [atom.word for atom in sentence.atoms[:until]]
    is_within = "(" in words[:at] and ")" not in words[:at] and ")" in words[at:]
    return at + words[at:].index(")") + 1 if is_within else at


def tells_of_old(sentence: Sentence) -> bool:
    """Return whether a sentence is about what is there now, so that "it" after it is that too."""
    said = bool(_told(sentence, "gone")) or bool(_told(sentence, "old"))
    return said and not sentence.marks("new")


def tells_of_thing(sentence: Sentence, found: list[Mention]) -> bool:
    """Whether a sentence is about a thing that is none of ours: "The stove stands on feet"."""
    first = found[0] if found and not sentence.marks("new") else None
    is_thing = first is not None and first.kind == "thing" and not first.preposition
    is_led = is_thing and first is not None and first.start <= _SUBJECT_EARLY
    is_led = is_led and len(sentence.atoms) > _SHORTEST  # "Wrong wall!" tells of nothing
    return is_led and not any(one.kind in ("slab", "open", "leg") for one in found)


def ends_on_thing(sentence: Sentence, found: list[Mention]) -> bool:
    """Whether a sentence ends on a thing that is there already: "…, the frame is ready"."""
    last = max((i for i, atom in enumerate(sentence.atoms[:-2]) if atom.word in ",;:"), default=-1)
    named = [one for one in found if one.start > last]
    kinds = ("thing", "room")
    is_thing = bool(named) and named[0].kind in kinds and not named[0].preposition
    return last >= 0 and is_thing and bool(_THERE & set(sentence.words[-_NEAR:]))


def without_premises(sentence: Sentence, sizes: list[Measure]) -> list[Measure]:
    """Leave out what a conclusion follows from: "the base is 1.95 x 0.95, so 2 x 1"."""
    sizes = without_workings(sentence, sizes)
    for i in range(1, len(sentence.atoms)):
        if sentence.atoms[i - 1].word != "," or sentence.atoms[i].word not in _CONCLUDES:
            continue
        after = [size for size in sizes if i < size.at <= i + _CONCLUDED and not size.side]
        roles = {one.role for one in after} & {"long", "deep", "wide"}
        before = [size for size in sizes if size.at < i and not size.side]
        if len(roles) > 1 or any(one.of > 1 and one.at <= i + 2 for one in after):
            return [size for size in sizes if size not in before or size.role == "thick"]
    return sizes


def is_limit(sentence: Sentence, measure: Measure) -> bool:
    """Whether a size is only the most or the least that something allows: "up to 60 thick"."""
    before = sentence.words[max(0, measure.at - 3) : measure.at]
    pairs = set(pairwise(before))
    goes = _GOES & set(sentence.words[max(0, measure.at - 4) : measure.at])  # "go up to 50"
    return bool(pairs & _LIMITS) and not goes and not measure.side


def has_own_sizes(sentence: Sentence, start: int) -> bool:
    """Whether what is called old has sizes of its own after it: "the old one is 1111 x 444"."""
    following = sentence.atoms[start : start + _NEAR]
    verbs = [i for i, atom in enumerate(following) if atom.word in _MEASURES]
    return bool(verbs) and any(atom.kind == "size" for atom in following[verbs[0] :])


def is_renewed(sentence: Sentence, since: int, until: int) -> bool:
    """Return whether words between two places turn from what is there to what is wanted."""
    turns = [i for i, _ in sentence.marks("new") if since <= i < until]
    return any(sentence.words[i - 1] != "filled" for i in turns)  # "a pipe filled with concrete"


def is_beside(sentence: Sentence, measure: Measure) -> bool:
    """Return whether a size is the distance of a row's openings from its middle."""
    following = range(measure.at + 1, min(measure.at + 6, len(sentence.atoms)))
    until = next((i for i in following if sentence.atoms[i].kind == "size"), measure.at + 6)
    if _has("sideways", sentence.words[measure.at + 1 : until]):
        return True
    led = sentence.marks("sideways")
    is_middles = sentence.words[measure.at + 1 : measure.at + 2] in (["from"], ["off"])
    is_middles = is_middles and bool(_MIDDLES & set(sentence.words[measure.at + 2 :][:3]))
    if is_middles and any(i < measure.at for i, _ in led):
        return True  # "one each side of the sink, each 180 from the centre of the sink"
    is_apart = sentence.words[measure.at + 1 : measure.at + 2] in _APART
    return is_apart and _has("sideways", sentence.words[max(0, measure.at - 6) : measure.at])


def _is_by_line(mention: Mention, before: str, after: list[str]) -> bool:
    """Whether only a hole's centre line is named: "on the sink centreline", "the sink's line"."""
    if before == "cl":
        return True
    if after[:1] and after[0] in _LINES:
        return bool(mention.preposition)
    return after[:1] == ["'s"] and (bool(_LINES & set(after)) or after[2:3] == ["line"])


def is_reference(mention: Mention, sentence: Sentence) -> bool:
    """Whether a hole is named only to say where another is: behind the sink, in line with it."""
    words = sentence.words
    is_to_each = mention.preposition in ("to", "at", "per", "for") and mention.determiner in _EACH
    near = words[max(0, mention.start - 6) : mention.start]
    is_wastes = mention.preposition in ("of", "on") and bool(_WASTES & set(near))
    is_on = mention.preposition in ("on", "auf") and mention.determiner in ("a", "an")
    is_on = is_on and not any(atom.kind == "size" for atom in sentence.atoms)
    if mention.preposition in _REFERENCE or is_to_each or is_wastes or is_on:
        return True  # "the waste of a sit-on bowl", "we've cooked on a gas ring"
    if mention.preposition == "of" and _MIDDLES & set(near) and not _is_placed(mention, words):
        is_away = bool(_AWAY_FROM & set(near))  # "150 to the right of the middle of the bowl"
        if is_away or _AT_MIDDLE & set(near[:-3]):
            return is_away or mention.determiner == "the"
    toward = mention.preposition in ("to", "on", "with", "over", "zur", "zum")
    centred = _has("centred", words[max(0, mention.start - 4) : mention.start])
    if toward and centred and not mention.is_indefinite:
        return True
    after = words[mention.end : mention.end + 3]
    if _is_by_line(mention, words[mention.start - 1] if mention.start else "", after):
        return True
    if (
        _AWAY_FROM & set(words[max(0, mention.start - 3) : mention.start])
        and "of" in words[max(0, mention.start - 2) : mention.start]
    ):
        return True  # "to the left of the sink"
    stands_behind = _has("behind", words[max(0, mention.start - 8) : mention.start])
    return stands_behind and not mention.is_indefinite and not mention.names_hole


def _is_placed(mention: Mention, words: list[str]) -> bool:
    """Whether it is the hole itself that is placed: "to the middle of the sink is 310"."""
    return bool(_MEASURES & set(words[mention.end : mention.end + 1]))


def is_compared(sentence: Sentence, mention: Mention) -> bool:
    """Return whether what is there is only what a size is the same as: "as deep as the old one"."""
    before = sentence.words[max(0, mention.start - _NEAR) : mention.start]
    if not {"as", "wie"} & set(before[-3:]):
        return False
    after = sentence.atoms[mention.end : mention.end + 2]
    return not any(atom.kind == "size" or atom.word in _MEASURES for atom in after)


def is_at_each_end(mention: Mention, sentence: Sentence) -> bool:
    """Return whether a hole is one of two: "a 60 mm hole at each end"."""
    far = _NEAR + (_PLURAL_FAR if mention.is_plural else 3)
    after = sentence.words[mention.end : mention.end + far]
    is_new = mention.determiner not in ("the", "der", "die", "das")
    return bool(_EACH_END & set(pairwise(after))) and is_new


def is_listed(mention: Mention, sentence: Sentence) -> bool:
    """Whether a note only names what goes in: "Sink under, size to follow. Tap behind it."."""
    bare = mention.start == 0 and not (mention.determiner or mention.preposition)
    after = sentence.atoms[mention.end : mention.end + 1]
    return bare and bool(after) and after[0].word in _AFTER_LISTED
