"""An L read once more, clause by clause: which leg each clause is about, and what it says of it.

The walk gives a size to what is named nearest. A description goes along the room instead: "the
long part runs along the wall in front of me, 2860 including the corner, and the short part comes
back towards me, 1740". So where the walk leaves an L's sizes open, each of its sentences is read
for the leg that is its subject; what the walk found stays where both are whole.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Final

from ledgerstone.enquiry.scene.said import Claim, SaidPiece, SaidWord
from ledgerstone.enquiry.scene.size_assigner import SizeAssigner, worked_out
from ledgerstone.enquiry.sentence.measures import Measure, measures_of
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.sentence.mentions import mentions_of
from ledgerstone.enquiry.shapes.legs import side_said
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

Ranked = Iterable[tuple[Sentence, tuple[int, int]]]
_PARTS: Final = word_set(
    "leg part arm run side section bit wing stretch one schenkel teil seite wand wall piece"
)
_BACK: Final = word_set(
    "long longer longest main back rear lange langer langen längere längerer hintere hinterer"
    " hinten erste first"
)
_SIDE: Final = word_set(
    "short shorter shortest other second side left left-hand lefthand right right-hand righthand"
    " kurze kurzer kurzen kürzere kürzerer linke linker linken rechte rechter rechten andere"
    " anderer zweite zweiter"
)
_ALONE: Final = word_set("long longer short shorter lange langer kurze kurzer längere kürzere")
_THE: Final = word_set("the der die das den")
_SAYS: Final = frozenset({"", "misst", "ist", "is", "runs"})
_HAND: Final = frozenset({"hand"})
_COMES: Final = word_set("comes turns runs goes returns kommt läuft geht ragt")
_TOWARDS: Final = word_set("towards toward forward forwards out you me vorn vorne")
_ONE: Final = frozenset({"one"})
_ALONG: Final = frozenset({"along", "down"})
_REFERS: Final = word_set("from to past beyond off ab von vom bis zur zum of")
_AT: Final = word_set("under along at beside below by in unter am beim an vor")
_BOTH: Final = word_set("both each beide beiden jeweils je throughout everywhere überall all")
_BEYOND: Final = word_set("beyond past further darüber weitere")
_INNER: Final = word_set("inside inner internal innen inneren")
_WALLS: Final = word_set("wall walls window windows wand fenster leg legs room kitchen")
_DEEPEST_MM: Final = 900.0  # of a leg: common practice, no source
_NEAR: Final = 4
_LED: Final = 9
_FOLLOWS: Final = 10


class _NamedLeg:
    """A leg named in a sentence: at which atom, and which."""

    def __init__(self, at: int, name: str) -> None:
        self.at, self.name, self.is_used = at, name, False


def read_legs_told(piece: SaidPiece, sentences: Ranked, assigner: SizeAssigner) -> None:
    """Fill an L's sizes from the clauses about its legs, where the walk did not find them all."""
    reader = _LegReader(assigner)
    for sentence, rank in sentences:
        reader.read(sentence, rank)
    told = reader.told()
    if _is_whole(piece) and not reader.sums:
        return
    if _has_all(told):
        for key in ("length", "width", "back_depth", "side_depth"):
            piece.claims[key] = [told[key]]
        piece.claims.pop("wide", None)
    else:
        for key, claim in told.items():
            listed = piece.claims.setdefault(key, [claim])
            if key in reader.sums:  # "1200 further" is no outside size
                listed[:] = [claim]
    piece.corner = piece.corner or reader.corner


def _is_whole(piece: SaidPiece) -> bool:
    """Return whether the walk found both outside sizes and what the corner leaves out."""
    known = {key for key, claims in piece.claims.items() if claims}
    notch = {"notch_length", "notch_width"} <= known or {"back_depth", "side_depth"} <= known
    return {"length", "width"} <= known and notch


def _has_all(told: dict[str, Claim]) -> bool:
    """Return whether every size of an L is told, and its legs are longer than they are deep."""
    if not {"length", "width", "back_depth", "side_depth"} <= told.keys():
        return False
    is_long = told["length"].mm > told["side_depth"].mm
    return is_long and told["width"].mm > told["back_depth"].mm


class _LegReader:
    """Reads sentences for what they say of an L's legs."""

    def __init__(self, assigner: SizeAssigner) -> None:
        self._assigner = assigner
        self._reach: dict[str, Claim] = {}
        self._beyond: set[str] = set()
        self._depth: dict[str, Claim] = {}
        self._plain: list[Claim] = []
        self._aliases: set[str] = set()
        self.corner: SaidWord | None = None
        self._is_either = False  # whether the legs are only told as one and the other
        self.sums: set[str] = set()

    def read(self, sentence: Sentence, rank: tuple[int, int]) -> None:
        """Take the sizes of one sentence that are of a leg."""
        found = mentions_of(sentence)
        until = _first_hole(sentence, found)
        legs = self._legs(sentence, until)
        self._note_corner(sentence, legs)
        for size in measures_of(sentence):
            if size.at >= until or size.of > 1 or size.role in ("thick", "quantity", "radius"):
                continue
            if not size.replaced and not _is_of_thing(sentence, found, legs, size):
                self._take(sentence, legs, size, rank)

    def told(self) -> dict[str, Claim]:
        """Return what was found: outside lengths, and how deep each leg is."""
        depth = dict(self._depth)
        if not depth and len(self._plain) == 1:
            depth = dict.fromkeys(("back", "side"), self._plain[0])
        reach = dict(self._reach)
        for leg in self._beyond & reach.keys():
            other = depth.get({"back": "side", "side": "back"}[leg])
            if other is None:
                del reach[leg]
                continue
            own = reach[leg]
            reach[leg] = worked_out(own.length, own.mm + other.mm, [own, other])
            self.sums.add({"back": "length", "side": "width"}[leg])
        if self._is_turned(reach):
            reach = {"back": reach["side"], "side": reach["back"]}
            depth = {{"back": "side", "side": "back"}[leg]: one for leg, one in depth.items()}
        keys = (("length", "back", reach), ("width", "side", reach))
        depths = (("back_depth", "back", depth), ("side_depth", "side", depth))
        return {key: claims[leg] for key, leg, claims in (*keys, *depths) if leg in claims}

    def _is_turned(self, reach: dict[str, Claim]) -> bool:
        """Return whether legs told as "one" and "the other" are told the shorter first."""
        both = len(reach) > 1
        return both and self._is_either and reach["side"].mm > reach["back"].mm

    def _legs(self, sentence: Sentence, until: int) -> list[_NamedLeg]:
        """Return the legs that a sentence names before any hole, but for those it measures from."""
        words = sentence.words
        legs: list[_NamedLeg] = []
        for i in range(until):
            name = self._leg_at(words, i)
            self._is_either = self._is_either or (name == "back" and words[i] in _ONE)
            if name and not _REFERS & set(words[max(0, i - 2) : i]):
                legs.append(_NamedLeg(i, name))
                self._note_alias(words, i, name)
        return legs

    def _leg_at(self, words: Sequence[str], i: int) -> str:
        """Return which leg words from an atom on name; else ""."""
        if not words[i]:
            return ""
        return _by_part(words, i) or _by_way(words, i) or self._by_alias(words, i)

    def _by_alias(self, words: Sequence[str], i: int) -> str:
        """Return the long leg where what it runs along names it: "the window part"."""
        if words[i] not in self._aliases:
            return ""
        is_part = bool(_PARTS - _WALLS & set(words[i + 1 : i + 2]))
        near = words[max(0, i - _NEAR) : i]
        return "back" if is_part or (_AT & set(near[-3:]) and _PARTS & set(near)) else ""

    def _note_alias(self, words: Sequence[str], i: int, name: str) -> None:
        """Note what the long leg runs along, by which it is called later: "the window part"."""
        if name == "back":
            self._aliases |= _WALLS & set(words[i : i + _LED]) & {"window", "windows", "fenster"}

    def _note_corner(self, sentence: Sentence, legs: Sequence[_NamedLeg]) -> None:
        """Note at which end of the long leg the short one is."""
        for leg in legs:
            if self.corner is not None or leg.name != "side":
                continue
            low, high = max(0, leg.at - _LED), min(len(sentence.atoms), leg.at + _LED)
            side = side_said(sentence.words, leg.at, high) or side_said(sentence.words, low, leg.at)
            if side:
                span = (sentence.atoms[low].start, sentence.atoms[high - 1].end)
                corner = "front-left" if side == "right" else "front-right"
                self.corner = SaidWord(corner, (span,))

    def _take(
        self, sentence: Sentence, legs: Sequence[_NamedLeg], size: Measure, rank: tuple[int, int]
    ) -> None:
        leg = _leg_of(legs, size)
        words = sentence.words
        near = {*words[max(0, size.at - _NEAR) : size.at], *words[size.at + 1 : size.at + 4]}
        depth = self._assigner.claim(size, "deep", rank)
        if depth is not None and depth.mm <= _DEEPEST_MM and not size.side:
            if near & _BOTH and size.role in ("deep", "wide", ""):
                self._depth = dict.fromkeys(("back", "side"), depth)
            elif leg and size.role in ("deep", "wide", ""):
                self._depth.setdefault(leg, depth)
            elif size.role == "deep":
                self._plain.append(depth)
            return
        reach = self._assigner.claim(size, "length", rank)
        is_reach = reach is not None and reach.mm > _DEEPEST_MM and size.side in ("", "back")
        if not leg or reach is None or not is_reach:
            return
        self._reach.setdefault(leg, reach)
        after = set(words[size.at + 1 : size.at + _NEAR + 2])
        if after & _BEYOND or (after & _INNER and {"corner", "ecke", "edge"} & after):
            self._beyond.add(leg)


def _by_part(words: Sequence[str], i: int) -> str:
    """Return which leg an adjective and a noun name: "the long part", "der kurze misst"."""
    word, before = words[i], words[i - 1] if i else ""
    name = "back" if word in _BACK else "side" if word in _SIDE else ""
    after = words[i + 1 : i + 3]
    after = after[1:] if after[:1] and after[0] in _HAND else after[:1]
    noun = after[0] if after else ""
    if name and (noun in _PARTS or (before in _THE and word in _ALONE and noun in _SAYS)):
        return name
    if word in _ONE and noun in _PARTS - _ONE:
        return "back"
    is_side = word in ("return", "other") and before in _THE
    return "side" if is_side or (word == "return" and before == "a") else ""


def _by_way(words: Sequence[str], i: int) -> str:
    """Return which leg its way names: "comes back towards me", "along the window wall"."""
    if words[i] in _COMES and _TOWARDS & set(words[i + 1 : i + 5]):
        return "side"
    before = set(words[max(0, i - 3) : i])
    is_along = words[i] in _WALLS and "wall" in words[i : i + 2] and bool(_ALONG & before)
    return "back" if words[i] == "rückwand" or (is_along and not (_SIDE | _BACK) & before) else ""


def _leg_of(legs: Sequence[_NamedLeg], size: Measure) -> str:
    """Return which leg a size is of: the one named before it, else the next one after it."""
    before = [leg for leg in legs if leg.at < size.at]
    if before and not before[-1].is_used:
        for leg in before:
            leg.is_used = True
        return before[-1].name
    after = next((leg for leg in legs if size.at < leg.at <= size.at + _FOLLOWS), None)
    if after is not None and not (before and before[-1].name == after.name):
        after.is_used = True
        return after.name
    return before[-1].name if before else ""


def _first_hole(sentence: Sentence, found: Sequence[Mention]) -> int:
    """Return where a sentence begins to speak of an opening."""
    words = sentence.words
    holes = [
        one.start
        for one in found
        if one.kind in ("open", "hole") and not _WALLS & set(words[one.end : one.end + 1])
    ]
    return min(holes, default=len(sentence.atoms))


def _is_of_thing(
    sentence: Sentence, found: Sequence[Mention], legs: Sequence[_NamedLeg], size: Measure
) -> bool:
    """Return whether a thing that is no part of the L is named last before a size."""
    since = max((leg.at for leg in legs if leg.at < size.at), default=-1)
    return any(
        one.kind == "thing"
        and since < one.start < size.at
        and not _WALLS & set(sentence.words[one.start : one.end])
        and not _ALONE & set(sentence.words[one.start : one.end])
        for one in found
    )
