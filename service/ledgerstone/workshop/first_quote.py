"""The shortest honest way to a first quote: what is asked, and what one tick confirms, by step.

A step asks for the values that no two workshops share. Its tick says of the others on which a
price, a day, an area, a shade or a lift rests that they are right as shown: amounts of money stand
open as fields, the others are listed. Once all steps are done no answer is a trial any more.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any, Final, Literal

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop import bags
from ledgerstone.workshop.members import member_at
from ledgerstone.workshop.standing import LIFTERS, LIFTS, WARMTH, WAYS, ValueStanding, is_priced

StepName = Literal[
    "you", "table", "money", "concrete", "materials", "lifting", "looks", "delivery", "hours"
]
HOURS: Final = "hours"
_Raw = Mapping[str, Any]
# Of each table, the step whose tick speaks for it; hours and minutes have one of their own, which
# comes last: how long a job takes rests on what is chosen before.
_STEP_OF: Final[Mapping[str, StepName]] = MappingProxyType(
    {
        **dict.fromkeys(("rates", "tax", "offer", "services", "sample"), "money"),
        "recipe": "concrete",
        **dict.fromkeys(("boards", "steel", "rails", "slurry", "pigments"), "materials"),
        **dict.fromkeys(("shade", "tent"), "materials"),
        **dict.fromkeys(("handling", "lifting"), "lifting"),
        **dict.fromkeys(("hours", "mixer", "calendar"), "hours"),
        **dict.fromkeys(("palette", "finishes", "sealers", "edges"), "looks"),
        **dict.fromkeys(("areas", "packing"), "delivery"),
    }
)
_TIME: Final = ("hours", "minutes_per")


@dataclass(frozen=True, slots=True)
class FirstStep:
    """One step of the first quote.

    Attributes
    ----------
    asks
        The values that are asked for, by path.
    shown
        The others that a price, a day, an area, a shade or a lift rests on and that are no usual
        ones: invented, or the maker's by now.
    rest
        Of those, the ones that are still invented.
    open_asks
        Of the values that are asked for, those that are still invented.
    """

    name: StepName
    asks: tuple[KeyPath, ...]
    shown: tuple[KeyPath, ...]
    rest: tuple[KeyPath, ...]
    open_asks: tuple[KeyPath, ...]

    @property
    def is_done(self) -> bool:
        """Whether it holds no invented value."""
        return not self.rest and not self.open_asks

    def holds(self, path: KeyPath) -> bool:
        """Return whether a place is one of its values, or within one."""
        return any(path[: len(one)] == one for one in (*self.asks, *self.shown))


def first_steps(raw: _Raw, found: Mapping[KeyPath, ValueStanding]) -> tuple[FirstStep, ...]:
    """Return the steps of a parsed profile, in their order.

    Parameters
    ----------
    found
        Whose each value is.
    """
    others = [path for path, word in found.items() if word != "usual" and is_priced(path)]
    steps = []
    for name, asked in _ASKED.items():
        asks = tuple(asked(raw))
        shown = tuple(path for path in others if _step_of(path) == name and path not in asks)
        rest = tuple(path for path in shown if found[path] == "invented")
        open_asks = tuple(path for path in asks if found.get(path) == "invented")
        steps.append(FirstStep(name, asks, shown, rest, open_asks))
    return tuple(steps)


def is_field(path: KeyPath) -> bool:
    """Return whether a value beside what is asked stands open as a field: money, and what lifts."""
    member = member_at(path)
    is_money = member is not None and member.kind == "money" and member.unit != "%"
    return is_money or (path[:2] == WAYS and path[-1] in LIFTS)


def is_time(path: KeyPath) -> bool:
    """Return whether a value is an hour of somebody's hands, or a rate of them."""
    return path[0] == HOURS or any(word in str(path[-1]) for word in _TIME)


def _step_of(path: KeyPath) -> StepName:
    table = str(path[0])
    is_look = _STEP_OF.get(table) == "looks"
    return (
        HOURS
        if path == WARMTH or (is_time(path) and not is_look)
        else _STEP_OF.get(table, "materials")
    )


def _at(*paths: KeyPath) -> Callable[[_Raw], Sequence[KeyPath]]:
    return lambda _raw: paths


def _concrete(raw: _Raw) -> Iterator[KeyPath]:
    """The strength, and where it is mixed from bags, the bag and the cement that is beside it."""
    yield ("recipe", "fck_mpa")
    recipe = _table(raw, "recipe")
    if "bag" in recipe:
        yield from ((*bags.BAG, key) for key in bags.ASKED)
        yield bags.NEAT_CEMENT


def _money(raw: _Raw) -> Iterator[KeyPath]:
    """The hour, the markup, the tax and its rate where it is charged, and what is paid when."""
    yield from (("rates", key) for key in ("hour", "margin_percent"))
    yield ("tax", "registered")
    if _table(raw, "tax").get("registered") is not False:
        yield ("tax", "percent")
    yield from (("offer", key) for key in ("deposit_percent", "balance_due"))


def _delivery(raw: _Raw) -> Iterator[KeyPath]:
    """The first area, each way of delivery in it, whether it is offered or not."""
    if _items(raw, "areas"):
        yield from (("areas", 0, key) for key in ("postcodes", "pallet", "own_van", "fitted"))


def _table(raw: _Raw, key: str) -> _Raw:
    found = raw.get(key)
    return found if isinstance(found, Mapping) else {}


def _items(raw: _Raw, key: str) -> list[_Raw]:
    found = raw.get(key)
    return [each for each in found if isinstance(each, Mapping)] if isinstance(found, list) else []


_ASKED: Final[Mapping[StepName, Callable[[_Raw], Any]]] = MappingProxyType(
    {
        "you": _at(*(("workshop", key) for key in ("name", "town", "email", "telephone"))),
        "table": _at(("table", "length_mm"), ("table", "width_mm")),
        "money": _money,
        "concrete": _concrete,
        "materials": _at(),
        "lifting": _at(LIFTERS),
        "looks": _at(),
        "delivery": _delivery,
        "hours": _at(("calendar", "hands"), ("calendar", "orders_ahead_days"), WARMTH),
    }
)
STEPS: Final = tuple(_ASKED)
