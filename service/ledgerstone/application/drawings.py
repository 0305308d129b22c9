"""From a drawing token's content to a drawing of one of its slabs, or of all of them together."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from functools import cached_property
from typing import Any, Final

import shapely
from shapely.geometry import MultiPoint, Polygon

from ledgerstone.checks import Finding
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.order_out import write_order
from ledgerstone.codec.tokens import Tokens
from ledgerstone.containment import Contain, let_through
from ledgerstone.drawing import (
    MISSING,
    Pin,
    TitleBlock,
    TooManySheets,
    corner_drawn,
    cutout_drawn,
    describe,
    draw_assembled,
    draw_plan,
    draw_view,
    drawing_effort,
    million_pixels,
    painting_effort,
    paper_effort,
    pin_at,
    rasterise,
    true_size_pdf,
)
from ledgerstone.drawing.tiling import Paper
from ledgerstone.order import Order, Slab
from ledgerstone.remedies import Budget
from ledgerstone.shade import appearance, lab_to_srgb, sealed_as, shade_seen
from ledgerstone.shape import Shape, shape_of
from ledgerstone.surfaces import SURFACES
from ledgerstone.wording import Speech, speech_of
from ledgerstone.workshop.records import Sealer, Workshop

DRAWN: Final = ("plan", "view", "assembled")  # each as SVG and as PNG
TITLE: Final = "Slab"
_OF_AN_ORDER: Final = ("slabs", "joins", "language")

_PIN_FINE_MM = 2.0  # how far a pinned area's edge may stray, to keep links short
_NO_COLOUR = "#9a9a95"
# What a sealer's film adds to how far a surface mirrors: by eye, no source.
_FILM_GLOSS = 0.3


@dataclass(frozen=True, slots=True, kw_only=True)
class Annotations:
    """What stands beside a drawing: the offer's name and day, and a numbered list of findings.

    ``findings`` are those of the list, in its order: each has its number there.
    """

    reference: str = ""
    issued: date | None = None
    findings: Sequence[Finding] = ()


NO_ANNOTATIONS: Final = Annotations()


def drawing_members(
    order: Order,
    shapes: Sequence[Shape] | None,
    workshop: Workshop,
    tokens: Tokens,
    annotations: Annotations = NO_ANNOTATIONS,
) -> dict[str, Any]:
    """Sign what an order's drawings need, link them, and say each slab's in words.

    Empty where the links would be too long to open.

    Parameters
    ----------
    shapes
        The slabs', where they have been worked out.
    """
    token = drawing_token(order, tokens, annotations)
    if token is None:
        return {}
    shapes = shapes if shapes is not None else [shape_of(slab, workshop) for slab in order.slabs]
    base = f"{workshop.web.base_url}/v1/drawings/{token}"
    members: dict[str, Any] = {"plan": f"{base}/plan.svg", "view": f"{base}/view.svg"}
    if order.joins:
        members["assembled"] = f"{base}/assembled.svg"
    if any(slab.cutouts for slab in order.slabs):
        members["true_size"] = f"{base}/true-size.pdf"
    speech = speech_of(order, workshop)
    members["says"] = [
        describe(slab, shape, speech) for slab, shape in zip(order.slabs, shapes, strict=True)
    ]
    return members


def drawing_token(
    order: Order, tokens: Tokens, annotations: Annotations = NO_ANNOTATIONS
) -> str | None:
    """Sign what an order's drawings need; without its pins where those would make it too long."""
    token = tokens.sign("drawing", drawing_content(order, annotations))
    if token is None:
        token = tokens.sign("drawing", drawing_content(order, replace(annotations, findings=())))
    return token


def drawing_content(order: Order, annotations: Annotations = NO_ANNOTATIONS) -> dict[str, Any]:
    """Take what drawings need: slabs, joins, a language, a name and a day to title it, and pins."""
    written = write_order(order, compact=True)
    content: dict[str, Any] = {k: written[k] for k in _OF_AN_ORDER if k in written}
    if annotations.reference:
        content["ref"] = annotations.reference
    if annotations.issued is not None:
        content["on"] = annotations.issued.isoformat()
    pins = list(_written_pins(annotations.findings))
    if pins:
        content["pins"] = pins
    return content


def _written_pins(findings: Sequence[Finding]) -> Iterable[list[Any]]:
    """Write the findings that have a place as pins: number, slab, level, points."""
    for number, finding in enumerate(findings, start=1):
        pin = pin_at(number, finding.level, finding.where_mm)
        if finding.slab is None or pin is None:
            continue
        shown = Polygon(pin.at_mm).simplify(_PIN_FINE_MM) if pin.is_area else MultiPoint(pin.at_mm)
        yield [number, finding.slab, finding.level, shapely.get_coordinates(shown).tolist()]


@dataclass(frozen=True)
class Drawings:
    """Draws what one token holds.

    Attributes
    ----------
    budget
        What each drawing is paid from, where that was not done before.
    """

    content: Mapping[str, Any]
    workshop: Workshop
    contain: Contain = let_through
    budget: Budget | None = None

    @cached_property
    def order(self) -> Order:
        """The token's slabs and joins, read.

        Raises
        ------
        NotUnderstood
            The workshop no longer offers what they name.
        """
        held = {key: self.content[key] for key in _OF_AN_ORDER if key in self.content}
        return read_order(held, self.workshop)

    @cached_property
    def speech(self) -> Speech:
        """What says the drawings' words, in the order's language."""
        return speech_of(self.order, self.workshop)

    @cached_property
    def shapes(self) -> tuple[Shape, ...]:
        """The slabs, shaped."""
        return tuple(shape_of(slab, self.workshop) for slab in self.order.slabs)

    def _pay(self, units: float) -> None:
        if self.budget is not None:
            self.budget.pay(units, len(self.order.slabs))

    def drawn(self, name: str, number: int) -> str:
        """Draw a plan or a view of one slab, or all slabs assembled.

        ``MISSING`` where a fault of ours lost it.

        Raises
        ------
        NotUnderstood, TooIntricate
        """
        with self.contain("drawing"):
            slabs = self.order.slabs
            self._pay(drawing_effort(slabs if name == "assembled" else [slabs[number]]))
            return self._drawn(name, number)
        return MISSING

    def painted(self, name: str, number: int, width_px: int) -> bytes | None:
        """Draw, and paint it as a PNG; None where a fault of ours lost it.

        Raises
        ------
        NotUnderstood, TooIntricate
        """
        svg = self.drawn(name, number)
        if svg == MISSING:
            return None
        self._pay(painting_effort(name, million_pixels(svg, width_px), len(svg) / 1e3))
        with self.contain("drawing"):
            return rasterise(svg, width_px)
        return None

    def _drawn(self, name: str, number: int) -> str:
        if name == "assembled":
            order, title = self.order, "The pieces together, from above"
            return draw_assembled(order.slabs, self.shapes, order.joins, title=title)
        slab = self.order.slabs[number]
        shape = shape_of(slab, self.workshop)
        draw = self._view if name == "view" else self._plan
        return draw(slab, shape, number)

    def true_size(
        self, number: int, part: str, paper: Paper, *, is_corner: bool
    ) -> bytes | TooManySheets | None:
        """Print a cut-out, by its number, or a corner, by its name, at true size as a PDF.

        None where the slab has no such part.

        Raises
        ------
        NotUnderstood, TooIntricate
        """
        slab = self.order.slabs[number]
        self._pay(paper_effort([slab]))
        shape, radius = shape_of(slab, self.workshop), self.workshop.shaping.inside_radius_mm
        if is_corner:
            drawn = corner_drawn(slab, shape, part, radius)
        else:
            drawn = cutout_drawn(slab, shape, _number(part), radius)
        if drawn is None:
            return None
        return true_size_pdf(drawn, paper, workshop=self.workshop.workshop.name)

    def _plan(self, slab: Slab, shape: Shape, number: int) -> str:
        seen = shade_seen(slab.shade, self.workshop)
        issued = self.content.get("on")
        title = TitleBlock(
            reference=self.content.get("ref", ""),
            label=slab.label,
            date="" if issued is None else self.speech.value(date.fromisoformat(issued)),
            shade=slab.shade.name or slab.shade.match or "",
            colour=seen.hex if seen is not None else _NO_COLOUR,
            workshop=self.workshop.workshop.name,
        )
        pins = [
            Pin(said, level, tuple((x, y) for x, y in at_mm))
            for said, on, level, at_mm in self.content.get("pins", ())
            if on == number
        ]
        return draw_plan(slab, shape, title=title, pins=pins, speech=self.speech)

    def _view(self, slab: Slab, shape: Shape, number: int) -> str:
        sealer = next(one for one in self.workshop.sealers if one.name == slab.finish.sealer)
        return draw_view(
            slab,
            shape,
            colour=seen_colour(slab, sealer, self.workshop),
            gloss=gloss_of(slab, sealer),
            seed=json.dumps(self.content["slabs"][number], sort_keys=True),
            title=slab.label or TITLE,
            speech=self.speech,
        )


def seen_colour(slab: Slab, sealer: Sealer, workshop: Workshop) -> str:
    """Return the colour that a slab has once it is sealed and dry; grey where none is known."""
    seen = shade_seen(slab.shade, workshop)
    return _NO_COLOUR if seen is None else lab_to_srgb(appearance(seen.lab, sealed_as(sealer)))


def gloss_of(slab: Slab, sealer: Sealer) -> float:
    """Return how far a slab's top mirrors, by its surface and by a film on it."""
    film = _FILM_GLOSS if sealer.kind == "film" else 0.0
    return min(1.0, SURFACES[slab.finish.surface].gloss + film)


def _number(part: str) -> int:
    """Read a cut-out's number; -1 for what is none."""
    return int(part) if part.isascii() and part.isdigit() and len(part) < 3 else -1
