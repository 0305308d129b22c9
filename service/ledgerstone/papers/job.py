"""All that a job sheet is written from: one order's plans, worked out once."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from functools import cached_property

from ledgerstone.containment import Contain, uncontained
from ledgerstone.drawing.mirrored import mirrored
from ledgerstone.message import Value
from ledgerstone.mix import BatchPlan, Mix, batch_plan, mixes_of, sealer_l
from ledgerstone.mould import MouldPlan, mould_plan
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.papers.descriptions import slab_titles
from ledgerstone.price import Cost, costs, steel_pieces
from ledgerstone.price.costing import mould_counts
from ledgerstone.quote import Quote
from ledgerstone.reinforcement import SteelPlan
from ledgerstone.schedule import cast_together
from ledgerstone.shade import tint_of
from ledgerstone.shape import Shape, shape_of
from ledgerstone.steel import Bar, CutList, MeshPiece, cut_list
from ledgerstone.strength.grips import best_grips_mm, rail_of
from ledgerstone.wording import Speech, speech_in
from ledgerstone.work import Operation
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True)
class Job:
    """One order as the workshop works on it.

    Attributes
    ----------
    name
        The quote's reference with its revision.
    speech
        Formats the drawings' messages.
    contain
        Context manager for each drawing: an internal fault loses that drawing only.
    unanswered
        Questions that the customer has not answered yet.
    """

    name: str
    quote: Quote
    workshop: Workshop
    speech: Speech = field(default_factory=lambda: speech_in("en"))
    contain: Contain = uncontained
    unanswered: tuple[str, ...] = ()

    @property
    def steps(self) -> tuple[Operation, ...]:
        """The one list of operations: that which was priced."""
        return self.quote.work

    @property
    def steel(self) -> tuple[SteelPlan, ...]:
        """Each slab's steel."""
        return self.quote.steel

    @property
    def slabs(self) -> tuple[Slab, ...]:
        """The slabs of the order."""
        return self.quote.order.slabs

    @cached_property
    def names(self) -> tuple[Value, ...]:
        """What each slab is called."""
        return slab_titles(self.quote.order)

    @property
    def is_alone(self) -> bool:
        """Whether there is one slab: then its pour is on its own sheet."""
        return len(self.slabs) == 1

    @property
    def counts(self) -> tuple[int, ...]:
        """How many moulds of each slab are made."""
        return mould_counts(self.quote.order, self.steps)

    @cached_property
    def in_mould(self) -> tuple[tuple[Slab, Shape], ...]:
        """Each slab as it lies in its mould, mirrored, with its plan."""
        turned = [mirrored(*both) for both in zip(self.slabs, self.quote.shapes, strict=True)]
        return tuple((slab, shape_of(slab, self.workshop)) for slab in turned)

    @cached_property
    def batches(self) -> BatchPlan:
        """What is mixed."""
        tints = [tint_of(slab, self.workshop) for slab in self.slabs]
        order, shapes = self.quote.order, self.quote.shapes
        loads = cast_together(self.steps, self.workshop.table)
        return batch_plan(order, shapes, self.workshop, tints=tints, loads=loads)

    @cached_property
    def moulds(self) -> MouldPlan:
        """What the moulds are made of, sides by their names in the mould: left and right over."""
        slabs, shapes = zip(*self.in_mould, strict=True)
        order = replace(self.quote.order, slabs=slabs)
        return mould_plan(order, shapes, self.workshop, moulds=self.counts)

    @cached_property
    def cut(self) -> tuple[CutList, Sequence[Bar], Sequence[MeshPiece]]:
        """Bars cut from stock, and every bar and piece of mesh."""
        bars, mesh = steel_pieces(self.quote.order, self.steel, self.workshop)
        return cut_list(bars, self.workshop.steel.stock_length_mm), bars, mesh

    @cached_property
    def costs(self) -> tuple[Cost, ...]:
        """What the order costs the workshop."""
        return costs(self.quote.order, self.quote.shapes, self.steps, self.workshop, self.steel)

    def mix_of(self, slab: Slab) -> Mix:
        """Return the mix of a slab's back."""
        return mixes_of(tint_of(slab, self.workshop), self.workshop)[-1]

    def sealer_l(self, i: int) -> float:
        """Litres of sealer that one piece takes, all coats together."""
        name = self.slabs[i].finish.sealer
        sealer = next(sealer for sealer in self.workshop.sealers if sealer.name == name)
        area_m2 = self.quote.shapes[i].net_area_m2
        return sealer_l(area_m2, sealer.coats, sealer.coverage_m2_per_l)

    def rail_in(self, i: int, shape: Shape) -> tuple[XY, XY] | None:
        """Return where the rail is clamped on a slab as it is drawn, if its way has one."""
        if not self.quote.strength[i].handled.way.rail or not shape.openings:
            return None
        return rail_of(shape, along_y=best_grips_mm(shape.outline)[1])

    def wet_kg(self, i: int) -> float:
        """Mass of one piece as it is poured, steel in it."""
        placed_m3 = self.batches.slabs[i].placed_l / 1000
        fresh = placed_m3 * self.mix_of(self.slabs[i]).fresh_kg_per_m3
        return fresh + self.steel_kg(i)

    def steel_kg(self, i: int) -> float:
        """Mass of steel in one piece, kg, by the allowance in its reported mass."""
        return self.quote.shapes[i].net_area_m2 * self.workshop.rates.steel_kg_per_m2

    def cured_kg(self, i: int) -> float:
        """Mass of one piece as it leaves."""
        return self.quote.weights[i].slab_kg

    def turned_kg(self, i: int) -> float:
        """Mass of one piece as it is turned, with its mould where that stays on."""
        if not self.quote.strength[i].handled.way.sides_on:
            return self.cured_kg(i)
        mould = self.quote.shapes[i].outline_area_m2 * self.workshop.handling.mould_kg_per_m2
        return self.cured_kg(i) + mould

    def minutes_in_all(self) -> int:
        """Minutes of hands of the whole order."""
        return sum(step.hands_minutes for step in self.steps)
