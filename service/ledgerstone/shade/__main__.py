"""``python -m ledgerstone.shade fit FILE.csv``."""

import sys

from ledgerstone.cli.shades import run

if __name__ == "__main__":
    sys.exit(run(sys.argv[1:], sys.stdout, sys.stderr))
