"""The command ``python -m ledgerstone.strength.strips FILE.csv``: fits broken test strips."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path
from typing import TextIO

from ledgerstone.strength.strips import report


def run(arguments: Sequence[str], out: TextIO, err: TextIO) -> int:
    """Write the fitted strength and return the exit status: 2 if the table cannot be read."""
    parser = argparse.ArgumentParser(prog="strips", description="Fit broken strips.")
    parser.add_argument("file", type=Path, help="CSV table of strips")
    chosen = parser.parse_args(arguments)
    try:
        text = chosen.file.read_text(encoding="utf-8-sig")
        out.write(report(text.splitlines()))
    except (OSError, ValueError) as fault:
        err.write(f"{fault}\n")
        return 2
    return 0
