"""The page for everybody: axe-core in every state reached, 320 px, large targets, no JavaScript."""

import gzip
from collections.abc import Callable

import pytest
from playwright.sync_api import Browser, Page, expect

pytestmark = pytest.mark.browser
Settle = Callable[[Page], None]
Look = Callable[[Page, str], None]
MOST_BYTES = 80_000

SMALL_TARGETS = """() => Array
  .from(document.querySelectorAll("a, button, input, select, textarea, summary"))
  .filter((e) => e.checkVisibility({visibilityProperty: true}) && !e.closest(".unseen, .skip"))
  .map((e) => [e, (e.closest("label") ?? e).getBoundingClientRect()])
  .filter(([, box]) => box.width < 24 || box.height < 24)
  .map(([e, box]) => `${e.outerHTML.slice(0, 80)} ${box.width}×${box.height}`)"""
TOO_WIDE = "document.documentElement.scrollWidth - document.documentElement.clientWidth"


def every_state(page: Page, settle: Settle, look: Callable[[str], None]) -> None:
    """Walk the page through its states, looking at each."""
    settle(page)
    look("a price")
    for summary in page.locator("summary:visible").all():
        summary.click()
    look("everything opened")
    for name in ("Basin", "Tap", "Hob"):
        page.get_by_role("button", name=name, exact=True).click()
    settle(page)
    look("openings")
    page.get_by_label("Centre from the front").first.fill("420")
    settle(page)
    look("sent back")
    page.get_by_role("button", name="Clear it and start again").click()
    for kind in ("units", "frame", "ends", "legs", "ledges"):
        page.get_by_label("It rests on", exact=True).select_option(kind)
        look(f"rests on {kind}")
    for kind in ("L-shape", "Any straight sides", "Round"):
        page.get_by_text(kind, exact=True).click()
        look(kind)
    page.get_by_text("Delivered and fitted").click()
    page.get_by_role("button", name="Add another slab").click()
    settle(page)
    look("two slabs, to be fitted")
    page.get_by_label("Length", exact=True).fill("so long")
    page.get_by_role("button", name="Check it all").click()
    expect(page.locator("#problems")).to_be_visible()
    look("a problem")


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_in_any_state(
    desk: Page, settle: Settle, no_violations: Look, scheme: str
) -> None:
    """No rule of axe-core is broken in any state, in light and in dark."""
    desk.emulate_media(color_scheme="dark" if scheme == "dark" else "light")
    every_state(desk, settle, lambda state: no_violations(desk, f"{state}, {scheme}"))


@pytest.mark.parametrize("width", [320, 360, 768])
def test_nothing_is_wider_than_the_screen(desk: Page, settle: Settle, width: int) -> None:
    """No state scrolls sideways; 320 px is also what 400 % zoom leaves of 1280 px."""
    desk.set_viewport_size({"width": width, "height": 700})

    def look(state: str) -> None:
        assert desk.evaluate(TOO_WIDE) == 0, f"{state} at {width} px"

    every_state(desk, settle, look)


def test_every_target_is_large_enough(phone: Page, settle: Settle) -> None:
    """Everything that can be pressed is at least 24 px either way (WCAG 2.2, 2.5.8)."""

    def look(state: str) -> None:
        assert phone.evaluate(SMALL_TARGETS) == [], state

    every_state(phone, settle, look)


def test_reduced_motion_is_honoured(desk: Page, settle: Settle) -> None:
    """Where less motion is asked for, nothing scrolls smoothly or moves by itself."""
    settle(desk)
    behaviour = "getComputedStyle(document.documentElement).scrollBehavior"
    assert desk.evaluate(behaviour) == "smooth"
    desk.emulate_media(reduced_motion="reduce")
    assert desk.evaluate(behaviour) == "auto"
    assert desk.evaluate("document.getAnimations().length") == 0


def test_a_settled_change_is_announced_once(desk: Page, settle: Settle) -> None:
    """A size typed digit by digit is one sentence in the status, not four."""
    settle(desk)
    desk.evaluate("""() => {
      window.announced = [];
      const status = document.querySelector("#status");
      const watcher = new MutationObserver(() => window.announced.push(status.textContent));
      watcher.observe(status, {childList: true, characterData: true, subtree: true});
    }""")
    length = desk.get_by_label("Length", exact=True)
    length.press("Control+a")
    length.press_sequentially("1800", delay=60)
    settle(desk)
    announced = desk.evaluate("window.announced")
    assert len(announced) == 1, announced
    assert desk.locator(".price .first").inner_text() in announced[0]


def test_the_form_makes_sense_without_javascript(chromium: Browser, address: str) -> None:
    """Labels and how to reach the workshop are there; buttons that would do nothing are not."""
    context = chromium.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(address)
    expect(page.get_by_label("Length", exact=True)).to_be_visible()
    expect(page.get_by_label("Openings: say what each is")).to_be_visible()
    expect(page.get_by_role("link", name="01632 960417")).to_be_visible()
    expect(page.get_by_text("Prices here are worked out with JavaScript")).to_be_visible()
    expect(page.get_by_role("button", name="Basin", exact=True)).to_be_hidden()
    expect(page.get_by_role("button", name="Check it all")).to_be_hidden()
    context.close()


def test_the_page_is_small_and_asks_nobody_else(chromium: Browser, address: str) -> None:
    """All that loads comes from one place, nothing is logged, and the page packs to under 80 kB."""
    context = chromium.new_context()
    page = context.new_page()
    loaded: list[str] = []
    faults: list[str] = []
    page.on("request", lambda request: loaded.append(request.url))
    page.on("console", lambda message: faults.append(message.text))
    page.on("pageerror", lambda fault: faults.append(str(fault)))
    page.goto(address)
    page.locator("ledgerstone-answer[data-state=settled]").wait_for()
    own = {url for url in loaded if "/v1/" not in url}
    packed = sum(len(gzip.compress(context.request.get(url).body(), 9)) for url in own)
    context.close()
    assert faults == []
    assert all(url.startswith(address) for url in loaded), loaded
    assert {f"{address}app.js", f"{address}styles/form.css"} <= own
    print(f"the page: {len(own)} files, {packed / 1000:.1f} kB packed")
    assert packed < MOST_BYTES
