"""A profile in words, for the maker who wants to see that it says what was meant."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from decimal import Decimal

from ledgerstone.workshop import proportions
from ledgerstone.workshop.advice import (
    address_of_this_machine,
    postcodes_of_another_country,
)
from ledgerstone.workshop.doses import ADVISED_PERCENT, HARDLY_DEEPER_PERCENT
from ledgerstone.workshop.records import Area, PaletteShade, Sealer, Workshop
from ledgerstone.workshop.standing import RESTS_ON

ADVISED_ADMIXTURE_G_PER_KG = 50.0  # EN 206 5.2.6, from memory


def summary(workshop: Workshop) -> str:
    """Return what a profile says as lines of text, with what is worth a second look at the end."""
    rows = [row for part in _PARTS for row in part(workshop)]
    text = "\n".join(f"{title:<13} {says}" for title, says in rows)
    looks = "".join(f"\n- {says}" for says in second_looks(workshop))
    looks = f"\n\nWorth a second look:{looks}" if looks else ""
    return f"{text}{looks}{_open_values(workshop)}"


def _open_values(workshop: Workshop) -> str:
    """Tell which values are still the demonstration's, table by table, and what rests on them."""
    found = workshop.standing
    if not found.tables:
        return ""
    every = found.yours + found.usual + found.invented
    others = f"{found.usual} others are usual ones that may stand, {found.yours} are yours"
    lines = [
        "\n",
        f"Still invented: {found.invented} of {every} values; {others}.",
        *(f"- [{table}], {count}: {RESTS_ON[table]}." for table, count in found.tables),
        'Change them, or write standing = "yours" in a table once what stands there is right.',
    ]
    if found.trial:
        lines.append(
            "Until your prices, hours and areas are, every answer is an estimate headed as a trial."
        )
    return "\n".join(lines)


def second_looks(workshop: Workshop) -> tuple[str, ...]:
    """Return sentences for what can stand as it is and may be a slip."""
    return (
        *_strong_shades(workshop),
        *_unsealed_places(workshop),
        *_coarse(workshop),
        *_coarse_face(workshop),
        *_admixtures(workshop),
        *_still_invented(workshop),
        *address_of_this_machine(workshop),
        *postcodes_of_another_country(workshop),
    )


# --- the parts of the summary ---------------------------------------------------------------

_INVENTED = "Tarnside Casting"
_Rows = Iterator[tuple[str, str]]


def _who(w: Workshop) -> _Rows:
    who = w.workshop
    yield "Workshop", f"{who.name}, {who.town} ({who.country}-{who.region}, {who.currency})"
    yield "", f"{who.email}, {who.telephone}"


def _makes(w: Workshop) -> _Rows:
    table, shaping = w.table, w.shaping
    yield "Table", f"{table.count} of {table.length_mm:g} × {table.width_mm:g} mm"
    sizes = ", ".join(f"{size:g}" for size in shaping.thicknesses_mm)
    yield "Thicknesses", f"{sizes} mm"
    for rule in shaping.strips:
        widths = f"made from {rule.stops_mm:g} mm"
        if rule.cautions_mm > rule.stops_mm:
            widths += f", with care up to {rule.cautions_mm:g} mm"
        yield "Strip beside", f"{rule.beside}: {widths}"
    mix = w.recipe
    cement = f"{mix.cement_kg_per_m3:.0f} kg/m³ of {mix.cement} cement"
    ratio = f"w/c {mix.water_cement_ratio:.2f}"
    weighs = f"{mix.density_kg_per_m3:.0f} kg/m³"
    yield "Concrete", f"{mix.name}: {mix.fck_mpa:g} MPa, {cement}, {ratio}, {weighs}"


def _offers(w: Workshop) -> _Rows:
    yield from _listed("Palette", (_shade(shade) for shade in w.palette))
    yield from _listed("Finishes", (f"{f.surface}: {f.says}" for f in w.finishes))
    yield from _listed("Sealers", (_sealer(sealer) for sealer in w.sealers))
    edges = (f"{e.profile} {e.smallest_mm:g}-{e.largest_mm:g} mm" for e in w.edges)
    yield "Edges", ", ".join(edges)


def _tax(w: Workshop) -> str:
    if not w.tax.registered:
        return "none is charged"
    rates = {w.tax.percent, w.tax.fitted_percent}
    rates |= {rate for a in w.areas for rate in (a.tax_percent, a.fitted_tax_percent)}
    others = sorted(rates - {None, w.tax.percent}, key=lambda rate: rate or 0)
    by_place = "".join(f", or {rate:f} %" for rate in others)
    return f"{w.tax.name} {w.tax.percent:f} %{by_place}"


def _delivers(w: Workshop) -> _Rows:
    yield from _listed("Delivery", (_area(area, w.workshop.currency) for area in w.areas))
    yield from () if w.areas else (("Delivery", "none: customers collect"),)


def _charges(w: Workshop) -> _Rows:
    rates, offer, unit = w.rates, w.offer, w.workshop.currency
    yield "Rates", f"{_money(rates.hour, unit)} an hour; margin {rates.margin_percent:f} %"
    yield "Tax", _tax(w)
    deposit = f"deposit {offer.deposit_percent:f} %"
    yield "Offer", f"{offer.standing}, stands {offer.valid_days} days, {deposit}"
    yield "", f"smallest order {_money(offer.smallest_order, unit)} before delivery and tax"
    if w.sample is not None:
        tile = f"{_money(w.sample.price, unit)}, taken off as the order goes ahead"
        value = w.sample.always_from
        always = "" if value is None else f"; always from {_money(value, unit)} on"
        yield "Sample tile", f"{tile}{always}"


def _moves(w: Workshop) -> _Rows:
    yield from _listed(
        "Handling", (f"{way.name}, up to {way.most_kg:g} kg" for way in w.handling.ways)
    )
    loads = w.loads
    yield "Bears", f"{loads.even_n_per_m2:g} N/m² all over, {loads.point_n:g} N anywhere"
    strips = len(w.concrete.tested)
    trusted = (
        f"{strips} strips tested" if strips else f"{w.concrete.untested_percent:g} % of EN 1992"
    )
    yield "Trusted", trusted


def _works(w: Workshop) -> _Rows:
    calendar = w.calendar
    hands = "one pair of hands" if calendar.hands == 1 else f"{calendar.hands} pairs of hands"
    yield "Hours", f"{hands}, {calendar.hours_per_day:g} hours on {', '.join(calendar.weekdays)}"
    shut = (f"{c.first} to {c.last} ({c.why})" for c in calendar.closures)
    yield from _listed("Shut", shut)
    yield "Fingerprint", w.fingerprint


_PARTS = (_who, _makes, _offers, _moves, _delivers, _charges, _works)


def _listed(title: str, items: Iterable[str]) -> _Rows:
    """Yield the items in rows, the title beside the first alone."""
    for i, item in enumerate(items):
        yield ("" if i else title), item


def _shade(shade: PaletteShade) -> str:
    doses = ", ".join(f"{dose.pigment} {dose.percent:g} %" for dose in shade.doses)
    return f"{shade.name} {shade.colour}: {shade.cement} cement, {doses or 'no pigment'}"


def _sealer(sealer: Sealer) -> str:
    return f"{sealer.name}: {sealer.kind}, {sealer.coats} coats, {', '.join(sealer.places)}"


def _area(area: Area, unit: str) -> str:
    ways = {"pallet": area.pallet, "own van": area.own_van, "fitted": area.fitted}
    prices = ", ".join(f"{way} {_money(p, unit)}" for way, p in ways.items() if p is not None)
    return f"{area.name} ({len(area.postcodes)} beginnings of postcodes): {prices}"


def _money(amount: Decimal, unit: str) -> str:
    return f"{unit} {amount:.2f}"


# --- what is worth a second look ------------------------------------------------------------


def _strong_shades(w: Workshop) -> Iterator[str]:
    for shade in w.palette:
        total = sum(dose.percent for dose in shade.doses)
        if total > ADVISED_PERCENT:
            yield (
                f"{shade.name} takes {total:g} % pigment; ASTM C979 clause 1.4 allows "
                f"{ADVISED_PERCENT:g} % of the cement in all."
            )
        elif total > HARDLY_DEEPER_PERCENT:
            yield (
                f"{shade.name} takes {total:g} % pigment; past {HARDLY_DEEPER_PERCENT:g} % a shade "
                "hardly deepens and the mix wants more water."
            )


def _unsealed_places(w: Workshop) -> Iterator[str]:
    for place in ("indoors", "wet-room", "outdoors"):
        if not any(place in sealer.places for sealer in w.sealers):
            yield f"No sealer is for {place}, so no order for that place can be made."


def _still_invented(w: Workshop) -> Iterator[str]:
    """What customers read and still is the demonstration's. No letter reaches an example.com."""
    if w.workshop.name == _INVENTED:
        return
    if any(_INVENTED in line for line in w.reply.signature):
        yield f"Replies are still signed by {_INVENTED}, which is invented: see [reply]."
    if w.workshop.email.endswith("example.com"):
        yield f"No letter reaches {w.workshop.email}: write an address of yours there."


def _coarse(w: Workshop) -> Iterator[str]:
    largest, thinnest = w.recipe.largest_aggregate_mm, w.shaping.thinnest_mm
    if largest > thinnest / 3:
        yield (
            f"The largest grain, {largest:g} mm, is more than a third of the thinnest slab, "
            f"{thinnest:g} mm (ACI 318-19 26.4.2.1)."
        )


def _coarse_face(w: Workshop) -> Iterator[str]:
    coat, grain_mm = w.recipe.face_coat, w.recipe.largest_aggregate_mm
    if coat is not None and not coat.without and grain_mm > coat.largest_grain_mm:
        yield (
            f"Grains of {grain_mm:g} mm are coarse for {coat.thickness_mm:g} mm of face coat,"
            f" a third of which is {coat.largest_grain_mm:.1f} mm. Name what it is mixed without."
        )


def _admixtures(w: Workshop) -> Iterator[str]:
    found = proportions.admixture_g_per_kg(w.recipe.parts)
    if found > ADVISED_ADMIXTURE_G_PER_KG:
        yield (
            f"Plasticiser comes to {found:.0f} g on a kilogram of cement; EN 206 5.2.6 allows "
            f"{ADVISED_ADMIXTURE_G_PER_KG:g} g of admixtures in all."
        )
