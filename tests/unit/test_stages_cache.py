"""What orders of one workshop share: each slab's results, by the slab alone."""

from collections.abc import Callable, Hashable, Iterator
from copy import deepcopy
from dataclasses import fields, is_dataclass, replace
from datetime import date
from decimal import Decimal
from typing import Any, TypeVar, cast, get_type_hints

import numpy as np
import pytest

from ledgerstone.codec.order_in import read_order
from ledgerstone.order import Edge, Shade
from ledgerstone.quote import quote
from ledgerstone.remedies.laid_out import placed
from ledgerstone.remedies.placeable import Obstacle
from ledgerstone.stages import StageCache, StageContext, plan
from ledgerstone.stages.cache import BoundedStore
from ledgerstone.stages.keys import SlabKey
from ledgerstone.stages.placement import Freedom, LayoutKey, Placement
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records.members import members_of
from support.documents import Json
from support.everyday import EVERYDAY

TODAY = date(2026, 11, 25)
BEVEL = {"profile": "bevel", "size": "5 mm"}
K = TypeVar("K", bound=Hashable)
V = TypeVar("V")


class _CountingStore(BoundedStore[K, V]):
    """A store that counts what it has computed."""

    computed = 0

    def get_or_compute(self, key: K, compute: Callable[[], V]) -> V:
        """Count what was not kept."""

        def counted() -> V:
            self.computed += 1
            return compute()

        return super().get_or_compute(key, counted)


def test_an_order_with_one_slab_changed_works_out_that_slab_alone(workshop: Workshop) -> None:
    """Of three slabs the other two are taken from the order before, whatever else is changed."""
    cache = StageCache()
    stores = [_CountingStore[Any, Any](32) for _ in range(4)]
    results = cache.results
    results.shapes, results.handling, results.in_place, results.steel = stores
    slabs = [order["slabs"][0] for order in list(EVERYDAY.values())[:3]]

    def computed_for(*slabs: Json, **more: object) -> list[int]:
        before = [store.computed for store in stores]
        order = read_order({"slabs": list(slabs), **more}, workshop)
        quote(order, StageContext(workshop, (), TODAY, cache))
        return [store.computed - b for store, b in zip(stores, before, strict=True)]

    assert computed_for(*slabs) == [3, 3, 3, 3]
    assert computed_for(*slabs) == [0, 0, 0, 0]
    assert computed_for(*slabs, delivery={"kind": "pallet", "postcode": "HR0 7XX"}) == [0, 0, 0, 0]
    thicker = {**slabs[1], "thickness": "50 mm"}
    assert computed_for(slabs[0], thicker, slabs[2]) == [1, 1, 1, 1]
    assert computed_for(*slabs, {**slabs[0], "label": "again", "quantity": 2}) == [0, 0, 0, 0]
    polished = {**slabs[1], "finish": {"surface": "polished", "sealer": "matt"}}
    assert computed_for(slabs[0], polished, slabs[2]) == [0, 0, 0, 1]
    bevelled = {**slabs[1], "edges": {"front": BEVEL}}
    assert computed_for(slabs[0], bevelled, slabs[2]) == [1, 1, 0, 1]


def test_where_openings_find_room_is_worked_out_once(workshop: Workshop) -> None:
    """For one slab and one joint that they keep off; another joint, or freedom, has its own."""
    cache = StageCache()
    cache.results.layouts = store = _CountingStore[LayoutKey, Placement | None](32)
    context, both_ways = StageContext(workshop, (), TODAY, cache), ((1.0, 0.0), (-1.0, 0.0))
    planned = plan(read_order(EVERYDAY["hob"], workshop), context)

    def computed_for(freedom: Freedom, joint_mm: float | None = None) -> int:
        before = store.computed
        joint = None
        if joint_mm is not None:
            ring = np.array([(joint_mm + x, y) for x in (0.0, 2.0) for y in (-1e5, 1e5)])
            joint = Obstacle(ring, both_ways)
        list(placed("move", 0, planned, context, freedom, keeps_off=joint))
        return store.computed - before

    moves, shrinks = Freedom(frozenset((0,))), Freedom(frozenset((0,)), frozenset((0,)))
    asked = ((moves,), (moves, 300.0), (moves, 300.0), (moves, 305.0), (shrinks, 300.0))
    assert [computed_for(*each) for each in asked] == [1, 1, 0, 1, 1]


@pytest.fixture(scope="module")
def known(workshop: Workshop) -> dict[str, StageCache]:
    """What is kept of two orders, not to be changed."""
    caches = {name: StageCache() for name in ("vanity", "hob")}
    for name, cache in caches.items():
        order = read_order({"slabs": [EVERYDAY[name]["slabs"][0]]}, workshop)
        quote(order, StageContext(workshop, (), TODAY, cache))
    return caches


@pytest.mark.parametrize("name", ["vanity", "hob"])
@pytest.mark.parametrize(
    "change",
    [
        {"finish": {"surface": "polished", "sealer": "matt"}},
        {"edges": {"front": BEVEL, "left": {"profile": "wall"}}},
        {"edges": {"front": {"profile": "square", "drop": {"depth": "60 mm"}}}},
        {"shade": {"name": "chalk"}},
        {"label": "again", "quantity": 2},
        {"place": "outdoors"},
        {"rests": {"kind": "full"}},
    ],
    ids="-".join,
)
def test_what_is_kept_of_another_order_changes_no_answer(
    workshop: Workshop, known: dict[str, StageCache], name: str, change: Json
) -> None:
    """An order that differs in one thing from one before it is answered as if it were the first."""
    order = read_order({"slabs": [{**EVERYDAY[name]["slabs"][0], **change}]}, workshop)

    def answered(cache: StageCache) -> str:
        return repr(quote(order, StageContext(workshop, (), TODAY, cache)))

    assert answered(deepcopy(known[name])) == answered(StageCache())


def test_a_maker_s_name_and_days_keep_what_was_worked_out(workshop: Workshop) -> None:
    """What is known of a slab serves the profile with them changed, and changes no answer of it."""
    slab = EVERYDAY["vanity"]["slabs"][0]
    named = replace(workshop.workshop, name="Another Casting")
    changed = replace(
        workshop,
        workshop=named,
        calendar=replace(workshop.calendar, hands=workshop.calendar.hands + 1),
    )
    cache = StageCache()

    def answered(profile: Workshop, cache: StageCache) -> str:
        order = read_order({"slabs": [slab]}, profile)
        return repr(quote(order, StageContext(profile, (), TODAY, cache)))

    answered(workshop, cache)
    cache.use_for(workshop)
    known = cache.results
    assert answered(changed, cache) == answered(changed, StageCache())
    cache.use_for(changed)
    assert cache.results is known


def dearer(part: V) -> V:
    """The same part of a profile, its money and its hours half as much again."""
    other: Any = part
    if isinstance(part, tuple):
        other = tuple(map(dearer, part))
    elif isinstance(part, Decimal):
        other = part * Decimal("1.5")
    elif is_dataclass(part) and not isinstance(part, type):
        held = {each.name: getattr(part, each.name) for each in fields(part)}
        more = {
            name: value * 1.5 if name.startswith("hours") else dearer(value)
            for name, value in held.items()
        }
        other = replace(part, **more)
    return cast("V", other)


@pytest.mark.parametrize("name", ["vanity", "hob"])
def test_prices_and_hours_keep_what_was_worked_out(workshop: Workshop, name: str) -> None:
    """Every one of them: the answer has its own, what a way of lifting takes among them."""
    slab = EVERYDAY[name]["slabs"][0]
    tables = ("recipe", "boards", "pigments", "palette", "finishes", "sealers", "edges", "slurry")
    more = (*tables, "handling", "steel", "packing", "lifting", "rails", "shade", "tent", "rates")
    changed = replace(workshop, **{each: dearer(getattr(workshop, each)) for each in more})
    cache = StageCache()

    def answered(profile: Workshop, cache: StageCache) -> str:
        order = read_order({"slabs": [slab]}, profile)
        return repr(quote(order, StageContext(profile, (), TODAY, cache)))

    was = answered(workshop, cache)
    known = cache.results
    assert answered(changed, cache) == answered(changed, StageCache()) != was
    assert cache.results is known
    thick = replace(workshop, loads=replace(workshop.loads, point_n=workshop.loads.point_n + 1))
    cache.use_for(thick)
    assert cache.results is not known


def test_a_decimal_of_a_profile_is_money() -> None:
    """Or a percentage of it: so no result of a stage depends on one."""
    kinds = {
        f"{record.__name__}.{member.name}": member.kind
        for record in every_record(Workshop)
        for member in members_of(record)
        if get_type_hints(record)[member.name] in {Decimal, Decimal | None}
    }
    assert kinds
    assert {name for name, kind in kinds.items() if kind != "money"} == set()


def every_record(record: type) -> Iterator[type]:
    """A record of the profile, and every one within it."""
    yield record
    for member in members_of(record):
        if member.inner is not None:
            yield from every_record(member.inner)


def test_two_profiles_that_take_turns_are_each_worked_out_once(workshop: Workshop) -> None:
    """As it was and as it is changed; a third leaves only the one before it."""
    slab = EVERYDAY["vanity"]["slabs"][0]
    weaker, weakest = (
        replace(workshop, recipe=replace(workshop.recipe, fck_mpa=workshop.recipe.fck_mpa - less))
        for less in (5.0, 8.0)
    )
    cache = StageCache()

    def works_out(profile: Workshop) -> bool:
        """Quote by a profile; whether anything was worked out that was not known."""
        cache.use_for(profile)
        known = {
            id(store): list(store._kept.items())
            for store in (cache.results.in_place, cache.results.handling)
        }
        order = read_order({"slabs": [slab]}, profile)
        kept = repr(quote(order, StageContext(profile, (), TODAY, cache)))
        assert kept == repr(quote(order, StageContext(profile, (), TODAY)))
        stores = (cache.results.in_place, cache.results.handling)
        return known != {id(store): list(store._kept.items()) for store in stores}

    turns = (workshop, weaker, workshop, weaker, weakest, weaker, workshop)
    assert [works_out(one) for one in turns] == [True, True, False, False, True, False, True]


def test_a_slab_s_key_is_what_it_is(workshop: Workshop) -> None:
    """The same document has the same key; another size, side, or way to say a length another."""
    document = {"slabs": [next(iter(EVERYDAY.values()))["slabs"][0]]}
    (slab,), (again,) = (read_order(document, workshop).slabs for _ in range(2))
    assert SlabKey.of(slab) == SlabKey.of(again)
    assert hash(SlabKey.of(slab)) == hash(SlabKey.of(again))
    said = replace(slab.thickness, origin="text" if slab.thickness.origin != "text" else "number")
    others = [
        replace(slab, thickness=slab.thickness.in_unit(slab.thickness.mm + 1)),
        replace(slab, thickness=said),
        replace(slab, edges={**slab.edges, "left": Edge("bevel")}),
        replace(slab, place="outdoors" if slab.place != "outdoors" else "indoors"),
    ]
    keys = {SlabKey.without_appearance(one) for one in (slab, *others)}
    assert len(keys) == 1 + len(others)


def test_a_slab_s_key_leaves_out_what_does_not_bear(workshop: Workshop) -> None:
    """Its name and number are in the whole key alone, and its looks not in that of its plan."""
    (slab,) = read_order({"slabs": [next(iter(EVERYDAY.values()))["slabs"][0]]}, workshop).slabs
    renamed = replace(slab, label="another", quantity=slab.quantity + 1)
    assert SlabKey.of(renamed) != SlabKey.of(slab)
    assert SlabKey.of_one_piece(renamed) == SlabKey.of_one_piece(slab)
    dyed = replace(renamed, shade=Shade("another"))
    assert SlabKey.of_one_piece(dyed) != SlabKey.of_one_piece(slab)
    assert SlabKey.without_appearance(dyed) == SlabKey.without_appearance(slab)
