"""The maker's commands for a message: what it asks, and the draft that answers it."""

import email
import email.policy
import json
from pathlib import Path

from ledgerstone.wording import Message, english
from support.commands import ran
from support.mails import mailed

TOP = (
    "Could you price a worktop for our utility room, 1.83 m by 620 mm? One round basin, cut-out 380"
    " across, 600 from the left. We'd collect.\n\nThanks\nGemma Ridley\n"
)


def _saved(folder: Path, text: str = TOP) -> Path:
    path = folder / "mail.eml"
    path.write_bytes(mailed(text).as_bytes())
    return path


def test_a_message_is_told_to_a_person(tmp_path: Path) -> None:
    """Each value stands beside the words it came from; what is missing and assumed is marked."""
    status, said, _ = ran("enquiry", _saved(tmp_path))
    assert status == 0
    assert "/slabs/0/outline/length" in said
    assert "1830 mm" in said
    assert "“1.83 m”" in said
    assert "! /slabs/0/thickness" in said
    assert "~ /slabs/0/thickness" in said


def test_what_was_not_read_is_told_in_its_place(tmp_path: Path) -> None:
    """What no rule knows, and what is none of the slab's, stand with the words around them."""
    said = ran("enquiry", _saved(tmp_path, f"The frint: 733 mm. Our door is 762 wide.\n{TOP}"))[1]
    lines = [line for line in said.splitlines() if "“733 mm”" in line or "“762”" in line]
    assert [line.strip()[0] for line in lines] == ["*", "-"]
    assert "The frint" in lines[0]
    assert "something else" in lines[1]


def test_a_message_is_told_to_a_program(tmp_path: Path) -> None:
    """With --json it is what the service answers."""
    read = json.loads(ran("enquiry", _saved(tmp_path), "--json")[1])
    assert read["customer"]["reply_to"] == "gemma@example.com"
    assert read["order"]["slabs"][0]["cutouts"][0]["diameter"] == "380 mm"


def test_a_message_that_asks_for_nothing_says_so(tmp_path: Path) -> None:
    """No draft is written for thanks; the command's status tells a script."""
    path = _saved(tmp_path, "Just to say the hearth is in and it's beautiful. Susan\n")
    assert ran("answer", path)[0] == 1
    assert list(tmp_path.iterdir()) == [path]


def test_an_answer_is_a_draft_in_the_thread(tmp_path: Path) -> None:
    """The draft answers the message: to whom, Re:, In-Reply-To and References, never sent."""
    draft = tmp_path / "draft.eml"
    assert ran("answer", _saved(tmp_path), "--draft", draft)[0] == 0
    mail = email.message_from_bytes(draft.read_bytes(), policy=email.policy.default)
    assert mail["To"] == "Gemma Ridley <gemma@example.com>"
    assert mail["Subject"] == "Re: shelves"
    assert mail["In-Reply-To"] == mail["References"] == "<1@example.com>"
    assert mail["X-Unsent"] == "1"
    text = mail.get_body(("plain",)).get_content()  # type: ignore[union-attr]
    assert english(Message("letter-took-lead")) in text
    assert "Estimate" in text


def test_what_cannot_be_priced_is_asked(tmp_path: Path) -> None:
    """Where the outline's sizes are unsaid the draft asks, and prices nothing."""
    path = _saved(tmp_path, "How much would a hearth cost, roughly? We have not measured. Gemma\n")
    draft = tmp_path / "draft.eml"
    assert ran("answer", path, "--draft", draft)[0] == 0
    mail = email.message_from_bytes(draft.read_bytes(), policy=email.policy.default)
    text = mail.get_body(("plain",)).get_content()  # type: ignore[union-attr]
    assert english(Message("enquiry-length", slab="the hearth")) in text
    assert "£" not in text
