"""Corrections and short answers: "620 not 600", "66 instead of 60", "40 is fine"."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from ledgerstone.enquiry.lexicon import LABELS, ROLES
from ledgerstone.enquiry.measures import Measure
from ledgerstone.enquiry.scene import AGREE_MM, Claim, Claims, say
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.settle import Settler
from ledgerstone.enquiry.subjects import Subjects

_ACCEPTS: Final = frozenset("please fine ok okay good yes go suits do great perfect bitte passt gut then thanks".split())
_ROLE_OF: Final = {
    "length": "length",
    "width": "deep",
    "thickness": "thickness",
    "diameter": "diameter",
    "back_depth": "deep",
    "side_depth": "deep",
    "left": "place",
    "right": "place",
    "front": "place",
    "back": "place",
}
_KEY_OF: Final = {"thick": "thickness", "long": "length", "deep": "width", "wide": "width", "dia": "diameter"}
_SHORT: Final = 14


class Replacing:
    """Gives a bare size the role of the one that it replaces, or of what was asked."""

    def __init__(self, settler: Settler, subjects: Subjects) -> None:
        self.settler = settler
        self.subjects = subjects
        self.asked = ""
        self.offered: list[tuple[str, Measure]] = []

    def note_offer(self, sentence: Sentence, sizes: list[Measure]) -> None:
        """Keep what the workshop offered, until the customer takes it up."""
        for measure in sizes:
            key = _KEY_OF.get(measure.role) or _key_in(sentence)
            if key:
                self.offered.append((key, measure))
        self.note_question(sentence)

    def note_question(self, sentence: Sentence) -> None:
        """Keep which size a quoted question asks for."""
        if sentence.is_quoted:
            self.asked = _key_in(sentence) or ("" if sentence.ends != "." else self.asked)

    def settled(self, sentence: Sentence, sizes: list[Measure], rank: tuple[int, int]) -> bool:
        """Settle what a sentence corrects or answers; its sizes are then marked."""
        done = self._corrects(sentence, sizes, rank)
        return self._answers(sentence, sizes, rank) or done

    def _corrects(self, sentence: Sentence, sizes: list[Measure], rank: tuple[int, int]) -> bool:
        any_done = False
        for old in [one for one in sizes if one.replaced]:
            new = [one for one in sizes if not one.replaced and one.at < old.at][-1:] or [
                one for one in sizes if not one.replaced and one.at > old.at
            ][:1]
            if not new or new[0].side:
                continue
            for claims, key in self._known(old):
                claim = self.settler.claim(new[0], _ROLE_OF.get(key, "place"), sentence, (rank[0], 1))
                if claim is not None:
                    say(claims, key, claim)
                    new[0].role = f"={key}"
                    any_done = True
                break
        return any_done

    def _known(self, old: Measure) -> Iterable[tuple[Claims, str]]:
        """Find what has the size that is replaced, the pieces' own first."""
        pieces = self.subjects.scene.pieces
        current = self.subjects.piece
        order = [*([current] if current else []), *(one for one in pieces if one is not current)]
        groups: list[Claims] = [piece.claims for piece in order]
        groups += [opening.claims for piece in order for opening in piece.openings]
        for claims in groups:
            for key, listed in claims.items():
                if any(self._is(old, key, claim) for claim in listed):
                    yield claims, key

    def _is(self, measure: Measure, key: str, claim: Claim) -> bool:
        same = measure.size.unit or claim.length.unit
        found = self.settler.amounts.length(measure, _ROLE_OF.get(key, "opening"))
        if found is not None and abs(found[0].mm - claim.mm) <= AGREE_MM:
            return True
        per = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "in": 25.4, "ft": 304.8}[same]
        return abs(float(measure.size.amount) * per - claim.mm) <= AGREE_MM

    def _answers(self, sentence: Sentence, sizes: list[Measure], rank: tuple[int, int]) -> bool:
        alone = [one for one in sizes if not one.role and not one.side and one.of == 1]
        if sentence.is_quoted or len(alone) != 1 or len(sizes) != 1 or len(sentence.atoms) > _SHORT:
            return False
        measure = alone[0]
        key = self.asked if self.asked and len(sentence.atoms) <= 5 else ""
        accepts = bool(_ACCEPTS & set(sentence.words)) or key
        if not accepts or self.subjects.piece is None:
            return False
        for offered, other in self.offered:
            if other.size.amount == measure.size.amount:
                key = offered
        if not key and self.asked:
            key = self.asked
        if not key:
            return False
        claim = self.settler.claim(measure, _ROLE_OF.get(key, "place"), sentence, rank)
        if claim is None:
            return False
        say(self.subjects.piece.claims, key, claim)
        measure.role = f"={key}"
        return True


def _key_in(sentence: Sentence) -> str:
    for table in (ROLES, LABELS):
        for _, _, tag in table.all_in(sentence.words):
            if tag in _KEY_OF:
                return _KEY_OF[tag]
    return ""
