"""What one request costs beside a fixed piece of work, and what it holds in memory.

``python -m load.bearing time|memory customers|makers|messages SEED ROUNDS [few]`` prints the
dearest request of a group of calls, by the time it takes or by what it holds. Each that is dearer
than all before it is reported on standard error as it is found.
"""

from __future__ import annotations

import json
import os
import random
import resource
import sys
import time
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import asdict, dataclass
from pathlib import Path
from statistics import median
from typing import Final

import numpy as np
from scipy.linalg import cho_solve_banded, cholesky_banded

from ledgerstone.contract.example_orders import BENCH
from ledgerstone.drawing import typesetting
from ledgerstone.errors import NotUnderstood, TooIntricate
from load.calls import CUSTOMERS, MAKERS, MESSAGES, app, prepared, size_bytes
from support import hardest, hardest_texts
from support.documents import Json

MAX_WAIT_S: Final = 600.0  # for a print, by the clock of a machine that may be busy
MAX_ADDRESSED: Final = 3 * 2**30  # bytes: what would take more ends the search
FEW: Final = (0, 3, 6)  # of the beginnings: one slab with much of everything
_CROWDED: Final = 28  # of the beginnings have much of everything
_ASKED_OF_EACH: Final = 3  # calls that a crowded order begins with, or one of few orders
_GROUPS: Final = {"customers": CUSTOMERS, "makers": MAKERS, "messages": MESSAGES}


def fixed_work_s() -> float:
    """Processor time of six banded factors of 1861 unknowns, 40 right-hand sides each, s."""
    numbers = np.random.default_rng(1)
    band, right = numbers.random((110, 1861)), numbers.random((1861, 40))
    band[0] += 220.0
    began_s = time.process_time()
    for _ in range(6):
        cho_solve_banded((cholesky_banded(band, lower=True), True), right)
    return time.process_time() - began_s


@dataclass(frozen=True, slots=True)
class Cost:
    """What one request costs.

    Attributes
    ----------
    request_s
        Processor time, s.
    works
        The same over the fixed piece of work, done just before it.
    peak_mb
        The largest memory of the process during it.
    status
        What it was answered with.
    """

    request_s: float
    works: float
    peak_mb: float
    status: int


def cost_of(request: Json) -> Cost | None:
    """Ask for one thing, in a process of its own as large as this one was once it was warm.

    What the request before it left behind is then no part of what it holds, and a worker that is
    large hands over.

    Returns
    -------
    cost
        None where there is no such request: a link of an order that has none.
    """
    told, tells = os.pipe()
    child = os.fork()
    if child == 0:
        with suppress(BaseException):
            found = _asked(request)
            os.write(tells, b"" if found is None else json.dumps(asdict(found)).encode())
            os._exit(0)
        os._exit(1)
    os.close(tells)
    with os.fdopen(told, "rb") as answer:
        written = answer.read()
    if os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]):
        raise ChildProcessError(f"a request ended in a fault: {json.dumps(request)[:2000]}")
    return Cost(**json.loads(written)) if written else None


def _asked(request: Json) -> Cost | None:
    sent = None
    with suppress(NotUnderstood, TooIntricate):
        sent = prepared(request)
    if sent is None:
        return None
    client = app().test_client()
    fixed_s = median(fixed_work_s() for _ in range(3))
    _forget_peak()
    began_s = _processor_s()
    status = client.open(sent.path, method=sent.method, **sent.more).status_code
    spent_s = _processor_s() - began_s
    if status >= 500:
        raise ChildProcessError(status)
    return Cost(spent_s, spent_s / fixed_s, _peak_mb(), status)


def _forget_peak() -> None:
    """Let the process's high-water mark begin again (proc(5), clear_refs)."""
    Path("/proc/self/clear_refs").write_text("5", encoding="ascii")


def _processor_s() -> float:
    """Processor time of this process and of the children that it has waited for, s."""
    printed = resource.getrusage(resource.RUSAGE_CHILDREN)
    return time.process_time() + printed.ru_utime + printed.ru_stime


def _peak_mb() -> float:
    """The most that this process, or one that it had print, ever held; shared pages in both."""
    printed_mb = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / 1024
    return max(_own_peak_mb(), printed_mb)


def _own_peak_mb() -> float:
    lines = Path("/proc/self/status").read_text(encoding="ascii").splitlines()
    return next(float(line.split()[1]) / 1024 for line in lines if line.startswith("VmHWM"))


def beginnings(group: str, *, few: bool = False) -> list[Json]:
    """Requests to begin with: of each order some of the calls, in turn, so that each is asked."""
    if group == "messages":
        texts, kinds = hardest_texts.beginnings(), hardest_texts.KINDS
        return [{"call": "enquiry", "text": text, "kind": kind} for text in texts for kind in kinds]
    calls, orders = list(_GROUPS[group]), hardest.beginnings()
    picked = FEW if few else range(len(orders))
    made: list[Json] = []
    for k in picked:
        each = _ASKED_OF_EACH if k < _CROWDED and not few else 1
        first = len(made)
        made += [{"call": calls[(first + i) % len(calls)], "order": orders[k]} for i in range(each)]
    return made


def changed(rng: random.Random, request: Json, others: Sequence[Json], calls: list[str]) -> Json:
    """Change what is sent, or ask something else of it."""
    if "text" in request:
        kind = rng.choice(hardest_texts.KINDS)
        return {**request, "text": hardest_texts.changed(rng, request["text"]), "kind": kind}
    if rng.random() < 1 / 6:
        return {**request, "call": rng.choice(calls)}
    return {**request, "order": hardest.changed(rng, request["order"], list(others))}


def main() -> None:
    """Search for the request that takes longest, or holds most, and print it as JSON."""
    what, group, seed, rounds = sys.argv[1], sys.argv[2], int(sys.argv[3]), int(sys.argv[4])
    typesetting.PRINT_WAIT_S = MAX_WAIT_S  # type: ignore[misc]  # processor time is what is measured
    resource.setrlimit(resource.RLIMIT_AS, (MAX_ADDRESSED, MAX_ADDRESSED))
    begin = beginnings(group, few="few" in sys.argv)
    orders, calls = hardest.beginnings(), list(_GROUPS[group])
    measure = "peak_mb" if what == "memory" else "works"
    most = {"works": 0.0, "request_s": 0.0, "peak_mb": 0.0}

    def cost(request: Json) -> float | None:
        found = cost_of(request)
        if found is None:
            return None
        value: float = getattr(found, measure)
        if value > most[measure]:
            told = {**asdict(found), "bytes": size_bytes(request), "request": request}
            print(json.dumps(told), file=sys.stderr, flush=True)
        most.update({name: max(value, getattr(found, name)) for name, value in most.items()})
        return value

    app().test_client().post("/v1/quotes", json=BENCH)
    best = hardest.climb(
        cost, seed, rounds, begin, lambda rng, one: changed(rng, one, orders, calls)
    )
    dearest = {"bytes": size_bytes(best[0].request), "request": best[0].request}
    json.dump({**most, **dearest}, sys.stdout)


if __name__ == "__main__":
    main()
