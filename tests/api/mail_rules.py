"""What mail programs show, as rules that an HTML letter is held to.

Source: the support table of caniemail (data of 29 June 2026), for Gmail on the web and its app,
Outlook on Windows and on the web, and iOS: only what all five show, or a plain decoration, may
stand in a letter.
"""

import re
from collections.abc import Iterator

import html5lib
from html5lib.constants import E as FAULTS

TAGS = {
    "html",
    "head",
    "meta",
    "title",
    "body",
    "table",
    "tbody",
    "tr",
    "td",
    "img",
    "a",
    "b",
    "br",
}
ATTRIBUTES = {"lang", "dir", "charset", "name", "content", "bgcolor", "style", "role", "width",
              "cellpadding", "cellspacing", "border", "align", "valign", "src", "alt",
              "href"}  # fmt: skip
STYLES = {"margin", "padding", "background-color", "width", "max-width", "height", "border",
          "border-bottom", "font-family", "font-size", "line-height", "color",
          "text-decoration", "display", "white-space"}  # fmt: skip
LARGEST = 100_000
SMALLEST_PX = 14


def faults(page: str, pictures: tuple[str, ...] = ("https://", "http://", "cid:")) -> list[str]:
    """What in a letter some mail program would not show."""
    return list(_faults(page, pictures))


def _faults(page: str, pictures: tuple[str, ...]) -> Iterator[str]:
    if len(page.encode()) > LARGEST:
        yield f"{len(page.encode())} bytes"
    parser = html5lib.HTMLParser(namespaceHTMLElements=False)
    tree = parser.parse(page)
    for (line, _), kind, detail in parser.errors:
        yield f"line {line}: {FAULTS[kind] % detail}"
    if not (tree.get("lang") and tree.get("dir")):
        yield "no lang or dir"
    for node in tree.iter():
        if node.tag not in TAGS:
            yield f"<{node.tag}>"
        yield from (f"{node.tag} {name}" for name in node.attrib if name not in ATTRIBUTES)
        yield from _style_faults(node.tag, node.get("style", ""))
        if node.tag == "img":
            yield from _picture_faults(node.attrib, pictures)
        if node.tag == "a" and not re.match(r"https?://|mailto:", node.get("href", "")):
            yield f"a link to {node.get('href')}"


def _style_faults(tag: str, style: str) -> Iterator[str]:
    for rule in filter(None, (part.strip() for part in style.split(";"))):
        name, _, value = rule.partition(":")
        if name not in STYLES:
            yield f"{tag}: {name}"
        if name == "margin" and tag != "body":
            yield f"{tag}: a margin"
        if re.search(r"url\(|var\(|rgba?\(|expression|calc\(", value):
            yield f"{tag}: {rule}"
        for colour in re.findall(r"#[0-9a-fA-F]+", value):
            if len(colour) != 7 or colour.lower() in ("#000000", "#ffffff"):
                yield f"{tag}: {colour}"
        if name == "font-size" and int(value.removesuffix("px")) < SMALLEST_PX:
            yield f"{tag}: {rule}"


def _picture_faults(picture: dict[str, str], sources: tuple[str, ...]) -> Iterator[str]:
    if not picture.get("src", "").startswith(sources):
        yield f"a picture from {picture.get('src', '')[:40]}"
    if not picture.get("alt"):
        yield "a picture without words"
    if not picture.get("width", "").isdigit() or "display:block" not in picture.get("style", ""):
        yield "a picture without a width, or not a block"
    if re.search(r"\.svg|\.webp|data:", picture.get("src", "")):
        yield "a picture that is no PNG"
