"""The sizes of what a slab replaces, which the new one has in common with it or differs from."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.ownership.differences import difference, in_its_unit, key_of_word
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.said import Claim, say

_KEYS: Final = {"long": "length", "deep": "width", "wide": "width", "thick": "thickness"}
_LEAST: Final = 2  # no difference is half of what it is of, or more: chosen, no source


def size_of_old(focus: Focus, key: str) -> Claim | None:
    """Return a size of what is there now, as it was told last: by its name, or by its place."""
    told = [one for one in focus.old if not one.side and not one.replaced]
    named = [one for one in told if _KEYS.get(one.role) == key and one.of == 1]
    group = next((one.members for one in told if one.of > 1), [])
    longest = sorted(group[:2], key=lambda one: -one.size.amount)
    by_place = dict(zip(("length", "width"), longest, strict=False))
    by_place |= dict(zip(("thickness",), group[2:], strict=False))
    like = named[0] if len(named) == 1 else by_place.get(key)
    role = "deep" if key == "width" else key
    return focus.assigner.claim(like, role, (0, 0)) if like is not None else None


def alter_old(focus: Focus, parsed: ParsedSentence) -> None:
    """Add what a slab is to be more than the one it replaces: "100 longer than that, 40 thick"."""
    if not focus.old or focus.is_l():
        return
    for measure in parsed.sizes:
        found = None if measure.side or measure.of > 1 else difference(parsed.sentence, measure)
        key = key_of_word(found[0]) if found is not None else ""
        piece = focus.subjects.current()
        old = size_of_old(focus, key) if key else None
        if found is None or old is None or piece.claims.get(key):
            continue
        by_mm = in_its_unit(measure, old.length)
        if 0 < _LEAST * by_mm < old.mm:
            spans = (*old.spans, (measure.size.start, measure.size.end))
            length = old.length.in_unit(old.mm + found[1] * by_mm)
            say(piece.claims, key, Claim(length, spans, parsed.rank, old.order, how="worked-out"))
            measure.replaced = True
