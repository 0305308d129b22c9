"""How long a first quote takes: the form is walked in three countries, and what it asks is counted.

    PYTHONPATH=tests:service python tests/browser/first_quote_minutes.py

Words are those that stand open on the form, in a browser, and those of the README's section; the
second row of a country is of who mixes from bags. An
answer that is known by heart is taken at 20 s, one to look up or think about at 75 s, a tick at
20 s; 200 words are read a minute. Common practice, no source; the terminal took 3 minutes when a
maker was watched, and where they stopped 7.
"""

from __future__ import annotations

import re
import shutil
import tempfile
from pathlib import Path
from typing import Any, Final

from playwright.sync_api import Browser, Locator, Page, sync_playwright

from browser.conftest import Served, at_form
from support.browsers import BROWSERS
from support.ports import free_port
from support.profile_form import begun

README: Final = Path(__file__).resolve().parents[2] / "README.md"
COUNTRIES: Final = {"GB": "en-GB", "DE": "de-DE", "US": "en-US"}
# What no maker has in their head: from a bag, a data sheet, a calendar or a pile of receipts.
LOOKED_UP: Final = re.compile(
    r"/recipe/fck_mpa|/recipe/bag/(?!bag_kg)|/steel/mesh_wire_mm|/ways/0/most_kg"
    r"|orders_ahead_days|job-1|job-materials|job-asked"
)
KNOWN_S, LOOKED_UP_S, WORDS_A_MINUTE, TERMINAL_MIN = 20, 75, 200, 3
OREGON: Final[dict[str, Any]] = {"locale": "en-US", "viewport": {"width": 390, "height": 844}}
# The texts that are seen, with one line for each block.
TEXTS: Final = """() => {
  const found = [];
  const walk = (node) => {
    if (node.nodeType === Node.TEXT_NODE) found.push(node.textContent);
    const seen = node.tagName !== "OPTION" && node.checkVisibility?.();
    if (seen) node.childNodes.forEach(walk);
  };
  for (const id of ["intro", "subject", "outcome"]) walk(document.getElementById(id));
  return found.join(" ");
}"""
ASKED: Final = """() => [...document.querySelectorAll("#subject .field")]
  .filter((field) => field.checkVisibility())
  .map((field) => field.dataset.pointer ?? field.querySelector("input").id)"""
SHOWN: Final = """() => [...document.querySelectorAll("#subject .group [data-shows]")]
  .filter((value) => value.checkVisibility()).length"""


def readme_words() -> int:
    """The words of the README's section on the form, without its commands."""
    text = README.read_text(encoding="utf-8")
    section = text.split("## Your first quote\n")[1].split("\n## ")[0]
    return len(re.sub(r"```.*?```", "", section, flags=re.DOTALL).split())


def box_of(page: Page, pointer: str) -> Locator:
    """The box of a value on the form."""
    return page.locator(f'.field[data-pointer="{pointer}"] > input').first


def counted(page: Page) -> dict[str, Any]:
    """What stands open on the first quote."""
    asked = page.evaluate(ASKED)
    ticks = page.locator(".rest input:visible").count()
    looked_up = sum(bool(LOOKED_UP.search(name)) for name in asked)
    words = len(page.evaluate(TEXTS).split())
    return {
        "words": words + readme_words(),
        "known": len(asked) - looked_up,
        "looked up": looked_up,
        "ticks": ticks,
        "values ticked": page.evaluate(SHOWN),
    }


def minutes(found: dict[str, Any]) -> float:
    """How long that takes who never stops."""
    seconds = KNOWN_S * (found["known"] + found["ticks"]) + LOOKED_UP_S * found["looked up"]
    return float(found["words"] / WORDS_A_MINUTE + seconds / 60 + TERMINAL_MIN)


def walked(browser: Browser, country: str, folder: Path) -> list[dict[str, Any]]:
    """The first quote of a new maker of a country, and of one who mixes from bags."""
    file = folder / f"{country}.toml"
    file.write_text(begun(country), encoding="utf-8")
    told = {"LEDGERSTONE_WORKSHOP": str(file), "LEDGERSTONE_WORKSHOP_WRITABLE": "1"}
    service = Served(free_port(), told)
    service.start()
    try:
        size: Any = {"width": 390, "height": 844}
        context, page = at_form(browser, service, locale=COUNTRIES[country], viewport=size)
        page.locator(".jobs input").first.wait_for()
        found = [counted(page)]
        page.locator("#from-bags").check()
        page.locator('[data-pointer="/recipe/bag/price_per_bag"]').wait_for()
        found.append(counted(page))
        context.close()
    finally:
        service.stop()
    return found


def main() -> None:
    """Print a row for each country."""
    program = next(filter(None, map(shutil.which, BROWSERS)), None)
    with sync_playwright() as play, tempfile.TemporaryDirectory() as folder:
        browser = play.chromium.launch(executable_path=program, args=["--no-sandbox"])
        for country in COUNTRIES:
            for found in walked(browser, country, Path(folder)):
                print(country, found, f"{minutes(found):.1f} minutes", sep="  ")
        browser.close()


if __name__ == "__main__":
    main()
