"""What a page says: its messages by their names, and scripts that gather every text of it."""

from babel import Locale

from ledgerstone.wording.page import (
    COUNTED,
    CUSTOMERS_TEXTS,
    DESK_TEXTS,
    WORKSHOP_TEXTS,
    page_messages,
)

OPEN_ALL = "for (const each of document.querySelectorAll('details')) each.open = true"
SAID = """() => [
  ...Array.from(document.querySelectorAll("body *"))
    .filter((e) => !e.closest("template, script"))
    .flatMap((e) => Array.from(e.childNodes))
    .filter((node) => node.nodeType === Node.TEXT_NODE)
    .map((node) => node.textContent.trim()),
  ...Array.from(document.querySelectorAll("[aria-label]"), (e) => e.getAttribute("aria-label")),
  document.title,
].filter((text) => text !== "")"""


def page_text(name: str, /, language: str = "en", **values: str | int) -> str:
    """Return what the customers' page says by a name such as ``cutout.x``, filled in."""
    return _filled(CUSTOMERS_TEXTS, name, language, values)


def desk_text(name: str, /, language: str = "en", **values: str | int) -> str:
    """Return what the maker's desk says by a name such as ``hand.note``, filled in."""
    return _filled(DESK_TEXTS, name, language, values)


def workshop_text(name: str, /, language: str = "en", **values: str | int) -> str:
    """Return what the workshop's form says by a name such as ``subject.hours``, filled in."""
    return _filled(WORKSHOP_TEXTS, name, language, values)


def _filled(folder: str, name: str, language: str, values: dict[str, str | int]) -> str:
    text = page_messages(language, folder)[name]
    if isinstance(text, dict):
        plural = Locale.parse(language).plural_form(int(values[COUNTED]))
        text = text.get(plural, text["other"])
    return text.format_map(values)
