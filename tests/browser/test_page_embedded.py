"""The page in a maker's own site: one line, its height, its looks, a strict policy."""

import math
import re
from collections.abc import Iterator
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread
from typing import ClassVar

import pytest
from playwright.sync_api import Browser, Frame, Page, expect

from browser.conftest import Look, Served
from browser.gestures import eventually
from support.page_waits import settled
from support.ports import free_port

pytestmark = pytest.mark.browser
ROOT = Path(__file__).resolve().parents[2]
EXAMPLES = ROOT / "web/examples"
PROFILE = ROOT / "service/ledgerstone/workshop/demonstration.toml"


class Maker(BaseHTTPRequestHandler):
    """The maker's own server: the example, with the service's address where he would write it."""

    service = ""
    pages: ClassVar[dict[str, str]] = {}

    def do_GET(self) -> None:
        """Answer with a page of the test's own, or one of the example's files."""
        file = EXAMPLES / self.path.lstrip("/")
        own = self.pages.get(self.path, "")
        found = bool(own) or file.is_file()
        text = own or (file.read_text() if found else "")
        text = text.replace('src="../', f'src="{self.service}').replace(
            "'self'", f"'self' {self.service}"
        )
        self.send_response(200 if found else 404)
        self.send_header("Content-Type", "text/css" if file.suffix == ".css" else "text/html")
        self.end_headers()
        self.wfile.write(
            text.replace('href="../icon.svg"', f'href="{self.service}icon.svg"').encode()
        )

    def log_message(self, *_: object) -> None:
        """Say nothing."""


@pytest.fixture(scope="module")
def maker() -> Iterator[str]:
    """Where the made-up maker's own site is: another origin than the service's."""
    server = ThreadingHTTPServer(("127.0.0.1", 0), Maker)
    Thread(target=server.serve_forever, daemon=True).start()
    yield f"http://127.0.0.1:{server.server_port}"
    server.shutdown()
    server.server_close()


@pytest.fixture(scope="module")
def framed(tmp_path_factory: pytest.TempPathFactory, maker: str) -> Iterator[str]:
    """A service whose profile lets the made-up maker's site frame its page."""
    profile = tmp_path_factory.mktemp("workshop") / PROFILE.name
    told = PROFILE.read_text()
    assert "origins = []" in told
    profile.write_text(told.replace("origins = []", f'origins = ["{maker}"]'))
    service = Served(free_port(), {"LEDGERSTONE_WORKSHOP": str(profile)})
    service.start()
    yield service.url
    service.stop()


@pytest.fixture
def site(chromium: Browser, framed: str, maker: str) -> Iterator[Page]:
    """The made-up maker's site, at an address of its own; its console stays silent."""
    Maker.service = framed
    context = chromium.new_context(locale="en-GB", viewport={"width": 1000, "height": 800})
    page = context.new_page()
    faults: list[str] = []
    page.on("console", lambda message: faults.append(message.text))
    page.on("pageerror", lambda fault: faults.append(str(fault)))
    page.goto(f"{maker}/workshop.html")
    yield page
    context.close()
    axes_own = f"target origin provided ('{maker}')"  # axe-core asks the frame as if it were ours
    assert [fault for fault in faults if axes_own not in fault] == []


def inside(page: Page) -> Frame:
    """The pricing page in its frame, once it has answered."""
    settled(page.frame_locator("iframe"))
    return page.frames[1]


def test_one_line_puts_the_page_into_a_site(site: Page, no_violations: Look) -> None:
    """It is priced there under the site's strict policy, without a fault in the console."""
    frame = inside(site)
    expect(frame.locator(".price .first")).to_contain_text("£")
    expect(site.locator("iframe")).to_have_attribute("title", "Price your slab")
    expect(site.locator("iframe")).to_have_attribute("allow", "clipboard-write")
    no_violations(site, "a maker's site")


def test_the_frame_is_as_high_as_the_page(site: Page) -> None:
    """Nothing scrolls inside it, and it follows when the page grows."""
    frame = inside(site)
    whole = "document.documentElement"
    fits = f"{whole}.scrollHeight - {whole}.clientHeight <= 1"
    eventually(site, lambda: frame.evaluate(fits))
    before = frame.evaluate(f"{whole}.clientHeight")
    frame.get_by_role("button", name="Basin", exact=True).click()
    settled(frame)
    grows = f"{whole}.clientHeight > {before} && {fits}"
    eventually(site, lambda: frame.evaluate(grows))


def test_the_price_stays_in_sight_in_a_frame(site: Page) -> None:
    """However far the site is scrolled, the bar with the price stands at the foot of what shows."""
    frame = inside(site)
    for y in (300, 1200):
        site.evaluate(f"window.scrollTo(0, {y})")
        eventually(site, lambda: abs(_foot(frame) - 800) <= 2)


def _foot(frame: Frame) -> float:
    """How far down the window the bar ends."""
    box = frame.locator("#bar").bounding_box()
    return box["y"] + box["height"] if box else math.inf


def test_the_looks_follow_the_site(site: Page) -> None:
    """Accent, typeface and radius are the site's custom properties."""
    frame = inside(site)
    button = frame.get_by_role("button", name="Basin", exact=True)
    expect(button).to_have_css("color", "rgb(138, 59, 18)")
    expect(button).to_have_css("border-radius", "8px")
    expect(button).to_have_css("font-family", re.compile("^Georgia"))


WRAPPED = """<!doctype html><title>A site</title><head><script>
const made = document.createElement("script");
Object.assign(made.dataset, {into: "#here", scheme: "dark"});
made.src = "%sembed.js";
document.head.append(made);
</script></head><p>Before</p>
<div id="here" style="--slab-ground-dark: #102030"></div><p>After</p>"""
LINE = "<div><script src='%sembed.js' data-scheme='light'></script></div>"
GROUND = "getComputedStyle(document.documentElement).backgroundColor"


def test_it_stands_where_a_wrapper_says_in_the_scheme_it_says(
    site: Page, framed: str, maker: str
) -> None:
    """Put there by another script, and in a frame's srcdoc, it is priced, dark or light as told."""
    Maker.pages["/wrapped.html"] = WRAPPED % framed
    site.goto(f"{maker}/wrapped.html")
    expect(site.locator("#here > iframe")).to_be_visible()
    assert inside(site).evaluate(GROUND) == "rgb(16, 32, 48)"
    line = f'<iframe srcdoc="{LINE % framed}" width="900" height="900"></iframe>'
    site.emulate_media(color_scheme="dark")
    Maker.pages["/framed.html"] = f"<!doctype html><title>A site</title>{line}"
    site.goto(f"{maker}/framed.html")
    inner = site.frame_locator("iframe").frame_locator("div > iframe")
    settled(inner)
    assert site.frames[2].evaluate(GROUND) == "rgb(250, 248, 242)"


def test_a_link_in_the_frame_scrolls_the_site(site: Page) -> None:
    """From the bar at the foot of what shows, the answer comes to the top of the window."""
    frame = inside(site)
    site.evaluate("window.scrollTo(0, 400)")
    frame.locator("#glance").click()
    eventually(site, lambda: 0 <= _top(frame) <= 80)


def _top(frame: Frame) -> float:
    """How far down the window the answer begins."""
    box = frame.locator("#answer").bounding_box()
    return box["y"] if box else math.inf


def test_a_height_from_anybody_else_is_ignored(site: Page) -> None:
    """Only the pricing page's own window at its own origin sets the frame's height."""
    frame = inside(site)
    settled(frame)
    site.evaluate("window.postMessage({type: 'ledgerstone:height', v: 1, px: 9999}, '*')")
    site.wait_for_timeout(200)  # for a height that must not come
    height = site.locator("iframe").evaluate("frame => frame.clientHeight")
    assert height < 9999


def test_looks_that_are_none_are_left_out(site: Page, framed: str, maker: str) -> None:
    """What an address says of looks is a colour, a typeface or a radius, or it is nothing."""
    site.goto(f"{maker}/frame.html")
    accent = "document.documentElement.style.getPropertyValue('--slab-accent')"
    assert inside(site).evaluate(accent) == "#8a3b12"
    odd = f"{framed}?accent=url(x)&radius=red&type="
    site.evaluate("address => { document.querySelector('iframe').src = address; }", odd)
    site.frames[1].wait_for_url(odd)
    assert inside(site).evaluate("document.documentElement.getAttribute('style') ?? ''") == ""


def test_a_site_that_the_profile_does_not_name_is_not_let_frame_it(
    chromium: Browser, address: str, maker: str
) -> None:
    """The service's own policy says who may; elsewhere a link leads to the page itself."""
    context = chromium.new_context()
    Maker.service = address
    page = context.new_page()
    refused: list[str] = []
    page.on("console", lambda message: refused.append(message.text))
    page.goto(f"{maker}/workshop.html")
    link = page.get_by_role("link", name="Price your slab")
    expect(link).to_have_attribute("href", re.compile(f"^{re.escape(address)}"))
    assert page.locator("iframe").count() == 0
    assert any(maker in words and "origins" in words for words in refused)
    assert any("frame-ancestors" in words for words in refused)
    context.close()
