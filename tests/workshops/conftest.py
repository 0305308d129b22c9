"""The three invented workshops, each with a caller and with an order as its customers type it."""

import html
import re
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from functools import cache
from pathlib import Path
from threading import Thread
from typing import Any

import pytest
from flask.testing import FlaskClient
from werkzeug.serving import make_server
from werkzeug.test import TestResponse

from ledgerstone.api import Settings, create_app
from ledgerstone.json_types import JSON
from ledgerstone.quantities import Length
from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile
from support.demonstration import MAKER_KEY, SIGNING_KEYS
from support.printed import page_texts

WEB = Path(__file__).resolve().parents[2] / "web"
KEY = {"Authorization": f"Bearer {MAKER_KEY}"}


@dataclass(frozen=True)
class WorkshopCase:
    """One of the workshops: its records, a caller, and words of its customers'."""

    name: str
    workshop: Workshop
    client: FlaskClient
    typed: dict[str, str]

    def order(self, **slab: Any) -> dict[str, Any]:
        """A washstand's top with a basin and a tap, as a customer of the workshop writes it."""
        say = self.typed
        across, back = say["across"], say["back"]
        top = {
            "label": say["label"],
            "outline": {"kind": "rectangle", "length": say["length"], "width": say["width"]},
            "thickness": say["thickness"],
            "cutouts": [
                {"label": say["basin"], "kind": "circle", "diameter": say["bowl"],
                 "centre": {"x": across, "y": say["front"]}},
                {"label": say["tap"], "kind": "circle", "diameter": say["hole"],
                 "centre": {"x": across, "y": back}, "rim": "covered"},
            ],
            "shade": {"name": self.workshop.palette[0].name},
            "finish": {"surface": "honed", "sealer": self.workshop.sealers[0].name},
            "rests": {"kind": "full"},
        }  # fmt: skip
        delivery = {"kind": "pallet", "postcode": say["postcode"]}
        return {"slabs": [{**top, **slab}], "delivery": delivery}

    @staticmethod
    def mm(length: str | float) -> float:
        """How long a length of an answer is."""
        return Length.parse(length).mm

    def asked(self, path: str, body: dict[str, Any]) -> JSON:
        """What the workshop's service answers a customer."""
        return self._answer(path, body, {})

    def asked_by_the_maker(self, path: str, body: dict[str, Any]) -> JSON:
        """What the workshop's service answers its maker."""
        return self._answer(path, body, KEY)

    def papers(self, path: str, body: dict[str, Any]) -> list[Any]:
        """A paper as a document, each text of its page, and each text of its print."""
        page = self._sent(path, body, {**KEY, "Accept": "text/html"}).get_data(as_text=True)
        bare = re.sub(r"<(style|script)\b.*?</\1>", "", page, flags=re.DOTALL)
        printed = self._sent(path, body, {**KEY, "Accept": "application/pdf"}).get_data()
        texts = [html.unescape(text) for text in re.split(r"<[^<>]+>", bare)]
        return [self.asked_by_the_maker(path, body), texts, page_texts(printed)]

    def _answer(self, path: str, body: dict[str, Any], headers: dict[str, str]) -> JSON:
        return self._sent(path, body, headers).get_json()

    def _sent(self, path: str, body: dict[str, Any], headers: dict[str, str]) -> TestResponse:
        answer = self.client.post(path, json=body, headers=headers)
        assert answer.status_code == 200, answer.get_data(as_text=True)[:400]
        return answer


TYPED: dict[str, dict[str, str]] = {
    "demonstration": {
        "label": "Washstand", "length": "1200 mm", "width": "60 cm", "thickness": "50 mm",
        "thin": "30 mm", "basin": "basin", "bowl": "360 mm", "tap": "tap", "hole": "35 mm",
        "across": "0.7 m", "front": "270 mm", "back": "520 mm", "postcode": "hr9 7xx",
    },
    "germany": {
        "label": "Waschtisch", "length": "1.2 m", "width": "60 cm", "thickness": "50 mm",
        "thin": "30 mm", "basin": "Becken", "bowl": "360 mm", "tap": "Armatur", "hole": "35 mm",
        "across": "70 cm", "front": "27 cm", "back": "520 mm", "postcode": "D-83646",
    },
    "united_states": {
        "label": "Vanity", "length": '47 1/4"', "width": "24 in", "thickness": "2 in",
        "thin": "1 1/4 in", "basin": "sink", "bowl": "14 in", "tap": "faucet", "hole": "1 3/8 in",
        "across": "2' 3\"", "front": "10 3/4 in", "back": "20 1/2 in", "postcode": "98801-1234",
    },
}  # fmt: skip


FILES = {name: DEMONSTRATION.with_name(f"{name}.toml") for name in TYPED}


@pytest.fixture(scope="module", params=sorted(TYPED))
def shop(request: pytest.FixtureRequest) -> WorkshopCase:
    """Each of the three workshops in turn, on the tests' own day."""
    return workshop_case(request.param)


@cache
def workshop_case(name: str) -> WorkshopCase:
    """One of the three workshops, on the tests' own day: what it has worked out, it knows."""
    path = FILES[name]
    settings = Settings(
        workshop_path=path,
        maker_key=MAKER_KEY,
        signing_keys=SIGNING_KEYS,
        today=lambda _zone: date(2026, 11, 25),
        web_folder=WEB,
    )
    client = create_app(settings).test_client()
    return WorkshopCase(name, load_profile(path), client, TYPED[name])


@pytest.fixture(scope="module")
def address(shop: WorkshopCase) -> Iterator[str]:
    """Where the workshop's page is, served on loopback."""
    server = make_server("127.0.0.1", 0, shop.client.application, threaded=True)
    thread = Thread(target=server.serve_forever)
    thread.start()
    yield f"http://127.0.0.1:{server.server_port}/"
    server.shutdown()
    thread.join()
