"""The strict JSON parser of every request body: it guesses nothing and drops nothing."""

from __future__ import annotations

import json
import math
import re
from typing import Any

from ledgerstone.errors import NotJSON
from ledgerstone.json_types import JSON
from ledgerstone.message import Message

MAX_JSON_DEPTH = 32
LARGEST_BYTES = 64 * 1024
LONGEST_KEY = 120
# The beginnings of the standard library's messages, and our message for each.
_LOOKED_FOR = {
    "Expecting value": "value",
    "Expecting property name": "key",
    "Illegal trailing comma": "trailing-comma",
    "Expecting ',' delimiter": "comma",
    "Expecting ':' delimiter": "colon",
    "Extra data": "after-the-end",
    "Unterminated string": "unclosed-text",
    "Invalid control character": "control-character",
    "Invalid \\": "escape",
    "Unexpected UTF-8 BOM": "byte-order-mark",
}
_BRACKETS_OUTSIDE_STRINGS = re.compile(r'"(?:[^"\\]|\\.)*+"?|[\[\]{}]', re.DOTALL)


def read_json(body: bytes) -> JSON:
    """Read one JSON document.

    Raises
    ------
    NotJSON
        Not UTF-8, not JSON, a repeated key in an object, a number that is not finite, or nested
        deeper than ``DEEPEST``.
    """
    if not body.strip():
        raise NotJSON(Message("json-empty"))
    try:
        text = body.decode("utf-8")
    except UnicodeDecodeError:
        raise NotJSON(Message("json-not-utf-8")) from None
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


def _why_not_json(fault: json.JSONDecodeError) -> Message:
    """Return where the text stops being JSON, and what was expected there."""
    missing = (why for begins, why in _LOOKED_FOR.items() if fault.msg.startswith(begins))
    why, line, column = next(missing, "unknown"), fault.lineno, fault.colno
    return Message("json-broken", why=why, line=line, column=column)


def _check_depth(text: str) -> None:
    """Check the nesting depth by counting brackets outside strings, before parsing recurses."""
    depth = 0
    for bracket in _BRACKETS_OUTSIDE_STRINGS.findall(text):
        depth += {"[": 1, "{": 1, "]": -1, "}": -1}.get(bracket, 0)
        if depth > MAX_JSON_DEPTH:
            raise NotJSON(Message("json-too-deep", levels=MAX_JSON_DEPTH))


def _no_constant(name: str) -> float:
    raise NotJSON(Message("json-not-a-number", name=name))


def _finite(text: str) -> float:
    value = float(text)
    if not math.isfinite(value):
        raise NotJSON(Message("json-number-too-large", number=text[:40]))
    return value


def _whole(text: str) -> int:
    if len(text) > 20:
        raise NotJSON(Message("json-number-too-large", number=f"{text[:20]}…"))
    return int(text)


def _no_key_twice(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    members = dict(pairs)
    if any(len(key) > LONGEST_KEY or not key.isprintable() for key in members):
        raise NotJSON(Message("json-key-unreadable", longest=LONGEST_KEY))
    if len(members) < len(pairs):
        keys = [key for key, _ in pairs]
        twice = next(key for key in keys if keys.count(key) > 1)
        raise NotJSON(Message("json-key-twice", key=twice[:40]))
    return members
