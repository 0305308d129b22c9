"""An order becomes JSON again: as it was understood, and compact."""

from typing import Any

import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.order_out import write_order
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, hole, order_of, slab_json


def compact(workshop: Workshop, slab: Json, **more: object) -> Json:
    """Read and write an order compactly."""
    return write_order(order_of(workshop, slab, **more), compact=True)


def test_the_example_comes_back_as_it_was_sent(
    workshop: Workshop, example_order: dict[str, Any]
) -> None:
    """Every member of the design's order stands in the order as understood, word for word."""
    told = write_order(read_order(example_order, workshop))

    def within(sent: object, answer: object) -> bool:
        if isinstance(sent, dict):
            return isinstance(answer, dict) and all(
                key in answer and within(value, answer[key]) for key, value in sent.items()
            )
        if isinstance(sent, list):
            return isinstance(answer, list) and all(map(within, sent, answer))
        return sent == answer

    assert within(example_order, told)


def test_a_compact_order_leaves_out_what_is_usual(workshop: Workshop) -> None:
    """Defaults go; kind, shade, finish and language stay, whatever the workshop's usual is."""
    assert compact(workshop, {"outline": box(900, 500), "thickness": "40 mm"}) == {
        "slabs": [
            {
                "outline": {"kind": "rectangle", "length": 900, "width": 500},
                "thickness": "40 mm",
                "shade": {"name": workshop.palette[0].name},
                "finish": {
                    "surface": workshop.finishes[0].surface,
                    "sealer": workshop.sealers[0].name,
                },
            }
        ],
        "language": "en",
    }


@pytest.mark.parametrize("edge", [{}, {"profile": "square"}])
def test_an_edge_that_is_as_usual_is_still_said(workshop: Workshop, edge: Json) -> None:
    """A side that was named keeps its place, so that the order reads back the same."""
    slab = slab_json(box(900, 500), edges={"front": edge})
    assert compact(workshop, slab)["slabs"][0]["edges"] == {"front": {}}


def test_names_that_python_keeps_for_itself_go_back_to_the_wires(workshop: Workshop) -> None:
    """A unit is ``for`` something, and a turn goes ``from`` and ``into``."""
    rests = {"kind": "units", "units": [{"width": 600, "for": "hob"}]}
    delivery = {"kind": "pallet", "postcode": "HR9 7XX", "turn": {"from": 900, "into": "762 mm"}}
    told = compact(workshop, slab_json(box(900, 500), rests=rests), delivery=delivery)
    assert told["slabs"][0]["rests"] == rests
    assert told["delivery"] == delivery


@pytest.mark.parametrize("length", [900, 900.5, "900 mm", "0.9 m", "35 7/16 in", "2 ft 11 in"])
def test_a_length_comes_back_in_its_own_words(workshop: Workshop, length: object) -> None:
    """Numbers stay numbers and texts stay texts, in their unit."""
    told = compact(workshop, slab_json(box(length, 500)))
    assert told["slabs"][0]["outline"]["length"] == length


def test_nothing_that_was_said_is_lost_for_being_false(workshop: Workshop) -> None:
    """Zero steps, zero turn and a gap of zero are answers; the first and last are kept."""
    slab = slab_json(box(900, 500), hole(100, 450, 250, turn_degrees=0, heat=False))
    delivery = {"kind": "pallet", "postcode": "HR9 7XX", "steps": 0, "floor": 0, "people": 0}
    join = {"one": {"slab": 0, "side": "left"}, "other": {"slab": 0, "side": "right"}, "gap": 0}
    told = compact(workshop, slab, delivery=delivery, joins=[join])
    assert told["delivery"] == delivery
    assert told["joins"] == [join]
    assert "turn_degrees" not in told["slabs"][0]["cutouts"][0]
