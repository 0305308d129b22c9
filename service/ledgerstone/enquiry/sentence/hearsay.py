"""What others say or have: their opinions, their figures, their own slabs."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_SPEAKERS: Final = frozenset({"i", "we", "ich", "wir"})
_FIRMS: Final = word_set(
    "firm firms company companies supplier suppliers competitor shop fabricator quote firma"
    " anbieter"
)
_FIRMS_SAY: Final = word_set("said says quoted offered gave suggested had sagte meinte bot")
_OTHERS: Final = word_set(
    "friend sister brother neighbour neighbor cousin mother mum colleague parents freundin freund"
    " schwester bruder nachbar nachbarin nachbarn kollegin kollege mutter eltern"
)
_HAVE: Final = word_set("has had have got bought hat hatte haben bekommen gekauft")
_SPEAKERS_WANT: Final = word_set("want like need brauche brauchen möchte möchten gern gerne hätte")
_THINKS: Final = word_set(
    "thinks reckons reckoned suggests suggested believes meint glaubt fancies"
)
_TELLS: Final = frozenset({"told", "advised", "recommended"})
_ME: Final = frozenset({"me", "us"})
_THINKS_IN: Final = word_set(
    "think buy sell grew brought raised taught learned learnt reckon count dream denke rechne kaufe"
)
_ASKED: Final = word_set("so please want need make also bitte brauche")
_UNIT_NAMES: Final = word_set(
    "feet inches metres meters millimetres centimetres metric imperial zoll meter metern fuß"
)
_SOMEBODY: Final = word_set("somebody someone else people everybody everyone they he she")
_SAYS: Final = word_set("says sagt recommends")
_BETTER: Final = word_set("better enough safer ample plenty do fine stronger besser reicht")
_OPINION_FAR: Final = 9
_ACCEPTED_FAR: Final = 30  # atoms from a size to where it is taken
_ACCEPTS: Final = (
    *(["with", "that"], ["with", "this"], ["do", "that"], ["with", "it"]),
    *(["i", "agree"], ["we", "agree"], ["hat", "recht"], ["haben", "recht"]),
)
_RIGHT: Final = tuple(
    [who, verb, "right"] for who in ("he", "she", "they") for verb in ("'s", "is", "are", "'re")
)
_SO: Final = word_set("so also daher deshalb hence therefore then dann please bitte")


def is_opinion(sentence: Sentence, measure: Measure) -> bool:
    """Return whether someone else only thinks so: "my husband reckons 25 would do"."""
    return _is_thought(sentence, measure) and not _is_accepted(sentence, measure.at)


def _is_thought(sentence: Sentence, measure: Measure) -> bool:
    words = sentence.words
    for i in range(measure.at - 1, max(0, measure.at - _OPINION_FAR), -1):
        if sentence.atoms[i].word in ("but", "so", "aber", "and", ";", ":"):
            return False
        if words[i] in _THINKS:
            return not _SPEAKERS & set(words[max(0, i - 2) : i])
        if words[i] in _TELLS and words[i + 1 : i + 2] and words[i + 1] in _ME:
            return bool(_SOMEBODY & set(words[max(0, i - 3) : i]))
        if words[i] in _SAYS and _BETTER & set(words[measure.at + 1 : measure.at + 7]):
            return not _SPEAKERS & set(words[max(0, i - 2) : i])
    return False


def takes_opinion(sentence: Sentence) -> bool:
    """Return whether a sentence tells what someone thinks, and takes it: "…, and she's right"."""
    said = (_THINKS | _SAYS | _TELLS) & set(sentence.words)
    sizes = [i for i, atom in enumerate(sentence.atoms) if atom.size is not None] if said else []
    return any(_is_accepted(sentence, at) for at in sizes)


def _is_accepted(sentence: Sentence, at: int) -> bool:
    """Return whether a sentence goes on to take a size that someone thinks.

    "My wife says 950 would be better, so go with that", "…, and she's right", "…, so make it 950".
    """
    words, after = sentence.words, range(at + 1, min(at + _ACCEPTED_FAR, len(sentence.atoms)))
    if any(words[i : i + 2] in _ACCEPTS or words[i : i + 3] in _RIGHT for i in after):
        return True
    again = [i for i in after if _is_same(sentence, i, at)]
    return bool(again) and bool(_SO & set(words[at + 1 : again[0]]))


def _is_same(sentence: Sentence, i: int, at: int) -> bool:
    """Return whether two atoms are one size, as it is written."""
    one, other = sentence.atoms[i].size, sentence.atoms[at].size
    return one is not None and other is not None and one.amount == other.amount


def is_of_others(sentence: Sentence) -> bool:
    """Whether a sentence without sizes tells what someone else has: "my sister has a sink"."""
    words = set(sentence.words)
    if any(atom.kind == "size" for atom in sentence.atoms):
        return False
    return bool(words & _OTHERS and words & _HAVE) and not words & _SPEAKERS_WANT


def is_of_units(sentence: Sentence, sizes: Sequence[Measure]) -> bool:
    """Whether a sentence is about units: "I think in feet, and a plank is two inches thick"."""
    words = sentence.words
    if len(sizes) != 1 or _ASKED & set(words[: sizes[0].at]) or "please" in words:
        return False
    thinks = [i for i, word in enumerate(words) if word in _THINKS_IN]
    return bool(_SPEAKERS & set(words)) and any(
        words[j] in ("in", "on") and words[j + 1] in _UNIT_NAMES
        for i in thinks
        for j in range(i + 1, min(i + _OPINION_FAR, len(words) - 1))
    )


def is_others_figure(sentence: Sentence, measure: Measure) -> bool:
    """Whether a size is what another firm said: "the other firm said 1270 x 460, but it's …"."""
    first = measure.members[0].at if measure.members else measure.at
    led = sentence.words[max(0, first - _OPINION_FAR) : first]
    turned = {"but", "aber", "so", "i", "we"} & set(led)
    return bool(_FIRMS & set(led) and _FIRMS_SAY & set(led)) and not turned
