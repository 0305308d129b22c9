"""What docstrings say: what is there, and of numeric functions shapes, units, errors and source."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path
from typing import TypeGuard

from design.source import Function, python_files

ARRAY = re.compile(r"\b(?:FloatArray|IntArray|BoolArray|NDArray|csr_array)\b")
SHAPE = re.compile(r"\((?:[0-9]+|[a-z]\w*)(?: [-+] [0-9]| [a-z])?,[^()]{0,20}\)")
SEVERAL = re.compile(r"\) each\b|\b[Aa]s ``\w")  # one shape for several, or another docstring's
FLOAT = re.compile(r"\b(?:float|XY)\b")
IN_ITS_NAME = re.compile(
    r"(?:_|^)(?:mm[234]?|m2|m3|l|litres|n|newtons|nmm2?|mpa|kg|days|hours|minutes|c|celsius|kelvin"
    r"|degrees|percent|nu|strain|(?:nmm|n|kg|m2|mpa)_per_\w+)$"
)
IN_ITS_TEXT = re.compile(
    r"\b(?:mm|N|MPa|kg|litres|days|[Hh]ours|[Mm]inutes|K|degrees|radians|percent|[Pp]ixels|px)\b"
    r"|\b(?:CIE\w*|ratio|share|pure numbers?|sheet units|[Uu]nits of work|Unit normals)\b|°C|m[²³]"
)
NUMBERS = re.compile(r"\b(?:float|Decimal|XY|FloatArray|IntArray|BoolArray|NDArray|csr_array)\b")
CALCULATED = {"strength", "reinforcement", "mix", "shade"}
STRENGTH = Path("service/ledgerstone/strength")
MEASURED = {"strength", "reinforcement", "mix", "mould", "schedule", "shade", "drawing"} | {
    "layout",
    "transport",
    "shape",
    "outline.py",
    "plane.py",
    "siting.py",
    "steel.py",
    "steel_rules.py",
}


def _public(tree: ast.Module) -> Iterator[Function]:
    """Public functions of a module, and public methods of its public classes."""
    for node in tree.body:
        if isinstance(node, ast.ClassDef) and not node.name.startswith("_"):
            yield from (part for part in node.body if _is_public(part))
        elif _is_public(node):
            yield node


def _is_public(node: ast.stmt) -> TypeGuard[Function]:
    return isinstance(node, Function) and not node.name.startswith("_")


def _arrays(function: Function) -> int:
    """How many arrays a function takes and gives, by its annotations."""
    every = function.args
    taken = [arg.annotation for arg in (*every.posonlyargs, *every.args, *every.kwonlyargs)]
    parts = [ast.unparse(part) for part in (*taken, function.returns) if part is not None]
    return sum(len(ARRAY.findall(part)) for part in parts)


def _says_its_shapes(function: Function) -> bool:
    text = ast.get_docstring(function) or ""
    arrays, shapes = _arrays(function), len(SHAPE.findall(text))
    return shapes >= arrays or (shapes > 0 and bool(SEVERAL.search(text)))


def _says_its_units(function: Function) -> bool:
    every = function.args
    taken = (*every.posonlyargs, *every.args, *every.kwonlyargs)
    named = [*((one.arg, one.annotation) for one in taken), (function.name, function.returns)]
    bare = any(
        part is not None and FLOAT.search(ast.unparse(part)) and not IN_ITS_NAME.search(name)
        for name, part in named
    )
    return not bare or bool(IN_ITS_TEXT.search(ast.get_docstring(function) or ""))


def _raised(function: Function) -> set[str]:
    """Names of the errors that a function's own statements raise."""
    raised = (node.exc for node in _own(function) if isinstance(node, ast.Raise) and node.exc)
    calls = (one.func if isinstance(one, ast.Call) else one for one in raised)
    return {one.id for one in calls if isinstance(one, ast.Name) and one.id[0].isupper()}


def _own(node: ast.AST) -> Iterator[ast.AST]:
    """What is in a function, but for functions within it and what a ``try`` may catch."""
    caught = node.body if isinstance(node, ast.Try) and node.handlers else []
    for part in ast.iter_child_nodes(node):
        if not isinstance(part, Function | ast.Lambda) and part not in caught:
            yield part
            yield from _own(part)


def _section(text: str, title: str) -> list[str]:
    """The names that a docstring's section describes."""
    found = re.search(rf"(?:^|\n){title}\n-+\n(.*?)(?=\n\n\w+\n-+\n|\Z)", text, re.DOTALL)
    lines = found[1].splitlines() if found else []
    return [name.strip() for line in lines if line[:1].strip() for name in line.split(",")]


def _known(node: Function | ast.ClassDef) -> set[str]:
    """Parameters of a function; of a class also its fields, and what its methods set."""
    if isinstance(node, ast.ClassDef):
        fields = {one.target for one in node.body if isinstance(one, ast.AnnAssign)}
        inside = [part for part in ast.walk(node) if isinstance(part, ast.Attribute | ast.arg)]
        names = {one.attr if isinstance(one, ast.Attribute) else one.arg for one in inside}
        return names | {one.id for one in fields if isinstance(one, ast.Name)}
    every = node.args
    taken = [*every.posonlyargs, *every.args, *every.kwonlyargs, every.vararg, every.kwarg]
    return {one.arg for one in taken if one is not None}


def test_what_docstrings_describe_is_there() -> None:
    """Each name under Parameters and Attributes is one that the function or class has."""
    found = [
        (f"{name}:{node.lineno} {node.name}", described, _known(node))
        for name, tree in python_files("service").items()
        for node in ast.walk(tree)
        if isinstance(node, Function | ast.ClassDef)
        for title in ("Parameters", "Attributes")
        for described in _section(ast.get_docstring(node) or "", title)
    ]
    assert len(found) > 800
    assert [(where, one) for where, one, known in found if one not in known] == []


def test_public_functions_of_arrays_say_their_shapes() -> None:
    """In strength each array of a public signature has its shape in the docstring."""
    found = [
        (f"{name}:{function.lineno} {function.name}", _says_its_shapes(function))
        for name, tree in python_files("service").items()
        if name.is_relative_to(STRENGTH)
        for function in _public(tree)
        if _arrays(function)
    ]
    assert len(found) > 80
    assert [where for where, says in found if not says] == []


def test_public_functions_of_floats_say_their_units() -> None:
    """Where a float's name does not end in its unit, the docstring has units or a pure number."""
    found = [
        (f"{name}:{function.lineno} {function.name}", _says_its_units(function))
        for name, tree in python_files("service").items()
        if name.parts[2] in MEASURED
        for function in _public(tree)
    ]
    assert len(found) > 400
    assert [where for where, says in found if not says] == []


def test_public_functions_of_numbers_give_their_source() -> None:
    """What gives numbers says what they rest on; geometry and arithmetic are named as such."""
    found = [
        (f"{name}:{function.lineno} {function.name}", ast.get_docstring(function) or "")
        for name, tree in python_files("service").items()
        if name.parts[2] in CALCULATED
        for function in _public(tree)
        if function.returns is not None and NUMBERS.search(ast.unparse(function.returns))
    ]
    assert len(found) > 150
    assert [where for where, text in found if not _section(text, "Source")] == []


def test_a_source_is_a_section() -> None:
    """A docstring of the service gives its source in a section, not within a sentence."""
    assert [
        f"{name}:{node.lineno}"
        for name, tree in python_files("service").items()
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant)
        and isinstance(node.value, str)
        and re.search(r"\bSource: ", node.value)
    ] == []


def test_public_functions_name_the_errors_they_raise() -> None:
    """Each error that a public function of the service raises itself is in its docstring."""
    found = [
        (f"{name}:{function.lineno} {function.name}", error, ast.get_docstring(function) or "")
        for name, tree in python_files("service").items()
        for function in _public(tree)
        for error in sorted(_raised(function))
    ]
    assert len(found) > 40
    assert [
        (where, error)
        for where, error, text in found
        if not re.search(rf"\b{re.escape(error)}\b", text)
    ] == []


def test_what_is_looked_for_is_found() -> None:
    """Shapes of one, two and three numbers are read, and other brackets are not."""
    assert SHAPE.findall("(k,), (3 n, k) and (m, 3, 2), of (k + 3, 3)") == [
        "(k,)",
        "(3 n, k)",
        "(m, 3, 2)",
        "(k + 3, 3)",
    ]
    assert SHAPE.findall("(EN 1990), (a rest), (N) and (B.10)") == []
