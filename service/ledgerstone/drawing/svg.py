"""A small, safe SVG: a frozen tree of known elements, every text cleaned and escaped.

Only presentation attributes are written, never ``style``: a strict content policy drops that.
There are no scripts, no foreign content and no reference to anything outside the document.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache

from ledgerstone.outline import XY

NAMESPACE = "http://www.w3.org/2000/svg"
EMBEDDED_PNG = "data:image/png;base64,"
TAGS = frozenset(
    {
        *("svg", "g", "defs", "title", "desc", "path", "circle", "rect", "line", "text", "image"),
        *("linearGradient", "radialGradient", "stop", "pattern", "clipPath"),
    }
)
AttributeValue = str | float | None

_BIDI = frozenset("\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069")
_DROPPED = frozenset({"Cc", "Cs", "Cn", "Co"})
_SPACES = frozenset("\t\n\r\u2028\u2029\x0b\x0c\x85")
_MARKS_IN_A_ROW = 2
# Printable ASCII and the signs that drawings write beside it, single spaces between.
_SIMPLE = re.compile("[!-~Ø×°±·–—…’“”]+(?: [!-~Ø×°±·–—…’“”]+)*")
_PLAIN = re.compile(r"[ !#-%'-;=?-~]*")  # printable ASCII that XML takes as it is


@dataclass(frozen=True, slots=True)
class SvgElement:
    """One element: its tag, its attributes as XML, what it holds."""

    tag: str
    attributes: str
    children: tuple[SvgElement | str, ...]


def element(tag: str, *children: SvgElement | str, **attributes: AttributeValue) -> SvgElement:
    """Make an element; ``stroke_width`` is written ``stroke-width`` and None is left out.

    Raises
    ------
    ValueError
        The tag is not one of ours, or an attribute could carry a script, a style or a reference
        that leads out of the document.

    """
    if tag not in TAGS:
        raise ValueError(f"{tag} is not drawn here")
    written = ""
    for name, value in attributes.items():
        if value is not None:
            text = _safe(tag, name, value) if isinstance(value, str) else number(value)
            written += f'{_begun(name)}{text}"'
    return SvgElement(tag, written, children)


@lru_cache(maxsize=256)  # the names that our own code writes
def _begun(name: str) -> str:
    """Begin an attribute, up to its value."""
    lowered = name.lower()
    if lowered == "style" or lowered.startswith("on") or ":" in name:
        raise ValueError(f"{name} is not written here")
    return f' {name.replace("_", "-")}="'


def _safe(tag: str, name: str, value: str) -> str:
    """Return a value cleaned and escaped, that leads to nothing outside the document."""
    if "href" in name.lower():
        inside = "#" if tag == "pattern" else EMBEDDED_PNG
        if not value.startswith(inside):
            raise ValueError("only what is inside the document may be shown")
    if "url(" in value and not value.startswith("url(#"):
        raise ValueError("only what the document defines may be used")
    return value if _PLAIN.fullmatch(value) else escaped(clean(value))


def number(value: float, places: int = 2) -> str:
    """Write a pure number to 0.01, or to fewer places, without trailing zeros.

    Raises
    ------
    ValueError
        The number is not finite.

    """
    written = f"{value:.{places}f}"
    last = written[-1]
    if last in "0fn":
        if last != "0":  # inf or nan
            raise ValueError("a drawing needs finite numbers")
        if places:
            written = written.rstrip("0").rstrip(".")
        return "0" if written == "-0" else written
    return written


def path_of(points: Iterable[Sequence[float]], *, closed: bool = True, places: int = 2) -> str:
    """Write straight lines through points, in mm or sheet units, as path data.

    Raises
    ------
    ValueError
        A number is not finite.
    """
    return f"M{_joined(points, places)}{'Z' if closed else ''}"


def pairs_of(points: Iterable[Sequence[float]], places: int = 2) -> list[str]:
    """Write each point, in mm or sheet units, as a pair of numbers.

    Raises
    ------
    ValueError
        A number is not finite.
    """
    return _joined(points, places).split("L")


def _joined(points: Iterable[Sequence[float]], places: int) -> str:
    """Write points as pairs of numbers joined by ``L``, without trailing zeros.

    All of them at once, in a third of the time that ``number`` takes for them one by one.
    """
    data = "L".join([f"{p[0]:.{places}f} {p[1]:.{places}f}" for p in points]) + "L"
    if "n" in data:  # inf or nan
        raise ValueError("a drawing needs finite numbers")
    for end in (" ", "L"):
        for _ in range(places - 1):
            data = data.replace(f"0{end}", end)
        data = data.replace(f".0{end}", end).replace(f"-0{end}", f"0{end}")
    return data[:-1]


def clean(text: str) -> str:
    """Leave out characters that cannot be drawn or that change the direction of text.

    Controls, lone surrogates, non-characters and direction marks go; breaks become spaces; of a
    pile of combining marks two stay.
    """
    if _SIMPLE.fullmatch(text):
        return text
    kept: list[str] = []
    marks = 0
    for char in text:
        kind = unicodedata.category(char)
        marks = marks + 1 if kind in {"Mn", "Me"} else 0
        if char in _SPACES:
            kept.append(" ")
        elif kind not in _DROPPED and char not in _BIDI and marks <= _MARKS_IN_A_ROW:
            kept.append(char)
    return " ".join("".join(kept).split())


def escaped(text: str) -> str:
    """Escape a text for XML content and for attributes in double quotes."""
    return (
        text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace('"', "&quot;")
    )


def render(root: SvgElement) -> str:
    """Write a tree as text; every text is cleaned and escaped here, as attributes are already."""
    parts: list[str] = []
    _write(root, parts)
    return "".join(parts)


def _write(node: SvgElement, parts: list[str]) -> None:
    if not node.children:
        parts.append(f"<{node.tag}{node.attributes}/>")
        return
    parts.append(f"<{node.tag}{node.attributes}>")
    for child in node.children:
        if isinstance(child, str):
            parts.append(escaped(clean(child)))
        else:
            _write(child, parts)
    parts.append(f"</{node.tag}>")


def document(
    size: XY, prefix: str, *, title: str, says: str, children: Iterable[SvgElement]
) -> SvgElement:
    """Make a whole picture of a size in sheet units: title, description, then what is drawn."""
    width, height = size
    return element(
        "svg",
        element("title", title, id=f"{prefix}-title"),
        element("desc", says, id=f"{prefix}-says"),
        *children,
        xmlns=NAMESPACE,
        viewBox=f"0 0 {number(width)} {number(height)}",
        width=width,
        height=height,
        role="img",
        aria_labelledby=f"{prefix}-title {prefix}-says",
    )
