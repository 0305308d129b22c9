"""Every amount, day, weight, length and share that a customer reads is the wire's, by Babel.

Babel's data are Unicode's (CLDR); nothing here is written by our own formats.
"""

import math
import random
import re
from collections.abc import Iterator
from contextlib import suppress
from dataclasses import asdict
from datetime import date, timedelta
from decimal import Decimal
from fractions import Fraction
from typing import Any, Final

import pytest
from babel.dates import format_date
from babel.numbers import parse_decimal

from ledgerstone.errors import QuantityError
from ledgerstone.quantities import Length
from workshops.conftest import WorkshopCase
from workshops.reading import LOCALES, plain, read

SYMBOL: Final = {"demonstration": "£", "germany": "€", "united_states": "$"}
NUMBER: Final = r"\d[\d.,]*\d|\d"
KG_PER_LB: Final = 0.45359237
MM_PER: Final = {"mm": 1.0, "cm": 10.0, "m": 1000.0, "in": 25.4, "Zoll": 25.4}
LENGTH: Final = (
    rf"(about |etwa |rund )?(?<![\w/.,])((?:\d+ )?\d+/\d+|{NUMBER}) ?(mm|cm|m|in|Zoll)\b(?![²³/])"
)
LARGER: Final = {
    "demonstration": ("2100 mm", "62 cm"),
    "germany": ("2,1 m", "620 mm"),
    "united_states": ("82 1/2 in", "24 1/2 in"),
}


def wire(document: object, *endings: str) -> Iterator[Any]:
    """Every value of a member whose key ends so."""
    if isinstance(document, dict):
        for key, value in document.items():
            if key.endswith(endings) and not isinstance(value, dict | list):
                yield value
            yield from wire(value, *endings)
    elif isinstance(document, list):
        for one in document:
            yield from wire(one, *endings)


# Orders that are drawn by chance: some every day, the others on demand.
DAILY, IN_ALL = 4, 60
CHANCE: Final = [
    pytest.param(seed, marks=() if seed < DAILY else pytest.mark.long) for seed in range(IN_ALL)
]


@pytest.fixture(params=["usual", "larger", "outdoors, several", *CHANCE])
def told(request: pytest.FixtureRequest, shop: WorkshopCase) -> tuple[dict[str, Any], str]:
    """An answer on the wire, and all that a customer reads of it: page and letter."""
    order = shop.order()
    if request.param in ("larger", "outdoors, several"):
        length, width = LARGER[shop.name]
        order["slabs"][0]["outline"].update(length=length, width=width)
    if request.param == "outdoors, several":
        order["slabs"][0].update(place="outdoors", quantity=3, cutouts=[])
        order["sample_tile"] = True
    if isinstance(request.param, int):
        order = drawn_order(shop, random.Random(request.param))  # noqa: S311  no secret
    sent = shop.client.post("/v1/quotes", json=order)
    answer = sent.get_json()
    said = list(read(answer))
    if sent.status_code == 200:
        letter = shop.asked_by_the_maker("/v1/replies", {"order": order})
        said += [letter["subject"], letter["text"]]
    else:
        assert sent.status_code == 422, answer
    return answer, plain(" ".join(said)).replace("−", "-")


def drawn_order(shop: WorkshopCase, chance: random.Random) -> dict[str, Any]:
    """An order as it comes: up to three slabs of any size, look and place, by any way."""
    workshop, order = shop.workshop, shop.order()
    top = order["slabs"][0]
    slabs = []
    for _ in range(chance.choice([1, 1, 2, 3])):
        place = chance.choice(["indoors", "wet-room", "outdoors"])
        sealers = [one.name for one in workshop.sealers if place in one.places]
        surface = chance.choice(workshop.finishes).surface
        slab = {
            **top,
            "outline": {
                "kind": "rectangle",
                "length": typed(shop, chance.uniform(500, 2500)),
                "width": typed(shop, chance.uniform(300, 900)),
            },
            "thickness": typed(shop, chance.choice(workshop.shaping.thicknesses_mm)),
            "shade": {"name": chance.choice(workshop.palette).name},
            "finish": {"surface": surface, "sealer": chance.choice(sealers)},
            "place": place,
            "quantity": chance.choice([1, 1, 1, 2, 4]),
            "cutouts": top["cutouts"] if chance.random() < 0.3 else [],
        }
        slabs.append(slab)
    kind = chance.choice(["pallet", "own_van", "fitted", "collect"]).replace("_", "-")
    postcode = {} if kind == "collect" else {"postcode": shop.typed["postcode"]}
    more = {"needed_by": "2027-03-01"} if chance.random() < 0.3 else {}
    return {**order, "slabs": slabs, "delivery": {"kind": kind, **postcode}, **more}


def typed(shop: WorkshopCase, mm: float) -> str:
    """A length as customers there type it: to the millimetre, or to a sixteenth of an inch."""
    if shop.name == "united_states":
        whole, rest = divmod(round(mm / 25.4 * 16), 16)
        return f"{whole} {rest}/16 in" if rest else f"{whole} in"
    return f"{mm / 10:.1f} cm".replace(".", ",") if shop.name == "germany" else f"{mm:.0f} mm"


def test_every_amount_is_the_wire_s(shop: WorkshopCase, told: tuple[dict[str, Any], str]) -> None:
    """Each amount beside the currency's sign reads, strictly, as one of the answer's own."""
    quote, said = told
    sign = re.escape(SYMBOL[shop.name])
    found = re.findall(rf"{sign} ?({NUMBER})|({NUMBER}) ?{sign}", said)
    keys = ("amount", "total", "net", "tax", "deposit", "price", "change", "save", "saves")
    known = {abs(Decimal(str(value))) for value in wire(quote, *keys) if is_number(value)}
    assert found or "findings" in quote
    amounts = {
        parse_decimal(one or other, locale=LOCALES[shop.name], strict=True) for one, other in found
    }
    assert amounts <= known


def is_number(value: object) -> bool:
    """Return whether a member is an amount."""
    return re.fullmatch(r"-?\d+(\.\d+)?", str(value)) is not None


def test_every_day_is_the_wire_s(shop: WorkshopCase, told: tuple[dict[str, Any], str]) -> None:
    """Whatever looks like a day with its year is, letter by letter, one of the answer's own."""
    quote, said = told
    locale = LOCALES[shop.name]
    days = {date.fromisoformat(str(v)) for v in _dates(quote)}
    days |= {day + timedelta(days=step) for day in days for step in (-1, 1)}
    for shut in shop.workshop.calendar.closures:
        days |= {shut.first, shut.last}
    known = {format_date(day, "long", locale=locale) for day in days}
    months = "|".join({format_date(date(2026, m, 1), "MMMM", locale=locale) for m in range(1, 13)})
    shapes = {
        "demonstration": rf"\d\d? (?:{months}) \d{{4}}",
        "germany": rf"\d\d?\. (?:{months}) \d{{4}}",
        "united_states": rf"(?:{months}) \d\d?, \d{{4}}",
    }
    found = set(re.findall(shapes[shop.name], said))
    assert found or "issued" not in quote
    assert found <= known


def _dates(document: object) -> Iterator[str]:
    if isinstance(document, dict):
        for value in document.values():
            yield from _dates(value)
    elif isinstance(document, list):
        for value in document:
            yield from _dates(value)
    elif isinstance(document, str) and re.fullmatch(r"\d{4}-\d\d-\d\d", document):
        yield document


def test_every_weight_is_the_wire_s(shop: WorkshopCase, told: tuple[dict[str, Any], str]) -> None:
    """Each mass reads, strictly, as one of the answer's, to half of the last place that is said."""
    quote, said = told
    unit, per, within = ("lb", KG_PER_LB, 0.51) if shop.name == "united_states" else ("kg", 1, 0.06)
    known = [float(value) / per for value in wire(quote, "_kg", "kg_per_m") if value is not None]
    # A van is to carry the packed mass, up to the next ten kilograms.
    known += [math.ceil(mass / 10 - 1e-9) * 10 / per for mass in wire(quote, "packed_kg")]
    found = re.findall(rf"({NUMBER}) {unit}\b", said)
    assert found or "weight" not in quote
    for text in found:
        mass = float(parse_decimal(text, locale=LOCALES[shop.name], strict=True))
        assert any(abs(mass - one) <= within for one in known), text


def test_every_length_is_the_wire_s(shop: WorkshopCase, told: tuple[dict[str, Any], str]) -> None:
    """Each length reads, strictly, as one of the answer, of the order or of the profile.

    To half of the last place that is said, half a sixteenth of an inch; where it is about so,
    to half a centimetre. What is worked out of several lengths is worked out here by hand.
    """
    quote, said = told
    known = {
        *lengths_in(quote),
        *(abs(there - here) for here, there in moves_in(quote)),
        *lengths_in(asdict(shop.workshop)),
        *worked_out(quote, shop),
    }
    found = re.findall(LENGTH, said)
    assert found or "findings" in quote
    for about, text, unit in found:
        mm = read_number(text, shop) * MM_PER[unit]
        last = 25.4 / 16 if "/" in text else MM_PER[unit] * last_place(text, shop)
        within = 5.0 if about else last / 2
        assert any(abs(mm - one) <= within + 1e-6 for one in known), f"{text} {unit}"


def worked_out(quote: dict[str, Any], shop: WorkshopCase) -> Iterator[float]:
    """What is told of several lengths, in mm.

    The clear floor of a van, to the next 50 mm or inch; a fall of 1 in 60, up; how wide
    concrete is beside each round opening; and what an opening takes with the strips beside it.
    """
    for length in wire(quote, "length_mm"):
        yield from (math.ceil(length / 50) * 50, math.ceil(length / 25.4) * 25.4)
    for width in wire(quote, "width_mm"):
        yield from (math.ceil(width / 60 / step) * step for step in (1.0, 25.4 / 16))
    strips = [strip.cautions_mm for strip in shop.workshop.shaping.strips]
    strips += [strip.stops_mm for strip in shop.workshop.shaping.strips]
    for slab in quote.get("order", {}).get("slabs", ()):
        rounds = list(rounds_of(slab))
        sides = [Length.parse(slab["outline"][side]).mm for side in ("length", "width")]
        yield from (math.dist(a[:2], b[:2]) - (a[2] + b[2]) / 2 for a in rounds for b in rounds)
        for *centre, wide in rounds:
            yield from (at - wide / 2 for at in centre)
            yield from (side - at - wide / 2 for side, at in zip(sides, centre, strict=True))
            yield from (wide + 2 * strip for strip in strips)


def rounds_of(slab: dict[str, Any]) -> Iterator[tuple[float, float, float]]:
    """Where each round opening of a slab is, and how wide: mm."""
    for one in slab.get("cutouts", ()):
        across, back, wide = one["centre"]["x"], one["centre"]["y"], one["diameter"]
        yield Length.parse(across).mm, Length.parse(back).mm, Length.parse(wide).mm


def test_every_share_is_the_wire_s(shop: WorkshopCase, told: tuple[dict[str, Any], str]) -> None:
    """Each percentage reads, strictly, as a rate of the answer or of the profile, or a use."""
    quote, said = told
    known = {float(value) for value in wire(quote, "percent") if value is not None}
    known |= {round(100 * float(value)) for value in wire(quote, "utilisation")}
    known |= {float(value) for value in wire(asdict(shop.workshop), "percent") if value is not None}
    found = re.findall(rf"({NUMBER}) ?%", said)
    assert {read_number(text, shop) for text in found} <= known
    gaps = {text[-2] == " " for text in re.findall(r"\d ?%", said)}
    assert gaps <= {shop.name == "germany"}  # CLDR: 19 % in German, 20% in English


def read_number(text: str, shop: WorkshopCase) -> float:
    """A number by its country's marks, or inches in fractions."""
    if "/" in text:
        return float(sum(map(Fraction, text.split())))
    return float(parse_decimal(text, locale=LOCALES[shop.name], strict=True))


def last_place(text: str, shop: WorkshopCase) -> float:
    """How much one is in the last place of a number."""
    mark = "," if shop.name == "germany" else "."
    return 0.1 ** len(text.rpartition(mark)[2]) if mark in text else 1.0


def lengths_in(document: object, key: str = "") -> Iterator[float]:
    """Every length of a document, in mm: a text with its unit, a number where its key says so."""
    if isinstance(document, dict):
        for name, part in document.items():
            of_a_place = key.endswith("_mm") and not str(name).endswith(("_mm", "_kg"))
            yield from lengths_in(part, key if of_a_place else str(name))
    elif isinstance(document, list | tuple):
        for part in document:
            yield from lengths_in(part, key)
    elif isinstance(document, str):
        with suppress(QuantityError):
            yield abs(Length.parse(document).mm)
    elif isinstance(document, int | float | Decimal) and key.endswith("_mm"):
        yield abs(float(document))


def moves_in(document: object) -> Iterator[tuple[float, float]]:
    """What each change of a remedy finds at a place, and what it puts there, in mm."""
    if isinstance(document, dict):
        patch = document.get("patch") or []
        tested = {step["path"]: step.get("value") for step in patch if step["op"] == "test"}
        for step in patch:
            if step["op"] == "replace" and step["path"] in tested:
                pair = [list(lengths_in(one)) for one in (tested[step["path"]], step["value"])]
                yield from zip(*pair, strict=False)
        for part in document.values():
            yield from moves_in(part)
    elif isinstance(document, list):
        for part in document:
            yield from moves_in(part)
