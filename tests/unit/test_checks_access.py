"""Checks of the way in, of hands and of the carrier; each on both sides of its limit."""

from dataclasses import replace
from typing import Any

import pytest

from ledgerstone.quantities import Length
from ledgerstone.wording import Listed, Message, People, Weight
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.in_english import in_english
from unit.checked import FITTED, PALLET, found, levels, plain, values_of

LIFT: Json = {"width": 1100, "depth": 1400, "height": 2200, "door": 800, "rated_kg": 630}


def fitted(**more: Any) -> Json:
    """Write a delivery that we carry in."""
    return {**FITTED, **more}


def kerbside(**more: Any) -> Json:
    """Write a delivery that the customer carries in."""
    return {**PALLET, **more}


def with_lifting(workshop: Workshop, **more: Any) -> Workshop:
    """The same workshop with other limits."""
    return replace(workshop, lifting=replace(workshop.lifting, **more))


def with_pallet(workshop: Workshop, **more: Any) -> Workshop:
    """The same workshop with one kind of pallet, which is high enough for anything."""
    pallet = replace(workshop.lifting.pallets[0], highest_mm=2500, **more)
    return with_lifting(workshop, pallets=(pallet,))


# --- doorway and turn -----------------------------------------------------------------------


def test_a_flat_slab_passes_any_doorway_on_edge(workshop: Workshop) -> None:
    """40 mm and its padding pass 610 mm; a waterfall end of 860 mm does not."""
    door = fitted(doorway=610)
    assert found(workshop, "doorway-too-narrow", plain(), delivery=door) == []
    drop = {"left": {"profile": "square", "drop": {"depth": 860}}}
    (finding,) = found(workshop, "doorway-too-narrow", plain(edges=drop), delivery=door)
    assert (finding.level, finding.measured, finding.limit) == (
        "stops",
        {"width_mm": 620.0},  # the slab's own 600 and 20 of foam: it lies in the drop's plane
        {"width_mm": 610.0},
    )


@pytest.mark.parametrize(
    ("length", "expected"),
    [(1825, []), (1826, ["caution"]), (2425, ["caution"]), (2426, ["stops"])],
)
def test_a_slab_gets_round_the_turn(workshop: Workshop, length: int, expected: list[str]) -> None:
    """900 by 900 lets 2425.6 mm by on edge, padded; with 300 mm for hands at each end 1825.6."""
    way = fitted(turn={"from": 900, "into": 900})
    assert levels(found(workshop, "turn-too-tight", plain(length), delivery=way)) == expected


def test_a_ceiling_lets_a_slab_be_tilted(workshop: Workshop) -> None:
    """2600 by 600 passes a turn of 900 tilted under 2700 mm, and not under 2000."""
    for ceiling, expected in ((2700, []), (2000, ["stops"])):
        way = fitted(turn={"from": 900, "into": 900}, ceiling=ceiling)
        assert levels(found(workshop, "turn-too-tight", plain(2600), delivery=way)) == expected


def test_a_turn_that_is_too_tight_says_what_would_pass(workshop: Workshop) -> None:
    """The sentence gives the length that passes, and asks for the ceiling that was not told."""
    turn = {"from": "900 mm", "into": "900 mm"}
    (finding,) = found(workshop, "turn-too-tight", plain(2600), delivery=fitted(turn=turn))
    lengths = {"length": Length.parse("2600 mm"), "most": Length.parse("2425 mm")}
    values = values_of(finding, "turn-too-tight")
    assert {name: values[name] for name in lengths} == lengths
    assert values["ceiling_given"] == "no"
    told = fitted(turn=turn, ceiling=2000)
    (finding,) = found(workshop, "turn-too-tight", plain(2600), delivery=told)
    values = values_of(finding, "turn-too-tight")
    assert (values["most"], values["ceiling_given"]) == (lengths["most"], "yes")


def test_what_the_customer_carries_is_a_caution(workshop: Workshop) -> None:
    """From the kerb, from our van or collected, the same turn is stated and stops nothing."""
    turn = {"from": 900, "into": 900}
    van = {"kind": "own-van", "postcode": "HR9 7XX", "turn": turn}
    for delivery in (kerbside(turn=turn), van, {"kind": "collect", "turn": turn}):
        findings = found(workshop, "turn-too-tight", plain(2600), delivery=delivery)
        assert levels(findings) == ["caution"]
    assert levels(found(workshop, "turn-too-tight", plain(2600), delivery=fitted(turn=turn))) == [
        "stops"
    ]


@pytest.mark.parametrize("kind", ["collect", "pallet", "own-van", "fitted"])
def test_whoever_carries_it_in_is_asked_for_hands(workshop: Workshop, kind: str) -> None:
    """A way in stops only what we carry ourselves, and only there is nobody asked for hands."""
    way = {"kind": kind, "postcode": "HR9 7XX", "turn": {"from": 900, "into": 900}}
    stops = levels(found(workshop, "turn-too-tight", plain(2600), delivery=way)) == ["stops"]
    hands = found(workshop, "hands-needed", plain(2600, 400), delivery=way)
    assert stops is (not hands)


# --- lift and steps -------------------------------------------------------------------------


@pytest.mark.parametrize(("length", "expected"), [(1700, []), (2000, []), (2400, ["stops"])])
def test_a_slab_goes_into_the_lift(workshop: Workshop, length: int, expected: list[str]) -> None:
    """Across the floor, tilted, or not at all: 1100 by 1400 by 2200 mm (sources §7, row 20)."""
    slab = plain(length, 650)
    assert levels(found(workshop, "lift-too-small", slab, delivery=fitted(lift=LIFT))) == expected


def test_a_lift_with_a_narrow_door_takes_nothing(workshop: Workshop) -> None:
    """A door narrower than slab and padding keeps it out; steps make that a caution."""
    narrow = {**LIFT, "door": 59}
    stopped = found(workshop, "lift-too-small", plain(900), delivery=fitted(lift=narrow))
    assert levels(stopped) == ["stops"]
    stairs = fitted(lift=narrow, steps=12)
    assert levels(found(workshop, "lift-too-small", plain(900), delivery=stairs)) == ["caution"]


@pytest.mark.parametrize(("rated", "expected"), [(320, []), (200, ["stops"])])
def test_a_lift_carries_the_slab_and_two_people(
    workshop: Workshop, rated: int, expected: list[str]
) -> None:
    """A slab of 82 kg and two people of 75 weigh 232 kg."""
    slab, lift = plain(1400, 610), {**LIFT, "rated_kg": rated}
    findings = found(workshop, "lift-overloaded", slab, delivery=fitted(lift=lift))
    assert levels(findings) == expected
    assert all("232.4 kg together" in in_english(finding) for finding in findings)


@pytest.mark.parametrize(
    ("steps", "lift", "expected"),
    [
        (0, None, []),
        (3, None, ["caution"]),
        (4, None, ["stops"]),
        (4, {**LIFT, "rated_kg": 1000}, []),
        (4, {**LIFT, "rated_kg": 200}, ["stops"]),
    ],
)
def test_what_no_hands_carry_goes_up_no_stairs(
    workshop: Workshop, steps: int, lift: Json | None, expected: list[str]
) -> None:
    """173 kg is beyond six people of 25; a few steps are ramped, a lift that takes it serves."""
    way = fitted(steps=steps) | ({} if lift is None else {"lift": lift})
    slab = plain(1600, 1123)
    assert levels(found(workshop, "too-heavy-for-steps", slab, delivery=way)) == expected


def test_six_people_carry_up_steps_what_they_may(workshop: Workshop) -> None:
    """96 kg is within the workshop's hands, steps or not."""
    assert found(workshop, "too-heavy-for-steps", plain(1000, 1000), delivery=fitted(steps=9)) == []


# --- hands ----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("size", "people", "assess"),
    [((500, 500), 1, "no"), ((550, 600), 2, "no"), ((600, 700), 2, "yes"), ((1400, 600), 4, "yes")],
)  # fmt: skip
def test_who_must_be_there_is_stated(
    workshop: Workshop, size: tuple[int, int], people: int, assess: str
) -> None:
    """Two carry 32 kg without assessing it, and 41 kg with; HSE has no factor for four."""
    (finding,) = found(workshop, "hands-needed", plain(*size), delivery=PALLET)
    assert finding.level == "note"
    told = values_of(finding, "hands-needed")
    assert (told["people"], told["assess"]) == (People(people), assess)


def test_too_few_hands_are_a_caution(workshop: Workshop) -> None:
    """Told how many will be there, the answer counts; enough are not spoken of."""
    (finding,) = found(workshop, "hands-needed", plain(), delivery=kerbside(people=1))
    assert finding.level == "caution"
    told = values_of(finding, "hands-too-few")
    assert (told["people"], told["there"]) == (People(4), People(1))
    assert found(workshop, "hands-needed", plain(), delivery=kerbside(people=4)) == []
    assert found(workshop, "hands-needed", plain(), delivery=FITTED) == []


def test_the_heaviest_slab_is_the_one_that_counts(workshop: Workshop) -> None:
    """An order's hands are stated once, of its heaviest slab."""
    slabs = (plain(500, 500, label="Small"), plain(label="Large"))
    (finding,) = found(workshop, "hands-needed", *slabs, delivery=PALLET)
    assert (finding.slab, "“Large”" in in_english(finding)) == (1, True)


@pytest.mark.parametrize(("width", "expected"), [(971, []), (973, ["caution"])])
def test_beyond_hands_is_trolley_work(workshop: Workshop, width: int, expected: list[str]) -> None:
    """Over 150 kg, six people's share, a slab goes by trolley or gear: a caution, no stop."""
    findings = found(workshop, "beyond-hands", plain(1600, width))
    assert levels(findings) == expected
    assert found(workshop, "hands-needed", plain(1600, 976), delivery=PALLET) == []


@pytest.mark.parametrize(
    ("given", "lacks"),
    [
        ({}, ("doorway", "turn", "floor")),
        ({"doorway": 762, "steps": 0}, ("turn",)),
        ({"doorway": 762, "turn": {"from": 900, "into": 900}, "floor": 0}, ("steps",)),
        ({"doorway": 762, "turn": {"from": 900, "into": 900}, "floor": 2}, ("steps-or-lift",)),
    ],
)
def test_way_in_gaps_are_noted(workshop: Workshop, given: Json, lacks: tuple[str, ...]) -> None:
    """The way in is asked for part by part, as a note."""
    (finding,) = found(workshop, "way-in-not-told", plain(), delivery=fitted(**given))
    assert finding.level == "note"
    missing = Listed(tuple(Message("way-in-part", part=part) for part in lacks), joined="comma-and")
    assert finding.message == Message("way-in-not-told", missing=missing)


def test_a_whole_way_in_lacks_nothing(workshop: Workshop) -> None:
    """A way in told whole is not asked again, and a collector brings it in as they like."""
    whole = fitted(doorway=762, turn={"from": 900, "into": 900}, steps=2)
    for delivery in (whole, {"kind": "collect"}):
        assert found(workshop, "way-in-not-told", plain(), delivery=delivery) == []


# --- the carrier ----------------------------------------------------------------------------


@pytest.mark.parametrize(("length", "expected"), [(2400, []), (2401, ["stops"])])
def test_a_pallet_takes_a_length(workshop: Workshop, length: int, expected: list[str]) -> None:
    """The carrier's longest passes and a millimetre more stops, by pallet and no other way."""
    short = with_pallet(workshop, length_mm=2100)  # and 150 mm beyond it at each end
    slab = plain(length)
    assert levels(found(short, "too-long-for-pallet", slab, delivery=PALLET)) == expected
    assert found(short, "too-long-for-pallet", slab, delivery=FITTED) == []


def test_length_is_looked_at_before_mass(workshop: Workshop) -> None:
    """Handling page row 37: 3 m of 227 kg is oversize before its mass is weighed."""
    strict = with_pallet(workshop, length_mm=2400, most_kg=200)
    long = plain(3000, 650)
    assert levels(found(strict, "too-long-for-pallet", long, delivery=PALLET)) == ["stops"]
    assert found(strict, "too-heavy-for-pallet", long, delivery=PALLET) == []
    short = plain(2700, 650, quantity=2)
    assert levels(found(strict, "too-heavy-for-pallet", short, delivery=PALLET)) == ["stops"]


def test_a_heavy_order_is_weighed_packed(workshop: Workshop) -> None:
    """Eleven slabs of 81 + 3 kg, three crates and a pallet are 986 kg; twelve pass 1000."""
    for quantity, expected in ((11, []), (12, ["stops"])):
        slab = plain(1400, 600, quantity=quantity)
        findings = found(workshop, "too-heavy-for-pallet", slab, delivery=PALLET)
        assert levels(findings) == expected


def test_a_deep_piece_needs_a_pallet_that_is_high_enough(workshop: Workshop) -> None:
    """On edge a piece stands on the deck: 1100 mm less 150 takes 950, and no millimetre more."""
    low = with_lifting(workshop, pallets=workshop.lifting.pallets[:1])
    assert found(low, "too-long-for-pallet", plain(1400, 950), delivery=PALLET) == []
    (finding,) = found(low, "too-long-for-pallet", plain(1400, 951), delivery=PALLET)
    values = values_of(finding, "too-deep-for-pallet")
    assert (values["size"], values["most"]) == (Length.of_mm(951), Length.of_mm(950))


@pytest.mark.parametrize(("most", "expected"), [(100, ["caution"]), (150, [])])
def test_a_tail_lift_sets_down_so_much(workshop: Workshop, most: int, expected: list[str]) -> None:
    """A piece of 81 kg, its crate and its pallet are 121 kg: over 100 a fork-lift is wanted."""
    lift = with_lifting(workshop, tail_lift_kg=most)
    assert levels(found(lift, "beyond-tail-lift", plain(), delivery=PALLET)) == expected
    assert found(lift, "beyond-tail-lift", plain(), delivery=FITTED) == []


def test_where_a_pallet_is_set_down_is_stated(workshop: Workshop) -> None:
    """At the kerb, on ground that a pallet truck rolls on; we carry in what we fit."""
    assert levels(found(workshop, "set-down-at-kerb", plain(), delivery=PALLET)) == ["note"]
    assert found(workshop, "set-down-at-kerb", plain(), delivery=FITTED) == []


@pytest.mark.parametrize(
    ("length", "quantity", "expected"),
    [(3300, 1, []), (3301, 1, ["stops"]), (1400, 10, []), (1400, 11, ["stops"])],
)
def test_our_van_takes_a_length_and_then_a_mass(
    workshop: Workshop, length: int, quantity: int, expected: list[str]
) -> None:
    """Its floor is 3300 mm clear; it takes 900 kg: ten pieces of 81 + 2 kg are 831, eleven 914."""
    slab = plain(length, quantity=quantity)
    for delivery in (FITTED, {**FITTED, "kind": "own-van"}):
        assert levels(found(workshop, "too-much-for-van", slab, delivery=delivery)) == expected
    assert found(workshop, "too-much-for-van", slab, delivery=PALLET) == []


def test_a_collection_states_its_vehicle(workshop: Workshop) -> None:
    """The longest piece, rounded up, and the packed mass: 1420 mm and 83 kg."""
    (note,) = found(workshop, "vehicle-to-collect", plain(1420), delivery={"kind": "collect"})
    van = {"length": Length.of_mm(1450), "carries": Weight(90)}
    assert note.message == Message("vehicle-to-collect", **van)
    assert found(workshop, "vehicle-to-collect", plain(), delivery=PALLET) == []
