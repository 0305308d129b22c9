"""The types of what a JSON document holds, and where in it something stands."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

# Any of JSON's kinds, to any depth. The type check looks no further into it: what comes from
# outside is read by a schema, what goes out is written by one.
JSON = Any
Members = dict[str, JSON]  # of an object, by name
KeyPath = tuple[str | int, ...]  # where something stands in a document: its keys from the top


def value_at(document: JSON, path: Sequence[str | int]) -> JSON:
    """Return what stands at a path of a document.

    Raises
    ------
    KeyError, IndexError, TypeError
        If nothing does.
    """
    here = document
    for step in path:
        here = here[step]
    return here
