"""A stage begins once nothing stops the one before it: a shape's fault never meets the plate."""

from typing import Any

import pytest
from flask.testing import FlaskClient

from ledgerstone import quote
from ledgerstone.checks import check_plan
from ledgerstone.stages import Assessed, Planned, StageContext, Unassessed, assess
from support.asking import changed
from support.breaking import broken

NEAR_THE_BACK = changed(("/slabs/0/cutouts/0/centre/y", "385 mm"))  # what moving it settles
TOO_LARGE = changed(("/slabs/0/outline/length", "9 m"))


@pytest.fixture
def assessed(monkeypatch: pytest.MonkeyPatch) -> list[Planned]:
    """What comes to the plate."""
    seen = list[Planned]()

    def kept(planned: Planned, context: StageContext) -> Assessed | Unassessed:
        seen.append(planned)
        return assess(planned, context)

    monkeypatch.setattr(quote, "assess", kept)
    return seen


@pytest.mark.parametrize("order", [NEAR_THE_BACK, TOO_LARGE])
def test_an_order_that_a_shape_check_stops_never_meets_the_plate(
    client: FlaskClient, monkeypatch: pytest.MonkeyPatch, order: dict[str, Any]
) -> None:
    """It is sent back with its shape's findings alone, whatever becomes of the plate."""
    monkeypatch.setattr(quote, "assess", broken)
    answer = client.post("/v1/quotes", json=order, headers={"Prefer": "return=minimal"})
    assert answer.status_code == 422
    told = answer.get_json()
    assert told["not_checked"] == ["strength", "promise"]
    assert not any(finding["check"].startswith("check-") for finding in told["findings"])


def test_of_its_trials_those_alone_that_a_shape_check_passes_do(
    client: FlaskClient, assessed: list[Planned]
) -> None:
    """While what would settle it is searched, only shapes that can be made are assessed."""
    answer = client.post("/v1/quotes", json=NEAR_THE_BACK)
    assert answer.status_code == 422
    assert any(finding["remedies"] for finding in answer.get_json()["findings"])
    assert assessed
    stopped = [p for p in assessed if any(f.level == "stops" for f in check_plan(p))]
    assert stopped == []


def test_a_trial_that_a_shape_check_passes_is_assessed(
    client: FlaskClient, assessed: list[Planned]
) -> None:
    """A basin that is moved to where it can be made is held to the plate before it is offered."""
    client.post("/v1/quotes", json=NEAR_THE_BACK)
    assert len(assessed) >= 1
