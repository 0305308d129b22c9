"""Edges as they are said: rounded in front, a bevel all round, the back against a wall."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.text.size_words import written_length
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.errors import QuantityError
from ledgerstone.quantities import Length

_PROFILES: Final = (
    (
        "bevel",
        re.compile(r"\bchamfer\w*|\bbevel\w*|\b(?:an)?gefast\w*|\bfasen?\b", re.IGNORECASE),
    ),
    (
        "round",
        re.compile(
            r"(?<!all )(?<!way )\bround(?:ed)?(?: over| off)?\b|\bradius(?:ed)?\b"
            r"|\bpencil round\b|\bbull[ -]?nosed?\b|\brad\b"
            r"|\babgerundet\w*|\bgerundet\w*|\brundung\b",
            re.IGNORECASE,
        ),
    ),
    (
        "square",
        re.compile(r"\bsquare\b|\beased\b|\bgerade kanten\b|\bscharfkantig\w*", re.IGNORECASE),
    ),
    (
        "wall",
        re.compile(
            r"\bagainst (?:the |a )?(?:walls?|tiles|chimney breast)|\bto the wall\b"
            r"|\bat the wall\b|\ban der wand\b|go(?:es)? (?:up )?(?:to"
            r"|against) (?:the )?(?:walls?|tiles|chimney)",
            re.IGNORECASE,
        ),
    ),
)
_EDGE: Final = re.compile(
    r"\bedges?\b|\bkanten?\b|\bvorderkante\b|\bends?\b|\bsides?\b|\bfront\b|\bback\b"
    r"|\bseiten\b|\bhinten\b|\bwalls?\b",
    re.IGNORECASE,
)
_SIDES: Final = (
    ("front", re.compile(r"\bfront\b|\bvorderkante\b|\bvorn\w*", re.IGNORECASE)),
    ("back", re.compile(r"\bback\b|\brear\b|\bhinten\b|\bhinterkante\b", re.IGNORECASE)),
    (
        "left",
        re.compile(r"\bleft\b|\blinks?\w*|\bboth ends\b|\bends\b|\bbeide enden\b", re.IGNORECASE),
    ),
    (
        "right",
        re.compile(r"\bright\b|\brechts?\w*|\bboth ends\b|\bends\b|\bbeide enden\b", re.IGNORECASE),
    ),
)
_ALL: Final = re.compile(
    r"\ball (?:four |the )?(?:round|edges|sides|around)\b|\bevery edge\b|\bedges (?:are|all)\b"
    r"|\balle kanten\b|\brundum\b|\ball round\b",
    re.IGNORECASE,
)
_VISIBLE: Final = re.compile(
    r"\bvisible\b|\bseen\b|\bshow(?:ing)?\b|\bsichtbar\w*|\bwhat you see\b|\bcan see\b"
    r"|\bübrigen kanten\b",
    re.IGNORECASE,
)
_OTHERS: Final = re.compile(
    r"\bothers?\b|\beverything else\b|\brest\b|\bübrigen\b|\banderen\b", re.IGNORECASE
)
_EXCEPT: Final = re.compile(r"\bexcept\b|\bbut (?:not )?the\b|\baußer\b", re.IGNORECASE)
_NAMED_AFTER: Final = re.compile(r"\s?(?:\w+\s)?(?:edge|kante)\b", re.IGNORECASE)
_NAMED_BEFORE: Final = re.compile(
    r"(?<!from )(?<!from the )(?<!vom )\b(?:edge|kante)\b"
    r"(?:\s(?:detail|profile|finish|style|profil|form|to be|should be|is|be|bitte|soll)\b){0,2}"
    r"\s?[:=,–-]?\s?(?:(?:a|an|lightly|slightly|small|leicht|etwas)\s)?",
    re.IGNORECASE,
)
_SIZE: Final = re.compile(
    r"(?<![\d.,/])(?P<n>\d{1,2}(?:[.,]\d)?|½|¼|\d/[1-9])\s?(?P<u>mm|cm|mil|inch(?:es)?|in\b|\")?",
    re.IGNORECASE,
)
_SENTENCE: Final = re.compile(r"[^.!?;\n]{1,300}")
_MORE: Final = ("front", "left", "right", "back")
_LARGEST_MM: Final = 30.0


@dataclass(frozen=True, slots=True)
class EdgeSaid:
    """One side's edge, with its words."""

    side: str
    profile: str
    size: Length | None
    spans: tuple[TextSpan, ...]
    how: str = "said"


def edges_of(text: str, spans: Sequence[TextSpan]) -> list[EdgeSaid]:
    """Return what is said of edges, by side; of all or of visible ones, for each."""
    said: dict[str, EdgeSaid] = {}
    for start, end in spans:
        walls: dict[str, EdgeSaid] = {}
        shaped: dict[str, EdgeSaid] = {}
        for sentence in _SENTENCE.finditer(text, start, end):
            for clause in _clauses(text, *sentence.span()):
                for edge in _in_clause(text, clause, {**walls, **shaped}):
                    (walls if edge.profile == "wall" else shaped).setdefault(edge.side, edge)
        for side, edge in {**shaped, **walls}.items():
            said.setdefault(side, edge)
    return [said[side] for side in (*_MORE, "rim") if side in said]


def _clauses(text: str, start: int, end: int) -> list[TextSpan]:
    cuts = [start, *(found.start() for found in re.finditer(r",", text[start:end]))]
    bounds = [start, *(start + cut for cut in cuts[1:]), end]
    spans = list(pairwise(bounds))
    merged: list[TextSpan] = []
    for span in spans:
        words = text[slice(*span)]
        alone = any(pattern.search(words) for _, pattern in _PROFILES)
        if merged and not (alone and _EDGE.search(words)):
            merged[-1] = (merged[-1][0], span[1])
        else:
            merged.append(span)
    return merged


def _in_clause(text: str, clause: TextSpan, known: dict[str, EdgeSaid]) -> list[EdgeSaid]:
    words = text[slice(*clause)]
    profile = _profile(words)
    if profile is None:
        return []
    if re.search(
        r"\b(?:basins?|bowls?|sinks?|holes?|table tops?|tables?|slots?|cut-?outs?|openings?|loch"
        r"|löcher|becken|corners?|ecken)\b",
        words,
        re.IGNORECASE,
    ) and not re.search(r"\bedges?\b|kante", words, re.IGNORECASE):
        return []
    if re.search(
        r"\bfrom (?:the )?(?:back|front|left|right)\b|\bvon (?:vorn|hinten|links|rechts)\b",
        words,
        re.IGNORECASE,
    ):
        return []
    name, at = profile
    sides, how = _sides(words, known)
    if not sides and _is_the_edge(words, at):
        sides, how = list(_MORE), "worked-out"
    size = _size(words, at) if name in ("bevel", "round") else None
    return [EdgeSaid(side, name, size, (clause,), how) for side in sides]


def _profile(words: str) -> tuple[str, TextSpan] | None:
    """Return the profile that is named nearest to an edge, and where; None if no edge is named."""
    edges = [found.span() for pattern in (_EDGE, _ALL) for found in pattern.finditer(words)]
    named = [
        (name, found.span())
        for name, pattern in _PROFILES
        for found in pattern.finditer(words)
        if edges
    ]
    return min(named, key=lambda one: min(_apart(one[1], edge) for edge in edges), default=None)


def _apart(one: TextSpan, other: TextSpan) -> int:
    return max(one[0] - other[1], other[0] - one[1], 0)


def _is_the_edge(words: str, at: TextSpan) -> bool:
    """Whether a profile is the edge's, of which no side is named: "rounded edge", "Edge: round"."""
    after = _NAMED_AFTER.match(words, at[1])
    before = next((found for found in _NAMED_BEFORE.finditer(words) if found.end() == at[0]), None)
    return after is not None or before is not None


def sides_named(words: str) -> list[str]:
    """Return the sides of a slab that some words name."""
    return [side for side, pattern in _SIDES if pattern.search(words)]


def _sides(words: str, known: dict[str, EdgeSaid]) -> tuple[list[str], str]:
    excluded = _EXCEPT.search(words)
    named = sides_named(words[: excluded.start()] if excluded else words)
    left_out = [
        side for side, pattern in _SIDES if excluded and pattern.search(words, excluded.end())
    ]
    if _VISIBLE.search(words) or _OTHERS.search(words):
        return [side for side in _MORE if side not in known and side not in left_out], "worked-out"
    if _ALL.search(words) or (
        not named and re.search(r"\bedges\b|\bkanten\b", words, re.IGNORECASE)
    ):
        return [side for side in _MORE if side not in left_out], "worked-out"
    return named, "said"


def _size(words: str, near: TextSpan) -> Length | None:
    sizes = sorted(_SIZE.finditer(words), key=lambda found: abs(found.start() - near[0]))
    for found in sizes:
        try:
            length = written_length(found["n"], found["u"])
        except QuantityError:
            continue
        if 0 < length.mm <= _LARGEST_MM and (found["u"] or abs(found.start() - near[0]) < 12):
            return length
    return None
