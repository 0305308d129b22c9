"""Every error the library raises, on one page.

An order that cannot be made is *not* an error: it is a value, a send-back with findings.
Errors carry data, so that a caller acts without reading their message::

    LedgerstoneError
    ├── QuantityError        a text is not a length (``message``)
    ├── NotUnderstood        a request is not valid (``faults``)
    │   └── NotJSON          the body is not one JSON document
    ├── TooIntricate         an order is more work than one request may be (``slabs``)
    ├── ProfileError         a workshop's profile has faults (``faults``)
    ├── LaneTaken            another heavy order is being computed: retry later
    ├── CallerGone           the client has disconnected
    ├── TokenError           a link is not ours
    │   └── DatedInFuture       it is ours, of a day that our clock has not reached (``issued``)
    ├── TemplateFault        a workshop's own template cannot be filled in (``name``, ``reason``)
    ├── WordingError         a catalogue cannot format a message (``name``, ``reason``)
    ├── MailFault            the workshop's mail server did not take a letter
    │   ├── RequestNotSent   a customer's request did not reach the workshop (``message``)
    │   └── MailboxFault     the maker's mailbox cannot be worked with (``is_unreachable``)
    ├── ChildFailed          work in a child process failed, or took too long
    ├── SettingsFault        the environment has an invalid setting
    └── PlateError           a plate problem has no answer (``reason``)
        ├── OutlineUnusableError   the outline cannot be meshed (``pieces``)
        ├── OffTheSlabError        a rest, a load or a place is not on it (``what``, ``where_mm``)
        ├── SlabTipsError          the load lies outside the rests (``where_mm``, ``outside_mm``)
        └── ContactNotSettledError the contact is out of balance (``broken``, ``amount``)
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import date
from typing import Any, Self

from ledgerstone.message import Message


class LedgerstoneError(Exception):
    """Base of all our errors."""


class QuantityError(LedgerstoneError):
    """A text or number is no quantity; ``message``: what was read, what would put it right."""

    def __init__(self, message: Message) -> None:
        super().__init__(message.name)
        self.message = message


@dataclass(frozen=True, slots=True)
class Fault:
    """One thing that was not understood, and where: ``pointer`` is RFC 6901 into the request."""

    pointer: str
    message: Message


class NotUnderstood(LedgerstoneError):
    """No piece of concrete could be meant; ``faults`` holds every one of them."""

    def __init__(self, faults: tuple[Fault, ...]) -> None:
        super().__init__("; ".join(f"{fault.pointer}: {fault.message!r}" for fault in faults))
        self.faults = faults

    @classmethod
    def whole(cls, message: Message) -> Self:
        """Describe one thing of a whole request."""
        return cls((Fault("", message),))

    @classmethod
    def of(cls, faults: Iterable[Fault]) -> Self:
        """Take each thing once, in the order of where it is."""
        return cls(tuple(sorted(set(faults), key=lambda f: (f.pointer, repr(f.message)))))


class NotJSON(NotUnderstood):
    """The body is not one strict JSON document."""

    def __init__(self, message: Message) -> None:
        super().__init__((Fault("", message),))


class TooIntricate(LedgerstoneError):
    """An order of so many slabs is understood, but is more work than one request may be."""

    def __init__(self, slabs: int) -> None:
        super().__init__(f"{slabs} slabs")
        self.slabs = slabs
        self.message = Message("order-too-intricate", slabs=slabs)


class LaneTaken(LedgerstoneError):
    """An order is heavy work, and another one is being worked out."""


class CallerGone(LedgerstoneError):
    """The client has disconnected; the rest of the work is not done."""


@dataclass(frozen=True, slots=True)
class ProfileFault:
    """One fault of a profile: its line (0: the whole file), its key path, what is wrong."""

    line: int
    key: str
    message: Message
    path: tuple[str | int, ...] = field(default=(), compare=False)


class ProfileError(LedgerstoneError):
    """A profile is invalid: ``faults``, and ``language`` and ``tables`` as far as it reads."""

    def __init__(self, faults: Iterable[ProfileFault], language: str = "") -> None:
        self.faults = tuple(sorted(faults, key=lambda f: (f.line, f.key, f.message.name)))
        super().__init__("; ".join(f"{f.line}: {f.key}: {f.message.name}" for f in self.faults))
        self.language, self.tables = language, dict[str, Any]()


class TokenError(LedgerstoneError):
    """A link is not one that this workshop signed."""

    message = Message("link-not-ours")


class DatedInFuture(TokenError):
    """A link of ours is dated in the future: another clock is ahead, or ours was set back.

    Parameters
    ----------
    issued
        The link's day.
    """

    def __init__(self, issued: date) -> None:
        super().__init__(f"{issued}")
        self.issued = issued
        self.message = Message("link-dated-ahead")


class TemplateFault(LedgerstoneError):
    """A template of the workshop's own cannot be filled in.

    Parameters
    ----------
    name
        The template's.
    reason
        What went wrong.
    """

    def __init__(self, name: str, reason: str) -> None:
        super().__init__(f"The template {name} cannot be filled in: {reason}")
        self.name = name
        self.reason = reason
        self.message = Message("template-cannot-be-filled", template=name, why=reason)


class WordingError(LedgerstoneError):
    """A catalogue cannot format the message ``name``: it is missing, or has not all its values."""

    def __init__(self, name: str, reason: str) -> None:
        super().__init__(f"The message {name} cannot be said: {reason}")
        self.name = name
        self.reason = reason


class MailFault(LedgerstoneError):
    """The workshop's mail server is away, or did not take a letter."""


class RequestNotSent(MailFault):
    """A customer's request did not reach the workshop.

    Parameters
    ----------
    email, telephone
        How else the workshop is reached.
    """

    def __init__(self, email: str, telephone: str) -> None:
        super().__init__(email, telephone)
        self.message = Message("mail-server-away", email=email, telephone=telephone)


class MailboxFault(MailFault):
    """The maker's mailbox cannot be worked with.

    Parameters
    ----------
    message
        What happened and what would put it right.
    is_unreachable
        Whether the server was not reached or stopped answering: a later try may succeed.
    """

    def __init__(self, message: Message, *, is_unreachable: bool = False) -> None:
        super().__init__(message.name)
        self.message = message
        self.is_unreachable = is_unreachable


class ChildFailed(LedgerstoneError):
    """Work in a child process failed: an internal fault."""


class SettingsFault(LedgerstoneError):
    """The environment has an invalid setting; ``message``: what would put it right."""

    def __init__(self, message: Message) -> None:
        super().__init__(message.name)
        self.message = message


class PlateError(LedgerstoneError):
    """A plate problem has no answer.

    Parameters
    ----------
    reason
        One plain sentence: why there is none.
    """

    def __init__(self, reason: str) -> None:
        super().__init__(reason)
        self.reason = reason


class OutlineUnusableError(PlateError):
    """The outline encloses no single piece of concrete.

    Parameters
    ----------
    reason
        What is wrong, in plain words.
    pieces
        How many pieces are left when strips too thin to count are taken away.
    """

    def __init__(self, reason: str, *, pieces: int = 1) -> None:
        super().__init__(reason)
        self.pieces = pieces


class OffTheSlabError(PlateError):
    """A rest, a load or a queried place lies where there is no concrete.

    Parameters
    ----------
    what
        ``"load"``, ``"rest"`` or ``"place"``.
    where_mm
        Where, plane slab millimetres.
    """

    def __init__(self, what: str, where_mm: tuple[float, float]) -> None:
        x, y = where_mm
        super().__init__(f"The {what} at ({x:.0f}, {y:.0f}) mm is not on the slab.")
        self.what = what
        self.where_mm = where_mm


class SlabTipsError(PlateError):
    """The load's resultant lies outside the hull of the rests, so the slab tips or drops.

    Parameters
    ----------
    where_mm
        Where the resultant of all loads acts; the slab's middle where they sum to nothing.
    outside_mm
        How far it lies outside the hull of the rests; 0 if the rests lie on one line.
    """

    def __init__(self, where_mm: tuple[float, float], outside_mm: float) -> None:
        reason = f"The load lies {outside_mm:.0f} mm outside the rests, so the slab tips."
        super().__init__(reason)
        self.where_mm = where_mm
        self.outside_mm = outside_mm


class ContactNotSettledError(PlateError):
    """The solution of the contact problem is not in equilibrium: an internal fault.

    Parameters
    ----------
    broken
        Which assertion failed: ``"equilibrium"``, ``"reactions"``, ``"gaps"`` or ``"iterations"``.
    amount
        By how much, relative to the load or to the largest deflection.
    """

    def __init__(self, broken: str, amount: float) -> None:
        super().__init__(f"Contact not settled: {broken} off by {amount:.3g}.")
        self.broken = broken
        self.amount = amount
