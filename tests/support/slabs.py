"""One slab, written as a customer's page writes it, and read."""

from datetime import date

from ledgerstone.codec.order_in import read_order
from ledgerstone.order import Order, Slab
from ledgerstone.price import Price, PriceLine, price
from ledgerstone.schedule import Booking
from ledgerstone.shape import Shape, shape_of
from ledgerstone.stages import Planned, StageContext, plan
from ledgerstone.work import Operation, operations
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.stages import Stages


def box(length: object, width: object, **more: object) -> Json:
    """Write a rectangle."""
    return {"kind": "rectangle", "length": length, "width": width, **more}


def hole(diameter: object, x: object, y: object, **more: object) -> Json:
    """Write a round opening."""
    return {"kind": "circle", "diameter": diameter, "centre": {"x": x, "y": y}, **more}


def cut(kind: str, size: tuple[float, float], at: tuple[float, float], **more: object) -> Json:
    """Write a rectangular opening or a slot."""
    centre = {"x": at[0], "y": at[1]}
    return {"kind": kind, "length": size[0], "width": size[1], "centre": centre, **more}


def polygon(*points: tuple[float, float], **more: object) -> Json:
    """Write a polygon, as an outline or as an opening."""
    return {"kind": "polygon", "points": [{"x": x, "y": y} for x, y in points], **more}


def slab_json(outline: Json, *cutouts: Json, **more: object) -> Json:
    """Write a slab 40 mm thick."""
    return {"outline": outline, "thickness": 40, "cutouts": list(cutouts), **more}


def order_of(workshop: Workshop, *slabs: Json, **more: object) -> Order:
    """Read an order."""
    return read_order({"slabs": list(slabs), **more}, workshop)


def slab_of(workshop: Workshop, outline: Json, *cutouts: Json, **more: object) -> Slab:
    """Read one slab."""
    return order_of(workshop, slab_json(outline, *cutouts, **more)).slabs[0]


def shape_from(workshop: Workshop, outline: Json, *cutouts: Json, **more: object) -> Shape:
    """Work out one slab's plan."""
    return shape_of(slab_of(workshop, outline, *cutouts, **more), workshop)


def stages_of(
    order: Order, workshop: Workshop, today: date, bookings: tuple[Booking, ...] | None = None
) -> Stages:
    """Collect the stages of an order."""
    return Stages(order, workshop, bookings, today)


def plan_of(order: Order, workshop: Workshop) -> Planned:
    """Work out the first stage of an order."""
    return plan(order, StageContext(workshop, None, date(2026, 11, 25)))


def shapes_of(order: Order, workshop: Workshop) -> tuple[Shape, ...]:
    """Work out every slab's plan."""
    return tuple(shape_of(slab, workshop) for slab in order.slabs)


def steps_of(
    order: Order, workshop: Workshop, under_cover_days: float = 4.0
) -> tuple[Operation, ...]:
    """List an order's operations, moved in the plainest way."""
    shapes = shapes_of(order, workshop)
    return operations(order, shapes, workshop, (under_cover_days,) * len(shapes))


def price_of(order: Order, workshop: Workshop) -> Price:
    """Price an order, moved in the plainest way."""
    return price(order, shapes_of(order, workshop), steps_of(order, workshop), workshop)


def line_name(line: PriceLine) -> str:
    """Name a line by its message, the lines of making by their groups."""
    if isinstance(line.label, str):
        return line.label
    return str(line.label.values.get("group", line.label.name))
