"""Rebuild a message from its headers and fetched text parts, attachments by name only.

A part that was not fetched is left empty under its name, so that the parser sees a whole message.
"""

from __future__ import annotations

import email.message
import re
from collections.abc import Iterator, Sequence
from typing import Final

from ledgerstone.mailbox.structure import LeafPart

_BOUNDARY: Final = "=_part_of_a_fetched_message_="
_OF_CONTENT: Final = re.compile(rb"(?:content-[!-9;-~]*|mime-version)[ \t]*:", re.IGNORECASE)


def message_of(
    header: bytes, texts: Sequence[tuple[LeafPart, bytes]], attached: Sequence[LeafPart]
) -> bytes:
    """Return a message as RFC 5322 bytes.

    Parameters
    ----------
    header
        The headers as received.
    texts
        The text parts and their content, still in transfer encoding.
    attached
        Parts that were not fetched.
    """
    kept = b"\r\n".join(_without_content(header))
    parts = [_part(leaf, content) for leaf, content in texts]
    parts += [_part(leaf, b"") for leaf in attached]
    mark = _BOUNDARY.encode()
    body = b"".join(b"--" + mark + b"\r\n" + part + b"\r\n" for part in parts)
    own = b'MIME-Version: 1.0\r\nContent-Type: multipart/mixed; boundary="' + mark + b'"'
    return kept + b"\r\n" + own + b"\r\n\r\n" + body + b"--" + mark + b"--\r\n"


def _without_content(header: bytes) -> Iterator[bytes]:
    """Yield the header lines except Content-* and MIME-Version."""
    is_kept = True
    for line in header.replace(b"\r\n", b"\n").split(b"\n"):
        if line[:1] not in (b" ", b"\t"):
            is_kept = bool(line) and not _OF_CONTENT.match(line)
        if is_kept and line.strip():
            yield line


def _part(leaf: LeafPart, content: bytes) -> bytes:
    head = email.message.Message()
    charset = {"charset": leaf.charset} if leaf.charset and not leaf.is_attached else {}
    head.add_header("Content-Type", f"{_token(leaf.kind)}/{_token(leaf.subtype)}", **charset)
    if leaf.is_attached:
        head.add_header("Content-Disposition", "attachment", filename=("utf-8", "", leaf.shown))
    elif leaf.encoding:
        head["Content-Transfer-Encoding"] = _token(leaf.encoding)
    return head.as_bytes().rstrip(b"\n").replace(b"\n", b"\r\n") + b"\r\n\r\n" + content


def _token(text: str) -> str:
    return re.sub(r"[^A-Za-z0-9.+_-]", "", text) or "x"
