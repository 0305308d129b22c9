"""What a table holds that a maker adds: nothing yet, so that each value has to be entered."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.records.members import Member, MemberKind, members_of

_WRITTEN: Final[Mapping[MemberKind, str]] = MappingProxyType(
    {
        "yes-no": "false",
        "lines": "[]",
        "words": "[]",
        "numbers": "[]",
        "wholes": "[]",
        "choices": "[]",
    }
)


def sample_of(record: type, path: KeyPath, *, is_item: bool) -> list[str]:
    """Return a table's lines as TOML: its header, then each key that it must have."""
    name = ".".join(str(step) for step in path if isinstance(step, str))
    lines = [f"[[{name}]]" if is_item else f"[{name}]"]
    needed = [member for member in members_of(record) if member.needed]
    lines += [f"{member.name} = {_sample(member)}" for member in needed if member.inner is None]
    for member in needed:
        if member.inner is not None:
            lines += sample_of(member.inner, (*path, member.name), is_item=member.kind == "items")
    return lines


def _sample(member: Member) -> str:
    return _WRITTEN.get(member.kind, '""')
