"""Where two recordings differ: grouped by the member, whatever the index, with an example each."""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterator, Sequence
from typing import Any, NamedTuple

from ledgerstone.json_types import JSON

_LONGEST = 100
_MAX_NAMES = 3


class Difference(NamedTuple):
    """One member that differs: whose, where, and what it was and is; None if it is not there."""

    case: str
    path: str
    before: Any
    after: Any


def differences(
    before: Sequence[dict[str, Any]], after: Sequence[dict[str, Any]]
) -> list[Difference]:
    """Compare two recordings, case by case."""
    was = {row["name"]: row for row in before}
    now = {row["name"]: row for row in after}
    names = [*was, *(name for name in now if name not in was)]
    return [
        Difference(name, *found)
        for name in names
        for found in _differ("", was.get(name), now.get(name))
    ]


def report(found: Sequence[Difference], cases: int) -> str:
    """Say how many cases differ, and each member in which they do, with one example."""
    groups: dict[str, list[Difference]] = defaultdict(list)
    for one in found:
        groups[re.sub(r"/\d+", "/*", one.path)].append(one)
    lines = [f"{len({one.case for one in found})} of {cases} cases differ"]
    for path, ones in sorted(groups.items(), key=lambda pair: -len(pair[1])):
        names = list(dict.fromkeys(one.case for one in ones))
        lines.append(f"{len(ones):6d} {path}   in {', '.join(names[:_MAX_NAMES])}")
        lines.append(f"       - {_short(ones[0].before)}")
        lines.append(f"       + {_short(ones[0].after)}")
    return "\n".join(lines)


def _differ(path: str, before: JSON, after: JSON) -> Iterator[tuple[str, JSON, JSON]]:
    if isinstance(before, dict) and isinstance(after, dict):
        for key in [*before, *(key for key in after if key not in before)]:
            yield from _differ(f"{path}/{key}", before.get(key), after.get(key))
    elif isinstance(before, list) and isinstance(after, list) and len(before) == len(after):
        for number, (one, other) in enumerate(zip(before, after, strict=True)):
            yield from _differ(f"{path}/{number}", one, other)
    elif before != after:
        yield path, before, after


def _short(value: JSON) -> str:
    said = repr(value)
    return said if len(said) <= _LONGEST else f"{said[:_LONGEST]}…"
