"""What one piece may measure: each finding, on both sides of its limit, and in the asker's unit."""

from collections.abc import Mapping

import pytest

from ledgerstone.checks import Finding, size
from ledgerstone.message import Value
from ledgerstone.quantities import Length
from ledgerstone.wording import Message
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.in_english import in_english
from support.slabs import box, order_of, plan_of, polygon, slab_json
from unit.checked import PlannedCheck, values_of


def found(check: PlannedCheck, workshop: Workshop, *slabs: Json) -> list[Finding]:
    """Run one check on an order."""
    order = order_of(workshop, *slabs)
    return list(check(plan_of(order, workshop)))


def texts_of(values: Mapping[str, Value], *names: str) -> list[str]:
    """Write the lengths among a message's values, each in its own unit."""
    lengths = [values[name] for name in names]
    return [length.text() for length in lengths if isinstance(length, Length)]


@pytest.mark.parametrize(
    ("outline", "fits"),
    [
        (box(2700, 1200), True),
        (box(1200, 2700), True),
        (box(2700.01, 1200), False),
        (box(2700, 1200.01), False),
        (box("106 1/4 in", "47 1/4 in"), False),  # 2698.75 by 1200.15
        ({"kind": "round", "diameter": 1200}, True),
        ({"kind": "round", "diameter": 1201}, False),
        (polygon((-100, 0), (2600, 0), (1000, 1200)), True),
    ],
)
def test_a_slab_fits_the_casting_table_or_does_not(
    workshop: Workshop, outline: Json, *, fits: bool
) -> None:
    """The table is 2700 by 1200, and a slab may lie on it either way round."""
    assert (found(size.fits_the_table, workshop, slab_json(outline)) == []) is fits


def test_too_big_says_both_sizes_in_the_askers_unit(workshop: Workshop) -> None:
    """What is larger is rounded up, and what there is room for down."""
    (finding,) = found(size.fits_the_table, workshop, slab_json(box("3.2 m", "60 cm"), label="Bar"))
    values = values_of(finding, "too-big-for-table")
    assert values["slab"] == Message("slab-labelled", label="Bar")
    assert texts_of(values, "length", "width") == ["3.2 m", "0.6 m"]
    assert texts_of(values, "most_length", "most_width") == ["2.7 m", "1.2 m"]
    assert (finding.level, finding.at, finding.slab) == ("stops", ("/slabs/0/outline",), 0)
    assert finding.measured == {"length_mm": 3200, "width_mm": 600}
    assert finding.limit == {"length_mm": 2700, "width_mm": 1200}


def test_overhangs_count_towards_the_table(workshop: Workshop) -> None:
    """The size that is cast is the size that is checked."""
    rests = {"kind": "units", "units": [{"width": 600}], "overhang": {"left": 20, "right": 20}}
    slab = slab_json(box(2680, 600), size_from="over-units", rests=rests)
    assert [f.check for f in found(size.fits_the_table, workshop, slab)] == ["too-big-for-table"]


@pytest.mark.parametrize(
    ("thickness", "check"),
    [(24.9, "too-thin"), (25, None), (60, None), (60.1, "too-thick"), ("1 in", None)],
)
def test_a_slab_is_thick_enough_and_not_too_thick(
    workshop: Workshop, thickness: object, check: str | None
) -> None:
    """25 to 60 mm are cast here."""
    slab = slab_json(box(900, 500)) | {"thickness": thickness}
    assert [f.check for f in found(size.thick_enough, workshop, slab)] == ([check] if check else [])


def test_too_thin_says_what_is_cast(workshop: Workshop) -> None:
    """The limit is stated in inches to one who asks in inches, and is enough when taken."""
    slab = slab_json(box(900, 500)) | {"thickness": "3/4 in"}
    (finding,) = found(size.thick_enough, workshop, slab)
    values = values_of(finding, "too-thin")
    assert texts_of(values, "thickness", "limit") == ["3/4 in", "1 in"]
    assert finding.at == ("/slabs/0/thickness",)


@pytest.mark.parametrize(
    ("thickness", "notes"), [(30, 0), (28, 0), (27.9, 1), (35, 1), (38.1, 0), (20, 0)]
)
def test_an_odd_thickness_is_a_note(workshop: Workshop, thickness: float, notes: int) -> None:
    """Within 2 mm of a stocked one nothing is stated; out of range another check speaks."""
    slab = slab_json(box(900, 500)) | {"thickness": thickness}
    findings = found(size.thickness_stocked, workshop, slab)
    assert [f.level for f in findings] == ["note"] * notes


@pytest.mark.parametrize(("width", "stops"), [(60, False), (59.99, True)])
def test_a_sliver_is_not_cast(workshop: Workshop, width: float, *, stops: bool) -> None:
    """The narrowest piece is 60 mm across."""
    findings = found(size.wide_enough, workshop, slab_json(box(900, width)))
    assert [f.check for f in findings] == (["sliver"] if stops else [])


def test_each_slab_is_named(workshop: Workshop) -> None:
    """Of several slabs without labels the second is slab 2."""
    (finding,) = found(
        size.wide_enough, workshop, slab_json(box(900, 500)), slab_json(box(900, 20))
    )
    assert in_english(finding).startswith("Slab 2 is 20 mm across")
    assert (finding.slab, finding.id) == (1, "sliver.1")
