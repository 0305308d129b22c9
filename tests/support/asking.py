"""How the API's tests change an order, ask, and judge the words of an answer."""

import copy
import json
import re
from collections.abc import Iterator
from typing import Any

import jsonpatch

from support.demonstration import EXAMPLE_ORDER

JSON = "application/json"
PROBLEM = "application/problem+json"

# Words that no sentence of ours uses, and signs of what runs underneath.
NEVER_SAID = re.compile(
    r"(?i:please|sorry|invalid|illegal|forbidden|oops|is required|error code"
    r"|traceback|exception|\w+error\b|marshmallow|shapely|werkzeug|flask|python|numpy"
    r"|object at 0x|<class|may not be null|not a valid)"
    r"|\bNone\b|NoneType|\bTrue\b|\bFalse\b|\\x[0-9a-f]{2}|\\u[0-9a-f]{4}"
)


def changed(*changes: tuple[str, Any], order: dict[str, Any] = EXAMPLE_ORDER) -> dict[str, Any]:
    """The example order with values put at JSON Pointers; an end of ``/-`` adds to a list."""
    made: dict[str, Any] = copy.deepcopy(order)
    for pointer, value in changes:
        op = "add" if pointer.endswith("/-") or not _has(made, pointer) else "replace"
        patch = [{"op": op, "path": pointer, "value": value}]
        made = jsonpatch.apply_patch(made, patch)
    return made


def without(pointer: str, order: dict[str, Any] = EXAMPLE_ORDER) -> dict[str, Any]:
    """The example order less one of its members."""
    made: dict[str, Any] = jsonpatch.apply_patch(order, [{"op": "remove", "path": pointer}])
    return made


def _has(document: object, pointer: str) -> bool:
    try:
        jsonpatch.JsonPointer(pointer).resolve(document)
    except jsonpatch.JsonPointerException:
        return False
    return True


def body_of(document: object) -> bytes:
    """A document as the bytes of a request."""
    return json.dumps(document).encode()


def raw(value: str, old: str = '"1450 mm"') -> bytes:
    """The example order's bytes with one value written in a way that JSON writers would not."""
    text = json.dumps(EXAMPLE_ORDER)
    assert text.count(old) == 1
    return text.replace(old, value).encode()


def sentences(document: object) -> Iterator[str]:
    """Every sentence of an answer that a person reads."""
    if isinstance(document, dict):
        for key, value in document.items():
            if key in ("says", "detail", "title", "why") and isinstance(value, str):
                yield value
            elif key != "order":
                yield from sentences(value)
    elif isinstance(document, list):
        for value in document:
            yield from sentences(value)


def keys(document: object) -> Iterator[str]:
    """Every key of a document, at whatever depth."""
    if isinstance(document, dict):
        for key, value in document.items():
            yield key
            yield from keys(value)
    elif isinstance(document, list):
        for value in document:
            yield from keys(value)


def texts(document: object) -> Iterator[str]:
    """Every text of a document, at whatever depth."""
    if isinstance(document, dict):
        for value in document.values():
            yield from texts(value)
    elif isinstance(document, list):
        for value in document:
            yield from texts(value)
    elif isinstance(document, str):
        yield document
