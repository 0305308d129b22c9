"""Changes are stated and patched against the order as it then stands, by what each thing is."""

import copy
from typing import Any

import jsonpatch
import pytest

from ledgerstone.application.answering import read_sent_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.codec.patch import apply, write_patch
from ledgerstone.remedies import Change, start
from ledgerstone.remedies.words import say
from ledgerstone.wording import english
from ledgerstone.workshop import Workshop
from support.contexts import context_of
from support.remedied import FULL, TODAY, fixed, hole, rectangle

_ACROSS = ("200 mm", "400 mm", "600 mm")


@pytest.fixture(scope="module")
def context(workshop: Workshop) -> QuoteContext:
    """A context that keeps its plates between the orders of this file."""
    return context_of(workshop, TODAY)


def test_what_moves_in_the_second_piece_is_named(context: QuoteContext) -> None:
    """A run of 3.6 m with a sink at its far end and a tap at its back edge: cut, and moved."""
    openings = [
        hole("left basin", "360 mm", "900 mm", "300 mm"),
        hole("right basin", "360 mm", "2700 mm", "300 mm"),
        hole("left tap", "35 mm", "900 mm", "540 mm", "covered"),
        hole("right tap", "35 mm", "2700 mm", "612 mm", "covered"),
    ]
    order = rectangle("3600 mm", "620 mm", cutouts=openings, rests=FULL)
    says, made, _ = fixed(context, order)
    assert len(made["slabs"]) == 2
    told = " ".join(says)
    assert "right tap" in told
    assert "left tap" not in told
    assert "None" not in told
    [tap] = [c for c in made["slabs"][1]["cutouts"] if c["label"] == "right tap"]
    by = 612 - float(tap["centre"]["y"].removesuffix(" mm"))
    assert f"{by:g} mm towards the front" in told


def test_a_patch_copies_its_values() -> None:
    """A later removal inside a replaced slab acts on the document alone, and acts once."""
    patch: list[dict[str, Any]] = [
        {"op": "replace", "path": "/slabs/0", "value": {"cutouts": ["A", "B", "C"]}},
        {"op": "remove", "path": "/slabs/0/cutouts/0"},
    ]
    kept = copy.deepcopy(patch)
    document: dict[str, Any] = {"slabs": [{"cutouts": []}]}
    apply(document, patch)
    assert document == {"slabs": [{"cutouts": ["B", "C"]}]}
    assert patch == kept
    assert document == jsonpatch.apply_patch({"slabs": [{"cutouts": []}]}, kept)


def test_two_removals_at_one_place_take_away_two_things(context: QuoteContext) -> None:
    """Of A, B and C the first is left out, and then the first again: C alone is left."""
    holes = [hole(name, "40 mm", x, "200 mm") for name, x in zip("ABC", _ACROSS, strict=True)]
    document = rectangle("900 mm", "500 mm", cutouts=holes)
    first = Change(("slabs", 0, "cutouts", 0), None)
    state = start(read_sent_order(document, context)).after((first, first))
    made = jsonpatch.apply_patch(document, write_patch(document, state))
    assert [cutout["label"] for cutout in made["slabs"][0]["cutouts"]] == ["C"]
    assert [english(one) for (one,) in say(state)] == ["Leave out the A and the B."]


def test_two_ways_to_the_same_order_are_one_state(context: QuoteContext) -> None:
    """What was changed and changed back is the order as it was sent: nothing is said or patched."""
    document = rectangle("900 mm", "500 mm")
    sent = start(read_sent_order(document, context))
    path = ("slabs", 0, "thickness")
    thicker = sent.after((Change(path, sent.order.slabs[0].thickness.like(50)),))
    again = thicker.after((Change(path, sent.order.slabs[0].thickness),))
    assert again.key == sent.key != thicker.key
    assert write_patch(document, again) == []
    assert say(again) == ()
