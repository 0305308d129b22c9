"""An order that is more than one request may have worked out, through the HTTP face."""

import copy
from email import message_from_bytes
from email.message import Message
from itertools import pairwise
from typing import TYPE_CHECKING

import pytest

from ledgerstone.api import lane
from ledgerstone.errors import TooIntricate
from ledgerstone.remedies import budget
from ledgerstone.wording import english
from support.demonstration import EXAMPLE_ORDER, MAKER_KEY
from support.documents import Json
from support.hardest import crowded

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
    assert body["detail"] == english(TooIntricate(8).message)
    assert "findings" not in body
    assert client.get(body["type"]).status_code == 200


CALLS = [
    ("/v1/quotes", "application/json"),
    ("/v1/replies", "application/json"),
    ("/v1/replies", "message/rfc822"),
    ("/v1/job-sheets", "application/pdf"),
    ("/v1/sheets/approval", "application/pdf"),
]
SVG, PNG, PDF = ("plan.svg", "view.svg"), ("plan.png", "view.png?width=1600"), ("true-size.pdf",)


@pytest.fixture
def told(monkeypatch: pytest.MonkeyPatch) -> list[float]:
    """How many units each request says that it comes to, as it goes on."""
    units: list[float] = []
    real = lane.Pace.__call__

    def noted(pace: lane.Pace, so_far: float) -> None:
        units.append(so_far)
        real(pace, so_far)

    monkeypatch.setattr(lane.Pace, "__call__", noted)
    return units


@pytest.mark.parametrize(("path", "accept"), CALLS)
@pytest.mark.parametrize("change", [{}, {"y": "220 mm"}], ids=["quoted", "sent back"])
def test_one_request_has_one_budget(
    client: "FlaskClient", told: list[float], path: str, accept: str, change: dict[str, str]
) -> None:
    """What a request comes to rises, papers and changed orders too, and ends below 100 units.

    It may fall once: where the first check ends before any strength, that is given back.
    """
    order = copy.deepcopy(EXAMPLE_ORDER)
    order["slabs"][0]["cutouts"][0]["centre"].update(change)
    ask = order if path == "/v1/quotes" else {"order": order}
    headers = MAKER | {"Accept": accept}
    assert client.post(path, json=ask, headers=headers).status_code in (200, 422)
    assert sum(after < before - 1e-6 for before, after in pairwise(told)) <= bool(change)
    assert 0.0 < told[-1] <= budget.MAX_UNITS


@pytest.mark.parametrize("name", [*SVG, *PNG, *PDF])
def test_a_drawing_is_paid_for_too(client: "FlaskClient", told: list[float], name: str) -> None:
    """Every form of a drawing says what it comes to before it is made."""
    link = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["plan"]
    told.clear()
    assert client.get(link.replace("plan.svg", name)).status_code == 200
    assert told
    assert told[-1] < lane.LIGHT_UNITS


def test_a_drawing_past_the_budget_is_refused(
    client: "FlaskClient", monkeypatch: pytest.MonkeyPatch
) -> None:
    """A drawing that costs more than a request may is ``too-intricate``, and nobody keeps it."""
    link = client.post("/v1/drawings", json=EXAMPLE_ORDER).get_json()["plan"]
    monkeypatch.setattr(lane, "budget", lambda: budget.Budget(left=0.1))
    refused = client.get(link)
    assert (refused.status_code, refused.mimetype) == (422, "application/problem+json")
    assert refused.get_json()["type"] == "/problems/too-intricate"
    assert refused.headers["Cache-Control"] == "no-store"


def _width_px(part: Message) -> int:
    """A picture's width, as its header tells (PNG, 11.2.2)."""
    held = part.get_payload(decode=True)
    assert isinstance(held, bytes)
    return int.from_bytes(held[16:20], "big")


def test_a_draft_of_many_slabs_has_smaller_pictures(client: "FlaskClient") -> None:
    """One plan is 1120 px wide, eight are 560; eight too crowded to paint at once are left out."""
    widths = []
    for slabs, holes in ((1, 2), (8, 2), (8, 20)):
        order = crowded(slabs, holes, "units", 4)
        for slab in order["slabs"]:
            slab["rests"] = {"kind": "full"}
            slab["outline"] = order["slabs"][0]["outline"]
            slab["thickness"] = 60
        accept = {"Accept": "message/rfc822"}
        draft = client.post("/v1/replies", json={"order": order}, headers=MAKER | accept)
        assert draft.status_code == 200, draft.text[:200]
        widths.append([_width_px(part) for part in message_from_bytes(draft.data).walk()
                       if part.get_content_type() == "image/png"])  # fmt: skip
    assert widths == [[1120], [560] * 8, []]
