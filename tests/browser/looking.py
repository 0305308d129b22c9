"""What axe-core finds on a page as it stands."""

from typing import Any, Final

from axe_playwright_python.base import (  # type: ignore[import-untyped]  # has no types
    AXE_SCRIPT,
    AxeResults,
)
from playwright.sync_api import Page

CONTRAST: Final = "color-contrast"
# Its findings alone: what it has passed is as long again, and nobody reads it.
LOOK = "options => axe.run(options).then(({violations}) => ({violations}))"
# The same at those parts of the page alone in which something is drawn otherwise than in any state
# that was looked at since the page came: words, what is typed and chosen, colours and letters, and
# the colours of all that is around a part. What is drawn alike has the contrast that it had.
LOOK_WHERE_CHANGED = """options => {
  const drawn = (e) => {
    const {color, backgroundColor, backgroundImage, opacity, fill, stroke, display, visibility,
      fontSize, fontWeight, textShadow, position} = getComputedStyle(e);
    return [color, backgroundColor, backgroundImage, opacity, fill, stroke, display, visibility,
      fontSize, fontWeight, textShadow, position, e.value, e.checked].join();
  };
  const around = (e) => e ? drawn(e) + around(e.parentElement) : "";
  const partsOf = (e) => {
    const hasText = Array.from(e.childNodes).some((n) => n.nodeType === 3 && n.data.trim());
    const isPart = hasText || e.children.length < 2 || e.querySelectorAll("*").length < 30;
    return isPart ? [e] : Array.from(e.children).flatMap(partsOf);
  };
  const seen = (window.lookedAt ??= new Set());
  const include = partsOf(document.body).filter((part) => {
    const inside = Array.from(part.querySelectorAll("*"), drawn).join();
    const key = [part.outerHTML, around(part), inside].join();
    return !seen.has(key) && seen.add(key);
  });
  return include.length ? axe.run({include}, options).then(({violations}) => ({violations}))
    : {violations: []};
}"""


def no_violations(page: Page, state: str, *, contrast: bool = True, others: bool = True) -> None:
    """Fail where contrast is too low, or another rule is broken."""
    if not page.evaluate("'axe' in window"):  # a page that is walked through keeps it
        page.evaluate(AXE_SCRIPT)
    rules = {CONTRAST: {"enabled": False}, "label-content-name-mismatch": {"enabled": True}}
    found: list[dict[str, Any]] = []
    if others:
        found += _violations(page, LOOK, rules=rules)
    if contrast:
        found += _violations(page, LOOK_WHERE_CHANGED, runOnly=[CONTRAST])
    assert not found, f"{state}: {AxeResults({'violations': found}).generate_report()}"


def _violations(page: Page, look: str, **options: object) -> list[dict[str, Any]]:
    answer = page.evaluate(look, {"resultTypes": ["violations"], **options})
    found: list[dict[str, Any]] = answer["violations"]
    return found
