"""The strips that a workshop leaves between an opening and what is beside it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from ledgerstone.shape import MIN_GRAINS_ACROSS
from ledgerstone.workshop.records import StripRule, Workshop

TAP_CLEAR_MM: Final = 10.0  # beyond the rule, behind a basin; common practice, no source


def clear_mm(
    rules: Sequence[StripRule], longer_mm: float, rim: str, *, least: bool = False
) -> float:
    """Return the strip that the workshop leaves beside an opening: the first rule that fits.

    Parameters
    ----------
    least
        Whether the narrowest that is made at all, else what is made without care.
    """
    for rule in rules:
        if longer_mm <= rule.opening_up_to_mm and rule.rim in ("any", rim):
            return rule.stops_mm if least else rule.cautions_mm
    return 0.0


def room_for_tap_mm(rules: Sequence[StripRule], tap_mm: float) -> float:
    """Return the depth that a tap takes behind a basin: its hole and the strips about it."""
    return tap_mm + 2 * clear_mm(rules, tap_mm, "shown") + TAP_CLEAR_MM


def strips_of(workshop: Workshop) -> tuple[StripRule, ...]:
    """Return the workshop's strips, each wide enough for the recipe's grains to get through.

    Source
    ------
    ACI 318-19 26.4.2.1(a)(5): a grain is at most a fifth of the narrowest place.
    """
    grains_mm = MIN_GRAINS_ACROSS * workshop.recipe.largest_aggregate_mm
    return tuple(
        replace(
            rule,
            stops_mm=max(rule.stops_mm, grains_mm),
            cautions_mm=max(rule.cautions_mm, grains_mm),
        )
        for rule in workshop.shaping.strips
    )
