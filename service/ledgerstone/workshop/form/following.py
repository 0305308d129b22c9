"""Values of a profile that follow from another one that is typed, while nobody gave their own.

What other ways of moving a slab take follows from the first one's, in the proportion that they
started in; what its steel yields at, from its material; what a bag makes and its water, from its
weight. The colour of a shade that is changed is no longer one that was read, and of a sealer that
is another one customers read what holds of its kind.
"""

from __future__ import annotations

from collections.abc import Callable, Collection
from decimal import Decimal
from typing import Final

from ledgerstone.errors import ProfileError
from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.countries import RegionalSettings
from ledgerstone.workshop.entry.as_toml import toml_text
from ledgerstone.workshop.form.bags import MAKES, WATER, WEIGHT
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.keys.measures import canonical
from ledgerstone.workshop.keys.numerals import in_proportion
from ledgerstone.workshop.reading.loader import starting_tables
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records.members import member_at
from ledgerstone.workshop.standing import FIRST_LIFT, LIFTS, standings_alone
from ledgerstone.workshop.standing.usual_values import WAYS

MATERIAL: Final[KeyPath] = ("steel", "material")
YIELD: Final[KeyPath] = ("steel", "yield_mpa")
# Reinforcement as it is sold: BS 4449 and DIN 488 B500, BS 6744 grade 500; ASTM A615 grade 60, ASTM
# A955 grade 75. What glass fibre reaches its maker alone can say.
_YIELDS: Final = {"plain": "500", "stainless": "500"}
_AMERICAN_YIELDS: Final = {"plain": '"60 ksi"', "stainless": '"75 ksi"'}
_ANOTHER_SEALER: Final = ("name", "kind")
_STEP: Final = 5  # in the file's unit, kg or lb: as people say weights
_LOOKED_AT: Final = ("colour", "cement", "pigment", "percent")  # what an instrument's reading is of


def put_with_followers(
    draft: ProfileDraft,
    path: KeyPath,
    toml: str,
    place: RegionalSettings,
    given: Collection[KeyPath] = (),
    *,
    line_of: Callable[[str], str] | None = None,
) -> dict[KeyPath, str]:
    """Write a value, and those that follow from it; return each of these as it is written.

    Parameters
    ----------
    place
        The units that the workshop works in.
    given
        What the maker gave before: none of it follows.
    line_of
        What customers read of a sealer of a kind that nobody described.
    """
    is_sealer = path[0] == "sealers" and path[-1] in _ANOTHER_SEALER
    is_shade = path[0] == "palette" and path[-1] in _LOOKED_AT
    is_lead = is_sealer or is_shade or path in (FIRST_LIFT, MATERIAL, WEIGHT)
    before = draft.written(path) if is_lead else ""
    draft.put(path, toml)
    following: dict[KeyPath, str] = {}
    if path == FIRST_LIFT:
        following = _lifts(draft, before, toml)
    elif path == WEIGHT:
        following = _of_a_bag(draft, before, toml)
    elif path == MATERIAL:
        following = _yield(draft, before, place)
    elif is_shade and toml != before:
        following = _by_eye(draft, path)
    elif is_sealer and toml != before and line_of is not None:
        following = _line(draft, path, line_of)
    following = {each: now for each, now in following.items() if each not in given}
    for each, now in following.items():
        draft.put(each, now)
    return following


def _lifts(draft: ProfileDraft, before: str, now: str) -> dict[KeyPath, str]:
    """What other ways take that nobody gave, in proportion."""
    draft.settle()
    factor = _factor(before, now, LIFTS[0])
    try:
        found = standings_alone(tables(draft.text), *starting_tables())
    except ProfileError:
        return {}
    if factor is None:
        return {}
    others = [path for path, word in found.items() if _is_lift(path) and word != "yours"]
    return {path: in_proportion(draft.written(path), factor, _as_said) for path in others}


def _of_a_bag(draft: ProfileDraft, before: str, now: str) -> dict[KeyPath, str]:
    """What a bag makes and its water, in proportion to its weight."""
    factor = _factor(before, now, str(WEIGHT[-1]))
    if factor is None:
        return {}
    return {
        path: in_proportion(draft.written(path), factor, _to_two_digits) for path in (MAKES, WATER)
    }


def _factor(before: str, now: str, key: str) -> Decimal | None:
    """How many times as much there is now as TOML had before at a key; None if that is unknown."""
    was, given = (canonical(_toml_value(each), key) for each in (before, now))
    return given / was if was and given and given > 0 else None


def _to_two_digits(amount: Decimal) -> Decimal:
    return round(amount, 1 - amount.adjusted())


def _by_eye(draft: ProfileDraft, path: KeyPath) -> dict[KeyPath, str]:
    """A shade that was read and is changed is one that is judged by eye, until it is read again."""
    by_eye: KeyPath = (*path[:2], "by_eye")
    return {by_eye: "true"} if draft.written(by_eye) == "false" else {}


def _line(draft: ProfileDraft, path: KeyPath, line_of: Callable[[str], str]) -> dict[KeyPath, str]:
    """What customers read of a sealer, where that was said of another one."""
    says, kind = ((*path[:2], key) for key in ("says", "kind"))
    member, now = member_at(kind), draft.written(kind).strip('"')
    kinds = member.choices if member is not None else ()
    begun = [sealer["says"] for each in starting_tables() for sealer in each["sealers"]]
    ours = {_spelled(toml_text(line)) for line in (*begun, *map(line_of, kinds))}
    is_ours = _spelled(draft.written(says)) in ours
    return {says: toml_text(line_of(now))} if now in kinds and is_ours else {}


def _spelled(toml: str) -> str:
    """A text as it is spelled in Swiss files too."""
    return toml.replace("ß", "ss")


def _is_lift(path: KeyPath) -> bool:
    return path[:2] == WAYS and path[-1] in LIFTS and path != FIRST_LIFT


def _toml_value(toml: str) -> str | Decimal:
    """A text or a number as it stands in TOML."""
    return toml.strip('"') if '"' in toml else Decimal(toml or 0)


def _as_said(weight: Decimal) -> Decimal:
    """A weight as people say it; none that lifts at all is said to lift nothing."""
    return Decimal(max(round(weight / _STEP), 1) * _STEP)


def _yield(draft: ProfileDraft, before: str, place: RegionalSettings) -> dict[KeyPath, str]:
    """What the new material yields at, where the old one's usual yield stands."""
    usual = _AMERICAN_YIELDS if place.strengths == "psi" else _YIELDS
    old, new = before.strip('"'), draft.written(MATERIAL).strip('"')
    now = draft.written(YIELD)
    if old == new or (old in usual and _yields(now) != _yields(usual[old])):
        return {}
    return {YIELD: usual.get(new, '""')}


def _yields(toml: str) -> Decimal | None:
    return canonical(_toml_value(toml), str(YIELD[1]))
