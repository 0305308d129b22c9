"""What the workshop asked by number or offered by letter, and what is answered to it so."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.focus import Focus
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mentions import mentions_of
from ledgerstone.enquiry.text.sentences import Sentence

_LABEL: Final = re.compile(r"[\W_]*(\d{1,2}|[a-h])[\W_]*", re.IGNORECASE)
_NO: Final = frozenset({"no", "nope", "none", "nein", "keine", "keins"})
_OPTION: Final = frozenset({"option", "version", "variante"})
_HOLES: Final = ("open", "hole")


def label_of(sentence: Sentence) -> str:
    """Return the number or the letter with which a sentence's item is marked."""
    found = _LABEL.fullmatch(sentence.item)
    return found[1].lower() if found is not None else ""


class LabelledQuestions:
    """Keeps the workshop's numbered questions and lettered offers."""

    def __init__(self) -> None:
        self._questions: dict[str, list[Sentence]] = {}
        self.offers: dict[str, tuple[Sentence, int]] = {}
        self._lettered = set[str]()  # the letters of all offers, those passed over too

    def note(self, sentence: Sentence, sizes: Sequence[Measure], layer: int) -> bool:
        """Keep what the workshop asked or offered; return whether it is one of several offers."""
        label = label_of(sentence)
        if label.isdigit() and sentence.item:
            self._questions.setdefault(label, []).append(sentence)
        if label.isalpha() and any(atom.kind == "size" for atom in sentence.atoms):
            self._lettered.add(label)
        is_offer = label.isalpha() and any(size.of > 1 for size in sizes)
        if is_offer:
            self.offers[label] = sentence, layer
        return is_offer

    def chosen(self, sentence: Sentence) -> Sentence | None:
        """Return the offer whose letter a sentence names: "the bigger one please, B"."""
        is_sized = any(atom.kind == "size" for atom in sentence.atoms)
        is_led = _first_letter(sentence) in self.offers  # "B please, but 40 thick"
        if not self.offers or len(self._lettered) < 2 or (is_sized and not is_led):
            return None
        named = [label for label in self.offers if label in sentence.words and label != "a"]
        named = named or [
            "a" for i, word in enumerate(sentence.words) if word == "a" and _stands(sentence, i)
        ]
        return self.offers[named[0]][0] if len(named) == 1 else None

    def question(self, sentence: Sentence) -> list[Sentence]:
        """Return the question that a sentence answers by its number."""
        return self._questions.get(label_of(sentence), []) if sentence.item else []


def _first_letter(sentence: Sentence) -> str:
    """Return the letter with which a sentence begins: "B please", "Option C but"."""
    words = sentence.words[1:] if sentence.words[0] in _OPTION else sentence.words
    return words[0] if words[:1] and words[0] != "a" else ""


def _stands(sentence: Sentence, i: int) -> bool:
    atoms = sentence.atoms
    return i + 1 == len(atoms) or atoms[i + 1].kind == "mark"


def take_up_question(focus: Focus, question: Sentence, answer: Sentence) -> None:
    """Put in hand the openings that a question asks about; a plain no refuses them."""
    is_no = answer.words[0] in _NO and not any(atom.kind == "size" for atom in answer.atoms)
    if is_no:
        names = {one.name for one in mentions_of(question) if one.kind in _HOLES}
        for opening in focus.subjects.current().openings if names else ():
            opening.is_refused |= opening.what in names and not opening.has_size()
        return
    for mention in mentions_of(question):
        if mention.kind in _HOLES and not mention.is_denied and focus.subjects.piece is not None:
            openings = focus.subjects.openings_for(mention, question)
            for opening in openings:
                opening.is_asked = True
            if openings:
                focus.subjects.openings, focus.on_opening = openings, True
