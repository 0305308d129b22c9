"""The legs of an L that only a side or a wall names: "hinten 2800", "the arm on the right"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.scene.focus import ParsedSentence
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.words.lexicon import FROM, SIDES
from ledgerstone.enquiry.words.word_sets import word_set

_LED: Final = 3
_LEG_FAR: Final = 5  # atoms between "one way" and "the other"
_ONE_WAY: Final = (["one", "way"], ["one", "direction"], ["one", "side"], ["on", "one"])
_LEG_OF: Final = MappingProxyType({"back": "back", "left": "side", "right": "side"})
_ALONG: Final = frozenset({"along", "down", "on", "against", "an", "entlang"})
_WALLS: Final = (["wall"], ["side"], ["end"], ["hand"], ["wand"], ["seite"])
_MARKS: Final = frozenset({":", "=", "-", "–"})
_OVERALL: Final = word_set(", : wall side overall total outside gesamt außen wand seite ( )")
_ARMS: Final = word_set("arm leg run part wing bit section")


def with_legs(parsed: ParsedSentence) -> list[Mention]:
    """Return what a sentence names with an L's legs, of whose walls none is a thing besides."""
    legs = legs_by_side(parsed)
    walls = {i for leg in legs for i in range(leg.start, leg.end + 1)}
    kept = [one for one in parsed.found if one.kind != "thing" or one.start not in walls]
    return sorted([*kept, *legs], key=lambda one: one.start)


def legs_by_side(parsed: ParsedSentence) -> list[Mention]:
    """Return the legs of an L that only a side or a wall names: "hinten 2800, rechts 1900".

    A side names a leg where a size follows it at once and no distance is counted from it, and
    where a wall or an end of it is run along: "along the left-hand wall".
    """
    words, atoms = parsed.sentence.words, parsed.sentence.atoms
    taken = {
        i
        for mention in parsed.found
        for i in range(mention.start, mention.end)
        if mention.kind == "leg"
    }
    taken |= {i for size in parsed.sizes if size.cue for i in range(*size.cue)}
    holes = [mention.start for mention in parsed.found if mention.kind in ("open", "hole")]
    made: list[Mention] = []
    for i in range(len(words)):
        side = SIDES.at(words, i) if words[i] and i not in taken else None
        if side is None or (holes and holes[0] < i) or side[0] not in _LEG_OF:
            continue
        end = i + side[1]
        words_before = words[max(0, i - _LED) : i]
        is_along = bool(_ALONG & set(words_before)) and words[end : end + 1] in _WALLS
        follows = _past_label(parsed, i, end)
        is_sized = follows < len(atoms) and atoms[follows].kind == "size"
        is_from = any(word and FROM.at(words_before, k) for k, word in enumerate(words_before))
        if is_along or (is_sized and not is_from):
            made.append(Mention(i, end + int(is_along), "leg", _LEG_OF[side[0]]))
        elif words[max(0, i - 3) : i] and _is_arm(words, i):
            made.append(Mention(i - 1, end, "leg", _LEG_OF[side[0]]))  # "the arm on the right"
    return made + _one_and_other(parsed)


def _past_label(parsed: ParsedSentence, start: int, end: int) -> int:
    """Return where a side's own size may stand: past a mark, or "Left wall, overall:"."""
    atoms = parsed.sentence.atoms
    ahead = range(end, min(end + _LEG_FAR, len(atoms)))
    first = next((j for j in ahead if atoms[j].word not in _OVERALL), None)
    if start == 0 and first is not None and atoms[first].kind == "size":
        return first
    return end + int(end < len(atoms) and atoms[end].word in _MARKS)


def _is_arm(words: Sequence[str], i: int) -> bool:
    """Return whether a side tells which arm is meant: "the arm on the right", "the part at the"."""
    before = words[max(0, i - _LED) : i]
    led = before[:-1] if before[-1:] == ["the"] else before
    return bool(led[-1:]) and led[-1] in ("on", "at", "to") and bool(_ARMS & set(led[-2:-1]))


def _one_and_other(parsed: ParsedSentence) -> list[Mention]:
    """Return the legs of an L told as "2200 one way, 1500 the other": the longer is the back."""
    sizes = [size for size in parsed.sizes if size.of == 1 and not (size.role or size.side)]
    words = parsed.sentence.words
    for first, second in pairwise(sizes):
        after = words[first.at + 1 : first.at + 3]
        other = words[second.at + 1 : second.at + 3]
        if after in _ONE_WAY and other == ["the", "other"] and second.at <= first.at + _LEG_FAR:
            names = (
                ("back", "side") if first.size.amount >= second.size.amount else ("side", "back")
            )
            return [
                Mention(size.at + 1, size.at + 3, "leg", name)
                for size, name in zip((first, second), names, strict=True)
            ]
    return []
