"""Counters of all workers in shared memory.

Each worker writes a row of its own, so none waits for another and a killed worker blocks nothing;
its counts remain. A label is a route's pattern, a status, a check's name or a part of the work
(`TIMED_PARTS`): nothing a customer wrote. ``prometheus_client`` writes the text; its own
multiprocess mode would leave a file for each process, and the container's file system is read-only.
"""

from __future__ import annotations

import mmap
from collections.abc import Iterator, Sequence
from typing import Final

from prometheus_client import CollectorRegistry, generate_latest
from prometheus_client.core import CounterMetricFamily, HistogramMetricFamily, Metric
from prometheus_client.registry import Collector

from ledgerstone.checks import CHECK_GROUPS, GROUP_OF
from ledgerstone.containment import CONTAINED_PARTS

MAX_WORKERS: Final = 64  # workers alive at once, old and new during a reload, are far fewer
TIMED_PARTS: Final = ("parse", *CHECK_GROUPS, "remedies", "write", "drawings")
STATUSES: Final = (
    200, 304, 400, 401, 404, 405, 406, 408, 409, 411, 413, 414, 415, 422, 429, 500, 503,
)  # fmt: skip
BOUNDS_S: Final = (0.01, 0.03, 0.06, 0.12, 0.22, 0.5, 1.0, 2.0, 5.0)
OTHER: Final = "other"

_BUCKETS: Final = (*map(str, BOUNDS_S), "+Inf")
_SECONDS: Final = "ledgerstone_request_seconds"
_ABOUT_SECONDS: Final = "Seconds a call under /v1 took in the worker."
_COUNTERS: Final = {
    "ledgerstone_requests": ("Requests answered, by route and status.", ("route", "status")),
    "ledgerstone_findings": ("Findings of answers, by check.", ("check",)),
    "ledgerstone_faults": ("Faults of ours that cost a part of an answer, by part.", ("part",)),
    "ledgerstone_stage_seconds": ("Seconds spent, by stage.", ("stage",)),
    "ledgerstone_stage": ("Times a stage was gone through.", ("stage",)),
}

SeriesKey = tuple[str, tuple[str, ...]]


class Counts(Collector):
    """Counters by name and label values, shared by the creating process and all its forks.

    Parameters
    ----------
    routes
        The routes' patterns: with statuses, checks and timed parts they determine all counters.
    """

    def __init__(self, routes: Sequence[str]) -> None:
        self._at = {key: n for n, key in enumerate(_keys(routes))}
        self._memory = mmap.mmap(-1, 8 * MAX_WORKERS * len(self._at))
        self._cells = memoryview(self._memory).cast("d")
        self._registry = CollectorRegistry(auto_describe=False)
        self._registry.register(self)
        self.row = 0

    def take_row(self, number: int) -> None:
        """Count in a worker's own row; the row of a worker that ended is continued."""
        self.row = number % MAX_WORKERS

    def add(self, name: str, amount: float = 1.0, /, **labels: str) -> None:
        """Add to one counter; an unknown label counts as ``other``."""
        at = self._at.get((name, tuple(labels.values())))
        if at is None:
            at = self._at[name, (OTHER,) * len(labels)]
        self._cells[self.row * len(self._at) + at] += amount

    def took(self, seconds: float) -> None:
        """Add the duration of a request to the histogram."""
        for bound in _BUCKETS:
            if seconds <= float(bound):
                self.add(f"{_SECONDS}_bucket", le=bound)
        self.add(f"{_SECONDS}_sum", seconds)

    def total(self, name: str, *labels: str) -> float:
        """Return one counter, summed over all workers."""
        at, width = self._at[name, labels], len(self._at)
        return float(sum(self._cells[row * width + at] for row in range(MAX_WORKERS)))

    def collect(self) -> Iterator[Metric]:
        """Yield every counter that is not 0, and the whole histogram."""
        for name, (about, labels) in _COUNTERS.items():
            family = CounterMetricFamily(name, about, labels=labels)
            for counted, values in self._at:
                if counted == name and (number := self.total(name, *values)):
                    family.add_metric(values, number)
            yield family
        buckets = [(bound, self.total(f"{_SECONDS}_bucket", bound)) for bound in _BUCKETS]
        total_s = self.total(f"{_SECONDS}_sum")
        yield HistogramMetricFamily(_SECONDS, _ABOUT_SECONDS, buckets=buckets, sum_value=total_s)

    def text(self) -> str:
        """Return the counters in Prometheus' text format 0.0.4."""
        return generate_latest(self._registry).decode()


def _keys(routes: Sequence[str]) -> Iterator[SeriesKey]:
    for route in (*routes, OTHER):
        for status in (*map(str, STATUSES), OTHER):
            yield "ledgerstone_requests", (route, status)
    for check in sorted(set(GROUP_OF) | {OTHER}):
        yield "ledgerstone_findings", (check,)
    for part in (*CONTAINED_PARTS, OTHER):
        yield "ledgerstone_faults", (part,)
    for part in (*TIMED_PARTS, OTHER):
        yield "ledgerstone_stage_seconds", (part,)
        yield "ledgerstone_stage", (part,)
    for bound in _BUCKETS:
        yield f"{_SECONDS}_bucket", (bound,)
    yield f"{_SECONDS}_sum", ()
