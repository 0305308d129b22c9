"""Counts of what is answered and how long it takes, one set for all workers, as Prometheus text.

The counts lie in memory that the workers share. Each worker writes a row of its own, so none
waits for another and a worker that is killed holds nothing up; what it counted stays. A label is
a route's pattern, a status, a check's name or a stage: nothing a customer wrote.
"""

from __future__ import annotations

import mmap
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from typing import Final

from flask import Flask, Response, current_app, g, request

from ledgerstone.checks import STAGE_OF
from ledgerstone.checks import STAGES as CHECK_STAGES
from ledgerstone.containment import PARTS, Part

EXTENSION: Final = "ledgerstone.counts"
ROWS: Final = 64  # workers alive at once, old and new during a reload, are far fewer
STAGES: Final = ("parse", *CHECK_STAGES, "remedies", "write", "drawings")
STATUSES: Final = (
    200,
    304,
    400,
    401,
    404,
    405,
    406,
    408,
    409,
    411,
    413,
    414,
    415,
    422,
    429,
    500,
    503,
)
BOUNDS_S: Final = (0.01, 0.03, 0.06, 0.12, 0.22, 0.5, 1.0, 2.0, 5.0)
_OTHER: Final = "other"

Key = tuple[str, tuple[tuple[str, str], ...]]
_HELP: Final = {
    "ledgerstone_requests_total": "Requests answered, by route and status.",
    "ledgerstone_findings_total": "Findings of answers, by check.",
    "ledgerstone_faults_total": "Faults of ours that cost a part of an answer, by part.",
    "ledgerstone_stage_seconds_total": "Seconds spent, by stage.",
    "ledgerstone_stage_total": "Times a stage was gone through.",
    "ledgerstone_request_seconds": "Seconds a call under /v1 took in the worker.",
}


class Counts:
    """Numbers by name and label, shared by all processes that fork from the one that made them.

    Parameters
    ----------
    routes
        The routes' patterns: with the statuses, checks and stages they fix all there is to count.
    """

    def __init__(self, routes: Sequence[str]) -> None:
        self._at = {key: n for n, key in enumerate(_keys(routes))}
        self._memory = mmap.mmap(-1, 8 * ROWS * len(self._at))
        self._cells = memoryview(self._memory).cast("d")
        self.row = 0

    def take_row(self, number: int) -> None:
        """Count in a worker's own row; a row that a worker left is counted on in."""
        self.row = number % ROWS

    def add(self, name: str, amount: float = 1.0, /, **labels: str) -> None:
        """Add to one number; a label that is not known counts as ``other``."""
        key = (name, tuple(labels.items()))
        at = self._at.get(key)
        if at is None:
            at = self._at[name, tuple((label, _OTHER) for label in labels)]
        self._cells[self.row * len(self._at) + at] += amount

    def took(self, seconds: float) -> None:
        """Enter how long a request took."""
        for bound in BOUNDS_S:
            if seconds <= bound:
                self.add("ledgerstone_request_seconds_bucket", le=str(bound))
        self.add("ledgerstone_request_seconds_bucket", le="+Inf")
        self.add("ledgerstone_request_seconds_sum", seconds)
        self.add("ledgerstone_request_seconds_count")

    def total(self, name: str, **labels: str) -> float:
        """Return one number, of all workers together."""
        at, width = self._at[name, tuple(labels.items())], len(self._at)
        return float(sum(self._cells[row * width + at] for row in range(ROWS)))

    def text(self) -> str:
        """Write every number that is not 0, in Prometheus' text format 0.0.4."""
        lines: list[str] = []
        for family, says in _HELP.items():
            kind = "histogram" if family.endswith("_seconds") else "counter"
            lines += [f"# HELP {family} {says}", f"# TYPE {family} {kind}"]
            for name, labels in self._at:
                if name == family or (kind == "histogram" and name.startswith(f"{family}_")):
                    number = self.total(name, **dict(labels))
                    if number or kind == "histogram":
                        lines.append(f"{name}{_labels(labels)} {number:.10g}")
        return "\n".join(lines) + "\n"


def _keys(routes: Sequence[str]) -> Iterator[Key]:
    for route in (*routes, _OTHER):
        for status in (*map(str, STATUSES), _OTHER):
            yield "ledgerstone_requests_total", (("route", route), ("status", status))
    for named in sorted(set(STAGE_OF) | {_OTHER}):
        yield "ledgerstone_findings_total", (("check", named),)
    for part in (*PARTS, _OTHER):
        yield "ledgerstone_faults_total", (("part", part),)
    for gone_through in (*STAGES, _OTHER):
        yield "ledgerstone_stage_seconds_total", (("stage", gone_through),)
        yield "ledgerstone_stage_total", (("stage", gone_through),)
    for bound in (*map(str, BOUNDS_S), "+Inf"):
        yield "ledgerstone_request_seconds_bucket", (("le", bound),)
    yield "ledgerstone_request_seconds_sum", ()
    yield "ledgerstone_request_seconds_count", ()


def _labels(labels: tuple[tuple[str, str], ...]) -> str:
    inner = ",".join(f'{name}="{value}"' for name, value in labels)
    return f"{{{inner}}}" if inner else ""


def _counts() -> Counts:
    counts: Counts = current_app.extensions[EXTENSION]
    return counts


@contextmanager
def stage(name: str) -> Iterator[None]:
    """Time one stage of the answer that is being made."""
    began_s = time.perf_counter()
    try:
        yield
    finally:
        counts = _counts()
        counts.add("ledgerstone_stage_seconds_total", time.perf_counter() - began_s, stage=name)
        counts.add("ledgerstone_stage_total", stage=name)


def count_findings(checks: Sequence[str]) -> None:
    """Count the findings of one answer."""
    for check in checks:
        _counts().add("ledgerstone_findings_total", check=check)


def count_fault(part: Part) -> None:
    """Count a fault that cost one part of an answer."""
    _counts().add("ledgerstone_faults_total", part=part)


def register(app: Flask, counts: Counts) -> None:
    """Count every answer."""
    app.extensions[EXTENSION] = counts

    @app.after_request
    def _count(response: Response) -> Response:
        rule = request.url_rule
        route = rule.rule if rule is not None else _OTHER
        counts.add("ledgerstone_requests_total", route=route, status=str(response.status_code))
        if request.path.startswith("/v1/") and "began_s" in g:
            counts.took(time.perf_counter() - g.began_s)
        return response
