"""``init --ask``: the twenty questions that matter, asked one by one; answers become a profile."""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal
from typing import Any, Final, TextIO

from ledgerstone.wording.places import currency_of, time_zones_of
from ledgerstone.workshop.consistency import inconsistencies
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.lines import Path
from ledgerstone.workshop.records import Area, Workshop
from ledgerstone.workshop.schemas import read_value, written

_NUMBER: Final = re.compile(r"[0-9]+(?:[.,][0-9]+)?")
_NONE: Final = frozenset({"no", "none", "nein", "-", "0"})
_TIMES: Final = re.compile(r"\s*[x×*]\s*|\s+by\s+", re.IGNORECASE)


class Unanswered(Exception):
    """The answers ended before the questions did."""


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


def ask_country(usual: str, answers: TextIO, out: TextIO) -> str:
    """Ask in which country the workshop stands: much of the rest is usual there.

    Raises
    ------
    Unanswered
    """
    while True:
        asks = f"1/{_COUNT} Country, by its two letters (GB, DE, US) [{usual}]"
        answer = _asked(asks, answers, out)
        country = (answer or usual).upper()
        if re.fullmatch("[A-Z]{2}", country):
            return country
        out.write("    Write two letters, like GB.\n")


def answered(
    example: Workshop, country: str, answers: TextIO, out: TextIO
) -> tuple[Workshop, frozenset[Path]]:
    """Ask every other question, each again until its answer reads, and return what was answered.

    Returns
    -------
    workshop
        The example with the answers in it.
    confirmed
        The keys that were asked for: they are the maker's, whatever was answered.

    Raises
    ------
    Unanswered
    """
    workshop = _in_country(example, country)
    confirmed: frozenset[Path] = frozenset({("workshop", "country")})
    for number, question in enumerate(QUESTIONS, 2):
        asks = f"{number}/{_COUNT} {question.asks}{_brackets(question, workshop)}"
        changed: Workshop | None = None
        while changed is None:
            changed, why = _tried(question, workshop, _asked(asks, answers, out))
            if changed is None:
                out.write(f"    {why}\n")
        workshop = changed
        confirmed |= set(question.paths)
    return workshop, confirmed


def _asked(asks: str, answers: TextIO, out: TextIO) -> str:
    out.write(f"{asks}: ")
    out.flush()
    line = answers.readline()
    if not line:
        raise Unanswered
    return line.strip()


def _brackets(question: Question, workshop: Workshop) -> str:
    now = question.now(workshop)
    return f" [{now}]" if now else ""


def _tried(question: Question, workshop: Workshop, text: str) -> tuple[Workshop | None, str]:
    """Put an answer in and look at what it does: the workshop, or the reason why not."""
    text = text or question.now(workshop)
    try:
        changed = question.put(workshop, text)
    except ValueError as reason:
        return None, str(reason)
    sections = {f.name: getattr(changed, f.name) for f in written(Workshop)}
    for path, says in inconsistencies(sections):
        if any(path[: len(asked)] == asked for asked in question.paths):
            return None, says
    return changed, ""


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


def _in_country(workshop: Workshop, country: str) -> Workshop:
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


_COUNT: Final = 1 + len(QUESTIONS)


def confirmed_keys(workshop: Workshop, confirmed: frozenset[Path]) -> dict[str, list[str]]:
    """Give the keys that were asked for and are there, by their tables.

    An offer's own ``standing`` is another thing, so that its values are confirmed by none.
    """
    tables: dict[str, list[str]] = {}
    for path in sorted(confirmed, key=str):
        if path[0] != "offer" and _value_at(workshop, path) is not None:
            tables.setdefault(str(path[0]), []).append(str(path[-1]))
    return tables


def _value_at(workshop: Workshop, path: Path) -> object:
    part: Any = workshop
    for step in path:
        part = part[step] if isinstance(step, int) else getattr(part, step)
    return part
