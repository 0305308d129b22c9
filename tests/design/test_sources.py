"""What a docstring or a test cites can be opened by a reader, and stands in its Source section."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from design.source import ROOT, Function, python_files, texts

PAGES = {name: ROOT / "service" / "docs" / f"{name}.md" for name in ("methods", "sources")}
CITED = re.compile(r"\b(methods|sources) §([0-9]+(?:\.[0-9]+)?)")
ROW = re.compile(r"[Rr]ows? (M?[0-9]+)")
HEADING = re.compile(r"^#+ ([0-9]+(?:\.[0-9]+)?) ", re.MULTILINE)
BASIS = re.compile(
    r"\b(?:EN|ACI|ASTM|BS|DIN|CNR-DT) [A-Z]?[0-9]|\b(?:methods|sources) §|\bHSE\b"
    r"|\b[Ff]rom memory\b|\b[Cc]ommon practice\b|\bno source\b|\bour own (?:choice|judgement)\b"
)
OF_NUMBERS = re.compile(r"\n\nSource\n-+\n.*?(?=\n\n\w+\n-+\n|\Z)", re.DOTALL)
ELSEWHERE = re.compile(r"\bdesign\.md|\b(?:reference|handling|mix|strength) page\b|\becosystem\.md")


def _texts() -> Iterator[tuple[Path, str]]:
    """The project's code, profiles and pages."""
    for name, text in texts().items():
        if name.parts[0] in {"service", "tests"} and name.suffix in {".py", ".toml", ".md"}:
            yield name, text


@pytest.mark.parametrize("page", PAGES)
def test_every_section_that_is_cited_is_there(page: str) -> None:
    """Each "sources §1.2" names a heading of service/docs/sources.md; so with methods."""
    there = set(HEADING.findall(PAGES[page].read_text(encoding="utf-8")))
    cited = {
        (section, str(file))
        for file, text in _texts()
        for name, section in CITED.findall(text)
        if name == page
    }
    assert cited
    assert {(section, file) for section, file in cited if section not in there} == set()


def test_nothing_cites_a_page_that_is_not_here() -> None:
    """No docstring, comment or answer names a document that this repository does not hold."""
    here = Path("tests/design/test_sources.py")
    assert [str(file) for file, text in _texts() if file != here and ELSEWHERE.search(text)] == []


def _cited_in_passing(function: Function) -> bool:
    """Whether a function's docstring names what its numbers rest on outside its Source section."""
    return BASIS.search(OF_NUMBERS.sub("", ast.get_docstring(function) or "")) is not None


def test_what_numbers_rest_on_stands_in_the_source_section() -> None:
    """A standard, a handbook or common practice is named under Source, where it is looked for."""
    found = [
        f"{name}:{node.lineno} {node.name}"
        for name, tree in python_files("service").items()
        for node in ast.walk(tree)
        if isinstance(node, Function) and _cited_in_passing(node)
    ]
    assert found == []


def test_a_source_in_passing_is_seen() -> None:
    """A clause in the text is found, one under Source is not."""
    passing = 'def f():\n    """Cover, mm (EN 1992-1-1 4.4.1)."""'
    proper = (
        'def f():\n    """Cover, mm.\n\n    Source\n    ------\n    EN 1992-1-1 4.4.1.\n    """'
    )
    for text, is_found in ((passing, True), (proper, False)):
        (function,) = ast.parse(text).body
        assert isinstance(function, Function)
        assert _cited_in_passing(function) == is_found
