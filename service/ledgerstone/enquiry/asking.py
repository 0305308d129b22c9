"""What an enquiry's answer says and asks, in the writer's language."""

from __future__ import annotations

import re
from types import MappingProxyType
from typing import Final

_GERMAN: Final = re.compile(
    r"\b(?:und|der|die|das|ich|wir|eine?n?|mit|für|bitte|nicht|ist|sind|von|auf|grüßen?|gruß"
    r"|guten|hallo|länge|breite)\b",
    re.IGNORECASE,
)
_ENGLISH: Final = re.compile(
    r"\b(?:and|the|a|i|we|with|for|please|not|is|are|from|on|regards|hello|hi|thanks|length"
    r"|width|to|of)\b",
    re.IGNORECASE,
)

_ENGLISH_SAYS: Final = MappingProxyType(
    {
        "length": "How long is {slab}?",
        "width": "How deep is {slab}, from front to back?",
        "diameter": "What is the diameter of {slab}?",
        "outline": "What shape and size is {slab}?",
        "thickness": "How thick would you like {slab}?",
        "corner": "On which side is the shorter leg of the L, seen from the front?",
        "legs": "How deep are the two legs of the L?",
        "size": "What size is the cut-out for {opening}?",
        "place": "How far is the middle of {opening} from the left end and from the front?",
        "x": "How far is the middle of {opening} from the left end?",
        "y": "How far is the middle of {opening} from the front?",
        "postcode": "What is the postcode for the delivery?",
        "two": "{what} is given as {readings}.",
        "impossible": "{what}, as read, does not lie on the slab: {readings}.",
        "about": "{what} is given as about {readings}.",
        "delivery": "Whether it is delivered or collected is left open.",
        "what_length": "The length of {slab}",
        "what_width": "The depth of {slab}",
        "what_diameter": "The diameter of {slab}",
        "what_thickness": "The thickness of {slab}",
        "what_size": "The size of {opening}",
        "what_x": "The place of {opening} along the length",
        "what_y": "The place of {opening} from front to back",
        "and": " and as ",
        "took_thickness": "We took it that {slab} is {value} thick.",
        "took_shade": "We took it that you want our {value}.",
        "took_nearest": "We took our {value} as nearest to “{said}”.",
        "took_surface": "We took it that you want our usual {value} face.",
        "took_sealer": "We took it that it is sealed with our usual {value} sealer.",
        "took_place": "We took it that {slab} is for indoors.",
        "took_collect": "We took it that you collect it.",
        "took_delivery": "We took it that it comes on a pallet.",
        "took_corner": "We took it that the L leaves out its {value} corner.",
        "took_site": "We took it that the middle of {opening} is {x} from the left end and {y}"
        " from the front.",
        "took_size": "We took it that the cut-out for {opening} is {value}"
        ", until we have its template.",
        "took_turn": "We took it that the shorter leg is on the right, seen from the front.",
        "took_gap": "We took it that the joint between the two is {value} wide.",
        "took_edge": "We took it that the edge is worked to {value}.",
        "took_edges": "We took it that its edges are square, sharp corners taken off.",
        "took_no_postcode": "We took it that you collect it, until we know the postcode.",
        "took_doubtful": "Of the two we took {value} for {what}.",
        "slab": "the {use}",
        "slab_n": "slab {n} (the {use})",
        "piece": "slab",
        "opening": "the {what}",
    }
)
_GERMAN_SAYS: Final = MappingProxyType(
    {
        "length": "Wie lang ist {slab}?",
        "width": "Wie tief ist {slab}, von vorn nach hinten?",
        "diameter": "Welchen Durchmesser hat {slab}?",
        "outline": "Welche Form und Größe hat {slab}?",
        "thickness": "Wie stark soll {slab} sein?",
        "corner": "Auf welcher Seite liegt der kürzere Schenkel, von vorn gesehen?",
        "legs": "Wie tief sind die beiden Schenkel?",
        "size": "Welches Maß hat der Ausschnitt für {opening}?",
        "place": "Wie weit ist die Mitte von {opening} vom linken Ende und von vorn entfernt?",
        "x": "Wie weit ist die Mitte von {opening} vom linken Ende entfernt?",
        "y": "Wie weit ist die Mitte von {opening} von der Vorderkante entfernt?",
        "postcode": "Wie lautet die Postleitzahl für die Lieferung?",
        "two": "{what} ist als {readings} angegeben.",
        "impossible": "{what} liegt so nicht auf der Platte: {readings}.",
        "about": "{what} ist mit etwa {readings} angegeben.",
        "delivery": "Ob geliefert oder abgeholt wird, ist offen.",
        "what_length": "Die Länge ({slab})",
        "what_width": "Die Tiefe ({slab})",
        "what_diameter": "Der Durchmesser ({slab})",
        "what_thickness": "Die Stärke ({slab})",
        "what_size": "Das Maß ({opening})",
        "what_x": "Der Abstand von links ({opening})",
        "what_y": "Der Abstand von vorn ({opening})",
        "and": " und als ",
        "took_thickness": "Wir gehen von {value} Stärke aus ({slab}).",
        "took_shade": "Wir gehen von unserem Farbton {value} aus.",
        "took_nearest": "Unser Farbton {value} kommt „{said}“ am nächsten.",
        "took_surface": "Wir gehen von unserer üblichen Oberfläche aus ({value}).",
        "took_sealer": "Wir gehen von unserer üblichen Versiegelung aus ({value}).",
        "took_place": "Wir gehen davon aus, dass {slab} innen liegt.",
        "took_collect": "Wir gehen davon aus, dass Sie abholen.",
        "took_delivery": "Wir gehen von einer Lieferung auf Palette aus.",
        "took_corner": "Wir gehen davon aus, dass die Ecke {value} frei bleibt.",
        "took_site": "Wir setzen die Mitte von {opening} {x} von links und {y} von vorn an.",
        "took_size": "Wir gehen für {opening} von {value} aus, bis die Schablone da ist.",
        "took_turn": "Wir gehen davon aus, dass der kürzere Schenkel rechts liegt, von vorn"
        " gesehen.",
        "took_gap": "Wir gehen von einer Fuge von {value} zwischen beiden aus.",
        "took_edge": "Wir gehen bei der Kante von {value} aus.",
        "took_edges": "Wir gehen von geraden Kanten aus, leicht gebrochen.",
        "took_no_postcode": "Wir gehen von Abholung aus, bis wir die Postleitzahl kennen.",
        "took_doubtful": "Von beiden Angaben gehen wir von {value} aus ({what}).",
        "slab": "die Platte ({use})",
        "slab_n": "Platte {n} ({use})",
        "piece": "Platte",
        "opening": "{what}",
    }
)
_GERMAN_NAMES: Final = MappingProxyType(
    {
        "worktop": "Arbeitsplatte",
        "table": "Tischplatte",
        "hearth": "Kaminplatte",
        "shelf": "Regal",
        "sill": "Fensterbank",
        "upstand": "Aufkantung",
        "splashback": "Rückwand",
        "end-panel": "Wange",
        "bench": "Sitzbank",
        "sink": "Spüle",
        "basin": "Becken",
        "hob": "Kochfeld",
        "tap": "Hahnloch",
        "waste": "Ablauf",
        "parasol": "Schirmloch",
        "cable": "Kabeldurchlass",
        "hole": "Loch",
        "drain": "Ablauf",
        "grill": "Grill",
    }
)


def language_of(text: str) -> str:
    """Give ``de`` where a text has more German than English small words, else ``en``."""
    sample = text[:20_000]
    return "de" if len(_GERMAN.findall(sample)) > len(_ENGLISH.findall(sample)) else "en"


class Asking:
    """Says and asks in one language."""

    def __init__(self, language: str) -> None:
        self.language = language
        self._says = _GERMAN_SAYS if language == "de" else _ENGLISH_SAYS

    def say(self, key: str, **values: object) -> str:
        """Give a sentence with its values."""
        return self._says[key].format(**values)

    def name(self, what: str) -> str:
        """Give a thing's name in this language."""
        return (
            str(_GERMAN_NAMES.get(what, what)) if self.language == "de" else what.replace("-", " ")
        )

    def slab(self, use: str, index: int, count: int) -> str:
        """Name a slab, by its number where there are several."""
        name = self.name(use) if use else self._says["piece"]
        key = "slab_n" if count > 1 else "slab"
        return self.say(key, use=name, n=index + 1)

    def opening(self, what: str) -> str:
        """Name an opening."""
        return self.say("opening", what=self.name(what))
