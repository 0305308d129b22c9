"""Openings as people write them down: furniture with a rough size, at a rough place."""

from random import Random
from typing import Final

from support.documents import Json
from support.strategies.furniture import POSTS, TAP, Item
from support.strategies.wrong_measures import Speaker, Spot, roughly

MIN_MM: Final = 5.0  # smaller openings are not understood


def cutout(rng: Random, say: Speaker, item: Item, spot: Spot, sides: list[str]) -> Json:
    """One opening as a customer writes it: its size, its place and what they call it."""
    written: Json = {"kind": item.kind, "centre": say.place(spot.x, spot.y)}
    if item.kind == "circle":
        written["diameter"] = say.say(max(spot.length, MIN_MM))
    else:
        written["length"], written["width"] = (
            say.say(max(s, MIN_MM)) for s in (spot.length, spot.width)
        )
    if item in POSTS and rng.random() < 0.6:
        written["open_to"] = "back" if "back" in sides else sides[0]
    if rng.random() < (0.9 if item.rim == "covered" else 0.3):
        written["rim"] = item.rim
    if item.heat and rng.random() < 0.5:
        written["heat"] = True
    name = rng.choice(item.names)
    return written | ({"label": name} if name else {})


def taps(rng: Random, say: Speaker, item: Item, spot: Spot) -> list[Json]:
    """The taps behind a basin, which went wrong with it or were measured from the wall."""
    if not item.taps or rng.random() < 0.25:
        return []
    behind = spot.y + spot.width / 2 + roughly(rng, 60.0, 25.0)
    place = Spot(roughly(rng, spot.x, 15.0), behind, *TAP.size_mm)
    return [cutout(rng, say, TAP, place, [])]
