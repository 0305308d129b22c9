"""The media types that the service takes and answers (IANA's registry)."""

from __future__ import annotations

from typing import Final

JSON_TYPE: Final = "application/json"
PROBLEM_TYPE: Final = "application/problem+json"  # RFC 9457
TEXT: Final = "text/plain"
HTML: Final = "text/html"
EML: Final = "message/rfc822"
ICS: Final = "text/calendar"
PDF: Final = "application/pdf"
SVG: Final = "image/svg+xml"
PNG: Final = "image/png"
DXF: Final = "image/vnd.dxf"
