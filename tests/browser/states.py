"""The states that the page can be in, one after the other, for whoever looks at each."""

from collections.abc import Callable

from playwright.sync_api import Page, expect

from browser.conftest import Settle
from support.page_texts import page_text

SMALL_TARGETS = """() => Array
  .from(document.querySelectorAll("a, button, input, select, textarea, summary"))
  .filter((e) => e.checkVisibility({visibilityProperty: true}) && !e.closest(".unseen, .skip"))
  .map((e) => [e, (e.closest("label") ?? e).getBoundingClientRect()])
  .filter(([, box]) => box.width < 24 || box.height < 24)
  .map(([e, box]) => `${e.outerHTML.slice(0, 80)} ${box.width}×${box.height}`)"""
# What is pressed or typed into in the form, that is lower than a finger, or a field of letters so
# small that a phone enlarges it. What is ticked is pressed by its label; a button that is a link in
# a sentence is as high as a line.
LOW = """() => Array
  .from(document.querySelectorAll("#order :is(button:not(.link), input, select, summary)"))
  .filter((e) => e.checkVisibility({visibilityProperty: true}))
  .map((e) => [e, (e.closest("label.pick, label.tick") ?? e).getBoundingClientRect().height])
  .filter(([e, high]) => high < 44 ||
    (e.matches("select, input:not([type=radio], [type=checkbox])") &&
      parseFloat(getComputedStyle(e).fontSize) < 16))
  .map(([e, high]) => `${e.outerHTML.slice(0, 80)} ${high}`)"""
# Words over two lines that no hyphen parts: what stands right before a break is no letter.
BROKEN_WORDS = r"""() => {
  const range = document.createRange();
  const boxOf = (node, i) => {
    range.setStart(node, i);
    range.setEnd(node, i + 1);
    return Array.from(range.getClientRects()).pop();
  };
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const broken = [];
  for (let node = texts.nextNode(); node; node = texts.nextNode()) {
    const parent = node.parentElement;
    if (!parent.checkVisibility({visibilityProperty: true})) continue;
    if (parent.closest(".unseen, option")) continue;
    for (const { 0: word, index } of node.data.matchAll(/[\p{L}]{2,}/gu)) {
      const boxes = Array.from(word, (_, i) => boxOf(node, index + i));
      const [first, ...rest] = boxes.filter((box) => box?.width);
      const last = rest.pop();
      if (last && last.top > first.top + first.height / 2) broken.push(`${word}: ${parent.id}`);
    }
  }
  return broken;
}"""
# Choices of a list whose words are longer than the list; where an arrow stands no word does.
CUT_CHOICES = """() => {
  const pen = document.createElement("canvas").getContext("2d");
  const seen = Array.from(document.querySelectorAll("#order select"))
    .filter((e) => e.checkVisibility({visibilityProperty: true}) && e.dataset.options !== "slabs");
  return seen.flatMap((e) => {
    const {font, paddingLeft, paddingRight} = getComputedStyle(e);
    pen.font = font;
    const room = e.clientWidth - parseFloat(paddingLeft) - parseFloat(paddingRight) - 16;
    return Array.from(e.options)
      .filter((one) => !one.hidden && pen.measureText(one.text).width > room)
      .map((one) => `${e.id}: ${one.text}, ${pen.measureText(one.text).width} of ${room}`);
  });
}"""
TOO_WIDE = "document.documentElement.scrollWidth - document.documentElement.clientWidth"

StateLook = Callable[[str], None]


def every_state(page: Page, settle: Settle, look: StateLook) -> None:
    """Walk the page through its states, looking at each."""
    settle(page)
    look("a price")
    _unfold(page)
    look("everything opened")
    _openings(page, settle, look)
    _unfold(page)
    _shapes(page, look)
    _more_slabs(page, settle, look)
    page.get_by_label("Length", exact=True).fill("so long")
    page.get_by_role("button", name=page_text("form.check")).click()
    expect(page.locator("#problems")).to_be_visible()
    look("a problem")
    page.get_by_label("Length", exact=True).fill("1500")
    _trouble(page, look)


def _unfold(page: Page) -> None:
    folded = page.locator("details:not([open]) > summary:visible")
    while folded.count():
        folded.first.click()


def _openings(page: Page, settle: Settle, look: StateLook) -> None:
    for name in ("Basin", "Tap", "Hob", "Drainer", "Recess"):
        page.get_by_role("button", name=name, exact=True).click()
    settle(page)
    look("openings and reliefs")
    page.get_by_label(page_text("cutout.y")).first.fill("420")
    settle(page)
    look("sent back")
    page.get_by_role("button", name=page_text("draft.clear")).click()


def _shapes(page: Page, look: StateLook) -> None:
    for kind in ("units", "frame", "ends", "legs", "ledges"):
        page.get_by_label(page_text("rests.label"), exact=True).select_option(kind)
        look(f"rests on {kind}")
    for kind in ("l-shape", "polygon", "round"):
        page.get_by_label("Shape", exact=True).select_option(kind)
        look(kind)


def _more_slabs(page: Page, settle: Settle, look: StateLook) -> None:
    page.get_by_label(page_text("delivery.label")).select_option("fitted")
    page.get_by_role("button", name=page_text("slabs.add")).click()
    page.get_by_role("button", name=page_text("joins.add")).click()
    settle(page)
    look("two slabs that meet, to be fitted")


def _trouble(page: Page, look: StateLook) -> None:
    page.route("**/v1/quotes", lambda route: route.abort())
    page.get_by_label("Length", exact=True).fill("1510")
    expect(page.locator(".trouble .notice")).to_be_visible()
    look("the service away")
