"""Every start with every pair of openings on slabs of many sizes, laid out as the page asks for it.

With ``PYTHONPATH=service:tests``, ``python -m laws.placing_run part K N [seconds]`` does the
K-th of N parts, at most so long, and writes what came of it to ``build/placing/K-of-N.json``;
``python -m laws.placing_run sum`` adds the parts up and fails where a case was missed.
"""

import json
import sys
import time
from collections import Counter
from collections.abc import Iterator
from dataclasses import asdict, dataclass, replace
from datetime import date
from itertools import combinations_with_replacement, islice, product
from pathlib import Path
from typing import Final

import numpy as np

from ledgerstone.layout import CUTOUT_NAMES, START_NAMES, FreeParts, laid_out, new_cutout, started
from ledgerstone.layout.rests import usual_rests
from ledgerstone.order import Order, Point, Rectangle, Round, Slab
from ledgerstone.quantities import Length
from ledgerstone.quote import run_stages
from ledgerstone.shape import shape_of
from ledgerstone.stages import StageContext
from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile
from support.oracles.coarse_placing import coarse_places
from support.slabs import box, slab_of

RESULTS: Final = Path(__file__).resolve().parents[2] / "build" / "placing"
TODAY: Final = date(2026, 11, 25)

NAMES = {name: name for name in CUTOUT_NAMES}
ADDED = ("basin", "sink", "tap", "hob", "round", "rectangle", "slot")
WIDTHS_MM = (480, 500, 520, 560, 600, 620, 650)
LENGTHS_MM = tuple(range(800, 2401, 200))
WIDEST_MM = 1200  # the demonstration's table: a round slab is no wider
NOTED = 50  # cases after which what was found is written down
SEARCHED, WEIGHED = 60, 25  # sets of places tried where none was found, and where one cracks


@dataclass(frozen=True)
class Case:
    """One start, two openings that are added to it, and the size that it is given."""

    start: str
    pair: tuple[str, str]
    width_mm: int
    length_mm: int

    def slab(self, like: Slab, context: StageContext) -> tuple[Slab, FreeParts]:
        """The slab as the page sends it: everything is free that a button placed."""
        (main, *_), (free, *_) = (
            (made := started(self.start, like, NAMES, "mm", context)).slabs,
            made.free,
        )
        outline = Rectangle(Length.of_mm(self.length_mm), Length.of_mm(self.width_mm))
        added = tuple(new_cutout(name, f"{name} {i}", "mm") for i, name in enumerate(self.pair))
        slab = replace(main, outline=outline, cutouts=(*main.cutouts, *added))
        if main.outline.kind == "round":
            slab = replace(slab, outline=Round(Length.of_mm(min(self.length_mm, WIDEST_MM))))
        return slab, replace(free, cutouts=frozenset(range(len(slab.cutouts))))


def matrix() -> list[Case]:
    """Every start with every pair of openings on every size."""
    pairs = list(combinations_with_replacement(ADDED, 2))
    return [Case(*one) for one in product(START_NAMES, pairs, WIDTHS_MM, LENGTHS_MM)]


def _stops(slab: Slab, context: StageContext) -> bool:
    checked = run_stages(Order((slab,)), context, groups=("shape", "strength"))
    return any(finding.level == "stops" for finding in checked.findings)


def _elsewhere(slab: Slab, free: FreeParts, workshop: Workshop) -> Iterator[Slab]:
    """The same slab with its openings at places of the coarse search."""
    outline = shape_of(replace(slab, cutouts=()), workshop).outline
    rng = np.random.default_rng(22)
    for places in coarse_places(slab.cutouts, outline, workshop, rng):
        cutouts = tuple(
            replace(cutout, centre=Point(Length.of_mm(x), Length.of_mm(y)))
            for cutout, (x, y) in zip(slab.cutouts, places, strict=True)
        )
        tried = replace(slab, cutouts=cutouts)
        if free.rests is not None:
            shape = shape_of(tried, workshop)
            tried = replace(tried, rests=usual_rests(free.rests, tried, shape, "mm"))
        yield tried


def verdict(case: Case, like: Slab, context: StageContext) -> str:
    """What becomes of a case: made, rightly stopped, or stopped where another place is better."""
    return _verdict_of(*case.slab(like, context), context)


def _verdict_of(slab: Slab, free: FreeParts, context: StageContext) -> str:
    laid = laid_out(slab, free, context, lambda one: not _stops(one, context))
    if laid is not None and not _stops(laid, context):
        return "made"
    others = islice(_elsewhere(slab, free, context.workshop), SEARCHED if laid is None else WEIGHED)
    if any(not _stops(other, context) for other in others):
        return "missed"
    return "no room" if laid is None else "cracks anywhere"


def do_part(k: int, parts: int, seconds: float) -> None:
    """Do one part of the matrix, mixed, until the time is over."""
    workshop = load_profile(DEMONSTRATION)
    context, like = StageContext(workshop, (), TODAY), slab_of(workshop, box(1500, 600))
    cases = matrix()
    mixed = np.random.default_rng(22).permutation(len(cases))[k - 1 :: parts]
    counted, missed = Counter[str](), []
    known: dict[str, str] = {}  # a round slab is of one size at many of the matrix's
    began_s = time.monotonic()
    for i in mixed:
        if time.monotonic() - began_s > seconds:
            break
        slab, free = cases[i].slab(like, context)
        key = repr((slab, free))
        if key not in known:
            known[key] = _verdict_of(slab, free, context)
        found = known[key]
        counted[found] += 1
        missed += [asdict(cases[i])] if found == "missed" else []
        if found == "missed" or counted.total() % NOTED == 0:
            _note(f"{k}-of-{parts}", counted, missed, len(mixed))
    _note(f"{k}-of-{parts}", counted, missed, len(mixed))
    print(k, dict(counted), "of", len(mixed), missed)


def _note(part: str, counted: Counter[str], missed: list[dict[str, object]], of: int) -> None:
    """Write down what has come of a part so far."""
    RESULTS.mkdir(parents=True, exist_ok=True)
    noted = {"counted": counted, "missed": missed, "of": of}
    (RESULTS / f"{part}.json").write_text(json.dumps(noted), encoding="utf-8")


def add_up() -> bool:
    """Print what came of every part; False where a case was missed."""
    counted, missed = Counter[str](), []
    for file in sorted(RESULTS.glob("*.json")):
        told = json.loads(file.read_text(encoding="utf-8"))
        counted.update(told["counted"])
        missed += told["missed"]
    print(dict(counted), "of", len(matrix()), missed)
    return not missed


if __name__ == "__main__":
    match sys.argv[1:]:
        case ["part", part, parts, *rest]:
            do_part(int(part), int(parts), float(rest[0]) if rest else 1e9)
        case ["sum"]:
            sys.exit(not add_up())
        case _:
            sys.exit(__doc__)
