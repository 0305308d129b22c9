"""Holes that are made by others, or at another place than in a slab: no cut-outs of ours."""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_SINKS: Final = frozenset(["sink", "basin", "itself", "spüle", "becken"])
_ELSEWHERE: Final = word_set(
    "elsewhere anderswo woanders separate separately apart freestanding portable freistehend"
)
_BY_OTHERS: Final = word_set(
    "others ourselves myself meself themselves bauseits site plumber selbst"
)
_OTHER_PLACES: Final = frozenset((lead, "the", "other") for lead in ("at", "on", "in")) | frozenset(
    {("auf", "der", "anderen"), ("an", "der", "anderen")}
)
_STANDS: Final = word_set("stands sits rests stand sit")
_LINES: Final = word_set("centreline centerline centrelines centerlines line axis axes achse")
_CLAUSE: Final = 9
_NEAR: Final = 5
_OWN: Final = 3  # atoms between a tap and the size of its hole
_RIMMED: Final = frozenset({"sink", "basin", "hob"})
_BESIDE: Final = frozenset({"beside", "alongside", "daneben"})
_TOPS: Final = word_set("top worktop slab counter countertop")


def _at_other(after: list[str]) -> bool:
    """Return whether words tell that something is at another end: "is at the other end"."""
    if not {"is", "are", "goes", "sits", "ist", "sitzt"} & set(after[:2]):
        return False
    return any(tuple(after[i : i + 3]) in _OTHER_PLACES for i in range(len(after)))


def _is_beside(after: list[str]) -> bool:
    """Return whether a sink stands beside the slab: "is going beside it, not in it"."""
    for i in range(min(_NEAR, len(after))):
        is_next = after[i] in _BESIDE or after[i : i + 2] == ["next", "to"]
        led = after[i + 1 : i + 4]
        if is_next and ("it" in led[:2] or _TOPS & set(led)):
            return True
    return any(after[i : i + 2] == ["not", "in"] for i in range(len(after)))


def _is_on_its_own(mention: Mention, after: list[str]) -> bool:
    """Return whether something needs no hole: "the pizza oven stands on its own slab"."""
    is_own = ("its", "own") in set(pairwise(after)) and not mention.names_hole
    return is_own and bool(_STANDS & set(after))


def is_fitted_elsewhere(mention: Mention, sentence: Sentence) -> bool:
    """Return whether a hole is made by others or elsewhere; a tap's in the wall or on the sink."""
    words = sentence.words
    after = words[mention.end : mention.end + _CLAUSE]
    apart = [i for i, word in enumerate(after) if word == "apart" and i and not after[i - 1]]
    elsewhere = _ELSEWHERE - ({"apart"} if apart else set())  # "two taps 200 apart"
    if elsewhere & set(after) or _BY_OTHERS & set(after) or _at_other(after):
        return True
    if _is_on_its_own(mention, after) or (mention.name in _RIMMED and _is_beside(after)):
        return True
    already = {"already", "itself", "schon", "bereits"} & set(words)
    if mention.name == "tap" and already and _SINKS & set(words[mention.end : mention.end + 5]):
        return True
    sized = sentence.atoms[mention.end : mention.end + _OWN]  # "Tap 35 dia, on the centreline"
    if mention.name != "tap" or mention.names_hole or any(one.kind == "size" for one in sized):
        return False
    has_size = any(atom.kind == "size" for atom in sentence.atoms)
    if {"wall", "wand"} & set(words) and not has_size:
        return True
    on_sink = any(
        word in ("in", "on", "auf", "im", "into")
        and _SINKS & set(after[i + 1 : i + 3])
        and not _LINES & set(after[i + 1 : i + 5])
        for i, word in enumerate(after)
    )
    return on_sink or (mention.start > 0 and words[mention.start - 1] in ("wall", "mounted"))
