"""The service behind a client that all of one file's tests share, and its document."""

from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from aiosmtpd.controller import Controller
from flask import Flask
from flask.testing import FlaskClient

from api.documented import committed
from api.schemas import Schemas
from ledgerstone.api import Settings, create_app
from ledgerstone.workshop import DEMONSTRATION
from support import ports
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY, SIGNING_KEYS
from support.offered import service
from support.postbox import Postbox, mailing_profile

ORIGIN = "https://maker.example"


@pytest.fixture(scope="session")
def open_document() -> dict[str, Any]:
    """The committed OpenAPI document, as a YAML reader reads it."""
    return committed()


@pytest.fixture(scope="session")
def schemas(open_document: dict[str, Any]) -> Schemas:
    """The document's schemas, to hold answers to."""
    return Schemas(open_document)


@pytest.fixture
def framed_app(tmp_path: Path, today: date) -> Flask:
    """The service of a workshop whose profile names a site that may ask."""
    profile = tmp_path / "workshop.toml"
    text = DEMONSTRATION.read_text(encoding="utf-8")
    assert text.count("origins = []") == 1
    profile.write_text(text.replace("origins = []", f'origins = ["{ORIGIN}"]'), encoding="utf-8")
    settings = Settings(
        workshop_path=profile,
        maker_key=MAKER_KEY,
        signing_keys=SIGNING_KEYS,
        today=lambda _zone: today,
    )
    return create_app(settings)


@pytest.fixture
def free_port() -> int:
    """A port that nothing listens on."""
    return ports.free_port()


@pytest.fixture
def postbox(free_port: int) -> Iterator[Postbox]:
    """A mail server on this machine."""
    box = Postbox()
    server = Controller(box, hostname="127.0.0.1", port=free_port)
    server.start()
    yield box
    server.stop()


@pytest.fixture
def mailing(tmp_path: Path, free_port: int) -> FlaskClient:
    """The service of a workshop whose profile names that server."""
    return service(profile=mailing_profile(tmp_path, free_port))


@pytest.fixture(scope="module")
def token() -> str:
    """The token of the example order's quote."""
    return str(service().post("/v1/quotes", json=EXAMPLE_ORDER).get_json()["token"])
