"""What follows from another finding at the same place is told under it, and is no second thing."""

from dataclasses import replace
from datetime import date
from typing import Final

import pytest

from ledgerstone.checks import GROUP_OF, OCCASIONS, Finding
from ledgerstone.checks.causes import CAUSES, with_causes
from ledgerstone.quantities import Length
from ledgerstone.quote import run_stages
from ledgerstone.wording import Message
from ledgerstone.workshop import Workshop
from support.calibration import BREAKERS, JOBS
from support.documents import Json
from support.slabs import box, cut, hole, order_of, slab_json
from support.stages import Stages
from unit.checked import values_of

TODAY: Final = date(2026, 11, 25)


def told(workshop: Workshop, *slabs: Json) -> dict[str, str | None]:
    """What is found of an order: each check, with the check that it follows from."""
    stages = Stages(order_of(workshop, *slabs), workshop, None, TODAY)
    found = run_stages(stages.order, stages.context).findings
    names = {finding.id: finding.check for finding in found}
    return {f.check: None if f.follows_from is None else names[f.follows_from] for f in found}


def finding(check: str, *at: str, where_mm: Json | None = None) -> Finding:
    """A finding that stops, on the first slab."""
    message = Message(check)
    return Finding(check, "stops", message, "geometry", slab=0, at=at, where_mm=where_mm)


def test_a_strip_too_narrow_is_one_thing(workshop: Workshop) -> None:
    """Beside a strip of 2 mm, that no grain passes there is reported under it."""
    slab = slab_json(box(1450, 560), hole(360, 980, 182, label="basin"))
    assert told(workshop, slab) == {
        "strip-too-narrow": None,
        "aggregate-too-large": "strip-too-narrow",
    }


def test_a_slab_too_thin_is_one_thing(workshop: Workshop) -> None:
    """Of a polished slab of 12 mm grains, cover and edges follow from its thickness."""
    slab = slab_json(box(900, 500), finish={"surface": "polished"}) | {"thickness": 12}
    assert told(workshop, slab) == {
        "too-thin": None,
        "edge-too-thin-for-finish": "too-thin",
        "aggregate-too-large": "too-thin",
        "cover-too-thin": "too-thin",
    }


def test_an_opening_that_takes_all_is_one_thing(workshop: Workshop) -> None:
    """A hob larger than its slab is stated as that, with the slab's size."""
    slab = slab_json(box(600, 500), cut("rectangle", (900, 900), (300, 250), label="hob"))
    assert told(workshop, slab) == {"cutout-off-slab": None, "two-pieces": "cutout-off-slab"}
    stages = Stages(order_of(workshop, slab), workshop, None, TODAY)
    values = values_of(run_stages(stages.order, stages.context).findings[0], "cutout-takes-all")
    assert values["cutout"] == Message("cutout-labelled", label="hob")
    assert (values["length"], values["width"]) == (Length.of_mm(600), Length.of_mm(500))


def test_two_openings_that_take_all_are_understood(workshop: Workshop) -> None:
    """Where two openings together leave nothing, that is explained, and what they do first."""
    half = [cut("rectangle", (500, 700), (x, 250), corner_radius=0) for x in (200, 500)]
    found = told(workshop, slab_json(box(600, 500), *half))
    assert {"cutout-off-slab", "cutouts-overlap", "two-pieces"} <= set(found)
    assert found["two-pieces"] == "cutout-off-slab"


def test_two_causes_are_two_things(workshop: Workshop) -> None:
    """What is wrong at another opening, or on another slab, follows from nothing here."""
    narrow = slab_json(box(1450, 560), hole(360, 980, 182), hole(100, 200, 40))
    found = told(workshop, narrow, slab_json(box(900, 500)) | {"thickness": 12})
    assert found["too-thin"] is None
    assert found["strip-too-narrow"] is None


def test_a_finding_follows_only_from_one_as_grave() -> None:
    """A stop never hides beneath a caution; a caution may stand under a stop."""
    at = "/slabs/0/cutouts/0"
    strip, grains = finding("strip-too-narrow", at), finding("aggregate-too-large", at)
    mild = replace(strip, level="caution")
    assert [one.follows_from for one in with_causes([mild, grains])] == [None, None]
    assert [one.follows_from for one in with_causes([grains, strip])] == [None, strip.id]
    assert with_causes([grains, strip])[0].check == "strip-too-narrow"


def test_a_place_elsewhere_is_another_thing() -> None:
    """Of two findings that both have a place, one follows from the other only near it."""
    at = "/slabs/0/cutouts/0"
    line = {"type": "LineString", "coordinates": [[0, 0], [0, 40]]}
    strip = finding("strip-too-narrow", at, where_mm=line)
    for x, expected in ((90, strip.id), (110, None)):
        crack = finding(
            "cracks-in-place", "/slabs/0", where_mm={"type": "Point", "coordinates": [x, 20]}
        )
        assert with_causes([strip, crack])[1].follows_from == expected


def test_what_follows_from_what_follows_is_reported_under_the_first() -> None:
    """Cover that follows from grains that follow from a thickness stands under the thickness."""
    at = "/slabs/0/thickness"
    names = ("cover-too-thin", "aggregate-too-large", "too-thin")
    found = with_causes([finding(name, at) for name in names])
    assert [(one.check, one.follows_from) for one in found] == [
        ("too-thin", None),
        ("cover-too-thin", "too-thin.0"),
        ("aggregate-too-large", "too-thin.0"),
    ]


@pytest.mark.parametrize("check", CAUSES)
def test_nothing_follows_from_itself(check: str) -> None:
    """Every cause is a check that there is, and no chain of causes leads back."""
    reached = [check]
    for name in reached:
        reached += [cause for cause in CAUSES.get(name, ()) if cause not in reached]
        assert name in GROUP_OF
        assert check not in CAUSES.get(name, ())


def _as_read(findings: tuple[Finding, ...]) -> list[str]:
    """Ids down an answer: what stops and two cautions stand open, the rest is folded by when."""
    roots = [one for one in findings if one.follows_from is None]
    warned = [one for one in roots if one.level == "caution" and one.when == "before-order"][:2]
    groups = [[one for one in roots if one.level == "stops"], warned]
    left = [one for one in roots if one not in groups[0] and one not in warned]
    groups += [[one for one in left if one.when == when] for when in OCCASIONS]
    return [
        each.id
        for group in groups
        for one in group
        for each in (one, *(f for f in findings if f.follows_from == one.id))
    ]


@pytest.mark.parametrize("name", [*JOBS, *BREAKERS])
def test_numbers_run_down_the_answer(name: str, workshop: Workshop) -> None:
    """Findings are in the order in which they are read, so that theirs are 1, 2, 3 down it."""
    document = JOBS[name] if name in JOBS else BREAKERS[name][0]
    order = order_of(workshop, *document["slabs"])
    stages = Stages(order, workshop, None, TODAY)
    found = run_stages(stages.order, stages.context).findings
    assert [one.id for one in found] == _as_read(found)
