"""The state of the mailbox passes in one small file, which holds no text of any message."""

from __future__ import annotations

import fcntl
import json
import os
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import date, timedelta
from pathlib import Path
from typing import Any, Final

from ledgerstone.errors import MailboxFault
from ledgerstone.message import Message

LOOK_BACK: Final = timedelta(days=7)
KEPT_FOR: Final = timedelta(days=60)  # after which a processed message's record is dropped
_VERSION: Final = 1


@dataclass(slots=True)
class Done:
    """One processed message: its UID, and the day."""

    uid: int
    day: date


@dataclass(slots=True)
class MailboxState:
    """The processed messages of the folder of incoming messages.

    Attributes
    ----------
    uidvalidity
        The UIDVALIDITY of the UIDs (RFC 3501, 2.3.1.1); None before the first run.
    finished
        The day of the last complete run.
    done
        By the message's key, which is the same in every folder.
    """

    path: Path
    uidvalidity: int | None = None
    finished: date | None = None
    done: dict[str, Done] = field(default_factory=dict)

    def since(self, today: date) -> date:
        """Return the first day to search from: seven days before the last complete run."""
        return (self.finished or today) - LOOK_BACK

    def open_folder(self, uidvalidity: int) -> bool:
        """Set the UIDVALIDITY; False if it has changed, so that the recorded UIDs are stale."""
        is_same = self.uidvalidity == uidvalidity
        if not is_same:
            for entry in self.done.values():
                entry.uid = 0
            self.uidvalidity = uidvalidity
        return is_same

    def known_uids(self) -> set[int]:
        """Return the UIDs of processed messages."""
        return {entry.uid for entry in self.done.values()}

    def note(self, key: str, uid: int, today: date) -> None:
        """Record a processed message."""
        known = self.done.get(key)
        self.done[key] = Done(uid, known.day if known else today)
        self.save()

    def finish(self, today: date) -> None:
        """Record a complete run, and drop records that are out of date."""
        self.finished = today
        self.done = {
            key: entry for key, entry in self.done.items() if today - entry.day <= KEPT_FOR
        }
        self.save()

    def save(self) -> None:
        """Write the file atomically."""
        done = {key: [entry.uid, entry.day.isoformat()] for key, entry in self.done.items()}
        finished = self.finished.isoformat() if self.finished else None
        members = {"version": _VERSION, "uidvalidity": self.uidvalidity, "finished": finished}
        beside = self.path.with_name(f"{self.path.name}.new")
        with beside.open("w", encoding="utf-8") as file:
            json.dump({**members, "done": done}, file)
            file.flush()
            os.fsync(file.fileno())
        beside.replace(self.path)


@contextmanager
def state_in(path: Path) -> Iterator[MailboxState]:
    """Read the state and lock it against other runs.

    Raises
    ------
    MailboxFault
        Another run holds the lock, or the file is not one of ours.
    OSError
    """
    with path.with_name(f"{path.name}.lock").open("a") as lock:
        try:
            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError as reason:
            raise MailboxFault(Message("mailbox-taken")) from reason
        yield _read(path)


def _read(path: Path) -> MailboxState:
    try:
        members = json.loads(path.read_text(encoding="utf-8"))
        return _state(path, members)
    except FileNotFoundError:
        return MailboxState(path)
    except (ValueError, TypeError, KeyError, AttributeError) as reason:
        raise MailboxFault(Message("mailbox-state-unreadable", file=path.name)) from reason


def _state(path: Path, members: dict[str, Any]) -> MailboxState:
    if members["version"] != _VERSION:
        raise ValueError(members["version"])
    finished = members["finished"]
    return MailboxState(
        path,
        uidvalidity=members["uidvalidity"],
        finished=date.fromisoformat(finished) if finished else None,
        done={
            str(key): Done(int(uid), date.fromisoformat(day))
            for key, (uid, day) in members["done"].items()
        },
    )
