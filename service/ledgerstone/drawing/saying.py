"""A drawing in words, for people who cannot see it and for checking it."""

from __future__ import annotations

from collections.abc import Iterator

from ledgerstone.drawing.frame import leading_length, shown
from ledgerstone.drawing.ovals import is_oval, over_all_mm
from ledgerstone.order import UPRIGHT_USES, Cutout, Edge, LShape, Relief, Rests, Round, Slab
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape
from ledgerstone.wording import Listed, Message, Speech, Value, english

_SIDES_SHOWN = 6


def hand_of_l(outline: LShape) -> Message:
    """State to which hand an L's arm goes: where it is whole beside its notch."""
    depth, side = outline.notch.corner.split("-")
    return Message("plan-hand", depth=depth, arm="right" if side == "left" else "left")


def describe(slab: Slab, shape: Shape, speech: Speech | None = None) -> str:
    """Describe a slab's plan in plain sentences, in the customer's own units."""
    say = english if speech is None else speech.say
    return " ".join(say(message) for message in described(slab, shape))


def described(slab: Slab, shape: Shape) -> Iterator[Message]:
    """Yield a slab's plan in plain sentences."""
    like = leading_length(slab)
    yield _opening_sentence(slab, shape)
    if slab.use in UPRIGHT_USES:
        yield Message("plan-upright", use=slab.use)
    yield from (_cutout_sentence(cutout, shape, like) for cutout in slab.cutouts)
    yield from (_relief_sentence(relief) for relief in slab.reliefs)
    for names, edge in edges_alike(slab).items():
        yield Message("plan-edge", sides=sides_named(names), edge=edge_facts(edge))
    if slab.rests is not None:
        yield Message("plan-rests", rests=rests_facts(slab.rests))


def _opening_sentence(slab: Slab, shape: Shape) -> Message:
    outline, like, thickness = slab.outline, leading_length(slab), slab.thickness
    length, width = shown(like, shape.length_mm), shown(like, shape.width_mm)
    if isinstance(outline, Round):
        return Message("plan-round", across=length, thickness=thickness)
    if isinstance(outline, OrderPolygon):
        x0, y0, x1, y1 = shape.outline.bounds
        length, width = shown(like, x1 - x0), shown(like, y1 - y0)
        sides = len(outline.points)
        return Message("plan-polygon", sides=sides, length=length, width=width, thickness=thickness)
    if isinstance(outline, LShape):
        notch = outline.notch
        return Message(
            "plan-l",
            length=length,
            width=width,
            thickness=thickness,
            notch_length=notch.length,
            notch_width=notch.width,
            corner=notch.corner,
            hand=hand_of_l(outline),
        )
    return Message("plan-rectangle", length=length, width=width, thickness=thickness)


def _cutout_sentence(cutout: Cutout, shape: Shape, like: Length) -> Message:
    facts: list[Value] = [cutout_size(cutout, like)]
    x0, y0, _, _ = shape.outline.bounds
    if cutout.centre is not None:
        x, y = shown(like, cutout.centre.x.mm - x0), shown(like, cutout.centre.y.mm - y0)
        facts.append(Message("plan-centre", x=x, y=y))
    facts_listed = Listed((*facts, *cutout_facts(cutout)), joined="comma")
    if cutout.label:
        return Message("plan-opening-labelled", label=cutout.label, facts=facts_listed)
    return Message("plan-opening", facts=facts_listed)


def cutout_size(cutout: Cutout, like: Length) -> Message:
    """Describe a cut-out's shape and size; a size that nobody typed in another one's unit."""
    if cutout.diameter is not None:
        return Message("plan-size-round", across=cutout.diameter)
    if cutout.length is not None and cutout.width is not None:
        kind, length, width = cutout.kind, cutout.length, cutout.width
        return Message("plan-size-boxed", kind=kind, length=length, width=width)
    if is_oval(cutout.points):
        long, wide = (shown(like, mm) for mm in over_all_mm(cutout.points))
        return Message("plan-size-oval", length=long, width=wide)
    return Message("plan-size-polygon", sides=len(cutout.points))


def cutout_facts(cutout: Cutout) -> list[Message]:
    """State what else there is to a cut-out."""
    facts = []
    if cutout.heat:
        facts.append(Message("plan-hot"))
    if cutout.turn_degrees:
        facts.append(Message("plan-turned", degrees=float(cutout.turn_degrees)))
    if cutout.open_to is not None:
        facts.append(Message("plan-open-to", side=side_named(cutout.open_to)))
    if cutout.rim == "covered":
        facts.append(Message("plan-rim-covered"))
    if cutout.size_from == "template-to-follow":
        facts.append(Message("plan-template-to-follow"))
    return facts


def _relief_sentence(relief: Relief) -> Message:
    kind, grooves, depth = relief.kind, relief.grooves or 0, relief.depth
    x, y = relief.at.x, relief.at.y
    if relief.label:
        return Message(
            "plan-relief-labelled",
            kind=kind, label=relief.label, grooves=grooves, depth=depth, x=x, y=y,
        )  # fmt: skip
    return Message("plan-relief", kind=kind, grooves=grooves, depth=depth, x=x, y=y)


def edges_alike(slab: Slab) -> dict[tuple[str, ...], Edge]:
    """Sides that are made alike, together, in the order they were described."""
    alike: dict[Edge, list[str]] = {}
    for name, edge in slab.edges.items():
        alike.setdefault(edge, []).append(name)
    return {tuple(names): edge for edge, names in alike.items()}


def side_named(name: str) -> Message:
    """Name one side as a part of the slab: the left, side 3."""
    if name.isdigit():
        return Message("plan-side-numbered", number=int(name))
    return Message("plan-side", side=name)


def sides_named(names: tuple[str, ...]) -> Value:
    """Name some sides, in small letters: a polygon's by number, many of them by the first few."""
    first = names[:_SIDES_SHOWN]
    if all(name.isdigit() for name in names):
        numbers = ", ".join(first) + (" …" if len(names) > len(first) else "")
        return Message("plan-sides-numbered", count=len(names), numbers=numbers)
    parts = (Message("plan-side-word", side=name) for name in first)
    return Listed(tuple(parts), joined="comma")


def side_word(name: str) -> Message:
    """Name one side in a word: left, back, side 3."""
    if name.isdigit():
        return Message("plan-side-numbered", number=int(name))
    return Message("plan-side-word", side=name)


def edge_facts(edge: Edge) -> Listed:
    """State how an edge is made."""
    facts = [_profile(edge)]
    if edge.drop is not None:
        facts.append(Message("plan-edge-drop", depth=edge.drop.depth))
        if edge.drop.mitred:
            facts.append(Message("plan-edge-mitred"))
    if edge.drip:
        facts.append(Message("plan-edge-drip"))
    return Listed(tuple(facts), joined="comma")


def _profile(edge: Edge) -> Message:
    if edge.size is not None and edge.profile == "bevel":
        return Message("plan-edge-bevel", size=edge.size)
    if edge.size is not None and edge.profile == "round":
        return Message("plan-edge-round", size=edge.size)
    return Message("plan-edge-profile", profile=edge.profile)


def rests_facts(rests: Rests) -> Listed:
    """State what carries the slab."""
    facts: list[Value] = []
    if rests.kind == "frame":
        sides = Listed(
            tuple(Message("plan-side-word", side=side) for side in rests.sides), joined="comma"
        )
        facts = [
            Message("plan-rest-frame", sides=sides)
            if rests.sides
            else Message("plan-rest-frame-all")
        ]
    elif rests.units:
        units = [Message("rest-unit", use=unit.use, width=unit.width) for unit in rests.units]
        listed = Listed(tuple(units), joined="comma")
        facts = [Message("rest-units", count=len(units), units=listed)]
    else:
        count = len(rests.at) if rests.kind == "legs" else len(rests.lines)
        facts = [Message("plan-rest-kind", kind=rests.kind, count=count)]
    if rests.fixed:
        facts.append(Message("plan-rest-fixed"))
    return Listed(tuple(facts), joined="comma")
