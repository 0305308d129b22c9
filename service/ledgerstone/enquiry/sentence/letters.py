"""Single letters that say what a size measures: "2200 (L)", "750 W x 490 D"."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.sentence.measure import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import LABELS
from ledgerstone.enquiry.words.word_sets import word_set

CONNECTORS: Final = word_set("x × * by mal auf on at for per ✕ ╳ ⨯")
_PAIR: Final = 2
_LONGEST_NAME: Final = 2  # words; "l x w x t" names all three at once
_LEADS: Final = frozenset({"for", "(", "as", "für", "als"})
_AFTER_NAMES: Final = frozenset({":", ")", "=", "in", "mm", "cm"})
_JOINS: Final = frozenset({"and", "und", "x", "×", "by", "/", ","})
_NAMED: Final = frozenset({"long", "wide", "deep", "thick", "high"})
SINGLE: Final = word_set("l w d t h b th")


def name_group(sentence: Sentence, measure: Measure, used: set[int]) -> bool:
    """Set each size of a group to the name that follows in the same order, if they do.

    "1800 x 560 for length and depth", "1800 x 600 x 40 (L x D x T)"
    """
    if measure.of < _PAIR or measure.place != measure.of:
        return False
    atoms = sentence.atoms
    at = measure.at + 1
    if at >= len(atoms) or atoms[at].word not in _LEADS:
        return False
    first = at
    roles, at = _names_from(sentence, at + 1, measure.of)
    if len(roles) < measure.of:
        return False
    for member, role in zip(measure.members, roles, strict=True):
        member.role = role
    measure.cue = (first, at)
    used.update(range(first, at))
    return True


def name_group_before(sentence: Sentence, measure: Measure, used: set[int]) -> bool:
    """Set each size of a group to the name before it: "B/T 50/35", "Size (L x W x depth): …"."""
    until = measure.at
    while until and sentence.atoms[until - 1].word in _AFTER_NAMES:
        until -= 1
    start = until - 2 * measure.of + 1
    if measure.of < _PAIR or measure.place != 1 or start < 0:
        return False
    roles, end = _names_from(sentence, start, measure.of)
    is_label = until < measure.at and sentence.atoms[until].word in (":", ")")
    is_label = is_label or all(word in SINGLE for word in sentence.words[start : measure.at : 2])
    if len(roles) < measure.of or end != until or not is_label or len(set(roles)) < len(roles):
        return False
    for member, role in zip(measure.members, roles, strict=True):
        member.role = role
    measure.cue = (start, end)
    used.update(range(start, end))
    return True


def _names_from(sentence: Sentence, at: int, count: int) -> tuple[list[str], int]:
    """Read so many names of sizes with a mark or an "and" between; give them and where they end."""
    words, atoms = sentence.words, sentence.atoms
    roles: list[str] = []
    letters = set[str]()
    while at < len(atoms) and len(roles) < count:
        said = words[at : at + 1] if words[at] in SINGLE else words[at:]
        label = LABELS.at(said, 0) if words[at] else None
        if label is None or label[0] not in _NAMED or label[1] > _LONGEST_NAME:
            return [], at
        letters.add(words[at])
        roles.append("deep" if words[at] == "t" and "b" in letters - {"l"} else label[0])
        at += label[1]
        if len(roles) < count:
            if at >= len(atoms) or atoms[at].word not in _JOINS:
                return [], at
            at += 1
    if letters >= {"t", "h"} and "deep" not in roles:  # "L x T x H": Länge, Tiefe, Höhe
        roles = [{"thick": "deep", "high": "thick"}.get(role, role) for role in roles]
    return roles, at


def _letters_lead(sentence: Sentence) -> bool:
    """Return whether letters stand before their sizes: "W 900 D 460"."""
    first = next(i for i, atom in enumerate(sentence.atoms) if atom.kind == "size")
    return any(atom.word in SINGLE for atom in sentence.atoms[max(0, first - 2) : first])


def letter_after(sentence: Sentence, i: int) -> str:
    """Return the role of a single letter after a size: "2200 (L)", "750 W x 490 D"."""
    atoms = sentence.atoms
    bracketed = i + 2 < len(atoms) and atoms[i].word == "(" and atoms[i + 2].word == ")"
    at = i + 1 if bracketed else i
    if at >= len(atoms) or atoms[at].word not in SINGLE:
        return ""
    follows = atoms[at + 1].word if at + 1 < len(atoms) else ","
    is_size = at + 1 < len(atoms) and atoms[at + 1].kind == "size"
    is_size = is_size and not _letters_lead(sentence)
    if not bracketed and not is_size and follows not in {",", ".", ";", ")"} | CONNECTORS:
        return ""
    found = LABELS.at(sentence.words, at)
    return found[0] if found is not None else ""
