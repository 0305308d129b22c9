"""One or two sheets of A4 for each slab, whatever is asked for: counted on the printed pages."""

import subprocess
from pathlib import Path
from typing import Any

import pytest

from support.offered import MAKER, service, slabs_order

LONG = (
    "The long one by the window that looks over the yard, with all the holes that anyone asked for"
)
Json = dict[str, Any]


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
HEADS = {"order": "Job sheet", "boards": "To cut and to have", "lists": "Long lists",
         "batches": "Batch cards", "card": "Carry card:"}  # fmt: skip
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


def _pages(path: Path, slabs: list[Json]) -> list[str]:
    asked = {"order": {"slabs": slabs, "delivery": {"kind": "collect"}}}
    accept = {"Accept": "application/pdf"}
    answer = service().post("/v1/job-sheets", json=asked, headers={**MAKER, **accept})
    assert answer.status_code == 200, answer.text
    path.write_bytes(answer.data)
    read = subprocess.run(["pdftotext", "-layout", path, "-"], capture_output=True, check=True)
    return read.stdout.decode().split("\f")[:-1]


@pytest.mark.parametrize("name", AWKWARD)
def test_a_slab_has_two_sheets_and_a_card(tmp_path: Path, name: str) -> None:
    """The mould is one page, steel and finish another, the card a third: none runs on to more."""
    pages = _pages(tmp_path / "job.pdf", AWKWARD[name])
    slabs = len(AWKWARD[name])
    begins = [_begins(text) for text in pages]
    of_slabs = [at for at, what in enumerate(begins) if what in ("mould", "steel", "card")]
    assert len(of_slabs) == 3 * slabs
    assert all(at + 1 == len(pages) or begins[at + 1] for at in of_slabs)


def _begins(text: str) -> str:
    """What a page begins, by the heading under its reference; nothing where it runs on."""
    workshop, town = "Tarnside Casting,", "Wethermoor"
    head = " ".join(" ".join(text.split()).partition(f"{workshop} {town}")[2].split()[:20])
    for what, starts in HEADS.items():
        if head.startswith(starts):
            return what
    if ": steel, lifts, finish" in head:
        return "steel"
    return "mould" if ": the mould" in head else ""


@pytest.mark.parametrize("name", AWKWARD)
def test_letters_stay_legible(tmp_path: Path, name: str) -> None:
    """No letters of a sheet's own text are smaller than 7 points; drawings' own come on top."""
    _pages(tmp_path / "job.pdf", AWKWARD[name])
    told = subprocess.run(
        ["pdftotext", "-bbox-layout", tmp_path / "job.pdf", "-"], capture_output=True, check=True
    ).stdout.decode()
    ticks = [line for line in told.splitlines() if ">MIRRORED:<" in line]
    assert ticks
    for line in ticks:
        parts = dict(part.split("=") for part in line.split(">")[0].split()[1:])
        height = float(parts["yMax"].strip('"')) - float(parts["yMin"].strip('"'))
        assert height >= 7
