"""The profile's form as a maker's browser asks for it."""

import io
from datetime import date
from pathlib import Path

from flask.testing import FlaskClient

from conftest import MAKER_KEY, SIGNING_KEYS
from ledgerstone.api import Settings, create_app
from ledgerstone.cli.profiles import run
from support.documents import Json
from support.offered import MAKER

ASKED = "/v1/workshop"


def form(file: Path, *, is_writable: bool = False, language: str = "en") -> FlaskClient:
    """A client of the service of one profile's file."""
    settings = Settings(
        workshop_path=file,
        maker_key=MAKER_KEY,
        signing_keys=SIGNING_KEYS,
        today=lambda _: date(2026, 11, 25),
        is_workshop_writable=is_writable,
    )
    client = create_app(settings).test_client()
    client.environ_base["HTTP_AUTHORIZATION"] = MAKER["Authorization"]
    client.environ_base["HTTP_ACCEPT_LANGUAGE"] = language
    return client


def tried(client: FlaskClient, *changes: Json, **more: object) -> Json:
    """What comes of changes of the file as it is."""
    version = client.get(ASKED).get_json()["version"]
    answer = client.post(ASKED, json={"version": version, "changes": list(changes), **more})
    assert answer.status_code == 200, answer.get_json()
    found: Json = answer.get_json()
    return found


def started(folder: Path, country: str) -> Path:
    """A new maker's own file."""
    file = folder / f"{country}.toml"
    assert run(["init", str(file), "--country", country], io.StringIO(), io.StringIO(), {}) == 0
    return file
