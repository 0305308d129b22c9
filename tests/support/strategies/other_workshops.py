"""The demonstration workshop and others unlike it: each trips checks that it never does."""

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from typing import Final

from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile
from ledgerstone.workshop.records import Closure, Van

Other = Callable[[Workshop], Workshop]


def _matching(of: Workshop) -> Workshop:
    return replace(of, shade=replace(of.shade, matching=True))


def _pale(of: Workshop) -> Workshop:
    return replace(of, shade=replace(of.shade, most_percent=3.0))


def _small_mixer(of: Workshop) -> Workshop:
    return replace(of, mixer=replace(of.mixer, working_l=5.0))


def _plain_steel(of: Workshop) -> Workshop:
    return replace(of, steel=replace(of.steel, material="plain"))


def _short_pallet(of: Workshop) -> Workshop:
    """A carrier that takes little, and hands that are few."""
    small = replace(of.lifting.pallets[0], overhang_mm=0.0, most_kg=150.0)
    van = Van(length_mm=1500.0, most_kg=120.0)
    lifting = replace(of.lifting, pallets=(small,), tail_lift_kg=100.0, van=van, most_people=2)
    return replace(of, lifting=lifting)


def _two_people(of: Workshop) -> Workshop:
    ways = tuple(way for way in of.handling.ways if way.most_kg <= 110.0)
    return replace(of, handling=replace(of.handling, ways=ways))


def _bold(of: Workshop) -> Workshop:
    """Strips of any width are cast here, whatever comes of them."""
    strips = tuple(replace(rule, stops_mm=0.0, cautions_mm=0.0) for rule in of.shaping.strips)
    return replace(of, shaping=replace(of.shaping, strips=strips))


def _closed(of: Workshop) -> Workshop:
    away = Closure(first=date(2026, 1, 1), last=date(2199, 12, 31), why="away")
    return replace(of, calendar=replace(of.calendar, closures=(away,)))


OTHERS: Final[dict[str, Other]] = {
    "usual": lambda of: of,
    "matching": _matching,
    "pale": _pale,
    "small mixer": _small_mixer,
    "plain steel": _plain_steel,
    "short pallet": _short_pallet,
    "two people": _two_people,
    "bold": _bold,
    "closed": _closed,
}
USUAL: Final = load_profile(DEMONSTRATION)
WORKSHOPS: Final[dict[str, Workshop]] = {name: make(USUAL) for name, make in OTHERS.items()}
