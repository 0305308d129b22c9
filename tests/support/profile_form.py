"""The profile's form as a maker's browser asks for it."""

import io
import tempfile
from collections.abc import Callable
from datetime import date
from functools import cache
from pathlib import Path

from flask.testing import FlaskClient

from ledgerstone.api import Settings, create_app
from ledgerstone.application.workshop_form import version_of
from ledgerstone.cli.profiles import run
from support.demonstration import MAKER_KEY, SIGNING_KEYS
from support.documents import Json
from support.offered import MAKER

NewForm = Callable[..., FlaskClient]  # of a country and a language

ASKED = "/v1/workshop"
_FILE = "ledgerstone.tests.profile"  # a name of the callers' own among what they send


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
    client.environ_base[_FILE] = str(file)
    return client


def new_forms(folder: Path) -> NewForm:
    """Clients of the forms of new makers' files in a folder, which nobody saves.

    One service a country: what it works out for one test it knows for the next.
    """

    @cache
    def asked(country: str) -> FlaskClient:
        return form(started(folder, country))

    def in_language(country: str, language: str = "en") -> FlaskClient:
        known = asked(country)
        client = known.application.test_client()
        client.environ_base |= {**known.environ_base, "HTTP_ACCEPT_LANGUAGE": language}
        return client

    return in_language


def tried(client: FlaskClient, *changes: Json, **more: object) -> Json:
    """What comes of changes of the file as it is."""
    version = version_of(Path(client.environ_base[_FILE]).read_text(encoding="utf-8"))
    answer = client.post(ASKED, json={"version": version, "changes": list(changes), **more})
    assert answer.status_code == 200, answer.get_json()
    found: Json = answer.get_json()
    return found


def setting(pointer: str, value: str) -> Json:
    """A change that sets a value."""
    return {"op": "set", "pointer": pointer, "value": value}


def described(told: Json) -> dict[str, Json]:
    """Each value by its pointer."""
    return {one["pointer"]: one for one in told["values"]}


def started(folder: Path, country: str) -> Path:
    """A new maker's own file."""
    file = folder / f"{country}.toml"
    file.write_text(begun(country), encoding="utf-8")
    return file


@cache
def begun(country: str) -> str:
    """The text of a new maker's file, as the command line writes it."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "workshop.toml"
        asked = ["init", str(file), "--country", country]
        assert run(asked, io.StringIO(), io.StringIO(), {}) == 0
        return file.read_text(encoding="utf-8")
