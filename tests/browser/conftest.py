"""A served page and a browser to look at it with."""

import os
import signal
import socket
import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Protocol

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, Route, ViewportSize, expect

from browser.looking import no_violations as found_by_axe
from ledgerstone.workshop import DEMONSTRATION
from support.page_texts import desk_text
from support.page_waits import PATIENCE_MS, settled
from support.ports import free_port
from support.profile_form import begun
from support.programs import Program, run_beside
from support.serving import SHARING

MAKER_KEY = "the maker's key of the browser tests"
ROOT = Path(__file__).resolve().parents[2]
PHONE: ViewportSize = {"width": 360, "height": 740}
DESK: ViewportSize = {"width": 1440, "height": 900}

Settle = Callable[[Page], None]


class Look(Protocol):
    """Looks at a page as it stands."""

    def __call__(
        self, page: Page, state: str, *, contrast: bool = True, others: bool = True
    ) -> None:
        """Fail where something is amiss."""


@dataclass
class Served:
    """The service and its page on a port of this machine; it can be stopped and come back.

    ``also`` is told to it by its environment.
    """

    port: int
    also: dict[str, str] = field(default_factory=dict)
    process: Program | None = field(default=None, repr=False)

    @property
    def url(self) -> str:
        """Where the page is."""
        return f"http://127.0.0.1:{self.port}/"

    def start(self) -> None:
        """Start gunicorn with the shipped settings, and wait until it listens."""
        told = {
            "LEDGERSTONE_WEB": str(ROOT / "web"),
            "LEDGERSTONE_BASE_URL": self.url.rstrip("/"),
            "LEDGERSTONE_SIGNING_KEYS": "a signing key for the browser tests",
            "LEDGERSTONE_MAKER_KEY": MAKER_KEY,
            "WEB_CONCURRENCY": "2",
        }
        self.process = run_beside(
            "gunicorn",
            [
                *("--config", ROOT / "docker/gunicorn.conf.py"),
                *("--chdir", ROOT / "service", "--bind", f"127.0.0.1:{self.port}"),
                *SHARING,
            ],
            {**os.environ, **told, **self.also},
        )
        deadline = time.monotonic() + 2 * PATIENCE_MS / 1000
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


@pytest.fixture(scope="session")
def served() -> Iterator[Served]:
    """The page and the service of the demonstration workshop."""
    service = Served(free_port())
    service.start()
    yield service
    service.stop()


@pytest.fixture(scope="session")
def matching(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Served]:
    """The demonstration workshop, which matches any colour."""
    profile = tmp_path_factory.mktemp("workshop") / "workshop.toml"
    text = Path(DEMONSTRATION).read_text(encoding="utf-8")
    profile.write_text(text.replace("matching = false", "matching = true", 1), encoding="utf-8")
    service = Served(free_port(), {"LEDGERSTONE_WORKSHOP": str(profile)})
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


def with_requests(route: Route) -> None:
    """Answer the choices of a workshop whose profile names a mail server."""
    route.fulfill(json={**route.fetch().json(), "requests": True})


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
def settle() -> Settle:
    """Wait until the answer on the page is the whole answer to the order on the page."""
    return settled


@pytest.fixture
def no_violations() -> Look:
    """Let axe-core look at the page as it stands; ``state`` says in a failure how it stood.

    Contrast takes three quarters of its time, and is the same at every width, in every language
    and for every piece: who looks at one state after another in those leaves it out.
    """
    return found_by_axe


class Maker:
    """Someone at the desk, whose presses and pastes are counted."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.actions = 0

    def press(self, name: str) -> None:
        """Press the button of this name."""
        self.actions += 1
        self.page.get_by_role("button", name=name, exact=True).click()

    def press_first(self, name: str) -> None:
        """Press the first of the buttons of this name."""
        self.actions += 1
        self.page.get_by_role("button", name=name, exact=True).first.click()

    def replied(self, message: str) -> None:
        """From a pasted message to its reply on the clipboard, noted as sent."""
        self.paste(message)
        self.settle()
        self.press(desk_text("reply.write"))
        self.page.locator("#letter .subject").wait_for()
        self.press("Copy it")
        self.press(desk_text("reply.sent"))

    def paste(self, text: str) -> None:
        """Paste a message into its field, which has focus, as from the clipboard: it is asked for.

        A view that is not shown yet takes no focus, and what is pasted meanwhile goes nowhere.
        """
        self.actions += 1
        self.page.evaluate("text => navigator.clipboard.writeText(text)", text)
        expect(self.page.locator("#message")).to_be_focused()
        with self.page.expect_request("**/v1/enquiries"):
            self.page.keyboard.press("ControlOrMeta+V")

    def settle(self) -> None:
        """Wait for the message to be read, and for the whole answer to the order as it then is."""
        self.page.locator("#message:not([readonly])").wait_for(state="attached")
        settled(self.page)


@pytest.fixture
def profile(own_service: Served, tmp_path: Path, request: pytest.FixtureRequest) -> Path:
    """An American workshop's new file, or another country's, and a service that may write it."""
    file = tmp_path / "workshop.toml"
    file.write_text(begun(getattr(request, "param", "US")), encoding="utf-8")
    own_service.also = {"LEDGERSTONE_WORKSHOP": str(file), "LEDGERSTONE_WORKSHOP_WRITABLE": "1"}
    own_service.start()
    return file


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


def at_form(
    browser: Browser, served: Served, subject: str = "", **options: object
) -> tuple[BrowserContext, Page]:
    """Open the workshop's form at a subject, enter the key, and wait for the typical jobs."""
    context = browser.new_context(**options)  # type: ignore[arg-type]  # playwright's many
    context.set_default_timeout(PATIENCE_MS)
    page = context.new_page()
    page.goto(f"{served.url}desk/workshop/{subject}")
    enter(page, MAKER_KEY)
    page.locator("#outcome tr").nth(2).wait_for()
    return context, page


def kept_offers(page: Page) -> list[dict[str, Any]]:
    """Return the offers that the desk keeps in this browser, the newest first."""
    kept: list[dict[str, Any]] = page.evaluate(
        "JSON.parse(localStorage.getItem('ledgerstone.offers.1') ?? '[]')"
    )
    return kept


def enter(page: Page, key: str) -> None:
    """Enter a key."""
    page.locator("#key").fill(key)
    page.locator("#key").press("Enter")


@pytest.fixture
def maker(chromium: Browser, served: Served) -> Iterator[Maker]:
    """Someone at a laptop, the key entered."""
    context, page = at_desk(chromium, served, viewport=DESK)
    faults: list[str] = []
    page.on("console", lambda message: faults.append(message.text))
    page.on("pageerror", lambda fault: faults.append(str(fault)))
    yield Maker(page)
    context.close()
    assert [fault for fault in faults if "Security" in fault or "Error" in fault] == []
