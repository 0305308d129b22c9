"""What is dropped on the desk and what leaves it: mails, letters, papers, the list of offers."""

import email
import email.policy
import json
import re
import tempfile
from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Download, Page, expect

from browser.conftest import DESK, Look, Maker, Served, at_desk
from browser.gestures import eventually
from support.day import TODAY
from support.desk_messages import POTTING
from support.imap_server import PASSWORD, ImapServer, imap_server
from support.mailboxes import drafts, profile_for
from support.page_texts import desk_text, page_text

pytestmark = pytest.mark.browser
MAIL = (
    "From: Jo Marsh <jo@marsh.example>\r\nSubject: top\r\nMessage-ID: <m1@marsh.example>\r\n"
    "Content-Type: text/plain; charset=utf-8\r\n\r\n"
    "I would like a concrete worktop 1600 mm long, 600 mm deep and 40 mm thick,\r\n"
    "with a round basin of 400 mm in the middle.\r\n"
)
DROP = """([place, name, text]) => {
  const dataTransfer = new DataTransfer();
  dataTransfer.items.add(new File([text], name, {type: "message/rfc822"}));
  for (const kind of ["dragenter", "dragover", "drop"])
    document.querySelector(place).dispatchEvent(
      new DragEvent(kind, {dataTransfer, bubbles: true, cancelable: true}));
}"""
COPIED = """async (type) => {
  const [item] = await navigator.clipboard.read();
  return item.types.includes(type) ? (await item.getType(type)).text() : null;
}"""


def drop(page: Page, place: str, text: str) -> None:
    """Drop a mail's file on a place."""
    page.evaluate(DROP, [place, "mail.eml", text])


def written(maker: Maker) -> None:
    """Have the reply to the order as it stands."""
    maker.settle()
    maker.press(desk_text("reply.write"))
    maker.page.locator("#letter .subject").wait_for()


def taken(page: Page, name: str) -> Download:
    """Press the button of this name, and take the file that comes."""
    with page.expect_download() as coming:
        page.get_by_role("button", name=name, exact=True).click()
    return coming.value


def test_a_dropped_mail_becomes_a_draft_that_opens_the_offer_again(maker: Maker) -> None:
    """By the link in the draft, and by the offer's name in a mail that holds nothing else of it."""
    page = maker.page
    drop(page, "#enquiry", MAIL)
    page.locator("#marked .phrase").first.wait_for()
    expect(page.locator("#reading-says")).to_contain_text("Jo Marsh")
    written(maker)
    draft = taken(page, desk_text("reply.draft"))
    assert draft.suggested_filename == "reply.eml"
    mail = draft.path().read_bytes()
    read = email.message_from_bytes(mail, policy=email.policy.default)
    assert read["To"] == "Jo Marsh <jo@marsh.example>"
    assert read["In-Reply-To"] == "<m1@marsh.example>"
    reference = re.search(r"[0-9A-Z]{4}-[0-9A-Z]{4}", page.locator("#letter .subject").inner_text())
    assert reference is not None
    page.get_by_role("link", name="Offers").click()
    opened = page.locator("#opened .offered")
    for each in (mail.decode(), f"Subject: Re: {reference[0].lower()}\r\n\r\nYes, gladly.\r\n"):
        drop(page, "#view-offers", each)
        expect(opened).to_contain_text(reference[0])
        maker.press(page_text("quote.close"))
    drop(page, "#view-offers", f"see https://prices.example/#quote={'x' * 30}.{'z' * 43}")
    expect(page.locator("#offers-fault")).to_contain_text("one of ours")
    drop(page, "#view-offers", MAIL)
    expect(page.locator("#offers-fault")).to_be_visible()
    expect(opened).to_be_hidden()
    maker.press(f"Open {reference[0]}")
    paper = taken(page, "True-size paper")
    assert paper.suggested_filename == f"{reference[0]}-true-size-1.pdf"
    assert paper.path().read_bytes().startswith(b"%PDF")


def test_the_letter_is_copied_formatted_or_as_text_whole_or_short(maker: Maker) -> None:
    """What is shown, the short form at most six words of ten; papers, and later a reminder.

    Without a mailbox there is no button for drafts.
    """
    page = maker.page
    maker.paste(POTTING)
    written(maker)
    letter = page.locator("#letter")
    whole = letter.inner_text().split()
    maker.press("Copy it")
    html, text = (page.evaluate(COPIED, f"text/{kind}") for kind in ("html", "plain"))
    assert "<table" in html
    assert "Hello Tamsin" in text
    page.get_by_text(desk_text("reply.short")).click()
    eventually(page, lambda: len(letter.inner_text().split()) <= 0.6 * len(whole))
    maker.press(desk_text("reply.copy-text"))
    assert page.evaluate(COPIED, "text/html") is None
    short = page.evaluate(COPIED, "text/plain")
    assert len(short.split()) < 0.7 * len(text.split())
    assert all(word in letter.inner_text().split() for word in ("Hello", "Tamsin,"))
    for name, ending in (("Care sheet", "care.pdf"), ("Calendar entries", "calendar.ics")):
        assert taken(page, name).suggested_filename.endswith(ending)
    expect(page.get_by_role("button", name=desk_text("reply.file"))).to_have_count(0)
    reminded(maker)


def reminded(maker: Maker) -> None:
    """A reminder is one press in the row of an offer that was sent: two sentences, copied."""
    page = maker.page
    maker.press(desk_text("reply.sent"))
    page.get_by_role("link", name="Offers").click()
    maker.press("Reminder")
    said = page.locator(".letter-text")
    greeting, asks, link, _ = said.inner_text().strip().split("\n\n")
    assert greeting == "Hello Tamsin,"
    assert "\n" not in asks
    assert len(re.findall(r"[.?](?: |$)", asks)) == 2
    assert "#quote=" in link
    assert page.evaluate(COPIED, "text/plain") == said.text_content()
    href = page.get_by_role("link", name=desk_text("offers.mail")).get_attribute("href")
    assert href is not None
    assert href.startswith("mailto:?subject=")


def offers(today: date) -> list[dict[str, Any]]:
    """Fifty-three offers as the desk keeps them; of the first three each waits for its reason."""
    week, last = today - timedelta(days=9), today + timedelta(days=2)
    far = today + timedelta(days=20)
    kinds = [("yes", week, far), ("sent", week, far), ("draft", today, last)]
    kinds += [("sent", today, far)] * 50
    return [
        {
            "token": f"{i:03d}{'x' * 30}.{'z' * 43}", "reference": f"ABCD-{1000 + i}",
            "customer": f"Customer {i}", "to": "", "total": "588.00", "currency": "GBP",
            "until": until.isoformat(), "on": on.isoformat(), "state": state,
        }
        for i, (state, on, until) in enumerate(kinds)
    ]  # fmt: skip


def test_fifty_offers_go_out_and_in_as_a_file_and_what_waits_stands_first(
    maker: Maker, no_violations: Look
) -> None:
    """A yes without its deposit, a week without an answer, a last day near: each says so."""
    page = maker.page
    page.get_by_role("link", name="Offers").click()
    field = page.locator("#offers-file")
    field.set_input_files({"name": "x.json", "mimeType": "application/json", "buffer": b"{"})
    expect(page.locator("#status")).to_contain_text("holds no offers")
    buffer = json.dumps(offers(TODAY)).encode()
    field.set_input_files({"name": "o.json", "mimeType": "application/json", "buffer": buffer})
    rows = page.locator("#view-offers li.entry")
    expect(rows).to_have_count(50)
    waiting = rows.locator(".why").all_inner_texts()
    assert len(waiting) == 3
    assert "9 days" in waiting[1]
    assert rows.locator("strong").all_inner_texts()[:3] == [f"ABCD-{1000 + i}" for i in range(3)]
    expect(page.locator("#waiting")).to_have_text("3")
    saved = json.loads(taken(page, desk_text("offers.export")).path().read_text(encoding="utf-8"))
    assert saved == offers(TODAY)[:50]
    page.locator("#patience").fill("10")
    page.locator("#patience").blur()
    expect(page.locator("#waiting")).to_have_text("2")
    page.emulate_media(color_scheme="dark")
    no_violations(page, "fifty offers in the dark")
    page.reload()
    expect(page.locator("#waiting")).to_have_text("2")


@pytest.fixture
def mail_server() -> Iterator[ImapServer]:
    """A mail server with an empty account; its sockets want a short path."""
    with tempfile.TemporaryDirectory(prefix="imap") as folder, imap_server(Path(folder)) as running:
        yield running


def test_with_a_mailbox_the_reply_is_put_into_drafts(
    chromium: Browser, own_service: Served, mail_server: ImapServer, tmp_path: Path
) -> None:
    """In the thread of the mail that was dropped; with the server away it is told, nothing lost."""
    own_service.also = {
        "LEDGERSTONE_WORKSHOP": str(profile_for(mail_server, tmp_path)),
        "LEDGERSTONE_MAILBOX_PASSWORD": PASSWORD,
    }
    own_service.start()
    context, page = at_desk(chromium, own_service, viewport=DESK)
    maker = Maker(page)
    drop(page, "#enquiry", MAIL)
    page.locator("#marked .phrase").first.wait_for()
    written(maker)
    maker.press(desk_text("reply.file"))
    expect(page.locator("#reply .said")).to_be_visible()
    expect(page.locator("#reply .said")).not_to_be_empty()
    (draft,) = drafts(mail_server)
    assert draft.answers == "<m1@marsh.example>"
    assert draft.mail["To"] == "Jo Marsh <jo@marsh.example>"
    page.route("**/v1/drafts", lambda route: route.abort())
    maker.press(desk_text("reply.file"))
    expect(page.locator("#letter-fault")).to_be_visible()
    expect(page.locator("#letter .subject")).not_to_be_empty()
    context.close()
