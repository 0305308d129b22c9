"""Drafts in the maker's own mailbox, on a real IMAP server: what gets one, and what does not."""

import ssl
import tempfile
from datetime import datetime, timedelta
from email.utils import format_datetime
from pathlib import Path

import pytest

from ledgerstone.file_faults import file_fault
from ledgerstone.wording import Message, english
from support.imap_server import PASSWORD, USER, ImapServer, imap_server
from support.mailboxes import ASKS, ENVIRONMENT, Draft, drafts, looked, post, profile_for
from support.relay import relay_to

NOW = datetime.now().astimezone()


@pytest.fixture
def profile(server: ImapServer, tmp_path: Path) -> Path:
    """A profile whose mailbox is on it."""
    return profile_for(server, tmp_path)


def _only(server: ImapServer) -> Draft:
    (draft,) = drafts(server)
    return draft


def test_an_enquiry_gets_a_draft_in_its_thread(server: ImapServer, profile: Path) -> None:
    """The draft is flagged as one, is to the customer, answers the message and has the picture."""
    server.deliver(post(1).as_bytes())
    assert looked(profile) == (0, ["1: a draft"], "")
    draft = _only(server)
    assert "\\Draft" in draft.letter.flags
    assert draft.answers == draft.mail["References"] == "<1@example.com>"
    assert draft.mail["To"] == "Gemma Ridley <gemma@example.com>"
    assert draft.mail["Subject"] == "Re: Worktop 1"
    assert draft.mail["Date"]
    assert draft.mail["X-Unsent"] is None
    assert "Estimate" in draft.text
    assert [part.get_content_type() for part in draft.mail.walk()].count("image/png") == 1


def test_nothing_is_marked_as_read_deleted_or_sent(server: ImapServer, profile: Path) -> None:
    """The message keeps its flags but for our keyword, and the folder of what was sent is empty."""
    server.deliver(post(1).as_bytes())
    looked(profile)
    (message,) = server.letters()
    assert {flag for flag in message.flags if flag != "\\Recent"} == {"LedgerstoneDone"}
    assert server.letters(server.sent) == []


def test_a_line_says_no_name_and_no_address(server: ImapServer, profile: Path) -> None:
    """What is printed, and what is kept in the state's file, holds nothing of the message."""
    server.deliver(post(1).as_bytes(), post(2, "Thanks, it's lovely. Gemma\n").as_bytes())
    _, lines, _ = looked(profile)
    kept = profile.with_suffix(".mailbox.json").read_text(encoding="utf-8")
    assert lines == ["1: a draft", "2: no enquiry"]
    for word in ("Gemma", "Ridley", "example.com", "Worktop"):
        assert word not in "\n".join((*lines, kept))


NO_DRAFT = {
    "our own": ({"From": f"Tarnside <{USER.upper()}>"}, "own"),
    "our public address": ({"From": "hello@tarnside.example.com"}, "own"),
    "a list": ({"List_Id": "<makers.example.org>"}, "list"),
    "a newsletter": ({"List_Unsubscribe": "<mailto:a@example.org>"}, "list"),
    "an answer from a machine": ({"Auto_Submitted": "auto-replied"}, "automatic"),
    "a notification": ({"Auto_Submitted": "auto-generated (rejected)"}, "automatic"),
    "bulk": ({"Precedence": "bulk"}, "automatic"),
}


@pytest.mark.parametrize(("headers", "outcome"), NO_DRAFT.values(), ids=NO_DRAFT.keys())
def test_no_draft_answers(
    headers: dict[str, str], outcome: str, server: ImapServer, profile: Path
) -> None:
    """Our own mail, a list's and a machine's get none, whatever sizes stand in them."""
    server.deliver(post(1, **headers).as_bytes())
    assert looked(profile)[1] == [f"1: {english(Message('mailbox-outcome', what=outcome))}"]
    assert drafts(server) == []


def test_a_form_on_our_own_site_is_the_customers(server: ImapServer, profile: Path) -> None:
    """A message from our own address that names another to answer to gets a draft to that one."""
    server.deliver(post(1, From=USER, Reply_To="gemma@example.com").as_bytes())
    assert looked(profile)[1] == ["1: a draft"]
    assert "gemma@example.com" in _only(server).mail["To"]


@pytest.mark.parametrize("flags", ["\\Answered", "\\Deleted", "LedgerstoneDone", "\\Draft"])
def test_what_is_done_is_left_alone(flags: str, server: ImapServer, profile: Path) -> None:
    """A message that is answered, deleted, processed before or a draft is skipped."""
    server.deliver(post(1).as_bytes(), flags=flags)
    assert looked(profile) == (0, [], "")
    assert drafts(server) == []


@pytest.mark.parametrize("folder", ["Drafts", "Sent"])
def test_what_was_answered_by_hand_is_left_alone(
    folder: str, server: ImapServer, profile: Path
) -> None:
    """An answer among the drafts, or among what was sent, is enough."""
    server.deliver(post(1).as_bytes())
    answer = post(9, "Dear Gemma, it is on its way.", From=USER, In_Reply_To="<1@example.com>")
    server.deliver(answer.as_bytes(), folder=folder)
    assert looked(profile)[1] == ["1: answered before"]
    assert len(drafts(server)) == (1 if folder == "Drafts" else 0)


def test_the_first_run_looks_back_seven_days(server: ImapServer, profile: Path) -> None:
    """Mail from before the first run is untouched, and so is older mail that was moved in since."""
    for number, days in ((1, 8), (2, 6)):
        server.deliver(post(number).as_bytes(), came=NOW - timedelta(days=days))
    moved = post(3, Date=format_datetime(NOW - timedelta(days=40)))
    server.deliver(moved.as_bytes())
    earlier = english(Message("mailbox-outcome", what="earlier"))
    assert looked(profile)[1] == ["2: a draft", f"3: {earlier}"]


@pytest.mark.parametrize("is_kept", [True, False], ids=["the state kept", "the state lost"])
def test_a_second_run_adds_nothing(is_kept: bool, server: ImapServer, profile: Path) -> None:
    """What is done is known by the keyword, so that a lost state doubles no draft."""
    server.deliver(post(1).as_bytes(), post(2, "Thanks, it's lovely. Gemma\n").as_bytes())
    looked(profile)
    if not is_kept:
        profile.with_suffix(".mailbox.json").unlink()
    assert looked(profile) == (0, [], "")
    assert len(drafts(server)) == 1


def _without_keywords(text: bytes) -> bytes:
    return text.replace(b" \\*)]", b")]")


def test_where_no_keyword_is_kept_a_file_knows(server: ImapServer, tmp_path: Path) -> None:
    """On a server without keywords none is set, and no message is processed twice."""
    server.deliver(post(1).as_bytes(), post(2, "Thanks, it's lovely. Gemma\n").as_bytes())
    with relay_to(server.port) as relay:
        relay.rewritten = _without_keywords
        profile = profile_for(server, tmp_path, relay.port)
        assert looked(profile)[1] == ["1: a draft", "2: no enquiry"]
        assert not any(b"STORE" in one for one in relay.sent)
        assert looked(profile)[1] == []
        server.renew_uids()
        assert looked(profile)[1] == ["100: done before", "101: done before"]
        assert looked(profile)[1] == []
    assert len(drafts(server)) == 1
    assert [sorted(one.flags - {"\\Recent"}) for one in server.letters()] == [[], []]


def test_attachments_stay_where_they_are(server: ImapServer, tmp_path: Path) -> None:
    """A mail of 12 MB of photographs costs a few kilobytes, and what is attached is named."""
    mail = post(1, ASKS + "The photo shows the old one.\n")
    mail.add_attachment(b"\xff\xd8" + bytes(9_000_000), "image", "jpeg", filename="kitchen.jpg")
    server.deliver(mail.as_bytes())
    with relay_to(server.port) as relay:
        assert looked(profile_for(server, tmp_path, relay.port))[1] == ["1: a draft"]
        assert relay.got_bytes < 20_000
        assert not any(b"BODY.PEEK[]" in one or b"BODY[" in one for one in relay.sent)
    assert "Estimate" in _only(server).text


def test_every_kind_of_body_is_read(server: ImapServer, profile: Path) -> None:
    """HTML alone, text and HTML, and quoted-printable come to the same draft as plain text."""
    page = f"<html><body><p>{ASKS}</p></body></html>"
    both, alone = post(1), post(2)
    both.add_alternative(page, subtype="html")
    alone.set_content(page, subtype="html", cte="base64")
    quoted = post(3)
    quoted.set_content(ASKS.replace("by", "×"), cte="quoted-printable")
    server.deliver(*(one.as_bytes() for one in (both, alone, quoted)))
    assert looked(profile)[1] == [f"{n}: a draft" for n in (1, 2, 3)]
    assert ["1830 mm × 620 mm, 40 mm thick" in one.text for one in drafts(server)] == [True] * 3


def test_a_second_mail_in_a_thread_gets_a_new_draft(server: ImapServer, profile: Path) -> None:
    """The new draft says which letter's place it takes, and the old one is left to the maker."""
    server.deliver(post(1).as_bytes())
    looked(profile)
    again = ASKS.replace("620", "640")
    server.deliver(
        post(2, again, In_Reply_To="<1@example.com>", Subject="Re: Worktop 1").as_bytes()
    )
    first = _only(server)
    assert looked(profile)[1] == [f"2: {_in_place_of(first)}"]
    _, second = drafts(server)
    assert second.mail["X-Ledgerstone-Replaces"] == first.mail["Message-ID"]
    replaced = Message("letter-replaces", day=first.mail["Date"].datetime.date())
    assert english(replaced) in " ".join(second.text.split())
    assert "1830 mm × 640 mm" in second.text


def test_one_run_at_a_time(server: ImapServer, profile: Path) -> None:
    """A run that finds another at work says so and does nothing."""
    from ledgerstone.mailbox.state import state_in  # noqa: PLC0415 - this test's alone

    server.deliver(post(1).as_bytes())
    with state_in(profile.with_suffix(".mailbox.json")):
        status, lines, errors = looked(profile)
    assert (status, lines) == (2, [])
    assert english(Message("mailbox-taken")) in errors
    assert looked(profile)[1] == ["1: a draft"]


def test_a_password_that_is_refused_names_app_passwords(profile: Path) -> None:
    """What to do is stated, and the password is not."""
    environment = {**ENVIRONMENT, "LEDGERSTONE_MAILBOX_PASSWORD": "not the one"}
    status, lines, errors = looked(profile, environment=environment)
    assert (status, lines) == (2, [])
    assert "app password" in errors
    assert "not the one" not in errors


def test_a_mailbox_that_is_not_set_up_says_what_is_missing(profile: Path) -> None:
    """No table in the profile, and no password in the environment, are each named."""
    keys = {name: value for name, value in ENVIRONMENT.items() if "MAILBOX" not in name}
    assert "LEDGERSTONE_MAILBOX_PASSWORD" in looked(profile, environment=keys)[2]
    text = profile.read_text(encoding="utf-8")
    profile.write_text(text.rpartition("[mailbox]\n")[0], encoding="utf-8")
    assert "[mailbox]" in looked(profile)[2]


def test_folders_are_found_by_their_use_or_named(tmp_path: Path) -> None:
    """SPECIAL-USE finds a folder of any name; one that the profile names is used instead."""
    with (
        tempfile.TemporaryDirectory(prefix="imap") as folder,
        imap_server(Path(folder), "Entwuerfe", "Gesendet") as server,
    ):
        server.deliver(post(1).as_bytes())
        assert looked(profile_for(server, tmp_path))[1] == ["1: a draft"]
        assert _only(server).answers == "<1@example.com>"
        missing = profile_for(server, tmp_path, drafts="Elsewhere")
        server.deliver(post(2).as_bytes())
        status, _, errors = looked(missing)
        assert status == 2
        assert "[mailbox]" in errors
        assert "drafts" in errors
        with server.signed_in() as client:
            client.create("Elsewhere")
        assert looked(missing)[1] == ["2: a draft"]
        assert len(server.letters("Elsewhere")) == 1


CERTIFICATE = (
    "openssl req -x509 -newkey rsa:2048 -nodes -days 2 -subj /CN=127.0.0.1"
    " -addext subjectAltName=IP:127.0.0.1 -keyout privkey.pem -out fullchain.pem"
)


def test_the_server_is_held_to_its_certificate(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """With TLS a server without a trusted certificate gets no password."""
    with (
        tempfile.TemporaryDirectory(prefix="imap") as folder,
        imap_server(Path(folder), certificate=CERTIFICATE.split()) as server,
    ):
        server.deliver(post(1).as_bytes())
        profile = profile_for(server, tmp_path, server.tls_port, security="tls")
        status, _, errors = looked(profile)
        assert status == 2
        assert english(file_fault(ssl.SSLCertVerificationError())) in errors
        assert PASSWORD not in errors
        monkeypatch.setenv("SSL_CERT_FILE", str(Path(folder) / "fullchain.pem"))
        assert looked(profile)[1] == ["1: a draft"]
        server.deliver(post(2).as_bytes())
        assert looked(profile_for(server, tmp_path, security="starttls"))[1] == ["2: a draft"]


def _in_place_of(draft: Draft) -> str:
    """What is said of a draft that takes the place of an earlier letter."""
    day = draft.mail["Date"].datetime.date().isoformat()
    kind = Message("mailbox-outcome", what="draft")
    return english(Message("mailbox-in-place-of-day", draft=kind, day=day))
