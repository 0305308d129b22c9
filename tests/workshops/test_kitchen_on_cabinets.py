"""A new workshop in Oregon that casts from the bag answers for a kitchen top on base cabinets."""

import io
import re
from datetime import date
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any, Final

from flask.testing import FlaskClient

from ledgerstone.api import Settings, create_app
from ledgerstone.cli.profiles import run
from support.demonstration import MAKER_KEY, SIGNING_KEYS
from support.documents import Json
from workshops.conftest import KEY

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


@cache
def service_with(*changed: tuple[str, str]) -> FlaskClient:
    """The service of the workshop, its file as `init` writes it and as its maker then typed."""
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
    return client


def quoted(delivery: Json = DELIVERED, client: FlaskClient | None = None, **slab: Any) -> Json:
    """The answer to its order, with some of the slab changed."""
    order = {"slabs": [{**TOP, **slab}], "delivery": delivery}
    answer: Json = (client or service_with()).post("/v1/quotes", json=order, headers=KEY).get_json()
    return answer


def found(answer: Json, check: str) -> Json:
    """A finding of an answer."""
    (one,) = (one for one in answer["findings"] if one["check"] == check)
    return one  # type: ignore[no-any-return]


def test_a_stop_names_its_load_in_the_offer_s_units() -> None:
    """Somebody standing is 1500 N by the file: 337 pounds-force, by 4.4482216 N each."""
    assert f"({1500 / 4.4482216:.0f} lb)" in found(quoted(), "cracks-in-place")["says"]
    metric = ('# strengths = "N/mm2"', 'strengths = "N/mm2"')
    told = found(quoted(client=service_with(metric)), "cracks-in-place")["says"]
    assert "(1500 N)" in told


def test_masonry_is_offered_after_what_keeps_the_cabinets() -> None:
    """A kitchen keeps its cabinets where another thickness or place will do."""
    remedies = found(quoted(), "cracks-in-place")["remedies"]
    bedded = [any("/rests" in one["path"] for one in remedy["patch"]) for remedy in remedies]
    assert True in bedded
    assert bedded == sorted(bedded)
    assert any("/thickness" in one["path"] for remedy in remedies for one in remedy["patch"])
