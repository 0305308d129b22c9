"""Names joined: a hole and what goes into it, a slab and what stands on it."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.mention import Mention
from ledgerstone.enquiry.sentences import Sentence

_SHORT: Final = frozenset({"dia", "diam", "no", "approx", "ca", "max", "min"})


def joined_names(sentence: Sentence, found: list[Mention]) -> list[Mention]:
    """Make one mention of "tap hole" and "hole for the tap", one of "basin top"."""
    joined: list[Mention] = []
    for mention in _compounds(sentence, found):
        before = joined[-1] if joined else None
        if before is None:
            joined.append(mention)
        elif (
            before.kind == "slab"
            and mention.kind == "open"
            and _gap(sentence, before, mention) == 0
            and mention.start == before.end
        ):
            mention.start, mention.determiner = before.start, before.determiner
            mention.preposition, mention.count = before.preposition, before.count
            mention.is_denied = before.is_denied
            joined[-1] = mention  # "a bar sink"
        elif (
            mention.kind == "hole"
            and before.kind == "open"
            and _gap(sentence, before, mention) == 0
        ):
            before.end, before.names_hole = mention.end, True
            before.hole_kind = mention.name
            before.is_plural = mention.is_plural
        elif (
            mention.kind == "hole"
            and before.kind == "thing"
            and before.name == ""
            and _gap(sentence, before, mention) == 0
            and not _is_fireplace(sentence, mention)
        ):
            before.name = sentence.words[before.end - 1].removesuffix("s")
            before.kind, before.end, before.names_hole = "open", mention.end, True
            before.hole_kind, before.is_plural = mention.name, mention.is_plural
        elif (
            before.kind == "hole" and mention.kind == "open" and _is_for(sentence, before, mention)
        ):
            before.kind, before.name, before.names_hole = "open", mention.name, True
            before.hole_kind = before.hole_kind or ""
        elif (
            mention.kind == "slab"
            and before.kind == "open"
            and _gap(sentence, before, mention) == 0
        ):
            mention.start = before.start
            mention.determiner, mention.count = before.determiner, before.count or mention.count
            mention.preposition = before.preposition
            joined[-1] = mention
        else:
            joined.append(mention)
    for mention in joined:
        mention.names_hole = mention.names_hole or mention.kind == "hole"
    return joined


def _is_fireplace(sentence: Sentence, hole: Mention) -> bool:
    """Whether an opening is a wall's: "the window opening", "the fireplace opening"."""
    return sentence.words[hole.start].startswith("opening")


def _compounds(sentence: Sentence, found: list[Mention]) -> list[Mention]:
    """Make one of two openings' names that follow one another: "the pizza oven flue"."""
    kept: list[Mention] = []
    for mention in found:
        before = kept[-1] if kept else None
        is_led = before is not None and before.kind == mention.kind == "open"
        if before is not None and is_led and _gap(sentence, before, mention) == 0:
            before.name, before.end = mention.name, mention.end
        else:
            kept.append(mention)
    return kept


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
