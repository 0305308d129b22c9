"""Drawings from a token's content: of one slab, or of all slabs assembled."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from functools import cached_property
from typing import Any, Final

import shapely
from shapely.geometry import MultiPoint, Polygon

from ledgerstone.application.seen import NO_COLOUR, gloss_of, seen_colour
from ledgerstone.checks import Finding
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.order_out import write_order
from ledgerstone.codec.tokens import Tokens
from ledgerstone.containment import Contain, uncontained
from ledgerstone.drawing import (
    DrawnSlab,
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
from ledgerstone.drawing.frame import PHONE_WIDTH, SHEET_WIDTH
from ledgerstone.drawing.handedness import meetings_of
from ledgerstone.drawing.tiling import SheetSize
from ledgerstone.message import Message
from ledgerstone.order import Order, Slab
from ledgerstone.remedies import Budget
from ledgerstone.shade import shade_seen
from ledgerstone.shape import Shape, shape_of
from ledgerstone.wording import Speech, known_language, speech_of, workshop_speech
from ledgerstone.workshop.records import Workshop

DRAWN: Final = ("plan", "view", "assembled")  # each as SVG and as PNG
_OF_AN_ORDER: Final = ("slabs", "joins", "language")

_PHONE_PX = 500  # below this width a plan is drawn on a phone's sheet
_PIN_FINE_MM = 2.0  # tolerance of a pinned area's outline, to keep links short


@dataclass(frozen=True, slots=True, kw_only=True)
class Annotations:
    """The annotations of a drawing: the offer's name and day, and its numbered findings.

    A finding's number is its position in ``findings``, from 1.
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
    """Return the signed links of an order's drawings, and each slab's plan in words.

    Empty if the links would be too long to open.

    Parameters
    ----------
    shapes
        The slabs' shapes, if they are known already.
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
    """Sign the data of an order's drawings, without its pins if they make the token too long."""
    token = tokens.sign("drawing", drawing_content(order, annotations))
    if token is None:
        token = tokens.sign("drawing", drawing_content(order, replace(annotations, findings=())))
    return token


def drawing_content(order: Order, annotations: Annotations = NO_ANNOTATIONS) -> dict[str, Any]:
    """Return the data of an order's drawings: slabs, joins, language, title and pins."""
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
    """Yield the findings that have a place as pins: number, slab, level, points."""
    for number, finding in enumerate(findings, start=1):
        pin = pin_at(number, finding.level, finding.where_mm)
        if finding.slab is None or pin is None:
            continue
        shown = Polygon(pin.at_mm).simplify(_PIN_FINE_MM) if pin.is_area else MultiPoint(pin.at_mm)
        yield [number, finding.slab, finding.level, shapely.get_coordinates(shown).tolist()]


@dataclass(frozen=True)
class Drawings:
    """The drawings of one token.

    Attributes
    ----------
    budget
        Units of work for the drawings; None if they are reserved already.
    """

    content: Mapping[str, Any]
    workshop: Workshop
    contain: Contain = uncontained
    budget: Budget | None = None

    @cached_property
    def order(self) -> Order:
        """The token's slabs and joins, read.

        Raises
        ------
        NotUnderstood
            The workshop no longer offers a shade or finish that they name.
        """
        held = {key: self.content[key] for key in _OF_AN_ORDER if key in self.content}
        return read_order(held, self.workshop)

    @cached_property
    def speech(self) -> Speech:
        """Formats the drawings' messages in the order's language."""
        return speech_of(self.order, self.workshop)

    @property
    def placeholder_speech(self) -> Speech:
        """Formats what stands in place of a drawing, whatever is wrong with the slabs."""
        usual = self.workshop.workshop.language
        return workshop_speech(known_language(self.content.get("language"), usual), self.workshop)

    @cached_property
    def shapes(self) -> tuple[Shape, ...]:
        """The slabs' shapes."""
        return tuple(shape_of(slab, self.workshop) for slab in self.order.slabs)

    def _pay(self, units: float) -> None:
        if self.budget is not None:
            self.budget.pay(units, len(self.order.slabs))

    def drawn(self, name: str, number: int | None, width_px: int | None = None) -> str | None:
        """Draw a plan or a view of one slab, or all slabs assembled.

        None if an internal fault lost it.

        Parameters
        ----------
        number
            Index of the slab; None for a view of all slabs.
        width_px
            Display width, if known: a plan for a phone has a narrower sheet, so that its letters
            are as large.

        Raises
        ------
        NotUnderstood, TooIntricate
        """
        with self.contain("drawing"):
            slabs = self.order.slabs
            together = name == "assembled" or number is None
            self._pay(drawing_effort(slabs if together else [slabs[number or 0]]))
            return self._drawn(name, number, width_px)
        return None

    def drawn_png(self, name: str, number: int | None, width_px: int) -> bytes | None:
        """Draw as ``drawn`` does, as a PNG; None if an internal fault lost it.

        Raises
        ------
        NotUnderstood, TooIntricate
        """
        svg = self.drawn(name, number, width_px)
        if svg is None:
            return None
        self._pay(painting_effort(name, million_pixels(svg, width_px), len(svg) / 1e3))
        with self.contain("drawing"):
            return rasterise(svg, width_px, self.speech)
        return None

    def _drawn(self, name: str, number: int | None, width_px: int | None) -> str:
        if name == "assembled":
            return draw_assembled(self.order.slabs, self.shapes, self.order.joins, self.speech)
        if name == "view":
            return self._view(range(len(self.order.slabs)) if number is None else [number])
        slab = self.order.slabs[number or 0]
        wide = PHONE_WIDTH if width_px is not None and width_px < _PHONE_PX else SHEET_WIDTH
        return self._plan(slab, shape_of(slab, self.workshop), number or 0, wide)

    def true_size(
        self, number: int, part: str, paper: SheetSize, *, is_corner: bool
    ) -> bytes | TooManySheets | None:
        """Print a cut-out (by number) or a corner (by name) at true size as a PDF.

        None if the slab has no such part.

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
        return true_size_pdf(drawn, paper, self.speech, workshop=self.workshop.workshop.name)

    def _plan(self, slab: Slab, shape: Shape, number: int, wide: float) -> str:
        seen = shade_seen(slab.shade, self.workshop)
        issued, slabs, joins = self.content.get("on"), self.order.slabs, self.order.joins
        numbered = Message("plan-slab-numbered", number=number + 1)
        title = TitleBlock(
            reference=self.content.get("ref", ""),
            label=slab.label or ("" if len(slabs) == 1 else self.speech.say(numbered)),
            lies=" ".join(map(self.speech.say, meetings_of(number, slabs, self.shapes, joins))),
            date="" if issued is None else self.speech.value(date.fromisoformat(issued)),
            shade=slab.shade.name or slab.shade.match or "",
            colour=seen.hex if seen is not None else NO_COLOUR,
            workshop=self.workshop.workshop.name,
        )
        pins = [
            Pin(text, level, tuple((x, y) for x, y in at_mm))
            for text, on, level, at_mm in self.content.get("pins", ())
            if on == number
        ]
        return draw_plan(slab, shape, title=title, pins=pins, speech=self.speech, wide=wide)

    def _view(self, numbers: Sequence[int]) -> str:
        pieces = [self._piece(number) for number in numbers]
        joins = self.order.joins if len(pieces) > 1 else ()
        title = ", ".join(piece.slab.label for piece in pieces if piece.slab.label)
        title = title or self.speech.say(Message("drawing-view"))
        return draw_view(pieces, joins, title=title, speech=self.speech)

    def _piece(self, number: int) -> DrawnSlab:
        slab = self.order.slabs[number]
        sealer = next(
            sealer for sealer in self.workshop.sealers if sealer.name == slab.finish.sealer
        )
        return DrawnSlab(
            slab,
            shape_of(slab, self.workshop),
            colour=seen_colour(slab, sealer, self.workshop),
            gloss=gloss_of(slab, sealer),
            seed=json.dumps(self.content["slabs"][number], sort_keys=True),
        )


def _number(part: str) -> int:
    """Read a cut-out's number; -1 if it is not a number."""
    return int(part) if part.isascii() and part.isdigit() and len(part) < 3 else -1
