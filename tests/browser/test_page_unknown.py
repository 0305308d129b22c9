"""What a customer does not know yet, and what the page makes of an order that is not whole."""

from collections.abc import Callable
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from browser.conftest import Settle
from browser.gestures import order_of, unfold
from support.page_texts import page_text

pytestmark = pytest.mark.browser


def mm(length: object) -> float:
    """A length that is written in mm."""
    return float(str(length).removesuffix(" mm"))


def asked(page: Page, settle: Settle, does: Callable[[], object]) -> dict[str, Any]:
    """Do something, and return what the service answers to it."""
    with page.expect_response("**/v1/quotes") as answer:
        does()
    settle(page)
    body: dict[str, Any] = answer.value.json()
    return body


def test_i_do_not_know_yet_is_a_choice_of_every_question(phone: Page, settle: Settle) -> None:
    """Place, thickness, shade, surface, sealer, edges, rim and delivery may all be left open."""
    settle(phone)
    phone.locator("[data-piece=sink]").click()
    settle(phone)
    unfold(phone, "Edges", "Sealer")
    for name in ("place", "delivery-kind"):
        phone.locator(f"#{name}").select_option("")
    phone.locator("#thickness-usual").select_option("0")
    for name in ("shade-name", "finish-surface", "finish-sealer"):
        phone.locator(f"[name={name}][value='']").check()
    phone.locator("[data-list=cutouts] [type=radio][value='']").check()
    settle(phone)
    answer = asked(phone, settle, phone.locator("[data-as=unknown]").check)
    order = order_of(phone)
    (slab,) = order["slabs"]
    left_open = {"place", "thickness", "shade", "finish", "edges"}
    assert not left_open & slab.keys()
    assert "rim" not in slab["cutouts"][0]
    assert "delivery" not in order
    checks = {finding["check"]: finding for finding in answer["findings"]}
    assert {"thickness-taken", "left-to-us"} <= checks.keys()
    expect(phone.locator(".price .first")).to_contain_text("£")
    unfold(phone, "Before you order")
    expect(phone.locator(".findings")).to_contain_text(checks["left-to-us"]["says"])


def test_what_was_left_open_can_be_chosen_again(phone: Page, settle: Settle) -> None:
    """After "I don't know yet" a choice is told, and the note goes."""
    settle(phone)
    phone.locator("[name=finish-surface][value='']").check()
    settle(phone)
    answer = asked(phone, settle, phone.locator("[name=finish-surface]").first.check)
    assert "left-to-us" not in {finding["check"] for finding in answer["findings"]}


def test_before_its_postcode_a_delivery_is_priced_without_it(phone: Page, settle: Settle) -> None:
    """What collecting it costs, plus delivery: the postcode is asked for, a press leads to it.

    Nothing is said to be impossible.
    """
    settle(phone)
    collected = phone.locator(".price .first").inner_text()
    phone.locator("#delivery-kind").select_option("pallet")
    settle(phone)
    plus = page_text("answer.plus-delivery")
    expect(phone.locator(".price .first")).to_have_text(f"{collected} {plus}")
    expect(phone.locator("#glance strong")).to_have_text(collected)
    more = phone.locator("#glance span")
    expect(more).to_contain_text(plus)
    assert more.evaluate("e => e.scrollWidth <= e.clientWidth + 1")
    for words in ("answer.no-price-why", "findings.stops", "findings.stopped", "remedy.fix-all"):
        expect(phone.locator("ledgerstone-answer")).not_to_contain_text(page_text(words))
    assert "stopped" not in str(phone.locator("#bar").get_attribute("class"))
    phone.locator(".findings .links a").first.click()
    expect(phone.locator("#delivery-postcode")).to_be_focused()


def test_what_a_slab_rests_on_is_asked_for_at_its_field(phone: Page, settle: Settle) -> None:
    """The caution that nothing was told names the field, and a press leads to it."""
    settle(phone)
    phone.get_by_role(
        "link", name=page_text("findings.go", name=page_text("at.rests"))
    ).first.click()
    expect(phone.locator("#rests-kind")).to_be_focused()


def test_only_what_stands_in_the_form_is_asked_for(phone: Page, settle: Settle) -> None:
    """While a length does not read, the quote before it can't be asked for."""
    settle(phone)
    expect(phone.locator(".ask")).not_to_have_attribute("inert", "")
    phone.locator("#outline-length").fill("so long")
    expect(phone.locator(".unread li")).to_have_count(1)
    expect(phone.locator(".ask")).to_have_attribute("inert", "")
    phone.locator("#outline-length").fill("1510")
    settle(phone)
    expect(phone.locator(".ask")).not_to_have_attribute("inert", "")


def test_what_is_centred_stays_centred(desk: Page, settle: Settle) -> None:
    """An opening that somebody put in the middle is in the middle of a longer, wider slab."""
    settle(desk)
    desk.locator("[data-piece=basin]").click()
    settle(desk)
    x, y = (desk.locator(f"[data-list=cutouts] [data-at='centre/{axis}']") for axis in "xy")
    x.fill("400")
    y.fill("280")
    settle(desk)
    desk.get_by_role("button", name=page_text("moves.centre-x")).click()
    settle(desk)
    desk.locator("#outline-length").press_sequentially("0")
    desk.locator("#outline-length").fill("1810")
    desk.locator("#outline-width").fill("620")
    settle(desk)
    centre = order_of(desk)["slabs"][0]["cutouts"][0]["centre"]
    assert (mm(centre["x"]), mm(centre["y"])) == (905, 280)


def test_an_l_is_turned_round_with_all_that_is_on_it(desk: Page, settle: Settle) -> None:
    """Its arm goes to the other end, and walls, units and openings with it."""
    settle(desk)
    desk.locator("[data-start=l-left]").click()
    expect(desk.locator("#arms-way")).to_have_value("left")
    desk.locator("#arms-back").fill("2500")
    settle(desk)
    before = order_of(desk)
    desk.locator("#arms-way").select_option("right")
    settle(desk)
    after = order_of(desk)
    assert after["joins"][0]["other"]["side"] == "left"
    assert [set(slab["edges"]) for slab in after["slabs"]] == [{"back", "right"}, {"back"}]
    for old, new in zip(before["slabs"], after["slabs"], strict=True):
        assert old["outline"] == new["outline"]
        widths = [[unit["width"] for unit in slab["rests"]["units"]] for slab in (old, new)]
        assert sorted(widths[0]) == sorted(widths[1])
    expect(desk.locator("#bar")).not_to_have_class("stopped")
    desk.locator("#arms-way").select_option("left")
    settle(desk)
    assert order_of(desk)["joins"] == before["joins"]


def test_what_was_undone_before_it_was_laid_out_is_laid_out_when_done_again(
    desk: Page, settle: Settle
) -> None:
    """A new size that is undone as it is typed, and done again, has its basin in the middle."""
    settle(desk)
    desk.locator("[data-start=basin]").click()
    expect(desk.locator("[data-list=cutouts] > li")).to_have_count(2)
    settle(desk)
    desk.evaluate(
        """() => {
          const field = document.querySelector("#outline-length");
          field.value = "1800";
          field.dispatchEvent(new Event("input", {bubbles: true}));
          document.querySelector("[data-do=undo]").click();
        }"""
    )
    desk.wait_for_timeout(300)
    desk.locator("[data-do=redo]").click()
    settle(desk)
    slab = order_of(desk)["slabs"][0]
    assert mm(slab["outline"]["length"]) == 1800
    assert mm(slab["cutouts"][0]["centre"]["x"]) == pytest.approx(900)
