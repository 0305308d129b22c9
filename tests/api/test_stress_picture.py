"""The maker's picture of how far a slab is used."""

import re
from typing import TYPE_CHECKING, Any, get_args

import pytest

from ledgerstone.application import utilisation
from ledgerstone.errors import ContactNotSettledError
from ledgerstone.strength.verdict import Case
from ledgerstone.wording import Message, english
from support.asking import changed
from support.demonstration import MAKER_KEY

if TYPE_CHECKING:
    from flask.testing import FlaskClient

MAKER = {"Authorization": f"Bearer {MAKER_KEY}"}


def _path(client: "FlaskClient", order: dict[str, Any]) -> str:
    plan: str = client.post("/v1/drawings", json=order).get_json()["plan"]
    return re.sub(r"^https?://[^/]+", "", plan).replace("/plan.svg", "/stress.svg")


def test_it_is_the_makers_alone(client: "FlaskClient", example_order: dict[str, Any]) -> None:
    """Without the maker's key, or with another, the picture is refused with 401."""
    path = _path(client, example_order)
    assert client.get(path).status_code == 401
    wrong = {"Authorization": "Bearer another key"}
    assert client.get(path, headers=wrong).status_code == 401


def test_it_paints_bands_and_marks_the_worst_place(
    client: "FlaskClient", example_order: dict[str, Any]
) -> None:
    """The maker sees an SVG with painted areas, one marked place, and the case in words."""
    answer = client.get(_path(client, example_order), headers=MAKER)
    assert answer.status_code == 200
    assert answer.mimetype == "image/svg+xml"
    assert answer.text.count('data-part="band"') >= 2
    assert 'data-part="worst"' in answer.text
    named = [english(Message("stress-loading", loading=case)) for case in get_args(Case)]
    assert any(f": {case}, " in answer.text for case in named)


def test_no_shared_store_keeps_it(client: "FlaskClient", example_order: dict[str, Any]) -> None:
    """A picture for the maker alone is kept by the maker's own browser alone."""
    answer = client.get(_path(client, example_order), headers=MAKER)
    assert answer.headers["Cache-Control"].startswith("private")


def test_it_is_the_same_each_time(client: "FlaskClient", example_order: dict[str, Any]) -> None:
    """The same token gives the same bytes, and its ETag is answered with 304."""
    path = _path(client, example_order)
    first, second = (client.get(path, headers=MAKER) for _ in range(2))
    assert first.data == second.data
    again = client.get(path, headers={**MAKER, "If-None-Match": first.headers["ETag"]})
    assert again.status_code == 304


def test_a_shape_that_cannot_be_made_is_stated_so(client: "FlaskClient") -> None:
    """Where the shape stops the slab, the picture says that nothing is worked out."""
    order = changed(("/slabs/0/cutouts/0/centre/x", "9 m"))
    answer = client.get(_path(client, order), headers=MAKER)
    assert answer.status_code == 200
    assert english(Message("stress-no-shape")) in answer.text
    assert 'data-part="band"' not in answer.text


def test_a_slab_without_an_answer_is_drawn_plain(
    client: "FlaskClient", example_order: dict[str, Any], monkeypatch: pytest.MonkeyPatch
) -> None:
    """Where the plate has no answer for a slab, its picture has no bands."""

    def unknown(*_: object, **__: object) -> None:
        raise ContactNotSettledError("equilibrium", 1.0)

    path = _path(client, example_order)
    monkeypatch.setattr(utilisation, "slab_strength", unknown)
    answer = client.get(path, headers=MAKER)
    assert answer.status_code == 200
    assert 'data-part="band"' not in answer.text
