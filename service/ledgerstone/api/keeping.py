"""Atomic replacement of a profile's file, with backups of earlier versions."""

from __future__ import annotations

import fcntl
import os
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

from ledgerstone.application.workshop_form import version_of

MAX_BACKUPS: Final = 10


def backup_folder(file: Path) -> Path:
    """Return the folder of a file's backups, beside it."""
    return file.with_name(f"{file.name}.kept")


def replace_file(file: Path, text: str, version: str) -> bool:
    """Replace a file's text if it has the given version; False if it has another one.

    The replacement is atomic, so a reader finds either the old text or the new; the last ten
    versions are kept in the folder beside it.

    Raises
    ------
    OSError
        It cannot be written; the file is unchanged.
    """
    with _locked(file.parent):
        before = file.read_bytes()
        if version_of(before.decode("utf-8-sig")) != version:
            return False
        _keep(file, before)
        _write(file, text.encode())
    return True


@contextmanager
def _locked(folder: Path) -> Iterator[None]:
    """Lock a folder against other writing requests."""
    handle = os.open(folder, os.O_RDONLY)
    try:
        fcntl.flock(handle, fcntl.LOCK_EX)
        yield
    finally:
        os.close(handle)


def _keep(file: Path, content: bytes) -> None:
    folder = backup_folder(file)
    folder.mkdir(exist_ok=True)
    now = datetime.now(UTC).strftime("%Y-%m-%dT%H%M%S.%fZ")
    _write(folder / f"{now}.toml", content)
    for old in sorted(folder.glob("*.toml"))[:-MAX_BACKUPS]:
        old.unlink()


def _write(file: Path, content: bytes) -> None:
    """Write a temporary file, then rename it; its permissions are kept."""
    handle, name = tempfile.mkstemp(dir=file.parent, prefix=f".{file.name}.")
    try:
        with os.fdopen(handle, "wb") as written:
            written.write(content)
            written.flush()
            os.fsync(written.fileno())
        Path(name).chmod(file.stat().st_mode if file.exists() else 0o600)
        Path(name).replace(file)
    except OSError:
        Path(name).unlink(missing_ok=True)
        raise
