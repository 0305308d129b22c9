"""Random plans on the wire: lengths in every unit, outlines, openings and reliefs of every kind."""

import math
from fractions import Fraction
from typing import Any, Final

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

from ledgerstone.quantities import UnitName
from support.documents import Json

UNITS: Final[tuple[UnitName | None, ...]] = (None, "mm", "cm", "m", "in", "ft")
BOX_SIDES: Final = ("front", "right", "back", "left")


# --- lengths --------------------------------------------------------------------------------


def written(mm: float, unit: UnitName | None) -> str | int | float:
    """Write a length on the wire; inches and feet go to the nearest sixteenth of an inch."""
    if unit is None:
        return int(mm) if float(mm).is_integer() else mm
    if unit in ("in", "ft"):
        return _imperial(mm, unit)
    per = {"mm": 1, "cm": 10, "m": 1000}[unit]
    return f"{_decimal(Fraction(repr(float(mm))) / per)} {unit}"


def _decimal(amount: Fraction) -> str:
    return f"{float(amount):.6f}".rstrip("0").rstrip(".") or "0"


def _imperial(mm: float, unit: UnitName) -> str:
    sixteenths = round(abs(mm) / 25.4 * 16)
    sign = "-" if mm < 0 and sixteenths else ""
    feet, inches = divmod(Fraction(sixteenths, 16), 12) if unit == "ft" else (0, None)
    rest = Fraction(sixteenths, 16) if inches is None else inches
    whole, part = divmod(rest, 1)
    words = " ".join(str(word) for word in (whole, part) if word) or "0"
    return f"{sign}{feet} ft {words} in" if feet else f"{sign}{words} in"


def points_of(ring: list[tuple[float, float]], unit: UnitName | None) -> list[Json]:
    """Write a ring of points on the wire."""
    return [point_of(x, y, unit) for x, y in ring]


def point_of(x: float, y: float, unit: UnitName | None) -> Json:
    """Write one place on the wire."""
    return {"x": written(x, unit), "y": written(y, unit)}


def maybe(draw: DrawFn, document: Json, **members: st.SearchStrategy[Any]) -> Json:
    """Add each member to a document, or leave it out."""
    for name, values in members.items():
        if draw(st.booleans()):
            document[name] = draw(values)
    return document


# --- outlines -------------------------------------------------------------------------------


@st.composite
def rings(draw: DrawFn, largest_mm: int) -> list[tuple[float, float]]:
    """A ring that does not cross itself: its points stand round a centre, either way round."""
    n = draw(st.integers(3, 9))
    radii = [draw(st.integers(largest_mm // 4, largest_mm // 2)) for _ in range(n)]
    turns = [(i + draw(st.integers(0, 4)) / 10) / n * 2 * math.pi for i in range(n)]
    middle = largest_mm / 2
    ring = [
        (float(round(middle + r * math.cos(t))), float(round(middle + r * math.sin(t))))
        for r, t in zip(radii, turns, strict=True)
    ]
    return ring if draw(st.booleans()) else ring[::-1]


FAMILIAR_RINGS: Final[dict[str, list[tuple[float, float]]]] = {
    "an L": [(0, 0), (1600, 0), (1600, 500), (600, 500), (600, 1100), (0, 1100)],
    "a U": [(0, 0), (1800, 0), (1800, 900), (1300, 900), (1300, 400), (500, 400), (500, 900),
            (0, 900)],
    "a cut corner": [(0, 0), (900, 0), (1200, 300), (1200, 600), (0, 600)],
    "a triangle": [(0, 0), (900, 0), (0, 700)],
    "clockwise": [(0, 0), (0, 600), (1400, 600), (1400, 0)],
    "a point on a side": [(0, 0), (700, 0), (1400, 0), (1400, 600), (0, 600)],
    "a skewed wall": [(0, 0), (1500, 0), (1500, 600), (0, 560)],
}  # fmt: skip


@st.composite
def rectangles(draw: DrawFn, unit: UnitName | None, length: int, width: int) -> Json:
    """A rectangle, some with rounded corners: all alike, or by corner."""
    outline: Json = {
        "kind": "rectangle",
        "length": written(length, unit),
        "width": written(width, unit),
    }
    return _rounded(draw, outline, min(length, width) // 2 - 10, unit)


def _rounded(draw: DrawFn, outline: Json, most_mm: int, unit: UnitName | None) -> Json:
    radius = st.integers(0, max(0, most_mm)).map(lambda mm: written(mm, unit))
    corners = st.sampled_from(("front-left", "front-right", "back-right", "back-left"))
    how = draw(st.sampled_from(("sharp", "sharp", "one", "by corner")))
    if how == "one":
        outline["corner_radius"] = draw(radius)
    elif how == "by corner":
        outline["corner_radii"] = draw(st.dictionaries(corners, radius, max_size=4))
    return outline


@st.composite
def l_shapes(draw: DrawFn, unit: UnitName | None, length: int, width: int) -> Json:
    """An L: the notch at any corner, either leg from stout to slim."""
    notch_length = draw(st.integers(30, length - 40))
    notch_width = draw(st.integers(30, width - 40))
    corner = draw(st.sampled_from(("front-left", "front-right", "back-right", "back-left")))
    outline: Json = {
        "kind": "l-shape",
        "length": written(length, unit),
        "width": written(width, unit),
        "notch": {
            "corner": corner,
            "length": written(notch_length, unit),
            "width": written(notch_width, unit),
        },
    }
    slimmest = min(notch_length, notch_width, length - notch_length, width - notch_width)
    return _rounded(draw, outline, slimmest // 2 - 10, unit)


@st.composite
def polygons(draw: DrawFn, unit: UnitName | None, largest_mm: int) -> Json:
    """A polygon: any ring, or a familiar one, which may have rounded corners."""
    if draw(st.booleans()):
        return {"kind": "polygon", "points": points_of(draw(rings(largest_mm)), unit)}
    ring = draw(st.sampled_from(list(FAMILIAR_RINGS.values())))
    outline: Json = {"kind": "polygon", "points": points_of(ring, unit)}
    return maybe(draw, outline, corner_radius=st.integers(0, 40).map(lambda mm: written(mm, unit)))


@st.composite
def outlines(draw: DrawFn, unit: UnitName | None, length: int, width: int) -> Json:
    """An outline of any kind, within a box of that length and width."""
    kind = draw(st.sampled_from(("rectangle", "rectangle", "l-shape", "round", "polygon")))
    if kind == "rectangle":
        return draw(rectangles(unit, length, width))
    if kind == "l-shape" and min(length, width) > 80:
        return draw(l_shapes(unit, length, width))
    if kind == "polygon" and min(length, width) > 200:
        return draw(polygons(unit, min(length, width)))
    return {"kind": "round", "diameter": written(min(length, width), unit)}


def sides_of(outline: Json) -> list[str]:
    """Names of the sides of an outline on the wire."""
    if outline["kind"] == "polygon":
        return [str(i + 1) for i in range(len(outline["points"]))]
    if outline["kind"] == "round":
        return ["rim"]
    return [*BOX_SIDES, "notch-x", "notch-y"] if outline["kind"] == "l-shape" else [*BOX_SIDES]


# --- openings and reliefs -------------------------------------------------------------------


@st.composite
def cutouts(
    draw: DrawFn, unit: UnitName | None, box: tuple[int, int, int, int], sides: list[str]
) -> Json:
    """An opening of any kind whose own size and centre lie in a box ``(x, y, length, width)``."""
    x0, y0, wide, deep = box
    kind = draw(st.sampled_from(("circle", "rectangle", "slot", "polygon")))
    length = draw(st.integers(8, max(9, wide)))
    width = draw(st.integers(8, max(9, deep)))
    x, y = draw(st.integers(x0, x0 + wide)), draw(st.integers(y0, y0 + deep))
    cutout: Json = {"kind": kind}
    if kind == "polygon":
        ring = draw(rings(max(60, min(length, width))))
        cutout["points"] = points_of([(x0 + px, y0 + py) for px, py in ring], unit)
    else:
        cutout["centre"] = point_of(x, y, unit)
    if kind == "circle":
        cutout["diameter"] = written(min(length, width), unit)
    elif kind != "polygon":
        cutout |= {"length": written(length, unit), "width": written(width, unit)}
        maybe(draw, cutout, turn_degrees=st.sampled_from((0, 30, 45, 90, -17.5, 180)))
    if kind == "rectangle":
        radius = st.integers(0, min(length, width) // 2 - 3).map(lambda mm: written(mm, unit))
        maybe(draw, cutout, corner_radius=radius)
    if draw(st.integers(0, 7)) == 0:
        cutout["open_to"] = draw(st.sampled_from(sides))
    return maybe(
        draw,
        cutout,
        label=st.sampled_from(("basin", "tap", "hob", "Pflanztopf für Kräuter", "<b>sink</b>")),
        rim=st.sampled_from(("shown", "covered")),
        heat=st.booleans(),
        size_from=st.sampled_from(("measured", "template-to-follow")),
    )


@st.composite
def reliefs(
    draw: DrawFn, unit: UnitName | None, length: int, width: int, *, modest: bool = False
) -> Json:
    """A drainer, a recess or a rebate; a modest one lies on its slab, or nearly."""
    kind = draw(st.sampled_from(("drainer", "recess", "rebate")))
    most = (max(91, length // 2), max(91, width // 2)) if modest else (length, width)
    own = draw(st.integers(90, max(91, most[0]))), draw(st.integers(90, max(91, most[1])))
    reach = (length - own[0], width - own[1]) if modest else (length, width)
    at = [draw(st.integers(-20 if modest else -50, max(0, far))) for far in reach]
    relief: Json = {
        "kind": kind,
        "outline": draw(outlines(unit, *own)),
        "depth": written(draw(st.integers(2, 12 if modest else 20)), unit),
        "at": point_of(at[0], at[1], unit),
    }
    if kind == "drainer":
        fall = st.integers(1, 10).map(lambda mm: written(mm, unit))
        maybe(draw, relief, grooves=st.integers(1, 20), fall=fall)
    return maybe(draw, relief, label=st.just("drainer to the left"))
