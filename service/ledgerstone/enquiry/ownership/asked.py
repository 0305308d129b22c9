"""What a message asks for by a name that no table has: wished for, or told with three sizes."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Final

from ledgerstone.enquiry.ownership.owners import POLITE, THIN, WISHES
from ledgerstone.enquiry.ownership.sameness import note_same
from ledgerstone.enquiry.sentence.kinds import CAST
from ledgerstone.enquiry.sentence.measures import Measure, measures_of
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.sentence.mentions import mentions_of
from ledgerstone.enquiry.sentence.noun_phrases import is_foreign, is_noun, noun_phrases
from ledgerstone.enquiry.text.sentences import Sentence

_TRIPLE: Final = 3
_LONG_AND_THICK: Final = frozenset({"long", "thick"})
_WISH_FAR: Final = 6  # words between a wish and what is wished for
_LED: Final = ("", "for", "für")


def named_and_sized(
    sentence: Sentence, asked: frozenset[str]
) -> tuple[list[Mention], list[Measure]]:
    """Return what a sentence names, and its sizes; a thing asked for is a slab by any name."""
    found, sizes = mentions_of(sentence), measures_of(sentence)
    note_same(sentence, sizes)
    for mention in found:
        _take_counted(sentence, mention, sizes)
        is_unknown = mention.kind == "thing" and mention.name in ("unknown", "")
        after = sentence.words[mention.end : mention.end + 1]
        if is_unknown and after and after[0] in asked:
            mention.end += 1  # "a pier cap"
        if is_unknown and sentence.words[mention.end - 1] in asked:
            mention.kind, mention.name = "slab", ""  # "a lectern top": "the lectern is 600 x 450"
    return found, sizes


def _take_counted(sentence: Sentence, mention: Mention, sizes: Sequence[Measure]) -> None:
    """Take so many things with three sizes of their own for slabs: "2 pier caps 450 x 450 x 60"."""
    if mention.kind != "thing" or not mention.count or mention.is_old:
        return
    end = mention.end + is_noun(sentence, mention.end)
    for size in sizes:
        is_triple = size.of == _TRIPLE and size.place == 1 and size.at == end
        if is_triple and size.members[2].size.amount <= THIN:
            mention.kind, mention.name, mention.end = "slab", "", end


def sized_nouns(sentence: Sentence) -> list[str]:
    """Return the noun of which three sizes are told, the third thin: "a plinth 400 x 400 x 60"."""
    found, sizes = mentions_of(sentence), measures_of(sentence)
    if sentence.marks("old") or sentence.marks("gone") or any(one.kind == "slab" for one in found):
        return []
    triple = next((one for one in sizes if one.of == _TRIPLE and one.place == 1), None)
    roles = {one.role for one in sizes if one.of == 1 and not one.side}
    led = [
        one
        for one in sizes
        if one.role == "dia" or (one.role == "long" and roles >= _LONG_AND_THICK)
    ]
    first = triple or next(iter(led), None)
    if first is None or (triple is not None and triple.members[2].size.amount > THIN):
        return []
    if triple is None and "thick" not in roles:
        return []
    phrases = noun_phrases(sentence, found)
    past = triple.members[-1].at + 1 if triple is not None else len(sentence.atoms)
    after = [one for one in phrases if one.start == past and not one.preposition]
    if after and after[0].kind != "size-noun":
        known = [one.end - 1 for one in found if past <= one.start < after[0].end]
        return [sentence.words[known[0]] if known else after[0].noun]  # "a 1 x 1 x 0.1 m plinth"
    before = [one for one in phrases if one.start < first.at]
    named = [one for one in before if is_foreign(one) and one.preposition in _LED]
    return [named[0].noun] if named else []


def _cast_wished(sentence: Sentence, found: Sequence[Mention], wishes: Sequence[int]) -> set[str]:
    """Return the names of what is cast too, where it is wished for: "we'd like 6 steps"."""
    named = set[str]()
    for mention in found:
        word = sentence.words[mention.end - 1]
        near = any(i < mention.start <= i + _WISH_FAR for i in wishes)
        is_new = mention.is_indefinite and not (mention.preposition or mention.is_old)
        is_cast = mention.kind == "thing" and word in CAST
        is_told = mention.kind == "slab" and word in CAST and not mention.is_old
        if is_told or (is_cast and ((near and is_new) or _is_whole(sentence, mention))):
            named |= {word, word.removesuffix("s"), f"{word.removesuffix('s')}s"}
    return named


def _is_whole(sentence: Sentence, mention: Mention) -> bool:
    """Return whether a subject's three sizes are told: "each step is 1100 wide, 350 deep, …"."""
    roles = {size.role for size in measures_of(sentence) if size.of == 1 and not size.side}
    is_subject = mention.start <= 1 and not mention.preposition
    return is_subject and {"deep", "thick"} <= roles and bool(roles & {"wide", "long"})


def asked_for(sentences: Iterable[tuple[Sentence, Sequence[Mention]]]) -> frozenset[str]:
    """Return the unknown nouns that any sentence asks for: "we would like a lectern"."""
    asked = set()
    for sentence, found in sentences:
        for mention in found:
            is_slab = mention.kind == "slab" and not mention.is_old
            if is_slab and is_noun(sentence, mention.start - 1):
                asked.add(sentence.words[mention.start - 1])  # "a lectern top"
        wishes = [i for i, word in enumerate(sentence.words) if word in WISHES - POLITE]
        asked |= _cast_wished(sentence, found, wishes)
        for phrase in noun_phrases(sentence, found) if wishes else ():
            near = any(i < phrase.start <= i + _WISH_FAR for i in wishes)
            if phrase.kind == "unknown" and near and not phrase.preposition:
                asked.add(phrase.noun)
    return frozenset(asked)
