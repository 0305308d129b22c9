"""What tests of every kind start from: the demonstration workshop, a day, an order, a client."""

import copy
import ctypes
import gc
import os
import shutil
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest
from hypothesis import HealthCheck, settings

from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile
from support import programs
from support.browsers import BROWSERS
from support.day import TODAY
from support.demonstration import EXAMPLE_ORDER, demonstration_app
from support.drawn_constants import draw_without_our_constants

if TYPE_CHECKING:
    from flask import Flask
    from flask.testing import FlaskClient
    from playwright.sync_api import Browser

    from support.profile_form import NewForm

pytest_plugins = ("support.workers",)

# The same cases on every machine and in every run; --long looks for new ones. No machine is too
# slow to draw them.
UNTIMED: dict[str, Any] = {"deadline": None, "suppress_health_check": [HealthCheck.too_slow]}
settings.register_profile("every-run", **UNTIMED, derandomize=True, max_examples=40)
settings.register_profile("long", **UNTIMED, max_examples=2000)
settings.load_profile("every-run")

# The folders that are begun at either end of the row of files.
_PLACES = {"browser": 0, "faults": 0, "load": 0, "unit": 1, "laws": 3, "design": 4}
_IN_THE_MIDDLE = 2

# The folders whose tests take a plate that another has solved, and their files that do not: what
# those hold is how results are kept, or how much is worked out.
_SHARING = {"api", "unit", "workshops"}
_WORKING_IT_OUT = {"test_api_lane", "test_budget", "test_search", "test_slabs", "test_stages_cache"}

# M_TRIM_THRESHOLD, M_TOP_PAD and M_MMAP_THRESHOLD of malloc.h, bytes.
_FREED_MEMORY = {-1: 1 << 29, -2: 1 << 26, -3: 1 << 25}


def pytest_addoption(parser: pytest.Parser) -> None:
    """Add the option for the folder of a desk walk's pictures."""
    parser.addoption(
        "--pictures", type=Path, help="a folder for pictures of the desk, at each step"
    )


def pytest_configure() -> None:
    """Ask servers of our own on this machine, whatever proxy it has for others.

    No garbage is looked for while tests are collected: there is none.
    """
    gc.disable()
    _keep_freed_memory()
    for name in ("no_proxy", "NO_PROXY"):
        known = os.environ.get(name, "")
        os.environ[name] = ",".join(filter(None, (known, "localhost", "127.0.0.1")))


def _keep_freed_memory() -> None:
    """Let large arrays reuse memory: to map each anew takes a sixth of the time of a plate's test.

    Of this process and those that it forks alone: what tests start has the settings of its
    environment, as the service does. Only the GNU C library has the call (mallopt(3)).
    """
    mallopt = getattr(ctypes.CDLL(None), "mallopt", None)
    if mallopt is not None:
        for parameter, size in _FREED_MEMORY.items():
            mallopt(parameter, size)


def pytest_sessionstart() -> None:
    """Let the cases of a law depend on the law alone, but in a long search."""
    if settings.get_current_profile_name() == "every-run":
        draw_without_our_constants(pytest.MonkeyPatch())


def pytest_ignore_collect(collection_path: Path, config: pytest.Config) -> bool | None:
    """Leave files of long searches alone where none is run: to collect one takes its time too."""
    unwanted = "not long" in config.option.markexpr
    return True if unwanted and collection_path.name.endswith("_long.py") else None


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Put files that wait on servers and browsers first, and those that compute longest last.

    Processes take files from both ends (``support.workers``); the shortest are in the middle, so
    that none of them is alone at the end.
    """
    items.sort(key=lambda item: _PLACES.get(item.path.parent.name, _IN_THE_MIDDLE))


def pytest_collection_finish(session: pytest.Session) -> None:
    """Load what several processes share before they are forked.

    What was collected and loaded is left out of garbage collection: there are a million objects.
    """
    if session.config.option.workers > 1 and not session.config.option.collectonly:
        from support import shared_results  # noqa: PLC0415 - a run in one process may need none

        programs.load()
        programs.read_once()
        shared_results.folder()
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 50)  # it finds next to nothing, and takes a thirtieth of the time
    gc.enable()


@pytest.fixture(scope="module", autouse=True)
def _shared_results(request: pytest.FixtureRequest) -> Iterator[None]:
    if request.path.parent.name not in _SHARING or request.path.stem in _WORKING_IT_OUT:
        yield
        return
    from support.shared_results import shared_results  # noqa: PLC0415 - others need no plate

    with shared_results():
        yield


@pytest.fixture(scope="session")
def workshop() -> Workshop:
    """The demonstration workshop, read once: its records are frozen."""
    return load_profile(DEMONSTRATION)


@pytest.fixture(scope="session")
def today() -> date:
    """A working Wednesday, four months before the example order is needed."""
    return TODAY


@pytest.fixture
def example_order() -> dict[str, Any]:
    """The design's example order, the test's own to change."""
    return copy.deepcopy(EXAMPLE_ORDER)


@pytest.fixture(scope="module")
def app(today: date) -> "Flask":
    """The service on the tests' own day, one for the tests of a file.

    What it works out for one of them it knows for the next. Tests that change the service, or put
    faults into it, have one each.
    """
    return demonstration_app(today)


@pytest.fixture
def client(app: "Flask") -> "FlaskClient":
    """A caller of the service, without a socket between."""
    return app.test_client()


@pytest.fixture(scope="session")
def new_form(tmp_path_factory: pytest.TempPathFactory) -> "NewForm":
    """A client of the form of a new maker's file, by country and language; nobody saves it."""
    from support.profile_form import new_forms  # noqa: PLC0415 - only its tests need flask

    return new_forms(tmp_path_factory.mktemp("forms"))


@pytest.fixture(scope="session")
def browser_launch() -> dict[str, Any]:
    """How playwright starts the browser: an installed one, else its own, kept off the network."""
    return {
        "executable_path": next(filter(None, map(shutil.which, BROWSERS)), None),
        "args": [
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--font-render-hinting=none",  # as where there is a window
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
        ],
    }


@pytest.fixture(scope="session")
def chromium(browser_launch: dict[str, Any]) -> "Iterator[Browser]":
    """One browser for all the tests."""
    # Few tests have a browser.
    from playwright.sync_api import expect, sync_playwright  # noqa: PLC0415

    from support.page_waits import PATIENCE_MS  # noqa: PLC0415

    expect.set_options(timeout=PATIENCE_MS)
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(**browser_launch)
        yield browser
        browser.close()
