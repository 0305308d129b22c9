"""The second reading itself: it accepts what is said rightly, and finds each thing that is not."""

import copy

import pytest

from laws.reducing import reduced
from support.documents import Json
from support.oracles.patched_orders import kept_things, liberties, parts_of
from support.oracles.said_changes import unsaid


def opening(x: object, label: str = "", length: object = 500, **more: object) -> Json:
    """A rectangular opening in the middle of a slab 600 deep."""
    named = {"label": label} if label else {}
    place = {"kind": "rectangle", "length": length, "width": 400, "centre": {"x": x, "y": 300}}
    return {**place, **named, **more}


def order_of(length: object, *cutouts: Json, **more: object) -> Json:
    """An order of one slab."""
    outline = {"kind": "rectangle", "length": length, "width": 600}
    return {"slabs": [{"outline": outline, "thickness": 40, "cutouts": list(cutouts), **more}]}


def cut_in_two(sink_x: object, hob_x: object) -> Json:
    """The run below in two pieces, with a joint of 2 mm at 1600."""
    made = order_of(1600, opening(sink_x, "sink"), label="left")
    made["slabs"] += order_of(1598, opening(hob_x, "hob"), label="right")["slabs"]
    ends = {"one": {"slab": 0, "side": "right"}, "other": {"slab": 1, "side": "left"}, "gap": 2}
    return made | {"joins": [ends]}


RUN = order_of(3200, opening(500, "sink"), opening(2500, "hob"))
TWO = "Make the slab of two pieces, 1600 mm and 1598 mm long, with a join between them."

RIGHT: dict[str, tuple[Json, Json, list[str]]] = {
    "one moved": (
        RUN,
        order_of(3200, opening(540, "sink"), opening(2500, "hob")),
        ["Move the sink 40 mm to the right."],
    ),
    "two moved alike": (
        RUN,
        order_of(3200, opening(540, "sink"), opening(2540, "hob")),
        ["Move the sink and the hob 40 mm to the right."],
    ),
    "two moved, each its way": (
        RUN,
        order_of(3200, opening("54 cm", "sink"), opening(2400, "hob")),
        ["Move the sink 4 cm to the right; the hob 100 mm to the left."],
    ),
    "moved and cut": (
        RUN,
        cut_in_two(500, 898 - 40),
        [TWO, "Move the hob 40 mm to the left."],
    ),
    "nameless ones are told apart": (
        order_of(3200, opening(500), opening(2500)),
        order_of(3200, opening(500), opening("2476.19 mm")),
        ["Move the second rectangular cut-out 15/16 in to the left."],
    ),
    "an article is not said twice": (
        order_of(3200, opening(500, "the big sink")),
        order_of(3200, opening(540, "the big sink")),
        ["Move the big sink 40 mm to the right."],
    ),
    "thicker, and said to the slab by its label": (
        order_of(900, label="Bench"),
        {"slabs": [order_of(900)["slabs"][0] | {"label": "Bench", "thickness": 50}]},
        ["Make “Bench” 50 mm thick instead of 40 mm."],
    ),
}

WRONG: dict[str, tuple[Json, Json, list[str], str]] = {
    "a figure that runs into a length": (
        *RIGHT["nameless ones are told apart"][:2],
        ["Move the rectangular cut-out 2 15/16 in to the left."],
        "second rectangular cut-out moves",
    ),
    "the wrong way": (*RIGHT["one moved"][:2], ["Move the sink 40 mm to the left."], "sink moves"),
    "the wrong name": (*RIGHT["one moved"][:2], ["Move the hob 40 mm to the right."], "not made"),
    "no length": (*RIGHT["one moved"][:2], ["Move the sink None to the right."], "None"),
    "silence": (*RIGHT["one moved"][:2], [""], "says nothing"),
    "too far": (*RIGHT["one moved"][:2], ["Move the sink 90 mm to the right."], "sink moves"),
    "one of two": (
        *RIGHT["two moved alike"][:2],
        ["Move the sink 40 mm to the right."],
        "hob moves",
    ),
    "another's piece": (*RIGHT["moved and cut"][:2], [TWO], "hob moves"),
    "a cut": (
        *RIGHT["moved and cut"][:2],
        ["Move the hob 40 mm to the left."],
        "cut in 2, unsaid",
    ),
    "a thickness": (
        *RIGHT["thicker, and said to the slab by its label"][:2],
        ["Make the slab 50 mm thick instead of 40 mm."],
        "another thickness",
    ),
    "left out": (
        RUN,
        order_of(3200, opening(500, "sink")),
        ["Move on."],
        "hob is left out",
    ),
    "a rim": (
        RUN,
        order_of(3200, opening(500, "sink", rim="covered"), opening(2500, "hob")),
        ["Move on."],
        "another rim",
    ),
    "a day": (
        RUN | {"needed_by": "2026-12-01"},
        RUN | {"needed_by": "2026-12-21"},
        ["Give us until 22 December 2026."],
        "another day",
    ),
}


@pytest.mark.parametrize("name", RIGHT)
def test_what_is_stated_rightly_is_accepted(name: str) -> None:
    """Every member that changed is found in the sentences, and nothing else."""
    sent, made, says = RIGHT[name]
    assert unsaid(sent, made, says) == []


@pytest.mark.parametrize("name", WRONG)
def test_what_is_stated_wrongly_is_found(name: str) -> None:
    """A wrong way, name, length or piece, and whatever is not said, are each found."""
    sent, made, says, fault = WRONG[name]
    assert any(fault in one for one in unsaid(sent, made, says)), unsaid(sent, made, says)


def test_pieces_stand_where_they_were_cut() -> None:
    """The right piece of a run begins where the left one and the joint end."""
    parts = parts_of(RUN, cut_in_two(500, 898))[0]
    assert [part.at_mm for part in parts] == [(0.0, 0.0), (1602.0, 0.0)]
    kept, lost, new = kept_things(RUN["slabs"][0], parts, "cutouts")
    assert [one.by_mm for one in kept] == [(0.0, 0.0), (0.0, 0.0)]
    assert (lost, new) == ([], [])


@pytest.mark.parametrize(
    ("made", "what"),
    [
        (order_of(3200, opening(500, "sink")), "the hob is left out"),
        (order_of(3200, opening(500, "sink", 490), opening(2500, "hob")), "490 instead of 500"),
        (
            order_of(3200, opening(500, "sink"), opening(2500, "hob", turn_degrees=90)),
            "the hob is turned",
        ),
        (order_of(2900, opening(500, "sink"), opening(2500, "hob")), "2900 instead of 3200"),
        (
            order_of(3200, opening(500, "sink"), opening(2500, "hob"), opening(1500)),
            "a new opening",
        ),
    ],
)
def test_a_liberty_is_found(made: Json, what: str) -> None:
    """An opening lost, shrunk, turned or new, and a slab made shorter, are liberties."""
    assert any(what in one for one in liberties(RUN, made))


def test_a_size_that_walls_fix_may_not_change_at_all() -> None:
    """Five per cent are allowed to a slab that stands free, and nothing between walls."""
    free, walled = order_of(3200), order_of(3200, size_from="between-walls")
    assert list(liberties(free, order_of(3100))) == []
    assert list(liberties(walled, order_of(3199, size_from="between-walls"))) != []


def test_an_order_is_reduced_to_what_shows_a_fault() -> None:
    """What does not matter is left out, and lengths become round."""
    order = copy.deepcopy(RUN) | {"delivery": {"kind": "collect"}}
    order["slabs"][0]["cutouts"][1]["centre"]["x"] = "98 7/16 in"

    def shows(one: Json) -> bool:
        return any(cutout["centre"]["x"] != 500 for cutout in one["slabs"][0]["cutouts"])

    assert reduced(order, shows) == {"slabs": [{"cutouts": [{"centre": {"x": 2500}}]}]}
