"""The folder of the page and the desk, served unchanged, compressed where accepted."""

from __future__ import annotations

import gzip
from collections.abc import Iterator
from functools import lru_cache, partial
from pathlib import Path
from typing import Final
from urllib.parse import parse_qsl

from flask import Flask, Response, redirect, request, send_from_directory
from werkzeug.exceptions import UnsupportedMediaType

from ledgerstone.api import guard
from ledgerstone.api.app_context import AppContext
from ledgerstone.application.form_answers import answer_form
from ledgerstone.codec.strict_json import LARGEST_BYTES
from ledgerstone.form_page import MAX_FIELDS, Pairs
from ledgerstone.media_types import HTML, SVG
from ledgerstone.wording import LANGUAGES

DESK_FOLDER: Final = "desk/"
FORM: Final = "desk/workshop/"
SENT: Final = "application/x-www-form-urlencoded"
# The desk's forms are never submitted, so that no key is ever written into an address.
DESK_POLICY: Final = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
    " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
_PACKED = {HTML, "text/css", "text/javascript", SVG}


def page_routes(app: Flask, folder: Path, context: AppContext) -> None:
    """Answer the page's address in the workshop's language, and each of its files by name."""
    own = f"index.{context.workshop.workshop.language}.html"
    document = own if (folder / own).is_file() else "index.html"
    for address, answering in _forms(folder, document):
        _answer_form(app, address, folder / answering, context)

    @app.get("/")
    def index() -> Response:
        return _file(document)

    for apart in (DESK_FOLDER, FORM):
        at = f"/{apart.rstrip('/')}"
        app.add_url_rule(at, f"to {apart}", partial(redirect, f"/{apart}", 308))
        app.add_url_rule(f"/{apart}", apart, lambda apart=apart: _file(f"{apart}index.html"))

    @app.get("/<path:name>")
    def file(name: str) -> Response:
        return _file(name)

    def _file(name: str) -> Response:
        response = send_from_directory(str(folder), name)
        response.headers["Cache-Control"] = "no-cache"
        if name.startswith(DESK_FOLDER):
            response.headers["Content-Security-Policy"] = DESK_POLICY
            response.headers["X-Robots-Tag"] = "noindex, nofollow"
        if response.mimetype in _PACKED:
            response.vary.add("Accept-Encoding")
            if response.status_code == 200 and request.accept_encodings["gzip"] > 0:
                _pack(response)
        return response


def _forms(folder: Path, document: str) -> Iterator[tuple[str, str]]:
    """Yield each address of the page, and its document."""
    yield "/", document
    for name in ("index.html", *(f"index.{language}.html" for language in LANGUAGES)):
        if (folder / name).is_file():
            yield f"/{name}", name


def _answer_form(app: Flask, address: str, document: Path, context: AppContext) -> None:
    """Answer the page's form, which a browser without scripts submits to the page's address."""

    @app.post(address, endpoint=f"form {address}")
    def form() -> Response:
        if request.mimetype != SENT:
            raise UnsupportedMediaType
        guard.must_accept(HTML)
        pairs = _pairs(guard.plain_body(LARGEST_BYTES))
        page = document.read_text(encoding="utf-8")
        answer = answer_form(pairs, page, context.quote_context(), context.templates)
        return Response(answer.html, status=answer.status, mimetype=HTML)


def _pairs(body: bytes) -> Pairs | None:
    """Read a submitted form; None if it is not UTF-8, or too large."""
    try:
        text = body.decode("utf-8")
        return parse_qsl(text, keep_blank_values=True, errors="strict", max_num_fields=MAX_FIELDS)
    except ValueError:
        return None


def _pack(response: Response) -> None:
    """Compress a response. Its ETag becomes weak: the file is the same, the bytes are not."""
    response.direct_passthrough = False
    response.set_data(_packed(response.get_data()))
    response.headers["Content-Encoding"] = "gzip"
    response.headers.pop("Accept-Ranges", None)
    tag, _ = response.get_etag()
    if tag is not None:
        response.set_etag(tag, weak=True)


@lru_cache(maxsize=128)
def _packed(data: bytes) -> bytes:
    return gzip.compress(data, 9, mtime=0)
