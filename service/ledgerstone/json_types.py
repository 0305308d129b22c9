"""The types of what a JSON document holds."""

from __future__ import annotations

from typing import Any

# Any of JSON's kinds, to any depth. The type check looks no further into it: what comes from
# outside is read by a schema, what goes out is written by one.
JSON = Any
Members = dict[str, JSON]  # of an object, by name
KeyPath = tuple[str | int, ...]  # where something stands in a document: its keys from the top
