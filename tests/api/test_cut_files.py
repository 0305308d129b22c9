"""The files that moulds are cut by, read back: areas, places, layers, true arcs, millimetres."""

import io
import math
import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import ezdxf.filemanagement
import ezdxf.path
import pytest
from ezdxf.document import Drawing
from ezdxf.entities.lwpolyline import LWPolyline
from ezdxf.math import bulge_to_arc
from shapely import Polygon

from ledgerstone.workshop import DEMONSTRATION
from support.demonstration import EXAMPLE_ORDER
from support.offered import MAKER, reworded, service

DXF, SVG = "image/vnd.dxf", "image/svg+xml"
ORDER: dict[str, Any] = {
    "slabs": [
        {
            "label": "Left arm",
            "outline": {
                "kind": "l-shape",
                "length": "1800 mm",
                "width": "1100 mm",
                "notch": {"corner": "front-left", "length": "1150 mm", "width": "500 mm"},
                "corner_radius": "20 mm",
            },
            "thickness": "40 mm",
            "cutouts": [
                {"kind": "circle", "label": "basin", "diameter": "360 mm",
                 "centre": {"x": "1480 mm", "y": "620 mm"}},
                {"kind": "rectangle", "label": "hatch", "length": "400 mm", "width": "200 mm",
                 "corner_radius": "30 mm", "centre": {"x": "600 mm", "y": "820 mm"}},
            ],
            "reliefs": [
                {"kind": "recess", "label": "tray", "depth": "6 mm",
                 "outline": {"kind": "rectangle", "length": "150 mm", "width": "100 mm"},
                 "at": {"x": "200 mm", "y": "700 mm"}},
            ],
            "rests": {"kind": "full"},
        },
        {"label": "Table", "outline": {"kind": "round", "diameter": "800 mm"},
         "thickness": "40 mm", "rests": {"kind": "full"}},
    ],
    "delivery": {"kind": "collect"},
}  # fmt: skip


def written(form: str, order: dict[str, Any] = ORDER) -> str:
    """Ask for a file of an order's moulds, as the maker."""
    headers = MAKER | {"Accept": form}
    answer = service().post("/v1/job-sheets", json={"order": order}, headers=headers)
    assert answer.status_code == 200, answer.text
    assert answer.mimetype == form
    return str(answer.get_data(as_text=True))


@pytest.fixture(scope="module")
def drawing() -> Drawing:
    """The moulds of the order, as a program for drawings reads them."""
    return ezdxf.filemanagement.read(io.StringIO(written(DXF)))


def lines(drawing: Drawing, layer: str) -> list[Any]:
    """The closed polylines of a layer."""
    found = drawing.modelspace().query(f'LWPOLYLINE[layer=="{layer}"]')
    polylines = [line for line in found if isinstance(line, LWPolyline)]
    assert len(polylines) == len(found)
    assert all(line.closed for line in polylines)
    return polylines


def area_mm2(line: LWPolyline) -> float:
    """A polyline's area: its corners' polygon, and each arc's segment r²(θ - sin θ)/2."""
    points = [(x, y) for x, y, _ in line.get_points("xyb")]
    shoelace = sum(
        a[0] * b[1] - b[0] * a[1] for a, b in zip(points, points[1:] + points[:1], strict=True)
    )
    segments = sum(
        math.copysign(radius**2 * (angle - math.sin(angle)) / 2, bulge)
        for angle, radius, bulge in arcs(line)
    )
    return float(shoelace / 2 + segments)


def arcs(line: LWPolyline) -> Iterator[tuple[float, float, float]]:
    """Each arc of a polyline: its angle, its radius, and its bulge."""
    points = list(line.get_points("xyb"))
    for (x, y, bulge), (to_x, to_y, _) in zip(points, points[1:] + points[:1], strict=True):
        if bulge:
            _, start, end, radius = bulge_to_arc((x, y), (to_x, to_y), bulge)
            yield (end - start) % math.tau, radius, bulge


def box(line: LWPolyline) -> tuple[float, float, float, float]:
    """The box round a polyline, its arcs taken as they bend."""
    bounds = ezdxf.path.make_path(line).flattening(0.001)
    xs, ys = zip(*((p.x, p.y) for p in bounds), strict=True)
    return min(xs), min(ys), max(xs), max(ys)


def test_the_file_is_in_millimetres_on_named_layers(drawing: Drawing) -> None:
    """Base, inside edge, knockouts, reliefs, sides and curves of each slab; the notes say kerf."""
    assert drawing.header["$INSUNITS"] == 4
    used = {entity.dxf.layer for entity in drawing.modelspace()}
    of_first = {f"1-{n}" for n in ("BASE", "INSIDE", "KNOCKOUTS", "RELIEFS", "SIDES", "CURVES")}
    assert used >= of_first | {"2-BASE", "2-INSIDE", "2-CURVES", "NOTES"}
    assert used <= {layer.dxf.name for layer in drawing.layers}
    said = " ".join(text.dxf.text for text in drawing.modelspace().query("TEXT"))
    assert "kerf is not applied" in said
    assert "Mirrored" in said
    assert not drawing.audit().errors


def test_areas_are_those_of_the_sizes_asked_for(drawing: Drawing) -> None:
    """By the plane's own formulas: an L with rounded corners, a circle, a rounded rectangle.

    Its corner between the two arms has the workshop's inside radius, which adds what the outside
    corners' arcs take off.
    """
    (basin, hatch) = lines(drawing, "1-KNOCKOUTS")
    assert area_mm2(basin) == pytest.approx(math.pi * 180**2, rel=1e-6)
    assert area_mm2(hatch) == pytest.approx(400 * 200 - (4 - math.pi) * 30**2, rel=1e-6)
    assert {round(radius, 3) for _, radius, _ in arcs(basin)} == {180.0}
    assert {round(radius, 3) for _, radius, _ in arcs(hatch)} == {30.0}
    (outline,) = lines(drawing, "1-INSIDE")
    radii = sorted((bulge > 0, round(radius, 3)) for _, radius, bulge in arcs(outline))
    assert [radius for outside, radius in radii if outside] == [20.0] * 5
    ((_, inside),) = [each for each in radii if not each[0]]
    off = (1 - math.pi / 4) * (5 * 20**2 - inside**2)
    assert area_mm2(outline) == pytest.approx(1800 * 1100 - 1150 * 500 - off, rel=1e-6)
    (table,) = lines(drawing, "2-INSIDE")
    assert area_mm2(table) == pytest.approx(math.pi * 400**2, rel=1e-6)


def test_each_knockout_stands_where_the_job_sheet_says(drawing: Drawing) -> None:
    """Left, right, front and back of the knockouts' table, and left and right changed over."""
    answer = service().post("/v1/job-sheets", json={"order": ORDER}, headers=MAKER).get_json()
    tables = [b for page in answer["pages"] for b in page["blocks"] if b["kind"] == "table"]
    rows = [row for t in tables if t["columns"][0] == "Knockout" for row in t["rows"]]
    assert len(rows) == 3
    left, front, right, back = box(lines(drawing, "1-INSIDE")[0])
    shapes = lines(drawing, "1-KNOCKOUTS") + lines(drawing, "1-RELIEFS")
    for row, shape in zip(rows, shapes, strict=True):
        a, b, c, d = box(shape)
        told = [float(cell) for cell in row[2:6]]
        assert told == pytest.approx([a - left, right - c, b - front, back - d], abs=0.06), row[0]
    basin = box(shapes[0])
    assert (basin[0] + basin[2]) / 2 - left == pytest.approx(1800 - 1480, abs=1e-3)


def test_sides_and_base_are_as_the_cut_list_has_them(drawing: Drawing) -> None:
    """A margin all round the base, one height of strip, six sides of the L, a circle's girth."""
    base = Polygon([(x, y) for x, y, *_ in lines(drawing, "2-BASE")[0].get_points("xy")])
    inside = box(lines(drawing, "2-INSIDE")[0])
    margin = (base.bounds[2] - base.bounds[0] - 800) / 2
    assert margin > 0
    assert base.bounds[0] == pytest.approx(inside[0] - margin)
    curve = box(lines(drawing, "2-CURVES")[0])
    assert curve[2] - curve[0] == pytest.approx(math.pi * 800, rel=2e-3)
    straight = [box(line) for line in lines(drawing, "1-SIDES")]
    heights = {round(b[3] - b[1], 3) for b in straight}
    assert len(heights) == 1
    assert len(straight) == 6


@pytest.mark.parametrize(
    ("language", "front", "rim"),
    [("en", "side front", "rim strip"), ("de", "Seite vorn", "Randstreifen")],
)
def test_strips_are_named_in_the_workshops_language(
    language: str, front: str, rim: str, tmp_path: Path
) -> None:
    """Each by the side at which it stands; a round's only strip is its rim's."""
    profile = reworded(tmp_path, ('language = "en"', f'language = "{language}"'))
    ask = {"order": ORDER}
    answer = service(profile=profile).post(
        "/v1/job-sheets", json=ask, headers=MAKER | {"Accept": SVG}
    )
    names = re.findall(r"<text[^>]*>([^<]*)</text>", answer.get_data(as_text=True))
    assert {front, rim} <= set(names)


def test_the_plan_in_millimetres_says_the_same_sizes() -> None:
    """As wide in mm as its box, with every line of the other file and the note on kerf."""
    svg, dxf = written(SVG), written(DXF)
    wide, high = map(float, re.findall(r'(?:width|height)="([\d.]+)mm"', svg)[:2])
    box_of = [float(n) for n in re.search(r'viewBox="([^"]+)"', svg)[1].split()]  # type: ignore[index]
    assert box_of[2:] == [wide, high]
    paths = re.findall(r"<path d=", svg)
    assert len(paths) == len(
        ezdxf.filemanagement.read(io.StringIO(dxf)).modelspace().query("LWPOLYLINE")
    )
    assert "A180 180" in svg
    assert "kerf is not applied" in svg


def test_the_same_order_gives_the_same_file() -> None:
    """To the byte, today and again; the maker's alone; what cannot be made is sent back."""
    assert written(DXF, EXAMPLE_ORDER) == written(DXF, EXAMPLE_ORDER)
    ask = {"order": EXAMPLE_ORDER}
    assert service().post("/v1/job-sheets", json=ask, headers={"Accept": DXF}).status_code == 401
    thin = {"order": {**ORDER, "slabs": [{**ORDER["slabs"][1], "thickness": "5 mm"}]}}
    stopped = service().post("/v1/job-sheets", json=thin, headers=MAKER | {"Accept": DXF})
    assert stopped.status_code == 422


def test_a_workshop_that_works_in_inches_gets_its_files_in_inches() -> None:
    """By the file's own header, the notes on it, and its sizes: 24 in by 24 in, 12 in across."""
    shop = service(profile=DEMONSTRATION.with_name("united_states.toml"))
    hole = {"kind": "circle", "diameter": "12 in", "centre": {"x": "12 in", "y": "12 in"}}
    outline = {"kind": "rectangle", "length": "24 in", "width": "24 in"}
    top = {"outline": outline, "cutouts": [hole], "thickness": "2 in", "rests": {"kind": "full"}}
    ask = {"order": {"slabs": [top], "delivery": {"kind": "collect"}}}
    asked = {form: MAKER | {"Accept": form} for form in (DXF, SVG)}
    sent = [shop.post("/v1/job-sheets", json=ask, headers=asked[form]) for form in (DXF, SVG)]
    dxf, svg = (answer.get_data(as_text=True) for answer in sent)
    drawing = ezdxf.filemanagement.read(io.StringIO(dxf))
    assert (drawing.header["$INSUNITS"], drawing.header["$MEASUREMENT"]) == (1, 0)
    said = " ".join(text.dxf.text for text in drawing.modelspace().query("TEXT"))
    assert "in inches" in said
    assert " mm" not in said
    assert area_mm2(lines(drawing, "1-INSIDE")[0]) == pytest.approx(24 * 24, rel=1e-4)
    assert area_mm2(lines(drawing, "1-KNOCKOUTS")[0]) == pytest.approx(math.pi * 6**2, rel=1e-6)
    wide, high = map(float, re.findall(r'(?:width|height)="([\d.]+)in"', svg)[:2])
    box_of = [float(n) for n in re.search(r'viewBox="([^"]+)"', svg)[1].split()]  # type: ignore[index]
    assert [mm / 25.4 for mm in box_of[2:]] == pytest.approx([wide, high], abs=1e-3)
