"""Every figure that is cast from stands on the job sheet, and is the quote's and its records'."""

import re
from collections import Counter
from collections.abc import Iterator
from datetime import date
from typing import Any

import pytest

from ledgerstone.message import Message
from ledgerstone.papers.job import Job
from ledgerstone.strength.grips import best_grips_mm
from ledgerstone.strength.slabs import concrete_of
from ledgerstone.strength.strip_test import strip_test_of
from ledgerstone.workshop import Workshop
from support.demonstration import EXAMPLE_ORDER
from support.everyday import EVERYDAY
from support.jobs import job_of, pages_of
from support.set_out import SetOut, bars_set_out

ORDERS = {**EVERYDAY, "bench": EXAMPLE_ORDER}


def _half(length_mm: float) -> str:
    """A length as a rule shows it, to half a millimetre."""
    return f"{round(2 * length_mm) / 2:g}"


def _mixed(job: Job) -> Iterator[str]:
    """What is weighed: each batch, its litres and its ratio, the slurry, the pot, the sealer."""
    for pour in job.batches.pours:
        yield f"{pour.litres:.1f} litres"
        yield f"{pour.minutes:.0f} minutes from"
        for one in pour.batches:
            yield f"{one.count} × {one.batch.litres:.1f} l, w/c {one.batch.water_cement_ratio:.2f}"
            for w in one.batch.weighings:
                places = 3 if w.step_kg < 0.01 else 2
                yield f"['{w.name}', '{w.weighed_kg:.{places}f}'"
    for bought in job.batches.purchases:
        yield f"'{bought.name}', '{bought.kg:.2f} kg'"
    for i, slab in enumerate(job.slabs):
        coats = next(s for s in job.workshop.sealers if s.name == slab.finish.sealer).coats
        yield f"coat {coats} of {coats}: {1000 * job.sealer_l(i) / coats:.0f} ml"
        pot = job.batches.slabs[i].pot
        assert pot is not None
        yield ", ".join(f"{w.weighed_kg:g} kg {w.name}" for w in pot.weighings)


def _built(job: Job) -> Iterator[str]:
    """What is cut: boards, formers, screws, beads, and every knockout from the mould's edges."""
    for n, board in enumerate(job.moulds.boards.placed, start=1):
        long, wide = sorted((board.length_mm, board.width_mm), reverse=True)
        yield f"['{n}', "
        yield f"'{_half(long)}', '{_half(wide)}', '']"
    for i, mould in enumerate(job.moulds.moulds):
        yield f"'{_half(mould.height_mm)} mm high on"
        yield f"'{mould.screws}, in {_half(mould.pilot_mm)} mm"
        yield f"{1000 * mould.release_l:.0f} ml"
        yield f"{sum(bead.length_mm for bead in mould.beads) / 1000:.1f} m in all"
        for former in mould.formers:
            yield (
                f"{_half(former.length_mm)} × {_half(former.width_mm)},"
                f" {_half(former.height_mm)} mm high"
            )
        _, shape = job.in_mould[i]
        x0, y0, x1, y1 = shape.outline.bounds
        for opening in shape.openings:
            a, b, c, d = opening.polygon.bounds
            clear = "', '".join(map(_half, (a - x0, x1 - c, b - y0, y1 - d)))
            yield f"'{clear}', '{_half((a + c) / 2 - x0)}, {_half((b + d) / 2 - y0)}', '']"
    for supply in job.moulds.supplies:
        if supply.packs:
            named = job.speech.say(Message("job-supply", supply=supply.name))
            yield f"'{named}', '{round(supply.used, 2):g} "


def _reinforced(job: Job) -> Iterator[str]:
    """Each mesh, and what is cut from each length of bar."""
    for steel in job.steel:
        for piece in steel.mesh:
            yield f"'{_half(piece.length_mm)} × {_half(piece.width_mm)}'"
        yield f"mm of cover; {steel.cover.wanted_mm:.0f}" if not steel.cover.is_kept else ""
    for stock in job.cut[0].stocks:
        for length in stock.lengths:
            counts = Counter((cut.mark, _half(cut.length_mm)) for cut in length.cuts)
            cuts = ", ".join(
                f"{many} × {mark} {cut}" if many > 1 else f"{mark} {cut}"
                for (mark, cut), many in counts.items()
            )
            yield f"{cuts}; {_half(length.waste_mm)} mm left"
    if job.cut[0].stocks:
        yield f"Bars {job.cut[0].kg:.2f} kg, of {job.cut[0].bought_kg:.2f} kg bought"


def _lifted(job: Job) -> Iterator[str]:
    """What it weighs wet, turned and bare, when it is turned, what governs, and the strip."""
    for i, strength in enumerate(job.quote.strength):
        handled, governing = strength.handled, strength.worst
        for mass in (job.wet_kg(i), job.turned_kg(i), job.cured_kg(i)):
            yield f"{round(mass, 1):g} kg"
        yield f"{handled.under_cover_days:g} days after the pour"
        assert governing is not None
        yield f"{governing.stress_mpa:.2f} of {governing.limit_mpa:.2f} N/mm²"
        yield f"({governing.utilisation:.2f})"
        _, shape = job.in_mould[i]
        grips, along_y = best_grips_mm(shape.outline)
        start = shape.outline.bounds[1 if along_y else 0]
        yield " and ".join(f"{5 * round((at - start) / 5)}" for at in grips)
        concrete, density = concrete_of(job.workshop), job.workshop.recipe.density_kg_per_m3
        test = strip_test_of(handled, concrete, job.slabs[i].thickness.mm, density)
        yield f"carries {test.load_n:.0f} N ({test.load_kg:.0f} kg)" if test is not None else ""


@pytest.mark.parametrize("name", ORDERS)
def test_every_bar_is_set_out_where_it_lies(workshop: Workshop, today: date, name: str) -> None:
    """From the list alone each bar has its length and its place in the mould, to 1 mm."""
    job = job_of(ORDERS[name], workshop, today)
    told = sorted((one for page in pages_of(job) for one in bars_set_out(page)), key=repr)
    lying = [
        SetOut(
            bar.mark,
            bar.length_mm,
            (over - bar.end_mm[0], over - bar.start_mm[0]),
            (min(bar.start_mm[1], bar.end_mm[1]), max(bar.start_mm[1], bar.end_mm[1])),
        )
        for steel, shape in zip(job.steel, job.quote.shapes, strict=True)
        for over in [sum(shape.outline.bounds[::2])]
        for bar in steel.bars
    ]
    assert len(told) == len(lying)
    for one in lying:
        near = [other for other in told if _alike(one, other)]
        assert near, (one, told)
        told.remove(near[0])


def _alike(one: SetOut, other: SetOut) -> bool:
    places = zip(
        (one.cut_mm, *one.left_mm, *one.front_mm),
        (other.cut_mm, *other.left_mm, *other.front_mm),
        strict=True,
    )
    return one.mark == other.mark and all(abs(a - b) <= 1.0 for a, b in places)


@pytest.mark.parametrize("name", ORDERS)
def test_every_figure_of_the_sheet_is_the_records(
    workshop: Workshop, today: date, name: str
) -> None:
    """What is mixed, built, reinforced and lifted is reported in the records' own figures."""
    job = job_of(ORDERS[name], workshop, today)
    told = repr([page["blocks"] for page in pages_of(job)])
    for figures in (_mixed, _built, _reinforced, _lifted):
        wanted = [figure for figure in figures(job) if figure]
        assert wanted
        assert [figure for figure in wanted if figure not in told] == []


def test_every_minute_of_the_days_is_on_the_sheet(workshop: Workshop, today: date) -> None:
    """The day plan's lines add up to the minutes that are priced, step by step."""
    job = job_of(EVERYDAY["kitchen"], workshop, today)
    rows: list[list[Any]] = [
        row
        for block in pages_of(job)[0]["blocks"]
        if block["kind"] == "table"
        for row in block["rows"]
    ]
    minutes = [_minutes(row[4]) for row in rows if row[4]]
    assert sum(minutes[:-1]) == minutes[-1] == job.minutes_in_all()


def _minutes(told: str) -> int:
    """Read “1 h 05” or “12 min” back."""
    hours, _, rest = told.removesuffix(" min").rpartition(" h ")
    return 60 * int(hours or 0) + int(rest)


@pytest.mark.parametrize("name", ORDERS)
def test_every_mark_of_the_list_stands_on_the_drawing(
    workshop: Workshop, today: date, name: str
) -> None:
    """Each run of bars and each mesh has its mark on the drawing, and none covers another."""
    job = job_of(ORDERS[name], workshop, today)
    drawn = [
        block["svg"]
        for page in pages_of(job)
        for block in page["blocks"]
        if block["kind"] == "drawing" and "steel-title" in block["svg"]
    ]
    assert len(drawn) == len(job.steel)
    for steel, svg in zip(job.steel, drawn, strict=True):
        marks = re.findall(r'<text x="([\d.]+)" y="([\d.]+)"[^>]*>([BM]\d+)</text>', svg)
        told = Counter(mark for _, _, mark in marks)
        runs = Counter(row.mark for row in steel.rows for _ in row.runs)
        assert told == runs + Counter(piece.mark for piece in steel.mesh)
        places = [(float(x), float(y)) for x, y, _ in marks]
        assert all(
            abs(x - u) > 20.0 or abs(y - v) > 12.0
            for k, (x, y) in enumerate(places)
            for u, v in places[:k]
        ), marks
