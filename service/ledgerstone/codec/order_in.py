"""Reading an order from a JSON document, or all its faults by JSON Pointer."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType
from typing import Any

from marshmallow import ValidationError
from marshmallow.experimental.context import Context

from ledgerstone.codec.fields import field_name, nearest, shown
from ledgerstone.codec.order_schemas import OrderSchema
from ledgerstone.codec.semantic_validation import slab_faults
from ledgerstone.errors import Fault, NotUnderstood
from ledgerstone.layout import with_assumed_units
from ledgerstone.message import Message
from ledgerstone.order import Finish, Join, LeftOpen, Order, Place, Shade, Slab
from ledgerstone.outline import side_names, typed_length
from ledgerstone.quantities import Marks
from ledgerstone.wording import known_language, number_marks
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.usual import usual_sealer, usual_thickness_mm

_SCHEMA = OrderSchema()


def read_order(document: object, workshop: Workshop) -> Order:
    """Read an order from a JSON document.

    Raises
    ------
    NotUnderstood
        With every fault at once: wrong types and unknown keys; if there are none, impossible
        shapes and names that this workshop does not know.
    """
    if not isinstance(document, Mapping):
        raise NotUnderstood.whole(Message("order-not-object"))
    try:
        with Context(_marks(document, workshop)):
            data = _SCHEMA.load(document)
    except ValidationError as fault:
        raise NotUnderstood.of(walk("", fault.messages)) from None
    order, faults = _settle(data, workshop)
    if faults:
        raise NotUnderstood.of(faults)
    slabs = tuple(with_assumed_units(slab, workshop) for slab in order.slabs)
    return replace(order, slabs=slabs)


def _marks(document: Mapping[str, Any], workshop: Workshop) -> Marks:
    """Return the decimal and thousands separators of an order's language."""
    named, own = document.get("language"), workshop.workshop.language
    language = known_language(named, own) if isinstance(named, str) else own
    return number_marks(language, workshop.place)


def walk(pointer: str, messages: object) -> Iterable[Fault]:
    """Flatten marshmallow's nested messages into faults."""
    if isinstance(messages, Mapping):
        for key, inner in messages.items():
            here = pointer if key == "_schema" else f"{pointer}/{escape(str(key))}"
            yield from walk(here, inner)
    elif isinstance(messages, list):
        for message in messages:
            yield from walk(pointer, message)
    elif isinstance(messages, Message):
        yield Fault(pointer, messages)
    else:
        yield Fault(pointer, Message("not-as-described", why=str(messages)))


def escape(key: str) -> str:
    """Write one reference token of a JSON Pointer (RFC 6901 §3)."""
    return key.replace("~", "~0").replace("/", "~1")


def _settle(data: dict[str, Any], workshop: Workshop) -> tuple[Order, list[Fault]]:
    """Fill in the workshop's defaults, and collect the faults that a schema cannot see."""
    faults: list[Fault] = []
    slabs = []
    for i, raw in enumerate(data["slabs"]):
        slab, slab_faults_here = _slab(raw, workshop)
        pointer = f"/slabs/{i}"
        faults += [Fault(pointer + fault.pointer, fault.message) for fault in slab_faults_here]
        slabs.append(slab)
    order = Order(
        **{
            **data,
            "slabs": _alike_at_joins(slabs, data.get("joins", ())),
            "joins": tuple(data.get("joins", ())),
            "language": known_language(data.get("language"), workshop.workshop.language),
            "delivery_taken": "delivery" not in data,
        }
    )
    faults += _join_faults(order)
    if order.heated_curing and workshop.tent is None:
        faults.append(Fault("/heated_curing", Message("no-heated-tent")))
    return order, faults


def _alike_at_joins(slabs: Sequence[Slab], joins: Iterable[Join]) -> tuple[Slab, ...]:
    """Give a slab that is joined the other's shade and finish where its own were left out."""
    made = list(slabs)
    for join in joins:
        ends = (join.one.slab, join.other.slab)
        if max(ends) < len(made):
            for here, there in (ends, ends[::-1]):
                made[here] = _like(made[here], made[there])
    return tuple(made)


def _like(slab: Slab, other: Slab) -> Slab:
    def taken(name: LeftOpen) -> Slab:
        return other if name in slab.taken else slab

    finish = Finish(taken("surface").finish.surface, taken("sealer").finish.sealer)
    return replace(slab, shade=taken("shade").shade, finish=finish)


def _slab(raw: dict[str, Any], workshop: Workshop) -> tuple[Slab, list[Fault]]:
    faults: list[Fault] = []
    shade = raw.get("shade", Shade(name=workshop.palette[0].name))
    names = [offered.name for offered in workshop.palette]
    if shade.name is not None and shade.name not in names:
        faults.append(Fault("/shade/name", _unknown("shade", shade.name, names)))
    finish, finish_faults = _finish(raw.get("finish", {}), raw.get("place", "indoors"), workshop)
    usual_mm = usual_thickness_mm(workshop, raw.get("use", "worktop"))
    slab = Slab(
        **{
            "thickness": typed_length(raw["outline"]).like(usual_mm),
            **raw,
            "taken": tuple(_taken(raw)),
            "shade": shade,
            "finish": finish,
            "cutouts": tuple(raw.get("cutouts", ())),
            "reliefs": tuple(raw.get("reliefs", ())),
            "edges": MappingProxyType(raw.get("edges", {})),
        }
    )
    return slab, [*faults, *finish_faults, *slab_faults(slab, workshop)]


def _taken(raw: Mapping[str, Any]) -> Iterator[LeftOpen]:
    """Yield what was not given of a slab."""
    given = raw.keys() | raw.get("finish", {}).keys()
    left_open: tuple[LeftOpen, ...] = ("thickness", "shade", "surface", "sealer", "edges", "place")
    yield from (name for name in left_open if name not in given)


def _finish(raw: dict[str, str], where: Place, workshop: Workshop) -> tuple[Finish, list[Fault]]:
    surfaces = {str(offered.surface): offered.surface for offered in workshop.finishes}
    sealers = [offered.name for offered in workshop.sealers]
    surface = raw.get("surface", next(iter(surfaces)))
    sealer = raw.get("sealer", usual_sealer(workshop, where))
    faults = []
    if surface not in surfaces:
        faults.append(Fault("/finish/surface", _unknown("surface", surface, list(surfaces))))
    if sealer not in sealers:
        faults.append(Fault("/finish/sealer", _unknown("sealer", sealer, sealers)))
    usual = workshop.finishes[0].surface
    return Finish(surface=surfaces.get(surface, usual), sealer=sealer), faults


def _unknown(field: str, name: str, known: Sequence[str]) -> Message:
    near = nearest(name, known)
    return Message("field-cannot-be", field=field_name(field), value=shown(name), **near)


def _join_faults(order: Order) -> Iterable[Fault]:
    for i, join in enumerate(order.joins):
        for name, end in (("one", join.one), ("other", join.other)):
            pointer = f"/joins/{i}/{name}"
            if end.slab >= len(order.slabs):
                yield Fault(f"{pointer}/slab", Message("no-such-slab", number=end.slab))
                continue
            sides = side_names(order.slabs[end.slab].outline)
            if end.side not in sides:
                near = nearest(end.side, sides)
                message = Message("no-such-side", value=shown(end.side), **near)
                yield Fault(f"{pointer}/side", message)
