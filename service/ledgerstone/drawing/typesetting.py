"""Typesetting of a PDF from one of our templates; the only module that calls the typesetter.

It is called in an interpreter of its own. It keeps each page that it has ever set, tens of
megabytes of them, and starts a thread, of which a copy of a process made later would have none.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Final

from ledgerstone.child_process import run_apart
from ledgerstone.drawing.raster import FONT_FOLDER

PRINT_S: Final = 6  # of processor time; the longest job sheet takes half of one
PRINT_WAIT_S: Final = 12.0  # a worker has 20 s for a request
# One thread, as many as the machine has cores or not: so many more would pass the limit of a
# container's processes.
_SCRIPT: Final = """
import os
os.environ["RAYON_NUM_THREADS"] = "1"
import json, sys, typst
asked = json.load(sys.stdin.buffer)
sys.stdout.buffer.write(typst.compile(**asked, ignore_system_fonts=True, format="pdf"))
"""


def typeset(template: Path, inputs: dict[str, str]) -> bytes:
    """Print a template with our fonts alone, so that it is the same bytes on every machine.

    Raises
    ------
    ChildFailed, OSError
    """
    asked = {"input": str(template), "font_paths": [str(FONT_FOLDER)], "sys_inputs": inputs}
    return run_apart(_SCRIPT, json.dumps(asked).encode(), PRINT_S, PRINT_WAIT_S)
