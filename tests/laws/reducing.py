"""Make an order that shows a fault as small as can be: leave out, say in round millimetres."""

import copy
from collections.abc import Callable, Iterator

from ledgerstone.errors import QuantityError
from ledgerstone.json_types import JSON, KeyPath
from ledgerstone.quantities import Length
from support.documents import Json


def reduced(order: Json, shows: Callable[[Json], bool]) -> Json:
    """Return the smallest order found that still shows what ``shows`` looks for."""
    while True:
        smaller = next((one for one in _smaller(order) if _safely(shows, one)), None)
        if smaller is None:
            return order
        order = smaller


def _safely(shows: Callable[[Json], bool], order: Json) -> bool:
    try:
        return shows(order)
    except Exception:  # noqa: BLE001  what is not understood any more shows nothing
        return False


def _smaller(order: Json) -> Iterator[Json]:
    """One member or element fewer, the largest first; then one length said in whole millimetres."""
    paths = list(_paths(order))
    for path in paths:
        made = copy.deepcopy(order)
        del _at(made, path[:-1])[path[-1]]
        yield made
    for path in paths:
        for rounded in _rounded(_at(order, path)):
            made = copy.deepcopy(order)
            _at(made, path[:-1])[path[-1]] = rounded
            yield made


def _paths(here: JSON, path: KeyPath = ()) -> Iterator[KeyPath]:
    keys = here.keys() if isinstance(here, dict) else range(len(here))
    for key in keys:
        yield (*path, key)
    for key in keys:
        if isinstance(here[key], dict | list):
            yield from _paths(here[key], (*path, key))


def _at(here: JSON, path: KeyPath) -> JSON:
    for step in path:
        here = here[step]
    return here


def _rounded(value: object) -> Iterator[int]:
    if isinstance(value, dict | list | bool) or value is None:
        return
    try:
        mm = Length.parse(value).mm
    except QuantityError:
        return
    for to in (100, 10, 1):
        if value != round(mm / to) * to:
            yield round(mm / to) * to
