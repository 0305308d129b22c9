"""The slab that a sentence goes on with: the one it refers to, or the one its opening is in."""

from __future__ import annotations

from ledgerstone.enquiry.referents import known_slabs, slab_of_opening
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.sentence import scope
from ledgerstone.enquiry.sentence.mention import Mention


def anchor(focus: Focus, parsed: ParsedSentence) -> None:
    """Go back to the slab that an opening is in, where its paragraph has not named one."""
    subjects = focus.subjects
    slabs = [mention for mention in parsed.found if mention.kind == "slab"]
    openings = [mention for mention in parsed.found if mention.kind in ("open", "hole")]
    referred = known_slabs.referred(subjects.scene.pieces, parsed.sentence, parsed.found)
    own = [size for size in parsed.sizes if size.of > 1 and not openings]
    called = [i for i, _ in known_slabs.references(subjects.scene.pieces, parsed.sentence, [])]
    names = [size for size in parsed.sizes if size.at in called and size.of == 1]
    subjects.scene.set_aside((name.size for name in names), scope.NAMES)
    parsed.sizes = [size for size in parsed.sizes if not any(size is two for two in names)]
    own = [one for one in own if not any(one is two for two in names)]
    if referred is not None and not (focus.is_l() or focus.is_split or own):
        subjects.piece, subjects.openings = referred, []
        focus.is_told, focus.on_opening = True, False
        return
    turns = known_slabs.references(subjects.scene.pieces, parsed.sentence, parsed.found)
    if len({id(piece) for _, piece in turns}) > 1 and openings and not focus.is_l():
        parsed.turns = dict(turns)  # "in the first a hob, in the second a sink"
        parsed.found = sorted(
            [*parsed.found, *(Mention(i, i + 1, "turn", "") for i in parsed.turns)],
            key=lambda one: one.start,
        )
        focus.is_told = True
    if parsed.sentence.is_item or (slabs and not openings):
        focus.is_told = True
    is_told = focus.is_told and not focus.is_correcting
    if slab_of_opening.needs_flat(subjects.piece, subjects.scene.pieces, parsed.found):
        is_told = False
    inside = slab_of_opening.piece_inside(subjects.scene.pieces, parsed.sentence, parsed.found)
    is_told = is_told and (inside is None or own_slab(parsed))
    is_told = is_told and not (_labels_opening(parsed) and not slabs)
    if is_told or not openings or focus.is_l():
        return
    piece = slab_of_opening.piece_of_opening(subjects.scene.pieces, parsed.sentence, parsed.found)
    if piece is not None:
        subjects.piece, subjects.openings = piece, []
        focus.is_told, focus.on_opening = True, False


def _labels_opening(parsed: ParsedSentence) -> bool:
    """Return whether an opening's name and a colon lead a sentence: "Tap: 35 mm, 90 from left"."""
    first = parsed.found[0] if parsed.found else None
    if first is None or first.kind != "open" or first.start > 1 or parsed.sentence.is_item:
        return False
    return [atom.word for atom in parsed.sentence.atoms[first.end : first.end + 1]] == [":"]


def own_slab(parsed: ParsedSentence) -> bool:
    """Return whether a sentence tells of a slab itself, and not only of what is in one."""
    slabs = [mention for mention in parsed.found if mention.kind == "slab"]
    return any(not mention.preposition for mention in slabs)
