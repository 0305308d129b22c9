"""The small safe SVG, its lettering, its arcs and the places of its labels."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import Polygon as Area

from ledgerstone.drawing.arcs import curved_path
from ledgerstone.drawing.lettering import fitted, lettered, text_width, wrapped
from ledgerstone.drawing.placing import Box, Places, rings, spread
from ledgerstone.drawing.svg import clean, document, element, number, path_of, render
from ledgerstone.outline import circle, rounded
from support.drawing_reader import read, rings_of

ANY_TEXT = st.text(st.characters(), max_size=120)


@pytest.mark.parametrize("tag", ["script", "foreignObject", "a", "use", "style", "iframe"])
def test_unknown_elements_are_refused(tag: str) -> None:
    """Only elements that draw can be made."""
    with pytest.raises(ValueError, match="not drawn here"):
        element(tag)


@pytest.mark.parametrize(
    "attributes",
    [
        {"style": "fill:red"},
        {"onload": "x()"},
        {"onClick": "x()"},
        {"href": "https://example.com/x.png"},
        {"href": "data:image/svg+xml;base64,AAAA"},
        {"xlink:href": "#a"},
        {"fill": "url(https://example.com/#a)"},
        {"filter": "x url(//example.com/a)"},
    ],
)
def test_ways_out_of_the_document_are_refused(attributes: dict[str, str]) -> None:
    """No attribute carries a style, a script or a reference to anything outside."""
    with pytest.raises(ValueError, match=r"here|shown|used"):
        element("path", **attributes)


def test_words_in_attributes_are_written_with_hyphens() -> None:
    """``stroke_width`` is written ``stroke-width``, and what is None is left out."""
    made = element("path", stroke_width=1.5, fill=None, viewBox="0 0 1 1")
    assert render(made) == '<path stroke-width="1.5" viewBox="0 0 1 1"/>'


@pytest.mark.parametrize(
    ("value", "written"),
    [
        (1.0, "1"),
        (0.004, "0"),
        (-0.004, "0"),
        (12345.678, "12345.68"),
        (100.0, "100"),
        (-2.5, "-2.5"),
    ],
)
def test_numbers_are_written_to_a_hundredth(value: float, written: str) -> None:
    """A number has two decimals at most and no trailing noughts."""
    assert number(value) == written


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf])
def test_a_number_that_is_not_finite_is_refused(value: float) -> None:
    """No drawing holds NaN or Infinity."""
    with pytest.raises(ValueError, match="finite"):
        number(value)


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("a\x00b\x1bc\x7f", "abc"),
        ("one\ntwo\tthree  four", "one two three four"),
        ("\u202eevil\u202c \u2066x\u2069\u200f", "evil x"),
        ("lone \ud800 half", "lone half"),
        ("non\ufffe\uffffcharacter", "noncharacter"),
        ("z\u0301\u0302\u0303\u0304\u0305", "z\u0301\u0302"),
        ("שלום", "שלום"),
        ("⅝ × Ø", "⅝ × Ø"),
    ],
)
def test_what_no_drawing_can_show_is_left_out(text: str, shown: str) -> None:
    """Controls, direction marks, lone halves and piles of marks go; every script stays."""
    assert clean(text) == shown


@given(ANY_TEXT)
def test_any_text_reads_back_as_it_was_cleaned(text: str) -> None:
    """Whatever a customer types, the document parses and says the cleaned text, no more."""
    root = read(render(document((10, 10), "p", title=text, says=text, children=[])))
    assert "".join(root[0].itertext()) == clean(text)
    assert [child.tag.rpartition("}")[2] for child in root] == ["title", "desc"]


@given(ANY_TEXT)
def test_any_text_reads_back_from_an_attribute(text: str) -> None:
    """A text in an attribute cannot end it."""
    root = read(render(element("g", data_label=text)))
    assert list(root.attrib) == ["data-label"]
    assert root.attrib["data-label"] == (
        text if text.isascii() and text.isprintable() else clean(text)
    )


@given(ANY_TEXT, st.floats(5, 400))
def test_a_fitted_text_is_no_wider_than_its_room(text: str, room: float) -> None:
    """A text is shortened until it fits."""
    assert text_width(fitted(text, room, 15), 15) <= room


@given(ANY_TEXT, st.floats(40, 400), st.integers(1, 4))
def test_wrapped_lines_fit_and_are_no_more_than_asked(text: str, room: float, lines: int) -> None:
    """A text is broken at spaces into lines that fit."""
    rows = wrapped(text, room, 15, lines)
    assert len(rows) <= lines
    assert all(text_width(row, 15) <= room for row in rows)


def test_a_number_and_its_unit_stay_together() -> None:
    """A line does not break between a figure and its unit."""
    rows = wrapped("bevel bevel 5 mm", text_width("bevel bevel 5", 15) + 1, 15, 3)
    assert [clean(row) for row in rows] == ["bevel bevel", "5 mm"]


def test_letters_of_unknown_width_are_held_to_the_width_kept_for_them() -> None:
    """A text in another script is squeezed into its place; a Latin one is left alone."""
    assert "textLength" in render(lettered("漢字", (0, 0), 15))
    assert "textLength" not in render(lettered("basin 5 × 6 °", (0, 0), 15))


@pytest.mark.parametrize("radius", [180.0, 144.4625, 144.4666])
def test_a_circle_of_chords_is_written_as_four_arcs(radius: float) -> None:
    """A disc reads back with the area of the true circle, however its radius is rounded."""
    path = curved_path(circle((50.0, 40.0), radius).exterior.coords[:-1])
    (ring,) = rings_of(path)
    assert path.count("A") == 4
    assert Area(ring).area == pytest.approx(math.pi * radius**2, rel=1e-4)
    assert (Area(ring).centroid.x, Area(ring).centroid.y) == pytest.approx((50.0, 40.0), abs=0.01)


@pytest.mark.parametrize("first", [0, 3, 9, 20])
def test_rounded_corners_are_written_as_arcs(first: int) -> None:
    """A rectangle rounded by 30 mm reads back with its exact area, wherever its course begins."""
    box = ((0.0, 0.0), (400.0, 0.0), (400.0, 300.0), (0.0, 300.0))
    polygon, _, exact = rounded(box, (30.0,) * 4, ("",) * 4)
    points = list(polygon.exterior.coords[:-1])
    path = curved_path(points[first:] + points[:first])
    (ring,) = rings_of(path)
    assert path.count("A") in {4, 5}
    assert Area(ring).area == pytest.approx(exact, rel=1e-5)


@given(st.lists(st.tuples(st.floats(0, 500), st.floats(5, 60)), min_size=1, max_size=25))
def test_spread_labels_keep_their_order_and_their_room(labels: list[tuple[float, float]]) -> None:
    """Labels along a line stand in order, each with its own room, within the line if they can."""
    wished = sorted(wish for wish, _ in labels)
    widths = [width for _, width in labels]
    places = spread(wished, widths, 0.0, 500.0)
    for i in range(1, len(places)):
        assert places[i] - places[i - 1] >= (widths[i] + widths[i - 1]) / 2 - 1e-6
    assert places[0] - widths[0] / 2 >= -1e-6
    if sum(widths) <= 500:
        assert places[-1] + widths[-1] / 2 <= 500 + 1e-6


def test_labels_with_room_stand_where_they_were_requested() -> None:
    """Where nothing is near, a label is not moved."""
    assert spread([50.0, 200.0, 300.0], [40.0, 40.0, 40.0], 0.0, 500.0) == [50.0, 200.0, 300.0]


@given(st.lists(st.tuples(st.floats(0, 200), st.floats(0, 200)), min_size=1, max_size=40))
def test_placed_labels_never_overlap(anchors: list[tuple[float, float]]) -> None:
    """However crowded the anchors, two labels that found a place stand apart."""
    places = Places(Box(0, 0, 200, 200))
    found = [places.place(rings(anchor, (10, 30, 60)), 30, 16) for anchor in anchors]
    taken = [Box.round(at, 30, 16) for at in found if at is not None]
    for i, box in enumerate(taken):
        assert places.within.holds(box)
        assert not any(box.overlaps(other) for other in taken[:i])


def test_a_clear_place_is_taken_before_one_on_a_line() -> None:
    """A label keeps off lines while there is room elsewhere, and stays away if told to."""
    line = Box(0, 40, 100, 60)
    places = Places(Box(0, 0, 100, 100))
    places.avoid([line])
    assert places.place([(50, 50), (50, 20)], 20, 10) == (50, 20)
    assert places.place([(50, 50)], 20, 10, clear=True) is None
    assert places.place([(50, 50)], 20, 10) == (50, 50)


def test_a_path_is_closed_by_default() -> None:
    """Path data goes through its points and back to the first."""
    assert path_of([(0, 0), (1.234, 5)]) == "M0 0L1.23 5Z"
    assert path_of([(0, 0), (1.26, 5)], closed=False, places=1) == "M0 0L1.3 5"
