"""A new workshop in Oregon that casts from the bag answers for a kitchen top on base cabinets."""

import io
import re
from dataclasses import dataclass
from datetime import date
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any, Final

import pytest
from flask.testing import FlaskClient

from ledgerstone.api import Settings, create_app
from ledgerstone.cli.profiles import run
from ledgerstone.codec.order_in import read_order
from ledgerstone.message import Listed, Message, Value
from ledgerstone.quote import run_stages
from ledgerstone.stages import StageContext
from ledgerstone.workshop import Workshop, load_profile
from support.demonstration import MAKER_KEY, SIGNING_KEYS
from support.documents import Json
from workshops.conftest import KEY
from workshops.reading import read

BAG: Final = """[recipe.bag]
name = "Countertop mix"
bag_kg = "80 lb"
water_l_per_bag = "0.85 gal"
yield_l = "0.6 ft³"
price_per_bag = 18.00

"""
TYPED: Final = (
    (r"(?s)\n# Recipe by volume.*?(?=\n# The mixer)", f"\n{BAG}"),
    (r'fck_mpa = "[^"]*"', 'fck_mpa = "5000 psi"'),
    (r"most_people = \d", "most_people = 4"),
    (r'postcodes = \["988", "989"\]', 'postcodes = ["97"]'),
)
DELIVERED: Final = {"kind": "fitted", "postcode": "97214"}
UNITS: Final = [{"width": "18 in"}, {"width": "36 in", "for": "basin"}, {"width": "18 in"}]
TOP: Final[Json] = {
    "outline": {"kind": "rectangle", "length": "72 in", "width": "25 1/2 in"},
    "thickness": "1 1/2 in",
    "cutouts": [
        {
            "kind": "rectangle",
            "label": "sink",
            "length": "30 in",
            "width": "16 in",
            "centre": {"x": "36 in", "y": "12 in"},
        }
    ],
    "rests": {"kind": "units", "units": UNITS},
}


@dataclass(frozen=True)
class Maker:
    """The workshop's records, and its service."""

    workshop: Workshop
    client: FlaskClient

    def sent(self, path: str, body: Json, *, by_maker: bool = True) -> Any:  # noqa: ANN401
        """What the service answers."""
        answer = self.client.post(path, json=body, headers=KEY if by_maker else {})
        assert answer.status_code in (200, 422), answer.text
        return answer.get_json()

    def letter(self, order: Json) -> str:
        """A letter's text in one line."""
        return " ".join(self.sent("/v1/replies", {"order": order})["text"].split())


@cache
def maker(*changed: tuple[str, str]) -> Maker:
    """The workshop, its file as `init` writes it and as its maker then typed."""
    said = io.StringIO()
    with TemporaryDirectory() as folder:
        file = Path(folder) / "shop.toml"
        assert run(["init", str(file), "--country", "US"], said, said, {}) == 0, said.getvalue()
        text = file.read_text(encoding="utf-8")
        for pattern, instead in (*TYPED, *changed):
            text, count = re.subn(pattern, instead, text)
            assert count == 1, pattern
        file.write_text(text, encoding="utf-8")
        settings = Settings(
            workshop_path=file,
            maker_key=MAKER_KEY,
            signing_keys=SIGNING_KEYS,
            today=lambda _zone: date(2026, 12, 1),
        )
        client = create_app(settings).test_client()
        assert client.get("/v1/choices").status_code == 200
        return Maker(load_profile(file), client)


def top(way: Json = DELIVERED, **slab: Any) -> Json:
    """Its order, with some of the slab changed."""
    return {"slabs": [{**TOP, **slab}], "delivery": way}


def found(answer: Json, check: str) -> list[str]:
    """What an answer says of a check."""
    return [one["says"] for one in answer["findings"] if one["check"] == check]


def rails(of: Maker, way: Json) -> list[tuple[str, Value]]:
    """The messages of who fits the rails of a thicker top, and who lays it."""
    order = read_order(top(way, thickness="2 in"), of.workshop)
    checked = run_stages(order, StageContext(of.workshop, None, date(2026, 12, 1)))
    (needed,) = (one.message for one in checked.findings if one.check == "rails-needed")
    assert isinstance(needed, Message)
    fitted = needed.values["fitted"]
    assert isinstance(fitted, Listed)
    each = [one for one in fitted.things if isinstance(one, Message)]
    return [(one.name, one.values.get("laid", "")) for one in each]


def test_a_stop_names_its_load_in_the_offer_s_units() -> None:
    """Somebody standing is 1500 N by the file: 337 pounds-force, by 4.4482216 N each."""
    (told,) = found(maker().sent("/v1/quotes", top()), "cracks-in-place")
    assert f"({1500 / 4.4482216:.0f} lb)" in told
    metric = maker(('# strengths = "N/mm2"', 'strengths = "N/mm2"'))
    (told,) = found(metric.sent("/v1/quotes", top()), "cracks-in-place")
    assert "(1500 N)" in told


def test_masonry_is_offered_after_what_keeps_the_cabinets() -> None:
    """A kitchen keeps its cabinets where another thickness or place will do."""
    findings = maker().sent("/v1/quotes", top())["findings"]
    (stop,) = (one for one in findings if one["level"] == "stops")
    paths = [[step["path"] for step in remedy["patch"]] for remedy in stop["remedies"]]
    bedded = [any("/rests" in path for path in each) for each in paths]
    assert True in bedded
    assert bedded == sorted(bedded)
    assert any(path.endswith("/thickness") for each in paths for path in each)


def test_a_test_strip_is_the_workshop_s_own_task() -> None:
    """It stands in the maker's answer and on the job sheet, and in nothing that customers read."""
    order = top(thickness="2 in")
    ours, theirs = (maker().sent("/v1/quotes", order, by_maker=by) for by in (True, False))
    (strip,) = found(ours, "young-concrete")
    assert found(theirs, "young-concrete") == []
    (condition,) = set(ours["depends_on"]) - set(theirs["depends_on"])
    assert condition not in maker().letter(order)
    assert strip not in maker().letter(order)
    assert strip in " ".join(read(maker().sent("/v1/job-sheets", {"order": order})))


def test_how_it_is_carried_is_told_to_who_carries_it() -> None:
    """On edge where the customer carries it from its pallet; not where we bring and lay it."""
    for way in ("fitted", "pallet"):
        order = top({**DELIVERED, "kind": way}, rests={"kind": "full"})
        (carry,) = found(maker().sent("/v1/quotes", order), "carry-on-edge")
        told = found(maker().sent("/v1/quotes", order, by_maker=False), "carry-on-edge")
        assert told == ([carry] if way == "pallet" else [])
        assert ("on edge" in maker().letter(order)) == (way == "pallet")


def test_no_sheet_asks_for_more_people_than_there_are() -> None:
    """Past what its four people carry a slab goes by gear; their figure is the maker's to read."""
    order, four_carry = top(thickness="2 in"), "204 lb"
    quote = maker().sent("/v1/quotes", order)
    assert quote["weight"]["slabs"][0]["people_to_lift"] == 5
    assert found(quote, "beyond-hands")
    sheet = " ".join(read(maker().sent("/v1/job-sheets", {"order": order})))
    assert "five people" not in sheet
    assert four_carry in sheet
    assert four_carry not in maker().letter(order)
    assert four_carry not in " ".join(read(quote))


def test_a_letter_says_to_where_an_opening_is_measured() -> None:
    """Its centre, and a drainboard's corner."""
    outline = {"kind": "rectangle", "length": "10 in", "width": "12 in"}
    at = {"x": "2 in", "y": "5 in"}
    relief = {"kind": "drainer", "outline": outline, "depth": "1/8 in", "at": at}
    told = maker().letter(top(thickness="2 in", reliefs=[relief]))
    assert "center 36 in" in told
    assert "corner 2 in" in told


def test_rails_are_fitted_by_who_lays_the_slab_or_before_we_come() -> None:
    """Ours where they have a price; else the customer has them fitted, before we come to lay it."""
    assert rails(maker(), DELIVERED) == [("rails-fit", "by-us")]
    assert rails(maker(), {**DELIVERED, "kind": "pallet"}) == [("rails-fit", "by-others")]
    priced = (r'(name = "steel tube[^\n]*)', r"\1\nfitted = 60")
    assert rails(maker(priced), DELIVERED) == [("rails-we-fit", "")]


def test_a_sealer_is_called_as_people_call_it() -> None:
    """No sentence has its bare name in quotation marks."""
    quote = maker().sent("/v1/quotes", top(thickness="2 in"))
    assert [said for said in read(quote) if "“matte”" in said] == []
    assert [said for said in read(quote) if "matte sealer" in said]


def test_a_letter_has_no_link_that_opens_on_its_own_machine_alone() -> None:
    """Neither an offer's nor a change's, nor a short letter's; the desk says so, naming no key."""
    public = maker((r'page_url = "[^"]*"', 'page_url = "https://tops.example/"'))
    for of, is_linked in ((maker(), False), (public, True)):
        for order in (top(), top(thickness="2 in")):
            assert ("#" in of.letter(order)) == is_linked
            assert is_linked or "127.0.0.1" not in of.letter(order)
        token = of.sent("/v1/quotes", top(thickness="2 in"))["token"]
        note = of.sent("/v1/notes/reminder", {"token": token})["text"]
        assert ("#quote=" in note) == is_linked
        told = of.client.get("/v1/desk", headers=KEY).get_json()["no_links"]
        assert (told is None) == is_linked
        assert is_linked or ("as it is" in told and "page_url" not in told)


def test_the_maker_reads_stresses_in_pounds() -> None:
    """The governing case is in psi, and what cracks it in pounds, by NIST's factors."""
    slab = maker().sent("/v1/quotes", top(thickness="2 in"))["slabs"][0]
    told = slab["strength"]["governing"]
    for name in ("stress", "limit"):
        amount, unit = told[f"{name}_says"].split()
        assert unit == "psi"
        assert float(amount) == pytest.approx(told[f"{name}_mpa"] / 6.894757e-3, abs=1)
    assert told["cracks_at_says"] == f"{told['cracks_at_n'] / 4.4482216:,.0f} lb"
