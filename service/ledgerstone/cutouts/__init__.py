"""The kinds of cut-out, one module each: add a kind by adding its module here."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from ledgerstone.cutouts.circle import CIRCLE
from ledgerstone.cutouts.kind import CutoutKind
from ledgerstone.cutouts.polygon import POLYGON
from ledgerstone.cutouts.rectangle import RECTANGLE
from ledgerstone.cutouts.slot import SLOT
from ledgerstone.order import Cutout
from ledgerstone.outline import XY

__all__ = ["CUTOUT_KINDS", "CutoutKind", "cutout_size_mm", "kind_of"]

CUTOUT_KINDS: Mapping[str, CutoutKind] = MappingProxyType(
    {kind.name: kind for kind in (CIRCLE, RECTANGLE, SLOT, POLYGON)}
)


def kind_of(cutout: Cutout) -> CutoutKind:
    """Return the kind of a cut-out."""
    return CUTOUT_KINDS[cutout.kind]


def cutout_size_mm(cutout: Cutout) -> XY:
    """Return length and width of a cut-out's own box, before it is turned, mm."""
    return kind_of(cutout).size_mm(cutout)
