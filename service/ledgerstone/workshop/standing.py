"""Whose each value of a profile is: the maker's, a usual one that may stand, or still invented.

A value is *yours* where it differs from the demonstration's or where the profile confirms it
(``standing = "yours"`` in its table, or ``standing = {all = "yours", hour = "invented"}``), *usual*
where it is a sensible default that may stand as it is, such as a code's factor or a board's size,
and else *invented*: the demonstration's price, hour, area, shade, reading or strength.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any, Final, Literal, get_args

from ledgerstone.workshop.lines import Path
from ledgerstone.workshop.values import nearest

Standing = Literal["yours", "usual", "invented"]
WORDS: Final[tuple[Standing, ...]] = get_args(Standing)
KEY: Final = "standing"
DEEPEST: Final = 8  # tables in one another; no record has more
# Tables whose values another maker may leave as they are; prices in them are still invented.
USUAL: Final = frozenset(
    {"shaping", "slurry", "boards", "days", "tax", "offer", "calendar", "bench", "concrete"}
    | {"handling", "loads", "steel", "lifting", "rails", "web", "bookings", "mail"}
)
# Keys of other tables that may stand, and keys of usual tables that may not.
_USUAL_KEYS: Final = frozenset(
    {"country", "region", "timezone", "currency", "language", "demonstration"}
    | {"most_percent", "carbon_most_percent", "batch_cement_kg", "matching"}
)
_OPEN_KEYS: Final = frozenset({"closures", "hands", "orders_ahead_days", "ways", "van", "base_url"})
_PRICES: Final = ("price", "smallest_order")
# Without these of the maker's own no price is an offer.
PRICED: Final = (
    *("recipe", "boards", "pigments", "finishes", "sealers", "edges", "hours", "rates", "areas"),
    *("services", "sample", "steel", "packing"),
)
# What customers are told rests on each table, for the maker.
RESTS_ON: Final[Mapping[str, str]] = MappingProxyType(
    {
        "workshop": "customers write to it, and letters are signed by it",
        "table": "it decides what is too large to cast",
        "recipe": "weight, strength and every price rest on it",
        "mixer": "it decides how many batches a pour takes",
        "slurry": "the price of filling rests on it",
        "boards": "the price of each mould rests on it",
        "palette": "customers choose from these colours",
        "pigments": "every shade and its price rest on these readings",
        "shade": "every shade rests on these readings",
        "finishes": "customers choose from these, and pay for their hours",
        "sealers": "customers choose from these, and pay for them",
        "edges": "customers pay for their hours",
        "hours": "every price and every day rests on it",
        "rates": "every price rests on it",
        "services": "templates and cover are charged by it",
        "sample": "sample tiles are charged by it",
        "areas": "it decides where you deliver, and for how much",
        "calendar": "every day that is promised rests on it",
        "web": "links in letters lead to it",
        "tent": "days in the warm rest on it",
        "handling": "it decides what you can lift and turn",
        "steel": "the price of bars and mesh rests on it",
        "packing": "the price of packing and its hours rest on it",
        "lifting": "it decides how a slab travels",
        "offer": "the least order rests on it",
        "reply": "letters end with it",
    }
)


@dataclass(frozen=True, slots=True)
class ProfileStanding:
    """How many values of a profile are the maker's, usual or still invented.

    Attributes
    ----------
    tables
        Each table that holds invented values, and how many.
    """

    yours: int = 0
    usual: int = 0
    invented: int = 0
    tables: tuple[tuple[str, int], ...] = field(default=())

    @property
    def trial(self) -> bool:
        """Whether prices, hours or areas are invented still: then nothing is an offer."""
        return any(name in PRICED for name, _ in self.tables)

    def still_invented(self, table: str) -> bool:
        """Whether a table holds invented values."""
        return any(name == table for name, _ in self.tables)


def is_demonstration(raw: Mapping[str, Any]) -> bool:
    """Whether a parsed profile says that it is the invented workshop's."""
    identity = raw.get("workshop")
    return isinstance(identity, dict) and identity.get("demonstration") is True


def standing_of_profile(raw: Mapping[str, Any], *examples: Mapping[str, Any]) -> ProfileStanding:
    """Count whose the values of a parsed profile are, beside those that new ones start with.

    A value that is the same in any of them is not the maker's by itself.
    """
    count: Counter[Standing] = Counter()
    tables: Counter[str] = Counter()
    for leaf in zip(*(_leaves(raw, example, None, ()) for example in examples), strict=True):
        path = leaf[0][0]
        word = max((word for _, word in leaf), key=WORDS.index)
        count[word] += 1
        if word == "invented":
            tables[str(path[0])] += 1
    return ProfileStanding(count["yours"], count["usual"], count["invented"], tuple(tables.items()))


def without_standing(value: Any, depth: int = 0) -> Any:  # noqa: ANN401  any part of a document
    """Return a document without the words that confirm its tables: what its records hold."""
    if depth > DEEPEST:
        return value
    if isinstance(value, dict):
        kept = {key: part for key, part in value.items() if not _is_word(key, part)}
        return {key: without_standing(part, depth + 1) for key, part in kept.items()}
    return [without_standing(one, depth + 1) for one in value] if isinstance(value, list) else value


def standing_faults(value: object, path: Path = ()) -> Iterator[tuple[Path, str]]:
    """Yield the path and the fault of each word that is none of the three."""
    if isinstance(value, list) and len(path) <= DEEPEST:
        for k, part in enumerate(value):
            yield from standing_faults(part, (*path, k))
    if not isinstance(value, dict) or len(path) > DEEPEST:
        return
    for key, part in value.items():
        if _is_word(key, part) and path and path != ("offer",):
            yield from _word_faults(part, (*path, key), tuple(k for k in value if k != key))
        else:
            yield from standing_faults(part, (*path, key))


def _word_faults(told: object, path: Path, keys: tuple[str, ...]) -> Iterator[tuple[Path, str]]:
    """Faults of a table's word, or of its words by key."""
    words = told.items() if isinstance(told, dict) else [(None, told)]
    for key, word in words:
        where = path if key is None else (*path, key)
        if key not in (None, "all", *keys):
            yield where, f"this table has no such key. {nearest(key, keys)}".strip()
        elif word not in WORDS:
            yield where, 'Write "yours", "usual" or "invented" here.'


def _is_word(key: object, value: object) -> bool:
    """Whether a key confirms its table; an offer's own ``standing`` is another thing."""
    return key == KEY and value not in ("estimate", "quotation")


def _leaves(
    mine: Mapping[str, Any], example: object, given: Standing | None, path: Path
) -> Iterator[tuple[Path, Standing]]:
    """Every value of a table by its path, with whose it is.

    Parameters
    ----------
    given
        What the tables around it say of all of their values.
    """
    told = mine.get(KEY) if _is_word(KEY, mine.get(KEY, "estimate")) else None
    words = told if isinstance(told, dict) else {}
    all_of_it = told if isinstance(told, str) else words.get("all", given)
    theirs = example if isinstance(example, Mapping) else {}
    for key, value in mine.items():
        if _is_word(key, value):
            continue
        word, at, twin = words.get(key, all_of_it), (*path, key), theirs.get(key)
        if isinstance(value, dict):
            yield from _leaves(value, twin, word, at)
        elif isinstance(value, list) and value and all(isinstance(v, dict) for v in value):
            for k, item in enumerate(value):
                yield from _leaves(item, _twin(item, k, twin), word, (*at, k))
        else:
            yield at, word or _whose(at, same=twin == value)


def _twin(item: Mapping[str, Any], k: int, items: object) -> object:
    """The like of an item in another list: the same, else of the same name, else in its place."""
    if not isinstance(items, Sequence) or item in items:
        return item if isinstance(items, Sequence) else None
    key, value = next(iter(item.items()), ("", None))
    named = [one for one in items if isinstance(one, Mapping) and one.get(key) == value]
    return named[0] if named else (items[k] if k < len(items) else None)


def _whose(path: Path, *, same: bool) -> Standing:
    if not same:
        return "yours"
    keys = [part for part in path if isinstance(part, str)]
    if any(price in keys[-1] for price in _PRICES) or any(key in _OPEN_KEYS for key in keys):
        return "invented"
    return "usual" if keys[0] in USUAL or keys[-1] in _USUAL_KEYS else "invented"
