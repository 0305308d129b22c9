"""Positions of slabs on edge in the room: along the wall behind a top, or at its end."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from ledgerstone.drawing.camera import LEVEL, on_end_pose, standing_pose
from ledgerstone.drawing.runs import ALONE_APART_MM, TopSide, UprightPlacement, runs_of
from ledgerstone.drawing.standing import DrawnSlab, Standing, Upright, mirrored_across
from ledgerstone.order import Join
from ledgerstone.outline import XY


def panels_mm(
    pieces: Sequence[DrawnSlab],
    joins: Sequence[Join],
    level: Sequence[int],
    hosts: Sequence[Standing],
) -> float:
    """How high the end panels at tops stand, mm; 0 if there are none."""
    heights = [0.0]
    for run in runs_of(pieces, joins, level, hosts):
        for upright in run.uprights:
            if run.host is not None and upright.is_panel:
                shape, on_end = upright.piece.shape, upright.is_on_end(run.length_mm)
                heights.append(shape.length_mm if on_end else shape.width_mm)
    return max(heights)


def stand_upright(
    pieces: Sequence[DrawnSlab],
    joins: Sequence[Join],
    level: Sequence[int],
    hosts: Sequence[Standing],
    *,
    mirrored: bool,
) -> list[Standing]:
    """Stand the upright pieces of an order.

    Parameters
    ----------
    level
        Numbers of the pieces that lie level.
    hosts
        Their positions, in the same order.
    mirrored
        Whether the room is shown from its other side.
    """
    return [
        standing
        for run in runs_of(pieces, joins, level, hosts)
        for standing in _along(run, hosts, mirrored=mirrored)
    ]


def _along(run: TopSide, hosts: Sequence[Standing], *, mirrored: bool) -> Iterator[Standing]:
    """Stand what belongs to a run: panels beyond it, the rest in a row along it."""
    top = 0.0 if run.host is None else hosts[run.host].height_mm
    row = run.row
    apart = ALONE_APART_MM if run.host is None else 0.0
    long = sum(upright.piece.shape.length_mm for upright in row) + apart * (len(row) - 1)
    left = (run.length_mm - long) / 2
    for upright in run.uprights:
        if upright not in row:
            yield _panel(upright, run, top, mirrored=mirrored)
    for upright in row:
        yield _behind(upright, run, left, top, mirrored=mirrored)
        left += upright.piece.shape.length_mm + apart


def _behind(
    placement: UprightPlacement, run: TopSide, left_mm: float, top_mm: float, *, mirrored: bool
) -> Standing:
    """Stand a piece on a top, its back in line with the top's, so far from the run's left end."""
    piece = _mirrored(placement.piece, 0) if mirrored else placement.piece
    x0, y0, _, y1 = piece.shape.outline.bounds
    thick = piece.shape.thickness_mm
    x, y = _from(run.start, (run.along, left_mm - x0), (run.out, -thick))
    foot = top_mm + placement.gap_mm
    front = (-run.out[0], -run.out[1])
    is_near = LEVEL.facing((*run.out, 0.0)) > 0
    upright = Upright(standing_pose(front), (x, y, foot - y0), run.host, is_near, has_wall=True)
    return _turned(Standing(piece, (), front, foot + y1 - y0, upright), 0)


def _panel(placement: UprightPlacement, run: TopSide, top_mm: float, *, mirrored: bool) -> Standing:
    """Stand a panel beyond the end of a top, flush with it."""
    on_end = placement.is_on_end(run.length_mm)
    axis = 1 if on_end else 0
    piece = _mirrored(placement.piece, axis) if mirrored else placement.piece
    x0, y0, x1, y1 = piece.shape.outline.bounds
    deep, high = (y1 - y0, x1 - x0) if on_end else (x1 - x0, y1 - y0)
    beside = (run.length_mm - deep) / 2
    at_mm = (run.length_mm - beside + x0, top_mm - high - y0)
    if on_end:
        at_mm = (beside - y0, top_mm - high - x0)
    out_mm = placement.gap_mm + piece.shape.thickness_mm
    x, y = _from(run.start, (run.along, at_mm[0]), (run.out, out_mm))
    pose = on_end_pose(run.out) if on_end else standing_pose(run.out)
    is_near = LEVEL.facing((*run.out, 0.0)) > 0
    upright = Upright(pose, (x, y, at_mm[1]), run.host, is_near, has_wall=False)
    return _turned(Standing(piece, (), run.out, top_mm, upright), axis)


def _from(start: XY, *steps: tuple[XY, float]) -> XY:
    """Return a point after steps, each a way and how far."""
    x = start[0] + sum(way[0] * mm for way, mm in steps)
    y = start[1] + sum(way[1] * mm for way, mm in steps)
    return x, y


def _mirrored(piece: DrawnSlab, axis: int) -> DrawnSlab:
    return replace(piece, shape=mirrored_across(piece.shape, axis))


def _turned(standing: Standing, axis: int) -> Standing:
    """Show the underside of a piece whose face looks away: the same concrete, turned about.

    ``axis`` is its own level one.
    """
    upright, front = standing.upright, standing.front
    if upright is None or LEVEL.facing((*front, 0.0)) > 0:
        return standing
    away = (-front[0], -front[1])
    pose = standing_pose(away) if axis == 0 else on_end_pose(away)
    x, y = _from(upright.at_mm[:2], (away, standing.piece.shape.thickness_mm))
    there = replace(upright, pose=pose, at_mm=(x, y, upright.at_mm[2]))
    return replace(standing, piece=_mirrored(standing.piece, axis), upright=there)
