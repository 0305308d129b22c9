"""A message is read sentence by sentence, as it goes: what is spoken of, and what is said of it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.lexicon import NUMBERS, mark
from ledgerstone.enquiry.measures import Measure, measures_of
from ledgerstone.enquiry.mentions import Mention, mentions_of
from ledgerstone.enquiry.scene import Claim, Opening, Piece, say
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.settle import Settler
from ledgerstone.enquiry.subjects import Subjects, has_mark
from ledgerstone.enquiry import legs as l_shapes
from ledgerstone.enquiry import relations
from ledgerstone.enquiry.replacing import Replacing

_REFERENCE: Final = frozenset("behind beside with under above hinter neben between near as past over vor".split())
_ALONG: Final = frozenset("of from along in on to von der des am vom".split())
_ANNOUNCED: Final = frozenset("pieces items things parts bits slabs tops teile stücke platten sizes".split())
_LONGEST_OPENING_MM: Final = 1250.0
_IGNORED: Final = frozenset({"apart", "radius", "piece", "cutouts"})
Target = Piece | tuple[Opening, ...] | None


class Walker:
    """Reads sentences in order and fills a scene."""

    def __init__(self, settler: Settler, *, has_sizes: bool) -> None:
        self.settler = settler
        self.subjects = Subjects()
        self.has_sizes = has_sizes
        self.on_opening = False
        self.leg = ""
        self.is_correcting = False
        self.replacing = Replacing(settler, self.subjects)

    def read(self, sentence: Sentence, layer: int, *, is_own: bool = False) -> None:
        """Read one sentence.

        Parameters
        ----------
        layer
            How new its message is: a later one replaces what an earlier one said.
        is_own
            Whether the workshop wrote it: what it offers counts only once it is taken up.
        """
        if sentence.starts_paragraph:
            self.is_correcting = False
        self.is_correcting = self.is_correcting or has_mark(sentence, "correct")
        rank = (layer, int(self.is_correcting))
        found, sizes = mentions_of(sentence), measures_of(sentence)
        sizes = _without_counts(found, sizes)
        if is_own and relations.is_offer(sentence):
            self.replacing.note_offer(sentence, sizes)
            return
        self._read(sentence, found, sizes, rank)
        self.replacing.note_question(sentence)

    def _read(
        self, sentence: Sentence, found: list[Mention], sizes: list[Measure], rank: tuple[int, int]
    ) -> None:
        self._awaited(sentence, found, sizes)
        if self.replacing.settled(sentence, sizes, rank):
            sizes = [one for one in sizes if not one.replaced and not one.role.startswith("=")]
        targets: dict[int, Target] = {}
        said: list[tuple[Target, Measure]] = []
        active: Mention | None = None
        self._begin(sentence, found, sizes)
        called = self.subjects.named_in(sentence)
        if called is not None:
            self.subjects.piece, self.subjects.openings, self.on_opening = called, [], False
        relations.read_l(self.subjects, sentence)
        events = sorted([*((m.start, 0, m) for m in found), *((s.at, 1, s) for s in sizes)], key=lambda e: e[:2])
        for _, _, event in events:
            if isinstance(event, Mention):
                active = self._mention(event, sentence, found, sizes, active)
                continue
            if event.replaced:
                continue
            if active is not None and relations.is_renewed(sentence, active.end, event.at) and (
                active.kind in ("thing", "room") or active.is_old
            ):
                active = None
            target = self._target(event, sentence, found, active, targets)
            targets[event.at] = target
            if target is not None:
                self._at_once(target, event, sentence, rank) if event.side else said.append((target, event))
        self._settle(said, sentence, found, rank)
        relations.read(sentence, found, sizes, self.subjects, on_opening=self.on_opening)

    # --- what is spoken of ------------------------------------------------------------------

    def _awaited(self, sentence: Sentence, found: list[Mention], sizes: list[Measure]) -> None:
        """Note that several pieces are announced: "these two", "three pieces"."""
        words = sentence.words
        for i, word in enumerate(words):
            if word in _ANNOUNCED and any(NUMBERS.get(w, 0) > 1 for w in words[max(0, i - 3) : i]):
                self.subjects.awaited = int(max(NUMBERS.get(w, 0) for w in words[max(0, i - 3) : i]))
        for mention in found:
            plain = mention.kind == "slab" and (mention.is_plural or not mention.name)
            if plain and mention.count > 1 and not [s for s in sizes if s.at > mention.end or s.of > 1]:
                self.subjects.awaited = mention.count
        these = [i for i, word in enumerate(words) if word in ("these", "folgende", "following")]
        if these and (not sizes or any(NUMBERS.get(w, 0) > 1 for w in words[these[0] : these[0] + 3])):
            self.subjects.awaited = max(self.subjects.awaited, 2)

    def _begin(self, sentence: Sentence, found: list[Mention], sizes: list[Measure]) -> None:
        """Begin a piece at a numbered item, or at a line that has sizes of its own."""
        subjects = self.subjects
        many = subjects.awaited > 1
        numbered = bool(sentence.item) and any(c.isalnum() for c in sentence.item)
        current = subjects.piece
        slab = any(m.kind == "slab" and not m.is_denied and not m.is_old for m in found[:2])
        own = len([s for s in sizes if s.role in ("long", "deep", "thick", "wide", "high") or s.of > 1]) >= 2
        labelled = any(atom.word == ":" for atom in sentence.atoms[:8])
        starts = (sentence.is_item and numbered and many) or (
            sentence.starts_line and many and (slab or labelled) and own and not sentence.is_quoted
        )
        if starts and current is not None and (current.has_size() or current.label or current.openings):
            subjects.start_piece()
            self.on_opening, self.leg = False, ""
        if starts:
            subjects.current().label = sentence.item or "line"

    def _mention(
        self,
        mention: Mention,
        sentence: Sentence,
        found: list[Mention],
        sizes: list[Measure],
        active: Mention | None,
    ) -> Mention | None:
        """Take up what is named; give what the sizes after it are of."""
        subjects = self.subjects
        if mention.kind == "slab":
            return self._slab(mention, sentence, sizes, active)
        if mention.kind in ("open", "hole"):
            return self._opening(mention, sentence, found, active)
        if mention.kind == "leg" and subjects.piece is not None and subjects.piece.shape == "l-shape":
            if not (active is not None and active.kind in ("open", "hole")):
                self.on_opening, self.leg = False, mention.name
                return mention
        is_l = subjects.piece is not None and subjects.piece.shape == "l-shape"
        if mention.kind == "thing" and is_l and sentence.words[mention.start] in ("legs", "arms", "wings"):
            self.on_opening, self.leg = False, "both"
            mention.kind, mention.name = "leg", "both"
            return mention
        if mention.kind in ("thing", "room"):
            if mention.kind == "room" and subjects.piece is not None and not mention.is_denied:
                atom = sentence.atoms[mention.start]
                subjects.piece.rooms.append((mention.name, (atom.start, sentence.atoms[mention.end - 1].end)))
            return mention if _takes_sizes(mention, sentence) else active
        return active

    def _slab(
        self, mention: Mention, sentence: Sentence, sizes: list[Measure], active: Mention | None
    ) -> Mention | None:
        if mention.is_old:
            return mention
        definite = mention.preposition in _ALONG and mention.determiner not in ("a", "an", "one", "")
        within = (mention.preposition and active is not None and active.kind in ("open", "hole")) or (
            definite and self.on_opening
        )
        piece = self.subjects.piece_for(mention, sentence, sizes, free=not self.has_sizes)
        if piece is None:
            return active
        atoms = sentence.atoms
        piece.spans.append((atoms[mention.start].start, atoms[mention.end - 1].end))
        relations.read_shape(piece, mention, sentence)
        if mention.count > 1 and not (self.subjects.awaited == mention.count and not piece.has_size() and not sizes):
            relations.read_quantity(piece, mention, sentence, sizes)
        if within:
            return active
        self.on_opening, self.leg = False, ""
        return mention

    def _opening(
        self, mention: Mention, sentence: Sentence, found: list[Mention], active: Mention | None
    ) -> Mention | None:
        if relations.is_reference(mention, sentence, _REFERENCE):
            return active
        if mention.is_denied:
            relations.refuse(self.subjects, mention, sentence)
            return active
        if relations.is_fitted_elsewhere(mention, sentence, found):
            return active
        openings = self.subjects.openings_for(mention, sentence)
        if not openings:
            return active
        for opening in openings:
            opening.names_hole = opening.names_hole or mention.names_hole
            opening.kind = opening.kind or mention.hole_kind
            opening.is_asked = opening.is_asked or mention.is_indefinite or mention.names_hole
            atoms = sentence.atoms
            opening.spans.append((atoms[mention.start].start, atoms[mention.end - 1].end))
        self.subjects.openings, self.on_opening = openings, True
        return mention

    # --- what a size is of ------------------------------------------------------------------

    def _target(
        self,
        measure: Measure,
        sentence: Sentence,
        found: list[Mention],
        active: Mention | None,
        targets: dict[int, Target],
    ) -> Target:
        if relations.is_old_scope(sentence, measure):
            return None
        if measure.side:
            return self._placed(measure, sentence, active)
        if measure.role in _IGNORED or relations.is_beside(sentence, measure):
            return None
        if relations.is_feature(sentence, measure, found):
            return None
        if measure.of > 1 and measure.place > 1:
            return targets.get(measure.members[0].at)
        following = _noun_after(measure, sentence, found)
        if following is not None and following.kind in ("thing", "feature"):
            return None
        is_triple = measure.of == 3 and self.settler.amounts.length(measure.members[2], "thickness") is not None
        if active is not None and active.kind in ("thing", "room"):
            return self.subjects.current() if is_triple and active.kind == "room" else None
        if active is not None and active.kind == "slab" and active.is_old:
            return None
        if following is not None and not (
            following.kind == "hole" and active is not None and active.kind == "open"
        ):
            return self._of_following(following, sentence)
        if is_triple or measure.role == "thick":
            self.on_opening = False
            return self.subjects.current() if self.subjects.piece is not None or is_triple else None
        return self._of_focus(measure, active)

    def _of_focus(self, measure: Measure, active: Mention | None) -> Target:
        subjects = self.subjects
        openings = tuple(one for one in subjects.openings if not one.is_refused)
        if self.on_opening and openings:
            named = active is not None and active.kind in ("open", "hole")
            found = self.settler.amounts.length(measure, "hole")
            if found is None or found[0].mm > _LONGEST_OPENING_MM:
                self.on_opening = False
                return subjects.current()
            if not named and measure.role in ("long", "deep", "wide") and measure.of == 1:
                key = {"long": "length", "deep": "width", "wide": "width"}[measure.role]
                if key not in subjects.current().claims and "diameter" not in subjects.current().claims:
                    return subjects.current()
            return openings
        if subjects.piece is None and measure.of == 1 and not measure.role:
            return None
        return subjects.current()

    def _placed(self, measure: Measure, sentence: Sentence, active: Mention | None) -> Target:
        """What is so far from a side is the opening in hand, or the window that it is under."""
        subjects = self.subjects
        if active is not None and active.kind == "thing" and not active.preposition and "window" not in sentence.words:
            return None
        piece = subjects.piece
        if piece is not None and piece.shape == "l-shape" and active is not None and active.kind == "leg":
            return piece
        member = subjects.pair_member(sentence, measure.at) if len(subjects.openings) > 1 else None
        if member is not None:
            return (member,)
        return tuple(one for one in subjects.openings if not one.is_refused) or None

    def _of_following(self, mention: Mention, sentence: Sentence) -> Target:
        if mention.kind == "slab":
            return self.subjects.piece_for(mention, sentence, [], free=False) or self.subjects.current()
        if mention.kind in ("open", "hole") and not mention.is_denied:
            openings = self.subjects.openings_for(mention, sentence)
            for opening in openings:
                opening.names_hole = opening.names_hole or mention.names_hole
                opening.is_asked = True
            self.subjects.openings, self.on_opening = openings, True
            return tuple(openings) or None
        return None

    # --- what is said of it -----------------------------------------------------------------

    def _at_once(self, target: Target, measure: Measure, sentence: Sentence, rank: tuple[int, int]) -> None:
        """Give openings their distance from a side; an L its reach from the wall."""
        claim = self.settler.claim(measure, "place", sentence, rank)
        if claim is None:
            return
        if isinstance(target, Piece):
            if measure.side == "back" and self.leg == "side":
                say(target.claims, "width", claim)
            elif measure.side in ("left", "right") and self.leg == "back":
                say(target.claims, "length", claim)
            return
        for opening in target or ():
            say(opening.claims, measure.side, claim)

    def _settle(
        self,
        said: list[tuple[Target, Measure]],
        sentence: Sentence,
        found: list[Mention],
        rank: tuple[int, int],
    ) -> None:
        legs = [mention for mention in found if mention.kind == "leg"]
        for target in _distinct([target for target, _ in said]):
            sizes = [measure for whose, measure in said if whose is target]
            if isinstance(target, Piece):
                if target.shape == "l-shape":
                    self._settle_l(target, sizes, sentence, legs, rank)
                else:
                    self.settler.piece(target, sizes, sentence, rank)
            elif target:
                self._settle_openings(target, sizes, sentence, rank)
        piece = self.subjects.piece
        if piece is not None and piece.shape == "l-shape":
            said_corner = l_shapes.corner_said(sentence, legs, is_open=self.on_opening)
            if said_corner is not None:
                piece.corner = said_corner

    def _settle_l(
        self, piece: Piece, sizes: Sequence[Measure], sentence: Sentence, legs: list[Mention], rank: tuple[int, int]
    ) -> None:
        named: dict[int, str] = {}
        free = list(legs)
        for i, measure in enumerate(sizes):
            until = sizes[i + 1].at if i + 1 < len(sizes) else len(sentence.atoms)
            since = sizes[i - 1].at if i else 0
            named[measure.at] = l_shapes.leg_of(measure, free, until, since, self.leg if legs else "")
        l_shapes.read_legs(piece, sizes, named, sentence, rank, self.settler)

    def _settle_openings(
        self, openings: tuple[Opening, ...], sizes: Sequence[Measure], sentence: Sentence, rank: tuple[int, int]
    ) -> None:
        thick = [one for one in sizes if one.role == "thick"]
        if thick:
            self.settler.piece(self.subjects.current(), thick, sentence, rank)
        self.settler.openings(openings, [one for one in sizes if one.role != "thick"], sentence, rank)


def _distinct(targets: Sequence[Target]) -> list[Target]:
    kept: list[Target] = []
    for target in targets:
        if not any(target is one for one in kept):
            kept.append(target)
    return kept


def _without_counts(found: list[Mention], sizes: list[Measure]) -> list[Measure]:
    """Leave out bare small numbers that count something: "2 round table tops"."""
    counts = {(mention.count, mention.start) for mention in found if mention.count}
    kept = []
    for one in sizes:
        counting = any(
            one.size.unit is None and one.size.amount == count and 0 < start - one.at <= 4 for count, start in counts
        )
        if not counting or one.of > 1 or one.role not in ("", "across") or one.side:
            kept.append(one)
    return kept


def _takes_sizes(mention: Mention, sentence: Sentence) -> bool:
    """Whether a thing is what the sizes after it are of: a subject, or right before a size."""
    atoms = sentence.atoms
    i = mention.end
    while i < len(atoms) and atoms[i].word in ("(", "that", "which", "ends"):
        i += 1
        if i < len(atoms) and atoms[i].word in ("are", "is") and atoms[i - 1].word in ("that", "which"):
            i += 1
    if i < len(atoms) and atoms[i].kind == "size":
        return True
    if mention.preposition == "of" and i < len(atoms) and atoms[i].word in ("is", "are", "measures", "'s"):
        return True
    return not mention.preposition and not mention.is_denied


def _noun_after(measure: Measure, sentence: Sentence, found: list[Mention]) -> Mention | None:
    """Give the noun that a size stands before: "35 hole", "5mm chamfer", "the 30 mm ones"."""
    last = measure.members[-1] if measure.members else measure
    if last.role and last.role not in ("dia", "across") :
        return None
    start = last.cue[1] if last.cue and last.cue[0] > last.at else last.at + 1
    for mention in found:
        if mention.kind in ("leg", "room") or not start <= mention.start <= start + 2:
            continue
        between = sentence.atoms[start : mention.start]
        if all(atom.kind == "word" and mark("not").at([atom.word], 0) is None for atom in between) and not mention.preposition:
            return mention
    return None
