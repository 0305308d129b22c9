"""The pages of the whole order: days and work, batch cards, cut lists and boards."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.drawing.casting import draw_sheet
from ledgerstone.mix import Batches, Pour
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import (
    Block,
    Content,
    drawing,
    facts,
    heading,
    hours,
    mm,
    page,
    says,
    short_day,
    table,
    ticks,
)
from ledgerstone.papers.words import day_text, shade_text, size_text

CAUTIONS = (
    "Wet cement burns, and is not felt at first: gloves, glasses, sleeves; wash it off at once.",
    "Dust of cement, sand and concrete holds silica: wear a mask that fits and grind wet.",
    "Masses here are masses, and none is a safe limit: look at each lift before it is made.",
)


def order_page(job: Job) -> Content:
    """Write the first sheet: what it is, the days, and the work."""
    quote, lead = job.quote, job.quote.lead_time
    slabs = zip(job.slabs, quote.shapes, job.names, strict=True)
    return page(
        f"Job sheet {job.name}",
        facts(
            *((f"{slab.quantity} × {name}", f"{size_text(slab, shape)}; {shade_text(slab)}")
              for slab, shape, name in slabs),
            ("Ready", f"{day_text(lead.ready_on)}, if ordered by {day_text(lead.if_ordered_by)}"),
        ),
        heading("Before anything is cut"),
        ticks(
            "The drawing is signed and dated, and is this revision",
            "The sink, the hob and every template are here, and were measured here",
        ),
        heading("Days"),
        table(
            ("What", "From", "To", "Why", "Done on"),
            [[s.name, short_day(s.starts), short_day(s.ends), s.why, ""] for s in lead.stages],
            (20, 15, 15, 38, 12),
        ),
        heading("Work"),
        table(
            ("Step", "Piece", "Hands", "Machine", "Really took"),
            [*_work(job), ["In all", "", hours(job.minutes_in_all()), "", ""]],
            (40, 24, 12, 12, 12),
            right=(2, 3),
        ),
        heading("Take care"),
        says(*CAUTIONS, *(f.says for f in quote.findings if f.level == "caution")),
    )  # fmt: skip


def _work(job: Job) -> Iterator[list[str]]:
    for step in job.steps:
        piece = "the order" if step.slab is None else job.names[step.slab]
        machine = step.machine_minutes
        yield [step.name, piece, hours(step.hands_minutes),
               hours(machine) if machine else "", ""]  # fmt: skip


# --- batch cards ----------------------------------------------------------------------------


def batch_page(job: Job) -> Content:
    """Write a card for every batch, in the order in which things go into the mixer."""
    plan, blocks = job.batches, []
    for number, pour in enumerate(plan.pours, start=1):
        blocks += list(_pour(job, number, pour))
    bought = [
        [p.name, f"{p.kg:.2f}", str(p.packs) if p.packs is not None else "loose"]
        for p in plan.purchases
    ]
    return page(
        "Batch cards",
        says("From top to bottom, as it goes into the mixer. Tick each as it goes in.",
             CAUTIONS[0], CAUTIONS[1]),
        *blocks,
        heading("What the order uses"),
        table(("Thing", "kg", "Packs"), bought, (60, 20, 20), right=(1, 2)),
    )  # fmt: skip


def _pour(job: Job, number: int, pour: Pour) -> Iterator[Block]:
    names = ", ".join(job.names[i] for i in pour.slabs)
    times = f", {pour.times} times over" if pour.times > 1 else ""
    yield heading(f"Pour {number}: {names}{times}")
    limit = job.workshop.mixer.open_minutes
    yield says(
        f"{pour.litres:.1f} litres, {pour.minutes:.0f} minutes from the first weighing. The first"
        f" concrete waits {pour.open_minutes:.0f} of the {limit:.0f} minutes it stays open."
    )
    for one in pour.batches:
        yield _card(one)


def _card(one: Batches) -> Block:
    batch = one.batch
    boxes = [f"{n}" for n in range(1, one.count + 1)]
    shown = boxes if len(boxes) <= 8 else [*boxes[:7], f"to {one.count}"]
    name = {"face": "Face coat", "backing": "Backing", "body": "Concrete"}[batch.coat]
    rows = [
        [w.name, f"{w.weighed_kg:.{_places(w.step_kg)}f}", "", *("☐" for _ in shown)]
        for w in batch.weighings
    ]
    told = f"{name}: {one.count} × {batch.litres:.1f} l, w/c {batch.water_cement_ratio:.2f}"
    share = max(4, 36 // max(1, len(shown)))
    columns = (told, "Weigh, kg", "Really", *shown)
    return table(columns, rows, (44, 14, 12, *(share for _ in shown)), right=(1,))


def _places(step_kg: float) -> int:
    return 3 if step_kg < 0.01 else 2


# --- boards ---------------------------------------------------------------------------------


def boards_page(job: Job) -> Content:
    """Write the cut lists of boards, foam, strip and bars, with the nesting drawn."""
    plan, boards = job.moulds, job.workshop.boards
    blocks: list[Block] = []
    marks = [f"{n}" for n in range(1, len(plan.boards.placed) + 1)]
    for sheet in range(plan.boards.sheets):
        title = f"Sheet {sheet + 1} of {plan.boards.sheets}"
        svg = draw_sheet(plan.boards, sheet, marks, title=title)
        blocks += [heading(f"{title}: {mm(boards.length_mm)} × {mm(boards.width_mm)} mm"),
                   drawing(svg, f"{title}, pieces numbered as in the list", 88)]  # fmt: skip
    rows = [
        [mark, p.name, mm(max(p.length_mm, p.width_mm)), mm(min(p.length_mm, p.width_mm)), ""]
        for mark, p in zip(marks, plan.boards.placed, strict=True)
    ]
    blocks.append(
        table(
            ("No", "Piece", "Long, mm", "Wide, mm", "Cut"), rows, (8, 56, 14, 14, 8), right=(2, 3)
        )
    )
    return page(
        "Boards, foam and bars",
        says(f"Saw's kerf {mm(boards.kerf_mm)} mm. Waste of the sheets"
             f" {plan.boards.waste_percent:.0f} %: keep the offcuts that are worth it."),
        *blocks,
        *_foam(job),
        *_stock(job),
        heading("Small things"),
        table(("Thing", "Used", "To have"),
              [[s.name, f"{round(s.used, 2):g} {s.unit}", f"{s.packs} {s.unit}"]
               for s in plan.supplies if s.packs],
              (50, 25, 25), right=(1, 2)),
    )  # fmt: skip


def _foam(job: Job) -> Iterator[Block]:
    pieces = [
        [f"{name}: {f.name}", f.kind, f"{mm(f.length_mm)} × {mm(f.width_mm)}",
         mm(f.height_mm), str(f.layers) if f.layers else "turned", ""]
        for name, mould in zip(job.names, job.moulds.moulds, strict=True)
        for f in mould.formers
    ]  # fmt: skip
    if pieces:
        yield heading("Formers")
        columns = ("Former", "Kind", "Size, mm", "High, mm", "Layers", "Made")
        yield table(columns, pieces, (34, 14, 20, 12, 12, 8), right=(3,))


def _stock(job: Job) -> Iterator[Block]:
    """Bars and bent strip, each length with what is cut from it."""
    cut, _, mesh = job.cut
    rows = [
        [f"{stock.diameter_mm:g} mm bar {n}",
         ", ".join(f"{c.mark} {mm(c.length_mm)}" for c in one.cuts), mm(one.waste_mm), ""]
        for stock in cut.stocks
        for n, one in enumerate(stock.lengths, start=1)
    ]  # fmt: skip
    rows += [[f"mesh {m.wire_mm:g} at {m.pitch_mm:g}",
              f"{m.mark}: {m.count} × {mm(m.length_mm)} × {mm(m.width_mm)}", "", ""]
             for m in mesh]  # fmt: skip
    rows += [["flexible strip", ", ".join(f"{c.mark} {mm(c.length_mm)}" for c in s.cuts),
              mm(s.waste_mm), ""] for s in job.moulds.strips]  # fmt: skip
    if rows:
        yield heading("Bars, mesh and strip")
        yield table(("Length", "Cut from it, mm", "Left, mm", "Cut"), rows, (18, 62, 12, 8), (2,))
