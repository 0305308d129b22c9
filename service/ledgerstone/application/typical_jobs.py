"""Three typical jobs, which show the maker what a change of the profile does."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date
from decimal import Decimal
from typing import Final

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.learning import hours_by_rate
from ledgerstone.application.typical_orders import basin_top, kitchen, shelf
from ledgerstone.errors import NotUnderstood, TooIntricate
from ledgerstone.json_types import Members
from ledgerstone.message import Message, Value
from ledgerstone.price import Cost, costs, making_lines, subtotal
from ledgerstone.price.costing import GROUPS
from ledgerstone.quantities import Length
from ledgerstone.quote import Quote
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.usual import usual_thickness_mm

TYPICAL_JOB_NAMES: Final = ("shelf", "basin-top", "kitchen")
_STEP_BY_STEP: Final = "basin-top"
_NOT_BOUGHT: Final = (Message("cost-recasts"),)


@dataclass(frozen=True, slots=True)
class TypicalJob:
    """Result of one job: its price, hours and ready day, or why it is sent back.

    Attributes
    ----------
    size
        Length and width of its first slab.
    surface
        The surface of its slabs.
    thickness
        Of its first slab, as it is made; None if it is sent back.
    usual
        The workshop's usual thickness, where it is made at another one.
    not_usual
        What stands in the way of the usual thickness then.
    parts
        Labour hours by the pointer of a rate in the profile; only for the job with the
        most steps.
    materials, cost, asked
        Of the same job: what is bought for it, what it costs to make, and what is asked for its
        making, before tax, services, the carrier and what is short of the smallest order.
    """

    name: str
    size: tuple[Length, Length]
    surface: str
    total: Decimal | None = None
    hands_hours: float | None = None
    ready_on: date | None = None
    parts: Mapping[str, float] | None = None
    stops: Message | str | None = None
    materials: Decimal | None = None
    cost: Decimal | None = None
    asked: Decimal | None = None
    thickness: Length | None = None
    usual: Length | None = None
    not_usual: Message | str | None = None

    @property
    def message(self) -> Message:
        """Name it, with what its price is of."""
        length, width = self.size
        told: dict[str, Value] = {"length": length, "width": width, "thick": "no"}
        if self.thickness is not None:
            told |= {"thick": "yes", "thickness": self.thickness}
        return Message("typical-job", job=self.name, surface=self.surface, **told)

    @property
    def remark(self) -> Message | str | None:
        """Why it is sent back, or of another thickness than the usual one; None if neither."""
        if self.usual is None or self.thickness is None or self.not_usual is None:
            return self.stops
        return Message(
            "typical-job-thickness", taken=self.thickness, usual=self.usual, why=self.not_usual
        )


def typical_jobs(context: QuoteContext) -> tuple[TypicalJob, ...]:
    """Quote the three jobs by the profile of a context."""
    return tuple(typical_job(name, context) for name in TYPICAL_JOB_NAMES)


def typical_job(name: str, context: QuoteContext, *, says_why: bool = True) -> TypicalJob:
    """Quote one of the three jobs.

    Parameters
    ----------
    says_why
        Whether to find out what stands in the way of the usual thickness.
    """
    orders = dict(zip(TYPICAL_JOB_NAMES, (shelf, basin_top, kitchen), strict=True))
    return _answered(name, orders[name](context.workshop), context, says_why=says_why)


def job_step_by_step(context: QuoteContext) -> TypicalJob:
    """Quote the one job whose materials and price a maker tells; its remark is left out."""
    return typical_job(_STEP_BY_STEP, context, says_why=False)


def _answered(name: str, order: Members, context: QuoteContext, *, says_why: bool) -> TypicalJob:
    outline = order["slabs"][0]["outline"]
    surface = str(order["slabs"][0]["finish"]["surface"])
    size = (Length.of_mm(outline["length"]), Length.of_mm(outline["width"]))
    answer = _quote_or_why_not(order, context)
    if not isinstance(answer, Quote):
        return TypicalJob(name, size, surface, stops=answer)
    slab = answer.order.slabs[0]
    usual = None
    if says_why and "other-thickness" in slab.taken:
        mm = usual_thickness_mm(context.workshop, str(order["slabs"][0]["use"]))
        usual = slab.thickness.like(mm)
    job = TypicalJob(
        name,
        size,
        surface,
        answer.price.total,
        sum(step.hands_minutes for step in answer.work) / 60,
        answer.lead_time.ready_on,
        {},
        thickness=slab.thickness,
        usual=usual,
        not_usual=None if usual is None else _why_not(order, usual, context),
    )
    return _step_by_step(job, answer, context.workshop) if name == _STEP_BY_STEP else job


def _quote_or_why_not(order: Members, context: QuoteContext) -> Quote | Message | str:
    """Quote a job, or say the first thing that stands in its way."""
    try:
        answer = answer_order(order, replace(context, budget=None), search=False, savings=False)
    except NotUnderstood as fault:
        return fault.faults[0].message
    except TooIntricate as fault:
        return fault.message
    if isinstance(answer, Quote):
        return answer
    return next(f.message for f in answer.findings if f.level == "stops")


def _why_not(order: Members, thickness: Length, context: QuoteContext) -> Message | str | None:
    """Say what stands in the way of a job's first slab at a thickness; None if nothing does."""
    first, *others = order["slabs"]
    slabs = [{**first, "thickness": thickness.text()}, *others]
    answer = _quote_or_why_not({**order, "slabs": slabs}, context)
    return None if isinstance(answer, Quote) else answer


def _step_by_step(job: TypicalJob, answer: Quote, workshop: Workshop) -> TypicalJob:
    """The same with the share of each rate, and with what is bought for it and asked for it."""
    by_rate = hours_by_rate(answer, workshop)
    costed = costs(answer.order, answer.shapes, answer.work, workshop, answer.steel)
    made = [cost for cost in costed if cost.group in GROUPS]
    bought = [cost for cost in made if cost.label not in _NOT_BOUGHT and not _is_hours(cost)]
    return replace(
        job,
        parts={_pointer(key, workshop): hours for key, hours in by_rate.items() if hours},
        materials=sum((cost.amount for cost in bought), Decimal(0)),
        cost=sum((cost.amount for cost in made), Decimal(0)),
        asked=subtotal(making_lines(made, _without_smallest_order(workshop))),
    )


def _without_smallest_order(workshop: Workshop) -> Workshop:
    return replace(workshop, offer=replace(workshop.offer, smallest_order=Decimal(0)))


def _is_hours(cost: Cost) -> bool:
    return isinstance(cost.label, Message) and cost.label.name == "cost-hours"


def _pointer(key: str, workshop: Workshop) -> str:
    """Return the JSON pointer of a rate in the profile, by its key."""
    table, _, rest = key.partition(".")
    name, _, last = rest.rpartition(".")
    finishes = [str(finish.surface) for finish in workshop.finishes]
    sealers = [sealer.name for sealer in workshop.sealers]
    if table in ("finishes", "sealers"):
        name = str((finishes if table == "finishes" else sealers).index(name))
    return f"/{table}/{name}/{last}"
