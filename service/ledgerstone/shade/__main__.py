"""``python -m ledgerstone.shade fit FILE.csv``."""

import sys

from ledgerstone.cli.quiet import quietly
from ledgerstone.cli.shades import run

if __name__ == "__main__":
    sys.exit(quietly(lambda: run(sys.argv[1:], sys.stdout, sys.stderr)))
