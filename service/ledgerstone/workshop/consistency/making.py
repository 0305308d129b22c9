"""Checks across a profile's keys on what is made, and how."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from decimal import Decimal

from ledgerstone.json_types import KeyPath
from ledgerstone.message import Message, Percent
from ledgerstone.workshop.consistency.shared import FoundFaults, at_least_one, each_once, named_once
from ledgerstone.workshop.keys.value_keys import KeyNumber
from ledgerstone.workshop.keys.values import nearest
from ledgerstone.workshop.records import (
    CastingTable,
    Colouring,
    DaySettings,
    EdgeOffered,
    FinishOffered,
    HandlingSettings,
    PaletteShade,
    Pigment,
    Sealer,
    Shaping,
    Steel,
)

MAX_PIGMENT_PERCENT = 15.0  # in all: more than this is a slip of the pen
# Ultramarine fades in lime and Portland cement (Color Res. Appl. 32(1), 2007, 65-70). Organic
# pigments do not bond to the paste (BFT International on faded blocks), and iron blue breaks down
# in alkali (from memory). Phthalocyanine is left to the maker: EN 12878 clause 1 names it.
_NOT_FAST = re.compile(
    r"\b(?<!non-)(ultramarine|p\.?b\.? ?29|p\.?v\.? ?15|prussian blue|milori blue|iron blue"
    r"|p\.?b\.? ?27|azo|hansa|naphthol|toluidine|quinacridone|madder|indigo|organic|dye)\b",
    re.IGNORECASE,
)


def _table_sides(table: CastingTable) -> FoundFaults:
    if table.width_mm > table.length_mm:
        yield ("table", "width_mm"), Message("fault-shorter-side", key="length_mm")


def _thicknesses(shaping: Shaping) -> FoundFaults:
    here = shaping.thicknesses_mm
    if shaping.thinnest_mm > shaping.thickest_mm:
        yield ("shaping", "thinnest_mm"), Message("fault-more-than", key="thickest_mm")
    if not here:
        yield ("shaping", "thicknesses_mm"), Message("fault-thickness-missing")
    if list(here) != sorted(set(here)):
        yield ("shaping", "thicknesses_mm"), Message("fault-thickness-order")
    for i, thickness in enumerate(here):
        if not shaping.thinnest_mm <= thickness <= shaping.thickest_mm:
            message = Message(
                "fault-thickness-between",
                size=KeyNumber("Shaping", "thinnest_mm", thickness),
                least=KeyNumber("Shaping", "thinnest_mm", shaping.thinnest_mm, "up"),
                most=KeyNumber("Shaping", "thickest_mm", shaping.thickest_mm, "down"),
            )
            yield ("shaping", "thicknesses_mm", i), message


def _strips(shaping: Shaping) -> FoundFaults:
    yield from at_least_one(shaping.strips, ("shaping", "strips"), "strip")
    for i, rule in enumerate(shaping.strips):
        if rule.cautions_mm < rule.stops_mm:
            message = Message(
                "fault-caution-under-stop",
                cautions=KeyNumber("StripRule", "cautions_mm", rule.cautions_mm),
                stops=KeyNumber("StripRule", "stops_mm", rule.stops_mm, "up"),
            )
            yield ("shaping", "strips", i, "cautions_mm"), message


def _smallest_side(shaping: Shaping, table: CastingTable) -> FoundFaults:
    if shaping.smallest_side_mm > table.width_mm:
        yield ("shaping", "smallest_side_mm"), Message("fault-more-than-table")


def _palette(palette: Sequence[PaletteShade]) -> FoundFaults:
    yield from at_least_one(palette, ("palette",), "shade")
    yield from named_once([shade.name for shade in palette], "palette", "name")
    for i, shade in enumerate(palette):
        if not re.fullmatch("#[0-9a-fA-F]{6}", shade.colour):
            yield ("palette", i, "colour"), Message("fault-colour")
        total = sum(dose.percent for dose in shade.doses)
        if total > MAX_PIGMENT_PERCENT:
            sums = [Percent(Decimal(f"{amount:g}")) for amount in (total, MAX_PIGMENT_PERCENT)]
            message = Message("fault-doses", total=sums[0], most=sums[1])
            yield ("palette", i, "doses"), message


def _pigments_known(palette: Sequence[PaletteShade], pigments: Sequence[Pigment]) -> FoundFaults:
    known = tuple(pigment.name for pigment in pigments)
    for i, shade in enumerate(palette):
        here = [dose.pigment for dose in shade.doses]
        for j, name in enumerate(here):
            path: KeyPath = ("palette", i, "doses", j, "pigment")
            if name not in known:
                yield path, Message("fault-no-pigment", name=name, **nearest(name, known))
            if name in here[:j]:
                yield path, Message("fault-pigment-twice", name=name)


def _pigment_names(pigments: Sequence[Pigment]) -> FoundFaults:
    yield from named_once([pigment.name for pigment in pigments], "pigments", "name")


def _pigments_fast(pigments: Sequence[Pigment]) -> FoundFaults:
    for i, pigment in enumerate(pigments):
        found = _NOT_FAST.search(pigment.name)
        if found is not None:
            yield ("pigments", i, "name"), Message("fault-not-fast", name=found[0])
        if "carbon" in pigment.name.lower() and pigment.kind != "carbon":
            yield ("pigments", i, "kind"), Message("fault-carbon")


def _colours_read(pigments: Sequence[Pigment], shade: Colouring) -> FoundFaults:
    cements = [base.cement for base in shade.bases]
    for i, cement in enumerate(cements):
        if cement in cements[:i]:
            yield ("shade", "bases", i, "cement"), Message("fault-cement-twice", cement=cement)
    for i, pigment in enumerate(pigments):
        for j, sample in enumerate(pigment.samples):
            if sample.cement not in cements:
                message = Message("fault-no-base", cement=sample.cement)
                yield ("pigments", i, "samples", j, "cement"), message
    if shade.matching and not any(pigment.samples for pigment in pigments):
        yield ("shade", "matching"), Message("fault-no-samples")


def _finishes(finishes: Sequence[FinishOffered]) -> FoundFaults:
    yield from at_least_one(finishes, ("finishes",), "surface")
    yield from named_once([finish.surface for finish in finishes], "finishes", "surface")


def _sealers(sealers: Sequence[Sealer]) -> FoundFaults:
    yield from at_least_one(sealers, ("sealers",), "sealer")
    yield from named_once([sealer.name for sealer in sealers], "sealers", "name")
    for i, sealer in enumerate(sealers):
        if not sealer.places:
            yield ("sealers", i, "places"), Message("fault-no-place")
        yield from each_once(sealer.places, ("sealers", i, "places"))


def _edges(edges: Sequence[EdgeOffered]) -> FoundFaults:
    yield from at_least_one(edges, ("edges",), "edge")
    yield from named_once([edge.profile for edge in edges], "edges", "profile")
    for i, edge in enumerate(edges):
        if edge.smallest_mm > edge.largest_mm:
            yield ("edges", i, "smallest_mm"), Message("fault-more-than", key="largest_mm")


def _workshop_temperature_by_month(handling: HandlingSettings) -> FoundFaults:
    months = len(handling.workshop_c)
    if months != 12:
        yield ("handling", "workshop_c"), Message("fault-months", months=months)


def _ways(handling: HandlingSettings) -> FoundFaults:
    yield from at_least_one(handling.ways, ("handling", "ways"), "way")
    for i, way in enumerate(handling.ways):
        if way.name.casefold() in (other.name.casefold() for other in handling.ways[:i]):
            message = Message("fault-twice-in", name=way.name, table="[[handling.ways]]")
            yield ("handling", "ways", i, "name"), message


def _shortest_cover(handling: HandlingSettings, days: DaySettings) -> FoundFaults:
    if handling.longest_cover_days < days.under_cover:
        message = Message("fault-cover-days", days=days.under_cover)
        yield ("handling", "longest_cover_days"), message


def _mesh(steel: Steel) -> FoundFaults:
    if steel.mesh_pitch_mm <= steel.mesh_wire_mm:
        yield ("steel", "mesh_pitch_mm"), Message("fault-mesh")
    if steel.bar_mm is not None and not steel.bar_price:
        yield ("steel", "bar_price"), Message("fault-bar-price")


CHECKS: tuple[Callable[..., FoundFaults], ...] = (
    _table_sides,
    _thicknesses,
    _strips,
    _smallest_side,
    _palette,
    _pigments_known,
    _pigment_names,
    _pigments_fast,
    _colours_read,
    _finishes,
    _sealers,
    _edges,
    _workshop_temperature_by_month,
    _ways,
    _shortest_cover,
    _mesh,
)
