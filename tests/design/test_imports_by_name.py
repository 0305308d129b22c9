"""No import goes round the statements that the order of imports is read from."""

import ast
from collections.abc import Iterator

import pytest

from design.source import imported, modules

# What imports by name at run time, or for the type checker alone; files of a package are none.
IMPORTERS = {"importlib", "pkgutil", "runpy", "zipimport"}
IMPORTING_NAMES = {"__import__", "TYPE_CHECKING"}


def _imported_by_name(tree: ast.Module) -> Iterator[str]:
    """Whatever in a module imports otherwise than by a statement that these tests read."""
    for name in imported(tree):
        if name.partition(".")[0] in IMPORTERS and not name.startswith("importlib.resources."):
            yield name
        if name.rpartition(".")[2] in IMPORTING_NAMES:
            yield name
    for node in ast.walk(tree):
        match node:
            case ast.Name(id=name) | ast.Attribute(attr=name) if name in IMPORTING_NAMES:
                yield name
            case ast.Attribute(value=ast.Name(id="sys"), attr="modules"):
                yield "sys.modules"


def test_no_import_goes_round_the_order() -> None:
    """No module imports by name at run time, or for the type checker alone."""
    found = {name: list(_imported_by_name(tree)) for name, tree in modules().items()}
    assert len(found) > 300
    assert {name: by for name, by in found.items() if by} == {}


@pytest.mark.parametrize(
    "text",
    [
        "import importlib",
        "import importlib.util",
        "from importlib import import_module",
        "from importlib.util import find_spec",
        "import pkgutil",
        "from pkgutil import resolve_name as found",
        "import runpy as run",
        "from typing import TYPE_CHECKING",
        "from typing import TYPE_CHECKING as for_types",
        "import typing\nif typing.TYPE_CHECKING: pass",
        "__import__('ledgerstone.quote')",
        "import builtins\nbuiltins.__import__('ledgerstone.quote')",
        "import sys\nquote = sys.modules['ledgerstone.quote']",
    ],
)
def test_an_import_by_name_is_seen(text: str) -> None:
    """At run time or for the type checker, under whatever name."""
    assert list(_imported_by_name(ast.parse(text))) != []


def test_a_package_s_own_files_are_no_import() -> None:
    """Data that lies in a package, and types, come by statements."""
    text = "from importlib.resources import files\nfrom typing import Any"
    assert list(_imported_by_name(ast.parse(text))) == []
