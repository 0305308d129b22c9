"""Money, days, masses and sizes in print: the quote's own figures, to the character."""

from __future__ import annotations

from ledgerstone.drawing.frame import leading_length, spoken
from ledgerstone.order import Polygon, Round, Slab
from ledgerstone.price import Price
from ledgerstone.schedule import LeadTime, StageDays
from ledgerstone.shape import Shape
from ledgerstone.wording import day_text, english, money_text, percent_text


def tax_text(price: Price, tax_name: str) -> str:
    """Say the tax that a price holds, or nothing where none is charged."""
    if not price.tax:
        return ""
    tax, percent = money_text(price.currency, price.tax), percent_text(price.tax_percent)
    return f"including {tax} {tax_name} at {percent}"


def slab_name(slab: Slab, index: int, slabs: int) -> str:
    """Name a slab on paper: its label, or what it is and its number."""
    if slab.label:
        return slab.label
    use = slab.use.replace("-", " ").capitalize()
    return use if slabs == 1 else f"{use} {index + 1}"


def size_text(slab: Slab, shape: Shape) -> str:
    """Say a slab's finished size in the customer's own units."""
    like = leading_length(slab)
    length, width = spoken(like, shape.length_mm), spoken(like, shape.width_mm)
    thick = f"{slab.thickness.text()} thick"
    if isinstance(slab.outline, Round):
        return f"{length} across, {thick}"
    over_all = " over all" if isinstance(slab.outline, Polygon) else ""
    return f"{length} × {width}{over_all}, {thick}"


def shade_text(slab: Slab) -> str:
    """Say a slab's shade, surface and sealer."""
    shade = slab.shade.name or f"matched to {slab.shade.match}"
    surface = slab.finish.surface.replace("-", " ")
    return f"{shade}, {surface}, {slab.finish.sealer} sealer"


def arrives_text(lead: LeadTime, kind: str) -> str:
    """Say when an order is with the customer, or that it is collected."""
    if kind == "collect":
        return f"to collect from {day_text(lead.ready_on)}"
    first, last = day_text(lead.arrives_earliest), day_text(lead.arrives_latest)
    return f"with you on {first}" if first == last else f"with you between {first} and {last}"


def stage_text(stage: StageDays) -> str:
    """Say a stage's days, then its reason: 8 to 12 December. Cures under cover."""
    first, last = stage.starts, stage.ends
    days = f"{last:%-d %B}"
    if first != last:
        month = "" if (first.year, first.month) == (last.year, last.month) else f"{first: %B}"
        days = f"{first.day}{month} to {days}"
    why = " ".join(map(english, stage.why))
    return f"{days}. {why}"
