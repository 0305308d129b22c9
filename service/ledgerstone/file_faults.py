"""Why the machine would not read or write a file, or reach a server, as a message."""

from __future__ import annotations

import csv
import errno
import ssl
from types import MappingProxyType
from typing import Final

from ledgerstone.message import Message

_BY_NUMBER: Final = MappingProxyType({
    errno.ENOENT: "not-there", errno.ENOTDIR: "not-there",
    errno.EISDIR: "folder",
    errno.EACCES: "not-allowed", errno.EPERM: "not-allowed",
    errno.EROFS: "read-only",
    errno.ENOSPC: "full", errno.EDQUOT: "full",
    errno.EEXIST: "there-already",
    errno.ENAMETOOLONG: "long-name",
    errno.ECONNREFUSED: "refused",
    errno.ENETUNREACH: "no-network", errno.EHOSTUNREACH: "no-network",
    errno.ETIMEDOUT: "too-late",
})  # fmt: skip
_BY_TYPE: Final[tuple[tuple[type[Exception], str], ...]] = (
    (ssl.SSLCertVerificationError, "not-trusted"),
    (ssl.SSLError, "not-secret"),
    (TimeoutError, "too-late"),
    (UnicodeError, "not-text"),
    (csv.Error, "not-table"),
)


def file_fault(reason: Exception) -> Message:
    """Return why an operation on a file or a server failed, to stand within a sentence.

    The machine's own words are English whatever the maker speaks, so that none are passed on.
    """
    if type(reason).__name__ == "gaierror":  # of the socket module, which opens what is outside
        return Message("file-fault", why="no-such-server", number="")
    kinds = (name for kind, name in _BY_TYPE if isinstance(reason, kind))
    number = getattr(reason, "errno", None) or 0
    why = next(kinds, None) or _BY_NUMBER.get(number)
    otherwise = "numbered" if number else "other"
    return Message("file-fault", why=why or otherwise, number=str(number or ""))
