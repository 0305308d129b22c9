"""Whole orders of one slab or more, answered and looked into."""

from datetime import date
from typing import Final

from ledgerstone.codec.order_in import read_order
from ledgerstone.quote import Quote, SentBack, quote
from ledgerstone.stages import StageContext
from ledgerstone.strength.verdict import Verdict
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import stages_of
from support.stages import Stages

TODAY: Final = date(2026, 11, 25)
COLLECT: Final = {"kind": "collect"}


def answered(workshop: Workshop, *slabs: Json, delivery: Json = COLLECT) -> Quote | SentBack:
    """Read an order and answer it."""
    order = read_order({"slabs": list(slabs), "delivery": delivery}, workshop)
    return quote(order, StageContext(workshop, None, TODAY))


def stages(workshop: Workshop, slab: Json) -> Stages:
    """Collect the stages of an order of one slab."""
    return stages_of(read_order({"slabs": [slab], "delivery": COLLECT}, workshop), workshop, TODAY)


def in_place(workshop: Workshop, slab: Json) -> dict[str, Verdict]:
    """Verdicts of a slab on its rests, by case."""
    return {v.case: v for v in stages(workshop, slab).strength[0].in_place.verdicts}


def stops(answer: Quote | SentBack) -> set[str]:
    """The checks that stop an order."""
    return {finding.check for finding in answer.findings if finding.level == "stops"}
