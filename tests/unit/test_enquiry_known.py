"""What was long read wrongly: ovals, cupboards below, taps beside, inches without their unit."""

from typing import Any

import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import Workshop, load_profile
from ledgerstone.workshop.reading.loader import EXAMPLES
from support.strategies.enquiry_families import dimensions

ASK = "Please quote for a worktop 1800 x 620 x 40. "


def _slab(text: str, workshop: Workshop) -> dict[str, Any]:
    slab: dict[str, Any] = read_enquiry(text, workshop)["order"]["slabs"][0]
    return slab


@pytest.mark.parametrize(
    ("said", "widths"),
    [
        ("It goes on three 600 base units.", [600, 600, 600]),
        ("It sits on a 600, an 800 and a 400 unit.", [600, 800, 400]),
        ("It lies on 600, 800 and 400 units.", [600, 800, 400]),
        ("It goes over 3 x 600 cupboards.", [600, 600, 600]),
        ("It goes on three 300 base units.", []),
        ("The kitchen has three 600 base units.", []),
    ],
)
def test_cupboards_below_are_read(said: str, widths: list[int], workshop: Workshop) -> None:
    """Cupboards that a slab lies on are its rests where together they are as long as it is."""
    rests = _slab(ASK + said, workshop).get("rests")
    assert (rests or {"units": []})["units"] == [{"width": f"{width} mm"} for width in widths]


def test_an_oval_is_drafted_as_a_polygon(workshop: Workshop) -> None:
    """An oval has the outline of an ellipse of its two sizes, and its draft is an order."""
    read = read_enquiry("Price for an oval table top, 1800 x 1000, 40 thick? We collect.", workshop)
    points = read["proposal"]["slabs"][0]["outline"]["points"]
    xs, ys = ([float(point[axis].split()[0]) for point in points] for axis in "xy")
    assert (max(xs) - min(xs), max(ys) - min(ys)) == pytest.approx((1800, 1000), abs=1)
    area = sum(xs[i - 1] * ys[i] - xs[i] * ys[i - 1] for i in range(len(xs))) / 2
    assert area == pytest.approx(3.14159 * 900 * 500, rel=0.003)
    assert read_order(read["proposal"], workshop).slabs


def test_a_tap_beside_its_sink_is_proposed_beside_it(workshop: Workshop) -> None:
    """A tap that is said to be beside its sink is not proposed behind it."""
    text = ASK + "Sink cut-out 400 x 350 in the middle, with a tap beside it, 35 hole."
    sink, tap = read_enquiry(text, workshop)["proposal"]["slabs"][0]["cutouts"]
    apart = float(tap["centre"]["x"].split()[0]) - float(sink["centre"]["x"].split()[0])
    assert apart > (400 + 35) / 2
    assert tap["centre"]["y"] == sink["centre"]["y"]


@pytest.mark.parametrize(
    "said",
    ["Tap hole: none.", "Tap hole - none", "Tap hole no.", "The tap hole can come out."],
)
def test_an_opening_that_is_none_is_not_asked(said: str, workshop: Workshop) -> None:
    """An opening named only to say that there is none is no opening."""
    assert not _slab(ASK + said, workshop).get("cutouts")


def test_few_inches_without_their_unit(workshop: Workshop) -> None:
    """A few of a bare unit are inches in the United States, and centimetres elsewhere."""
    text = "Please quote for a vanity top 49 x 22, 2 thick."
    american = load_profile(EXAMPLES["US"])
    assert dimensions(read_enquiry(text, american)) == pytest.approx(
        {"/slabs/0/outline/length": 49 * 25.4, "/slabs/0/outline/width": 22 * 25.4,
         "/slabs/0/thickness": 50.8}, abs=0.1
    )  # fmt: skip
    assert dimensions(read_enquiry(text, workshop))["/slabs/0/outline/length"] == 490


def test_a_sink_without_a_cut_out_is_none(workshop: Workshop) -> None:
    """A sink that stands by itself is no opening, and nothing of it is asked."""
    text = ASK + "The Belfast sink stands between the cupboards, no cut-out needed."
    read = read_enquiry(text, workshop)
    assert not read["order"]["slabs"][0].get("cutouts")
    assert not read["missing"]
