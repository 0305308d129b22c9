"""A change of one member of an order, and orders with changes applied."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, fields, is_dataclass, replace
from types import MappingProxyType
from typing import Any

from ledgerstone.json_types import KeyPath
from ledgerstone.order import Order, Shade
from ledgerstone.quantities import Length

_BY_KIND = ("outline", "rests")  # members whose kind determines their members


@dataclass(frozen=True, slots=True)
class Change:
    """One member of an order becomes another: lengths, words, numbers or whole records.

    ``new`` is None if the member is taken away. The path's names are the records' own.
    """

    path: KeyPath
    new: Any


Changes = tuple[Change, ...]


def changed(order: Order, changes: Sequence[Change]) -> Order:
    """Apply changes to an order one by one, each to the result of the one before."""
    for change in changes:
        order = _with(order, change.path, change.new)
    return order


def differences(path: KeyPath, old: Any, new: Any) -> Iterator[Change]:  # noqa: ANN401  any member
    """Yield the changes that turn one member of an order into another, as small as possible."""
    if old == new:
        return
    if is_dataclass(old) and type(old) is type(new) and not _another_kind(path, old, new):
        for field in fields(old):
            if not field.metadata.get("inside"):
                inner = (*path, field.name)
                yield from differences(inner, getattr(old, field.name), getattr(new, field.name))
    elif isinstance(old, Mapping) and isinstance(new, Mapping):
        for key in (*old, *(key for key in new if key not in old)):
            yield from differences((*path, key), old.get(key), new.get(key))
    else:
        yield Change(path, new)


def _another_kind(path: KeyPath, old: Any, new: Any) -> bool:  # noqa: ANN401  records of one type
    """Return whether a member is replaced whole: a length, a shade, rests of another kind."""
    kinds = [getattr(value, "kind", None) for value in (old, new)]
    return isinstance(old, Length | Shade) or (kinds[0] != kinds[1] and path[-1] in _BY_KIND)


def _with(here: Any, path: KeyPath, new: Any) -> Any:  # noqa: ANN401  any record of an order
    if not path:
        return new
    step, rest = path[0], path[1:]
    if isinstance(step, int):
        if step == len(here):
            return (*here, _with(None, rest, new))
        kept = [*here[:step], *([] if new is None and not rest else [_with(here[step], rest, new)])]
        return (*kept, *here[step + 1 :])
    if isinstance(here, Mapping):
        members = {**here, step: _with(here.get(step), rest, new)}
        return MappingProxyType({k: v for k, v in members.items() if v is not None})
    return replace(here, **{step: _with(getattr(here, step), rest, new)})
