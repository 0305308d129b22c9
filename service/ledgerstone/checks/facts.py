"""What is known of one order: worked out once, when the first check asks for it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from functools import cached_property, partial

from ledgerstone.errors import PlateError
from ledgerstone.order import Order, Shade, Slab
from ledgerstone.price import Price, costs, making_lines, price, worth
from ledgerstone.reinforcement import SteelPlan, advise
from ledgerstone.schedule import (
    Booking,
    LeadTime,
    NeverWorked,
    calendar_of,
    days_ahead,
    lead_time,
    moulds_to_try,
)
from ledgerstone.shape import Shape, shape_of
from ledgerstone.strength.handling import Cover
from ledgerstone.strength.in_place import InPlace, in_place
from ledgerstone.strength.slabs import (
    Plates,
    SlabStrength,
    concrete_of,
    plate_of,
    slab_strength,
)
from ledgerstone.transport import area_of, packed_kg, slab_kg
from ledgerstone.work import Operation, operations
from ledgerstone.workshop.records import Area, Workshop


class Facts:
    """The facts of one order, for its checks and for the quote."""

    def __init__(
        self,
        order: Order,
        workshop: Workshop,
        bookings: Sequence[Booking] | None,
        today: date,
        plates: Plates | None = None,
    ) -> None:
        self.order = order
        self.workshop = workshop
        self.bookings = None if bookings is None else tuple(bookings)
        self.today = today
        self.plates = plates if plates is not None else Plates()

    @cached_property
    def shapes(self) -> tuple[Shape, ...]:
        """Each slab's plan."""
        return tuple(
            self.plates.remembered("shape", slab, self.workshop, 0.0, partial(self._shape_of, slab))
            for slab in self.order.slabs
        )

    def _shape_of(self, slab: Slab) -> Shape:
        return shape_of(slab, self.workshop)

    @cached_property
    def slab_kg(self) -> tuple[float, ...]:
        """Each slab's mass, one piece."""
        return tuple(
            slab_kg(slab, shape, self.workshop)
            for slab, shape in zip(self.order.slabs, self.shapes, strict=True)
        )

    @cached_property
    def packed_kg(self) -> float:
        """Mass of the order as it leaves."""
        return packed_kg(self.order, self.shapes, self.workshop)

    @cached_property
    def area(self) -> Area | None:
        """The delivery area, where one serves the postcode."""
        return area_of(self.order.delivery, self.workshop)

    @cached_property
    def casting_day(self) -> date:
        """About when it is cast: the month says how warm the workshop is. Today, if never."""
        ahead = days_ahead(self.workshop, self.bookings) + 2
        try:
            calendar = calendar_of(self.workshop, self.bookings or ())
            return calendar.add_working_days(self.today, ahead)
        except NeverWorked:
            return self.today

    @cached_property
    def strength(self) -> tuple[SlabStrength, ...]:
        """What the plate says of each slab, in every position it is ever in.

        Raises
        ------
        PlateError
            It has no answer for one of them.
        """
        return tuple(self._strength_of(i) for i in range(len(self.order.slabs)))

    def _strength_of(self, i: int) -> SlabStrength:
        return replace(self.moved(i), in_place=self.lying(i))

    def moved(self, i: int) -> SlabStrength:
        """What the plate says of one slab until it lies on its rests: they do not bear on it."""
        slab, shed_c = self.order.slabs[i], self._shed_c
        without = replace(slab, rests=None)
        make = partial(
            slab_strength,
            without,
            self.shapes[i],
            self.workshop,
            slab_kg=self.slab_kg[i],
            shed_c=shed_c,
            plates=self.plates,
            cover=self._cover,
        )
        shape = self.shapes[i]  # over units, its rests are in its size
        told = f"{shed_c} {self._cover} {self.slab_kg[i]:.6f} {shape.length_mm} {shape.width_mm}"
        return self.plates.remembered("moved", _bare(without), self.workshop, told, make)

    def lying(self, i: int) -> InPlace:
        """What the plate says of one slab on its rests."""
        slab, shape, workshop = self.order.slabs[i], self.shapes[i], self.workshop

        def make() -> InPlace:
            concrete = concrete_of(workshop)
            plate = plate_of(slab, shape, concrete, self.plates)
            return in_place(slab, shape, plate, concrete, workshop)

        told = f"{self.slab_kg[i]:.6f}"
        return self.plates.remembered("lying", _bare(slab), workshop, told, make)

    @cached_property
    def _shed_c(self) -> float:
        return self.workshop.handling.workshop_c[self.casting_day.month - 1]

    @property
    def _cover(self) -> Cover:
        """How its slabs lie in their moulds: in the heated tent where it is asked for."""
        tent = self.workshop.tent
        if tent is None or not self.order.heated_curing:
            return Cover(self.workshop.days.under_cover, self._shed_c)
        return Cover(tent.under_cover_days, max(tent.warmth_c, self._shed_c))

    def is_worked_out(self, i: int) -> bool:
        """Whether the plate has an answer for one slab."""
        try:
            self._strength_of(i)
        except PlateError:
            return False
        return True

    @cached_property
    def cover_days(self) -> tuple[float, ...]:
        """Days under cover of each slab, by the way it is handled."""
        return tuple(strength.handled.cover_days for strength in self.strength)

    @cached_property
    def steel(self) -> tuple[SteelPlan, ...]:
        """Where steel belongs in each slab."""
        return tuple(self._steel_of(i) for i in range(len(self.order.slabs)))

    def _steel_of(self, i: int) -> SteelPlan:
        slab = self.order.slabs[i]
        make = partial(advise, slab, self.shapes[i], self._strength_of(i), self.workshop)
        return self.plates.remembered(
            "steel", slab, self.workshop, (self._shed_c, self._cover), make
        )

    @cached_property
    def operations(self) -> tuple[Operation, ...]:
        """The one list of work, with as many moulds of equal pieces as its day asks for."""
        if len(self._lists) == 1 or self._chosen is None:
            return self._lists[0]
        return self._chosen[0]

    @property
    def has_a_day(self) -> bool:
        """Whether there is a day by which it can be ready."""
        return self._chosen is not None

    @property
    def lead_time(self) -> LeadTime:
        """When it is ready and when it arrives.

        Raises
        ------
        NeverWorked
            There is no such day.
        """
        if self._chosen is None:
            raise NeverWorked("no day can be promised")
        return self._chosen[1]

    @cached_property
    def _lists(self) -> tuple[tuple[Operation, ...], ...]:
        """Lists of work to choose from: by how many moulds are made of equal pieces."""
        every = self._operations(())
        tried = moulds_to_try(every, self.workshop.table)
        return tuple(self._operations(moulds) for moulds in tried) or (every,)

    def _operations(self, moulds: tuple[int, ...]) -> tuple[Operation, ...]:
        if not moulds and not self._with_tiles:
            return self._without_tiles
        return self._list_of_work(moulds, with_tiles=self._with_tiles)

    def _list_of_work(self, moulds: tuple[int, ...], *, with_tiles: bool) -> tuple[Operation, ...]:
        handled = [strength.handled for strength in self.strength]
        return operations(
            self.order,
            self.shapes,
            self.workshop,
            self.cover_days,
            tuple(one.way for one in handled),
            ripe_days=tuple(one.needs_age_days for one in handled),
            moulds=moulds,
            with_tiles=with_tiles,
        )

    @cached_property
    def _without_tiles(self) -> tuple[Operation, ...]:
        return self._list_of_work((), with_tiles=False)

    @cached_property
    def _with_tiles(self) -> bool:
        """Whether tiles are cast first: they are asked for, or the order is worth as much."""
        sample = self.workshop.sample
        if sample is None or self.order.sample_tile or sample.always_from is None:
            return sample is not None and self.order.sample_tile
        steps = self._without_tiles
        every = costs(self.order, self.shapes, steps, self.workshop, self.steel)
        return worth(making_lines(every, self.workshop)) >= sample.always_from

    @cached_property
    def _chosen(self) -> tuple[tuple[Operation, ...], LeadTime] | None:
        """The list with the fewest moulds that meets the day; where none does, the soonest ready.

        Where no day is asked for, the soonest; None where there is no day at all.
        """
        try:
            laid = [(steps, self._laid(steps)) for steps in self._lists]
        except NeverWorked:
            return None
        by = self.order.needed_by
        in_time = [one for one in laid if by is not None and one[1].arrives_latest <= by]
        return in_time[0] if in_time else min(laid, key=lambda one: one[1].ready_on)

    def _laid(self, steps: tuple[Operation, ...]) -> LeadTime:
        return lead_time(
            steps,
            self.workshop,
            self.bookings,
            self.today,
            self.area.days if self.area is not None else 0,
            by_carrier=self.order.delivery.kind == "pallet",
        )

    @cached_property
    def price(self) -> Price:
        """What the customer is asked."""
        return price(self.order, self.shapes, self.operations, self.workshop, self.steel)


def _bare(slab: Slab) -> Slab:
    """A slab without its looks, which bear on strength through its mass alone."""
    return replace(slab, label="", shade=Shade(), quantity=1)
