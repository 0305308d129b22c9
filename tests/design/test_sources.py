"""What a docstring or a test cites can be opened by a reader of this repository."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from design.source import ROOT

PAGES = {name: ROOT / "service" / "docs" / f"{name}.md" for name in ("methods", "sources")}
CITED = re.compile(r"\b(methods|sources) §([0-9]+(?:\.[0-9]+)?)")
ROW = re.compile(r"[Rr]ows? (M?[0-9]+)")
HEADING = re.compile(r"^#+ ([0-9]+(?:\.[0-9]+)?) ", re.MULTILINE)
ELSEWHERE = re.compile(r"\bdesign\.md|\b(?:reference|handling|mix|strength) page\b|\becosystem\.md")


def _texts() -> Iterator[tuple[Path, str]]:
    for folder in ("service", "tests"):
        for file in sorted((ROOT / folder).rglob("*")):
            if file.suffix in {".py", ".toml", ".md"} and "node_modules" not in file.parts:
                yield file.relative_to(ROOT), file.read_text(encoding="utf-8")


TEXTS = dict(_texts())


@pytest.mark.parametrize("page", PAGES)
def test_every_section_that_is_cited_is_there(page: str) -> None:
    """Each "sources §1.2" names a heading of service/docs/sources.md; so with methods."""
    there = set(HEADING.findall(PAGES[page].read_text(encoding="utf-8")))
    cited = {
        (section, str(file))
        for file, text in TEXTS.items()
        for name, section in CITED.findall(text)
        if name == page
    }
    assert cited
    assert {(section, file) for section, file in cited if section not in there} == set()


def test_nothing_cites_a_page_that_is_not_here() -> None:
    """No docstring, comment or answer names a document that this repository does not hold."""
    here = Path("tests/design/test_sources.py")
    assert [
        str(file) for file, text in TEXTS.items() if file != here and ELSEWHERE.search(text)
    ] == []
