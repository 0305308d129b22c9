"""What the workshop should know of the steel in a slab, in sentences."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from ledgerstone.order import Slab
from ledgerstone.reinforcement._after_crack import AfterCrack, Held
from ledgerstone.reinforcement._bars import PlacedBar
from ledgerstone.steel_rules import Cover, lap_mm, material_words
from ledgerstone.workshop.records import Workshop

THICK_BAR_MM = 8.0


def notes(
    slab: Slab,
    cover: Cover,
    bars: Sequence[PlacedBar],
    after: AfterCrack | None,
    workshop: Workshop,
) -> Iterator[str]:
    """Say what the steel is, how it lies, and what it carries after a crack."""
    bar = workshop.steel.bar_mm
    yield material_words(slab.place, workshop.steel)
    if cover.kept_mm < cover.wanted_mm:
        yield (
            f"In {slab.thickness.text()} the steel has {cover.kept_mm:.0f} mm of cover; "
            f"{cover.wanted_mm:.0f} mm is wanted. Use thinner bars, glass fibre, or a thicker slab."
        )
    if bar is not None and bar > THICK_BAR_MM:
        yield f"Take 6 or 8 mm bars before {bar:g} mm: in a thin slab they leave more cover."
    yield (
        "Hang the steel from the mould's sides by wire, or lay it on the stiff first layer, so that"
        " it lies in mid-depth: it must not sink, or it shows through a dark face. Common"
        " practice, no source."
    )
    if slab.cutouts:
        yield "Cut the mesh back from every opening by the cover."
    if after is not None:
        yield from _after_words(after, bar)
    yield from _anchorage_words(bars)
    yield from _lap_words(bars, workshop)


def _lap_words(bars: Sequence[PlacedBar], workshop: Workshop) -> Iterator[str]:
    most = workshop.steel.stock_length_mm
    long = [bar for bar in bars if bar.length_mm > most]
    if long:
        overlap = lap_mm(workshop, long[0].diameter_mm)
        yield (
            f"Bars longer than {most:.0f} mm come in parts that overlap by {overlap:.0f} mm, wired"
            " side by side (EN 1992-1-1 8.7)."
        )


def _after_words(after: AfterCrack, bar_mm: float | None) -> Iterator[str]:
    ways = (("lengthwise", after.along), ("across", after.across))
    by_bars = [f"{name} {held.spacing_mm:.0f} mm" for name, held in ways if held.by == "bars"]
    if by_bars and bar_mm is not None:
        limit = min(held.limit_mpa for _, held in ways if held.by == "bars")
        yield (
            f"After a crack {bar_mm:g} mm bars hold it, {' and '.join(by_bars)} apart: {limit:.1f}"
            f" MPa with the mesh, no less than the slab cracks at (EN 1992-1-1 6.1, 9.2.1.1)."
        )
    by_mesh = [name for name, held in ways if held.by == "mesh"]
    if by_mesh:
        yield f"After a crack the mesh holds it {' and '.join(by_mesh)} (EN 1992-1-1 6.1)."
    plain = [(name, held) for name, held in ways if held.by == "plain"]
    if plain:
        yield _plain_words(plain)


def _plain_words(plain: Iterable[tuple[str, Held]]) -> str:
    every = list(plain)
    limit = every[0][1].limit_mpa
    asked = max(held.demand.mpa for _, held in every)
    return (
        f"Judged as plain concrete {' and '.join(name for name, _ in every)} after a crack:"
        f" {asked:.1f} MPa of {limit:.1f} MPa (EN 1992-1-1 12.3.1)."
    )


def _anchorage_words(bars: Sequence[PlacedBar]) -> Iterator[str]:
    short = [bar for bar in bars if bar.anchored < 1.0]
    if short:
        marks = ", ".join(f"{bar.mark} {100 * bar.anchored:.0f}%" for bar in short)
        yield (
            f"Too short to be anchored for all of their strength: {marks}. They count in that"
            " proportion (EN 1992-1-1 8.4)."
        )
