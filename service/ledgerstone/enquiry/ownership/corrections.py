"""Corrections and short answers: "620 not 600", "66 instead of 60", "40 is fine"."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.ownership.choices import concludes, in_unit, take_choice
from ledgerstone.enquiry.ownership.nearest import ROLE_OF, nearest_size
from ledgerstone.enquiry.scene.said import AGREE_MM, Claim, Claims, SaidOpening, say
from ledgerstone.enquiry.scene.size_assigner import SizeAssigner
from ledgerstone.enquiry.scene.subjects import Subjects, has_mark
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import LABELS, NOUNS, ROLES
from ledgerstone.enquiry.words.word_sets import word_set
from ledgerstone.quantities import MM_PER

_ACCEPTS: Final = word_set(
    "please fine ok okay good yes go suits do great perfect bitte passt gut then thanks nehmen"
    " nehme"
)
_OF_HOLES: Final = {"diameter": "hole", "length": "opening", "width": "opening"}
_KEY_OF: Final = {
    "thick": "thickness",
    "long": "length",
    "deep": "width",
    "wide": "width",
    "dia": "diameter",
}
_TAKES_BACK: Final = word_set(
    "ignore forget scrap scratch disregard typo wrong mistake misread mistyped meant read"
    " amend correct correction oops sorry actually change swap stimmen vergessen"
    " falsch richtig statt korrektur streichen ändern"
)
_SO: Final = frozenset({"so", "also", "daher", "drum"})
_SHOULD_HAVE: Final = frozenset(
    {("should", "be"), ("should", "have"), ("should", "read"), ("hang", "on"), ("hold", "on")}
)
_IS_RIGHT: Final = frozenset(
    (verb, right)
    for verb in ("is", "was", "'s", "ist", "war")
    for right in ("right", "correct", "richtig", "korrekt")
)
_GOES_ON: Final = word_set("it it's is should make use that's read now use es sie richtig das")
_STATES: Final = frozenset({"it", "is", "es", "should", "comes"})
_SHORT: Final = 14
_NO: Final = frozenset({"no", "nein", "nope", "nee"})
_PAIR: Final = 2
_MAKES: Final = frozenset(
    {
        ("make", "that"),
        ("make", "it"),
        ("should", "be"),
        ("should", "read"),
        ("machen", "sie"),
        ("meant", "to"),
        ("it", "'s"),
        ("it", "is"),
        ("is", "now"),
        ("comes", "to"),
        ("es", "sind"),
    }
)


def takes_back(sentence: Sentence) -> bool:
    """Return whether a sentence takes back something that was said."""
    words = sentence.words
    is_so = any(word in _SO and sentence.atoms[i - 1].word == "," for i, word in enumerate(words))
    is_so = is_so or words[0] in _SO
    return is_so or bool(_TAKES_BACK & set(words) or _SHOULD_HAVE & set(pairwise(words)))


class Replacing:
    """Gives a bare size the role of the one that it replaces, or of what was asked."""

    def __init__(self, assigner: SizeAssigner, subjects: Subjects) -> None:
        self.assigner = assigner
        self.subjects = subjects
        self.asked = ""
        self.offered: list[tuple[str, Measure]] = []
        self.corrected: list[SaidOpening] = []  # whose size the current sentence corrects
        self.taken_back: Measure | None = None  # which the sentence before took back

    def note_offer(self, sentence: Sentence, sizes: list[Measure]) -> None:
        """Keep what the workshop offered, until the customer takes it up."""
        for measure in sizes:
            key = _KEY_OF.get(measure.role) or _key_in(sentence) or self.asked
            if not key and self.assigner.is_thin(measure) and measure.of == 1:
                key = "thickness"
            if key:
                self.offered.append((key, measure))
        self.note_question(sentence)

    def note_question(self, sentence: Sentence) -> None:
        """Keep which size a quoted question asks for."""
        if sentence.is_quoted:
            self.asked = _key_in(sentence) or ("" if sentence.ends != "." else self.asked)

    def asks(self, question: Sentence) -> None:
        """Keep which size a question asks for whose answer comes next."""
        self.asked = _key_in(question)

    def settled(self, sentence: Sentence, sizes: list[Measure], rank: tuple[int, int]) -> bool:
        """Settle what a sentence corrects or answers; its sizes are then marked."""
        self.corrected = []
        thick = [measure for key, measure in self.offered if key == "thickness"]
        take_choice(sentence, thick, self.subjects.piece, self.assigner, rank)
        sizes = self._take_back(sentence, sizes)
        done = self._corrects(sentence, sizes, rank) or self.makes(sentence, sizes, rank)
        return self._answers(sentence, sizes, rank) or done

    def _take_back(self, sentence: Sentence, sizes: list[Measure]) -> list[Measure]:
        """Mark the size that is taken back: the one known already, beside one that is not.

        Gives the sizes of the sentence, led by one that the sentence before took back.
        """
        plain = [size for size in sizes if size.of == 1 and not size.side]
        before, self.taken_back = self.taken_back, None
        words = sentence.words
        goes_on = bool(_GOES_ON & set(words[:2])) and len(sentence.atoms) <= _SHORT
        if before is not None and goes_on and len(plain) == len(sizes) == 1:
            return [replace(before, at=-1), *sizes]
        if not takes_back(sentence) or len(plain) != len(sizes):
            return sizes
        if any(size.replaced for size in sizes) and len(plain) > 1:
            return sizes
        again = [one for one in plain if one.role != "radius"]  # "I meant 600 to the edge" stands
        known = [one for one in again if any(self._known(sentence, one, as_written=True))]
        if len(known) == 1 and len(plain) in (1, _PAIR):
            if tuple(words[known[0].at + 1 : known[0].at + 3]) in _IS_RIGHT:
                for one in plain:  # "I said 2500, that's wrong, 2400 is right"
                    one.replaced = one is not known[0]
                return sizes
            known[0].replaced = True
            self.taken_back = known[0] if len(plain) == 1 else None
        return sizes

    def _corrects(self, sentence: Sentence, sizes: list[Measure], rank: tuple[int, int]) -> bool:
        any_done = False
        for old in [size for size in sizes if size.replaced]:
            standing = [size for size in sizes if not size.replaced]
            if old.of > 1:  # "1900 x 900 rather than 1800 x 850": each for its own place
                standing = [one for one in standing if (one.of, one.place) == (old.of, old.place)]
            new = [one for one in standing if one.at < old.at][-1:] or [
                one for one in standing if one.at > old.at
            ][:1]
            if not new or new[0].side:
                continue
            wanted = _KEY_OF.get(new[0].role)
            for claims, key, known in self._known(sentence, old):
                if wanted == "thickness" and key != wanted:
                    continue
                like = new[0] if new[0].size.unit else in_unit(new[0], old, known)
                claim = self.assigner.claim(like, self._role(claims, key), (rank[0], 1))
                if claim is not None:
                    say(claims, key, claim)
                    new[0].role = f"={key}"
                    any_done = True
                    self.corrected += self._owners(claims)
                break
        return any_done

    def _owners(self, claims: Claims) -> list[SaidOpening]:
        """Return the opening whose sizes these are, and those like it."""
        for piece in self.subjects.scene.pieces:
            for opening in piece.openings:
                if opening.claims is claims:
                    return [opening]
        return []

    def makes(self, sentence: Sentence, sizes: list[Measure], rank: tuple[int, int]) -> bool:
        """Take "make that 1050" for whichever size of the piece is nearest to it."""
        words = sentence.words
        starts = [i for i in range(len(words) - 1) if tuple(words[i : i + 2]) in _MAKES]
        starts = starts or [0 for _ in (0,) if words[0] in _NO and not sentence.is_quoted]
        is_put_right = words[0] in _NO or has_mark(sentence, "correct")
        if starts and words[starts[-1]] in _STATES and not is_put_right:
            return False
        piece = self.subjects.piece
        if not starts or piece is None:
            return False
        after = [
            size
            for size in sizes
            if starts[-1] < size.at <= starts[-1] + 4
            and not size.role
            and not size.side
            and size.of == 1
        ]
        if len(after) != 1:
            return False
        if not piece.has_size():
            return False
        near = nearest_size(piece, after[0], self.assigner, (rank[0], 1))
        if near is None:
            return False
        say(piece.claims, *near)
        after[0].role = f"={near[0]}"
        return True

    def _role(self, claims: Claims, key: str) -> str:
        """Give what a size of a slab, or of an opening, may be."""
        if key in _OF_HOLES and self._owners(claims):
            return _OF_HOLES[key]
        return ROLE_OF.get(key, "place")

    def _known(
        self, sentence: Sentence, old: Measure, *, as_written: bool = False
    ) -> Iterable[tuple[Claims, str, Claim]]:
        """Find what has the size that is replaced: of what is named, as it was written first."""
        for is_same in (self._is_as_written, *(() if as_written else (self._is,))):
            for claims in self._groups(sentence):
                pairs = [(key, one) for key, listed in claims.items() for one in listed]
                if not all(any(is_same(two, *pair) for pair in pairs) for two in old.members):
                    continue  # a pair replaces a pair
                known = [pair for pair in pairs if is_same(old, *pair)]
                yield from ((claims, key, one) for key, one in known[:1])

    def _groups(self, sentence: Sentence) -> list[Claims]:
        """Give the sizes of what a sentence may correct: the openings it names, slabs, the rest."""
        pieces = self.subjects.scene.pieces
        current = self.subjects.piece
        order = [
            *([current] if current else []),
            *(piece for piece in pieces if piece is not current),
        ]
        openings = [opening for piece in order for opening in piece.openings]
        names = {tag for _, _, tag in NOUNS.all_in(sentence.words)}
        is_hole = any(tag.startswith(("open:", "hole:")) for tag in names)
        named = [one for one in openings if f"open:{one.what}" in names]
        first = named or (openings if is_hole else [])
        return [
            *(one.claims for one in first),
            *(piece.claims for piece in order),
            *(opening.claims for opening in openings if opening not in first),
        ]

    def _is_as_written(self, measure: Measure, _key: str, claim: Claim) -> bool:
        per = float(MM_PER[measure.size.unit or claim.length.unit])
        return abs(float(measure.size.amount) * per - claim.mm) <= AGREE_MM

    def _is(self, measure: Measure, key: str, claim: Claim) -> bool:
        found = self.assigner.amounts.length(measure, ROLE_OF.get(key, "opening"))
        return found is not None and abs(found[0].mm - claim.mm) <= AGREE_MM

    def _concludes(self, sentence: Sentence, sizes: list[Measure], rank: tuple[int, int]) -> bool:
        """Take the last of several sizes for what was asked: "25, or so I thought, so 30"."""
        last = sizes[-1] if len(sizes) > 1 else None
        if not self.asked or last is None or not concludes(sentence, last):
            return False
        claim = self.assigner.claim(last, ROLE_OF.get(self.asked, "place"), rank)
        if claim is not None:
            say(self.subjects.current().claims, self.asked, claim)
            for one in sizes:
                one.replaced, one.role = one is not last, f"={self.asked}"
        return claim is not None

    def _answers(self, sentence: Sentence, sizes: list[Measure], rank: tuple[int, int]) -> bool:
        alone = [size for size in sizes if not size.role and not size.side and size.of == 1]
        if len(alone) == len(sizes) and self._concludes(sentence, alone, rank):
            return True
        if sentence.is_quoted or len(alone) != 1 or len(sizes) != 1 or len(sentence.atoms) > _SHORT:
            return False
        measure = alone[0]
        key = self.asked if self.asked and len(sentence.atoms) <= 5 else ""
        accepts = bool(_ACCEPTS & set(sentence.words)) or key
        if not accepts:
            return False
        for offered, other in self.offered:
            if other.size.amount == measure.size.amount:
                key = offered
        if not key and self.asked:
            key = self.asked
        if not key:
            return False
        claim = self.assigner.claim(measure, ROLE_OF.get(key, "place"), rank)
        if claim is None:
            return False
        say(self.subjects.current().claims, key, claim)
        measure.role = f"={key}"
        return True


def _key_in(sentence: Sentence) -> str:
    for table in (ROLES, LABELS):
        for _, _, tag in table.all_in(sentence.words):
            if tag in _KEY_OF:
                return _KEY_OF[tag]
    return ""
