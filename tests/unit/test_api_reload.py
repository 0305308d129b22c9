"""A changed profile is taken up whole or not at all, and links signed before it still open."""

import re
from datetime import date
from pathlib import Path

import pytest
from werkzeug.test import Client

from ledgerstone.api import Settings
from ledgerstone.api.reload import Service, Watch, service
from ledgerstone.wording import Message, english
from ledgerstone.workshop import DEMONSTRATION
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS

TEXT = DEMONSTRATION.read_text(encoding="utf-8")
DEARER = re.sub(r"(?m)^margin_percent = \d+", "margin_percent = 49", TEXT)


@pytest.fixture
def now_s() -> list[float]:
    """A clock that stands until it is moved."""
    return [100.0]


@pytest.fixture
def running(tmp_path: Path, today: date, now_s: list[float]) -> Service:
    """A service whose profile can be changed."""
    path = tmp_path / "workshop.toml"
    path.write_text(TEXT, encoding="utf-8")
    made = service(
        Settings(
            workshop_path=path,
            maker_key=MAKER_KEY,
            signing_keys=SIGNING_KEYS,
            today=lambda _zone: today,
        )
    )
    made.clock = lambda: now_s[0]
    return made


def _ready(running: Service) -> dict[str, object]:
    told: dict[str, object] = Client(running).get("/v1/health/ready").get_json()
    return told


def _write(running: Service, text: str) -> None:
    running.settings.workshop_path.write_text(text, encoding="utf-8")


def test_a_changed_profile_is_loaded(running: Service) -> None:
    """After a reload the answers are the new profile's, and readiness tells its fingerprint."""
    assert DEARER != TEXT
    before = _ready(running)["profile"]
    _write(running, DEARER)
    assert _ready(running)["profile"] == before
    assert running.reload()
    assert _ready(running)["profile"] != before


def test_a_faulty_profile_changes_nothing(running: Service) -> None:
    """The old profile goes on, readiness says that one was refused, and a mended one clears it."""
    asked = Client(running)
    before = asked.post("/v1/quotes", json=EXAMPLE_ORDER).data
    _write(running, TEXT + "\nnonsense = \n")
    assert not running.reload()
    assert asked.post("/v1/quotes", json=EXAMPLE_ORDER).data == before
    told = _ready(running)
    assert told["status"] == "ready"
    refused = told["profile_refused"]
    assert isinstance(refused, dict)
    assert refused["says"] == english(Message("profile-refused", faults=1))
    _write(running, TEXT)
    assert running.reload()
    assert "profile_refused" not in _ready(running)


def test_a_profile_that_is_gone_changes_nothing(running: Service) -> None:
    """Without its file the service goes on with what it read."""
    running.settings.workshop_path.unlink()
    assert not running.reload()
    assert Client(running).post("/v1/quotes", json=EXAMPLE_ORDER).status_code == 200


def test_an_old_link_still_honours_its_offer(running: Service) -> None:
    """A link signed before the prices rose opens to the total that it promised."""
    asked = Client(running)
    quote = asked.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    _write(running, DEARER)
    assert running.reload()
    again = asked.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    assert float(again["price"]["total"]) > float(quote["price"]["total"])
    opened = asked.get(f"/v1/quotes/{quote['token']}")
    assert opened.status_code == 200
    assert f'"{quote["price"]["total"]}"' in opened.get_data(as_text=True)


def test_counts_outlast_a_reload(running: Service) -> None:
    """What was counted before the profile changed is still there after it."""
    asked = Client(running)
    asked.get("/v1/choices")
    assert running.reload()
    asked.get("/v1/choices")
    line = 'ledgerstone_requests_total{route="/v1/choices",status="200"} 2.0'
    here = {"REMOTE_ADDR": "127.0.0.1"}
    assert line in asked.get("/metrics", environ_overrides=here).get_data(as_text=True)


def test_a_change_of_the_file_is_noticed_once_it_rests(
    running: Service, now_s: list[float]
) -> None:
    """The first look sees a change, the second that it has come to rest; then it is taken up."""
    _ready(running)
    before = _ready(running)["profile"]
    _write(running, DEARER)
    now_s[0] += 2.0
    assert _ready(running)["profile"] == before
    now_s[0] += 2.0
    assert _ready(running)["profile"] != before


def test_a_template_that_changed_is_loaded_like_the_profile(
    running: Service, now_s: list[float]
) -> None:
    """The maker's own letter, put beside the profile while it serves, is what the next reply is."""
    key = {"Authorization": f"Bearer {MAKER_KEY}"}

    def reply() -> str:
        answer = Client(running).post("/v1/replies", json={"order": EXAMPLE_ORDER}, headers=key)
        return str(answer.get_json()["text"])

    before = reply()
    template = running.settings.workshop_path.parent / "templates" / "reply.txt"
    template.parent.mkdir()
    template.write_text("In our own words.\n", encoding="utf-8")
    for _ in range(2):
        now_s[0] += 2.0
        _ready(running)
    assert reply() == "In our own words.\n" != before
    template.write_text("{{ nonsense", encoding="utf-8")
    for _ in range(2):
        now_s[0] += 2.0
        _ready(running)
    assert reply() == "In our own words.\n"
    assert "profile_refused" in _ready(running)


def test_a_file_is_checked_once_a_second_and_reported_once(tmp_path: Path) -> None:
    """Between looks nothing is read, and one change is reported once."""
    path = tmp_path / "file"
    path.write_text("one", encoding="utf-8")
    watch = Watch((path,))
    assert not watch.has_changed(0.0)
    path.write_text("longer", encoding="utf-8")
    assert [watch.has_changed(at) for at in (0.5, 1.0, 1.5, 2.0, 3.0)] == [
        False, False, False, True, False,
    ]  # fmt: skip
