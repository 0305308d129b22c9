"""Which of the things that a sentence names the sizes after it are of."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.ownership import enumerations
from ledgerstone.enquiry.referents import other_slabs, slab_of_opening
from ledgerstone.enquiry.referents.appliances import is_appliances_line
from ledgerstone.enquiry.referents.building import is_of_building
from ledgerstone.enquiry.referents.each_end import count_at_ends
from ledgerstone.enquiry.referents.new_slabs import is_next_piece
from ledgerstone.enquiry.referents.refusals import refuse
from ledgerstone.enquiry.referents.slab_names import alike_named, inline_label
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.identity import called
from ledgerstone.enquiry.scene.said import SaidOpening, SaidPiece
from ledgerstone.enquiry.sentence import hearsay, scope
from ledgerstone.enquiry.sentence.elsewhere import is_fitted_elsewhere
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.shapes import relations, split_l
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set
from ledgerstone.order import UPRIGHT_USES

_ALONG: Final = word_set("of from along in on to von der des am vom")
_INDEFINITE: Final = frozenset({"a", "an", "one", ""})
_MEASURES: Final = word_set("is are measures measure 's was itself ist misst sind hat")
_FOR: Final = frozenset({"for", "für"})
_LED: Final = 2  # words from a hole to what it is for
_STOPS: Final = frozenset({",", ".", ";", "(", "and", "und", "so"})
_LEGS: Final = frozenset({"legs", "arms", "wings"})
_SAME: Final = frozenset({"same", "gleich", "gleiche", "identical"})
_HOLES: Final = ("open", "hole")
_BELONGS: Final = frozenset({"of", "from", "vom", "von", "than"})
_ONES: Final = frozenset({"one", "another", "other", "eine", "einen", "andere"})
_CLAUSE: Final = 8
_WALLS: Final = frozenset({"wall", "walls", "wand"})
_UNDER: Final = frozenset({"for", "on", "over", "onto", "für", "auf"})
_OF_ALL: Final = frozenset({"deep", "thick"})
_TO_FOLLOW: Final = frozenset({"template", "templates", "schablone", "tbc", "confirmed"})
_IS_OR_HAS: Final = word_set("it's it is 's have has")
_ABOUT: Final = word_set("some about roughly around approximately only just")
_SITS: Final = word_set("sits stands rests sit stand rest")
_FILLED: Final = 5


def take(
    focus: Focus, parsed: ParsedSentence, mention: Mention, active: Mention | None
) -> Mention | None:
    """Note what a sentence names next; return what the sizes after it belong to."""
    takes = {
        "count": _counted,
        "part": split_l.take_part,
        "one": _next_one,
        "turn": _turned,
    }.get(mention.kind)
    if takes is not None:
        return takes(focus, parsed, mention, active)
    says_run = "run" in parsed.sentence.words[mention.start : mention.end]
    if says_run and mention.kind == "slab" and focus.is_l():
        is_first = "first" in parsed.sentence.words[mention.start : mention.end]
        mention.kind, mention.name = "leg", "back" if is_first else "side"  # "the left run" of an L
    if says_run and mention.kind == "leg" and not focus.is_l() and mention.is_indefinite:
        mention.kind, mention.name = "slab", "worktop"  # "a long run under the window"
    if mention.kind == "slab":
        return _slab(focus, parsed, mention, active)
    if mention.kind in _HOLES:
        return _opening(focus, parsed, mention, active)
    if mention.kind == "thing" and focus.is_l():
        _as_leg(mention, parsed.sentence)
    if mention.kind == "leg":
        on_hole = active is not None and active.kind in _HOLES and mention.name != "both"
        is_inside = focus.on_opening and mention.preposition in ("in", "on", "im", "into")
        if focus.is_l() and not on_hole and not is_inside:
            focus.on_opening, focus.leg = False, mention.name
            return mention
    elif mention.kind in ("thing", "room"):
        is_passing = _is_passing(mention, parsed)
        return mention if not is_passing and _takes_sizes(mention, parsed.sentence) else active
    return active


def _is_passing(mention: Mention, parsed: ParsedSentence) -> bool:
    """Whether a thing or a room only says where a slab is: "a shelf over the bath, 700 x 200"."""
    if any(one.kind == "hole" and 0 < mention.start - one.end <= _LED for one in parsed.found):
        return mention.preposition in _FOR  # "two holes for sockets 70 mm"
    if not mention.preposition or mention.preposition in _BELONGS:
        return scope.is_compared(parsed.sentence, mention)
    pair = [
        size for size in parsed.sizes if size.of > 1 and size.place == 1 and size.at >= mention.end
    ]
    if not pair or pair[0].at > mention.end + _CLAUSE:
        return False
    since = max((size.at for size in parsed.sizes if size.at < mention.start), default=-1)
    words = parsed.sentence.words[since + 1 : mention.start]
    heads = [one for one in parsed.found if since < one.start < mention.start]
    is_headed = any(head.kind in ("slab", "leg") and not head.is_old for head in heads)
    return is_headed or (mention.kind == "room" and bool(_ONES & set(words)))


def _counted(
    focus: Focus, parsed: ParsedSentence, mention: Mention, active: Mention | None
) -> Mention | None:
    """Take so many of a size of their own: "4 at 1080 x 190 and 1 at 1620 x 190"."""
    if active is not None and active.kind in _HOLES:
        return active
    subjects = focus.subjects
    piece = subjects.current()
    if subjects.pending or piece.claims.get("length") or piece.claims.get("diameter"):
        piece = focus.start_piece(piece.use)
    atoms = parsed.sentence.atoms
    span = (atoms[mention.start].start, atoms[mention.end - 1].end)
    piece.quantity, piece.quantity_spans = mention.count, (span,) if mention.count > 1 else ()
    return Mention(mention.start, mention.end, "slab", piece.use)


def _turned(
    focus: Focus, parsed: ParsedSentence, mention: Mention, _: Mention | None
) -> Mention | None:
    """Go on in the slab that a sentence turns to."""
    focus.subjects.piece, focus.subjects.openings = parsed.turns[mention.start], []
    focus.on_opening = False
    return Mention(mention.start, mention.end, "slab", parsed.turns[mention.start].use)


def _as_leg(mention: Mention, sentence: Sentence) -> None:
    """Take a wall that a size follows for the leg along it, and "legs" for both of an L's."""
    if sentence.words[mention.start] in _LEGS:
        mention.kind, mention.name = "leg", "both"
    if sentence.words[mention.start] not in _WALLS or mention.preposition:
        return
    near = set(sentence.words[max(0, mention.start - 3) : mention.start])
    following = sentence.atoms[mention.end : mention.end + 3]
    is_sized = any(atom.kind == "size" for atom in following)
    if is_sized and near & {"back", "rear", "hinten", "long", "main"}:
        mention.kind, mention.name = "leg", "back"
    elif is_sized and near & {"left", "right", "lh", "rh", "side", "short"}:
        mention.kind, mention.name = "leg", "side"


def _next_one(
    focus: Focus, parsed: ParsedSentence, mention: Mention, active: Mention | None
) -> Mention | None:
    """Go on to the next of several holes or pieces that are told one by one."""
    subjects = focus.subjects
    opening = subjects.next_in_row(mention.name) if focus.on_opening else None
    if opening is not None:
        opening.is_asked = True
        focus.take_up(mention.start, [opening])
        return Mention(mention.start, mention.end, "hole", "", names_hole=True)
    more = subjects.one_more(parsed.sentence, mention) if focus.on_opening else None
    if more is not None:
        focus.take_up(mention.start, [more])
        return Mention(mention.start, mention.end, "hole", "", names_hole=True)
    if subjects.awaited > 1:
        subjects.keep_for_all()
    piece = subjects.piece
    is_same = bool(_SAME & set(parsed.sentence.words[mention.end : mention.end + _CLAUSE]))
    further = (mention.name in enumerations.FURTHER or is_same) and not focus.on_opening
    further = further and not focus.is_l()
    if further and piece is not None and (piece.has_size() or subjects.pending):
        new = focus.start_piece(piece.use)
        words = parsed.sentence.words[mention.end :]
        if new is not piece and _SAME & set(words):
            enumerations.take_over(new, piece, words)
        return Mention(mention.start, mention.end, "slab", piece.use)
    if focus.several and piece is not None and enumerations.is_group_next(mention, parsed.sizes):
        if piece.has_size() or subjects.pending:
            piece = focus.start_piece(piece.use)
        piece.quantity, piece.quantity_spans = 1, ()
        return Mention(mention.start, mention.end, "slab", piece.use)
    return active


def _slab(
    focus: Focus, parsed: ParsedSentence, mention: Mention, active: Mention | None
) -> Mention | None:
    if mention.is_old:  # what a new top goes on does not make it old
        is_under = mention.preposition in _UNDER and active is not None
        return active if is_under or scope.is_compared(parsed.sentence, mention) else mention
    sentence, subjects = parsed.sentence, focus.subjects
    if hearsay.is_of_others(sentence) or other_slabs.is_bypassed(mention, active):
        return active  # "an upstand along the back of the top"
    other_slabs.note_named(focus, mention, sentence)
    if is_next_piece(focus, mention, parsed.sizes):
        named = focus.start_piece(mention.name, label="named")
        named.called |= called(mention, sentence)
    definite = mention.preposition in _ALONG and mention.determiner not in _INDEFINITE
    on_hole = active is not None and active.kind in _HOLES
    within = (mention.preposition and on_hole) or (definite and focus.on_opening)
    later = [one.start for one in parsed.found if one.kind == "slab" and one.start > mention.end]
    sizes = [size for size in parsed.sizes if not later or size.at < later[0]]
    holes = [one.start for one in parsed.found if one.kind in _HOLES and one.start >= mention.end]
    subjects.outlines = [size for size in sizes if not holes or size.at < holes[0]]
    if subjects.drop(mention, sentence):
        focus.on_opening, focus.is_correcting = False, True
        return active
    free, alike = not focus.has_sizes, alike_named(subjects.scene.pieces, mention, sentence)
    piece = None if alike else subjects.piece_for(mention, sentence, sizes, free=free)
    focus.group = alike
    if piece is None:
        focus.group = alike or (_named_so(focus, mention) if mention.is_plural else [])
        return mention if focus.group else active
    atoms = sentence.atoms
    piece.spans.append((atoms[mention.start].start, atoms[mention.end - 1].end))
    other_slabs.call(piece, mention, sentence)
    piece.label = inline_label(sentence, mention, piece.label)
    if not focus.is_split:
        relations.read_shape(piece, mention, sentence)
    of_all = enumerations.is_of_all(sentence) and all(size.role in _OF_ALL for size in sizes)
    announces = subjects.awaited == mention.count and not piece.has_size()
    announces = announces and (of_all or not parsed.sizes)
    if mention.count > 1 and not announces:
        relations.read_quantity(piece, mention, sentence)
    if within:
        return active
    focus.on_opening, focus.leg = False, ""
    focus.several = mention.is_plural or mention.count > 1
    return mention


def _named_so(focus: Focus, mention: Mention) -> list[SaidPiece]:
    """Return the pieces that a plural means: those of its use, or all that lie flat."""
    pieces = focus.subjects.scene.pieces
    named = [piece for piece in pieces if mention.name and piece.use == mention.name]
    flat = [piece for piece in pieces if piece.use not in UPRIGHT_USES]
    return named or ([] if mention.name else flat)


def _opening(
    focus: Focus, parsed: ParsedSentence, mention: Mention, active: Mention | None
) -> Mention | None:
    sentence, subjects = parsed.sentence, focus.subjects
    is_reference = scope.is_reference(mention, sentence)
    is_elsewhere = is_fitted_elsewhere(mention, sentence) or hearsay.is_of_others(sentence)
    if not is_reference:
        refuse(subjects, mention, parsed, is_elsewhere=is_elsewhere)
    if is_elsewhere and not (is_reference or mention.preposition or mention.is_denied):
        mention.kind = "thing"  # "the pizza oven is 70 cm square and stands on its own"
        return mention
    if is_reference or mention.is_denied or is_elsewhere:
        return active
    is_itself = sentence.words[mention.end : mention.end + 1] == ["itself"]
    if is_itself or is_of_building(mention, sentence, subjects.piece):
        mention.kind = "thing"
        return mention
    count_at_ends(focus, parsed, mention)
    is_corrected = bool(parsed.corrected) and mention.kind == "hole"
    openings = parsed.corrected if is_corrected else subjects.openings_for(mention, sentence)
    if openings and slab_of_opening.of_each(sentence, mention):
        openings = slab_of_opening.in_each(subjects.scene.pieces, subjects.piece, openings)
    for opening in openings:
        _note(opening, mention, parsed)
    if not openings:
        return active
    focus.take_up(mention.start, openings)
    return mention


def _note(opening: SaidOpening, mention: Mention, parsed: ParsedSentence) -> None:
    """Note of an opening what its name says of it; who only asks of one asks for none."""
    if parsed.is_question:
        return
    sentence = parsed.sentence
    opening.names_hole = opening.names_hole or mention.names_hole
    opening.kind = opening.kind or mention.hole_kind
    asked = mention.is_indefinite or mention.names_hole or bool(_TO_FOLLOW & set(sentence.words))
    asked = asked or scope.is_listed(mention, sentence)
    opening.is_asked = opening.is_asked or asked
    atoms = sentence.atoms
    opening.spans.append((atoms[mention.start].start, atoms[mention.end - 1].end))


def _takes_sizes(mention: Mention, sentence: Sentence) -> bool:
    """Whether a thing is what the sizes after it are of: a subject, or right before a size."""
    words = [atom.word for atom in sentence.atoms[mention.end : mention.end + 8]]
    sizes = [i for i, atom in enumerate(sentence.atoms[mention.end : mention.end + 8]) if atom.size]
    before_size = words[: sizes[0]] if sizes else words[:2]
    if ":" in before_size or (mention.name == "unknown" and {",", ";"} & set(before_size)):
        is_old = mention.name == "old" and ":" in before_size  # "Old top: 1015 x 460"
        return is_old or is_appliances_line(sentence, mention)  # else a label, or its own clause
    i = 0
    while words[i : i + 1] and words[i] in ("(", "that", "which", "ends"):
        i += 2 if words[i + 1 : i + 2] in (["is"], ["are"]) and words[i] != "(" else 1
    atoms = sentence.atoms[mention.end + i : mention.end + i + 1]
    if atoms and atoms[0].kind == "size":
        return mention.preposition != "along"
    before = sentence.words[max(0, mention.start - 4) : mention.start]
    is_nominal = _IS_OR_HAS & set(before) and {"a", "an"} & set(before)
    if mention.kind == "room" and is_nominal and words[:1] == [","]:
        is_about = not {"have", "has"} & set(before) or bool(set(before_size[1:]) & _ABOUT)
        return is_about and set(before_size[1:]) <= _ABOUT  # "it's a narrow room, 1.75 m across"
    if before_size[-1:] == ["("] and len(before_size) <= _FILLED and _SITS & set(before):
        return mention.preposition == "on"  # "it sits on a pipe filled with concrete (450 across)"
    following = words[i : i + 3]
    stop = next((k for k, word in enumerate(following) if word in _STOPS), 3)
    if mention.kind == "room" or mention.preposition == "of":
        return bool(_MEASURES & set(following[:stop])) and mention.preposition in ("", "of")
    return not mention.preposition and not mention.is_denied
