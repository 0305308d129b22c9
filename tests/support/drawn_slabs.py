"""An awkward gallery of slabs to draw."""

import math
from dataclasses import dataclass
from typing import Literal

from ledgerstone.drawing import Pin, TitleBlock
from ledgerstone.order import (
    CORNERS,
    Corner,
    Cutout,
    Drop,
    Edge,
    Finish,
    LShape,
    Notch,
    Outline,
    Point,
    Polygon,
    Rectangle,
    Relief,
    Rests,
    Round,
    Shade,
    Slab,
    Unit,
)
from ledgerstone.quantities import Length

TITLE = TitleBlock(
    reference="TC-4821-A",
    date="25 November 2026",
    shade="graphite",
    colour="#4d4f50",
    workshop="Tarnside Casting",
)
L = Length.parse


def at(x: object, y: object) -> Point:
    """Return a place in plan."""
    return Point(L(x), L(y))


def made(outline: Outline, *cutouts: Cutout, thickness: object = 40, **more: object) -> Slab:
    """Make a slab in graphite, honed."""
    shade, finish = Shade(name="graphite"), Finish("honed", "matt")
    return Slab(outline, L(thickness), shade, finish, cutouts=cutouts, **more)  # type: ignore[arg-type]  # whatever a slab takes


def disc(diameter: object, x: object, y: object, label: str = "", **more: object) -> Cutout:
    """Make a round opening."""
    return Cutout("circle", label, at(x, y), diameter=L(diameter), **more)  # type: ignore[arg-type]  # as above


def oblong(
    kind: Literal["rectangle", "slot"],
    size: tuple[object, object],
    place: tuple[object, object],
    label: str = "",
    **more: object,
) -> Cutout:
    """Make a rectangular opening or a slot."""
    length, width = L(size[0]), L(size[1])
    return Cutout(kind, label, at(*place), length=length, width=width, **more)  # type: ignore[arg-type]  # as above


@dataclass(frozen=True)
class Drawn:
    """One slab of the gallery, with its pins."""

    slab: Slab
    pins: tuple[Pin, ...] = ()


def bench() -> Slab:
    """Make the slab of the design's example order."""
    units = (Unit(L("650 mm")), Unit(L("800 mm"), "basin"))
    return made(
        Rectangle(L("1450 mm"), L("560 mm")),
        disc("360 mm", "980 mm", "270 mm", "basin"),
        disc("35 mm", "980 mm", "505 mm", "tap", rim="covered"),
        label="Seed-tray bench",
        edges={"front": Edge("bevel", L("5 mm")), "back": Edge("wall")},
        rests=Rests("units", units=units, overhang={"front": L("20 mm")}),
    )


def elbow(corner: Corner) -> Slab:
    """Make an L with a hob in the arm that every hand of it has."""
    y = 400 if "back" in corner else 1100
    x = 400 if "right" in corner else 1700
    return made(
        LShape(L(2100), L(1500), Notch(corner, L(1400), L(850)), corner_radii={corner: L(30)}),
        oblong("rectangle", (270, 490), (x, y), "hob", rim="covered", heat=True),
        label=f"L {corner}",
        edges={"left": Edge("wall"), "notch-x": Edge("bevel", L(5))},
        rests=Rests("legs", at=(at(x, y - 300), at(x, y + 300)), pad=L(60)),
    )


def _long() -> Slab:
    drainer = Rectangle(L("380 mm"), L("420 mm"))
    units = [("600 mm", "base"), ("600 mm", "hob"), ("600 mm", "gap"), ("900 mm", "basin")]
    return made(
        Rectangle(L("2.7 m"), L("600 mm")),
        oblong("rectangle", ("560 mm", "490 mm"), ("0.7 m", "300 mm"), "hob", heat=True),
        oblong("rectangle", ("450 mm", "400 mm"), ("2 m", "280 mm"), "sink", open_to="front"),
        reliefs=(Relief("drainer", drainer, L("8 mm"), at("1.3 m", "80 mm"), grooves=6),),
        edges={
            "front": Edge("round", L("6 mm"), drip=True),
            "left": Edge("square", drop=Drop(L("860 mm"), mitred=True)),
            "back": Edge("wall"),
            "right": Edge("wall"),
        },
        rests=Rests("units", units=tuple(Unit(L(w), use) for w, use in units)),  # type: ignore[arg-type]  # the uses are the order's
    )


def _cables() -> Drawn:
    places = [(120 + 90 * i, 100 + (137 * i) % 380) for i in range(20)]
    holes = [disc(20 + 5 * (i % 6), x, y, f"cable {i}") for i, (x, y) in enumerate(places)]
    pins = tuple(
        Pin(i + 1, "caution" if i % 2 else "stops", ((x + 12, y), (x + 42, y)))
        for i, (x, y) in enumerate(places[:6])
    )
    return Drawn(made(Rectangle(L(2000), L(600)), *holes), pins)


def _taps() -> Drawn:
    slab = made(
        Rectangle(L(1200), L(600)),
        oblong("slot", (520, 340), (600, 280), "basin"),
        disc(35, 560, 490, "hot tap"),
        disc(35, 640, 490, "cold tap"),
    )
    strips = (((560, 450), (560, 472.5)), ((577.5, 490), (622.5, 490)), ((600, 507.5), (600, 600)))
    return Drawn(slab, tuple(Pin(i + 1, "stops", strip) for i, strip in enumerate(strips)))


def _nine_sided() -> Slab:
    turns = [2 * math.pi * i / 9 + 0.3 for i in range(9)]
    points = [
        at(round(600 + 550 * math.cos(a), 1), round(560 + 550 * math.sin(a), 1)) for a in turns
    ]
    return made(Polygon(tuple(points), L(15)), edges={"1": Edge("wall")}, rests=Rests("full"))


def cog(teeth: int) -> Slab:
    """Make an outline of very many points, every side rounded."""
    reach = [1200 if i % 2 else 1000 for i in range(2 * teeth)]
    points = [
        at(round(1300 + r * math.cos(a), 1), round(1300 + r * math.sin(a), 1))
        for r, a in ((r, math.pi * i / teeth) for i, r in enumerate(reach))
    ]
    edges = {str(i + 1): Edge("round", L(2)) for i in range(2 * teeth)}
    return made(Polygon(tuple(points), L(3)), edges=edges)


def sieve() -> Slab:
    """Make the most that an order may hold in openings: twenty slots, all askew."""
    slots = [
        oblong(
            "slot", (400, 180), (200 + 250 * (i % 10), 300 + 500 * (i // 10)), turn_degrees=70 + i
        )
        for i in range(20)
    ]
    edges = {side: Edge("round", L(20)) for side in ("front", "right", "left", "back")}
    return made(Rectangle(L(2700), L(1200), L(100)), *slots, thickness=60, edges=edges)


GALLERY: dict[str, Drawn] = {
    "bench": Drawn(
        bench(),
        (
            Pin(1, "stops", ((980.0, 450.0), (980.0, 487.5))),
            Pin(2, "caution", ((980.0, 90.0), (980.0, 0.0))),
            Pin(3, "note", ((300.0, 300.0),)),
            Pin(4, "caution", ((100, 100), (200, 100), (200, 200), (100, 100))),
        ),
    ),
    "tiny": Drawn(made(Rectangle(L(300), L(90)), thickness=25)),
    "long": Drawn(_long()),
    "cables": _cables(),
    "taps": _taps(),
    **{f"L {corner}": Drawn(elbow(corner)) for corner in CORNERS},
    "round": Drawn(
        made(
            Round(L("900 mm")),
            disc(45, 450, 450, "parasol"),
            edges={"rim": Edge("round", L(10))},
            rests=Rests("frame", width=L(60)),
        )
    ),
    "nine sides": Drawn(_nine_sided()),
    "inches": Drawn(
        made(
            Rectangle(L("57 in"), L("22 1/16 in")),
            disc("15 in", "28 in", "11 3/8 in", "basin"),
            thickness="1 1/2 in",
        )
    ),
    "feet": Drawn(
        made(
            Rectangle(L("4' 9\""), L("22 1/16 in")),
            oblong(
                "rectangle", ("21 1/4 in", "15 in"), ("28 in", "11 in"), "x" * 120, turn_degrees=8
            ),
            thickness="1 1/2 in",
            label="A very long label " * 6,
            rests=Rests("ends", depth=L("3 in")),
        )
    ),
    "tiny, pinned": Drawn(
        made(Rectangle(L(300), L(90)), disc(30, 150, 45, "tap"), thickness=25),
        tuple(Pin(i + 1, "caution", ((150.0, 70.0),)) for i in range(6)),
    ),
    "huge, pinned": Drawn(
        made(
            Rectangle(L("19.9 m"), L("19.9 m")),
            disc(35, 19_800, 19_800, "tap"),
            disc(35, 100, 100, "far tap"),
            label="Bigger than any table",
        ),
        (
            *(Pin(i + 1, "stops", ((19_800.0, 19_780.0),)) for i in range(4)),
            Pin(5, "note", ((100.0, 117.5), (100.0, 19_900.0))),
        ),
    ),
    "a sliver, pinned": Drawn(
        made(Rectangle(L("19 m"), L(60)), disc(20, 9500, 30)),
        (
            *(Pin(i + 1, "caution", ((500.0 * i, 30.0),)) for i in range(12)),
            Pin(13, "stops", ((9500.0, 0.0), (9500.0, 20.0))),
        ),
    ),
    "cog": Drawn(cog(100)),
    "sieve": Drawn(sieve()),
}
