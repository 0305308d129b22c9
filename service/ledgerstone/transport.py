"""Getting a slab there: masses, postcodes and delivery areas, the way in, and hands."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from decimal import Decimal
from types import MappingProxyType
from typing import Literal

from ledgerstone.mix import Tint, hardened_kg_per_m3, palette_tint
from ledgerstone.order import Delivery, Lift, Order, Slab
from ledgerstone.shade import shade_recipe
from ledgerstone.shape import Shape
from ledgerstone.workshop.records import Area, Workshop

MM3_PER_M3 = 1e9
MM2_PER_M2 = 1e6
# The BS 7666 v2.0 schema's pattern, read with fullmatch, with P added to the third letter of
# A9A districts (N1P and W1P are in use); GIR 0AA is no place a slab goes to.
_UK_POSTCODE = re.compile(
    r"([A-PR-UWYZ][0-9][0-9]?|[A-PR-UWYZ][A-HK-Y][0-9][0-9]?|[A-PR-UWYZ][0-9][A-HJKPSTUW]"
    r"|[A-PR-UWYZ][A-HK-Y][0-9][ABEHMNPRVWXY]) ([0-9][ABD-HJLNP-UW-Z]{2})"
)
_UK_RANGE = re.compile(r"([A-Z]{1,2})([0-9]{1,2})(?:-([0-9]{1,2}))?")


def tidy_postcode(text: str, country: str = "GB") -> str | None:
    """Write a postcode as it is usually written, or None where it is none.

    Spaces, hyphens and dots are ignored; in other countries than ``GB`` any short text passes.

    Source: BS 7666 v2.0 schema pattern (National Archives), with its known defect mended.
    """
    letters = re.sub(r"[\s.\-]", "", text).upper()
    if country != "GB":
        return letters or None
    spaced = f"{letters[:-3]} {letters[-3:]}"
    return spaced if _UK_POSTCODE.fullmatch(spaced) else None


def area_for(postcode: str, workshop: Workshop) -> Area | None:
    """Find the first delivery area that a tidy postcode falls in."""
    outward = postcode.partition(" ")[0]
    for area in workshop.areas:
        if any(_begins(outward, pattern) for pattern in area.postcodes):
            return area
    return None


def _begins(outward: str, pattern: str) -> bool:
    """Whether an outward code falls under ``HR`` (an area), ``LD1`` or ``LD1-6`` (districts)."""
    here = re.match(r"([A-Z]+)([0-9]*)", outward)
    there = _UK_RANGE.fullmatch(pattern)
    if here is None:  # postcodes of figures alone, in other countries
        return outward.startswith(pattern)
    if there is None:
        return here[1] == pattern if pattern.isalpha() else outward.startswith(pattern)
    low = int(there[2])
    high = int(there[3]) if there[3] else low
    return here[1] == there[1] and here[2] != "" and low <= int(here[2]) <= high


def tint_of(slab: Slab, workshop: Workshop) -> Tint:
    """Return what colours a slab's mix, of the palette or matched; else the recipe's own cement."""
    recipe = shade_recipe(slab.shade, workshop)
    if recipe is None:
        return palette_tint(slab, workshop)
    return Tint("white" if recipe.cement == "white" else "grey", recipe.doses)


def slab_kg(slab: Slab, shape: Shape, workshop: Workshop) -> float:
    """Mass of one piece: concrete by its volume, pigment in it, and steel's allowance by area."""
    density = hardened_kg_per_m3(tint_of(slab, workshop), workshop)
    concrete = shape.volume_mm3 / MM3_PER_M3 * density
    return concrete + shape.net_area_mm2 / MM2_PER_M2 * workshop.rates.steel_kg_per_m2


def packed_kg(order: Order, shapes: tuple[Shape, ...], workshop: Workshop) -> float:
    """Mass of the whole order as it leaves: slabs, crates, and a pallet unless collected."""
    pieces = sum(slab.quantity for slab in order.slabs)
    slabs = sum(
        slab.quantity * slab_kg(slab, shape, workshop)
        for slab, shape in zip(order.slabs, shapes, strict=True)
    )
    pallet = workshop.lifting.pallet_kg if order.delivery.kind == "pallet" else 0.0
    return slabs + pieces * workshop.lifting.crate_kg_per_slab + pallet


def people_to_lift(kg: float, workshop: Workshop) -> int:
    """Hands round one slab, by the workshop's own share for one person. Not a safe limit."""
    return max(1, math.ceil(kg / workshop.lifting.kg_per_person - 1e-9))


def delivery_price(order: Order, area: Area | None) -> Decimal | None:
    """Price of the delivery asked for, before tax, or None where it is not offered."""
    kind = order.delivery.kind
    if kind == "collect":
        return Decimal(0)
    if area is None:
        return None
    price = {"pallet": area.pallet, "own-van": area.own_van, "fitted": area.fitted}[kind]
    if price is None or kind != "fitted":
        return price
    return price + area.fitting_per_slab * sum(slab.quantity for slab in order.slabs)


def area_of(delivery: Delivery, workshop: Workshop) -> Area | None:
    """Find the area of a delivery, or None where it is collected, unsaid or not served."""
    if delivery.kind == "collect":
        return None
    if delivery.postcode is None:
        return next((area for area in workshop.areas if area.name == delivery.area), None)
    postcode = tidy_postcode(delivery.postcode, workshop.workshop.country)
    return area_for(postcode, workshop) if postcode is not None else None


# --- the way in ------------------------------------------------------------------------------

PADDING_MM = 20.0  # foam on both faces of a slab on edge; common practice, no source
_ANGLES = 360  # steps of a quarter turn: the first look, before the refinement


@dataclass(frozen=True, slots=True)
class Piece:
    """A slab carried on edge: its box's longest side level, the shortest across the way."""

    length_mm: float
    depth_mm: float
    across_mm: float


def on_edge(slab: Slab, shape: Shape) -> Piece:
    """Return the slab's box as it is carried: a drop makes it thick, foam is on both faces."""
    drops = [edge.drop.depth.mm for edge in slab.edges.values() if edge.drop is not None]
    x0, y0, x1, y1 = shape.outline.bounds
    thin, middle, long = sorted((x1 - x0, y1 - y0, shape.thickness_mm + max(drops, default=0.0)))
    return Piece(long, middle, thin + PADDING_MM)


def longest_round_corner(a_mm: float, b_mm: float, w_mm: float) -> float:
    """Length of the longest piece that gets round a right-angled corner, lying level.

    Parameters
    ----------
    a_mm, b_mm
        Clear widths before and after the corner.
    w_mm
        Width of the piece in plan.

    Returns
    -------
    float
        In mm, by geometry alone: the people at its ends need room too. Nought where the piece is
        wider than either way; never less than the wider of them, into which it slides sideways.

    Notes
    -----
    The least of ``(a sin t + b cos t - w) / (sin t cos t)`` over a quarter turn.

    Source: derived and checked numerically, handling page §3.1; at ``w = 0`` the ladder formula
    ``(a^(2/3) + b^(2/3))^(3/2)``.
    """
    if w_mm > min(a_mm, b_mm):
        return 0.0

    def longest_at(t: float) -> float:
        return (a_mm * math.sin(t) + b_mm * math.cos(t) - w_mm) / (math.sin(t) * math.cos(t))

    turning = -_greatest(lambda t: -longest_at(t))
    return max(turning, a_mm, b_mm)


def _greatest(of: Callable[[float], float]) -> float:
    """Greatest value over the open quarter turn: a look at every step, then thirds of the best."""
    step = math.pi / 2 / _ANGLES
    best = max(range(1, _ANGLES), key=lambda i: of(i * step)) * step
    low, high = max(best - step, step / 1e6), min(best + step, math.pi / 2 - step / 1e6)
    for _ in range(80):
        third = (high - low) / 3
        if of(low + third) < of(high - third):
            low += third
        else:
            high -= third
    return of((low + high) / 2)


def longest_across(width_mm: float, depth_mm: float, w_mm: float) -> float:
    """Longest piece of a width in plan that lies in a rectangle of floor, askew or not, in mm.

    Nought where it lies there no way round. Source: geometry; at ``w = 0`` the diagonal.
    """
    if w_mm > min(width_mm, depth_mm):
        return 0.0
    askew = _greatest(
        lambda t: min(
            (width_mm - w_mm * math.sin(t)) / math.cos(t),
            (depth_mm - w_mm * math.cos(t)) / math.sin(t),
        )
    )
    return max(askew, width_mm, depth_mm)


def stands_up(length_mm: float, depth_mm: float, height_mm: float) -> bool:
    """Whether a piece on edge can be stood up on its end beneath a ceiling.

    Source: geometry: its diagonal passes the vertical on the way; handling page §3.1.
    """
    return math.hypot(length_mm, depth_mm) <= height_mm


def least_tilt_degrees(piece: Piece, plan_mm: float, height_mm: float) -> float | None:
    """Least tilt, in its own upright plane, at which a piece is so short in plan, or None.

    Parameters
    ----------
    plan_mm
        How long it may be in plan: ``L cos t + D sin t``.
    height_mm
        Clear height all the while it is tilted: ``L sin t + D cos t``, and its diagonal once it
        has to stand steeper than that.

    Notes
    -----
    Source: geometry, handling page §3.1.
    """
    long, deep = piece.length_mm, piece.depth_mm
    if long <= plan_mm:
        return 0.0 if deep <= height_mm else None
    if deep > plan_mm:
        return None
    tilt = math.atan2(deep, long) + math.acos(min(1.0, plan_mm / math.hypot(long, deep)))
    steepest = min(tilt, math.atan2(long, deep))
    highest = long * math.sin(steepest) + deep * math.cos(steepest)
    return math.degrees(tilt) if highest <= height_mm + 1e-9 else None


def tilt_in_lift_degrees(piece: Piece, lift: Lift) -> float | None:
    """Least tilt at which a piece stands in a lift's car, or None where it does not go in.

    Its door must be as wide as the piece is across; the door's height is not asked.
    """
    if piece.across_mm > lift.door.mm:
        return None
    room = longest_across(lift.width.mm, lift.depth.mm, piece.across_mm)
    return least_tilt_degrees(piece, room, lift.height.mm)


# --- hands -----------------------------------------------------------------------------------

Who = Literal["man", "woman"]
Zone = Literal["above-shoulder", "shoulder", "elbow", "knuckle", "lower-leg"]
# The HSE's filter, kg, with the hands close to the body and far from it. A zone is named by its
# upper end. L23 figure 23, as handling page §1.1 gives it; the law sets no limit.
_FILTER_KG: Mapping[tuple[Who, Zone], tuple[float, float]] = MappingProxyType(
    {
        ("man", "above-shoulder"): (10.0, 5.0),
        ("man", "shoulder"): (20.0, 10.0),
        ("man", "elbow"): (25.0, 15.0),
        ("man", "knuckle"): (20.0, 10.0),
        ("man", "lower-leg"): (10.0, 5.0),
        ("woman", "above-shoulder"): (7.0, 3.0),
        ("woman", "shoulder"): (13.0, 7.0),
        ("woman", "elbow"): (16.0, 10.0),
        ("woman", "knuckle"): (13.0, 7.0),
        ("woman", "lower-leg"): (7.0, 3.0),
    }
)
_TEAM_FACTORS: Mapping[int, float] = MappingProxyType({1: 1.0, 2: 2 / 3, 3: 1 / 2})


def filter_kg(who: Who, *zones: Zone, far: bool = False) -> float:
    """Mass above which one person's lift is to be assessed: the smallest of the zones passed.

    A sign that a lift must be assessed, never that it is safe.

    Source: HSE L23 and INDG143, the lifting filter; handling page §1.1.
    """
    return min(_FILTER_KG[who, zone][far] for zone in zones)


def team_lift_kg(*, men: int = 0, women: int = 0) -> float | None:
    """Mass above which a team's lift is to be assessed, or None where there is no factor for it.

    Hands close to the body between knuckle and elbow, the filter's best zone. Two people have 2/3
    of what each has, three have 1/2. The HSE gives no factor for four or more, so none is made up.
    No verdict, and no safe limit.

    Raises
    ------
    ValueError
        Nobody lifts, or fewer than nobody.

    Notes
    -----
    Source: HSE L23, team handling; handling page §1.2.
    """
    if min(men, women) < 0 or men + women == 0:
        raise ValueError(f"a team of {men} men and {women} women lifts nothing")
    factor = _TEAM_FACTORS.get(men + women)
    if factor is None:
        return None
    return factor * (men * filter_kg("man", "elbow") + women * filter_kg("woman", "elbow"))
