"""The mailbox's command killed in the middle, on a real IMAP server: no draft lost, none twice."""

import multiprocessing
import signal
import subprocess
import time
from pathlib import Path
from threading import Timer

import pytest

from ledgerstone.wording import Message, english
from support.imap_server import ImapServer
from support.mailboxes import drafts, looked, post, profile_for, started
from support.relay import End, Relay, relay_to
from support.serving import TIMEOUT_S

# Processes that have the command imported when they begin: that takes longer than to run it.
READY = multiprocessing.get_context("forkserver")
READY.set_forkserver_preload(["ledgerstone.cli.orders", "ledgerstone.mailbox"])
A_DRAFT = b"Message-ID: <ledgerstone-"
# In the order in which a run comes to them, each later than the one before.
ENDS = (
    End("before", b" LOGIN "),
    End("after", b"BODYSTRUCTURE"),
    End("before", b" APPEND "),
    End("after", b" APPEND "),
    End("before", A_DRAFT),
    End("half", A_DRAFT),
    End("after", A_DRAFT),  # the draft is there, and the command was never told
    End("before", b" STORE "),
    End("after", b" STORE "),  # the keyword is set, and the file does not know
    End("before", b" LOGOUT"),
)


def _killed(profile: Path, relay: Relay, end: End) -> bool:
    """Run the command until it is killed; False if it ended before."""
    relay.ends_at(end)
    running = READY.Process(target=looked, args=(profile,))
    running.start()
    relay.victim = running.pid or 0
    running.join(TIMEOUT_S)
    return running.exitcode == -signal.SIGKILL


def _answers(server: ImapServer) -> list[str]:
    return sorted(draft.answers for draft in drafts(server))


def test_killed_at_one_place_after_another(server: ImapServer, tmp_path: Path) -> None:
    """Each run goes on where the one before was killed; in the end each enquiry has one draft."""
    numbers = (1, 2, 3)
    server.deliver(*(post(number).as_bytes() for number in numbers))
    with relay_to(server.port) as relay:
        profile = profile_for(server, tmp_path, relay.port)
        for end in ENDS:
            assert _killed(profile, relay, end), end
            found = _answers(server)
            assert len(found) == len(set(found)), end
        relay.ends_at(None)
        assert looked(profile)[0] == 0
        assert _answers(server) == [f"<{number}@example.com>" for number in numbers]
        assert looked(profile) == (0, [], "")
        profile.with_suffix(".mailbox.json").unlink()
        assert looked(profile) == (0, [], "")
    assert [sorted(one.flags - {"\\Recent"}) for one in server.letters()] == [
        ["LedgerstoneDone"]
    ] * 3


@pytest.mark.long
@pytest.mark.parametrize("when", ["before", "after"])
def test_killed_at_every_place(when: str, server: ImapServer, tmp_path: Path) -> None:
    """A run that is killed at any command it sends, then restarted, leaves one draft each."""
    with relay_to(server.port) as relay:
        profile = profile_for(server, tmp_path, relay.port)
        place, wanted, is_killed = 0, set[str](), True
        while is_killed:
            number = 2 * place + 1
            server.deliver(post(number).as_bytes(), post(number + 1).as_bytes())
            wanted |= {f"<{number}@example.com>", f"<{number + 1}@example.com>"}
            is_killed = _killed(profile, relay, End(when, b"", later=place))  # type: ignore[arg-type]  # one of the two
            relay.ends_at(None)
            assert looked(profile)[0] == 0
            assert _answers(server) == sorted(wanted), place
            place += 1
        assert place > 20


def _until(server: ImapServer, count: int) -> None:
    until = time.monotonic() + TIMEOUT_S
    while len(server.written()) < count:
        assert time.monotonic() < until, "no draft came"
        time.sleep(0.2)


def _said_until(running: subprocess.Popen[str], line: str) -> str:
    """Give what a command says up to a line; it is ended where the line never comes."""
    assert running.stdout is not None
    said = ""
    patience = Timer(TIMEOUT_S, running.kill)
    patience.start()
    while line not in said and (more := running.stdout.readline()):
        said += more
    patience.cancel()
    return said


def test_it_watches_and_comes_back(server: ImapServer, tmp_path: Path) -> None:
    """With --watch a message is answered when it comes, also after the connection broke."""
    with relay_to(server.port) as relay:
        running = started(profile_for(server, tmp_path, relay.port), "--watch")
        try:
            server.deliver(post(1).as_bytes())
            _until(server, 1)
            time.sleep(1)  # it is told of what comes while it waits
            server.deliver(post(2).as_bytes())
            _until(server, 2)
            said = _said_until(running, "2: a draft")  # the draft lies there before it is told
            relay.cut()
            server.deliver(post(3).as_bytes())
            _until(server, 3)
            said += _said_until(running, "3: a draft")
        finally:
            running.send_signal(signal.SIGTERM)
            _, errors = running.communicate(timeout=TIMEOUT_S)
    assert running.returncode == 0, errors
    assert [line for line in said.splitlines() if line[0].isdigit()] == [
        f"{number}: a draft" for number in (1, 2, 3)
    ]
    [again] = [line for line in said.splitlines() if line.endswith(" 2 s.")]
    assert english(Message("mailbox-again", why="", seconds=2)).strip() in again
