"""Record what the service answers to many orders, and list where two recordings differ.

``python tests/recorder/record.py draw ORDERS`` writes 600 orders to a file.
``python tests/recorder/record.py record ORDERS RECORDING [--tree TREE]`` answers them.
``python tests/recorder/record.py compare BEFORE AFTER`` lists what differs, by member.

A recording pins the day, the keys and the version, which links carry. ``--tree`` records another
checkout, so that one set of orders is answered before and after a change. Files stand outside the
repository: an answer recorded earlier is no proof that an answer is right.
"""

from __future__ import annotations

import argparse
import gzip
import json
import os
import sys
import time
from pathlib import Path
from typing import Any

TESTS = Path(__file__).resolve().parents[1]
if str(TESTS) not in sys.path:
    sys.path.append(str(TESTS))


def _read(path: Path) -> list[dict[str, Any]]:
    with gzip.open(path, "rt", encoding="utf-8") as file:
        return [json.loads(line) for line in file]


def _write(path: Path, rows: Any) -> None:  # noqa: ANN401  an iterable of JSON objects
    with gzip.open(path, "wt", encoding="utf-8", compresslevel=4) as file:
        for row in rows:
            file.write(json.dumps(row, ensure_ascii=False) + "\n")


def draw(asked: argparse.Namespace) -> int:
    """Write the orders."""
    sys.path.insert(0, str(TESTS.parent / "service"))
    from recorder.orders import cases  # noqa: PLC0415  needs the service; the others do not

    found = cases()
    _write(asked.orders, found)
    print(f"{len(found)} cases")
    return 0


def record(asked: argparse.Namespace) -> int:
    """Answer the orders with the service of one checkout."""
    for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
        os.environ[name] = "1"  # before NumPy is first imported
    sys.path.insert(0, str(asked.tree / "service"))
    import ledgerstone  # noqa: PLC0415  that checkout's

    if not Path(ledgerstone.__file__).is_relative_to(asked.tree.resolve()):
        sys.exit(f"{ledgerstone.__file__} was imported before, and is not of {asked.tree}")
    ledgerstone.__version__ = "recorded"  # before the modules that copy it: links carry it
    from recorder.answering import Recorder  # noqa: PLC0415  imports that checkout's service

    began_s = time.process_time()
    found = _read(asked.orders)
    _write(asked.recording, Recorder(papers=asked.papers).answers(found))
    print(f"{len(found)} cases in {time.process_time() - began_s:.0f} s of processor time")
    return 0


def compare(asked: argparse.Namespace) -> int:
    """List what differs between two recordings; 1 if anything does."""
    sys.path.insert(0, str(TESTS.parent / "service"))
    from recorder.comparing import differences, report  # noqa: PLC0415  needs the service

    before, after = _read(asked.before), _read(asked.after)
    found = differences(before, after)
    print(report(found, len(before)))
    return 1 if found else 0


def main() -> int:
    """Carry out one command line."""
    parser = argparse.ArgumentParser(description="Record answers, and compare recordings.")
    commands = parser.add_subparsers(required=True)
    command = commands.add_parser("draw", help="write the orders to a file")
    command.add_argument("orders", type=Path)
    command.set_defaults(run=draw)
    command = commands.add_parser("record", help="answer the orders")
    command.add_argument("orders", type=Path)
    command.add_argument("recording", type=Path)
    command.add_argument("--tree", type=Path, default=TESTS.parent)
    command.add_argument("--papers", type=int, default=30)
    command.set_defaults(run=record)
    command = commands.add_parser("compare", help="list what differs")
    command.add_argument("before", type=Path)
    command.add_argument("after", type=Path)
    command.set_defaults(run=compare)
    asked = parser.parse_args()
    code: int = asked.run(asked)
    return code


if __name__ == "__main__":
    sys.exit(main())
