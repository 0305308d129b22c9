"""A size in its sentence, with what its neighbouring words say of it."""

from __future__ import annotations

from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Final

from ledgerstone.enquiry.text.sizes import Size
from ledgerstone.quantities import Length, UnitName

_OTHER: Final = MappingProxyType[UnitName, UnitName]({"cm": "mm", "mm": "cm", "in": "mm"})

_FEET: Final = 9  # fewer bare ones after feet are feet: common practice, no source


@dataclass(slots=True)
class Measure:
    """A size in its sentence.

    Attributes
    ----------
    at
        The atom that it is.
    role, side, axis
        What its words call it, the side that it is counted from, the way it runs.
    place, of, members
        Its place in a group like 1830 x 620 x 40.
    replaced, about
        Whether it is said to be replaced, or approximate.
    to_edge
        Whether it runs to a hole's edge and not to its middle.
    beside
        1 where it lies to the right of something, -1 to the left.
    on_hole
        Whether the words before it name the hole itself.
    is_subject
        Whether a slab's name leads to it and nothing else: "the worktop is only 2.78 m".
    is_attribute
        Whether it stands right before a slab's name: "a 40 mm worktop".
    opinion
        Whether it is only what someone thinks: "my brother reckons 30 would do".
    member
        Which of several current openings it is of.
    cue
        The atoms that say its role.
    counted
        How many pieces are of it, as written: "2 @ 610".
    aside
        Why it is of no slab, where its words say so.
    is_breadth
        Whether it is called a width, by the noun: what it is beside a length.
    is_sum
        Whether it is the sum of what is written: "600 + 800".
    """

    at: int
    size: Size
    role: str = ""
    side: str = ""
    axis: str = ""
    place: int = 0
    of: int = 1
    members: list[Measure] = field(default_factory=list)
    replaced: bool = False
    about: bool = False
    to_edge: bool = False
    beside: int = 0
    on_hole: bool | None = None
    unit_from_label: str = ""
    cue: tuple[int, int] | None = None
    opinion: bool = False
    member: int | None = None
    is_subject: bool = False
    is_attribute: bool = False
    counted: Size | None = None
    aside: str = ""
    is_sum: bool = False
    is_breadth: bool = False


def is_after_feet(measure: Measure) -> bool:
    """Return whether a bare number goes on from feet in its group: "six feet by two and a half"."""
    before = measure.members[: max(0, measure.place - 1)]
    return measure.size.amount < _FEET and any(one.size.unit == "ft" for one in before)


def in_other_unit(measure: Measure, length: Length) -> Length | None:
    """Give what a number without a unit is in another one than it was taken for; else None."""
    other = _OTHER.get(length.unit) if measure.size.unit is None else None
    return Length.of(measure.size.amount, other) if other is not None else None
