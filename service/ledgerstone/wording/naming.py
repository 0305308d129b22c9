"""Names of slabs, cut-outs, reliefs and sides, for the catalogues to say."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ledgerstone.message import Listed, Message
from ledgerstone.order import Cutout, Order, Relief, Slab

LONGEST_LABEL = 40  # a longer label is cut in a sentence, so that the sentence stays one
MAX_NAMED = 3
_ARTICLE = re.compile(r"^(?:the|an?)\s+", re.IGNORECASE)


def slab_name(slab: Slab, index: int, slabs: int) -> Message:
    """Name a slab by its label, or by what it is."""
    if slab.label:
        return Message("slab-labelled", label=cut_short(slab.label))
    return Message("slab-only") if slabs == 1 else Message("slab-numbered", number=index + 1)


def slabs_name(order: Order, indices: Sequence[int]) -> Listed:
    """Name several slabs: all of them where they are."""
    if len(indices) > 1 and len(indices) == len(order.slabs):
        return Listed((Message("slabs-all"),), count=len(indices))
    names = (slab_name(order.slabs[i], i, len(order.slabs)) for i in indices)
    return Listed(tuple(names), most=MAX_NAMED)


def cutout_name(slab: Slab, index: int) -> Message:
    """Name a cut-out by its label, or by its shape and which one of that shape it is."""
    cutout: Cutout = slab.cutouts[index]
    if cutout.label:
        return Message("cutout-labelled", label=_without_article(cutout.label))
    return Message("cutout", kind=cutout.kind, nth=_nth_alike(slab.cutouts, index))


def relief_name(slab: Slab, index: int) -> Message:
    """Name a relief by its label, or by what it is and which one."""
    relief: Relief = slab.reliefs[index]
    if relief.label:
        return Message("relief-labelled", label=_without_article(relief.label))
    return Message("relief", kind=relief.kind, nth=_nth_alike(slab.reliefs, index))


def _nth_alike(parts: Sequence[Cutout | Relief], index: int) -> int:
    """Number a part among those of its kind without a label; 0 where it is the only one."""
    kind = parts[index].kind
    alike = [k for k, part in enumerate(parts) if not part.label and part.kind == kind]
    return alike.index(index) + 1 if len(alike) > 1 else 0


def side_name(name: str) -> Message:
    """Name a side."""
    if name.isdigit():
        return Message("side-numbered", number=int(name))
    return Message("side", side=name)


def _without_article(label: str) -> str:
    """Cut a label short; the catalogue gives it its article."""
    short = cut_short(label)
    return _ARTICLE.sub("", short) or short


def cut_short(label: str) -> str:
    """Cut a label that would swamp its sentence."""
    tidy = " ".join(label.split())
    return tidy if len(tidy) <= LONGEST_LABEL else f"{tidy[: LONGEST_LABEL - 1].rstrip()}…"
