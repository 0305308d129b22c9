"""The five everyday jobs: a hearth, a vanity top, a run with a hob, a round table, a kitchen."""

from typing import Any, Final

from support.documents import Json


def _box(length: str, width: str) -> Json:
    return {"kind": "rectangle", "length": length, "width": width}


def _units(*widths: str, **used: str) -> Json:
    units = [{"width": width} for width in widths]
    for at, use in used.items():
        units[int(at.removeprefix("at"))]["for"] = use
    return {"kind": "units", "units": units, "overhang": {"front": "20 mm"}}


def _hole(label: str, diameter: str, x: str, y: str) -> Json:
    return {"label": label, "kind": "circle", "diameter": diameter, "centre": {"x": x, "y": y},
            "rim": "covered"}  # fmt: skip


def _cut(label: str, size: tuple[str, str], radius: str, at: tuple[str, str], **more: Any) -> Json:
    box = {"kind": "rectangle", "length": size[0], "width": size[1], "corner_radius": radius}
    return {"label": label, **box, "centre": {"x": at[0], "y": at[1]}, **more}


HONED: Final = {"surface": "honed", "sealer": "matt"}
RUN_EDGES: Final = {"front": {"profile": "bevel", "size": "5 mm"}, "back": {"profile": "wall"}}
VAN: Final = {"kind": "own-van", "postcode": "HR0 7XX"}
HOB_RUN: Final[Json] = {
    "label": "Hob run", "outline": _box("2400 mm", "620 mm"), "thickness": "40 mm",
    "cutouts": [_cut("hob", ("560 mm", "490 mm"), "10 mm", ("1200 mm", "310 mm"), rim="covered",
                     heat=True)],
    "finish": HONED, "edges": RUN_EDGES, "rests": _units("900 mm", "600 mm", "900 mm", at1="hob"),
}  # fmt: skip
SINK_RUN: Final[Json] = {
    "label": "Sink run", "outline": _box("1800 mm", "620 mm"), "thickness": "40 mm",
    "cutouts": [_cut("sink", ("500 mm", "400 mm"), "20 mm", ("900 mm", "290 mm"), rim="shown"),
                _hole("tap", "35 mm", "900 mm", "550 mm")],
    "finish": HONED, "edges": RUN_EDGES,
    "rests": _units("600 mm", "600 mm", "600 mm", at1="basin"),
}  # fmt: skip
ISLAND: Final[Json] = {
    "label": "Island", "outline": _box("1600 mm", "800 mm"), "thickness": "40 mm",
    "finish": HONED, "rests": _units("800 mm", "800 mm"),
}  # fmt: skip
LEGS: Final = [{"x": f"{x} mm", "y": f"{y} mm"} for x in (300, 800) for y in (300, 800)]
EVERYDAY: Final[dict[str, Json]] = {
    "hearth": {
        "slabs": [{"label": "Hearth", "use": "hearth", "outline": _box("600 mm", "400 mm"),
                   "thickness": "50 mm", "finish": {"surface": "as-cast", "sealer": "matt"},
                   "rests": {"kind": "full"}}],
        "delivery": {"kind": "collect"},
    },
    "vanity": {
        "slabs": [{"label": "Vanity top", "outline": _box("1200 mm", "500 mm"),
                   "thickness": "40 mm", "finish": HONED, "place": "wet-room",
                   "cutouts": [_hole("bowl", "300 mm", "600 mm", "230 mm"),
                               _hole("tap", "35 mm", "600 mm", "440 mm")],
                   "rests": _units("600 mm", "600 mm")}],
        "delivery": {"kind": "pallet", "postcode": "HR0 7XX"},
    },
    "hob": {"slabs": [HOB_RUN], "delivery": VAN},
    "table": {
        "slabs": [{"label": "Round table", "use": "table", "thickness": "35 mm",
                   "outline": {"kind": "round", "diameter": "1100 mm"},
                   "finish": {"surface": "polished", "sealer": "satin"},
                   "rests": {"kind": "legs", "pad": "60 mm", "at": LEGS}}],
        "delivery": VAN,
    },
    "kitchen": {
        "slabs": [HOB_RUN, SINK_RUN, ISLAND],
        "delivery": {"kind": "fitted", "postcode": "HR0 7XX"},
    },
}  # fmt: skip
