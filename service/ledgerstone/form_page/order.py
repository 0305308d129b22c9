"""What a form sent, as the order that a page with scripts would have sent."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any, Final

from ledgerstone.form_page.form import Control
from ledgerstone.form_page.sent import Sent, Typed
from ledgerstone.json_types import JSON
from ledgerstone.quantities import KG_PER_LB

_NO_LISTS: Final = frozenset(("edges", "corner_radii"))  # their members may be named by numbers
_BARE = re.compile(r"[-−]?[\d.,\s/½¼¾⅛⅜⅝⅞⁄-]*")
_FIGURE = re.compile(r"[\d½¼¾⅛⅜⅝⅞]")
_WHOLE, _NUMBER = re.compile(r"\d{1,9}"), re.compile(r"-?\d{1,9}(\.\d+)?")
KG_PER: Final = {"kg": 1.0, "lb": KG_PER_LB}


@dataclass(frozen=True, slots=True)
class Habits:
    """How numbers are typed in one place.

    Attributes
    ----------
    mark
        The decimal mark: a point or a comma.
    masses
        The unit of masses: ``kg`` or ``lb``.
    """

    mark: str = "."
    masses: str = "kg"


def order_of(sent: Sent, controls: Mapping[str, Control], habits: Habits) -> dict[str, Any]:
    """Write what was sent as an order's document; what was left empty is left out.

    Parameters
    ----------
    controls
        The form's, by their places.
    """
    nested: dict[str, Any] = {}
    for place, texts in sent.typed.items():
        control = controls.get(place)
        if control is not None and control.as_ == "sides":
            _put(nested, place, [text for text in texts if text])
        else:
            _put(nested, place, _value(texts[-1], control, sent.unit, habits))
    order: dict[str, Any] = _tidied(nested, "")
    return order


def _put(nested: dict[str, Any], place: str, value: JSON) -> None:
    """Write a value at its place; one that lies inside another value is left out."""
    key, _, rest = place.partition("/")
    if not rest:
        nested.setdefault(key, value)
        return
    inner: object = nested.setdefault(key, {})
    if isinstance(inner, dict):
        _put(inner, rest, value)


def _tidied(value: JSON, name: str) -> JSON:
    """Leave out what is empty, and make lists of what is numbered; a row stays, if empty."""
    if not isinstance(value, dict):
        return value
    inner = {key: _tidied(member, key) for key, member in value.items()}
    if inner and name not in _NO_LISTS and all(map(_WHOLE.fullmatch, inner)):
        return [inner[key] for key in sorted(inner, key=int)]
    return {key: member for key, member in inner.items() if member not in ("", {}, [])}


def _value(text: str, control: Control | None, unit: str, habits: Habits) -> JSON:
    """Read one entry; an invalid number stays as it was typed."""
    if control is None:
        return text
    if text == control.usual:
        return ""
    if control.as_ == "length":
        return _length(text, unit)
    if control.as_ == "yes":
        return bool(text) or ""
    return _number(text, control.as_, habits)


def _number(text: str, as_: str, habits: Habits) -> JSON:
    if as_ == "whole" and _WHOLE.fullmatch(text):
        return int(text)
    number = text.replace(habits.mark, ".")
    if as_ in ("number", "mass") and _NUMBER.fullmatch(number):
        return float(number) if as_ == "number" else round(float(number) * KG_PER[habits.masses], 1)
    return text


def _length(text: str, unit: str) -> str:
    """Append the chosen unit to a bare number, read by the order's language."""
    return f"{text} {unit}" if _FIGURE.search(text) and _BARE.fullmatch(text) else text


def typed_of(order: JSON, controls: Mapping[str, Control]) -> Typed:
    """Write an order as entries of a form: the other way of ``order_of``."""
    return {
        place: [_entry(value, controls.get(place)) for value in values]
        for place, values in _flat(order, "")
    }


def _flat(value: JSON, place: str) -> Iterator[tuple[str, list[JSON]]]:
    if isinstance(value, dict):
        for key, member in value.items():
            yield from _flat(member, f"{place}/{key}".removeprefix("/"))
    elif isinstance(value, list) and any(isinstance(row, dict) for row in value):
        for i, row in enumerate(value):
            yield from _flat(row, f"{place}/{i}")
    else:
        yield place, value if isinstance(value, list) else [value]


def _entry(value: JSON, control: Control | None) -> str:
    if value is True:
        return "yes"
    if isinstance(value, int | float) and value is not False:
        return f"{value:g} mm" if control is not None and control.as_ == "length" else f"{value:g}"
    return str(value or "")
