"""Which piece and which opening a mention means: one spoken of already, or a new one."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.scene import identity
from ledgerstone.enquiry.scene.said import SaidOpening, SaidOrder, SaidPiece
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set
from ledgerstone.order import MAX_SLABS, UPRIGHT_USES

ROUND_HOLES: Final = word_set("tap waste drain parasol cable socket soap post")
_SINKS: Final = frozenset({"sink", "basin"})
_MAX_NAMED: Final = 2 * MAX_SLABS
_MAX_OPENINGS = 20
_AWAY: Final = word_set("von from off to along behind at vom zur zum under over")
_EARLY: Final = 5  # words
_FOR: Final = ("for", "für", "of")
_DROPS: Final = word_set("ignore forget scrap cancel drop skip without")
_SECOND: Final = word_set("second zweite zweites")
_ALSO: Final = word_set("also plus additionally außerdem dazu zusätzlich finally lastly then")
_PLACES: Final = frozenset({"left", "right", "front", "back"})
_A: Final = frozenset({"a", "an", "another", "ein", "eine", "einen"})
_ANOTHER: Final = word_set(
    "smaller bigger larger kleineres größeres another second other third further weitere weiteren"
    " zweite"
)


class Subjects:
    """The pieces read so far, the current one and the current openings."""

    def __init__(self) -> None:
        self.scene = SaidOrder()
        self.piece: SaidPiece | None = None
        self.openings: list[SaidOpening] = []
        self.awaited = 0
        self.row: list[SaidOpening] = []
        self.sizes: list[Measure] = []
        self.outlines: list[Measure] = []  # the sizes that follow a slab's name before any hole
        self.is_full = False  # whether more pieces are told than are read, so that the rest is left
        self.repeats = False  # whether what is read corrects or sums up what was said
        self.sums_up = False  # whether what is read says again what was said
        self.pending = False  # whether the current sentence gave the current piece a size

    def start_piece(self, use: str = "") -> SaidPiece:
        """Begin a new piece, or take up the one that has nothing yet; one too many is nobody's."""
        pieces = self.scene.pieces
        if self.awaited > 1:
            self.keep_for_all()
        if (
            pieces
            and not self.pending
            and not pieces[-1].has_size()
            and not pieces[-1].openings
            and not pieces[-1].label
            and (not use or pieces[-1].use in ("", use))
        ):
            piece = pieces[-1]
        elif sum(piece.has_size() for piece in pieces) >= MAX_SLABS or len(pieces) >= _MAX_NAMED:
            self.is_full, piece = True, SaidPiece()
        else:
            piece = SaidPiece()
            pieces.append(piece)
        if use and not piece.use:
            piece.use = use
        self.piece, self.openings = piece, []
        return piece

    def keep_for_all(self) -> None:
        """Keep for all what was said before a list of pieces: "both 40 mm thick"."""
        last = self.scene.pieces[-1] if self.scene.pieces else None
        if last is None or last.label or not last.claims:
            return
        if set(last.claims) <= {"thickness", "width"} and not last.openings:
            self.scene.common |= last.claims
            last.claims, last.quantity = {}, 1

    def keep_before_table(self) -> str:
        """Keep for all rows what was said before them of slabs of one use; give the use."""
        last = self.scene.pieces[-1] if self.scene.pieces else None
        if last is None or last.label or last.claims.get("length") or last.openings:
            return ""
        self.keep_for_all()
        return last.use

    def current(self) -> SaidPiece:
        """Return the current piece; the first is begun where none is."""
        return self.piece if self.piece is not None else self.start_piece()

    def piece_for(
        self, mention: Mention, sentence: Sentence, sizes: list[Measure], *, free: bool
    ) -> SaidPiece | None:
        """Return the piece that a slab's name means; None if it is only spoken of in passing.

        Parameters
        ----------
        free
            Whether the message has no sizes at all, so that naming a piece is asking for it.
        """
        if mention.is_denied or mention.is_old:
            return None
        pieces = self.scene.pieces
        own, self.sizes = identity.own_sizes(mention, sizes), sizes
        fresh = self.current() if pieces else None
        if (
            fresh is not None
            and self.pending
            and fresh.label == "line"
            and not (fresh.spans or own)
        ):
            fresh.use = mention.name or fresh.use
            return fresh  # "1200 x 450 x 40 - shelf", a line of its own
        names = identity.called(mention, sentence)
        if not pieces or self.piece is None:
            piece: SaidPiece | None = self.start_piece(mention.name)
        elif self._is_other(mention, names) or self._is_further(
            mention, sentence, own=own, free=free
        ):
            piece = self.start_piece(mention.name)
        else:
            piece = self._known(mention, names, own=own)
        if piece is not None and (own or not piece.spans):
            piece.called |= names
        return piece

    def drop(self, mention: Mention, sentence: Sentence) -> bool:
        """Take back a slab that is no longer wanted, where another is: "Ignore the upstand"."""
        near = sentence.words[max(0, mention.start - 4) : mention.start]
        named = [piece for piece in self.scene.pieces if mention.name and piece.use == mention.name]
        if not _DROPS & set(near) or len(named) != 1 or len(self.scene.pieces) == 1:
            return False
        self.scene.pieces.remove(named[0])
        self.piece, self.openings = self.scene.pieces[-1], []
        return True

    def _is_other(self, mention: Mention, names: frozenset[str]) -> bool:
        """Return whether a slab other than those known is named, with its own outline."""
        current = self.current()
        begun = bool(current.claims.get("length") or current.claims.get("diameter")) or self.pending
        is_whole = identity.is_whole(mention, self.outlines)
        is_whole = is_whole or identity.is_other_kind(current, mention, self.outlines)
        if not begun or self.repeats or not is_whole:
            return False
        if identity.named_so(self.scene.pieces, names) is not None:
            return False
        alike = [piece for piece in self.scene.pieces if mention.name and piece.use == mention.name]
        known = any(not one.claims.get("length") and one is not current for one in alike)
        return not known and identity.is_other(current, mention, names)

    def _is_further(self, mention: Mention, sentence: Sentence, *, own: bool, free: bool) -> bool:
        current = self.current()
        if sentence.is_item and mention.start <= 6 and current.has_size():
            return (own or self.awaited > 1) and not mention.preposition
        near = sentence.words[max(0, mention.start - 4) : mention.end]  # "a second run" is a name
        is_another = bool(_ANOTHER & set(near)) and mention.determiner not in ("the", "die", "der")
        begun = current.has_size() or self.pending
        if begun and ((is_another and (own or free)) or self._is_also(mention, sentence, own=own)):
            return True
        same = any(piece.use == mention.name or not mention.name for piece in self.scene.pieces)
        if mention.name in UPRIGHT_USES and own and begun and not same:
            return True  # an upstand has other sizes than the slab before it
        if same or not current.use:
            return False
        if free:
            with_it = ("with", "mit") if mention.name in UPRIGHT_USES else ()
            return mention.is_indefinite and mention.preposition in ("", *_FOR, *with_it)
        return own and mention.preposition in ("", "for") and begun and mention.is_indefinite

    def _is_also(self, mention: Mention, sentence: Sentence, *, own: bool) -> bool:
        """Return whether a sentence begins with one more slab: "Also one bar, 1400 x 400"."""
        also = set(sentence.words[: mention.start]) & _ALSO
        pair = any(size.of > 1 and size.at >= mention.end for size in self.sizes)
        return bool(also) and own and pair and mention.is_indefinite and mention.start <= _EARLY

    def _known(self, mention: Mention, names: frozenset[str], *, own: bool) -> SaidPiece | None:
        pieces = self.scene.pieces
        fresh = self.current()
        if fresh.label and fresh.use in ("", mention.name) and not fresh.has_size():
            fresh.use = mention.name or fresh.use
            return fresh
        so = identity.named_so(pieces, names) if len(pieces) > 1 else None
        if so is not None:
            self.piece = so
            return so
        if mention.is_plural and not mention.count and len(pieces) > 1:
            return None
        alike = [piece for piece in pieces if mention.name and piece.use == mention.name]
        if alike:
            piece = self.current() if self.current() in alike else alike[-1]
        else:
            piece = self.current()
            if not piece.use and mention.name and mention.preposition not in _AWAY:
                piece.use = mention.name
            elif mention.name and mention.preposition and not own:
                return None
        self.piece = piece
        return piece

    def openings_for(self, mention: Mention, sentence: Sentence) -> list[SaidOpening]:
        """Return the openings that a hole's name means, begun where they are new."""
        what = "" if mention.kind == "hole" else mention.name
        piece = identity.with_room_for(what, self.current(), self.scene.pieces)
        if piece is not self.current():
            self.piece, self.openings = piece, []
        alike = self._alike(piece, what)
        near = sentence.words[max(0, mention.start - 4) : mention.start]
        sizes = [i for i, word in enumerate(near) if not word]
        near = near[sizes[-1] + 1 :] if sizes else near
        is_new = mention.is_indefinite or not mention.determiner
        more = bool(_ANOTHER & set(near)) and is_new
        if not what:
            return self._hole(piece, mention, sentence, more=more)
        if alike and not more:
            if mention.count > len(alike) and not any(one.has_size() for one in alike):
                alike += self._new(piece, what, mention, mention.count - len(alike))
            return alike
        nameless = [opening for opening in piece.openings if opening.what == "hole"]
        unnamed = [one for one in nameless if not one.has_size()]
        if mention.count:  # so many more than a hole that has its place
            unnamed = [one for one in unnamed if not _PLACES & one.claims.keys()]
        is_told = any(atom.kind == "size" for atom in sentence.atoms)
        takes_up = what not in ROUND_HOLES or (mention.names_hole and not is_told)
        takes_up = takes_up and bool(mention.determiner) and not mention.is_indefinite
        current = [opening for opening in self.openings if opening in nameless]
        if len(nameless) == 1 and takes_up:
            unnamed = nameless
        elif len(current) == 1 and mention.preposition in ("for", "für"):
            unnamed = current  # "one 50 mm for cables"
        if unnamed and not more:
            unnamed[-1].what = what
            return [unnamed[-1]]
        return self._new(piece, what, mention, max(1, mention.count))

    def _alike(self, piece: SaidPiece, what: str) -> list[SaidOpening]:
        same = [opening for opening in piece.openings if opening.what == what]
        return same or [opening for opening in piece.openings if {what, opening.what} <= _SINKS]

    def _hole(
        self, piece: SaidPiece, mention: Mention, sentence: Sentence, *, more: bool
    ) -> list[SaidOpening]:
        """A hole with no name is the current one, or one that has no size yet, or a new one."""
        if self.sums_up and len(piece.openings) == max(1, mention.count):
            return list(piece.openings)
        current = [
            opening
            for opening in self.openings
            if opening in piece.openings and not opening.is_refused
        ]
        if 0 < len(current) < mention.count and not any(one.has_size() for one in current):
            more_of = self._new(piece, current[0].what, mention, mention.count - len(current))
            for one in more_of:
                one.is_asked, one.rim = current[0].is_asked, current[0].rim
            return current + more_of
        if mention.is_plural and not mention.count:
            return current if len(current) > 1 else []
        more = more or (
            identity.is_labelled(mention, sentence) and any(one.has_size() for one in current)
        )
        more = more or (
            not mention.determiner and identity.is_sized_anew(mention, sentence, current)
        )
        is_sized = any(one.names_hole and one.has_size() for one in current)
        if current and not more and not (mention.is_indefinite and is_sized):
            return current
        if not more and not mention.is_indefinite and len(piece.openings) == 1:
            return list(piece.openings)
        return self._new(piece, "hole", mention, max(1, mention.count))

    def _new(self, piece: SaidPiece, what: str, mention: Mention, count: int) -> list[SaidOpening]:
        count = min(count, _MAX_OPENINGS - len(piece.openings))
        made = [SaidOpening(what, kind=mention.hole_kind) for _ in range(count)]
        piece.openings += made
        self.row = list(made) if count > 1 else self.row
        return made

    def one_more(self, sentence: Sentence, mention: Mention) -> SaidOpening | None:
        """Begin one more hole for "also a round one of 200" after one that has its size."""
        led = set(sentence.words[: mention.start])
        is_new = bool(led & _ALSO and led & _A) and mention.name == "one"
        held = [opening for opening in self.openings if opening.has_size()]
        is_new = is_new and bool(held) and mention.start <= _EARLY
        made = self._new(self.current(), "hole", mention, 1) if is_new else []
        for more in made:
            more.is_asked = more.names_hole = True
        return made[0] if made else None

    def next_in_row(self, name: str) -> SaidOpening | None:
        """Return the next of several holes that are told one by one: "one …, the other …"."""
        is_second = name in _SECOND and len(self.row) == 2
        return self.row.pop(int(is_second)) if self.row else None


def has_mark(sentence: Sentence, tag: str) -> bool:
    """Return whether a sentence has a phrase of one kind."""
    return bool(sentence.marks(tag))
