"""What a unit is of another is written once."""

import ast
from collections.abc import Iterator
from typing import Final

from design.source import modules

OWNER: Final = "_unit_factors"
# Of the inch, foot, yard, pound, ounce, gallon, cubic yard, pound of force and psi.
FACTORS: Final = {
    25.4, 0.0254, 304.8, 0.3048, 914.4, 0.9144, 0.45359237, 453.59237, 28.349523125, 3.785411784,
    0.764554857984, 764.554857984, 4.4482216152605, 0.006894757293168,
}  # fmt: skip


def _factors(tree: ast.Module) -> Iterator[float]:
    """The factors that a module holds, as numbers or as texts of numbers."""
    for node in ast.walk(tree):
        if not isinstance(node, ast.Constant) or isinstance(node.value, bool):
            continue
        try:
            number = float(node.value) if isinstance(node.value, int | float | str) else 0.0
        except (ValueError, OverflowError):
            continue
        if number in FACTORS:
            yield number


def test_no_other_module_holds_a_unit_s_factor() -> None:
    """All take it from ``quantities``, which has it from the definitions."""
    found = {name: list(_factors(tree)) for name, tree in modules().items() if name != OWNER}
    assert len(found) > 300
    assert {name: numbers for name, numbers in found.items() if numbers} == {}


def test_a_factor_is_seen() -> None:
    """As a number, within a sum, and as the text of an exact one."""
    text = 'a = 25.4\nb = 3 * 0.3048\nc = Fraction("0.45359237")\nd = "25.4 mm"\ne = 25'
    assert list(_factors(ast.parse(text))) == [25.4, 0.3048, 0.45359237]
