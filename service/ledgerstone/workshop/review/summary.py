"""A profile in words, for the maker to check."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import Decimal

from ledgerstone.message import (
    AreaLoad,
    DateRange,
    Density,
    Figure,
    Force,
    Listed,
    Message,
    Money,
    Percent,
    Strength,
    Value,
    Weight,
)
from ledgerstone.quantities import Length
from ledgerstone.workshop.keys.value_keys import AboutKey
from ledgerstone.workshop.records import (
    DeliveryArea,
    EdgeOffered,
    PaletteShade,
    Sealer,
    Workshop,
)
from ledgerstone.workshop.records.members import member_named
from ledgerstone.workshop.review.rests_on import RESTS_ON
from ledgerstone.workshop.review.second_looks import percent_of

SummaryRow = tuple[Message | None, Message | str]
_Rows = Iterator[SummaryRow]


def summary(workshop: Workshop) -> Iterator[SummaryRow]:
    """Yield a profile in rows of a title and a text; an empty title continues the one above."""
    for part in _PARTS:
        yield from part(workshop)


def open_values(workshop: Workshop) -> Iterator[Message]:
    """Yield which values are still the demonstration's, table by table, and what rests on them."""
    found = workshop.standing
    if not found.tables:
        return
    counts: dict[str, Value] = {"invented": found.invented, "usual": found.usual}
    counts |= {"every": found.yours + found.usual + found.invented, "yours": found.yours}
    yield Message("check-invented" if found.trial else "check-may-stay", **counts)
    for table, count in found.tables:
        rests = AboutKey("RestsOn", table, RESTS_ON[table])
        label = AboutKey("Workshop", table, member_named("Workshop", table).about)
        values: dict[str, Value] = {"table": table, "label": label, "count": count}
        yield Message("check-invented-table", **values, rests=rests)
    if found.trial:
        yield Message("check-confirm")
        tables = Listed(tuple(f"[{table}]" for table in found.priced))
        yield Message("check-trial", tables=tables)


def _row(part: str, message: Message | str) -> SummaryRow:
    return Message("check-title", part=part), message


def _who(w: Workshop) -> _Rows:
    who = w.workshop
    country = "-".join(filter(None, (who.country, who.region)))
    values = {"name": who.name, "town": who.town, "land": country, "currency": who.currency}
    yield _row("who", Message("check-who", **values))
    yield None, Message("check-reach", email=who.email, telephone=who.ring)


def _makes(w: Workshop) -> _Rows:
    table, mix = w.table, w.recipe
    sides = {"length": _mm(table.length_mm), "width": _mm(table.width_mm)}
    yield _row("table", Message("check-tables", count=table.count, **sides))
    sizes = Listed(tuple(_mm(size) for size in w.shaping.thicknesses_mm), joined="comma")
    yield _row("thicknesses", Message("check-listed", things=sizes))
    for rule in w.shaping.strips:
        care = "yes" if rule.cautions_mm > rule.stops_mm else "no"
        widths = {"stops": _mm(rule.stops_mm), "cautions": _mm(rule.cautions_mm)}
        yield _row("strips", Message("check-strip", beside=rule.beside, care=care, **widths))
    concrete = Message(
        "check-concrete",
        name=mix.name,
        strength=Strength(mix.fck_mpa),
        cement=Density(mix.cement_kg_per_m3),
        kind=mix.cement,
        ratio=Figure(mix.water_cement_ratio, 2),
        density=Density(mix.density_kg_per_m3),
    )
    yield _row("concrete", concrete)


def _offers(w: Workshop) -> _Rows:
    yield from _listed("palette", (_shade(shade) for shade in w.palette))
    yield from _listed("finishes", (Message("check-finish", says=f.says) for f in w.finishes))
    yield from _listed("sealers", (_sealer(sealer) for sealer in w.sealers))
    yield from _listed("edges", map(_edge, w.edges))


def _tax(w: Workshop) -> Message:
    if not w.tax.registered:
        return Message("check-no-tax")
    others = {w.tax.fitted_percent}
    others |= {rate for a in w.areas for rate in (a.tax_percent, a.fitted_tax_percent)}
    rates = [w.tax.percent, *sorted(rate for rate in others - {w.tax.percent} if rate is not None)]
    listed = Listed(tuple(map(Percent, rates)), joined="or")
    return Message("check-tax", name=w.tax.name, rates=listed)


def _delivers(w: Workshop) -> _Rows:
    yield from _listed("delivery", (_area(area, w.workshop.currency) for area in w.areas))
    if not w.areas:
        yield _row("delivery", Message("check-no-delivery"))


def _charges(w: Workshop) -> _Rows:
    rates, offer, unit = w.rates, w.offer, w.workshop.currency
    hour, margin = Money(unit, rates.hour), Percent(rates.margin_percent)
    yield _row("rates", Message("check-rates", hour=hour, margin=margin))
    yield _row("tax", _tax(w))
    values = {"standing": offer.standing, "count": offer.valid_days}
    yield _row("offer", Message("check-offer", **values, deposit=Percent(offer.deposit_percent)))
    yield None, Message("check-smallest", amount=Money(unit, offer.smallest_order))
    if w.sample is not None:
        price, value = Money(unit, w.sample.price), w.sample.always_from
        if value is None:
            yield _row("tile", Message("check-tile", price=price))
        else:
            yield _row("tile", Message("check-tile-always", price=price, above=Money(unit, value)))


def _moves(w: Workshop) -> _Rows:
    ways = w.ways
    yield from _listed(
        "handling", (Message("check-way", name=way.name, most=Weight(way.most_kg)) for way in ways)
    )
    loads, strips = w.loads, len(w.concrete.tested)
    even, point = AreaLoad(loads.even_n_per_m2), Force(loads.point_n)
    yield _row("bears", Message("check-bears", even=even, point=point))
    untested = Percent(Decimal(str(w.concrete.untested_percent)))
    trusted = Message("check-untested", percent=untested)
    yield _row("trusted", Message("check-strips-tested", count=strips) if strips else trusted)


def _works(w: Workshop) -> _Rows:
    calendar = w.calendar
    days = tuple(Message("check-weekday", day=day) for day in calendar.weekdays)
    values = {"count": calendar.hands, "hours": calendar.hours_per_day}
    yield _row("hours", Message("check-hours", **values, days=Listed(days, joined="comma")))
    closures = ((DateRange(c.first, c.last), c.why) for c in calendar.closures)
    shut = (Message("check-closure", days=days, why=why) for days, why in closures)
    yield from _listed("shut", shut)
    yield _row("fingerprint", w.fingerprint)


_PARTS = (_who, _makes, _offers, _moves, _delivers, _charges, _works)


def _listed(part: str, items: Iterable[Message]) -> _Rows:
    """Yield the items in rows, the title beside the first alone."""
    for i, item in enumerate(items):
        yield (None, item) if i else _row(part, item)


def _shade(shade: PaletteShade) -> Message:
    doses = tuple(
        Message("check-dose", pigment=dose.pigment, percent=percent_of(dose.percent))
        for dose in shade.doses
    )
    return Message(
        "check-shade",
        name=shade.name,
        colour=shade.colour,
        cement=shade.cement,
        doses="some" if doses else "none",
        pigments=Listed(doses, joined="comma"),
    )


def _edge(edge: EdgeOffered) -> Message:
    if not edge.largest_mm:
        return Message("check-edge-unsized", profile=edge.profile)
    smallest, largest = _mm(edge.smallest_mm), _mm(edge.largest_mm)
    return Message("check-edge", profile=edge.profile, smallest=smallest, largest=largest)


def _sealer(sealer: Sealer) -> Message:
    places = tuple(Message("check-place", place=place) for place in sealer.places)
    values: dict[str, Value] = {"name": sealer.name, "kind": sealer.kind, "coats": sealer.coats}
    return Message("check-sealer", **values, places=Listed(places, joined="comma"))


def _area(area: DeliveryArea, unit: str) -> Message:
    ways = {"pallet": area.pallet, "own_van": area.own_van, "fitted": area.fitted}
    prices = tuple(
        Message("check-delivery", way=way, price=Money(unit, price))
        for way, price in ways.items()
        if price is not None
    )
    listed = Listed(prices, joined="comma")
    return Message("check-area", name=area.name, count=len(area.postcodes), prices=listed)


def _mm(length: float) -> Length:
    return Length.of_mm(length)
