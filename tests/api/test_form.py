"""The page's form without a script: sent as it is, and answered with a page."""

import re
from collections.abc import Iterator
from html.parser import HTMLParser
from pathlib import Path
from typing import TYPE_CHECKING
from urllib.parse import urlencode

import pytest

from ledgerstone.api import Settings, create_app
from ledgerstone.codec.strict_json import LARGEST_BYTES
from ledgerstone.form_page.sent import MAX_FIELDS
from ledgerstone.workshop import DEMONSTRATION
from support.demonstration import EXAMPLE_ORDER, SIGNING_KEYS

if TYPE_CHECKING:
    from flask.testing import FlaskClient
    from werkzeug.test import TestResponse

WEB = Path(__file__).resolve().parents[2] / "web"
FORM = "application/x-www-form-urlencoded"
PLAIN = {
    "outline/kind": "rectangle",
    "outline/length": "1450",
    "outline/width": "56 cm",
    "thickness": "40",
    "place": "indoors",
    "delivery/kind": "collect",
    "unit": "mm",
}
BASIN = {
    "slabs/0/cutouts/0/kind": "circle",
    "slabs/0/cutouts/0/label": "<script>basin</script>",
    "slabs/0/cutouts/0/diameter": "360",
    "slabs/0/cutouts/0/centre/x": "200",
    "slabs/0/cutouts/0/centre/y": "200",
}


class Fields(HTMLParser):
    """What the controls of a page hold, and what of it is at fault."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.held: dict[str, str] = {}
        self.at_fault: list[str] = []
        self.described: dict[str, list[str]] = {}
        self.ids: list[str] = []
        self.tags: list[str] = []
        self._select = ""
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Take in one element."""
        told = {name: value or "" for name, value in attrs}
        self.tags.append(tag)
        self.ids += [told["id"]] if "id" in told else []
        name = told.get("name", "")
        if "aria-invalid" in told:
            self.at_fault.append(name)
            self.described[name] = told.get("aria-describedby", "").split()
        if tag == "select":
            self._select = name
        elif tag == "option" and "selected" in told:
            self.held[self._select] = told["value"]
        elif tag == "input" and (
            told.get("type") not in ("radio", "checkbox") or "checked" in told
        ):
            self.held[name] = told.get("value", "")


@pytest.fixture(scope="module")
def visitor() -> "FlaskClient":
    """A caller of a service that has the page."""
    settings = Settings(workshop_path=DEMONSTRATION, signing_keys=SIGNING_KEYS, web_folder=WEB)
    return create_app(settings).test_client()


def send(visitor: "FlaskClient", fields: dict[str, str], at: str = "/") -> "TestResponse":
    """Send the form as a browser without scripts does."""
    return visitor.post(at, data=urlencode(fields), content_type=FORM)


def entries(value: object, place: str = "") -> Iterator[tuple[str, str]]:
    """Write an order as the entries of a form, each by its place."""
    if isinstance(value, dict | list):
        members = value.items() if isinstance(value, dict) else enumerate(value)
        for key, inner in members:
            yield from entries(inner, f"{place}/{key}".removeprefix("/"))
    else:
        yield place, "yes" if value is True else str(value)


def test_a_form_is_answered_as_its_order_is(visitor: "FlaskClient") -> None:
    """The page holds the price, the day and the link that the same order has as JSON."""
    quote = visitor.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    answer = send(visitor, dict(entries(EXAMPLE_ORDER)))
    assert (answer.status_code, answer.mimetype) == (200, "text/html")
    assert f'href="{quote["link"]}"' in answer.text
    assert f"£{float(quote['price']['total']):,.2f}" in answer.text
    picture = re.search(r'src="http://[^/]+([^"]+)"', answer.text)
    assert picture is not None
    assert visitor.get(picture[1].replace("&amp;", "&")).mimetype == "image/png"
    assert "script" not in Fields(answer.text).tags
    policy = visitor.get("/v1/choices").headers["Content-Security-Policy"]
    assert answer.headers["Content-Security-Policy"] == policy
    assert "style=" not in answer.text


def test_faults_stand_beside_their_fields_and_nothing_is_lost(visitor: "FlaskClient") -> None:
    """Each field at fault says so where it stands, in German on the German page."""
    sent = {**PLAIN, "outline/length": "lang", "quantity": "viele"}
    answer = send(visitor, sent, "/index.de.html")
    assert answer.status_code == 400
    fields = Fields(answer.text)
    assert sorted(fields.at_fault) == ["outline/length", "quantity"]
    assert all(set(fields.described[name]) <= set(fields.ids) for name in fields.at_fault)
    assert {name: fields.held[name] for name in sent} == sent
    assert '<html lang="de"' in answer.text
    assert answer.text.count('href="#outline-length"') == 1


def test_what_cannot_be_made_is_changed_by_one_press(visitor: "FlaskClient") -> None:
    """The finding stands beside its opening; the change that settles it is then in the form."""
    answer = send(visitor, {**PLAIN, **BASIN})
    assert answer.status_code == 422
    assert "<script>basin" not in answer.text
    assert "&lt;script&gt;basin" in answer.text
    assert '<button type="submit" form="order" name="fix" value="all">' in answer.text
    fixed = send(visitor, {**PLAIN, **BASIN, "fix": "all"})
    assert fixed.status_code == 200
    held = Fields(fixed.text).held
    assert held["slabs/0/cutouts/0/centre/x"] == "240 mm"
    assert held["outline/length"] == "1450 mm"
    assert send(visitor, {name: held[name] for name in held if name}).status_code == 200


def test_a_row_is_added_and_taken_out(visitor: "FlaskClient") -> None:
    """Its button sends the form, which comes back with the row and all that was typed."""
    added = send(visitor, {**PLAIN, **BASIN, "add": "slabs/0/cutouts slot"})
    held = Fields(added.text).held
    assert added.status_code == 200
    assert held["slabs/0/cutouts/1/kind"] == "slot"
    assert held["slabs/0/cutouts/0/diameter"] == "360"
    assert "slabs/0/cutouts/1/diameter" not in held
    left = send(visitor, {**{k: v for k, v in held.items() if k}, "remove": "slabs/0/cutouts/0"})
    held = Fields(left.text).held
    assert held["slabs/0/cutouts/0/kind"] == "slot"
    assert not any(name.startswith("slabs/0/cutouts/1/") for name in held)
    units = Fields(send(visitor, {**PLAIN, "add": "slabs/0/rests/units"}).text).held
    assert {"slabs/0/rests/units/0/width", "slabs/0/rests/units/0/for"} <= units.keys()


def test_the_form_holds_what_is_chosen_from_the_workshops_own(visitor: "FlaskClient") -> None:
    """Shade, surface, sealer and each side's edge can be chosen, and stay chosen."""
    look = {
        "slabs/0/shade/name": "chalk",
        "slabs/0/finish/surface": "honed",
        "slabs/0/edges/front/profile": "bevel",
        "slabs/0/edges/front/size": "5",
    }
    answer = send(visitor, {**PLAIN, **look})
    held = Fields(answer.text).held
    assert answer.status_code == 200
    assert {name: held[name] for name in look} == look
    assert held["slabs/0/edges/back/profile"] == "square"


def test_no_text_of_a_form_becomes_markup(visitor: "FlaskClient") -> None:
    """What was typed into any field stands escaped in the page, whether it is understood or not."""
    markup = "\"><script>x</script>'"
    page = (WEB / "index.html").read_text(encoding="utf-8").partition("<template")[0]
    names = set(re.findall(r'<(?:input|select)[^>]* name="([^"]+)"', page))
    assert len(names) > 40
    answer = send(visitor, dict.fromkeys(sorted(names), markup) | {"nobody/knows": markup})
    assert answer.status_code == 400
    assert "<script" not in answer.text
    assert Fields(answer.text).held["outline/length"] == markup


@pytest.mark.parametrize(
    ("body", "status"),
    [
        (b"a=" + b"x" * LARGEST_BYTES, 413),
        (b"label=\xff", 400),
        (b"label=%ff", 400),
        (b"&".join(b"a%d=1" % i for i in range(MAX_FIELDS + 1)), 400),
        (b"a/" * 40 + b"b=1", 400),
        (b"a" * 121 + b"=1", 400),
        (b"a%00b=1", 400),
        (b"adjustments/0/text=x", 400),
        (b"slabs=1&slabs/0=2&slabs/0/label=3", 400),
        (b"add=slabs/0/cutouts/9/points&remove=x", 200),
        (b"remove=slabs/0/cutouts/99999", 200),
        (b"", 400),
    ],
)
def test_a_form_is_held_to_the_bounds_of_an_order(
    visitor: "FlaskClient", body: bytes, status: int
) -> None:
    """Whatever is sent, it is refused in words or answered, and nothing fails."""
    answer = visitor.post("/", data=body, content_type=FORM)
    assert answer.status_code == status
    assert (answer.mimetype == "text/html") == (status != 413)


def test_only_a_form_is_taken_and_only_by_the_page(visitor: "FlaskClient") -> None:
    """Any other type is refused, and so is a form at a file that is no page."""
    assert visitor.post("/", json=EXAMPLE_ORDER).status_code == 415
    assert send(visitor, PLAIN, "/app.js").status_code == 405
    accept = {"Accept": "application/json"}
    assert (
        visitor.post("/", data=urlencode(PLAIN), content_type=FORM, headers=accept).status_code
        == 406
    )
