"""Ten ordinary jobs that any workshop makes, and five slabs that are known to break, as orders."""

from dataclasses import replace
from datetime import date
from typing import Final

from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, cut, hole, slab_json

TODAY: Final = date(2026, 11, 25)

FITTED: Final = {"kind": "fitted", "postcode": "HR9 7XX"}

PALLET: Final = {"kind": "pallet", "postcode": "HR9 7XX"}

ALL_ROUND: Final = {"kind": "frame", "sides": ["front", "back", "left", "right"], "width": 60}

COLD_C: Final = 5.0


def on_units(*widths: int | tuple[int, str], **overhang: int) -> Json:
    """Write base units from left to right; a pair names what the unit is for."""
    units = [{"width": w} if isinstance(w, int) else {"width": w[0], "for": w[1]} for w in widths]
    return {"kind": "units", "units": units, "overhang": overhang}


def on_legs(xs: tuple[int, ...], ys: tuple[int, ...], pad: int) -> Json:
    """Write legs at every crossing of the lines."""
    return {"kind": "legs", "pad": pad, "at": [{"x": x, "y": y} for x in xs for y in ys]}


def order(delivery: Json, *slabs: Json, **more: object) -> Json:
    """Write an order."""
    return {"slabs": list(slabs), "delivery": delivery, **more}


HOB: Final = cut("rectangle", (560, 490), (1200, 310), label="hob", rim="covered")

OVEN: Final = cut("rectangle", (900, 480), (800, 400), label="oven", rim="covered", heat=True)

OUTDOOR: Final = order(PALLET, slab_json(box(1600, 800), OVEN, place="outdoors", rests=ALL_ROUND))

JOBS: Final[dict[str, Json]] = {
    "a 2.4 m run round a hob": order(
        FITTED,
        slab_json(box(2400, 620), HOB, rests=on_units(600, 300, (600, "hob"), 900, front=20)),
    ),
    "a vanity with two bowls": order(
        PALLET,
        slab_json(
            box(1800, 560),
            hole(360, 450, 270, label="left bowl"),
            hole(360, 1350, 270, label="right bowl"),
            place="wet-room",
            rests=on_units((900, "basin"), (900, "basin")),
        ),
    ),
    "a 300 mm breakfast overhang": order(
        FITTED, slab_json(box(1800, 900), rests=on_units(600, 600, 600, front=300))
    ),
    "a round table on a pedestal": order(
        PALLET,
        slab_json(
            {"kind": "round", "diameter": 1000}, use="table", rests=on_legs((500,), (500,), 400)
        ),
    ),
    "an outdoor top round an oven": OUTDOOR,
    "a bench on legs": order(
        PALLET,
        slab_json(
            box(1400, 400),
            thickness=50,
            use="table",
            place="outdoors",
            rests=on_legs((200, 1200), (60, 340), 60),
        ),
    ),
    "a 3 m run in two pieces": order(
        FITTED,
        slab_json(box(1500, 620), rests=on_units(600, 900, front=20)),
        slab_json(box(1500, 620), rests=on_units(900, 600, front=20)),
        joins=[
            {"one": {"slab": 0, "side": "right"}, "other": {"slab": 1, "side": "left"}, "gap": 2}
        ],
    ),
    "a hearth": order(
        PALLET, slab_json(box(1200, 500), thickness=50, use="hearth", rests={"kind": "full"})
    ),
    "a shelf on ledges": order(
        PALLET,
        slab_json(
            box(900, 250),
            use="shelf",
            rests={
                "kind": "ledges",
                "lines": [
                    {"start": {"x": x, "y": 0}, "end": {"x": x, "y": 250}, "depth": 40}
                    for x in (20, 880)
                ],
            },
        ),
    ),
    "an island on units": order(
        FITTED, slab_json(box(2000, 900), rests=on_units(600, 800, 600, front=25, back=25))
    ),
}

BREAKERS: Final[dict[str, tuple[Json, tuple[str, ...]]]] = {
    "25 mm over 2 m": (
        order(PALLET, slab_json(box(2000, 600), thickness=25, rests={"kind": "ends", "depth": 50})),
        ("cracks-in-place",),
    ),
    "a 40 mm strip behind a 900 mm opening": (
        order(
            PALLET,
            slab_json(
                box(1600, 600),
                cut("rectangle", (900, 480), (800, 320), label="oven", rim="covered"),
                rests=ALL_ROUND,
            ),
        ),
        ("strip-too-narrow",),
    ),
    "a 600 mm overhang that nothing holds": (
        order(FITTED, slab_json(box(2400, 1200), rests=on_units(600, 600, 600, 600, front=600))),
        ("cracks-in-place", "tips-over"),
    ),
    "legs at the ends of 2.6 m, 30 mm thick": (
        order(
            FITTED,
            slab_json(box(2600, 600), thickness=30, rests=on_legs((50, 2550), (50, 550), 60)),
        ),
        ("cracks-in-place",),
    ),
}


def in_a_cold_workshop(workshop: Workshop) -> Workshop:
    """The same workshop, which demoulds after a day at 5 °C and waits no longer."""
    return replace(
        workshop,
        days=replace(workshop.days, under_cover=1.0),
        handling=replace(workshop.handling, workshop_c=(COLD_C,) * 12, longest_cover_days=1.0),
    )
