"""What a sentence names is taken up, or passed over: what the sizes after it are of."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry import anchoring, relations, scope, splitting, telling
from ledgerstone.enquiry.beginning import is_next_piece
from ledgerstone.enquiry.focus import Focus, Heard
from ledgerstone.enquiry.mention import Mention
from ledgerstone.enquiry.scene import Opening, Piece
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.word_sets import word_set

_ALONG: Final = word_set("of from along in on to von der des am vom")
_INDEFINITE: Final = frozenset({"a", "an", "one", ""})
_MEASURES: Final = word_set("is are measures measure 's was itself ist misst sind hat")
_STOPS: Final = frozenset({",", ".", ";", "(", "and", "und", "so"})
_LEGS: Final = frozenset({"legs", "arms", "wings"})
_SAME: Final = frozenset({"same", "gleich"})
_HOLES: Final = ("open", "hole")
_WALLS: Final = frozenset({"wall", "walls", "wand"})
_UNDER: Final = frozenset({"for", "on", "over", "onto", "für", "auf"})
_TO_FOLLOW: Final = frozenset({"template", "templates", "schablone", "tbc"})


def take(focus: Focus, heard: Heard, mention: Mention, active: Mention | None) -> Mention | None:
    """Take up what is named; give what the sizes after it are of."""
    takes = {"count": _counted, "part": splitting.take_part, "one": _next_one}.get(mention.kind)
    if takes is not None:
        return takes(focus, heard, mention, active)
    if (
        mention.kind == "slab"
        and focus.is_l()
        and "run" in heard.sentence.words[mention.start : mention.end]
    ):
        mention.kind, mention.name = "leg", "side"  # "the left run" of an L
    if mention.kind == "slab":
        return _slab(focus, heard, mention, active)
    if mention.kind in _HOLES:
        return _opening(focus, heard, mention, active)
    if mention.kind == "thing" and focus.is_l():
        _as_leg(mention, heard.sentence)
    if mention.kind == "leg":
        on_hole = active is not None and active.kind in _HOLES and mention.name != "both"
        if focus.is_l() and not on_hole:
            focus.on_opening, focus.leg = False, mention.name
            return mention
    elif mention.kind in ("thing", "room"):
        return mention if _takes_sizes(mention, heard.sentence) else active
    return active


def _counted(
    focus: Focus, heard: Heard, mention: Mention, active: Mention | None
) -> Mention | None:
    """Take so many of a size of their own: "4 at 1080 x 190 and 1 at 1620 x 190"."""
    if active is not None and active.kind in _HOLES:
        return active
    subjects = focus.subjects
    piece = subjects.current()
    if subjects.pending or piece.claims.get("length"):
        piece = focus.start_piece(piece.use)
    atoms = heard.sentence.atoms
    span = (atoms[mention.start].start, atoms[mention.end - 1].end)
    piece.quantity, piece.quantity_spans = mention.count, (span,) if mention.count > 1 else ()
    return Mention(mention.start, mention.end, "slab", piece.use)


def _as_leg(mention: Mention, sentence: Sentence) -> None:
    """Take a wall that a size follows for the leg along it, and "legs" for both of an L's."""
    if sentence.words[mention.start] in _LEGS:
        mention.kind, mention.name = "leg", "both"
    if sentence.words[mention.start] not in _WALLS or mention.preposition:
        return
    near = set(sentence.words[max(0, mention.start - 3) : mention.start])
    following = sentence.atoms[mention.end : mention.end + 3]
    led = any(atom.kind == "size" for atom in following)
    if led and near & {"back", "rear", "hinten", "long", "main"}:
        mention.kind, mention.name = "leg", "back"
    elif led and near & {"left", "right", "lh", "rh", "side", "short"}:
        mention.kind, mention.name = "leg", "side"


def _next_one(
    focus: Focus, heard: Heard, mention: Mention, active: Mention | None
) -> Mention | None:
    """Go on to the next of several holes or pieces that are told one by one."""
    subjects = focus.subjects
    opening = subjects.next_in_row() if focus.on_opening else None
    if opening is not None:
        opening.is_asked = True
        focus.take_up(mention.start, [opening])
        return Mention(mention.start, mention.end, "hole", "", names_hole=True)
    piece = subjects.piece
    further = mention.name in telling.FURTHER and not focus.on_opening
    if further and piece is not None and (piece.has_size() or subjects.pending):
        new = focus.start_piece(piece.use)
        words = heard.sentence.words[mention.end :]
        if new is not piece and _SAME & set(words):
            telling.take_over(new, piece, words)
        return Mention(mention.start, mention.end, "slab", piece.use)
    if focus.several and piece is not None and telling.is_group_next(mention, heard.sizes):
        if piece.has_size() or subjects.pending:
            piece = focus.start_piece(piece.use)
        piece.quantity, piece.quantity_spans = 1, ()
        return Mention(mention.start, mention.end, "slab", piece.use)
    return active


def _slab(focus: Focus, heard: Heard, mention: Mention, active: Mention | None) -> Mention | None:
    if mention.is_old:  # what a new top goes on does not make it old
        return active if mention.preposition in _UNDER and active is not None else mention
    sentence, subjects = heard.sentence, focus.subjects
    if scope.is_of_others(sentence):
        return active
    if is_next_piece(focus, mention, heard.sizes):
        focus.start_piece(mention.name, label="named")
    definite = mention.preposition in _ALONG and mention.determiner not in _INDEFINITE
    on_hole = active is not None and active.kind in _HOLES
    within = (mention.preposition and on_hole) or (definite and focus.on_opening)
    later = [one.start for one in heard.found if one.kind == "slab" and one.start > mention.end]
    sizes = [one for one in heard.sizes if not later or one.at < later[0]]
    holes = [one.start for one in heard.found if one.kind in _HOLES and one.start >= mention.end]
    subjects.outlines = [one for one in sizes if not holes or one.at < holes[0]]
    piece = subjects.piece_for(mention, sentence, sizes, free=not focus.has_sizes)
    focus.group = []
    if piece is None:
        if mention.is_plural and not mention.is_denied:
            focus.group = _named_so(focus, mention)
        return mention if focus.group else active
    atoms = sentence.atoms
    piece.spans.append((atoms[mention.start].start, atoms[mention.end - 1].end))
    if not focus.is_split:
        relations.read_shape(piece, mention, sentence)
    announces = subjects.awaited == mention.count and not piece.has_size() and not heard.sizes
    if mention.count > 1 and not announces:
        relations.read_quantity(piece, mention, sentence)
    if within:
        return active
    focus.on_opening, focus.leg = False, ""
    focus.several = mention.is_plural or mention.count > 1
    return mention


def _named_so(focus: Focus, mention: Mention) -> list[Piece]:
    """Give the pieces that a plural means: those of its use, or all that lie flat."""
    pieces = focus.subjects.scene.pieces
    named = [piece for piece in pieces if mention.name and piece.use == mention.name]
    flat = [piece for piece in pieces if piece.use not in ("upstand", "splashback", "end-panel")]
    return named or ([] if mention.name else flat)


def _opening(
    focus: Focus, heard: Heard, mention: Mention, active: Mention | None
) -> Mention | None:
    sentence, subjects = heard.sentence, focus.subjects
    is_reference = scope.is_reference(mention, sentence)
    if mention.is_denied and not is_reference:
        relations.refuse(subjects, mention, sentence, heard.rank[0])
    is_elsewhere = scope.is_fitted_elsewhere(mention, sentence) or scope.is_of_others(sentence)
    if is_reference or mention.is_denied or is_elsewhere:
        return active
    if _is_of_building(mention, sentence, subjects.piece):
        mention.kind = "thing"
        return mention
    if scope.is_at_each_end(mention, sentence):
        mention.count = mention.count or 2
    openings = subjects.openings_for(mention, sentence)
    if openings and anchoring.of_each(sentence, mention):
        openings = anchoring.in_each(subjects.scene.pieces, subjects.piece, openings)
    for opening in openings:
        _note(opening, mention, sentence)
    if not openings:
        return active
    focus.take_up(mention.start, openings)
    return mention


def _note(opening: Opening, mention: Mention, sentence: Sentence) -> None:
    """Note of an opening what its name says of it."""
    opening.names_hole = opening.names_hole or mention.names_hole
    opening.kind = opening.kind or mention.hole_kind
    asked = mention.is_indefinite or mention.names_hole or bool(_TO_FOLLOW & set(sentence.words))
    opening.is_asked = opening.is_asked or asked
    atoms = sentence.atoms
    opening.spans.append((atoms[mention.start].start, atoms[mention.end - 1].end))


def _is_of_building(mention: Mention, sentence: Sentence, piece: Piece | None) -> bool:
    """Whether an opening is a fireplace's or a window's, or the stove's own pipe."""
    if mention.name == "flue":
        return not (mention.names_hole or mention.is_indefinite)
    led = mention.determiner == "the" or (piece is not None and piece.use == "hearth")
    bare = mention.kind == "hole" and led and not (mention.is_indefinite or mention.count)
    named = "opening" in sentence.words[mention.start]
    return bare and named and (piece is None or not piece.openings)


def _takes_sizes(mention: Mention, sentence: Sentence) -> bool:
    """Whether a thing is what the sizes after it are of: a subject, or right before a size."""
    words = [atom.word for atom in sentence.atoms[mention.end : mention.end + 8]]
    sizes = [i for i, atom in enumerate(sentence.atoms[mention.end : mention.end + 8]) if atom.size]
    if ":" in words[: sizes[0] if sizes else 2]:
        return False  # it stands in a label
    i = 0
    while words[i : i + 1] and words[i] in ("(", "that", "which", "ends"):
        i += 2 if words[i + 1 : i + 2] in (["is"], ["are"]) and words[i] != "(" else 1
    atoms = sentence.atoms[mention.end + i : mention.end + i + 1]
    if atoms and atoms[0].kind == "size":
        return mention.preposition != "along"
    before = sentence.words[max(0, mention.start - 4) : mention.start]
    is_nominal = {"it's", "it", "'s"} & set(before) and {"a", "an"} & set(before)
    if mention.kind == "room" and is_nominal and words[:1] == [","]:
        return bool(sizes) and sizes[0] == 1  # "it's a narrow room, 1.75 m across"
    following = words[i : i + 3]
    stop = next((k for k, word in enumerate(following) if word in _STOPS), 3)
    is_subject = bool(_MEASURES & set(following[:stop]))
    if mention.kind == "room" or mention.preposition == "of":
        return is_subject and mention.preposition in ("", "of")
    return not mention.preposition and not mention.is_denied
