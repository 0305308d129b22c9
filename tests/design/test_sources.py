"""What a docstring or a test cites can be opened by a reader of this repository."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from design.source import ROOT, texts

PAGES = {name: ROOT / "service" / "docs" / f"{name}.md" for name in ("methods", "sources")}
CITED = re.compile(r"\b(methods|sources) §([0-9]+(?:\.[0-9]+)?)")
ROW = re.compile(r"[Rr]ows? (M?[0-9]+)")
HEADING = re.compile(r"^#+ ([0-9]+(?:\.[0-9]+)?) ", re.MULTILINE)
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
