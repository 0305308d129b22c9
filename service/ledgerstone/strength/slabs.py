"""All strength results of one slab, with plates kept for slabs of the same plan."""

from __future__ import annotations

from collections import OrderedDict
from dataclasses import dataclass
from functools import cache

from shapely.geometry import Polygon

from ledgerstone.errors import OutlineUnusableError
from ledgerstone.order import Slab
from ledgerstone.outline import XY
from ledgerstone.shape import Shape
from ledgerstone.strength._holding import holding_of
from ledgerstone.strength._spacing import ruled_mm
from ledgerstone.strength.concrete import POISSON, Concrete, DesignBasis
from ledgerstone.strength.handling import Curing, Handled, Handling
from ledgerstone.strength.in_place import InPlace, in_place
from ledgerstone.strength.plate import Plate
from ledgerstone.strength.rests import turning_places
from ledgerstone.strength.tested import StripSample, tested_strength_of
from ledgerstone.strength.verdict import CAUTIONS, Verdict, worst
from ledgerstone.strength.weight import LEAST_LEFT, weight_of
from ledgerstone.workshop.records import Workshop

MAX_PLATES = 4  # factored, within MAX_NODES_KEPT
MAX_NODES_KEPT = 3000  # of all plates together: about 8 kB each, with what is kept of its loads
MAX_UNUSABLE = 96  # outlines known to have no mesh, a few bytes each
# Every plate is meshed as if it were so thick. Thickness only sets the element size at corners that
# turn inward, 12 mm here: at 20 mm the stress about an L's corner is up to 14 % low, at 12 mm less
# than 5 % (tests/laws/test_handling_laws.py). So one mesh serves every thickness, and no answer
# depends on which thickness was asked for first.
MESHED_AS_MM = 24.0


# Without its openings a slab only bends between grips and rests: on a mesh so much coarser, as fine
# about its grips, the stress in it is as near to that of a fine mesh (tests/laws/
# test_handling_laws.py).
BRACED_COARSER = 1.6

# an outline with its reliefs; where it turns; the coarse element size, mm, where it is not the rule
PlanKey = tuple[tuple[bytes, ...], tuple[XY, ...], float | None]
PlateKey = tuple[PlanKey, tuple[float, ...]]  # a plan, and what its reliefs leave


@dataclass(frozen=True, slots=True)
class SlabStrength:
    """Strength results of one slab: its handling, flat carrying by the ends, and in place."""

    handled: Handled
    too_heavy: bool
    flat_by_the_ends: Verdict
    in_place: InPlace

    @property
    def worst(self) -> Verdict | None:
        """The case with the largest utilisation, cautions and cracked sections left out."""
        every = [*self.handled.verdicts, *self.in_place.verdicts]
        aside = (*CAUTIONS, "after-a-crack")
        return worst([verdict for verdict in every if verdict.case not in aside])


class Plates:
    """A small, bounded store of factored plates: a change of rests or thickness reuses one.

    It changes how soon an answer comes, never the answer.
    """

    def __init__(self, most: int = MAX_PLATES) -> None:
        self._most = most
        self._kept: OrderedDict[PlateKey, Plate] = OrderedDict()
        self._unusable: OrderedDict[PlateKey, tuple[str, int]] = OrderedDict()

    def of(
        self,
        outline: Polygon,
        thickness_mm: float,
        e_mpa: float,
        reliefs: tuple[ThinnerZone, ...] = (),
        turning: tuple[XY, ...] = (),
        *,
        mesh_mm: float | None = None,
    ) -> Plate:
        """Return a plate of this plan: one that is kept, at another thickness, or a new one.

        Parameters
        ----------
        outline, turning
            Plan, and places where the mesh is finer, mm.
        reliefs
            Areas, and the thickness left under each, mm.
        mesh_mm
            Coarse element size; None takes ``ruled_mm``.

        Raises
        ------
        OutlineUnusableError
            The plan cannot be meshed. That is kept too: it takes long to find out.
        """
        ratios = [(area, round(left / thickness_mm, 9)) for area, left in reliefs]
        plan = ((outline.wkb, *(area.wkb for area, _ in ratios)), turning, mesh_mm)
        key = (plan, tuple(ratio for _, ratio in ratios))
        if key in self._unusable:
            reason, pieces = self._unusable[key]
            raise OutlineUnusableError(reason, pieces=pieces)
        if key in self._kept:
            self._kept.move_to_end(key)
        else:
            zones = [(area, ratio * MESHED_AS_MM) for area, ratio in ratios]
            try:
                self._kept[key] = self._made(plan, outline, e_mpa, zones)
            except OutlineUnusableError as fault:
                self._unusable[key] = fault.reason, fault.pieces
                if len(self._unusable) > MAX_UNUSABLE:
                    self._unusable.popitem(last=False)
                raise
            while len(self._kept) > 1 and self._too_many():
                self._kept.popitem(last=False)
        return self._kept[key].at(thickness_mm=thickness_mm, e_mpa=e_mpa)

    def _made(
        self, plan: PlanKey, outline: Polygon, e_mpa: float, zones: list[ThinnerZone]
    ) -> Plate:
        """A new plate; where a plan is kept whose reliefs are of other depths, on its mesh."""
        alike = next((plate for (kept, _), plate in self._kept.items() if kept == plan), None)
        if alike is not None:
            return alike.with_zones(zones)
        return Plate(
            outline,
            thickness_mm=MESHED_AS_MM,
            e_mpa=e_mpa,
            nu=POISSON,
            mesh_mm=plan[2],
            zones=zones,
            turning=plan[1],
        )

    def _too_many(self) -> bool:
        nodes = sum(len(plate.model.mesh.nodes) for plate in self._kept.values())
        return len(self._kept) > self._most or nodes > MAX_NODES_KEPT


ThinnerZone = tuple[Polygon, float]


def concrete_of(workshop: Workshop) -> Concrete:
    """Make the concrete of a profile: by the standard, or as its strips were tested."""
    recipe, trusted = workshop.recipe, workshop.concrete
    strips = [
        StripSample(
            width_mm=test.width_mm,
            thickness_mm=test.thickness_mm,
            span_mm=test.span_mm,
            load_n=test.load_n,
            age_days=test.age_days,
        )
        for test in trusted.tested
    ]
    return Concrete(
        fck_mpa=recipe.fck_mpa,
        cement=recipe.cement_class,
        share=trusted.untested_percent / 100,
        tested=tested_strength_of(strips) if strips else None,
        basis=DesignBasis(gamma_c=trusted.partial_factor),
    )


def slab_strength(
    slab: Slab,
    shape: Shape,
    workshop: Workshop,
    *,
    slab_kg: float,
    workshop_temp_c: float,
    plates: Plates,
    curing: Curing | None = None,
    turning: tuple[XY, ...] | None = None,
) -> SlabStrength:
    """Compute one slab's stresses in every position, from the mould to its rests.

    Parameters
    ----------
    curing
        Days and temperature in the mould; None takes the profile's days at workshop temperature.
    turning
        Places where it will turn on its rests, mm; None takes its own rests. With it a slab has
        one mesh for handling and in place.

    Raises
    ------
    PlateError
        The plan cannot be meshed; the checks of its shape come first and stop such a slab.
    """
    ways = handling_of(
        slab,
        shape,
        workshop,
        slab_kg=slab_kg,
        workshop_temp_c=workshop_temp_c,
        plates=plates,
        curing=curing,
        turning=turning,
    )
    return SlabStrength(
        handled=ways.chosen(),
        too_heavy=ways.too_heavy,
        flat_by_the_ends=ways.flat_by_the_ends(),
        in_place=in_place(slab, shape, ways.plate, ways.concrete, workshop),
    )


def handling_of(
    slab: Slab,
    shape: Shape,
    workshop: Workshop,
    *,
    slab_kg: float,
    workshop_temp_c: float,
    plates: Plates,
    curing: Curing | None = None,
    turning: tuple[XY, ...] | None = None,
) -> Handling:
    """Return a slab's ways through the workshop; parameters (kg, °C, mm) as ``slab_strength``.

    Raises
    ------
    PlateError
        The plan cannot be meshed.
    """
    concrete = concrete_of(workshop)
    plate = plate_of(slab, shape, concrete, plates, turning)
    return Handling(
        shape,
        plate,
        cache(lambda: _braced(slab, shape, plate, plates)),
        concrete,
        workshop,
        slab_kg,
        workshop_temp_c,
        curing if curing is not None else Curing(workshop.days.under_cover, workshop_temp_c),
        weight_of(slab, workshop),
    )


def _braced(slab: Slab, shape: Shape, plate: Plate, plates: Plates) -> Plate:
    """The slab with a rail across its openings: its plate without them, if it has any."""
    if all(opening.polygon.is_empty for opening in shape.openings):
        return plate
    whole, reliefs = shape.outline, _reliefs(slab, shape)
    turned = holding_of(whole).turned_at_mm
    x0, y0, x1, y1 = whole.bounds
    coarse = BRACED_COARSER * ruled_mm(min(x1 - x0, y1 - y0))
    return plates.of(whole, plate.thickness_mm, plate.e_mpa, reliefs, turned, mesh_mm=coarse)


def plate_of(
    slab: Slab,
    shape: Shape,
    concrete: Concrete,
    plates: Plates,
    turning: tuple[XY, ...] | None = None,
) -> Plate:
    """Return the plate of a slab: its net plan, thinner under its reliefs.

    The mesh is finer about ``turning`` (places in mm; None takes the slab's own rests) and about
    the places where it is held to be turned over.

    Raises
    ------
    OutlineUnusableError
        The plan cannot be meshed.
    """
    outline, thickness, reliefs = _polygon(shape), slab.thickness.mm, _reliefs(slab, shape)
    at = turning_places(slab, shape) if turning is None else turning
    finer = (*at, *holding_of(outline).turned_at_mm)
    return plates.of(outline, thickness, concrete.ecm_mpa, reliefs, finer)


def _reliefs(slab: Slab, shape: Shape) -> tuple[ThinnerZone, ...]:
    """What is left under each relief, `LEAST_LEFT` of the thickness where it would be less."""
    thickness = slab.thickness.mm
    return tuple(
        (area, max(thickness - relief.depth.mm, LEAST_LEFT * thickness))
        for relief, area in zip(slab.reliefs, shape.reliefs, strict=True)
    )


def _polygon(shape: Shape) -> Polygon:
    """The concrete in plan as one polygon; the largest piece where openings cut it apart."""
    if isinstance(shape.net, Polygon):
        return shape.net
    pieces = list(shape.net.geoms)
    if not pieces:
        raise OutlineUnusableError("The openings leave no concrete.", pieces=0)
    return max(pieces, key=lambda piece: piece.area)
