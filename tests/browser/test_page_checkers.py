"""What the page weighs, and what Lighthouse says of it."""

import gzip
import json
import os
import re
import subprocess
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Request

from browser.conftest import ROOT, Served
from ledgerstone.wording import LANGUAGES
from support.page_waits import settled

pytestmark = pytest.mark.browser
WEB = ROOT / "web"
TOOLS = ROOT / "tests/node_modules"
MAX_BYTES = 90_000
MAX_FIRST_BYTES = 60_000  # before the first price
MAX_DESK_BYTES = 60_000  # beside the customers' page
MIN_SCORE = 0.98
TRIES = 8  # the best counts: each score falls with whatever else this machine does meanwhile


def test_the_page_packs_small() -> None:
    """All that the folder holds for a browser in one language, whatever part a visit loads."""
    apart = {"examples", "desk"}
    held = [f for f in WEB.rglob("*") if f.is_file() and not apart & set(f.relative_to(WEB).parts)]
    for language in LANGUAGES:
        document = "index.html" if language == "en" else f"index.{language}.html"
        own = {document, f"messages.{language}.js"}
        files = [f for f in held if f.name in own or not re.match(r"(index|messages)\.", f.name)]
        packed = sum(len(gzip.compress(file.read_bytes(), 9)) for file in files)
        print(f"the page, {language}: {len(files)} files, {packed / 1000:.1f} kB packed")
        assert packed <= MAX_BYTES


def test_the_desk_packs_small() -> None:
    """All that its folder holds for a browser in one language; its form, which loads apart, too."""
    for language in LANGUAGES:
        words = f"messages.{language}.js"
        for held in (WEB / "desk", WEB / "desk" / "workshop"):
            files = [f for f in held.iterdir() if f.is_file()]
            files = [f for f in files if f.name == words or not f.name.startswith("messages.")]
            packed = sum(len(gzip.compress(file.read_bytes(), 9)) for file in files)
            print(f"{held.name}, {language}: {len(files)} files, {packed / 1000:.1f} kB packed")
            assert packed <= MAX_DESK_BYTES


def test_a_visit_loads_little_and_asks_nobody_else(chromium: Browser, address: str) -> None:
    """All that loads comes from one place, packed, and nothing is logged."""
    context = chromium.new_context()
    page = context.new_page()
    loaded: list[str] = []
    faults: list[str] = []
    page.on("request", lambda request: loaded.append(request.url))
    page.on("console", lambda message: faults.append(message.text))
    page.on("pageerror", lambda fault: faults.append(str(fault)))
    first: list[str] = []

    def priced(request: Request) -> None:
        if request.url.endswith("/v1/quotes") and not first:
            first.extend(loaded)

    page.on("requestfinished", priced)
    page.goto(address)
    settled(page)
    assert faults == []
    assert all(url.startswith((address, "data:")) for url in loaded), loaded
    own = {url for url in loaded if url.startswith(address) and "/v1/" not in url}
    assert {f"{address}app.js", f"{address}styles/page.css"} <= own
    sizes = {}
    for url in own:
        answer = context.request.get(url, headers={"Accept-Encoding": "gzip"})
        sizes[url] = int(answer.headers["content-length"])
    context.close()
    sent, before = sum(sizes.values()), sum(sizes.get(url, 0) for url in set(first))
    print(f"a first visit: {len(own)} files, {sent / 1000:.1f} kB as sent")
    print(f"before the first price: {before / 1000:.1f} kB")
    assert sent < MAX_BYTES
    assert 0 < before <= MAX_FIRST_BYTES


def lighthouse(served: Served, browser_launch: dict[str, Any], report: Path) -> dict[str, float]:
    """Let Lighthouse look at the page once, as a phone on a slow line, and read its scores."""
    tool = TOOLS / ".bin/lighthouse"
    assert tool.exists(), "tests/run installs Lighthouse"
    flags = " ".join(["--headless=new", *browser_launch["args"]])
    subprocess.run(
        [
            *(
                tool,
                served.url,
                "--quiet",
                "--no-enable-error-reporting",
                "--output=json",
                f"--output-path={report}",
            ),
            "--only-categories=performance,accessibility,best-practices",
            f"--chrome-flags={flags}",
        ],
        env={**os.environ, "CHROME_PATH": browser_launch["executable_path"]},
        capture_output=True,
        timeout=180,
        check=True,
    )
    found = json.loads(report.read_text())
    return {name: part["score"] for name, part in found["categories"].items()}


@pytest.mark.alone
def test_lighthouse_scores_98_and_more(
    served: Served, browser_launch: dict[str, Any], tmp_path: Path
) -> None:
    """Performance, accessibility and best practices, in one and the same look at the page."""
    looks = []
    for _ in range(TRIES):
        scores = lighthouse(served, browser_launch, tmp_path / "report.json")
        print("Lighthouse:", ", ".join(f"{name} {score:.2f}" for name, score in scores.items()))
        looks.append(min(scores.values()))
        if looks[-1] >= MIN_SCORE:
            break
    assert max(looks) >= MIN_SCORE, looks
