"""Every kind of problem an answer can be (RFC 9457): its name, status, title and usual words."""

from __future__ import annotations

from dataclasses import dataclass

PROBLEMS = "/problems/"


@dataclass(frozen=True, slots=True)
class ProblemKind:
    """One kind of problem.

    Attributes
    ----------
    name
        The end of its ``type``, and of the address of the page about it.
    usual
        Its detail, where none is given.
    """

    name: str
    status: int
    title: str
    usual: str


SENT_BACK = ProblemKind(
    "cannot-do-as-asked",
    422,
    "We can't make it as asked",
    "The findings say what to change before it can be made.",
)
TOO_INTRICATE = ProblemKind(
    "too-intricate",
    422,
    "Too intricate to work out at once",
    "Split the order, or give its slabs fewer openings, corners or rests.",
)

PLAIN: tuple[ProblemKind, ...] = (
    ProblemKind(
        "not-understood", 400, "We could not understand that", "The request could not be read."
    ),
    ProblemKind(
        "key-needed", 401, "The maker's key is needed", "Send the maker's key as a bearer token."
    ),
    ProblemKind("not-found", 404, "Nothing is here", "Nothing is at this address."),
    ProblemKind(
        "method-not-offered", 405, "Not offered here", "This address does not take that method."
    ),
    ProblemKind("not-acceptable", 406, "Not in that form", "Ask for application/json."),
    ProblemKind("too-slow", 408, "That took too long", "The request did not arrive whole in time."),
    ProblemKind(
        "template-fault",
        409,
        "The workshop's own template has a fault",
        "Mend the template in the profile's folder.",
    ),
    ProblemKind("length-needed", 411, "Say how long it is", "Send the body's length."),
    ProblemKind("too-large", 413, "Too large", "An order is at most 64 kB."),
    ProblemKind("address-too-long", 414, "The address is too long", "Use a shorter link."),
    ProblemKind(
        "not-json-type",
        415,
        "Send JSON",
        "Send the body as application/json, in UTF-8, not packed.",
    ),
    ProblemKind(
        "expectation-not-met", 417, "Leave out Expect", "Send the request without that Expect."
    ),
    ProblemKind("too-many", 429, "Too many at once", "Wait a moment and ask again."),
    ProblemKind("headers-too-large", 431, "Too many headers", "Send fewer or shorter headers."),
    ProblemKind(
        "our-fault", 500, "Something of ours failed", "It is noted; ask again, or write to us."
    ),
    ProblemKind("coding-not-read", 501, "Not packed like that", "Send the body as it is."),
    ProblemKind(
        "no-answer", 502, "No answer", "The service is starting, or away. Ask again in a moment."
    ),
    ProblemKind("busy", 503, "Busy", "Wait a moment and ask again."),
    ProblemKind(
        "no-answer-in-time",
        504,
        "No answer in time",
        "That took longer than we wait for. Ask again in a moment.",
    ),
)
KINDS: tuple[ProblemKind, ...] = (*PLAIN, SENT_BACK, TOO_INTRICATE)
BY_STATUS = {kind.status: kind for kind in PLAIN}
