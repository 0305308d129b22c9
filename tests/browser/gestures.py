"""What a person's hands do to the page: drag with a mouse, touch, tab, read what it costs."""

import json
import re
import time
from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import Locator, Page

from support.page_waits import PATIENCE_MS

LOOK_AGAIN_MS = 50


def eventually(page: Page, holds: Callable[[], bool]) -> None:
    """Look again and again until what is measured on the page holds."""
    deadline = time.monotonic() + PATIENCE_MS / 1000
    while not holds():
        assert time.monotonic() < deadline
        page.wait_for_timeout(LOOK_AGAIN_MS)


def thing(page: Page, key: str) -> Locator:
    """Find a thing on the plan that can be moved."""
    return page.locator(f"#plan [data-key={key}]")


MIDDLE = """(key) => {
  const box = document.querySelector(`#plan [data-key="${key}"] circle`).getBoundingClientRect();
  return [box.x + box.width / 2, box.y + box.height / 2];
}"""


def middle(page: Page, key: str) -> tuple[float, float]:
    """Find the middle of what is pressed of a thing, on the screen; it may be drawn again."""
    thing(page, key).scroll_into_view_if_needed()
    x, y = page.evaluate(MIDDLE, key)
    return x, y


def unfold(page: Page, *names: str) -> None:
    """Open what stands folded under these lines."""
    for name in names:
        page.locator("summary:visible", has_text=re.compile(rf"^\W*{name}")).first.click()


def px_per_mm(page: Page, length_mm: float = 1500) -> float:
    """How large a millimetre is on the screen, where the slab is so long."""
    box = page.locator("#plan .stone").bounding_box()
    assert box is not None
    return (box["width"] - 2) / length_mm


def drag(page: Page, key: str, dx_mm: float, dy_mm: float, *, length_mm: float = 1500) -> None:
    """Drag a thing by so much with the mouse, and hold it there."""
    scale = px_per_mm(page, length_mm)
    x, y = middle(page, key)
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x + dx_mm * scale, y - dy_mm * scale, steps=8)


def touch(page: Page, key: str, dx_px: float, dy_px: float) -> None:
    """Drag a thing by so much with a finger."""
    x, y = middle(page, key)
    client = page.context.new_cdp_session(page)
    send = "Input.dispatchTouchEvent"
    client.send(send, {"type": "touchStart", "touchPoints": [{"x": x, "y": y}]})
    for step in range(1, 9):
        point = {"x": x + dx_px * step / 8, "y": y + dy_px * step / 8}
        client.send(send, {"type": "touchMove", "touchPoints": [point]})
    client.send(send, {"type": "touchEnd", "touchPoints": []})
    client.detach()


def tab_to(page: Page, label: str, *, back: bool = False) -> None:
    """Press Tab until something of this name has focus."""
    name = """() => {
      const element = document.activeElement;
      return (element.labels?.[0]?.textContent ?? element.textContent).trim();
    }"""
    for _ in range(200):
        page.keyboard.press("Shift+Tab" if back else "Tab")
        if page.evaluate(name).startswith(label):
            return
    pytest.fail(f"Tab never came to {label!r}.")


def price(page: Page) -> str:
    """Read what stands in the price's place."""
    return page.locator(".price .first").inner_text()


def pounds(text: str) -> float:
    """Read an amount of money as it is written."""
    found = re.search(r"([-−]?)£([\d,]+\.\d\d)", text)
    assert found is not None, text
    return float(f"{found[1] and '-'}{found[2].replace(',', '')}")


def order_of(page: Page) -> dict[str, Any]:
    """The order as it stands, as the draft keeps it."""
    order: dict[str, Any] = json.loads(
        str(
            page.evaluate(
                "() => Object.entries(localStorage).find(([name]) => name.includes('draft'))[1]"
            )
        )
    )["order"]
    return order
