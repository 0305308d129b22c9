"""The drawings of a signed link as SVG, PNG and PDF, with conditional requests."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Mapping
from typing import Any, Final, cast

from flask import Response, request

from ledgerstone import __version__
from ledgerstone.api import lane
from ledgerstone.api.containing import contained
from ledgerstone.api.metrics import timed
from ledgerstone.api.problems import problem
from ledgerstone.application.drawings import DRAWN, Drawings
from ledgerstone.drawing import (
    NARROWEST_PX,
    WIDEST_PX,
    TooManySheets,
    missing_drawing,
    missing_pdf,
    rasterise,
)
from ledgerstone.drawing.tiling import PAPERS, SheetSize
from ledgerstone.media_types import PDF, PNG, SVG
from ledgerstone.message import Message
from ledgerstone.workshop.records import Workshop

_A_YEAR = 31_536_000
# A PDF has no sandbox policy: a browser's own viewer does not open within one.
_POLICY = "default-src 'none'; img-src data:; style-src 'unsafe-inline'"
_USUAL_PX = 600
_MAX_FIGURES = 9
NO_SLAB: Final = Message("no-such-slab-drawn")


def drawing(
    name: str, kind: str, token: str, content: Mapping[str, Any], workshop: Workshop
) -> Response:
    """Answer one drawing as SVG or PNG.

    Parameters
    ----------
    content
        The token's content.
    """
    together = name == "view" and "slab" not in request.args
    number = None if together else slab_number(content)
    if number is None and not together:
        return problem(404, NO_SLAB)
    if name not in DRAWN:
        return problem(404, Message("no-such-drawing"))
    width_px = _width_px()
    if width_px is None:
        return problem(400, Message("picture-width", least=NARROWEST_PX, most=WIDEST_PX))

    def draw() -> str | Response:
        drawings = _drawings(content, workshop)
        svg = drawings.drawn(name, number, width_px)
        return svg or missing(missing_drawing(drawings.placeholder_speech), kind)

    def paint() -> bytes | Response:
        drawings = _drawings(content, workshop)
        speech = drawings.placeholder_speech
        picture = drawings.drawn_png(name, number, width_px)
        return picture or missing(rasterise(missing_drawing(speech), width_px, speech), PNG)

    made_of = (name, kind, number, width_px, token)
    return cached_drawing(made_of, workshop, kind, draw if kind == SVG else paint)


def _drawings(content: Mapping[str, Any], workshop: Workshop) -> Drawings:
    return Drawings(content, workshop, contained, lane.budget())


def missing(drawn: str | bytes, kind: str) -> Response:
    """Answer with a drawing's placeholder, which is not cached."""
    response = Response(drawn, mimetype=kind)
    response.headers["Cache-Control"] = "no-store"
    response.headers["Content-Security-Policy"] = _policy(kind)
    return response


def true_size(token: str, content: Mapping[str, Any], workshop: Workshop) -> Response:
    """Answer a cut-out or a corner at true size, as a PDF."""
    number = slab_number(content)
    if number is None:
        return problem(404, NO_SLAB)
    name = request.args.get("paper", workshop.place.paper).lower()
    if name not in PAPERS:
        return problem(400, Message("paper-of-drawing"))
    paper = cast("SheetSize", name)
    is_corner = "corner" in request.args
    part = request.args["corner"] if is_corner else request.args.get("cutout", "0")

    def draw() -> bytes | Response:
        drawings = Drawings(content, workshop, budget=lane.budget())
        with contained("drawing"):
            printed = drawings.true_size(number, part, paper, is_corner=is_corner)
            if printed is None:
                what = "corner" if is_corner else "cutout"
                return problem(404, Message("no-such-part", part=what))
            if isinstance(printed, TooManySheets):
                return _too_many(printed.sheets, paper)
            return printed
        return missing(missing_pdf(drawings.placeholder_speech), PDF)

    return cached_drawing(("true-size", number, part, is_corner, paper, token), workshop, PDF, draw)


def _too_many(sheets: int, paper: SheetSize) -> Response:
    return problem(400, Message("too-many-sheets", sheets=sheets, paper=paper))


def _policy(kind: str) -> str:
    return _POLICY if kind == PDF else f"{_POLICY}; sandbox"


def slab_number(content: Mapping[str, Any]) -> int | None:
    """Return the index of the requested slab; None if the token has no such slab."""
    text = request.args.get("slab", "0")
    number = _whole(text, 2)
    return number if number is not None and number < len(content.get("slabs", ())) else None


def _width_px() -> int | None:
    """Return a picture's width, px, clamped to what is painted; None if it is no number."""
    text = request.args.get("width")
    if text is None:
        return _USUAL_PX
    number = _whole(text, _MAX_FIGURES)
    return None if number is None or number == 0 else min(max(number, NARROWEST_PX), WIDEST_PX)


def _whole(text: str, most_figures: int) -> int | None:
    plain = text.isascii() and text.isdigit() and len(text) <= most_figures
    return int(text) if plain else None


def cached_drawing(
    made_of: tuple[object, ...],
    workshop: Workshop,
    kind: str,
    draw: Callable[[], str | bytes | Response],
    *,
    how: str = "public",
) -> Response:
    """Answer a drawing that is immutable under its link; a matching ETag saves drawing it.

    Parameters
    ----------
    made_of
        Everything it depends on except the program and the profile.
    how
        ``public``, or ``private`` for the maker only.
    """
    named = "|".join(map(str, (__version__, workshop.fingerprint, *workshop.sentences, *made_of)))
    etag = hashlib.sha256(named.encode()).hexdigest()[:32]
    response = Response(mimetype=kind)
    response.set_etag(etag)
    if etag not in request.if_none_match.as_set(include_weak=True):
        with timed("drawings"):
            drawn = draw()
        if isinstance(drawn, Response):
            return drawn
        response.set_data(drawn)
    response.headers["Cache-Control"] = f"{how}, max-age={_A_YEAR}, immutable"
    response.headers["Content-Security-Policy"] = _policy(kind)
    response.make_conditional(request)
    return response
