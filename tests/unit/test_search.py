"""The shortcuts by which the search for remedies skips trials change nothing that it finds."""

from dataclasses import replace
from datetime import date
from functools import partial
from typing import Final

import pytest

from ledgerstone.application.answering import answer_order, outcome_of
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.patch import trial_of
from ledgerstone.quote import SentBack
from ledgerstone.remedies import start
from ledgerstone.remedies.budget import Budget
from ledgerstone.remedies.cheapest import TriedStates
from ledgerstone.remedies.offers import options
from ledgerstone.strength.slabs import Plates, slab_strength
from ledgerstone.wording import Message
from ledgerstone.workshop import Workshop
from support.calibration import BREAKERS, JOBS
from support.contexts import context_of
from support.documents import Json
from support.in_english import parts_in_english
from support.slabs import box, hole, polygon, slab_json
from support.stages import Stages

TODAY: Final = date(2026, 11, 25)
CRACKING: Final = [name for name, (_, checks) in BREAKERS.items() if checks == ("cracks-in-place",)]


def stages_of(document: Json, workshop: Workshop) -> Stages:
    """Stages of an order, with no plate kept from another."""
    return Stages(read_order(document, workshop), workshop, (), TODAY)


@pytest.mark.parametrize("name", ["a 2.4 m run round a hob", "a bench on legs", "a hearth"])
def test_handling_and_in_place_apart_are_the_whole(name: str, workshop: Workshop) -> None:
    """Looked at apart, a slab is as strong as in one go; its steel is looked at after both."""
    stages = stages_of(JOBS[name], workshop)
    for i, slab in enumerate(stages.order.slabs):
        whole = slab_strength(
            slab,
            stages.shapes[i],
            workshop,
            slab_kg=stages.slab_kg[i],
            workshop_temp_c=stages.known.workshop_temp_c,
            plates=Plates(),
        )
        found = stages.strength[i]
        uncracked = tuple(v for v in found.in_place.verdicts if v.case != "after-a-crack")
        found = replace(found, in_place=replace(found.in_place, verdicts=uncracked))
        assert found == whole


@pytest.mark.parametrize("name", CRACKING)
def test_a_trial_that_is_skipped_would_have_failed(name: str, workshop: Workshop) -> None:
    """Where a quick look says that a change cannot help, the whole trial finds the crack too."""
    document, check = BREAKERS[name][0], "cracks-in-place"
    context, stages = context_of(workshop, TODAY), stages_of(document, workshop)
    stop = next(
        f for f in answer_order(document, context, search=False).findings if f.check == check
    )
    trial = trial_of(document, partial(outcome_of, context=context, sought=False))
    spared = 0
    light, heavy = (
        options(stop, stages.planned, stages.context, heavy=which) for which in (False, True)
    )
    for option in (*light, *heavy):
        tried = TriedStates(trial, stages.context, Budget(100.0), "whole")
        tried.full = 10
        state = start(stages.order).after(option.changes)
        if tried.cannot_fix(state, stop):
            outcome = trial(state)
            assert outcome is not None
            assert any(f.check == check and f.slab == stop.slab for f in outcome.checked.stops)
            spared += 1
    assert spared


def test_a_plain_slab_keeps_no_join_at_a_side_that_is_gone(workshop: Workshop) -> None:
    """Where a spike becomes a plain slab, the join at its third side is left out and said so."""
    spike: Json = {"outline": polygon((0, 0), (900, 0), (0, 90)), "thickness": 40}
    run: Json = {"outline": box(900, 500), "thickness": 40}
    ends = {"one": {"slab": 0, "side": "3"}, "other": {"slab": 1, "side": "left"}, "gap": 2}
    document: Json = {"slabs": [spike, run], "joins": [ends]}
    answer = answer_order(document, context_of(workshop, TODAY))
    assert isinstance(answer, SentBack)
    assert answer.found is not None
    nearest = answer.found.nearest_makeable
    assert nearest is not None
    assert nearest.state.order.joins == ()
    assert (Message("leave-out-joins", count=1),) in nearest.sentences


def test_eight_hopeless_slabs_still_have_a_nearest(workshop: Workshop) -> None:
    """Twenty openings on one spot, eight times over: plain slabs are within the counted budget."""
    slab = slab_json(box(1400, 600), *[hole(100, 700, 300)] * 20, rests={"kind": "full"})
    answer = answer_order({"slabs": [slab] * 8}, context_of(workshop, TODAY))
    assert isinstance(answer, SentBack)
    assert answer.found is not None
    assert answer.found.nearest_makeable is not None
    assert len(parts_in_english(answer.found.nearest_makeable)) == 8
