"""One question of ``init --ask``, and its answer as a value of the profile."""

from __future__ import annotations

import dataclasses
from collections.abc import Callable
from dataclasses import dataclass
from decimal import Decimal

from ledgerstone.json_types import KeyPath
from ledgerstone.wording.speech import number_marks
from ledgerstone.workshop.entry.entries import entry_of
from ledgerstone.workshop.entry.local_units import is_fraction, local_unit, number_shown, with_unit
from ledgerstone.workshop.keys.measures import without_thing
from ledgerstone.workshop.keys.numerals import decimal_of, number_of
from ledgerstone.workshop.keys.steel_sizes import size_named
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.members import member_at
from ledgerstone.workshop.records.schemas import read_value


@dataclass(frozen=True, slots=True)
class Question:
    """One question.

    Attributes
    ----------
    asks
        Name of the question in the catalogues.
    paths
        The keys that an answer sets.
    put
        Returns the workshop with an answer set; raises ``ValueRejected`` with the reason.
    now
        The default answer; if it is empty, the question must be answered.
    is_asked
        Whether it makes sense after the answers before it.
    is_number
        Whether its answer is one number or several, and no text.
    """

    asks: str
    paths: tuple[KeyPath, ...]
    put: Callable[[Workshop, str], Workshop]
    now: Callable[[Workshop], str]
    is_asked: Callable[[Workshop], bool] = lambda _: True
    is_number: bool = True


# --- answers into records -------------------------------------------------------------------


def raw_of(text: str, path: KeyPath, workshop: Workshop) -> object:
    """Return a number, with a point or a comma, with the workshop's unit; else the text."""
    member, place = member_at(path), workshop.place.at_work()
    mark = number_marks(workshop.workshop.language, place).point
    text = text if member is None else size_named(text, member.name, local_unit(member, place))
    bare = text if member is None else without_thing(entry_of(text, member, mark), member.name)
    number = number_of(bare, mark)
    if member is not None and local_unit(member, place) != member.unit:
        return with_unit(number or bare, member, place) if number or is_fraction(bare) else text
    number = number or decimal_of(bare, mark)
    if number is None:
        return text
    return int(number) if number.isdecimal() else Decimal(number)


def shown_of(value: object, path: KeyPath, workshop: Workshop) -> str:
    """Return a value as it would be entered, a number in the workshop's unit."""
    member = member_at(path)
    exact = Decimal(repr(value)) if isinstance(value, float) else value
    number = None if member is None else number_shown(exact, member, workshop.place.at_work())
    return str(value) if number is None else number.removesuffix(".0")


def with_answers(workshop: Workshop, table: str, **answers: object) -> Workshop:
    """Return the workshop with values of one table read and set."""
    record = getattr(workshop, table)
    read = {key: read_value(type(record), key, value) for key, value in answers.items()}
    return dataclasses.replace(workshop, **{table: dataclasses.replace(record, **read)})


def one_key(
    table: str, key: str, *, default: bool = True, text: bool = False, asks: str = ""
) -> Question:
    """Return the question for the value of one key."""

    def put(workshop: Workshop, answer: str) -> Workshop:
        value = answer if text else raw_of(answer, path, workshop)
        return with_answers(workshop, table, **{key: value})

    def now(workshop: Workshop) -> str:
        return shown_of(getattr(getattr(workshop, table), key), path, workshop) if default else ""

    path = (table, key)
    return Question(asks or key, (path,), put, now, is_number=not text)
