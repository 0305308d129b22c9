"""The addressee of a draft, and the message that it answers."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from ledgerstone.papers.message import Answered


def answered_in(ask: Mapping[str, Any]) -> Answered | None:
    """Return the message that a request names as the one to answer, if any."""
    named = ask.get("answers")
    if named is None:
        return None
    name = " ".join(ask.get("customer", "").split())
    return Answered(**{"to": "", "name": name, **named})
