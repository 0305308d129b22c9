"""What is offered where an edge, a relief, a finish or the way in stops an order: proved."""

from datetime import date
from typing import Final

import jsonpatch
import pytest

from ledgerstone.application.answering import answer_order
from ledgerstone.codec.patch import write_patch
from ledgerstone.quantities import Length
from ledgerstone.quote import SentBack
from ledgerstone.wording import Message, english, side_name
from ledgerstone.workshop import Workshop
from support.contexts import context_of
from support.documents import Json
from support.in_english import in_english
from support.slabs import box, cut, slab_json
from unit.checked import FITTED, plain

TODAY: Final = date(2026, 11, 25)
FULL: Final = {"rests": {"kind": "full"}}
UNITS: Final = {"kind": "units", "units": [{"width": 800}, {"width": 600, "for": "hob"}]}


def relief(depth: int, at: tuple[int, int], size: tuple[int, int] = (400, 300)) -> Json:
    """Write a drainer."""
    place = {"x": at[0], "y": at[1]}
    return {"kind": "drainer", "outline": box(*size), "depth": depth, "at": place}


def edge(size: int) -> Json:
    """Write a bevelled front."""
    return {"front": {"profile": "bevel", "size": size}}


def resized(size: str, now_mm: float, was_mm: float) -> Message:
    """Another size of the slab."""
    sizes = {"now": Length.of_mm(now_mm), "was": Length.of_mm(was_mm)}
    return Message("resize", thing=Message("slab-only"), size=size, **sizes)


def bevelled(now_mm: float, was_mm: float) -> Message:
    """Another bevel along the slab's front."""
    sizes = {"now": Length.of_mm(now_mm), "was": Length.of_mm(was_mm)}
    where = {"side": side_name("front"), "slab": Message("slab-only")}
    return Message("edge-resize", profile="bevel", **where, **sizes)


MATT: Final = Message("refinish", slab=Message("slab-only"), surface="same", sealer="matt")

CASES: Final[dict[str, tuple[Json, Json, str, str]]] = {
    "a relief past the edge": (
        plain(**FULL, reliefs=[relief(6, (1020, 100))]),
        {"kind": "collect"},
        "relief-off-slab",
        "Move the drainer 20 mm to the left.",
    ),
    "a relief too deep": (
        plain(**FULL, reliefs=[relief(30, (100, 100))]),
        {"kind": "collect"},
        "relief-too-deep",
        english(resized("thickness", 50, 40)),
    ),
    "a bevel too large": (
        plain(**FULL, edges=edge(18)),
        {"kind": "collect"},
        "edge-not-made",
        english(bevelled(15, 18)),
    ),
    "a thin edge to polish": (
        plain(**FULL, thickness=25, edges=edge(12), finish={"surface": "polished"}),
        {"kind": "collect"},
        "edge-too-thin-for-finish",
        english(bevelled(10, 12)),
    ),
    "a sealer for indoors": (
        plain(**FULL, finish={"sealer": "satin"}, place="outdoors"),
        {"kind": "collect"},
        "sealer-not-for-place",
        english(MATT),
    ),
    "a hob over a side": (
        slab_json(
            box(1400, 620),
            cut("rectangle", (500, 400), (1000, 310), label="hob", rim="covered"),
            rests=UNITS,
        ),
        {"kind": "collect"},
        "cutout-over-unit-side",
        "Move the hob 70 mm to the right.",
    ),
    "a drip in a thin slab": (
        plain(**FULL, thickness=25, edges={"front": {"profile": "square", "drip": True}}),
        {"kind": "collect"},
        "too-thin-for-drip",
        english(Message("edge-without-drip", side=side_name("front"), slab=Message("slab-only"))),
    ),
    "a turn that is too tight": (
        plain(2600, 600, **FULL),
        {**FITTED, "turn": {"from": 900, "into": 900}},
        "turn-too-tight",
        "Make the slab of two pieces, ",
    ),
}


@pytest.mark.parametrize("name", CASES)
def test_a_stop_comes_with_what_settles_it(name: str, workshop: Workshop) -> None:
    """The remedy a maker would give is among those shown, and settles its finding when applied."""
    slab, delivery, check, remedy = CASES[name]
    context, document = context_of(workshop, TODAY), {"slabs": [slab], "delivery": delivery}
    answer = answer_order(document, context)
    assert isinstance(answer, SentBack)
    assert answer.found is not None
    stop = next(f for f in answer.findings if f.level == "stops" and f.check == check)
    patches = {
        in_english(one): write_patch(document, one.state) for one in answer.found.remedies[stop.id]
    }
    shown = next((says for says in patches if says.startswith(remedy)), None)
    assert shown is not None, list(patches)
    patched = jsonpatch.apply_patch(document, patches[shown])
    after = answer_order(patched, context, search=False)
    assert check not in {finding.check for finding in after.findings if finding.level == "stops"}
