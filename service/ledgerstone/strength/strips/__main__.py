"""``python -m ledgerstone.strength.strips FILE.csv``."""

import sys

from ledgerstone.cli.quiet import quietly
from ledgerstone.cli.strips import run

if __name__ == "__main__":
    sys.exit(quietly(lambda: run(sys.argv[1:], sys.stdout, sys.stderr)))
