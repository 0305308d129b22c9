"""``python -m ledgerstone.workshop check FILE``, ``… init FILE`` and ``… try FILE``."""

import importlib
import sys

from ledgerstone.workshop.command import run

if __name__ == "__main__":
    if sys.argv[1:2] == ["try"]:
        # A back-test asks the whole service, which stands above the profile: only a command line
        # reaches up to it, and no module that is imported does.
        past_jobs = importlib.import_module("ledgerstone.api.past_jobs")
        sys.exit(past_jobs.run(sys.argv[2:], sys.stdout, sys.stderr))
    sys.exit(run(sys.argv[1:], sys.stdout, sys.stderr))
