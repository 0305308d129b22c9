"""A commented profile for a maker to fill in, written from the records and a profile that works.

Keys, comments and bounds come from the records and values from the example, so that none can drift.
"""

from __future__ import annotations

import dataclasses
import textwrap
import typing
from collections.abc import Callable, Iterator
from datetime import date
from decimal import Decimal
from functools import partial
from typing import Any, Literal

from ledgerstone.workshop.countries import RegionalSettings
from ledgerstone.workshop.entry.as_toml import LINE_WIDTH, lines_of
from ledgerstone.workshop.entry.local_units import local_unit, number_shown, with_unit
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.members import Member, members_of, without_none
from ledgerstone.workshop.records.schemas import field_types, written
from ledgerstone.workshop.starting.beginning import as_started

_HEAD = """\
The profile of a workshop: what it can make, charges and stocks.

Every figure below comes from an invented workshop. Replace them all, table by table, with your
own; then run:  python -m ledgerstone.workshop check FILE

What stands after a # is a comment. Text stands in quotation marks, numbers without; a point
separates decimals. Lengths are in millimetres, masses in kilograms, money is before tax; a text
with its unit does as well: "96 in", "94 lb", "5000 psi".
Double brackets, such as [[palette]], start one more item of a list: write as many as you have.
A line that begins with # and a key is something that may be left out; take the # away to use it.
"""

_SAMPLES: dict[type, object] = {
    str: "…",
    bool: True,
    int: 1,
    float: 1.0,
    Decimal: Decimal("1.00"),
    date: date(2026, 1, 31),
}


About = Callable[[str, str, str], str]  # what a record's key is, of what it is in English


CHOICE_RECORD = "Choices"  # the record that ``About`` is asked with for a word that is chosen


def attribute_of(word: str) -> str:
    """Return a word that is chosen as a key of a catalogue."""
    return word.replace("/", "-")


def _in_english(_record: str, _key: str, english: str) -> str:
    return english


def starting_profile(example: Workshop, about: About = _in_english) -> str:
    """Return a whole profile as TOML, its identity left for the maker to fill in.

    Parameters
    ----------
    about
        Says what each key is, in the language of the file's comments.
    """
    return profile_text_of(as_started(example), about)


def profile_text_of(workshop: Workshop, about: About = _in_english) -> str:
    """Return a whole profile as TOML, with the comments of the records.

    Parameters
    ----------
    about
        Says what each key is, in the language of the file's comments.
    """
    head = "".join(
        f"# {line}".rstrip() + "\n" for line in about("File", "head", _HEAD).splitlines()
    )
    writer = _ProfileWriter(about, workshop.place.at_work())
    return head + "\n".join(writer.table(Workshop, "", workshop)) + "\n"


class _ProfileWriter:
    """Writes tables, and each key's comment where the key first stands."""

    def __init__(self, about: About, place: RegionalSettings) -> None:
        self._about = about
        self._place = place
        self._described: set[tuple[type, str]] = set()

    def table(self, record: type, name: str, value: object | None) -> Iterator[str]:
        """Yield the lines of one table; commented out, with samples, where there is no value."""
        hints = field_types(record)
        nested = {f.name: inner for f in written(record) if (inner := _record_in(hints[f.name]))}
        mark = "# " if value is None else ""
        for f in written(record):
            if f.name not in nested:
                for line in self._key(record, f, hints[f.name], value):
                    yield line if line.startswith("#") else mark + line
        for f in written(record):
            if f.name in nested:
                inside = getattr(value, f.name, None)
                path = f"{name}.{f.name}".removeprefix(".")
                yield from self._tables(record, f, nested[f.name], path, inside)

    def _tables(
        self, record: type, f: dataclasses.Field[Any], inner: type, path: str, value: object
    ) -> Iterator[str]:
        """Yield one table in single brackets, or each of a list in double ones."""
        many = isinstance(value, tuple) or _is_list(field_types(record)[f.name])
        header = f"[[{path}]]" if many else f"[{path}]"
        items = value if isinstance(value, tuple) else (value,)
        for item in items or self._sample_once(record, f.name):
            yield ""
            yield from self._heading(record, f)
            self._described.add((record, f.name))
            yield header if item is not None else f"# {header}"
            yield from self.table(inner, path, item)

    def _sample_once(self, record: type, name: str) -> tuple[None, ...]:
        return () if (record, name) in self._described else (None,)

    def _heading(self, record: type, f: dataclasses.Field[Any]) -> Iterator[str]:
        if (record, f.name) not in self._described:
            if record is Workshop:
                yield ""
            about = self._comment(record, f)
            yield f"# {about[0].upper()}{about[1:]}."

    def _key(
        self, record: type, f: dataclasses.Field[Any], hint: object, value: object | None
    ) -> Iterator[str]:
        """Yield the lines of one key; its comment beside it, or above where it is too long."""
        first = (record, f.name) not in self._described
        content = getattr(value, f.name, None)
        if content == "":  # as good as left out, and no text that may be written
            content = None
        if content is None and not first:
            return
        self._described.add((record, f.name))
        mark = "# " if content is None else ""
        written_out = lines_of(mark + f.name, self._written(record, f.name, hint, content))
        comment = f"# {self._comment(record, f)}" if first else ""
        beside = f"{written_out[0]}  {comment}".rstrip()
        if len(written_out) == 1 and len(beside) <= LINE_WIDTH:
            yield beside
            return
        yield from textwrap.wrap(comment, LINE_WIDTH, subsequent_indent="# ")
        yield from written_out

    def _written(self, record: type, name: str, hint: object, content: object) -> object:
        """A value in the unit that the workshop works in, or a sample of one."""
        member = next(member for member in members_of(record) if member.name == name)
        if local_unit(member, self._place) == member.unit:
            return _sample(hint) if content is None else content
        if content is None:
            return with_unit("1", member, self._place)
        if isinstance(content, tuple):
            return tuple(self._measured(member, item) for item in content)
        return self._measured(member, content)

    def _measured(self, member: Member, content: object) -> object:
        if not content:
            return content
        exact = Decimal(repr(content)) if isinstance(content, float) else content
        number = number_shown(exact, member, self._place)
        return content if number is None else with_unit(number, member, self._place)

    def _choice(self, word: str) -> str:
        """A word that is chosen, and what it means where that is another one."""
        means = self._about(CHOICE_RECORD, attribute_of(word), word)
        return word if means == word else f"{word}: {means}"

    def _comment(self, record: type, f: dataclasses.Field[Any]) -> str:
        """What a key is, what it is chosen from, and its bounds."""
        bounds, word = f.metadata, partial(self._about, "Bounds")
        about = self._about(record.__name__, f.name, str(bounds.get("about", f.name)))
        choices = _choices(field_types(record)[f.name])
        if choices:
            return f"{about} ({'; '.join(map(self._choice, choices))})"
        if "at_least" in bounds and "at_most" in bounds:
            return f"{about} ({bounds['at_least']} {word('to', 'to')} {bounds['at_most']})"
        if bounds.keys() & {"above", "at_most"} == set() and bounds.get("at_least") == 0:
            return about
        words = {"above": "above", "at_least": "at least", "at_most": "at most"}
        bounds_text = ", ".join(
            f"{word(k, is_so)} {bounds[k]}" for k, is_so in words.items() if k in bounds
        )
        return f"{about} ({bounds_text})" if bounds_text else about


# --- types ----------------------------------------------------------------------------------


def _is_list(hint: object) -> bool:
    return typing.get_origin(without_none(hint)) is tuple


def _choices(hint: object) -> tuple[str, ...]:
    """Return the words that a key, or each of its list, is chosen from."""
    item = typing.get_args(without_none(hint))[0] if _is_list(hint) else without_none(hint)
    return typing.get_args(item) if typing.get_origin(item) is Literal else ()


def _record_in(hint: object) -> type | None:
    """Return the record that a key holds, or a list of which it holds."""
    inner = typing.get_args(without_none(hint))[0] if _is_list(hint) else without_none(hint)
    return inner if dataclasses.is_dataclass(inner) and isinstance(inner, type) else None


def _sample(hint: object) -> object:
    """Return a value of the type, for a key that the example leaves out."""
    kind = without_none(hint)
    if _is_list(kind):
        return (_sample(typing.get_args(kind)[0]),)
    if typing.get_origin(kind) is Literal:
        return typing.get_args(kind)[0]
    return _SAMPLES[kind]
