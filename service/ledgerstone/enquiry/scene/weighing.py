"""Which of several readings of a slab's sizes is plainly meant: all its sizes weighed at once.

Each reading may be the length, the width, the thickness or none. The hints of its words, of what is
named nearest and of its magnitude add to a score, and the ways of giving every size one reading are
compared as wholes. Only where the best way beats every other by a margin is a reading taken.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.scene.said import Claim, Claims, SaidPiece, newest
from ledgerstone.enquiry.sentence.amounts import LIKELY_MM, PLAUSIBLE_MM
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.order import UPRIGHT_USES

# Hints, in units of how much one sure hint counts. Chosen, no source.
HINTS: Final = MappingProxyType(
    {
        "called so": 2.0,  # "600 deep", for the width
        "called otherwise": -2.0,  # "600 deep", for the length
        "called wide": 1.0,  # for the length or the width
        "in its place": 1.5,  # of a group: "1830 x 620 x 40"
        "called nothing": 0.5,
        "usual": 0.5,
        "unusual": -1.0,
        "of a hole": -1.5,  # a hole or a bowl is named nearest before it
        "of a thing": -2.0,
        "in a bracket": -0.5,
        "torn apart": -1.5,  # a length of one pair with a width of another
    }
)
MARGIN: Final = 1.0
_SLOTS: Final = ("length", "width", "thickness", "diameter")
_ROLE: Final = {"length": "length", "width": "deep", "thickness": "thickness"}
_CALLED: Final = {
    "length": frozenset({"long", "edge:front", "edge:back"}),
    "width": frozenset({"deep", "edge:left", "edge:right"}),
    "thickness": frozenset({"thick"}),
    "diameter": frozenset({"dia", "across", "radius"}),
}
_EITHER: Final = frozenset({"wide", "across"})
_THIRD: Final = 3
_MOST: Final = 5  # readings that are compared; of more nobody can tell
_NEAR: Final = 14  # atoms
_PAIR: Final = 2
_NOW: Final = frozenset({"now", "jetzt", "nun", "inzwischen"})
_TURNS: Final = frozenset({"but", "aber", "sondern"})


@dataclass(frozen=True, slots=True)
class Witness:
    """What is known of a size where it stands: what it is called, and what is named before it.

    ``nearest`` is the kind of what is named nearest before it in its sentence; ``sums_up``, that
    the sentence says again what was said; ``is_now``, that it says what is so now.
    """

    span: TextSpan
    role: str
    axis: str
    place: int
    group: int
    nearest: str
    is_bracketed: bool
    sums_up: bool = False
    is_now: bool = False


Witnesses = Mapping[TextSpan, Witness]


def witnesses_of(
    sentence: Sentence, found: Sequence[Mention], sizes: Iterable[Measure], *, sums_up: bool = False
) -> Iterator[Witness]:
    """Yield what is known of each size of a sentence."""
    for size in sizes:
        turn = max((i for i in range(size.at) if sentence.words[i] in _TURNS), default=0)
        near = [one for one in found if max(turn, size.at - _NEAR) <= one.end <= size.at]
        before = [one for one in near if not one.preposition] or near[:1]
        nearest = before[-1] if before else None
        kind = nearest.kind if nearest is not None else ""
        is_other = nearest is not None and (nearest.is_old or nearest.name == "notch")
        kind = "thing" if is_other or kind == "room" else kind
        words = [atom.word for atom in sentence.atoms[: size.at]]
        opened = len(words) - 1 - words[::-1].index("(") if "(" in words else -1
        within = opened >= 0 and ")" not in words[opened:]
        span = (size.size.start, size.size.end)
        group = size.members[0].at if size.members else -1
        group = sentence.atoms[group].start if group >= 0 else -1
        is_now = bool(_NOW & set(sentence.words))
        yield Witness(span, size.role, size.axis, size.place, group, kind, within, sums_up, is_now)


def weigh(pieces: Iterable[SaidPiece], witnesses: Witnesses) -> None:
    """Keep of each slab's contested sizes the reading that is plainly meant, if one is."""
    for piece in pieces:
        if piece.shape == "l-shape" or any(key.startswith("edge:") for key in piece.claims):
            continue
        readings = {key: newest(piece.claims.get(key, [])) for key in _SLOTS}
        contested = [key for key in _SLOTS if len(readings[key]) > 1]
        listed = [one for key in contested for one in readings[key]]
        if not contested or len(listed) > _MOST or not all(_is_known(listed, witnesses)):
            continue
        if any(witnesses[claim.spans[0]].sums_up for claim in listed):
            continue  # the text and its summary differ: nobody but the writer can tell
        if _keep_now(piece, readings, witnesses):
            continue
        is_open = [key for key in ("width", "thickness") if not readings[key]]
        _settle(piece, [*contested, *is_open], listed, witnesses)


def _keep_now(
    piece: SaidPiece, readings: Mapping[str, Sequence[Claim]], witnesses: Witnesses
) -> bool:
    """Let the last reading stand where only its sentence says that it is so now."""
    is_kept = False
    for key, claims in readings.items():
        if len(claims) < _PAIR:
            continue
        now = [claim for claim in claims if witnesses[claim.spans[0]].is_now]
        if len(now) == 1 and now[0] is max(claims, key=lambda claim: claim.spans[0]):
            piece.claims[key], is_kept = now, True
    return is_kept


def _is_known(claims: Sequence[Claim], witnesses: Witnesses) -> Iterator[bool]:
    """Yield of each reading whether it is one size as said, and not doubtful in itself."""
    for claim in claims:
        is_one = len(claim.spans) == 1 and claim.spans[0] in witnesses
        yield is_one and claim.how == "said" and claim.alternative is None and not claim.opinion


def _settle(
    piece: SaidPiece, slots: Sequence[str], listed: Sequence[Claim], witnesses: Witnesses
) -> None:
    """Compare all ways to give slots their readings; take those that the best way is sure of."""
    scores = [
        {slot: _score(piece, slot, one, witnesses[one.spans[0]]) for slot in slots}
        for one in listed
    ]
    told = [witnesses[one.spans[0]] for one in listed]
    ways = [
        (sum(scores[i][slot] for slot, i in way.items()) + _torn(way, told), way)
        for way in _ways(slots, len(listed))
    ]
    best, chosen = max(ways, key=lambda one: one[0])
    for slot, i in chosen.items():
        others = [
            score
            for score, way in ways
            if slot not in way or not listed[way[slot]].agrees(listed[i])
        ]
        if best - max(others, default=-1.0) >= MARGIN and scores[i][slot] > 0:
            _keep(piece.claims, slot, listed[i])


def _torn(way: Mapping[str, int], told: Sequence[Witness]) -> float:
    """Weigh that a way takes a length and a width of which only one is of a group, or neither."""
    if not {"length", "width"} <= way.keys():
        return 0.0
    groups = {told[way[slot]].group for slot in ("length", "width")}
    return HINTS["torn apart"] if len(groups) > 1 else 0.0


def _ways(slots: Sequence[str], count: int) -> Iterator[dict[str, int]]:
    """Yield every way to give each slot one reading or none, and no reading to two."""
    if not slots:
        yield {}
        return
    for way in _ways(slots[1:], count):
        yield way
        for i in range(count):
            if i not in way.values():
                yield {slots[0]: i, **way}


def _keep(claims: Claims, slot: str, claim: Claim) -> None:
    """Let one reading of a slot stand, and be none of another."""
    for key in _SLOTS:
        if key != slot and len(newest(claims.get(key, []))) > 1:
            claims[key] = [one for one in claims[key] if not one.agrees(claim)]
    top = [one for one in claims.get(slot, []) if one.agrees(claim)]
    claims[slot] = top or [claim]


def _score(piece: SaidPiece, slot: str, claim: Claim, witness: Witness) -> float:
    """Weigh the hints that a reading is a slab's size of one name."""
    is_thin = witness.role == "deep" and claim.mm <= LIKELY_MM["thickness"][1]
    hints = ["called nothing" if is_thin and slot == "thickness" else _called(piece, slot, witness)]
    is_upright = piece.use in UPRIGHT_USES and slot == "width"
    role = "width" if is_upright else _ROLE.get(slot, slot)
    low, high = LIKELY_MM[role]
    least, most = PLAUSIBLE_MM[role]
    if not least <= claim.mm <= most:
        hints += ["unusual", "unusual"]
    hints.append("usual" if low <= claim.mm <= high else "unusual")
    is_whole = witness.place >= _THIRD or witness.role == "thick"
    if witness.nearest in ("open", "hole") and not is_whole:
        hints.append("of a hole")
    if witness.nearest == "thing" and witness.role != "thick":
        hints.append("of a thing")
    if witness.is_bracketed:
        hints.append("in a bracket")
    return sum(HINTS[hint] for hint in hints if hint)


def _called(piece: SaidPiece, slot: str, witness: Witness) -> str:
    """Give the hint of what a size is called, or of its place in a group."""
    role = "" if witness.role == "size" else witness.role
    if role in _CALLED[slot] or (role == "high" and slot == "width" and piece.use in UPRIGHT_USES):
        return "called so"
    if role in _EITHER:
        return "called wide" if slot in ("length", "width") else "called otherwise"
    if role or (witness.axis and {"x": "length", "y": "width"}[witness.axis] != slot):
        return "called otherwise" if role != "apart" else ""
    if witness.axis:
        return "called so"
    if witness.place:
        is_third = witness.place >= _THIRD
        return "in its place" if is_third == (slot == "thickness") else "called otherwise"
    return "called nothing"
