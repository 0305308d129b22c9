"""Why a file was not read, or a server not reached, is told in words of our own."""

import errno
import socket

import pytest

from ledgerstone.file_faults import file_fault
from ledgerstone.message import Message
from ledgerstone.wording import speech_in


@pytest.mark.parametrize(
    ("reason", "why"),
    [
        (FileNotFoundError(errno.ENOENT, "No such file or directory"), "not-there"),
        (PermissionError(errno.EACCES, "Permission denied"), "not-allowed"),
        (IsADirectoryError(errno.EISDIR, "Is a directory"), "folder"),
        (OSError(errno.ENOSPC, "No space left on device"), "full"),
        (OSError(errno.EROFS, "Read-only file system"), "read-only"),
        (ConnectionRefusedError(errno.ECONNREFUSED, "Connection refused"), "refused"),
        (TimeoutError("timed out"), "too-late"),
        (socket.gaierror(-2, "Name or service not known"), "no-such-server"),
        (UnicodeDecodeError("utf-8", b"\xff", 0, 1, "invalid start byte"), "not-text"),
        (OSError(errno.EIO, "Input/output error"), "other"),
        (ValueError("embedded null byte"), "other"),
    ],
)
def test_a_reason_is_told_in_the_maker_s_language(reason: Exception, why: str) -> None:
    """By its number or its kind; none of the machine's English is passed on."""
    message = file_fault(reason)
    assert message == Message("file-fault", why=why)
    said = {language: speech_in(language).say(message) for language in ("en", "de")}
    assert said["en"] != said["de"]
    assert not any(str(reason.args[-1]) in text for text in said.values())
