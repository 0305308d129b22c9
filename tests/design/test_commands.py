"""The two commands say plainly what is missing, and the service starts and stops cleanly."""

import os
import shutil
import signal
import socket
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from urllib.request import urlopen

import pytest

from design.source import ROOT
from support.ports import free_port

SERVE = ROOT / "service" / "serve"


def _said(*command: object, path: str | None = None) -> tuple[int, str]:
    """Exit status of a command, and all that it said."""
    done = subprocess.run(
        [str(part) for part in command],
        capture_output=True,
        text=True,
        check=False,
        timeout=300,
        env={**os.environ, **({"PATH": path} if path else {})},
    )
    return done.returncode, done.stdout + done.stderr


@pytest.fixture
def taken_port() -> Iterator[int]:
    """A port that something listens on."""
    with socket.socket() as listener:
        listener.bind(("127.0.0.1", 0))
        listener.listen()
        yield int(listener.getsockname()[1])


@pytest.fixture
def bare_clone(tmp_path: Path) -> Path:
    """A copy of what serve reads, with no environment made, and a bin of nothing but basics."""
    shutil.copytree(ROOT / "docker", tmp_path / "docker")
    for name in ("serve", "environment.sh", "ledgerstone/workshop/demonstration.toml"):
        (tmp_path / "service" / name).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(ROOT / "service" / name, tmp_path / "service" / name)
    (tmp_path / "bin").mkdir()
    for tool in ("dirname", "cat", "cmp"):
        found = shutil.which(tool)
        assert found
        (tmp_path / "bin" / tool).symlink_to(found)
    return tmp_path


def _python_that(clone: Path, script: str) -> None:
    stand_in = clone / "bin" / "python3"
    stand_in.write_text(f"#!/bin/sh\n{script}\n", encoding="utf-8")
    stand_in.chmod(0o755)


@pytest.mark.parametrize("command", [SERVE, ROOT / "tests" / "run"], ids=["serve", "run"])
def test_help_says_how(command: Path) -> None:
    """--help explains, and starts nothing."""
    status, said = _said(command, "--help")
    assert status == 0
    assert said.startswith("Usage: ")


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (("--port", "0"), "from 1 to 65535; '0' was given"),
        (("--port", "65536"), "from 1 to 65535"),
        (("--port", "http"), "'http' was given"),
        (("--port", "80 80"), "'80 80' was given"),
        (("--port", ""), "from 1 to 65535"),
        (("--port",), "--port needs a value after it"),
        (("--host", "localhost"), "does not know '--host'"),
        (("--workshop", "no/such.toml"), "There is no workshop file at 'no/such.toml'"),
        (("--new", "US"), "--new wants a file to begin"),
        (("--workshop", "/", "--new", "US"), "There is no workshop file at '/'"),
        (("--workshop", "/"), "There is no workshop file at '/'"),
    ],
)
def test_a_wrong_argument_is_reported(arguments: tuple[str, ...], says: str) -> None:
    """An argument that can't be meant is answered in one plain line."""
    status, said = _said(SERVE, *arguments)
    assert status == 1
    assert says in said
    assert said.count("\n") == 1


def test_no_python_is_reported(bare_clone: Path) -> None:
    """Without a Python, serve says which is needed and how Debian brings it."""
    status, said = _said(bare_clone / "service" / "serve", path=str(bare_clone / "bin"))
    assert status == 1
    assert "needs Python 3.11 or later; this machine has none." in said
    assert "apt install python3 python3-venv" in said


def test_an_old_python_is_reported(bare_clone: Path) -> None:
    """With a Python before 3.11, serve says which one it found."""
    _python_that(bare_clone, 'case "$1" in --version) echo Python 3.9.2 ;; *) exit 1 ;; esac')
    status, said = _said(bare_clone / "service" / "serve", path=str(bare_clone / "bin"))
    assert status == 1
    assert "needs Python 3.11 or later; this machine has Python 3.9.2." in said


def test_no_venv_is_reported(bare_clone: Path) -> None:
    """With a Python that lacks venv or ensurepip, serve says so and how Debian brings it."""
    _python_that(
        bare_clone, f'case "$*" in *ensurepip*) exit 1 ;; *) exec {sys.executable} "$@" ;; esac'
    )
    status, said = _said(bare_clone / "service" / "serve", path=str(bare_clone / "bin"))
    assert status == 1
    assert "has no venv or ensurepip module" in said
    assert "apt install python3-venv" in said


def test_a_port_that_is_taken_is_reported(taken_port: int) -> None:
    """When something listens there already, serve names the port and proposes another."""
    status, said = _said(SERVE, "--port", taken_port)
    assert status == 1
    assert f"Port {taken_port} is taken" in said
    assert "service/serve --port" in said


def test_a_workshop_file_with_faults_is_reported(tmp_path: Path) -> None:
    """A profile's faults are printed with their lines, and nothing is started."""
    (tmp_path / "mine.toml").write_text("[table]\nlength_mm = -3\n", encoding="utf-8")
    status, said = _said(SERVE, "--workshop", tmp_path / "mine.toml")
    assert status == 1
    assert "mine.toml:2: table.length_mm" in said
    assert "Nothing was started" in said
    assert "Traceback" not in said


def test_a_new_workshop_is_begun_and_served(tmp_path: Path, taken_port: int) -> None:
    """`--new` writes the file of a country where there is none, and leaves one that is there."""
    file = tmp_path / "shop.toml"
    begin = (SERVE, "--port", taken_port, "--workshop", file, "--new")
    assert _said(*begin, "US")[0] == 1  # the port is taken, which is seen once the file is there
    begun = file.read_text(encoding="utf-8")
    assert 'country = "US"' in begun
    _said(*begin, "DE")
    assert file.read_text(encoding="utf-8") == begun
    status, said = _said(*begin[:-2], tmp_path / "other.toml", "--new", "XX")
    assert (status, (tmp_path / "other.toml").exists()) == (1, False)
    assert "XX" in said


def test_the_service_starts_and_stops() -> None:
    """One command serves the demonstration workshop; Ctrl-C ends it with status 0."""
    port = free_port()
    served = subprocess.Popen(
        [SERVE, "--port", str(port)], stdout=subprocess.PIPE, text=True, encoding="utf-8"
    )
    try:
        assert served.stdout
        said = []
        for line in served.stdout:
            said.append(line)
            if line.startswith("Ready "):
                break
        assert said[-1] == f"Ready at http://127.0.0.1:{port}/\n"
        assert any(line.startswith("Maker's key for this run: ") for line in said)
        with urlopen(f"http://127.0.0.1:{port}/v1/health/ready", timeout=60) as answer:
            assert answer.status == 200
        served.send_signal(signal.SIGINT)
        assert served.wait(timeout=60) == 0
    finally:
        served.kill()
        served.communicate()
