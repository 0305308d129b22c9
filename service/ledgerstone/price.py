"""What an order costs to make, and what the customer is asked for it. Decimal throughout."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal

from ledgerstone.order import Order, Slab
from ledgerstone.shade import shade_recipe
from ledgerstone.shape import Shape
from ledgerstone.transport import area_of, delivery_price
from ledgerstone.work import Operation
from ledgerstone.workshop.records import Workshop

PENNY = Decimal("0.01")
HUNDRED = Decimal(100)


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a price, before tax."""

    label: str
    amount: Decimal


@dataclass(frozen=True, slots=True)
class Price:
    """The price: lines add up to ``net``; ``net`` and ``tax`` add up to ``total``."""

    currency: str
    lines: tuple[Line, ...]
    net: Decimal
    tax: Decimal
    tax_percent: Decimal
    total: Decimal
    deposit: Decimal


@dataclass(frozen=True, slots=True)
class Cost:
    """One line of what it costs the workshop; never shown to a customer."""

    label: str
    group: str
    amount: Decimal


def pennies(amount: Decimal) -> Decimal:
    """Round to the penny, half up."""
    return amount.quantize(PENNY, ROUND_HALF_UP)


def tax_on(net: Decimal, percent: Decimal) -> Decimal:
    """Tax on a net amount, once for the whole invoice, to the nearest penny.

    Source: HMRC VATREC12010 (nearest penny is accepted; once at invoice level).
    """
    return pennies(net * percent / HUNDRED)


def tax_in(gross: Decimal, percent: Decimal) -> Decimal:
    """Tax contained in a gross amount, to the nearest penny: 1/6 at 20 %."""
    return pennies(gross * percent / (HUNDRED + percent))


def costs(
    order: Order, shapes: Sequence[Shape], steps: Sequence[Operation], workshop: Workshop
) -> tuple[Cost, ...]:
    """What making the order costs the workshop, line by line."""
    lines: list[Cost] = []
    for slab, shape in zip(order.slabs, shapes, strict=True):
        lines += _materials(slab, shape, workshop)
    for group, stages in _GROUPS.items():
        mine = [step for step in steps if step.stage in stages]
        hands = sum((_hours(step.hands_hours) for step in mine), Decimal(0))
        machine = sum((_hours(step.machine_hours) for step in mine), Decimal(0))
        wages = hands * workshop.rates.hour + machine * workshop.rates.machine_hour
        lines.append(Cost(f"Hours: {group.lower()}", group, wages))
        hire = sum((step.hire for step in mine), Decimal(0))
        lines.append(Cost(f"Hire: {group.lower()}", group, hire))
    return tuple(lines)


MATERIALS, MAKING, FINISHING = "Materials", "Making and casting", "Finishing and sealing"
_GROUPS = {MAKING: ("mould", "cast", "pack"), FINISHING: ("finish", "seal")}


def _hours(hours: float) -> Decimal:
    """Hours to the minute: price and schedule agree on them."""
    return Decimal(round(hours * 60)) / 60


def _materials(slab: Slab, shape: Shape, workshop: Workshop) -> list[Cost]:
    """What goes into one slab and its mould, for its quantity."""
    n, rates, recipe = Decimal(slab.quantity), workshop.rates, workshop.recipe
    area = _decimal(shape.net_area_mm2 / 1e6)
    placed = _decimal(shape.volume_mm3 / 1e9 * (1 + recipe.waste_percent / 100))
    sealer = next(s for s in workshop.sealers if s.name == slab.finish.sealer)
    finish = next(f for f in workshop.finishes if f.surface == slab.finish.surface)
    shade = shade_recipe(slab.shade, workshop)
    per_m3 = recipe.price_per_m3 + (shade.extra_per_m3 if shade is not None else 0)
    pigment = _decimal(recipe.cement_kg_per_m3) * placed * _pigment_price(slab, workshop)
    litres = area * sealer.coats / _decimal(sealer.coverage_m2_per_l)
    box = _decimal(shape.length_mm * shape.width_mm / 1e6)
    amounts = {
        "Concrete": per_m3 * placed,
        "Pigment": pigment,
        "Steel": rates.steel_per_m2 * area,
        "Mould board": rates.mould_board_per_m2 * box,
        "Consumables": rates.consumables_per_m2 * area,
        "Packing": rates.packing_per_slab,
    }
    finishing = {
        "Pads and slurry": finish.consumables_per_m2 * area,
        "Sealer": sealer.price_per_l * litres,
    }
    return [Cost(label, MATERIALS, n * amount) for label, amount in amounts.items()] + [
        Cost(label, FINISHING, n * amount) for label, amount in finishing.items()
    ]


def _pigment_price(slab: Slab, workshop: Workshop) -> Decimal:
    """Price of the pigments for one kilogram of cement."""
    shade = shade_recipe(slab.shade, workshop)
    prices = {pigment.name: pigment.price_per_kg for pigment in workshop.pigments}
    doses = shade.doses if shade is not None else ()
    return sum((prices[d.pigment] * _decimal(d.percent / 100) for d in doses), Decimal(0))


def _decimal(value: float) -> Decimal:
    """A measured quantity as Decimal, rounded first so that every machine agrees."""
    return Decimal(repr(round(value, 9)))


def price(
    order: Order, shapes: Sequence[Shape], steps: Sequence[Operation], workshop: Workshop
) -> Price:
    """Ask a price: costs and margin in three lines, delivery, a smallest order, tax, steps."""
    charge = 1 + workshop.rates.margin_percent / HUNDRED
    lines = []
    every = costs(order, shapes, steps, workshop)
    for group in (MATERIALS, MAKING, FINISHING):
        amount = sum((cost.amount for cost in every if cost.group == group), Decimal(0))
        lines.append(Line(group, pennies(amount * charge)))
    short = workshop.offer.smallest_order - sum((line.amount for line in lines), Decimal(0))
    if short > 0:
        lines.append(Line("Up to our smallest order", short))
    area = area_of(order.delivery, workshop)
    delivery = delivery_price(order, area)
    if delivery:
        lines.append(Line(_delivery_label(order, area.name if area else ""), pennies(delivery)))
    return stepped(lines, workshop)


def _delivery_label(order: Order, area: str) -> str:
    how = {"pallet": "Pallet delivery", "own-van": "Delivery", "fitted": "Delivery and fitting"}
    return f"{how.get(order.delivery.kind, 'Delivery')}: {area}"


def stepped(lines: Sequence[Line], workshop: Workshop) -> Price:
    """Add tax, step the total as the profile rounds, and keep every sum exact to the penny.

    What stepping adds or takes goes into the largest line.
    """
    percent = workshop.tax.percent if workshop.tax.registered else Decimal(0)
    net = sum((line.amount for line in lines), Decimal(0))
    step = workshop.offer.round_to
    gross = net + tax_on(net, percent)
    total = pennies((gross / step).quantize(Decimal(1), ROUND_HALF_UP) * step)
    tax = tax_in(total, percent)
    moved = total - tax - net
    largest = max(range(len(lines)), key=lambda i: lines[i].amount)
    settled = tuple(
        Line(line.label, line.amount + moved) if i == largest else line
        for i, line in enumerate(lines)
    )
    deposit = pennies(total * workshop.offer.deposit_percent / HUNDRED)
    return Price(
        currency=workshop.workshop.currency,
        lines=settled,
        net=total - tax,
        tax=tax,
        tax_percent=percent,
        total=total,
        deposit=deposit,
    )
