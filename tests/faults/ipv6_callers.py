"""Callers of several addresses of IPv6 before the shipped proxy, in a network of their own.

``unshare --map-root-user --net python -m faults.ipv6_callers FOLDER`` prints, as JSON, the statuses
that one household's addresses are given in turn, and the one that the next /64 gets after them.
"""

from __future__ import annotations

import json
import socket
import subprocess
import sys
from pathlib import Path
from typing import Final

from faults.proxying import UNSIGNED, names, proxied, read_all, upstream
from support.ports import free_port

# Addresses for documentation (RFC 3849).
HOUSEHOLD: Final = [f"2001:db8:1:2::{n:x}" for n in range(1, 9)]
NEIGHBOUR: Final = "2001:db8:1:3::1"
ASKED: Final = 70
_REQUEST: Final = b"GET /v1/choices HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n"


def main(folder: Path) -> None:
    """Ask as a household until it is turned away, then once as its neighbour."""
    subprocess.run(["ip", "link", "set", "lo", "up"], check=True)
    for address in (*HOUSEHOLD, NEIGHBOUR):
        added = ["ip", "-6", "addr", "add", f"{address}/128", "dev", "lo", "nodad"]
        subprocess.run(added, check=True)
    port = free_port()
    slower = {"rate=10r/s": "rate=1r/s"}
    with (
        names("127.0.0.1") as known,
        upstream("127.0.0.1", port),
        proxied(folder, port, known, **slower) as running,
    ):
        asked = (HOUSEHOLD[n % len(HOUSEHOLD)] for n in range(ASKED))
        household = [_status(running.port, address) for address in asked]
        found = {"household": household, "neighbour": _status(running.port, NEIGHBOUR)}
    json.dump(found, sys.stdout)


def _status(port: int, source: str) -> int:
    plain = socket.create_connection(("::1", port), timeout=30, source_address=(source, 0))
    with UNSIGNED.wrap_socket(plain) as caller:
        caller.sendall(_REQUEST)
        return int(read_all(caller).split()[1])


if __name__ == "__main__":
    main(Path(sys.argv[1]))
