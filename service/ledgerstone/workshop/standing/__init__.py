"""The standing of each value of a profile: the maker's own, a usual default, or invented.

A value is *yours* where it differs from the demonstration's or where the profile confirms it
(``standing = "yours"`` in its table, or ``standing = {all = "yours", hour = "invented"}``), *usual*
where it is a sensible default that may stand as it is, such as a code's factor or a board's size,
and else *invented*: the demonstration's price, hour, area, shade, reading or strength.
In ``[offer]``, where ``standing`` says what a price is, the key that confirms is ``whose``.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from decimal import Decimal
from typing import Any, Final, Literal, get_args

from ledgerstone.json_types import JSON, KeyPath, value_at
from ledgerstone.message import Message
from ledgerstone.workshop.keys.measures import canonical
from ledgerstone.workshop.keys.values import nearest
from ledgerstone.workshop.standing.usual_values import (
    LIFTERS,
    TAX_RATE,
    USUAL_IN_TRADE,
    USUAL_PLACES,
    WAYS,
    is_small_price,
    is_unused,
    promises_nothing,
)

ValueStanding = Literal["yours", "usual", "invented"]
VALUE_STANDINGS: Final[tuple[ValueStanding, ...]] = get_args(ValueStanding)
_KEY: Final = "standing"
_OFFERS_KEY: Final = "whose"
KEYS: Final = frozenset({_KEY, _OFFERS_KEY})
_ROUNDED: Final = Decimal("0.0006")  # a file starts with four digits in another unit
MAX_TABLE_DEPTH: Final = 8  # tables in one another; no record has more
# Tables whose values another maker may leave as they are; prices in them are still invented.
USUAL_TABLES: Final = frozenset(
    {"shaping", "slurry", "boards", "days", "tax", "offer", "calendar", "bench", "concrete"}
    | {"handling", "loads", "steel", "lifting", "rails", "web", "bookings", "mail"}
)
# Keys of other tables that may stand, and keys of usual tables that may not.
_USUAL_KEYS: Final = frozenset(
    {"country", "timezone", "currency", "language", "also_in", "demonstration"}
    | {"density_kg_per_m3", "solids_percent", "absorption_percent", "air_percent"}
    | {"role", "cement_class", "water_cement_ratio", "profile", "surface", "grits"}
    | {"smallest_mm", "largest_mm"}
    | {"most_percent", "carbon_most_percent", "batch_cement_kg", "matching"}
    | {"signature", "who", "reached", "says"}
    # Shares that are lost or done twice, and packs as they are sold; common practice, no source.
    | {"recast_percent", "recast_percent_per_m2", "offcuts_percent", "waste_percent", "packs"}
    | {"moisture_percent", "pack_kg", "cement_pack_kg", "kg_per_piece", "kg", "pieces"}
)
LIFTS: Final = ("most_kg",)  # of a way, what another workshop may not have
FIRST_LIFT: Final = (*WAYS, 0, LIFTS[0])
WARMTH_PATH: Final = ("handling", "workshop_c")
_OPEN_KEYS: Final = frozenset(
    {"closures", "hands", "orders_ahead_days", "base_url"}
    | {"van", WAYS[1], LIFTERS[1], WARMTH_PATH[1]}
)
_PRICES: Final = ("price", "smallest_order", "fitted")
# In tables that may stand, what a workshop has or offers: its surfaces, and the steel on its rack.
OFFERED: Final = frozenset(
    {
        ("finishes", "surface"),
        *(("steel", key) for key in ("material", "bar_mm", "mesh_wire_mm", "mesh_pitch_mm")),
    }
)
# Without these of the maker's own no price is an offer.
PRICED_TABLES: Final = (
    *("recipe", "boards", "finishes", "sealers", "edges", "hours", "rates", "areas"),
    *("services", "sample", "steel", "packing", "rails", "palette"),
)
# Days rest on these, and on no other value of their tables that nobody gave.
_DAYS: Final = frozenset(
    {WARMTH_PATH, *(("calendar", key) for key in ("hands", "orders_ahead_days", "closures"))}
)
# Of every other table its prices and hours alone, as of a pigment, whose readings are no price.
_PRICED_ANYWHERE: Final = (*_PRICES, "extra_per", "hours", "minutes_per")


@dataclass(frozen=True, slots=True)
class ProfileStanding:
    """How many values of a profile are the maker's, usual or still invented.

    Attributes
    ----------
    tables
        Each table that holds invented values, and how many.
    priced
        Of those, each on whose invented values a price, a day, an area or a shade rests.
    """

    yours: int = 0
    usual: int = 0
    invented: int = 0
    tables: tuple[tuple[str, int], ...] = field(default=())
    priced: tuple[str, ...] = field(default=())

    @property
    def trial(self) -> bool:
        """Whether a price, a day or an area rests on invented values: then nothing is an offer."""
        return bool(self.priced)

    def still_invented(self, table: str) -> bool:
        """Return whether a table holds invented values."""
        return any(name == table for name, _ in self.tables)


def is_demonstration(raw: Mapping[str, Any]) -> bool:
    """Return whether a parsed profile is the demonstration workshop's."""
    identity = raw.get("workshop")
    return isinstance(identity, dict) and identity.get("demonstration") is True


def standing_of_profile(raw: Mapping[str, Any], *examples: Mapping[str, Any]) -> ProfileStanding:
    """Count whose the values of a parsed profile are, beside those that new ones start with.

    A value that is the same in any of them is not the maker's by itself.
    """
    return standing_of_values(standings(raw, *examples))


def standing_of_values(found: Mapping[KeyPath, ValueStanding]) -> ProfileStanding:
    """Return the standing of a profile from whose each of its values is."""
    count = Counter(found.values())
    invented = [path for path, word in found.items() if word == "invented"]
    tables = Counter(str(path[0]) for path in invented)
    priced = dict.fromkeys(str(path[0]) for path in invented if is_priced(path))
    return ProfileStanding(
        count["yours"], count["usual"], count["invented"], tuple(tables.items()), tuple(priced)
    )


def is_priced(path: KeyPath) -> bool:
    """Whether a price, day, area, shade or lift rests on a value, so that all is a trial first."""
    return (
        path[0] in PRICED_TABLES
        or path[:2] in _DAYS
        or path in (LIFTERS, TAX_RATE)
        or (path[:2] == WAYS and path[-1] in LIFTS)
        or any(part in str(path[-1]) for part in _PRICED_ANYWHERE)
    )


def standings(raw: Mapping[str, Any], *examples: Mapping[str, Any]) -> dict[KeyPath, ValueStanding]:
    """Return whose each value of a parsed profile is, by its path."""
    found = standings_alone(raw, *examples)
    return found | _lifted_so(found)


def standings_alone(
    raw: Mapping[str, Any], *examples: Mapping[str, Any]
) -> dict[KeyPath, ValueStanding]:
    """Return whose each value is by itself, also where it follows from another one."""
    leaves = zip(*(_leaves(raw, example, None, ()) for example in examples), strict=True)
    found: dict[KeyPath, ValueStanding] = {}
    is_at_home = _currency(raw) in map(_currency, examples)
    for leaf in leaves:
        path, own, _ = leaf[0]
        whose = max((word for _, _, word in leaf), key=VALUE_STANDINGS.index)
        may_stand = is_unused(path, raw) or (is_at_home and is_small_price(path, raw))
        if promises_nothing(path, value_at(raw, path)):
            found[path] = own or "usual"  # other than in an example, whoever left it so
        else:
            found[path] = own or ("usual" if whose == "invented" and may_stand else whose)
    return found


def _lifted_so(found: Mapping[KeyPath, ValueStanding]) -> dict[KeyPath, ValueStanding]:
    """What other ways take follows from the first's, which the maker is asked for."""
    if found.get(FIRST_LIFT) != "yours":
        return {}
    lifts = (path for path in found if path[:2] == WAYS and path[-1] in LIFTS)
    return {path: "yours" for path in lifts if found[path] == "invented"}


def _currency(raw: Mapping[str, Any]) -> object:
    identity = raw.get("workshop")
    return identity.get("currency") if isinstance(identity, Mapping) else None


def key_of(table: KeyPath) -> str:
    """Return the key that confirms a table; in ``[offer]``, ``standing`` has another meaning."""
    return _OFFERS_KEY if table == ("offer",) else _KEY


def without_standing(value: JSON, path: KeyPath = ()) -> JSON:
    """Return a document without the words that confirm its tables: what its records hold."""
    if len(path) > MAX_TABLE_DEPTH:
        return value
    if isinstance(value, dict):
        kept = {key: part for key, part in value.items() if key != key_of(path)}
        return {key: without_standing(part, (*path, key)) for key, part in kept.items()}
    if isinstance(value, list):
        return [without_standing(item, (*path, k)) for k, item in enumerate(value)]
    return value


def standing_faults(value: object, path: KeyPath = ()) -> Iterator[tuple[KeyPath, Message]]:
    """Yield the path and the fault of each word that is none of the three."""
    if isinstance(value, list) and len(path) <= MAX_TABLE_DEPTH:
        for k, part in enumerate(value):
            yield from standing_faults(part, (*path, k))
    if not isinstance(value, dict) or len(path) > MAX_TABLE_DEPTH:
        return
    for key, part in value.items():
        if path and key == key_of(path):
            yield from _word_faults(part, (*path, key), tuple(k for k in value if k != key))
        else:
            yield from standing_faults(part, (*path, key))


def _word_faults(
    written: object, path: KeyPath, keys: tuple[str, ...]
) -> Iterator[tuple[KeyPath, Message]]:
    """Faults of a table's word, or of its words by key."""
    words = written.items() if isinstance(written, dict) else [(None, written)]
    for key, word in words:
        where = path if key is None else (*path, key)
        if key not in (None, "all", *keys):
            yield where, Message("fault-no-word", **nearest(key, keys))
        elif word not in VALUE_STANDINGS:
            yield where, Message("fault-standing-word")


def _leaves(
    mine: Mapping[str, Any], example: object, given: ValueStanding | None, path: KeyPath
) -> Iterator[tuple[KeyPath, ValueStanding | None, ValueStanding]]:
    """Every value of a table by its path, with whose the file says that it is, and whose it seems.

    Parameters
    ----------
    given
        What the tables around it say of all of their values.
    """
    written = mine.get(key_of(path))
    words = written if isinstance(written, dict) else {}
    all_of_it = written if isinstance(written, str) else words.get("all", given)
    theirs = example if isinstance(example, Mapping) else {}
    for key, value in mine.items():
        if key == key_of(path):
            continue
        word, at, twin = words.get(key, all_of_it), (*path, key), theirs.get(key)
        if isinstance(value, dict):
            yield from _leaves(value, twin, word, at)
        elif isinstance(value, list) and value and all(isinstance(v, dict) for v in value):
            for k, item in enumerate(value):
                yield from _leaves(item, _twin(item, k, twin), word, (*at, k))
        else:
            yield at, word, _whose(at, same=_alike(value, twin, key))


def _twin(item: Mapping[str, Any], k: int, items: object) -> object:
    """The like of an item in another list: the same, else of the same name, else in its place."""
    if not isinstance(items, Sequence) or item in items:
        return item if isinstance(items, Sequence) else None
    key, value = next(iter(item.items()), ("", None))
    named = [item for item in items if isinstance(item, Mapping) and item.get(key) == value]
    return named[0] if named else (items[k] if k < len(items) else None)


def _alike(mine: object, theirs: object, key: str) -> bool:
    """Whether two values are the same, also where only one is written with its unit."""
    if isinstance(mine, list) and isinstance(theirs, list) and len(mine) == len(theirs):
        return all(_alike(a, b, key) for a, b in zip(mine, theirs, strict=True))
    if isinstance(mine, str) and isinstance(theirs, str):
        return mine.replace("ß", "ss") == theirs.replace("ß", "ss")  # as Swiss files begin
    if mine == theirs or not (isinstance(mine, str) ^ isinstance(theirs, str)):
        return mine == theirs
    a, b = (canonical(side, key) for side in (mine, theirs))
    return a is not None and b is not None and abs(a - b) <= _ROUNDED * abs(a)


def _whose(path: KeyPath, *, same: bool) -> ValueStanding:
    if not same:
        return "yours"
    keys = _keys(path)
    if keys in USUAL_PLACES or keys in USUAL_IN_TRADE:
        return "usual"
    if (
        path == TAX_RATE
        or keys in OFFERED
        or any(price in keys[-1] for price in _PRICES)
        or any(key in _OPEN_KEYS for key in keys)
    ):
        return "invented"
    return "usual" if keys[0] in USUAL_TABLES or keys[-1] in _USUAL_KEYS else "invented"


def _keys(path: KeyPath) -> tuple[str, ...]:
    """A path without the numbers of its items."""
    return tuple(part for part in path if isinstance(part, str))
