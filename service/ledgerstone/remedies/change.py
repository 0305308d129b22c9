"""A change to an order: where, from what, to what; and orders with changes applied."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Any

from ledgerstone.checks import Checked, Facts
from ledgerstone.order import Order
from ledgerstone.price import Price

Path = tuple[str | int, ...]


@dataclass(frozen=True, slots=True)
class Change:
    """One member of an order becomes another: lengths, words, numbers or whole records.

    ``new`` is None where the member is taken away. The path's names are the records' own.
    """

    path: Path
    new: Any


Changes = tuple[Change, ...]


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a changed order came to: the order as understood, its checks and its facts."""

    order: Order
    checked: Checked
    facts: Facts

    @property
    def stops(self) -> frozenset[str]:
        """Ids of the findings that stop it."""
        return frozenset(finding.id for finding in self.checked.stops)

    @property
    def price(self) -> Price | None:
        """What the customer would be asked, where nothing stops it."""
        return None if self.checked.stops else self.facts.price


# Tries changes on the order as it was sent: None where what comes of it is not understood.
Trial = Callable[[Changes], Outcome | None]


def changed(order: Order, changes: Sequence[Change]) -> Order:
    """Apply changes to an order, one after another."""
    for change in changes:
        order = _with(order, change.path, change.new)
    return order


def member(order: Order, path: Path) -> Any:  # noqa: ANN401  any member of an order
    """Return what stands at a path, or None."""
    here: Any = order
    for step in path:
        if here is None:
            return None
        if isinstance(step, int):
            here = here[step] if step < len(here) else None
        elif isinstance(here, Mapping):
            here = here.get(step)
        else:
            here = getattr(here, step)
    return here


def _with(here: Any, path: Path, new: Any) -> Any:  # noqa: ANN401  any record of an order
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
