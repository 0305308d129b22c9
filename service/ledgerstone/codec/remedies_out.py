"""Remedies, fixes and ways to save as JSON members: each a sentence and a patch."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from ledgerstone.codec.money import write_price
from ledgerstone.codec.patch import write_patch
from ledgerstone.price import Price
from ledgerstone.remedies import Fix, Found, Remedy, Saving


def write_remedies(
    document: dict[str, Any], found: Found | None, finding: str
) -> list[dict[str, Any]]:
    """Write what settles one finding."""
    remedies = found.remedies.get(finding, ()) if found is not None else ()
    return [_remedy(document, remedy) for remedy in remedies]


def _remedy(document: dict[str, Any], remedy: Remedy) -> dict[str, Any]:
    members = _change(document, remedy, remedy.settles)
    if remedy.price is not None:
        members["price"] = write_price(remedy.price)
    return members


def _change(
    document: dict[str, Any], change: Remedy | Saving, settles: Sequence[str]
) -> dict[str, Any]:
    return {
        "says": change.says,
        "patch": write_patch(document, change.state),
        "settles": list(settles),
        "verified": True,
    }


def write_fixes(
    document: dict[str, Any], found: Found | None, stops: Sequence[str]
) -> dict[str, Any]:
    """Write the one change that settles everything, or the nearest, or why there is none."""
    if found is None:
        return {}
    members: dict[str, Any] = {}
    if found.fix_all is not None:
        members["fix_all"] = _fix(document, found.fix_all, stops)
    if found.nearest_makeable is not None:
        members["nearest_makeable"] = _fix(document, found.nearest_makeable, stops)
    if found.why_not is not None:
        members["why_no_fix"] = found.why_not
    return members


def _fix(document: dict[str, Any], fix: Fix, stops: Sequence[str]) -> dict[str, Any]:
    return {
        "says": list(fix.says),
        "patch": write_patch(document, fix.state),
        "settles": list(stops),
        "price": write_price(fix.price),
        "verified": True,
    }


def write_ways(
    document: dict[str, Any], ways: Sequence[Saving], now: Price
) -> list[dict[str, Any]]:
    """Write ways to save, each with what it changes the total by, and what else it saves."""
    return [_way(document, way, now) for way in ways]


def _way(document: dict[str, Any], way: Saving, now: Price) -> dict[str, Any]:
    members = _change(document, way, ()) | {
        "price": write_price(way.price),
        "price_change": {
            "currency": now.currency,
            "amount": f"{way.price.total - now.total:.2f}",
        },
    }
    if way.lighter_kg:
        members["lighter_by_kg"] = way.lighter_kg
    if way.sooner_days:
        members["sooner_by_days"] = way.sooner_days
    return members
