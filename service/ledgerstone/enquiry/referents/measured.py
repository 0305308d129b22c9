"""What a size is of: the current piece or openings, what is named after it, or none of ours."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.places import coordinates
from ledgerstone.enquiry.referents import slab_of_opening
from ledgerstone.enquiry.referents.each_end import count_at_ends
from ledgerstone.enquiry.scene import identity
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence, Target
from ledgerstone.enquiry.sentence import features, hearsay, scope
from ledgerstone.enquiry.sentence.clauses import goes_there
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.shapes import relations
from ledgerstone.enquiry.words.lexicon import mark
from ledgerstone.enquiry.words.word_sets import word_set

_LONGEST_OPENING_MM: Final = 1250.0
_IGNORED: Final = frozenset({"behind", "apart", "radius", "piece", "cutouts", "quantity"})
_NEAR: Final = 5
_HOLLOW: Final = word_set(
    "unit units cupboard cupboards cabinet cabinets carcass carcasses drawers fridge freezer oven"
    " cooker range dishwasher washer dryer machine alcove recess niche nische schrank schränke"
    " schränken unterschrank unterschränke unterschränken kühlschrank spülmaschine waschmaschine"
)
_ROUNDED: Final = word_set(
    "edge edges corner corners rounded rounding round-over kante kanten ecke"
)
_ITSELF: Final = frozenset({"itself", "themselves", "selbst"})
_LED: Final = 8
_EDGE_FAR: Final = 9  # atoms: "the edge may be round with a radius of 8"
_OWN_KEYS: Final = {"long": "length", "deep": "width", "wide": "width"}


def target_of(
    focus: Focus,
    parsed: ParsedSentence,
    measure: Measure,
    active: Mention | None,
    targets: dict[int, Target],
) -> Target:
    """Give what a size is of; None if it is none of ours.

    Parameters
    ----------
    active
        What was named last before it.
    targets
        What the sizes before it in the sentence are of, by their places.
    """
    sentence = parsed.sentence
    measure.aside = _why_none(parsed, measure)
    if measure.aside:
        return None
    if measure.side:
        return _placed(focus, parsed, measure, active, targets)
    if measure.role == "quantity":
        relations.take_quantity(focus.subjects.current(), measure, sentence)
    if measure.role == "radius" and _is_round_ones(focus, parsed, measure, active):
        return focus.subjects.piece
    if measure.role in _IGNORED or scope.is_beside(sentence, measure):
        return None
    if measure.of > 1 and measure.place > 1:
        return targets.get(measure.members[0].at)
    return _of_noun(focus, parsed, measure, active)


def _why_none(parsed: ParsedSentence, measure: Measure) -> str:
    """Give why a size is no slab's and no opening's, as the words about it say; else ""."""
    sentence = parsed.sentence
    if scope.is_old_scope(sentence, measure):
        return scope.OLD
    if hearsay.is_others_figure(sentence, measure) or _is_things_own(parsed, measure):
        return scope.OF_ANOTHER
    if measure.side or measure.role in _IGNORED or scope.is_beside(sentence, measure):
        return ""
    is_none = scope.is_limit(sentence, measure)
    is_none = is_none or features.is_feature(sentence, measure, parsed.found)
    return scope.NO_SIZE if is_none else ""


def _is_things_own(parsed: ParsedSentence, measure: Measure) -> bool:
    """Return whether a size is of what goes into a hole: "it is 590 x 520 itself"."""
    first, last = (measure.members or [measure])[0].at, (measure.members or [measure])[-1].at
    words = parsed.sentence.words
    if measure.side or not _ITSELF & set(words[last + 1 : last + 3]):
        return False
    near = [one for one in parsed.found if first - _LED <= one.start < first]
    return not any(one.kind in ("slab", "leg") or one.names_hole for one in near)


def _is_round_ones(
    focus: Focus, parsed: ParsedSentence, measure: Measure, active: Mention | None
) -> bool:
    """Return whether a radius is of a round slab and not of its edge or of a hole."""
    piece = focus.subjects.piece
    near = set(parsed.sentence.words[max(0, measure.at - _EDGE_FAR) : measure.at + _NEAR])
    on_hole = active is not None and active.kind in ("open", "hole", "feature")
    return piece is not None and piece.shape == "round" and not on_hole and not near & _ROUNDED


def _of_noun(
    focus: Focus, parsed: ParsedSentence, measure: Measure, active: Mention | None
) -> Target:
    """Go by what is named after a size, then by what was named before it."""
    subjects = focus.subjects
    following = _noun_after(measure, parsed)
    if following is not None and following.kind in ("thing", "feature"):
        measure.aside = scope.OF_ANOTHER
        return None
    amounts = focus.assigner.amounts
    is_triple = measure.of == 3 and bool(amounts.length(measure.members[2], "thickness"))
    on_hole = following is not None and following.kind in ("open", "hole")
    is_none = active is not None and active.kind in ("thing", "room") and not on_hole
    if active is not None and is_none and not _is_where_item_is(parsed, measure, active):
        measure.aside = scope.OF_ANOTHER
        is_hollow = active.kind == "room" or _is_hollow(parsed, active)
        is_ours = is_triple and active.kind == "room"
        is_ours = is_ours or (is_hollow and measure.role == "thick") or measure.is_sum
        return subjects.current() if is_ours else None
    if active is not None and active.kind == "slab" and active.is_old:
        measure.aside = scope.OLD
        return None
    is_its_hole = (
        following is not None
        and following.kind == "hole"
        and active is not None
        and active.kind == "open"
        and not identity.is_sized_anew(following, parsed.sentence, subjects.openings)
    )
    slab = _slab_after_for(measure, parsed)
    if slab is not None and (following is None or is_its_hole):
        focus.on_opening, following, is_its_hole = False, slab, False
    if following is not None and not is_its_hole:
        return _of_following(focus, parsed, following)
    if is_triple or measure.role == "thick" or _is_of_three(parsed, measure):
        focus.on_opening = False
        return subjects.current()
    return _of_focus(focus, measure, active)


def _is_where_item_is(parsed: ParsedSentence, measure: Measure, active: Mention) -> bool:
    """Whether a thing only tells where an item is, its sizes next: "- run under window 3 x 1 m"."""
    if active.kind == "thing" and goes_there(parsed.sentence, active.start):
        return True
    is_led = bool(active.preposition) and measure.of > 1 and active.kind == "thing"
    return is_led and parsed.sentence.is_item and measure.members[0].at == active.end


def _is_of_three(parsed: ParsedSentence, measure: Measure) -> bool:
    """Whether a size is one of a slab's three, each by its name, where no hole is named."""
    roles = {size.role for size in parsed.sizes if size.of == 1 and not size.side}
    has_hole = any(mention.kind in ("open", "hole") for mention in parsed.found)
    return measure.role in _OWN_KEYS and not has_hole and roles >= {"long", "deep", "thick"}


def _is_hollow(parsed: ParsedSentence, active: Mention) -> bool:
    """Whether a thing is a cupboard or an appliance, of which nobody tells how thick it is."""
    return parsed.sentence.words[active.end - 1] in _HOLLOW


def _slab_after_for(measure: Measure, parsed: ParsedSentence) -> Mention | None:
    """Return the slab in "1200 x 500 for the top"."""
    last = measure.members[-1].at if measure.members else measure.at
    for mention in parsed.found if measure.of > 1 else ():
        led = mention.kind == "slab" and mention.preposition in ("for", "für")
        if led and not mention.is_old and last < mention.start <= last + _NEAR:
            return mention
    return None


def _of_focus(focus: Focus, measure: Measure, active: Mention | None) -> Target:
    subjects = focus.subjects
    openings = tuple(opening for opening in subjects.openings if not opening.is_refused)
    is_high = measure.role == "high" and measure.of == 1 and active is None
    on_hole = active is not None and active.kind in ("open", "hole")
    if not (focus.on_opening and openings) or is_high or (measure.is_subject and not on_hole):
        is_alone = measure.of == 1 and not (measure.role or measure.axis or measure.is_subject)
        return None if subjects.piece is None and is_alone else subjects.current()
    found = focus.assigner.amounts.length(measure, "hole")
    if found is None or found[0].mm > _LONGEST_OPENING_MM:
        focus.on_opening = False
        return subjects.current()
    named = active is not None and active.kind in ("open", "hole")
    bare = measure.of == 1 and not (measure.role or measure.axis or named)
    if bare and any(opening.has_size() for opening in openings):
        return None  # nothing ties it to the hole
    key = _OWN_KEYS.get(measure.role) if measure.of == 1 and not named else None
    claims = subjects.current().claims
    if key is not None and key not in claims and "diameter" not in claims:
        return subjects.current()
    return openings


def _placed(
    focus: Focus,
    parsed: ParsedSentence,
    measure: Measure,
    active: Mention | None,
    targets: dict[int, Target],
) -> Target:
    """What is placed from a side is the current opening, or the window that it is under."""
    subjects = focus.subjects
    of_thing = active is not None and active.kind == "thing" and not active.preposition
    of_thing = of_thing and not coordinates.goes_on_placing(parsed, measure, active, targets)
    if of_thing and "window" not in parsed.sentence.words:
        measure.aside = scope.OF_ANOTHER
        return None
    is_leg = focus.is_l() and active is not None and active.kind == "leg"
    held = focus.on_opening and subjects.openings and active is not None
    if is_leg and not (held and active is not None and active.preposition == "of"):
        return subjects.piece
    several = len(subjects.openings) > 1
    member = (
        coordinates.pair_member(subjects.openings, parsed.sentence, measure.at) if several else None
    )
    if member is not None:
        return (member,)
    same = coordinates.same_member(parsed, measure, targets) if several else None
    if same is not None:
        return same
    current = tuple(opening for opening in subjects.openings if not opening.is_refused)
    if not current and not focus.on_opening and subjects.piece is not None:
        return subjects.piece
    if len(current) == 1 and coordinates.is_of_both(parsed.sentence, measure):
        current = tuple(coordinates.whole_row(subjects.current(), current))
    return current or None


def _of_following(focus: Focus, parsed: ParsedSentence, mention: Mention) -> Target:
    subjects, sentence = focus.subjects, parsed.sentence
    if mention.kind == "slab":
        piece = subjects.piece_for(mention, sentence, [], free=False)
        return piece if piece is not None else subjects.current()
    if mention.kind in ("open", "hole") and not mention.is_denied:
        count_at_ends(focus, parsed, mention)
        openings = subjects.openings_for(mention, sentence)
        if openings and slab_of_opening.of_each(sentence, mention):
            openings = slab_of_opening.in_each(subjects.scene.pieces, subjects.piece, openings)
        for opening in openings:
            opening.names_hole = opening.names_hole or mention.names_hole
            opening.is_asked = True
        focus.take_up(mention.start, openings)
        return tuple(openings) or None
    return None


def _noun_after(measure: Measure, parsed: ParsedSentence) -> Mention | None:
    """Return the noun that a size stands before: "35 hole", "5mm chamfer", "the 30 mm ones"."""
    last = measure.members[-1] if measure.members else measure
    if last.role and last.role not in ("dia", "across"):
        return None
    start = last.cue[1] if last.cue and last.cue[0] > last.at else last.at + 1
    for mention in parsed.found:
        if mention.kind in ("leg", "room") or not start <= mention.start <= start + 2:
            continue
        if mention.kind == "thing" and scope.has_own_sizes(parsed.sentence, mention.end):
            continue
        led = parsed.sentence.words[mention.start - 1 : mention.start]
        if mention.kind == "thing" and mention.start > start and led == [mention.determiner]:
            continue  # "2100 x 600 x 40 mm, your van": no size of the van
        if mention.kind == "open" and scope.is_reference(mention, parsed.sentence):
            continue  # "35 dia CL sink"
        if measure.of > 1 and mention.kind in ("open", "hole") and _is_sized(parsed, mention):
            continue
        between = parsed.sentence.atoms[start : mention.start]
        if {"and", "und", "plus", "with", "mit", "including", "incl", "inklusive"} & {
            atom.word for atom in between
        }:
            continue
        is_joined = all(
            atom.kind == "word" and mark("not").at([atom.word], 0) is None for atom in between
        )
        if is_joined and not mention.preposition:
            return mention
    return None


def _is_sized(parsed: ParsedSentence, mention: Mention) -> bool:
    """Whether a hole's own size follows it: "2100 x 600 x 40 one tap hole 35", no noun after it."""
    own = next((one for one in parsed.sizes if one.at == mention.end and not one.side), None)
    if own is None:
        return False
    past = (own.members[-1] if own.members else own).at + 1
    return not any(
        one.kind in ("open", "hole", "slab") and past <= one.start <= past + 1
        for one in parsed.found
    )
