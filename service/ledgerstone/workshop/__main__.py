"""``python -m ledgerstone.workshop check FILE``, ``… init FILE`` and ``… try FILE``."""

import sys

from ledgerstone.cli.profiles import run

if __name__ == "__main__":
    sys.exit(run(sys.argv[1:], sys.stdout, sys.stderr))
