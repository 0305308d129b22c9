"""Slabs too long to cast or to carry, made of two with a join: where it lies, what is left."""

from dataclasses import replace
from fractions import Fraction

import pytest

from ledgerstone.application.answering import read_sent_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.quantities import Length
from ledgerstone.wording import Listed, Message, english
from ledgerstone.workshop import Workshop
from support.contexts import context_of
from support.remedied import FULL, TODAY, fixed, rectangle, sent_back


@pytest.fixture(scope="module")
def context(workshop: Workshop) -> QuoteContext:
    """A context that keeps its plates between the orders of this file."""
    return context_of(workshop, TODAY)


def two_pieces(slab: Message) -> Message:
    """A slab of 3600 mm made of two pieces, with a joint of 2 mm between them."""
    sizes = Listed((Length.of_mm(1800), Length.of_mm(1798)))
    return Message("cut-in-pieces", slab=slab, count=2, sizes=sizes, given="lengths")


def test_a_run_too_long_to_cast_comes_in_two_pieces(context: QuoteContext) -> None:
    """3.6 m in one piece: the fix is two with a join, near the middle."""
    says, mended, _ = fixed(context, rectangle("3600 mm", "620 mm"))
    assert says == [english(two_pieces(Message("slab-only")))]
    assert len(mended["slabs"]) == 2
    assert mended["joins"][0]["gap"] == "2 mm"


def test_a_long_run_for_a_first_floor_flat_comes_in_two_pieces_up_the_stairs(
    context: QuoteContext,
) -> None:
    """3.6 m in one piece, fitted up fourteen steps: two pieces that six people carry."""
    order = rectangle("3600 mm", "620 mm", label="Kitchen run", rests={"kind": "full"})
    order["delivery"] = {
        "kind": "fitted",
        "postcode": "HR9 7XX",
        "floor": 1,
        "steps": 14,
        "doorway": "762 mm",
        "turn": {"from": "900 mm", "into": "1000 mm"},
        "ceiling": "2400 mm",
    }
    says, mended, quote = fixed(context, order)
    assert says == [english(two_pieces(Message("slab-labelled", label="Kitchen run")))]
    assert mended["delivery"] == order["delivery"]
    lifting = context.workshop.lifting
    assert all(one.slab_kg <= lifting.most_people * lifting.kg_per_person for one in quote.weights)
    checks = {finding.check for finding in quote.findings}
    assert not checks & {"too-heavy-for-steps", "beyond-hands"}


def test_two_runs_too_long_are_four_pieces_each_joined_to_its_own(context: QuoteContext) -> None:
    """Two runs of 3.2 m: each is cut in two, and each half meets the other half of its own run."""
    order = rectangle("3200 mm", "620 mm", rests={"kind": "full"})
    order["slabs"] += rectangle("3000 mm", "600 mm", rests={"kind": "full"})["slabs"]
    _, mended, _ = fixed(context, order)
    lengths = [slab["outline"]["length"] for slab in mended["slabs"]]
    assert lengths == ["1600 mm", "1500 mm", "1598 mm", "1498 mm"]
    ends = [(join["one"]["slab"], join["other"]["slab"]) for join in mended["joins"]]
    assert ends == [(0, 2), (1, 3)]


def test_a_run_is_cut_at_a_round_place_and_the_joint_comes_off_the_other_piece(
    context: QuoteContext,
) -> None:
    """Four units of 600 mm and one of 800: the join lies over a side, the left piece is round."""
    units = [{"width": width} for width in ("600 mm", "600 mm", "600 mm", "600 mm", "800 mm")]
    order = rectangle("3200 mm", "620 mm", rests={"kind": "units", "units": units})
    _, mended, _ = fixed(context, order)
    left, right = mended["slabs"]
    assert (left["outline"]["length"], right["outline"]["length"]) == ("1800 mm", "1398 mm")
    assert [unit["width"] for unit in left["rests"]["units"]] == ["600 mm"] * 3


def test_a_piece_that_is_cut_again_keeps_its_place(workshop: Workshop) -> None:
    """Of a small mixer a run is cut in two, and a piece in two once more: no order falls over.

    Found by random orders: a piece that was made again came after what had been changed in it.
    """
    small = replace(workshop, mixer=replace(workshop.mixer, working_l=5.0))
    order = rectangle("2328 mm", "582 mm", rests={"kind": "full"}, shade={"name": "lichen"})
    order["delivery"] = {
        "kind": "fitted",
        "postcode": "HR9 7XX",
        "doorway": "0.917 m",
        "turn": {"from": "1.197 m", "into": "1.009 m"},
        "lift": {"width": "0.872 m", "depth": "0.711 m", "height": "0.629 m", "door": "0.709 m",
                 "rated_kg": 450},
    }  # fmt: skip
    sent_back(context_of(small, TODAY), order)


def test_in_inches_the_joint_is_what_the_pieces_leave(context: QuoteContext) -> None:
    """140 in by 24 in: no piece is cut finer than a sixteenth, and nothing of the run is lost."""
    order = rectangle("140 in", "24 in", "1 1/2 in", rests=FULL)
    order["slabs"][0]["outline"]["corner_radius"] = "1 in"
    _, mended, _ = fixed(context, order)
    left, right = (slab["outline"] for slab in mended["slabs"])
    read = read_sent_order(mended, context)
    lengths = [
        slab.outline.length.exact_mm for slab in read.slabs if slab.outline.kind == "rectangle"
    ]
    assert sum(lengths) + read.joins[0].gap.exact_mm == Fraction("25.4") * 140
    assert 1.0 <= read.joins[0].gap.mm <= 3.0
    assert left["corner_radii"] == {"front-left": "1 in", "back-left": "1 in"}
    assert right["corner_radii"] == {"front-right": "1 in", "back-right": "1 in"}
