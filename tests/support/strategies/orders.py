"""Random well-formed orders, as JSON documents: makeable ones and others, in every unit.

``orders()`` covers the whole contract. ``modest_orders()`` keeps to one workshop's usual sizes, one
opening to a part of the slab, so that most of them can be made. Neither yields a document that
means no piece of concrete: a law below says so.
"""

import copy
from datetime import date, timedelta
from typing import Any, Final

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

from ledgerstone.json_types import JSON
from ledgerstone.quantities import UnitName
from ledgerstone.surfaces import SURFACES
from support.documents import Json
from support.strategies.plans import (
    BOX_SIDES,
    UNITS,
    cutouts,
    maybe,
    outlines,
    point_of,
    rectangles,
    reliefs,
    sides_of,
    written,
)
from support.strategies.tripping_orders import TRIPS

TODAY: Final = date(2026, 11, 25)
_METRIC: Final[tuple[UnitName | None, ...]] = (None, "mm", "cm", "m")
_COUNTS: Final = frozenset(("quantity", "grooves", "turn_degrees"))
_NOT_IN_PLAN: Final = frozenset(("thickness", "depth", "size", "corner_radius"))
SHADES: Final = ("graphite", "chalk", "tarn slate", "fell clay", "lichen")
SEALERS: Final = ("matt", "satin", "hard wax oil")
POSTCODES: Final = (
    "HR9 7XX", "hr97xx", "LD1 5AA", "EC1A 1BB", "PO21 1AA", "PO30 1AA", "TR21 0AA", "EH1 1YZ",
    "IV27 4TH", "BT1 5GS", "N1P 1AA", "GIR 0AA", "AB10 1XG", "Wethermoor", "12345",
)  # fmt: skip


def cases(daily: int, long: int | None = None) -> int:
    """How many cases a law is held on: every day, and in a long search, 25 times as many else."""
    if settings.get_current_profile_name() == "every-run":
        return daily
    return 25 * daily if long is None else long


# No deadline: the machine is shared. Slow generation is no fault of an order.
_quiet = (HealthCheck.too_slow, HealthCheck.data_too_large, HealthCheck.filter_too_much)
thorough = settings(max_examples=cases(12, long=500), deadline=None, suppress_health_check=_quiet)
usual = settings(max_examples=cases(8, long=300), deadline=None, suppress_health_check=_quiet)
brief = settings(max_examples=cases(4, long=150), deadline=None, suppress_health_check=_quiet)


# --- edges, rests, looks --------------------------------------------------------------------


@st.composite
def edges(draw: DrawFn, unit: UnitName | None, sides: list[str]) -> Json:
    """Edges of some of the sides."""
    made: Json = {}
    for side in draw(st.lists(st.sampled_from(sides), unique=True, max_size=4)):
        profile = draw(st.sampled_from(("square", "bevel", "round", "wall")))
        edge: Json = {"profile": profile}
        if profile in ("bevel", "round"):
            edge["size"] = written(draw(st.integers(3, 12)), unit)
        depth = st.integers(20, 600).map(lambda mm: written(mm, unit))
        drops = st.fixed_dictionaries({"depth": depth}, optional={"mitred": st.booleans()})
        if draw(st.integers(0, 5)) == 0:
            edge["drop"] = draw(drops)
        made[side] = maybe(draw, edge, drip=st.booleans())
    return made


@st.composite
def rests(draw: DrawFn, unit: UnitName | None, length: int, width: int, sides: list[str]) -> Json:
    """What carries a slab: each of the seven kinds."""
    kind = draw(st.sampled_from(("units", "frame", "ends", "legs", "ledges", "pedestal", "full")))
    rest: Json = {"kind": kind}
    small = st.integers(20, 120).map(lambda mm: written(mm, unit))
    place = st.builds(point_of, st.integers(0, length), st.integers(0, width), st.just(unit))
    if kind == "units":
        wide = st.sampled_from((300, 400, 500, 600, 800)).map(lambda mm: written(mm, unit))
        use = st.sampled_from(("base", "basin", "hob", "gap"))
        units = st.fixed_dictionaries({"width": wide}, optional={"for": use})
        rest["units"] = draw(st.lists(units, min_size=1, max_size=5))
        over = st.sampled_from([side for side in BOX_SIDES if side in sides] or sides)
        maybe(draw, rest, overhang=st.dictionaries(over, small, max_size=3))
    elif kind == "frame":
        rest["width"] = draw(small)
        rest["sides"] = draw(st.lists(st.sampled_from(sides), unique=True, min_size=1, max_size=4))
    elif kind == "ends":
        rest["depth"] = draw(small)
    elif kind == "legs":
        rest |= {"pad": draw(small), "at": draw(st.lists(place, min_size=1, max_size=6))}
    elif kind == "ledges":
        y = draw(st.integers(10, max(11, width)))
        line = {
            "start": point_of(0, y, unit),
            "end": point_of(length, y, unit),
            "depth": draw(small),
        }
        rest["lines"] = [line]
    elif kind == "pedestal":
        rest["plate"] = draw(small)
        maybe(draw, rest, centre=place)
    return maybe(draw, rest, fixed=st.booleans())


# --- slabs, deliveries, orders --------------------------------------------------------------


def _cells(length: int, width: int, n: int) -> list[tuple[int, int, int, int]]:
    """One small box in the middle of each of n equal parts of a slab, side by side."""
    part = length // n
    wide, deep = part * 2 // 5, width * 2 // 5
    return [(i * part + (part - wide) // 2, (width - deep) // 2, wide, deep) for i in range(n)]


@st.composite
def slabs(draw: DrawFn, *, modest: bool = False) -> Json:
    """One slab, spoken in one unit."""
    unit = draw(st.sampled_from(UNITS))
    length = draw(st.integers(400, 2400) if modest else st.integers(60, 4000))
    width = draw(st.integers(300, 1100) if modest else st.integers(50, 1500))
    outline = draw(rectangles(unit, length, width) if modest else outlines(unit, length, width))
    sides = sides_of(outline)
    n = draw(st.integers(0, 3))
    whole = [(-30, -30, length + 60, width + 60)] * n
    boxes = _cells(length, width, n) if modest and n else whole
    thick = st.sampled_from((30, 40, 50)) if modest else st.integers(20, 70)
    slab: Json = {"outline": outline, "thickness": written(draw(thick), unit)}
    if boxes:
        slab["cutouts"] = [draw(cutouts(unit, box, sides)) for box in boxes]
    if draw(st.integers(0, 3)) == 0:
        relief = reliefs(unit, length, width, modest=modest)
        slab["reliefs"] = draw(st.lists(relief, min_size=1, max_size=2))
    boxed = outline["kind"] in ("rectangle", "l-shape")
    measured = ("finished", "template-to-follow")
    walls = ("between-walls", "over-units") if boxed else ()
    return maybe(
        draw,
        slab,
        label=st.sampled_from(("Seed-tray bench", "Küche — links", "x" * 120)),
        quantity=st.integers(1, 3) if modest else st.integers(1, 24),
        use=st.sampled_from(("worktop", "upstand", "shelf", "table", "hearth", "sill")),
        size_from=st.sampled_from((*measured, *walls)),
        edges=edges(unit, sides),
        shade=st.fixed_dictionaries({"name": st.sampled_from(SHADES)}),
        finish=st.fixed_dictionaries(
            {},
            optional={
                "surface": st.sampled_from(tuple(SURFACES)),
                "sealer": st.sampled_from(SEALERS),
            },
        ),
        place=st.sampled_from(("indoors", "wet-room", "outdoors")),
        rests=rests(unit, length, width, sides),
    )


@st.composite
def deliveries(draw: DrawFn) -> Json:
    """A delivery of any kind, with any part of what is known of the way in."""
    unit = draw(st.sampled_from(UNITS))
    wide = st.integers(600, 1400).map(lambda mm: written(mm, unit))
    lift = dict.fromkeys(("width", "depth", "height", "door"), wide)
    rated: dict[str, st.SearchStrategy[Any]] = {"rated_kg": st.sampled_from((320, 450, 630.5))}
    delivery: Json = {"kind": draw(st.sampled_from(("collect", "pallet", "own-van", "fitted")))}
    return maybe(
        draw,
        delivery,
        postcode=st.sampled_from(POSTCODES),
        doorway=wide,
        turn=st.fixed_dictionaries({"from": wide, "into": wide}),
        ceiling=wide,
        lift=st.fixed_dictionaries({**lift, **rated}),
        steps=st.integers(0, 30),
        floor=st.integers(-1, 20),
        people=st.integers(0, 6),
    )


@st.composite
def joins(draw: DrawFn, made: list[Json]) -> Json:
    """Which side of which slab meets which."""
    ends = []
    for _ in range(2):
        slab = draw(st.integers(0, len(made) - 1))
        ends.append({"slab": slab, "side": draw(st.sampled_from(sides_of(made[slab]["outline"])))})
    return {"one": ends[0], "other": ends[1], "gap": draw(st.integers(0, 4))}


@st.composite
def orders(draw: DrawFn, *, modest: bool = False) -> Json:
    """A whole order, anything that the contract knows."""
    most = draw(st.sampled_from((1, 1, 2, 3, 8)))
    kinds = slabs(modest=True) if modest else slabs(modest=True) | slabs() | slabs()
    made = draw(st.lists(kinds, min_size=1, max_size=min(most, 2) if modest else most))
    order: Json = {"slabs": made}
    if len(made) > 1 and draw(st.booleans()):
        order["joins"] = [draw(joins(made))]
    days = st.integers(0, 500).map(lambda n: (TODAY + timedelta(days=n)).isoformat())
    if modest:
        delivery = draw(deliveries())
        order["delivery"] = delivery | (
            {} if delivery["kind"] == "collect" else {"postcode": "HR9 7XX"}
        )
        return order
    return maybe(
        draw,
        order,
        delivery=deliveries(),
        needed_by=days,
    )


def modest_orders() -> st.SearchStrategy[Json]:
    """Orders of which most can be made: usual sizes, openings apart, delivered nearby."""
    return orders(modest=True)


# --- orders aimed at one check --------------------------------------------------------------


@st.composite
def aimed_orders(draw: DrawFn, name: str) -> Json:
    """The order that trips one check, varied: in another unit, of another size, among others."""
    order: Json = copy.deepcopy(TRIPS[name][1])
    scale = draw(st.sampled_from((1.0, 1.0, 0.97, 1.04)))
    unit = draw(st.sampled_from(_METRIC))
    made = [_varied(slab, scale, unit) for slab in order["slabs"]]
    for slab in made:
        maybe(draw, slab, label=st.sampled_from(("Seed-tray bench", "Küche — links", "Hall")))
        if draw(st.booleans()):
            slab.setdefault("shade", {"name": draw(st.sampled_from(SHADES))})
        if draw(st.integers(0, 3)) == 0:
            slab.setdefault("quantity", draw(st.integers(1, 3)))
    if "joins" not in order and draw(st.integers(0, 4)) == 0:
        made.append(draw(slabs(modest=True)))
    order["slabs"] = made
    if "delivery" not in order and draw(st.integers(0, 2)) == 0:
        order["delivery"] = draw(deliveries()) | {"postcode": "HR9 7XX"}
    return order


def _varied(part: JSON, scale: float, unit: UnitName | None, key: str = "") -> JSON:
    """Lengths in plan at a scale, in a unit; what was written with a unit stays as it is."""
    if isinstance(part, dict):
        return {name: _varied(value, scale, unit, name) for name, value in part.items()}
    if isinstance(part, list):
        return [_varied(value, scale, unit, key) for value in part]
    if isinstance(part, bool) or not isinstance(part, int | float) or key in _COUNTS:
        return part
    by = 1.0 if key in _NOT_IN_PLAN else scale
    return written(round(part * by, 1), unit)
