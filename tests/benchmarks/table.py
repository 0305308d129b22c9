"""The bars of the design in one table: what was measured, the bar, and the ratio to a baseline.

Run ``tests/run --benchmark`` (a few minutes). Each baseline is measured in the same run
on the same machine: a frozen mesh and factor, scikit-fem's Morley plate, the standard
library's JSON, and a bare Flask echo under the same gunicorn with the same settings. Times are
processor time of one process on one thread where it is ours alone, so that a busy machine changes
them little; through a socket they are wall time, and the load average is printed beside them.
"""

from __future__ import annotations

import os

for _name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ[_name] = "1"  # before NumPy is first imported

import contextlib
import copy
import gzip
import io
import json
import platform
import re
import sys
import time
from collections.abc import Callable, Iterator, Sequence
from datetime import UTC, date, datetime
from functools import partial
from pathlib import Path
from typing import Any

TESTS = Path(__file__).resolve().parents[1]
sys.path[:0] = [str(TESTS), str(TESTS.parent / "service")]

from benchmarks import (
    drawing_benchmark,
    plate_benchmark,
    remedies_benchmark,
    strength_benchmark,
)
from ledgerstone.api import Settings, create_app
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS
from support.drawn_slabs import GALLERY
from support.reference import reference_ms
from support.serving import Callers, ask, served

TableRow = tuple[str, str, str, str]
QUOTES, AGAIN, SECONDS = 40, 20, 8.0
REMEDY_ORDERS = 100
BARS = {"usual": "95 %", "wrong": "95 %", "any": "75 %"}
ECHO = "benchmarks.echo:app"


def share(ordered: Sequence[float], part: float) -> float:
    """The value that this part of a sorted list does not pass."""
    return ordered[int(part * (len(ordered) - 1))]


def processor_ms(work: Callable[[], object]) -> float:
    """Processor time of some work, ms."""
    began_s = time.process_time()
    work()
    return 1e3 * (time.process_time() - began_s)


def printed(work: Callable[[], object]) -> str:
    """What some work prints."""
    with contextlib.redirect_stdout(io.StringIO()) as said:
        work()
    return said.getvalue()


def strength_rows() -> Iterator[TableRow]:
    """All strength cases of one slab with two cut-outs, against the frozen mesh and factor."""
    slabs = strength_benchmark.TWO_CUTOUTS
    found: list[tuple[list[float], float]] = []

    def measure() -> None:
        found.extend(strength_benchmark.measured(n, document) for n, document in slabs.items())

    printed(measure)
    times = sorted(ms for whole, _ in found for ms in whole)
    ratio = max(ratio for _, ratio in found)
    said = f"p50 {share(times, 0.5):.0f} ms, p95 {share(times, 0.95):.0f} ms"
    yield (
        "strength of a slab with two cut-outs",
        said,
        "2.5 × the reference; p50 60 ms, p95 120 ms",
        f"{ratio:.1f} × the mesh and factor of 28 November 2026",
    )


def quote_rows() -> Iterator[TableRow]:
    """A quote never seen before with both drawings, and one whose geometry is known."""
    settings = Settings(
        maker_key=MAKER_KEY, signing_keys=SIGNING_KEYS, today=lambda _: date(2026, 11, 25)
    )
    client = create_app(settings).test_client()

    def whole(order: dict[str, Any]) -> None:
        drawings = client.post("/v1/quotes", json=order).get_json()["drawings"]
        for link in (drawings["plan"], drawings["view"]):
            client.get(link[link.index("/v1/") :])

    whole(EXAMPLE_ORDER)
    answer = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    json_ms = processor_ms(lambda: [json.loads(json.dumps(answer)) for _ in range(100)]) / 100
    new = sorted(processor_ms(partial(whole, _other(n))) for n in range(QUOTES))
    again = sorted(processor_ms(partial(whole, _dearer(n))) for n in range(AGAIN))
    baseline = f"× the standard library's JSON of it ({json_ms:.2f} ms)"
    yield (
        "a new quote with its drawings",
        f"p50 {share(new, 0.5):.0f} ms, p95 {share(new, 0.95):.0f} ms",
        "4 × the reference; p50 60 ms, p95 120 ms",
        f"{share(new, 0.5) / reference_ms('a basin and a tap'):.1f} × that mesh and factor",
    )
    yield (
        "the same, geometry unchanged",
        f"p50 {share(again, 0.5):.0f} ms",
        "60 ms",
        f"{share(again, 0.5) / json_ms:.0f} {baseline}",
    )


def _other(number: int) -> dict[str, Any]:
    order: dict[str, Any] = copy.deepcopy(EXAMPLE_ORDER)
    order["slabs"][0]["outline"]["length"] = f"{1451 + number} mm"
    return order


def _dearer(number: int) -> dict[str, Any]:
    order: dict[str, Any] = copy.deepcopy(EXAMPLE_ORDER)
    order["slabs"][0]["quantity"] = 1 + number % 4
    order["slabs"][0]["label"] = f"bench {number}"
    return order


def remedy_rows() -> Iterator[TableRow]:
    """How often a send-back carries a fix, and how soon: of usual orders, and of any.

    Orders that are got wrong count where an independent search finds room; of any order that the
    contract understands, an opening larger than its slab among them, some can have no ``fix_all``.
    """
    for kind in remedies_benchmark.KINDS:
        made = remedies_benchmark.tally(kind, REMEDY_ORDERS, 5)
        fixed = f"{made.share('fix_all'):.1f} %"
        bar, left = BARS[kind], made.sent_back - made.outcome.total()
        said = f"{left} more left out for no room" if left else ""
        name = f"{made.outcome.total()} {kind} orders sent back: with a fix_all that keeps the rule"
        yield name, fixed, bar, said
        either = made.share("fix_all", "liberty", "nearest", "nearest and reason")
        yield "… or a nearest_makeable", f"{either:.1f} %", "99.5 %", ""
        ms, ratios = sorted(made.search_ms), made.ratios
        times = f"p50 {share(ms, 0.5):.0f} ms, p95 {share(ms, 0.95):.0f} ms"
        checks = f"p50 {share(ratios, 0.5):.1f}, p95 {share(ratios, 0.95):.1f} full checks"
        yield "… in", times, "p50 3, p95 9 full checks", checks


def plate_rows() -> Iterator[TableRow]:
    """The plate against scikit-fem's Morley plate at the same or a better error."""
    for name, (outline, strip) in plate_benchmark.SLABS.items():
        said = printed(partial(plate_benchmark.compare, name, outline, strip))
        ours, *_, last = said.splitlines()
        [ms] = re.findall(r"ours (\d+) ms", ours)
        [ratio] = re.findall(r"ratio ([\d.]+)", last)
        good = last.rpartition("as good as ours in: ")[2]
        against = f"Morley takes {ratio} ×, as good in {good}"
        yield f"plate: {name}", f"{ms} ms", "5 × at the same error", against


def drawing_rows() -> Iterator[TableRow]:
    """The plan and the view together, over the awkward gallery, as their own benchmark has them."""
    said = printed(
        lambda: [drawing_benchmark.drawn_as_svg(name, drawn) for name, drawn in GALLERY.items()]
    )
    found = re.findall(r"both +([\d.]+) ms, ([\d.]+) of the bar", said)
    both, shares = (sorted(float(pair[n]) for pair in found) for n in (0, 1))
    yield (
        "plan and view",
        f"p50 {share(both, 0.5):.1f} ms, most {both[-1]:.1f} ms",
        f"{both[-1] / shares[-1]:.0f} ms",
        f"{shares[-1]:.2f} of the bar at most",
    )


def server_rows() -> Iterator[TableRow]:
    """The running server: how soon it is ready, what it holds, what it answers beside an echo."""
    began_s = time.monotonic()
    with served(RATE="0", forked=False) as service:
        ready_s = time.monotonic() - began_s
        quotes = _rate(service.port)
        memory = service.rss_mb()
    with served(RATE="0", app=ECHO, forked=False) as echo:
        echoes = _rate(echo.port)
    yield "ready after", f"{ready_s:.1f} s", "3 s", ""
    yield "memory of a worker, warm", f"{max(memory):.0f} MB", "180 MB", ""
    yield (
        "quotes of two workers",
        f"{quotes:.1f} a second",
        "none",
        f"a bare Flask echo: {echoes:.0f} a second, {echoes / quotes:.0f} ×",
    )


def _rate(port: int) -> float:
    ask(port)
    began_s = time.monotonic()
    with Callers(port, 4) as callers:
        time.sleep(SECONDS)
    return sum(a.status == 200 for a in callers.answers) / (time.monotonic() - began_s)


def page_rows() -> Iterator[TableRow]:
    """The customers' page in its first language, but its examples, packed one file at a time."""
    found = [path for path in (TESTS.parent / "web").rglob("*") if path.is_file()]
    apart = {"examples", "desk"}
    files = [path for path in found if not apart & {*path.parts} and ".de." not in path.name]
    packed = sum(len(gzip.compress(path.read_bytes(), 6)) for path in files)
    yield "the page, compressed", f"{packed / 1000:.1f} kB in {len(files)} files", "90 kB", ""


PARTS = (strength_rows, quote_rows, plate_rows, drawing_rows, remedy_rows, server_rows, page_rows)


def _processor() -> str:
    with contextlib.suppress(OSError):
        told = Path("/proc/cpuinfo").read_text(encoding="utf-8")
        return str(re.findall(r"model name\s*: (.*)", told)[0])
    return platform.processor()


if __name__ == "__main__":
    machine = f"{_processor()}, {os.cpu_count()} cores, Python {platform.python_version()}"
    print(f"{datetime.now(UTC):%d %B %Y}, {machine}")
    print(f"load average {os.getloadavg()[0]:.1f}\n")
    print("| what | measured | bar | ratio |\n|---|---|---|---|")
    for part in PARTS:
        for row in part():
            print(f"| {' | '.join(row)} |", flush=True)
    print(f"\nload average at the end {os.getloadavg()[0]:.1f}")
