"""Every error the library raises, on one page.

An order that cannot be made is *not* an error: it is a value, a send-back with findings.
Errors carry data, so that a caller acts without reading their message::

    LedgerstoneError
    ├── QuantityError        a text is not a length (``says``)
    ├── NotUnderstood        a request means no piece of concrete (``faults``)
    │   └── NotJSON          the body is not one JSON document
    ├── ProfileError         a workshop's profile has faults (``faults``)
    ├── TokenError           a link is not ours
    ├── TemplateFault        a workshop's own template cannot be filled in (``name``, ``says``)
    ├── MailFault            the workshop's mail server did not take a letter
    ├── SettingsFault        the environment tells what cannot be used
    └── PlateError           a plate problem has no answer (``says``)
        ├── GeometryFault    the outline cannot be meshed
        └── Tips             the load's resultant lies outside the rests (``where_mm``)
"""

from __future__ import annotations

from dataclasses import dataclass


class LedgerstoneError(Exception):
    """The one base: catch this to catch all of ours."""


class QuantityError(LedgerstoneError):
    """A text or number is not a quantity we can use.

    Parameters
    ----------
    says
        One plain sentence: what was read and what would put it right.
    """

    def __init__(self, says: str) -> None:
        super().__init__(says)
        self.says = says


@dataclass(frozen=True, slots=True, order=True)
class Fault:
    """One thing that was not understood, and where: ``pointer`` is RFC 6901 into the request."""

    pointer: str
    says: str


class NotUnderstood(LedgerstoneError):
    """No piece of concrete could be meant; ``faults`` holds every one of them."""

    def __init__(self, faults: tuple[Fault, ...]) -> None:
        super().__init__("; ".join(f"{fault.pointer}: {fault.says}" for fault in faults))
        self.faults = faults


class NotJSON(NotUnderstood):
    """The body is not one strict JSON document."""

    def __init__(self, says: str) -> None:
        super().__init__((Fault("", says),))


@dataclass(frozen=True, slots=True, order=True)
class ProfileFault:
    """One fault of a profile: its line (0: the whole file), its key path, what is wrong."""

    line: int
    key: str
    says: str


class ProfileError(LedgerstoneError):
    """A workshop's profile cannot be used; ``faults`` holds every one of them."""

    def __init__(self, faults: tuple[ProfileFault, ...]) -> None:
        super().__init__("; ".join(f"line {f.line}: {f.key}: {f.says}" for f in faults))
        self.faults = faults


class TokenError(LedgerstoneError):
    """A link is not one that this workshop signed."""


class TemplateFault(LedgerstoneError):
    """A template of the workshop's own cannot be filled in.

    Parameters
    ----------
    name
        The template's.
    says
        What went wrong.
    """

    def __init__(self, name: str, says: str) -> None:
        super().__init__(f"The template {name} cannot be filled in: {says}")
        self.name = name
        self.says = says


class MailFault(LedgerstoneError):
    """The workshop's mail server is away, or did not take a letter."""


class SettingsFault(LedgerstoneError):
    """What the environment tells the service cannot be used; nothing is started."""


class PlateError(LedgerstoneError):
    """A plate problem has no answer.

    Parameters
    ----------
    says
        One plain sentence: why there is none.
    """

    def __init__(self, says: str) -> None:
        super().__init__(says)
        self.says = says


class GeometryFault(PlateError):
    """The outline cannot be meshed: it is empty, in two pieces or degenerate."""


class Tips(PlateError):
    """The load's resultant lies outside the hull of the rests, so the slab turns over.

    Parameters
    ----------
    where_mm
        The resultant's place in plan, ``(x, y)`` in mm.
    """

    def __init__(self, says: str, where_mm: tuple[float, float]) -> None:
        super().__init__(says)
        self.where_mm = where_mm
