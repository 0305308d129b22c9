"""The questions of ``init --ask`` that matter most, and where their answers go in a profile."""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from typing import Any, Final

from ledgerstone.wording.places import currency_of, time_zones_of
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.lines import Path
from ledgerstone.workshop.records import Area, Workshop
from ledgerstone.workshop.schemas import read_value

_NUMBER: Final = re.compile(r"[0-9]+(?:[.,][0-9]+)?")
_NONE: Final = frozenset({"no", "none", "nein", "-", "0"})
_TIMES: Final = re.compile(r"\s*[x×*]\s*|\s+by\s+", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class Question:
    """One question.

    Attributes
    ----------
    asks
        What is asked, one line.
    paths
        The keys that an answer sets.
    put
        Returns the workshop with an answer put in; raises ``ValueError`` with the reason.
    now
        What stands where nothing is answered; an empty text must be answered.
    """

    asks: str
    paths: tuple[Path, ...]
    put: Callable[[Workshop, str], Workshop]
    now: Callable[[Workshop], str]


# --- answers into records -------------------------------------------------------------------


def _raw(text: str) -> object:
    """A number where the text is one, with a point or a comma; else the text."""
    if _NUMBER.fullmatch(text):
        return Decimal(text.replace(",", "."))
    return text


def _with(workshop: Workshop, table: str, **answers: object) -> Workshop:
    """Return the workshop with values of one table read and put in."""
    record = getattr(workshop, table)
    read = {key: read_value(type(record), key, value) for key, value in answers.items()}
    return dataclasses.replace(workshop, **{table: dataclasses.replace(record, **read)})


def _one(table: str, key: str, asks: str, *, default: bool = True, text: bool = False) -> Question:
    """Ask for the value of one key."""

    def put(workshop: Workshop, answer: str) -> Workshop:
        return _with(workshop, table, **{key: answer if text else _raw(answer)})

    def now(workshop: Workshop) -> str:
        return _shown(getattr(getattr(workshop, table), key)) if default else ""

    return Question(asks, ((table, key),), put, now)


def _shown(value: object) -> str:
    return format(value, "g") if isinstance(value, float) else str(value)


def in_country(workshop: Workshop, country: str) -> Workshop:
    """Move a workshop to a country: its money, its clocks where it has one, its tax's name."""
    if country == workshop.workshop.country:
        return workshop
    zones = time_zones_of(country)
    moved = dataclasses.replace(
        workshop.workshop,
        country=country,
        region="",
        currency=currency_of(country) or workshop.workshop.currency,
        timezone=zones[0] if len(zones) == 1 else workshop.workshop.timezone,
    )
    tax = dataclasses.replace(workshop.tax, name=usual_in(country).tax_name)
    return dataclasses.replace(workshop, workshop=moved, tax=tax)


def _region(workshop: Workshop, answer: str) -> Workshop:
    """Move the workshop to a part of its country, where other days are kept."""
    region = answer.upper() if len(answer) <= 3 else answer
    if region == workshop.workshop.region:
        return workshop
    moved = dataclasses.replace(workshop.workshop, region=region)
    kept = dataclasses.replace(workshop.calendar, holidays_added=(), holidays_worked=())
    return dataclasses.replace(workshop, workshop=moved, calendar=kept)


def _table(workshop: Workshop, answer: str) -> Workshop:
    sizes = [part.strip() for part in _TIMES.split(answer) if part.strip()]
    if len(sizes) != 2:
        raise ValueError("Write its length and its width, like 2700 x 1200 or 120 in x 48 in.")
    return _with(workshop, "table", length_mm=_raw(sizes[0]), width_mm=_raw(sizes[1]))


def _table_now(workshop: Workshop) -> str:
    return f"{workshop.table.length_mm:g} x {workshop.table.width_mm:g}"


def _thicknesses(workshop: Workshop, answer: str) -> Workshop:
    parts = [_raw(part.strip()) for part in re.split(r"[;,]\s+|;", answer) if part.strip()]
    sizes = sorted(read_value(type(workshop.shaping), "thickest_mm", part) for part in parts)
    shaping = dataclasses.replace(
        workshop.shaping,
        thicknesses_mm=tuple(sizes),
        thinnest_mm=sizes[0] if sizes else 0.0,
        thickest_mm=sizes[-1] if sizes else 0.0,
    )
    return dataclasses.replace(workshop, shaping=shaping)


def _thicknesses_now(workshop: Workshop) -> str:
    return ", ".join(f"{size:g}" for size in workshop.shaping.thicknesses_mm)


def _tax(workshop: Workshop, answer: str) -> Workshop:
    if answer.casefold() in _NONE:
        return _with(workshop, "tax", registered=False)
    return _with(workshop, "tax", registered=True, percent=_raw(answer.removesuffix("%").strip()))


def _tax_now(workshop: Workshop) -> str:
    return f"{workshop.tax.percent:f}" if workshop.tax.registered else "none"


def _postcodes(workshop: Workshop, answer: str) -> Workshop:
    codes = tuple(part.upper() for part in re.split(r"[,;\s]+", answer) if part)
    first = workshop.areas[0] if workshop.areas else Area(name="", postcodes=())
    name = f"Around {workshop.workshop.town}"
    if workshop.workshop.language == "de":
        name = f"Rund um {workshop.workshop.town}"
    one = dataclasses.replace(
        first, name=name, postcodes=codes, tax_percent=None, fitted_tax_percent=None
    )
    return dataclasses.replace(workshop, areas=(one,))


def _in_area(key: str, asks: str) -> Question:
    """Ask what a delivery costs in the one area; none is a way that is not offered."""

    def put(workshop: Workshop, answer: str) -> Workshop:
        none = answer.casefold() in _NONE
        value: Any = None if none else read_value(Area, key, _raw(answer))
        changed = dataclasses.replace(workshop.areas[0], **{key: value})
        return dataclasses.replace(workshop, areas=(changed,))

    def now(workshop: Workshop) -> str:
        value = getattr(workshop.areas[0], key)
        return "none" if value is None else f"{value:f}"

    return Question(asks, (("areas", 0, key),), put, now)


def _address(workshop: Workshop, answer: str) -> Workshop:
    address = answer.rstrip("/")
    return _with(workshop, "web", base_url=address, page_url=f"{address}/")


QUESTIONS: Final[tuple[Question, ...]] = (
    Question(
        "State or part, for public holidays (ENG, BY, WA)",
        (("workshop", "region"),),
        _region,
        lambda w: w.workshop.region,
    ),
    _one("workshop", "timezone", "Time zone", text=True),
    _one("workshop", "name", "Your workshop's name", default=False, text=True),
    _one("workshop", "town", "Your town", default=False, text=True),
    _one("workshop", "email", "Where customers write", default=False, text=True),
    _one("workshop", "telephone", "Where customers call", default=False, text=True),
    _one("workshop", "language", "Language of customers who ask for no other (en, de)", text=True),
    Question(
        "Your casting table, length x width in mm (or 120 in x 48 in)",
        (("table", "length_mm"), ("table", "width_mm")),
        _table,
        _table_now,
    ),
    Question(
        "Thicknesses you cast, in mm, with commas",
        (("shaping", "thicknesses_mm"), ("shaping", "thinnest_mm"), ("shaping", "thickest_mm")),
        _thicknesses,
        _thicknesses_now,
    ),
    _one("recipe", "fck_mpa", "Your concrete's strength at 28 days, in MPa (or 5000 psi)"),
    _one("rates", "hour", "One hour of hands costs"),
    _one("rates", "margin_percent", "Margin on what it costs you, in percent"),
    Question(
        "Tax you charge, in percent; none where you are not registered",
        (("tax", "registered"), ("tax", "name"), ("tax", "percent")),
        _tax,
        _tax_now,
    ),
    _one("offer", "deposit_percent", "Deposit, in percent of the total"),
    Question(
        "Postcodes you deliver to, by their beginnings, with commas",
        (("areas", 0, "name"), ("areas", 0, "postcodes")),
        _postcodes,
        lambda _: "",
    ),
    _in_area("pallet", "A pallet set down there costs; none if you send none"),
    _in_area("own_van", "Your own van there costs; none if you have none"),
    _in_area("fitted", "Delivered and fitted costs; none if you do not fit"),
    Question(
        "The address that customers will open (https://slabs.example.com)",
        (("web", "base_url"), ("web", "page_url")),
        _address,
        lambda w: w.web.base_url,
    ),
)
