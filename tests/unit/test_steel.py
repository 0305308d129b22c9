"""The cut list: bars from stock lengths, mesh in pieces."""

from dataclasses import replace

import pytest

from ledgerstone.steel import (
    Bar,
    MeshPiece,
    bar_kg_per_m,
    cut_list,
    density_of,
    mesh_kg_per_m2,
    mesh_nest,
)


def test_bars_that_fit_one_length_come_from_one() -> None:
    """Two bars of 1.4 m come from one length of 3 m and leave 200 mm."""
    (stock,) = cut_list([Bar("A", 6, 1400, 2)], 3000).stocks
    assert len(stock.lengths) == 1
    assert stock.waste_mm == pytest.approx(200)


def test_short_bars_fill_what_long_ones_leave() -> None:
    """2000 + 1000, twice, come from two lengths without waste, in whatever order they are named."""
    bars = [Bar("short", 6, 1000, 2), Bar("long", 6, 2000, 2)]
    (stock,) = cut_list(bars, 3000).stocks
    assert [sorted(cut.mark for cut in one.cuts) for one in stock.lengths] == [
        ["long", "short"]
    ] * 2
    assert stock.waste_mm == 0
    assert len(stock.lengths) == stock.fewest


def test_a_saw_takes_its_kerf() -> None:
    """Two bars of 1500 from 3000 need a second length once the saw takes 2 mm between them."""
    bars = [Bar("A", 6, 1500, 2)]
    assert len(cut_list(bars, 3000).stocks[0].lengths) == 1
    assert len(cut_list(bars, 3000, kerf_mm=2).stocks[0].lengths) == 2


def test_each_diameter_has_its_own_stock() -> None:
    """Bars of two diameters are never cut from one length; the thinner comes first."""
    cuts = cut_list([Bar("B", 8, 1000), Bar("A", 6, 1000)], 3000)
    assert [stock.diameter_mm for stock in cuts.stocks] == [6, 8]
    assert cuts.kg == pytest.approx(bar_kg_per_m(6) + bar_kg_per_m(8))
    assert cuts.bought_kg == pytest.approx(3 * cuts.kg)


def test_a_bar_longer_than_the_stock_is_named() -> None:
    """A bar of 3.2 m cannot come from 3 m."""
    with pytest.raises(ValueError, match="A, 3200 mm, is longer"):
        cut_list([Bar("A", 6, 3200)], 3000)


def test_no_bars_need_no_stock() -> None:
    """Without bars nothing is bought."""
    cuts = cut_list([], 3000)
    assert (cuts.stocks, cuts.kg, cuts.bought_kg) == ((), 0, 0)


def test_mesh_pieces_are_nested_and_weighed() -> None:
    """Two pieces of 1.2 × 0.6 m come from one sheet of 1.2 × 1.2 m, and weigh by their area."""
    piece = MeshPiece("M", 2.5, 50, 1200, 600, 2)
    assert mesh_nest([piece], 1200, 1200).sheets == 1
    assert piece.kg == pytest.approx(1.44 * mesh_kg_per_m2(2.5, 50))


def test_glass_fibre_weighs_a_quarter_of_steel() -> None:
    """A cubic metre of bars in resin weighs 2.0 t (from memory), of steel 7.85 t."""
    density = density_of("glass-fibre")
    bar, mesh = Bar("A", 6, 1000, kg_per_m3=density), MeshPiece("M", 2.5, 50, 1000, 1000)
    cuts = cut_list([bar], 3000)
    assert cuts.kg == pytest.approx(0.0565, rel=2e-3)  # pi 3² mm² of a metre, 2 g/cm³, by hand
    assert cuts.bought_kg == pytest.approx(3 * 0.0565, rel=2e-3)
    assert replace(mesh, kg_per_m3=density).kg == pytest.approx(mesh.kg * 2.0 / 7.85)
    assert density_of("plain") == density_of("stainless") == 7850.0
