"""The page for everybody: axe-core in every state reached, 320 px, large targets, no JavaScript."""

import subprocess
from collections.abc import Callable, Sequence
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, ViewportSize, expect

from browser.conftest import DESK, ROOT, Look
from browser.states import SMALL_TARGETS, TOO_WIDE, every_state

pytestmark = pytest.mark.browser
Settle = Callable[[Page], None]
WEB = ROOT / "web"
REFLOWED: ViewportSize = {"width": 320, "height": 256}  # 1280 by 1024 at 400 %


def test_nothing_is_amiss_in_any_state(
    desk: Page, settle: Settle, no_violations: Look, tmp_path: Path
) -> None:
    """In no state is a rule of axe-core broken, HTML invalid, or anything wider than the screen.

    Nor is it at 400 % (WCAG 1.4.10): then a screen of 1280 by 1024 is one of 320 by 256 px.
    """
    files = sorted(WEB.rglob("*.html"))

    def look(state: str) -> None:
        no_violations(desk, state)
        file = tmp_path / f"{state.replace(' ', '-')}.html"
        file.write_text(f"<!doctype html>\n{desk.evaluate('document.documentElement.outerHTML')}")
        files.append(file)
        assert desk.evaluate(TOO_WIDE) == 0, state
        desk.set_viewport_size(REFLOWED)
        assert desk.evaluate(TOO_WIDE) == 0, f"{state}, at 400 %"
        desk.set_viewport_size(DESK)

    every_state(desk, settle, look)
    assert nu_checked(files) == ""


def nu_checked(files: Sequence[Path]) -> str:
    """What the Nu HTML checker has to say of these documents."""
    jar = ROOT / "tests/node_modules/vnu-jar/build/dist/vnu.jar"
    assert jar.exists(), "tests/run installs the checker"
    done = subprocess.run(
        ["java", "-jar", jar, "--errors-only", "--stdout", "--exit-zero-always", *files],
        capture_output=True,
        text=True,
        check=True,
    )
    print(f"the Nu checker looked at {len(files)} documents")
    return done.stdout


def test_nothing_is_amiss_in_the_dark(desk: Page, settle: Settle, no_violations: Look) -> None:
    """The same in dark colours and on a narrower screen."""
    desk.set_viewport_size({"width": 768, "height": 800})
    desk.emulate_media(color_scheme="dark")

    def look(state: str) -> None:
        no_violations(desk, f"{state} in the dark")
        assert desk.evaluate(TOO_WIDE) == 0, state

    every_state(desk, settle, look)


def test_nothing_is_amiss_on_a_phone(phone: Page, settle: Settle, no_violations: Look) -> None:
    """The same by touch at 360 px, where each target is 24 px at least (WCAG 2.2, 2.5.8)."""

    def look(state: str) -> None:
        no_violations(phone, f"{state} on a phone", contrast=False)
        assert phone.evaluate(TOO_WIDE) == 0, state
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
