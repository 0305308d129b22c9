"""Says how the container is, for its health check: 0 and what readiness tells, or 1 and why not."""

import os
import sys
import urllib.error
import urllib.request
from pathlib import Path

MOST_S = 4


def health(file: str, address: str) -> tuple[int, str]:
    """Return the status to leave with, and one line that says why."""
    if file and not Path(file).is_file():
        return 1, f"There is no workshop file at {file}."
    try:
        with urllib.request.urlopen(address, timeout=MOST_S) as ready:  # noqa: S310  our own loopback address
            return 0, ready.read().decode().strip()
    except urllib.error.HTTPError as refused:
        return 1, f"Readiness answers {refused.code}."
    except OSError:
        return 1, "The service does not answer; its log says why."


if __name__ == "__main__":
    told = sys.argv[1] if len(sys.argv) > 1 else "http://127.0.0.1:8000/v1/health/ready"
    status, says = health(os.environ.get("LEDGERSTONE_WORKSHOP", ""), told)
    sys.stdout.write(f"{says}\n")
    sys.exit(status)
