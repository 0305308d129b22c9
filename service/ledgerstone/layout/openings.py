"""Places of openings that the order does not place: along the run, taps behind their bowls.

A layout is tried and then judged by the checks of shape, which are the only rules there are. The
first that nothing stops is taken.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import cycle, product
from typing import Final, Literal, get_args

from ledgerstone.goes_in import is_bowl, is_tap
from ledgerstone.layout.evening import evened
from ledgerstone.layout.ground import Ground, size_mm
from ledgerstone.layout.rounded_length import step_mm
from ledgerstone.layout.runs import spread
from ledgerstone.order import Cutout, Point, Slab
from ledgerstone.outline import XY
from ledgerstone.quantities import Length, UnitName
from ledgerstone.siting import PlacedOpening, UnplacedOpening, place_for
from ledgerstone.strip_rules import clear_mm, room_for_tap_mm, strips_of

Manner = Literal["spread", "left", "right", "corners", "upright", "first-left", "first-right"]
STRATEGIES: Final[tuple[Manner, ...]] = get_args(Manner)
_SPREAD: Final = 60  # layouts about places all over a run
# Their multiples' fractions are spread evenly: H. Niederreiter, "Random Number Generation and
# Quasi-Monte Carlo Methods", 1992, 3.1.
_ROOTS: Final = [(math.sqrt(p), math.sqrt(q)) for p, q in ((2, 3), (5, 7), (11, 13), (17, 19))]
_BEHIND_MM: Final = 65.0  # a tap without a bowl, from the back; common practice, no source
_FARTHEST_BEHIND_MM: Final = 80.0  # and one with a bowl at most; common practice, no source


def layouts(ground: Ground) -> Iterator[Slab]:
    """Yield the slab with its free openings placed, one way after another."""
    if not ground.free:
        yield ground.slab
        return
    taps, others = _taps_and_others(ground)
    for is_tight, order, strategy in product((False, True), _orders(ground, others), STRATEGIES):
        wishes = _wishes(ground, order, strategy)
        placed = _placed(ground, order, taps, wishes, is_tight=is_tight)
        if placed is not None:
            yield placed


def layouts_centred(ground: Ground) -> Iterator[Slab]:
    """Yield each layout again, what nearly fills the depth in the middle of it."""
    taps, others = _taps_and_others(ground)
    middle = _to_step(ground, ground.run.middle_mm)
    for order, strategy in product(_orders(ground, others), STRATEGIES):
        wishes = {
            k: (x, middle if _fills_depth(ground, k) else y)
            for k, (x, y) in _wishes(ground, order, strategy).items()
        }
        yield from filter(None, [_placed(ground, order, taps, wishes, is_tight=True)])


def layouts_anywhere(ground: Ground) -> Iterator[Slab]:
    """Yield layouts about places spread over the whole run, the largest opening placed first."""
    free, run = _by_size(ground, sorted(ground.free)), ground.run
    long_mm, deep_mm = run.right_mm - run.left_mm, run.back_mm - run.front_mm
    for n in range(1, _SPREAD + 1):
        shares = {k: (n * root % 1, n * other % 1) for k, (root, other) in zip(free, cycle(_ROOTS))}
        wishes = {
            k: (_to_step(ground, run.left_mm + x * long_mm), run.front_mm + y * deep_mm)
            for k, (x, y) in shares.items()
        }
        yield from filter(None, [_placed(ground, free, [], wishes, is_tight=True)])


def layouts_evened(ground: Ground) -> Iterator[Slab]:
    """Yield each layout again with strips as alike as they can be about every opening."""
    yield from _evened(ground, layouts(ground), *_taps_and_others(ground))


def layouts_of_taps_apart_evened(ground: Ground) -> Iterator[Slab]:
    """Yield each layout with its taps anywhere again, the rest where its strips are alike."""
    taps, others = _taps_and_others(ground)
    yield from _evened(ground, layouts_of_taps_apart(ground), [], [*others, *taps])


def _evened(
    ground: Ground, slabs: Iterable[Slab], taps: list[int], others: list[int]
) -> Iterator[Slab]:
    """Place again what is free of each layout, the taps behind their bowls last."""
    for slab in slabs if others else ():
        sited = _staying(ground)
        for k, cutout in enumerate(slab.cutouts):
            if k in others and cutout.centre is not None:
                sited[k] = _as_sited(cutout, (cutout.centre.x.mm, cutout.centre.y.mm))
        cutouts = ground.slab.cutouts
        moving = [k for k in others if not is_tap(cutouts[k]) and not ground.unit_spans(k)]
        apart = evened(ground.run, sited, moving, strips_of(ground.workshop))
        wishes = {k: (_to_step(ground, x), _to_step(ground, y)) for k, (x, y) in apart.items()}
        placed = _placed(ground, others, taps, wishes, is_tight=True)
        if placed is not None:
            yield placed


def layouts_of_taps_apart(ground: Ground) -> Iterator[Slab]:
    """Yield the slab with its taps anywhere there is room, one layout after another."""
    taps, others = _taps_and_others(ground)
    if taps:
        for is_tight, strategy in product((False, True), STRATEGIES):
            wishes = _wishes(ground, [*others, *taps], strategy)
            placed = _placed(ground, [*others, *taps], [], wishes, is_tight=is_tight)
            if placed is not None:
                yield placed


def _by_size(ground: Ground, openings: list[int]) -> list[int]:
    return sorted(openings, key=lambda k: -max(size_mm(ground.slab.cutouts[k])))


def _orders(ground: Ground, others: list[int]) -> list[list[int]]:
    """In which order openings are placed: as they come, and the largest first."""
    by_size = _by_size(ground, others)
    return [others] if by_size == others else [others, by_size]


def _fills_depth(ground: Ground, k: int) -> bool:
    """Return whether an opening has less play in the depth than the strip that it needs."""
    cutout, run = ground.slab.cutouts[k], ground.run
    length, width = size_mm(cutout)
    keep = clear_mm(strips_of(ground.workshop), max(length, width), cutout.rim, least=True)
    return run.back_mm - run.front_mm - width < 3 * keep


def _taps_and_others(ground: Ground) -> tuple[list[int], list[int]]:
    taps = [k for k in sorted(ground.free) if is_tap(ground.slab.cutouts[k])]
    return taps, [k for k in sorted(ground.free) if k not in taps]


def _placed(
    ground: Ground,
    others: list[int],
    taps: list[int],
    wishes: Mapping[int, XY],
    *,
    is_tight: bool,
) -> Slab | None:
    """Place the openings one by one; None where one has no room left.

    Parameters
    ----------
    wishes
        Where each of the others would go best, mm.
    is_tight
        Whether the narrowest strips are left from the start, so that more goes in.
    """
    sited = _staying(ground)
    for k in (*others, *taps):
        wanted = _tap(ground, k, sited) if k in taps else _other(ground, k, wishes[k], len(taps))
        at = place_for(
            ground.shape.outline,
            list(sited.values()),
            wanted,
            strips_of(ground.workshop),
            keep_off=ground.keep_off(k),
            step_mm=step_mm(ground.unit),
            is_tight=is_tight,
        )
        if at is None:
            return None
        sited[k] = _as_sited(ground.slab.cutouts[k], at)
    return _with_places(ground, sited)


def _staying(ground: Ground) -> dict[int, PlacedOpening]:
    """The openings that have their place, as they lie."""
    found = {}
    for opening in ground.shape.openings:
        if opening.index not in ground.free and not opening.polygon.is_empty:
            x0, y0, x1, y1 = opening.polygon.bounds
            cutout = ground.slab.cutouts[opening.index]
            found[opening.index] = PlacedOpening(
                (x0 + x1) / 2,
                (y0 + y1) / 2,
                x1 - x0,
                y1 - y0,
                is_round=cutout.kind == "circle",
                rim=cutout.rim,
            )
    return found


def _as_sited(cutout: Cutout, at: XY) -> PlacedOpening:
    return PlacedOpening(*at, *size_mm(cutout), is_round=cutout.kind == "circle", rim=cutout.rim)


def _wishes(ground: Ground, others: Sequence[int], strategy: Manner) -> dict[int, XY]:
    """Where each opening would go best: in its unit, or along the run."""
    run, sited = ground.run, _staying(ground)
    if strategy == "left":
        return dict.fromkeys(others, run.front_left)
    if strategy == "right":
        return dict.fromkeys(others, run.back_right)
    if strategy == "corners":
        return {k: run.back_right if i else run.front_left for i, k in enumerate(others)}
    if strategy in ("first-left", "first-right"):
        ends = (run.left_mm, run.right_mm)
        first, rest = ends if strategy == "first-left" else ends[::-1]
        depths = (run.middle_mm, run.back_mm, run.front_mm)
        return {k: (rest if i else first, depths[min(i, 2)]) for i, k in enumerate(others)}
    if strategy == "upright":
        deep = [size_mm(ground.slab.cutouts[k])[1] for k in others]
        ys = spread(run.turned, [], deep)
        return {k: (run.across_mm, _to_step(ground, y)) for k, y in zip(others, ys, strict=True)}
    taken = [
        (opening.x_mm - opening.length_mm / 2, opening.x_mm + opening.length_mm / 2)
        for opening in sited.values()
    ]
    lengths = [size_mm(ground.slab.cutouts[k])[0] for k in others]
    xs = spread(run, taken, lengths)
    return {k: (_to_step(ground, x), run.middle_mm) for k, x in zip(others, xs, strict=True)}


def _other(ground: Ground, k: int, wish: XY, taps: int) -> UnplacedOpening:
    cutout = ground.slab.cutouts[k]
    length, width = size_mm(cutout)
    x, y = wish
    unit_spans = ground.unit_spans(k)
    if unit_spans:
        x = _to_step(ground, sum(unit_spans[0]) / 2)
    if is_bowl(cutout) and taps:
        y = min(y, _before_a_tap_mm(ground, cutout))
    return UnplacedOpening(
        length,
        width,
        is_round=cutout.kind == "circle",
        rim=cutout.rim,
        between_mm=unit_spans[0] if unit_spans else None,
        wish_mm=(x, _to_step(ground, y)),
    )


def _before_a_tap_mm(ground: Ground, bowl: Cutout) -> float:
    """Give the middle of a bowl whose tap is behind it: the strips about the two alike, if wide."""
    run, rules, tap_mm = ground.run, strips_of(ground.workshop), _tap_mm(ground)
    length, width = size_mm(bowl)
    alike = (run.back_mm - run.front_mm - width - tap_mm) / 3
    strip = max(alike, clear_mm(rules, max(length, width), bowl.rim))
    last = run.back_mm - room_for_tap_mm(rules, tap_mm) - width / 2
    return min(last, run.front_mm + strip + width / 2)


def _tap_mm(ground: Ground) -> float:
    return max(max(size_mm(cutout)) for cutout in ground.slab.cutouts if is_tap(cutout))


def _tap(ground: Ground, k: int, sited: dict[int, PlacedOpening]) -> UnplacedOpening:
    """A tap goes behind the first bowl that has none, else by the back."""
    cutouts, rules = ground.slab.cutouts, strips_of(ground.workshop)
    cutout = cutouts[k]
    length, width = size_mm(cutout)
    bowls = [sited[j] for j in sorted(sited) if is_bowl(cutouts[j])]
    taps = [sited[j] for j in sorted(sited) if is_tap(cutouts[j])]
    without = [bowl for bowl in bowls if not any(_stands_at(tap, bowl) for tap in taps)]
    behind = next(iter(without or bowls), None)
    run = ground.run
    wish = (_to_step(ground, run.across_mm), _to_step(ground, run.back_mm - _BEHIND_MM))
    if behind is not None:
        keep = clear_mm(rules, max(length, width), cutout.rim)
        y = behind.y_mm + behind.width_mm / 2 + keep + width / 2
        step = step_mm(ground.unit)
        back = _to_step(ground, run.back_mm - _FARTHEST_BEHIND_MM)
        wish = (behind.x_mm, max(math.ceil(y / step) * step, back))
    return UnplacedOpening(
        length, width, is_round=cutout.kind == "circle", rim=cutout.rim, wish_mm=wish
    )


def _stands_at(tap: PlacedOpening, bowl: PlacedOpening) -> bool:
    return abs(tap.x_mm - bowl.x_mm) <= bowl.length_mm / 2 and tap.y_mm > bowl.y_mm


def _to_step(ground: Ground, mm: float) -> float:
    step = step_mm(ground.unit)
    return round(mm / step) * step


def _with_places(ground: Ground, sited: dict[int, PlacedOpening]) -> Slab:
    cutouts = [
        replace(cutout, centre=_point(sited[k], ground.unit)) if k in ground.free else cutout
        for k, cutout in enumerate(ground.slab.cutouts)
    ]
    return replace(ground.slab, cutouts=tuple(cutouts))


def _point(at: PlacedOpening, unit: UnitName) -> Point:
    return Point(Length.of_mm(round(at.x_mm, 4), unit), Length.of_mm(round(at.y_mm, 4), unit))
