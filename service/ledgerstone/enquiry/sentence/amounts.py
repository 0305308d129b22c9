"""A size as written becomes one length: which unit a bare number has, what its mark means."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache
from types import MappingProxyType
from typing import Final, cast

from ledgerstone.enquiry.sentence.declared import UNIT_NAMES, declared_unit, is_metric
from ledgerstone.enquiry.sentence.measure import Measure, is_after_feet
from ledgerstone.enquiry.sentence.slips import both_readings
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.text.sizes import Size
from ledgerstone.errors import QuantityError
from ledgerstone.quantities import Length, UnitName

# What a size of each role may be on a slab cast to order, mm. Common practice, no source: wide
# enough for any piece, close enough to tell 60 cm from 60 mm.
PLAUSIBLE_MM: Final = MappingProxyType(
    {
        "length": (150.0, 9000.0),
        "width": (35.0, 3500.0),
        "deep": (140.0, 3500.0),
        "thickness": (10.0, 200.0),
        "diameter": (200.0, 3500.0),
        "opening": (100.0, 1400.0),
        "hole": (8.0, 1300.0),
        "place": (8.0, 8000.0),
    }
)
# Of several units that a bare number may have, the first that gives a usual size is taken.
LIKELY_MM: Final = MappingProxyType(
    {
        "length": (250.0, 4500.0),
        "width": (60.0, 1600.0),
        "deep": (150.0, 1600.0),
        "thickness": (15.0, 120.0),
        "diameter": (250.0, 2000.0),
        "opening": (150.0, 1100.0),
        "hole": (15.0, 900.0),
        "place": (15.0, 4500.0),
    }
)
_USUAL: Final = {key: LIKELY_MM[key] for key in ("length", "width", "thickness")}
_OUTLINE: Final = {key: LIKELY_MM[key] for key in ("length", "deep")}
# No slab's size is written as so many: common practice, no source.
_TOO_MANY: Final[Mapping[UnitName, int]] = MappingProxyType({"in": 150, "cm": 400})
_ONLY_MM: Final = 1000  # in any other unit no slab's size is so many: common practice, no source
_MAX_MM: Final = 9000  # a larger number is no size
_COUNTS: Final = 10  # a smaller number without a unit may count something
_NARROWEST_MM: Final = 15.0  # of a pair, a socket's or a slot's: common practice, no source
_METRIC_FIRST: Final[tuple[UnitName, ...]] = ("mm", "cm", "m", "in")
_INCHES_FIRST: Final[tuple[UnitName, ...]] = ("mm", "in", "cm", "m")
_SIDES: Final = ("length", "width")
_SIDED: Final = frozenset({"length", "width", "deep"})
_RULING_SHARE: Final = 0.7
Ratio = tuple[int, int]  # a number as a fraction in its lowest terms: quicker to look up
Meant = tuple[Length, Length | None]  # the length meant, and another that it may mean
_BY: Final = frozenset({"x", "×", "by", "mal", "*"})


def _sizes(measure: Measure) -> Iterator[Size]:
    """Give what a size's length depends on: itself and the sizes of its group."""
    yield measure.size
    for member in measure.members:
        yield member.size


def _written_as(size: Size) -> tuple[object, ...]:
    """Return what tells sizes apart, wherever they stand."""
    return *size.amount.as_integer_ratio(), size.unit, size.grouped, size.has_fraction


def _told_unit(size: Size) -> UnitName | None:
    """Return the unit that a size tells: its own, or inches where it has a fraction."""
    return size.unit or ("in" if size.has_fraction else None)


def _written(sentences: Iterable[Sentence]) -> dict[Ratio, set[UnitName]]:
    """Return the units with which each amount is written: said again, it has the same."""
    found: dict[Ratio, set[UnitName]] = {}
    for sentence in sentences:
        unit: UnitName | None = None
        for atom in reversed(sentence.atoms):
            if atom.kind == "size" and atom.size is not None:
                unit = atom.size.unit or unit
                if unit is not None:
                    found.setdefault(atom.size.amount.as_integer_ratio(), set()).add(unit)
            elif atom.word not in _BY:
                unit = None
    return found


def _length(amount: Fraction, unit: UnitName) -> Length | None:
    """Return the length that a number is in a unit; None if that is longer than any slab."""
    return _length_of(amount.as_integer_ratio(), unit)


@lru_cache(maxsize=4096)
def _length_of(ratio: Ratio, unit: UnitName) -> Length | None:
    try:
        return Length.of(Fraction(*ratio), unit)
    except QuantityError:
        return None


@lru_cache(maxsize=4096)
def _slab_unit(ratios: tuple[Ratio, Ratio, Ratio], units: tuple[UnitName, ...]) -> UnitName | None:
    """Return the first unit in which three numbers are a usual slab's length, width, thickness."""
    for unit in units:
        sizes = [length.mm for ratio in ratios if (length := _length_of(ratio, unit)) is not None]
        if len(sizes) < len(ratios):
            continue
        low, high = PLAUSIBLE_MM["thickness"] if unit == "mm" else _USUAL["thickness"]
        is_usual = all(
            _USUAL[key][0] <= size <= _USUAL[key][1]
            for key, size in zip(_SIDES, sorted(sizes[:2], reverse=True), strict=True)
        )
        if low <= sizes[2] <= high and is_usual:
            return unit
    return None


@lru_cache(maxsize=4096)
def _outline_unit(ratios: tuple[Ratio, Ratio], units: tuple[UnitName, ...]) -> UnitName | None:
    """Return the first unit in which two numbers are a slab's length and depth."""
    for unit in units:
        sizes = [length.mm for ratio in ratios if (length := _length_of(ratio, unit)) is not None]
        if len(sizes) < len(ratios):
            continue
        named = dict(zip(("deep", "length"), sorted(sizes), strict=True))
        if all(low <= named[key] <= high for key, (low, high) in _OUTLINE.items()):
            return unit
    return None


def _has_bare_millimetres(sentences: Iterable[Sentence], unit: UnitName) -> bool:
    """Whether most numbers without a unit are too many for the unit of those that have one."""
    bare = [
        atom.size.amount
        for sentence in sentences
        for atom in sentence.atoms
        if atom.size is not None
        and _told_unit(atom.size) is None
        and _COUNTS <= atom.size.amount <= _MAX_MM
    ]
    large = [amount for amount in bare if amount >= _TOO_MANY.get(unit, 0)]
    return len(large) > len(bare) / 2 or max(bare, default=0) >= _ONLY_MM


class Amounts:
    """Turns sizes to lengths by what the whole message says of its units."""

    def __init__(self, text: str, sentences: Iterable[Sentence], *, in_inches: bool) -> None:
        every = list(sentences)
        self.others: tuple[UnitName, ...] = _INCHES_FIRST if in_inches else _METRIC_FIRST
        self.is_metric = not in_inches and is_metric(
            atom.size for one in every for atom in one.atoms
        )
        self.declared = declared_unit(text)
        counted: Counter[UnitName] = Counter(
            "in" if unit == "ft" else unit
            for sentence in every
            for atom in sentence.atoms
            if atom.size is not None and (unit := _told_unit(atom.size)) is not None
        )
        usual, count = counted.most_common(1)[0] if counted else (None, 0)
        is_rule = count >= _RULING_SHARE * counted.total()
        is_rule = is_rule and usual is not None and usual in _TOO_MANY
        is_bare = usual is not None and _has_bare_millimetres(every, usual)
        self.usual: UnitName | None = usual if is_rule and not is_bare else None
        self.written = _written(every)
        self._known: dict[tuple[object, ...], Meant | None] = {}

    def length(self, measure: Measure, role: str) -> Meant | None:
        """Return the length meant in a role, and another that it may mean; None if none fits."""
        roles = tuple(member.role for member in measure.members)
        written = tuple(map(_written_as, _sizes(measure)))
        key = (role, measure.place, measure.unit_from_label, roles, written)
        if key not in self._known:
            self._known[key] = self._length(measure, role)
        return self._known[key]

    def _length(self, measure: Measure, role: str) -> Meant | None:
        size = measure.size
        if size.unit is not None:
            slip = both_readings(measure) if role in _SIDED else None
            if slip is not None:
                return slip
            fits = self._fitting(measure, [size.unit], "width" if role == "deep" else role)
            other = fits[1] if size.grouped is not None and len(fits) > 1 else None
            return (fits[0], other) if fits else None
        coherent = self._coherent(measure, role)
        if coherent is not None:
            return coherent, None
        least, most = LIKELY_MM[role]
        as_said = "width" if role == "deep" else role
        said = self._fitting(measure, self._said_units(measure), as_said)
        guessed = self._fitting(measure, self._guessed_units(measure), role)
        likely = [one for one in guessed if least <= one.mm <= most]
        ruled = [one for one in likely if one.unit == self.usual == "in"]
        again = [one for one in guessed[:1] if one.unit == self._unit_again(measure)]
        return next(((one, None) for one in (*said, *again, *ruled, *likely, *guessed)), None)

    def _coherent(self, measure: Measure, role: str) -> Length | None:
        """Read bare numbers of a group in the one unit in which they make a usual slab."""
        group = measure.members
        if any(one.size.unit is not None for one in group):
            return None
        if len(group) == 2:
            return self._as_pair(measure, role)
        if len(group) != 3:
            return None
        if role not in ("length", "width", "deep", "thickness") or self._said_units(measure):
            return None
        first, second, third = (one.size.amount.as_integer_ratio() for one in group)
        unit = _slab_unit((first, second, third), tuple(self._guessed_units(measure)))
        return _length(measure.size.amount, unit) if unit is not None else None

    def _as_pair(self, measure: Measure, role: str) -> Length | None:
        """Read a pair's smaller number in the unit of its larger: "150 x 90" is no 90 cm."""
        is_outline = not any(member.role in ("thick", "high", "dia") for member in measure.members)
        if is_outline and role in ("length", "deep") and not self._said_units(measure):
            outline = self._as_outline(measure)
            if outline is not None:
                return outline
        larger = max(measure.members, key=lambda member: member.size.amount)
        if larger is measure or role not in ("opening", "hole", "length", "width", "deep"):
            return None
        found = self.length(replace(larger, members=[]), "deep" if role == "deep" else role)
        if found is None or found[1] is not None:
            return None
        length = _length(measure.size.amount, found[0].unit)
        return length if length is not None and length.mm >= _NARROWEST_MM else None

    def _as_outline(self, measure: Measure) -> Length | None:
        """Read a pair in the one unit in which it is a slab's length and depth: "160 x 90"."""
        first, second = (member.size.amount.as_integer_ratio() for member in measure.members)
        unit = _outline_unit((first, second), tuple(self._guessed_units(measure)))
        return _length(measure.size.amount, unit) if unit is not None else None

    def _fitting(self, measure: Measure, units: Iterable[UnitName], role: str) -> list[Length]:
        """Return the lengths that a number may mean in these units and that a slab may have."""
        low, high = PLAUSIBLE_MM[role]
        fits: list[Length] = []
        for amount, unit in self._readings(measure, units):
            length = _length(amount, unit)
            if length is None:
                continue
            if low <= length.mm <= high and not any(abs(length.mm - fit.mm) < 0.5 for fit in fits):
                fits.append(length)
        return fits

    @staticmethod
    def _readings(
        measure: Measure, units: Iterable[UnitName]
    ) -> Iterable[tuple[Fraction, UnitName]]:
        size = measure.size
        for unit in units:
            if size.grouped is not None and unit == "mm":
                yield size.grouped, unit
            yield size.amount, unit
            if size.grouped is not None and unit not in ("mm", "m"):
                yield size.grouped, unit

    def _said_units(self, measure: Measure) -> list[UnitName]:
        """Units that a label, the end of the group or the message as a whole gives a number."""
        said: list[UnitName | None] = []
        if label := measure.unit_from_label:
            said.append(UNIT_NAMES.get(label, cast("UnitName", label)))
        said += [
            member.size.unit for member in measure.members[measure.place :] if member.size.unit
        ][-1:]
        said.append(self.declared)
        return [unit for unit in said if unit is not None]

    def _unit_again(self, measure: Measure) -> UnitName | None:
        """Return the one unit with which a bare number is written elsewhere."""
        known = self.written.get(measure.size.amount.as_integer_ratio(), set())
        return next(iter(known)) if len(known) == 1 and measure.of == 1 else None

    def _guessed_units(self, measure: Measure) -> list[UnitName]:
        """Units that a bare number may have, the likeliest first."""
        again = self._unit_again(measure)
        fraction: list[UnitName] = ["in"] * measure.size.has_fraction
        fraction = ["ft"] if is_after_feet(measure) else fraction
        others = self.others
        if measure.of == 1 and measure.size.amount.denominator == 1:
            others = tuple(
                other for other in others if other != "m"
            )  # nobody writes 2 alone for 2 m
        if measure.size.amount.denominator != 1:  # nobody writes 42.5 mm without its unit
            others = ("cm", "m", "in", "mm")
        if self.is_metric:
            others = tuple(other for other in others if other != "in")
        return list(dict.fromkeys(filter(None, (again, self.usual, *fraction, *others))))
