"""Tests of the plain reason: what can be shown to have no room is stated, and nothing else is."""

import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.quantities import Length
from ledgerstone.remedies.reasons import reason
from ledgerstone.stages import StageContext, plan
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.oracles.placement import room
from support.remedied import TODAY, hole, rectangle
from support.strategies.wrong_orders import wrong_order


def named(order: Json, workshop: Workshop) -> tuple[str, dict[str, str]] | None:
    """The reason for an order: its message's name, and the lengths and choices in it."""
    context = StageContext(workshop, None, TODAY)
    found = reason(plan(read_order(order, workshop), context), workshop)
    if found is None:
        return None
    plain = {k: v for k, v in found.values.items() if isinstance(v, str | Length)}
    return found.name, {k: v if isinstance(v, str) else v.text() for k, v in plain.items()}


def opening(label: str, length: str, width: str, **more: object) -> Json:
    """A rectangular cut-out far off the slab: where it was put does not matter."""
    centre = {"x": "3000 mm", "y": "-40 mm"}
    own = {"kind": "rectangle", "label": label, "length": length, "width": width}
    return {**own, "centre": centre, "rim": "covered", **more}


@pytest.mark.parametrize(
    ("order", "expected"),
    [
        (
            rectangle("2000 mm", "550 mm", cutouts=[opening("hob", "560 mm", "490 mm")]),
            ("takes-too-much", {"takes": "590 mm", "way": "deep", "size": "550 mm"}),
        ),
        (
            rectangle("60 cm", "600 mm", cutouts=[opening("sink", "56 cm", "40 cm")]),
            ("takes-too-much", {"takes": "66 cm", "way": "long", "size": "60 cm"}),
        ),
        (
            rectangle(
                "1000 mm",
                "600 mm",
                cutouts=[
                    opening("hob", "560 mm", "490 mm"),
                    opening("sink", "500 mm", "400 mm"),
                ],
            ),
            ("no-room-together", {}),
        ),
        (
            {
                "slabs": [
                    {"outline": {"kind": "round", "diameter": "1300 mm"}, "thickness": "40 mm"}
                ]
            },
            (
                "cast-in-one-piece",
                {"shape": "round", "length": "2700 mm", "width": "1200 mm"},
            ),
        ),
    ],
)
def test_what_has_no_room_is_named(
    order: Json, expected: tuple[str, dict[str, str]], workshop: Workshop
) -> None:
    """An opening too deep or too long, two that are too much together, and too large a round."""
    assert named(order, workshop) == expected


def test_an_opening_too_wide_for_its_units_is_stated(workshop: Workshop) -> None:
    """Where only the sides of the units are in the way, they are named."""
    rests = {"kind": "units", "units": [{"width": 500, "for": "hob"}, {"width": 500}]}
    cutouts = [opening("hob", "560 mm", "400 mm")]
    order = rectangle("1000 mm", "600 mm", rests=rests, cutouts=cutouts)
    assert named(order, workshop) == ("no-room-for-cutout", {"over": "units"})


def test_what_a_fix_may_change_is_no_reason(workshop: Workshop) -> None:
    """A slab that stands free may grow by a twentieth, and a hole without a size may shrink."""
    hob = [opening("hob", "560 mm", "490 mm")]
    assert named(rectangle("2000 mm", "565 mm", cutouts=hob), workshop) is None
    walls = rectangle("2000 mm", "565 mm", size_from="between-walls", cutouts=hob)
    assert named(walls, workshop) is not None
    holes = [hole("cables", "300 mm", "200 mm", "90 mm")]
    assert named(rectangle("900 mm", "400 mm", cutouts=holes), workshop) is None


@pytest.mark.parametrize("count", [40, pytest.param(1000, marks=pytest.mark.long)])
def test_what_has_room_is_given_no_reason(workshop: Workshop, count: int) -> None:
    """Of orders got wrong, none that another search finds room for is called full."""
    with_room = [o for o in (wrong_order(5, n) for n in range(count)) if room(o, workshop) == ""]
    assert len(with_room) > 0.6 * count
    assert [named(order, workshop) for order in with_room] == [None] * len(with_room)
