"""Names of slabs, cut-outs, reliefs and sides, as the customer would say them."""

from __future__ import annotations

import re
from collections.abc import Sequence

from ledgerstone.cutouts import kind_of
from ledgerstone.message import Listed, Message
from ledgerstone.order import Cutout, Order, Relief, Slab
from ledgerstone.wording.vocabulary import listed

LONGEST_LABEL = 40  # a longer label is cut in a sentence, so that the sentence stays one
MOST_NAMED = 3
ORDINALS = (
    "first",
    "second",
    "third",
    "fourth",
    "fifth",
    "sixth",
    "seventh",
    "eighth",
    "ninth",
    "tenth",
    "eleventh",
    "twelfth",
    "thirteenth",
    "fourteenth",
    "fifteenth",
    "sixteenth",
    "seventeenth",
    "eighteenth",
    "nineteenth",
    "twentieth",
)  # as many as a slab has cut-outs or reliefs
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
    return Listed(tuple(names), most=MOST_NAMED)


def cutout_name(slab: Slab, index: int) -> Message:
    """Name a cut-out by its label, or by its shape and which one of that shape it is."""
    cutout: Cutout = slab.cutouts[index]
    if cutout.label:
        return Message("cutout-labelled", label=_without_article(cutout.label))
    alike = [k for k, c in enumerate(slab.cutouts) if not c.label and c.kind == cutout.kind]
    nth = alike.index(index) + 1 if len(alike) > 1 else 0
    return Message("cutout", kind=cutout.kind, nth=nth)


def relief_name(slab: Slab, index: int) -> Message:
    """Name a relief by its label, or by what it is and which one."""
    relief: Relief = slab.reliefs[index]
    if relief.label:
        return Message("relief-labelled", label=_without_article(relief.label))
    alike = [k for k, c in enumerate(slab.reliefs) if not c.label and c.kind == relief.kind]
    nth = alike.index(index) + 1 if len(alike) > 1 else 0
    return Message("relief", kind=relief.kind, nth=nth)


def side_name(name: str) -> Message:
    """Name a side."""
    if name.isdigit():
        return Message("side-numbered", number=int(name))
    return Message("side", side=name)


def _without_article(label: str) -> str:
    """Cut a label short; the catalogue gives it its article."""
    short = cut_short(label)
    return _ARTICLE.sub("", short) or short


def listed_names(names: Sequence[str]) -> str:
    """Join names as in a sentence; of more than three the first two, and how many more."""
    return listed(names, most=MOST_NAMED)


def slab_words(slab: Slab, index: int, slabs: int) -> str:
    """Name a slab as the customer would: by its label, or by what it is."""
    if slab.label:
        return f"“{cut_short(slab.label)}”"
    return "the slab" if slabs == 1 else f"slab {index + 1}"


def slabs_words(order: Order, indices: Sequence[int]) -> str:
    """Name several slabs: “the slabs” where they are all of them."""
    if len(indices) > 1 and len(indices) == len(order.slabs):
        return "the slabs"
    return listed_names([slab_words(order.slabs[i], i, len(order.slabs)) for i in indices])


def cutout_words(slab: Slab, index: int) -> str:
    """Name a cut-out as the customer would: by its label, or by its shape and which one it is.

    Which one is said as a word: a figure would run into a length that follows it.
    """
    cutout: Cutout = slab.cutouts[index]
    if cutout.label:
        return label_words(cutout.label)
    alike = [k for k, c in enumerate(slab.cutouts) if not c.label and c.kind == cutout.kind]
    which = f"{ORDINALS[alike.index(index)]} " if len(alike) > 1 else ""
    return f"the {which}{kind_of(cutout).noun} cut-out"


def relief_words(slab: Slab, index: int) -> str:
    """Name a relief as the customer would: by its label, or by what it is and which one."""
    relief: Relief = slab.reliefs[index]
    if relief.label:
        return label_words(relief.label)
    alike = [k for k, c in enumerate(slab.reliefs) if not c.label and c.kind == relief.kind]
    which = f"{ORDINALS[alike.index(index)]} " if len(alike) > 1 else ""
    return f"the {which}{relief.kind}"


def label_words(label: str) -> str:
    """Name a thing by its label, with one article whether the label has one or not."""
    return f"the {_without_article(label)}"


def cut_short(label: str) -> str:
    """Cut a label that would swamp its sentence."""
    tidy = " ".join(label.split())
    return tidy if len(tidy) <= LONGEST_LABEL else f"{tidy[: LONGEST_LABEL - 1].rstrip()}…"


def side_words(name: str, thing: str = "edge") -> str:
    """Name a side as the customer would."""
    if name.isdigit():
        return f"side {name}"
    return {"rim": "the rim", "notch-x": "the notch", "notch-y": "the notch"}.get(
        name, f"the {name} {thing}"
    )
