"""A profile as a form shows it: each table and value, with its help and standing."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any, Final

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.form.comments import Comments
from ledgerstone.workshop.reading.lines import KeyLines
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.members import Member, members_of
from ledgerstone.workshop.standing import ValueStanding

# The form's subjects, in their order, and the tables of each.
SUBJECTS: Final[Mapping[str, tuple[str, ...]]] = MappingProxyType(
    {
        "you": ("workshop", "reply", "web", "mail", "mailbox", "conventions"),
        "money": ("rates", "tax", "offer", "services", "sample"),
        "mould": ("table", "shaping", "boards", "handling"),
        "concrete": ("recipe", "mixer", "slurry", "steel", "concrete", "loads", "rails"),
        "shades": ("palette", "pigments", "shade"),
        "hours": ("hours",),
        "finishes": ("finishes", "sealers", "edges"),
        "delivery": ("areas", "packing", "lifting"),
        "days": ("days", "calendar", "bench", "tent", "bookings"),
    }
)
SUBJECT_OF: Final = {table: subject for subject, tables in SUBJECTS.items() for table in tables}


@dataclass(frozen=True, slots=True)
class DescribedTable:
    """A table, a list of tables or one item of it; ``there`` is whether the text has it."""

    path: KeyPath
    member: Member
    help: str
    there: bool


@dataclass(frozen=True, slots=True)
class DescribedValue:
    """A value, as it is read from TOML; None if it is left out."""

    path: KeyPath
    member: Member
    help: str
    value: object
    standing: ValueStanding | None


def described(
    text: str, raw: Mapping[str, Any], standings: Mapping[KeyPath, ValueStanding]
) -> Iterator[DescribedTable | DescribedValue]:
    """Yield every table and value that a profile has or may have, by subject and as it is listed.

    Parameters
    ----------
    raw
        What the text holds.
    standings
        Whose each value is.
    """
    comments = Comments(text, KeyLines(text))
    known = {member.name: member for member in members_of(Workshop)}
    for table in SUBJECT_OF:
        yield from _Described(comments, standings).member(known[table], (table,), raw.get(table))


@dataclass(frozen=True, slots=True)
class _Described:
    comments: Comments
    standings: Mapping[KeyPath, ValueStanding]

    def member(
        self, member: Member, path: KeyPath, content: object
    ) -> Iterator[DescribedTable | DescribedValue]:
        """Yield a member, and all that is in it."""
        help_text = self.comments.of(path)
        if member.inner is None:
            standing = self.standings.get(path)
            yield DescribedValue(path, member, help_text, content, standing)
            return
        items = content if isinstance(content, list) else []
        if member.kind == "items" and items:
            help_text = self.comments.of((*path, 0))
        yield DescribedTable(path, member, help_text, content is not None)
        if member.kind == "items":
            for k, item in enumerate(items):
                help_text = self.comments.of((*path, k)) if k else ""
                yield DescribedTable((*path, k), member, help_text, there=True)
                yield from self._inside(member.inner, (*path, k), item)
        elif content is not None:
            yield from self._inside(member.inner, path, content)

    def _inside(
        self, record: type, path: KeyPath, content: object
    ) -> Iterator[DescribedTable | DescribedValue]:
        held = content if isinstance(content, Mapping) else {}
        members = sorted(members_of(record), key=lambda member: member.inner is not None)
        for member in members:
            yield from self.member(member, (*path, member.name), held.get(member.name))
