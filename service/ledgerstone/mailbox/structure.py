"""A message's BODYSTRUCTURE: its text parts, which are fetched, and its attachments."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from email.header import decode_header, make_header
from email.utils import collapse_rfc2231_value, decode_params, unquote
from typing import Any, Final

MAX_LEAVES: Final = 300
_EXTENSION: Final = {
    "text": 8,
    "message/rfc822": 10,
}  # where extension data begins (RFC 3501, 7.4.2)
_OTHER_EXTENSION: Final = 7


@dataclass(frozen=True, slots=True)
class LeafPart:
    """A part that is not a multipart.

    Attributes
    ----------
    section
        Its part number for ``BODY[…]``, such as ``1.2``.
    name
        Its file name, if one is given.
    is_attached
        Whether it is an attachment, which is never fetched.
    """

    section: str
    kind: str
    subtype: str
    charset: str = ""
    encoding: str = ""
    size: int = 0
    name: str = ""
    is_attached: bool = False

    @property
    def shown(self) -> str:
        """Its file name, else its media type."""
        return self.name or f"{self.kind}/{self.subtype}"


def leaf_parts(structure: Sequence[Any]) -> list[LeafPart]:
    """Return up to ``MAX_LEAVES`` parts in order; attached messages are not descended into.

    Parameters
    ----------
    structure
        As imapclient returns it: for a multipart, a list of its parts comes first.
    """
    found: list[LeafPart] = []
    waiting: list[tuple[str, Sequence[Any]]] = [("", structure)]
    while waiting and len(found) < MAX_LEAVES:
        section, part = waiting.pop()
        if part and isinstance(part[0], list):
            inner = [
                (f"{section}.{i}".lstrip("."), child) for i, child in enumerate(part[0], start=1)
            ]
            waiting.extend(reversed(inner))
        else:
            found.append(_leaf(section or "1", part))
    return found


def _leaf(section: str, part: Sequence[Any]) -> LeafPart:
    kind, subtype = (_text(word).lower() for word in (*part[:2], b"", b"")[:2])
    parameters = _parameters(part[2]) if len(part) > 2 else {}
    disposition, given = _disposition(part, kind, subtype)
    name = _file_name({**parameters, **given})
    return LeafPart(
        section,
        kind,
        subtype,
        charset=parameters.get("charset", ""),
        encoding=_text(part[5]).lower() if len(part) > 5 else "",
        size=part[6] if len(part) > 6 and isinstance(part[6], int) else 0,
        name=name,
        is_attached=disposition == "attachment" or bool(name) or kind != "text",
    )


def _disposition(part: Sequence[Any], kind: str, subtype: str) -> tuple[str, Mapping[str, str]]:
    """Return the disposition and its parameters; ``""`` if the server gives none."""
    extension = _EXTENSION.get(kind, _EXTENSION.get(f"{kind}/{subtype}", _OTHER_EXTENSION))
    disposition = part[extension + 1] if len(part) > extension + 1 else None
    if not isinstance(disposition, tuple) or not disposition:
        return "", {}
    return _text(disposition[0]).lower(), _parameters(disposition[1]) if len(
        disposition
    ) > 1 else {}


def _parameters(listed: object) -> dict[str, str]:
    """Read ``("charset" "utf-8" …)``; split or encoded parameters (RFC 2231) are decoded."""
    if not isinstance(listed, tuple):
        return {}
    names, values = listed[::2], listed[1::2]
    pairs = [(_text(n).lower(), _text(v)) for n, v in zip(names, values, strict=False)]
    whole = decode_params([("", ""), *pairs])[1:]
    return {name: unquote(collapse_rfc2231_value(value)) for name, value in whole}


def _file_name(parameters: Mapping[str, str]) -> str:
    name = parameters.get("filename") or parameters.get("name") or ""
    try:
        name = str(make_header(decode_header(name)))
    except (ValueError, LookupError):
        name = "attachment"
    return " ".join(name.split())[:120]


def _text(value: object) -> str:
    return value.decode("utf-8", "replace") if isinstance(value, bytes) else ""
