"""The HTML part of a message becomes text: one line a block, one tab between a row's cells."""

from __future__ import annotations

import html
import re
from dataclasses import dataclass, field
from typing import Final

from selectolax.lexbor import LexborHTMLParser, LexborNode

from ledgerstone.enquiry.words.word_sets import word_set

_BLOCKS: Final = word_set(
    "address article aside blockquote body center dd div dl dt fieldset figure footer form h1 "
    "h2 h3 h4 h5 h6 header hr li main nav ol p pre section table tbody thead tr ul"
)
_SPACED: Final = word_set("h1 h2 h3 h4 h5 h6 p table ul ol blockquote")
_UNSEEN: Final = frozenset(["head", "script", "style", "title", "template", "noscript"])
_STRUCK: Final = frozenset(["s", "del", "strike"])
_CELLS: Final = frozenset(["td", "th"])
_FORMATTING: Final = "a|b|big|code|em|font|i|nobr|s|small|strike|strong|tt|u"
_UNCOUNTED: Final = (
    "area|base|br|col|embed|hr|img|input|link|meta|source|wbr"
    "|p|li|dt|dd|td|th|tr|tbody|thead|option"
)
_TAG: Final = re.compile(rf"<(/?)(?!(?:{_UNCOUNTED})\b)([a-z][a-z0-9]*)", re.ASCII | re.IGNORECASE)
_IS_FORMATTING: Final = re.compile(rf"(?:{_FORMATTING})\Z", re.ASCII | re.IGNORECASE)
_ANY_TAG: Final = re.compile(r"<[^<>]*>")
_BLANKS: Final = re.compile(r"[ \t\r\n\f]+")
_HIDDEN_STYLE: Final = re.compile(r"display\s{0,9}:\s{0,9}none", re.IGNORECASE)
_STRUCK_STYLE: Final = re.compile(r"line-through", re.IGNORECASE)
MAX_NESTED: Final = 400  # mail programs nest tables a few dozen deep
MAX_FORMATTED: Final = 100


@dataclass(slots=True)
class HtmlText:
    """Text without markup, and the spans of it that were struck out."""

    text: str
    struck: list[tuple[int, int]] = field(default_factory=list)
    has_table: bool = False


def text_of_html(markup: str) -> HtmlText:
    """Return a page's text. Markup nested deeper than any mail's is read as bare text.

    Notes
    -----
    The tree builder's work grows with the square of the nesting, so the nesting is counted first.
    """
    if _is_nested_too_deep(markup):
        return HtmlText(html.unescape(_ANY_TAG.sub("\n", markup)))
    writer = _PageText()
    root = LexborHTMLParser(markup).body
    if root is not None:
        _walk(root, writer)
    return writer.finished()


def _is_nested_too_deep(markup: str) -> bool:
    depth = formatted = 0
    for found in _TAG.finditer(markup):
        step = -1 if found[1] else 1
        depth = max(0, depth + step)
        if _IS_FORMATTING.match(found[2]):
            formatted = max(0, formatted + step)
        if depth > MAX_NESTED or formatted > MAX_FORMATTED:
            return True
    return False


def _walk(root: LexborNode, writer: _PageText) -> None:
    """Visit every node in order, without recursion; each element is opened and closed."""
    node: LexborNode | None = root
    while node is not None:
        descend = writer.opened(node)
        if descend and node.first_child is not None:
            node = node.first_child
            continue
        while node is not None:
            writer.closed(node)
            if node.mem_id == root.mem_id:
                return
            if node.next is not None:
                node = node.next
                break
            node = node.parent


class _PageText:
    """Gathers text while a page is walked."""

    def __init__(self) -> None:
        self.parts: list[str] = []
        self.length = 0
        self.blank = True  # whether the text ends in white space
        self.cells = 0
        self.struck_at: list[int] = []
        self.made = HtmlText("")

    def opened(self, node: LexborNode) -> bool:
        """Write what stands before a node's children; give whether to look into it."""
        tag = node.tag or ""
        if node.is_text_node:
            self._words(node.text_content or "")
            return False
        if tag in _UNSEEN or node.is_comment_node:
            return False
        style = (node.attributes.get("style") or "") if node.is_element_node else ""
        if _HIDDEN_STYLE.search(style):
            return False
        if tag in _STRUCK or _STRUCK_STYLE.search(style):
            self.struck_at.append(self.length)
        self._before(tag)
        return True

    def closed(self, node: LexborNode) -> None:
        """Write what stands after a node's children."""
        tag = node.tag or ""
        if node.is_text_node or tag in _UNSEEN or node.is_comment_node:
            return
        style = (node.attributes.get("style") or "") if node.is_element_node else ""
        if _HIDDEN_STYLE.search(style):
            return
        if tag in _STRUCK or _STRUCK_STYLE.search(style):
            self.made.struck.append((self.struck_at.pop(), self.length))
        if tag in _CELLS:
            self.cells -= 1
            self._mark("\t")
        elif tag in _BLOCKS and not self.cells:
            self._line(spaced=tag in _SPACED)

    def _before(self, tag: str) -> None:
        if tag in _CELLS:
            self.made.has_table = True
            self.cells += 1
        elif tag == "br":
            self._mark(" " if self.cells else "\n")
        elif tag == "li":
            self._line(spaced=False)
            self._mark("- ")
        elif tag in _BLOCKS and not self.cells:
            self._line(spaced=tag in _SPACED)

    def _words(self, text: str) -> None:
        tidy = _BLANKS.sub(" ", text)
        if self.blank:
            tidy = tidy.lstrip(" ")
        if tidy:
            self._mark(tidy)

    def _line(self, *, spaced: bool) -> None:
        tail = "".join(self.parts[-2:])[-2:]
        if self.length and not tail.endswith("\n"):
            self._mark("\n")
            tail = tail[-1:] + "\n"
        if self.length and spaced and tail != "\n\n":
            self._mark("\n")

    def _mark(self, text: str) -> None:
        self.parts.append(text)
        self.length += len(text)
        self.blank = text[-1] in " \n\t"

    def finished(self) -> HtmlText:
        """Return what was gathered."""
        self.made.text = "".join(self.parts)
        return self.made
