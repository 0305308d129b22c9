"""Overlay and offset go through one module, which takes what GEOS refuses."""

import ast
from collections.abc import Iterator

import pytest

from design.source import modules

OPERATIONS = {
    "buffer",
    "difference",
    "intersection",
    "intersection_all",
    "symmetric_difference",
    "unary_union",
    "union",
    "union_all",
}


def _called(tree: ast.Module) -> Iterator[str]:
    """The operations that a module calls on a geometry itself, or through shapely."""
    for node in ast.walk(tree):
        if not (isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute)):
            continue
        owner = node.func.value
        named = owner.id if isinstance(owner, ast.Name) else ""
        if node.func.attr in OPERATIONS and named != "plane":
            yield f"{ast.unparse(owner)}.{node.func.attr}"


def test_geometry_is_overlaid_in_one_place() -> None:
    """No module but ``plane`` calls GEOS for an overlay or an offset."""
    calling = {name: list(_called(tree)) for name, tree in modules().items() if name != "plane"}
    assert {name: calls for name, calls in calling.items() if calls} == {}


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("a.difference(b)", ["a.difference"]),
        ("shapely.union_all([a, b])", ["shapely.union_all"]),
        ("shape.net.buffer(-5.0)", ["shape.net.buffer"]),
        ("plane.buffer(shape.net, -5.0)", []),
        ("workshop.days.buffer", []),
    ],
)
def test_a_call_is_seen_however_it_is_written(text: str, found: list[str]) -> None:
    """A method, a function of shapely and a longer owner are noticed; an attribute is none."""
    assert list(_called(ast.parse(text))) == found
