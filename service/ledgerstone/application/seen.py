"""The appearance of a slab, sealed and dry: its colour and its gloss."""

from __future__ import annotations

from typing import Final

from ledgerstone.order import Slab
from ledgerstone.shade import appearance, lab_to_srgb, sealed_as, shade_seen
from ledgerstone.surfaces import SURFACES
from ledgerstone.workshop.records import Sealer, Workshop

NO_COLOUR: Final = "#9a9a95"
# Gloss that a sealer's film adds, a share of 1: by eye, no source.
_FILM_GLOSS: Final = 0.3


def seen_colour(slab: Slab, sealer: Sealer, workshop: Workshop) -> str:
    """Return the colour of a slab, sealed and dry, as ``#rrggbb``; grey if it is not known."""
    seen = shade_seen(slab.shade, workshop)
    return NO_COLOUR if seen is None else lab_to_srgb(appearance(seen.lab, sealed_as(sealer)))


def gloss_of(slab: Slab, sealer: Sealer) -> float:
    """Return the gloss of a slab's top, 0 to 1, by its surface and the sealer's film."""
    film = _FILM_GLOSS if sealer.kind == "film" else 0.0
    return min(1.0, SURFACES[slab.finish.surface].gloss + film)
