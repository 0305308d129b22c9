"""The shortest honest way to a first quote: what is asked, and what one tick confirms, by step.

A step asks for the values that no two workshops share. Values that stand as is usual, or at none,
are told there in a line, and can be changed in the fields that are folded beneath it. Shades,
surfaces and sealers are listed, and a tick says that they are offered. The last step asks of a
typical job how long it takes, what is bought for it and what is asked for it: from these follow
every rate of hours, every buying price and the markup. Buying prices and the markup stand folded as
fields; the rates are with the other
hours. Once all steps are done no answer is a trial.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any, Final, Literal

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.countries import TAXED_BY_PART
from ledgerstone.workshop.countries.public_holidays import parts_of
from ledgerstone.workshop.form import bags
from ledgerstone.workshop.records.members import member_at
from ledgerstone.workshop.standing import FIRST_LIFT, LIFTS, WARMTH_PATH, ValueStanding, is_priced
from ledgerstone.workshop.standing.usual_values import LIFTERS, WAYS

StepName = Literal[
    "you",
    "table",
    "concrete",
    "steel",
    "lifting",
    "shades",
    "looks",
    "delivery",
    "money",
    "time",
    "job",
]
JOB: Final = "job"
REGION: Final[KeyPath] = ("workshop", "region")
_Raw = Mapping[str, Any]
# Of each table, the step that what is offered of it is listed in. All else that a price rests on
# follows from a typical job, unless it is typed.
_STEP_OF: Final[Mapping[KeyPath, StepName]] = MappingProxyType(
    {
        **dict.fromkeys((("palette", "name"), ("palette", "colour")), "shades"),
        **dict.fromkeys((("finishes", "surface"), ("sealers", "name")), "looks"),
        **dict.fromkeys((("sealers", "places"), ("sealers", "heat_limit_c")), "looks"),
        (*WAYS, LIFTS[0]): "lifting",
    }
)
# Tables that hold hours of somebody's hands, and what is a wait by its name.
_RATED: Final = frozenset(
    {"hours", "finishes", "sealers", "edges", "packing", "handling", "sample", "tent"}
)
_WAIT: Final = "recoat_hours"
# What is paid for what is bought, by the end of its key, and what is none of it.
_BUYING: Final = ("price", "price_per_kg", "price_per_l", "price_per_sheet", "price_per_bag")
_ALSO_BOUGHT: Final = frozenset(
    {
        *(("boards", key) for key in ("flexible_price", "screw_price", "bead_price_per_tube")),
        *(("boards", "release_price_per_l"), ("slurry", "cement_price_per_kg")),
        *(("steel", key) for key in ("bar_price", "mesh_price_per_sheet")),
        *(("rates", key) for key in ("consumables_per_m2", "machine_hour")),
        ("finishes", "consumables_per_m2"),
        *(("packing", way, "materials_per_piece") for way in ("collected", "own_van", "pallet")),
        ("packing", "pallet", "crate", "materials"),
        *(("palette", "extra_per_m3"), ("shade", "bases", "extra_per_m3")),
    }
)
_BOUGHT_FROM: Final = frozenset({"recipe", "boards", "pigments", "sealers"})
STEEL: Final = ("material", "bar_mm", "mesh_pitch_mm", "mesh_wire_mm")
MARGIN: Final[KeyPath] = ("rates", "margin_percent")


@dataclass(frozen=True, slots=True)
class FirstStep:
    """One step of the first quote.

    Attributes
    ----------
    asks
        The values that are asked for, by path.
    stands
        Those that stand as is usual until somebody says otherwise.
    shown
        The others that a price, a day, an area, a shade or a lift rests on and that are no usual
        ones: invented, or the maker's by now.
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
    stands: tuple[KeyPath, ...]
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
        return any(
            path[: len(one)] == one for one in (*self.asks, *self.stands, *self.shown, *self.rates)
        )


def first_steps(raw: _Raw, found: Mapping[KeyPath, ValueStanding]) -> tuple[FirstStep, ...]:
    """Return the steps of a parsed profile, in their order.

    Parameters
    ----------
    found
        Whose each value is.
    """
    asked = {name: tuple(asks(raw)) for name, asks in _ASKED.items()}
    standing = {name: tuple(stands(raw)) for name, stands in _STANDS.items()}
    apart = {path for asks in (*asked.values(), *standing.values()) for path in asks}
    first_open = found.get(FIRST_LIFT) == "invented"  # what other ways take follows from it
    lifts = {path for path in found if _step_of(path) == "lifting"}
    apart |= {path for path in lifts if first_open or found[path] != "invented"}
    others = [p for p, word in found.items() if word != "usual" and is_priced(p) and p not in apart]
    rates = tuple(path for path in others if is_rate(path))
    steps = []
    for name, asks in asked.items():
        shown = tuple(path for path in others if _step_of(path) == name and not is_rate(path))
        step_rates = rates if name == JOB else ()
        stands = standing.get(name, ())
        rest, open_asks, open_rates = (
            _invented(each, found) for each in (shown, (*asks, *stands), step_rates)
        )
        steps.append(FirstStep(name, asks, stands, shown, rest, open_asks, step_rates, open_rates))
    return tuple(steps)


def _invented(
    paths: Sequence[KeyPath], found: Mapping[KeyPath, ValueStanding]
) -> tuple[KeyPath, ...]:
    return tuple(path for path in paths if found.get(path) == "invented")


def is_field(path: KeyPath) -> bool:
    """Return whether a value beside what is asked stands open as a field: money, markup, lifts."""
    member = member_at(path)
    is_money = member is not None and member.kind == "money" and member.unit != "%"
    return is_money or path == MARGIN or (path[:2] == WAYS and path[-1] in LIFTS)


def is_rate(path: KeyPath) -> bool:
    """Return whether a value is a rate of hours, which follows from what typical jobs take."""
    key = str(path[-1])
    return path[0] == "hours" or (path[0] in _RATED and key.startswith("hours") and key != _WAIT)


def is_bought(path: KeyPath) -> bool:
    """Return whether a value is a buying price, which follows from what a typical job takes."""
    keys = _keys(path)
    return keys in _ALSO_BOUGHT or (keys[0] in _BOUGHT_FROM and keys[-1] in _BUYING)


def _keys(path: KeyPath) -> KeyPath:
    """A path without the numbers of its items."""
    return tuple(part for part in path if isinstance(part, str))


def _step_of(path: KeyPath) -> StepName:
    return _STEP_OF.get(_keys(path), JOB)


def _steel(raw: _Raw) -> Iterator[KeyPath]:
    """What stands on the rack; what it yields at follows, but of glass fibre."""
    yield from (("steel", key) for key in STEEL)
    if _table(raw, "steel").get("material") == "glass-fibre":
        yield ("steel", "yield_mpa")


def _at(*paths: KeyPath) -> Callable[[_Raw], Sequence[KeyPath]]:
    return lambda _raw: paths


def _you(raw: _Raw) -> Iterator[KeyPath]:
    """Who it is; the part of the country where a file starts with one that has holidays."""
    yield from (("workshop", key) for key in ("name", "town"))
    if _country(raw) not in TAXED_BY_PART and parts_of(_country(raw)):
        yield REGION
    yield from (("workshop", key) for key in ("email", "telephone"))


def _letters(raw: _Raw) -> Iterator[KeyPath]:
    """The part of the country where a file starts with none, and how letters end."""
    if _country(raw) in TAXED_BY_PART and parts_of(_country(raw)):
        yield REGION
    yield ("reply", "terms")


def _country(raw: _Raw) -> str:
    return str(_table(raw, "workshop").get("country"))


def _concrete(raw: _Raw) -> Iterator[KeyPath]:
    """The strength; of a bag its weight and price; and a batch."""
    yield ("recipe", "fck_mpa")
    if _has_bag(raw):
        yield from ((*bags.BAG, key) for key in bags.ASKED_OF_A_BAG)
    yield ("mixer", "working_l")


def _bag(raw: _Raw) -> Iterator[KeyPath]:
    """What follows from a bag's weight."""
    if _has_bag(raw):
        yield from ((*bags.BAG, key) for key in bags.USUAL_OF_A_BAG)


def _has_bag(raw: _Raw) -> bool:
    return "bag" in _table(raw, "recipe")


def _money(raw: _Raw) -> Iterator[KeyPath]:
    """The hour, the tax, and its rate where it is charged."""
    yield ("rates", "hour")
    yield ("tax", "registered")
    if _table(raw, "tax").get("registered") is not False:
        yield ("tax", "percent")


def _charges(raw: _Raw) -> Iterator[KeyPath]:
    """The deposit, when the rest is due, and what is charged alone."""
    yield from (("offer", key) for key in ("deposit_percent", "balance_due", "smallest_order"))
    yield ("services", "templating_visit")
    if "sample" in raw:
        yield ("sample", "price")


def _delivery(raw: _Raw) -> Iterator[KeyPath]:
    """The first area, and what is asked to bring it there and to fit it, whether it is or not."""
    if _items(raw, "areas"):
        yield from (("areas", 0, key) for key in ("postcodes", "own_van", "fitted"))


def _pallet(raw: _Raw) -> Iterator[KeyPath]:
    if _items(raw, "areas"):
        yield ("areas", 0, "pallet")


def _table(raw: _Raw, key: str) -> _Raw:
    found = raw.get(key)
    return found if isinstance(found, Mapping) else {}


def _items(raw: _Raw, key: str) -> list[_Raw]:
    found = raw.get(key)
    return [each for each in found if isinstance(each, Mapping)] if isinstance(found, list) else []


_ASKED: Final[Mapping[StepName, Callable[[_Raw], Any]]] = MappingProxyType(
    {
        "you": _you,
        "table": _at(("table", "length_mm"), ("table", "width_mm")),
        "concrete": _concrete,
        "steel": _steel,
        "lifting": _at(LIFTERS, FIRST_LIFT),
        "shades": _at(),
        "looks": _at(),
        "delivery": _delivery,
        "money": _money,
        "time": _at(("calendar", "hands"), WARMTH_PATH),
        "job": _at(),
    }
)
_STANDS: Final[Mapping[StepName, Callable[[_Raw], Any]]] = MappingProxyType(
    {
        "you": _letters,
        "concrete": _bag,
        "delivery": _pallet,
        "money": _charges,
        "time": _at(("calendar", "hours_per_day"), ("calendar", "orders_ahead_days")),
    }
)
STEPS: Final = tuple(_ASKED)
