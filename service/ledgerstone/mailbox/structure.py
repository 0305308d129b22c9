"""A message's BODYSTRUCTURE: which of its parts are text to fetch, and what is only attached."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from email.header import decode_header, make_header
from email.utils import collapse_rfc2231_value, decode_params, unquote
from typing import Any, Final

MOST_LEAVES: Final = 300
_EXTENSION: Final = {
    "text": 8,
    "message/rfc822": 10,
}  # where extension data begins (RFC 3501, 7.4.2)
_OTHER_EXTENSION: Final = 7


@dataclass(frozen=True, slots=True)
class Leaf:
    """One part that holds no others.

    Attributes
    ----------
    section
        Its number, as ``BODY[…]`` takes it: ``1.2``.
    name
        Its file's name, where one is given.
    is_attached
        Whether it is a file beside the text, and never fetched.
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
        """What it is called: its file's name, else its kind."""
        return self.name or f"{self.kind}/{self.subtype}"


def leaves(structure: Sequence[Any]) -> list[Leaf]:
    """Give a message's parts in order, at most so many; those of attached messages are not told.

    Parameters
    ----------
    structure
        As imapclient gives it: of a multipart, a list of its parts comes first.
    """
    found: list[Leaf] = []
    waiting: list[tuple[str, Sequence[Any]]] = [("", structure)]
    while waiting and len(found) < MOST_LEAVES:
        section, part = waiting.pop()
        if part and isinstance(part[0], list):
            inner = [(f"{section}.{i}".lstrip("."), one) for i, one in enumerate(part[0], start=1)]
            waiting.extend(reversed(inner))
        else:
            found.append(_leaf(section or "1", part))
    return found


def _leaf(section: str, part: Sequence[Any]) -> Leaf:
    kind, subtype = (_text(one).lower() for one in (*part[:2], b"", b"")[:2])
    parameters = _parameters(part[2]) if len(part) > 2 else {}
    disposition, given = _disposition(part, kind, subtype)
    name = _file_name({**parameters, **given})
    return Leaf(
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
    """Give the disposition and its parameters; ``""`` where the server does not say."""
    extension = _EXTENSION.get(kind, _EXTENSION.get(f"{kind}/{subtype}", _OTHER_EXTENSION))
    said = part[extension + 1] if len(part) > extension + 1 else None
    if not isinstance(said, tuple) or not said:
        return "", {}
    return _text(said[0]).lower(), _parameters(said[1]) if len(said) > 1 else {}


def _parameters(listed: object) -> dict[str, str]:
    """Read ``("charset" "utf-8" …)``; those that are split or encoded (RFC 2231) become whole."""
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
