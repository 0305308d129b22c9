"""Signed links: two kinds with two salts. Untimed, so the same order signs to the same link."""

from __future__ import annotations

import hashlib
from collections.abc import Mapping, Sequence
from typing import Any

from itsdangerous import BadData, URLSafeSerializer

from ledgerstone.errors import TokenError

LONGEST_TOKEN = 8000  # with its path and method it fits the 8190 bytes of gunicorn's longest line
SHORTEST_KEY = 32
_SALTS = {"quote": "ledgerstone/quote/v1", "drawing": "ledgerstone/drawing/v1"}
# No letter or figure that is mistaken for another over the telephone or in a bad typeface.
_LETTERS = "ACDEFHJKMNPQRTUVWXY34679"


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
        self._serializers = {
            kind: URLSafeSerializer(
                list(keys),
                salt=salt,
                signer_kwargs={"digest_method": hashlib.sha256, "key_derivation": "hmac"},
            )
            for kind, salt in _SALTS.items()
        }

    def sign(self, kind: str, content: Mapping[str, Any]) -> str | None:
        """Sign content as one kind of token; None where a link of it would be too long to open."""
        token = str(self._serializers[kind].dumps(content))
        return token if len(token) <= LONGEST_TOKEN else None

    def open(self, kind: str, token: str) -> dict[str, Any]:
        """Open a token of one kind; its signature is checked before anything is inflated.

        Raises
        ------
        TokenError
            It is not one of ours.
        """
        if len(token) > LONGEST_TOKEN or not token.isascii():
            raise TokenError("This link is not one of ours.")
        try:
            content = self._serializers[kind].loads(token)
        except BadData:
            raise TokenError("This link is not one of ours.") from None
        if not isinstance(content, dict):
            raise TokenError("This link is not one of ours.")
        return content


def reference(canonical: bytes) -> str:
    """Make a short name that can be read over the telephone, from what it names: ``K7QW-3MTA``."""
    number = int.from_bytes(hashlib.sha256(canonical).digest()[:8], "big")
    letters = []
    for _ in range(8):
        number, at = divmod(number, len(_LETTERS))
        letters.append(_LETTERS[at])
    return "".join(letters[:4]) + "-" + "".join(letters[4:])
