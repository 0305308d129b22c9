"""The pages of the whole order: days and work, batch cards, cut lists and boards."""

from __future__ import annotations

import math
from collections.abc import Iterator

from ledgerstone.checks import Finding
from ledgerstone.drawing.casting import draw_sheet
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_batches import CAUTIONS
from ledgerstone.papers.job_blocks import (
    NAME,
    Block,
    Content,
    drawing,
    facts,
    heading,
    mm,
    page,
    says,
    shortened,
    table,
    ticks,
)
from ledgerstone.papers.job_days import day_plan
from ledgerstone.papers.words import shade_text, size_text
from ledgerstone.terms import NOT_LOOKED
from ledgerstone.wording import day_text, english

TENT = (
    "Heat the tent by electricity or warm water and keep it damp: a flame in a closed shed gives"
    " off carbon monoxide, which nobody smells. Let a slab cool before it leaves its mould."
)


def order_page(job: Job) -> Content:
    """Write the first sheets: what it is, what must be in hand, the cautions, and every day."""
    quote, lead = job.quote, job.quote.lead_time
    slabs = zip(job.slabs, quote.shapes, job.names, strict=True)
    begun = [one.begins_at.date() for one in lead.work if one.people]
    return page(
        f"Job sheet {job.name}",
        facts(
            *((f"{slab.quantity} × {shortened(name, NAME)}",
               f"{size_text(slab, shape)}; {shade_text(slab)}")
              for slab, shape, name in slabs),
            *([("Begin", day_text(min(begun)))] if begun else []),
            ("Ready", f"{day_text(lead.ready_on)}, if ordered by {day_text(lead.if_ordered_by)}"),
        ),
        *((says(f"Told the customer: {quote.terms.note}"),) if quote.terms.note else ()),
        heading("Before anything is cut"),
        ticks(*_in_hand(job)),
        heading("Take care"),
        says(*CAUTIONS, *_tent(job), *(_heeded_text(f) for f in quote.findings if _heeded(f))),
        heading("Day by day"),
        says(*_how_to_read(job)),
        day_plan(job),
    )  # fmt: skip


def _tent(job: Job) -> tuple[str, ...]:
    return (TENT,) if job.quote.order.heated_curing else ()


def _how_to_read(job: Job) -> Iterator[str]:
    """Yield what must be known of the day plan to work by it."""
    yield from (english(one) for one in job.quote.depends_on if one.name in NOT_LOOKED)
    yield (
        f"Hands are minutes of all hands together; the plan has {_pairs(job)} at work. Write down"
        " what each step really took and weighed: the next price is better for it."
    )
    if any(len(pour.slabs) > 1 for pour in job.batches.pours):
        yield (
            "Pieces of one pour on the batch cards are mixed and placed together, coat by coat;"
            " their lines here give each its share."
        )


def _heeded_text(finding: Finding) -> str:
    """Say a caution, and of young concrete how strong it is."""
    age = finding.measured.get("age_days")
    if finding.check != "young-concrete" or age is None:
        return finding.says
    return f"{finding.says} It is as strong as concrete of {age:.1f} days at 20 °C."


def _heeded(finding: Finding) -> bool:
    """Whether the workshop heeds a finding: cautions, and what a customer has only a note of."""
    return finding.level == "caution" or finding.check == "young-concrete"


def _pairs(job: Job) -> str:
    hands = job.workshop.calendar.hands
    return "one pair" if hands == 1 else f"{hands} pairs"


def _in_hand(job: Job) -> Iterator[str]:
    """Yield what must be here first: nothing is cut until all of it is ticked."""
    if any(step.stage == "sample" for step in job.steps):
        yield "The customer has said yes to the sample tile"
    yield "The drawing is signed and dated, and is this revision"
    yield "The sink, the hob and every template are here, and were measured here"


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
                   drawing(svg, f"{title}, pieces numbered as in the list", 72)]  # fmt: skip
    rows = [
        [
            mark,
            _named(p.name),
            mm(max(p.length_mm, p.width_mm)),
            mm(min(p.length_mm, p.width_mm)),
            "",
        ]
        for mark, p in zip(marks, plan.boards.placed, strict=True)
    ]
    blocks.append(
        table(
            ("No", "Piece", "Long, mm", "Wide, mm", "Cut"), rows, (8, 56, 14, 14, 8), right=(2, 3)
        )
    )
    return page(
        "To cut and to have",
        says(
            "Left and right are the mould's own, as on its plan: mirrored.",
            f"Saw's kerf {mm(boards.kerf_mm)} mm. Waste of the sheets"
            f" {plan.boards.waste_percent:.0f} %: keep the offcuts that are worth it.",
        ),
        *blocks,
        *_foam(job),
        *_stock(job),
        heading("What the order uses"),
        table(("Thing", "Used", "To have"), _used(job), (50, 25, 25), right=(1, 2)),
    )


def _named(name: str) -> str:
    """Name a board piece, its slab's name in short."""
    slab, _, part = name.rpartition(": ")
    return f"{shortened(slab, NAME)}: {part}"


def _used(job: Job) -> Iterator[list[str]]:
    """Yield what goes into the moulds, the concrete and onto it, and the packs that hold it."""
    for supply in job.moulds.supplies:
        if supply.packs:
            used = f"{round(supply.used, 2):g} {supply.unit}"
            yield [supply.name, used, _count(supply.packs, supply.unit)]
    for bought in job.batches.purchases:
        packs = "loose" if bought.packs is None else _count(bought.packs, "packs")
        yield [bought.name, f"{bought.kg:.2f} kg", packs]
    for name, litres in _sealers(job).items():
        yield [f"sealer {name}", f"{litres:.2f} litres", _count(math.ceil(litres), "litres")]


def _sealers(job: Job) -> dict[str, float]:
    """Litres of each sealer that the order takes."""
    litres: dict[str, float] = {}
    for i, slab in enumerate(job.slabs):
        litres[slab.finish.sealer] = litres.get(slab.finish.sealer, 0.0) + (
            slab.quantity * job.sealer_l(i)
        )
    return litres


def _count(number: int, units: str) -> str:
    """Say so many sheets, or one sheet."""
    return f"{number} {units.removesuffix('s') if number == 1 else units}"


def _foam(job: Job) -> Iterator[Block]:
    pieces = [
        [f"{shortened(name, NAME)}: {shortened(f.name, NAME)}", f.kind,
         f"{mm(f.length_mm)} × {mm(f.width_mm)}", mm(f.height_mm),
         str(f.layers) if f.layers else "turned", ""]
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
        if cut.stocks or mesh:
            mesh_kg = sum(piece.kg for piece in mesh)
            yield says(f"Bars {cut.kg:.2f} kg, of {cut.bought_kg:.2f} kg bought; mesh"
                       f" {mesh_kg:.2f} kg.")  # fmt: skip
        yield table(("Length", "Cut from it, mm", "Left, mm", "Cut"), rows, (18, 62, 12, 8), (2,))
