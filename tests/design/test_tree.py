"""What lies in the tree, how long it is, and what must never be written in it."""

import ast
import importlib
import re
import subprocess
from collections.abc import Iterator
from pathlib import Path
from tempfile import gettempdir

from design.source import ROOT, Function, project_files, python_files, texts

TOP = {
    "pyproject.toml",
    "README.md",
    "DEVELOPERS.md",
    "CHANGELOG.md",
    "LICENSE",
    "service",
    "web",
    "tests",
    "openapi",
    "docker",
}
# Folders of any system, and of the images that are written of here: they name no machine.
ANY_SYSTEM = {"/", gettempdir(), "/tmp", "/app", "/shop"} | {  # noqa: S108 - its name alone
    f"/{name}" for name in ("srv", "opt", "usr", "usr/src", "usr/local", "var", "mnt", "run", "etc")
}
NO_ADDRESSES = (".lock", "requirements.in", "requirements-dev.in", "package-lock.json", ".npmrc")
MAX_FILE_LINES = 300
MAX_FUNCTION_LINES = 50
SHARED_WORDS = re.compile(r"^_?(utils?|helpers?|manager|common|misc)\.py$")


def _functions(tree: ast.Module) -> Iterator[Function]:
    return (node for node in ast.walk(tree) if isinstance(node, Function))


def _public(tree: ast.Module) -> Iterator[Function | ast.ClassDef]:
    """Public functions and classes of a module, and the public methods of those classes."""
    for node in tree.body:
        if isinstance(node, Function | ast.ClassDef) and not node.name.startswith("_"):
            yield node
            for part in node.body if isinstance(node, ast.ClassDef) else ():
                if isinstance(part, Function) and not part.name.startswith("_"):
                    yield part


def _packages_pinned(lock: str) -> dict[str, str]:
    """What a lock pins: each requirement with its marker, and its hashes as they stand."""
    joined = (ROOT / "docker" / lock).read_text(encoding="utf-8").replace("\\\n", " ")
    lines = (line.split(" --hash=", 1) for line in joined.splitlines() if line.strip())
    return {name.strip(): " ".join(hashes.split()) for name, hashes in lines}


def _registry_hosts() -> set[str]:
    """The hosts this machine installs from, by its own clients; none is written here."""
    told = importlib.import_module("pip._internal.models.index").PyPI.url
    for command in (["pip", "config", "list"], ["npm", "config", "get", "registry"]):
        try:
            told += subprocess.run(command, capture_output=True, text=True, check=False).stdout
        except FileNotFoundError:  # no such client here: it can have written nothing
            continue
    hosts = set(re.findall(r"https?://(?:[^/@\s]*@)?([A-Za-z0-9.-]+)", told))
    return {host for host in hosts if not re.match(r"localhost$|127\.|\.|$", host)}


def _where(pattern: re.Pattern[str]) -> list[str]:
    """File and line of every match in the project's text."""
    return [
        f"{name}:{number}"
        for name, text in texts().items()
        for number, line in enumerate(text.splitlines(), 1)
        if pattern.search(line)
    ]


def test_the_top_level_holds_only_what_was_agreed() -> None:
    """Beside dotfiles, the top level has the ten agreed names and no other."""
    names = {file.parts[0] for file in project_files()}
    assert {name for name in names if not name.startswith(".")} <= TOP


def test_the_page_needs_no_build() -> None:
    """web/ holds what a browser reads, and no tool's settings."""
    kinds = {file.suffix for file in project_files() if file.parts[0] == "web"}
    assert kinds <= {".html", ".css", ".js", ".svg", ".woff2", ".png", ".ico", ".txt"}


def test_lock_files_name_no_address() -> None:
    """A lock says what and which hash, never where from."""
    written = {name: text for name, text in texts().items() if name.name.endswith(NO_ADDRESSES)}
    assert len(written) >= 6
    assert [str(name) for name, text in written.items() if "://" in text] == []


def test_the_tests_lock_holds_all_of_the_services_lock() -> None:
    """What the tests run with is, to the hash, what the service is installed with."""
    service = _packages_pinned("requirements.lock")
    assert service
    assert service.items() <= _packages_pinned("requirements-dev.lock").items()


def _names_a_host(hosts: set[str]) -> re.Pattern[str]:
    """A host by its whole name; one of a single word, which may be any word, as an address."""
    named = "|".join(
        re.escape(host) if "." in host else rf"//(?:[^/@\s]*@)?{re.escape(host)}"
        for host in sorted(hosts)
    )
    return re.compile(rf"(?<![\w.-])(?:{named})(?![\w-])")


def test_no_registry_is_named() -> None:
    """No file names a host that this machine's package clients install from."""
    hosts = _registry_hosts()
    assert hosts
    assert _where(_names_a_host(hosts)) == []


def test_a_host_of_one_word_is_no_other_word() -> None:
    """A machine that installs from "mirror" finds it in an address, and in no word."""
    pattern = _names_a_host({"mirror", "packages.example.org"})
    for text in ("https://mirror:8080/simple", "see packages.example.org", "//me@mirror/"):
        assert pattern.search(text), text
    for text in ("a mirror law", "//mirrored.example", "my-packages.example.org"):
        assert not pattern.search(text), text


def _of_a_machine(folders: set[Path]) -> re.Pattern[str]:
    """A path of a machine: below these folders, where they are not any system's or image's own."""
    own = {f"{folder}/" for folder in folders if str(folder) not in ANY_SYSTEM}
    places = "|".join([*map(re.escape, sorted(own)), r"/(?:home|Users)/\w"])
    return re.compile(rf"(?<![\w./-])(?:{places})")


def test_no_machine_is_named() -> None:
    """No file holds a path of the machine it was written on."""
    assert _where(_of_a_machine({ROOT.parent, Path.home()})) == []


def test_a_system_s_own_folders_name_no_machine() -> None:
    """A checkout in /srv, or a home that is /, makes no fault of a path in the container."""
    pattern = _of_a_machine({Path("/"), Path("/srv"), Path("/builds/maker")})
    assert not pattern.search("root /srv/page; /etc/nginx")
    assert pattern.search("seen at /builds/maker/ledgerstone")
    assert pattern.search(f"/{'home'}/anna/ledgerstone")


def test_no_module_is_long() -> None:
    """A Python file has at most 300 lines; the tests' tables of data are exempt."""
    assert [
        f"{name}: {count}"
        for name, text in texts().items()
        if name.suffix == ".py"
        and not name.stem.endswith("_table")
        and (count := len(text.splitlines())) > MAX_FILE_LINES
    ] == []


def test_no_function_is_long() -> None:
    """A function has at most 50 lines."""
    assert [
        f"{name}:{function.lineno} {function.name}"
        for name, tree in python_files("service", "tests", "docker").items()
        for function in _functions(tree)
        if (function.end_lineno or 0) - function.lineno + 1 > MAX_FUNCTION_LINES
    ] == []


def test_public_things_say_what_they_are() -> None:
    """Every public function, class and method of the service has a docstring."""
    assert [
        f"{name}:{node.lineno} {node.name}"
        for name, tree in python_files("service").items()
        for node in _public(tree)
        if not ast.get_docstring(node)
    ] == []


def test_every_test_states_its_fact() -> None:
    """Every test's docstring begins with one line that ends as a sentence does."""
    assert [
        f"{name}:{function.lineno} {function.name}"
        for name, tree in python_files("tests").items()
        for function in _functions(tree)
        if function.name.startswith("test_")
        and not (ast.get_docstring(function) or "").partition("\n")[0].endswith(".")
    ] == []


def test_no_module_is_a_drawer() -> None:
    """No module is named utils, helpers, manager, common or misc."""
    assert [str(name) for name in project_files() if SHARED_WORDS.match(name.name)] == []


def _imported(tree: ast.Module) -> Iterator[str]:
    """The full names that a module imports, wherever in it the import stands."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (name.name for name in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            yield from (f"{node.module}.{name.name}" for name in node.names)


def test_what_tests_share_lies_in_one_place() -> None:
    """A folder of tests imports its own modules and ``support``; no module imports a test.

    Nor the fixtures that are every test's: what else they need lies in ``support``.
    """
    folders = {path.name for path in (ROOT / "tests").iterdir() if path.is_dir()} - {"data"}
    folders.add("conftest")
    wrong = {}
    for file, tree in python_files("tests").items():
        own = {file.parts[1], "support"} if len(file.parts) > 2 else {"support"}
        names = [name.split(".") for name in _imported(tree) if name.split(".")[0] in folders]
        bad = [n for n in names if n[0] not in own or any(p.startswith("test_") for p in n[:2])]
        if bad:
            wrong[str(file)] = bad
    assert wrong == {}


def test_the_tests_data_lie_in_one_folder() -> None:
    """Beside a tool's own settings and the advisories, no test's data lie among the code."""
    kinds = {".toml", ".json", ".jsonl", ".csv", ".txt", ".eml", ".ics"}
    own = {"tests/package.json", "tests/package-lock.json", "tests/tsconfig.json"}
    own |= {"tests/design/advisories.toml"}
    found = {str(f) for f in project_files() if f.parts[0] == "tests" and f.suffix in kinds}
    assert len(found) > 10
    assert sorted(name for name in found - own if not name.startswith("tests/data/")) == []
