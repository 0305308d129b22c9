"""Whole mails with their truths: several slabs, openings, corrections, asides, lists and tables.

What a mail says is drawn first, as a truth in the form of the shared set, and then said in phrases
that are data; so what is not said is known too, and what is asked can be scored beside what is
read.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from random import Random
from typing import Any, Final

from support.phrases import phrases
from support.strategies.enquiry_units import INCH, Unit

SAID: Final[dict[str, Any]] = phrases("enquiry_mails")
_USES: Final = {"island": "worktop", "bar": "worktop", "vanity": "worktop"}
_SINKS: Final = {
    "en": {
        "sink": "sink", "undermount sink": "sink", "hob": "hob", "basin": "basin", "cooktop": "hob",
    },
    "de": {"eine Spüle": "sink", "ein Kochfeld": "hob", "ein Becken": "basin"},
}  # fmt: skip
_LENGTHS: Final = {
    "worktop": (1200, 3000), "island": (1400, 2400), "shelf": (700, 1400), "hearth": (900, 1500),
    "sill": (900, 1800), "table": (1200, 2200), "vanity": (800, 1600), "bar": (1500, 2600),
}  # fmt: skip
_WIDTHS: Final = {
    "worktop": (560, 680), "island": (800, 1000), "shelf": (200, 320), "hearth": (400, 700),
    "sill": (180, 300), "table": (650, 900), "vanity": (450, 560), "bar": (350, 500),
}  # fmt: skip


@dataclass
class WholeMail:
    """A mail and its truth, in the form of the shared set."""

    raw: str
    slabs: list[dict[str, Any]]
    missing: list[str]
    phrases: list[str] = field(default_factory=list)

    def row(self, seed: int) -> dict[str, Any]:
        """Give it as a row of the shared set."""
        delivery = dict.fromkeys(("kind", "postcode", "steps", "floor"))
        truth = {
            "slabs": self.slabs, "missing": self.missing, "doubtful": [], "delivery": delivery,
            "needed_by": None, "customer": None, "reply_to": None,
        }  # fmt: skip
        return {"id": f"g{seed}", "kind": "made", "raw": self.raw, "truth": truth, "notes": {}}


class RandomMail:
    """Draws one mail."""

    def __init__(self, seed: int) -> None:
        self.rng = Random(seed)  # noqa: S311  (messages, no secrets)
        self.language = "de" if self.rng.random() < 0.2 else "en"
        self.said = SAID[self.language]
        metric = ("bare", "bare", "bare", "mm", " mm", "cm", " cm", "m")
        english = (*metric, '"', "in", "inches", "ft")
        german = ("bare", " mm", " cm", "cm,", "m,")
        name = self.rng.choice(english if self.language == "en" else german)
        is_inch = name in ('"', "in", "inches", "ft")
        self.unit = Unit(name, INCH if is_inch else 10.0)
        self.is_inch = is_inch
        self.phrases = [f"unit:{name}", self.language]
        self.missing: list[str] = []
        self.slabs: list[dict[str, Any]] = []

    def pick(self, key: str) -> str:
        """Draw a phrase and note it."""
        chosen: str = self.rng.choice(self.said[key])
        self.phrases.append(f"{key}: {chosen}")
        return chosen

    def size(self, low: float, high: float) -> float:
        """Draw a size that the mail's unit writes exactly."""
        step = self.unit.step
        return round(self.rng.randint(int(low / step) + 1, int(high / step)) * step, 3)

    def thickness(self) -> float:
        """Draw a thickness."""
        inches = (INCH, 2 * INCH, 3 * INCH if self.unit.name == "ft" else 1.5 * INCH)
        return self.rng.choice(inches if self.is_inch else (30, 40, 50, 60))

    # --- slabs ------------------------------------------------------------------------------

    def slab(self, kind: str, *, thick: float | None) -> str:
        """Say a slab; what a mail leaves out is missing."""
        rng, say = self.rng, self.unit.say
        name = rng.choice(self.said["names"][kind])
        own: dict[str, Any] = {
            "use": _USES.get(kind, kind), "quantity": 1, "thickness": thick, "cutouts": [],
            "edges": {}, "shade": None, "finish": None, "place": None,
        }  # fmt: skip
        self.slabs.append(own)
        words = {"n": name, "N": name[0].upper() + name[1:]}
        if kind == "table" and rng.random() < 0.3 and thick is None:
            across = self.size(700, 1400)
            own["thickness"] = self.thickness()
            own["outline"] = {"kind": "round", "diameter": across}
            return self.pick("round").format(**words, D=say(across), T=say(own["thickness"]))
        length, width = self.size(*_LENGTHS[kind]), self.size(*_WIDTHS[kind])
        own["outline"] = {"kind": "rectangle", "length": length, "width": width}
        draw = rng.random()
        if thick is not None or draw < 0.15:
            if thick is None:
                self._miss("thickness")
            return self.pick("slab_nothick").format(**words, L=say(length), W=say(width))
        own["thickness"] = self.thickness()
        words |= {"L": say(length), "W": say(width), "T": say(own["thickness"])}
        if draw < 0.2:
            own["outline"]["width"] = None
            self._miss("width")
            return self.pick("slab_nowidth").format(**words)
        return self.pick("slab").format(**words)

    def upright(self, of: dict[str, Any]) -> str:
        """Say an upstand as long as a slab."""
        length, thick = of["outline"]["length"], INCH if self.is_inch else 20.0
        high = self.size(80, 150)
        self.slabs.append(
            {
                "use": "upstand", "quantity": 1, "thickness": thick, "cutouts": [], "edges": {},
                "shade": None, "finish": None, "place": None,
                "outline": {"kind": "rectangle", "length": length, "width": high},
            }
        )  # fmt: skip
        say = self.unit.say
        return self.pick("upright").format(L=say(length), H=say(high), T=say(thick))

    def _miss(self, what: str) -> None:
        self.missing.append(f"slab {len(self.slabs)}: {what}")

    # --- openings ---------------------------------------------------------------------------

    def opening(self, slab: dict[str, Any]) -> str:
        """Say an opening in a slab, and perhaps a tap behind it."""
        rng, say = self.rng, self.unit.say
        word = rng.choice(sorted(_SINKS[self.language]))
        what = _SINKS[self.language][word]
        made: dict[str, Any] = {"what": what, "kind": None, "rim": None}
        made |= {"length": None, "width": None, "diameter": None, "centre": {"x": None, "y": None}}
        slab["cutouts"].append(made)
        text = self.pick("opening_in").format(o=word, O=word[0].upper() + word[1:])
        along, deep = self.size(380, 520), self.size(290, 380)
        draw = rng.random()
        if draw < 0.1:
            self._miss(f"size of the {what}")
            text += self.pick("nosize")
            made["kind"] = None
        elif draw < 0.35 and what != "hob":
            made |= {"kind": "circle", "diameter": deep}
            text += self.pick("opening_round").format(d=say(deep))
        else:
            made |= {"kind": "rectangle", "length": along, "width": deep}
            text += self.pick("opening_size").format(a=say(along), b=say(deep))
        text = text.rstrip(".") + self._place(slab, made, what) if draw >= 0.1 else text
        if draw < 0.1:
            self._miss(f"position of the {what}")
        if what != "hob":
            text += " " + self._tap(slab, made)
        return text

    def _place(self, slab: dict[str, Any], made: dict[str, Any], what: str) -> str:
        length, width = slab["outline"]["length"], slab["outline"]["width"]
        draw = self.rng.random()
        if draw < 0.12 or not (length and width):
            self._miss(f"position of the {what}")
            return self.pick("noplace")
        if draw < 0.22:
            made["centre"] = {"x": length / 2, "y": width / 2}
            return self.pick("centred_both")
        y = self.size(width * 0.42, width * 0.55)
        across = self._from("front", "back", y, width)
        if draw < 0.35:
            made["centre"] = {"x": length / 2, "y": y}
            return self.pick("centred_x").format(y=across)
        x = self.size(length * 0.3, length * 0.7)
        made["centre"] = {"x": x, "y": y}
        return self.pick("place").format(x=self._from("left", "right", x, length), y=across)

    def _from(self, near: str, far: str, at: float, extent: float) -> str:
        side = self.rng.choice((near, far))
        return self.pick(side).format(self.unit.say(at if side == near else round(extent - at, 3)))

    def _tap(self, slab: dict[str, Any], basin: dict[str, Any]) -> str:
        draw = self.rng.random()
        if draw < 0.35:
            return ""
        if draw < 0.55:
            return self.pick("tap_none")
        bore = (INCH if self.unit.name == "ft" else 1.5 * INCH) if self.is_inch else 35.0
        width = slab["outline"]["width"]
        tap: dict[str, Any] = {"what": "tap", "kind": "circle", "rim": None, "diameter": None}
        tap |= {"length": None, "width": None, "centre": {"x": basin["centre"]["x"], "y": None}}
        slab["cutouts"].append(tap)
        if draw < 0.65 or width is None or basin["centre"]["x"] is None:
            text = self.pick("tap_nosize")
            is_behind = "behind" in text and basin["centre"]["x"] is not None
            tap["centre"] = {"x": basin["centre"]["x"] if is_behind else None, "y": None}
            self._miss("size of the tap")
            self._miss("position of the tap" + (", front to back" if is_behind else ""))
            return text
        y = self.size(50, 90)
        tap["diameter"], tap["centre"]["y"] = bore, width - y
        at = self.pick("back").format(self.unit.say(y))
        return self.pick("tap").format(d=self.unit.say(bore), y=at)

    # --- the mail ---------------------------------------------------------------------------

    def aside(self) -> str:
        """Say something with numbers that are of no slab."""
        rng, say = self.rng, self.unit.say
        return self.pick("asides").format(
            r1=rng.randint(1700, 2400), r2=rng.randint(550, 640), r3=say(self.size(560, 920)),
            r4=say(self.size(860, 940)), r5=rng.randint(5, 40), r6=say(self.size(100, 170)),
            m1=f"{rng.randint(28, 52) / 10:g}", m2=f"{rng.randint(20, 34) / 10:g}",
            u=say(self.size(540, 590)), p=rng.randint(100, 999),
        )  # fmt: skip

    def correction(self) -> str:
        """Correct a size of the first slab; its text keeps what it said before."""
        own = self.slabs[0]
        length, thick = own["outline"].get("length"), own["thickness"]
        if length is None or any(one["centre"]["x"] for one in own["cutouts"]):
            return ""
        if self.rng.random() < 0.3 and thick and len(self.slabs) == 1:
            new = 60.0 if thick != 60 and not self.is_inch else 3 * INCH
            own["thickness"] = new
            return self.pick("correct_T").format(v=self.unit.say(new), o=self.unit.say(thick))
        new = round(length + self.unit.step * self.rng.randint(2, 9), 3)
        if any(one["outline"].get("length") == length for one in self.slabs[1:]):
            return ""
        own["outline"]["length"] = new
        return self.pick("correct_L").format(v=self.unit.say(new), o=self.unit.say(length))

    def mail(self) -> WholeMail:
        """Write the whole mail."""
        rng = self.rng
        count = rng.choice((1, 1, 1, 1, 2, 2, 3, 4))
        kinds = rng.sample([one for one in _LENGTHS if one in self.said["names"]], count)
        shared = self.thickness() if count > 1 and rng.random() < 0.5 else None
        lead = rng.choice(("", "", "number", "letter", "dash")) if count > 1 else ""
        body: list[str] = []
        for i, kind in enumerate(kinds):
            text = self._item(kind, shared)
            mark = {"number": f"{i + 1}. ", "letter": f"{'ABCD'[i]}) ", "dash": "- "}.get(lead, "")
            body.append(mark + text)
        if count == 1 and self.said["upright"] and rng.random() < 0.15:
            own = self.slabs[0]["outline"]
            if own.get("length"):
                body.append(self.upright(self.slabs[0]))
        if shared is not None:
            body.append(
                self.pick("all_thick")
                .replace("Both", "Both" if count == 2 else "All")
                .replace("Beide", "Beide" if count == 2 else "Alle")
                .format(T=self.unit.say(shared))
            )
        for _ in range(rng.randint(0, 2)):
            body.insert(rng.randint(0, len(body)) if not lead else len(body), self.aside())
        if rng.random() < 0.25:
            body.append(self.correction())
        tail = [self.pick("looks"), self.pick("deliveries"), self.pick("asks")]
        gap = rng.choice(("\n\n", "\n")) if lead or count > 1 else rng.choice((" ", "\n\n", "\n"))
        text = self.pick("greetings") + gap.join(
            filter(None, (self.pick("intros"), *body, " ".join(filter(None, tail))))
        )
        text += self.pick("closings").format(
            who=rng.choice(self.said["who"]), tel=rng.randint(100, 999)
        )
        many = len(self.slabs) > 1
        missing = self.missing if many else [one.partition(": ")[2] for one in self.missing]
        return WholeMail(text, self.slabs, missing, self.phrases)

    def _item(self, kind: str, shared: float | None) -> str:
        text = self.slab(kind, thick=shared)
        own = self.slabs[-1]
        if own["outline"]["kind"] == "rectangle" and kind in ("worktop", "island", "vanity"):
            text += " " + (self.opening(own) if self.rng.random() < 0.7 else self.pick("no_holes"))
        return text


def write(seed: int) -> WholeMail:
    """Draw a whole mail."""
    return RandomMail(seed).mail()
