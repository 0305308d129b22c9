"""``python -m ledgerstone.workshop check FILE`` and ``… init FILE``."""

import sys

from ledgerstone.workshop.command import run

if __name__ == "__main__":
    sys.exit(run(sys.argv[1:], sys.stdout, sys.stderr))
