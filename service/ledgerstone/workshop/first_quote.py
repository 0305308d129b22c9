"""The shortest honest way to a first quote: what is asked, and what one tick confirms, by step.

A step asks for the values that no two workshops share. Its tick says of the others on which a
price, a day, an area, a shade or a lift rests that they are right as shown: amounts of money stand
open as fields, the others are listed, with the size of what each price buys. A maker gives the
hours of typical jobs, from which every rate of hours follows. Once all steps are done no answer
is a trial.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any, Final, Literal

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop import bags
from ledgerstone.workshop.members import member_at
from ledgerstone.workshop.standing import LIFTS, WARMTH_PATH, ValueStanding, is_priced
from ledgerstone.workshop.usual_values import LIFTERS, WAYS

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
# Tables that hold hours of somebody's hands, and what is a wait by its name.
_RATED: Final = frozenset(
    {HOURS, "finishes", "sealers", "edges", "packing", "handling", "sample", "tent"}
)
_WAIT: Final = "recoat_hours"
# Usual values that are shown beside a price: what is bought for it, and what every price adds.
_SHOWN_TOO: Final = frozenset(
    {
        *(("boards", key) for key in ("length_mm", "width_mm", "thickness_mm")),
        *(("steel", key) for key in ("material", "yield_mpa", "bar_mm", "stock_length_mm")),
        *(("steel", "mesh_wire_mm"), ("lifting", "kg_per_person")),
        *(("lifting", "van", key) for key in ("length_mm", "most_kg")),
        *(("steel", f"mesh_{key}_mm") for key in ("pitch", "sheet_length", "sheet_width")),
        *(("rates", key) for key in ("recast_percent", "recast_percent_per_m2", "offcuts_percent")),
    }
)


@dataclass(frozen=True, slots=True)
class FirstStep:
    """One step of the first quote.

    Attributes
    ----------
    asks
        The values that are asked for, by path.
    shown
        The others that a price, a day, an area, a shade or a lift rests on and that are no usual
        ones: invented, or the maker's by now; and what says of which piece a price is.
    rest
        Of those, the ones that are still invented.
    open_asks
        Of the values that are asked for, those that are still invented.
    rates
        The rates of hours, which follow from what typical jobs take.
    open_rates
        Of those, the ones that are still invented.
    """

    name: StepName
    asks: tuple[KeyPath, ...]
    shown: tuple[KeyPath, ...]
    rest: tuple[KeyPath, ...]
    open_asks: tuple[KeyPath, ...]
    rates: tuple[KeyPath, ...] = ()
    open_rates: tuple[KeyPath, ...] = ()

    @property
    def is_done(self) -> bool:
        """Whether it holds no invented value."""
        return not (self.rest or self.open_asks or self.open_rates)

    def holds(self, path: KeyPath) -> bool:
        """Return whether a place is one of its values, or within one."""
        return any(path[: len(one)] == one for one in (*self.asks, *self.shown, *self.rates))


def first_steps(raw: _Raw, found: Mapping[KeyPath, ValueStanding]) -> tuple[FirstStep, ...]:
    """Return the steps of a parsed profile, in their order.

    Parameters
    ----------
    found
        Whose each value is.
    """
    asked = {name: tuple(asks(raw)) for name, asks in _ASKED.items()}
    apart = {path for asks in asked.values() for path in asks}
    others = [path for path, word in found.items() if _is_shown(path, word) and path not in apart]
    rates = tuple(path for path in others if is_rate(path))
    steps = []
    for name, asks in asked.items():
        shown = tuple(path for path in others if _step_of(path) == name and not is_rate(path))
        step_rates = rates if name == HOURS else ()
        rest, open_asks, open_rates = (_invented(each, found) for each in (shown, asks, step_rates))
        steps.append(FirstStep(name, asks, shown, rest, open_asks, step_rates, open_rates))
    return tuple(steps)


def _is_shown(path: KeyPath, word: ValueStanding) -> bool:
    return path in _SHOWN_TOO or (word != "usual" and is_priced(path))


def _invented(
    paths: Sequence[KeyPath], found: Mapping[KeyPath, ValueStanding]
) -> tuple[KeyPath, ...]:
    return tuple(path for path in paths if found.get(path) == "invented")


def is_field(path: KeyPath) -> bool:
    """Return whether a value beside what is asked stands open as a field: money, and what lifts."""
    member = member_at(path)
    is_money = member is not None and member.kind == "money" and member.unit != "%"
    return is_money or (path[:2] == WAYS and path[-1] in LIFTS)


def is_rate(path: KeyPath) -> bool:
    """Return whether a value is a rate of hours, which follows from what typical jobs take."""
    key = str(path[-1])
    return path[0] == HOURS or (path[0] in _RATED and key.startswith("hours") and key != _WAIT)


def _step_of(path: KeyPath) -> StepName:
    is_time = "hours" in str(path[-1]) and path[-1] != _WAIT
    return HOURS if path == WARMTH_PATH or is_time else _STEP_OF.get(str(path[0]), "materials")


def _at(*paths: KeyPath) -> Callable[[_Raw], Sequence[KeyPath]]:
    return lambda _raw: paths


def _concrete(raw: _Raw) -> Iterator[KeyPath]:
    """The strength, a batch, and where it is mixed from bags, the bag."""
    yield from (("recipe", "fck_mpa"), ("mixer", "working_l"))
    if "bag" in _table(raw, "recipe"):
        yield from ((*bags.BAG, key) for key in bags.ASKED_OF_A_BAG)


def _money(raw: _Raw) -> Iterator[KeyPath]:
    """The hour, the markup, the tax and its rate where it is charged, and what a price is."""
    yield from (("rates", key) for key in ("hour", "margin_percent"))
    yield ("tax", "registered")
    if _table(raw, "tax").get("registered") is not False:
        yield ("tax", "percent")
    yield from (("offer", key) for key in ("standing", "deposit_percent"))


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
        "hours": _at(("calendar", "hands"), ("calendar", "orders_ahead_days"), WARMTH_PATH),
    }
)
STEPS: Final = tuple(_ASKED)
