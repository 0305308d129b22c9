"""The assembled plan: joined sides meet at their gap, backs in line, and the hand is stated."""

import dataclasses
import math
import re

import pytest
from shapely.geometry import Polygon

from ledgerstone.drawing import describe, draw_assembled
from ledgerstone.drawing.joining import Assembly, assemble
from ledgerstone.order import CORNERS, Corner, Edge, Join, JoinEnd, LShape, Notch, Rectangle, Slab
from ledgerstone.shape import Shape, shape_of
from ledgerstone.wording import Message, speech_in
from ledgerstone.workshop import Workshop
from support.drawing_reader import SVG, area_of, read, texts
from support.drawn_slabs import L, disc, made


def run(length: float, width: float = 600, label: str = "") -> Slab:
    """Make a plain piece of a worktop."""
    return made(Rectangle(L(length), L(width)), label=label)


def join(one: tuple[int, str], other: tuple[int, str], gap: float = 3) -> Join:
    """Make a join."""
    return Join(JoinEnd(*one), JoinEnd(*other), L(gap))


def placed(shapes: list[Shape], assembly: Assembly) -> list[Polygon]:
    """Return each piece's outline where it stands."""
    found = [s.of(shape.outline) for shape, s in zip(shapes, assembly.stands, strict=True)]
    return [polygon for polygon in found if isinstance(polygon, Polygon)]


def set_together(slabs: list[Slab], joins: list[Join], workshop: Workshop) -> list[Polygon]:
    """Assemble slabs, and return their outlines."""
    shapes = [shape_of(slab, workshop) for slab in slabs]
    return placed(shapes, assemble(shapes, joins))


# Which side of a second piece meets which of the first; where its middle then lies from the
# first's, across and away. Worked out by hand for 2 000 by 600 and 1 200 by 600, gap 3: the
# second's back stands in line with the first's end.
BY_HAND = [
    ("right", "left", (1603.0, 0.0)),
    ("left", "right", (-1603.0, 0.0)),
    ("front", "left", (700.0, -903.0)),
    ("front", "right", (-700.0, -903.0)),
    ("right", "front", (1303.0, -300.0)),
    ("left", "front", (-1303.0, -300.0)),
]


@pytest.mark.parametrize(("one", "other", "middle"), BY_HAND)
def test_two_pieces_stand_where_a_hand_would_put_them(
    one: str, other: str, middle: tuple[float, float], workshop: Workshop
) -> None:
    """The second piece is turned to the side it meets, its back to where the wall would be."""
    a, b = set_together([run(2000), run(1200)], [join((0, one), (1, other))], workshop)
    found = (b.centroid.x - a.centroid.x, b.centroid.y - a.centroid.y)
    assert found == pytest.approx(middle, abs=1e-3)


@pytest.mark.parametrize(("one", "other", "middle"), BY_HAND)
def test_joined_sides_are_a_gap_apart(
    one: str, other: str, middle: tuple[float, float], workshop: Workshop
) -> None:
    """Pieces neither touch nor stand farther apart than their join's gap."""
    del middle
    a, b = set_together([run(2000), run(1200)], [join((0, one), (1, other), 5)], workshop)
    assert a.distance(b) == pytest.approx(5, abs=1e-6)


def test_pieces_keep_their_size(workshop: Workshop) -> None:
    """Turning and moving change no area."""
    slabs = [run(2000), run(1200), run(900)]
    shapes = [shape_of(slab, workshop) for slab in slabs]
    joins = [join((0, "front"), (1, "left")), join((1, "right"), (2, "right"))]
    for shape, outline in zip(shapes, placed(shapes, assemble(shapes, joins)), strict=True):
        assert outline.area == pytest.approx(shape.outline.area, rel=1e-9)


def test_three_pieces_make_a_u(workshop: Workshop) -> None:
    """Two returns, one at each end, come forward side by side and never overlap."""
    joins = [join((0, "front"), (1, "right")), join((0, "front"), (2, "left"))]
    a, left, right = set_together([run(2400), run(900), run(900)], joins, workshop)
    assert left.centroid.x < a.centroid.x < right.centroid.x
    assert left.centroid.y == pytest.approx(right.centroid.y)
    assert left.intersection(right).area == 0
    assert left.bounds[0] == pytest.approx(a.bounds[0])
    assert right.bounds[2] == pytest.approx(a.bounds[2])


def test_unjoined_pieces_stand_apart(workshop: Workshop) -> None:
    """What nothing joins is set beside the rest, touching nothing."""
    shapes = [shape_of(slab, workshop) for slab in (run(2000), run(1200), run(800))]
    assembly = assemble(shapes, [join((0, "right"), (1, "left"))])
    a, b, c = placed(shapes, assembly)
    assert c.distance(a.union(b)) > 50
    assert not assembly.is_whole


def test_joins_that_contradict_each_other_are_reported(workshop: Workshop) -> None:
    """A second join of the same two pieces that cannot hold as well is not drawn but named."""
    slabs = [run(2000), run(1200)]
    shapes = [shape_of(slab, workshop) for slab in slabs]
    joins = [join((0, "right"), (1, "left")), join((0, "left"), (1, "front"))]
    assert assemble(shapes, joins).unshown == (2,)
    said = texts(read(draw_assembled(slabs, shapes, joins, speech_in("en"))))
    assert any(text.startswith("Join b cannot be shown") for text in said)


def test_a_join_of_a_slab_to_itself_is_reported(workshop: Workshop) -> None:
    """A join that names one slab twice is named as one that cannot be shown."""
    shapes = [shape_of(run(2000), workshop)]
    assert assemble(shapes, [join((0, "right"), (0, "left"))]).unshown == (1,)


@pytest.mark.parametrize(
    ("one", "other", "says"),
    [
        ("front", "left", "comes forward on the right of"),
        ("front", "right", "comes forward on the left of"),
        ("right", "left", "carries on to the right of"),
        ("left", "right", "carries on to the left of"),
        ("back", "left", "goes back on the left of"),
        ("back", "right", "goes back on the right of"),
    ],
)
def test_the_hand_is_stated(one: str, other: str, says: str, workshop: Workshop) -> None:
    """Each way to join a return is stated as one sees it who stands at the first piece's front."""
    slabs = [run(2000, label="Run"), run(1200, label="Return")]
    shapes = [shape_of(slab, workshop) for slab in slabs]
    root = read(draw_assembled(slabs, shapes, [join((0, one), (1, other))], speech_in("en")))
    sentence = f"“Return” {says} “Run”, as"
    assert sentence in (root[1].text or "")
    assert says in " ".join(texts(root))


@pytest.mark.parametrize("corner", CORNERS)
def test_an_ls_own_hand_is_where_its_concrete_is(corner: Corner, workshop: Workshop) -> None:
    """The arm is said to be on the side, and the way, where the notch is not."""
    slab = made(LShape(L(2000), L(1500), Notch(corner, L(1300), L(900))))
    said = describe(slab, shape_of(slab, workshop))
    found = re.search(r"its arm (comes forward|goes back) on the (left|right)", said)
    assert found is not None
    outline = shape_of(slab, workshop).outline
    x = 300 if found[2] == "left" else 1700
    y = 300 if found[1] == "comes forward" else 1200
    assert outline.contains(Polygon([(x, y), (x + 9, y), (x, y + 9)]))


def test_pieces_read_back_with_their_openings(workshop: Workshop) -> None:
    """Every piece and opening is drawn to scale, with its own area."""
    slabs = [made(Rectangle(L(2000), L(600)), disc(300, 700, 280)), run(1200)]
    shapes = [shape_of(slab, workshop) for slab in slabs]
    root = read(draw_assembled(slabs, shapes, [join((0, "front"), (1, "left"))], speech_in("en")))
    pieces = [n for n in root.iter(f"{SVG}path") if n.get("data-part") == "piece"]
    openings = [n for n in root.iter(f"{SVG}path") if n.get("data-part") == "opening"]
    assert [area_of(n).area for n in pieces] == pytest.approx([1.2e6, 0.72e6], rel=1e-4)
    assert [area_of(n).area for n in openings] == pytest.approx([math.pi * 150**2], rel=1e-3)
    (line,) = (n for n in root.iter(f"{SVG}path") if n.get("data-part") == "join")
    assert line.attrib["d"]


def test_what_the_order_does_not_say_is_stated(workshop: Workshop) -> None:
    """Where along a longer side a piece stands is our choice, and the sheet says so."""
    slabs = [run(2000), run(1200)]
    shapes = [shape_of(slab, workshop) for slab in slabs]
    svg = draw_assembled(slabs, shapes, [join((0, "front"), (1, "left"))], speech_in("en"))
    told = speech_in("en").say(Message("together-backs"))
    assert told in " ".join(texts(read(svg)))


def test_how_many_of_a_piece_is_stated(workshop: Workshop) -> None:
    """A piece that is wanted twice is drawn once, and its row says so."""
    slabs = [run(2000), dataclasses.replace(run(1200), quantity=2)]
    shapes = [shape_of(slab, workshop) for slab in slabs]
    said = texts(read(draw_assembled(slabs, shapes, [], speech_in("en"))))
    assert [("2 of these" in row) for row in said if " mm by " in row] == [False, True]


def test_walls_are_hatched_where_the_pieces_stand(workshop: Workshop) -> None:
    """A turned piece's wall turns with it."""
    slabs = [run(2000), made(Rectangle(L(1200), L(600)), edges={"back": Edge("wall")})]
    shapes = [shape_of(slab, workshop) for slab in slabs]
    root = read(draw_assembled(slabs, shapes, [join((0, "front"), (1, "left"))], speech_in("en")))
    (wall,) = (n for n in root.iter() if n.get("fill", "").endswith("-hatch)"))
    x0, y0, x1, y1 = area_of(wall).bounds
    assert y1 - y0 > 5 * (x1 - x0)


@pytest.mark.parametrize("label", ["</text><script>x</script>", "W" * 120, "\u202eknis\x00"])
def test_an_assembled_plan_is_safe_and_small(label: str, workshop: Workshop) -> None:
    """Whatever the labels, eight pieces stay under 60 kB and hold nothing but drawing."""
    slabs = [run(800 + 100 * i, label=f"{label}{i}"[-120:]) for i in range(8)]
    shapes = [shape_of(slab, workshop) for slab in slabs]
    joins = [join((i, "right"), (i + 1, "left")) for i in range(7)]
    svg = draw_assembled(slabs, shapes, joins, speech_in("en"))
    assert svg == draw_assembled(slabs, shapes, joins, speech_in("en"))
    assert len(svg.encode()) <= 60_000
    assert {n.tag.removeprefix(SVG) for n in read(svg).iter()} <= {
        "svg", "title", "desc", "defs", "pattern", "g", "path", "circle", "rect", "line", "text",
    }  # fmt: skip
