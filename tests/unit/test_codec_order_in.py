"""A JSON document becomes an order, or every fault in it at once, by JSON Pointer."""

import copy
from typing import Any

import pytest

from ledgerstone.codec.order_in import escape, read_order
from ledgerstone.errors import NotUnderstood
from ledgerstone.order import Cutout, Delivery, Order, Rectangle
from ledgerstone.wording import Message, english
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, cut, hole, polygon, slab_json


def faults(workshop: Workshop, document: object) -> dict[str, str]:
    """Read a document that is not understood, and say what was wrong where."""
    with pytest.raises(NotUnderstood) as caught:
        read_order(document, workshop)
    return {fault.pointer: english(fault.message) for fault in caught.value.faults}


def of_slab(workshop: Workshop, outline: Json, *cutouts: Json, **more: object) -> dict[str, str]:
    """Say what is wrong with one slab, by pointers from the slab."""
    found = faults(workshop, {"slabs": [slab_json(outline, *cutouts, **more)]})
    return {pointer.removeprefix("/slabs/0"): says for pointer, says in found.items()}


def test_the_example_is_read_to_the_last_member(
    workshop: Workshop, example_order: dict[str, Any]
) -> None:
    """Every part of the design's order stands in the record."""
    order = read_order(example_order, workshop)
    slab = order.slabs[0]
    assert isinstance(slab.outline, Rectangle)
    assert (slab.outline.length.mm, slab.outline.width.mm, slab.thickness.mm) == (1450, 560, 40)
    assert [cutout.label for cutout in slab.cutouts] == ["basin", "tap"]
    assert slab.edges["front"].profile == "bevel"
    assert (slab.shade.name, slab.finish.surface, slab.finish.sealer) == (
        "graphite",
        "honed",
        "matt",
    )
    assert slab.rests is not None
    assert [unit.use for unit in slab.rests.units] == ["base", "basin"]
    assert (order.delivery.kind, order.delivery.steps) == ("pallet", 0)
    assert str(order.needed_by) == "2027-03-25"


def test_the_least_order_is_filled_with_the_workshops_usual(workshop: Workshop) -> None:
    """An outline and a thickness are enough; the rest is what the workshop lists first."""
    order = read_order({"slabs": [{"outline": box(900, 500), "thickness": 40}]}, workshop)
    slab = order.slabs[0]
    assert order == Order((slab,), delivery=Delivery(kind="collect"), delivery_taken=True)
    assert slab.shade.name == workshop.palette[0].name
    assert slab.finish.surface == workshop.finishes[0].surface
    assert slab.finish.sealer == workshop.sealers[0].name
    assert (slab.quantity, slab.use, slab.place, slab.size_from) == (
        1,
        "worktop",
        "indoors",
        "finished",
    )


def test_an_opening_knows_its_kind_and_its_defaults(workshop: Workshop) -> None:
    """What is not said of an opening is that it is plain."""
    order = read_order({"slabs": [slab_json(box(900, 500), hole(100, 450, 250))]}, workshop)
    cutout: Cutout = order.slabs[0].cutouts[0]
    assert (cutout.kind, cutout.rim, cutout.turn_degrees, cutout.heat, cutout.open_to) == (
        "circle",
        "shown",
        0.0,
        False,
        None,
    )


@pytest.mark.parametrize("document", [None, [], "slabs", 3, {}, {"slabs": []}, {"slabs": {}}])
def test_what_is_no_order_is_reported_to_be_none(workshop: Workshop, document: object) -> None:
    """A document without a slab is not understood."""
    assert faults(workshop, document)


def test_every_fault_is_stated_at_once(workshop: Workshop) -> None:
    """Wrong types, unknown keys and missing members are said together, each at its place."""
    document = {
        "slabs": [
            {
                "outline": {"kind": "rectangle", "length": "wide"},
                "thickness": -40,
                "colour": "grey",
            },
            {"outline": {"kind": "oval"}, "thickness": 40, "cutouts": [{"kind": "circle"}]},
        ],
        "delivry": {},
    }
    assert set(faults(workshop, document)) == {
        "/slabs/0/outline/length",
        "/slabs/0/outline/width",
        "/slabs/0/thickness",
        "/slabs/0/colour",
        "/slabs/1/outline/kind",
        "/slabs/1/cutouts/0/centre",
        "/slabs/1/cutouts/0/diameter",
        "/delivry",
    }


def test_an_unknown_key_suggests_the_nearest(workshop: Workshop) -> None:
    """A slip of the pen is answered with the word that was meant."""
    found = faults(workshop, {"slabs": [slab_json(box(900, 500))], "delivry": {}})
    order = Message("field", field="an-order")
    meant = Message("field-unknown", value="delivry", field=order, near="guess", guess="delivery")
    assert found == {"/delivry": english(meant)}


def test_a_key_with_a_slash_is_escaped(workshop: Workshop) -> None:
    """RFC 6901 section 3: a tilde is ~0 and a slash ~1."""
    assert escape("a/b~c") == "a~1b~0c"
    assert "/a~1b" in faults(workshop, {"slabs": [slab_json(box(900, 500))], "a/b": 1})


@pytest.mark.parametrize(
    ("more", "pointer", "word"),
    [
        ({"shade": {"name": "graphit"}}, "/shade/name", '"graphite"'),
        ({"finish": {"surface": "hone"}}, "/finish/surface", '"honed"'),
        ({"finish": {"sealer": "mat"}}, "/finish/sealer", '"matt"'),
        ({"use": "worktopp"}, "/use", '"worktop"'),
        ({"edges": {"rim": {}}}, "/edges/rim", "no side"),
        ({"edges": {"front": {"profile": "bevel"}}}, "/edges/front/size", "bevel"),
        ({"rests": {"kind": "frame", "width": 40, "sides": ["rim"]}}, "/rests/sides/0", "no side"),
        ({"rests": {"kind": "units", "units": [{"width": 600}], "overhang": {"notch-x": 5}}},
         "/rests/overhang/notch-x", "no side"),
        ({"rests": {"kind": "ledges", "lines": [
            {"start": {"x": 0, "y": 9}, "end": {"x": 0, "y": 9}, "depth": 40}]}},
         "/rests/lines/0", "same place"),
        ({"quantity": 25}, "/quantity", "between 1 and 24"),
        ({"quantity": 1.5}, "/quantity", "whole number"),
        ({"quantity": True}, "/quantity", "whole number"),
        ({"label": "x" * 121}, "/label", "120 characters"),
        ({"label": "a\u202eb"}, "/label", "must not"),
        ({"shade": {"name": "graphite", "match": "#5b5d5a"}}, "/shade", "not both"),
        ({"shade": {"match": "grey"}}, "/shade/match", "#5b5d5a"),
        ({"thickness": "2 400 mm"}, "/thickness", "2400"),
        ({"thickness": "1001 mm"}, "/thickness", "1 m"),
    ],
)  # fmt: skip
def test_a_slabs_members_are_read_strictly(
    workshop: Workshop, more: Json, pointer: str, word: str
) -> None:
    """What is not known, not a side or not in bounds is stated at its place."""
    found = of_slab(workshop, box(900, 500), **more)
    assert list(found) == [pointer]
    assert word in found[pointer]


NOTCH = {"corner": "back-right", "length": 300, "width": 200}
ELL = {"kind": "l-shape", "length": 1000, "width": 600}


@pytest.mark.parametrize(
    ("outline", "pointer"),
    [
        (box(900, 500, corner_radius=251), "/outline/corner_radius"),
        (
            box(900, 500, corner_radii={"front-left": 300, "back-left": 201}),
            "/outline/corner_radii",
        ),
        (ELL | {"notch": NOTCH | {"length": 1000}}, "/outline/notch/length"),
        (ELL | {"notch": NOTCH | {"width": 600}}, "/outline/notch/width"),
        (ELL | {"notch": NOTCH, "corner_radius": 101}, "/outline/corner_radius"),
        (polygon((0, 0), (900, 0)), "/outline/points"),
        (polygon((0, 0), (900, 0), (900, 500), (0, 0)), "/outline/points/3"),
        (polygon((0, 0), (900, 0), (900.5, 0), (0, 500)), "/outline/points/2"),
        (polygon((0, 0), (900, 500), (900, 0), (0, 500)), "/outline/points"),
        (polygon((0, 0), (450, 0), (900, 0)), "/outline/points"),
        (polygon((0, 0), (900, 0), (0, 100), corner_radius=200), "/outline/corner_radius"),
    ],
)
def test_an_outline_that_no_concrete_could_have_is_not_understood(
    workshop: Workshop, outline: Json, pointer: str
) -> None:
    """Crossings, radii that do not fit, notches as large as the slab, points that coincide."""
    assert list(of_slab(workshop, outline)) == [pointer]


def test_a_rounded_corner_that_would_run_into_a_spike_is_not_understood(
    workshop: Workshop,
) -> None:
    """An arc may fit its own sides and still cross another part of the outline."""
    ring = polygon(
        (0, 0), (2000, 0), (2000, 1000), (1010, 1000), (1001, 301), (999, 301), (990, 1000),
        (0, 1000),
    )  # fmt: skip
    assert "/outline/corner_radius" in of_slab(workshop, ring | {"corner_radius": 300})


@pytest.mark.parametrize(
    ("outline", "pointer"),
    [
        (box(1200, 600, corner_radius=300), None),
        (box(600, 1200, corner_radius=300), "/outline/corner_radius"),
        (ELL | {"notch": NOTCH | {"length": 995}}, "/outline/notch/length"),
        (box(5, 600), "/outline"),
    ],
)
def test_a_slab_between_walls_is_judged_by_the_size_it_is_cast_to(
    workshop: Workshop, outline: Json, pointer: str | None
) -> None:
    """Fitting gaps of 3 mm on each side make the slab 6 mm shorter, and its arcs no smaller."""
    document = {"slabs": [slab_json(outline, size_from="between-walls")]}
    if pointer is None:
        assert read_order(document, workshop).slabs
    else:
        assert list(faults(workshop, document)) == [f"/slabs/0{pointer}"]


@pytest.mark.parametrize("size_from", ["between-walls", "over-units"])
def test_a_round_slab_has_its_finished_size_alone(workshop: Workshop, size_from: str) -> None:
    """Only boxes and L-shapes are worked out from walls and units; other faults are said too."""
    disc: Json = {"kind": "round", "diameter": 900}
    assert list(of_slab(workshop, disc, size_from=size_from)) == ["/size_from"]
    crossed = polygon((0, 0), (900, 500), (900, 0), (0, 500))
    both = of_slab(workshop, crossed, size_from=size_from)
    assert list(both) == ["/outline/points", "/size_from"]


@pytest.mark.parametrize(
    ("cutout", "pointer"),
    [
        (cut("rectangle", (100, 60), (450, 250), corner_radius=31), "/corner_radius"),
        (polygon((0, 0), (50, 50), (50, 0), (0, 50)), "/points"),
        (polygon((0, 0), (50, 0), (0, 50), corner_radius=40), "/corner_radius"),
        (hole(100, 450, 250, open_to="rim"), "/open_to"),
        (hole(100, 450, 250, turn_degrees=361), "/turn_degrees"),
        (hole(100, 450, 250, length=3), "/length"),
        (hole(0, 450, 250), "/diameter"),
        (hole(100, "21 m", 250), "/centre/x"),
    ],
)
def test_an_opening_that_nothing_could_cut_is_not_understood(
    workshop: Workshop, cutout: Json, pointer: str
) -> None:
    """Radii, crossings, sides and sizes of openings are read as strictly."""
    assert list(of_slab(workshop, box(900, 500), cutout)) == [f"/cutouts/0{pointer}"]


def test_a_join_meets_slabs_and_sides_that_are_there(workshop: Workshop) -> None:
    """A slab past the last and a side that the slab has not are stated at the join."""
    slab = slab_json(box(900, 500))
    join = {"one": {"slab": 1, "side": "right"}, "other": {"slab": 0, "side": "rim"}, "gap": 2}
    found = faults(workshop, {"slabs": [slab], "joins": [join]})
    assert set(found) == {"/joins/0/one/slab", "/joins/0/other/side"}


def test_a_document_is_not_changed_by_reading(
    workshop: Workshop, example_order: dict[str, Any]
) -> None:
    """Remedies patch the order as it was sent, so that reading leaves it alone."""
    before = copy.deepcopy(example_order)
    read_order(example_order, workshop)
    assert example_order == before
