"""What one request costs beside a fixed piece of work, and what it holds in memory.

``python -m load.bearing time|memory|papers SEED ROUNDS [few]`` prints the dearest request: of a
customer's by the time it takes or by what it holds, or of the maker's by time. Each that is dearer
than all before it is reported on standard error as it is found.
"""

from __future__ import annotations

import json
import os
import resource
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import suppress
from dataclasses import asdict, dataclass, fields
from datetime import date
from functools import partial
from pathlib import Path
from statistics import median
from typing import Final

import numpy as np
from scipy.linalg import cho_solve_banded, cholesky_banded

from ledgerstone.application.answering import answer_order
from ledgerstone.application.answers import write_quote, write_sent_back
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.drawings import DRAWN, Drawings, drawing_content
from ledgerstone.application.papers import make_paper
from ledgerstone.application.replying import make_draft
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.tokens import Tokens
from ledgerstone.contract.example_orders import BENCH
from ledgerstone.drawing import WIDEST_PX
from ledgerstone.errors import NotUnderstood, TooIntricate
from ledgerstone.papers.kinds import JOB
from ledgerstone.papers.paper import Paper, paper_page, paper_print
from ledgerstone.papers.templates import templates_in
from ledgerstone.quote import Quote, SentBack
from ledgerstone.remedies import Budget
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.documents import Json
from support.hardest import beginnings, climb

WORKSHOP = load_profile(DEMONSTRATION)
TEMPLATES = templates_in(DEMONSTRATION.parent)
TODAY = date(2026, 11, 25)
TOKENS = Tokens(["k" * 32])
MAX_ADDRESSED: Final = 3 * 2**30  # bytes: what would take more ends the search
FEW: Final = (0, 1, 3, 5)  # of the beginnings: one slab with much of everything


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
    """What one order's answer and its drawings cost, the dearest request of them.

    Attributes
    ----------
    request_s
        Processor time of the dearest request, s.
    works
        The same over the fixed piece of work, done just before it.
    peak_mb
        The largest memory of the process during it.
    """

    request_s: float
    works: float
    peak_mb: float


def cost_of(order: Json, *, papers: bool = False) -> Cost | None:
    """Answer an order and all that is asked about it, as requests of their own.

    Each has a process of its own, as large as this one was once it was warm: what the one before
    it left behind is then no part of what it holds, and a worker that is large hands over.

    Parameters
    ----------
    papers
        Whether the maker asks, for its draft and its sheets; else a customer, for its price and
        its drawings.

    Returns
    -------
    cost
        The most of each; None for what is not answered.
    """
    found = [_in_a_child(ask) for ask in (_of_the_maker(order) if papers else _customers(order))]
    costs = [cost for cost in found if cost is not None]
    if not costs:
        return None
    return Cost(*(max(getattr(cost, one.name) for cost in costs) for one in fields(Cost)))


def _in_a_child(ask: Callable[[], object]) -> Cost | None:
    told, tells = os.pipe()
    child = os.fork()
    if child == 0:
        with suppress(BaseException):
            fixed_s = median(fixed_work_s() for _ in range(3))
            _forget_peak()
            began_s = _processor_s()
            with suppress(NotUnderstood, TooIntricate):
                ask()
                spent_s = _processor_s() - began_s
                os.write(tells, json.dumps([spent_s, spent_s / fixed_s, _peak_mb()]).encode())
            os._exit(0)
        os._exit(1)
    os.close(tells)
    with os.fdopen(told, "rb") as answer:
        found = answer.read()
    if os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]):
        raise ChildProcessError("a request ended in a fault")
    return Cost(*json.loads(found)) if found else None


def _customers(order: Json) -> Iterator[Callable[[], object]]:
    yield partial(_answered, order)
    yield from (partial(_pictured, order, name) for name in DRAWN)


def _answered(order: Json) -> Quote | SentBack:
    context = QuoteContext(WORKSHOP, TODAY, TOKENS)
    answer = answer_order(order, context)
    if isinstance(answer, Quote):
        write_quote(answer, context, document=order)
    else:
        write_sent_back(answer, order, context)
    return answer


def _of_the_maker(order: Json) -> Iterator[Callable[[], object]]:
    ask, ways = {"order": order}, {"order": order, "ways": True}
    context = QuoteContext(WORKSHOP, TODAY, TOKENS, for_maker=True)
    yield partial(make_draft, ways, context, TEMPLATES)
    yield from (partial(_printed, kind, ask, context) for kind in ("approval", JOB))


def _printed(kind: str, ask: Json, context: QuoteContext) -> None:
    paper = make_paper(kind, ask, context)
    if isinstance(paper, Paper):
        paper_page(paper, TEMPLATES)
        paper_print(paper)


def _pictured(order: Json, name: str) -> None:
    """Paint a drawing of an order's first slab as wide as may be, from its link on."""
    content = drawing_content(read_order(order, WORKSHOP))
    Drawings(content, WORKSHOP, budget=Budget()).painted(name, 0, WIDEST_PX)


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


def main() -> None:
    """Search for the request that takes longest, or holds most, and print it as JSON."""
    what, seed, rounds = sys.argv[1], int(sys.argv[2]), int(sys.argv[3])
    resource.setrlimit(resource.RLIMIT_AS, (MAX_ADDRESSED, MAX_ADDRESSED))
    begin = [beginnings()[k] for k in FEW] if "few" in sys.argv else beginnings()
    most = {"works": 0.0, "request_s": 0.0, "peak_mb": 0.0}

    def cost(order: Json) -> float | None:
        found = cost_of(order, papers=what == "papers")
        if found is None:
            return None
        value = found.peak_mb if what == "memory" else found.works
        if value > most["peak_mb" if what == "memory" else "works"]:
            told = {**asdict(found), "order": order}
            print(json.dumps(told), file=sys.stderr, flush=True)
        most.update({name: max(value, getattr(found, name)) for name, value in most.items()})
        return value

    _answered(BENCH)
    best = climb(cost, seed, rounds, begin)
    json.dump({**most, "order": best[0].order}, sys.stdout)


if __name__ == "__main__":
    main()
