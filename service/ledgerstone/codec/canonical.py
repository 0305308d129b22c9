"""JSON written the one way that is hashed."""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import date
from decimal import Decimal


def canonical(content: object) -> bytes:
    """Write JSON the one way that is hashed: sorted keys, no spaces."""
    return json.dumps(content, sort_keys=True, separators=(",", ":"), default=_plain).encode()


def _plain(value: object) -> object:
    """Write what JSON does not know: decimals as text, days in ISO 8601, mappings as objects."""
    if isinstance(value, Mapping):
        return dict(value)
    if isinstance(value, Decimal):
        return f"{value:.2f}"
    if isinstance(value, date):
        return value.isoformat()
    raise TypeError(f"{type(value).__name__} is not JSON")
