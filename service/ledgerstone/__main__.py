"""``python -m ledgerstone quote ORDER``, ``… reply ORDER`` and ``… job-sheet ORDER``."""

import os
import sys

from ledgerstone.cli.orders import run

if __name__ == "__main__":
    sys.exit(run(sys.argv[1:], sys.stdout, sys.stderr, os.environ))
