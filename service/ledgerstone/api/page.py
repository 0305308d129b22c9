"""The folder of the page and the desk, served as it lies there, and packed for who takes it so."""

from __future__ import annotations

import gzip
from functools import lru_cache
from pathlib import Path
from typing import Final

from flask import Flask, Response, redirect, request, send_from_directory
from werkzeug.wrappers import Response as Redirection

DESK: Final = "desk/"
# No form of the desk is sent as one, so that no key is ever written into an address.
DESK_POLICY: Final = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:;"
    " connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
_PACKED = {"text/html", "text/css", "text/javascript", "image/svg+xml"}


def page_routes(app: Flask, folder: Path, language: str) -> None:
    """Answer the page's address in the workshop's language, and each of its files by name."""
    own = f"index.{language}.html"
    document = own if (folder / own).is_file() else "index.html"

    @app.get("/")
    def index() -> Response:
        return _file(document)

    @app.get("/desk")
    def to_desk() -> Redirection:
        return redirect(f"/{DESK}", 308)

    @app.get(f"/{DESK}")
    def desk() -> Response:
        return _file(f"{DESK}index.html")

    @app.get("/<path:name>")
    def file(name: str) -> Response:
        return _file(name)

    def _file(name: str) -> Response:
        response = send_from_directory(str(folder), name)
        response.headers["Cache-Control"] = "no-cache"
        if name.startswith(DESK):
            response.headers["Content-Security-Policy"] = DESK_POLICY
            response.headers["X-Robots-Tag"] = "noindex, nofollow"
        if response.mimetype in _PACKED:
            response.vary.add("Accept-Encoding")
            if response.status_code == 200 and request.accept_encodings["gzip"] > 0:
                _pack(response)
        return response


def _pack(response: Response) -> None:
    """Pack what is answered. Its tag is weak: the file is the same, the bytes are not."""
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
