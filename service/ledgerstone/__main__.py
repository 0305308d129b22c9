"""``python -m ledgerstone quote ORDER``, ``… reply``, ``… job-sheet``; ``… enquiry MAIL``."""

import sys

from ledgerstone.cli.orders import main

if __name__ == "__main__":
    sys.exit(main())
