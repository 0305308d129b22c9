"""Where the links of notes lead: to a control that is about what they name, in every state."""

from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from browser.conftest import Settle

pytestmark = pytest.mark.browser

# What has focus: what it is about, what opens there, and whether it can be seen.
LANDED = """() => {
  const e = document.activeElement;
  const box = e.getBoundingClientRect();
  const bar = document.querySelector("#bar").getBoundingClientRect();
  const places = [];
  let at = e.dataset.at ?? "";
  if (e.matches("[type=radio]")) at = e.closest("fieldset").dataset.at ?? "";
  if (e.matches("[data-arm]")) at = e.dataset.scope;
  if (e.closest("[data-sides]") && !at) at = e.closest("[data-sides]").dataset.sides;
  for (let up = e.parentElement; up; up = up.parentElement) {
    const scope = up.dataset.scope;
    if (scope === "slab" || scope === "order") break;
    if (scope) at = at ? `${scope}/${at}` : scope;
  }
  return {
    tag: e.tagName, at, name: e.matches("#label, [data-at=label]"),
    slab: e.closest("#slabs") !== null,
    inForm: e.closest("#order") !== null,
    seen: box.height > 0 && box.top >= bar.bottom - 1 && box.bottom <= innerHeight + 1,
  };
}"""


PRESS = f"""key => {{
  const link = document.querySelector(`[data-key="${{key}}"]`);
  for (let up = link; up; up = up.parentElement) if (up.tagName === "DETAILS") up.open = true;
  for (const fold of document.querySelectorAll("#order details[open]")) fold.open = false;
  link.scrollIntoView({{block: "center"}});
  link.click();
  return ({LANDED})();
}}"""


def _about(landed: dict[str, Any], pointer: str) -> bool:
    """Return whether a control is about a place: it, what it holds, or what holds it."""
    place = pointer.removeprefix("/")
    if place.startswith("slabs/"):
        place = "/".join(place.split("/")[2:])
    if landed["slab"]:
        return pointer.startswith("/slabs/")
    at = landed["at"]
    first = place.split("/")[0]
    return bool(at) and at.split("/")[0] == first


def _each_link(page: Page, settle: Settle, state: str) -> int:
    """Press every link of every note, and look where it leads."""
    settle(page)
    links = page.locator(".findings .links a")
    keys = [str(link.get_attribute("data-key")) for link in links.all()]
    for key in keys:
        landed = page.evaluate(PRESS, key)
        assert landed["inForm"], (state, key, landed)
        assert not landed["name"], (state, key, landed)
        assert landed["seen"], (state, key, landed)
        assert _about(landed, key.rsplit(" ", 1)[1]), (state, key, landed)
    return len(keys)


def test_back_leads_to_the_note_whose_link_was_followed(phone: Page, settle: Settle) -> None:
    """As by a phone's gesture: the note has focus again, in sight."""
    settle(phone)
    link = phone.locator(".findings .links a").first
    note = phone.locator(f"#{link.evaluate('e => e.closest(`li`).id')}")
    link.click()
    expect(phone.locator("#order :focus")).to_have_count(1)
    phone.go_back()
    expect(note).to_be_focused()
    expect(note).to_be_in_viewport()
    settle(phone)


def _start(name: str) -> Callable[[Page], None]:
    def press(page: Page) -> None:
        page.locator(f"[data-start={name}]").click()
        expect(page.locator(f"[data-start={name}]")).to_have_attribute("aria-pressed", "true")

    return press


def _sink_off_the_back(page: Page) -> None:
    page.locator("[data-piece=sink]").click()
    page.locator("[data-list=cutouts] [data-at='centre/y']").fill("420")


def _chosen(where: str, value: str) -> Callable[[Page], None]:
    def choose(page: Page) -> None:
        page.locator(where).select_option(value)

    return choose


STATES: dict[str, tuple[Callable[[Page], None], ...]] = {
    "as it starts": (),
    **{
        name: (_start(name),)
        for name in ("sink", "hob", "basin", "l-left", "table", "shelf", "hearth", "outdoor")
    },
    "a sink off the back": (_sink_off_the_back,),
    "a table on a pedestal": (_start("table"), _chosen("#rests-kind", "pedestal")),
    "a shelf on trestles": (_start("shelf"), _chosen("#rests-kind", "ledges")),
    "to be fitted": (_start("l-right"), _chosen("#delivery-kind", "fitted")),
    "by van": (_chosen("#delivery-kind", "own-van"),),
    "an L far too long": (_start("l-left"), lambda page: page.locator("#arms-back").fill("5000")),
}


def test_every_link_of_a_note_leads_to_a_control_about_what_it_names(
    phone: Page, settle: Settle
) -> None:
    """In every state: seen below the bar, unfolded, and never the keyboard on a name."""
    phone.emulate_media(reduced_motion="reduce")  # it does not glide there
    pressed = 0
    for state, steps in STATES.items():
        phone.locator("[data-do=clear-draft]").click()
        settle(phone)
        for step in steps:
            step(phone)
        pressed += _each_link(phone, settle, state)
    print(f"{pressed} links in {len(STATES)} states")
    assert pressed > 3 * len(STATES)
