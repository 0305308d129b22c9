"""Masses of bars and fabrics against the published tables of EN 10080's and BS 4483's sizes."""

import pytest

from ledgerstone.steel import bar_kg_per_m, mesh_kg_per_m2

HALF_A_DIGIT = 0.0005  # the tables have three decimals


@pytest.mark.parametrize(
    ("d_mm", "kg"),
    [(4, 0.099), (5, 0.154), (6, 0.222), (7, 0.302), (8, 0.395), (10, 0.617), (12, 0.888)],
)
def test_bar_masses(d_mm: float, kg: float) -> None:
    """A metre of bar weighs what rebar tables print; 10 mm is 0.6165, which they round up."""
    assert bar_kg_per_m(d_mm) == pytest.approx(kg, abs=HALF_A_DIGIT + 1e-5)


def test_a_16_mm_bar() -> None:
    """A metre of 16 mm is 1.578 to 1.58 kg, as tables differ."""
    assert 1.5775 <= bar_kg_per_m(16) <= 1.58


@pytest.mark.parametrize(
    ("fabric", "wire_mm", "pitch_mm", "kg"),
    [
        ("A98", 5, 200, 1.54),
        ("A142", 6, 200, 2.22),
        ("A193", 7, 200, 3.02),
        ("A252", 8, 200, 3.95),
        ("D49", 2.5, 100, 0.770),
        ("D31", 2.0, 100, 0.49),
    ],
)
def test_fabric_masses(fabric: str, wire_mm: float, pitch_mm: float, kg: float) -> None:
    """A square metre of BS 4483 fabric weighs what pages print, to their second decimal."""
    assert mesh_kg_per_m2(wire_mm, pitch_mm) == pytest.approx(kg, abs=0.0051), fabric


def test_a393() -> None:
    """A square metre of A393 weighs 6.16 to 6.17 kg, as pages differ."""
    assert 6.16 <= mesh_kg_per_m2(10, 200) <= 6.17
