"""Numbers written in functions: which of them want a name, and beside it a reason."""

import ast
import math
from collections.abc import Iterator
from typing import Final

_PLAIN: Final = {0, 0.5, 1, 2}  # nothing, a half, a whole, both
_COUNTED: Final = {12, 24, 60, 365, 366, 180, 360}  # months, hours, minutes, days; degrees
_OF_THE_PLATE: Final = {3, 9}  # corners of a triangle and unknowns of a node; those of a triangle
# Calls whose whole numbers are a shape, a count of columns, decimals, or how much is kept.
_OF_SHAPES: Final = frozenset(
    {"arange", "empty", "eye", "linspace", "lru_cache", "ones", "range", "repeat", "reshape"}
    | {"round", "tile", "transpose", "zeros"}
)

Parents = dict[ast.AST, ast.AST]


def bare_numbers(tree: ast.Module, lines: list[str]) -> Iterator[ast.Constant]:
    """Yield the numbers in functions that have no name, no comment and no source.

    A formula's numbers have their reason in the ``Source`` of its docstring, or in a comment of
    the line or of the one above it.
    """
    parents = {child: node for node in ast.walk(tree) for child in ast.iter_child_nodes(node)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and type(node.value) in (int, float):
            inside = list(_functions_about(node, parents))
            if inside and not _is_plain(node, parents) and not _has_reason(node, inside, lines):
                yield node


def _functions_about(node: ast.AST, parents: Parents) -> Iterator[ast.AST]:
    while node in parents:
        node = parents[node]
        if isinstance(node, ast.FunctionDef | ast.Lambda):
            yield node


def _has_reason(node: ast.Constant, inside: list[ast.AST], lines: list[str]) -> bool:
    functions = [one for one in inside if isinstance(one, ast.FunctionDef)]
    if any("Source\n" in (ast.get_docstring(one) or "") for one in functions):
        return True
    own, above = lines[node.lineno - 1], lines[node.lineno - 2].lstrip()
    return "#" in own or above.startswith("#")


def _is_plain(node: ast.Constant, parents: Parents) -> bool:
    """Whether a number is none that anybody chose: an index, a shape, a power, a unit's tens."""
    value = abs(node.value) if isinstance(node.value, int | float) else 0
    if value in _PLAIN or value in _COUNTED or math.log10(value).is_integer():
        return True
    return isinstance(node.value, int) and (
        value in _OF_THE_PLATE or _is_of_a_shape(node, parents) or _is_power(node, parents)
    )


def _is_power(node: ast.AST, parents: Parents) -> bool:
    above = parents[node]
    return isinstance(above, ast.BinOp) and isinstance(above.op, ast.Pow) and above.right is node


def _is_of_a_shape(node: ast.AST, parents: Parents) -> bool:
    """Whether it is within an index, or an argument of a call that gives an array its shape."""
    while node in parents and not isinstance(node, ast.stmt):
        above = parents[node]
        if isinstance(above, ast.Subscript) and above.slice is node:
            return True
        if isinstance(above, ast.Call) and above.func is not node:
            name = above.func
            called = name.attr if isinstance(name, ast.Attribute) else getattr(name, "id", "")
            return called in _OF_SHAPES
        node = above
    return False
