"""The orders that a recording holds: everyday, awkward, aimed at each check, and not understood."""

from collections.abc import Iterator
from typing import Any, Final

from hypothesis import HealthCheck, Phase, given, seed, settings
from hypothesis import strategies as st

from support.bad_input_table import ROWS
from support.documents import Json
from support.strategies.awkward_orders import AWKWARD
from support.strategies.orders import aimed_orders, modest_orders, orders
from support.strategies.tripping_orders import TRIPS

RecordedOrder = dict[str, Any]

EVERYDAY, ANY, BODIES = 240, 60, 60
_AIMED_EACH: Final = 2
_LARGEST_BODY = 4000


def cases() -> list[RecordedOrder]:
    """Return what is sent, each with a name, a workshop and an order or a body."""
    return [
        *({"name": f"check {n}", "workshop": w, "order": o} for n, (w, o) in TRIPS.items()),
        *({"name": f"awkward {n}", "workshop": "usual", "order": o} for n, o in AWKWARD.items()),
        *_named("everyday", drawn(modest_orders(), EVERYDAY)),
        *_named("any", drawn(orders(), ANY)),
        *_aimed(),
        *_bodies(),
    ]


def drawn(drawn_from: st.SearchStrategy[Json], count: int) -> list[Json]:
    """Draw ``count`` orders, no two with the same outlines."""
    found: dict[str, Json] = {}

    @seed(16)
    @settings(
        max_examples=8 * count,
        deadline=None,
        database=None,
        phases=[Phase.generate],
        suppress_health_check=list(HealthCheck),
    )
    @given(drawn_from)
    def draw(order: Json) -> None:
        found.setdefault(repr([slab["outline"] for slab in order["slabs"]]), order)

    draw()
    return list(found.values())[:count]


def _named(kind: str, found: list[Json]) -> Iterator[RecordedOrder]:
    for number, order in enumerate(found):
        yield {"name": f"{kind} {number}", "workshop": "usual", "order": order}


def _aimed() -> Iterator[RecordedOrder]:
    for check, (workshop, _) in TRIPS.items():
        for number, order in enumerate(drawn(aimed_orders(check), _AIMED_EACH)):
            yield {"name": f"aimed {check} {number}", "workshop": workshop, "order": order}


def _bodies() -> Iterator[RecordedOrder]:
    plain = [bad for bad in ROWS if len(bad.body) <= _LARGEST_BODY and bad.body.isascii()]
    for bad in plain[:BODIES]:
        yield {"name": f"body {bad.name}", "workshop": "usual", "body": bad.body.decode("ascii")}
