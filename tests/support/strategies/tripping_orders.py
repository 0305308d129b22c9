"""For every check an order that trips it, a hair past its limit where it has one."""

from typing import Final

from support.documents import Json
from support.slabs import box, cut, hole, slab_json

FITTED: Final = {"kind": "fitted", "postcode": "HR9 7XX"}
PALLET: Final = {"kind": "pallet", "postcode": "HR9 7XX"}
BED: Final = {"kind": "full"}
LIFT: Final = {"width": 1100, "depth": 1400, "height": 2200, "door": 800, "rated_kg": 630}


def plain(length: object = 1400, width: object = 600, *cutouts: Json, **more: object) -> Json:
    """Write a slab 40 mm thick that is bedded all over."""
    return slab_json(box(length, width), *cutouts, **({"rests": BED} | more))


def untold(slab: Json) -> Json:
    """Leave a slab's thickness to the workshop."""
    return {key: value for key, value in slab.items() if key != "thickness"}


def of(*slabs: Json, **more: object) -> Json:
    """Write an order."""
    return {"slabs": list(slabs), **more}


def units(*widths: int | tuple[int, str], **overhang: int) -> Json:
    """Write base units; a pair names what one is for."""
    each = [{"width": w} if isinstance(w, int) else {"width": w[0], "for": w[1]} for w in widths]
    return {"kind": "units", "units": each, "overhang": overhang}


def legs(*places: tuple[int, int], pad: int = 60) -> Json:
    """Write legs."""
    return {"kind": "legs", "pad": pad, "at": [{"x": x, "y": y} for x, y in places]}


def relief(depth: object, x: object, y: object, kind: str = "drainer") -> Json:
    """Write a relief of 400 by 300."""
    return {"kind": kind, "outline": box(400, 300), "depth": depth, "at": {"x": x, "y": y}}


def edged(side: str, profile: str, **more: object) -> Json:
    """Write one edge."""
    return {side: {"profile": profile, **more}}


def joined(*slabs: Json, side: str = "left") -> Json:
    """Join the first slab's right side to another slab's."""
    other = {"slab": len(slabs) - 1, "side": side}
    return of(*slabs, joins=[{"one": {"slab": 0, "side": "right"}, "other": other, "gap": 2}])


HOB: Final = cut("rectangle", (560, 490), (1200, 310), label="hob", rim="covered")
FIRE: Final = {**HOB, "heat": True}
BASIN: Final = hole(360, 700, 270, label="basin")

# By check: the workshop that it trips at, and the order.
TRIPS: Final[dict[str, tuple[str, Json]]] = {
    "too-big-for-table": ("usual", of(plain("2700.4 mm", 600))),
    "too-thin": ("usual", of(plain(thickness="24.8 mm"))),
    "too-thick": ("usual", of(plain(thickness="2 3/8 in"))),
    "odd-thickness": ("usual", of(plain(thickness=35))),
    "thickness-taken": ("usual", of(untold(plain()))),
    "left-to-us": ("usual", of(slab_json(box(1400, 600), rests=BED))),
    "sliver": ("usual", of(plain(900, "59.7 mm"))),
    "cutout-off-slab": ("usual", of(plain(1400, 600, hole(200, 1330, 300)))),
    "cutouts-overlap": (
        "usual",
        of(plain(1400, 600, hole(200, 500, 300), hole(200, 690, 300, label="tap"))),
    ),
    "two-pieces": ("usual", of(plain(1400, 600, cut("rectangle", (60, 900), (700, 300))))),
    "strip-too-narrow": ("usual", of(plain(1400, 600, hole(480.2, 700, 300)))),
    "inside-corner-too-tight": (
        "usual",
        of(plain(1400, 600, cut("rectangle", (300, 200), (700, 300), corner_radius=9.8))),
    ),
    "neck-too-narrow": (
        "usual",
        of(
            slab_json(
                {"kind": "l-shape", "length": 900, "width": 600,
                 "notch": {"corner": "back-right", "length": 600, "width": 562}},
                rests=BED,
            )
        ),
    ),
    "relief-off-slab": ("usual", of(plain(reliefs=[relief(6, 1010, 100)]))),
    "relief-too-deep": ("usual", of(plain(reliefs=[relief("27.8 mm", 100, 100)]))),
    "too-thin-for-drip": (
        "usual", of(plain(thickness="25.8 mm", edges=edged("front", "square", drip=True)))
    ),
    "edge-not-made": ("usual", of(plain(edges=edged("front", "bevel", size="15.2 mm")))),
    "edge-too-deep": (
        "usual", of(plain(thickness=25, edges=edged("front", "round", size="20.4 mm")))
    ),
    "edge-too-thin-for-finish": (
        "usual",
        of(plain(thickness=25, edges=edged("front", "bevel", size="10.2 mm"),
                 finish={"surface": "polished"})),
    ),
    "cutout-over-unit-side": (
        "usual",
        of(plain(1400, 620, {**BASIN, "centre": {"x": 950, "y": 310}},
                 rests=units(800, (600, "basin")))),
    ),
    "pour-too-slow": ("small mixer", of(plain(2400))),
    "sealer-not-for-place": ("usual", of(plain(place="outdoors", finish={"sealer": "satin"}))),
    "shade-not-matched": ("usual", of(plain(shade={"match": "#445566"}))),
    "shade-out-of-reach": ("matching", of(plain(shade={"match": "#ff00ff"}))),
    "dose-over-limit": ("pale", of(plain(shade={"name": "graphite"}))),
    "aggregate-too-large": ("usual", of(plain(1400, 600, hole(35, 700, "556.5 mm")))),
    "cover-too-thin": ("usual", of(plain(thickness=25))),
    "steel-rusts": ("plain steel", of(plain(place="outdoors"))),
    "strength-unknown": (
        "bold", of(plain(900, 500, cut("rectangle", (300, 249.9), (450, 125), open_to="front"),
                         cut("rectangle", (300, 249.9), (450, 375), open_to="back")))
    ),
    "rests-not-told": ("usual", of(slab_json(box(1400, 600)))),
    "rest-under-nothing": (
        "usual",
        of(plain(900, 500, hole(120, 450, 250),
                 rests=legs((60, 60), (840, 60), (60, 440), (840, 440), (450, 250)))),
    ),
    "tips-over": ("usual", of(plain(rests=legs((100, 100), (500, 100), (100, 500), (500, 500))))),
    "cracks-when-moved": (
        "usual",
        of(plain(2600, 600, cut("rectangle", (1800, 470), (1300, 300), rim="covered"),
                 thickness=30)),
    ),
    "too-heavy-to-handle": ("two people", of(plain(1600, 900))),
    "cracks-in-place": (
        "usual", of(plain(2000, 600, thickness=25, rests={"kind": "ends", "depth": 50}))
    ),
    "flat-rail-in-the-way": (
        "usual",
        of(plain(1200, 620, cut("rectangle", (400, 400), (300, 300)),
                 rests=units(600, 600, front=20))),
    ),
    "rails-needed": ("usual", of(plain(900, 620, rests=units(900, front=20)))),
    "free-corner": ("usual", of(plain(1800, 900, rests=units(600, 600, 600, front=300)))),
    "level-the-rests": (
        "usual",
        of(plain(1600, 600, rests=legs(*((x, y) for y in (60, 540) for x in (60, 800, 1540))))),
    ),
    "tips-when-sat-on": (
        "usual",
        of(slab_json({"kind": "round", "diameter": 1000}, use="table",
                     rests=legs((500, 500), pad=400))),
    ),
    "carry-on-edge": ("usual", of(plain(2400, 620, HOB))),
    "young-concrete": ("usual", of(plain())),
    "sags": ("usual", of(plain(2600, 600, rests={"kind": "ends", "depth": 50}))),
    "postcode-needed": ("usual", of(plain(), delivery={"kind": "pallet"})),
    "postcode-unknown": ("usual", of(plain(), delivery={"kind": "pallet", "postcode": "HR9"})),
    "area-not-served": ("usual", of(plain(), delivery={"kind": "pallet", "postcode": "BT1 5GS"})),
    "way-not-served": ("usual", of(plain(), delivery={"kind": "fitted", "postcode": "EH1 1YZ"})),
    "no-day-free": ("closed", of(plain())),
    "needed-too-soon": ("usual", of(plain(), delivery=PALLET, needed_by="2026-12-04")),
    "in-time": ("usual", of(plain(), delivery=PALLET, needed_by="2027-12-24")),
    "young-in-place": ("usual", of(plain(1500, 620, rests=units(600, 900, front=20)))),
    "too-long-for-pallet": ("short pallet", of(plain("1200.4 mm", 600), delivery=PALLET)),
    "too-heavy-for-pallet": ("short pallet", of(plain(1000, 600, quantity=2), delivery=PALLET)),
    "too-much-for-van": ("short pallet", of(plain("1500.4 mm", 600), delivery=FITTED)),
    "beyond-tail-lift": ("short pallet", of(plain(1200, 600), delivery=PALLET)),
    "set-down-at-kerb": ("usual", of(plain(), delivery=PALLET)),
    "vehicle-to-collect": ("usual", of(plain("1400.4 mm", 600))),
    "doorway-too-narrow": (
        "usual",
        of(plain(edges=edged("left", "square", drop={"depth": 860})),
           delivery={**FITTED, "doorway": "619.6 mm"}),
    ),
    "turn-too-tight": (
        "usual", of(plain("2426 mm"), delivery={**FITTED, "turn": {"from": 900, "into": 900}})
    ),
    "lift-too-small": ("usual", of(plain(2400, 650), delivery={**FITTED, "lift": LIFT})),
    "lift-overloaded": (
        "usual", of(plain(1400, 610), delivery={**FITTED, "lift": {**LIFT, "rated_kg": 231}})
    ),
    "too-heavy-for-steps": ("usual", of(plain(1600, 1123), delivery={**FITTED, "steps": 12})),
    "beyond-hands": ("usual", of(plain(1600, 1000))),
    "hands-needed": ("usual", of(plain(), delivery={**PALLET, "people": 1})),
    "way-in-not-told": ("usual", of(plain(), delivery=FITTED)),
    "load-on-units": ("usual", of(plain(1200, 600, rests=units(600, 600)))),
    "join-to-itself": ("usual", joined(plain())),
    "join-suggested": ("usual", joined(plain(), plain())),
    "join-of-unlike-sides": ("usual", joined(plain(1400, 600), plain(1400, 604))),
    "join-of-unlike-thickness": ("usual", joined(plain(thickness=40), plain(thickness=50))),
    "join-of-unlike-looks": (
        "usual", joined(plain(shade={"name": "graphite"}), plain(shade={"name": "chalk"}))
    ),
    "join-through-relief": ("usual", joined(plain(reliefs=[relief(6, 1000, 100)]), plain())),
    "drop-not-checked": ("usual", of(plain(edges=edged("left", "square", drop={"depth": 300})))),
    "hot-appliance": ("usual", of(plain(2400, 620, FIRE))),
    "sealer-near-heat": ("usual", of(plain(2400, 620, FIRE, finish={"sealer": "satin"}))),
    "hearth": ("usual", of(plain(1200, 500, use="hearth"))),
    "electrics-near-water": (
        "usual", of(plain(1400, 600, BASIN, hole(40, 1200, 300, label="socket")))
    ),
    "mix-for-place": ("usual", of(plain(place="outdoors"))),
    "drip-advised": ("usual", of(plain(place="outdoors"))),
    "fall-advised": ("usual", of(plain(place="outdoors"))),
    "sun-on-fixed": (
        "usual",
        of(plain(place="outdoors", shade={"name": "graphite"}, rests={**BED, "fixed": True})),
    ),
    "dark-outdoors": ("usual", of(plain(place="outdoors", shade={"name": "graphite"}))),
    "acids-and-oil": ("usual", of(plain())),
    "food-surface": ("usual", of(plain(finish={"sealer": "hard wax oil"}))),
}  # fmt: skip
