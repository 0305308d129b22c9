"""Every kind of problem (RFC 9457): its name, its status and its texts."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.message import Message

PROBLEMS = "/problems/"


@dataclass(frozen=True, slots=True)
class ProblemKind:
    """One kind of problem.

    Attributes
    ----------
    name
        The end of its ``type``, and of the address of the page about it.
    """

    name: str
    status: int

    @property
    def title(self) -> Message:
        """The title of every problem of this kind."""
        return Message("problem-title", kind=self.name)

    @property
    def usual(self) -> Message:
        """The default detail."""
        return Message("problem-usual", kind=self.name)


SENT_BACK_PROBLEM = ProblemKind("cannot-do-as-asked", 422)
TOO_INTRICATE = ProblemKind("too-intricate", 422)

PLAIN_PROBLEMS: tuple[ProblemKind, ...] = (
    ProblemKind("not-understood", 400),
    ProblemKind("key-needed", 401),
    ProblemKind("not-found", 404),
    ProblemKind("method-not-offered", 405),
    ProblemKind("not-acceptable", 406),
    ProblemKind("too-slow", 408),
    ProblemKind("template-fault", 409),
    ProblemKind("length-needed", 411),
    ProblemKind("too-large", 413),
    ProblemKind("address-too-long", 414),
    ProblemKind("not-json-type", 415),
    ProblemKind("expectation-not-met", 417),
    ProblemKind("too-many", 429),
    ProblemKind("headers-too-large", 431),
    ProblemKind("our-fault", 500),
    ProblemKind("coding-not-read", 501),
    ProblemKind("no-answer", 502),
    ProblemKind("busy", 503),
    ProblemKind("no-answer-in-time", 504),
)
PROBLEM_KINDS: tuple[ProblemKind, ...] = (*PLAIN_PROBLEMS, SENT_BACK_PROBLEM, TOO_INTRICATE)
BY_STATUS = {kind.status: kind for kind in PLAIN_PROBLEMS}
