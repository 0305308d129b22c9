"""What a mailbox's runs remember: days, UIDs and hashes, in a file that is whole or not there."""

from datetime import date, timedelta
from pathlib import Path

import pytest

from ledgerstone.errors import MailboxFault
from ledgerstone.mailbox.heads import draft_id, parse_headers
from ledgerstone.mailbox.state import KEPT_FOR, state_in

TODAY = date(2026, 11, 25)
WEEK = timedelta(days=7)


def test_the_first_run_looks_back_seven_days(tmp_path: Path) -> None:
    """Later ones look back seven days from the last run that came to its end."""
    with state_in(tmp_path / "state.json") as state:
        assert state.since(TODAY) == TODAY - WEEK
        state.note("a", 7, TODAY)
        assert state.since(TODAY + 9 * WEEK) == TODAY + 8 * WEEK
        state.finish(TODAY)
    with state_in(tmp_path / "state.json") as state:
        assert state.since(TODAY + 9 * WEEK) == TODAY - WEEK
        assert state.known_uids() == {7}


def test_uids_hold_for_one_uidvalidity(tmp_path: Path) -> None:
    """RFC 3501, 2.3.1.1: with another UIDVALIDITY the UIDs are void, and the keys still hold."""
    with state_in(tmp_path / "state.json") as state:
        assert not state.open_folder(1)
        state.note("a", 7, TODAY)
        assert state.open_folder(1)
        assert not state.open_folder(2)
        assert 7 not in state.known_uids()
        assert "a" in state.done


def test_what_is_long_past_is_forgotten(tmp_path: Path) -> None:
    """The file does not grow for ever."""
    with state_in(tmp_path / "state.json") as state:
        state.note("a", 7, TODAY)
        state.finish(TODAY + KEPT_FOR)
        assert "a" in state.done
        state.finish(TODAY + KEPT_FOR + timedelta(days=1))
        assert state.done == {}


@pytest.mark.parametrize("text", ["", "{", "[]", '{"version": 9}', '{"version": 1, "done": 3}'])
def test_another_file_is_left_alone(text: str, tmp_path: Path) -> None:
    """A file that is not ours is named and not written over."""
    path = tmp_path / "state.json"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(MailboxFault) as caught, state_in(path):
        pass
    assert caught.value.message.values["file"] == "state.json"
    assert path.read_text(encoding="utf-8") == text


def test_a_draft_has_one_name() -> None:
    """The same message gives the same Message-ID on any day; another gives another."""
    raw = b"From: a@example.com\r\nMessage-ID: <1@example.com>\r\nSubject: x\r\n\r\n"
    other = raw.replace(b"<1@", b"<2@")
    bare = raw.replace(b"Message-ID: <1@example.com>\r\n", b"")
    names = [draft_id(parse_headers(one), "example.org") for one in (raw, raw, other, bare, bare)]
    assert names[0] == names[1]
    assert names[3] == names[4]
    assert len(set(names)) == 3


def test_a_thread_is_what_a_message_refers_to() -> None:
    """References and In-Reply-To are read, the message itself left out, the last ten kept."""
    before = " ".join(f"<{n}@example.com>" for n in range(30))
    raw = (
        f"Message-ID: <me@example.com>\r\nReferences: {before} <me@example.com>\r\n"
        "In-Reply-To: <last@example.com>\r\n\r\n"
    ).encode()
    head = parse_headers(raw)
    assert len(head.thread) == 10
    assert head.thread[-1] == "<last@example.com>"
    assert head.message_id == "<me@example.com>"
