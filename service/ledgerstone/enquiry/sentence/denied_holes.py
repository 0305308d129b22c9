"""Openings that the words after their name deny: "Tap hole: none", "eine Armatur gibt es nicht"."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_NEEDS_DE: Final = word_set("brauche brauchen brauchts gibt benötige benötigen möchte will")
_NOT_EN: Final = word_set("not no isn't aren't never")
_COLONS: Final = frozenset({":", "=", "-", "–", "—", "…", "...", "|"})
_NONE: Final = word_set("none no nil nope n/a keine keines keiner keins nein entfällt nicht not")
_TAKEN_OUT: Final = frozenset(
    {("we", "keep"), ("i", "keep"), ("wir", "behalten"), ("is", "staying"), ("stays", "where")}
    | {("come", "out"), ("can", "go"), ("no", "longer"), ("gets", "dropped"), ("fällt", "weg")}
    | {("take", "away"), ("leave", "out"), ("leave", "away"), ("leave", "off"), ("wir", "weg")}
)
_LEAVES_OUT: Final = frozenset(
    {("leave", "out"), ("leave", "off"), ("take", "out"), ("we", "drop"), ("i", "drop")}
)
_ENDS: Final = frozenset({",", ":", "(", "."})
_LED: Final = 6
_CLAUSE: Final = 8
_LABEL: Final = 12  # atoms


def is_denied_after(sentence: Sentence, mention: Mention) -> bool:
    """Whether an opening is denied by the end of its clause: "eine Armatur gibt es nicht"."""
    if mention.kind not in ("open", "hole"):
        return False
    for i in range(mention.end, min(mention.end + _CLAUSE, len(sentence.atoms))):
        atom, words = sentence.atoms[i], sentence.words[mention.end : i + 1]
        if atom.kind == "size" or atom.word in ",;:(":
            return False
        if atom.word in ("nicht", "entfällt"):
            return atom.word == "entfällt" or bool(_NEEDS_DE & set(words))
        if atom.word in ("need", "needed", "required", "necessary", "wanted"):
            return bool(_NOT_EN & set(words))
    return False


def _is_listed_none(sentence: Sentence, mention: Mention) -> bool:
    """Return whether a label lists what there is none of: "Sinks, hobs, taps: none"."""
    label = [atom.word for atom in sentence.atoms[:_LABEL]]
    colon = label.index(":") if ":" in label else 0
    is_label = sentence.starts_line and mention.end <= colon and all(label[:colon])
    return is_label and sentence.words[colon + 1 : colon + 2] != [] and label[colon + 1] in _NONE


def _is_led_out(sentence: Sentence, mention: Mention) -> bool:
    """Return whether what leads to an opening drops it: "leave out the 35 mm tap hole"."""
    led = [atom.word for atom in sentence.atoms[max(0, mention.start - _LED) : mention.start]]
    ends = [i for i, word in enumerate(led) if word in _ENDS]
    led = led[ends[-1] + 1 :] if ends else led
    return any(pair in _LEAVES_OUT for pair in pairwise(led))


def is_taken_out(sentence: Sentence, mention: Mention) -> bool:
    """Return whether an opening is none: "Tap hole: none", "the tap hole can come out"."""
    if mention.kind not in ("open", "hole"):
        return False
    if _is_listed_none(sentence, mention):
        return True
    if _is_led_out(sentence, mention):
        return True
    led = [atom.word for atom in sentence.atoms[mention.end : mention.end + _CLAUSE]]
    if led[:1] and led[0] in _COLONS:
        return bool(led[1:]) and led[1] in _NONE
    if led[:1] and led[0] in _NONE and len(led) <= 2:
        return True  # "Tap hole no."
    stop = next((i for i, word in enumerate(led) if word in _ENDS), len(led))
    return any(pair in _TAKEN_OUT for pair in pairwise(led[:stop]))
