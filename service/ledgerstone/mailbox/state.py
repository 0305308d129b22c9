"""What was looked through, in one small file: no name, address or word of a message."""

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

LOOK_BACK: Final = timedelta(days=7)
KEPT: Final = timedelta(days=60)  # a message done longer ago is never looked at again
_VERSION: Final = 1
_TAKEN: Final = "Another run is at work on this mailbox. It is left to that one."
_UNREADABLE: Final = (
    "The file {path} is not one of ours, so it is not clear what was done. Move it away; the last"
    " seven days are then looked through again, and no draft is written twice."
)


@dataclass(slots=True)
class Done:
    """One message that was dealt with: where it lay, and on which day."""

    uid: int
    day: date


@dataclass(slots=True)
class State:
    """What was dealt with in the folder of arrivals.

    Attributes
    ----------
    uidvalidity
        For which the UIDs hold (RFC 3501, 2.3.1.1); None before the first run.
    finished
        The day of the last run that came to its end.
    done
        By the message's key, which holds wherever it lies.
    """

    path: Path
    uidvalidity: int | None = None
    finished: date | None = None
    done: dict[str, Done] = field(default_factory=dict)

    def since(self, today: date) -> date:
        """Give the day from which messages are looked at: seven days before the last whole run."""
        return (self.finished or today) - LOOK_BACK

    def open_folder(self, uidvalidity: int) -> bool:
        """Take the folder's UIDs as valid; False where what was noted of them holds no longer."""
        is_same = self.uidvalidity == uidvalidity
        if not is_same:
            for one in self.done.values():
                one.uid = 0
            self.uidvalidity = uidvalidity
        return is_same

    def known_uids(self) -> set[int]:
        """Give the UIDs of messages that were dealt with."""
        return {one.uid for one in self.done.values()}

    def note(self, key: str, uid: int, today: date) -> None:
        """Note that a message was dealt with."""
        known = self.done.get(key)
        self.done[key] = Done(uid, known.day if known else today)
        self.save()

    def finish(self, today: date) -> None:
        """Note that a run came to its end, and forget what is long past."""
        self.finished = today
        self.done = {key: one for key, one in self.done.items() if today - one.day <= KEPT}
        self.save()

    def save(self) -> None:
        """Write the file whole or not at all."""
        done = {key: [one.uid, one.day.isoformat()] for key, one in self.done.items()}
        finished = self.finished.isoformat() if self.finished else None
        members = {"version": _VERSION, "uidvalidity": self.uidvalidity, "finished": finished}
        beside = self.path.with_name(f"{self.path.name}.new")
        with beside.open("w", encoding="utf-8") as file:
            json.dump({**members, "done": done}, file)
            file.flush()
            os.fsync(file.fileno())
        beside.replace(self.path)


@contextmanager
def state_in(path: Path) -> Iterator[State]:
    """Read the state, and keep every other run away from it meanwhile.

    Raises
    ------
    MailboxFault
        Another run has it, or the file is not ours.
    OSError
    """
    with path.with_name(f"{path.name}.lock").open("a") as lock:
        try:
            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError as reason:
            raise MailboxFault(_TAKEN) from reason
        yield _read(path)


def _read(path: Path) -> State:
    try:
        members = json.loads(path.read_text(encoding="utf-8"))
        return _state(path, members)
    except FileNotFoundError:
        return State(path)
    except (ValueError, TypeError, KeyError, AttributeError) as reason:
        raise MailboxFault(_UNREADABLE.format(path=path.name)) from reason


def _state(path: Path, members: dict[str, Any]) -> State:
    if members["version"] != _VERSION:
        raise ValueError(members["version"])
    finished = members["finished"]
    return State(
        path,
        uidvalidity=members["uidvalidity"],
        finished=date.fromisoformat(finished) if finished else None,
        done={
            str(key): Done(int(uid), date.fromisoformat(day))
            for key, (uid, day) in members["done"].items()
        },
    )
