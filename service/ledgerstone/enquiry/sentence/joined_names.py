"""Names joined: a hole and what goes into it, a slab and what stands on it."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import is_hole
from ledgerstone.enquiry.words.word_sets import word_set

_SUPPORTS: Final = word_set(
    "frame frames legs leg base bases unit units cabinet cabinets carcass carcasses bracket"
    " brackets support supports trestles trestle stool stools chair chairs pedestal plinth"
    " gestell beine"
)
_AT_BOWL: Final = frozenset({"waste", "drain", "tap", "soap"})
_BOWLS: Final = frozenset({"basin", "sink"})
_FOR: Final = frozenset({"for", "für"})
_NEAR: Final = 3  # words
_LISTS: Final = word_set("and for one the a an und für ein eine einen") | {",", "&", "+"}
_SHORT: Final = frozenset({"dia", "diam", "no", "approx", "ca", "max", "min"})


def joined_names(sentence: Sentence, found: list[Mention]) -> list[Mention]:
    """Make one mention of "tap hole" and "hole for the tap", one of "basin top"."""
    joined: list[Mention] = []
    for mention in _compounds(sentence, found):
        before = joined[-1] if joined else None
        if before is not None and _is_for_bowl(before, mention):
            continue  # "a drain for the bowl"
        if before is None or not _is_one(sentence, before, mention):
            joined.append(mention)
        elif mention.kind == "hole":
            _make_hole(sentence, before, mention)
        elif before.kind == "hole":
            before.kind, before.name, before.names_hole = "open", mention.name, True
            before.is_denied |= mention.is_denied  # "Ausschnitt Kochfeld: keiner"
            if mention.preposition == "of":
                before.end = mention.end  # "the hole of the sink is 480 x 380"
        else:
            joined[-1] = _led_by(before, mention)
    joined = _with_boxes(sentence, joined)
    _count_listed(sentence, joined)
    for mention in joined:
        mention.names_hole = mention.names_hole or mention.kind == "hole"
    return joined


def _count_listed(sentence: Sentence, joined: list[Mention]) -> None:
    """Take each of a list once whose number leads it: "two holes, for the sink and the tap"."""
    for i, mention in enumerate(joined):
        if not (mention.names_hole and mention.kind == "open" and mention.count > 1):
            continue
        listed = joined[i : i + mention.count]
        names = {one.name for one in listed if one.kind == "open" and not one.is_denied}
        between = [
            atom.word
            for one, other in pairwise(listed)
            for atom in sentence.atoms[one.end : other.start]
        ]
        are_listed = all(word in _LISTS or is_hole((word,)) for word in between)
        if len(names) == mention.count and are_listed:
            for one in listed:
                one.count, one.is_plural, one.names_hole = 1, False, True


def _with_boxes(sentence: Sentence, joined: list[Mention]) -> list[Mention]:
    """Make one of "a cable box cut-out": what goes in, and the hole of its box."""
    kept: list[Mention] = []
    for mention in joined:
        before = kept[-1] if kept else None
        is_box = before is not None and before.kind == mention.kind == "open" and mention.names_hole
        if before is not None and is_box and before.end == mention.start and not before.names_hole:
            _make_hole(sentence, before, mention)
        else:
            kept.append(mention)
    return kept


def _is_for_bowl(before: Mention, mention: Mention) -> bool:
    """Return whether a bowl only tells which waste or tap is meant: "a drain for the bowl"."""
    is_small = before.kind == "open" and before.name in _AT_BOWL and not before.is_denied
    is_bowl = mention.kind == "open" and mention.name in _BOWLS and mention.preposition in _FOR
    return is_small and is_bowl and mention.start - before.end <= _NEAR


def _is_one(sentence: Sentence, before: Mention, mention: Mention) -> bool:
    """Return whether two names that follow one another name one thing."""
    kinds = (before.kind, mention.kind)
    if kinds == ("hole", "open"):
        is_led = mention.start == before.end and not mention.determiner
        return is_led or _is_for(sentence, before, mention)  # "single hole faucet"
    if kinds == ("thing", "hole"):  # "socket cut-outs"; not "the window opening"
        is_walls = sentence.words[mention.start].startswith("opening")
        return not before.name and not is_walls and _gap(sentence, before, mention) == 0
    if kinds == ("slab", "open"):  # "a bar sink"
        return mention.start == before.end
    joins = kinds in (("open", "hole"), ("open", "slab"))
    is_labelled = kinds == ("open", "hole") and _is_label(sentence, before, mention)
    return is_labelled or (joins and _gap(sentence, before, mention) == 0)


def _is_label(sentence: Sentence, before: Mention, hole: Mention) -> bool:
    """Return whether a line's label and a size lead to a hole: "Tap: 35 hole"."""
    between = sentence.atoms[before.end : hole.start]
    is_size = [atom.kind for atom in between[1:]] == ["size"]
    return is_size and between[0].word == ":" and before.start <= 1


def _make_hole(sentence: Sentence, before: Mention, hole: Mention) -> None:
    """Take what stands before "hole" or "cut-out" for what goes into it."""
    if before.kind == "thing":
        before.kind, before.name = "open", sentence.words[before.end - 1].removesuffix("s")
    before.end, before.names_hole = hole.end, True
    before.hole_kind, before.is_plural = hole.name, hole.is_plural
    before.is_denied |= hole.is_denied


def _led_by(before: Mention, mention: Mention) -> Mention:
    """Return the second name with the article, the number and the preposition of the first."""
    mention.start, mention.determiner = before.start, before.determiner
    mention.count = before.count or mention.count
    mention.preposition = before.preposition
    mention.is_denied |= before.is_denied
    return mention


def _compounds(sentence: Sentence, found: list[Mention]) -> list[Mention]:
    """Make one of two names that follow one another: "the pizza oven flue", "the table legs"."""
    kept: list[Mention] = []
    for mention in found:
        before = kept[-1] if kept else None
        is_led = before is not None and before.kind == mention.kind == "open"
        if before is not None and is_led and _gap(sentence, before, mention) == 0:
            before.name, before.end = mention.name, mention.end
        elif before is not None and _stands_under(sentence, before, mention):
            kept[-1] = _led_by(before, mention)
        else:
            kept.append(mention)
    return kept


def _stands_under(sentence: Sentence, before: Mention, mention: Mention) -> bool:
    """Return whether a slab's name only tells what is under it: "the counter frame"."""
    is_next = (before.kind, mention.kind) == ("slab", "thing") and mention.start == before.end
    return is_next and bool(_SUPPORTS & set(sentence.words[mention.start : mention.end]))


def _gap(sentence: Sentence, before: Mention, after: Mention) -> int:
    between = sentence.atoms[before.end : after.start]
    return len([atom for atom in between if atom.word not in "-'s"])


def _is_for(sentence: Sentence, hole: Mention, thing: Mention) -> bool:
    """Whether "for" leads from a hole to what goes into it, with nothing else named between."""
    if thing.preposition not in ("for", "für", "of") or thing.is_denied:
        return False
    between = sentence.atoms[hole.end : thing.start]
    if thing.preposition == "of" and len(between) > 2:
        return False
    ends = [i for i, atom in enumerate(between) if atom.word in {".", ";"}]
    return len(between) <= 16 and all(i and between[i - 1].word in _SHORT for i in ends)
