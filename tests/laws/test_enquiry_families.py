"""Laws of reading for messages with several things in them: whatever words tell them apart."""

from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies.enquiry_changes import (
    Several,
    bare_inches,
    cut_off,
    differences,
    legs_apart,
    pairs,
    shades_each,
)
from support.strategies.enquiry_families import dimensions
from support.strategies.enquiry_sides import Sided, at_a_side
from support.strategies.orders import cases

WORKSHOP = load_profile(DEMONSTRATION)
MANY = settings(max_examples=cases(10), suppress_health_check=[HealthCheck.too_slow])


def _read(told: Several) -> dict[str, Any]:
    read = read_enquiry(told.text, WORKSHOP)
    if told.lengths:
        assert dimensions(read) == pytest.approx(told.lengths, abs=0.5), told.text
    return read


@MANY
@given(differences())
def test_a_difference_is_added_to_the_size_that_it_is_of(told: Several) -> None:
    """So much longer, shallower or thicker is the size said before, more or less that."""
    read = _read(told)
    assert "worked-out" in {entry["how"] for entry in read["read"]}


@MANY
@given(pairs())
def test_a_pair_is_told_from_both_ends(told: Several) -> None:
    """Of two openings the first is so far from the left, the second so far from the right."""
    _read(told)


@MANY
@given(legs_apart())
def test_an_l_in_two_pieces_is_two_slabs_and_a_join(told: Several) -> None:
    """Each leg is a slab; the shorter one's near end meets the front of the longer."""
    read = _read(told)
    (join,) = read["order"]["joins"]
    near = {"right": "left", "left": "right"}[told.words["side"]]
    assert join == {"one": {"slab": 0, "side": "front"}, "other": {"slab": 1, "side": near}}
    assert read["proposal"]["joins"][0]["gap"]
    assert "/joins/0/gap" in {entry["at"] for entry in read["assumed"]}


@MANY
@given(cut_off())
def test_a_corner_cut_off_makes_a_polygon(told: Several) -> None:
    """The corner's two ends stand in its place, as far back along both sides as was said."""
    outline = _read(told)["order"]["slabs"][0]["outline"]
    points = [tuple(float(one[axis].removesuffix(" mm")) for axis in "xy") for one in
              outline["points"]]  # fmt: skip
    assert ";".join(sorted(f"{x:g},{y:g}" for x, y in points)) == told.words["points"], told.text
    twice_area = sum(
        x * v - u * y for (x, y), (u, v) in zip(points, points[1:] + points[:1], strict=True)
    )
    assert twice_area > 0  # anticlockwise


@MANY
@given(shades_each())
def test_each_slab_has_its_own_shade(told: Several) -> None:
    """A shade belongs to the slab in whose words it stands, whether our palette has it or not."""
    read = _read(told)
    shades = {one["at"]: one["value"] for one in read["read"] if one["at"].endswith("shade/name")}
    assert shades == {f"/slabs/{i}/shade/name": told.words[str(i)] for i in range(2)}, told.text


@MANY
@given(bare_inches())
def test_numbers_with_fractions_are_inches(told: Several) -> None:
    """Nobody writes 25 1/2 millimetres: the other bare numbers of the message are inches too."""
    _read(told)


@MANY
@given(
    length=st.integers(70, 260),
    left=st.integers(30, 60),
    right=st.integers(20, 50),
    first=st.booleans(),
)
def test_a_slab_with_unlike_ends_is_a_polygon(
    length: int, left: int, right: int, *, first: bool
) -> None:
    """What is so wide at one end and so wide at the other tapers, straight along its back."""
    ends = [f"{left * 10} wide at the left end", f"{right * 10} wide at the right end"]
    said = " and ".join(ends if first else reversed(ends))
    read = read_enquiry(f"Please price a bar top {length * 10} long, {said}, 40 thick.", WORKSHOP)
    outline = read["order"]["slabs"][0]["outline"]
    assert outline["kind"] == ("rectangle" if left == right else "polygon")
    found = dimensions(read)
    assert found["/slabs/0/outline/width"] == 10 * max(left, right)


@pytest.mark.parametrize("count", [2, 3, 4])
@pytest.mark.parametrize("mark", ["{} no. ", "{} No. ", "{} off ", "{} nr. ", "{} x ", "{} "])
def test_a_count_is_no_denial_and_no_size(count: int, mark: str) -> None:
    """Two of a thing are two, as builders write it."""
    read = read_enquiry(f"Please price {mark.format(count)}shelves 600 x 110 x 25 mm.", WORKSHOP)
    assert read["order"]["slabs"][0]["quantity"] == count
    assert dimensions(read)["/slabs/0/outline/length"] == 600


ADDRESSES = (
    ("14 Cinder Lane\nGarsley\nHR0 4LL", "14 Cinder Lane, Garsley, HR0 4LL"),
    ("3 Mill Row, Wethermoor\nHR0 2BB", "3 Mill Row, Wethermoor, HR0 2BB"),
    ("Fell Cottage\nHigh Moor\nLD0 3KK", "Fell Cottage, High Moor, LD0 3KK"),
    ("Deichstraße 14\n20459 Hamburg", "Deichstraße 14, 20459 Hamburg"),
)


@pytest.mark.parametrize(("lines", "address"), ADDRESSES)
@pytest.mark.parametrize("led", ["Regards\nIda Moss\n{}", "Ida Moss\n{}", "Address: {}"])
def test_an_address_is_the_customers(lines: str, address: str, led: str) -> None:
    """A street with its place and postcode under the name, or in a field, is where they live."""
    block = lines.replace("\n", ", ") if led.startswith("Address") else lines
    text = f"Please quote for a shelf 900 x 220 x 40 mm, charcoal.\n\n{led.format(block)}\n"
    assert read_enquiry(text, WORKSHOP)["customer"]["address"] == address


NO_ENQUIRY = (
    "Please find your statement of account for March. Balance due £1,240.60. 6 boards {} mm.",
    "Thank you both so much, the {} mm worktop looks fantastic.",
    "All good with the estimate for the {} worktop, please go ahead and send the deposit invoice.",
    "I've 40 sheets of ply going spare, {}, a tenner each. Want some?",
)


@pytest.mark.parametrize("text", NO_ENQUIRY)
@pytest.mark.parametrize("size", ["1800 x 600 x 40", "2440 x 1220 x 18"])
def test_sizes_alone_ask_for_nothing(text: str, size: str) -> None:
    """A statement, thanks, an acceptance and an offer are told apart whatever sizes they name."""
    read = read_enquiry(text.format(size), WORKSHOP)
    assert not read["is_enquiry"]
    assert read["order"]["slabs"] == []


@MANY
@given(at_a_side())
def test_in_the_middle_of_a_side_is_so_along_the_slab_alone(told: Sided) -> None:
    """How far from the front is asked, and proposed near that side; a basin stays in the middle."""
    read = read_enquiry(told.text, WORKSHOP)
    last = 1 if told.has_basin else 0
    at = f"/slabs/0/cutouts/{last}/centre"
    found = dimensions(read)
    assert found.get(f"{at}/x") == told.length / 2, told.text
    assert f"{at}/y" not in found, told.text
    assert f"{at}/y" in {one["at"] for one in read["missing"]}, told.text
    y = float(read["proposal"]["slabs"][0]["cutouts"][last]["centre"]["y"].removesuffix(" mm"))
    assert (y > 0.8 * told.width) if told.side == "back" else (y < 0.2 * told.width), told.text
    if told.has_basin:
        basin = [found.get(f"/slabs/0/cutouts/0/centre/{axis}") for axis in "xy"]
        assert basin == [told.length / 2, told.width / 2], told.text
