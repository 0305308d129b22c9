"""German has one word for a thing, in every catalogue; and each language its gap before a %.

Words of the trade, from memory; what customers write is read by tables of their own.
"""

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Final

import pytest
from fluent.syntax import ast

from ledgerstone import wording
from support.catalogue_reader import entries_in

CATALOGUES: Final = Path(wording.__file__).parent / "catalogues"
FILES: Final = sorted({*CATALOGUES.glob("de/*.ftl"), *CATALOGUES.glob("*/de.ftl")})
ONE_WORD: Final = [
    ("the job sheet", "Werkstattblatt", r"[Aa]rbeitsblatt|Auftragsblatt|Fertigungsblatt"),
    (
        "a drop edge",
        "herabgezogen",
        r"Abkantung|Schürze|Fallkante|\bWangen?\b",
    ),
    ("an upstand", "Aufkantung", r"Wischleiste|Wandanschluss|Sockelleiste"),
    ("a knockout", "Aussparungskörper", r"Aussparungskern|Formkern|Einleger|und Kerne\b"),
    ("slurry", "Spachtel", r"Schlämme|Schlempe"),
    ("a cut-out", "Ausschnitt", r"\bÖffnung(?:en)?\b|Durchbruch"),
    ("a sample tile", "Musterplatte", r"\bMusters?\b|Farbmuster|Probeplatte"),
    ("our van", "Transporter", r"eigener Wagen|eigenen Wagens|Lieferwagen"),
    ("a wet room", "Nassr", r"Feuchtr"),
    ("a hob", "Kochfeld", r"Herdplatte|Kochmulde|Ceranfeld"),
    ("a socket", "Steckdose", r"Stromdose|Steckverbind"),
    ("a drip", "Wassernase", r"Tropfkante|Tropfnase|Abtropfnut"),
    ("a drainer", "Abtropffläche", r"Tropffläche|Abtropfbereich"),
    ("release agent", "Trennmittel", r"Schalöl"),
    ("a carrier", "Spedition", r"Spediteur|Fuhrunternehm"),
    ("a test strip", "Probestreifen", r"Prüfstreifen|Teststreifen|Probebalken"),
    ("pigment", "Pigment", r"Farbstoff|Farbpulver"),
    ("an offer", "Angebot", r"\bOfferte"),
    ("honed", "fein geschliffen", r"matt geschliffen|(?<![Ff]ein )(?<!\w)geschliffen\b"),
    ("an overhang", "Überstand", r"Überhang|Auskragung"),
]


def texts() -> Iterator[tuple[str, str]]:
    """Each text of the German catalogues, and the message that it stands in."""
    for file in FILES:
        for entry in entries_in(file):
            if isinstance(entry, ast.Message):
                yield from ((entry.id.name, text) for text in words_in(entry))


def words_in(part: object) -> Iterator[str]:
    """What is said in a part of a message; what stands there for code is not."""
    if isinstance(part, ast.TextElement):
        yield part.value
    elif isinstance(part, list):
        for one in part:
            yield from words_in(one)
    elif isinstance(part, ast.BaseNode):
        yield from words_in(list(vars(part).values()))


TEXTS: Final = tuple(texts())


@pytest.mark.parametrize(("thing", "word", "others"), ONE_WORD)
def test_a_thing_has_one_german_word(thing: str, word: str, others: str) -> None:
    """The word is in use, and no other of the thing is."""
    assert any(word in text for _, text in TEXTS), thing
    assert [found for found in TEXTS if re.search(others, found[1])] == []


@pytest.mark.parametrize(("language", "gap"), [("en", ""), ("de", " ")])
def test_a_share_has_its_language_s_gap(language: str, gap: str) -> None:
    """CLDR's percentFormats: 20% in English, 20 % in German; a value or a figure before it."""
    files = {*CATALOGUES.glob(f"{language}/*.ftl"), *CATALOGUES.glob(f"*/{language}.ftl")}
    wrong = {"": r"(?:\}|\d) %", " ": r"(?:\}|\d)%"}[gap]
    text = "\n".join(file.read_text(encoding="utf-8") for file in sorted(files))
    text = text.replace('{ "\\u00A0" }', " ")
    assert re.findall(rf".*{wrong}.*", text) == []
