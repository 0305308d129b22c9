"""Typesetting of a PDF from one of our templates; the only module that calls the typesetter.

It is called in a child process alone. It keeps each page that it has ever set, tens of megabytes
of them, and starts threads, of which a copy of a process made later would have none.
"""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import Final

import typst

from ledgerstone.child_process import do_apart
from ledgerstone.drawing.raster import FONT_FOLDER

PRINT_S: Final = 6  # of processor time; the longest job sheet takes half of one
WAIT_S: Final = 12.0  # a worker has 20 s for a request


def typeset(template: Path, inputs: dict[str, str]) -> bytes:
    """Print a template with our fonts alone, so that it is the same bytes on every machine.

    Raises
    ------
    ChildFailed, OSError
    """
    return do_apart(partial(_typeset, template, inputs), PRINT_S, WAIT_S)


def _typeset(template: Path, inputs: dict[str, str]) -> bytes:
    return bytes(
        typst.compile(
            str(template),
            font_paths=[str(FONT_FOLDER)],
            ignore_system_fonts=True,
            format="pdf",
            sys_inputs=inputs,
        )
    )
