"""The profile's form: values are changed, priced, ticked, put right, kept, downloaded and saved."""

import re
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, Route, expect

from browser.conftest import MAKER_KEY, Look, Served, at_form, enter
from browser.states import SMALL_TARGETS, TOO_WIDE
from ledgerstone.api.keeping import backup_folder
from ledgerstone.terms import trial_message
from ledgerstone.wording import english
from ledgerstone.workshop.reading.loader import DEMONSTRATION, load_profile
from ledgerstone.workshop.starting.beginning import without_maker
from ledgerstone.workshop.starting.profile_text import profile_text_of, starting_profile
from support.page_texts import workshop_text
from support.page_waits import PATIENCE_MS

pytestmark = pytest.mark.browser
PHONE, WIDTHS = {"width": 390, "height": 844}, (390, 1440)


@pytest.fixture
def profile(own_service: Served, tmp_path: Path) -> Path:
    """A workshop's own new file, and a service of it that may write it."""
    text = starting_profile(load_profile(DEMONSTRATION))
    return _written(own_service, tmp_path / "workshop.toml", text)


@pytest.fixture
def three_areas(own_service: Served, tmp_path: Path) -> Path:
    """The file of a workshop that delivers to three areas by now, as the example does."""
    text = profile_text_of(without_maker(load_profile(DEMONSTRATION)))
    return _written(own_service, tmp_path / "workshop.toml", text)


def _written(own_service: Served, file: Path, text: str) -> Path:
    """A profile's file with a text, of which a service is started that may write it."""
    file.write_text(text, encoding="utf-8")
    own_service.also = {"LEDGERSTONE_WORKSHOP": str(file), "LEDGERSTONE_WORKSHOP_WRITABLE": "1"}
    own_service.start()
    return file


def value(pointer: str) -> str:
    """The selector of a value's field."""
    return f'.field[data-pointer="{pointer}"]'


def add_and_take_out_an_area(page: Page) -> None:
    """One more area has the focus in its name, and goes again."""
    areas = page.locator('section[data-pointer="/areas"]')
    expect(areas.locator("> details")).to_have_count(3)
    areas.locator("> button").click()
    expect(areas.locator("> details")).to_have_count(4)
    expect(page.locator('[data-pointer="/areas/3/name"] input').first).to_be_focused()
    areas.get_by_role("button", name=workshop_text("table.remove")).last.click()
    expect(areas.locator("> details")).to_have_count(3)


def tick_a_table(page: Page) -> None:
    """A tick on a table makes the share that is invented smaller."""
    invented = page.locator("#outcome summary")
    counted = int(re.findall(r"\d+", invented.inner_text())[0])
    section = page.locator('section[data-pointer="/hours/per_job"]')
    section.locator("> .ticks input").press("Space")
    expect(invented).not_to_contain_text(str(counted))
    assert int(re.findall(r"\d+", invented.inner_text())[0]) < counted


def tick_a_list(page: Page) -> None:
    """A tick on a list opens what is folded in it, and only then confirms it."""
    invented = page.locator("#outcome summary")
    page.get_by_role("link", name="Delivery").first.press("Enter")
    areas = page.locator('section[data-pointer="/areas"]')
    whose = areas.locator('.field[data-standing="invented"]')
    whose.first.wait_for(state="attached")  # the view that was asked for is drawn
    counted, told = whose.count(), invented.inner_text()
    box = areas.locator("> .ticks input")
    box.press("Space")
    expect(areas.locator("> details:not([open])")).to_have_count(0)
    expect(areas.locator("> .ticks .hint")).to_contain_text("3")
    expect(box).not_to_be_checked()
    assert invented.inner_text() == told
    assert whose.count() == counted
    box.press("Space")
    expect(whose).to_have_count(0)


def download_and_save(page: Page, profile: Path) -> None:
    """What is downloaded is what is then written, and what was before is kept."""
    outcome = page.locator("#outcome")
    expect(outcome).to_contain_text("not saved yet")
    with page.expect_download() as download:
        page.get_by_role("button", name="Download").click()
    text = Path(download.value.path()).read_text(encoding="utf-8")
    assert "set_up = 2.5" in text
    expect(outcome).not_to_contain_text("not saved yet")
    expect(outcome).to_contain_text("you downloaded")
    before = profile.read_text(encoding="utf-8")
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.locator("#status")).to_have_text(re.compile("Saved"))
    assert profile.read_text(encoding="utf-8") == text
    assert [one.read_text(encoding="utf-8") for one in backup_folder(profile).iterdir()] == [before]


def test_a_maker_fills_the_profile_in(
    chromium: Browser, own_service: Served, three_areas: Path, no_violations: Look
) -> None:
    """Hours change jobs' prices, a fault stands at its field, a tick confirms, and all is kept."""
    context = chromium.new_context(locale="en-GB", viewport=PHONE, accept_downloads=True)  # type: ignore[arg-type]  # a size
    context.set_default_timeout(PATIENCE_MS)
    page = context.new_page()
    faults: list[str] = []
    page.on("pageerror", lambda fault: faults.append(str(fault)))
    page.goto(f"{own_service.url}desk/workshop#hours")
    enter(page, MAKER_KEY)
    jobs = page.locator("#outcome tr")
    jobs.nth(2).wait_for()
    set_up = page.locator(value("/hours/per_job/set_up"))
    expect(set_up.locator(".part")).to_contain_text("£")
    was = jobs.nth(1).locator("strong").inner_text()

    set_up.locator("input").first.fill("2,5")
    expect(jobs.nth(1).locator(".was")).to_contain_text(was)
    expect(page.locator("#live")).not_to_contain_text(was)
    no_violations(page, "a change of hours")
    assert page.evaluate(TOO_WIDE) == 0
    assert page.evaluate(SMALL_TARGETS) == []

    set_up.locator("input").first.fill("a while")
    expect(set_up.locator(".fault")).to_contain_text("a while")
    expect(set_up.locator("input").first).to_have_attribute("aria-invalid", "true")
    expect(page.get_by_role("link", name=workshop_text("subject.hours"))).to_contain_text("1")
    expect(page.get_by_role("button", name="Save", exact=True)).to_be_disabled()
    no_violations(page, "a fault")

    page.reload()  # nothing that was typed is lost, right or wrong
    page.locator("#outcome tr").nth(2).wait_for()
    expect(set_up.locator("input").first).to_have_value("a while")
    set_up.locator("input").first.fill("2.5")
    expect(set_up.locator(".fault")).to_have_count(0)

    tick_a_table(page)
    tick_a_list(page)
    add_and_take_out_an_area(page)
    download_and_save(page, three_areas)
    assert faults == []
    context.close()


def test_in_german_nothing_is_lost_while_the_service_is_away(
    chromium: Browser, own_service: Served, profile: Path, no_violations: Look
) -> None:
    """The form in German, on a wide screen; what is typed while nobody answers is tried later."""
    context, page = at_form(chromium, own_service, "#shades", locale="de-DE")
    page.locator('details[data-pointer="/palette/0"] > summary').click()
    no_violations(page, "shades in German")
    own_service.stop()
    page.locator('[data-pointer="/palette/0/colour"] input[type=color]').fill("#445566")
    expect(page.locator("#trouble")).to_be_visible()
    own_service.start()
    page.locator("#trouble button").click()
    expect(page.locator("#trouble")).to_be_hidden()
    expect(page.locator('[data-pointer="/palette/0/colour"] input').last).to_have_value("#445566")
    assert 'colour = "#55575a"' in profile.read_text(encoding="utf-8")
    context.close()


def test_a_download_holds_what_was_typed_a_moment_before(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """An answer on its way is waited for: the file has every change that it counts as taken."""
    context, page = _at_width(chromium, 1280)
    page.goto(f"{own_service.url}desk/workshop#hours")
    enter(page, MAKER_KEY)
    page.locator("#outcome tr").nth(2).wait_for()
    assert "set_up = 2.75" not in profile.read_text(encoding="utf-8")

    def _later(route: Route) -> None:
        page.wait_for_timeout(500)
        route.continue_()

    page.route("**/v1/workshop", _later)
    page.locator(value("/hours/per_job/set_up")).locator("input").first.fill("2,75")
    with page.expect_download() as download:
        page.get_by_role("button", name="Download").click()
    assert "set_up = 2.75" in Path(download.value.path()).read_text(encoding="utf-8")
    expect(page.locator("#outcome")).to_contain_text("you downloaded")
    context.close()


def test_what_is_typed_stays_while_the_service_is_busy(
    chromium: Browser, own_service: Served, three_areas: Path
) -> None:
    """It is kept through other subjects and a refusal, is tried again by itself, and is saved."""
    context, page = _at_width(chromium, 1280)
    asked: list[str] = []

    def _refuse_twice(route: Route) -> None:
        asked.append(route.request.method)
        if route.request.method == "POST" and asked.count("POST") <= 2:
            route.fulfill(status=503, headers={"Retry-After": "1"}, json={"detail": "later"})
        else:
            route.continue_()

    page.goto(f"{own_service.url}desk/workshop#hours")
    enter(page, MAKER_KEY)
    page.locator("#outcome tr").nth(2).wait_for()
    set_up = page.locator(value("/hours/per_job/set_up")).locator("input").first
    page.route("**/v1/workshop", _refuse_twice)
    set_up.fill("2,75")
    page.get_by_role("link", name="Money").click()
    page.get_by_role("link", name=workshop_text("subject.hours")).click()
    expect(set_up).to_have_value("2,75")
    expect(page.locator("#busy")).to_be_visible()
    expect(page.locator("#outcome")).to_contain_text("One change")
    page.get_by_role("link", name="Delivery").first.click()
    areas = page.locator('section[data-pointer="/areas"] > details')
    second = areas.nth(1).locator("summary").inner_text()
    areas.first.locator("summary").click()
    areas.first.get_by_role("button", name=workshop_text("table.remove")).last.click()
    expect(areas).to_have_count(2)  # at once: the service is still refusing
    expect(areas.first.locator("summary")).to_have_text(second)
    expect(page.locator("#busy")).to_be_hidden()
    expect(page.locator("#trouble")).to_be_hidden()
    expect(page.locator("#outcome")).to_contain_text("2 changes")
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.locator("#status")).to_have_text(re.compile("Saved"))
    assert "set_up = 2.75" in three_areas.read_text(encoding="utf-8")
    page.get_by_role("link", name=workshop_text("subject.hours")).click()
    set_up.fill("2.5")  # what the file had before is a change again
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.locator("#outcome")).to_contain_text("Saved")
    assert "set_up = 2.5" in three_areas.read_text(encoding="utf-8")
    context.close()


NARROW = """() => [...document.querySelectorAll("#subject .field")].flatMap((field) => {
  const letter = document.createElement("span");
  letter.textContent = "0", letter.style.position = "absolute";
  const tick = field.closest(".first") ? (field.querySelector(".whose")?.offsetWidth ?? 0) + 8 : 0;
  const row = field.parentElement.offsetWidth - tick;
  return [...field.querySelectorAll("input:not([type=checkbox], [type=color]), select, textarea")]
    .filter((control) => control.offsetParent)
    .filter((control) => {
      control.before(letter);
      const needed = 8 * letter.getBoundingClientRect().width;
      letter.remove();
      const inside = control.clientWidth - 2 * parseFloat(getComputedStyle(control).paddingLeft);
      const isWhole = innerWidth > 400 || !/^(text|lines|words)$/.test(field.dataset.kind);
      return inside < needed || !(isWhole || control.offsetWidth >= row - 1);
    })
    .map((control) => `${field.dataset.pointer}: ${control.clientWidth}`);
})"""


def _at_width(browser: Browser, width: int) -> tuple[BrowserContext, Page]:
    """An empty page of a British visitor on a screen of some width."""
    context = browser.new_context(locale="en-GB", viewport={"width": width, "height": 844})
    context.set_default_timeout(PATIENCE_MS)
    return context, context.new_page()


def test_every_value_can_be_read_in_its_field(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """Each control has eight figures' width; on a phone what is written out has all but a tick."""
    assert profile.exists()
    context, page = _at_width(chromium, WIDTHS[0])
    page.goto(f"{own_service.url}desk/workshop")
    enter(page, MAKER_KEY)
    page.locator("#subject .field").first.wait_for()
    for subject in page.locator("#subjects a").all():
        subject.click()
        expect(subject).to_have_attribute("aria-current", "page")
        page.evaluate("for (const each of document.querySelectorAll('details')) each.open = true")
        assert page.locator("#subject .field").count() > 0
        for width in reversed(WIDTHS):
            page.set_viewport_size({"width": width, "height": 844})
            assert page.evaluate(NARROW) == [], (subject.inner_text(), width)
    context.close()


def test_while_prices_are_invented_the_answer_is_headed_as_a_trial(
    chromium: Browser, own_service: Served, profile: Path
) -> None:
    """On the customers' page, above the price, with nothing opened."""
    assert profile.exists()
    context, page = _at_width(chromium, WIDTHS[0])
    page.goto(own_service.url)
    trial = page.locator("ledgerstone-answer .top").get_by_text(
        english(trial_message(load_profile(profile)))
    )
    for width in WIDTHS:
        page.set_viewport_size({"width": width, "height": 844})
        expect(trial).to_be_visible()
        expect(trial.locator("xpath=following-sibling::dl").locator(".price")).to_be_visible()
    context.close()
