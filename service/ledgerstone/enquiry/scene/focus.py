"""The current subject at a place in a message: the piece and its openings."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from ledgerstone.enquiry.scene.cupboards import Cupboard
from ledgerstone.enquiry.scene.last_unknown import Leftovers
from ledgerstone.enquiry.scene.said import Claim, SaidOpening, SaidPiece
from ledgerstone.enquiry.scene.size_assigner import SizeAssigner
from ledgerstone.enquiry.scene.subjects import Subjects
from ledgerstone.enquiry.scene.weighing import Witness, witnesses_of
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.text.tokens import TextSpan

OpeningsAt = list[tuple[int, list[SaidOpening]]]
Target = SaidPiece | tuple[SaidOpening, ...] | None


@dataclass(frozen=True, slots=True)
class NamedSlab:
    """The slab that a message named last, and where."""

    mention: Mention
    sentence: Sentence
    phrase: str
    span: TextSpan


@dataclass(slots=True)
class ParsedSentence:
    """One sentence with what it names, its sizes, and how new it is."""

    sentence: Sentence
    found: list[Mention]
    sizes: list[Measure]
    rank: tuple[int, int]
    before: str = ""  # the role of the last size of the sentence before
    corrected: list[SaidOpening] = field(default_factory=list)  # whose size it corrects
    ways: dict[int, str] = field(default_factory=dict)  # "central in the 900" by its word
    middles: dict[int, Cupboard] = field(default_factory=dict)  # where it says "its middle"
    turns: dict[int, SaidPiece] = field(default_factory=dict)  # where it turns to which slab
    told: list[Measure] = field(default_factory=list)  # all sizes, those of other things too
    is_question: bool = False  # whether the workshop asks it


@dataclass(slots=True)
class Focus:
    """The current subject while sentences are read in order.

    Attributes
    ----------
    on_opening
        Whether the last thing named was a hole, so that a bare size is its.
    leg
        Which leg of an L was named last.
    leg_before
        Which was, when the current sentence began.
    held
        Which openings the current sentence has named, and where.
    is_told
        Whether the current paragraph has named its slab.
    several
        Whether the slab named last was named as several.
    is_split, parts
        Whether an L is told as two slabs, and which is which leg.
    cupboard
        Which was named last by its width.
    has_row
        Whether several were named.
    above, below
        The window or the hood over the slab, by its width, and which openings are under its middle.
    named
        Which slab was named since the one in hand had its last size.
    witnesses
        What is known of each size that was read, by where it stands.
    old
        The sizes of what is there now, told last.
    announced
        How many slabs were announced by their number, and where.
    """

    assigner: SizeAssigner
    has_sizes: bool
    subjects: Subjects = field(default_factory=Subjects)
    on_opening: bool = False
    leg: str = ""
    leg_before: str = ""
    held: OpeningsAt = field(default_factory=list)
    several: bool = False
    group: list[SaidPiece] = field(default_factory=list)
    is_correcting: bool = False
    is_summary: bool = False
    is_postscript: bool = False
    is_told: bool = True
    is_split: bool = False
    parts: dict[str, SaidPiece] = field(default_factory=dict)
    cupboard: Cupboard | None = None
    has_row: bool = False
    above: Cupboard | None = None
    below: list[SaidOpening] = field(default_factory=list)
    named: NamedSlab | None = None
    leftovers: Leftovers = field(default_factory=Leftovers)
    witnesses: dict[TextSpan, Witness] = field(default_factory=dict)
    announced: tuple[int, TextSpan] | None = None
    old: list[Measure] = field(default_factory=list)
    row: Claim | None = None  # how long the units are that a slab lies on
    asks_side: bool = False  # whether the workshop asked at which side the leg of an L is

    def is_l(self) -> bool:
        """Return whether the current piece is an L."""
        piece = self.subjects.piece
        return piece is not None and piece.shape == "l-shape"

    def start_piece(self, use: str = "", label: str = "") -> SaidPiece:
        """Begin a new piece, after which no opening is current."""
        piece = self.subjects.start_piece(use)
        piece.label = label or piece.label
        self.on_opening, self.leg = False, ""
        return piece

    def note(self, parsed: ParsedSentence, *, is_told: bool) -> None:
        """Keep what is known of a sentence's sizes, and those that may be of its slab."""
        for witness in witnesses_of(
            parsed.sentence, parsed.found, parsed.sizes, sums_up=self.is_summary
        ):
            self.witnesses.setdefault(witness.span, witness)
        if is_told:
            self.leftovers.note(self.subjects.piece, parsed.sizes, parsed.found, parsed.rank)

    def note_old(self, parsed: ParsedSentence) -> None:
        """Keep the sizes of what is there now, which the new slab may have in common with it."""
        aside, sentence = self.subjects.scene.aside, parsed.sentence
        gone = [size for size in parsed.told if (size.size.start, size.size.end) in aside]
        is_old = sentence.marks("old") or sentence.marks("gone")
        if gone and (is_old or any(one.kind == "slab" and one.is_old for one in parsed.found)):
            self.old = gone

    def count_announced(self) -> None:
        """Take the number of slabs that was announced for the only one that was then told."""
        sized = [piece for piece in self.subjects.scene.pieces if piece.has_size()]
        if self.announced is not None and len(sized) == 1 and sized[0].quantity == 1:
            sized[0].quantity, sized[0].quantity_spans = self.announced[0], (self.announced[1],)

    def settle_openings(
        self, openings: Sequence[SaidOpening], sizes: Sequence[Measure], rank: tuple[int, int]
    ) -> None:
        """Give openings their sizes of one sentence; a thickness among them is the slab's."""
        thick = [size for size in sizes if size.role == "thick"]
        if thick:
            self.assigner.piece(self.subjects.current(), thick, rank)
        others = [size for size in sizes if size.role != "thick"]
        self.assigner.openings(openings, others, rank)

    def take_up(self, start: int, openings: list[SaidOpening]) -> None:
        """Make openings current, from a place in the sentence on."""
        self.subjects.openings, self.on_opening = openings, True
        self.held.append((start, openings))


def openings_at(held: OpeningsAt, at: int) -> list[SaidOpening]:
    """Return the openings taken up last before a word, or right after it."""
    before = [openings for start, openings in held if start <= at]
    after = [openings for start, openings in held if at < start <= at + 4]
    return before[-1] if before else after[0] if after else []
