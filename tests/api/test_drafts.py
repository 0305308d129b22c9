"""Replies as drafts that mail programs open: RFC 5322, pictures inside, nobody's address."""

import email
import email.policy
import io
from email.message import EmailMessage
from typing import TYPE_CHECKING, Any

import pytest
from PIL import Image

from api import mail_rules
from ledgerstone.wording import Message, english
from support.asking import changed
from support.demonstration import EXAMPLE_ORDER
from support.offered import MAKER, detailed_order, slabs_order

if TYPE_CHECKING:
    from flask.testing import FlaskClient

EML = {**MAKER, "Accept": "message/rfc822"}


def _reply(client: "FlaskClient", **asked: Any) -> dict[str, str]:
    answer = client.post("/v1/replies", json=asked, headers=MAKER)
    assert answer.status_code == 200, answer.text
    made: dict[str, str] = answer.get_json()
    return made


def _draft(client: "FlaskClient", **asked: Any) -> EmailMessage:
    answer = client.post("/v1/replies", json=asked, headers=EML)
    assert answer.status_code == 200, answer.text
    assert answer.mimetype == "message/rfc822"
    assert max(map(len, answer.data.split(b"\r\n"))) <= 998
    assert b"\n" not in answer.data.replace(b"\r\n", b"")
    made = email.message_from_bytes(answer.data, policy=email.policy.default)
    assert isinstance(made, EmailMessage)
    assert not made.defects
    return made


@pytest.mark.parametrize("count", [1, 2])
def test_a_draft_opens_in_a_mail_program(client: "FlaskClient", count: int) -> None:
    """Plain text first, then HTML with each picture inside as a small PNG, from us to nobody."""
    mail = _draft(client, order=slabs_order(count))
    kinds = [part.get_content_type() for part in mail.walk()]
    assert kinds == ["multipart/alternative", "text/plain", "multipart/related", "text/html",
                     *["image/png"] * count]  # fmt: skip
    assert mail["From"].addresses[0].addr_spec == "hello@tarnside.example.com"
    assert mail["X-Unsent"] == "1"
    assert [name for name in ("To", "Cc", "Bcc", "Reply-To") if mail[name]] == []
    html = mail.get_body(("html",))
    assert html is not None
    assert mail_rules.faults(html.get_content(), ("cid:",)) == []
    for part in mail.walk():
        if part.get_content_type() == "image/png":
            name = part["Content-ID"].strip("<>")
            assert f'src="cid:{name}"' in html.get_content()
            assert len(part.get_content()) < 150_000
            assert Image.open(io.BytesIO(part.get_content())).width == 1120


def test_a_draft_says_what_the_reply_says(client: "FlaskClient") -> None:
    """The draft's subject and text are those of the JSON answer, and are the same twice."""
    made = _reply(client, order=EXAMPLE_ORDER)
    mail = _draft(client, order=EXAMPLE_ORDER)
    body = mail.get_body(("plain",))
    assert body is not None
    assert mail["Subject"] == made["subject"]
    assert body.get_content().split() == made["text"].split()
    one, two = (client.post("/v1/replies", json={"order": EXAMPLE_ORDER}, headers=EML).data
                for _ in range(2))  # fmt: skip
    assert one == two


def test_a_draft_without_a_link_has_the_order_beside_it(client: "FlaskClient") -> None:
    """An order too long for a link goes along as a file that the service reads again."""
    mail = _draft(client, order=detailed_order(3))
    [file] = [part for part in mail.walk() if part.get_filename() == "order.json"]
    assert file.get_content_type() == "application/json"
    again = client.post("/v1/quotes", data=file.get_content(), content_type="application/json")
    assert again.status_code == 200
    body = mail.get_body(("plain",))
    assert body is not None
    assert english(Message("letter-attached")) in " ".join(body.get_content().split())


@pytest.mark.parametrize("label", ["=?utf-8?q?Bcc=3A_x?=", "a, b; c: <d@e.example>", "½ 台 Ünder"])
def test_a_subject_is_one_header(client: "FlaskClient", label: str) -> None:
    """A label that looks like a header, or needs encoding, comes back whole in the subject."""
    mail = _draft(client, order=changed(("/slabs/0/label", label)))
    assert set(mail.keys()) == {"From", "Subject", "X-Unsent", "MIME-Version", "Content-Type"}
    if "=?" not in label:
        assert label in mail["Subject"]
