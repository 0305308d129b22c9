"""The one call of the typesetter: a template of ours, filled in, as a PDF."""

from __future__ import annotations

from pathlib import Path

import typst

from ledgerstone.drawing.raster import FONT_FOLDER


def typeset(template: Path, inputs: dict[str, str]) -> bytes:
    """Print a template with our fonts alone, so that it is the same bytes on every machine."""
    return bytes(
        typst.compile(
            str(template),
            font_paths=[str(FONT_FOLDER)],
            ignore_system_fonts=True,
            format="pdf",
            sys_inputs=inputs,
        )
    )
