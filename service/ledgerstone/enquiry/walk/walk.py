"""A message is read sentence by sentence, as it goes: what is spoken of, and what is said of it."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.ownership import enumerations, of_all, owners, sameness, shared_sizes
from ledgerstone.enquiry.ownership.alcoves import note_walls
from ledgerstone.enquiry.ownership.asked import named_and_sized
from ledgerstone.enquiry.ownership.chosen import settled_after
from ledgerstone.enquiry.ownership.corrections import Replacing, takes_back
from ledgerstone.enquiry.ownership.differences import alter
from ledgerstone.enquiry.ownership.inherited import (
    carry_on,
    comes_first,
    is_left,
    note_hole,
    without_counts,
)
from ledgerstone.enquiry.ownership.old_sizes import alter_old
from ledgerstone.enquiry.ownership.overhangs import read_overhangs
from ledgerstone.enquiry.ownership.recency import rank_of
from ledgerstone.enquiry.places import coordinates, extents
from ledgerstone.enquiry.places.above import note_below, without_above
from ledgerstone.enquiry.places.from_sides import place
from ledgerstone.enquiry.places.middles import note_cupboards, note_ways
from ledgerstone.enquiry.referents import further_slabs, other_slabs
from ledgerstone.enquiry.referents.labelled import LabelledQuestions, take_up_question
from ledgerstone.enquiry.referents.measured import target_of
from ledgerstone.enquiry.referents.named import take
from ledgerstone.enquiry.referents.new_slabs import begin
from ledgerstone.enquiry.referents.slab_names import name_by_label
from ledgerstone.enquiry.referents.slab_of_sentence import anchor
from ledgerstone.enquiry.referents.told_apart import tell_apart
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence, Target
from ledgerstone.enquiry.scene.said import SaidPiece
from ledgerstone.enquiry.scene.size_assigner import SizeAssigner
from ledgerstone.enquiry.scene.subjects import has_mark
from ledgerstone.enquiry.scene.whereabouts import note_places
from ledgerstone.enquiry.sentence import answers, hearsay, scope
from ledgerstone.enquiry.sentence.cues_before import read_question
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.shapes import legs as l_shapes
from ledgerstone.enquiry.shapes import relations, split_l
from ledgerstone.enquiry.shapes.cut_ends import cut_corners
from ledgerstone.enquiry.shapes.leg_names import with_legs
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.words.word_sets import word_set

_MODAL: Final = word_set("should wants needs must will would want need has ought soll muss sollte")
_WAS: Final = frozenset({("it", "was"), ("they", "were"), ("es", "war"), ("sie", "war")})
_GREETS: Final = word_set("hi hello hey dear morning thanks thank hallo guten liebe lieber danke")
_IT: Final = frozenset({"it", "it's", "it'll", "it'd", "they", "es", "sie"})


class Walker:
    """Reads sentences in order and fills a scene."""

    def __init__(
        self,
        assigner: SizeAssigner,
        *,
        has_sizes: bool,
        is_split: bool = False,
        leans: bool = False,
        wished: frozenset[str] = frozenset(),
        is_l: bool = False,
        passed: frozenset[TextSpan] = frozenset(),
    ) -> None:
        self.leans, self.wished, self.is_l, self.passed = leans, wished, is_l, passed
        self.last_role, self.asked, self.is_old_told, self.is_asked_on = "", "", False, False
        self.by_label = LabelledQuestions()
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
        rank = rank_of(focus, sentence, layer)
        found, sizes = named_and_sized(sentence, self.wished)
        told = list(sizes)
        ours = [one for one in sizes if (one.size.start, one.size.end) not in self.passed]
        sizes = self._aside(sizes, ours, scope.REPLACED)
        if self._is_on_old(sentence, found):
            sizes = self._aside(sizes, settled_after(sentence, sizes), scope.OLD)
        self.asked = read_question(sentence, sizes, self.asked)
        sizes = self._aside(sizes, without_counts(found, sizes), scope.COUNT)
        sizes = self._aside(sizes, scope.without_premises(sentence, sizes), scope.SUM)
        sizes = self._aside(sizes, without_above(focus, sentence, sizes, rank), scope.OF_ANOTHER)
        ours = owners.without_other_things(sentence, found, sizes, self.wished)
        ours = [] if hearsay.is_of_units(sentence, sizes) else ours
        sizes = self._aside(sizes, ours, scope.OF_ANOTHER)
        parsed = ParsedSentence(sentence, found, sizes, rank, self.last_role)
        parsed.told = told
        parsed.is_question = is_own and sentence.ends == "?"
        if not is_own:
            self._take_up(sentence, layer)
            self._confirm(sentence)
        if is_own and self._is_offered(parsed, layer):
            self._aside(parsed.sizes, [], scope.OWN)
            return
        count = len(self.subjects.scene.pieces)
        self._read(parsed)
        further_slabs.note_further(self.subjects.scene.pieces[count:], sentence)
        name_by_label(parsed, self.subjects.piece)
        note_below(focus, sentence)
        focus.note(parsed, is_told=not (is_own or focus.is_correcting))
        self.last_role = ["", *(one.role for one in parsed.sizes if one.role and not one.side)][-1]
        self.replacing.note_question(sentence)

    def _is_on_old(self, sentence: Sentence, found: list[Mention]) -> bool:
        """Return whether a sentence goes on about what is there now: "It is 2100 long"."""
        is_new = any(one.kind == "slab" and one.is_indefinite and not one.is_old for one in found)
        wishes = has_mark(sentence, "new") or bool(_MODAL & set(sentence.words[:4]))
        is_on = self.is_old_told and bool(_IT & set(sentence.words[:1])) and not (is_new or wishes)
        tells = scope.tells_of_old(sentence) or scope.tells_of_thing(sentence, found)
        tells = tells or (not is_new and any(one.kind == "slab" and one.is_old for one in found))
        is_on = is_on or (tuple(sentence.words[:2]) in _WAS and not is_new)
        self.is_old_told = tells or is_on or scope.ends_on_thing(sentence, found)
        return is_on

    def _is_offered(self, parsed: ParsedSentence, layer: int) -> bool:
        """Return whether the workshop only offers what it says, or asks; else what is asked stays.

        What it says again counts once the customer confirms it.
        """
        sentence, sizes = parsed.sentence, parsed.sizes
        if self.by_label.note(sentence, sizes, layer):
            return True
        if self.leans and scope.is_taken_up(sentence, sizes, parsed.found):
            return False
        if scope.is_restated(sentence, sizes):
            self.restated, self.is_asked_on = (sentence, layer), False
            return True
        self.is_asked_on |= parsed.is_question
        if scope.is_offer(sentence, sizes):
            self.replacing.note_offer(sentence, sizes)
            return True
        parsed.sizes = self._aside(sizes, scope.without_offers(sentence, sizes), scope.OWN)
        return False

    def _aside(self, sizes: list[Measure], left: list[Measure], why: str) -> list[Measure]:
        """Return the sizes that are left, and note why the others are no slab's."""
        gone = [size.size for size in sizes if not any(size is two for two in left)]
        self.subjects.scene.set_aside(gone, why)
        return left

    def _take_up(self, sentence: Sentence, layer: int) -> None:
        """Go back to the question that is answered by its number, or the offer that is chosen."""
        chosen = self.by_label.chosen(sentence)
        if chosen is not None:
            self.by_label.offers.clear()
            self.read(chosen, layer)
        for question in self.by_label.question(sentence):
            take_up_question(self.focus, question, sentence)
            self.replacing.asks(question)

    def _confirm(self, sentence: Sentence) -> None:
        """Take what the workshop said again, once the customer says that it is right."""
        if self.restated is None or sentence.is_quoted or sentence.words[0] in _GREETS:
            return
        (restated, layer), self.restated = self.restated, None
        stands = self.is_asked_on and not answers.denies(sentence)
        if stands or answers.affirms(sentence) or answers.affirms_in_part(sentence):
            self.focus.on_opening, self.subjects.openings = False, []
            self.read(restated, layer)

    def _read(self, parsed: ParsedSentence) -> None:
        focus, sentence = self.focus, parsed.sentence
        if takes_back(sentence):
            focus.leftovers.settle(self.subjects.scene.pieces, self.assigner)
        if self.replacing.settled(sentence, parsed.sizes, parsed.rank):
            standing = [size for size in parsed.sizes if not size.replaced]
            standing = self._aside(parsed.sizes, standing, scope.REPLACED)
            parsed.sizes = [size for size in standing if not size.role.startswith("=")]
        parsed.corrected = self.replacing.corrected
        focus.held, focus.subjects.pending = [], False
        focus.leg_before = focus.leg
        begin(focus, parsed)
        if self.is_l and self.subjects.scene.pieces:
            self.subjects.scene.pieces[0].shape = "l-shape"
        if focus.is_split:
            split_l.legs_apart(focus, parsed)
        of_all.read_of_all(parsed)
        alter(parsed, self.subjects.piece)
        if not focus.is_split:
            relations.read_l(focus.subjects, sentence)
        if focus.is_l() and not focus.is_split:
            parsed.found = with_legs(parsed)
        relations.read_round(focus.subjects, parsed)
        tell_apart(focus, parsed)
        anchor(focus, parsed)
        note_cupboards(focus, parsed)
        note_ways(focus, parsed)
        extents.read_extents(focus, parsed)
        sameness.read_again(focus, sentence)
        said = self._aimed(parsed)
        cut_corners(parsed, self.subjects.piece, self.assigner)
        self._settle([one for one in said if not one[1].replaced], parsed)
        enumerations.count_pieces(self.subjects.piece, sentence, parsed.sizes)
        self.replacing.makes(sentence, parsed.sizes, parsed.rank)
        focus.subjects.pending = False
        note_walls(focus, parsed)
        focus.note_old(parsed)
        relations.read(focus, parsed)
        alter_old(focus, parsed)
        read_overhangs(focus, parsed)
        sameness.read_same(focus, parsed)
        tells = sentence.is_item or bool(parsed.sizes)
        tells = tells or any(mention.kind == "slab" for mention in parsed.found)
        note_places(sentence, self.subjects.scene, self.subjects.piece if tells else None)

    def _aimed(self, parsed: ParsedSentence) -> list[tuple[Target, Measure]]:
        """Go through what is named and what is measured in order; give each size its thing."""
        focus = self.focus
        targets: dict[int, Target] = {}
        said: list[tuple[Target, Measure]] = []
        active: Mention | None = None
        shared_sizes.count_lengths(focus, parsed)
        counted = enumerations.counted(parsed.sentence, parsed.sizes)
        parsed.sizes = [size for size in parsed.sizes if not any(size is two for _, two in counted)]
        coordinates.read_coordinates(parsed.sentence, parsed.sizes)
        mentions = [*parsed.found, *enumerations.ones_of(parsed.sentence, parsed.sizes)]
        mentions += [mention for mention, _ in counted]
        names = enumerations.listed(parsed.sentence, parsed.found, parsed.sizes)
        mentions = [one for one in mentions if not any(one.end == two.end for two in names)]
        mentions += names
        lead = coordinates.led_by_place(parsed.sentence, mentions, parsed.sizes)
        rows = coordinates.rows_of(parsed.sentence, parsed.sizes)
        cues = {i for size in parsed.sizes if size.cue for i in range(*size.cue)}
        mentions = [one for one in mentions if one.kind != "thing" or one.start not in cues]
        waiting = sorted(mentions, key=lambda mention: -1 if mention is lead else mention.start)
        for measure in parsed.sizes:
            while waiting and (waiting[0] is lead or comes_first(parsed, waiting[0], measure)):
                active = take(focus, parsed, waiting.pop(0), active)
            if measure.replaced:
                self.subjects.scene.set_aside([measure.size], scope.REPLACED)
                continue
            coordinates.take_row(rows.get(measure.at, ()), self.subjects.openings)
            if active is not None and is_left(focus, parsed, active, measure):
                active = None
            carry_on(parsed, measure, active)
            if shared_sizes.is_of_group(focus, measure, parsed):
                continue
            aimed = target_of(focus, parsed, measure, active, targets)
            target = further_slabs.aimed_at(focus, parsed, measure, (active, aimed), said)
            self._note_aside(measure, target)
            targets[measure.at] = target
            focus.subjects.pending = focus.subjects.pending or isinstance(target, SaidPiece)
            note_hole(measure, active, target, waiting)
            measure.opinion = hearsay.is_opinion(parsed.sentence, measure)
            measure.beside = measure.beside if target is not None else 0  # beside none of ours
            if target is not None and measure.side:
                place(focus, target, measure, parsed)
            elif target is not None:
                said.append((target, measure))
        for mention in waiting:
            active = take(focus, parsed, mention, active)
        return said

    def _note_aside(self, measure: Measure, target: Target) -> None:
        """Note why a size and its group are of nothing that is asked for."""
        if target is None and measure.aside:
            sizes = [member.size for member in measure.members or [measure]]
            self.subjects.scene.set_aside(sizes, measure.aside)

    def _settle(self, said: list[tuple[Target, Measure]], parsed: ParsedSentence) -> None:
        legs = [mention for mention in parsed.found if mention.kind == "leg"]
        for aimed in shared_sizes.distinct([target for target, _ in said]):
            sizes = [measure for whose, measure in said if whose is aimed]
            if isinstance(aimed, SaidPiece):
                target = other_slabs.apart(self.focus, aimed, sizes, parsed)
                sizes = shared_sizes.each_length(self.focus, target, sizes, parsed)
                shared_sizes.share_thickness(self.focus, target, sizes, parsed)
                if target.shape == "l-shape":
                    named = l_shapes.legs_named(sizes, legs, self.focus.leg_before, parsed)
                    l_shapes.read_legs(target, sizes, named, parsed, self.assigner)
                else:
                    self.assigner.piece(target, sizes, parsed.rank)
            elif aimed:
                self.focus.settle_openings(aimed, sizes, parsed.rank)
        piece = self.subjects.piece
        if piece is not None and self.focus.is_l():
            corner = l_shapes.corner_answered(self.focus, parsed)
            piece.corner = l_shapes.corner_said(parsed.sentence, legs) or corner or piece.corner
