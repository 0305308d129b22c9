"""The view: hidden faces right, the shade honest, the same order always the same picture."""

import base64
import dataclasses
import math
import re
import struct
import zlib
from xml.etree import ElementTree as ET

import numpy as np
import pytest
from shapely.affinity import affine_transform
from shapely.geometry import Point, Polygon

from ledgerstone.drawing import DrawnSlab, describe, draw_view, mottle
from ledgerstone.drawing.camera import LEVEL
from ledgerstone.drawing.svg import EMBEDDED_PNG
from ledgerstone.drawing.tint import hex_of, rgb_of
from ledgerstone.order import CORNERS, Corner, Edge, Rectangle, Slab
from ledgerstone.shape import shape_of
from ledgerstone.workshop import Workshop
from support.drawing_reader import SVG, read, rings_of, texts
from support.drawn_slabs import GALLERY, L, bench, disc, elbow, made
from unit.contrast import contrast

WITHIN_MM = 0.1
GREY = "#5b5d5a"


def svg_of(slab: Slab, workshop: Workshop, **more: object) -> str:
    """Draw a slab's view."""
    told = {"colour": GREY, "gloss": 0.3, "seed": "TC-4821-A", **more}
    title = str(told.pop("title", "View"))
    piece = DrawnSlab(slab, shape_of(slab, workshop), **told)  # type: ignore[arg-type]  # as told
    return draw_view([piece], title=title)


def top_of(root: ET.Element) -> list[Polygon]:
    """Return the areas that the slab's top is made of, outline and openings, in plane mm."""
    (top,) = (node for node in root.iter() if node.get("data-part") == "top")
    return [Polygon(ring) for ring in rings_of(top.attrib["d"])]


@pytest.mark.parametrize("name", GALLERY)
def test_openings_read_back_where_and_as_large_as_they_were_ordered(
    name: str, workshop: Workshop
) -> None:
    """Every opening that lies within the slab is a hole in its top, within 0.1 mm of side."""
    slab = GALLERY[name].slab
    shape = shape_of(slab, workshop)
    rings = top_of(read(svg_of(slab, workshop)))
    for opening in shape.openings:
        if slab.cutouts[opening.index].open_to is not None:
            continue
        middle = opening.polygon.centroid
        ring = min(
            rings, key=lambda r: r.centroid.distance(middle) + abs(r.area - opening.area_mm2)
        )
        assert ring.centroid.distance(middle) <= WITHIN_MM
        assert math.sqrt(ring.area) == pytest.approx(math.sqrt(opening.area_mm2), abs=WITHIN_MM)


def test_the_top_is_as_bright_as_its_shade() -> None:
    """Light leaves the top's colour alone and darkens every upright face."""
    assert LEVEL.brightness((0.0, 0.0, 1.0)) == pytest.approx(1.0)
    assert LEVEL.facing((0.0, 0.0, 1.0)) > 0
    for turn in range(0, 360, 10):
        normal = (math.cos(math.radians(turn)), math.sin(math.radians(turn)), 0.0)
        assert LEVEL.brightness(normal) < 1


def decoded(image: str) -> tuple[np.ndarray, np.ndarray]:
    """Return a tile's indices ``(n, n)`` and its palette ``(16, 3)``, read from its PNG."""
    png = base64.b64decode(image.removeprefix(EMBEDDED_PNG))
    assert png[:8] == b"\x89PNG\r\n\x1a\n"
    chunks, at = {}, 8
    while at < len(png):
        (size,) = struct.unpack(">I", png[at : at + 4])
        name, data = png[at + 4 : at + 8], png[at + 8 : at + 8 + size]
        assert struct.unpack(">I", png[at + 8 + size : at + 12 + size])[0] == zlib.crc32(
            name + data
        )
        chunks[name], at = data, at + 12 + size
    side, high, bits, kind = struct.unpack(">IIBB", chunks[b"IHDR"][:10])
    assert (side, high, bits, kind) == (mottle.SIDE_PX, mottle.SIDE_PX, 4, 3)
    rows = np.frombuffer(zlib.decompress(chunks[b"IDAT"]), np.uint8).reshape(side, side // 2 + 1)
    assert not rows[:, 0].any()
    indices = np.stack([rows[:, 1:] >> 4, rows[:, 1:] & 15], axis=2).reshape(side, side)
    return indices, np.frombuffer(chunks[b"PLTE"], np.uint8).reshape(16, 3)


@pytest.mark.parametrize(
    "colour", ["#5b5d5a", "#d6d0c4", "#8a4b3c", "#1d1d1f", "#f6f4ef", "#000000", "#ffffff"]
)
def test_mottling_leaves_the_mean_colour_as_it_is(colour: str) -> None:
    """The tile's mean is the shade itself within two steps of 255, at most 4 kB of PNG."""
    image = mottle.tile(rgb_of(colour))
    indices, palette = decoded(image)
    mean = palette[indices].reshape(-1, 3).mean(axis=0)
    assert mean == pytest.approx(np.array(rgb_of(colour), dtype=float), abs=2.0)
    assert len(base64.b64decode(image.removeprefix(EMBEDDED_PNG))) <= 4096


def test_the_tile_meets_itself() -> None:
    """Across the tile's own edge the mottling steps no harder than within it."""
    indices, _ = decoded(mottle.tile(rgb_of(GREY)))
    field = indices.astype(float)
    within = np.abs(np.diff(field, axis=1)).mean()
    across = np.abs(field[:, 0] - field[:, -1]).mean()
    assert across < 1.5 * within


def test_the_same_seed_is_the_same_picture_and_another_is_not(workshop: Workshop) -> None:
    """Same order, same bytes; another order's voids lie elsewhere."""
    first, again = svg_of(bench(), workshop), svg_of(bench(), workshop)
    assert first == again
    assert first != svg_of(bench(), workshop, seed="TC-4821-B")


def test_voids_lie_in_the_concrete(workshop: Workshop) -> None:
    """No void is drawn over an opening or off the slab."""
    net = shape_of(bench(), workshop).net
    thrown = mottle.voids(net, "as-cast", "x")
    assert len(thrown) > 20
    assert all(net.covers(Point(place)) for place, _ in thrown)


@pytest.mark.parametrize("name", GALLERY)
def test_a_view_is_safe_and_small(name: str, workshop: Workshop) -> None:
    """No style, no script, no filter, no way out but its own tile, at most 60 kB."""
    svg = svg_of(GALLERY[name].slab, workshop)
    assert len(svg.encode()) <= 60_000
    for node in read(svg).iter():
        assert node.tag.removeprefix(SVG) not in {"script", "filter", "foreignObject", "style"}
        for attribute, value in node.attrib.items():
            assert "style" not in attribute
            assert not attribute.startswith("on")
            assert "href" not in attribute or value.startswith(EMBEDDED_PNG)
            assert "url(" not in value or value.startswith("url(#view-")


def test_every_fill_that_is_used_is_defined(workshop: Workshop) -> None:
    """Each gradient and pattern is defined once, before it is used."""
    for drawn in GALLERY.values():
        root = read(svg_of(drawn.slab, workshop))
        ids = [node.attrib["id"] for node in root.iter() if "id" in node.attrib]
        used = {
            v[5:-1] for node in root.iter() for v in node.attrib.values() if v.startswith("url(#")
        }
        assert len(ids) == len(set(ids))
        assert used <= set(ids)


def test_customers_texts_are_text_and_nothing_else(workshop: Workshop) -> None:
    """Markup in a label or a title is stated, never obeyed."""
    hostile = '</desc><script>x</script>"\u202e\x00'
    slab = dataclasses.replace(bench(), cutouts=(disc(300, 700, 280, hostile),))
    root = read(svg_of(slab, workshop, title=hostile, seed=hostile))
    assert not list(root.iter(f"{SVG}script"))
    assert root[0].text == '</desc><script>x</script>"'


def test_a_rule_of_known_length_lies_beside_the_slab(workshop: Workshop) -> None:
    """A metre, or three feet for who thinks in feet; a shorter one beside a small slab."""
    said = {name: texts(read(svg_of(drawn.slab, workshop))) for name, drawn in GALLERY.items()}
    assert said["bench"] == ["1 m"]
    assert said["feet"] == ["3 ft"]
    assert said["tiny"] == ["300 mm"]


def test_the_rules_words_stand_out_from_the_room(workshop: Workshop) -> None:
    """The view brings its own backdrop; its letters have 4.5 : 1 on both ends of it."""
    root = read(svg_of(bench(), workshop))
    (room,) = (n for n in root.iter(f"{SVG}linearGradient") if n.attrib["id"].endswith("-room"))
    (letters,) = root.iter(f"{SVG}text")
    for stop in room:
        assert stop.get("stop-opacity") is None
        assert contrast(letters.attrib["fill"], stop.attrib["stop-color"]) >= 4.5


def test_the_view_says_itself(workshop: Workshop) -> None:
    """The view carries the same description as the plan."""
    root = read(svg_of(bench(), workshop))
    assert root[0].text == "View"
    assert root[1].text == describe(bench(), shape_of(bench(), workshop))


def test_rests_stand_under_the_slab_in_outline(workshop: Workshop) -> None:
    """Two units, each with its front and its right side in one outline."""
    root = read(svg_of(bench(), workshop))
    assert len([n for n in root.iter() if n.get("data-part") == "rest"]) == 2


@pytest.mark.parametrize("colour", ["5b5d5a", "#5b5d5", "#5b5d5ag", "red", "#gggggg"])
def test_a_colour_that_is_not_one_is_refused(colour: str) -> None:
    """Only ``#rrggbb`` is a colour here."""
    with pytest.raises(ValueError, match=r"#rrggbb|base 16"):
        rgb_of(colour)


def test_colours_read_back() -> None:
    """A colour is written as it was read."""
    assert hex_of(rgb_of("#5b5d5a")) == "#5b5d5a"


@pytest.mark.parametrize("corner", CORNERS)
def test_an_ls_hand_is_seen(corner: Corner, workshop: Workshop) -> None:
    """The top of an L lacks its own corner and no other."""
    outline = max(top_of(read(svg_of(elbow(corner), workshop))), key=lambda ring: ring.area)
    corners = {
        "front-left": (60, 60),
        "front-right": (2040, 60),
        "back-right": (2040, 1440),
        "back-left": (60, 1440),
    }
    assert {name for name, place in corners.items() if not outline.covers(Point(place))} == {corner}


@pytest.mark.parametrize("name", ["bench", "round", "L front-left", "sieve"])
def test_mottling_covers_the_top_and_nothing_else(name: str, workshop: Workshop) -> None:
    """The mottling, laid on the sheet, covers the very rings of the top as they are seen."""
    root = read(svg_of(GALLERY[name].slab, workshop))
    (face,) = (node for node in root.iter() if node.get("fill", "").endswith("-face)"))
    (plane,) = {node.get("transform") for node in root.iter() if node.get("data-unit") == "mm"}
    assert plane is not None
    a, b, c, d, e, f = map(float, plane[7:-1].split())
    high = math.hypot(b, d) / math.hypot(a, c)  # how far the projection squashes a circle
    drawn = [Polygon([(x, high * y) for x, y in ring]) for ring in rings_of(_round(face, high))]
    laid = [affine_transform(ring, [a, c, b, d, e, f]) for ring in top_of(root)]
    units = 0.15 if name == "sieve" else 0.05  # a full slab's numbers are written to a tenth
    for one, other in zip(drawn, laid, strict=True):
        assert one.exterior.hausdorff_distance(other.exterior) <= units


def _round(face: ET.Element, high: float) -> str:
    """Stretch a path on the sheet until its upright ellipses are circles."""

    def stretched(match: re.Match[str]) -> str:
        verb, before, x, y = match.groups()
        return f"{verb}{before or ''}{x} {float(y) / high:.4f}"

    path = r"([MLA])((?:[\d.]+ ){2}0 0 [01] )?(-?[\d.]+) (-?[\d.]+)"
    return re.sub(path, stretched, face.attrib["d"])


@pytest.mark.parametrize("profile", ["bevel", "round"])
def test_an_edge_runs_out_round_a_corner_without_a_spike(profile: str, workshop: Workshop) -> None:
    """Where one edge ends and another begins on a curve, the top stays whole and inside."""
    edges = {"front": Edge(profile, L(15)), "back": Edge("wall")}  # type: ignore[arg-type]
    slab = made(Rectangle(L(1200), L(600), L(60)), edges=edges)
    shape = shape_of(slab, workshop)
    (top, *_) = top_of(read(svg_of(slab, workshop)))
    assert top.is_valid
    assert shape.outline.buffer(0.1).covers(top)
    assert top.covers(Point(600, 15.2))
    assert not top.covers(Point(600, 14.8))


def test_voids_keep_off_a_worked_edge(workshop: Workshop) -> None:
    """No void lies on a rounded rim."""
    net = shape_of(GALLERY["round"].slab, workshop).net
    thrown = mottle.voids(net, "as-cast", "x", 10.0)
    assert len(thrown) > 50
    assert min(net.boundary.distance(Point(place)) for place, _ in thrown) > 14.0
