"""The project's own text, as the design tests read it."""

import ast
import subprocess
from collections.abc import Iterator
from fnmatch import fnmatch
from functools import cache
from pathlib import Path

Function = ast.FunctionDef | ast.AsyncFunctionDef
ROOT = Path(__file__).resolve().parents[2]
PACKAGE = ROOT / "service" / "ledgerstone"


@cache
def project_files() -> tuple[Path, ...]:
    """Every file that is in the tree or would be added to it, from the top."""
    names = (Path(name) for name in sorted(set(_listed())) if name)
    return tuple(name for name in names if (ROOT / name).is_file())


def _listed() -> list[str]:
    """What git lists, whoever owns the checkout; where it is none, all that is not made here."""
    asked = ["git", "-c", "safe.directory=*", "ls-files", "-z"]
    try:
        done = subprocess.run(
            [*asked, "--cached", "--others", "--exclude-standard"],
            cwd=ROOT,
            capture_output=True,
            text=True,
            check=True,
        )
    except (FileNotFoundError, subprocess.CalledProcessError):
        return [str(file.relative_to(ROOT)) for file in _walked(ROOT)]
    return done.stdout.split("\0")


def _walked(folder: Path) -> Iterator[Path]:
    """Files below a folder, but what is ignored."""
    for part in folder.iterdir():
        if not is_ignored(part.relative_to(ROOT)):
            yield from _walked(part) if part.is_dir() else (part,)


def is_ignored(name: Path) -> bool:
    """Whether a line of .gitignore names a file or folder; one that begins with / is from the top.

    Parameters
    ----------
    name
        From the top of the tree.
    """
    lines = [".git", *(ROOT / ".gitignore").read_text(encoding="utf-8").split()]
    if f"!{name}" in lines:
        return False
    whole = Path("/") / name
    return any(
        whole.match(line) if line.startswith("/") else fnmatch(part, line)
        for line in (line.rstrip("/") for line in lines)
        for part in (name.name, str(name))
    )


def texts() -> dict[Path, str]:
    """What is written in every project file that is text."""
    found = {}
    for name in project_files():
        try:
            found[name] = (ROOT / name).read_text(encoding="utf-8")
        except UnicodeDecodeError:
            continue
    return found


@cache
def _parsed(name: Path) -> ast.Module:
    return ast.parse((ROOT / name).read_text(encoding="utf-8"), str(name))


def python_files(*folders: str) -> dict[Path, ast.Module]:
    """The syntax tree of every Python file in these top-level folders, not to be changed."""
    return {
        name: _parsed(name)
        for name in project_files()
        if name.suffix == ".py" and name.parts[0] in folders
    }


@cache
def strings_of(tree: ast.AST) -> tuple[str, ...]:
    """The strings of a module, but for its docstrings."""
    nodes = list(ast.walk(tree))
    aside = {id(node.value) for node in nodes if isinstance(node, ast.Expr)}
    return tuple(
        node.value
        for node in nodes
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in aside
    )


@cache
def modules() -> dict[str, ast.Module]:
    """The syntax tree of every module of the package, by its dotted name; "" is the package."""
    return {module_name(file): tree for file, tree in python_files("service").items()}


def module_name(file: Path) -> str:
    """The dotted name of a file of the package, without ``ledgerstone.``; "" is the package."""
    parts = (ROOT / file).relative_to(PACKAGE).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


def imported(tree: ast.Module, module: str = "") -> Iterator[str]:
    """Full dotted names of all that a module imports, wherever in it the import stands."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            here = ["ledgerstone", *module.split(".")]
            above = ".".join(here[: len(here) - node.level]) if node.level else ""
            base = ".".join(part for part in (above, node.module or "") if part)
            yield from (f"{base}.{alias.name}" for alias in node.names)


def imports_of(module: str) -> set[str]:
    """The modules of ours that one imports; of a package, the module that a name stands in."""
    found = {_module_of(name) for name in imported(modules()[module], module)}
    return found - {module, ""}


def loaded_with(module: str) -> set[str]:
    """The modules of ours that are loaded once one is: by imports at the heads of modules."""
    loaded, left = {""}, [module]
    while left:
        name = left.pop()
        if name not in loaded:
            loaded.add(name)
            left += [name.rpartition(".")[0], *map(_module_of, imported(_head(name), name))]
    return loaded - {""}


def _head(module: str) -> ast.Module:
    """The imports of a module that run when it is loaded, and nothing else of it."""
    body = modules()[module].body
    return ast.Module([n for n in body if isinstance(n, ast.Import | ast.ImportFrom)], [])


def _module_of(name: str) -> str:
    """The module of ours that a full dotted name stands in, or is; "" for another's."""
    words = name.split(".")[1:] if name.startswith("ledgerstone.") else []
    while words and ".".join(words) not in modules():
        words.pop()
    return ".".join(words)
