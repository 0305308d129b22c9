"""A message is read sentence by sentence, as it goes: what is spoken of, and what is said of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from ledgerstone.enquiry import anchoring, pairing, relations, scope, splitting, telling
from ledgerstone.enquiry import legs as l_shapes
from ledgerstone.enquiry.aiming import target_of
from ledgerstone.enquiry.altering import alter
from ledgerstone.enquiry.beginning import begin
from ledgerstone.enquiry.carrying import (
    carry_on,
    comes_first,
    is_left,
    note_hole,
    reaches_out,
    without_counts,
)
from ledgerstone.enquiry.cues_before import read_question
from ledgerstone.enquiry.cutting import cut_corners
from ledgerstone.enquiry.focus import Focus, Heard, Target
from ledgerstone.enquiry.measures import Measure, measures_of
from ledgerstone.enquiry.mention import Mention
from ledgerstone.enquiry.mentions import mentions_of
from ledgerstone.enquiry.replacing import Replacing
from ledgerstone.enquiry.scene import Claim, Opening, Piece, say
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.settle import Settler
from ledgerstone.enquiry.subjects import has_mark
from ledgerstone.enquiry.taking import take
from ledgerstone.enquiry.whereabouts import note_places
from ledgerstone.enquiry.word_sets import word_set

_MODAL: Final = word_set("should wants needs must will would want need has ought soll muss sollte")
_SEVERAL: Final = 2
_IT: Final = frozenset({"it", "it's", "they", "es", "sie"})


class Walker:
    """Reads sentences in order and fills a scene."""

    def __init__(
        self, settler: Settler, *, has_sizes: bool, is_split: bool = False, leans: bool = False
    ) -> None:
        self.leans = leans
        self.last_role = ""
        self.asked = ""
        self.is_old_told = False
        self.focus = Focus(settler, has_sizes, is_split=is_split)
        self.settler, self.subjects = settler, self.focus.subjects
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
        focus = self.focus
        if sentence.starts_paragraph:
            focus.is_correcting, focus.is_told = False, False
        focus.is_correcting = focus.is_correcting or has_mark(sentence, "correct")
        found, sizes = mentions_of(sentence), measures_of(sentence)
        newer = 2 * layer + int(not sentence.is_quoted)  # an answer is newer than what it answers
        rank = (newer, int(focus.is_correcting))
        is_on = self.is_old_told and bool(_IT & set(sentence.words[:1]))
        self.is_old_told = scope.tells_of_old(sentence) or is_on
        if is_on and not has_mark(sentence, "new") and not _MODAL & set(sentence.words[:4]):
            sizes = []
        self.asked = read_question(sentence, sizes, self.asked)
        sizes = scope.without_premises(sentence, without_counts(found, sizes))
        heard = Heard(sentence, found, sizes, rank, self.last_role)
        is_taken_up = self.leans and scope.is_whole_offer(heard.sizes, found)
        if is_own and not is_taken_up and scope.is_offer(sentence, heard.sizes):
            self.replacing.note_offer(sentence, heard.sizes)
            return
        if is_own and not is_taken_up:
            heard.sizes = scope.without_offers(sentence, heard.sizes)
        self._read(heard)
        roles = [one.role for one in heard.sizes if one.role and not one.side]
        self.last_role = roles[-1] if roles else ""
        self.replacing.note_question(sentence)

    def _read(self, heard: Heard) -> None:
        focus, sentence = self.focus, heard.sentence
        if self.replacing.settled(sentence, heard.sizes, heard.rank):
            heard.sizes = [
                one for one in heard.sizes if not (one.replaced or one.role.startswith("="))
            ]
        focus.held, focus.subjects.pending = [], False
        focus.leg_before = focus.leg
        begin(focus, heard)
        if focus.is_split:
            splitting.legs_apart(focus, heard)
        alter(heard, self.subjects.piece)
        if not focus.is_split:
            relations.read_l(focus.subjects, sentence)
        relations.read_round(focus.subjects, heard)
        self._anchor(heard)
        said = self._aimed(heard)
        cut_corners(heard, self.subjects.piece, self.settler)
        self._settle([one for one in said if not one[1].replaced], heard)
        self.replacing.makes(sentence, heard.sizes, heard.rank)
        focus.subjects.pending = False
        relations.read(focus, heard)
        tells = sentence.is_item or bool(heard.sizes)
        tells = tells or any(one.kind == "slab" for one in heard.found)
        note_places(sentence, self.subjects.scene, self.subjects.piece if tells else None)

    def _anchor(self, heard: Heard) -> None:
        """Go back to the slab that an opening is in, where its paragraph has not named one."""
        focus, subjects = self.focus, self.subjects
        slabs = [one for one in heard.found if one.kind == "slab"]
        openings = [one for one in heard.found if one.kind in ("open", "hole")]
        if heard.sentence.is_item or (slabs and not openings):
            focus.is_told = True
        if focus.is_told or not openings or focus.is_l():
            return
        piece = anchoring.piece_of_opening(subjects.scene.pieces, heard.sentence, heard.found)
        if piece is not None:
            subjects.piece, subjects.openings = piece, []
            focus.is_told, focus.on_opening = True, False

    def _aimed(self, heard: Heard) -> list[tuple[Target, Measure]]:
        """Go through what is named and what is measured in order; give each size its thing."""
        focus = self.focus
        targets: dict[int, Target] = {}
        said: list[tuple[Target, Measure]] = []
        active: Mention | None = None
        counted = telling.counted(heard.sentence, heard.sizes)
        heard.sizes = [one for one in heard.sizes if not any(one is two for _, two in counted)]
        pairing.read_coordinates(heard.sentence, heard.sizes)
        mentions = [*heard.found, *telling.ones_of(heard.sentence, heard.sizes)]
        mentions += [mention for mention, _ in counted]
        lead = pairing.led_by_place(heard.sentence, mentions)
        waiting = sorted(mentions, key=lambda one: -1 if one is lead else one.start)
        for measure in heard.sizes:
            while waiting and (waiting[0] is lead or comes_first(heard, waiting[0], measure)):
                active = take(focus, heard, waiting.pop(0), active)
            if measure.replaced:
                continue
            if active is not None and is_left(heard.sentence, active, measure):
                active = None
            carry_on(heard, measure, active)
            if self._is_of_group(measure, heard):
                continue
            target = targets[measure.at] = target_of(focus, heard, measure, active, targets)
            focus.subjects.pending = focus.subjects.pending or isinstance(target, Piece)
            note_hole(measure, active, target, waiting)
            measure.opinion = scope.is_opinion(heard.sentence, measure)
            if target is None:
                measure.beside = 0  # so far beside something that is none of ours
            if target is not None and measure.side:
                self._place(target, measure, heard)
            elif target is not None:
                said.append((target, measure))
        for mention in waiting:
            active = take(focus, heard, mention, active)
        return said

    def _place(self, target: Target, measure: Measure, heard: Heard) -> None:
        """Give openings their distance from a side; an L its reach from the wall."""
        claim = self.settler.claim(measure, "place", heard.rank)
        if claim is None:
            return
        if isinstance(target, Piece):
            self._reach(target, measure, claim, heard)
            return
        sides = [measure.side]
        if measure.side == "ends":
            row = pairing.whole_row(self.subjects.current(), target or ())
            for opening, side in zip(row, ("left", "right"), strict=False):
                say(opening.claims, side, claim)
            return
        target = pairing.member_at(target or (), measure, heard.sizes)
        if measure.side == "corner":
            words = heard.sentence.words
            sides = [side for side in ("left", "right", "front", "back") if side in words]
        for opening in target or ():
            for side in sides:
                say(opening.claims, f"{side}_edge" if measure.to_edge else side, claim)

    def _reach(self, piece: Piece, measure: Measure, claim: Claim, heard: Heard) -> None:
        """Take how far a slab reaches from a wall."""
        if measure.side == "back" and self.focus.leg == "side":
            say(piece.claims, "width", claim)
        elif measure.side in ("left", "right") and self.focus.leg == "back":
            say(piece.claims, "length", claim)
        elif measure.side == "back" and reaches_out(heard.sentence, measure):
            self.settler.piece(piece, [replace(measure, side="", role="deep")], heard.rank)

    def _settle(self, said: list[tuple[Target, Measure]], heard: Heard) -> None:
        legs = [mention for mention in heard.found if mention.kind == "leg"]
        for target in _distinct([target for target, _ in said]):
            sizes = [measure for whose, measure in said if whose is target]
            if isinstance(target, Piece):
                sizes = self._each_length(target, sizes, heard)
                self._share(target, sizes, heard)
                if target.shape == "l-shape":
                    self._settle_l(target, sizes, legs, heard)
                else:
                    self.settler.piece(target, sizes, heard.rank)
            elif target:
                self._settle_openings(target, sizes, heard)
        piece = self.subjects.piece
        if piece is not None and self.focus.is_l():
            piece.corner = l_shapes.corner_said(heard.sentence, legs) or piece.corner

    def _each_length(self, piece: Piece, sizes: list[Measure], heard: Heard) -> list[Measure]:
        """Make a slab of each length: "3 sills, 220 deep: 1200, 1500 and 1800 long"."""
        long = [one for one in sizes if one.role == "long" and one.of == 1]
        if (
            len(long) < _SEVERAL
            or piece.quantity not in (1, len(long))
            or piece.claims.get("length")
        ):
            return sizes
        if piece.quantity == 1 and self.subjects.awaited != len(long):
            return sizes
        piece.quantity, piece.quantity_spans = 1, ()
        for measure in long[1:]:
            more = self.focus.start_piece(piece.use)
            more.like, more.like_in = piece, frozenset({"width", "thickness"})
            self.settler.piece(more, [measure], heard.rank)
        return [one for one in sizes if one not in long[1:]]

    def _share(self, piece: Piece, sizes: list[Measure], heard: Heard) -> None:
        """Give all pieces the thickness that is said of all, those to come too."""
        thick = [one for one in sizes if one.role == "thick"]
        if not thick or not telling.is_of_all(heard.sentence):
            return
        claim = self.settler.claim(thick[0], "thickness", (0, 0))
        scene = self.subjects.scene
        if claim is None:
            return
        if not piece.claims.get("length") and len(sizes) == len(thick):
            scene.common.setdefault("thickness", []).append(claim)
        for other in scene.pieces if len(scene.pieces) > 1 else ():
            if other is not piece and not other.claims.get("thickness"):
                say(other.claims, "thickness", claim)

    def _is_of_group(self, measure: Measure, heard: Heard) -> bool:
        """Give a thickness to every piece of the kind that was named: "the tops 40 thick"."""
        group = self.focus.group
        if not group or measure.role != "thick":
            return False
        claim = self.settler.claim(measure, "thickness", heard.rank)
        for piece in group:
            if claim is not None and not piece.claims.get("thickness"):
                say(piece.claims, "thickness", claim)
        return True

    def _settle_l(
        self, piece: Piece, sizes: Sequence[Measure], legs: list[Mention], heard: Heard
    ) -> None:
        named: dict[int, str] = {}
        free = list(legs)
        for i, measure in enumerate(sizes):
            if measure.of > 1 and measure.place > 1:
                named[measure.at] = named.get(measure.members[0].at, "")
                continue
            last = measure.members[-1].at if measure.members else measure.at
            after = [one.at for one in sizes[i + 1 :] if one.at > last]
            until = after[0] if after else len(heard.sentence.atoms)
            since = sizes[i - 1].at if i else 0
            before = self.focus.leg_before if legs else ""
            named[measure.at] = l_shapes.leg_of(measure, free, until, since, before)
        l_shapes.read_legs(piece, sizes, named, heard, self.settler)

    def _settle_openings(
        self, openings: tuple[Opening, ...], sizes: Sequence[Measure], heard: Heard
    ) -> None:
        thick = [one for one in sizes if one.role == "thick"]
        if thick:
            self.settler.piece(self.subjects.current(), thick, heard.rank)
        others = [one for one in sizes if one.role != "thick"]
        self.settler.openings(openings, others, heard.rank)


def _distinct(targets: Sequence[Target]) -> list[Target]:
    kept: list[Target] = []
    for target in targets:
        if not any(target is one for one in kept):
            kept.append(target)
    return kept
