"""What the fuzz of the documented schema is made of: its documents, limits and one call."""

from collections import Counter
from datetime import date
from functools import cache
from math import ceil
from typing import Any, Final

import schemathesis
from flask import Flask
from hypothesis import HealthCheck, Phase, settings
from hypothesis import strategies as st
from schemathesis import Case, GenerationMode
from schemathesis.checks import load_all_checks, not_a_server_error
from schemathesis.generation.feedback import FeedbackSources
from schemathesis.pytest._test_builder import build_operation_test
from schemathesis.schemas import BaseSchema
from schemathesis.specs.openapi.checks import (
    content_type_conformance,
    response_schema_conformance,
    status_code_conformance,
)

from api.documented import OPERATIONS
from ledgerstone.api import Settings, create_app
from support.demonstration import MAKER_KEY, SIGNING_KEYS

PROBLEM = "application/problem+json"
QUOTES = "POST /v1/quotes"
CHECKS = [
    not_a_server_error,
    status_code_conformance,
    content_type_conformance,
    response_schema_conformance,
]
LENGTHS = st.one_of(
    st.integers(1, 3000).map("{} mm".format),
    st.integers(1, 300).map("{} cm".format),
    st.decimals(0, 3, places=2).map("{} m".format),
    st.builds("{} {}/16 in".format, st.integers(0, 90), st.sampled_from([1, 3, 5, 7, 9, 11, 13])),
    st.builds("{}' {}\"".format, st.integers(0, 8), st.integers(0, 11)),
    st.text(min_size=1, max_size=8).map("1{}".format),
)
schemathesis.openapi.format("length", LENGTHS)

CALLS: Final = [(method.upper(), path) for path, method in OPERATIONS if path != "/v1/openapi.yaml"]


@cache
def fuzzed_app() -> Flask:
    """The service that is asked, on a day of its own."""
    return create_app(
        Settings(
            maker_key=MAKER_KEY, signing_keys=SIGNING_KEYS, today=lambda _zone: date(2026, 11, 25)
        )
    )


@cache
def every_body() -> BaseSchema:
    """The document, for bodies that it allows and bodies that it does not."""
    return _document(GenerationMode.POSITIVE, GenerationMode.NEGATIVE)


@cache
def allowed_bodies() -> BaseSchema:
    """The document, for bodies that it allows.

    Orders that break the schema are the bad-input table's; making them at random takes minutes.
    """
    return _document(GenerationMode.POSITIVE)


@cache
def drawn_bodies() -> BaseSchema:
    """The document, for bodies that it allows, drawn at random alone.

    A thousand others are made of the parts of an order. A call that wants the maker's key turns all
    of them away unread, for nobody has it here.
    """
    document = _document(GenerationMode.POSITIVE)
    document.config.phases.coverage.enabled = False
    document.config.phases.examples.enabled = False
    return document


def _document(*modes: GenerationMode) -> BaseSchema:
    document = schemathesis.openapi.from_wsgi("/v1/openapi.yaml", fuzzed_app())
    document.config.generation.update(modes=list(modes))
    return document


def each_day_alike(examples: int) -> settings:
    """The same examples every time, as many as the everyday suite has time for."""
    return settings(
        max_examples=examples,
        derandomize=True,
        deadline=None,
        database=None,
        phases=[Phase.explicit, Phase.generate],
        suppress_health_check=list(HealthCheck),
    )


COUNTED: Counter[tuple[str, int]] = Counter()


def answer_is_documented(case: Case[Any]) -> None:
    """Make a call, and hold its answer to the document."""
    answer = case.call()
    COUNTED[case.operation.label, answer.status_code] += 1
    case.validate_response(answer, checks=CHECKS)
    if answer.status_code >= 400:
        assert answer.headers["content-type"] == [PROBLEM]


def hold_call_to_document(
    document: BaseSchema, method: str, path: str, examples: int, most: int | None = None
) -> None:
    """Make the cases of one call and hold each answer to the document.

    As the collector of schemathesis does, but when the test runs: all the cases of all the calls
    take seconds to make, and would be made by every process that collects the tests.

    Parameters
    ----------
    examples
        How many cases are drawn at random, beside those that are made of each part of the schema.
    most
        About how many of the latter are asked, from first to last. Each call begins at another one,
        so that calls that have an order in their bodies ask different ones of its thousand.
    """

    @each_day_alike(examples)
    def answered(case: Case[Any]) -> None:
        answer_is_documented(case)

    load_all_checks()
    made: Any = build_operation_test(
        config=document.config,
        operation=document[path][method],
        test_func=answered,
        given_kwargs={},
        feedback=FeedbackSources(),
    )
    of_parts = getattr(made, "hypothesis_explicit_examples", [])
    step = ceil(len(of_parts) / most) if most and of_parts else 1
    first = CALLS.index((method, path)) % step
    if step > 1:
        made.hypothesis_explicit_examples = of_parts[first::step]
    made()
