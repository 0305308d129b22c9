"""The form as it was filled in: rows for what it has of each, and entries as they were typed."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import Final

from ledgerstone.form_page.form import CONTROLS, FIRST_SLAB, Form, sides_of
from ledgerstone.form_page.markup import HtmlElement
from ledgerstone.form_page.sent import Sent
from ledgerstone.wording.page import PageText

LOOK_CONTROLS: Final = ("shade-name", "finish-surface", "finish-sealer")
_TICKED: Final = ("radio", "checkbox")


@dataclass(frozen=True, slots=True, kw_only=True)
class Filling:
    """What a form is filled in with.

    Attributes
    ----------
    words
        What the page says, by name.
    offered
        What the workshop offers for a place, each with its value, its words and its colour.
    """

    sent: Sent
    words: Mapping[str, PageText]
    offered: Mapping[str, Sequence[tuple[str, str, str]]]

    def say(self, key: str, **values: object) -> str:
        """Describe one of the page's messages."""
        text = self.words[key]
        return (text if isinstance(text, str) else text["other"]).format(**values)


def fill(form: Form, filling: Filling) -> None:
    """Make the rows and choices of an order in a form, and enter what was typed."""
    _offer(form, filling)
    _make_rows(form, form.element, "", filling)
    for element in form.element.inside():
        if element.get("data-says") and not element.children:
            element.children = [filling.say(element.get("data-says"))]
        if element.get("name") == "unit":
            _enter(element, filling.sent.unit)
    _enter_all(form, filling.sent)


def _enter_all(form: Form, sent: Sent) -> None:
    for control in form.controls():
        texts = sent.typed.get(control.pointer, [])
        if control.element.get("type") == "checkbox" and control.as_ == "sides":
            _tick(control.element, control.element.get("value") in texts)
        elif control.pointer in sent.typed or control.element.get("type") in _TICKED:
            _enter(control.element, texts[-1] if texts else control.usual)
        elif control.usual:
            _enter(control.element, control.usual)


def _enter(element: HtmlElement, text: str) -> None:
    """Set a control's value."""
    if element.get("type") == "radio":
        _tick(element, element.get("value") == text)
    elif element.get("type") == "checkbox":
        _tick(element, bool(text))
    elif element.tag == "select":
        for option in element.inside():
            option.attributes.pop("selected", None)
            if option.get("value") == text:
                option.attributes["selected"] = ""
    elif element.tag == "textarea":
        element.children = [text]
    else:
        element.attributes["value"] = text


def _tick(element: HtmlElement, ticked: bool) -> None:
    element.attributes.pop("checked", None)
    if ticked:
        element.attributes["checked"] = ""


# --- rows -----------------------------------------------------------------------------------


def _make_rows(form: Form, within: HtmlElement, scope: str, filling: Filling) -> None:
    """Fill every list inside with as many rows as were sent, and these with theirs."""
    for element in within.children:
        if not isinstance(element, HtmlElement):
            continue
        inner = FIRST_SLAB if element.get("data-scope") == "slab" else scope
        if element.get("data-list"):
            place = f"{inner}/{element.get('data-list')}".removeprefix("/")
            for i in range(filling.sent.rows(place)):
                name = filling.say(element.get("data-name"), number=i + 1)
                made = form.row(element.get("data-template"))
                element.children += [
                    _row(form, part, f"{place}/{i}", name, filling) for part in made
                ]
        elif element.get("data-sides"):
            _make_sides(form, element, f"{inner}/{element.get('data-sides')}", filling)
        else:
            _make_rows(form, element, inner, filling)


def _make_sides(form: Form, list_: HtmlElement, place: str, filling: Filling) -> None:
    """Fill what has a row or a box for each side of the outline."""
    outline = f"{place.rpartition('/')[0].removesuffix('/rests')}/outline"
    sides = sides_of(filling.sent.one(f"{outline}/kind"), filling.sent.rows(f"{outline}/points"))
    list_.drop_class("needs-script")
    for side in sides:
        key = f"side.{side}" if f"side.{side}" in filling.words else "side.number"
        name = filling.say(key, number=side)
        if list_.tag == "fieldset":
            box = HtmlElement("input", {"type": "checkbox", "name": place, "value": side})
            list_.children.append(HtmlElement("label", {"class": "pick"}, [box, f" {name}"]))
        else:
            made = form.row("edge-row")
            list_.children += [_row(form, part, f"{place}/{side}", name, filling) for part in made]


def _row(form: Form, row: HtmlElement, place: str, name: str, filling: Filling) -> HtmlElement:
    """Name a row and its controls by their place; leave out what its kind does not have."""
    row.attributes |= {"data-scope": place, "id": place.replace("/", "-")}
    kind = filling.sent.one(f"{place}/kind")
    row.without(
        lambda element: _is_of_another_kind(element, kind) or "data-on-units" in element.attributes
    )
    row.without(lambda element: element.has_class("field") and _is_gap(element))
    row.without(lambda element: element.tag == "details" and not _has_controls(element))
    if kind:
        hidden = {"type": "hidden", "name": f"{place}/kind", "value": kind}
        row.children.insert(0, HtmlElement("input", hidden))
    for element in row.inside():
        if "data-row-name" in element.attributes:
            element.children = [name]
        if element.has_class("fold"):
            element.attributes["open"] = ""
        if element.get("data-do") == "remove-row":
            element.attributes |= {"type": "submit", "name": "remove", "value": place}
            element.attributes["aria-label"] = f"{filling.say(element.get('data-says'))}: {name}"
        elif element.get("data-to"):
            element.drop_class("needs-script")
            to = f"{place}/{element.get('data-to')}"
            element.attributes |= {"type": "submit", "name": "add", "value": to}
        elif element.has_class("field"):
            _tie(element, place)
        if element.get("data-options"):
            element.children = [*_options(element.get("data-options"), filling)]
    _make_rows(form, row, place, filling)
    return row


def _is_of_another_kind(element: HtmlElement, kind: str) -> bool:
    at, _, kinds = element.get("data-when").partition("=")
    return at == "kind" and kind not in kinds.split()


def _is_gap(field: HtmlElement) -> bool:
    """Return whether a field is a distance that the page's script works out."""
    return field.first(lambda part: "data-gap" in part.attributes) is not None


def _has_controls(element: HtmlElement) -> bool:
    return element.first(lambda part: part.tag in CONTROLS) is not None


def _tie(field: HtmlElement, place: str) -> None:
    """Tie a field's label to its control, and name both by their place."""
    control = field.first(lambda part: part.tag in CONTROLS)
    label = field.first(lambda part: part.tag == "label")
    if control is None or label is None:
        return
    control.attributes["name"] = f"{place}/{control.get('data-at')}"
    control.attributes["id"] = control.get("name").replace("/", "-")
    if control.get("type") == "checkbox":
        control.attributes["value"] = "yes"
    else:
        label.attributes["for"] = control.get("id")


def _options(what: str, filling: Filling) -> Iterable[HtmlElement]:
    """Yield what a list of options in a row offers: sides, or profiles of an edge."""
    outline = f"{FIRST_SLAB}/outline"
    if what == "sides":
        yield HtmlElement("option", {"value": ""}, [filling.say("cutout.not-open")])
        kind, points = filling.sent.one(f"{outline}/kind"), filling.sent.rows(f"{outline}/points")
        for side in sides_of(kind, points):
            key = f"side.{side}" if f"side.{side}" in filling.words else "side.number"
            yield HtmlElement("option", {"value": side}, [filling.say(key, number=side)])
    for value, says, _ in filling.offered.get(what, ()):
        yield HtmlElement("option", {"value": value}, [says])


def _offer(form: Form, filling: Filling) -> None:
    """Turn the text fields of shade, surface and sealer into lists of the choices."""
    for name in LOOK_CONTROLS:
        fieldset = form.element.by_id(name)
        for element in (fieldset, *form.element.inside()):
            if element is fieldset or any(part is fieldset for part in element.inside()):
                element.drop_class("needs-script")
        place = f"{FIRST_SLAB}/{fieldset.get('data-at')}"
        unknown = ("", filling.say("rests.unknown"), "")
        for value, says, colour in (*filling.offered[name], unknown):
            radio = HtmlElement("input", {"type": "radio", "name": place, "value": value})
            chip = [_swatch(colour)] if colour else []
            fieldset.children.append(
                HtmlElement("label", {"class": "pick"}, [radio, *chip, f" {says}"])
            )
    typed = form.element.by_id("looks-said")
    form.element.without(lambda part: part is typed)


def _swatch(colour: str) -> HtmlElement:
    box = {"width": "100%", "height": "100%", "fill": colour}
    return HtmlElement("svg", {"class": "chip", "aria-hidden": "true"}, [HtmlElement("rect", box)])
