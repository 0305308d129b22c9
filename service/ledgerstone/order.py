"""Frozen records of one order, with lengths as the customer wrote them.

A slab's x runs right and its y back from its front-left corner; turns are anticlockwise.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from types import MappingProxyType
from typing import Literal, get_args

from ledgerstone.quantities import Length
from ledgerstone.surfaces import Surface

Use = Literal["worktop", "upstand", "splashback", "end-panel", "shelf", "table", "hearth", "sill"]
SizeFrom = Literal["finished", "between-walls", "over-units", "template-to-follow"]
CutoutSizeFrom = Literal["measured", "template-to-follow"]
Corner = Literal["front-left", "front-right", "back-right", "back-left"]
Profile = Literal["square", "bevel", "round", "wall"]
Place = Literal["indoors", "wet-room", "outdoors"]
UnitFor = Literal["base", "basin", "hob", "gap"]
LeftOpen = Literal["thickness", "other-thickness", "shade", "surface", "sealer", "edges", "place"]
USES: tuple[Use, ...] = get_args(Use)
UPRIGHT_USES: tuple[Use, ...] = ("upstand", "splashback", "end-panel")  # upright in place
CORNERS: tuple[Corner, ...] = ("front-left", "front-right", "back-right", "back-left")
PLACES: tuple[Place, ...] = ("indoors", "wet-room", "outdoors")
MAX_SLABS = 8


@dataclass(frozen=True, slots=True)
class Point:
    """A place in plan."""

    x: Length
    y: Length


# --- outlines -------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Rectangle:
    """Length along the front, width from front to back; radii by corner."""

    length: Length
    width: Length
    corner_radius: Length | None = None
    corner_radii: Mapping[str, Length] = field(default_factory=lambda: MappingProxyType({}))
    kind: Literal["rectangle"] = "rectangle"


@dataclass(frozen=True, slots=True)
class Notch:
    """The rectangle that an L leaves out of one corner."""

    corner: Corner
    length: Length
    width: Length


@dataclass(frozen=True, slots=True)
class LShape:
    """A rectangle less the notch at one of its corners."""

    length: Length
    width: Length
    notch: Notch
    corner_radius: Length | None = None
    corner_radii: Mapping[str, Length] = field(default_factory=lambda: MappingProxyType({}))
    kind: Literal["l-shape"] = "l-shape"


@dataclass(frozen=True, slots=True)
class Round:
    """A disc, its left and front tangents on the axes."""

    diameter: Length
    kind: Literal["round"] = "round"


@dataclass(frozen=True, slots=True)
class Polygon:
    """Straight sides between points; sides are numbered from the first point."""

    points: tuple[Point, ...]
    corner_radius: Length | None = None
    kind: Literal["polygon"] = "polygon"


Outline = Rectangle | LShape | Round | Polygon


# --- openings and reliefs -------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Cutout:
    """An opening through the slab.

    ``kind`` names one of ``cutouts.CUTOUT_KINDS``, which says which of the sizes are set; a polygon
    has its points and no centre. ``rim_taken``: its rim was not given.
    """

    kind: str
    label: str = ""
    centre: Point | None = None
    diameter: Length | None = None
    length: Length | None = None
    width: Length | None = None
    corner_radius: Length | None = None
    points: tuple[Point, ...] = ()
    turn_degrees: float = 0.0
    rim: Literal["shown", "covered"] = "shown"
    open_to: str | None = None
    heat: bool = False
    size_from: CutoutSizeFrom = "measured"
    rim_taken: bool = field(default=False, metadata={"inside": True})


@dataclass(frozen=True, slots=True)
class Relief:
    """A place that is thinner, not open: its own small outline, set down at ``at``."""

    kind: Literal["drainer", "recess", "rebate"]
    outline: Outline
    depth: Length
    at: Point
    label: str = ""
    grooves: int | None = None
    fall: Length | None = None


@dataclass(frozen=True, slots=True)
class Drop:
    """A downstand or waterfall end hung from an edge, below the slab's top."""

    depth: Length
    mitred: bool = False


@dataclass(frozen=True, slots=True)
class Edge:
    """How one side is made."""

    profile: Profile = "square"
    size: Length | None = None
    drip: bool = False
    drop: Drop | None = None


@dataclass(frozen=True, slots=True)
class Shade:
    """A name from the palette, or a colour to match (``#rrggbb``)."""

    name: str | None = None
    match: str | None = None


@dataclass(frozen=True, slots=True)
class Finish:
    """The surface and what seals it."""

    surface: Surface
    sealer: str


# --- rests ----------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Unit:
    """One base unit under the slab, or a gap between two."""

    width: Length
    use: UnitFor = "base"


@dataclass(frozen=True, slots=True)
class Ledge:
    """A straight bearing of one depth, along its centre line."""

    start: Point
    end: Point
    depth: Length


@dataclass(frozen=True, slots=True)
class Rests:
    """What carries the slab when it is in place; ``kind`` says which members are set."""

    kind: Literal["units", "frame", "ends", "legs", "ledges", "pedestal", "full"]
    fixed: bool = False
    rails: Literal["cabinet", "hardwood", "steel"] | None = None
    units: tuple[Unit, ...] = ()
    assumed: bool | None = None  # no units are given, and ours follow the openings
    overhang: Mapping[str, Length] = field(default_factory=lambda: MappingProxyType({}))
    sides: tuple[str, ...] = ()
    width: Length | None = None
    depth: Length | None = None
    at: tuple[Point, ...] = ()
    pad: Length | None = None
    lines: tuple[Ledge, ...] = ()
    plate: Length | None = None
    centre: Point | None = None


# --- the slab, the delivery, the order ------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Slab:
    """One cast piece, ``quantity`` times; ``taken`` names what was left out and assumed."""

    outline: Outline
    thickness: Length
    shade: Shade
    finish: Finish
    label: str = ""
    quantity: int = 1
    use: Use = "worktop"
    size_from: SizeFrom = "finished"
    cutouts: tuple[Cutout, ...] = ()
    reliefs: tuple[Relief, ...] = ()
    edges: Mapping[str, Edge] = field(default_factory=lambda: MappingProxyType({}))
    place: Place = "indoors"
    rests: Rests | None = None
    taken: tuple[LeftOpen, ...] = field(default=(), metadata={"inside": True})


@dataclass(frozen=True, slots=True)
class Turn:
    """A right-angled corner on the way in: the clear widths before and after it."""

    before: Length
    after: Length


@dataclass(frozen=True, slots=True)
class Lift:
    """A passenger lift on the way in."""

    width: Length
    depth: Length
    height: Length
    door: Length
    rated_kg: float


@dataclass(frozen=True, slots=True)
class Delivery:
    """How the order leaves the workshop, and what is known of the way in.

    ``area`` stands in the postcode's place where a quote's link is all there is: never in JSON.
    """

    kind: Literal["collect", "pallet", "own-van", "fitted"] = "collect"
    postcode: str | None = None
    doorway: Length | None = None
    turn: Turn | None = None
    ceiling: Length | None = None
    lift: Lift | None = None
    steps: int | None = None
    floor: int | None = None
    people: int | None = None
    area: str | None = field(default=None, metadata={"inside": True})


@dataclass(frozen=True, slots=True)
class JoinEnd:
    """One slab's side, where a join meets it."""

    slab: int
    side: str


@dataclass(frozen=True, slots=True)
class Join:
    """Which side of which slab meets which, and the gap between them."""

    one: JoinEnd
    other: JoinEnd
    gap: Length


@dataclass(frozen=True, slots=True)
class Order:
    """One order: slabs, joins, delivery and services, answered in one language."""

    slabs: tuple[Slab, ...]
    delivery: Delivery = Delivery()
    joins: tuple[Join, ...] = ()
    needed_by: date | None = None
    sample_tile: bool = False
    templating: bool = False
    heated_curing: bool = False
    since: str | None = None
    language: str = "en"
    delivery_taken: bool = field(default=False, metadata={"inside": True})
