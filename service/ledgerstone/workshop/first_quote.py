"""The shortest honest way to a first quote: what is asked, and what one tick confirms, by step.

A step asks for the values that no two workshops share. Its tick says of the others on which a
price, a day, an area or a shade rests that they are right as shown. Once all steps are done no
answer is a trial any more.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Any, Final, Literal

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop import bags
from ledgerstone.workshop.standing import WARMTH, ValueStanding, is_priced

StepName = Literal["you", "table", "money", "concrete", "materials", "hours", "looks", "delivery"]
HOURS: Final = "hours"
_Raw = Mapping[str, Any]
# Of each table, the step whose tick speaks for it; hours and minutes have one of their own.
_STEP_OF: Final[Mapping[str, StepName]] = MappingProxyType(
    {
        **dict.fromkeys(("rates", "tax", "offer", "services", "sample"), "money"),
        "recipe": "concrete",
        **dict.fromkeys(("boards", "steel", "rails", "slurry", "pigments"), "materials"),
        **dict.fromkeys(("shade", "handling", "lifting", "tent"), "materials"),
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
    rest
        Values that are still invented besides and that a price, a day or an area rests on.
    open_asks
        Of the values that are asked for, those that are still invented.
    """

    name: StepName
    asks: tuple[KeyPath, ...]
    rest: tuple[KeyPath, ...]
    open_asks: tuple[KeyPath, ...]

    @property
    def is_done(self) -> bool:
        """Whether it holds no invented value."""
        return not self.rest and not self.open_asks


def first_steps(raw: _Raw, found: Mapping[KeyPath, ValueStanding]) -> tuple[FirstStep, ...]:
    """Return the steps of a parsed profile, in their order.

    Parameters
    ----------
    found
        Whose each value is.
    """
    invented = [path for path, word in found.items() if word == "invented"]
    priced = [path for path in invented if is_priced(path)]
    steps = []
    for name, asked in _ASKED.items():
        asks = tuple(path for path in asked(raw) if path in found)
        rest = tuple(path for path in priced if _step_of(path) == name and path not in asks)
        open_asks = tuple(path for path in asks if found[path] == "invented")
        steps.append(FirstStep(name, asks, rest, open_asks))
    return tuple(steps)


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
    """The strength, and the prices of what most of the concrete is: cement and sand, or the bag."""
    yield ("recipe", "fck_mpa")
    yield from ((*bags.BAG, key) for key in bags.ASKED)
    recipe = raw.get("recipe")
    parts = recipe.get("constituents", ()) if isinstance(recipe, Mapping) else ()
    roles = [part.get("role") if isinstance(part, Mapping) else None for part in parts]
    for role in ("cement", "aggregate"):
        if role in roles:
            yield ("recipe", "constituents", roles.index(role), "price_per_kg")


_ASKED: Final[Mapping[StepName, Callable[[_Raw], Any]]] = MappingProxyType(
    {
        "you": _at(*(("workshop", key) for key in ("name", "town", "email", "telephone"))),
        "table": _at(("table", "length_mm"), ("table", "width_mm")),
        "money": _at(
            *(("rates", key) for key in ("hour", "margin_percent")),
            *(("tax", "registered"), ("tax", "percent")),
        ),
        "concrete": _concrete,
        "materials": _at(("boards", "price_per_sheet")),
        "hours": _at(("calendar", "hands"), ("calendar", "orders_ahead_days"), WARMTH),
        "looks": _at(),
        "delivery": _at(
            *(("areas", 0, key) for key in ("postcodes", "pallet", "own_van", "fitted"))
        ),
    }
)
STEPS: Final = tuple(_ASKED)
