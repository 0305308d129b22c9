"""The cases of a law are the same wherever and beside whatever it runs."""

import sys
from importlib.util import module_from_spec, spec_from_file_location
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from support.drawn_constants import draw_without_our_constants


def drawn() -> list[int]:
    """What a law of whole numbers is held on."""
    found: list[int] = []

    @settings(max_examples=300, derandomize=True, database=None)
    @given(st.integers(0, 10**9))
    def draw(number: int) -> None:
        found.append(number)

    draw()
    return found


def import_constants(file: Path) -> str:
    """Import a module with a thousand numbers of its own; return its name."""
    file.write_text(f"NUMBERS = {[7_000_000 + 13 * k for k in range(1000)]}", encoding="utf-8")
    spec = spec_from_file_location(file.stem, file)
    assert spec is not None
    assert spec.loader is not None
    module = module_from_spec(spec)
    sys.modules[file.stem] = module
    spec.loader.exec_module(module)
    return file.stem


def test_cases_are_independent_of_what_is_imported(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """One more module with constants of its own changes no case."""
    draw_without_our_constants(monkeypatch)
    before = drawn()
    name = import_constants(tmp_path / "of_no_law.py")
    try:
        assert drawn() == before
    finally:
        del sys.modules[name]
