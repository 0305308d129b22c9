"""Random orders at the edges of the contract: every number at, inside and outside its bounds.

Needles, coincident points, openings that swallow their slab, lengths 25 times off. Most of each
order is usual, so that what is odd in it is reached; a few have a number that is refused.
"""

from collections.abc import Sequence
from datetime import timedelta
from typing import Final

from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

from ledgerstone.quantities import UnitName
from ledgerstone.surfaces import SURFACES
from support.documents import Json
from support.strategies.degenerate_rings import rings
from support.strategies.orders import POSTCODES, SEALERS, SHADES, TODAY
from support.strategies.plans import UNITS, points_of, sides_of, written

# Bounds of the contract, of the demonstration workshop and of what can be concrete at all, in mm,
# each met, missed by a hair and passed by one; then usual ones, and what no bound stops.
PLAN: Final = (10, 10.1, 59.9, 60, 60.1, 150, 300, 500, 600, 900, 1199.9, 1200, 1200.1, 1450,
               2699.9, 2700, 2700.1, 4300, 9000, 19_999.9, 20_000)  # fmt: skip
NOTCHES: Final = (1, 1.1, 20, 60, 150, 299.9, 300, 590, 599.9)
THICK: Final = (5, 5.1, 9, 12, 19.9, 20, 29.9, 30, 30.1, 40, 50, 60, 80, 100, 100.1, 999.9, 1000)
OPENING: Final = (3, 3.1, 8, 35, 35.001, 60, 60.1, 340, 360, 560, 560.001, 900, 2000, 20_000)
SMALL: Final = (0, 0.001, 0.01, 0.5, 1, 3, 5, 12, 12.001, 19.999, 20, 40, 299.999, 600, 20_000)
PLACES: Final = (-20_000, -900, -0.001, 0, 0.001, 1, 20, 60, 250, 300, 450, 899.999, 900, 20_000)
REFUSED: Final = (-1, 0, 0.0004, 2.9, 4.9, 9.9, 20_000.1, 25.4e6, 1e9)
INCH: Final = 25.4


@st.composite
def lengths(draw: DrawFn, usual: Sequence[float], *, refused: bool) -> str | int | float:
    """A length of a list: in any unit, seldom 25 times off or refused."""
    mm = float(draw(st.sampled_from(usual)))
    off = draw(st.integers(0, 99))
    if refused and off >= 94:
        mm = draw(st.sampled_from(REFUSED))
    elif off == 71:
        mm = round(mm * INCH, 3)
    elif off == 72:
        mm = round(mm / INCH, 3)
    unit: UnitName | None = draw(st.sampled_from(UNITS))
    return written(mm, unit) if unit in (None, "mm", "cm", "m") else written(round(mm, 1), unit)


# --- parts of a slab ------------------------------------------------------------------------


@st.composite
def outlines(draw: DrawFn, sizes: Sequence[float], *, refused: bool) -> Json:
    """An outline of any kind, of sizes from a list."""
    kind = draw(st.sampled_from(("rectangle", "rectangle", "l-shape", "round", "polygon")))
    size = lengths(sizes, refused=refused)
    small = lengths(SMALL, refused=refused)
    if kind == "round":
        return {"kind": kind, "diameter": draw(size)}
    if kind == "polygon":
        usual = [mm for mm in sizes if mm <= 4300]
        ring = draw(rings(draw(st.sampled_from(usual)), draw(st.sampled_from(usual))))
        outline: Json = {
            "kind": kind,
            "points": points_of(ring, draw(st.sampled_from((None, "mm")))),
        }
    else:
        outline = {"kind": kind, "length": draw(size), "width": draw(size)}
    if kind == "l-shape":
        corners = st.sampled_from(("front-left", "front-right", "back-right", "back-left"))
        notch = lengths(NOTCHES, refused=refused)
        outline["notch"] = {"corner": draw(corners), "length": draw(notch), "width": draw(notch)}
    if draw(st.integers(0, 3)) == 0:
        outline["corner_radius"] = draw(small)
    return outline


@st.composite
def usual_outlines(draw: DrawFn) -> Json:
    """An outline of a size that is often asked for, so that what is odd lies elsewhere."""
    length, width = draw(st.sampled_from(((1450, 560), ("0.9 m", 500), (2000, "24 in"))))
    outline: Json = {"kind": "rectangle", "length": length, "width": width}
    if draw(st.booleans()):
        return outline
    notch = {"corner": "back-right", "length": 300, "width": 200}
    return {**outline, "kind": "l-shape", "notch": notch}


@st.composite
def cutouts(draw: DrawFn, sides: list[str], *, refused: bool) -> Json:
    """An opening of any kind and size, anywhere."""
    kind = draw(st.sampled_from(("circle", "rectangle", "slot", "polygon")))
    size, place = lengths(OPENING, refused=refused), lengths(PLACES, refused=False)
    cutout: Json = {"kind": kind}
    if kind == "polygon":
        usual = [mm for mm in OPENING if mm <= 2000]
        ring = draw(rings(draw(st.sampled_from(usual)), draw(st.sampled_from(usual))))
        dx, dy = draw(st.sampled_from(PLACES[3:11])), draw(st.sampled_from(PLACES[3:11]))
        cutout["points"] = points_of([(x + dx, y + dy) for x, y in ring], None)
    else:
        cutout["centre"] = {"x": draw(place), "y": draw(place)}
        names = ("diameter",) if kind == "circle" else ("length", "width")
        cutout |= {name: draw(size) for name in names}
    if kind in ("rectangle", "polygon") and draw(st.integers(0, 3)) == 0:
        cutout["corner_radius"] = draw(lengths(SMALL[:9], refused=refused))
    if kind in ("rectangle", "slot") and draw(st.integers(0, 3)) == 0:
        cutout["turn_degrees"] = draw(st.sampled_from((0, 1e-9, 45, 90, -360, 89.999999, 360)))
    if draw(st.integers(0, 5)) == 0:
        cutout["open_to"] = draw(st.sampled_from(sides))
    if draw(st.integers(0, 5)) == 0:
        cutout["heat"] = True
    if draw(st.booleans()):
        cutout["rim"] = draw(st.sampled_from(("shown", "covered")))
    return cutout


@st.composite
def reliefs(draw: DrawFn, *, refused: bool) -> Json:
    """A drainer, a recess or a rebate of any size and depth, anywhere."""
    kind, place = (
        draw(st.sampled_from(("drainer", "recess", "rebate"))),
        lengths(PLACES, refused=False),
    )
    relief: Json = {
        "kind": kind,
        "outline": draw(outlines((3, 3.1, 60, 200, 500, 900, 900.001), refused=refused)),
        "depth": draw(lengths(SMALL[1:12], refused=refused)),
        "at": {"x": draw(place), "y": draw(place)},
    }
    if kind == "drainer" and draw(st.booleans()):
        relief["grooves"] = draw(st.sampled_from((0, 61) if refused else (1, 2, 59, 60)))
        relief["fall"] = draw(lengths(SMALL, refused=refused))
    return relief


@st.composite
def edges(draw: DrawFn, sides: list[str], *, refused: bool) -> Json:
    """Edges of some sides, with a size, a drip or a drop of any amount."""
    small, made = lengths(SMALL[1:], refused=refused), {}
    for side in draw(st.lists(st.sampled_from(sides), unique=True, max_size=3)):
        edge: Json = {"profile": draw(st.sampled_from(("square", "bevel", "round", "wall")))}
        if edge["profile"] in ("bevel", "round"):
            edge["size"] = draw(small)
        if draw(st.integers(0, 3)) == 0:
            edge["drip"] = True
        if draw(st.integers(0, 3)) == 0:
            edge["drop"] = {"depth": draw(small), "mitred": draw(st.booleans())}
        made[side] = edge
    return made


@st.composite
def rests(draw: DrawFn, sides: list[str], *, refused: bool) -> Json:
    """What carries a slab, of next to nothing or far too much, anywhere."""
    kind = draw(st.sampled_from(("units", "frame", "ends", "legs", "ledges", "pedestal", "full")))
    small = lengths(SMALL[1:], refused=refused)
    place = st.builds(
        lambda x, y: {"x": x, "y": y},
        lengths(PLACES, refused=False),
        lengths(PLACES, refused=False),
    )
    rest: Json = {"kind": kind}
    if kind == "units":
        uses = st.sampled_from(("base", "basin", "hob", "gap"))
        wide = st.sampled_from((600, 600, 800, 0.001, 1, 300.001, 20_000))
        unit = st.fixed_dictionaries({"width": wide}, optional={"for": uses})
        rest["units"] = draw(st.lists(unit, min_size=1, max_size=draw(st.sampled_from((1, 4, 20)))))
        rest["overhang"] = draw(st.dictionaries(st.sampled_from(sides), small, max_size=3))
    elif kind == "frame":
        rest |= {
            "width": draw(small),
            "sides": draw(st.lists(st.sampled_from(sides), min_size=1, max_size=4)),
        }
    elif kind == "ends":
        rest["depth"] = draw(small)
    elif kind == "legs":
        legs = draw(st.lists(place, min_size=1, max_size=6))
        rest |= {"pad": draw(small), "at": legs * draw(st.sampled_from((1, 1, 2, 3)))}
    elif kind == "ledges":
        line = st.fixed_dictionaries({"start": place, "end": place, "depth": small})
        rest["lines"] = draw(st.lists(line, min_size=1, max_size=3))
    elif kind == "pedestal":
        rest |= {"plate": draw(small), "centre": draw(place)}
    if draw(st.booleans()):
        rest["fixed"] = draw(st.booleans())
    return rest


# --- slabs, deliveries, orders --------------------------------------------------------------


@st.composite
def slabs(draw: DrawFn, *, refused: bool) -> Json:
    """One slab: usual in most, and out of the way in some of what it has."""
    usual, thin = draw(st.integers(0, 2)) > 0, draw(st.integers(0, 3)) == 0
    outline = draw(usual_outlines() if usual else outlines(PLAN, refused=refused))
    sides = sides_of(outline)
    thickness = draw(lengths(THICK, refused=refused) if thin else st.sampled_from(_USUAL_THICK))
    slab: Json = {"outline": outline, "thickness": thickness}
    parts = draw(st.sets(st.sampled_from(_PARTS), max_size=3))
    if "cutouts" in parts:
        made = draw(st.lists(cutouts(sides, refused=refused), min_size=1, max_size=3))
        slab["cutouts"] = (made * draw(st.sampled_from((1, 1, 1, 2, 20))))[:20]
    if "reliefs" in parts:
        slab["reliefs"] = draw(st.lists(reliefs(refused=refused), min_size=1, max_size=2))
    if "edges" in parts:
        slab["edges"] = draw(edges(sides, refused=refused))
    if "rests" in parts:
        slab["rests"] = draw(rests(sides, refused=refused))
    if "words" in parts:
        slab |= draw(st.fixed_dictionaries({}, optional=_WORDS))
    return slab


_USUAL_THICK: Final = (30, "40 mm", 50, "2 in")
_PARTS: Final = ("cutouts", "reliefs", "edges", "rests", "words")
_WORDS: Final[dict[str, st.SearchStrategy[object]]] = {
    "label": st.sampled_from(("", " ", "x" * 120, "Küche — links", "<svg>", "None")),
    "quantity": st.sampled_from((1, 2, 24)),
    "use": st.sampled_from(("worktop", "upstand", "shelf", "table", "hearth", "sill")),
    "size_from": st.sampled_from(("finished", "between-walls", "over-units", "template-to-follow")),
    "shade": st.sampled_from(({"name": SHADES[0]}, {"match": "#000000"}, {"match": "#ffffff"})),
    "finish": st.fixed_dictionaries(
        {"surface": st.sampled_from(tuple(SURFACES))},
        optional={"sealer": st.sampled_from(SEALERS)},
    ),
    "place": st.sampled_from(("indoors", "wet-room", "outdoors")),
}


@st.composite
def deliveries(draw: DrawFn, *, refused: bool) -> Json:
    """A delivery, its way in of next to nothing or wide open."""
    small = lengths((0.001, 1, 600, 762, 20_000), refused=refused)
    lift = dict.fromkeys(("width", "depth", "height", "door"), small)
    more = st.fixed_dictionaries(
        {},
        optional={
            "doorway": small,
            "turn": st.fixed_dictionaries({"from": small, "into": small}),
            "ceiling": small,
            "lift": st.fixed_dictionaries({**lift, "rated_kg": st.sampled_from((1, 450, 20_000))}),
            "steps": st.sampled_from((0, 1, 500)),
            "floor": st.sampled_from((-5, 0, 100)),
            "people": st.sampled_from((0, 1, 50)),
        },
    )
    kind = draw(st.sampled_from(("collect", "pallet", "own-van", "fitted")))
    return {"kind": kind, "postcode": draw(st.sampled_from(POSTCODES)), **draw(more)}


@st.composite
def degenerate_orders(draw: DrawFn) -> Json:
    """A whole order at the edges of the contract; one in eight with numbers that are refused."""
    refused = draw(st.integers(0, 7)) == 0
    count = draw(st.sampled_from((1, 1, 1, 1, 2, 3, 8)))
    made = draw(st.lists(slabs(refused=refused), min_size=1, max_size=count))
    order: Json = {"slabs": made}
    if draw(st.integers(0, 3)) == 0:
        ends = [
            {"slab": n, "side": draw(st.sampled_from(sides_of(made[n]["outline"])))}
            for n in draw(st.lists(st.integers(0, len(made) - 1), min_size=2, max_size=2))
        ]
        gap = draw(lengths((0, 0.001, 2, 4, 20_000), refused=refused))
        order["joins"] = [{"one": ends[0], "other": ends[1], "gap": gap}]
    if draw(st.booleans()):
        order["delivery"] = draw(deliveries(refused=refused))
    if draw(st.integers(0, 3)) == 0:
        days = draw(st.sampled_from((-500, -1, 0, 1, 20, 10_000)))
        order["needed_by"] = (TODAY + timedelta(days=days)).isoformat()
    for name in ("sample_tile", "templating", "heated_curing"):
        if draw(st.integers(0, 5)) == 0:
            order[name] = draw(st.booleans())
    return order
