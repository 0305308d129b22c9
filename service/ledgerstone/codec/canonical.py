"""Canonical JSON, for hashes and signatures."""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import date
from decimal import Decimal


def canonical(content: object) -> bytes:
    """Return canonical JSON as bytes: sorted keys, no spaces."""
    return json.dumps(content, sort_keys=True, separators=(",", ":"), default=_plain).encode()


def _plain(value: object) -> object:
    """Convert types that JSON lacks: decimals to text, days to ISO 8601, mappings to objects."""
    if isinstance(value, Mapping):
        return dict(value)
    if isinstance(value, Decimal):
        return f"{value:.2f}"
    if isinstance(value, date):
        return value.isoformat()
    raise TypeError(f"{type(value).__name__} is not JSON")
