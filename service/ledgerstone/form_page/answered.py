"""The page that answers a form: the answer first, faults beside their fields, no scripts."""

from __future__ import annotations

from collections.abc import Sequence

from ledgerstone.form_page.filling import Filling
from ledgerstone.form_page.form import Control, Form
from ledgerstone.form_page.markup import HtmlElement, RawHtml

SpokenFault = tuple[str, str]  # a JSON Pointer into the order, and a sentence


def put_answer(form: Form, html: str) -> None:
    """Put an answer before the form."""
    main = form.page.first(lambda element: element.tag == "main")
    if main is not None:
        main.children.insert(0, RawHtml(html))


def put_title(form: Form, title: str) -> None:
    """Set the page's title to that of the answer."""
    element = form.page.first(lambda element: element.tag == "title")
    if element is not None:
        element.children = [title]


def open_above(form: Form, wanted: HtmlElement) -> None:
    """Unfold every element around an element."""
    for element in form.element.inside():
        if element.tag == "details" and any(each is wanted for each in element.inside()):
            element.attributes["open"] = ""


def show_faults(form: Form, faults: Sequence[SpokenFault], filling: Filling) -> None:
    """Show each fault beside its field."""
    controls = list(form.controls())
    for pointer, says in faults:
        control = control_at(pointer, controls)
        if control is not None:
            _mark(form, control, says, filling.say("form.error"))


def show_summary(form: Form, faults: Sequence[SpokenFault]) -> None:
    """List every fault above the form, each leading to its field where it has one."""
    controls = list(form.controls())
    summary = form.element.by_id("problems")
    summary.attributes.pop("hidden", None)
    for list_ in summary.inside():
        if list_.tag == "ul":
            list_.children = [_item(form, control_at(at, controls), says) for at, says in faults]


def _item(form: Form, control: Control | None, says: str) -> HtmlElement:
    target = "order" if control is None else _target(form, control).get("id")
    return HtmlElement("li", {}, [HtmlElement("a", {"href": f"#{target}"}, [says])])


def control_at(pointer: str, controls: Sequence[Control]) -> Control | None:
    """Find the control of a place; else one inside it, else the nearest one that holds it."""
    place = pointer.removeprefix("/")
    inside = (control for control in controls if f"{control.pointer}/".startswith(f"{place}/"))
    holding = (control for control in controls if place.startswith(f"{control.pointer}/"))
    return next(inside, next(holding, None)) if place else None


def _target(form: Form, control: Control) -> HtmlElement:
    """Return the element with an id that a link to a control leads to."""
    element = control.element
    while not element.get("id"):
        element = form.page.holder_of(element)
    return element


def _mark(form: Form, control: Control, says: str, error: str) -> None:
    """Put a sentence before a control, or below a group of ticks."""
    element, target = control.element, _target(form, control)
    name = f"{target.get('id')}-fault"
    earlier = form.page.first(lambda element: element.get("id") == name)
    if earlier is not None:
        earlier.children.append(f" {says}")
        return
    before = HtmlElement("span", {"class": "unseen"}, [f"{error} "])
    fault = HtmlElement("p", {"class": "fault", "id": name}, [before, says])
    if target is element:
        holder = form.page.holder_of(element)
        holder.children.insert(holder.children.index(element), fault)
    else:
        target.children.append(fault)
    element.attributes["aria-invalid"] = "true"
    target.attributes["aria-describedby"] = f"{target.get('aria-describedby')} {name}".strip()
    open_above(form, target)


def without_scripts(form: Form) -> None:
    """Remove the page's elements that only scripts use."""
    form.page.without(
        lambda element: (
            element.tag in ("script", "template")
            or element.has_class("needs-script")
            or element.get("rel") == "modulepreload"
        )
    )
    ids = {element.get("id") for element in form.page.inside()}
    for link in form.page.inside():
        if link.has_class("skip") and link.get("href").removeprefix("#") not in ids:
            link.attributes["href"] = "#order"
