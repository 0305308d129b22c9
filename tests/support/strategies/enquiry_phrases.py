"""Enquiries composed of phrases: any slab, openings, places and asides, in any way of saying each.

Every phrase is data, so that a fault found outside is a phrase added here; which phrases a message
is made of stands beside it, so that those which are read worst can be counted.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from random import Random
from typing import Any, Final

from support.phrases import phrases

SAID: Final[dict[str, Any]] = phrases("enquiry_phrases")


@dataclass
class Composed:
    """A message, the millimetres a careful maker takes, and the phrases it is made of."""

    text: str
    lengths: dict[str, float]
    phrases: list[str] = field(default_factory=list)


Say = Callable[[float], str]


def ways_of_units(rng: Random) -> tuple[str, Say, float]:
    """Return a name, how a size is written, and the step, mm, of sizes that it can say."""
    way = rng.choice(("bare", "mm", " mm", "cm", " cm", "cm,", "in", '"', "inches", "m"))
    if way == "bare":
        return way, lambda mm: f"{mm:g}", 5.0
    if way in ("mm", " mm"):
        return way, lambda mm: f"{mm:g}{way}", 5.0
    if way in ("cm", " cm"):
        return way, lambda mm: f"{mm / 10:g}{way}", 5.0
    if way == "cm,":
        return way, lambda mm: f"{mm / 10:g}".replace(".", ",") + " cm", 5.0
    if way == "m":
        return way, lambda mm: f"{mm / 1000:g} m" if mm >= 1000 else f"{mm:g} mm", 10.0
    tail = {"in": " in", '"': '"', "inches": " inches"}[way]
    return way, lambda mm: _inches(mm) + tail, 12.7


def _inches(mm: float) -> str:
    halves = round(mm / 12.7)
    whole, half = divmod(halves, 2)
    return f"{whole} 1/2" if half else f"{whole}"


class Composer:
    """Draws one message."""

    def __init__(self, rng: Random) -> None:
        self.rng = rng
        self.way, self.say, self.step = ways_of_units(rng)
        self.phrases: list[str] = [f"units:{self.way}"]
        self.lengths: dict[str, float] = {}

    def pick(self, name: str, phrases: Sequence[str]) -> str:
        """Draw a phrase and note it."""
        chosen = self.rng.choice(phrases)
        self.phrases.append(f"{name}: {chosen}")
        return chosen

    def size(self, low: float, high: float) -> float:
        """Draw a size in millimetres that the way of writing can say exactly."""
        steps = self.rng.randint(int(low / self.step), int(high / self.step))
        return round(steps * self.step, 4)

    def slab(self, at: str, pattern: str, name: str) -> str:
        """Say a slab's three sizes."""
        length, width = self.size(1300, 2900), self.size(450, 700)
        thickness = self.rng.choice((25.4, 38.1, 50.8) if self.step == 12.7 else (30, 40, 50, 60))
        self.lengths |= {f"{at}/outline/length": length, f"{at}/outline/width": width}
        self.lengths[f"{at}/thickness"] = float(thickness)
        numbers = {"l": length, "w": width, "t": thickness}
        bare = {f"{key}n": self.say(mm).split(" mm")[0] for key, mm in numbers.items()}
        said = {key: self.say(mm) for key, mm in numbers.items()}
        return pattern.format(name=name, **said, **bare)

    def opening(self, at: str, i: int) -> str:
        """Say an opening: what it is, its size, its place."""
        rng = self.rng
        along, deep = self.size(400, 560), self.size(300, 400)
        length = self.lengths[f"{at}/outline/length"]
        width = self.lengths[f"{at}/outline/width"]
        what = rng.choice(SAID["opening_names"])
        self.phrases.append(f"what: {what}")
        own = f"{at}/cutouts/{i}"
        if rng.random() < 0.7:
            size = self.pick("size", SAID["opening_sizes"])
            self.lengths |= {f"{own}/length": along, f"{own}/width": deep}
        else:
            size = self.pick("hole", SAID["hole_sizes"])
            self.lengths[f"{own}/diameter"] = deep
        said = size.format(what=what, a=self.say(along), b=self.say(deep), d=self.say(deep))
        return said + self.pick("between", SAID["between"]).format(
            place=self.place(own, length, width, what)
        )

    def place(self, own: str, length: float, width: float, what: str) -> str:
        """Say where an opening's middle is, from any sides, or centred."""
        rng = self.rng
        x = self.size(350, length - 350)
        y = self.size(230, width - 210)
        if rng.random() < 0.2:
            self.lengths |= {f"{own}/centre/x": length / 2, f"{own}/centre/y": y}
            pattern, along = self.pick("centred", SAID["centred"]), ""
        else:
            self.lengths |= {f"{own}/centre/x": x, f"{own}/centre/y": y}
            side = rng.choice(("left", "right"))
            pattern = self.pick("place", SAID["places"])
            along = self.pick("side", SAID["sides"][side]).format(
                self.say(x if side == "left" else round(length - x, 4))
            )
        back = rng.choice(("front", "front", "back"))
        across = self.pick("side", SAID["sides"][back]).format(
            self.say(y if back == "front" else round(width - y, 4))
        )
        return pattern.format(x=along, y=across, what=what)


def compose(seed: int) -> Composed:
    """Draw a message about one slab with up to two openings, and asides."""
    rng = Random(seed)  # noqa: S311  (messages, no secrets)
    one = Composer(rng)
    name = one.pick("name", SAID["slab_names"])
    parts = [one.slab("/slabs/0", one.pick("slab", SAID["slabs"]), name)]
    if rng.random() < 0.75:
        parts.append(one.opening("/slabs/0", 0))
        if rng.random() < 0.5:
            parts.append(_tap(one))
    aside = one.pick("aside", SAID["asides"])
    parts.insert(rng.randint(1, len(parts)), aside)
    gap = rng.choice((" ", "\n\n", "\n"))
    text = one.pick("greeting", SAID["greetings"]) + gap.join(part for part in parts if part)
    return Composed(text + one.pick("closing", SAID["closings"]), one.lengths, one.phrases)


def _tap(one: Composer) -> str:
    """Say a tap hole behind the opening before it."""
    at = "/slabs/0"
    bore = 38.1 if one.step == 12.7 else 35.0
    back = one.size(60, 90)
    one.lengths[f"{at}/cutouts/1/diameter"] = bore
    one.lengths[f"{at}/cutouts/1/centre/x"] = one.lengths[f"{at}/cutouts/0/centre/x"]
    one.lengths[f"{at}/cutouts/1/centre/y"] = one.lengths[f"{at}/outline/width"] - back
    return one.pick("tap", SAID["taps_behind"]).format(d=one.say(bore), b=one.say(back))
