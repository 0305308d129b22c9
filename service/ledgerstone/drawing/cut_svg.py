"""The lines to cut a mould by as SVG in millimetres, a group for each layer."""

from __future__ import annotations

from typing import Literal

from ledgerstone.drawing.arcs import Curved
from ledgerstone.drawing.cut_lines import LETTERS_MM, CutLayout
from ledgerstone.drawing.svg import NAMESPACE, element, number, render
from ledgerstone.quantities import INCH_MM

_HAIR_MM = 0.1
_PLACES = 4


def cut_svg(layout: CutLayout, title: str, unit: Literal["mm", "in"]) -> str:
    """Write a layout as a picture whose units are millimetres; up is away from the front.

    Parameters
    ----------
    unit
        What its size is told in.
    """
    mm_per_unit = INCH_MM if unit == "in" else 1
    (x0, y0), (x1, y1) = layout.low, layout.high
    wide, high = x1 - x0, y1 - y0
    groups = [
        element(
            "g",
            *(
                element("path", d=_path(line.course, y1), fill="none")
                for line in layout.lines
                if line.layer == layer
            ),
            id=layer,
            stroke="#000000",
            stroke_width=_HAIR_MM,
        )
        for layer in layout.layers
    ]
    words = [
        element("text", label.text, x=label.at[0], y=y1 - label.at[1], font_size=LETTERS_MM)
        for label in layout.labels
    ]
    return render(
        element(
            "svg",
            element("title", title),
            *groups,
            element("g", *words, id="NOTES", fill="#777777", font_family="sans-serif"),
            xmlns=NAMESPACE,
            width=f"{number(round(wide, 2) / mm_per_unit, _PLACES)}{unit}",
            height=f"{number(round(high, 2) / mm_per_unit, _PLACES)}{unit}",
            viewBox=f"{number(x0)} 0 {number(wide)} {number(high)}",
        )
    )


def _path(course: Curved, top: float) -> str:
    """Write a closed course, turned over so that it stands as it is drawn."""
    (x, y), stretches = course
    data = [f"M{_xy(x, top - y)}"]
    for (to_x, to_y), radius, is_left in stretches:
        end = _xy(to_x, top - to_y)
        if radius:
            r = number(radius, _PLACES)
            data.append(f"A{r} {r} 0 0 {0 if is_left else 1} {end}")
        else:
            data.append(f"L{end}")
    return "".join(data) + "Z"


def _xy(x: float, y: float) -> str:
    return f"{number(x, _PLACES)} {number(y, _PLACES)}"
