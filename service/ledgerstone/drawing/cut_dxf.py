"""The lines to cut a mould by as DXF: closed polylines with true arcs on named layers."""

from __future__ import annotations

import io
import math
from collections.abc import Iterator
from typing import Final

from ledgerstone.drawing.arcs import Curved
from ledgerstone.drawing.cut_lines import LETTERS_MM, CutLayout

NOTES: Final = "NOTES"
_INCHES, _MILLIMETRES = 1, 4  # DXF reference, header variable $INSUNITS
_COLOURS: Final = (1, 5, 3, 6, 30, 4)


def cut_dxf(layout: CutLayout, mm_per_unit: float) -> str:
    """Write a layout as a DXF text of release 2010; the same layout gives the same text.

    Parameters
    ----------
    mm_per_unit
        Of its unit, in mm: 1, or an inch's 25.4.
    """
    # ezdxf takes 20 MB of memory: only a worker that writes a file loads it
    from ezdxf import filemanagement  # noqa: PLC0415
    from ezdxf._options import options  # noqa: PLC0415

    options.write_fixed_meta_data_for_testing = True  # no date and no random identifier in the text
    document = filemanagement.new("R2010", units=_MILLIMETRES if mm_per_unit == 1 else _INCHES)
    for i, layer in enumerate(layout.layers):
        document.layers.add(layer, color=_COLOURS[i % len(_COLOURS)])
    document.layers.add(NOTES, color=8)
    space = document.modelspace()
    for line in layout.lines:
        space.add_lwpolyline(
            list(_vertices(line.course, mm_per_unit)),
            format="xyb",
            close=True,
            dxfattribs={"layer": line.layer},
        )
    for label in layout.labels:
        text = space.add_text(
            label.text, height=LETTERS_MM / mm_per_unit, dxfattribs={"layer": NOTES}
        )
        text.set_placement((label.at[0] / mm_per_unit, label.at[1] / mm_per_unit))
    written = io.StringIO()
    document.write(written)
    return written.getvalue()


def _vertices(course: Curved, mm_per_unit: float) -> Iterator[tuple[float, float, float]]:
    """Yield each vertex with the bulge to the next: the tangent of a quarter of the arc's angle."""
    (x, y), stretches = course
    for (to_x, to_y), radius, is_left in stretches:
        bulge = 0.0
        if radius:
            half_chord = math.dist((x, y), (to_x, to_y)) / 2
            bulge = math.tan(math.asin(min(1.0, half_chord / radius)) / 2)
        yield x / mm_per_unit, y / mm_per_unit, bulge if is_left else -bulge
        x, y = to_x, to_y
