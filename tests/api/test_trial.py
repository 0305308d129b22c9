"""While prices, hours or areas are the demonstration's, nothing is an offer or claimed."""

from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient

from conftest import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS
from ledgerstone.api import Settings, create_app
from ledgerstone.wording import Message, english
from ledgerstone.workshop import DEMONSTRATION, load_profile
from ledgerstone.workshop.starting import starting_profile
from support.asking import sentences

KEY = {"Authorization": f"Bearer {MAKER_KEY}"}


def calling(path: Path, text: str) -> FlaskClient:
    """A service with a profile."""
    path.write_text(text, encoding="utf-8")
    settings = Settings(workshop_path=path, maker_key=MAKER_KEY, signing_keys=SIGNING_KEYS)
    return create_app(settings).test_client()


@pytest.fixture(scope="module")
def started() -> str:
    """A profile as `init` writes it, but that prices from the page are meant as quotations."""
    text = starting_profile(load_profile(DEMONSTRATION))
    return text.replace('\nstanding = "estimate"', '\nstanding = "quotation"', 1)


def asked(client: FlaskClient, **more: Any) -> dict[str, Any]:
    """The answer to the example order, without a day that may be past."""
    order = {k: v for k, v in EXAMPLE_ORDER.items() if k != "needed_by"}
    body: dict[str, Any] = client.post("/v1/quotes", json=order, **more).get_json()
    return body


def test_a_trial_is_an_estimate_and_says_so_first(tmp_path: Path, started: str) -> None:
    """Whoever asks, the maker too, and whatever the profile calls its prices."""
    client = calling(tmp_path / "w.toml", started)
    for headers in ({}, KEY):
        quote = asked(client, headers=headers)
        assert quote["standing"] == "estimate"
        assert quote["depends_on"][0].startswith("This is a trial")
    reply = client.post(
        "/v1/replies", json={"order": EXAMPLE_ORDER, "standing": "quotation"}, headers=KEY
    ).get_json()
    assert "estimate" in reply["subject"].lower()
    assert "This is a trial" in reply["text"]


def test_no_sentence_of_a_trial_claims_a_sample(tmp_path: Path, started: str) -> None:
    """Nobody has cast a tile or had one read for this workshop, and nothing says so."""
    client = calling(tmp_path / "w.toml", started)
    said = " ".join((*sentences(asked(client)), *sentences(client.get("/v1/choices").get_json())))
    assert "had read" not in said
    assert english(Message("shade-without-tile")) in said


def test_readiness_tells_whose_the_values_are(tmp_path: Path, started: str) -> None:
    """The share of values that are the maker's, usual or still invented is in readiness."""
    ready = calling(tmp_path / "w.toml", started).get("/v1/health/ready").get_json()
    values = ready["profile_values"]
    assert values["trial"]
    assert values["invented"] > 250  # prices, hours, shades, readings; doses and waits are usual
    assert values["usual"] > 300
    assert values["yours"] == 1


def test_the_demonstration_is_no_trial(client: FlaskClient) -> None:
    """The invented workshop quotes as if its prices were someone's."""
    assert not asked(client)["depends_on"][0].startswith("This is a trial")
    assert not client.get("/v1/health/ready").get_json()["profile_values"]["trial"]
