"""Whose a size is by the grammar of its clause: the evidence that it is of another thing, weighed.

Each hint adds to a score; from a bound on, a size is of something that is none of ours, whether a
table knows that thing or not.
"""

from __future__ import annotations

from collections.abc import Sequence
from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.ownership.chosen import settles_on
from ledgerstone.enquiry.sentence.clauses import (
    FAR,
    JOINS,
    bracket_of,
    clause_start,
    goes_there,
    has_verb,
    is_about_thing,
    subject_of,
    without_maker,
)
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.sentence.noun_phrases import (
    ARTICLES,
    PREPOSITIONS,
    VERBS,
    NounPhrase,
    is_foreign,
    is_noun,
    noun_phrases,
)
from ledgerstone.enquiry.text.sentences import Atom, Sentence
from ledgerstone.enquiry.words.word_sets import word_set

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
WISHES: Final = word_set(
    "need needs want wants like require requires after looking order make cast quote price produce"
    " supply brauche brauchen suche suchen möchte möchten benötige benötigen hätte hätten wünschen"
    " please bitte love fancy thinking build replaced become"
)
POLITE: Final = frozenset({"please", "bitte"})
_KEEPS: Final = word_set(
    "have has had got keep keeping kept see own bought got behalten haben hat habe sehen note"
)
_PEOPLE: Final = word_set(
    "friend neighbour neighbor sister brother mother father mum dad son daughter colleague cousin"
    " aunt uncle parents pub café cafe restaurant"
)
_SAYS: Final = word_set(
    "say says said think thinks reckon reckons told tells suggest suggests believe believes guess"
    " advises recommends measured sagt meint denke glaube"
)
_WANTS: Final = frozenset({"wants", "wanted", "will", "möchte"})
_EXISTS: Final = frozenset(
    {("there", "is"), ("there", "'s"), ("there", "are"), ("es", "gibt"), ("there", "was")}
)
THIN: Final = 130
# What a slab is fitted to or set out from, of which other rules make use.
_REFERENCES: Final = word_set(
    "wall walls alcove gap space recess window windows unit units cabinet cabinets cupboard"
    " cupboards base carcass carcasses carcase nische wand wände fenster unterschrank schrank"
    " schränke unterschränke korpus element spülenschrank blockwork room kitchen küche"
)
_ROOMS: Final = word_set("room kitchen küche alcove recess gap space nische window fenster")
_COMPARES: Final = frozenset({"as", "than", "like", "wie", "als"})
_CARRIES: Final = frozenset({",", "("})
_TELLS: Final = WISHES | _KEEPS
_BARRED: Final = VERBS | JOINS | PREPOSITIONS | ARTICLES
_PAIR: Final = 2
_SO: Final = frozenset({"so", "hence", "therefore", "daher", "also", "deshalb"})
_OURS: Final = frozenset({"ours", "mine", "unsere"})
_BECAUSE: Final = frozenset({"because", "weil", "denn"})
_MUST: Final = word_set("must should needs need has will ought muss soll sollte")
_NEXT: Final = 3  # words between a size and the name that it stands before
_WHICH: Final = frozenset({"that", "which"})


def without_other_things(
    sentence: Sentence, found: Sequence[Mention], sizes: list[Measure], asked: frozenset[str]
) -> list[Measure]:
    """Leave out the sizes of a sentence that are of things which are none of ours.

    Parameters
    ----------
    asked
        Nouns that the message asks for, so that they are ours though no table has them.
    """
    if not sizes:
        return sizes
    owners = _Owners(sentence, noun_phrases(sentence, found), asked)
    gone = [size for size in sizes if size.place <= 1 and owners.score(size) >= ENOUGH]
    of_gone = {id(member) for size in gone for member in (size.members or [size])}
    return [size for size in sizes if id(size) not in of_gone]


def _before_bracket(atoms: Sequence[Atom], at: int) -> int:
    """Return where a bracket that ends right before an atom begins; else the atom."""
    if not at or atoms[at - 1].word != ")":
        return at
    opened = (i for i in range(at - 2, max(-1, at - FAR), -1) if atoms[i].word == "(")
    return next(opened, at)


class _Owners:
    """Weighs of each size of a sentence whether it is of another thing."""

    def __init__(
        self, sentence: Sentence, phrases: Sequence[NounPhrase], asked: frozenset[str]
    ) -> None:
        self.sentence, self.phrases, self.asked = sentence, phrases, asked
        self.is_group = False

    def score(self, size: Measure) -> float:
        """Weigh the hints that a size, or its group, is of another thing."""
        self.is_group = size.of > 1
        if settles_on(self.sentence.words, size):
            return 0.0  # "both alcoves are 912, so call it 905"
        first = size.members[0].at if size.members else size.at
        last = size.members[-1].at if size.members else size.at
        ours = [one for one in self.phrases if one.kind == "ours"]
        if any(one.start == last + 1 + (one.preposition == "of") for one in ours):
            return 0.0  # "it needs a 35 mm hole", "so 2.7 m of worktop"
        hints = self._attributive(first, last)
        if not hints:
            is_placed = bool(size.side) and self._is_known(first)
            hints = [] if is_placed else self._governed(first)  # a window's place is a hole's
        if len(size.members) > _PAIR and size.members[2].size.amount <= THIN:
            hints = [*hints, "whole slab"]
        return sum(HINTS[hint] for hint in hints)

    def _is_known(self, first: int) -> bool:
        """Return whether a table knows all the things that a clause names before a size."""
        start = clause_start(self.sentence, first)
        return not any(one.kind == "unknown" for one in self.phrases if start <= one.start < first)

    def _attributive(self, first: int, last: int) -> list[str]:
        """Give the hint of a thing's name after a size with an article: "a 480 mm foot"."""
        words = self.sentence.words
        after = next((p for p in self.phrases if p.start > last and p.kind != "size-noun"), None)
        if after is None or after.article or after.preposition or not is_foreign(after):
            return []
        between = words[last + 1 : after.start]
        is_next = len(between) <= _NEXT and all(between) and not _BARRED & set(between)
        is_next = is_next and not any(
            is_noun(self.sentence, i) for i in range(last + 1, after.start)
        )
        is_led = bool(set(words[max(0, first - 2) : first]) & ARTICLES)
        is_led = is_led and not any(first - 2 < one.end <= first for one in self.phrases)
        return ["before a noun"] if is_next and is_led and after.noun not in _REFERENCES else []

    def _governed(self, first: int) -> list[str]:
        """Give the hints of the phrase that a size is told of: before it, subject or object."""
        start = clause_start(self.sentence, first)
        before = [one for one in self.phrases if first - FAR <= one.start and one.end <= first]
        own = [one for one in before if one.start >= start]
        bracket = bracket_of(self.sentence, start)
        if bracket is not None and all(one.kind == "size-noun" for one in own):
            return self._told([one for one in before if one.end == bracket][-1:], "after a noun")
        is_next = bool(own) and is_foreign(own[-1])
        led = self.sentence.words[first - 1 : first]
        is_next = is_next and own[-1].end == first - (led in (["of"], ["von"]))
        if is_next and (own[-1].article or self._is_first(own[-1])):
            if goes_there(self.sentence, own[-1].start):
                return []
            return self._told(own[-1:], "after a noun")
        is_ours = any(one.kind == "ours" for one in own)
        if is_ours and not is_about_thing(self.sentence, own, first):
            return []
        hints = self._by_verb(own, start, first)
        return hints or ([] if start == 0 else self._carried(before, own, start, first))

    def _carried(
        self, before: Sequence[NounPhrase], own: Sequence[NounPhrase], start: int, first: int
    ) -> list[str]:
        """Give the hints of the clause that a bare one goes on from: ", 400 wide"."""
        if len(own) == 1 and own[0].kind == "unknown" and own[0].end == first:
            near = [one for one in before if one.end == start - 1 and one.article]
            since = clause_start(self.sentence, start - 1)
            earlier = [one for one in before if since <= one.start < start]
            is_ours = any(one.kind == "ours" for one in earlier)
            told = [] if is_ours else self._told(near[-1:], "after a noun")
            return [*told, "a clause on"] if told else []  # "on a pedestal, foot 600"
        if any(one.noun in _OURS for one in own):
            return []  # "my sister's is 30 thick, ours should be 40"
        is_bare = all(one.kind in ("size-noun", "pronoun") for one in own)
        is_led = self.sentence.words[start] in VERBS or any(one.kind == "pronoun" for one in own)
        led, said = self.sentence.words[max(0, start - 1) : start], self.sentence.words[start:first]
        if set(led) & _SO and set(said) & _MUST:
            return []  # "the frame is made for …, so it must be 40 thick": the slab must
        if not is_bare or (has_verb(self.sentence, start, first) and not is_led):
            return []
        told = self._earlier(before, own, start)
        is_label = any(one.kind == "size-noun" for one in own)
        return [*told, "a clause on", *(["label"] if is_label else [])] if told else []

    def _earlier(
        self, before: Sequence[NounPhrase], own: Sequence[NounPhrase], start: int
    ) -> list[str]:
        """Give the hints of the clause before, or of the one before a clause of sizes alone."""
        atoms, earlier = self.sentence.atoms, list[NounPhrase]()
        until = start
        for _ in range(2):
            if start == 0 or atoms[start - 1].word not in _CARRIES:
                return []
            until = _before_bracket(atoms, start - 1)
            start = clause_start(self.sentence, until)
            if set(self.sentence.words[max(0, start - 1) : start]) & _BECAUSE:
                return []  # "700 deep because the children sit at it, 50 thick"
            earlier = [one for one in before if start <= one.start < until]
            if earlier:
                break
        is_ours = any(one.kind == "ours" for one in earlier)
        if is_ours and not is_about_thing(self.sentence, earlier, until):
            return []
        hints = self._by_verb(earlier, start, until)
        if hints or not own or own[0].noun not in _WHICH:
            return hints
        named = [one for one in earlier if one.article and one.preposition not in _COMPARES]
        return self._told([one for one in named if is_foreign(one)][:1], "after a noun")

    def _by_verb(self, own: Sequence[NounPhrase], start: int, end: int) -> list[str]:
        """Give the hints of a clause by its verb: whose subject or object a foreign thing is."""
        words, own = self.sentence.words, without_maker(own)
        exists = [i for i in range(start, end) if self._exists(i)]
        if exists:
            named = [one for one in own if one.start > exists[0] and not one.preposition]
            between = ["there is"] if words[start] in ("between", "zwischen") else []
            return self._told(named[:1], "there is") or between
        if any(one.kind == "speaker" for one in own) or (own and words[start] in _TELLS):
            return self._by_speaker(own, start, end)
        subject = subject_of(self.sentence, own)
        if subject is None:
            return self._inverted(own, start, end)
        said = words[subject.end : end]
        has = subject.noun in _PEOPLE and bool(said[:1]) and said[0] in _KEEPS
        if has and (len(said) == 1 or {"one", "theirs", "his", "hers"} & set(said[1:3])):
            return ["kept"]  # "a friend had one 3000 x 900", "my neighbour had 30 thick"
        is_name = not subject.article and bool(_WANTS & set(said[:1]))  # "Ann wants it 40"
        acts = bool(VERBS & set(said)) and not (_SAYS & set(said) or is_name)
        return self._told([subject], "subject") if acts else []

    def _exists(self, i: int) -> bool:
        words = self.sentence.words
        return words[i] == "there's" or tuple(words[i : i + 2]) in _EXISTS

    def _by_speaker(self, own: Sequence[NounPhrase], start: int, end: int) -> list[str]:
        """Give the hints of what the writer has, or wants: "we're keeping the urn, 400 wide"."""
        said = set(self.sentence.words[start:end])
        objects = [one for one in own if one.kind not in ("speaker", "pronoun", "size-noun")]
        if not said & _KEEPS or said & {"told", "tells"} or not objects or objects[0].preposition:
            return []  # "the sweep told us it has to be 1050 wide"
        hints = self._told(objects[:1], "kept")
        return [*hints, "asked for"] if hints and (said - POLITE) & WISHES else hints

    def _inverted(self, own: Sequence[NounPhrase], start: int, end: int) -> list[str]:
        """Give the hint of a subject after its verb: "next to it stands an urn"."""
        verb = next((i for i in range(start, end) if self.sentence.words[i] in VERBS), None)
        if verb is None or not any(one.end <= verb and one.preposition for one in own):
            return []
        after = [one for one in own if one.start > verb and not one.preposition and one.article]
        return self._told(after[:1], "subject")

    def _told(self, phrases: Sequence[NounPhrase], hint: str) -> list[str]:
        """Return a hint of a phrase, with what speaks against it; none where it is of ours."""
        if not phrases or not is_foreign(phrases[0]):
            return []
        phrase = phrases[0]
        is_own = self.is_group and hint == "subject" and phrase.noun in _ROOMS
        if phrase.noun in _REFERENCES and not is_own:
            return []  # "the room is 14 ft by 11 ft" has its own two sizes
        is_named = phrase.kind == "thing" or bool(phrase.article) or self._is_first(phrase)
        against = [] if is_named else ["named alone"]
        return [hint, *against, *(["asked for"] if phrase.noun in self.asked else [])]

    def _is_first(self, phrase: NounPhrase) -> bool:
        """Return whether a phrase begins its sentence or a bracket: "(loading bed 2.5 x 1.3 m)"."""
        if phrase.start and self.sentence.atoms[phrase.start - 1].word == "(":
            return self.is_group
        return phrase.start == 0 and self.sentence.words[phrase.end : phrase.end + 1] != [""]
