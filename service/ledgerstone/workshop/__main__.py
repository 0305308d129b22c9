"""``python -m ledgerstone.workshop check FILE``, ``… init FILE`` and ``… try FILE``."""

import sys

from ledgerstone.cli.profiles import run
from ledgerstone.cli.quiet import quietly

if __name__ == "__main__":
    sys.exit(quietly(lambda: run(sys.argv[1:], sys.stdout, sys.stderr)))
