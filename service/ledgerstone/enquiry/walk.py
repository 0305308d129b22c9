"""A message is read sentence by sentence, as it goes: what is spoken of, and what is said of it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry import (
    anchoring,
    further,
    pairing,
    referring,
    relations,
    sameness,
    scope,
    sharing,
    splitting,
    telling,
)
from ledgerstone.enquiry import legs as l_shapes
from ledgerstone.enquiry.aiming import target_of
from ledgerstone.enquiry.altering import alter
from ledgerstone.enquiry.beginning import begin
from ledgerstone.enquiry.carrying import (
    carry_on,
    comes_first,
    is_left,
    note_hole,
    without_counts,
)
from ledgerstone.enquiry.cues_before import read_question
from ledgerstone.enquiry.cutting import cut_corners
from ledgerstone.enquiry.fitting import note_walls
from ledgerstone.enquiry.focus import Focus, ParsedSentence, Target
from ledgerstone.enquiry.measures import Measure, measures_of
from ledgerstone.enquiry.mention import Mention
from ledgerstone.enquiry.mentions import mentions_of
from ledgerstone.enquiry.middles import note_cupboards, note_ways
from ledgerstone.enquiry.placing import place
from ledgerstone.enquiry.replacing import Replacing
from ledgerstone.enquiry.scene import SaidOpening, SaidPiece
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.size_assigner import SizeAssigner
from ledgerstone.enquiry.subjects import has_mark
from ledgerstone.enquiry.taking import take
from ledgerstone.enquiry.whereabouts import note_places
from ledgerstone.enquiry.word_sets import word_set

_MODAL: Final = word_set("should wants needs must will would want need has ought soll muss sollte")
_IN_THE: Final = (["in", "the"], ["across", "the"], ["on", "the"], ["of", "the"], ["along", "the"])
_IT: Final = frozenset({"it", "it's", "they", "es", "sie"})


class Walker:
    """Reads sentences in order and fills a scene."""

    def __init__(
        self,
        assigner: SizeAssigner,
        *,
        has_sizes: bool,
        is_split: bool = False,
        leans: bool = False,
    ) -> None:
        self.leans = leans
        self.last_role = ""
        self.asked = ""
        self.is_old_told = False
        self.restated: tuple[Sentence, int] | None = None
        self.focus = Focus(assigner, has_sizes, is_split=is_split)
        self.assigner, self.subjects = assigner, self.focus.subjects
        self.replacing = Replacing(assigner, self.subjects)

    def read(self, sentence: Sentence, layer: int, *, is_own: bool = False) -> None:
        """Read one sentence.

        Parameters
        ----------
        layer
            How new its message is: a later one replaces what an earlier one said.
        is_own
            Whether the workshop wrote it: what it offers counts only once the customer accepts it.
        """
        focus = self.focus
        if self.subjects.is_full:
            self.subjects.scene.left.append((sentence.atoms[0].start, sentence.atoms[-1].end))
            return
        if sentence.starts_paragraph:
            focus.is_correcting, focus.is_told = False, False
        focus.is_correcting = focus.is_correcting or has_mark(sentence, "correct")
        found, sizes = mentions_of(sentence), measures_of(sentence)
        newer = 2 * layer + int(not sentence.is_quoted)  # an answer is newer than what it answers
        rank = (newer, int(focus.is_correcting))
        is_on = self.is_old_told and bool(_IT & set(sentence.words[:1]))
        self.is_old_told = (
            scope.tells_of_old(sentence) or scope.tells_of_thing(sentence, found) or is_on
        )
        if is_on and not has_mark(sentence, "new") and not _MODAL & set(sentence.words[:4]):
            sizes = self._aside(sizes, [], scope.OLD)
        self.asked = read_question(sentence, sizes, self.asked)
        sizes = self._aside(sizes, without_counts(found, sizes), scope.COUNT)
        sizes = self._aside(sizes, scope.without_premises(sentence, sizes), scope.SUM)
        parsed = ParsedSentence(sentence, found, sizes, rank, self.last_role)
        parsed.is_question = is_own and sentence.ends == "?"
        is_taken_up = self.leans and scope.is_whole_offer(parsed.sizes, found)
        self._confirm(sentence)
        if is_own and not is_taken_up and scope.is_restated(sentence, parsed.sizes):
            self.restated = (sentence, layer)
            self._aside(parsed.sizes, [], scope.OWN)
            return
        if is_own and not is_taken_up and scope.is_offer(sentence, parsed.sizes):
            self.replacing.note_offer(sentence, parsed.sizes)
            self._aside(parsed.sizes, [], scope.OWN)
            return
        if is_own and not is_taken_up:
            left = scope.without_offers(sentence, parsed.sizes)
            parsed.sizes = self._aside(parsed.sizes, left, scope.OWN)
        self._read(parsed)
        roles = [one.role for one in parsed.sizes if one.role and not one.side]
        self.last_role = roles[-1] if roles else ""
        self.replacing.note_question(sentence)

    def _aside(self, sizes: list[Measure], left: list[Measure], why: str) -> list[Measure]:
        """Return the sizes that are left, and note why the others are no slab's."""
        gone = [one.size for one in sizes if not any(one is two for two in left)]
        self.subjects.scene.set_aside(gone, why)
        return left

    def _confirm(self, sentence: Sentence) -> None:
        """Take what the workshop said again, once the customer says that it is right."""
        if self.restated is None or sentence.is_quoted:
            return
        (restated, layer), self.restated = self.restated, None
        if scope.affirms(sentence) or scope.affirms_in_part(sentence):
            self.focus.on_opening, self.subjects.openings = False, []
            self.read(restated, layer)

    def _read(self, parsed: ParsedSentence) -> None:
        focus, sentence = self.focus, parsed.sentence
        if self.replacing.settled(sentence, parsed.sizes, parsed.rank):
            parsed.sizes = [
                one for one in parsed.sizes if not (one.replaced or one.role.startswith("="))
            ]
        parsed.corrected = self.replacing.corrected
        focus.held, focus.subjects.pending = [], False
        focus.leg_before = focus.leg
        begin(focus, parsed)
        if focus.is_split:
            splitting.legs_apart(focus, parsed)
        alter(parsed, self.subjects.piece)
        if not focus.is_split:
            relations.read_l(focus.subjects, sentence)
        if focus.is_l() and not focus.is_split:
            parsed.found = sorted(
                [*parsed.found, *l_shapes.legs_by_side(parsed)], key=lambda one: one.start
            )
        relations.read_round(focus.subjects, parsed)
        self._anchor(parsed)
        note_cupboards(focus, parsed)
        note_ways(focus, parsed)
        said = self._aimed(parsed)
        cut_corners(parsed, self.subjects.piece, self.assigner)
        self._settle([one for one in said if not one[1].replaced], parsed)
        telling.count_pieces(self.subjects.piece, sentence)
        self.replacing.makes(sentence, parsed.sizes, parsed.rank)
        focus.subjects.pending = False
        note_walls(focus, parsed)
        relations.read(focus, parsed)
        sameness.read_same(focus, parsed)
        tells = sentence.is_item or bool(parsed.sizes)
        tells = tells or any(one.kind == "slab" for one in parsed.found)
        note_places(sentence, self.subjects.scene, self.subjects.piece if tells else None)

    def _anchor(self, parsed: ParsedSentence) -> None:
        """Go back to the slab that an opening is in, where its paragraph has not named one."""
        focus, subjects = self.focus, self.subjects
        slabs = [one for one in parsed.found if one.kind == "slab"]
        openings = [one for one in parsed.found if one.kind in ("open", "hole")]
        referred = referring.referred(subjects.scene.pieces, parsed.sentence, parsed.found)
        own = [one for one in parsed.sizes if one.of > 1 and not openings]
        called = [i for i, _ in referring.references(subjects.scene.pieces, parsed.sentence, [])]
        names = [one for one in parsed.sizes if one.at in called and one.of == 1]
        self.subjects.scene.set_aside((one.size for one in names), scope.NAMES)
        parsed.sizes = [one for one in parsed.sizes if not any(one is two for two in names)]
        own = [one for one in own if not any(one is two for two in names)]
        if referred is not None and not (focus.is_l() or focus.is_split or own):
            subjects.piece, subjects.openings = referred, []
            focus.is_told, focus.on_opening = True, False
            return
        turns = referring.references(subjects.scene.pieces, parsed.sentence, parsed.found)
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
        if anchoring.needs_flat(subjects.piece, subjects.scene.pieces, parsed.found):
            is_told = False
        if is_told or not openings or focus.is_l():
            return
        piece = anchoring.piece_of_opening(subjects.scene.pieces, parsed.sentence, parsed.found)
        if piece is not None:
            subjects.piece, subjects.openings = piece, []
            focus.is_told, focus.on_opening = True, False

    def _aimed(self, parsed: ParsedSentence) -> list[tuple[Target, Measure]]:
        """Go through what is named and what is measured in order; give each size its thing."""
        focus = self.focus
        targets: dict[int, Target] = {}
        said: list[tuple[Target, Measure]] = []
        active: Mention | None = None
        sharing.count_lengths(parsed)
        counted = telling.counted(parsed.sentence, parsed.sizes)
        parsed.sizes = [one for one in parsed.sizes if not any(one is two for _, two in counted)]
        pairing.read_coordinates(parsed.sentence, parsed.sizes)
        mentions = [*parsed.found, *telling.ones_of(parsed.sentence, parsed.sizes)]
        mentions += [mention for mention, _ in counted]
        lead = pairing.led_by_place(parsed.sentence, mentions, parsed.sizes)
        rows = pairing.rows_of(parsed.sentence, parsed.sizes)
        cues = {i for one in parsed.sizes if one.cue for i in range(*one.cue)}
        mentions = [one for one in mentions if one.kind != "thing" or one.start not in cues]
        waiting = sorted(mentions, key=lambda one: -1 if one is lead else one.start)
        for measure in parsed.sizes:
            while waiting and (waiting[0] is lead or comes_first(parsed, waiting[0], measure)):
                active = take(focus, parsed, waiting.pop(0), active)
            if measure.replaced:
                self.subjects.scene.set_aside([measure.size], scope.REPLACED)
                continue
            pairing.take_row(rows.get(measure.at, ()), self.subjects.openings)
            if active is not None and is_left(focus, parsed, active, measure):
                active = None
            carry_on(parsed, measure, active)
            if sharing.is_of_group(focus, measure, parsed):
                continue
            aimed = target_of(focus, parsed, measure, active, targets)
            target = further.aimed_at(focus, parsed, measure, (active, aimed), said)
            self._note_aside(measure, target)
            targets[measure.at] = target
            focus.subjects.pending = focus.subjects.pending or isinstance(target, SaidPiece)
            note_hole(measure, active, target, waiting)
            measure.opinion = scope.is_opinion(parsed.sentence, measure)
            if target is None:
                measure.beside = 0  # so far beside something that is none of ours
            if target is not None and measure.side:
                place(focus, target, measure, parsed)
            elif target is not None:
                said.append((target, measure))
        for mention in waiting:
            active = take(focus, parsed, mention, active)
        return said

    def _note_aside(self, measure: Measure, target: Target) -> None:
        """Note why a size, and those of its group, are of nothing that is asked for."""
        if target is None and measure.aside:
            sizes = [one.size for one in measure.members or [measure]]
            self.subjects.scene.set_aside(sizes, measure.aside)

    def _settle(self, said: list[tuple[Target, Measure]], parsed: ParsedSentence) -> None:
        legs = [mention for mention in parsed.found if mention.kind == "leg"]
        for target in _distinct([target for target, _ in said]):
            sizes = [measure for whose, measure in said if whose is target]
            if isinstance(target, SaidPiece):
                sizes = sharing.each_length(self.focus, target, sizes, parsed)
                sharing.share_thickness(self.focus, target, sizes, parsed)
                if target.shape == "l-shape":
                    named = l_shapes.legs_named(sizes, legs, self.focus.leg_before, parsed)
                    l_shapes.read_legs(target, sizes, named, parsed, self.assigner)
                else:
                    self.assigner.piece(target, sizes, parsed.rank)
            elif target:
                self._settle_openings(target, sizes, parsed)
        piece = self.subjects.piece
        if piece is not None and self.focus.is_l():
            piece.corner = l_shapes.corner_said(parsed.sentence, legs) or piece.corner

    def _settle_openings(
        self, openings: tuple[SaidOpening, ...], sizes: Sequence[Measure], parsed: ParsedSentence
    ) -> None:
        thick = [one for one in sizes if one.role == "thick"]
        if thick:
            self.assigner.piece(self.subjects.current(), thick, parsed.rank)
        others = [one for one in sizes if one.role != "thick"]
        self.assigner.openings(openings, others, parsed.rank)


def _distinct(targets: Sequence[Target]) -> list[Target]:
    kept: list[Target] = []
    for target in targets:
        if not any(target is one for one in kept):
            kept.append(target)
    return kept
