"""Why a file was not read, or a server not reached, is told in words of our own."""

import csv
import errno
import socket
import ssl

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
        (ssl.SSLCertVerificationError("self-signed certificate"), "not-trusted"),
        (ssl.SSLError("wrong version number"), "not-secret"),
        (socket.gaierror(-2, "Name or service not known"), "no-such-server"),
        (UnicodeDecodeError("utf-8", b"\xff", 0, 1, "invalid start byte"), "not-text"),
        (csv.Error("field larger than field limit (131072)"), "not-table"),
        (ValueError("embedded null byte"), "other"),
    ],
)
def test_a_reason_is_told_in_the_maker_s_language(reason: Exception, why: str) -> None:
    """By its number or its kind; none of the machine's English is passed on."""
    message = file_fault(reason)
    assert (message.name, message.values["why"]) == ("file-fault", why)
    said = {language: speech_in(language).say(message) for language in ("en", "de")}
    assert said["en"] != said["de"]
    assert not any(str(reason.args[-1]) in text for text in said.values())


@pytest.mark.parametrize("language", ["en", "de"])
def test_what_has_no_words_of_ours_has_its_number(language: str) -> None:
    """By which whoever looks after the machine finds what it means."""
    said = speech_in(language).say(file_fault(OSError(errno.EIO, "Input/output error")))
    assert str(errno.EIO) in said
    assert "Input" not in said


def test_a_reason_fits_what_was_tried() -> None:
    """A file that may not be written is not told as one that may not be read."""
    reason = file_fault(PermissionError(errno.EACCES, "Permission denied"))
    for failed in ("cli-unreadable", "init-unwritable", "profile-not-written"):
        message = Message(failed, reason=reason, file="jobs.toml")
        assert "no permission" in speech_in("en").say(message)
        assert "keine Berechtigung" in speech_in("de").say(message)
