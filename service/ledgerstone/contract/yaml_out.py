"""Plain data as YAML 1.2 in block style, its texts quoted as JSON quotes them."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping, Sequence

__all__ = ["write_yaml"]

_INDENT = "  "
_PLAIN_KEY = re.compile(r"[A-Za-z_$/][A-Za-z0-9_$/{}.-]*")
_NOT_TEXT = {"null", "true", "false", "yes", "no", "on", "off", "y", "n"}  # to YAML 1.1 readers


def write_yaml(document: Mapping[str, object]) -> str:
    """Write a document of mappings, lists, texts, numbers, booleans and nulls.

    Every JSON text without line separators is also a YAML double-quoted scalar, so the standard
    library's quoting is used and nothing is left for a reader to guess the type of.

    *Source*: YAML 1.2.2 §5.7 (escaped characters), §7.3.1, §8.2.
    """
    return "\n".join(_mapping(document, 0)) + "\n"


def _mapping(members: Mapping[str, object], depth: int) -> Iterator[str]:
    for key, value in members.items():
        yield from _headed(f"{_INDENT * depth}{_key(key)}:", value, depth + 1)


def _sequence(items: Sequence[object], depth: int) -> Iterator[str]:
    pad = _INDENT * depth
    for item in items:
        if not _is_block(item):
            yield f"{pad}- {_scalar(item)}"
            continue
        first, *rest = _block(item, depth + 1)
        yield f"{pad}- {first.lstrip()}"
        yield from rest


def _headed(head: str, value: object, depth: int) -> Iterator[str]:
    if _is_block(value):
        yield head
        yield from _block(value, depth)
    else:
        yield f"{head} {_scalar(value)}"


def _is_block(value: object) -> bool:
    return isinstance(value, Mapping | list | tuple) and len(value) > 0


def _block(value: object, depth: int) -> Iterator[str]:
    if isinstance(value, Mapping):
        return _mapping(value, depth)
    return _sequence(value if isinstance(value, list | tuple) else (), depth)


def _key(key: str) -> str:
    plain = _PLAIN_KEY.fullmatch(key) is not None and key.lower() not in _NOT_TEXT
    return key if plain else json.dumps(key, ensure_ascii=False)


def _scalar(value: object) -> str:
    return json.dumps(value, ensure_ascii=False, allow_nan=False)
