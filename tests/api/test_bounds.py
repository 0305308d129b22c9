"""No order is answered without bound: in findings, in bytes, and in the work that it takes."""

import math
import time
from typing import TYPE_CHECKING, Any

import pytest

from api.schemas import Schemas
from ledgerstone.application.answers import MAX_FINDINGS
from ledgerstone.wording import Message, english

if TYPE_CHECKING:
    from flask.testing import FlaskClient

MAX_BYTES = 400_000
MAX_CUTOUTS = 20
MAX_S = 12.0  # of processor time; the server ends a worker after 20 s, and the proxy waits 25


def _gear(count: int) -> dict[str, Any]:
    """An outline whose every other corner turns inward."""
    turns = [2 * math.pi * i / count for i in range(count)]
    far = [1 + 0.02 * (i % 2) for i in range(count)]
    points = [
        {"x": round(1200 + 1150 * math.cos(t) * f, 1), "y": round(300 + 290 * math.sin(t) * f, 1)}
        for t, f in zip(turns, far, strict=True)
    ]
    return {"kind": "polygon", "points": points}


_LARGE = {"kind": "rectangle", "length": 2600, "width": 900}
_HOLES = [
    {"kind": "circle", "diameter": 90, "centre": {"x": 150 + 220 * (n % 10), "y": 160 + 320 * row}}
    for row in range(2)
    for n in range(10)
]
_LEGS = [{"x": 100 + 110 * n, "y": 100 + 400 * (n % 2)} for n in range(20)]
_LEDGES = [
    {"start": {"x": 10, "y": 40 + 20 * n}, "end": {"x": 2590, "y": 40 + 20 * n}, "depth": 200}
    for n in range(20)
]
COSTLY: dict[str, tuple[int, dict[str, Any]]] = {
    "200 points on a frame": (
        1, {"outline": _gear(200), "thickness": 40, "rests": {"kind": "frame", "width": 40}},
    ),
    "200 points that crack": (
        1, {"outline": _gear(200), "thickness": 25, "rests": {"kind": "ends", "depth": 60}},
    ),
    "20 base units": (
        1, {"outline": _LARGE, "thickness": 40,
            "rests": {"kind": "units", "units": [{"width": 130}] * 20}},
    ),
    "20 ledges": (
        1, {"outline": _LARGE, "thickness": 40, "rests": {"kind": "ledges", "lines": _LEDGES}},
    ),
    "eight that crack": (
        8, {"outline": _gear(100), "thickness": 25, "rests": {"kind": "ends", "depth": 60}},
    ),
    "eight with 20 holes on 20 legs": (
        8, {"outline": {"kind": "rectangle", "length": 2400, "width": 640}, "thickness": 40,
            "cutouts": _HOLES, "rests": {"kind": "legs", "at": _LEGS, "pad": 60}},
    ),
}  # fmt: skip
EVERY_DAY = ("200 points on a frame", "20 base units")


@pytest.mark.parametrize(
    "name",
    [n if n in EVERY_DAY else pytest.param(n, marks=pytest.mark.long) for n in COSTLY],
)
def test_the_costliest_orders_are_answered_in_bounded_work(
    client: "FlaskClient", name: str
) -> None:
    """Orders as intricate as they may be, quoted or sent back, keep to the time of a worker."""
    count, slab = COSTLY[name]
    slabs = [{**slab, "label": f"{number}"} for number in range(count)]
    began_s = time.process_time()
    answer = client.post("/v1/quotes", json={"slabs": slabs})
    assert answer.status_code in (200, 422)
    assert time.process_time() - began_s < MAX_S


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
    """8 × 20 openings on top of one another are too intricate at once; one such slab is told of."""
    hole = {"kind": "circle", "diameter": 100, "centre": {"x": 500, "y": 300}}
    crowded = _crowded([hole] * MAX_CUTOUTS)
    whole = client.post("/v1/quotes", json=crowded)
    assert (whole.status_code, whole.get_json()["type"]) == (422, "/problems/too-intricate")
    assert len(whole.data) < MAX_BYTES
    answer = client.post("/v1/quotes", json={**crowded, "slabs": crowded["slabs"][:1]})
    assert answer.status_code == 422
    told = answer.get_json()
    assert len(told["findings"]) <= MAX_FINDINGS
    assert len(answer.data) < MAX_BYTES
    assert schemas.faults("SentBack", told) == []


def test_more_findings_than_are_reported_are_counted(
    client: "FlaskClient", schemas: Schemas, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where findings are left out the gravest are reported, and the number of the others."""
    whole = client.post("/v1/quotes", json=_crowded([])).get_json()["findings"]
    monkeypatch.setattr("ledgerstone.application.answers.MAX_FINDINGS", 3)
    told = client.post("/v1/quotes", json=_crowded([])).get_json()
    assert len(whole) > 3
    assert [one["id"] for one in told["findings"]] == [one["id"] for one in whole[:3]]
    assert told["more_findings"] == len(whole) - 3
    assert schemas.faults("Quote", told) == []


@pytest.mark.parametrize(
    ("document", "count"),
    [
        # each of the eight lacks its outline, and each of its openings a kind
        ({"slabs": [{"cutouts": [{} for _ in range(20)]} for _ in range(8)]}, 8 * 21),
        ({"slabs": [{"rests": {"kind": "legs", "at": [{}] * 20}} for _ in range(8)]}, None),
        ({"slabs": [{"outline": {"kind": "polygon", "points": [{}] * 200}}] * 8}, None),
    ],
)
def test_what_is_not_understood_is_reported_in_its_first_fifty_faults(
    client: "FlaskClient", schemas: Schemas, document: dict[str, Any], count: int | None
) -> None:
    """However many faults a request has, fifty are reported, and the number of the others."""
    answer = client.post("/v1/quotes", json=document)
    body = answer.get_json()
    assert answer.status_code == 400
    assert schemas.undocumented("NotUnderstood", body) == []
    assert len(body["faults"]) == 50
    assert body["more_faults"] > 0
    assert count is None or body["more_faults"] == count - 50
    every = Message("things-not-understood", count=50 + body["more_faults"])
    assert body["detail"] == english(every)
    assert len(answer.data) < 12_000
