"""The way in, held to rows 6 to 9 and 13 to 21 of sources §7, and to geometry by shapely.

Sources: rows 13 to 20 were computed for that table, so the corner is looked at a second time here
by brute force; rows 6 to 9 are the HSE's filter and team factors (L23), read in secondary texts;
row 21 is the HSE's page on pushing.
"""

import math
from typing import Final

import pytest
from shapely import affinity
from shapely.geometry import Polygon, box

from ledgerstone.order import Lift
from ledgerstone.quantities import Length
from ledgerstone.transport import (
    CarriedBox,
    Who,
    Zone,
    filter_kg,
    least_tilt_degrees,
    longest_across,
    longest_round_corner,
    push_kg,
    stands_up,
    team_lift_kg,
    tilt_in_lift_degrees,
)

FAR_MM: Final = 9000.0
CAR: Final = Lift(
    width=Length.of_mm(1100),
    depth=Length.of_mm(1400),
    height=Length.of_mm(2200),
    door=Length.of_mm(900),
    rated_kg=630,
)


# --- the corner -----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("a", "b", "w", "longest"),
    [
        (900, 900, 0, 2545.6),  # row 13
        (900, 900, 60, 2425.6),  # row 14
        (900, 762, 0, 2347.7),  # row 15
        (900, 1200, 60, 2839.1),  # row 16: 2839.7 by taking off 2 w
        (900, 900, 650, 1245.6),  # row 17
        # The page's table: 2.2 to 2.6 m of worktop in halls of 800 to 1200 mm.
        (900, 900, 300, 1945.6), (900, 1200, 0, 2959.7), (900, 1200, 300, 2355.9),
        (900, 1200, 650, 1644.8), (900, 762, 60, 2227.5), (900, 762, 300, 1746.3),
        (900, 762, 650, 1039.9), (800, 800, 0, 2262.7), (800, 800, 60, 2142.7),
        (800, 800, 300, 1662.7), (800, 800, 650, 962.7), (1000, 1200, 0, 3107.0),
        (1000, 1200, 60, 2986.7), (1000, 1200, 300, 2505.5), (1000, 1200, 650, 1801.5),
    ],
)  # fmt: skip
def test_the_corner_formula(a: float, b: float, w: float, longest: float) -> None:
    """Rows 13 to 17 and the page's table, to the 0.1 mm in which they are printed."""
    assert longest_round_corner(a, b, w) == pytest.approx(longest, abs=0.051)


@pytest.mark.parametrize(("a", "b"), [(900, 900), (900, 762), (750, 1200)])
def test_without_width_it_is_the_ladder(a: float, b: float) -> None:
    """A line gets round at ``(a^(2/3) + b^(2/3))^(3/2)``, the textbook ladder."""
    ladder = (a ** (2 / 3) + b ** (2 / 3)) ** 1.5
    assert longest_round_corner(a, b, 0) == pytest.approx(ladder, rel=1e-9)


def hall(a: float, b: float) -> Polygon:
    """Draw two halls that meet at a right angle, the outer corner at the origin."""
    return box(0, 0, FAR_MM, a).union(box(0, 0, b, FAR_MM)).buffer(0.01, join_style="mitre")


def swings_round(a: float, b: float, length: float, w: float, steps: int = 2000) -> bool:
    """Slide a rectangle along both outer walls, and look whether it stays in the halls."""
    rectangle, walls = box(0, 0, length, w), hall(a, b)
    for i in range(steps + 1):
        angle = math.pi / 2 * i / steps
        lying = affinity.rotate(rectangle, -math.degrees(angle), origin=(0, 0))
        placed = affinity.translate(lying, 0, length * math.sin(angle))
        if not walls.covers(placed):
            return False
    return True


@pytest.mark.parametrize(
    ("a", "b", "w"),
    [(900, 900, 60), (900, 1200, 60), (900, 762, 60), (900, 900, 650), (800, 1000, 300)],
)
def test_brute_force_agrees(a: float, b: float, w: float) -> None:
    """A piece 1 mm shorter than the formula's swings round, and one 1 mm longer does not."""
    longest = longest_round_corner(a, b, w)
    assert swings_round(a, b, longest - 1, w)
    assert not swings_round(a, b, longest + 1, w)


def test_row_17_by_both() -> None:
    """Flat, 650 wide, between halls of 900: 1240 fits and 1300 does not."""
    assert swings_round(900, 900, 1240, 650)
    assert not swings_round(900, 900, 1300, 650)


def test_a_piece_too_wide_goes_nowhere() -> None:
    """Wider than either hall is zero; as wide as one, it slides sideways into the other."""
    assert longest_round_corner(900, 700, 701) == 0.0
    assert longest_round_corner(700, 2000, 700) == pytest.approx(2000)
    assert hall(700, 2000).covers(box(0, 0, 2000, 700))


# --- stood up, and in the lift --------------------------------------------------------------


@pytest.mark.parametrize(("length", "fits"), [(2200, True), (2400, False)])
def test_standing_up_under_a_ceiling(length: float, *, fits: bool) -> None:
    """Rows 18 and 19: 650 mm deep beneath 2400, the diagonal is 2294.0 or 2486.5."""
    assert math.hypot(length, 650) == pytest.approx(2294.0 if fits else 2486.5, abs=0.05)
    assert stands_up(length, 650, 2400) is fits


def test_a_lift_takes_a_piece_tilted() -> None:
    """Row 20: in 1100 by 1400 by 2200, 2000 by 650 from 50.2 degrees on, 2400 not at all."""
    across = longest_across(1100, 1400, 0)
    assert across == pytest.approx(math.hypot(1100, 1400))
    tilt = least_tilt_degrees(CarriedBox(2000, 650, 0), across, 2200)
    assert tilt == pytest.approx(50.2, abs=0.05)
    assert least_tilt_degrees(CarriedBox(2400, 650, 0), across, 2200) is None


@pytest.mark.parametrize("length", [1700, 1900, 2000, 2050])
def test_a_tilted_piece_lies_within_the_car(length: float) -> None:
    """At the least tilt its plan just lies in the car, to 1 mm, and it stands beneath the roof."""
    tilt = tilt_in_lift_degrees(CarriedBox(length, 600, 60), CAR)
    assert tilt is not None
    upright = affinity.rotate(box(0, 0, length, 600), tilt, origin=(0, 0))
    x0, y0, x1, y1 = upright.bounds
    assert y1 - y0 <= 2200
    assert lies_in(x1 - x0 - 1, 60, 1100, 1400)
    assert tilt == 0.0 or not lies_in(x1 - x0 + 1, 60, 1100, 1400)


def lies_in(long: float, wide: float, width: float, depth: float) -> bool:
    """Turn a rectangle about and look whether it ever lies in another."""
    boxes = (
        affinity.rotate(box(0, 0, long, wide), 90 * i / 4000, origin=(0, 0)).bounds
        for i in range(4001)
    )
    return any(x1 - x0 <= width + 0.01 and y1 - y0 <= depth + 0.01 for x0, y0, x1, y1 in boxes)


# --- hands ----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("men", "women", "kg"),
    [(1, 0, 25.0), (0, 1, 16.0), (2, 0, 33.3), (3, 0, 37.5), (0, 2, 21.3), (1, 1, 27.3),
     (0, 3, 24.0)],
)  # fmt: skip
def test_team_factors(men: int, women: int, kg: float) -> None:
    """Row 6, HSE L23: two people 2/3 of what each has, three people 1/2."""
    assert team_lift_kg(men=men, women=women) == pytest.approx(kg, abs=0.05)


def test_no_factor_is_made_up_for_four() -> None:
    """The HSE gives none for four or more; nobody at all is a fault."""
    assert team_lift_kg(men=2, women=2) is None
    assert team_lift_kg(men=6) is None
    for men, women in ((0, 0), (-1, 2)):
        with pytest.raises(ValueError, match="lifts nothing"):
            team_lift_kg(men=men, women=women)


@pytest.mark.parametrize(
    ("who", "zones", "far", "kg"),
    [
        ("man", ("elbow",), False, 25),  # row 7
        ("man", ("elbow",), True, 15),  # row 7
        ("woman", ("lower-leg",), False, 7),  # row 8
        ("woman", ("lower-leg",), True, 3),  # row 8
        ("man", ("shoulder", "elbow"), False, 20),  # row 9: the smallest zone passed
        ("man", ("above-shoulder", "shoulder", "elbow"), False, 10),  # row 9, above the shoulder
        ("man", ("knuckle",), False, 20),
        ("woman", ("shoulder",), True, 7),
    ],
)
def test_the_filters_smallest_zone_counts(
    who: Who, zones: tuple[Zone, ...], *, far: bool, kg: float
) -> None:
    """Rows 7 to 9, HSE L23 and INDG143: use the smallest value that the hands pass through."""
    assert filter_kg(who, *zones, far=far) == kg


def test_a_trolley_is_pushed_by_a_share_of_its_load() -> None:
    """Row 21, HSE: 200 kg takes 4 kg of force on a level floor and 20 kg on an uneven one."""
    assert push_kg(200) == pytest.approx(4)
    assert push_kg(200, rough=True) == pytest.approx(20)
