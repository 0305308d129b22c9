"""Tests in several processes: a process that dies, and a test that fails, fail the run."""

import os
import subprocess
import sys
from pathlib import Path

from design.source import ROOT

PASSES = "def test_a(): pass\ndef test_b(): pass\n"
FAILS = "def test_c(): assert False\n"
DIES = "import os\ndef test_d(): os._exit(3)\n"


def _ran(folder: Path, *files: str) -> tuple[int, str]:
    """Exit status and output of the tests of some files, in two processes."""
    for k, text in enumerate(files):
        (folder / f"test_{k}.py").write_text(text, encoding="utf-8")
    done = subprocess.run(
        [sys.executable, "-m", "pytest", "-q", "-p", "support.workers", "--workers", "2", folder],
        env={**os.environ, "PYTHONPATH": f"{ROOT / 'service'}:{ROOT / 'tests'}"},
        cwd=folder,
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
    )
    return done.returncode, done.stdout


def test_each_test_is_reported_once(tmp_path: Path) -> None:
    """Of three files the tests that pass and the one that fails are counted."""
    status, told = _ran(tmp_path, PASSES, FAILS, PASSES)
    assert status == 1
    assert "1 failed, 4 passed" in told


def test_a_process_that_dies_fails_the_run(tmp_path: Path) -> None:
    """Its end is reported with the test that it ran."""
    status, told = _ran(tmp_path, DIES)
    assert status == 1
    assert "ended with 3 during" in told
    assert "test_0.py::test_d" in told
