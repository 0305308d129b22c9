"""Checks of thickness: reliefs, drips, bevels, finishes, necks, pours; each on both sides."""

import math
from dataclasses import replace
from typing import Any

import pytest

from ledgerstone.quantities import Length
from ledgerstone.wording import side_name
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.in_english import in_english
from support.slabs import box, polygon, slab_json
from unit.checked import found, levels, plain, values_of


def relief(kind: str, depth: object, size: tuple[int, int], at: tuple[int, int]) -> Json:
    """Write a rectangular relief."""
    place = {"x": at[0], "y": at[1]}
    return {"kind": kind, "outline": box(*size), "depth": depth, "at": place}


def edged(side: str = "front", **edge: Any) -> Json:
    """Write one edge."""
    return {side: edge}


# --- reliefs and drips ----------------------------------------------------------------------


@pytest.mark.parametrize(
    ("depth", "expected"),
    [(15, []), (15.1, ["caution"]), (27.5, ["caution"]), (27.6, ["stops"]), (40, ["stops"])],
)
def test_enough_is_left_beneath_a_relief(
    workshop: Workshop, depth: float, expected: list[str]
) -> None:
    """Of 40 mm the workshop's thinnest, 25, is left freely, and half of it at least."""
    slab = plain(reliefs=[relief("drainer", depth, (400, 300), (100, 100))])
    assert levels(found(workshop, "relief-too-deep", slab)) == expected


def test_a_deep_relief_says_how_deep_it_may_be(workshop: Workshop) -> None:
    """The sentence names the relief, what it leaves, what is needed and the depth that gives it."""
    slab = plain(reliefs=[relief("drainer", "30 mm", (400, 300), (100, 100))])
    (finding,) = found(workshop, "relief-too-deep", slab)
    values = values_of(finding, "relief-too-deep")
    assert (values["left"], values["limit"]) == (Length.parse("10 mm"), Length.parse("13 mm"))
    assert (finding.measured, finding.limit) == ({"left_mm": 10.0}, {"left_mm": 12.5})


def test_a_relief_deeper_than_its_slab_goes_through(workshop: Workshop) -> None:
    """A depth beyond the thickness is said to go right through."""
    slab = plain(reliefs=[relief("recess", 99, (400, 300), (100, 100))])
    (finding,) = found(workshop, "relief-too-deep", slab)
    assert values_of(finding, "relief-goes-through")["depth"] == Length.of_mm(99)


def test_a_relief_keeps_to_its_slab(workshop: Workshop) -> None:
    """A drainer that reaches past the edge stops; at the edge, or a rebate that runs out, not."""
    inside, past = (1000, 100), (1001, 100)
    for kind, at, expected in (
        ("drainer", inside, []),
        ("drainer", past, ["stops"]),
        ("rebate", past, []),
        ("rebate", (3000, 100), ["stops"]),
    ):
        slab = plain(reliefs=[relief(kind, 5, (400, 300), at)])
        assert levels(found(workshop, "relief-off-slab", slab)) == expected, kind


@pytest.mark.parametrize(("thickness", "expected"), [(26, []), (25, ["stops"])])
def test_a_drip_needs_three_grains_over_it(
    workshop: Workshop, thickness: int, expected: list[str]
) -> None:
    """A groove of 8 mm and three grains of 6 mm make 26 mm."""
    slab = plain(thickness=thickness, edges=edged(drip=True))
    assert levels(found(workshop, "too-thin-for-drip", slab)) == expected


# --- edges and finishes ---------------------------------------------------------------------


@pytest.mark.parametrize(
    ("profile", "size", "expected"),
    [
        ("bevel", 2.9, ["stops"]),
        ("bevel", 3, []),
        ("bevel", 15, []),
        ("bevel", 15.1, ["stops"]),
        ("round", 20, []),
        ("round", 20.1, ["stops"]),
    ],
)
def test_a_profile_is_of_a_size_that_is_made(
    workshop: Workshop, profile: str, size: float, expected: list[str]
) -> None:
    """The demonstration makes bevels of 3 to 15 mm and rounds of 3 to 20 mm."""
    slab = plain(edges=edged(profile=profile, size=size))
    assert levels(found(workshop, "edge-not-made", slab)) == expected


def test_an_inch_bevel_is_answered_in_inches(workshop: Workshop) -> None:
    """What is too large is put right in the customer's own unit, rounded to the safe side."""
    slab = plain(edges=edged(profile="bevel", size="1 in"))
    (finding,) = found(workshop, "edge-not-made", slab)
    values = values_of(finding, "edge-too-large")
    assert (values["profile"], values["side"]) == ("bevel", side_name("front"))
    lengths = (values["size"], values["limit"])
    assert [one.text() for one in lengths if isinstance(one, Length)] == ["1 in", "9/16 in"]


@pytest.mark.parametrize(("size", "expected"), [(20, []), (20.5, ["stops"])])
def test_a_round_leaves_some_of_the_edge(
    workshop: Workshop, size: float, expected: list[str]
) -> None:
    """Of 25 mm a round of 20 leaves five, and no less is left."""
    slab = plain(
        thickness=25, edges=edged(profile="round", size=size), finish={"surface": "as-cast"}
    )
    assert levels(found(workshop, "edge-too-deep", slab)) == expected


@pytest.mark.parametrize(
    ("surface", "size", "expected"),
    [
        ("as-cast", 15, []),
        ("honed", 15, []),
        ("honed", 15.5, ["stops"]),
        ("polished", 10, []),
        ("polished", 10.5, ["stops"]),
    ],
)
def test_a_pad_needs_an_edge_to_work_on(
    workshop: Workshop, surface: str, size: float, expected: list[str]
) -> None:
    """A slab of 25 mm is honed with 10 mm of edge left and polished with 15."""
    edge = edged(profile="bevel", size=size)
    slab = plain(thickness=25, edges=edge, finish={"surface": surface})
    assert levels(found(workshop, "edge-too-thin-for-finish", slab)) == expected


# --- the outline's own necks ----------------------------------------------------------------


def ell(leg: float) -> Json:
    """Write an L whose back leg is so wide."""
    notch = {"corner": "back-right", "length": 1800 - leg, "width": 600}
    return {"kind": "l-shape", "length": 1800, "width": 1100, "notch": notch, "corner_radius": 10}


@pytest.mark.parametrize(("leg", "expected"), [(41, []), (39, ["stops"])])
def test_a_leg_is_as_wide_as_it_is_thick(
    workshop: Workshop, leg: float, expected: list[str]
) -> None:
    """An L's leg of 39 mm on a slab of 40 would break off."""
    assert levels(found(workshop, "neck-too-narrow", slab_json(ell(leg)))) == expected


def test_a_neck_is_found_wherever_it_is(workshop: Workshop) -> None:
    """Two broad halves that meet in 30 mm stop, and the place is between them."""
    waist = polygon(
        (0, 0), (600, 0), (600, 285), (700, 285), (700, 0), (1300, 0),
        (1300, 600), (700, 600), (700, 315), (600, 315), (600, 600), (0, 600),
    )  # fmt: skip
    (finding,) = found(workshop, "neck-too-narrow", slab_json(waist))
    assert finding.where_mm is not None
    xs = [x for ring in finding.where_mm["coordinates"] for x, _ in ring]
    assert (min(xs), max(xs)) == pytest.approx((600, 700), abs=15)


@pytest.mark.parametrize(
    "outline",
    [
        box(1400, 60),
        {"kind": "round", "diameter": 900},
        polygon((0, 0), (1400, 0), (1200, 600), (200, 600)),
        polygon((0, 0), (1400, 0), (1400, 600), (700, 900), (0, 600)),
    ],
)
def test_broad_outlines_have_no_neck(workshop: Workshop, outline: Json) -> None:
    """Plain outlines and blunt corners lose nothing."""
    assert found(workshop, "neck-too-narrow", slab_json(outline)) == []


# --- the pour -------------------------------------------------------------------------------


def with_mixer(workshop: Workshop, working_l: float) -> Workshop:
    """The same workshop with a smaller mixer."""
    return replace(workshop, mixer=replace(workshop.mixer, working_l=working_l))


@pytest.mark.parametrize(("working_l", "expected"), [(50, []), (5, ["stops"])])
def test_a_slab_is_poured_while_its_first_batch_is_open(
    workshop: Workshop, working_l: float, expected: list[str]
) -> None:
    """60 litres make two batches in the house mixer; of five litres each they come too late."""
    assert levels(found(with_mixer(workshop, working_l), "pour-too-slow", plain(2400))) == expected


def test_a_late_pour_says_its_minutes(workshop: Workshop) -> None:
    """Face coat and backing, each in batches of five litres, nine minutes after one another."""
    (finding,) = found(with_mixer(workshop, 5), "pour-too-slow", plain(2400))
    coat = workshop.recipe.face_coat
    assert coat is not None
    face_l = 2.4 * 0.6 * coat.thickness_mm * 1.1
    backing_l = 2.4 * 0.6 * (40 + 1) * 1.1 - face_l  # the back is cast 1 mm proud
    batches = math.ceil(face_l / 5) + math.ceil(backing_l / 5)
    assert finding.measured == {"open_hours": round(9.0 * (batches - 1) / 60, 2)}
    assert finding.limit == {"open_hours": 1.0}
    assert f"takes {batches} batches" in in_english(finding)
