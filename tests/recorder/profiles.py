"""Profiles of workshops unlike the demonstration's, as edits of its text."""

import re
from typing import Final

Edit = tuple[str, str]

# By workshop: a pattern that must match, and what takes its place.
_EDITS: Final[dict[str, tuple[Edit, ...]]] = {
    "usual": (),
    "matching": ((r"(?m)^matching = false", "matching = true"),),
    "pale": (
        (r"(?m)^most_percent = 10$", "most_percent = 3"),
        (r"(?m)^carbon_most_percent = 2$", "carbon_most_percent = 1"),
    ),
    "small mixer": ((r"(?m)^working_l = 50$", "working_l = 5"),),
    "plain steel": ((r'(?m)^material = "stainless"$', 'material = "plain"'),),
    "short pallet": (
        (r'(?ms)^\[\[lifting\.pallets\]\]\nname = "full pallet".*?(?=^\[lifting\.van\])', ""),
        (r"(?m)^most_kg = 500$", "most_kg = 150"),
        (r"(?m)^overhang_mm = 150$", "overhang_mm = 0"),
        (r"(?m)^length_mm = 3300\nmost_kg = 900$", "length_mm = 1500\nmost_kg = 120"),
        (r"(?m)^tail_lift_kg = 750", "tail_lift_kg = 100"),
        (r"(?m)^most_people = 6$", "most_people = 2"),
    ),
    "two people": (
        (r"(?ms)^\[\[handling\.ways\]\]\n(?:(?!\n\n).)*?^most_kg = (?:240|650)$.*?\n\n", ""),
    ),
    "bold": (
        (r"(?m)^stops_mm = \d+$", "stops_mm = 0"),
        (r"(?m)^cautions_mm = \d+$", "cautions_mm = 0"),
    ),
    "closed": (
        (r"(?m)^first = 2026-12-24$", "first = 2026-01-01"),
        (r"(?m)^last = 2027-01-03$", "last = 2199-12-31"),
        (r"(?ms)^\[\[calendar\.closures\]\]\nfirst = 2027-08-09.*?\n\n", ""),
    ),
}
WORKSHOPS: Final = tuple(_EDITS)


def profile(name: str, demonstration: str) -> str:
    """Return the text of a workshop's profile.

    Raises
    ------
    LookupError
        The demonstration's profile no longer has what is to be changed.
    """
    text = demonstration
    for pattern, instead in _EDITS[name]:
        text, count = re.subn(pattern, instead, text)
        if not count:
            raise LookupError(f"{name}: the profile has no {pattern}")
    return text
