"""A slab laid out for the page: as it was sent, with positions for its free parts."""

from __future__ import annotations

import copy
from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import Any

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.placing_ask import PlacingRequest, read_placing
from ledgerstone.application.resolving import read_members
from ledgerstone.checks.left_open import units_taken
from ledgerstone.codec.order_out import write_member
from ledgerstone.codec.placing_schemas import ASK, PLACING
from ledgerstone.json_types import JSON
from ledgerstone.layout import (
    CUTOUT_NAMES,
    RELIEF_NAMES,
    FreeParts,
    Started,
    depth_needed_mm,
    laid_out,
    new_cutout,
    new_relief,
    started,
)
from ledgerstone.message import Message
from ledgerstone.order import Cutout, Order, Relief, Slab
from ledgerstone.quote import run_stages
from ledgerstone.remedies import Budget, placing_units
from ledgerstone.stages import StageContext
from ledgerstone.wording import Speech
from ledgerstone.wording.naming import cutout_name


def write_placing(document: JSON, context: QuoteContext, speech: Speech) -> dict[str, Any]:
    """Lay out a slab's free parts and an added piece, or a new slab.

    Raises
    ------
    NotUnderstood, TooIntricate
    """
    ask = read_members(ASK, document)
    placing = read_placing(ask, context)
    budget = context.budget if context.budget is not None else Budget()
    budget.begin(Order((placing.slab,)), context.today)
    stage_context = context.of_stages
    if "start" in ask:
        names = {name: speech.say(_called(name)) for name in CUTOUT_NAMES}
        return _started(
            started(ask["start"], placing.slab, names, placing.free.unit, stage_context)
        )
    label = ""
    if "add" in ask:
        label = _free_name(ask["add"], placing.slab, speech)
        placing = _with(ask["add"], label, placing)
    strength = _strength_test(budget, context, stage_context)
    parts = len(placing.free.cutouts) + len(placing.free.reliefs)
    slab = laid_out(
        placing.slab,
        placing.free,
        stage_context,
        strength,
        may_look_at=lambda way: budget.spends(placing_units(way, parts)),
    )
    if slab is None:
        text = speech.say(_why_not(placing, label, context))
        return _written([ask["slab"]], [FreeParts()], text, fits=False)
    added = [Message("placing-added", name=label), *_moved(placing, slab)] if label else []
    text = " ".join(map(speech.say, (*added, *_taken(placing, slab))))
    return _written([_merged(placing, slab)], [placing.free], text)


def _moved(placing: PlacingRequest, now: Slab) -> Iterator[Message]:
    """Say where each opening went that had a place when it was sent, and made room."""
    sent = placing.sent.get("cutouts", [])
    for i in sorted(placing.free.cutouts & set(range(len(sent)))):
        centre = now.cutouts[i].centre
        was = sent[i].get("centre")
        if centre and was and was != write_member(centre, compact=True):
            yield Message("placing-moved", opening=cutout_name(now, i), x=centre.x, y=centre.y)


def _taken(placing: PlacingRequest, now: Slab) -> Iterator[Message]:
    """Say which base units were taken where none are given."""
    if placing.free.rests is None or now.rests is None or now.rests.kind != "units":
        return
    yield Message("placing-units", units=units_taken(now.rests))


def _strength_test(
    budget: Budget, context: QuoteContext, stage_context: StageContext
) -> Callable[[Slab], bool]:
    """Return a test whether a slab is strong enough; without budget left it passes."""

    def is_strong_enough(slab: Slab) -> bool:
        order = Order((slab,))
        if slab.rests is None or slab.rests.kind == "full" or not budget.tries(order):
            return True
        checked = run_stages(
            order, stage_context, groups=("shape", "strength"), contain=context.contain
        )
        return not any(finding.level == "stops" for finding in checked.findings)

    return is_strong_enough


def _called(piece: str) -> Message:
    return Message("piece-name", piece=piece)


def _free_name(piece: str, slab: Slab, speech: Speech) -> str:
    """Return a name for a piece that nothing on the slab has yet."""
    name = speech.say(_called(piece))
    taken = {cutout.label for cutout in slab.cutouts} | {relief.label for relief in slab.reliefs}
    names = (name if i == 1 else f"{name} {i}" for i in range(1, len(taken) + 2))
    return next(free for free in names if free not in taken)


def _with(piece: str, label: str, placing: PlacingRequest) -> PlacingRequest:
    """Add a piece without a position, as a free part."""
    slab, free = placing.slab, placing.free
    for kind in RELIEF_NAMES:
        if kind == piece:
            relief = new_relief(kind, label, free.unit)
            slab = replace(slab, reliefs=(*slab.reliefs, relief))
            free = replace(free, reliefs=free.reliefs | {len(slab.reliefs) - 1})
            return replace(placing, slab=slab, free=free)
    slab = replace(slab, cutouts=(*slab.cutouts, new_cutout(piece, label, free.unit)))
    free = replace(free, cutouts=free.cutouts | {len(slab.cutouts) - 1})
    return replace(placing, slab=slab, free=free)


def _why_not(placing: PlacingRequest, label: str, context: QuoteContext) -> Message:
    """Return why a piece fits nowhere: it is deeper than the slab, or there is no room left."""
    needs = depth_needed_mm(placing.slab, placing.free, context.workshop)
    if needs is not None:
        thickness = placing.slab.thickness
        return Message("placing-too-deep", name=needs.label, depth=thickness.like(needs.mm, "up"))
    return Message("placing-no-room", name=label) if label else Message("placing-nowhere")


def _merged(placing: PlacingRequest, slab: Slab) -> dict[str, Any]:
    """Write the new positions into the slab's document; the rest of it stays as written."""
    slab_out, free = copy.deepcopy(placing.sent), placing.free
    for k in sorted(free.cutouts):
        _put(slab_out.setdefault("cutouts", []), k, slab.cutouts[k], "centre")
    for k in sorted(free.reliefs):
        _put(slab_out.setdefault("reliefs", []), k, slab.reliefs[k], "at")
    if free.rests is not None:
        slab_out["rests"] = write_member(slab.rests, compact=True)
    return slab_out


def _put(members: list[Any], k: int, made: Cutout | Relief, place: str) -> None:
    """Write the position of a member that was sent, or the whole of one that was added."""
    if k < len(members):
        members[k][place] = write_member(getattr(made, place), compact=True)
    else:
        members.append({**write_member(made, compact=True), **_rim(made)})


def _rim(made: Cutout | Relief) -> dict[str, JSON]:
    """Write how an opening's rim is: what a button adds says it, so that nothing is assumed."""
    return {"rim": made.rim} if isinstance(made, Cutout) else {}


def _started(made: Started) -> dict[str, Any]:
    slabs = [write_member(slab, compact=False) for slab in made.slabs]
    joins = [write_member(join, compact=False) for join in made.joins]
    return _written(slabs, list(made.free), "", joins=joins)


def _written(
    slabs: list[JSON],
    free: list[FreeParts],
    text: str,
    *,
    joins: list[JSON] | None = None,
    fits: bool = True,
) -> dict[str, Any]:
    numbers = [
        {
            "cutouts": sorted(opening.cutouts),
            "reliefs": sorted(opening.reliefs),
            "rests": opening.rests is not None,
        }
        for opening in free
    ]
    written: dict[str, Any] = PLACING.dump(
        {"fits": fits, "says": text, "slabs": slabs, "joins": joins or [], "free": numbers}
    )
    return written
