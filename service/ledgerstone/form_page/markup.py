"""A page as a tree of elements: read from HTML, changed, and written again."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from functools import lru_cache
from html import escape
from html.parser import HTMLParser
from typing import Self

_VOID = frozenset(
    ("area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "wbr")
)


class RawHtml(str):
    """HTML that is written as it is: what a template made, in which all text is escaped."""

    __slots__ = ()


@dataclass(slots=True, eq=False)
class HtmlElement:
    """An element of a page; a child that is a text is written escaped."""

    tag: str
    attributes: dict[str, str] = field(default_factory=dict)
    children: list[HtmlElement | str] = field(default_factory=list)

    def get(self, name: str) -> str:
        """Return an attribute's value; empty if there is none."""
        return self.attributes.get(name, "")

    def has_class(self, name: str) -> bool:
        """Return whether it is of a class."""
        return name in self.get("class").split()

    def drop_class(self, name: str) -> None:
        """Remove it from a class."""
        left = [other for other in self.get("class").split() if other != name]
        if left:
            self.attributes["class"] = " ".join(left)
        else:
            self.attributes.pop("class", None)

    def inside(self) -> Iterator[HtmlElement]:
        """Yield every element inside, in the order of the document."""
        for child in self.children:
            if isinstance(child, HtmlElement):
                yield child
                yield from child.inside()

    def first(self, wanted: Callable[[HtmlElement], bool]) -> HtmlElement | None:
        """Return the first element inside that is wanted."""
        return next(filter(wanted, self.inside()), None)

    def by_id(self, name: str) -> HtmlElement:
        """Return the element inside of this id.

        Raises
        ------
        KeyError
            There is none.
        """
        found = self.first(lambda element: element.get("id") == name)
        if found is None:
            raise KeyError(name)
        return found

    def holder_of(self, wanted: HtmlElement) -> HtmlElement:
        """Return the element inside, or this one, of which another is a child.

        Raises
        ------
        KeyError
            There is none.
        """
        for element in (self, *self.inside()):
            if any(child is wanted for child in element.children):
                return element
        raise KeyError(wanted.tag)

    def without(self, unwanted: Callable[[HtmlElement], bool]) -> None:
        """Remove every unwanted descendant, with its content."""
        self.children = [
            c for c in self.children if not (isinstance(c, HtmlElement) and unwanted(c))
        ]
        for child in self.children:
            if isinstance(child, HtmlElement):
                child.without(unwanted)

    def copy(self) -> Self:
        """Copy it whole."""
        inner = [c.copy() if isinstance(c, HtmlElement) else c for c in self.children]
        return type(self)(self.tag, dict(self.attributes), inner)

    def html(self) -> str:
        """Write it as HTML."""
        attributes = "".join(
            f' {name}="{escape(value)}"' for name, value in self.attributes.items()
        )
        inner = "".join(map(_written, self.children))
        return f"<{self.tag}{attributes}>" + ("" if self.tag in _VOID else f"{inner}</{self.tag}>")


def _written(child: HtmlElement | str) -> str:
    if isinstance(child, HtmlElement):
        return child.html()
    return str(child) if isinstance(child, RawHtml) else escape(child, quote=False)


@lru_cache(maxsize=8)
def page_of(document: str) -> HtmlElement:
    """Read a page's document; the element ``html`` is returned, to be copied and not changed.

    Raises
    ------
    KeyError
        It has no element ``html``.
    """
    reader = _Reader()
    reader.feed(document)
    reader.close()
    found = reader.top.first(lambda element: element.tag == "html")
    if found is None:
        raise KeyError("html")
    return found


class _Reader(HTMLParser):
    """Builds the tree of a document that closes what it opens, as ours do."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.top = HtmlElement("")
        self._open = [self.top]

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        element = HtmlElement(tag, {name: value or "" for name, value in attrs})
        self._open[-1].children.append(element)
        if tag not in _VOID:
            self._open.append(element)

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self._open[-1].children.append(
            HtmlElement(tag, {name: value or "" for name, value in attrs})
        )

    def handle_endtag(self, tag: str) -> None:
        while len(self._open) > 1 and self._open.pop().tag != tag:
            pass

    def handle_data(self, data: str) -> None:
        self._open[-1].children.append(data)
