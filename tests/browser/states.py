"""The states that the page can be in, one after the other, for whoever looks at each."""

from collections.abc import Callable

from playwright.sync_api import Page, expect

SMALL_TARGETS = """() => Array
  .from(document.querySelectorAll("a, button, input, select, textarea, summary"))
  .filter((e) => e.checkVisibility({visibilityProperty: true}) && !e.closest(".unseen, .skip"))
  .map((e) => [e, (e.closest("label") ?? e).getBoundingClientRect()])
  .filter(([, box]) => box.width < 24 || box.height < 24)
  .map(([e, box]) => `${e.outerHTML.slice(0, 80)} ${box.width}×${box.height}`)"""
TOO_WIDE = "document.documentElement.scrollWidth - document.documentElement.clientWidth"

Look = Callable[[str], None]
Settle = Callable[[Page], None]


def every_state(page: Page, settle: Settle, look: Look) -> None:
    """Walk the page through its states, looking at each."""
    settle(page)
    look("a price")
    for summary in page.locator("summary:visible").all():
        summary.click()
    look("everything opened")
    _openings(page, settle, look)
    _shapes(page, look)
    _more_slabs(page, settle, look)
    page.get_by_label("Length", exact=True).fill("so long")
    page.get_by_role("button", name="Check it all").click()
    expect(page.locator("#problems")).to_be_visible()
    look("a problem")
    page.get_by_label("Length", exact=True).fill("1500")
    _trouble(page, look)


def _openings(page: Page, settle: Settle, look: Look) -> None:
    for name in ("Basin", "Tap", "Hob", "Drainer", "Recess"):
        page.get_by_role("button", name=name, exact=True).click()
    settle(page)
    look("openings and reliefs")
    page.get_by_label("Centre from the front").first.fill("420")
    settle(page)
    look("sent back")
    page.get_by_role("button", name="Clear it and start again").click()


def _shapes(page: Page, look: Look) -> None:
    for kind in ("units", "frame", "ends", "legs", "ledges"):
        page.get_by_label("It rests on", exact=True).select_option(kind)
        look(f"rests on {kind}")
    for kind in ("L-shape", "Any straight sides", "Round"):
        page.get_by_text(kind, exact=True).first.click()
        look(kind)


def _more_slabs(page: Page, settle: Settle, look: Look) -> None:
    page.get_by_text("Delivered and fitted").click()
    page.get_by_role("button", name="Add another slab").click()
    page.get_by_role("button", name="Add a join").click()
    settle(page)
    look("two slabs that meet, to be fitted")


def _trouble(page: Page, look: Look) -> None:
    page.route("**/v1/quotes", lambda route: route.abort())
    page.get_by_label("Length", exact=True).fill("1510")
    expect(page.locator(".trouble .notice")).to_be_visible()
    look("the service away")
