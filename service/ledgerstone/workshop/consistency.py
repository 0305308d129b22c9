"""Checks across a profile's keys, each on the sections that read well.

A check is a generator whose parameters are named for the sections it looks at; it runs when all of
them are there, and yields ``(path, sentence)`` for everything that does not agree.
"""

from __future__ import annotations

import inspect
import re
import zoneinfo
from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import Any

import holidays

from ledgerstone.workshop.lines import Path
from ledgerstone.workshop.records import (
    Area,
    Calendar,
    CastingTable,
    Days,
    EdgeOffered,
    FinishOffered,
    Handling,
    Identity,
    Offer,
    PaletteShade,
    Pigment,
    Recipe,
    Sealer,
    Shaping,
    Steel,
    Tax,
    Web,
)
from ledgerstone.workshop.values import nearest

Found = Iterator[tuple[Path, str]]

MOST_PIGMENT_PERCENT = 15.0  # in all: more than this is a slip of the pen


def inconsistencies(sections: Mapping[str, Any]) -> Found:
    """Yield what does not agree among the sections that are there."""
    for check in _CHECKS:
        needs = inspect.signature(check).parameters
        if all(name in sections for name in needs):
            yield from check(**{name: sections[name] for name in needs})


# --- whose workshop -------------------------------------------------------------------------


def _place_known(workshop: Identity) -> Found:
    countries = holidays.list_supported_countries(include_aliases=True)
    if workshop.country not in countries:
        says = f'no public holidays are known for "{workshop.country}". Write two letters, like GB.'
        yield ("workshop", "country"), says
        return
    regions = tuple(countries[workshop.country])
    if regions and workshop.region not in regions:
        near = nearest(workshop.region.upper(), regions)
        says = f'"{workshop.region}" is not a region of {workshop.country}. {near}'
        yield ("workshop", "region"), says.strip()


def _clock_known(workshop: Identity) -> Found:
    known = zoneinfo.available_timezones()
    if workshop.timezone not in known:
        near = nearest(workshop.timezone, tuple(sorted(known)))
        says = f'"{workshop.timezone}" is no time zone known here. Write it like Europe/London.'
        yield ("workshop", "timezone"), f"{says} {near}".strip()


def _currency_letters(workshop: Identity) -> Found:
    if not re.fullmatch("[A-Z]{3}", workshop.currency):
        yield ("workshop", "currency"), "this is three capital letters, like GBP."


def _email_shape(workshop: Identity) -> Found:
    if not re.fullmatch(r"[^@\s]+@[^@\s]+\.[^@\s.]+", workshop.email):
        yield ("workshop", "email"), "this is one email address, like hello@example.com."


# --- what is made ---------------------------------------------------------------------------


def _table_sides(table: CastingTable) -> Found:
    if table.width_mm > table.length_mm:
        yield ("table", "width_mm"), "this is the shorter side; it is longer than length_mm."


def _thicknesses(shaping: Shaping) -> Found:
    here = shaping.thicknesses_mm
    if shaping.thinnest_mm > shaping.thickest_mm:
        yield ("shaping", "thinnest_mm"), "this is more than thickest_mm."
    if not here:
        yield ("shaping", "thicknesses_mm"), "name at least one thickness."
    if list(here) != sorted(set(here)):
        yield ("shaping", "thicknesses_mm"), "write each thickness once, the thinnest first."
    for i, one in enumerate(here):
        if not shaping.thinnest_mm <= one <= shaping.thickest_mm:
            limits = (
                f"thinnest_mm, {shaping.thinnest_mm:g}, and thickest_mm, {shaping.thickest_mm:g}"
            )
            yield ("shaping", "thicknesses_mm", i), f"{one:g} does not lie between {limits}."


def _strips(shaping: Shaping) -> Found:
    if not shaping.strips:
        yield ("shaping", "strips"), "write at least one [[shaping.strips]]."
    for i, rule in enumerate(shaping.strips):
        if rule.cautions_mm < rule.stops_mm:
            says = f"this is {rule.cautions_mm:g}; it needs at least stops_mm, {rule.stops_mm:g}."
            yield ("shaping", "strips", i, "cautions_mm"), says


def _smallest_side(shaping: Shaping, table: CastingTable) -> Found:
    if shaping.smallest_side_mm > table.width_mm:
        yield ("shaping", "smallest_side_mm"), "this is more than the table's width_mm."


def _recipe_weighs(recipe: Recipe) -> Found:
    paste = recipe.cement_kg_per_m3 * (1 + recipe.water_cement_ratio)
    if paste >= recipe.density_kg_per_m3:
        says = (
            f"cement and its water come to {paste:.0f} kg in a cubic metre, "
            f"and the concrete to {recipe.density_kg_per_m3:.0f}: nothing is left for sand."
        )
        yield ("recipe", "cement_kg_per_m3"), says


def _palette(palette: Sequence[PaletteShade]) -> Found:
    yield from _at_least_one(palette, "palette", "shade")
    yield from _named_once([shade.name for shade in palette], "palette", "name")
    for i, shade in enumerate(palette):
        if not re.fullmatch("#[0-9a-fA-F]{6}", shade.colour):
            yield ("palette", i, "colour"), "this is # and six digits or letters a-f, like #5b5d5a."
        total = sum(dose.percent for dose in shade.doses)
        if total > MOST_PIGMENT_PERCENT:
            says = f"the doses come to {total:g} %; they can be {MOST_PIGMENT_PERCENT:g} % at most."
            yield ("palette", i, "doses"), says


def _pigments_known(palette: Sequence[PaletteShade], pigments: Sequence[Pigment]) -> Found:
    known = tuple(pigment.name for pigment in pigments)
    for i, shade in enumerate(palette):
        here = [dose.pigment for dose in shade.doses]
        for j, name in enumerate(here):
            path: Path = ("palette", i, "doses", j, "pigment")
            if name not in known:
                yield path, f'no [[pigments]] is named "{name}". {nearest(name, known)}'.strip()
            if name in here[:j]:
                yield path, f'"{name}" stands twice in this shade. Write one dose.'


def _pigment_names(pigments: Sequence[Pigment]) -> Found:
    yield from _named_once([pigment.name for pigment in pigments], "pigments", "name")


def _finishes(finishes: Sequence[FinishOffered]) -> Found:
    yield from _at_least_one(finishes, "finishes", "surface")
    yield from _named_once([finish.surface for finish in finishes], "finishes", "surface")


def _sealers(sealers: Sequence[Sealer]) -> Found:
    yield from _at_least_one(sealers, "sealers", "sealer")
    yield from _named_once([sealer.name for sealer in sealers], "sealers", "name")
    for i, sealer in enumerate(sealers):
        if not sealer.places:
            yield ("sealers", i, "places"), "name at least one place where it may be used."
        yield from _each_once(sealer.places, ("sealers", i, "places"))


def _edges(edges: Sequence[EdgeOffered]) -> Found:
    yield from _at_least_one(edges, "edges", "edge profile")
    yield from _named_once([edge.profile for edge in edges], "edges", "profile")
    for i, edge in enumerate(edges):
        if edge.smallest_mm > edge.largest_mm:
            yield ("edges", i, "smallest_mm"), "this is more than largest_mm."


def _shed_by_month(handling: Handling) -> Found:
    months = len(handling.workshop_c)
    if months != 12:
        says = f"write twelve temperatures, January to December; here stand {months}."
        yield ("handling", "workshop_c"), says


def _ways(handling: Handling) -> Found:
    if not handling.ways:
        yield ("handling", "ways"), "write at least one [[handling.ways]]."
    for i, way in enumerate(handling.ways):
        if way.name.casefold() in (other.name.casefold() for other in handling.ways[:i]):
            says = f'"{way.name}" stands twice in [[handling.ways]]. Each stands once.'
            yield ("handling", "ways", i, "name"), says


def _shortest_cover(handling: Handling, days: Days) -> Found:
    if handling.longest_cover_days < days.under_cover:
        says = f"this is less than under_cover in [days], {days.under_cover:g}."
        yield ("handling", "longest_cover_days"), says


def _mesh(steel: Steel) -> Found:
    if steel.mesh_pitch_mm <= steel.mesh_wire_mm:
        yield ("steel", "mesh_pitch_mm"), "this is no more than the wire, mesh_wire_mm."


# --- money, places and days -----------------------------------------------------------------


def _tax_rate(tax: Tax) -> Found:
    if tax.registered and tax.percent == 0:
        says = "a registered workshop has a rate. Write it, or registered = false."
        yield ("tax", "percent"), says


def _step_and_smallest(offer: Offer) -> Found:
    if offer.smallest_order and offer.round_to > offer.smallest_order:
        yield ("offer", "round_to"), "this is more than smallest_order."


def _areas(areas: Sequence[Area]) -> Found:
    yield from _named_once([area.name for area in areas], "areas", "name")
    taken: dict[str, str] = {}
    for i, area in enumerate(areas):
        if (area.pallet, area.own_van, area.fitted) == (None, None, None):
            yield ("areas", i), "this area has no price. Write pallet, own_van or fitted."
        if not area.postcodes:
            yield ("areas", i, "postcodes"), "name at least one beginning of a postcode."
        for j, beginning in enumerate(area.postcodes):
            path: Path = ("areas", i, "postcodes", j)
            if not _is_beginning(beginning):
                yield path, f'"{beginning}" is not like HR, LD1 or LD1-6.'
            elif beginning in taken:
                yield path, f'"{beginning}" already belongs to the area "{taken[beginning]}".'
            taken.setdefault(beginning, area.name)


def _is_beginning(text: str) -> bool:
    """Whether a text is capital letters and digits, perhaps with a rising range of districts."""
    match = re.fullmatch(r"[A-Z]*([0-9]+)-([0-9]+)|[A-Z0-9]+", text)
    if match is None:
        return False
    return match[1] is None or int(match[1]) < int(match[2])


def _working_days(calendar: Calendar) -> Found:
    if not calendar.weekdays:
        yield ("calendar", "weekdays"), "name at least one day on which hands work."
    yield from _each_once(calendar.weekdays, ("calendar", "weekdays"))
    for i, closure in enumerate(calendar.closures):
        if closure.first > closure.last:
            says = f"this is {closure.last}, before the first day, {closure.first}."
            yield ("calendar", "closures", i, "last"), says


def _addresses(web: Web) -> Found:
    for name in ("base_url", "page_url"):
        if not re.fullmatch(r"https?://[^\s/?#]+(/[^\s?#]*)?", getattr(web, name)):
            yield ("web", name), "this is a web address, like https://slabs.example.com."
    for i, origin in enumerate(web.origins):
        if not re.fullmatch(r"https?://[^\s/?#]+", origin):
            says = "this is a site without a path, like https://www.example.com."
            yield ("web", "origins", i), says


# --- what several checks share --------------------------------------------------------------


def _at_least_one(items: Sequence[object], section: str, word: str) -> Found:
    if not items:
        yield (section,), f"write at least one {word}."


def _named_once(names: Sequence[str], section: str, key: str) -> Found:
    seen: set[str] = set()
    for i, name in enumerate(names):
        if name.casefold() in seen:
            yield (section, i, key), f'"{name}" stands twice in [[{section}]]. Each stands once.'
        seen.add(name.casefold())


def _each_once(words: Sequence[str], path: Path) -> Found:
    for i, word in enumerate(words):
        if word in words[:i]:
            yield (*path, i), f'"{word}" stands twice.'


_CHECKS: tuple[Callable[..., Found], ...] = (
    _place_known,
    _clock_known,
    _currency_letters,
    _email_shape,
    _table_sides,
    _thicknesses,
    _strips,
    _smallest_side,
    _recipe_weighs,
    _palette,
    _pigments_known,
    _pigment_names,
    _finishes,
    _sealers,
    _edges,
    _shed_by_month,
    _ways,
    _shortest_cover,
    _mesh,
    _tax_rate,
    _step_and_smallest,
    _areas,
    _working_days,
    _addresses,
)
