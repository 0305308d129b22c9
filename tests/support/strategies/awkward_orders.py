"""A gallery of awkward orders, each understood and each at some edge of what the code expects."""

from typing import Final

from support.documents import Json


def _slab(outline: Json, *cutouts: Json, **more: object) -> Json:
    return {"outline": outline, "thickness": 40, "cutouts": list(cutouts), **more}


def _box(length: object, width: object, **more: object) -> Json:
    return {"kind": "rectangle", "length": length, "width": width, **more}


def _hole(diameter: object, x: object, y: object, **more: object) -> Json:
    return {"kind": "circle", "diameter": diameter, "centre": {"x": x, "y": y}, **more}


def _cut(kind: str, size: tuple[int, int], at: tuple[int, int], **more: object) -> Json:
    centre = {"x": at[0], "y": at[1]}
    return {"kind": kind, "length": size[0], "width": size[1], "centre": centre, **more}


def _ring(*points: tuple[float, float]) -> list[Json]:
    return [{"x": x, "y": y} for x, y in points]


def _polygon(*points: tuple[float, float], **more: object) -> Json:
    return {"kind": "polygon", "points": _ring(*points), **more}


def _relief(kind: str, size: tuple[int, int], depth: int, at: tuple[int, int]) -> Json:
    place = {"x": at[0], "y": at[1]}
    return {"kind": kind, "outline": _box(*size), "depth": depth, "at": place}


def _join(one: int, other: int) -> Json:
    return {
        "one": {"slab": one, "side": "right"},
        "other": {"slab": other, "side": "left"},
        "gap": 2,
    }


def _order(*slabs: Json, **more: object) -> Json:
    return {"slabs": list(slabs), **more}


_L: Final = {"kind": "l-shape", "length": 1800, "width": 1100}
_POST: Final = _cut("rectangle", (200, 200), (1400, 600), open_to="right")
_TRIANGLE: Final = _polygon((400, 200), (420, 200), (410, 217))

AWKWARD: Final[dict[str, Json]] = {
    "as large as the table": _order(_slab(_box(2700, 1200))),
    "as large as the table, the other way": _order(_slab(_box(1200, 2700))),
    "a tenth of a millimetre too large": _order(_slab(_box(2700.1, 1200))),
    "the narrowest that is cast": _order(_slab(_box(900, 60))),
    "in feet and inches": _order(
        _slab(_box("4' 9\"", "22 1/16 in"), _hole("14 in", "38 1/2 in", "11 in"))
    ),
    "in a unit each": _order(
        _slab(_box("1.45 m", "56 cm"), _hole('14 1/8"', 980, "270 mm"), thickness="1 1/2 in")
    ),
    "a stadium": _order(_slab(_box(1400, 600, corner_radius=300))),
    "a slot that is a circle": _order(_slab(_box(1400, 600), _cut("slot", (80, 80), (700, 300)))),
    "a slot that stands upright": _order(
        _slab(_box(1400, 600), _cut("slot", (40, 200), (700, 300)))
    ),
    "a triangle too small for any former": _order(_slab(_box(900, 500), _TRIANGLE)),
    "a hob turned by 45 degrees": _order(
        _slab(_box(1400, 900), _cut("rectangle", (560, 490), (700, 450), turn_degrees=45))
    ),
    "a strip exactly at its limit": _order(_slab(_box(1400, 600), _hole(480, 700, 300))),
    "a strip a hair under its limit": _order(_slab(_box(1400, 600), _hole(480.2, 700, 300))),
    "two openings that touch": _order(
        _slab(_box(1400, 600), _hole(200, 500, 300), _hole(200, 700, 300))
    ),
    "one opening twice": _order(
        _slab(_box(1400, 600), _hole(200, 500, 300), _hole(200, 500, 300))
    ),
    "an opening the size of the slab": _order(
        _slab(_box(900, 500), _cut("rectangle", (900, 500), (450, 250), corner_radius=0))
    ),
    "an opening that takes the whole slab": _order(
        _slab(_box(900, 500), _cut("rectangle", (950, 1200), (450, 250), open_to="front"))
    ),
    "an opening far away": _order(_slab(_box(900, 500), _hole(100, 5000, -5000))),
    "an opening far away, open to the front": _order(
        _slab(_box(900, 500), _hole(100, 400, 2000, open_to="front"))
    ),
    "an opening across the slab": _order(
        _slab(_box(1400, 600), _cut("rectangle", (60, 900), (700, 300)))
    ),
    "an apron sink": _order(
        _slab(_box(1800, 650), _cut("rectangle", (600, 450), (900, 200), open_to="front"))
    ),
    "a notch round a post, at the corner": _order(_slab(_box(1500, 700), _POST)),
    "a shaped opening, open to the back": _order(
        _slab(
            _box(1500, 700),
            _polygon(
                (500, 300), (900, 300), (900, 500), (800, 500), (800, 400), (500, 400),
                open_to="back",
            ),
        )
    ),
    "a round top with a slot to its rim": _order(
        _slab({"kind": "round", "diameter": 900}, _hole(80, 450, 120, open_to="rim"))
    ),
    "a round top with a hole in the middle, open": _order(
        _slab({"kind": "round", "diameter": 900}, _hole(80, 450, 450, open_to="rim"))
    ),
    "an L with legs as slim as a hand": _order(
        _slab(_L | {"notch": {"corner": "back-right", "length": 1700, "width": 1000}})
    ),
    "an L with a notch smaller than its former": _order(
        _slab(_L | {"notch": {"corner": "front-left", "length": 6, "width": 4}})
    ),
    "an L open to its notch": _order(
        _slab(
            _L | {"notch": {"corner": "back-right", "length": 900, "width": 500}},
            _hole(90, 1400, 520, open_to="notch-x"),
        )
    ),
    "a U given clockwise": _order(
        _slab(
            _polygon(
                (0, 900), (500, 900), (500, 400), (1300, 400), (1300, 900), (1800, 900), (1800, 0),
                (0, 0),
            )
        )
    ),
    "a U open across its gap": _order(
        _slab(
            _polygon(
                (0, 0), (1800, 0), (1800, 900), (1300, 900), (1300, 400), (500, 400), (500, 900),
                (0, 900),
            ),
            _hole(90, 250, 650, open_to="6"),
        )
    ),
    "a spike that pokes into a notch": _order(
        _slab(
            _polygon((0, 0), (900, 0), (900, 600), (455, 600), (452, 310), (450, 300), (448, 310),
                     (445, 600), (0, 600))
        )
    ),
    "polygon sides and openings of the same numbers": _order(
        _slab(
            _polygon((0, 0), (1400, 0), (1400, 600), (0, 600)),
            _hole(200, 150, 150), _hole(200, 380, 150), _hole(200, 610, 150),
        )
    ),
    "between walls": _order(
        _slab(_box(1200, 600, corner_radius=290), size_from="between-walls")
    ),
    "between three walls": _order(
        _slab(
            _box(1200, 600),
            size_from="between-walls",
            edges={side: {"profile": "wall"} for side in ("left", "right", "back")},
        )
    ),
    "over units": _order(
        _slab(
            _box(1200, 600),
            size_from="over-units",
            rests={"kind": "units", "units": [{"width": 600}] * 2, "overhang": {"front": "20 mm"}},
        )
    ),
    "reliefs over each other, and over the edge": _order(
        _slab(
            _box(1200, 600),
            reliefs=[
                _relief("drainer", (500, 400), 6, (50, 50)),
                _relief("recess", (500, 400), 9, (300, 50)),
                _relief("rebate", (90, 900), 99, (1150, 0)),
            ],
        )
    ),
    "two waterfall ends": _order(
        _slab(
            _box(1800, 600),
            edges={s: {"drop": {"depth": 860, "mitred": True}} for s in ("left", "right")},
        )
    ),
    "a bevel larger than the slab is thick": _order(
        _slab(_box(900, 500), edges={"front": {"profile": "bevel", "size": 900}})
    ),
    "polished and too thin, its edges not told": _order(
        _slab(_box(900, 500), thickness=12, finish={"surface": "polished"})
    ),
    "twenty metres square, nine millimetres thick": _order(
        _slab(_box(20000, 20000), thickness="0.354 in", finish={"surface": "honed"})
    ),
    "a disc that its hob swallows": _order(
        _slab(
            {"kind": "round", "diameter": "11 13/16 in"}, _cut("rectangle", (560, 400), (180, 148))
        )
    ),
    "a corner of five degrees": _order(_slab(_polygon((0, 0), (2000, 0), (2000, 180)))),
    "a thick slab that is little longer than it is wide": _order(
        _slab(_box(10, 9000), thickness=1000)
    ),
    "twenty holes": _order(
        _slab(_box(2400, 900), *(_hole(35, 120 + 230 * (i % 10), 300 + 300 * (i // 10))
                                 for i in range(20)))
    ),
    "eight slabs, two dozen of each": _order(
        *[_slab(_box(2000, 600), quantity=24)] * 8,
        joins=[_join(0, 7)],
    ),
    "words that need care": _order(
        _slab(_box(900, 500), _hole(120, 450, 250, label="<script>“&”"), label="Ω — Küche, Ç…"),
        delivery={"kind": "fitted", "postcode": "hr9-7xx"},
    ),
}  # fmt: skip
