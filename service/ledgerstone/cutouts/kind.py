"""One kind of cut-out, as data that plan, drawing, mould and codec read."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from shapely.geometry import Polygon

from ledgerstone.order import Cutout
from ledgerstone.outline import XY


@dataclass(frozen=True, slots=True)
class CutoutKind:
    """One kind of cut-out.

    Attributes
    ----------
    name
        Its name on the wire.
    sizes
        The members of an order that give its size; all of them are required.
    docstring
        What it is in a sentence, for the contract.
    has_corners
        Whether a corner radius may be given.
    size_mm
        Length and width of its own box, before it is turned, mm.
    placed
        Its polygon as placed, and its exact area in mm²; given the radius in mm of inside corners
        whose own is not given.
    corner_radius_mm
        Radius of its former's corners, given that of inside corners; None if its ends are round.
    centre_lines
        Whether it is crossed out along its centre lines, else from corner to corner.
    is_circle
        Whether its former is turned: its size is a diameter.
    """

    name: str
    sizes: tuple[str, ...]
    docstring: str
    has_corners: bool
    size_mm: Callable[[Cutout], XY]
    placed: Callable[[Cutout, float], tuple[Polygon, float]]
    corner_radius_mm: Callable[[Cutout, float], float | None]
    centre_lines: bool = False
    is_circle: bool = False
