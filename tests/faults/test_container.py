"""The container's own scripts, run as they are: no file, one made, health, a log that is full."""

import os
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from support.ports import free_port
from support.serving import ROOT, ask, wait_for

START = ROOT / "docker/start"
HEALTH = ROOT / "docker/health.py"


def _environment(file: Path, port: int) -> dict[str, str]:
    return {
        **os.environ,
        "PATH": f"{Path(sys.executable).parent}:{os.environ['PATH']}",
        "PYTHONPATH": str(ROOT / "service"),
        "LEDGERSTONE_WORKSHOP": str(file),
        "LEDGERSTONE_SERVER": str(ROOT / "docker/gunicorn.conf.py"),
        "LEDGERSTONE_BIND": f"127.0.0.1:{port}",
        "WEB_CONCURRENCY": "1",
    }


def _health(file: Path, port: int) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, HEALTH, f"http://127.0.0.1:{port}/v1/health/ready"],
        env=_environment(file, port), capture_output=True, text=True, check=False,
    )  # fmt: skip


def _init(file: Path, *more: str) -> None:
    subprocess.run(["sh", START, "init", *more], env=_environment(file, 0), check=True)


@contextmanager
def started(file: Path, port: int, log: Path) -> Iterator[subprocess.Popen[bytes]]:
    """Run what the container runs."""
    with log.open("wb") as out:
        process = subprocess.Popen(
            ["sh", START], env=_environment(file, port), stdout=out, stderr=out
        )
    try:
        yield process
    finally:
        process.terminate()
        assert process.wait(timeout=30) == 0


def test_a_missing_file_is_reported_and_taken_up_once_it_is_there(tmp_path: Path) -> None:
    """Log and health name the file that is missing; made by init, it is served with no restart."""
    file, log, port = tmp_path / "shop/workshop.toml", tmp_path / "log", free_port()
    file.parent.mkdir()
    with started(file, port, log):
        wait_for(lambda: str(file) in log.read_text(encoding="utf-8"))
        assert "run --rm init" in log.read_text(encoding="utf-8")
        unwell = _health(file, port)
        assert unwell.returncode == 1
        assert str(file) in unwell.stdout
        _init(file)
        wait_for(lambda: ask(port, "/v1/health/ready", None).status == 200)
        well = _health(file, port)
        assert (well.returncode, '"status"' in well.stdout) == (0, True)


def test_what_init_writes_is_the_folders_owners(tmp_path: Path) -> None:
    """The file has its folder's owner, and is not overwritten."""
    file = tmp_path / "workshop.toml"
    if os.getuid() == 0:
        os.chown(tmp_path, 12345, 12345)
    _init(file)
    assert file.stat().st_uid == tmp_path.stat().st_uid
    assert "[workshop]" in file.read_text(encoding="utf-8")
    with pytest.raises(subprocess.CalledProcessError):
        _init(file)


def test_init_starts_from_a_country(tmp_path: Path) -> None:
    """What stands after init goes to it: a German maker's file is in euros and in German."""
    file = tmp_path / "workshop.toml"
    _init(file, "--country", "DE")
    text = file.read_text(encoding="utf-8")
    assert 'country = "DE"' in text
    assert 'language = "de"' in text


def test_check_says_what_is_wrong_in_the_file(tmp_path: Path) -> None:
    """A file as init writes it is checked, and a fault is reported with its line."""
    file = tmp_path / "workshop.toml"
    _init(file)
    check = ["sh", str(START), "check"]
    subprocess.run(check, env=_environment(file, 0), check=True)
    file.write_text(f"{file.read_text(encoding='utf-8')}\nnonsense = \n", encoding="utf-8")
    done = subprocess.run(check, env=_environment(file, 0), capture_output=True, check=False)
    assert done.returncode == 1
    assert f"{file}:".encode() in done.stdout
    assert b"One fault in" in done.stdout


def test_health_says_that_nobody_answers(tmp_path: Path) -> None:
    """With a file and no server, health is 1 and points to the log."""
    file = tmp_path / "workshop.toml"
    file.touch()
    unwell = _health(file, free_port())
    assert unwell.returncode == 1
    assert "its log says why" in unwell.stdout


def test_a_full_log_stops_no_start(tmp_path: Path) -> None:
    """Where neither output can be written, the container waits for its file, and then serves."""
    file, port = tmp_path / "workshop.toml", free_port()
    with started(file, port, Path("/dev/full")) as process:
        with pytest.raises(subprocess.TimeoutExpired):
            process.wait(timeout=1)
        _init(file)
        wait_for(lambda: process.poll() or ask(port, "/v1/health/ready", None).status == 200)
        assert process.poll() is None


def test_serve_starts_though_nothing_can_be_written() -> None:
    """The one command on a maker's own machine starts with both outputs on a full disk."""
    port = free_port()
    with Path("/dev/full").open("wb") as full:
        process = subprocess.Popen(
            [ROOT / "service/serve", "--port", str(port)], stdout=full, stderr=full
        )
    try:
        wait_for(lambda: process.poll() or ask(port, "/v1/health/ready", None).status == 200)
        assert process.poll() is None
    finally:
        process.terminate()
        process.wait(timeout=30)
