"""While prices, hours or areas are the demonstration's, nothing is an offer or claimed."""

from pathlib import Path
from typing import Any, NamedTuple

import pytest
from flask.testing import FlaskClient

from ledgerstone.api import Settings, create_app
from ledgerstone.papers.kinds import JOB, PAPER_KINDS
from ledgerstone.wording import Message, english, speech_in
from ledgerstone.workshop import DEMONSTRATION, load_profile
from ledgerstone.workshop.starting.profile_text import starting_profile
from support.asking import sentences
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS
from support.printed import page_texts

# Its heading, and how its first sentence begins.
WORDS = {"en": ("Trial", "This is a trial"), "de": ("Probelauf", "Dies ist ein Probelauf")}
# A new workshop sends no pallet until it says so.
ORDER = EXAMPLE_ORDER | {"delivery": {**EXAMPLE_ORDER["delivery"], "kind": "own-van"}}
KEY = {"Authorization": f"Bearer {MAKER_KEY}"}


class TrialCase(NamedTuple):
    """A trial's caller, an order with its quote's token, and how the trial says that it is one."""

    client: FlaskClient
    order: dict[str, Any]
    token: str
    word: str
    sentence: str


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
    order = {k: v for k, v in ORDER.items() if k != "needed_by"}
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
        "/v1/replies", json={"order": ORDER, "standing": "quotation"}, headers=KEY
    ).get_json()
    assert "estimate" in reply["subject"].lower()
    assert "This is a trial" in reply["text"]


def test_no_sentence_of_a_trial_claims_a_sample(tmp_path: Path, started: str) -> None:
    """Nobody has cast a tile or had one read for this workshop, and nothing says so."""
    client = calling(tmp_path / "w.toml", started)
    said = " ".join((*sentences(asked(client)), *sentences(client.get("/v1/choices").get_json())))
    assert "had read" not in said
    assert english(Message("shade-without-tile")) in said


@pytest.fixture(scope="module", params=("en", "de"))
def told(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> TrialCase:
    """The example order quoted by a trial in each language, and how it says so."""
    text = starting_profile(load_profile(DEMONSTRATION))
    text = text.replace('\nlanguage = "en"', f'\nlanguage = "{request.param}"', 1)
    client = calling(tmp_path_factory.mktemp("trial") / "w.toml", text)
    word, sentence = WORDS[request.param]
    order = {k: v for k, v in ORDER.items() if k != "needed_by"}
    token = client.post("/v1/quotes", json=order).get_json()["token"]
    return TrialCase(client, order, token, word, sentence)


@pytest.mark.parametrize("kind", PAPER_KINDS)
def test_every_paper_of_a_trial_is_headed_as_one(told: TrialCase, kind: str) -> None:
    """Its title says so first, on the screen and in print, and each printed page says it too."""
    path = "/v1/job-sheets" if kind == JOB else f"/v1/sheets/{kind}"
    forms = {
        form: told.client.post(path, json={"token": told.token}, headers={**KEY, "Accept": form})
        for form in ("application/json", "text/html", "application/pdf")
    }
    paper, page = forms["application/json"].get_json(), forms["text/html"].get_data(as_text=True)
    title = paper["pages"][0]["title"] if kind == JOB else paper["title"]
    assert title.startswith(f"{told.word}: ")
    assert f"<h1>{told.word}: " in page
    for printed in page_texts(forms["application/pdf"].get_data()):
        assert told.word.lower() in printed.lower()
    if kind == "approval":
        assert paper["facts"][0]["says"].startswith(told.sentence)
        assert paper["signs"]


def test_every_letter_of_a_trial_is_headed_as_one(told: TrialCase) -> None:
    """Its subject says so first, and its first sentence: before greeting, link and price."""
    thin = {**told.order, "slabs": [{**told.order["slabs"][0], "thickness": "20 mm"}]}
    asked: tuple[dict[str, Any], ...] = (
        {"order": told.order},
        {"order": told.order, "tone": "short"},
        {"order": told.order, "ways": True},
        {"order": thin},
    )
    for ask in asked:
        letter = told.client.post("/v1/replies", json=ask, headers=KEY).get_json()
        assert letter["subject"].startswith(f"{told.word}: ")
        assert letter["text"].startswith(told.sentence)
        assert letter["html"].count(told.sentence) == 1
        for language in WORDS:
            said = speech_in(language).say(Message("letter-can-make", supports="checked"))
            assert said not in letter["text"]
    note = told.client.post("/v1/notes/reminder", json={"token": told.token}, headers=KEY)
    assert note.get_json()["subject"].startswith(f"{told.word}: ")
    assert note.get_json()["text"].startswith(told.sentence)


def test_a_trial_asks_for_no_deposit(told: TrialCase) -> None:
    """Its prices are nobody's: the letter is refused, and says what is left to do."""
    answer = told.client.post("/v1/notes/deposit", json={"token": told.token}, headers=KEY)
    assert answer.status_code == 400
    fault = answer.get_json()["faults"][0]
    assert fault["pointer"] == "/token"
    assert told.word.lower() in fault["says"].lower()


def test_readiness_tells_whose_the_values_are(tmp_path: Path, started: str) -> None:
    """The share of values that are the maker's, usual or still invented is in readiness."""
    ready = calling(tmp_path / "w.toml", started).get("/v1/health/ready").get_json()
    values = ready["profile_values"]
    assert values["trial"]
    assert values["invented"] > 240  # prices, hours, shades, readings; doses and waits are usual
    assert values["usual"] > 300
    assert values["yours"] == 1


def test_the_demonstration_is_no_trial(client: FlaskClient) -> None:
    """The invented workshop quotes as if its prices were someone's."""
    assert not asked(client)["depends_on"][0].startswith("This is a trial")
    assert not client.get("/v1/health/ready").get_json()["profile_values"]["trial"]
