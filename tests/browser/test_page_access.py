"""The page for everybody: axe-core in every state reached, 320 px, large targets, no JavaScript."""

import subprocess
from collections.abc import Sequence
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, ViewportSize, expect

from browser.conftest import DESK, ROOT, Look, Settle
from browser.states import CUT_CHOICES, SMALL_TARGETS, TOO_WIDE, every_state
from support.page_texts import page_text

pytestmark = pytest.mark.browser
WEB = ROOT / "web"
# How much of the window is under what stays where it is.
STUCK_PX = """() => Array.from(document.body.querySelectorAll("*"))
  .filter((e) => /sticky|fixed/.test(getComputedStyle(e).position) && e.checkVisibility())
  .map((e) => e.getBoundingClientRect())
  .map(({top, bottom}) => Math.max(0, Math.min(bottom, innerHeight) - Math.max(top, 0)))
  .reduce((sum, px) => sum + px, 0)"""
TABLET: ViewportSize = {"width": 768, "height": 800}
REFLOWED: ViewportSize = {"width": 320, "height": 256}  # 1280 by 1024 at 400 %


def test_nothing_is_amiss_in_any_state(
    desk: Page, settle: Settle, no_violations: Look, tmp_path: Path
) -> None:
    """In no state is a rule of axe-core broken, HTML invalid, or anything wider than the screen.

    Nor is anything too wide on a tablet or at 400 % (WCAG 1.4.10), where a screen of 1280 by 1024
    is one of 320 by 256 px, and in dark colours the contrast is as good.
    """
    files = sorted(WEB.rglob("*.html"))

    def look(state: str) -> None:
        no_violations(desk, state)
        file = tmp_path / f"{state.replace(' ', '-')}.html"
        file.write_text(f"<!doctype html>\n{desk.evaluate('document.documentElement.outerHTML')}")
        files.append(file)
        for size in (REFLOWED, TABLET, DESK):
            desk.set_viewport_size(size)
            assert desk.evaluate(TOO_WIDE) == 0, (state, size)
        desk.emulate_media(color_scheme="dark")
        no_violations(desk, f"{state} in the dark", others=False)
        desk.emulate_media(color_scheme="light")

    every_state(desk, settle, look)
    desk.locator("#step-shape label").first.evaluate("label => { label.style.color = '#eee'; }")
    with pytest.raises(AssertionError, match="contrast"):
        no_violations(desk, "a label gone pale", others=False)
    files += [plain(desk, tmp_path, length) for length in ("", "1450", "8000")]
    files.append(plain(desk, tmp_path, "2000", add="slabs/0/cutouts rectangle"))
    assert nu_checked(files) == ""


def plain(desk: Page, folder: Path, length: str, **more: str) -> Path:
    """The page that answers a form without scripts: faults, a price, a send-back, a new row."""
    sizes = {"outline/length": length, "outline/width": "560", "thickness": "40"}
    form: dict[str, str | float | bool] = {"outline/kind": "rectangle", **sizes, **more}
    file = folder / f"plain-{length}.html"
    file.write_bytes(desk.request.post(desk.url, form=form).body())
    return file


def nu_checked(files: Sequence[Path]) -> str:
    """What the Nu HTML checker has to say of these documents."""
    jar = ROOT / "tests/node_modules/vnu-jar/build/dist/vnu.jar"
    assert jar.exists(), "tests/run installs the checker"
    # It is over before more of compiling would pay; what is compiled lightly needs more stack.
    java = ("java", "-XX:TieredStopAtLevel=1", "-Xss8m")
    done = subprocess.run(
        [*java, "-jar", jar, "--errors-only", "--stdout", "--exit-zero-always", *files],
        capture_output=True,
        text=True,
        check=True,
    )
    print(f"the Nu checker looked at {len(files)} documents")
    return done.stdout


def test_nothing_is_amiss_on_a_phone(phone: Page, settle: Settle, no_violations: Look) -> None:
    """The same by touch at 360 px: each target is 24 px at least (WCAG 2.2, 2.5.8).

    No choice of a list is cut.
    """

    def look(state: str) -> None:
        no_violations(phone, f"{state} on a phone", contrast=False)
        assert phone.evaluate(TOO_WIDE) == 0, state
        assert phone.evaluate(SMALL_TARGETS) == [], state
        assert phone.evaluate(CUT_CHOICES) == [], state

    every_state(phone, settle, look)


def test_reduced_motion_is_honoured(desk: Page, settle: Settle) -> None:
    """Where less motion is asked for, nothing scrolls smoothly or moves by itself."""
    settle(desk)
    behaviour = "getComputedStyle(document.documentElement).scrollBehavior"
    assert desk.evaluate(behaviour) == "smooth"
    desk.emulate_media(reduced_motion="reduce")
    assert desk.evaluate(behaviour) == "auto"
    assert desk.evaluate("document.getAnimations().length") == 0


def test_a_swatch_keeps_its_colour_where_colours_are_forced(desk: Page, settle: Settle) -> None:
    """In a high-contrast scheme each shade is still seen beside its name."""
    settle(desk)
    desk.emulate_media(forced_colors="active")
    chips = desk.locator("#shade-name .chip")
    seen = [chip.evaluate("e => getComputedStyle(e).backgroundColor") for chip in chips.all()]
    assert len(set(seen)) == len(seen) >= 5
    assert all(label.inner_text().strip() for label in desk.locator("#shade-name label").all())


def test_nothing_sticks_on_a_low_screen(desk: Page, settle: Settle) -> None:
    """Under 480 px of height, as at 400 %, what is scrolled to has all of the screen."""
    settle(desk)
    desk.set_viewport_size(REFLOWED)
    desk.evaluate("window.scrollTo(0, 900)")
    assert desk.evaluate(STUCK_PX) <= 0.3 * REFLOWED["height"]


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
    expect(page.get_by_role("button", name=page_text("form.send"))).to_be_visible()
    expect(page.get_by_role("link", name="01632 960417")).to_be_visible()
    expect(page.get_by_role("button", name="Basin", exact=True)).to_be_hidden()
    expect(page.get_by_role("button", name=page_text("form.check"))).to_be_hidden()
    context.close()


def test_a_form_whose_scripts_do_not_come_is_sent_and_answered(
    chromium: Browser, address: str, no_violations: Look
) -> None:
    """On a phone an opening is added, does not fit, is moved by one press, and has a price."""
    context = chromium.new_context(locale="en-GB", viewport={"width": 390, "height": 844})
    page = context.new_page()
    page.route("**/app.js", lambda route: route.abort())
    page.goto(address)
    page.get_by_label("Length", exact=True).fill("1450")
    page.get_by_label("Width", exact=True).fill("56 cm")
    page.get_by_label("Thickness", exact=True).fill("40")
    page.get_by_role("button", name="Round opening").click()
    page.get_by_label("Diameter", exact=True).last.fill("360")
    page.get_by_label(page_text("cutout.x")).fill("200")
    page.get_by_label(page_text("cutout.y")).fill("so far")
    page.keyboard.press("Enter")
    field = page.get_by_role("link", name="so far")
    expect(field).to_be_visible()
    field.click()
    expect(page.get_by_label(page_text("cutout.y"))).to_be_in_viewport()
    page.get_by_label(page_text("cutout.y")).fill("200")
    page.get_by_role("button", name=page_text("form.send")).click()
    expect(page.get_by_label("Length", exact=True)).to_have_value("1450")
    no_violations(page, "sent back without scripts", contrast=False)
    page.get_by_role("button", name="Make this change").click()
    expect(page.locator(".answered .total")).to_contain_text("£")
    expect(page.get_by_label(page_text("cutout.y"))).to_have_value("240 mm")
    no_violations(page, "a price without scripts")
    assert page.evaluate(TOO_WIDE) == 0
    context.close()
