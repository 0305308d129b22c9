"""The OpenAPI document: valid, whole, and committed as it is served."""

import json
import re
from typing import TYPE_CHECKING, Any

import pytest
from openapi_spec_validator import validate

from api.documented import OPERATIONS, committed, operations
from ledgerstone.codec import order_schemas
from ledgerstone.codec.order_in import read_order
from ledgerstone.contract.document import document, document_text
from ledgerstone.contract.example_orders import ORDERS
from ledgerstone.contract.schemas import LENGTH_PATTERN
from ledgerstone.order import CORNERS
from ledgerstone.outline import side_names
from ledgerstone.quantities import Length

if TYPE_CHECKING:
    from pathlib import Path

    from flask import Flask
    from flask.testing import FlaskClient

    from ledgerstone.workshop import Workshop


def test_the_document_is_openapi_3_1(open_document: dict[str, Any]) -> None:
    """A validator of the OpenAPI initiative's own schema accepts the committed document."""
    assert open_document["openapi"] == "3.1.0"
    validate(open_document)


def test_what_is_committed_is_what_is_made_and_served(
    client: "FlaskClient", pytestconfig: pytest.Config
) -> None:
    """The committed text, the text made from the schemas and the text served are one text."""
    path: Path = pytestconfig.rootpath / "service/ledgerstone/api/openapi.yaml"
    committed = path.read_text(encoding="utf-8")
    assert committed == document_text(), (
        "write it again: python -m ledgerstone.contract document"
        " > service/ledgerstone/api/openapi.yaml"
    )
    assert client.get("/v1/openapi.yaml").text == committed


def test_a_yaml_reader_reads_what_was_meant(open_document: dict[str, Any]) -> None:
    """An independent YAML reader reads the committed text to the very data it was made from."""
    assert open_document == document()


def test_no_address_of_a_machine_is_named() -> None:
    """The document says where it is by a path alone."""
    assert committed()["servers"][0]["url"] == "/"
    assert re.findall(r"https?://|localhost|127\.0\.0\.1", json.dumps(document())) == []


def test_every_route_is_documented_and_no_other(app: "Flask") -> None:
    """The service's routes under its own paths are those of the document, by path and method."""
    routes = {
        (re.sub(r"<(?:\w+:)?(\w+)>", r"{\1}", rule.rule), method.lower())
        for rule in app.url_map.iter_rules()
        for method in rule.methods or ()
        if method not in ("HEAD", "OPTIONS")
    }
    assert routes == {(path, method) for path, method, _ in operations()} == {*OPERATIONS}


@pytest.mark.parametrize(("path", "method"), OPERATIONS, ids=str)
def test_every_call_is_whole(open_document: dict[str, Any], path: str, method: str) -> None:
    """Each call has a name, a tag, a summary, an answer, and problems of both kinds."""
    operation = open_document["paths"][path][method]
    assert method in ("get", "post")
    assert operation["operationId"]
    assert operation["summary"]
    [tag] = operation["tags"]
    assert tag in {known["name"] for known in open_document["tags"]}
    statuses = set(operation["responses"])
    assert "200" in statuses, path
    assert any(status.startswith("4") for status in statuses)
    assert {"500", "503"} <= statuses


def test_names_of_calls_are_their_own() -> None:
    """No two calls share an operationId."""
    names = [operation["operationId"] for _, _, operation in operations()]
    assert len(names) == len(set(names))


def _says_what_it_means(member: str, schema: dict[str, Any]) -> bool:
    """Whether a member is described in a sentence, and one that may be absent says what then."""
    about = schema["properties"][member].get("description", "")
    if len(about.split()) < 3 or not about.endswith("."):
        return False
    if member in schema.get("required", ()):
        return True
    is_request = schema.get("additionalProperties") is False
    said = r"\bleft out\b" if is_request else r"^Only|\b(absent|only|not) "
    return re.search(said, about, re.IGNORECASE) is not None


def test_every_member_says_what_it_means() -> None:
    """A member is described in a sentence; one that may be absent says what it means then."""
    members = [
        (name, member, _says_what_it_means(member, schema))
        for name, schema in committed()["components"]["schemas"].items()
        for member in schema.get("properties", {})
    ]
    assert len(members) > 400
    assert [(name, member) for name, member, is_said in members if not is_said] == []


def test_requests_are_closed(open_document: dict[str, Any]) -> None:
    """Every object that an order can hold refuses members that it does not know."""
    schemas = open_document["components"]["schemas"]
    seen, ahead = set(), ["Order"]
    while ahead:
        name = ahead.pop()
        if name in seen:
            continue
        seen.add(name)
        ahead += re.findall(r"#/components/schemas/(\w+)", str(schemas[name]))
        if schemas[name].get("type") == "object":
            assert schemas[name]["additionalProperties"] is False, name
    assert len(seen) > 25


def test_limits_are_the_schemas_own(open_document: dict[str, Any]) -> None:
    """The bounds that the design states stand in the document."""
    schemas = open_document["components"]["schemas"]
    order, slab = schemas["Order"]["properties"], schemas["Slab"]["properties"]
    assert (order["slabs"]["minItems"], order["slabs"]["maxItems"]) == (1, 8)
    assert (slab["quantity"]["minimum"], slab["quantity"]["maximum"]) == (1, 24)
    assert slab["cutouts"]["maxItems"] == 20
    assert schemas["Units"]["properties"]["units"]["maxItems"] == 20
    assert schemas["Polygon"]["properties"]["points"]["maxItems"] == 200
    assert slab["label"]["maxLength"] == 120
    coordinate = schemas["Coordinate"]["oneOf"][0]
    assert (coordinate["minimum"], coordinate["maximum"]) == (-20_000, 20_000)
    assert schemas["Length"]["oneOf"][0]["exclusiveMinimum"] == 0
    assert list(schemas["Rectangle"]["properties"]["corner_radii"]["propertyNames"]["enum"]) == (
        list(CORNERS)
    )


@pytest.mark.parametrize("family", ["OUTLINES", "CUTOUTS", "RELIEFS", "RESTS"])
def test_kinds_are_distinguished(open_document: dict[str, Any], family: str) -> None:
    """Each kind of a family is one branch that its ``kind`` alone picks."""
    kinds = getattr(order_schemas, family)
    schemas = open_document["components"]["schemas"]
    fields = {"OUTLINES": "outline", "CUTOUTS": "cutouts", "RELIEFS": "reliefs", "RESTS": "rests"}
    field = schemas["Slab"]["properties"][fields[family]]
    choice = field.get("items", field)
    assert set(choice["discriminator"]["mapping"]) == set(kinds)
    for kind, ref in choice["discriminator"]["mapping"].items():
        said = schemas[ref.rpartition("/")[2]]["properties"]["kind"]
        assert kind == said.get("const") or kind in said.get("enum", ())
        assert {"$ref": ref} in choice["oneOf"]


def test_sides_of_every_shape_are_names_that_edges_take(
    open_document: dict[str, Any], workshop: "Workshop"
) -> None:
    """Every side of every shape in the examples matches the pattern of the edges' keys."""
    edges = open_document["components"]["schemas"]["Slab"]["properties"]["edges"]
    for name in ("bench", "l_run"):
        for slab in read_order(ORDERS[name][1], workshop).slabs:
            for side in side_names(slab.outline):
                assert re.search(edges["propertyNames"]["pattern"], side)


@pytest.mark.parametrize(
    "text",
    ["1450 mm", "1450mm", "1.45 m", ".5 in", "22 1/16 in", "22½ in", "½ in", "4' 9\"", "4′ 9″",
     "4 ft 9 in", "4ft-9in", "-20 mm", "− 3 in", " 56 CM ", "1450 millimetres", "10\u00a0mm"],
)  # fmt: skip
def test_the_pattern_of_lengths_is_never_narrower_than_the_reader(text: str) -> None:
    """A text that is read as a length matches the documented pattern."""
    assert Length.parse(text)
    assert len(text) <= 32
    assert re.search(LENGTH_PATTERN, text)


def test_versions_and_farewells_are_promised_in_two_sentences() -> None:
    """The document says how it grows, and how a call is taken away."""
    about = committed()["info"]["description"]
    [rule] = [part for part in about.split("\n\n") if part.startswith("Version 1")]
    assert len(re.findall(r"\.(?:\s|$)", rule)) == 2
    assert "Deprecation" in rule
    assert "Sunset" in rule
