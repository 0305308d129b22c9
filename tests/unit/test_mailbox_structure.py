"""Parts of a message by its BODYSTRUCTURE: as RFC 3501 and RFC 2231 have them, and awkward ones."""

import email
import email.policy

from ledgerstone.mailbox.assembling import message_of
from ledgerstone.mailbox.structure import LeafPart, leaf_parts

TEXT = (b"TEXT", b"PLAIN", (b"CHARSET", b"US-ASCII"), None, None, b"7BIT", 3028, 92)
PAGE = (b"text", b"html", (b"charset", b"utf-8"), None, None, b"quoted-printable", 900, 20)


def test_a_message_of_one_part_has_section_1() -> None:
    """RFC 3501, 7.4.2: what has no parts is fetched as part 1."""
    assert leaf_parts(TEXT) == [LeafPart("1", "text", "plain", "US-ASCII", "7bit", 3028)]


def test_parts_of_parts_are_numbered_from_within() -> None:
    """RFC 3501, 6.4.5: the second part of the first part is 1.2."""
    picture = (b"image", b"gif", (b"name", b"a.gif"), None, None, b"base64", 77)
    found = leaf_parts([[[[TEXT, PAGE], b"alternative"], picture], b"mixed"])
    assert [(one.section, one.is_attached) for one in found] == [
        ("1.1", False),
        ("1.2", False),
        ("2", True),
    ]


def test_a_name_in_pieces_is_put_together() -> None:
    """RFC 2231, 4.1: a parameter's pieces are one value, and what is encoded is decoded."""
    pieces = (b"filename*0*", b"us-ascii'en'This%20is%20", b"filename*1*", b"%2A%2A%2Afun%2A%2A%2A")
    part = (*TEXT, None, (b"attachment", pieces), None, None)
    assert [one.name for one in leaf_parts(part)] == ["This is ***fun***"]


def test_an_attached_message_is_not_looked_into() -> None:
    """A message inside a message is a file beside the text, whatever its own parts are."""
    inner = (b"message", b"rfc822", None, None, None, b"7bit", 400, (), TEXT, 12)
    (found,) = leaf_parts(inner)
    assert found.is_attached
    assert found.shown == "message/rfc822"


def test_a_text_with_a_name_is_a_file() -> None:
    """A text file beside the text is named, and never read as what the customer wrote."""
    (found,) = leaf_parts((b"text", b"plain", (b"name", b"prices.txt"), None, None, b"7bit", 4, 1))
    assert (found.is_attached, found.name) == (True, "prices.txt")


def test_nothing_in_a_structure_is_too_odd() -> None:
    """Parts without members, with numbers for names or a thousand fellows do no harm."""
    assert leaf_parts(()) == [LeafPart("1", "", "", is_attached=True)]
    assert len(leaf_parts([[TEXT] * 1000, b"mixed"])) == 300
    assert leaf_parts((b"text", b"plain", 5, 5, 5, 5, b"x"))[0].section == "1"


def test_a_message_is_put_together_for_reading() -> None:
    """Text parts hold what was fetched, attachments their names alone; headers are kept."""
    header = (
        b"From: a@example.com\r\nContent-Type: multipart/mixed;\r\n boundary=x\r\n"
        b"Subject: A\r\n top\r\n\r\n"
    )
    text = LeafPart("1", "text", "plain", "utf-8", "quoted-printable", 9)
    file = LeafPart("2", "image", "jpeg", name="k\u00fcche.jpg", is_attached=True)
    made = message_of(header, [(text, b"1 =C3=97 2")], [file])
    mail = email.message_from_bytes(made, policy=email.policy.default)
    first, second = mail.iter_parts()
    assert mail["Subject"] == "A top"
    assert first.get_content().strip() == "1 × 2"
    assert second.get_filename() == "k\u00fcche.jpg"
    assert second.get_content() == b""
