"""From a drawing token's content to a drawing of one of its slabs, or of all of them together."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from functools import cached_property
from types import MappingProxyType
from typing import Any, Final

from ledgerstone.checks import Facts, Finding, run_stage
from ledgerstone.drawing import (
    Pin,
    TitleBlock,
    TooManySheets,
    corner_drawn,
    cutout_drawn,
    describe,
    draw_assembled,
    draw_plan,
    draw_view,
    pin_at,
    true_size_pdf,
)
from ledgerstone.drawing.stress import draw_stress
from ledgerstone.drawing.tiling import Paper
from ledgerstone.order import Order, Slab
from ledgerstone.shade import appearance, lab_to_srgb, sealed_as, shade_seen
from ledgerstone.shape import Shape, shape_of
from ledgerstone.strength.painted import painted
from ledgerstone.strength.slabs import Plates, concrete_of, plate_of, slab_strength
from ledgerstone.wire.order_in import read_order
from ledgerstone.wire.order_out import write_order
from ledgerstone.wire.tokens import Tokens
from ledgerstone.workshop.records import Sealer, Workshop

DRAWN: Final = ("plan", "view", "assembled")  # each as SVG and as PNG
TITLE: Final = "Slab"

_NO_DAY = date(2000, 1, 1)  # no check of a shape looks at the day
_NO_COLOUR = "#9a9a95"
# How far a surface mirrors, 0 to 1, and what a film on it adds: by eye, no source.
_GLOSS = MappingProxyType({"as-cast": 0.05, "honed": 0.2, "polished": 0.65})
_FILM_GLOSS = 0.3


def drawing_members(
    order: Order, shapes: Sequence[Shape] | None, workshop: Workshop, tokens: Tokens
) -> dict[str, Any]:
    """Sign what an order's drawings need, link them, and say each slab's in words.

    Empty where the links would be too long to open.

    Parameters
    ----------
    shapes
        The slabs', where they have been worked out.
    """
    token = tokens.sign("drawing", drawing_content(order))
    if token is None:
        return {}
    shapes = shapes if shapes is not None else [shape_of(slab, workshop) for slab in order.slabs]
    base = f"{workshop.web.base_url}/v1/drawings/{token}"
    members: dict[str, Any] = {"plan": f"{base}/plan.svg", "view": f"{base}/view.svg"}
    if order.joins:
        members["assembled"] = f"{base}/assembled.svg"
    if any(slab.cutouts for slab in order.slabs):
        members["true_size"] = f"{base}/true-size.pdf"
    members["says"] = [describe(*both) for both in zip(order.slabs, shapes, strict=True)]
    return members


def drawing_content(order: Order) -> dict[str, Any]:
    """Take from an order what its drawings need: slabs, and joins where there are any."""
    written = write_order(order, compact=True)
    return {key: written[key] for key in ("slabs", "joins") if key in written}


@dataclass(frozen=True)
class Drawer:
    """Draws what one token holds."""

    content: Mapping[str, Any]
    workshop: Workshop

    @cached_property
    def facts(self) -> Facts:
        """The token's slabs and joins, read and shaped.

        Raises
        ------
        NotUnderstood
            The workshop no longer offers what they name.
        """
        order = read_order(dict(self.content), self.workshop)
        return Facts(order, self.workshop, (), _NO_DAY)

    def drawn(self, name: str, number: int) -> str:
        """Draw a plan or a view of one slab, or all slabs assembled.

        Raises
        ------
        NotUnderstood
        """
        if name == "assembled":
            order = self.facts.order
            shapes, title = self.facts.shapes, "The pieces together, from above"
            return draw_assembled(order.slabs, shapes, order.joins, title=title)
        slab, shape = self.facts.order.slabs[number], self.facts.shapes[number]
        return self._view(slab, shape, number) if name == "view" else self._plan(slab, number)

    def true_size(
        self, number: int, part: str, paper: Paper, *, is_corner: bool
    ) -> bytes | TooManySheets | None:
        """Print a cut-out, by its number, or a corner, by its name, at true size as a PDF.

        None where the slab has no such part.

        Raises
        ------
        NotUnderstood
        """
        slab, shape = self.facts.order.slabs[number], self.facts.shapes[number]
        radius = self.workshop.shaping.inside_radius_mm
        if is_corner:
            drawn = corner_drawn(slab, shape, part, radius)
        else:
            drawn = cutout_drawn(slab, shape, _number(part), radius)
        if drawn is None:
            return None
        return true_size_pdf(drawn, paper, workshop=self.workshop.workshop.name)

    def _plan(self, slab: Slab, number: int) -> str:
        seen = shade_seen(slab.shade, self.workshop)
        title = TitleBlock(
            label=slab.label,
            shade=slab.shade.name or slab.shade.match or "",
            colour=seen.hex if seen is not None else _NO_COLOUR,
            workshop=self.workshop.workshop.name,
        )
        pins = _pins(run_stage("shape", self.facts), number)
        return draw_plan(slab, self.facts.shapes[number], title=title, pins=pins)

    def _view(self, slab: Slab, shape: Shape, number: int) -> str:
        sealer = next(one for one in self.workshop.sealers if one.name == slab.finish.sealer)
        return draw_view(
            slab,
            shape,
            colour=seen_colour(slab, sealer, self.workshop),
            gloss=gloss_of(slab, sealer),
            seed=json.dumps(self.content["slabs"][number], sort_keys=True),
            title=slab.label or TITLE,
        )


def draw_used(slabs: Sequence[Any], number: int, workshop: Workshop, plates: Plates) -> str:
    """Paint how far one slab of a drawing's token is used: for the maker alone.

    The shed is taken as cold as in its coldest month, so that the picture hangs on no day.
    """
    order = read_order({"slabs": slabs}, workshop)
    facts = Facts(order, workshop, (), _NO_DAY, plates)
    slab, shape = order.slabs[number], facts.shapes[number]
    title = f"How far the concrete is used: {slab.label or f'slab {number + 1}'}"
    stopped = any(f.level == "stops" for f in run_stage("shape", facts) if f.slab == number)
    if stopped:
        return draw_stress(slab, shape, None, None, title=title)
    coldest = min(workshop.handling.workshop_c)
    found = slab_strength(
        slab, shape, workshop, slab_kg=facts.slab_kg[number], shed_c=coldest, plates=plates
    )
    concrete = concrete_of(workshop)
    field = painted(slab, shape, plate_of(slab, shape, concrete, plates), concrete, workshop)
    return draw_stress(slab, shape, field, found.worst, title=title)


def seen_colour(slab: Slab, sealer: Sealer, workshop: Workshop) -> str:
    """Return the colour that a slab has once it is sealed and dry; grey where none is known."""
    seen = shade_seen(slab.shade, workshop)
    return _NO_COLOUR if seen is None else lab_to_srgb(appearance(seen.lab, sealed_as(sealer)))


def gloss_of(slab: Slab, sealer: Sealer) -> float:
    """Return how far a slab's top mirrors, by its surface and by a film on it."""
    film = _FILM_GLOSS if sealer.kind == "film" else 0.0
    return min(1.0, _GLOSS[slab.finish.surface] + film)


def _number(part: str) -> int:
    """Read a cut-out's number; -1 for what is none."""
    return int(part) if part.isascii() and part.isdigit() and len(part) < 3 else -1


def _pins(findings: Sequence[Finding], slab: int) -> list[Pin]:
    """Number the findings as the answer lists them; keep those of one slab that have a place."""
    pins = (
        pin_at(number, finding.level, finding.where_mm)
        for number, finding in enumerate(findings, start=1)
        if finding.slab == slab
    )
    return [pin for pin in pins if pin is not None]
