"""The metrics of a request: its answer, its findings, and the seconds of its parts."""

from __future__ import annotations

import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from typing import Final

from flask import Flask, Response, current_app, g, request

from ledgerstone.api.counts import OTHER, Counts
from ledgerstone.containment import Part

EXTENSION: Final = "ledgerstone.counts"


def _counts() -> Counts:
    counts: Counts = current_app.extensions[EXTENSION]
    return counts


@contextmanager
def timed(name: str) -> Iterator[None]:
    """Time one part of the current answer."""
    began_s = time.perf_counter()
    try:
        yield
    finally:
        counts = _counts()
        counts.add("ledgerstone_stage_seconds", time.perf_counter() - began_s, stage=name)
        counts.add("ledgerstone_stage", stage=name)


def count_findings(checks: Sequence[str]) -> None:
    """Count the findings of one answer."""
    for check in checks:
        _counts().add("ledgerstone_findings", check=check)


def count_fault(part: Part) -> None:
    """Count a fault that cost one part of an answer."""
    _counts().add("ledgerstone_faults", part=part)


def register(app: Flask, counts: Counts) -> None:
    """Count every answer."""
    app.extensions[EXTENSION] = counts

    @app.after_request
    def _count(response: Response) -> Response:
        rule = request.url_rule
        route = rule.rule if rule is not None else OTHER
        counts.add("ledgerstone_requests", route=route, status=str(response.status_code))
        if request.path.startswith("/v1/") and "began_s" in g:
            counts.took(time.perf_counter() - g.began_s)
        return response
