"""No order makes an answer without bound: the gravest findings are told, and how many more."""

from typing import TYPE_CHECKING, Any

import pytest

from api.schemas import Schemas
from ledgerstone.wire.answers import MOST_FINDINGS

if TYPE_CHECKING:
    from flask.testing import FlaskClient

MOST_BYTES = 400_000
MOST_CUTOUTS = 20


def _crowded(cutouts: list[dict[str, Any]]) -> dict[str, Any]:
    outline = {"kind": "rectangle", "length": 2400, "width": 640}
    slabs = [
        {"outline": {**outline, "length": 2400 + n}, "thickness": 40, "cutouts": cutouts}
        for n in range(8)
    ]
    return {"slabs": [{**slab, "rests": {"kind": "full"}} for slab in slabs]}


def test_eight_slabs_of_coincident_cutouts_make_a_bounded_answer(
    client: "FlaskClient", schemas: Schemas
) -> None:
    """8 × 20 openings on top of one another: findings, bytes and trials keep to their bounds."""
    hole = {"kind": "circle", "diameter": 100, "centre": {"x": 500, "y": 300}}
    answer = client.post("/v1/quotes", json=_crowded([hole] * MOST_CUTOUTS))
    assert answer.status_code == 422
    told = answer.get_json()
    assert len(told["findings"]) <= MOST_FINDINGS
    assert len(answer.data) < MOST_BYTES
    assert schemas.faults("SentBack", told) == []


def test_more_findings_than_are_told_are_counted(
    client: "FlaskClient", schemas: Schemas, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where findings are left out the gravest are told, and the number of the others."""
    whole = client.post("/v1/quotes", json=_crowded([])).get_json()["findings"]
    monkeypatch.setattr("ledgerstone.wire.answers.MOST_FINDINGS", 3)
    told = client.post("/v1/quotes", json=_crowded([])).get_json()
    assert len(whole) > 3
    assert [one["id"] for one in told["findings"]] == [one["id"] for one in whole[:3]]
    assert told["more_findings"] == len(whole) - 3
    assert schemas.faults("Quote", told) == []
