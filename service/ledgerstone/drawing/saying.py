"""A drawing in words, for those who cannot see it and for those who check it."""

from __future__ import annotations

from types import MappingProxyType

from ledgerstone.cutouts import kind_of
from ledgerstone.drawing.frame import leading_length, spoken
from ledgerstone.order import Cutout, Edge, LShape, Relief, Rests, Round, Slab
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.quantities import Length
from ledgerstone.shape import Shape

_SIDES_SHOWN = 6
# Pieces that stand upright in place; nothing in an order says otherwise than on their front side.
UPRIGHT = MappingProxyType(
    {"upstand": "an upstand", "splashback": "a splashback", "end-panel": "an end panel"}
)
_SAID = MappingProxyType({"notch-x": "notch along the length", "notch-y": "notch along the width"})


def hand_of_l(outline: LShape) -> str:
    """Say to which hand an L's arm goes: where it is whole beside its notch."""
    depth, side = outline.notch.corner.split("-")
    arm = "right" if side == "left" else "left"
    way = "comes forward" if depth == "front" else "goes back"
    return f"as you stand at its front, its arm {way} on the {arm}"


def describe(slab: Slab, shape: Shape) -> str:
    """Say a slab's plan in plain sentences, in the customer's own units."""
    like = leading_length(slab)
    sentences = [_opening_sentence(slab, shape)]
    if slab.use in UPRIGHT:
        sentences.append(
            f"It is {UPRIGHT[slab.use]} that stands on its front side, drawn lying flat."
        )
    sentences += [_cutout_sentence(cutout, shape, like) for cutout in slab.cutouts]
    sentences += [_relief_sentence(relief) for relief in slab.reliefs]
    sentences += [
        f"{side_title(names)}: {edge_text(edge)}." for names, edge in edges_alike(slab).items()
    ]
    if slab.rests is not None:
        sentences.append(f"It rests on {rests_text(slab.rests)}.")
    return " ".join(sentences)


def _opening_sentence(slab: Slab, shape: Shape) -> str:
    outline, like = slab.outline, leading_length(slab)
    length, width = spoken(like, shape.length_mm), spoken(like, shape.width_mm)
    thick = f"{slab.thickness.text()} thick"
    if isinstance(outline, Round):
        return f"A round slab {length} across, {thick}."
    if isinstance(outline, OrderPolygon):
        x0, y0, x1, y1 = shape.outline.bounds
        over_all = f"{spoken(like, x1 - x0)} by {spoken(like, y1 - y0)} over all"
        return f"A slab with {len(outline.points)} sides, {over_all}, {thick}."
    if isinstance(outline, LShape):
        notch = outline.notch
        bite = f"{notch.length.text()} by {notch.width.text()}"
        corner = notch.corner.replace("-", " ")
        return (
            f"An L-shaped slab {length} by {width}, {thick}, less {bite} at its {corner} corner:"
            f" {hand_of_l(outline)}."
        )
    return f"A slab {length} by {width}, {thick}."


def _cutout_sentence(cutout: Cutout, shape: Shape, like: Length) -> str:
    named = f" ({cutout.label})" if cutout.label else ""
    x0, y0, _, _ = shape.outline.bounds
    place = ""
    if cutout.centre is not None:
        x, y = spoken(like, cutout.centre.x.mm - x0), spoken(like, cutout.centre.y.mm - y0)
        place = f", its centre {x} from the left and {y} from the front"
    extra = "".join(f", {note}" for note in cutout_notes(cutout))
    return f"An opening{named}: {kind_of(cutout).described(cutout)}{place}{extra}."


def cutout_notes(cutout: Cutout) -> list[str]:
    """Say what else there is to a cut-out."""
    notes = []
    if cutout.heat:
        notes.append("hot appliance")
    if cutout.turn_degrees:
        notes.append(f"turned {cutout.turn_degrees:g}°")
    if cutout.open_to is not None:
        notes.append(f"open to {_side_words(cutout.open_to)}")
    if cutout.rim == "covered":
        notes.append("rim covered")
    if cutout.size_from == "template-to-follow":
        notes.append("template to follow")
    return notes


def _relief_sentence(relief: Relief) -> str:
    named = f" ({relief.label})" if relief.label else ""
    grooves = f" with {relief.grooves} grooves" if relief.grooves else ""
    at = f"{relief.at.x.text()} from the left and {relief.at.y.text()} from the front"
    return f"A {relief.kind}{named}{grooves}, {relief.depth.text()} deep, its corner {at}."


def edges_alike(slab: Slab) -> dict[tuple[str, ...], Edge]:
    """Sides that are made alike, together, in the order they were described."""
    alike: list[tuple[Edge, list[str]]] = []
    for name, edge in slab.edges.items():
        same = next((names for made, names in alike if made == edge), None)
        if same is None:
            alike.append((edge, [name]))
        else:
            same.append(name)
    return {tuple(names): edge for edge, names in alike}


def _side_words(name: str) -> str:
    return f"side {name}" if name.isdigit() else f"the {_SAID.get(name, name)}"


def side_title(names: tuple[str, ...]) -> str:
    """Name some sides: a polygon's by number, many of them by the first few."""
    numbered = all(name.isdigit() for name in names)
    shown = ", ".join(_SAID.get(name, name) for name in names[:_SIDES_SHOWN]) + (
        " …" if len(names) > _SIDES_SHOWN else ""
    )
    if not numbered:
        return shown.capitalize()
    return f"Side {shown}" if len(names) == 1 else f"Sides {shown}"


def edge_text(edge: Edge) -> str:
    """Say how an edge is made."""
    size = f" {edge.size.text()}" if edge.size is not None else ""
    says = {
        "square": "square, arris eased",
        "bevel": f"bevel{size}",
        "round": f"round{size}",
        "wall": "unseen",
    }[edge.profile]
    if edge.drop is not None:
        says += f", drop {edge.drop.depth.text()}" + (", mitred" if edge.drop.mitred else "")
    return says + (", drip" if edge.drip else "")


def rests_text(rests: Rests) -> str:
    """Say what carries the slab."""
    says = {
        "units": ", ".join(f"{unit.use} {unit.width.text()}" for unit in rests.units) or "units",
        "frame": f"a frame ({', '.join(rests.sides) or 'all sides'})",
        "ends": "its two ends",
        "legs": f"{len(rests.at)} legs",
        "ledges": f"{len(rests.lines)} ledges",
        "full": "a bed all over",
    }[rests.kind]
    return says + (", fixed" if rests.fixed else "")
