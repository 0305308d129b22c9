"""One call of the service: what it takes, and what it can answer."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from marshmallow import Schema

from ledgerstone.media_types import PROBLEM_TYPE

BodyForm = type[Schema] | Literal["text", "bytes", "document"]


@dataclass(frozen=True, slots=True)
class Response:
    """One answer beside the plain problems: in words, and its form by media type."""

    about: str
    forms: Mapping[str, BodyForm | tuple[BodyForm, ...]]


@dataclass(frozen=True, slots=True, kw_only=True)
class Call:
    """One call.

    Attributes
    ----------
    answers
        By status; 304 has no form.
    refusals
        The statuses of the plain problems that it can be answered by, beside those of any call.
    maker
        Whether it takes the maker's key: ``may`` where that changes the answer.
    """

    path: str
    method: Literal["get", "post"] = "get"
    name: str
    tag: str
    summary: str
    about: str = ""
    takes: type[Schema] | None = None
    takes_about: str = ""
    parameters: tuple[str, ...] = ()
    answers: Mapping[int, Response]
    refusals: tuple[int, ...] = ()
    maker: Literal["no", "may", "must"] = "no"
    headers: tuple[str, ...] = ()


def problem_answer(about: str, *forms: BodyForm) -> Response:
    """Describe an answer that is a problem."""
    return Response(about, {PROBLEM_TYPE: forms if len(forms) > 1 else forms[0]})
