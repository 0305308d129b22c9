"""POST /v1/sheets/{approval|fitting|care}: papers with the quote's own figures, in three forms."""

import re
import subprocess
from datetime import date
from decimal import Decimal
from pathlib import Path
from typing import TYPE_CHECKING, Any
from xml.etree import ElementTree as ET

import html5lib
import pytest

from ledgerstone.json_types import JSON
from ledgerstone.quantities import Length
from ledgerstone.wording import Message, english
from support.asking import NEVER_SAID, PROBLEM, changed
from support.demonstration import EXAMPLE_ORDER
from support.in_english import value_in_english
from support.offered import MAKER, reworded, service, slabs_order

if TYPE_CHECKING:
    from flask.testing import FlaskClient

KINDS = ("approval", "fitting", "care", "carry")
L_ORDER: dict[str, Any] = {
    "slabs": [
        {
            "label": "Corner top",
            "outline": {
                "kind": "l-shape",
                "length": "2000 mm",
                "width": "1000 mm",
                "notch": {"corner": "front-right", "length": "1200 mm", "width": "400 mm"},
            },
            "thickness": "40 mm",
            "size_from": "between-walls",
            "edges": {"back": {"profile": "wall"}, "left": {"profile": "wall"}},
            "rests": {"kind": "full"},
            "finish": {"surface": "polished", "sealer": "satin"},
        }
    ]
}


def _sheet(client: "FlaskClient", kind: str, form: str, **asked: JSON) -> JSON:
    answer = client.post(f"/v1/sheets/{kind}", json=asked, headers={**MAKER, "Accept": form})
    assert answer.status_code == 200, answer.text
    assert answer.mimetype == form
    return answer.get_json() if form == "application/json" else answer.data


def _pdf_text(tmp_path: Path, content: bytes) -> str:
    path = tmp_path / "sheet.pdf"
    path.write_bytes(content)
    read = subprocess.run(["pdftotext", "-raw", path, "-"], capture_output=True, check=True)
    return " ".join(read.stdout.decode().split())


def _said(sheet: JSON) -> list[str]:
    """Every text of a sheet."""
    if isinstance(sheet, dict):
        return [text for value in sheet.values() for text in _said(value)]
    if isinstance(sheet, list):
        return [text for value in sheet for text in _said(value)]
    return [sheet]


@pytest.mark.parametrize("kind", KINDS)
def test_a_sheet_says_the_same_in_every_form(
    client: "FlaskClient", tmp_path: Path, kind: str
) -> None:
    """Each text of the JSON stands in the HTML and in the PDF."""
    asked = {"order": EXAMPLE_ORDER, "customer": "Odile Ångström"}
    told = _sheet(client, kind, "application/json", **asked)
    page = html5lib.parse(
        _sheet(client, kind, "text/html", **asked).decode(), namespaceHTMLElements=False
    )
    html = " ".join("".join(page.itertext()).split())
    pdf = _pdf_text(tmp_path, _sheet(client, kind, "application/pdf", **asked)).replace(" ", "")
    words = [section.pop("words") for section in told["sections"]]
    assert len(words) == len(told["sections"])
    for text in filter(None, _said(told)):
        assert " ".join(text.split()) in html
        assert text.replace(" ", "") in pdf


@pytest.mark.parametrize("kind", KINDS)
def test_a_sheet_is_the_same_twice(client: "FlaskClient", kind: str) -> None:
    """The same order on the same day gives the same bytes, PDF too."""
    for form in ("text/html", "application/pdf"):
        one, two = (_sheet(client, kind, form, order=EXAMPLE_ORDER) for _ in range(2))
        assert one == two


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("count", [1, 8])
def test_a_page_is_html5(client: "FlaskClient", kind: str, count: int) -> None:
    """A page has no fault of syntax, one title, and stands under a policy that runs nothing."""
    answer = client.post(
        f"/v1/sheets/{kind}",
        json={"order": slabs_order(count)},
        headers={**MAKER, "Accept": "text/html"},
    )
    parser = html5lib.HTMLParser(namespaceHTMLElements=False)
    tree = parser.parse(answer.text)
    assert parser.errors == []
    assert len(list(tree.iter("h1"))) == 1
    assert list(tree.iter("script")) == []
    assert "script-src" not in answer.headers["Content-Security-Policy"]
    assert answer.headers["Content-Security-Policy"].startswith("default-src 'none'")


def test_the_approval_is_the_quote(client: "FlaskClient") -> None:
    """Price, tax, deposit, days, mass, size and reference are the quote's to the character."""
    quote = client.post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()
    told = _sheet(client, "approval", "application/json", order=EXAMPLE_ORDER)
    facts = {fact["what"]: fact["says"] for fact in told["facts"]}
    price, lead = quote["price"], quote["lead_time"]
    assert facts["Quotation"] == quote["reference"]
    assert (
        facts["Price"]
        == f"£{Decimal(price['total']):,.2f}, including £{Decimal(price['tax']):,.2f} VAT at 20%"
    )
    assert facts["Deposit"] == f"£{Decimal(price['deposit']):,.2f}"
    assert facts["Weight, packed"] == f"{quote['weight']['packed_kg']} kg"
    for name, day in (("Ready on", lead["ready_on"]), ("How it comes", lead["arrives"]["latest"])):
        assert value_in_english(date.fromisoformat(day)) in facts[name]
    slab = {fact["what"]: fact["says"] for fact in told["sections"][-1]["facts"]}
    size = quote["slabs"][0]["finished_mm"]
    length, width = size["length_mm"], size["width_mm"]
    assert slab["Finished size"] == f"{length:g} mm × {width:g} mm, 40 mm thick"
    assert slab["Shade and finish"] == "graphite, honed, matt sealer"


def test_the_approval_has_the_weeks(client: "FlaskClient") -> None:
    """Every stage of the quote stands there with its reason, and in the drawing's own words."""
    quote = client.post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()
    told = _sheet(client, "approval", "application/json", order=EXAMPLE_ORDER)
    (weeks,) = (section for section in told["sections"] if section["heading"] == "The weeks")
    stages = quote["lead_time"]["stages"]
    assert [fact["what"] for fact in weeks["facts"]] == [stage["name"] for stage in stages]
    for fact, stage in zip(weeks["facts"], stages, strict=True):
        assert fact["says"].endswith(stage["why"])
        assert stage["name"] in weeks["words"]
    page = _sheet(client, "approval", "text/html", order=EXAMPLE_ORDER).decode()
    assert weeks["words"] in page


def test_the_approval_shows_each_plan(client: "FlaskClient") -> None:
    """Plans and weeks are in the page as drawings with a title and words of their own."""
    page = _sheet(client, "approval", "text/html", order=slabs_order(3)).decode()
    drawings = re.findall(r"<svg .*?</svg>", page, re.DOTALL)
    assert len(drawings) == 4
    for drawing in drawings:
        tree = ET.fromstring(drawing)  # noqa: S314  a drawing of ours
        assert {node.tag.rpartition("}")[2] for node in tree} >= {"title", "desc"}


def test_the_approval_says_hand_and_source_of_sizes(client: "FlaskClient") -> None:
    """An L says its hand, and a slab between walls what came off it."""
    told = _sheet(client, "approval", "application/json", order=L_ORDER)
    facts = {fact["what"]: fact["says"] for fact in told["sections"][-1]["facts"]}
    assert facts["Hand"].startswith("left hand")
    _, _, what = facts["Hand"].partition("front right corner ")
    assert what.startswith("is left out")
    walls = Message("approval-from", source="between-walls", gap=Length.of_mm(3))
    assert english(walls) in facts["Sizes from"]
    assert facts["Finished size"].startswith("1997 mm × 997 mm")
    said = " ".join(_said(told))
    for what in ("pin holes", "Mottling", "Hairlines"):
        assert what in said
    assert told["signs"]


@pytest.mark.parametrize("at", ["/slabs/0/size_from", "/slabs/0/cutouts/0/size_from"])
def test_a_template_to_follow_is_reported(client: "FlaskClient", at: str) -> None:
    """A size that waits for a template says so beside it."""
    order = changed((at, "template-to-follow"))
    said = " ".join(_said(_sheet(client, "approval", "application/json", order=order)))
    assert "template" in said
    assert "Estimate" in said


def test_the_fitting_sheet_defers(client: "FlaskClient") -> None:
    """Weights are the quote's; what is another's to decide is left to them."""
    quote = client.post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER).get_json()
    told = _sheet(client, "fitting", "application/json", order=EXAMPLE_ORDER)
    said = " ".join(_said(told))
    assert f"{quote['weight']['slabs'][0]['slab_kg']} kg" in said
    for what in ("on edge", "level", "silica", "electrician", "before you sign it"):
        assert what.lower() in said.lower()
    assert "safe to lift" in said
    for finding in quote["findings"]:
        if finding["level"] == "caution":
            assert finding["says"] in said
    assert told["signs"] == ""


def test_a_hot_appliance_keeps_its_distance(client: "FlaskClient") -> None:
    """Where a hot appliance sits in a slab, it is to be left clear, by its maker's word."""
    order = changed(("/slabs/0/cutouts/0/heat", True), order=slabs_order(1))
    said = " ".join(_said(_sheet(client, "fitting", "application/json", order=order)))
    hot = english(Message("fitting-hot", clear=Length.of_mm(10)))
    assert hot in said
    plain = " ".join(_said(_sheet(client, "fitting", "application/json", order=slabs_order(1))))
    assert hot not in plain
    assert "hot appliance" not in plain


def test_care_follows_sealer_and_place(client: "FlaskClient") -> None:
    """Outdoors with a sealer that soaks in, and indoors under a film, each has its own care."""
    outdoors = " ".join(_said(_sheet(client, "care", "application/json", order=EXAMPLE_ORDER)))
    indoors = " ".join(_said(_sheet(client, "care", "application/json", order=L_ORDER)))
    assert "The matt sealer" in outdoors
    assert "120 °C" in outdoors
    assert "Salt and de-icer" in outdoors
    assert english(Message("care-food")) in outdoors
    assert "The satin sealer" in indoors
    assert "70 °C" in indoors
    assert "de-icer" not in indoors
    assert "declared for contact" not in indoors
    for said in (outdoors, indoors):
        assert "repair pot" in said


def test_a_quotes_token_has_its_own_figures_later(client: "FlaskClient", tmp_path: Path) -> None:
    """A sheet of an offer, after rates have risen, has the price that was offered."""
    quote = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    dearer = reworded(tmp_path, ("\nhour = 38.00", "\nhour = 48.00"))
    later = service(date(2026, 12, 9), profile=dearer)
    told = _sheet(later, "approval", "application/json", token=quote["token"])
    facts = {fact["what"]: fact["says"] for fact in told["facts"]}
    assert facts["Price"].startswith(f"£{Decimal(quote['price']['total']):,.2f},")
    assert facts["Estimate"] == quote["reference"]


def test_what_cannot_be_made_has_no_sheet(client: "FlaskClient") -> None:
    """A sheet of an order that is sent back is the send-back."""
    order = changed(("/slabs/0/cutouts/0/centre/y", "218 mm"))
    answer = client.post("/v1/sheets/approval", json={"order": order}, headers=MAKER)
    assert answer.status_code == 422
    assert answer.mimetype == PROBLEM
    assert answer.get_json()["findings"]


def test_only_the_maker_has_sheets(client: "FlaskClient") -> None:
    """Without the maker's key there is no sheet; with it, none but these."""
    for kind in KINDS:
        assert client.post(f"/v1/sheets/{kind}", json={"order": EXAMPLE_ORDER}).status_code == 401
    other = client.post("/v1/sheets/invoice", json={"order": EXAMPLE_ORDER}, headers=MAKER)
    assert other.status_code == 404


AWKWARD = '#panic("x") $x$ *b* _i_ `r` <l> @a \\ [c] {d} // e /* f */ "q" = h - i + j'


def test_markup_in_names_stays_text(client: "FlaskClient", tmp_path: Path) -> None:
    """Names made of markup of any kind are printed as they were typed, on paper and on the page."""
    order = changed(("/slabs/0/label", AWKWARD))
    asked = {"order": order, "customer": '<img src=x> #read("/etc/passwd")'}
    pdf = _pdf_text(tmp_path, _sheet(client, "fitting", "application/pdf", **asked))
    assert AWKWARD.replace(" ", "") in pdf.replace(" ", "")
    assert '#read("/etc/passwd")' in pdf
    page = _sheet(client, "approval", "text/html", **asked).decode()
    assert "<img" not in page
    text = "".join(html5lib.parse(page, namespaceHTMLElements=False).itertext())
    assert AWKWARD in text


@pytest.mark.parametrize("kind", KINDS)
def test_what_sheets_say_is_plain(client: "FlaskClient", kind: str) -> None:
    """No sentence of a sheet uses words that we never say."""
    for order in (EXAMPLE_ORDER, L_ORDER):
        said = _said(_sheet(client, kind, "application/json", order=order))
        assert [text for text in said if NEVER_SAID.search(text)] == []


def test_eight_slabs_fit_on_paper(client: "FlaskClient", tmp_path: Path) -> None:
    """Eight slabs are each on the approval sheet, with every plan."""
    text = _pdf_text(tmp_path, _sheet(client, "approval", "application/pdf", order=slabs_order(8)))
    for slab in slabs_order(8)["slabs"]:
        assert slab["label"] in text
