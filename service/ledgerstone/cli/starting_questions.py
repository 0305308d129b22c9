"""The questions of ``init --ask``, and the keys of a profile that their answers set."""

from __future__ import annotations

import dataclasses
import re
from typing import Any, Final

from ledgerstone.cli.question import Question, one_key, raw_of, shown_of, with_answers
from ledgerstone.message import Message
from ledgerstone.wording import workshop_speech
from ledgerstone.workshop.countries.public_holidays import part_named
from ledgerstone.workshop.form.bags import BAG, UNTESTED_PERCENT
from ledgerstone.workshop.keys.values import ValueRejected
from ledgerstone.workshop.keys.warmth import by_month
from ledgerstone.workshop.records import Bag, DeliveryArea, Workshop
from ledgerstone.workshop.records.schemas import read_value
from ledgerstone.workshop.review.advice import no_postcodes
from ledgerstone.workshop.standing import WARMTH_PATH

NONE: Final = "none"
_NONE: Final = frozenset({NONE, "no", "nein", "keine", "keiner", "kein", "-", "0"})
_LIST: Final = re.compile(r"[;,]\s+|;")
_OF_A_BAG: Final = ("bag_kg", "water_l_per_bag", "yield_l", "price_per_bag")
_TIMES: Final = re.compile(r"\s*[x×*]\s*|\s+by\s+", re.IGNORECASE)


def _region(workshop: Workshop, answer: str) -> Workshop:
    """Set the workshop's region, which has public holidays of its own."""
    region = part_named(answer, workshop.workshop.country) or answer
    if region == workshop.workshop.region:
        return workshop
    moved = dataclasses.replace(workshop.workshop, region=region)
    kept = dataclasses.replace(workshop.calendar, holidays_added=(), holidays_worked=())
    return dataclasses.replace(workshop, workshop=moved, calendar=kept)


def _table(workshop: Workshop, answer: str) -> Workshop:
    sizes = [part.strip() for part in _TIMES.split(answer) if part.strip()]
    if len(sizes) != 2:
        raise ValueRejected(Message("init-two-sizes"))
    length, width = (raw_of(size, ("table", "length_mm"), workshop) for size in sizes)
    return with_answers(workshop, "table", length_mm=length, width_mm=width)


def _table_now(workshop: Workshop) -> str:
    sides = (workshop.table.length_mm, workshop.table.width_mm)
    return " x ".join(shown_of(side, ("table", "length_mm"), workshop) for side in sides)


def _thicknesses(workshop: Workshop, answer: str) -> Workshop:
    path = ("shaping", "thickest_mm")
    listed = [part.strip() for part in _LIST.split(answer) if part.strip()]
    parts = [raw_of(part, path, workshop) for part in listed]
    sizes = sorted(read_value(type(workshop.shaping), "thickest_mm", part) for part in parts)
    shaping = dataclasses.replace(
        workshop.shaping,
        thicknesses_mm=tuple(sizes),
        thinnest_mm=sizes[0] if sizes else 0.0,
        thickest_mm=sizes[-1] if sizes else 0.0,
    )
    return dataclasses.replace(workshop, shaping=shaping)


def _thicknesses_now(workshop: Workshop) -> str:
    path = ("shaping", "thickest_mm")
    return ", ".join(shown_of(size, path, workshop) for size in workshop.shaping.thicknesses_mm)


def _tax(workshop: Workshop, answer: str) -> Workshop:
    if answer.casefold() in _NONE:
        return with_answers(workshop, "tax", registered=False)
    return with_answers(
        workshop,
        "tax",
        registered=True,
        percent=raw_of(answer.removesuffix("%").strip(), ("tax", "percent"), workshop),
    )


def _tax_now(workshop: Workshop) -> str:
    return f"{workshop.tax.percent:f}" if workshop.tax.registered else NONE


def _postcodes(workshop: Workshop, answer: str) -> Workshop:
    codes = tuple(part.upper() for part in re.split(r"[,;\s]+", answer) if part)
    strange = no_postcodes(codes, workshop)
    if strange is not None:
        raise ValueRejected(strange)
    first = workshop.areas[0] if workshop.areas else DeliveryArea(name="", postcodes=())
    speech = workshop_speech(workshop.workshop.language, workshop)
    name = speech.say(Message("init-around", town=workshop.workshop.town))
    area = dataclasses.replace(
        first, name=name, postcodes=codes, tax_percent=None, fitted_tax_percent=None
    )
    return dataclasses.replace(workshop, areas=(area,))


def _in_area(key: str) -> Question:
    """Return the question for a delivery's price in the one area; "none" leaves it out."""

    def put(workshop: Workshop, answer: str) -> Workshop:
        none = answer.casefold() in _NONE
        value: Any = None if none else read_value(DeliveryArea, key, raw_of(answer, path, workshop))
        changed = dataclasses.replace(workshop.areas[0], **{key: value})
        return dataclasses.replace(workshop, areas=(changed,))

    def now(workshop: Workshop) -> str:
        value = getattr(workshop.areas[0], key)
        return NONE if value is None else f"{value:f}"

    path = ("areas", 0, key)
    return Question(key, (path,), put, now)


def role_at(workshop: Workshop, role: str) -> int:
    """Return the place of a recipe's first part of a role."""
    return next(i for i, part in enumerate(workshop.recipe.constituents) if part.role == role)


def _bag(workshop: Workshop, answer: str) -> Workshop:
    """Set a bag in the place of a recipe by volume; "none" leaves that."""
    if answer.casefold() in _NONE:
        return workshop
    values = [part.strip().removesuffix("%") for part in _LIST.split(answer) if part.strip()]
    if len(values) != len(_OF_A_BAG):
        raise ValueRejected(Message("init-of-a-bag"))
    raw = {
        key: raw_of(text, (*BAG, key), workshop)
        for key, text in zip(_OF_A_BAG, values, strict=True)
    }
    speech = workshop_speech(workshop.workshop.language, workshop)
    bag = Bag(
        name=speech.say(Message("init-bag")),
        **{key: read_value(Bag, key, value) for key, value in raw.items()},
    )
    recipe = dataclasses.replace(
        workshop.recipe, constituents=(), face_coat=None, weighed_kg_per_m3=None, bag=bag
    )
    trusted = dataclasses.replace(workshop.concrete, untested_percent=UNTESTED_PERCENT)
    return dataclasses.replace(workshop, recipe=recipe, concrete=trusted)


def _warmth(workshop: Workshop, answer: str) -> Workshop:
    """Set how warm the workshop is by month, of one number or of winter's and summer's."""
    if answer == _warmth_now(workshop):
        return workshop
    raw = [raw_of(part, WARMTH_PATH, workshop) for part in answer.replace(";", " ").split()]
    read = read_value(type(workshop.handling), WARMTH_PATH[1], raw)
    if len(read) not in (1, 2):
        raise ValueRejected(Message("init-warmth"))
    months = by_month(read[0], read[-1], workshop.workshop.country)
    handling = dataclasses.replace(workshop.handling, workshop_c=months)
    return dataclasses.replace(workshop, handling=handling)


def _warmth_now(workshop: Workshop) -> str:
    by_month = workshop.handling.workshop_c
    return " ".join(
        shown_of(round(c), WARMTH_PATH, workshop) for c in (min(by_month), max(by_month))
    )


QUESTIONS: Final[tuple[Question, ...]] = (
    Question(
        "region",
        (("workshop", "region"),),
        _region,
        lambda w: w.workshop.region,
        is_number=False,
    ),
    one_key("workshop", "timezone", text=True),
    one_key("workshop", "name", default=False, text=True),
    one_key("workshop", "town", default=False, text=True),
    one_key("workshop", "email", default=False, text=True),
    one_key("workshop", "telephone", default=False, text=True),
    Question(
        "table",
        (("table", "length_mm"), ("table", "width_mm")),
        _table,
        _table_now,
    ),
    Question(
        "thicknesses",
        (("shaping", "thicknesses_mm"), ("shaping", "thinnest_mm"), ("shaping", "thickest_mm")),
        _thicknesses,
        _thicknesses_now,
    ),
    one_key("rates", "hour"),
    Question(
        "tax",
        (("tax", "registered"), ("tax", "name"), ("tax", "percent")),
        _tax,
        _tax_now,
    ),
    one_key("offer", "deposit_percent"),
    one_key("recipe", "fck_mpa"),
    Question("bag", (BAG,), _bag, lambda w: NONE if w.recipe.bag is None else w.recipe.bag.name),
    one_key("calendar", "hands"),
    one_key("calendar", "hours_per_day"),
    one_key("calendar", "orders_ahead_days"),
    Question("warmth", (WARMTH_PATH,), _warmth, _warmth_now),
    Question(
        "postcodes",
        (("areas", 0, "name"), ("areas", 0, "postcodes")),
        _postcodes,
        lambda _: "",
    ),
    _in_area("pallet"),
    _in_area("own_van"),
    _in_area("fitted"),
)
