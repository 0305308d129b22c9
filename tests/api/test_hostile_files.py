"""Hostile files in a workshop's folder: told of in plain words, in bounded time, never obeyed."""

import time
from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient

from api.hostile_files_table import CALENDARS, KINDS, PROFILE, PROFILES, TEMPLATES, Calendar, rows
from ledgerstone.api import Settings, create_app
from ledgerstone.calendar_file import READ_S
from ledgerstone.child_process import BY_THE_CLOCK
from ledgerstone.errors import ProfileError
from ledgerstone.wording import english
from support.asking import NEVER_SAID, sentences
from support.bad_input_table import ROWS
from support.demonstration import MAKER_KEY, SIGNING_KEYS

TESTS = Path(__file__).parent
MAX_S = 20.0  # of processor time: the largest calendar that is read takes a third of it


def _settings(folder: Path, **more: Any) -> Settings:
    profile = folder / "workshop.toml"
    if not profile.exists():
        profile.write_bytes(PROFILE)
    return Settings(workshop_path=profile, maker_key=MAKER_KEY, signing_keys=SIGNING_KEYS, **more)


@pytest.mark.parametrize("file", CALENDARS, ids=lambda file: file.name)
def test_a_hostile_calendar_is_read_or_reported(
    file: Calendar, tmp_path: Path, example_order: dict[str, Any]
) -> None:
    """An order is answered beside it; a day that rests on no calendar is told to be a guess."""
    path = tmp_path / "bookings.ics"
    path.write_bytes(file.content)
    client = create_app(_settings(tmp_path, calendar_path=path)).test_client()
    began_s = time.process_time()
    ready = _read(client)
    assert ready["status"] == ("read" if file.read else "not-read")
    wish = {"Prefer": "return=minimal"}
    answer = client.post("/v1/quotes", json=example_order, headers=wish)
    assert time.process_time() - began_s < MAX_S
    assert answer.status_code in (200, 422)
    said = [*sentences(answer.get_json()), ready.get("says", "")]
    assert [text for text in said if NEVER_SAID.search(text)] == []
    assert file.read or "guess" in answer.text
    assert "script" not in answer.text


def _read(client: FlaskClient) -> dict[str, Any]:
    """What readiness tells of a calendar once its reading has ended, however it did."""
    deadline_s = time.monotonic() + (1 + BY_THE_CLOCK) * READ_S
    while "is being read" in (told := client.get("/v1/health/ready").get_json()["calendar"]).get(
        "says", ""
    ):
        assert time.monotonic() < deadline_s
        time.sleep(0.05)
    return dict(told)


@pytest.mark.parametrize("content", TEMPLATES.values(), ids=TEMPLATES.keys())
def test_a_hostile_template_is_refused_at_the_start(content: bytes, tmp_path: Path) -> None:
    """Nothing is served with it, and the fault names the file."""
    (tmp_path / "templates").mkdir()
    (tmp_path / "templates/reply.txt").write_bytes(content)
    _refused(tmp_path, "templates/reply.txt")


@pytest.mark.parametrize("content", PROFILES.values(), ids=PROFILES.keys())
def test_a_hostile_profile_is_refused_at_the_start(content: bytes, tmp_path: Path) -> None:
    """Nothing is served with it, and its faults are reported in plain words."""
    (tmp_path / "workshop.toml").write_bytes(content)
    _refused(tmp_path, "")


def _refused(folder: Path, key: str) -> None:
    began_s = time.process_time()
    with pytest.raises(ProfileError) as refused:
        create_app(_settings(folder))
    assert time.process_time() - began_s < MAX_S
    faults = refused.value.faults
    assert faults
    assert all(fault.key.startswith(key) for fault in faults)
    said = [english(fault.message) for fault in faults]
    assert all(len(says) < 400 for says in said)
    assert not [says for says in said if NEVER_SAID.search(says)]


@pytest.mark.parametrize("number", range(1, 36))
def test_each_of_the_35_kinds_is_tried(number: int) -> None:
    """Every kind of the field notes' list has its rows, or its own test."""
    known = {*rows(), *(bad.name for bad in ROWS)}
    for name in KINDS[number]:
        if "::" in name:
            file, _, test = name.partition("::")
            assert f"def {test}(" in (TESTS / file).read_text(encoding="utf-8"), name
        else:
            assert name in known, name
