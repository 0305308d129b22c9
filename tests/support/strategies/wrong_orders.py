"""Orders as people get them wrong: real furniture on real slabs, put down by rough measure.

``wrong_order(seed, number)`` is a plain generator, the same for the same two numbers, and needs
nothing but the standard library's random numbers; ``wrong_orders()`` is a strategy over it. About
half of the orders are ordinary kitchens of 2.75 to 4.3 m with a hob and a sink. Every one is
understood; a law says so.
"""

from datetime import timedelta
from random import Random
from typing import Final

from hypothesis import strategies as st

from ledgerstone.surfaces import SURFACES
from support.documents import Json
from support.strategies import furniture, wrong_cutouts
from support.strategies.orders import POSTCODES, SEALERS, SHADES, TODAY
from support.strategies.plans import BOX_SIDES, sides_of
from support.strategies.wrong_measures import Speaker, Spot, a_speaker, misplace, roughly

SizePair = tuple[float, float]
_ROUGH_MM: Final = 40.0
_CAREFUL: Final = 0.35  # so many measure roughly, and make no other mistake
_OF_UNITS: Final = ("units", "units", "frame", "ledges", "full", "")


def wrong_order(seed: int, number: int) -> Json:
    """Make one order, the same for the same two numbers."""
    return order_of(Random(f"{seed}/{number}"))  # noqa: S311  an order, not a secret


def wrong_orders() -> st.SearchStrategy[Json]:
    """Draw the same orders as a strategy, by their two numbers."""
    return st.builds(wrong_order, st.integers(0, 10**6), st.integers(0, 10**6))


def order_of(rng: Random) -> Json:
    """Make one order from random numbers."""
    say = a_speaker(rng)
    scene = rng.choices(tuple(SCENES), [weight for _, weight in SCENES.values()])[0]
    slabs = [SCENES[scene][0](rng, say)]
    if rng.random() < 0.12:
        other = rng.choice(tuple(SCENES))
        slabs.append(SCENES[other][0](rng, say))
    order: Json = {"slabs": slabs}
    if len(slabs) > 1 and rng.random() < 0.5:
        ends = ({"slab": 0, "side": "right"}, {"slab": 1, "side": "left"})
        if all(end["side"] in sides_of(slabs[k]["outline"]) for k, end in enumerate(ends)):
            order["joins"] = [{"one": ends[0], "other": ends[1], "gap": say.say(2)}]
    if rng.random() < 0.6:
        order["delivery"] = _delivery(rng, say)
    if rng.random() < 0.15:
        order["needed_by"] = (TODAY + timedelta(days=rng.randint(-20, 200))).isoformat()
    return order


# --- scenes ---------------------------------------------------------------------------------


def _kitchen(rng: Random, say: Speaker) -> Json:
    """A run of 2.75 to 4.3 m with a hob and a sink."""
    size = roughly(rng, rng.uniform(2750, 4300), 0), rng.choice((600, 600, 610, 620, 635, 650))
    items = [rng.choice(furniture.HOBS), rng.choice(furniture.SINKS)]
    rng.shuffle(items)
    items += rng.sample((*furniture.HOLES, *furniture.POSTS), rng.choice((0, 0, 0, 1)))
    rests = rng.choice(("units", "units", "units", "ledges", "full", ""))
    return _slab(rng, say, _box(say, size), size, items, rests)


def _counter(rng: Random, say: Speaker) -> Json:
    """A slab of 300 to 2750 mm with up to three things in it."""
    size = (
        roughly(rng, rng.uniform(300, 2750), 0) or 300.0,
        rng.choice((300, 350, 400, 450, 500, 560, 600, 600, 620, 650, 700, 900)),
    )
    most = 1 if size[0] < 1200 else 3
    every = furniture.fitting(
        rng,
        (*furniture.HOBS, *furniture.SINKS, *furniture.BOWLS, *furniture.HOLES, *furniture.POSTS),
        size[1],
    )
    items = rng.choices(every, k=rng.randint(1, most))
    return _slab(rng, say, _box(say, size), size, items, rng.choice(_OF_UNITS))


def _vanity(rng: Random, say: Speaker) -> Json:
    """A washstand with one bowl or two."""
    size = roughly(rng, rng.uniform(600, 1600), 0), rng.choice((400, 450, 460, 480, 500, 550))
    bowl = rng.choice(furniture.fitting(rng, furniture.BOWLS, size[1]))
    items = [bowl] * (2 if size[0] > 1100 and rng.random() < 0.6 else 1)
    slab = _slab(rng, say, _box(say, size), size, items, rng.choice(("frame", "units", "ends", "")))
    return slab | {"place": "wet-room"} if rng.random() < 0.3 else slab


def _corner(rng: Random, say: Speaker) -> Json:
    """An L with a hob or a sink on one arm, or both."""
    size = roughly(rng, rng.uniform(1500, 3200), 0), roughly(rng, rng.uniform(1200, 2600), 0)
    arm = rng.choice((550, 600, 620, 650))
    corner = rng.choice(("back-right", "back-left", "front-right", "front-left"))
    notch = {
        "corner": corner,
        "length": say.say(size[0] - arm),
        "width": say.say(size[1] - arm),
    }
    outline = _box(say, size) | {"kind": "l-shape", "notch": notch}
    items = rng.sample(
        furniture.fitting(rng, (*furniture.HOBS, *furniture.SINKS, *furniture.HOLES), arm),
        rng.choice((1, 1, 2)),
    )
    lies = (0.0, arm) if corner.startswith("back") else (size[1] - arm, size[1])
    return _slab(rng, say, outline, size, items, rng.choice(("full", "frame", "")), lies)


def _table(rng: Random, say: Speaker) -> Json:
    """A table on legs, round or not, with a post, a cable or a planter through it."""
    across = float(rng.choice((*range(700, 1250, 50), 1300, 1500)))
    round_one = rng.random() < 0.6
    size = (across, across) if round_one else (across * rng.uniform(1.0, 1.8), across / 1.5)
    outline = {"kind": "round", "diameter": say.say(across)} if round_one else _box(say, size)
    items = rng.choices((*furniture.HOLES, *furniture.POSTS), k=rng.choice((0, 1, 1)))
    return _slab(rng, say, outline, size, items, "legs") | {"use": "table"}


SCENES: Final = {
    "kitchen": (_kitchen, 45),
    "counter": (_counter, 22),
    "vanity": (_vanity, 12),
    "corner": (_corner, 12),
    "table": (_table, 9),
}


# --- slabs ----------------------------------------------------------------------------------


def _box(say: Speaker, size: SizePair) -> Json:
    return {"kind": "rectangle", "length": say.say(size[0]), "width": say.say(size[1])}


def _slab(  # noqa: PLR0917  one call from each scene
    rng: Random,
    say: Speaker,
    outline: Json,
    size: SizePair,
    items: list[furniture.Item],
    rests: str,
    lies: SizePair | None = None,
) -> Json:
    """One slab: things spread along it where they were meant to be, then got wrong."""
    front, back = lies or (0.0, size[1])
    slab: Json = {"outline": outline, "thickness": say.say(rng.choice((25, 30, 38, 40, 40, 50)))}
    meant = [(item, size[0] * (k + 0.5) / len(items)) for k, item in enumerate(items)]
    cutouts: list[Json] = []
    last: Spot | None = None
    careful = rng.random() < _CAREFUL
    for item, x in meant:
        spot = Spot(
            roughly(rng, x, _ROUGH_MM), roughly(rng, (front + back) / 2, 15.0), *item.size_mm
        )
        if not careful:
            misplace(rng, spot, size, last)
        cutouts.append(wrong_cutouts.cutout(rng, say, item, spot, sides_of(outline)))
        cutouts += wrong_cutouts.taps(rng, say, item, spot)
        last = spot
    if cutouts:
        slab["cutouts"] = cutouts
    if rng.random() < 0.3:
        slab["label"] = rng.choice(("Kitchen run", "Küche — links", "Island", "by the window"))
    if rests:
        slab["rests"] = RESTS[rests](rng, say, size, sides_of(outline), meant)
    _sized(rng, slab)
    return _dressed(rng, say, slab, size)


def _sized(rng: Random, slab: Json) -> None:
    """Where the size came from, for what can be worked out from walls or units."""
    if slab["outline"]["kind"] not in ("rectangle", "l-shape") or rng.random() < 0.75:
        return
    slab["size_from"] = "between-walls"
    if slab.get("rests", {}).get("kind") == "units" and rng.random() < 0.5:
        slab["size_from"] = "over-units"


def _dressed(rng: Random, say: Speaker, slab: Json, size: SizePair) -> Json:
    """Edges, drops, reliefs, shade and finish, each on some slabs."""
    sides = sides_of(slab["outline"])
    edges: Json = {}
    if rng.random() < 0.4:
        edges[sides[0]] = {"profile": rng.choice(("round", "bevel")), "size": say.say(6)}
    if "back" in sides and rng.random() < 0.3:
        edges["back"] = {"profile": "wall"}
    if "right" in sides and rng.random() < 0.08:
        edges["right"] = {"drop": {"depth": say.say(rng.randint(60, 900)), "mitred": True}}
    if edges:
        slab["edges"] = edges
    if rng.random() < 0.1:
        own = {"kind": "rectangle", "length": say.say(400), "width": say.say(350)}
        at = say.place(roughly(rng, rng.uniform(0, size[0]), 30), roughly(rng, size[1] / 5, 40))
        slab["reliefs"] = [{"kind": "drainer", "outline": own, "depth": say.say(6), "at": at}]
    if rng.random() < 0.4:
        slab["shade"] = {"name": rng.choice(SHADES)}
    if rng.random() < 0.3:
        surface = rng.choice(tuple(SURFACES))
        slab["finish"] = {"surface": surface, "sealer": rng.choice(SEALERS)}
    return slab


# --- rests and ways in ----------------------------------------------------------------------

MeantSizes = list[tuple[furniture.Item, float]]


def _units(rng: Random, say: Speaker, size: SizePair, sides: list[str], meant: MeantSizes) -> Json:
    kept = [(item, x) for item, x in meant if item.unit != "base"]
    told = furniture.unit_widths(rng, size[0], kept if rng.random() < 0.7 else [])
    units = [unit | {"width": say.say(unit["width"])} for unit in told]
    rests: Json = {"kind": "units", "units": units}
    if "front" in sides and rng.random() < 0.6:
        rests["overhang"] = {"front": say.say(20)}
    return rests


def _frame(
    rng: Random, say: Speaker, _size: SizePair, sides: list[str], _meant: MeantSizes
) -> Json:
    under = [s for s in sides if s in BOX_SIDES and (s != "front" or rng.random() < 0.5)]
    return {"kind": "frame", "sides": under or sides, "width": say.say(rng.choice((30, 40, 50)))}


def _ledges(
    _rng: Random, say: Speaker, size: SizePair, _sides: list[str], _meant: MeantSizes
) -> Json:
    lines = [
        {"start": say.place(0, y), "end": say.place(size[0], y), "depth": say.say(40)}
        for y in (20.0, size[1] - 20.0)
    ]
    return {"kind": "ledges", "lines": lines}


def _legs(rng: Random, say: Speaker, size: SizePair, sides: list[str], _meant: MeantSizes) -> Json:
    """Four legs, measured for the table as it was before it grew."""
    share = rng.choice((1.0, 1.0, 0.85, 1.15))
    inset = 0.2 if sides == ["rim"] else 0.08
    at = [
        say.place(size[0] * share * fx, size[1] * share * fy)
        for fx in (inset, 1 - inset)
        for fy in (inset, 1 - inset)
    ]
    return {"kind": "legs", "pad": say.say(60), "at": at}


def _ends(
    _rng: Random, say: Speaker, _size: SizePair, _sides: list[str], _meant: MeantSizes
) -> Json:
    return {"kind": "ends", "depth": say.say(50)}


def _full(
    _rng: Random, _say: Speaker, _size: SizePair, _sides: list[str], _meant: MeantSizes
) -> Json:
    return {"kind": "full"}


RESTS: Final = {
    "units": _units,
    "frame": _frame,
    "ledges": _ledges,
    "legs": _legs,
    "ends": _ends,
    "full": _full,
}


def _delivery(rng: Random, say: Speaker) -> Json:
    """How it gets there, mostly somewhere that is served, and what is known of the way in."""
    kind = rng.choice(("collect", "pallet", "pallet", "own-van", "fitted"))
    delivery: Json = {"kind": kind}
    if kind != "collect":
        delivery["postcode"] = rng.choice(POSTCODES) if rng.random() < 0.15 else "HR9 7XX"
    if rng.random() < 0.3:
        delivery["doorway"] = say.say(rng.choice((620, 686, 726, 762, 838, 900)))
    if rng.random() < 0.1:
        wide = rng.choice((800, 850, 900, 1000))
        delivery["turn"] = {"from": say.say(wide), "into": say.say(rng.choice((800, 900, 1100)))}
    if rng.random() < 0.15:
        delivery["steps"] = rng.randint(0, 20)
    return delivery
