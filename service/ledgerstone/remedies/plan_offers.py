"""What a good maker would offer where a plan cannot be made: move, shrink, make room, round."""

from __future__ import annotations

from collections.abc import Iterable
from functools import partial

from ledgerstone.checks import Facts, Finding
from ledgerstone.checks.shape import strip_rule
from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.order import Cutout, LShape, Order, Rectangle, Slab
from ledgerstone.remedies.change import Change, Path, changed
from ledgerstone.remedies.layout import DIRECTIONS, Freedom, Layout, find_layout
from ledgerstone.remedies.option import (
    ROUND_TO_MM,
    WITHIN,
    Option,
    layout_changes,
    named,
    resized_outline,
)
from ledgerstone.remedies.strength_offers import helps, lightens
from ledgerstone.shape import Shape

MOST_AT_ONCE = 2
_ALIKE_MM = 2.0  # within the cast tolerance
_WANTS_THICKER = frozenset(
    (
        "aggregate-too-large",
        "relief-too-deep",
        "too-thin-for-drip",
        "edge-too-deep",
        "edge-too-thin-for-finish",
        "steel-rusts",
    )
)
_TOO = ("too-thin", "too-thick")
GRAINS_WIDE = 5.0  # ACI 318-19 26.4.2.1(a)(5): a fifth of the narrowest place
# Kept beyond the rule, so that a place rounded to 5 mm, or to 1 mm where room is short, holds.
_MARGINS = ((5.2, ROUND_TO_MM), (1.5, 1.0), (0.0, 0.1))


def layout_options(
    finding: Finding, order: Order, facts: Facts, most_share: float
) -> Iterable[Option]:
    """Move the openings that a finding speaks of, shrink them, make room, or all of it."""
    if finding.slab is None:
        return
    i, slab = finding.slab, order.slabs[finding.slab]
    every = frozenset(range(len(slab.cutouts)))
    spoken_of = frozenset(_named(finding)) or every
    grows = _grows(order, i)
    small = len(spoken_of) <= MOST_AT_ONCE
    everything = list(laid("everything", i, order, facts, Freedom(every, every, grows, most_share)))
    freedoms = [
        *(("move", Freedom(moves=frozenset((k,)))) for k in sorted(spoken_of) if small),
        ("move", Freedom(moves=spoken_of)),
        ("shrink", Freedom(shrinks=spoken_of, most_share=most_share)),
    ]
    widest = [
        ("grow-width", Freedom(grows=grows & {"width"}, most_share=min(most_share, WITHIN))),
        ("grow", Freedom(grows=grows, most_share=min(most_share, WITHIN))),
        ("move-all", Freedom(moves=every)),
        ("move-and-shrink", Freedom(moves=every, shrinks=every, most_share=most_share)),
    ]
    # Where every freedom does not put the whole slab right, no less will; its parts may be.
    for effect, freedom in freedoms + widest if everything else freedoms:
        if freedom.moves or freedom.shrinks or freedom.grows:
            yield from laid(effect, i, order, facts, freedom)
    yield from everything
    yield from _open_sides(finding, order, facts.shapes[i])


def whole_layouts(
    finding: Finding, order: Order, facts: Facts, most_share: float
) -> Iterable[Option]:
    """Lay the whole slab out anew, with as little freedom as will do."""
    if finding.slab is None:
        return
    i, slab = finding.slab, order.slabs[finding.slab]
    every = frozenset(range(len(slab.cutouts)))
    grows = _grows(order, i)
    everything = list(laid("everything", i, order, facts, Freedom(every, every, grows, most_share)))
    if everything:  # where that does not do, no less will
        yield from laid("move-all", i, order, facts, Freedom(moves=every))
        wider = Freedom(grows=grows & {"width"}, most_share=min(most_share, WITHIN))
        if wider.grows:
            yield from laid("grow-width", i, order, facts, wider)
        yield from everything
    if most_share <= WITHIN:
        yield from _open_sides(finding, order, facts.shapes[i])
    if not everything:
        yield from fewer_openings(finding, order, facts, most_share)


def _grows(order: Order, i: int) -> frozenset[str]:
    """Which sizes of a slab may grow: none where its room is fixed."""
    slab = order.slabs[i]
    if isinstance(slab.outline, Rectangle) and slab.size_from != "between-walls":
        return frozenset(("length", "width"))
    return frozenset()


def _named(finding: Finding) -> Iterable[int]:
    """Indices of the openings that a finding points at."""
    return map(int, named(finding, "cutouts"))


def laid(effect: str, i: int, order: Order, facts: Facts, freedom: Freedom) -> Iterable[Option]:
    """One option from a layout, rounded as coarsely as its room allows."""
    slab, shape = order.slabs[i], facts.shapes[i]
    if any(opening.polygon.is_empty for opening in shape.openings):
        return
    clear = _clear(slab, shape, facts)
    for direction in DIRECTIONS if len(freedom.moves) > 1 else DIRECTIONS[:1]:
        lay = partial(find_layout, slab, shape, clear, freedom, direction=direction)
        tight = lay(margin_mm=0.0)
        if tight is None:
            continue
        for margin_mm, to_mm in _margins(tight, shape):
            layout = lay(margin_mm=margin_mm) if margin_mm else tight
            if layout is not None:
                changes, cost = layout_changes(order, i, shape, layout, to_mm)
                if changes:
                    yield Option(effect, changes, cost + 0.1 * len(changes))
                    return


def _margins(tight: Layout, shape: Shape) -> Iterable[tuple[float, float]]:
    """Round to 5 mm what moves by more, and to 1 mm what hardly moves."""
    moves = [abs(by) for moved in tight.moved_mm.values() for by in moved]
    shrinks = [share * shape.openings[i].longer_mm for i, share in tight.shrunk.items()]
    most = max([*moves, *shrinks, *tight.grown_mm.values()], default=0.0)
    return _MARGINS if most > ROUND_TO_MM / 2 else (_MARGINS[1], _MARGINS[0], _MARGINS[2])


def _clear(slab: Slab, shape: Shape, facts: Facts) -> list[float]:
    """What each opening's rule asks beside it, and what the grains need to get there."""
    grains = GRAINS_WIDE * facts.workshop.recipe.largest_aggregate_mm
    clear = []
    for opening in shape.openings:
        rule = strip_rule(slab.cutouts[opening.index], opening.longer_mm, facts.workshop)
        clear.append(max(rule.stops_mm if rule is not None else 1.0, grains))
    return clear


def _open_sides(finding: Finding, order: Order, shape: Shape) -> Iterable[Option]:
    """An opening that reaches past one side may be meant to be open to it."""
    if finding.check != "cutout-off-slab" or finding.slab is None:
        return
    for k in _named(finding):
        for side in shape.sides:
            crossed = shape.openings[k].polygon.intersects(side.line)
            if crossed and side.name != order.slabs[finding.slab].cutouts[k].open_to:
                path = ("slabs", finding.slab, "cutouts", k, "open_to")
                yield Option("open-to", (Change(path, side.name),), 6.0)


def rounder(finding: Finding, order: Order, facts: Facts, _most: float) -> Iterable[Option]:
    """Give an inside corner the smallest radius that the formers make."""
    if finding.slab is None:
        return
    i, limit = finding.slab, facts.workshop.shaping.inside_radius_mm
    outline, changes = order.slabs[i].outline, list[Change]()
    for k in _named(finding):
        changes += _rounded_opening(("slabs", i, "cutouts", k), order.slabs[i].cutouts[k], limit)
    if isinstance(outline, LShape) and f"/slabs/{i}/outline" in finding.at:
        corner = outline.notch.corner
        told = outline.corner_radii.get(corner) or outline.corner_radius or outline.length
        path = ("slabs", i, "outline", "corner_radii", corner)
        changes.append(Change(path, told.like(limit, "up")))
    if changes:
        yield Option("round", tuple(changes), 0.2)


def _rounded_opening(base: Path, cutout: Cutout, limit_mm: float) -> Iterable[Change]:
    """A larger radius; round ends where an opening is too narrow for it."""
    if cutout.corner_radius is None:
        return
    if cutout.kind == "rectangle" and min(cutout_size_mm(cutout)) < 2 * limit_mm:
        yield Change((*base, "kind"), "slot")
        yield Change((*base, "corner_radius"), None)
    else:
        yield Change((*base, "corner_radius"), cutout.corner_radius.like(limit_mm, "up"))


def smaller_outline(finding: Finding, order: Order, facts: Facts, _most: float) -> Iterable[Option]:
    """Bring a slab down to the casting table; either way round."""
    if finding.slab is None:
        return
    i, table = finding.slab, facts.workshop.table
    x0, y0, x1, y1 = facts.shapes[i].outline.bounds
    width, depth = x1 - x0, y1 - y0
    for most_x, most_y in ((table.length_mm, table.width_mm), (table.width_mm, table.length_mm)):
        fx, fy = min(1.0, most_x / width), min(1.0, most_y / depth)
        if _is_disc_like(order, i):
            fx = fy = min(fx, fy)
        changes = resized_outline(i, order.slabs[i], (fx, fy))
        if changes:
            yield Option("smaller", changes, 1.0 + 20.0 * (2.0 - fx - fy))


def _is_disc_like(order: Order, i: int) -> bool:
    return order.slabs[i].outline.kind == "round"


def wider_outline(finding: Finding, order: Order, facts: Facts, _most: float) -> Iterable[Option]:
    """Bring a sliver up to the narrowest that is cast."""
    if finding.slab is None:
        return
    i, least = finding.slab, facts.workshop.shaping.smallest_side_mm
    x0, y0, x1, y1 = facts.shapes[i].outline.bounds
    fx, fy = max(1.0, least / (x1 - x0)), max(1.0, least / (y1 - y0))
    if _is_disc_like(order, i):
        fx = fy = max(fx, fy)
    yield Option("wider", resized_outline(i, order.slabs[i], (fx, fy)), 1.0 + 20 * (fx + fy - 2))


def other_thickness(finding: Finding, order: Order, facts: Facts, _most: float) -> Iterable[Option]:
    """Try the stocked thicknesses, the nearest first; those that finding asks for before others."""
    if finding.slab is None:
        return
    old = order.slabs[finding.slab].thickness
    shaping = facts.workshop.shaping
    alike_mm = 0.0 if finding.check in _TOO else _ALIKE_MM
    for usual in shaping.thicknesses_mm:
        new = old.like(usual)
        if new.mm > shaping.thickest_mm:  # a sixteenth of an inch over
            new = old.like(usual, "down")
        made = shaping.thinnest_mm <= new.mm <= shaping.thickest_mm
        useful = helps(finding, old.mm / new.mm) and lightens(finding, new.mm / old.mm)
        useful = useful and (new.mm > old.mm or finding.check not in _WANTS_THICKER)
        if made and useful and abs(new.mm - old.mm) > alike_mm:
            yield Option(
                "thicker" if new.mm > old.mm else "thinner",
                (Change(("slabs", finding.slab, "thickness"), new),),
                1.0 + abs(new.mm - old.mm) / 10,
            )


def slimmer_notch(finding: Finding, order: Order, _facts: Facts, _m: float) -> Iterable[Option]:
    """Make an L's notch smaller, until its arms are wider than they are thick."""
    if finding.slab is None:
        return
    slab = order.slabs[finding.slab]
    if not isinstance(slab.outline, LShape):
        return
    base = ("slabs", finding.slab, "outline", "notch")
    for times in (1.0, 2.0, 3.0):
        changes, cost = [], 1.0
        for name in ("length", "width"):
            whole, notch = getattr(slab.outline, name), getattr(slab.outline.notch, name)
            new = notch.like(whole.mm - times * slab.thickness.mm, "down", to_mm=ROUND_TO_MM)
            if 0.0 < new.mm < notch.mm:
                changes.append(Change((*base, name), new))
                cost += 20.0 * (1.0 - new.mm / notch.mm)
        if changes:
            yield Option("smaller-notch", tuple(changes), cost)


def fewer_openings(
    finding: Finding, order: Order, facts: Facts, most_share: float
) -> Iterable[Option]:
    """Leave openings out, the last first, and lay out the rest: only for the nearest makeable."""
    if finding.slab is None or most_share <= WITHIN:
        return
    i, slab = finding.slab, order.slabs[finding.slab]
    count = len(slab.cutouts)
    for gone in sorted({1, 2, 4, 8, 12, 16, count - 1, count}):
        if not 0 < gone <= count:
            continue
        removed = tuple(
            Change(("slabs", i, "cutouts", k), None) for k in range(count - 1, count - 1 - gone, -1)
        )
        fewer = changed(order, removed)
        at = Facts(fewer, facts.workshop, facts.bookings, facts.today, facts.plates)
        every = frozenset(range(count - gone))
        freedom = Freedom(every, every, _grows(order, i), most_share)
        rest = next(iter(laid("fewer", i, fewer, at, freedom)), None) if every else None
        moved = rest.changes if rest is not None else ()
        yield Option("fewer", (*removed, *moved), 30.0 * gone)
