"""``python -m ledgerstone quote ORDER``, ``… reply ORDER`` and ``… job-sheet ORDER``."""

import sys

from ledgerstone.cli.orders import main

if __name__ == "__main__":
    sys.exit(main())
