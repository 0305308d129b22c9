"""What goes into the container: its Dockerfile, its libraries' licences, and known advisories."""

import json
import re
import subprocess
import sys
import threading
import tomllib
from collections.abc import Iterator
from http.server import BaseHTTPRequestHandler, HTTPServer
from pathlib import Path

import pytest

from design import audit, licences
from design.source import ROOT

LOCK = ROOT / "docker/requirements.lock"


def _number(version: str) -> tuple[int, ...]:
    return tuple(map(int, re.findall(r"\d+", version)))


def test_the_dockerfile_is_as_hadolint_would_have_it() -> None:
    """Hadolint has nothing to say of the Dockerfile."""
    hadolint = Path(sys.executable).parent / "hadolint"
    done = subprocess.run(
        [hadolint, ROOT / "docker/Dockerfile"], capture_output=True, text=True, check=False
    )
    assert (done.returncode, done.stdout) == (0, "")


def test_the_list_of_licences_is_that_of_the_lock() -> None:
    """docker/licences.md names every library of the service's lock and what each says itself."""
    assert licences.LIST.read_text(encoding="utf-8") == licences.written()


def test_no_licence_asks_more_than_we_allow() -> None:
    """Every licence, vendored code included, is among those that were reviewed."""
    for name, licence, inside in licences.rows():
        found = licences.parts(licence) | licences.parts(inside)
        assert licence, name
        assert found <= licences.ALLOWED, name


def test_nothing_pinned_is_older_than_what_mended_an_advisory() -> None:
    """The lock holds no version with an advisory that we know of."""
    told = tomllib.loads((ROOT / "tests/design/advisories.toml").read_text(encoding="utf-8"))
    pinned = audit.pinned(LOCK)
    assert len(told["mended"]) > 4
    for one in told["mended"]:
        version = pinned[one["library"]]
        assert _number(version) >= _number(one["version"]), one["what"]


@pytest.fixture
def advisories() -> Iterator[tuple[str, list[str]]]:
    """A database on loopback that knows of one advisory, against flask; and what it was asked."""
    asked: list[str] = []

    class Database(BaseHTTPRequestHandler):
        def do_POST(self) -> None:
            body = self.rfile.read(int(self.headers["Content-Length"]))
            asked.append(body.decode())
            names = [query["package"]["name"] for query in json.loads(body)["queries"]]
            results = [{"vulns": [{"id": "OSV-1"}]} if n == "flask" else {} for n in names]
            self.send_response(200)
            self.end_headers()
            self.wfile.write(json.dumps({"results": results}).encode())

        def log_message(self, *_: object) -> None:
            """Say nothing."""

    server = HTTPServer(("127.0.0.1", 0), Database)
    threading.Thread(target=server.serve_forever, daemon=True).start()
    yield f"http://127.0.0.1:{server.server_port}/", asked
    server.shutdown()
    server.server_close()


def test_an_advisory_is_reported_and_fails_the_check(
    advisories: tuple[str, list[str]], capsys: pytest.CaptureFixture[str]
) -> None:
    """The audit asks for every pinned library by name and version, and says what is known."""
    address, asked = advisories
    assert audit.main(address) == 1
    assert "flask " in capsys.readouterr().out
    queries = json.loads(asked[0])["queries"]
    assert {(q["package"]["name"], q["version"]) for q in queries} >= set(
        audit.pinned(LOCK).items()
    )


def test_an_audit_that_reaches_nobody_says_so(capsys: pytest.CaptureFixture[str]) -> None:
    """Without a way to the database the audit neither passes nor fails: it was not asked."""
    assert audit.main("http://127.0.0.1:9/") == audit.NOT_REACHED
    assert capsys.readouterr().out.startswith("Not asked: ")
