"""A message as it arrives: decoded, its HTML as text, what is no message, and hostile bytes."""

import time

import pytest

from ledgerstone.enquiry import read_enquiry
from ledgerstone.enquiry.text.html_text import text_of_html
from ledgerstone.enquiry.text.mail import read_mail
from ledgerstone.workshop import Workshop
from support.mails import ASKS, mailed
from support.reference import slowness


@pytest.mark.parametrize("charset", ["utf-8", "iso-8859-1", "windows-1252"])
@pytest.mark.parametrize("encoding", ["quoted-printable", "base64"])
def test_a_message_is_decoded(charset: str, encoding: str) -> None:
    """Characters come out as they were written, whatever carried them."""
    mail = mailed()
    mail.set_content("Größe 90 × 22 cm", charset=charset, cte=encoding)
    assert read_mail(mail.as_bytes()).text.strip() == "Größe 90 × 22 cm"


def test_a_body_alone_is_text() -> None:
    """What has no mail headers is the text itself, lines that look like headers and all."""
    assert read_mail("Name: Idris\nLength: 90cm\n\nThanks").text.startswith("Name: Idris")


def test_headers_are_read() -> None:
    """Sender, subject, identifier and the day of the Date header are given."""
    found = read_mail(mailed().as_bytes())
    assert (found.sender.name, found.sender.address) == ("Gemma Ridley", "gemma@example.com")
    assert (found.subject, found.message_id) == ("shelves", "<1@example.com>")
    assert str(found.written) == "2026-12-02"


def test_attachments_are_named_and_not_read() -> None:
    """A picture and a sheet are listed; no byte of them reaches the text."""
    mail = mailed()
    mail.add_attachment(b"900 x 220", "image", "png", filename="sketch.png")
    mail.add_attachment("1200 x 300", filename="sizes.txt")
    found = read_mail(mail.as_bytes())
    assert found.attachments == ("sketch.png", "sizes.txt")
    assert "1200" not in found.text


def test_html_becomes_lines_and_cells() -> None:
    """Blocks are lines, cells are apart by tabs, styles and scripts are left out."""
    page = (
        "<style>p {width: 600px}</style><p>Two&nbsp;tops</p><script>1</script>"
        "<table><tr><th>Piece<th>Length</tr><tr><td><p>Sink run</p><td>2860</tr></table>"
    )
    assert text_of_html(page).text.split("\n") == [
        "Two\xa0tops",
        "",
        "Piece\tLength\t",
        "Sink run\t2860\t",
        "",
        "",
    ]


def test_what_is_struck_out_is_marked() -> None:
    """A figure that was struck out stands in the text and is told apart."""
    found = text_of_html("<p>Length <s>2200</s> 2150 mm</p>")
    assert [found.text[a:b] for a, b in found.struck] == ["2200"]


def test_markup_is_never_in_the_text(workshop: Workshop) -> None:
    """No tag of a mail's HTML is in what is read of it."""
    mail = mailed()
    mail.add_alternative(f"<p><b>Hi</b> <img src=x onerror=alert(1)>{ASKS}</p>", subtype="html")
    assert "<" not in read_enquiry(mail.as_bytes(), workshop)["text"]


BOMBS = {
    "nested": "<div>" * 60_000 + "x",
    "formatting": "<b>" * 60_000 + "x",
    "comments": "<!--" * 60_000,
    "paragraphs": "<b><p>" * 40_000,
    "tables": "<table><tr><td>" * 20_000,
    "entities": "&lt;" * 60_000,
    "attributes": "<a " + "b=1 " * 60_000 + ">",
    "open tags": "<" * 200_000,
}


@pytest.mark.parametrize("name", BOMBS)
def test_html_bombs_are_defused(name: str) -> None:
    """Markup nested or repeated without end is read in a second."""
    began = time.process_time()
    text_of_html(BOMBS[name])
    took_s = time.process_time() - began
    assert took_s < 1.5 or took_s < 1.5 * slowness()


STRANGE = {
    "nothing": b"",
    "blanks": b" \n\t\n",
    "zeros": b"\0" * 1000,
    "random": bytes(range(256)) * 40,
    "broken base64": (
        b"Message-ID: <a@b.example>\nMIME-Version: 1.0\nContent-Type: text/plain\n"
        b"Content-Transfer-Encoding: base64\n\n!!!!=not base64"
    ),
    "unknown charset": (
        b"Message-ID: <a@b.example>\nMIME-Version: 1.0\nFrom: a@b.example\n"
        b"Content-Type: text/plain; charset=no-such\n\nA shelf 900 x 220 \xff"
    ),
    "broken headers": b"Message-ID: <<<\nMIME-Version: x\nFrom: =?utf-8?q?=zz?= <\nDate: -\n\nx",
    "no boundary": (
        b"Message-ID: <a@b.example>\nMIME-Version: 1.0\n"
        b'Content-Type: multipart/mixed; boundary="never"\n\ntext'
    ),
    "null address": b"Message-ID: <a@b.example>\nMIME-Version: 1.0\nFrom: \nReply-To: ,,;\n\nx",
}


@pytest.mark.parametrize("name", STRANGE)
def test_strange_bytes_are_no_enquiry(workshop: Workshop, name: str) -> None:
    """Whatever arrives is answered, and what asks for nothing is no enquiry."""
    answer = read_enquiry(STRANGE[name], workshop)
    assert not answer["is_enquiry"] or name == "unknown charset"


def test_a_hundred_attachments_are_listed(workshop: Workshop) -> None:
    """Many attachments are many names; the text is read as ever."""
    mail = mailed()
    for number in range(100):
        mail.add_attachment(b"x" * 1000, "image", "jpeg", filename=f"{number}.jpg")
    answer = read_enquiry(mail.as_bytes(), workshop)
    assert len(answer["attachments"]) == 100
    assert answer["order"]["slabs"][0]["thickness"] == "40 mm"


def test_an_attached_message_is_not_read(workshop: Workshop) -> None:
    """A mail inside a mail is an attachment, however deep."""
    inner = mailed("A worktop 3000 x 600 x 40, please.")
    for _ in range(30):
        outer = mailed("See the mail attached, please quote.")
        outer.add_attachment(inner)
        inner = outer
    answer = read_enquiry(inner.as_bytes(), workshop)
    assert "outline" not in answer["order"]["slabs"][0]
