"""What is cut and what is used: boards, formers, bars, mesh and strip, and the packs to have."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator, Sequence

from ledgerstone.drawing.saying import side_word
from ledgerstone.message import (
    Figure,
    Gauge,
    Listed,
    Mass,
    Message,
    Ruled,
    Value,
)
from ledgerstone.mix import part_name
from ledgerstone.mould import Former
from ledgerstone.mould.nesting import CutLength, Stock
from ledgerstone.papers.job import Job
from ledgerstone.papers.job_blocks import (
    SheetBlock,
    heading,
    plain,
    says,
    shortened,
    table,
    ticks,
)

LITRES_PER_QUART = 0.946352946  # a quarter of a gallon: NIST Handbook 44, appendix C
_SHORT = 16  # letters of a name in a narrow column


def boards_table(job: Job) -> SheetBlock:
    """List every board piece by the number that it has on its sheet."""
    rows: list[list[Value]] = [
        [
            f"{n}",
            _piece_named(job, p.name),
            Ruled(max(p.length_mm, p.width_mm)),
            Ruled(min(p.length_mm, p.width_mm)),
            "",
        ]
        for n, p in enumerate(job.moulds.boards.placed, start=1)
    ]
    columns = (
        Message("job-no"),
        Message("job-piece"),
        Message("job-long"),
        Message("job-wide"),
        Message("job-cut"),
    )
    return table(columns, rows, (10, 44, 19, 19, 12), right=(2, 3))


def _piece_named(job: Job, name: str) -> Value:
    """Name a board piece; of several slabs, its slab's name in short before it."""
    slab, _, label = name.rpartition(": ")
    if len(job.slabs) == 1:
        return board_named(label)
    part, side = _part_and_side(label)
    return Message("job-board-of", name=shortened(slab, _SHORT), part=part, side=side)


def board_named(label: str) -> Message:
    """Name a board or strip of one mould by the side at which it stands."""
    part, side = _part_and_side(label)
    return Message("job-board", part=part, side=side)


def _part_and_side(label: str) -> tuple[str, Value]:
    bent = label.startswith("curve after")
    part, _, side = label.removeprefix("curve after").strip().partition(" ")
    if bent:
        part, side = ("rim", "") if part == "rim" else ("curve", part)
    return part, side_word(side) if side else ""


def formers(job: Job) -> Iterator[SheetBlock]:
    """List every former: plugs that are turned, knockouts and reliefs that are of foam."""
    lines = [_former(former) for mould in job.moulds.moulds for former in mould.formers]
    if lines:
        yield heading(Message("job-formers"))
        yield ticks(*lines)


def _former(former: Former) -> Message:
    name, kind = shortened(former.name, _SHORT), former.kind
    one, other, height = map(Ruled, (former.length_mm, former.width_mm, former.height_mm))
    if not former.layers:
        return Message(
            "job-former-turns", name=name, kind=kind, one=one, other=other, height=height
        )
    return Message(
        "job-former-foam",
        name=name,
        kind=kind,
        one=one,
        other=other,
        height=height,
        layers=former.layers,
    )


# --- bars, mesh, strip ----------------------------------------------------------------------


def stock_blocks(job: Job) -> Iterator[SheetBlock]:
    """List bars and bent strip, each length with what is cut from it, to tick as it is cut."""
    cut, _, mesh = job.cut
    lines = [*_bars(job), *_mesh(job), *_strips(job)]
    if not lines:
        return
    yield heading(Message("job-stock"))
    mesh_kg = Mass(sum(piece.kg for piece in mesh), 2)
    if cut.stocks:
        bars, bought = Mass(cut.kg, 2), Mass(cut.bought_kg, 2)
        yield says(Message("job-stock-kg", bars=bars, bought=bought, mesh=mesh_kg))
    elif mesh:
        yield says(Message("job-stock-mesh", mesh=mesh_kg))
    yield ticks(*lines)


def _bars(job: Job) -> Iterator[Value]:
    """List the lengths of bar to cut from, those that are cut alike as one line."""
    for stock in job.cut[0].stocks:
        bar = Gauge(stock.diameter_mm)
        first = 1
        for alike in _alike(stock.lengths):
            last = first + len(alike) - 1
            named = Message("job-bar-number", bar=bar, number=first)
            if last > first:
                named = Message("job-bar-numbers", bar=bar, first=first, last=last)
            cuts = Counter((cut.mark, cut.length_mm) for cut in alike[0].cuts)
            pieces = (_cut_named(*cut, count) for cut, count in cuts.items())
            yield _cut_from(named, tuple(pieces), alike[0].waste_mm)
            first = last + 1


def _alike(lengths: Sequence[Stock]) -> list[tuple[Stock, ...]]:
    """Lengths by what is cut from them, in the order in which each is first cut."""
    rows: dict[tuple[CutLength, ...], list[Stock]] = {}
    for length in lengths:
        rows.setdefault(length.cuts, []).append(length)
    return [tuple(row) for row in rows.values()]


def _mesh(job: Job) -> Iterator[Value]:
    for m in job.cut[2]:
        yield Message(
            "job-mesh-piece",
            mesh=mesh_named(m.wire_mm, m.pitch_mm),
            mark=m.mark,
            count=m.count,
            length=Ruled(m.length_mm),
            width=Ruled(m.width_mm),
        )


def mesh_named(wire_mm: float, pitch_mm: float) -> Message:
    """Return the name of a mesh by its wire's diameter and spacing."""
    return Message("job-mesh", wire=Gauge(wire_mm), pitch=Gauge(pitch_mm))


def _strips(job: Job) -> Iterator[Value]:
    for strip in job.moulds.strips:
        cuts = tuple(
            Message("job-cut-piece", mark=_piece_named(job, c.mark), length=Ruled(c.length_mm))
            for c in strip.cuts
        )
        yield _cut_from(Message("job-strip-flexible"), cuts, strip.waste_mm)


def _cut_from(named: Message, cuts: tuple[Message, ...], waste_mm: float) -> Message:
    listed = Listed(cuts, joined="comma")
    return Message("job-cut-from", stock=named, cuts=listed, left=Ruled(waste_mm))


def _cut_named(mark: str, length_mm: float, count: int) -> Message:
    length = Ruled(length_mm)
    if count == 1:
        return Message("job-cut-piece", mark=mark, length=length)
    return Message("job-cut-pieces", count=count, mark=mark, length=length)


# --- what is used ---------------------------------------------------------------------------


def uses_table(job: Job) -> SheetBlock:
    """List what goes into the moulds, the concrete and onto it, and the packs that hold it."""
    columns = (Message("job-thing"), Message("job-used"), Message("job-to-have"))
    rows = [*_supplies(job), *_purchases(job), *_sealers(job)]
    return table(columns, rows, (44, 28, 28), right=(1, 2))


def _supplies(job: Job) -> Iterator[list[Value]]:
    for supply in job.moulds.supplies:
        if supply.packs:
            named = Message("job-supply", supply=supply.name)
            if supply.unit == "litres":
                yield [named, *_liquid(supply.used)]
                continue
            used = _amount(plain(round(supply.used, 2), 2), supply.unit)
            yield [named, used, _amount(Figure(supply.packs, 0), supply.unit)]


def _purchases(job: Job) -> Iterator[list[Value]]:
    for bought in job.batches.purchases:
        packs: Value = Message("job-loose")
        if bought.packs is not None:
            packs = _amount(Figure(bought.packs, 0), "bags" if bought.role == "bag" else "packs")
        yield [part_name(bought), Mass(bought.kg, 2), packs]


def _sealers(job: Job) -> Iterator[list[Value]]:
    """Yield the litres of each sealer that the order takes."""
    litres: dict[str, float] = {}
    for i, slab in enumerate(job.slabs):
        name = slab.finish.sealer
        litres[name] = litres.get(name, 0.0) + slab.quantity * job.sealer_l(i)
    for name, used in litres.items():
        yield [Message("job-sealer", sealer=name), *_liquid(used)]


def _liquid(litres: float) -> tuple[Message, Message]:
    """State what is used of a liquid and what to have of it: whole litres, or whole quarts."""
    quarts = litres / LITRES_PER_QUART
    return _of_liquid(litres, quarts, 2), _of_liquid(math.ceil(litres), math.ceil(quarts), 0)


def _of_liquid(litres: float, quarts: float, places: int) -> Message:
    amount = _amount(Figure(litres, places), "litres")
    return Message("job-liquid", litres=amount, quarts=Figure(quarts, places))


def _amount(amount: Figure, unit: str) -> Message:
    one = "yes" if amount == Figure(1, 0) else "no"
    return Message("job-amount", amount=amount, unit=unit, one=one)
