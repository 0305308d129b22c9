"""The maker's command ``python -m ledgerstone.strength.strips FILE.csv``: broken strips."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path
from typing import TextIO

from ledgerstone.strength.strips import report


def run(arguments: Sequence[str], out: TextIO, err: TextIO) -> int:
    """Write what the strips show; 2 where the table cannot be read."""
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
