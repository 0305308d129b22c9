"""Letters that the PDF's font lacks are printed as stars, and every page says so."""

import json

from ledgerstone.drawing.lettering import GLYPH_NOTE
from ledgerstone.papers.printing import printed_content
from ledgerstone.wording import speech_in

SPEECH = speech_in("en")


def test_letters_that_we_have_go_through_as_they_are() -> None:
    """Nothing changes in what can be printed, quotation marks and breaks among it."""
    content = {"workshop": "Tarnside Casting", "facts": [["Größe", "2 × 3\n“Ø 45” \\ Ωж"]]}
    assert json.loads(printed_content(content, SPEECH)) == content


def test_letters_that_we_lack_are_starred_and_said() -> None:
    """A label in another script has stars, and the line on every page says what they are."""
    content = {"workshop": "Tarnside Casting", "facts": [["水槽", "a \ud800 b"]], "n": 3}
    told = json.loads(printed_content(content, SPEECH))
    assert told["facts"] == [["**", "a * b"]]
    assert told["workshop"] == f"Tarnside Casting · {SPEECH.say(GLYPH_NOTE)}"
    assert told["n"] == 3


def test_a_box_to_tick_is_no_letter() -> None:
    """A table's box is drawn by the sheet; in a customer's own words it is a letter like others."""
    content = {"workshop": "Tarnside Casting", "rows": [["water", "☐"]]}
    assert json.loads(printed_content(content, SPEECH)) == content
    told = json.loads(printed_content({**content, "label": "a ☐ b"}, SPEECH))
    assert told["label"] == "a * b"
    assert told["rows"] == [["water", "☐"]]
