"""The form on the page: its controls, and which place in the order each of them is for."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from ledgerstone.form_page.markup import HtmlElement

FIRST_SLAB: Final = "slabs/0"  # without a script the form is of one slab
CONTROLS: Final = frozenset(("input", "select", "textarea"))
_BOX: Final = ("front", "right", "back", "left")
_SIDES: Final = {"round": ("rim",), "l-shape": (*_BOX, "notch-x", "notch-y")}
_POINTS: Final = 4


@dataclass(frozen=True, slots=True)
class Control:
    """One control of the form.

    Attributes
    ----------
    pointer
        Its place in the order, without the first slash.
    as_
        How its text is read: ``length``, ``whole``, ``yes``, ….
    usual
        The default value: an order without it means the same.
    """

    element: HtmlElement
    name: str
    pointer: str
    as_: str
    usual: str = ""


class Form:
    """The form of a page, whose rows may be made for an order.

    Parameters
    ----------
    page
        The whole page; its form is changed in place.
    """

    def __init__(self, page: HtmlElement) -> None:
        self.page = page
        self.element = page.by_id("order")
        self._templates = {e.get("id"): e for e in page.inside() if e.tag == "template"}

    def controls(self) -> Iterator[Control]:
        """Yield every control that is sent."""
        yield from _controls(self.element, "", "", "", "")

    def pointers(self) -> dict[str, str]:
        """Return where in the order each control's entry goes, by the name it is sent with."""
        return {control.name: control.pointer for control in self.controls()}

    def row(self, template: str) -> list[HtmlElement]:
        """Return a new row of a list.

        Raises
        ------
        KeyError
            The page has no such template.
        """
        return [
            child.copy()
            for child in self._templates[template].children
            if isinstance(child, HtmlElement)
        ]


def _controls(at: HtmlElement, scope: str, place: str, as_: str, usual: str) -> Iterator[Control]:
    """Yield the controls inside; a choice of several has its place on what holds them."""
    for element in at.children:
        if not isinstance(element, HtmlElement):
            continue
        inner = scope
        if "data-scope" in element.attributes:
            inner = FIRST_SLAB if element.get("data-scope") == "slab" else element.get("data-scope")
        here, how, plain = place, as_, usual
        own = element.get("data-at") or ("" if place else _own_place(element))
        if own:
            here = f"{inner}/{own}".removeprefix("/")
            how, plain = element.get("data-as"), element.get("data-default")
        elif "data-sides" in element.attributes:
            here, how = f"{inner}/{element.get('data-sides')}", "sides"
        if element.tag in CONTROLS and here and element.get("name"):
            yield Control(element, element.get("name"), here, how, plain)
        yield from _controls(element, inner, here, how, plain)


def _own_place(element: HtmlElement) -> str:
    """Return the place that a control is named by; empty if it is named otherwise."""
    is_other = element.get("type") in ("radio", "hidden") or "data-unit" in element.attributes
    return element.get("name") if element.tag in CONTROLS and not is_other else ""


def sides_of(kind: str, points: int) -> tuple[str, ...]:
    """Name the sides of a kind of outline, as the page does."""
    if kind == "polygon":
        return tuple(str(i + 1) for i in range(points or _POINTS))
    return _SIDES.get(kind, _BOX)
