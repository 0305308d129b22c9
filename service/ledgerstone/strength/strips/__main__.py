"""Fit broken strips: ``python -m ledgerstone.strength.strips FILE.csv``."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from ledgerstone.strength.strips import report


def main(arguments: list[str] | None = None) -> int:
    """Print what the strips show; 2 where the table cannot be read."""
    parser = argparse.ArgumentParser(prog="strips", description="Fit broken strips.")
    parser.add_argument("file", type=Path, help="CSV table of strips")
    chosen = parser.parse_args(arguments)
    try:
        text = chosen.file.read_text(encoding="utf-8-sig")
        print(report(text.splitlines()), end="")
    except (OSError, ValueError) as fault:
        print(fault, file=sys.stderr)
        return 2
    return 0


if __name__ == "__main__":
    sys.exit(main())
