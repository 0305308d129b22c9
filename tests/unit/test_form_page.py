"""What the page's form sends as an order, and an order as what is typed."""

import json
from pathlib import Path
from typing import Any

import pytest

from ledgerstone.contract.example_orders import ORDERS
from ledgerstone.form_page import Control, Habits, HtmlElement, Sent, order_of, page_of, typed_of
from ledgerstone.form_page.sent import read_sent

PAGE = Path(__file__).resolve().parents[2] / "web/index.html"
ONE_SLAB = {name: order for name, (_, order) in ORDERS.items() if len(order["slabs"]) == 1}


def control(as_: str) -> Control:
    """A control whose text is read in one way."""
    return Control(HtmlElement("input"), "n", "n", as_)


def read(text: str, as_: str, unit: str = "mm", **habits: str) -> object:
    """What an order has where one text was typed."""
    sent = Sent({"n": [text]}, unit)
    return order_of(sent, {"n": control(as_)}, Habits(**habits)).get("n")


@pytest.mark.parametrize(
    ("typed", "unit", "length"),
    [
        ("1450", "mm", "1450 mm"),
        ("22 1/16", "in", "22 1/16 in"),
        ("22½", "in", "22½ in"),
        ("4' 9\"", "mm", "4' 9\""),
        ("1.450,5", "mm", "1.450,5 mm"),
        ("1.450 m", "mm", "1.450 m"),
        ("nonsense", "mm", "nonsense"),
    ],
)
def test_a_number_alone_takes_the_chosen_unit(typed: str, unit: str, length: str) -> None:
    """Any other text stays as it was typed; the service reads it in the order's language."""
    assert read(typed, "length", unit) == length


@pytest.mark.parametrize(
    ("typed", "as_", "value"),
    [
        ("2", "whole", 2),
        ("two", "whole", "two"),
        ("12,5", "number", 12.5),
        ("1000", "mass", 453.6),  # NIST SP 811, appendix B.8: 0.453 592 37 kg
        ("on", "yes", True),
        ("", "yes", None),
        ("", "length", None),
    ],
)
def test_an_entry_is_what_its_control_is_for(typed: str, as_: str, value: object) -> None:
    """A number is one where one is wanted; other text stays as typed, and nothing is left out."""
    assert read(typed, as_, mark=",", masses="lb") == value


@pytest.mark.parametrize("name", ONE_SLAB)
def test_an_order_typed_again_is_the_order(name: str) -> None:
    """Whatever an order says, written as entries and read again it says the same."""
    document: dict[str, Any] = json.loads(json.dumps(ONE_SLAB[name]))
    controls = {place: control(as_) for place, as_ in _kinds(document, "")}
    typed = typed_of(document, controls)
    assert order_of(Sent(typed), controls, Habits()) == document


def _kinds(value: object, place: str) -> list[tuple[str, str]]:
    """How each entry of an order is read: what is a length there, a number, a yes or a text."""
    if isinstance(value, dict):
        return [one for k, v in value.items() for one in _kinds(v, f"{place}/{k}".strip("/"))]
    if isinstance(value, list):
        return [one for k, v in enumerate(value) for one in _kinds(v, f"{place}/{k}")]
    if isinstance(value, bool):
        return [(place, "yes")]
    return [(place, "whole" if isinstance(value, int) else "text")]


def test_a_row_that_goes_leaves_the_others_in_their_order() -> None:
    """Rows behind it count again, ten and more too, and other lists stay."""
    fields = [(f"slabs/0/cutouts/{i}/label", f"n{i}") for i in range(12)]
    sent = read_sent([*fields, ("joins/3/gap", "2"), ("remove", "slabs/0/cutouts/1")], {})
    labels = [sent.one(f"slabs/0/cutouts/{i}/label") for i in range(11)]
    assert labels == ["n0", *(f"n{i}" for i in range(2, 12))]
    assert sent.one("joins/3/gap") == "2"
    assert sent.is_edit


def test_a_page_that_is_read_is_the_page_that_is_written() -> None:
    """Every element, attribute and text of the page's document stays, in its order."""
    page = page_of(PAGE.read_text(encoding="utf-8"))
    again = page_of(f"<!doctype html>{page.html()}")
    assert again.html() == page.html()
    assert len(list(again.inside())) > 600
    assert page.by_id("plan").tag == "svg"


def test_every_control_without_a_script_is_named_and_labelled() -> None:
    """What shows without a script is sent, and says what it is."""
    form = page_of(PAGE.read_text(encoding="utf-8")).by_id("order").copy()
    form.without(lambda one: one.has_class("needs-script") or one.get("type") == "submit")
    labels = {one.get("for") for one in form.inside() if one.tag == "label"}
    wrapped = [e for one in form.inside() if one.tag == "label" for e in one.inside()]
    controls = [one for one in form.inside() if one.tag in ("input", "select", "textarea")]
    assert len(controls) > 40
    for one in controls:
        assert one.get("name"), one.html()
        assert one.get("id") in labels or any(one is each for each in wrapped), one.html()
