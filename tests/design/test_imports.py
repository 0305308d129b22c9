"""Imports run one way, a library is used in one place, and below the api nothing looks outside."""

import ast
from collections.abc import Callable, Iterator
from graphlib import TopologicalSorter
from pathlib import Path

import pytest

from design.import_order import ORDER, ORDER_WITHIN
from design.source import PACKAGE, imported, imports_of, loaded_with, modules

# Which modules of ours may name a library; what is not listed is free to all.
USERS_OF = {
    "flask": ("api", "contract"),
    "werkzeug": ("api", "contract"),
    "gunicorn": ("api.worker",),
    "prometheus_client": ("api.counts",),
    "marshmallow": ("codec", "application", "contract", "workshop"),
    "yaml": ("contract",),
    "apispec": ("contract",),
    "itsdangerous": ("codec",),
    "jinja2": ("papers",),
    "markupsafe": ("papers",),
    "pint": ("_unit_factors",),
    "selectolax": ("enquiry.text.html_text",),
    "fluent": ("wording",),
    "babel": ("wording", "workshop.countries.places"),
    "imapclient": ("mailbox.server",),
    "ezdxf": ("drawing.cut_dxf",),
}

# What takes long to load and only some calls need: they load it, each with its reason.
LOADED_LATER = ("enquiry", "mailbox", "schedule.ical", "schedule.plan_ics")

# What reads a clock, the environment, files and streams; nothing else does.
READS_OUTSIDE = (
    "api",
    "calendar_file",
    "child_process",
    "cli",
    "contract.example_orders",
    "mailbox.state",
    "papers.templates",
    "settings",
    "wording.catalogues",
    "wording.own",
    "workshop.reading.loader",
)
COMMAND = "__main__"
OUTSIDE_MODULES = {"os", "time", "random", "secrets", "socket", "subprocess", "tempfile", "urllib"}
OUTSIDE_CALLS = {"open", "input", "print"}
OUTSIDE_ATTRIBUTES = {"read_text", "read_bytes", "write_text", "write_bytes", "utcnow"}
CLOCKS = {("date", "today"), ("datetime", "today"), ("datetime", "now")}


def _within(module: str, packages: tuple[str, ...]) -> bool:
    return any(module == package or module.startswith(f"{package}.") for package in packages)


def _part_of(module: str) -> str:
    """The second word of a dotted name; "" for a package's own head."""
    return module.partition(".")[2].partition(".")[0]


def _own_imports(tree: ast.Module, module: str) -> Iterator[str]:
    """The parts of ledgerstone that a module imports, by the first word after the package."""
    for name in imported(tree, module):
        first, _, rest = name.partition(".")
        if first == "ledgerstone" and rest:
            yield rest.partition(".")[0]


def _backward_imports(tree: ast.Module, module: str) -> list[str]:
    own = "__main__" if module.endswith("__main__") else module.partition(".")[0]
    allowed = {*ORDER[: ORDER.index(own) + 1], "__version__"}
    return sorted(set(_own_imports(tree, module)) - allowed)


def _outside(tree: ast.Module) -> Iterator[str]:
    """Whatever in a module reads a clock, the environment, a file, chance or a stream."""
    yield from ({name.partition(".")[0] for name in imported(tree)} & OUTSIDE_MODULES)
    for node in ast.walk(tree):
        match node:
            case ast.Call(func=ast.Name(id=called)) if called in OUTSIDE_CALLS:
                yield called
            case ast.Attribute(value=ast.Name(id=owner), attr=attr) if (owner, attr) in CLOCKS:
                yield f"{owner}.{attr}"
            case ast.Attribute(value=ast.Attribute(attr=owner), attr=attr) if (
                owner,
                attr,
            ) in CLOCKS:
                yield f"{owner}.{attr}"
            case ast.Attribute(attr=attr) if attr in OUTSIDE_ATTRIBUTES:
                yield attr
            case ast.Global(names=names):
                yield f"global {', '.join(names)}"


Faults = Callable[[str, ast.Module], list[str]]


def _at_fault(faults: Faults) -> dict[str, list[str]]:
    """What is wrong with each module but the package itself, where something is."""
    found = {name: faults(name, tree) for name, tree in modules().items() if name}
    assert len(found) > 300
    return {name: wrong for name, wrong in found.items() if wrong}


def test_every_module_has_its_place_in_the_order() -> None:
    """No module stands outside the order; the package itself only settles the BLAS threads."""
    placed = {path.stem for path in PACKAGE.iterdir() if path.suffix == ".py" or path.is_dir()}
    assert placed - {"__init__", "__pycache__"} <= set(ORDER)
    assert list(imported(modules()[""])) == ["os"]


def test_imports_run_one_way() -> None:
    """A module imports only modules that stand before its own."""
    assert _at_fault(lambda name, tree: _backward_imports(tree, name)) == {}


@pytest.mark.parametrize(("package", "order"), ORDER_WITHIN.items())
def test_the_parts_of_a_package_are_imported_one_way(package: str, order: tuple[str, ...]) -> None:
    """In a package grouped by subject a part imports only those that stand before it."""
    parts = {path.name for path in (PACKAGE / package).iterdir() if (path / "__init__.py").exists()}
    assert parts == set(order)
    found = {}
    for module in modules():
        own = _part_of(module)
        if _within(module, (package,)) and own in order:
            used = {_part_of(n) for n in imports_of(module) if _within(n, (package,))}
            if backward := used - set(order[: order.index(own) + 1]):
                found[module] = sorted(backward)
    assert found == {}


def test_no_module_imports_itself_by_way_of_others() -> None:
    """Within a package too, imports make no circle."""
    graph = {module: imports_of(module) for module in modules() if module}
    assert list(TopologicalSorter(graph).static_order())


def test_a_command_line_is_run_and_never_imported() -> None:
    """A ``__main__`` may import whatever it runs, since nothing imports it."""
    assert _at_fault(lambda _, tree: [n for n in imported(tree) if "__main__" in n]) == {}


def test_a_start_loads_nothing_that_few_calls_need() -> None:
    """What reads enquiries, mail and calendars is loaded by who is asked for it."""
    loaded = loaded_with("api.reload")
    assert {"strength.plate", "wording.bundles", "papers.letter", "api.desk_routes"} <= loaded
    assert [module for module in sorted(loaded) if _within(module, LOADED_LATER)] == []


def _libraries_misused(module: str, tree: ast.Module) -> list[str]:
    """The libraries that a module may not name and does."""
    libraries = {name.partition(".")[0] for name in imported(tree)}
    return [name for name in libraries & USERS_OF.keys() if not _within(module, USERS_OF[name])]


def test_each_library_is_used_where_it_may_be() -> None:
    """Flask is known to the api alone, apispec to the contract, pint to the quantities."""
    assert _at_fault(_libraries_misused) == {}


def _looks(module: str, tree: ast.Module) -> list[str]:
    """What a module looks at outside that may not."""
    may = _within(module, READS_OUTSIDE) or module.endswith(COMMAND)
    return [] if may else list(_outside(tree))


def test_nothing_below_the_api_looks_outside() -> None:
    """No clock, environment, file, chance or global state but where it may be read."""
    assert _at_fault(_looks) == {}


@pytest.mark.parametrize(
    ("module", "text", "found"),
    [
        ("shape", "from ledgerstone.order import Slab", []),
        ("shape", "from ledgerstone.outline import ring\nimport math", []),
        ("shape", "from ledgerstone import api", ["api"]),
        ("shape.__main__", "from ledgerstone.cli import run", []),
        ("shape", "def f():\n    import ledgerstone.quote", ["quote"]),
        ("checks.size", "from ledgerstone.checks.finding import Finding", []),
        ("checks.size", "from ..quote import quote", ["quote"]),
        ("checks.size", "from . import finding", []),
    ],
)
def test_the_direction_is_read_from_every_kind_of_import(
    module: str, text: str, found: list[str]
) -> None:
    """Plain, from, relative and local imports are all seen."""
    assert _backward_imports(ast.parse(text), module) == found


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("today = date.today()", ["date.today"]),
        ("import datetime\nnow = datetime.datetime.now()", ["datetime.now"]),
        ("import os\nkey = os.environ['A']", ["os"]),
        ("from time import time", ["time"]),
        ("with open('a') as file: pass", ["open"]),
        ("Path('a').read_text()", ["read_text"]),
        ("def f():\n    global seen", ["global seen"]),
        ("def lead(today: date) -> date:\n    return today + order.wait", []),
    ],
)
def test_a_look_outside_is_seen(text: str, found: list[str]) -> None:
    """Clocks, environment, files and global state are each noticed, and an argument is none."""
    assert list(_outside(ast.parse(text))) == found


def test_the_order_is_over_real_files() -> None:
    """The modules these tests walk are the package's own files, the api's among them."""
    assert {"errors", "quantities", "order", "shape", "workshop.reading.loader"} <= modules().keys()
    assert Path(PACKAGE / "errors.py").is_file()
