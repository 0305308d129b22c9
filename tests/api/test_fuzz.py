"""The documented schema, fuzzed: whatever is sent, the answer is one that the document tells of.

Every day some three hundred cases, the same each time; on demand (`-m long`) more than 10 000,
with orders that break the schema among them, and walks from a quote to its link.
"""

from collections import Counter
from collections.abc import Iterator
from datetime import date
from typing import Any, Final

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from hypothesis.stateful import run_state_machine_as_test
from schemathesis import Case
from schemathesis.generation.stateful.state_machine import APIStateMachine

from api.fuzzing import (
    CALLS,
    CHECKS,
    COUNTED,
    QUOTES,
    allowed_bodies,
    answer_is_documented,
    drawn_bodies,
    each_day_alike,
    every_body,
    fuzzed_app,
    hold_call_to_document,
)
from api.schemas import Schemas
from ledgerstone.contract import calls
from ledgerstone.json_types import JSON
from support.asking import NEVER_SAID, sentences
from support.demonstration import EXAMPLE_ORDER
from support.strategies.orders import orders

MAKERS_ALONE: Final = {call.path for call in calls.CALLS if call.maker == "must"}
MOST: Final = 30  # of the cases that are made of each part of a body's schema


@pytest.fixture(scope="module", autouse=True)
def counted() -> Iterator[None]:
    """Say in the end how many cases there were, and how each was answered."""
    yield
    by_status = Counter[int]()
    for (_, status), count in COUNTED.items():
        by_status[status] += count
    print(f"\n{COUNTED.total()} cases: {dict(sorted(by_status.items()))}")


@pytest.mark.parametrize("path", [path for method, path in CALLS if method == "GET"])
def test_whatever_is_fetched_the_answer_is_documented(path: str) -> None:
    """No GET is answered by an internal fault, each answer matches, each refusal is a problem."""
    hold_call_to_document(every_body(), "GET", path, 15)


@pytest.mark.parametrize("path", [path for method, path in CALLS if method == "POST"])
def test_whatever_is_posted_the_answer_is_documented(path: str) -> None:
    """No POST is answered by an internal fault, each answer matches, each refusal is a problem."""
    document = drawn_bodies() if path in MAKERS_ALONE else allowed_bodies()
    hold_call_to_document(document, "POST", path, 6, MOST)


# Of these bodies schemathesis 4.32 cannot make broken ones ("Cannot generate an array with 1
# demanded elements"), so orders that are understood are spoilt in one place each.
JSON_VALUES = st.recursive(
    st.none()
    | st.booleans()
    | st.floats(allow_nan=False, allow_infinity=False)
    | st.integers()
    | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner),
    max_leaves=5,
)


@st.composite
def spoilt_orders(draw: st.DrawFn) -> JSON:
    """An order with one member left out, put in, or become something else."""
    order = draw(orders())
    here: Any = order
    key: Any = draw(st.sampled_from(sorted(order)))
    while isinstance(here[key], dict | list) and here[key] and draw(st.booleans()):
        here = here[key]
        key = draw(st.sampled_from(sorted(here) if isinstance(here, dict) else range(len(here))))
    how = draw(st.sampled_from(("left out", "put in", "become")))
    if how == "left out":
        del here[key]
    elif how == "put in" and isinstance(here, dict):
        here[draw(st.text(min_size=1, max_size=8))] = draw(JSON_VALUES)
    else:
        here[key] = draw(JSON_VALUES)
    return order


@pytest.mark.parametrize("count", [30, pytest.param(2000, marks=pytest.mark.long)])
def test_spoilt_orders_are_problems(count: int) -> None:
    """Orders spoilt in one place are never an internal fault, and each answer is documented."""

    @each_day_alike(count)
    @given(spoilt_orders())
    def post(body: JSON) -> None:
        answer_is_documented(allowed_bodies()["/v1/quotes"]["POST"].Case(body=body))

    post()


def walk() -> type[APIStateMachine]:
    """Calls that follow from one another: a quote, then its link.

    A random order is hardly ever quoted, so each walk asks for the example, which is.
    """

    class Walk(allowed_bodies().as_state_machine()):  # type: ignore[misc]  # made as schemathesis makes it
        def before_call(self, case: Case[Any]) -> None:
            if case.operation.label == QUOTES:
                case.body = EXAMPLE_ORDER

        def validate_response(self, response: Any, case: Case[Any], **_: Any) -> None:  # noqa: ANN401  schemathesis' own
            COUNTED[case.operation.label, response.status_code] += 1
            case.validate_response(response, checks=CHECKS)

    return Walk


@pytest.mark.parametrize("walks", [2, pytest.param(60, marks=pytest.mark.long)])
def test_calls_that_follow_from_one_another_are_documented(walks: int) -> None:
    """From a quote to its own link and on, each answer is one that the document tells of."""
    limits = settings(each_day_alike(walks), stateful_step_count=4)
    run_state_machine_as_test(walk(), settings=limits)
    assert COUNTED[QUOTES, 200] > 0
    assert COUNTED["GET /v1/quotes/{token}", 200] > 0


def test_every_call_is_fuzzed() -> None:
    """The document has calls of the two methods that are fuzzed, and of no other."""
    assert {method for method, _ in CALLS} == {"GET", "POST"}


_MM = st.integers(20, 2800)
_PLACE = st.fixed_dictionaries({"x": st.integers(-50, 2500), "y": st.integers(-50, 900)})
_CUTOUTS = st.one_of(
    st.fixed_dictionaries(
        {"kind": st.just("circle"), "diameter": st.integers(20, 500), "centre": _PLACE},
        optional={"rim": st.sampled_from(["shown", "covered"]), "label": st.text(max_size=20)},
    ),
    st.fixed_dictionaries(
        {
            "kind": st.sampled_from(["rectangle", "slot"]),
            "length": st.integers(20, 700),
            "width": st.integers(20, 500),
            "centre": _PLACE,
        },
        optional={"turn_degrees": st.integers(-360, 360), "heat": st.booleans()},
    ),
)
_OUTLINES = st.one_of(
    st.fixed_dictionaries({"kind": st.just("rectangle"), "length": _MM, "width": _MM}),
    st.fixed_dictionaries({"kind": st.just("round"), "diameter": _MM}),
    st.fixed_dictionaries(
        {
            "kind": st.just("polygon"),
            "points": st.lists(_PLACE, min_size=3, max_size=8),
        }
    ),
)
_RESTS = st.one_of(
    st.just({"kind": "full"}),
    st.fixed_dictionaries({"kind": st.just("ends"), "depth": st.integers(20, 300)}),
    st.fixed_dictionaries(
        {
            "kind": st.just("legs"),
            "at": st.lists(_PLACE, min_size=1, max_size=6),
            "pad": st.integers(20, 200),
        }
    ),
    st.fixed_dictionaries(
        {
            "kind": st.just("units"),
            "units": st.lists(
                st.fixed_dictionaries({"width": st.integers(100, 1000)}), min_size=1, max_size=4
            ),
        }
    ),
)
_SLABS = st.fixed_dictionaries(
    {"outline": _OUTLINES, "thickness": st.sampled_from([20, 25, 30, 40, 50, 60])},
    optional={
        "cutouts": st.lists(_CUTOUTS, max_size=2),
        "rests": _RESTS,
        "quantity": st.integers(1, 24),
        "place": st.sampled_from(["indoors", "wet-room", "outdoors"]),
    },
)
_ORDERS = st.fixed_dictionaries(
    {"slabs": st.lists(_SLABS, min_size=1, max_size=2)},
    optional={
        "delivery": st.fixed_dictionaries(
            {"kind": st.sampled_from(["collect", "pallet", "own-van", "fitted"])},
            optional={"postcode": st.sampled_from(["HR9 7XX", "IV1 1AA", "ZZ", "EH1 1AA"])},
        ),
        "needed_by": st.dates(date(2026, 1, 1), date(2028, 1, 1)).map(date.isoformat),
    },
)


@given(order=_ORDERS)
@each_day_alike(40)
def test_orders_that_people_could_send_are_answered(
    order: dict[str, Any], schemas: Schemas
) -> None:
    """An order of likely sizes is quoted, sent back or not understood, each as documented."""
    wish = {"Prefer": "return=minimal"}
    answer = fuzzed_app().test_client().post("/v1/quotes", json=order, headers=wish)
    assert answer.status_code in (200, 400, 422), (order, answer.text)
    schema = {200: "Quote", 400: "NotUnderstood", 422: "SentBack"}[answer.status_code]
    assert schemas.faults(schema, answer.get_json()) == [], order
    assert not [text for text in sentences(answer.get_json()) if NEVER_SAID.search(text)]
