"""Checks of joins, of drops, and of the units beneath; each on both sides."""

import pytest

from ledgerstone.quantities import Length
from ledgerstone.wording import MassPerLength, Message, side_name
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.in_english import in_english
from support.slabs import box, cut, hole, slab_json
from unit.checked import found, levels, plain, values_of


def join(one: tuple[int, str], other: tuple[int, str]) -> list[Json]:
    """Write the joins of an order: one."""
    ends = ({"slab": slab, "side": side} for slab, side in (one, other))
    return [{"one": next(ends), "other": next(ends), "gap": 2}]


END_TO_END = join((0, "right"), (1, "left"))


def test_a_join_is_a_suggestion(workshop: Workshop) -> None:
    """Each join is a note that its place is agreed before anything is cast."""
    slabs = (plain(label="Left run"), plain(label="Right run"))
    (finding,) = found(workshop, "join-suggested", *slabs, joins=END_TO_END)
    assert (finding.level, finding.at) == ("note", ("/joins/0",))
    left, right = (Message("slab-labelled", label=f"{side} run") for side in ("Left", "Right"))
    assert finding.message == Message("join-suggested", one=left, other=right)
    assert found(workshop, "join-suggested", *slabs) == []


def test_a_join_takes_two(workshop: Workshop) -> None:
    """A slab joined to itself is cautioned, unless there are two of it."""
    itself = join((0, "left"), (0, "right"))
    assert levels(found(workshop, "join-to-itself", plain(), plain(), joins=itself)) == ["caution"]
    twice = plain(quantity=2)
    assert found(workshop, "join-to-itself", twice, plain(), joins=itself) == []
    assert levels(found(workshop, "join-suggested", twice, joins=itself)) == ["note"]


@pytest.mark.parametrize(("width", "expected"), [(603, []), (604, ["caution"])])
def test_joined_ends_are_alike(workshop: Workshop, width: int, expected: list[str]) -> None:
    """Ends within 3 mm run through; natural-stone practice."""
    slabs = (plain(1400, 600), plain(1400, width))
    assert levels(found(workshop, "join-of-unlike-sides", *slabs, joins=END_TO_END)) == expected


def test_along_an_l_the_customer_is_asked_where(workshop: Workshop) -> None:
    """An end that meets a longer front is usual: where along it is asked, as a note."""
    corner = join((0, "front"), (1, "left"))
    (finding,) = found(workshop, "join-of-unlike-sides", plain(2400), plain(1400), joins=corner)
    assert finding.level == "note"
    assert finding.message == Message(
        "join-along-a-side",
        side=side_name("front"),
        one=Message("slab-numbered", number=1),
        length=Length.of_mm(2400),
        other_side=side_name("left"),
        other=Message("slab-numbered", number=2),
        other_length=Length.of_mm(600),
    )


@pytest.mark.parametrize(("thickness", "expected"), [(43, []), (43.5, ["caution"])])
def test_joined_slabs_are_as_thick(
    workshop: Workshop, thickness: float, expected: list[str]
) -> None:
    """Within 3 mm: natural-stone practice."""
    slabs = (plain(), plain(thickness=thickness))
    found_here = found(workshop, "join-of-unlike-thickness", *slabs, joins=END_TO_END)
    assert levels(found_here) == expected


@pytest.mark.parametrize(
    ("other", "what"),
    [
        ({"shade": {"name": "chalk"}}, "shade"),
        ({"finish": {"sealer": "satin"}}, "finish"),
        ({"finish": {"surface": "polished"}}, "finish"),
        ({}, None),
    ],
)
def test_a_join_of_two_looks_shows(workshop: Workshop, other: Json, what: str | None) -> None:
    """Another shade, sealer or surface is cautioned; the same on both is not."""
    look = {"shade": {"name": "graphite"}, "finish": {"surface": "as-cast", "sealer": "matt"}}
    slabs = (plain(**look), plain(**look | other))
    findings = found(workshop, "join-of-unlike-looks", *slabs, joins=END_TO_END)
    assert [f"not of one {what}" in in_english(f) for f in findings] == [True] * (what is not None)


def test_what_comes_to_a_join_is_reported_as_unaligned(workshop: Workshop) -> None:
    """A drainer or a drop at the joined side is cautioned, one elsewhere is not."""

    def drainer(x: int) -> list[Json]:
        outline = box(400, 300)
        return [{"kind": "drainer", "outline": outline, "depth": 6, "at": {"x": x, "y": 100}}]

    near, far = plain(reliefs=drainer(1000)), plain(reliefs=drainer(500))
    dropped = plain(edges={"left": {"profile": "square", "drop": {"depth": 300}}})
    for slabs, expected in (
        ((near, plain()), ["caution"]),
        ((far, plain()), []),
        ((plain(), dropped), ["caution"]),
    ):
        findings = found(workshop, "join-through-relief", *slabs, joins=END_TO_END)
        assert levels(findings) == expected


def test_a_drops_corner_is_reported_to_be_unchecked(workshop: Workshop) -> None:
    """One drop and two are spoken of as such; none is not."""
    drop = {"profile": "square", "drop": {"depth": 860}}
    (one,) = found(workshop, "drop-not-checked", plain(edges={"left": drop}))
    assert one.message.values["count"] == 1
    (two,) = found(workshop, "drop-not-checked", plain(edges={"left": drop, "right": drop}))
    assert two.message.values["count"] == 2
    assert found(workshop, "drop-not-checked", plain()) == []


# --- the units beneath ----------------------------------------------------------------------


def on_units(*units: tuple[int, str], **overhang: int) -> Json:
    """Write base units, each with what it is for."""
    listed = [{"width": width, "for": use} for width, use in units]
    return {"kind": "units", "units": listed, "overhang": overhang}


HOB = (560, 490)
TWO = on_units((800, "base"), (600, "hob"))


@pytest.mark.parametrize(
    ("x", "expected"),
    [(1098, []), (1097, ["stops"]), (1102, []), (1103, ["stops"])],
)
def test_a_hob_lies_between_its_units_sides(
    workshop: Workshop, x: int, expected: list[str]
) -> None:
    """A hob of 560 mm fits between the 18 mm sides of a 600 mm unit, 2 mm to spare each way."""
    slab = slab_json(box(1400, 620), cut("rectangle", HOB, (x, 310), label="hob"), rests=TWO)
    assert levels(found(workshop, "cutout-over-unit-side", slab)) == expected


def test_a_hob_over_a_side_says_how_far_to_move_it(workshop: Workshop) -> None:
    """The unit is named by its number, and the move brings the hob inside it."""
    hob = cut("rectangle", HOB, (1000, 310), label="hob")
    slab = slab_json(box(1400, 620), hob, rests=TWO)
    (finding,) = found(workshop, "cutout-over-unit-side", slab)
    (cutout, unit) = (Message("cutout-labelled", label="hob"), Message("unit-numbered", number=1))
    assert finding.message == Message("cutout-over-unit-side", cutout=cutout, unit=unit)
    assert finding.measured == {"left_mm": 720.0, "right_mm": 1280.0}
    assert finding.limit == {"left_mm": 818.0, "right_mm": 1382.0}


def test_an_opening_belongs_in_the_unit_that_is_for_it(workshop: Workshop) -> None:
    """A hob mostly over the sink's unit belongs in the hob's, whichever it covers more of."""
    rests = on_units((600, "basin"), (600, "base"), (600, "hob"))
    for more in ({"label": "Hob"}, {"label": "cooker", "heat": True}):
        over = cut("rectangle", (500, 490), (1000, 310), **more)
        (finding,) = found(
            workshop, "cutout-over-unit-side", slab_json(box(1800, 620), over, rests=rests)
        )
        assert finding.limit == {"left_mm": 1218.0, "right_mm": 1782.0}
        assert "/slabs/0/rests/units/2" in finding.at


def test_an_opening_too_wide_for_its_unit_says_so(workshop: Workshop) -> None:
    """A bowl of 600 mm goes into no unit of 600."""
    bowl = cut("rectangle", (600, 400), (1100, 310), label="bowl")
    slab = slab_json(box(1400, 620), bowl, rests=on_units((800, "base"), (600, "basin")))
    (finding,) = found(workshop, "cutout-over-unit-side", slab)
    assert finding.message.name == "cutout-wider-than-unit"
    assert finding.message.values["inside"] == Length.of_mm(564)


def test_overhangs_and_gaps_shift_the_units(workshop: Workshop) -> None:
    """Units begin after the left overhang, and a gap has no sides."""
    tap_side = hole(120, 1000, 300, label="bin chute")
    gap = on_units((800, "basin"), (400, "gap"), (200, "base"))
    assert (
        found(workshop, "cutout-over-unit-side", slab_json(box(1400, 620), tap_side, rests=gap))
        == []
    )
    shifted = on_units((800, "basin"), (580, "base"), left=150)
    slab = slab_json(box(1530, 620), tap_side, rests=shifted)
    assert levels(found(workshop, "cutout-over-unit-side", slab)) == ["stops"]


def test_plain_units_caution_and_taps_pass(workshop: Workshop) -> None:
    """Where no unit is told to be a basin's it is a caution; a tap hole passes a side."""
    bowl, tap = hole(360, 800, 300), hole(35, 800, 550)
    base = on_units((800, "base"), (600, "base"))
    slab = slab_json(box(1400, 620), bowl, rests=base)
    assert levels(found(workshop, "cutout-over-unit-side", slab)) == ["caution"]
    assert (
        found(workshop, "cutout-over-unit-side", slab_json(box(1400, 620), tap, rests=base)) == []
    )


def test_the_load_on_units_is_a_note(workshop: Workshop) -> None:
    """600 by 40 mm, graphite's density with its steel: 57.9 kg on each metre."""
    slab = plain(1400, 600, rests=TWO)
    (finding,) = found(workshop, "load-on-units", slab)
    assert finding.measured == {"metre_kg": pytest.approx(0.6 * (0.04 * 2358 + 2.2), abs=0.05)}
    weight = values_of(finding, "load-on-units")["weight"]
    assert isinstance(weight, MassPerLength)
    assert weight.kg_per_m == pytest.approx(0.6 * (0.04 * 2358 + 2.2), abs=0.05)
    assert found(workshop, "load-on-units", plain()) == []
