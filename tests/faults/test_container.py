"""The container's own scripts, run as they are: no file, one made, health, a log that is full."""

import json
import os
import subprocess
import sys
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager, suppress
from pathlib import Path
from urllib.request import Request, urlopen

import pytest
import yaml

from support.demonstration import EXAMPLE_ORDER, MAKER_KEY
from support.ports import free_port
from support.profile_form import begun
from support.serving import ROOT, ask, served, wait_for

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
    """A new maker's file is checked, and a fault is reported with its line."""
    file = tmp_path / "workshop.toml"
    file.write_text(begun("GB"), encoding="utf-8")
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
        whole = tmp_path / "whole"
        whole.write_text(begun("GB"), encoding="utf-8")
        whole.rename(file)
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


def _threads_of(pid: int) -> int:
    """Count the threads of a process and of all that it has started."""
    with suppress(FileNotFoundError, ProcessLookupError):
        tasks = list(Path(f"/proc/{pid}/task").iterdir())
        started = [(task / "children").read_text(encoding="ascii").split() for task in tasks]
        return len(tasks) + sum(_threads_of(int(child)) for each in started for child in each)
    return 0


def test_the_limit_of_processes_is_kept_on_a_machine_of_many_cores(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """While both workers print and draw, half of the container's threads are free, at 40 cores."""
    text = (ROOT / "docker/compose.yaml").read_text(encoding="utf-8")
    most = yaml.safe_load(text)["services"]["service"]["pids_limit"]
    monkeypatch.setenv("RAYON_NUM_THREADS", "40")  # as many as it takes for itself at 40 cores
    headers = {
        "Content-Type": "application/json",
        "Accept": "application/pdf",
        "Authorization": f"Bearer {MAKER_KEY}",
    }
    counted = [0]
    with served() as server, ThreadPoolExecutor(4) as callers:
        address = f"http://127.0.0.1:{server.port}/v1/job-sheets"
        body = json.dumps({"order": EXAMPLE_ORDER}).encode()

        def printed() -> int:
            with urlopen(Request(address, body, headers), timeout=60) as answer:
                status: int = answer.status
                return status

        asked = [callers.submit(printed) for _ in range(6)]
        while not all(one.done() for one in asked):
            counted.append(_threads_of(server.process.pid))
            time.sleep(0.005)
    assert {one.result() for one in asked} == {200}
    print(f"threads at most: {max(counted)}, of {most}")
    assert 4 < max(counted) <= most / 2
