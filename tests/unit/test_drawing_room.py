"""The view's room: what stands under, in and behind the slabs, and their shade as it is painted."""

from __future__ import annotations

import io
from typing import Any

import numpy as np
import pytest
from PIL import Image

from ledgerstone.codec.order_in import read_order
from ledgerstone.drawing import DrawnSlab, draw_view, rasterise
from ledgerstone.drawing.fittings import fittings_of
from ledgerstone.drawing.room import walls_of
from ledgerstone.drawing.scene import camera_for
from ledgerstone.drawing.setting import is_mirrored, stand_together
from ledgerstone.order import Order
from ledgerstone.shade.colour import delta_e_2000, srgb_to_lab
from ledgerstone.shape import shape_of
from ledgerstone.wording import speech_in
from ledgerstone.workshop import Workshop
from support.calibration import JOBS, on_units, order
from support.drawing_reader import read
from support.slabs import box, cut, hole, slab_json

GREY = "#5b5d5a"
COLLECT = {"kind": "collect"}
WALL = {"profile": "wall"}
SINK = cut("rectangle", (500, 400), (500, 310), label="sink")
TAP = hole(35, 500, 560, rim="covered", label="tap")
HOB = cut("rectangle", (560, 490), (1700, 310), rim="covered", label="hob")
RUN = slab_json(
    box(2400, 620),
    *(SINK, TAP, HOB),
    rests=on_units((600, "basin"), 600, (600, "hob"), 600, front=20),
    edges={"back": WALL, "left": WALL},
)
SHORT = slab_json(box(1300, 620), rests=on_units(650, 650, front=20), edges={"back": WALL})


def corner(side: str, *, meets: str) -> dict[str, Any]:
    """Write a kitchen of two runs that meet at one end of the first."""
    long = slab_json(box(2700, 620), rests=on_units(900, 900, 900, front=20), edges={"back": WALL})
    join = {"one": {"slab": 0, "side": side}, "other": {"slab": 1, "side": meets}, "gap": 2}
    return order(COLLECT, long, SHORT, joins=[join])


def pieces(asked: Order, workshop: Workshop, **more: Any) -> list[DrawnSlab]:
    """Set a grey of its own on every slab of an order."""
    told = {"colour": GREY, "gloss": 0.2, **more}
    return [
        DrawnSlab(slab, shape_of(slab, workshop), seed=str(i), **told)
        for i, slab in enumerate(asked.slabs)
    ]


def view(document: dict[str, Any], workshop: Workshop, **more: Any) -> str:
    """Draw a whole order's view."""
    asked = read_order(document, workshop)
    return draw_view(pieces(asked, workshop, **more), asked.joins, title="View")


def parts(svg: str, part: str) -> int:
    """Count what is marked as a part."""
    return len([node for node in read(svg).iter() if node.get("data-part") == part])


def test_every_slab_of_an_order_is_in_one_picture(workshop: Workshop) -> None:
    """Two runs that meet have two tops, and the units of both beneath them."""
    svg = view(corner("front", meets="left"), workshop)
    assert parts(svg, "top") == 2
    assert parts(svg, "rest") >= 5
    assert len(svg.encode()) <= 80_000


def test_the_joint_of_two_tops_is_drawn(workshop: Workshop) -> None:
    """Along the sides that meet there is a line; without a join, or of one slab, there is none."""
    joined = corner("front", meets="left")
    assert parts(view(joined, workshop), "joint") == 1
    assert parts(view({**joined, "joins": []}, workshop), "joint") == 0
    assert parts(view(order(COLLECT, RUN), workshop), "joint") == 0


@pytest.mark.parametrize(("meets", "mirrored"), [("left", True), ("right", False)])
def test_a_second_run_turns_its_front_to_the_eye(
    meets: str, workshop: Workshop, *, mirrored: bool
) -> None:
    """Whichever hand a kitchen has, what is seen of its second run is its front."""
    asked = read_order(corner("front", meets=meets), workshop)
    seen = pieces(asked, workshop)
    assert is_mirrored(seen, asked.joins) is mirrored
    second = stand_together(seen, asked.joins)[1]
    assert second.front[0] == pytest.approx(1.0)


def test_what_goes_into_an_opening_is_recognised_by_its_name(workshop: Workshop) -> None:
    """A sink has its bowl, a hob its glass, hot or not, and a tap its spout; an oven stays open."""
    (slab,) = read_order(order(COLLECT, RUN), workshop).slabs
    assert dict(fittings_of(slab, shape_of(slab, workshop))) == {0: "bowl", 1: "tap", 2: "hob"}
    hot = slab_json(box(1800, 620), {**HOB, "centre": {"x": 900, "y": 310}, "heat": True})
    (slab,) = read_order(order(COLLECT, hot), workshop).slabs
    assert fittings_of(slab, shape_of(slab, workshop)) == {0: "hob"}
    (oven,) = read_order(JOBS["an outdoor top round an oven"], workshop).slabs
    assert not fittings_of(oven, shape_of(oven, workshop))


def test_only_walls_that_the_order_names_are_drawn(workshop: Workshop) -> None:
    """A run against two walls has both behind it, an island has none, a shelf hangs on one."""

    def walls(document: dict[str, Any]) -> tuple[bool, bool]:
        asked = read_order(document, workshop)
        found = walls_of(stand_together(pieces(asked, workshop), asked.joins))
        return found.back_mm is not None, found.left_mm is not None

    assert walls(order(COLLECT, RUN)) == (True, True)
    assert walls(JOBS["an island on units"]) == (False, False)
    assert walls(JOBS["a shelf on ledges"]) == (True, False)


@pytest.mark.parametrize("job", JOBS)
def test_what_carries_a_slab_reaches_from_it_to_the_floor(job: str, workshop: Workshop) -> None:
    """Whatever an ordinary job rests on is in its picture."""
    assert parts(view(JOBS[job], workshop), "rest") > 0


@pytest.mark.parametrize("across_mm", [600, 900, 1200])
@pytest.mark.parametrize("is_round", [True, False])
def test_a_pedestals_stem_and_foot_are_seen(
    across_mm: int, workshop: Workshop, *, is_round: bool
) -> None:
    """From under the front of its top to the floor: at least a tenth of the top's own width."""
    outline = {"kind": "round", "diameter": across_mm} if is_round else box(across_mm, across_mm)
    rests = {"kind": "pedestal", "plate": 0.7 * across_mm}
    table = {**slab_json(box(900, 900), rests=rests), "outline": outline, "use": "table"}
    asked = read_order(order(COLLECT, table), workshop)
    (standing,) = stand_together(pieces(asked, workshop), [])
    camera, _ = camera_for([standing])
    shape = standing.piece.shape
    middle = across_mm / 2
    stem_x, foot_y = camera.at(middle, middle, -standing.height_mm)
    rim = [
        camera.at(x, y, -shape.thickness_mm) for x, y in shape.outline.exterior.segmentize(5).coords
    ]
    front_y = max(y for x, y in rim if abs(x - stem_x) < 10)
    left, right = min(rim)[0], max(rim)[0]
    assert foot_y - front_y >= 0.1 * (right - left)


# The two ends of what a workshop casts, and a warm one: dark, light, red.
@pytest.mark.parametrize("colour", ["#3f4142", "#d8d3c8", "#8a4b3c"])
@pytest.mark.parametrize("gloss", [0.05, 0.2, 0.8])
def test_the_shade_is_painted_true(colour: str, gloss: float, workshop: Workshop) -> None:
    """Over a patch of the top clear of the sheen, the picture's mean is within 2 of the swatch.

    CIE 142-2001: CIEDE2000.
    """
    asked = read_order(order(COLLECT, slab_json(box(2000, 900))), workshop)
    seen = pieces(asked, workshop, colour=colour, gloss=gloss)
    painted = rasterise(draw_view(seen, title="View"), 800, speech_in("en"))
    png = Image.open(io.BytesIO(painted)).convert("RGB")
    camera, _ = camera_for(stand_together(seen, []))
    x, y = camera.at(1780.0, 650.0, 0.0)
    patch = np.asarray(png)[round(y) - 20 : round(y) + 20, round(x) - 30 : round(x) + 30]
    mean = "#" + "".join(f"{round(part):02x}" for part in patch.reshape(-1, 3).mean(axis=0))
    assert delta_e_2000(srgb_to_lab(mean), srgb_to_lab(colour)) <= 2.0


def test_five_tops_with_all_that_is_in_them_are_light(workshop: Workshop) -> None:
    """Five tops as cast, each with a sink and a tap on four units, are at most 80 kB."""
    sink = cut("rectangle", (500, 400), (900, 300), label="sink")
    tap = hole(35, 900, 560, label="tap")
    units = on_units(500, 500, 500, 500, front=20)
    top = slab_json(box(2000, 620), sink, tap, rests=units, edges={"back": WALL})
    as_cast = {**top, "finish": {"surface": "as-cast", "sealer": "matt"}}
    assert len(view(order(COLLECT, *[as_cast] * 5), workshop).encode()) <= 80_000


def test_slabs_of_one_shade_have_one_picture_of_it(workshop: Workshop) -> None:
    """What is mottled alike is in the drawing once, and each has its own place in it."""
    svg = view(corner("front", meets="left"), workshop)
    nodes = [*read(svg).iter()]
    assert len([node for node in nodes if node.tag.endswith("image")]) == 1
    tiles = [node for node in nodes if node.tag.endswith("pattern")]
    assert len({node.get("patternTransform") for node in tiles}) == len(tiles) == 2
    (shared,) = {node.get("href", "") for node in tiles} - {""}
    assert shared.removeprefix("#") in {node.get("id") for node in tiles}
