"""One or two sheets of A4 for each slab, whatever is asked for: counted on the printed pages."""

from typing import Any

import pytest

from support.demonstration import EXAMPLE_ORDER
from support.documents import Json
from support.everyday import EVERYDAY
from support.offered import MAKER, service, slabs_order
from support.printed import least_points, page_count, page_texts

LONG = (
    "The long one by the window that looks over the yard, with all the holes that anyone asked for"
)


def _slab(outline: Json, **more: Any) -> Json:
    usual = {"thickness": 40, "label": LONG, "rests": {"kind": "full"},
             "finish": {"surface": "polished", "sealer": "matt"}}  # fmt: skip
    return {"outline": outline, **usual, **more}


def _holes(count: int, diameter: float) -> list[Json]:
    """Make so many round openings in two rows, every one with a long label."""
    return [
        {"kind": "circle", "label": f"{n}: {LONG}", "diameter": diameter, "rim": "covered",
         "centre": {"x": 200 + 200 * (n // 2), "y": 150 + 500 * (n % 2)}}
        for n in range(count)
    ]  # fmt: skip


def _recesses(count: int) -> list[Json]:
    return [
        {"kind": "recess", "label": f"tray {n}", "depth": 5, "at": {"x": 160 + 200 * (n // 2),
         "y": 250 + 140 * (n % 2)}, "outline": {"kind": "rectangle", "length": 80, "width": 80}}
        for n in range(count)
    ]  # fmt: skip


def _saw(teeth: int) -> Json:
    """Make a long slab whose back is a row of shallow teeth."""
    xs = [2400 - 2400 * n / (teeth - 1) for n in range(teeth)]
    back = [{"x": x, "y": 800 + (20 if n % 2 else 0)} for n, x in enumerate(xs)]
    return {"kind": "polygon", "points": [{"x": 0, "y": 0}, {"x": 2400, "y": 0}, *back]}


WIDE = {"kind": "rectangle", "length": 2400, "width": 800}
MIN_POINTS = 9 - 0.01  # of a size that is told to a hundredth
AWKWARD: dict[str, list[Json]] = {
    "twenty taps": [_slab(WIDE, cutouts=_holes(20, 35))],
    "twenty basins' holes": [_slab(WIDE, cutouts=_holes(20, 90))],
    "twenty taps and twenty recesses": [
        _slab(WIDE, cutouts=_holes(20, 35), reliefs=_recesses(20), quantity=3)
    ],
    "a saw of a hundred teeth": [_slab(_saw(100))],
    "a strip": [_slab({"kind": "rectangle", "length": 2500, "width": 70}, use="upstand")],
    "a disc": [_slab({"kind": "round", "diameter": 1100}, use="table")],
    "edges of every kind": [
        _slab(
            WIDE,
            edges={
                "front": {"profile": "bevel", "size": 5, "drip": True},
                "left": {"profile": "round", "size": 8, "drip": True},
                "right": {"profile": "square", "drip": True},
                "back": {"profile": "wall"},
            },
        )
    ],
    "three": slabs_order(3)["slabs"],
    "eight": slabs_order(8)["slabs"],
}


def _printed(order: Json) -> bytes:
    accept = {"Accept": "application/pdf"}
    answer = service().post("/v1/job-sheets", json={"order": order}, headers={**MAKER, **accept})
    assert answer.status_code == 200, answer.text
    pdf: bytes = answer.data
    return pdf


@pytest.mark.parametrize("name", [*EVERYDAY, "bench"])
def test_a_plain_slabs_sheet_is_two_pages(name: str) -> None:
    """Days and finish on one, mould, steel and pour on the other; a kitchen of three eight.

    A top round a hob has 22 bars across: equal ones are one row.
    """
    pdf = _printed(EVERYDAY.get(name, EXAMPLE_ORDER))
    assert page_count(pdf) <= {"kitchen": 8}.get(name, 2)
    assert least_points(pdf) >= MIN_POINTS


@pytest.mark.parametrize("name", AWKWARD)
def test_letters_stay_legible(name: str) -> None:
    """No letter of a sheet is smaller than 9 points, drawings' own neither; a slab has a sheet."""
    slabs = AWKWARD[name]
    pdf = _printed({"slabs": slabs, "delivery": {"kind": "collect"}})
    assert least_points(pdf) >= MIN_POINTS
    begun = [text for text in page_texts(pdf) if ": mould, reinforcement" in text]
    assert len(begun) == len(slabs)
    assert page_count(pdf) <= 5 + 2 * len(slabs)
