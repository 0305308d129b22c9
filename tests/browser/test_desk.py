"""The maker's page: from a pasted message to a reply on the clipboard, for whoever has the key."""

import re
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path

import pytest
from playwright.sync_api import Browser, FloatRect, Locator, Page, ViewportSize, expect

from browser.conftest import DESK, MAKER_KEY, Look, Maker, Served, at_desk, enter, kept_offers
from browser.gestures import eventually, tab_to
from browser.states import SMALL_TARGETS, TOO_WIDE
from support.desk_messages import MESSAGES, POTTING
from support.page_texts import desk_text

pytestmark = pytest.mark.browser
PHONE: ViewportSize = {"width": 390, "height": 844}
MAX_ACTIONS, MAX_S = 10, 180
BELOW_THE_BAR = """heading => heading.getBoundingClientRect().top
  >= document.querySelector("#steps").getBoundingClientRect().bottom - 1"""


Picture = Callable[[Page, str], None]


@pytest.fixture
def picture(pytestconfig: pytest.Config) -> Picture:
    """Take a picture of a page as it stands, where the command line names a folder for them."""
    folder: Path | None = pytestconfig.getoption("pictures")

    def take(page: Page, name: str) -> None:
        if folder is not None:
            page.screenshot(path=folder / f"{name}.png")

    return take


@pytest.mark.parametrize("viewport", [PHONE, DESK], ids=["390", "1440"])
def test_five_messages_become_five_replies(
    chromium: Browser,
    served: Served,
    no_violations: Look,
    viewport: ViewportSize,
    picture: Picture,
) -> None:
    """Each in at most ten actions and three minutes, one of them what to change first.

    On a phone the last two of them, one of which is quoted.

    The first thing that was assumed is confirmed; what else was stands in the letter. The offer
    that is kept is the letter's own; what cannot be made is none, and has no papers.
    """
    context, page = at_desk(chromium, served, viewport=viewport)
    maker = Maker(page)
    width = viewport["width"]
    messages = MESSAGES if viewport == DESK else MESSAGES[-2:]
    for i, message in enumerate(messages):
        if i:
            maker.press("Next enquiry")
        maker.actions = 0
        begun = time.monotonic()
        maker.paste(message)
        page.locator("#marked .phrase").first.wait_for()
        maker.settle()
        picture(page, f"{width}-{i + 1}-read")
        maker.press_first("That’s right")
        maker.settle()
        picture(page, f"{width}-{i + 1}-confirmed")
        maker.press(desk_text("reply.write"))
        expect(page.locator("#letter .subject")).not_to_be_empty()
        maker.press("Copy it")
        expect(page.locator("#reply .said")).to_have_text(desk_text("reply.copied"))
        html = page.evaluate(
            "async () => (await (await navigator.clipboard.read())[0].getType('text/html')).text()"
        )
        taken = time.monotonic() - begun
        picture(page, f"{width}-{i + 1}-reply")
        print(f"{width} px, message {i + 1}: {maker.actions} actions, {taken:.1f} s")
        assert maker.actions <= MAX_ACTIONS
        assert taken <= MAX_S
        assert "style=" in html
        stops = i == len(messages) - 1
        assert is_offered(page) != stops
    expect(page.locator("ledgerstone-answer .stops").first).to_be_visible()
    no_violations(page, "what cannot be made", contrast=viewport == DESK)
    context.close()


def is_offered(page: Page) -> bool:
    """Whether the letter has a price: then its offer is kept, and has papers; else neither."""
    subject = page.locator("#letter .subject").inner_text()
    offered = "£" in subject
    assert any(one["reference"] in subject for one in kept_offers(page)) == offered
    for name in (desk_text("reply.sent"), "Job sheet"):
        expect(page.get_by_role("button", name=name, exact=True)).to_be_visible(visible=offered)
    return offered


def test_a_doubtful_value_offers_its_readings(maker: Maker) -> None:
    """Of a mail's file too: a press enters one reading, and its mark is gone."""
    page = maker.page
    mail = (
        "From: Jo Marsh <jo@marsh.example>\r\nSubject: top\r\n"
        "Content-Type: text/plain; charset=utf-8\r\n\r\n"
        "I would like a concrete worktop 1500 or 1600 mm long, 600 mm deep and 40 mm thick.\r\n"
    )
    file = {"name": "top.eml", "mimeType": "message/rfc822", "buffer": mail.encode()}
    page.locator("#file").set_input_files(file)  # type: ignore[arg-type]  # a payload
    doubt = page.locator("#points-list .doubtful", has_text="1500 mm and 1600 mm")
    doubt.get_by_role("button", name="1600 mm").click()
    expect(doubt).to_be_hidden()
    expect(page.get_by_label("Length", exact=True)).to_have_value(re.compile("^1600"))
    expect(page.locator("#reading-says")).to_contain_text("Jo Marsh")
    expect(page.locator("#letter-name")).to_have_value("Jo Marsh")


def test_a_phrase_over_two_lines_is_marked_on_each(maker: Maker) -> None:
    """As a mail program wraps it; the text stands as it was pasted."""
    page = maker.page
    text = (
        "I would like a concrete top for our washroom, 1500 x 550 mm and 40 mm thick, in a light\n"
        "grey. There is to be a round basin, whose cut-out is 360 mm across, and stands right in\n"
        "the middle of it, from left to right and from front to back.\n"
    )
    maker.paste(text)
    page.locator("#marked .phrase").first.wait_for()
    phrases = page.locator("#marked .phrase").all_inner_texts()
    assert {"light", "grey"} <= set(phrases)
    assert [phrase for phrase in phrases if phrase.strip(" \n,;.") != phrase] == []
    assert page.locator("#marked").text_content() == text
    assert page.locator("#marked").evaluate("e => e.scrollWidth - e.clientWidth") == 0
    heights = [box["height"] for box in map(_box, page.locator("#marked .phrase").all())]
    assert max(heights) < 1.5 * min(heights)


def _box(place: Locator) -> FloatRect:
    box = place.bounding_box()
    assert box
    return box


def test_each_phrase_leads_to_its_field_and_back(maker: Maker) -> None:
    """The words, the field they filled, and what was only assumed until it is confirmed."""
    page = maker.page
    maker.paste(POTTING)
    expect(page.locator("#size-from")).to_have_value("finished")  # nobody said otherwise
    phrase = page.locator("#marked .phrase", has_text="560 mm")
    phrase.click()
    width = page.get_by_label("Width", exact=True)
    expect(width).to_be_focused()
    expect(width).to_have_value("560")
    width.locator("..").get_by_role("button", name="From: 560 mm").click()
    expect(phrase).to_be_focused()
    place = page.locator(".field:has(> #place) .mark.assumed")
    expect(place).to_contain_text("indoors")
    page.locator("#place").select_option("outdoors")
    expect(place).to_be_hidden()
    page.get_by_role("button", name="Undo").click()
    expect(place).to_be_visible()
    matt = page.locator("#points-list li", has_text="matt sealer")
    matt.get_by_role("button", name="That’s right").click()
    expect(matt).to_be_hidden()
    maker.settle()
    maker.press(desk_text("reply.write"))
    letter = page.locator("#letter")
    expect(letter).to_contain_text("for indoors")
    expect(letter).not_to_contain_text("usual matt sealer")
    width.fill("570")
    expect(width.locator("..").get_by_role("button", name="From: 560 mm")).to_be_hidden()
    expect(page.locator("#letter")).to_contain_text("570 mm")


def test_a_wrong_key_opens_nothing_and_a_right_one_is_kept_as_asked(
    chromium: Browser, served: Served, no_violations: Look
) -> None:
    """It is in no address; another tab asks for it again, unless it is kept on the device."""
    context = chromium.new_context(locale="en-GB")
    page = context.new_page()
    addresses: list[str] = []
    page.on("request", lambda request: addresses.append(request.url))
    page.goto(f"{served.url}desk/")
    enter(page, "not the maker's key")
    expect(page.locator("#key-fault")).to_contain_text("not the maker’s key")
    expect(page.locator("#view-offer")).to_be_hidden()
    no_violations(page, "a wrong key")
    enter(page, MAKER_KEY)
    expect(page.locator("#message")).to_be_focused()
    page.reload()
    expect(page.locator("#message")).to_be_visible()
    other = context.new_page()
    other.goto(f"{served.url}desk/")
    expect(other.locator("#key")).to_be_focused()
    other.get_by_label(desk_text("door.stays")).check()
    enter(other, MAKER_KEY)
    expect(other.locator("#message")).to_be_visible()
    third = context.new_page()
    third.goto(f"{served.url}desk/")
    expect(third.locator("#message")).to_be_visible()
    assert all("key" not in address.replace("key-form", "") for address in addresses), addresses
    assert all(address.startswith((served.url, "blob:")) for address in addresses)
    context.close()


def test_nothing_is_amiss_on_a_phone(
    chromium: Browser, served: Served, no_violations: Look
) -> None:
    """No rule of axe-core is broken, nothing scrolls sideways, every target can be touched."""
    context, page = at_desk(chromium, served, viewport=PHONE, has_touch=True, is_mobile=True)
    maker = Maker(page)

    def look(state: str) -> None:
        no_violations(page, state, contrast=False)
        assert page.evaluate(TOO_WIDE) == 0, state
        assert page.evaluate(SMALL_TARGETS) == [], state

    look("nothing pasted")
    maker.paste(POTTING)
    maker.settle()
    look("read")
    page.evaluate("for (const part of document.querySelectorAll('details')) part.open = true")
    page.locator("#side figure img").wait_for()
    look("all opened")
    maker.press(desk_text("hand.add"))
    maker.press(desk_text("reply.write"))
    page.locator("#letter .subject").wait_for()
    look("written")
    context.close()


@pytest.mark.parametrize("language", ["en", "de"])
def test_the_bar_of_steps_shows_every_step_and_leads_to_it(maker: Maker, language: str) -> None:
    """All in one row, none of them cut off, and what a step leads to is in sight below the bar.

    With less motion, a page has scrolled as soon as a link was pressed.
    """
    page = maker.page
    page.emulate_media(reduced_motion="reduce")
    page.goto(f"{page.url.partition('?')[0]}?lang={language}")
    page.locator("#message").wait_for()
    maker.settle()
    for viewport in (PHONE, DESK):
        page.set_viewport_size(viewport)
        steps = page.locator("#steps a")
        boxes = [box for box in (step.bounding_box() for step in steps.all()) if box]
        assert len(boxes) == 5, viewport
        assert len({round(box["y"]) for box in boxes}) == 1, viewport
        assert max(box["x"] + box["width"] for box in boxes) <= viewport["width"]
        for step in steps.all():
            step.click()
            heading = page.locator(f"{step.get_attribute('href')} h2").first
            expect(heading).to_be_in_viewport(ratio=1)
            eventually(page, partial(heading.evaluate, BELOW_THE_BAR))  # it may glide there


def test_every_state_reads_well_in_light_and_dark(maker: Maker, no_violations: Look) -> None:
    """All of an offer opened, with a term that cannot be read, and a service that is away."""
    page = maker.page
    maker.paste(POTTING)
    maker.settle()
    page.evaluate("for (const part of document.querySelectorAll('details')) part.open = true")
    maker.press(desk_text("hand.add"))
    page.get_by_label(desk_text("hand.amount")).fill("forty")
    expect(page.locator("#terms .fault")).to_be_visible()
    page.get_by_label(desk_text("hand.amount")).fill("40")
    maker.press(desk_text("reply.write"))
    page.locator("#letter .subject").wait_for()
    page.route("**/v1/sheets/care", lambda route: route.abort())
    maker.press("Care sheet")
    expect(page.locator("#letter-fault")).to_be_visible()
    for scheme in ("light", "dark"):
        page.emulate_media(color_scheme=scheme)
        no_violations(page, f"an offer written, {scheme}")


def test_the_desk_is_worked_by_keyboard_alone(maker: Maker) -> None:
    """Paste, follow a phrase to its field, confirm what was assumed, write and copy the reply."""
    page = maker.page
    maker.paste(POTTING)
    maker.settle()
    expect(page.locator("#points")).to_be_focused()
    tab_to(page, "That’s right")
    open_before = page.locator("#points-list li").count()
    page.keyboard.press("Enter")
    expect(page.locator("#points-list li")).to_have_count(open_before - 1)
    tab_to(page, desk_text("reply.write"))
    page.keyboard.press("Enter")
    expect(page.locator("#letter")).to_be_focused()
    for _ in range(40):
        page.keyboard.press("Shift+Tab")
        if page.evaluate("document.activeElement.textContent") == "Copy it":
            break
    page.keyboard.press("Enter")
    expect(page.locator("#reply .said")).to_contain_text("Copied")
