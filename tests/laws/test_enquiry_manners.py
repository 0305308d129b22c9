"""Laws of reading for how people write: forms, lines, corrections, asides, doubts, legs, halves."""

from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import WORKSHOP, read_as_told
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_manners as manners
from support.strategies.enquiry_changes import LENGTH, THICKNESS, WIDTH, Several
from support.strategies.orders import cases

MANY = settings(max_examples=cases(10), suppress_health_check=[HealthCheck.too_slow])


def _counts(told: Several) -> str:
    slabs = read_as_told(told)["order"]["slabs"]
    return ",".join(str(slab.get("quantity", 1)) for slab in slabs)


@MANY
@given(manners.counted_labels())
def test_a_label_may_be_counted(told: Several) -> None:
    """Two basins are two, each at its own place, whatever mark follows the label."""
    read_as_told(told)


@MANY
@given(manners.lines_of_lengths())
def test_each_line_is_a_slab_of_its_length(told: Several) -> None:
    """What stands above the lines is each one's."""
    assert _counts(told) == told.words["counts"]


@MANY
@given(manners.counted_rows())
def test_each_row_has_its_own_number(told: Several) -> None:
    """The number that leads a row is of that row's slab and of no other."""
    assert _counts(told) == told.words["counts"]


@MANY
@given(manners.appliances())
def test_an_appliance_on_a_line_is_no_slab(told: Several) -> None:
    """Its sizes are none of the slab's."""
    read_as_told(told)


@MANY
@given(manners.should_have_been())
def test_a_size_called_by_its_number_is_put_right(told: Several) -> None:
    """The newer one stands, and nothing else changes."""
    read_as_told(told)


@MANY
@given(manners.said_again())
def test_what_the_workshop_said_again_stands_if_leaned_on(told: Several) -> None:
    """As the workshop wrote it, for the customer says that it is right."""
    read_as_told(told)


@MANY
@given(manners.wishes())
def test_a_wish_for_a_whole_slab_is_an_enquiry(told: Several) -> None:
    """Whatever else the message speaks of."""
    assert read_as_told(told)["is_enquiry"]


@MANY
@given(manners.no_wishes())
def test_a_slab_that_nobody_wishes_for_makes_no_enquiry(text: str) -> None:
    """Thanks, invoices and complaints name sizes too."""
    assert not read_enquiry(text, WORKSHOP)["is_enquiry"]


@MANY
@given(manners.metres())
def test_metres_and_a_thickness_are_two_sizes(told: Several) -> None:
    """1.00 m and 40 mm thick is no 1.04 m."""
    read_as_told(told)


@MANY
@given(manners.middles())
def test_half_the_length_from_either_end_is_one_hole(told: Several) -> None:
    """Less than half from either end is two."""
    read_as_told(told)


@MANY
@given(manners.themselves())
def test_what_a_hob_is_itself_is_no_cutout(told: Several) -> None:
    """The cut-out is asked for."""
    asked = [one["at"] for one in read_as_told(told)["missing"]]
    assert any(at.startswith("/slabs/0/cutouts/0") for at in asked)


@MANY
@given(manners.slips())
def test_a_unit_that_no_slab_has_is_a_doubt(told: Several) -> None:
    """Both readings are offered and neither is taken."""
    (doubt,) = [one for one in read_as_told(told)["doubtful"] if one["at"] == WIDTH]
    readings = [one["value"] for one in doubt["readings"]]
    assert readings == [f"{told.words['width']} {unit}" for unit in ("mm", "cm")]


@MANY
@given(manners.turned())
def test_an_l_may_be_told_as_a_way_along_walls(told: Several) -> None:
    """It leaves out the corner in front that is opposite the side to which it turns."""
    notch = read_as_told(told)["order"]["slabs"][0]["outline"]["notch"]
    assert notch["corner"] == f"front-{told.words['corner']}"


@MANY
@given(manners.one_and_other())
def test_an_l_one_way_and_the_other_asks_for_its_side(told: Several) -> None:
    """The longer way is the length."""
    asked = [one["at"] for one in read_as_told(told)["missing"]]
    assert "/slabs/0/outline/notch/corner" in asked


@MANY
@given(manners.of_another_stuff())
def test_what_is_of_another_stuff_is_there_now(told: Several) -> None:
    """Nobody asks for a concrete slab of laminate."""
    read_as_told(told)


@MANY
@given(manners.at_odds())
def test_two_widths_of_two_people_make_a_doubt(told: Several) -> None:
    """Neither is taken."""
    assert [one["at"] for one in read_as_told(told)["doubtful"]] == [WIDTH]


@MANY
@given(manners.perhaps())
def test_two_thicknesses_make_a_doubt(told: Several) -> None:
    """Neither is taken."""
    assert [one["at"] for one in read_as_told(told)["doubtful"]] == [THICKNESS]


@MANY
@given(manners.halves())
def test_two_pieces_only_if_need_be_are_one(told: Several) -> None:
    """It is halved only where that is asked for outright."""
    slab = read_as_told(told)["order"]["slabs"][0]
    assert slab.get("quantity", 1) == 1
    assert float(slab["outline"]["length"].split()[0]) == told.lengths[LENGTH]


@MANY
@given(manners.rows_of_taps())
def test_only_the_middle_one_of_a_row_is_in_the_middle(told: Several) -> None:
    """The others are so far to either side of it, and none lies on another."""
    read_as_told(told)


@MANY
@given(manners.cut_unevenly())
def test_a_corner_may_be_cut_off_unevenly(told: Several) -> None:
    """Each size is taken along the side that it names."""
    outline = read_as_told(told)["order"]["slabs"][0]["outline"]
    points = ";".join(
        sorted(
            ",".join(f"{float(point[axis].split()[0]):g}" for axis in "xy")
            for point in outline["points"]
        )
    )
    assert points == told.words["points"]


@MANY
@given(manners.beside_it())
def test_a_sink_beside_a_slab_has_no_cutout(told: Several) -> None:
    """Nothing is asked of it."""
    read = read_as_told(told)
    assert not read["order"]["slabs"][0].get("cutouts")
    assert not [one for one in read["missing"] if "cutouts" in one["at"]]


@MANY
@given(manners.counted_pieces())
def test_each_length_has_its_own_number_of_pieces(told: Several) -> None:
    """The first number is not the second length's."""
    assert _counts(told) == told.words["counts"]


def test_an_orders_number_is_no_postcode() -> None:
    """PO is no state."""
    told = "Please price the following, PO 45007 to follow. Worktop 1950 x 650 x 40, on a pallet."
    assert "postcode" not in read_enquiry(told, WORKSHOP)["order"]["delivery"]


def test_a_step_that_is_asked_for_is_no_step_to_climb() -> None:
    """A concrete step's top is ours; one step at the door is on the way in."""
    told = "Please quote for a concrete step top 900 x 300 x 60, honed, matt sealed, to LD0 7CE."
    read = read_enquiry(told, WORKSHOP)
    assert "steps" not in read["order"].get("delivery", {})
    (finish,) = [one["value"] for one in read["read"] if one["at"] == "/slabs/0/finish"]
    assert finish == "honed, matt sealed"
    told = "Please quote for a worktop 900 x 300 x 60, delivered to LD0 7CE, there is a step."
    assert read_enquiry(told, WORKSHOP)["order"]["delivery"]["steps"] == 1
