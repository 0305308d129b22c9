"""The desk's drafts, on a real IMAP server: what is put there, and what is said when it is not."""

from pathlib import Path

from ledgerstone.api import Settings, create_app
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS
from support.imap_server import PASSWORD, ImapServer
from support.mailboxes import drafts, profile_for
from support.offered import MAKER

ANSWERS = {
    "to": "gemma@example.com",
    "subject": "Worktop",
    "message_id": "<w1@example.com>",
    "references": "<w1@example.com>",
}
ASK = {"order": EXAMPLE_ORDER, "customer": "Gemma", "answers": ANSWERS}


def test_a_reply_is_put_among_the_drafts(server: ImapServer, tmp_path: Path) -> None:
    """One draft, flagged so, in its thread, with a date and an identifier; nothing is sent."""
    settings = Settings(
        workshop_path=profile_for(server, tmp_path),
        maker_key=MAKER_KEY,
        signing_keys=SIGNING_KEYS,
        mailbox_password=PASSWORD,
    )
    client = create_app(settings).test_client()
    assert client.get("/v1/desk", headers=MAKER).get_json()["drafts"] is True
    answer = client.post("/v1/drafts", json=ASK, headers=MAKER)
    assert answer.status_code == 200, answer.text
    (draft,) = drafts(server)
    assert "\\Draft" in draft.letter.flags
    assert draft.mail["To"] == "Gemma <gemma@example.com>"
    assert draft.answers == "<w1@example.com>"
    assert draft.mail["Date"]
    assert draft.mail["Message-ID"]
    assert draft.mail["X-Unsent"] is None
    assert server.letters(server.sent) == []


def test_a_password_that_is_refused_is_reported(server: ImapServer, tmp_path: Path) -> None:
    """With 503, in words, and no draft is there."""
    settings = Settings(
        workshop_path=profile_for(server, tmp_path),
        maker_key=MAKER_KEY,
        signing_keys=SIGNING_KEYS,
        mailbox_password=f"not {PASSWORD}",
    )
    answer = create_app(settings).test_client().post("/v1/drafts", json=ASK, headers=MAKER)
    assert answer.status_code == 503
    assert "app password" in answer.get_json()["detail"]
    assert drafts(server) == []
