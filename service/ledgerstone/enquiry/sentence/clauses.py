"""A clause of a sentence: where it begins, what it is about, what it is told of."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.sentence.noun_phrases import (
    ARTICLES,
    PREPOSITIONS,
    VERBS,
    NounPhrase,
    is_foreign,
)
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import LABELS, ROLES
from ledgerstone.enquiry.words.word_sets import word_set

FAR: Final = 40  # atoms back from a size that are looked at
JOINS: Final = word_set("and or und oder")
_MARKS: Final = frozenset({",", ";", ":", "(", ")", "-", "–", "—"})
_TURNS: Final = word_set("but so because while whereas aber weil denn sondern")
_GOES: Final = frozenset({"go", "fit", "sit", "stand", "run"})
_LED: Final = 6  # atoms before a thing: "to go in behind the"
_OF: Final = frozenset({"of", "von", "vom", "des", "der"})
_LEADS: Final = ARTICLES | {"it", "we", "i"}
_IN_BRACKET: Final = frozenset({",", "x", "×", "by", "and"})


def goes_there(sentence: Sentence, start: int) -> bool:
    """Whether a thing only tells where what is asked for goes: "a panel to go behind the oven"."""
    led = sentence.words[max(0, start - _LED) : start]
    goes = [i for i, word in enumerate(led[:-1]) if word in _GOES and led[i - 1 : i] == ["to"]]
    is_placed = bool(goes) and led[goes[-1] + 1] in PREPOSITIONS
    roles = {tag for _, _, tag in ROLES.all_in(sentence.words[start : start + FAR])}
    return is_placed and len(roles & {"wide", "long", "deep", "high", "thick"}) > 1


def clause_start(sentence: Sentence, at: int) -> int:
    """Return where the clause of an atom begins: after a mark, or a word that turns."""
    for i in range(at - 1, max(-1, at - FAR), -1):
        atom = sentence.atoms[i]
        if atom.word in _MARKS or atom.word in _TURNS:
            return i + 1
        if atom.word in JOINS and _starts_clause(sentence, i + 1, at):
            return i + 1
    return 0


def _starts_clause(sentence: Sentence, start: int, until: int) -> bool:
    """Return whether an article and a verb follow "and": "and the top is"."""
    words = sentence.words[start:until]
    return bool(words) and words[0] in _LEADS and bool(VERBS & set(words))


def bracket_of(sentence: Sentence, start: int) -> int | None:
    """Return where the bracket is that holds a clause of sizes alone: "(550 wide, 620 deep)"."""
    for i in range(start - 1, max(-1, start - 1 - FAR), -1):
        atom = sentence.atoms[i]
        if atom.word == "(":
            return i
        names = ROLES.at(sentence.words, i) or LABELS.at(sentence.words, i)
        if atom.kind == "size" or atom.word in _IN_BRACKET or (atom.kind == "word" and names):
            continue
        return None
    return None


def has_verb(sentence: Sentence, start: int, end: int) -> bool:
    """Return whether a run of words has a verb."""
    return any(word in VERBS for word in sentence.words[start:end])


def subject_of(sentence: Sentence, phrases: Sequence[NounPhrase]) -> NounPhrase | None:
    """Return what a clause is about: its first noun, or what that is a size or a part of."""
    free = [one for one in phrases if not one.preposition and not _is_loose(sentence, one)]
    if not free:
        return None
    subject = free[0]
    whole = next((one for one in phrases if one.start >= subject.end), None)
    if whole is not None and whole.kind == "ours" and subject.kind == "unknown":
        is_near = whole.preposition in _OF and whole.start - subject.end <= 2
        return whole if is_near else subject  # "the axis of the hole"
    if whole is None or subject.kind not in ("size-noun", "ours") or not is_foreign(whole):
        return subject
    is_near = whole.preposition in _OF and whole.start - subject.end <= 2
    return whole if is_near else subject  # "the depth of the urn"


def _is_loose(sentence: Sentence, phrase: NounPhrase) -> bool:
    """Return whether an unknown word without an article may be a greeting: "hiya, the top is"."""
    following = sentence.words[phrase.end : phrase.end + 1]
    is_led = bool(following) and following[0] in VERBS
    return phrase.kind == "unknown" and not phrase.article and not is_led


def is_about_thing(sentence: Sentence, phrases: Sequence[NounPhrase], until: int) -> bool:
    """Return whether what is ours is only spoken of: "the urn on the worktop is 400 wide"."""
    subject = subject_of(sentence, phrases)
    if subject is None or not is_foreign(subject):
        return False
    later = [one for one in phrases if one.kind == "ours" and one.start > subject.start]
    joined = [i for i in range(subject.end, until) if sentence.words[i] in JOINS]
    return all(one.preposition and not any(i < one.start for i in joined) for one in later)


def without_maker(phrases: Sequence[NounPhrase]) -> Sequence[NounPhrase]:
    """Return a clause's phrases without who made the thing it is about: "the stand I made"."""
    is_made = len(phrases) > 1 and phrases[1].kind == "speaker" and bool(phrases[0].article)
    is_made = is_made and is_foreign(phrases[0]) and not phrases[0].preposition
    is_next = is_made and phrases[1].start == phrases[0].end
    return [phrases[0], *phrases[2:]] if is_next else phrases
