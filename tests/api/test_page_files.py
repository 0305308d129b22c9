"""The page's files: as they lie in the folder, and packed for whoever takes them packed."""

import gzip
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from ledgerstone.api import Settings, create_app
from ledgerstone.workshop import DEMONSTRATION
from support.demonstration import SIGNING_KEYS

if TYPE_CHECKING:
    from flask.testing import FlaskClient

WEB = Path(__file__).resolve().parents[2] / "web"
PACKED = {"Accept-Encoding": "gzip, deflate, br"}


@pytest.fixture
def visitor() -> "FlaskClient":
    """A caller of a service that has the page."""
    settings = Settings(workshop_path=DEMONSTRATION, signing_keys=SIGNING_KEYS, web_folder=WEB)
    return create_app(settings).test_client()


@pytest.mark.parametrize("name", ["index.html", "app.js", "styles/page.css", "icon.svg"])
def test_a_file_is_packed_for_who_takes_it_packed(visitor: "FlaskClient", name: str) -> None:
    """Unpacked it is the file to the byte; its length and tag are those of what is sent."""
    answer = visitor.get(f"/{name}", headers=PACKED, buffered=True)
    assert answer.headers["Content-Encoding"] == "gzip"
    assert "Accept-Encoding" in answer.headers["Vary"]
    assert gzip.decompress(answer.data) == (WEB / name).read_bytes()
    assert int(answer.headers["Content-Length"]) == len(answer.data)
    assert answer.headers["ETag"].startswith('W/"')


@pytest.mark.parametrize("taken", ["", "identity", "gzip;q=0", "br"])
def test_a_file_comes_unpacked_where_gzip_is_not_taken(visitor: "FlaskClient", taken: str) -> None:
    """Without gzip among what is taken, the file comes as it lies there."""
    answer = visitor.get("/app.js", headers={"Accept-Encoding": taken}, buffered=True)
    assert "Content-Encoding" not in answer.headers
    assert answer.data == (WEB / "app.js").read_bytes()


@pytest.mark.parametrize("headers", [PACKED, {}])
def test_a_file_that_has_not_changed_is_not_sent_again(
    visitor: "FlaskClient", headers: dict[str, str]
) -> None:
    """The tag of either form is known again."""
    tag = visitor.get("/app.js", headers=headers, buffered=True).headers["ETag"]
    asked = {**headers, "If-None-Match": tag}
    again = visitor.get("/app.js", headers=asked, buffered=True)
    assert again.status_code == 304
    assert again.data == b""


@pytest.mark.parametrize(("language", "name"), [("en", "index.html"), ("de", "index.de.html")])
def test_the_page_opens_in_the_workshops_language(tmp_path: Path, language: str, name: str) -> None:
    """Its address answers the document that reads so without a script; the other has its name."""
    profile = tmp_path / "workshop.toml"
    told = DEMONSTRATION.read_text(encoding="utf-8")
    assert 'language = "en"' in told
    profile.write_text(told.replace('language = "en"', f'language = "{language}"'))
    settings = Settings(workshop_path=profile, signing_keys=SIGNING_KEYS, web_folder=WEB)
    visitor = create_app(settings).test_client()
    assert visitor.get("/", buffered=True).data == (WEB / name).read_bytes()
    assert visitor.get("/v1/choices").get_json()["language"] == language
    for each in ("index.html", "index.de.html"):
        assert visitor.get(f"/{each}", buffered=True).data == (WEB / each).read_bytes()
