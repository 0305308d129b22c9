"""Signed links: two kinds with two salts. Untimed, so the same order signs to the same link."""

from __future__ import annotations

import hashlib
import json
import re
import zlib
from collections.abc import Mapping, Sequence
from typing import Any

from itsdangerous import BadSignature, Signer
from itsdangerous.encoding import base64_decode, base64_encode

from ledgerstone.codec.token_words import PRESET_DICTIONARY
from ledgerstone.errors import TokenError

LONGEST_TOKEN = 8000  # with its path and method it fits the 8190 bytes of gunicorn's longest line
LONGEST_LINK = 2000  # mail programs, chats and QR codes carry this much
LONGEST_CONTENT = 256 * 1024  # what a token may open to, in bytes
SHORTEST_KEY = 32
_SALTS = {"quote": b"ledgerstone/quote/v1", "drawing": b"ledgerstone/drawing/v1"}
_TOKEN = re.compile(r"[A-Za-z0-9_-]+\.[A-Za-z0-9_-]{43}", re.ASCII)
_RAW_DEFLATE = -15
# No letter or digit that is mistaken for another on the telephone or in a bad typeface.
_LETTERS = "ACDEFHJKMNPQRTUVWXY34679"
_NOT_OURS = "This link is not one of ours."


class Tokens:
    """Signs and opens tokens.

    Parameters
    ----------
    keys
        Secrets of at least 32 bytes, oldest first: the last signs, all of them open.
    """

    def __init__(self, keys: Sequence[str]) -> None:
        if not keys or min(len(key.encode()) for key in keys) < SHORTEST_KEY:
            raise TokenError(f"A signing key has at least {SHORTEST_KEY} bytes.")
        self._signers = {
            kind: Signer(list(keys), salt=salt, digest_method=hashlib.sha256, key_derivation="hmac")
            for kind, salt in _SALTS.items()
        }

    def sign(self, kind: str, content: Mapping[str, Any]) -> str | None:
        """Sign content as one kind of token; None if it would be too long to open."""
        text = json.dumps(content, separators=(",", ":"), ensure_ascii=False).encode()
        token = self._signers[kind].sign(base64_encode(_packed(text))).decode()
        return token if len(token) <= LONGEST_TOKEN and len(text) <= LONGEST_CONTENT else None

    def open(self, kind: str, token: str) -> dict[str, Any]:
        """Open a token of one kind; its signature is checked before anything is inflated.

        Raises
        ------
        TokenError
            It is not exactly a token of ours.
        """
        if len(token) > LONGEST_TOKEN or not _TOKEN.fullmatch(token):
            raise TokenError(_NOT_OURS)
        try:
            packed = self._signers[kind].unsign(token)
            _check_spelling(token)
            content = json.loads(_unpacked(base64_decode(packed)))
        except (BadSignature, ValueError, zlib.error):
            raise TokenError(_NOT_OURS) from None
        if not isinstance(content, dict):
            raise TokenError(_NOT_OURS)
        return content


def _check_spelling(token: str) -> None:
    """Refuse a second spelling of a signature: base64 does not use two bits of its last letter."""
    signature = token.rpartition(".")[2]
    if base64_encode(base64_decode(signature)).decode() != signature:
        raise TokenError(_NOT_OURS)


def _packed(text: bytes) -> bytes:
    packer = zlib.compressobj(
        9, zlib.DEFLATED, _RAW_DEFLATE, 9, zlib.Z_DEFAULT_STRATEGY, PRESET_DICTIONARY
    )
    return packer.compress(text) + packer.flush()


def _unpacked(packed: bytes) -> bytes:
    """Inflate a token's content, at most ``LONGEST_CONTENT`` bytes."""
    inflater = zlib.decompressobj(_RAW_DEFLATE, PRESET_DICTIONARY)
    text = inflater.decompress(packed, LONGEST_CONTENT)
    if not inflater.eof or inflater.unused_data:
        raise TokenError(_NOT_OURS)
    return text


def reference(canonical: bytes) -> str:
    """Return a short name derived from content, easy to say on the telephone: ``K7QW-3MTA``."""
    number = int.from_bytes(hashlib.sha256(canonical).digest()[:8], "big")
    letters = []
    for _ in range(8):
        number, at = divmod(number, len(_LETTERS))
        letters.append(_LETTERS[at])
    return "".join(letters[:4]) + "-" + "".join(letters[4:])
