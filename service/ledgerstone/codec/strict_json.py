"""One strict JSON loader for every body: nothing is guessed, nothing is dropped."""

from __future__ import annotations

import json
import math
import re
from typing import Any

from ledgerstone.errors import NotJSON
from ledgerstone.json_types import JSON

DEEPEST = 32
LARGEST_BYTES = 64 * 1024
LONGEST_KEY = 120
# How the standard library's decoder begins its messages, and what they mean in our words.
_LOOKED_FOR = {
    "Expecting value": "a value is missing",
    "Expecting property name": "a key in double quotation marks is missing",
    "Illegal trailing comma": "a comma has nothing after it",
    "Expecting ',' delimiter": "a comma or a closing bracket is missing",
    "Expecting ':' delimiter": "a colon is missing",
    "Extra data": "something stands after the end of the document",
    "Unterminated string": "a text without its closing quotation mark begins",
    "Invalid control character": "a text holds a line break or another control character",
    "Invalid \\": "a backslash begins no escape that JSON knows",
    "Unexpected UTF-8 BOM": "a byte order mark stands",
}
_BRACKETS_OUTSIDE_STRINGS = re.compile(r'"(?:[^"\\]|\\.)*+"?|[\[\]{}]', re.DOTALL)


def read_json(body: bytes) -> JSON:
    """Read one JSON document.

    Raises
    ------
    NotJSON
        Not UTF-8, not JSON, a key twice in one object, a number that is not finite, or deeper
        than ``DEEPEST``.
    """
    if not body.strip():
        raise NotJSON("Send the order as JSON; the body is empty.")
    try:
        text = body.decode("utf-8")
    except UnicodeDecodeError:
        raise NotJSON("Send the order as JSON in UTF-8.") from None
    _check_depth(text)
    try:
        return json.loads(
            text,
            parse_constant=_no_constant,
            parse_float=_finite,
            parse_int=_whole,
            object_pairs_hook=_no_key_twice,
        )
    except json.JSONDecodeError as fault:
        raise NotJSON(_why_not_json(fault)) from None


def _why_not_json(fault: json.JSONDecodeError) -> str:
    """Say where the text stops being JSON, and what was looked for there."""
    where = f"line {fault.lineno}, column {fault.colno}"
    for begins, says in _LOOKED_FOR.items():
        if fault.msg.startswith(begins):
            return f"The body is not JSON: {says} at {where}."
    return f"The body stops being JSON at {where}."


def _check_depth(text: str) -> None:
    """Count brackets outside strings before anything recurses."""
    depth = 0
    for bracket in _BRACKETS_OUTSIDE_STRINGS.findall(text):
        depth += {"[": 1, "{": 1, "]": -1, "}": -1}.get(bracket, 0)
        if depth > DEEPEST:
            raise NotJSON(f"The body is nested deeper than {DEEPEST} levels.")


def _no_constant(name: str) -> float:
    raise NotJSON(f"{name} is not a number; give a figure.")


def _finite(text: str) -> float:
    value = float(text)
    if not math.isfinite(value):
        raise NotJSON(f"{text[:40]} is too large a number.")
    return value


def _whole(text: str) -> int:
    if len(text) > 20:
        raise NotJSON(f"{text[:20]}… is too large a number.")
    return int(text)


def _no_key_twice(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    members = dict(pairs)
    if any(len(key) > LONGEST_KEY or not key.isprintable() for key in members):
        raise NotJSON(
            f"A key is longer than {LONGEST_KEY} characters or holds some that do not print."
        )
    if len(members) < len(pairs):
        keys = [key for key, _ in pairs]
        twice = next(key for key in keys if keys.count(key) > 1)
        raise NotJSON(f'The key "{twice[:40]}" stands twice in one object; give it once.')
    return members
