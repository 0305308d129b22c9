"""What goes into an opening is read from its name in each language, long German words too."""

from collections.abc import Callable
from typing import Final

import pytest

from ledgerstone.goes_in import is_bowl, is_hob, is_live, is_tap, is_wet, unit_for
from ledgerstone.order import Cutout
from ledgerstone.workshop import Workshop
from support.slabs import box, hole, slab_of

NAMED: Final[dict[Callable[[Cutout], bool], tuple[str, ...]]] = {
    is_bowl: ("basin", "Sink", "Waschbecken", "Aufsatzbecken", "Einbauspüle", "vasque"),
    is_hob: ("hob", "cooktop", "Induktionskochfeld", "Kochfeld", "Gasherd", "plaque"),
    is_tap: ("tap", "faucet", "Armatur", "Küchenarmatur", "Wasserhahn", "robinet"),
    is_wet: ("basin", "faucet", "shower", "Regendusche", "Badewanne", "Armatur"),
    is_live: ("socket", "outlet", "light switch", "Steckdose", "Lichtschalter", "Kabeldurchlass"),
}
OTHER: Final = ("opening", "Öffnung", "bin", "Abfall", "tapestry", "Herder", "Flaschenlicht 1a")


def named(workshop: Workshop, label: str) -> Cutout:
    """An opening under a name."""
    return slab_of(workshop, box(900, 500), hole(60, 450, 250, label=label)).cutouts[0]


@pytest.mark.parametrize("reads", NAMED, ids=lambda reads: reads.__name__)
def test_a_name_says_what_goes_in(reads: Callable[[Cutout], bool], workshop: Workshop) -> None:
    """In the languages that customers write."""
    unread = [name for name in NAMED[reads] if not reads(named(workshop, name))]
    assert unread == []


@pytest.mark.parametrize("reads", [is_bowl, is_hob, is_tap])
def test_a_name_of_something_else_says_nothing(
    reads: Callable[[Cutout], bool], workshop: Workshop
) -> None:
    """Part of a longer word is no name, unless German sets it at its end."""
    assert [name for name in OTHER if reads(named(workshop, name))] == []


def test_an_opening_belongs_to_the_unit_of_what_goes_in(workshop: Workshop) -> None:
    """A basin's or a hob's, in German too."""
    said = {
        name: unit_for(named(workshop, name)) for name in ("Spülbecken", "Kochfeld", "Mülleimer")
    }
    assert said == {"Spülbecken": "basin", "Kochfeld": "hob", "Mülleimer": None}
