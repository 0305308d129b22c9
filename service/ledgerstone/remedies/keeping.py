"""Whether what was asked for is kept: every opening as it is, and every size that is fixed."""

from __future__ import annotations

from ledgerstone.cutouts import cutout_size_mm
from ledgerstone.order import Cutout, LShape, Outline, Rectangle, Round, Slab
from ledgerstone.order import Polygon as OrderPolygon
from ledgerstone.outline import finished_size_mm
from ledgerstone.remedies.policy import SIZES_WITHIN, has_its_room, has_its_size, may_grow
from ledgerstone.remedies.state import SlabOrigin, State

_EXACTLY_MM = 0.01  # rounding of a size that is kept
_BETTER = {
    *((kind, "frame") for kind in ("legs", "ends", "ledges", "pedestal")),
    *((kind, "full") for kind in ("units", "frame", "legs", "ends", "ledges", "pedestal")),
}


def keeps(state: State) -> bool:
    """Return whether a state keeps every opening and every size, within what a fix may change."""
    for i, sent in enumerate(state.sent.slabs):
        pieces = state.of_slab(i)
        if {k for piece, _ in pieces for k in piece.cutouts} != {*range(len(sent.cutouts))}:
            return False
        if {k for piece, _ in pieces for k in piece.reliefs} != {*range(len(sent.reliefs))}:
            return False
        joined = any(i in (join.one.slab, join.other.slab) for join in state.sent.joins)
        deepens = may_grow(sent)[1] and not joined
        if not all(_keeps_piece(sent, piece, slab, deepens=deepens) for piece, slab in pieces):
            return False
    return True


def _keeps_piece(sent: Slab, piece: SlabOrigin, slab: Slab, *, deepens: bool) -> bool:
    keeps_size = _keeps_size(sent, piece, slab) or (deepens and _is_deeper(piece, slab))
    if piece.plain or not keeps_size or not _keeps_rests(piece, slab):
        return False
    pairs = zip(piece.cutouts, slab.cutouts, strict=True)
    return all(_keeps_opening(sent.cutouts[k], cutout, piece, k) for k, cutout in pairs)


def _keeps_rests(piece: SlabOrigin, slab: Slab) -> bool:
    """Return whether a slab is carried as it was, or better: on a frame, or all over on a base."""
    if piece.was.rests is None or slab.rests is None or piece.was.rests.kind == slab.rests.kind:
        return True
    return (piece.was.rests.kind, slab.rests.kind) in _BETTER


def _keeps_size(sent: Slab, piece: SlabOrigin, slab: Slab) -> bool:
    """Whether a slab or a piece has its size: pieces fill what was cut, to the millimetre."""
    if slab.size_from != piece.was.size_from:
        return _near(_cast_sizes(piece.was), _cast_sizes(slab), 0.0)
    fixed = piece.cut or has_its_room(sent)
    share = 0.0 if fixed else SIZES_WITHIN
    old, new = _outline_sizes(piece.was.outline), _outline_sizes(slab.outline)
    cast = (finished_size_mm(piece.was, 0.0), finished_size_mm(slab, 0.0))
    return _near(old, new, share) and (not fixed or _near(cast[0], cast[1], 0.0))


def _is_deeper(piece: SlabOrigin, slab: Slab) -> bool:
    """Whether a slab has its length and, within what a fix may change, more than its depth."""
    old, new = piece.was.outline, slab.outline
    if piece.cut or not (isinstance(old, Rectangle) and isinstance(new, Rectangle)):
        return False
    deep = _near((old.width.mm,), (new.width.mm,), SIZES_WITHIN) and new.width > old.width
    return deep and new.length == old.length and slab.size_from == piece.was.size_from


def _cast_sizes(slab: Slab) -> tuple[float, ...]:
    """The sizes that a slab is cast in, however the order gives them."""
    return (*finished_size_mm(slab, 0.0), *_outline_sizes(slab.outline)[2:])


def _keeps_opening(was: Cutout, now: Cutout, piece: SlabOrigin, k: int) -> bool:
    share = 0.0 if has_its_size(was) else SIZES_WITHIN
    if now.turn_degrees != was.turn_degrees:
        return False
    if not piece.cut and now.open_to != was.open_to and k not in piece.halved:
        return False
    return _near(cutout_size_mm(was), cutout_size_mm(now), share)


def _near(old: tuple[float, ...], new: tuple[float, ...], share: float) -> bool:
    if len(old) != len(new):
        return False
    return all(abs(n - o) <= share * o + _EXACTLY_MM for o, n in zip(old, new, strict=True))


def _outline_sizes(outline: Outline) -> tuple[float, ...]:
    if isinstance(outline, Round):
        return (outline.diameter.mm, outline.diameter.mm)
    if isinstance(outline, OrderPolygon):
        xs = [point.x.mm for point in outline.points]
        ys = [point.y.mm for point in outline.points]
        return (max(xs) - min(xs), max(ys) - min(ys))
    sizes = (outline.length.mm, outline.width.mm)
    if isinstance(outline, LShape):
        return (*sizes, outline.notch.length.mm, outline.notch.width.mm)
    return sizes
