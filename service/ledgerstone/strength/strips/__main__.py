"""``python -m ledgerstone.strength.strips FILE.csv``."""

import sys

from ledgerstone.cli.strips import run

if __name__ == "__main__":
    sys.exit(run(sys.argv[1:], sys.stdout, sys.stderr))
