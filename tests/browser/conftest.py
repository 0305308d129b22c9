"""A served page and a browser to look at it with."""

import os
import signal
import socket
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Protocol

import pytest
from axe_playwright_python.sync_playwright import (  # type: ignore[import-untyped]  # has no types
    Axe,
)
from playwright.sync_api import Browser, BrowserContext, Page, ViewportSize, sync_playwright

MAKER_KEY = "the maker's key of the browser tests"
ROOT = Path(__file__).resolve().parents[2]
PHONE: ViewportSize = {"width": 360, "height": 740}
DESK: ViewportSize = {"width": 1440, "height": 900}
PATIENCE_MS = 20_000  # a bound on waiting, not a measure: the machine may be busy


class Look(Protocol):
    """Looks at a page as it stands."""

    def __call__(self, page: Page, state: str, *, contrast: bool = True) -> None:
        """Fail where something is amiss."""


@dataclass
class Served:
    """The service and its page on a port of this machine; it can be stopped and come back.

    ``also`` is told to it by its environment.
    """

    port: int
    also: dict[str, str] = field(default_factory=dict)
    process: subprocess.Popen[bytes] | None = field(default=None, repr=False)

    @property
    def url(self) -> str:
        """Where the page is."""
        return f"http://127.0.0.1:{self.port}/"

    def start(self) -> None:
        """Start gunicorn as it is run everywhere, and wait until it listens."""
        told = {
            "LEDGERSTONE_WEB": str(ROOT / "web"),
            "LEDGERSTONE_BASE_URL": self.url.rstrip("/"),
            "LEDGERSTONE_SIGNING_KEYS": "a signing key for the browser tests",
            "LEDGERSTONE_MAKER_KEY": MAKER_KEY,
            "WEB_CONCURRENCY": "2",
        }
        self.process = subprocess.Popen(
            [
                *(sys.executable, "-m", "gunicorn"),
                *("--config", str(ROOT / "docker/gunicorn.conf.py")),
                *("--chdir", str(ROOT / "service"), "--bind", f"127.0.0.1:{self.port}"),
            ],
            env={**os.environ, **told, **self.also},
        )
        deadline = time.monotonic() + 30
        while not self._listens():
            if self.process.poll() is not None or time.monotonic() > deadline:
                pytest.fail("The service did not start; its own words are above.")
            time.sleep(0.05)

    def stop(self) -> None:
        """Stop the service, as if the machine had gone."""
        if self.process is not None:
            self.process.send_signal(signal.SIGTERM)
            self.process.wait(timeout=20)
            self.process = None

    def _listens(self) -> bool:
        with socket.socket() as caller:
            caller.settimeout(0.2)
            return caller.connect_ex(("127.0.0.1", self.port)) == 0


def free_port() -> int:
    """Ask the machine for a port that nothing listens on."""
    with socket.socket() as listener:
        listener.bind(("127.0.0.1", 0))
        return int(listener.getsockname()[1])


@pytest.fixture(scope="session")
def served() -> Iterator[Served]:
    """The page and the service of the demonstration workshop."""
    service = Served(free_port())
    service.start()
    yield service
    service.stop()


@pytest.fixture
def address(served: Served) -> str:
    """Where the page is, with its last slash."""
    return served.url


@pytest.fixture
def own_service() -> Iterator[Served]:
    """A service of the test's own, to stop and start; not yet started."""
    service = Served(free_port())
    yield service
    service.stop()


@pytest.fixture(scope="session")
def chromium(browser_launch: dict[str, Any]) -> Iterator[Browser]:
    """One browser for all the tests."""
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(**browser_launch)
        yield browser
        browser.close()


def opened(
    browser: Browser,
    served: Served,
    **options: Any,
) -> tuple[BrowserContext, Page]:
    """Open the page in a visitor's own context, with British habits."""
    context = browser.new_context(locale="en-GB", timezone_id="Europe/London", **options)
    context.set_default_timeout(PATIENCE_MS)
    page = context.new_page()
    page.goto(served.url)
    page.locator("#plan .stone[d]").wait_for(state="attached")  # the form is live, not only there
    return context, page


@pytest.fixture
def phone(chromium: Browser, served: Served) -> Iterator[Page]:
    """The page on a phone that is touched."""
    context, page = opened(chromium, served, viewport=PHONE, has_touch=True, is_mobile=True)
    yield page
    context.close()


@pytest.fixture
def desk(chromium: Browser, served: Served) -> Iterator[Page]:
    """The page on a desk, with mouse and keyboard."""
    context, page = opened(chromium, served, viewport=DESK)
    yield page
    context.close()


@pytest.fixture
def settle() -> Callable[[Page], None]:
    """Wait until the answer on the page is the whole answer to the order on the page."""

    def wait(page: Page) -> None:
        page.locator("ledgerstone-answer[data-state=settled]").wait_for()

    return wait


@pytest.fixture
def no_violations() -> Look:
    """Let axe-core look at the page as it stands; ``state`` says in a failure how it stood.

    Contrast takes three quarters of its time, and is the same at every width, in every language
    and for every piece: who looks at one state after another in those leaves it out.
    """
    axe = Axe()

    def look(page: Page, state: str, *, contrast: bool = True) -> None:
        rules = {"color-contrast": {"enabled": contrast}}
        found = axe.run(page, options={"resultTypes": ["violations"], "rules": rules})
        assert not found.violations_count, f"{state}: {found.generate_report()}"

    return look


class Maker:
    """Somebody at the desk, whose presses and pastes are counted."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.actions = 0

    def press(self, name: str) -> None:
        """Press the button of this name."""
        self.actions += 1
        self.page.get_by_role("button", name=name, exact=True).click()

    def paste(self, text: str) -> None:
        """Paste a text into the field that has focus, as from the clipboard."""
        self.actions += 1
        self.page.evaluate("text => navigator.clipboard.writeText(text)", text)
        self.page.keyboard.press("ControlOrMeta+V")

    def settle(self) -> None:
        """Wait for the whole answer to the order as it stands."""
        self.page.locator("ledgerstone-answer[data-state=settled]").wait_for()


def at_desk(browser: Browser, served: Served, **options: object) -> tuple[BrowserContext, Page]:
    """Open the desk and enter the key."""
    context = browser.new_context(
        locale="en-GB",
        permissions=["clipboard-read", "clipboard-write"],
        **options,  # type: ignore[arg-type]  # playwright's many
    )
    context.set_default_timeout(PATIENCE_MS)
    page = context.new_page()
    page.goto(f"{served.url}desk/")
    enter(page, MAKER_KEY)
    page.locator("#message").wait_for()
    return context, page


def enter(page: Page, key: str) -> None:
    """Enter a key."""
    page.locator("#key").fill(key)
    page.locator("#key").press("Enter")


@pytest.fixture
def maker(chromium: Browser, served: Served) -> Iterator[Maker]:
    """Somebody at a laptop, the key entered."""
    context, page = at_desk(chromium, served, viewport=DESK)
    faults: list[str] = []
    page.on("console", lambda message: faults.append(message.text))
    page.on("pageerror", lambda fault: faults.append(str(fault)))
    yield Maker(page)
    context.close()
    assert [fault for fault in faults if "Security" in fault or "Error" in fault] == []
