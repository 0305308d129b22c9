"""What a check has to say, and the words it says it in."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any, Literal

import shapely
from shapely.geometry import LineString, mapping
from shapely.geometry.base import BaseGeometry

from ledgerstone import plane
from ledgerstone.cutouts import kind_of
from ledgerstone.json_types import JSON
from ledgerstone.order import Cutout, Order, Slab

Level = Literal["stops", "caution", "note"]
LEVELS: tuple[Level, ...] = ("stops", "caution", "note")
LONGEST_LABEL = 40  # a longer label is cut in a sentence, so that the sentence stays one
MOST_NAMED = 3
ORDINALS = (
    "first",
    "second",
    "third",
    "fourth",
    "fifth",
    "sixth",
    "seventh",
    "eighth",
    "ninth",
    "tenth",
    "eleventh",
    "twelfth",
    "thirteenth",
    "fourteenth",
    "fifteenth",
    "sixteenth",
    "seventeenth",
    "eighteenth",
    "nineteenth",
    "twentieth",
)  # as many as a slab has cut-outs or reliefs
_ARTICLE = re.compile(r"^(?:the|an?)\s+", re.IGNORECASE)
XY = tuple[float, float]
_NOTHING: Mapping[str, float] = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing that one check says of an order.

    ``at`` holds JSON Pointers into the order; ``measured`` and ``limit`` have unit-bearing keys;
    ``where_mm`` is GeoJSON-shaped in plane slab millimetres (RFC 7946 §4); ``follows_from`` is the
    id of the finding that it follows from at the same place.
    """

    check: str
    level: Level
    says: str
    source: str
    slab: int | None = None
    at: tuple[str, ...] = ()
    measured: Mapping[str, Any] = field(default_factory=lambda: _NOTHING)
    limit: Mapping[str, Any] = field(default_factory=lambda: _NOTHING)
    where_mm: Mapping[str, Any] | None = None
    key: str = ""
    follows_from: str | None = None

    @property
    def id(self) -> str:
        """A name that stays the same while the finding does: check, slab, part."""
        parts = [self.check, *([] if self.slab is None else [str(self.slab)]), self.key]
        return ".".join(part for part in parts if part)


def geojson(shape: BaseGeometry) -> Mapping[str, Any]:
    """Write a place in GeoJSON's shape, rounded to 0.1 mm.

    Of what meets at a corner as well as over an area, the area alone is the place.
    """
    parts = shapely.get_parts(shape)
    most = shapely.get_dimensions(parts).max(initial=-1)
    if shape.geom_type == "GeometryCollection" and most >= 0:
        shape = plane.union(parts[shapely.get_dimensions(parts) == most])
    drawn: dict[str, Any] = mapping(shape)
    return {"type": drawn["type"], "coordinates": _rounded(drawn["coordinates"])}


def _rounded(coordinates: JSON) -> JSON:
    if isinstance(coordinates, int | float):
        return round(float(coordinates), 1) + 0.0
    return [_rounded(part) for part in coordinates]


def line_mm(line: tuple[XY, XY]) -> Mapping[str, Any]:
    """Write a line's place."""
    return geojson(LineString(line))


def slab_words(slab: Slab, index: int, slabs: int) -> str:
    """Name a slab as the customer would: by its label, or by what it is."""
    if slab.label:
        return f"“{cut_short(slab.label)}”"
    return "the slab" if slabs == 1 else f"slab {index + 1}"


def slabs_words(order: Order, indices: Sequence[int]) -> str:
    """Name several slabs: “the slabs” where they are all of them."""
    if len(indices) > 1 and len(indices) == len(order.slabs):
        return "the slabs"
    return listed([slab_words(order.slabs[i], i, len(order.slabs)) for i in indices])


def only(indices: Sequence[int]) -> int | None:
    """Return the one slab that a finding is about, or None where there are several."""
    return indices[0] if len(indices) == 1 else None


def cutout_words(slab: Slab, index: int) -> str:
    """Name a cut-out as the customer would: by its label, or by its shape and which one it is.

    Which one is said as a word: a figure would run into a length that follows it.
    """
    cutout: Cutout = slab.cutouts[index]
    if cutout.label:
        return label_words(cutout.label)
    alike = [k for k, c in enumerate(slab.cutouts) if not c.label and c.kind == cutout.kind]
    which = f"{ORDINALS[alike.index(index)]} " if len(alike) > 1 else ""
    return f"the {which}{kind_of(cutout).noun} cut-out"


def label_words(label: str) -> str:
    """Name a thing by its label, with one article whether the label has one or not."""
    short = cut_short(label)
    return f"the {_ARTICLE.sub('', short) or short}"


def cut_short(label: str) -> str:
    """Cut a label that would swamp its sentence."""
    tidy = " ".join(label.split())
    return tidy if len(tidy) <= LONGEST_LABEL else f"{tidy[: LONGEST_LABEL - 1].rstrip()}…"


def listed(names: Sequence[str]) -> str:
    """Name things one after another; of more than three the first two, and how many more."""
    if len(names) == 1:
        return names[0]
    if len(names) > MOST_NAMED:
        return f"{names[0]}, {names[1]} and {len(names) - 2} more"
    return f"{', '.join(names[:-1])} and {names[-1]}"


def whole_kg(kg: float) -> int:
    """Round a mass up, as it is said to whoever must lift it."""
    return math.ceil(kg - 1e-9)


def side_words(name: str, thing: str = "edge") -> str:
    """Name a side as the customer would."""
    if name.isdigit():
        return f"side {name}"
    return {"rim": "the rim", "notch-x": "the notch", "notch-y": "the notch"}.get(
        name, f"the {name} {thing}"
    )


def capital(sentence: str) -> str:
    """Begin a sentence with a capital, past an opening quotation mark."""
    at = 1 if sentence[:1] == "“" else 0
    return sentence[:at] + sentence[at : at + 1].upper() + sentence[at + 1 :]
