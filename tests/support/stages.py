"""The stages of an order, for tests that look at one of them."""

from collections.abc import Sequence
from datetime import date
from functools import cached_property

from ledgerstone.errors import OutlineUnusableError
from ledgerstone.order import Order
from ledgerstone.price import Price
from ledgerstone.schedule import Booking, LeadTime
from ledgerstone.shape import Shape
from ledgerstone.stages import (
    Assessed,
    Judged,
    Planned,
    Priced,
    Scheduled,
    StageCache,
    StageContext,
    Unassessed,
    assess,
    judge,
    plan,
    price_work,
    schedule,
)
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.work import Operation
from ledgerstone.workshop.records import DeliveryArea, Workshop


class Stages:
    """The stages of one order, each worked out when a test first asks for it."""

    def __init__(
        self,
        order: Order,
        workshop: Workshop,
        bookings: Sequence[Booking] | None,
        today: date,
        cache: StageCache | None = None,
    ) -> None:
        self.order = order
        self.workshop = workshop
        self.bookings = None if bookings is None else tuple(bookings)
        self.today = today
        self.cache = cache if cache is not None else StageCache()

    @property
    def context(self) -> StageContext:
        """What the stages depend on beside the order."""
        return StageContext(self.workshop, self.bookings, self.today, self.cache)

    @cached_property
    def planned(self) -> Planned:
        """The first stage."""
        return plan(self.order, self.context)

    @cached_property
    def assessed(self) -> Assessed | Unassessed:
        """The second stage."""
        return assess(self.planned, self.context)

    @cached_property
    def known(self) -> Assessed:
        """The second stage, where the plate has an answer for every slab.

        Raises
        ------
        OutlineUnusableError
            It has none for one of them.
        """
        if isinstance(self.assessed, Unassessed):
            raise OutlineUnusableError("The plate has no answer.", pieces=1)
        return self.assessed

    @cached_property
    def scheduled(self) -> Scheduled:
        """The third stage."""
        return schedule(self.known, self.context)

    @cached_property
    def judged(self) -> Judged:
        """The fourth stage."""
        return judge(self.known, self.scheduled)

    @cached_property
    def priced(self) -> Priced:
        """The last stage."""
        return price_work(self.scheduled)

    @property
    def shapes(self) -> tuple[Shape, ...]:
        """Each slab's plan."""
        return self.planned.shapes

    @property
    def slab_kg(self) -> tuple[float, ...]:
        """Each slab's mass, one piece."""
        return self.planned.slab_kg

    @property
    def area(self) -> DeliveryArea | None:
        """The delivery area, where one serves the postcode."""
        return self.planned.area

    @property
    def strength(self) -> tuple[SlabStrength, ...]:
        """What the plate says of each slab, in every position it is ever in."""
        return self.known.strength

    @property
    def lead_time(self) -> LeadTime:
        """When it is ready and when it arrives; an error where there is no such day."""
        return self.scheduled.promised

    @property
    def price(self) -> Price:
        """What the customer is asked."""
        return self.priced.price


def step_name(step: Operation) -> str:
    """Name a step by its message and the values in it."""
    return " ".join([step.name.name, *map(str, step.name.values.values())])
