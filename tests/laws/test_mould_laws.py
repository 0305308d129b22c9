"""Laws of the mould and the cut list: no overlap, nothing lost, stock is cuts and waste."""

import math
from collections import Counter
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.strategies import DrawFn

from ledgerstone.codec.order_in import read_order
from ledgerstone.mould import (
    CutLength,
    Nest,
    SheetPart,
    cut_lengths,
    fewest_stock,
    mould_plan,
    nest,
    runs,
)
from ledgerstone.mould.nesting import NestedPiece
from ledgerstone.shape import shape_of
from ledgerstone.steel import Bar, cut_list
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.documents import Json
from support.strategies.orders import orders, thorough, usual

WORKSHOP = load_profile(DEMONSTRATION)
SHEET, KERF = (2440.0, 1220.0), 3.0
NEARLY = 2.5e-3  # the packer counts in thousandths of a millimetre


@st.composite
def piece_lists(draw: DrawFn) -> list[SheetPart]:
    """Pieces that a sheet holds, some of them odd to a hundredth, some as large as the sheet."""
    sizes = st.tuples(
        st.floats(5, SHEET[0]) | st.integers(10, 2440) | st.just(SHEET[0]),
        st.floats(5, SHEET[1]) | st.integers(10, 1220) | st.just(SHEET[1]),
        st.integers(1, 4),
        st.booleans(),
    )
    found = draw(st.lists(sizes, max_size=25))
    pairs = [(b, a, n) if turned else (a, b, n) for a, b, n, turned in found]
    return [SheetPart(f"piece {i}", float(a), float(b), n) for i, (a, b, n) in enumerate(pairs)]


def check_nest(found: Nest, pieces: list[SheetPart], kerf_mm: float) -> None:
    """Assert that a nest holds every piece, within its sheets, a saw's kerf apart."""
    assert Counter(one.name for one in found.placed) == Counter(
        {piece.name: piece.count for piece in pieces}
    )
    for one in found.placed:
        assert 0 <= one.sheet < found.sheets
        assert one.x_mm >= 0
        assert one.y_mm >= 0
        assert one.x_mm + one.length_mm <= found.length_mm + NEARLY
        assert one.y_mm + one.width_mm <= found.width_mm + NEARLY
    for i, a in enumerate(found.placed):
        for b in found.placed[:i]:
            if a.sheet != b.sheet:
                continue
            gaps = (
                max(a.x_mm, b.x_mm) - min(a.x_mm + a.length_mm, b.x_mm + b.length_mm),
                max(a.y_mm, b.y_mm) - min(a.y_mm + a.width_mm, b.y_mm + b.width_mm),
            )
            assert max(gaps) >= kerf_mm - NEARLY, (a, b)


@given(piece_lists())
@thorough
def test_no_piece_overlaps_another_or_leaves_its_sheet(pieces: list[SheetPart]) -> None:
    """Every piece lies on a sheet, whole, at least a kerf from its neighbours."""
    found = nest(pieces, *SHEET, KERF)
    check_nest(found, pieces, KERF)
    area = sum(piece.count * piece.length_mm * piece.width_mm for piece in pieces)
    assert found.used_mm2 == pytest.approx(area)
    assert found.used_mm2 + found.waste_mm2 == pytest.approx(found.sheets * SHEET[0] * SHEET[1])
    assert found.sheets >= math.ceil(area / (SHEET[0] * SHEET[1]) - NEARLY)
    assert found.sheets <= sum(piece.count for piece in pieces)


def sawable(pieces: list[NestedPiece]) -> bool:
    """Whether cuts from side to side part all of these, each of what a cut leaves by itself."""
    if len(pieces) < 2:
        return True
    for low, size in (("x_mm", "length_mm"), ("y_mm", "width_mm")):
        order = sorted(pieces, key=lambda one: float(getattr(one, low)))
        reach = 0.0
        for n, one in enumerate(order):
            if n and getattr(one, low) >= reach - NEARLY:
                return sawable(order[:n]) and sawable(order[n:])
            reach = max(reach, getattr(one, low) + getattr(one, size))
    return False


@given(piece_lists())
@thorough
def test_every_sheet_is_cut_from_side_to_side(pieces: list[SheetPart]) -> None:
    """A panel saw, which cuts from side to side alone, parts every sheet."""
    found = nest(pieces, *SHEET, KERF)
    for sheet in range(found.sheets):
        assert sawable([one for one in found.placed if one.sheet == sheet])


def sawn(random: Random, length: float, width: float, cuts: int) -> list[tuple[float, float]]:
    """Cut a sheet at random from side to side, again and again, without kerf."""
    if cuts == 0:
        return [(length, width)]
    share, some = random.uniform(0.2, 0.8), random.randint(0, cuts - 1)
    if length < width:
        return [(a, b) for b, a in sawn(random, width, length, cuts)]
    at = round(length * share)
    return [
        *sawn(random, at, width, some),
        *sawn(random, length - at, width, cuts - 1 - some),
    ]


def test_what_was_one_sheet_takes_two_at_most() -> None:
    """Of 300 sheets cut up at random, each is nested on one sheet again or on two."""
    random, sheets = Random(20261128), Counter[int]()  # noqa: S311 - no secret
    for _ in range(300):
        sizes = sawn(random, *SHEET, random.randint(1, 20))
        sheets[nest([SheetPart("part", *size) for size in sizes], *SHEET, 0).sheets] += 1
    print(dict(sheets))
    assert set(sheets) <= {1, 2}


def test_more_pieces_than_are_nested_at_once_keep_the_law() -> None:
    """450 pieces in lots of 200 overlap no more than a few do."""
    pieces = [SheetPart(f"piece {i}", 100 + i, 60 + i % 40) for i in range(450)]
    check_nest(nest(pieces, *SHEET, KERF), pieces, KERF)


@given(st.lists(st.floats(20, 3000) | st.integers(20, 3000), max_size=40), st.floats(0, 4))
@usual
def test_cuts_and_waste_are_the_stock(lengths: list[float], kerf_mm: float) -> None:
    """Each length of stock is its cuts, their kerfs between them, and what is left of it."""
    cuts = [CutLength(f"bar {i}", float(length)) for i, length in enumerate(lengths)]
    found = cut_lengths(cuts, 3000, kerf_mm)
    assert Counter(cut for stock in found for cut in stock.cuts) == Counter(cuts)
    for stock in found:
        assert stock.cuts
        total = sum(cut.length_mm for cut in stock.cuts)
        assert total + stock.waste_mm == pytest.approx(3000)
        assert stock.waste_mm >= kerf_mm * (len(stock.cuts) - 1) - NEARLY
    assert len(found) >= fewest_stock(cuts, 3000)


@given(st.lists(st.integers(50, 3000), min_size=1, max_size=40))
@usual
def test_no_two_lengths_are_half_empty(lengths: list[int]) -> None:
    """First fit, longest first, leaves at most one length less than half used.

    Two such lengths would have been one: what is in the second would have gone into the first.
    """
    found = cut_lengths([CutLength("bar", float(length)) for length in lengths], 3000, 0)
    half_empty = [stock for stock in found if stock.waste_mm > 1500]
    assert len(half_empty) <= 1


@given(
    st.lists(
        st.builds(
            Bar, st.just("A"), st.sampled_from((4, 6, 8)), st.integers(50, 2900), st.integers(1, 5)
        ),
        max_size=10,
    )
)
@usual
def test_steel_in_the_slabs_and_waste_are_what_is_bought(bars: list[Bar]) -> None:
    """Mass bought is the mass of the bars and of the waste, diameter by diameter."""
    found = cut_list(bars, 3000, kerf_mm=1)
    waste_kg = sum(
        stock.bought_kg * stock.waste_mm / (3000 * len(stock.lengths)) for stock in found.stocks
    )
    assert found.kg + waste_kg == pytest.approx(found.bought_kg)
    assert found.kg == pytest.approx(sum(bar.kg for bar in bars))


@given(orders())
@thorough
def test_the_moulds_of_any_order_lie_on_their_sheets(document: Json) -> None:
    """Whatever is asked for, its boards and foam nest, and straight and bent sides go all round."""
    order = read_order(document, WORKSHOP)
    shapes = [shape_of(slab, WORKSHOP) for slab in order.slabs]
    plan = mould_plan(order, shapes, WORKSHOP)
    for found in (plan.boards, plan.foam):
        if len(found.placed) <= 200:
            names = Counter((p.name, p.sheet, p.x_mm, p.y_mm) for p in found.placed)
            assert max(names.values(), default=1) == 1
        for one in found.placed:
            assert one.x_mm + one.length_mm <= found.length_mm + NEARLY
            assert one.y_mm + one.width_mm <= found.width_mm + NEARLY
    for shape in shapes:
        round_it = sum(run.straight_mm + run.arc_mm for run in runs(shape))
        assert round_it == pytest.approx(sum(s.length_mm for s in shape.sides), rel=0.002, abs=0.5)
