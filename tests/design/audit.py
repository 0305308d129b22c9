"""Whether anything in the locks has a known advisory: ``python tests/design/audit.py``.

Asks OSV (osv.dev, the open database of advisories) for the pinned names and versions and nothing
else. Ends with 0 if none is known, 1 where one is, and 75 where OSV cannot be reached: then
only `advisories.toml`, which the tests hold the locks to, speaks.
"""

from __future__ import annotations

import json
import re
import sys
import urllib.error
import urllib.request
from pathlib import Path
from typing import Any, Final

ROOT: Final = Path(__file__).resolve().parents[2]
OSV: Final = "https://api.osv.dev/v1/querybatch"
NOT_REACHED: Final = 75  # EX_TEMPFAIL of sysexits.h


def pinned(lock: Path) -> dict[str, str]:
    """Names and versions in a lock."""
    return dict(re.findall(r"(?m)^([a-z0-9.-]+)==([^ ;\\]+)", lock.read_text(encoding="utf-8")))


def known(packages: dict[str, str], address: str = OSV) -> dict[str, list[str]]:
    """The advisories known of each package that has any, by its name.

    Raises
    ------
    OSError
        The database was not reached.
    """
    queries = [
        {"package": {"ecosystem": "PyPI", "name": name}, "version": version}
        for name, version in packages.items()
    ]
    request = urllib.request.Request(  # noqa: S310 - a fixed address, or a test's own loopback
        address, json.dumps({"queries": queries}).encode(), {"Content-Type": "application/json"}
    )
    with urllib.request.urlopen(request, timeout=20) as answer:  # noqa: S310 - as above
        results: list[dict[str, Any]] = json.load(answer)["results"]
    return {
        name: [vulnerability["id"] for vulnerability in result["vulns"]]
        for name, result in zip(packages, results, strict=True)
        if result.get("vulns")
    }


def main(address: str = OSV) -> int:
    """Ask, say, and return how it went."""
    packages = pinned(ROOT / "docker/requirements-dev.lock")
    try:
        found = known(packages, address)
    except OSError as fault:
        print(f"Not asked: OSV cannot be reached from here ({fault}).")
        return NOT_REACHED
    for name, ids in found.items():
        print(f"{name} {packages[name]}: {', '.join(ids)}")
    print(f"{len(packages)} libraries, {len(found)} of them with a known advisory.")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
