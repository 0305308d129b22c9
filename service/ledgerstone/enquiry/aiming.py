"""What a size is of: the piece or the openings in hand, what is named after it, or none of ours."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry import anchoring, pairing, relations, scope
from ledgerstone.enquiry.focus import Focus, Heard, Target
from ledgerstone.enquiry.lexicon import mark
from ledgerstone.enquiry.measures import Measure
from ledgerstone.enquiry.mention import Mention
from ledgerstone.enquiry.word_sets import word_set

_LONGEST_OPENING_MM: Final = 1250.0
_IGNORED: Final = frozenset({"apart", "radius", "piece", "cutouts", "quantity"})
_NEAR: Final = 5
_ROUNDED: Final = word_set(
    "edge edges corner corners rounded rounding round-over kante kanten ecke"
)
_OWN_KEYS: Final = {"long": "length", "deep": "width", "wide": "width"}


def target_of(
    focus: Focus,
    heard: Heard,
    measure: Measure,
    active: Mention | None,
    targets: dict[int, Target],
) -> Target:
    """Give what a size is of, or None where it is none of ours.

    Parameters
    ----------
    active
        What was named last before it.
    targets
        What the sizes before it in the sentence are of, by their places.
    """
    sentence = heard.sentence
    if scope.is_old_scope(sentence, measure):
        return None
    if measure.side:
        return _placed(focus, heard, measure, active)
    if measure.role == "quantity":
        relations.take_quantity(focus.subjects.current(), measure, sentence)
    if measure.role == "radius" and _is_round_ones(focus, heard, measure, active):
        return focus.subjects.piece
    if (
        measure.role in _IGNORED
        or scope.is_beside(sentence, measure)
        or scope.is_limit(sentence, measure)
        or scope.is_feature(sentence, measure, heard.found)
    ):
        return None
    if measure.of > 1 and measure.place > 1:
        return targets.get(measure.members[0].at)
    return _of_noun(focus, heard, measure, active)


def _is_round_ones(focus: Focus, heard: Heard, measure: Measure, active: Mention | None) -> bool:
    """Whether a radius is of a round slab and not of its edge or of a hole."""
    piece = focus.subjects.piece
    near = set(heard.sentence.words[max(0, measure.at - _NEAR) : measure.at + _NEAR])
    on_hole = active is not None and active.kind in ("open", "hole", "feature")
    return piece is not None and piece.shape == "round" and not on_hole and not near & _ROUNDED


def _of_noun(focus: Focus, heard: Heard, measure: Measure, active: Mention | None) -> Target:
    """Go by what is named after a size, then by what was named before it."""
    subjects = focus.subjects
    following = _noun_after(measure, heard)
    if following is not None and following.kind in ("thing", "feature"):
        return None
    amounts = focus.settler.amounts
    is_triple = measure.of == 3 and bool(amounts.length(measure.members[2], "thickness"))
    on_hole = following is not None and following.kind in ("open", "hole")
    if active is not None and active.kind in ("thing", "room") and not on_hole:
        return subjects.current() if is_triple and active.kind == "room" else None
    if active is not None and active.kind == "slab" and active.is_old:
        return None
    is_its_hole = (
        following is not None
        and following.kind == "hole"
        and active is not None
        and active.kind == "open"
    )
    if following is not None and not is_its_hole:
        return _of_following(focus, heard, following)
    if is_triple or measure.role == "thick":
        focus.on_opening = False
        return subjects.current()
    return _of_focus(focus, measure, active)


def _of_focus(focus: Focus, measure: Measure, active: Mention | None) -> Target:
    subjects = focus.subjects
    openings = tuple(one for one in subjects.openings if not one.is_refused)
    if not (focus.on_opening and openings):
        is_alone = measure.of == 1 and not (measure.role or measure.axis)
        return None if subjects.piece is None and is_alone else subjects.current()
    found = focus.settler.amounts.length(measure, "hole")
    if found is None or found[0].mm > _LONGEST_OPENING_MM:
        focus.on_opening = False
        return subjects.current()
    named = active is not None and active.kind in ("open", "hole")
    bare = measure.of == 1 and not (measure.role or measure.axis or named)
    if bare and any(one.has_size() for one in openings):
        return None  # nothing ties it to the hole
    key = _OWN_KEYS.get(measure.role) if measure.of == 1 and not named else None
    claims = subjects.current().claims
    if key is not None and key not in claims and "diameter" not in claims:
        return subjects.current()
    return openings


def _placed(focus: Focus, heard: Heard, measure: Measure, active: Mention | None) -> Target:
    """What is so far from a side is the opening in hand, or the window that it is under."""
    subjects = focus.subjects
    of_thing = active is not None and active.kind == "thing" and not active.preposition
    if of_thing and "window" not in heard.sentence.words:
        return None
    if focus.is_l() and active is not None and active.kind == "leg":
        return subjects.piece
    several = len(subjects.openings) > 1
    member = subjects.pair_member(heard.sentence, measure.at) if several else None
    if member is not None:
        return (member,)
    in_hand = tuple(one for one in subjects.openings if not one.is_refused)
    if not in_hand and not focus.on_opening and subjects.piece is not None:
        return subjects.piece
    if len(in_hand) == 1 and pairing.is_of_both(heard.sentence, measure):
        in_hand = tuple(pairing.whole_row(subjects.current(), in_hand))
    return in_hand or None


def _of_following(focus: Focus, heard: Heard, mention: Mention) -> Target:
    subjects, sentence = focus.subjects, heard.sentence
    if mention.kind == "slab":
        piece = subjects.piece_for(mention, sentence, [], free=False)
        return piece if piece is not None else subjects.current()
    if mention.kind in ("open", "hole") and not mention.is_denied:
        if scope.is_at_each_end(mention, sentence):
            mention.count = mention.count or 2
        openings = subjects.openings_for(mention, sentence)
        if openings and anchoring.of_each(sentence, mention):
            openings = anchoring.in_each(subjects.scene.pieces, subjects.piece, openings)
        for opening in openings:
            opening.names_hole = opening.names_hole or mention.names_hole
            opening.is_asked = True
        focus.take_up(mention.start, openings)
        return tuple(openings) or None
    return None


def _noun_after(measure: Measure, heard: Heard) -> Mention | None:
    """Give the noun that a size stands before: "35 hole", "5mm chamfer", "the 30 mm ones"."""
    last = measure.members[-1] if measure.members else measure
    if last.role and last.role not in ("dia", "across"):
        return None
    start = last.cue[1] if last.cue and last.cue[0] > last.at else last.at + 1
    for mention in heard.found:
        if mention.kind in ("leg", "room") or not start <= mention.start <= start + 2:
            continue
        if mention.kind == "thing" and scope.has_own_sizes(heard.sentence, mention.end):
            continue
        between = heard.sentence.atoms[start : mention.start]
        if {"and", "und", "plus", "with", "mit"} & {atom.word for atom in between}:
            continue
        is_joined = all(
            atom.kind == "word" and mark("not").at([atom.word], 0) is None for atom in between
        )
        if is_joined and not mention.preposition:
            return mention
    return None
