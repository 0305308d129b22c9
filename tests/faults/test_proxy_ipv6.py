"""Callers of IPv6 before the shipped proxy."""

import json
import os
import subprocess
import sys
from pathlib import Path

from support.serving import ROOT


def test_callers_of_ipv6_are_distinguished_by_their_addresses(tmp_path: Path) -> None:
    """Over sockets of IPv6, in a network made for it: a /64 is one caller, and the next another."""
    run = subprocess.run(
        [
            *("unshare", "--map-root-user", "--net"),
            *(sys.executable, "-m", "faults.ipv6_callers", tmp_path),
        ],
        env={**os.environ, "PYTHONPATH": f"{ROOT / 'service'}:{ROOT / 'tests'}"},
        stdout=subprocess.PIPE,
        check=True,
    )
    found = json.loads(run.stdout)
    assert set(found["household"]) == {200, 429}
    assert found["household"][-1] == 429
    assert found["neighbour"] == 200
