"""Each bare number of the engine has a name, and beside the name its reason or source."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from design.bare_numbers import bare_numbers
from design.source import ROOT, python_files

REASONED = {"strength", "remedies", "checks"}
# In whose functions no number is without a name, a comment or a source.
NAMED = REASONED | {"reinforcement", "layout", "schedule", "work", "mix", "mould", "price"}
NAMED |= {"transport", "shade", "cutouts", "steel.py", "steel_rules.py", "shape.py", "siting.py"}
NAMED |= {"strip_rules.py", "outline.py"}


def _is_numeric(value: ast.expr) -> bool:
    """Whether a number is written out in an expression."""
    return any(
        isinstance(node, ast.Constant) and type(node.value) in (int, float)
        for node in ast.walk(value)
    )


def _constants(tree: ast.Module) -> Iterator[tuple[str, ast.Assign | ast.AnnAssign]]:
    """The names that a module gives to numbers, and to what is made of numbers."""
    for node in tree.body:
        if isinstance(node, ast.Assign | ast.AnnAssign) and node.value is not None:
            target = node.targets[0] if isinstance(node, ast.Assign) else node.target
            if isinstance(target, ast.Name) and _is_numeric(node.value):
                yield target.id, node


def without_reason(tree: ast.Module, lines: list[str]) -> list[str]:
    """The constants with no comment in their own lines, nor in the line above."""
    found = []
    for name, node in _constants(tree):
        first = node.lineno - 1
        own = lines[first : node.end_lineno]
        above = lines[first - 1].lstrip() if first else ""
        if not any("#" in line for line in own) and not above.startswith("#"):
            found.append(name)
    return found


def test_every_constant_has_its_reason() -> None:
    """In strength, remedies and checks a named number says where it comes from, or what for."""
    counted, found = 0, {}
    for file, tree in python_files("service").items():
        if file.parts[2] in REASONED:
            lines = (ROOT / file).read_text(encoding="utf-8").splitlines()
            counted += sum(1 for _ in _constants(tree))
            if bare := without_reason(tree, lines):
                found[str(file)] = bare
    assert counted > 250
    assert found == {}


def test_a_constant_without_a_reason_is_seen() -> None:
    """A comment in the line or above it counts, and one further up does not."""
    text = (
        "# why\nA = 1\nB = 2  # why\nC = 3\n\nD: float = 4.0\nE = (\n    1.0,  # why\n)\nF = ()\n"
    )
    assert without_reason(ast.parse(text), text.splitlines()) == ["C", "D"]
    assert Path("service/ledgerstone/remedies/costs.py") in python_files("service")


def test_no_number_in_a_function_is_without_a_reason() -> None:
    """It has a name with its reason, a comment beside it, or its docstring says the source."""
    found, seen = [], set[str]()
    for file, tree in python_files("service").items():
        if file.parts[2] in NAMED:
            seen.add(file.parts[2])
            lines = (ROOT / file).read_text(encoding="utf-8").splitlines()
            found += [f"{file}:{one.lineno}: {one.value!r}" for one in bare_numbers(tree, lines)]
    assert seen == NAMED
    assert found == []


@pytest.mark.parametrize(
    ("body", "found"),
    [
        ("return 0.866 * x", [0.866]),
        ("return 0.866 * x  # of an equilateral triangle", []),
        ("# of an equilateral triangle\n    return 0.866 * x", []),
        ('"""A.\n\n    Source\n    ------\n    B.\n    """\n    return 0.866 * x', []),
        ("return x / 2 + 0.5 * x + 1 - 1000.0 * 1e-6 * 24 * 60", []),
        ("return x[4], x[:, 5:7], x**3, x.reshape(-1, 4, 7), round(x, 4)", []),
        ("return (lambda y: 7 * y)(x), x**1.5", [7, 1.5]),
        ("return place(x, 20.0), x > 4, min(x, 6)", [20.0, 4, 6]),
    ],
)
def test_a_bare_number_in_a_function_is_seen(body: str, found: list[float]) -> None:
    """What somebody chose is; what counts, indexes, shapes or squares is not."""
    text = f"A = 5\n\n\ndef a(x):\n    {body}\n"
    seen = [one.value for one in bare_numbers(ast.parse(text), text.splitlines())]
    assert sorted(map(str, seen)) == sorted(map(str, found))
