"""An order that is more than one request may have worked out, through the HTTP face."""

from typing import TYPE_CHECKING

import pytest

from conftest import MAKER_KEY
from support.hardest import Json, crowded

if TYPE_CHECKING:
    from flask.testing import FlaskClient

MAKER = {"Authorization": f"Bearer {MAKER_KEY}"}
ORDER: Json = crowded(8, 20, "units", 20)
ASKS = {
    "/v1/quotes": ORDER,
    "/v1/drawings": ORDER,
    "/v1/replies": {"order": ORDER},
    "/v1/job-sheets": {"order": ORDER},
    "/v1/sheets/care": {"order": ORDER},
}


@pytest.mark.parametrize("path", list(ASKS))
def test_every_call_refuses_it_by_its_own_type(client: "FlaskClient", path: str) -> None:
    """It is ``too-intricate``, a problem of its own and never a send-back: it has no findings."""
    answer = client.post(path, json=ASKS[path], headers=MAKER)
    body = answer.get_json()
    assert (answer.status_code, answer.mimetype) == (422, "application/problem+json")
    assert body["type"] == "/problems/too-intricate"
    assert body["detail"] == "This order is too intricate to work out at once; split it."
    assert "findings" not in body
    assert client.get(body["type"]).status_code == 200
