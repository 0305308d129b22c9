"""Laws of a slab's strength: every order has an answer, and thicker is never weaker by itself."""

import json
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ledgerstone.codec.order_in import read_order
from ledgerstone.quote import Quote, SentBack, quote
from ledgerstone.stages import StageContext
from ledgerstone.strength.slabs import SlabStrength
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, slab_json, stages_of
from support.strategies.awkward_orders import AWKWARD
from support.strategies.orders import TODAY, brief, modest_orders, orders, usual


def _answered(document: Json, workshop: Workshop) -> Quote | SentBack:
    order = read_order(document, workshop)
    return quote(order, StageContext(workshop, None, TODAY))


def _has_sound_numbers(answer: Quote | SentBack) -> bool:
    """No finding measures a number that JSON could not write."""
    numbers = [
        value for f in answer.findings for value in (*f.measured.values(), *f.limit.values())
    ]
    json.dumps([f.where_mm for f in answer.findings], allow_nan=False)
    return all(math.isfinite(value) for value in numbers if isinstance(value, float))


@pytest.mark.parametrize("name", AWKWARD)
def test_every_awkward_order_is_answered(name: str, workshop: Workshop) -> None:
    """At the edges of what the code expects there is a quote or findings, never a fault."""
    assert _has_sound_numbers(_answered(AWKWARD[name], workshop))


@given(document=modest_orders())
@usual
def test_every_makeable_looking_order_is_answered(document: Json, workshop: Workshop) -> None:
    """Random orders of usual sizes: a quote or findings, and the findings' numbers are finite."""
    answer = _answered(document, workshop)
    assert _has_sound_numbers(answer)
    if isinstance(answer, Quote):
        assert all(used.handled.verdicts for used in answer.strength)


@given(document=orders())
@usual
def test_every_order_of_the_contract_is_answered(document: Json, workshop: Workshop) -> None:
    """Random orders of every kind: a quote or findings, never a fault."""
    assert _has_sound_numbers(_answered(document, workshop))


def _strength(workshop: Workshop, length: int, width: int, thickness: int) -> SlabStrength:
    rests = {"kind": "ends", "depth": 40}
    slab = slab_json(box(length, width), thickness=thickness, rests=rests)
    return stages_of(read_order({"slabs": [slab]}, workshop), workshop, TODAY).strength[0]


@given(
    length=st.integers(500, 2400),
    width=st.integers(200, 800),
    thickness=st.integers(25, 50),
    more=st.integers(2, 30),
)
@brief
def test_a_thicker_slab_is_used_less_by_its_own_weight(
    length: int, width: int, thickness: int, more: int, workshop: Workshop
) -> None:
    """On paper: stress of own weight goes with ``1/h``, what is trusted with ``1.6 - h/1000``.

    So utilisation goes with ``1 / h (1.6 - h/1000)``, which falls for all h under 800 mm; and a
    slab on level rests lies on the same ones whatever it weighs. The larger disc over which a
    thicker slab's stress is averaged never finds more than the smaller, to 1 % of the mesh.
    """
    thin, thick = (_strength(workshop, length, width, h) for h in (thickness, thickness + more))
    used = [one.in_place.verdicts[0] for one in (thin, thick)]
    assert [one.case for one in used] == ["own-weight", "own-weight"]
    assert used[1].utilisation <= used[0].utilisation * 1.01 + 0.001
