"""Whose a size is by the grammar of its clause: the evidence that it is of another thing, weighed.

Each hint adds to a score; from a bound on, a size is of something that is none of ours, whether a
table knows that thing or not.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.lexicon import LABELS, ROLES
from ledgerstone.enquiry.measures import Measure
from ledgerstone.enquiry.mention import Mention
from ledgerstone.enquiry.noun_phrases import (
    ARTICLES,
    PREPOSITIONS,
    VERBS,
    NounPhrase,
    is_foreign,
    is_noun,
    noun_phrases,
)
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.word_sets import word_set

# Hints, in units of how much one sure hint counts. Chosen, no source: one sure hint is enough
# unless as sure a one speaks against it.
HINTS: Final = MappingProxyType(
    {
        "before a noun": 1.0,  # "a 480 mm foot"
        "after a noun": 1.0,  # "near an urn 400 x 300"
        "subject": 1.0,  # "the urn beside it is 400"
        "there is": 1.0,  # "there is an urn, 400 wide"
        "kept": 1.0,  # "we have an urn, 400 wide"
        "for a noun": 1.0,  # "leave 400 for the urn"
        "a clause on": -0.1,  # ", 400 wide" after any of these
        "asked for": -2.0,  # "we need a lectern 600 x 400"
        "named alone": -0.7,  # a noun without an article: a verb perhaps
        "label": -0.7,  # ", depth: 400"
        "whole slab": -0.4,  # three sizes of which the third is thin
    }
)
ENOUGH: Final = 0.7
_WISHES: Final = word_set(
    "need needs want wants like require requires after looking order make cast quote price produce"
    " supply brauche brauchen suche suchen möchte möchten benötige benötigen hätte hätten wünschen"
    " please bitte love fancy thinking build replaced become"
)
_POLITE: Final = frozenset({"please", "bitte"})
_KEEPS: Final = word_set(
    "have has had got keep keeping kept see own bought got behalten haben hat habe sehen note"
)
_PEOPLE: Final = word_set(
    "friend neighbour neighbor sister brother mother father mum dad son daughter colleague cousin"
    " aunt uncle parents pub café cafe restaurant"
)
_SAYS: Final = word_set(
    "say says said think thinks reckon reckons told suggest suggests believe believes guess measured"
    " sagt meint denke glaube"
)
_MARKS: Final = frozenset({",", ";", ":", "(", ")", "-", "–", "—"})
_TURNS: Final = word_set("but so because while whereas aber weil denn sondern")
_JOINS: Final = word_set("and or und oder")
_EXISTS: Final = (
    ("there", "is"),
    ("there", "'s"),
    ("there", "are"),
    ("there's", ""),
    ("es", "gibt"),
)
_OF: Final = frozenset({"of", "von", "vom", "des", "der"})
_THIN: Final = 130
# What a slab is fitted to or set out from, of which other rules make use.
_REFERENCES: Final = word_set(
    "wall walls alcove gap space recess window windows unit units cabinet cabinets cupboard"
    " cupboards base carcass carcasses carcase nische wand wände fenster unterschrank schrank"
    " schränke unterschränke korpus element spülenschrank blockwork room kitchen küche"
)
_COMPARES: Final = frozenset({"as", "than", "like", "wie", "als"})
_CARRIES: Final = frozenset({",", "("})
_WHICH: Final = frozenset({"that", "which"})
_FAR: Final = 40  # atoms back from a size that are looked at


def of_other_things(
    sentence: Sentence, found: Sequence[Mention], sizes: Sequence[Measure], asked: frozenset[str]
) -> list[Measure]:
    """Return the sizes of a sentence that are of things which are none of ours.

    Parameters
    ----------
    asked
        Nouns that the message asks for, so that they are ours though no table has them.
    """
    if not sizes:
        return []
    phrases = noun_phrases(sentence, found)
    leaders = [size for size in sizes if size.place <= 1]
    gone = [size for size in leaders if _score(sentence, phrases, size, asked) >= ENOUGH]
    of_gone = {id(member) for size in gone for member in (size.members or [size])}
    return [size for size in sizes if id(size) in of_gone]


def asked_for(sentences: Iterable[tuple[Sentence, Sequence[Mention]]]) -> frozenset[str]:
    """Return the unknown nouns that any sentence asks for: "we would like a lectern"."""
    asked = set()
    for sentence, found in sentences:
        for mention in found:
            if (
                mention.kind == "slab"
                and not mention.is_old
                and is_noun(sentence, mention.start - 1)
            ):
                asked.add(sentence.words[mention.start - 1])  # "a lectern top"
        wishes = [i for i, word in enumerate(sentence.words) if word in _WISHES - _POLITE]
        for phrase in noun_phrases(sentence, found):
            near = [i for i in wishes if i < phrase.start <= i + 6]
            if phrase.kind == "unknown" and near and not phrase.preposition:
                asked.add(phrase.noun)
    return frozenset(asked)


def _score(
    sentence: Sentence, phrases: Sequence[NounPhrase], size: Measure, asked: frozenset[str]
) -> float:
    """Weigh the hints that a size, or its group, is of another thing."""
    first = size.members[0].at if size.members else size.at
    last = size.members[-1].at if size.members else size.at
    if any(one.kind == "ours" and one.start == last + 1 for one in phrases):
        return 0.0  # "it needs a 35 mm hole"
    hints = _attributive(sentence, phrases, first, last)
    hints = hints or _governed(sentence, phrases, first, asked)
    if size.side and not hints[:1] == ["before a noun"] and _is_known(sentence, phrases, first):
        return 0.0  # where a window is tells where a hole is
    if not hints:
        return 0.0
    if len(size.members) > 2 and size.members[2].size.amount <= _THIN:
        hints.append("whole slab")
    return sum(HINTS[hint] for hint in hints)


def _is_known(sentence: Sentence, phrases: Sequence[NounPhrase], first: int) -> bool:
    """Return whether a table knows all the things that a clause names before a size."""
    start = _segment(sentence, first)
    return not any(one.kind == "unknown" for one in phrases if start <= one.start < first)


def _attributive(
    sentence: Sentence, phrases: Sequence[NounPhrase], first: int, last: int
) -> list[str]:
    """Give the hint of a thing's name right after a size with an article: "a 480 mm foot"."""
    led = set(sentence.words[max(0, first - 2) : first])
    is_apart = any(first - 2 < one.end <= first for one in phrases)
    after = next((one for one in phrases if one.start > last and one.kind != "size-noun"), None)
    if after is None:
        return []
    between = range(last + 1, after.start)
    is_next = all(sentence.words[i] and not is_noun(sentence, i) for i in between)
    if not is_next or len(between) > 3 or after.article or not is_foreign(after):
        return []
    words = [sentence.words[i] for i in between]
    if is_apart or after.preposition or set(words) & (VERBS | _JOINS | PREPOSITIONS | ARTICLES):
        return []
    return ["before a noun"] if led & ARTICLES and after.noun not in _REFERENCES else []


def _governed(
    sentence: Sentence, phrases: Sequence[NounPhrase], first: int, asked: frozenset[str]
) -> list[str]:
    """Give the hints of the phrase that a size is told of: before it, its subject, its object."""
    since = max(0, first - _FAR)
    before = [one for one in phrases if since <= one.start and one.end <= first]
    segment = _segment(sentence, first)
    own = [one for one in before if one.start >= segment]
    bracket = _bracket(sentence, segment)
    if bracket is not None and all(one.kind == "size-noun" for one in own):
        near = [one for one in before if one.end == bracket]
        is_thing = bool(near) and is_foreign(near[-1])
        return _told(sentence, near[-1], "after a noun", asked) if is_thing else []
    if own and own[-1].end == first and is_foreign(own[-1]) and own[-1].article:
        return _told(sentence, own[-1], "after a noun", asked)
    if any(one.kind == "ours" for one in own) and not _is_subject_foreign(sentence, own, first):
        return []
    hints = _by_verb(sentence, own, segment, first, asked)
    if hints or segment == 0:
        return hints
    part = own[-1] if len(own) == 1 else None
    if part is not None and part.kind == "unknown" and part.end == first:
        near = [one for one in before if one.end == segment - 1]
        is_part = bool(near) and is_foreign(near[-1]) and bool(near[-1].article)
        return ["after a noun", "a clause on"] if is_part else []  # "on a pedestal, foot 600"
    if any(one.kind in ("ours", "unknown", "neutral", "speaker", "thing") for one in own):
        return []
    if (
        _has_verb(sentence, segment, first)
        and not any(one.kind == "pronoun" for one in own)
        and (sentence.words[segment] not in VERBS)
    ):
        return []
    return _carried(sentence, before, own, segment, asked)


def _bracket(sentence: Sentence, segment: int) -> int | None:
    """Return where the bracket stands that a clause of sizes alone is in: "(550 wide, 620 deep)"."""
    for i in range(segment - 1, max(-1, segment - 1 - _FAR), -1):
        atom = sentence.atoms[i]
        if atom.word == "(":
            return i
        if atom.kind == "word" and (ROLES.at(sentence.words, i) or LABELS.at(sentence.words, i)):
            continue
        if atom.kind != "size" and atom.word not in (",", "x", "×", "by", "and"):
            return None
    return None


def _carried(
    sentence: Sentence,
    before: Sequence[NounPhrase],
    own: Sequence[NounPhrase],
    segment: int,
    asked: frozenset[str],
) -> list[str]:
    """Give the hints of the clause that a bare one goes on from: ", 400 wide", "that's 400"."""
    if sentence.atoms[segment - 1].word not in _CARRIES:
        return []
    until = segment - 1
    start = _segment(sentence, until)
    earlier = [one for one in before if start <= one.start < until]
    if not earlier and start > 0 and sentence.atoms[start - 1].word in _CARRIES:
        until = start - 1
        start = _segment(sentence, until)
        earlier = [one for one in before if start <= one.start < until]
    if any(one.kind == "ours" for one in earlier) and not _is_subject_foreign(
        sentence, earlier, until
    ):
        return []
    hints = _by_verb(sentence, earlier, start, until, asked)
    if not hints and own and own[0].noun in _WHICH:
        objects = [one for one in earlier if is_foreign(one) and one.article]
        objects = [one for one in objects if one.preposition not in _COMPARES]
        hints = _told(sentence, objects[0], "after a noun", asked) if objects else []
    if not hints:
        return []
    is_label = any(one.kind == "size-noun" for one in own)
    return [*hints, "a clause on", *(["label"] if is_label else [])]


def _by_verb(
    sentence: Sentence,
    own: Sequence[NounPhrase],
    start: int,
    end: int,
    asked: frozenset[str],
) -> list[str]:
    """Give the hints of a clause by its verb: whose subject or object a foreign thing is."""
    words = sentence.words
    verbs = [i for i in range(start, end) if words[i] in VERBS]
    exists = [
        i for i in range(start, end) if tuple(words[i : i + 2]) in _EXISTS or words[i] == "there's"
    ]
    if exists:
        named = [one for one in own if one.start > exists[0] and not one.preposition]
        if named and is_foreign(named[0]) and named[0].kind != "ours":
            return _told(sentence, named[0], "there is", asked)
        if words[start] in ("between", "zwischen"):
            return ["there is"]
        return []
    speaker = next((one for one in own if one.kind == "speaker"), None)
    if speaker is not None or (own and words[start] in _WISHES | _KEEPS):
        return _by_speaker(sentence, own, start, end, asked)
    subject = _subject(sentence, own)
    if subject is None:
        return _inverted(sentence, own, verbs, asked)
    if _is_theirs(sentence, subject, end):
        return ["kept"]
    if not is_foreign(subject):
        return []
    acts = [i for i in verbs if i >= subject.end]
    if set(words[subject.end : end]) & _SAYS:
        return []
    if acts:
        return _told(sentence, subject, "subject", asked)
    return []


def _is_theirs(sentence: Sentence, subject: NounPhrase, end: int) -> bool:
    """Return whether somebody else has what is told of: "a friend had one 3000 x 900"."""
    words = sentence.words[subject.end : end]
    is_person = subject.noun in _PEOPLE and subject.kind == "neutral"
    return is_person and words[:1] != [] and words[0] in _KEEPS and "one" in words[1:3]


def _by_speaker(
    sentence: Sentence,
    own: Sequence[NounPhrase],
    start: int,
    end: int,
    asked: frozenset[str],
) -> list[str]:
    """Give the hints of what the writer has, or wants: "we're keeping the urn, 400 wide"."""
    said = sentence.words[start:end]
    objects = [one for one in own if one.kind not in ("speaker", "pronoun", "size-noun")]
    if not objects or not is_foreign(objects[0]) or objects[0].preposition:
        return []
    hints = _told(sentence, objects[0], "kept", asked)
    if (set(said) - _POLITE) & _WISHES:
        hints.append("asked for")
    return hints if set(said) & _KEEPS else []


def _inverted(
    sentence: Sentence, own: Sequence[NounPhrase], verbs: Sequence[int], asked: frozenset[str]
) -> list[str]:
    """Give the hint of a subject after its verb: "next to it stands an urn"."""
    after = [
        one for one in own if verbs and one.start > verbs[0] and not one.preposition and one.article
    ]
    leads = [one for one in own if verbs and one.end <= verbs[0] and one.preposition]
    if after and leads and is_foreign(after[0]):
        return _told(sentence, after[0], "subject", asked)
    return []


def _told(sentence: Sentence, phrase: NounPhrase, hint: str, asked: frozenset[str]) -> list[str]:
    """Return a hint of a phrase, with what speaks against it; none of what others go by."""
    if phrase.noun in _REFERENCES:
        return []
    hints = [hint]
    is_named = phrase.kind == "thing"
    if not phrase.article and not is_named and not _is_first(sentence, phrase):
        hints.append("named alone")
    if phrase.noun in asked:
        hints.append("asked for")
    return hints


def _is_first(sentence: Sentence, phrase: NounPhrase) -> bool:
    """Return whether a phrase begins its sentence and a verb comes next: "joists are 400 apart"."""
    return phrase.start == 0 and sentence.words[phrase.end : phrase.end + 1] != [""]


def _subject(sentence: Sentence, phrases: Sequence[NounPhrase]) -> NounPhrase | None:
    """Return what a clause is about: its first noun, or what that is a size or a part of."""
    free = [one for one in phrases if not one.preposition and not _is_loose(sentence, one)]
    if not free:
        return None
    subject = free[0]
    following = next((one for one in phrases if one.start >= subject.end), None)
    is_part = subject.kind in ("size-noun", "ours")
    if following is not None and is_part and following.preposition in _OF:
        if following.start - subject.end <= 2 and is_foreign(following):
            return following  # "the depth of the urn", "the base plate of the pillar"
    return subject


def _is_loose(sentence: Sentence, phrase: NounPhrase) -> bool:
    """Return whether an unknown word without an article may be a greeting: "hiya, the top is"."""
    following = sentence.words[phrase.end : phrase.end + 1]
    is_led = bool(following) and following[0] in VERBS
    return phrase.kind == "unknown" and not phrase.article and not is_led


def _is_subject_foreign(sentence: Sentence, own: Sequence[NounPhrase], first: int) -> bool:
    """Return whether what is ours is only spoken of: "the urn on the worktop is 400 wide"."""
    subject = _subject(sentence, own)
    if subject is None or not is_foreign(subject):
        return False
    later = [one for one in own if one.kind == "ours" and one.start > subject.start]
    joined = [i for i in range(subject.end, first) if sentence.words[i] in _JOINS]
    return all(one.preposition and not any(i < one.start for i in joined) for one in later)


def _segment(sentence: Sentence, at: int) -> int:
    """Return where the clause of an atom begins: after a mark, or a word that turns."""
    for i in range(at - 1, max(-1, at - _FAR), -1):
        atom = sentence.atoms[i]
        if atom.word in _MARKS or atom.word in _TURNS:
            return i + 1
        if atom.word in _JOINS and _starts_clause(sentence, i + 1, at):
            return i + 1
    return 0


def _starts_clause(sentence: Sentence, start: int, until: int) -> bool:
    """Return whether an article and a verb follow "and": "and the top is"."""
    words = sentence.words[start:until]
    leads = words[:1] and (words[0] in ARTICLES or words[0] in ("it", "we", "i"))
    return bool(leads) and bool(VERBS & set(words))


def _has_verb(sentence: Sentence, start: int, end: int) -> bool:
    return any(sentence.words[i] in VERBS for i in range(start, end))
