"""What the workshop should know of the steel in a slab, as messages."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from decimal import Decimal

from ledgerstone.message import Gauge, Listed, Message, Percent, Ruled, Strength
from ledgerstone.order import Slab
from ledgerstone.reinforcement._after_crack import AfterCrack, CrackCheck
from ledgerstone.reinforcement._bars import PlacedBar
from ledgerstone.steel_rules import Cover, lap_mm, material_note
from ledgerstone.workshop.records import Workshop

THICK_BAR_MM = 8.0


def notes(
    slab: Slab,
    cover: Cover,
    bars: Sequence[PlacedBar],
    after: AfterCrack | None,
    workshop: Workshop,
) -> Iterator[Message]:
    """Say what the steel is, how it lies, what it carries cracked.

    Source
    ------
    How it lies: common practice, no source.
    """
    bar = workshop.steel.bar_mm
    yield material_note(slab.place, workshop.steel)
    if cover.kept_mm < cover.wanted_mm:
        yield Message(
            "steel-cover-short",
            thickness=slab.thickness,
            kept=Ruled(cover.kept_mm, down=True),
            wanted=Ruled(cover.wanted_mm),
        )
    if bar is not None and bar > THICK_BAR_MM:
        yield Message("steel-thick-bar", bar=Gauge(bar))
    yield Message("steel-hang")
    if slab.cutouts:
        yield Message("steel-cut-back")
    if after is not None:
        yield from _after_notes(after, bar)
    yield from _anchorage_notes(bars)
    yield from _lap_notes(bars, workshop)


def _lap_notes(bars: Sequence[PlacedBar], workshop: Workshop) -> Iterator[Message]:
    most = workshop.steel.stock_length_mm
    long = [bar for bar in bars if bar.length_mm > most]
    if long:
        lap = Ruled(lap_mm(workshop, long[0].diameter_mm))
        yield Message("steel-laps", most=Ruled(most), lap=lap)


def _after_notes(after: AfterCrack, bar_mm: float | None) -> Iterator[Message]:
    ways = (("along", after.along), ("across", after.across))
    by_bars = [(way, held) for way, held in ways if held.by == "bars"]
    if by_bars and bar_mm is not None:
        apart = tuple(
            Message("steel-way-apart", way=way, spacing=Ruled(held.spacing_mm or 0.0))
            for way, held in by_bars
        )
        limit = Strength(min(held.limit_mpa for _, held in by_bars), 1, bare=True)
        yield Message("steel-bars-hold", bar=Gauge(bar_mm), ways=Listed(apart), limit=limit)
    by_mesh = [way for way, held in ways if held.by == "mesh"]
    if by_mesh:
        yield Message("steel-mesh-holds", ways=_ways(by_mesh))
    plain = [(way, held) for way, held in ways if held.by == "plain"]
    if plain:
        yield _plain_note(plain)


def _ways(ways: Iterable[str]) -> Listed:
    return Listed(tuple(Message("steel-way", way=way) for way in ways))


def _plain_note(plain: Sequence[tuple[str, CrackCheck]]) -> Message:
    return Message(
        "steel-plain",
        ways=_ways(way for way, _ in plain),
        asked=Strength(max(held.demand.mpa for _, held in plain), 1, bare=True),
        limit=Strength(plain[0][1].limit_mpa, 1, bare=True),
    )


def _anchorage_notes(bars: Sequence[PlacedBar]) -> Iterator[Message]:
    short = {bar.mark: bar for bar in bars if bar.anchored < 1.0}.values()
    if short:
        short_bars = tuple(
            Message(
                "steel-short-bar",
                mark=bar.mark,
                percent=Percent(Decimal(f"{100 * bar.anchored:.0f}")),
            )
            for bar in short
        )
        yield Message("steel-short", bars=Listed(short_bars, joined="comma"))
