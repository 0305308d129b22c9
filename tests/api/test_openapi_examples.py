"""The OpenAPI document is true in every example."""

import copy
from typing import TYPE_CHECKING, Any, Final

import jsonpatch
import pytest

from api.documented import OPERATIONS, committed, operations
from api.schemas import Schemas
from ledgerstone.codec.problem_kinds import PROBLEM_KINDS
from ledgerstone.contract.calls import CALLS
from ledgerstone.contract.example_orders import ORDERS
from support.asking import NEVER_SAID, sentences
from support.demonstration import MAKER_KEY

if TYPE_CHECKING:
    from flask.testing import FlaskClient

PROBLEM = "application/problem+json"
POSTED: Final = [call.path for call in CALLS if call.takes is not None]


def _examples(responses: dict[str, Any]) -> list[tuple[str, str, dict[str, Any], Any]]:
    """Each example of an answer: status, name, schema, value."""
    components = committed()["components"]["responses"]
    found = []
    for status, answer in responses.items():
        name = answer.get("$ref", "").rpartition("/")[2]
        whole = components[name] if name else answer
        found += [
            (status, example, media["schema"], shown["value"])
            for media in whole.get("content", {}).values()
            for example, shown in media.get("examples", {}).items()
        ]
    return found


@pytest.mark.parametrize("path", POSTED)
def test_every_posted_example_gets_the_answer_it_is_listed_under(
    client: "FlaskClient", schemas: Schemas, path: str
) -> None:
    """Each example body gets the status under which its name is listed, in that status's schema."""
    operation = committed()["paths"][path]["post"]
    maker = {"Authorization": f"Bearer {MAKER_KEY}"}
    headers = maker if operation.get("security") == [{"makersKey": []}] else {}
    kind = "deposit" if "/notes/" in path else "care"
    listed = _examples(operation["responses"])
    media = operation["requestBody"]["content"]["application/json"]
    assert media["examples"]
    for name, example in media["examples"].items():
        body = example["value"]
        answer = client.post(path.replace("{kind}", kind), json=body, headers=headers)
        under = {status for status, other, _, _ in listed if other == name} or {"200"}
        assert {str(answer.status_code)} == under, (name, answer.text[:600])
        told = operation["responses"][str(answer.status_code)]["content"]
        assert schemas.faults_of(told[answer.mimetype]["schema"], answer.get_json()) == [], name
        if answer.status_code != 400:
            assert schemas.faults_of(media["schema"], body) == [], name


@pytest.mark.parametrize(("path", "method"), OPERATIONS, ids=str)
def test_every_shown_answer_matches_its_schema(schemas: Schemas, path: str, method: str) -> None:
    """Each example of an answer is one that the call could give, by the schema beside it."""
    shown = _examples(committed()["paths"][path][method]["responses"])
    assert shown, (path, method)
    for status, name, schema, value in shown:
        assert schemas.faults_of(schema, value) == [], (status, name)
        assert not [text for text in sentences(value) if NEVER_SAID.search(text)]
        if "status" in value and status.startswith(("4", "5")):
            assert str(value["status"]) == status


def _shown(operation_id: str, status: str, name: str) -> dict[str, Any]:
    [operation] = [op for _, _, op in operations() if op["operationId"] == operation_id]
    [media] = operation["responses"][status]["content"].values()
    value: dict[str, Any] = copy.deepcopy(media["examples"][name]["value"])
    return value


def test_the_shown_faults_are_the_faults(client: "FlaskClient") -> None:
    """The example of what is not understood is what the service says of it, to the letter."""
    shown = _shown("createQuote", "400", "three_faults")
    answer = client.post("/v1/quotes", json=ORDERS["three_faults"][1]).get_json()
    assert {**answer, "instance": ""} == {**shown, "instance": ""}


def test_the_shown_finding_is_the_finding(client: "FlaskClient") -> None:
    """The example of a send-back has the finding that the service has, to the letter."""
    shown = _shown("createQuote", "422", "basin_near_the_front")
    answer = client.post("/v1/quotes", json=ORDERS["basin_near_the_front"][1]).get_json()
    [strip] = [f for f in answer["findings"] if f["check"] == "strip-too-narrow"]
    [told] = shown["findings"]
    for one, other in zip(strip.pop("remedies"), told.pop("remedies"), strict=True):
        assert {**one, "price": {}} == {**other, "price": {}}
    assert strip == told
    assert answer["order"] == shown["order"]
    assert answer["not_checked"] == shown["not_checked"]


def test_the_shown_remedy_mends_the_order(client: "FlaskClient") -> None:
    """The example of a remedy applies to the order that was sent, and that order quotes."""
    shown = _shown("createQuote", "422", "basin_near_the_front")
    for patch in (shown["fix_all"]["patch"], shown["findings"][0]["remedies"][0]["patch"]):
        mended = jsonpatch.apply_patch(ORDERS["basin_near_the_front"][1], patch)
        assert client.post("/v1/quotes", json=mended).status_code == 200


def test_the_shown_price_adds_up() -> None:
    """The example of a quote keeps the law of every price."""
    price = _shown("createQuote", "200", "bench")["price"]
    pence = {name: round(float(price[name]) * 100) for name in ("net", "tax", "total")}
    lines = sum(round(float(line["amount"]) * 100) for line in price["lines"])
    assert lines == pence["net"]
    assert pence["net"] + pence["tax"] == pence["total"]


def test_every_problem_is_shown(open_document: dict[str, Any]) -> None:
    """Every kind of problem that the service knows has its example."""
    shown = {
        value["type"].rpartition("/")[2]
        for _, _, operation in operations()
        for _, _, _, value in _examples(operation["responses"])
        if "type" in value
    }
    kept = {
        shown["value"]["type"].rpartition("/")[2]
        for answer in open_document["components"]["responses"].values()
        for shown in answer["content"][PROBLEM]["examples"].values()
    }
    assert shown | kept == {kind.name for kind in PROBLEM_KINDS}
