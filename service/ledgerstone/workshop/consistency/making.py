"""Checks across a profile's keys on what is made, and how."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from ledgerstone.workshop.consistency.shared import Found, at_least_one, each_once, named_once
from ledgerstone.workshop.lines import Path
from ledgerstone.workshop.records import (
    CastingTable,
    Colouring,
    Days,
    EdgeOffered,
    FinishOffered,
    Handling,
    PaletteShade,
    Pigment,
    Sealer,
    Shaping,
    Steel,
)
from ledgerstone.workshop.values import nearest

MOST_PIGMENT_PERCENT = 15.0  # in all: more than this is a slip of the pen
# Ultramarine fades in lime and Portland cement (Color Res. Appl. 32(1), 2007, 65-70). Organic
# pigments do not bond to the paste (BFT International on faded blocks), and iron blue breaks down
# in alkali (from memory). Phthalocyanine is left to the maker: EN 12878 clause 1 names it.
_NOT_FAST = re.compile(
    r"\b(?<!non-)(ultramarine|p\.?b\.? ?29|p\.?v\.? ?15|prussian blue|milori blue|iron blue"
    r"|p\.?b\.? ?27|azo|hansa|naphthol|toluidine|quinacridone|madder|indigo|organic|dye)\b",
    re.IGNORECASE,
)


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


def _palette(palette: Sequence[PaletteShade]) -> Found:
    yield from at_least_one(palette, "palette", "shade")
    yield from named_once([shade.name for shade in palette], "palette", "name")
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
    yield from named_once([pigment.name for pigment in pigments], "pigments", "name")


def _pigments_fast(pigments: Sequence[Pigment]) -> Found:
    for i, pigment in enumerate(pigments):
        found = _NOT_FAST.search(pigment.name)
        if found is not None:
            says = f"{found[0].lower()} does not last in cement, which is alkaline."
            use = "Use a mineral oxide: cobalt blue for blue, chromium oxide for green."
            yield ("pigments", i, "name"), f"{says} {use}"
        if "carbon" in pigment.name.lower() and pigment.kind != "carbon":
            says = 'carbon black has a limit of its own. Write kind = "carbon".'
            yield ("pigments", i, "kind"), says


def _colours_read(pigments: Sequence[Pigment], shade: Colouring) -> Found:
    cements = [base.cement for base in shade.bases]
    for i, cement in enumerate(cements):
        if cement in cements[:i]:
            yield (
                ("shade", "bases", i, "cement"),
                f"{cement} stands twice. Each cement stands once.",
            )
    for i, pigment in enumerate(pigments):
        for j, sample in enumerate(pigment.samples):
            if sample.cement not in cements:
                says = f"no [[shade.bases]] tells the colour of {sample.cement} cement alone."
                yield ("pigments", i, "samples", j, "cement"), says
    if shade.matching and not any(pigment.samples for pigment in pigments):
        says = "matching needs tiles that were read. Add samples to your pigments, or write false."
        yield ("shade", "matching"), says


def _finishes(finishes: Sequence[FinishOffered]) -> Found:
    yield from at_least_one(finishes, "finishes", "surface")
    yield from named_once([finish.surface for finish in finishes], "finishes", "surface")


def _sealers(sealers: Sequence[Sealer]) -> Found:
    yield from at_least_one(sealers, "sealers", "sealer")
    yield from named_once([sealer.name for sealer in sealers], "sealers", "name")
    for i, sealer in enumerate(sealers):
        if not sealer.places:
            yield ("sealers", i, "places"), "name at least one place where it may be used."
        yield from each_once(sealer.places, ("sealers", i, "places"))


def _edges(edges: Sequence[EdgeOffered]) -> Found:
    yield from at_least_one(edges, "edges", "edge profile")
    yield from named_once([edge.profile for edge in edges], "edges", "profile")
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
    if steel.bar_mm is not None and not steel.bar_price:
        yield (
            ("steel", "bar_price"),
            "write what a bar costs, or leave bar_mm out: no bars are kept.",
        )


CHECKS: tuple[Callable[..., Found], ...] = (
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
    _shed_by_month,
    _ways,
    _shortest_cover,
    _mesh,
)
