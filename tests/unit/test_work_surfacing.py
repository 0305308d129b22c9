"""Out of the mould and over its grits: which step comes before which."""

from dataclasses import replace
from typing import Final

import pytest

from ledgerstone.shape import shape_of
from ledgerstone.wording import Message, english
from ledgerstone.work import operations
from ledgerstone.workshop import Workshop
from support.slabs import box, hole, order_of, slab_json, steps_of

KNOCKOUTS_OUT: Final = english(Message("step-knockouts-out"))


@pytest.mark.parametrize(
    ("sides_on", "turned"),
    [
        (True, ["Turn it: way", "Demould", KNOCKOUTS_OUT]),
        (False, [KNOCKOUTS_OUT, "Turn it: way", "Demould"]),
    ],
)
def test_formers_stay_in_where_the_lift_counts_on_them(
    workshop: Workshop, turned: list[str], *, sides_on: bool
) -> None:
    """Common practice, no source: a slab that is weak at its openings is turned with them full."""
    order = order_of(workshop, slab_json(box(900, 500), hole(100, 450, 250)))
    shapes = tuple(shape_of(slab, workshop) for slab in order.slabs)
    way = replace(workshop.handling.ways[0], name="way", sides_on=sides_on)
    names = [english(s.name) for s in operations(order, shapes, workshop, (4.0,), (way,))]
    assert [name for name in names if name in turned] == turned


@pytest.mark.parametrize(
    ("fills", "grits", "after"),
    [(1, (60, 120, 220), [60]), (2, (60, 120, 220), [60, 120]), (3, (60, 120), [60]), (2, (), [])],
)
def test_voids_are_filled_after_the_grit_that_opens_them(
    workshop: Workshop, fills: int, grits: tuple[int, ...], after: list[int]
) -> None:
    """As often as the profile says, a grit left after each; without grits once, before all."""
    finishes = tuple(replace(finish, grits=grits) for finish in workshop.finishes)
    shop = replace(workshop, finishes=finishes, slurry=replace(workshop.slurry, fills=fills))
    honed = slab_json(box(900, 500), finish={"surface": "honed", "sealer": "matt"})
    names = [english(step.name) for step in steps_of(order_of(shop, honed), shop)]
    ground = [name for name in names if name.startswith("Grind: ")]
    assert ground == [f"Grind: {grit} grit" for grit in after]
    filled = [at for at, name in enumerate(names) if name.startswith("Fill the voids")]
    assert len(filled) == max(1, len(after))
    assert [names[at - 1] for at in filled] == (ground or ["Wash it"])
    hours = sum(step.machine_hours for step in steps_of(order_of(shop, honed), shop))
    assert hours == pytest.approx(3.4 * 0.45)


def test_a_face_rubbed_by_hand_costs_no_machine(workshop: Workshop) -> None:
    """As cast without grits, 0.8 hours a square metre are hands' alone, however many share them."""
    as_cast = slab_json(box(900, 500), finish={"surface": "as-cast", "sealer": "matt"})
    steps = steps_of(order_of(workshop, as_cast), workshop)
    (finish,) = [step for step in steps if english(step.name).startswith("Finish: ")]
    assert (finish.machine, finish.machine_hours, finish.people) == (None, 0.0, None)
    assert finish.hands_hours == pytest.approx(0.8 * 0.45)
