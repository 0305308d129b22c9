"""Remedies, fixes and ways to save as members of an answer: each a sentence and a patch."""

from __future__ import annotations

from collections.abc import Sequence

from ledgerstone.codec.patch import write_patch
from ledgerstone.codec.price_out import price_members
from ledgerstone.json_types import Members
from ledgerstone.price import Price
from ledgerstone.remedies import Fix, Found, Remedy, Saving
from ledgerstone.wording import Speech


def remedy_members(
    document: Members, found: Found | None, finding: str, speech: Speech
) -> list[Members]:
    """Return the remedies of one finding."""
    remedies = found.remedies.get(finding, ()) if found is not None else ()
    return [
        {
            **_change(document, remedy, remedy.settles, speech),
            "price": _priced(remedy.price, speech),
        }
        for remedy in remedies
    ]


def _priced(price: Price | None, speech: Speech) -> Members | None:
    return None if price is None else price_members(price, speech)


def _change(
    document: Members, change: Remedy | Saving | Fix, settles: Sequence[str], speech: Speech
) -> Members:
    parts = [speech.say_all(part) for part in change.sentences]
    return {
        "says": parts if isinstance(change, Fix) else " ".join(parts),
        "patch": write_patch(document, change.state),
        "settles": settles,
        "verified": True,
    }


def fix_members(
    document: Members, found: Found | None, stops: Sequence[str], speech: Speech
) -> Members:
    """Return the one change that settles everything, or the nearest, or why there is none."""
    if found is None:
        return {}
    return {
        "fix_all": _fix(document, found.fix_all, stops, speech),
        "nearest_makeable": _fix(document, found.nearest_makeable, stops, speech),
        "why_no_fix": None if found.why_not is None else speech.say(found.why_not),
    }


def _fix(
    document: Members, fix: Fix | None, stops: Sequence[str], speech: Speech
) -> Members | None:
    if fix is None:
        return None
    return _change(document, fix, stops, speech) | {"price": price_members(fix.price, speech)}


def saving_members(
    document: Members, ways: Sequence[Saving], now: Price, speech: Speech
) -> list[Members]:
    """Return ways to save, each with its change of the total, and its saved mass and days."""
    return [_saving(document, way, now, speech) for way in ways]


def _saving(document: Members, way: Saving, now: Price, speech: Speech) -> Members:
    return _change(document, way, (), speech) | {
        "price": price_members(way.price, speech),
        "price_change": {"currency": now.currency, "amount": way.price.total - now.total},
        "lighter_by_kg": way.lighter_kg or None,
        "sooner_by_days": way.sooner_days or None,
    }
