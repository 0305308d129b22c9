"""A maker's own sentences stand in the place of ours, once they have been looked at."""

from pathlib import Path
from typing import Final

import pytest

from ledgerstone.errors import ProfileError
from ledgerstone.quantities import Length
from ledgerstone.wording import Message, speech_in
from ledgerstone.wording.own import sentences_in
from ledgerstone.wording.page import (
    CUSTOMERS_TEXTS,
    DESK_TEXTS,
    WORKSHOP_TEXTS,
    page_differences,
    page_messages,
)
from ledgerstone.workshop import DEMONSTRATION
from ledgerstone.workshop.countries import usual_in
from support.profile_form import form

PAGES = ("choices", "desk", "workshop")
TEXTS = (CUSTOMERS_TEXTS, DESK_TEXTS, WORKSHOP_TEXTS)

THIN = Message(
    "too-thin",
    slab=Message("slab-only"),
    thickness=Length.parse("20 mm"),
    limit=Length.parse("25 mm"),
)


def test_a_maker_s_sentence_replaces_ours(tmp_path: Path) -> None:
    """A sentence in the file beside the profile is stated; those that are not there are ours."""
    file = tmp_path / "sentences.de.ftl"
    own = 'too-thin = { NAME($slab, start: "yes") } braucht mehr als { $thickness }.\n'
    file.write_text(own, encoding="utf-8")
    (found,) = sentences_in(tmp_path)
    assert (found.language, found.text) == ("de", own)
    speech = speech_in("de", found.text)
    assert speech.say(THIN) == "Die Platte braucht mehr als 20 mm."
    assert speech.say(Message("needed-by-past")) == speech_in("de").say(Message("needed-by-past"))


def test_without_files_there_are_none(tmp_path: Path) -> None:
    """Nothing beside the profile is nothing of the maker's."""
    assert sentences_in(tmp_path) == ()


def test_a_maker_s_sentence_stands_on_the_page_too(tmp_path: Path) -> None:
    """A message of the page's in the same file is the page's, and no sentence of the service."""
    own = "page =\n    .title = Was kostet Ihre Platte?\ntoo-thin = Zu dünn.\n"
    (tmp_path / "sentences.de.ftl").write_text(own, encoding="utf-8")
    (found,) = sentences_in(tmp_path)
    britain = usual_in("GB")
    assert page_differences("de", britain, found.text) == {"page.title": "Was kostet Ihre Platte?"}
    assert speech_in("de", found.text).say(THIN) == "Zu dünn."
    assert page_differences("en", britain) == {}


OWN = (
    "page =\n    .title = Was kostet Ihre Platte?\n"
    "desk =\n    .title = Mein Tisch\n"
    "outcome =\n    .honest = Alles steht.\n"
    "Rates =\n    .hour = Was mich die Stunde kostet\n"
    "Choices =\n    .film = Lack\n"
    "too-thin = { $lengths ->\n    [in] Zu dünn (Zoll).\n   *[mm] Zu dünn (mm).\n}\n"
)


def test_a_maker_s_sentence_stands_on_the_desk_and_in_the_form_too(tmp_path: Path) -> None:
    """Each page has its own of the same file; a letter's may choose by what every one is given."""
    profile = DEMONSTRATION.with_name("germany.toml").read_text(encoding="utf-8")
    (tmp_path / "workshop.toml").write_text(profile, encoding="utf-8")
    (tmp_path / "sentences.de.ftl").write_text(OWN, encoding="utf-8")
    client = form(tmp_path / "workshop.toml", language="de")
    asked = {path: client.get(f"/v1/{path}").get_json()["words"] for path in PAGES}
    assert asked == {
        "choices": {"page.title": "Was kostet Ihre Platte?"},
        "desk": {"desk.title": "Mein Tisch"},
        "workshop": {"outcome.honest": "Alles steht."},
    }
    assert speech_in("de", OWN).say(THIN) == "Zu dünn (mm)."
    values = {one["pointer"]: one for one in client.get("/v1/workshop").get_json()["values"]}
    assert values["/rates/hour"]["label"] == "Was mich die Stunde kostet"
    assert values["/sealers/0/kind"]["choices_say"][-1] == "Lack"
    assert values["/rates/machine_hour"]["label"].startswith("eine Stunde")


def test_no_two_pages_have_a_sentence_of_one_name() -> None:
    """So a name says whose it is."""
    names = [name for page in TEXTS for name in page_messages("en", page)]
    assert len(names) == len(set(names))


def test_the_page_has_the_words_of_the_country() -> None:
    """In the United States the page says curb, cooktop and ZIP code, in Britain what it has."""
    said = page_differences("en", usual_in("US"))
    assert str(said["delivery.pallet"]).endswith("to the curb")
    assert (said["add.hob"], said["delivery.postcode"]) == ("Cooktop", "ZIP code")
    assert str(said["cutout.x"]).startswith("Center ")
    assert page_differences("de", usual_in("US")) == {}


OF_TOO_THIN: Final = "$limit, $slab, $thickness"


@pytest.mark.parametrize(
    ("text", "line", "message"),
    [
        ("slabs =\n    .aded = Neu.\n", 1, Message("fault-own-page-unsaid", name="slabs.aded")),
        (
            "desk =\n    .title = { $n ->\n        [one] Eins\n       *[many] Viele\n    }\n",
            1,
            Message("fault-own-page", why="other", name="desk.title", counted="$n"),
        ),
        (
            "slabs =\n    .added = { $n } neu.\n",
            1,
            Message("fault-own-value", name="slabs.added", value="$n", given="$number"),
        ),
        ("# a comment\n\ntoo-thn = Zu dünn.\n", 3, Message("fault-own-unknown", name="too-thn")),
        (
            "too-thin = Es ist { $dick } dick.\n",
            1,
            Message("fault-own-value", name="too-thin", value="$dick", given=OF_TOO_THIN),
        ),
        (
            "too-thin = Es ist { UPPER($slab) }.\n",
            1,
            Message("fault-own-function", name="too-thin", function="UPPER()"),
        ),
        (
            "too-thin = { other-one }\n",
            1,
            Message("fault-own-reference", name="too-thin", other="other-one"),
        ),
        ("too-thin = Zu dünn.\nwhat is this\n", 2, Message("fault-own-no-sentence")),
    ],
)
def test_a_faulty_sentence_is_named_with_its_line(
    tmp_path: Path, text: str, line: int, message: Message
) -> None:
    """What could not be said is refused, with file and line, before anybody reads it."""
    (tmp_path / "sentences.de.ftl").write_text(text, encoding="utf-8")
    with pytest.raises(ProfileError) as caught:
        sentences_in(tmp_path)
    (fault,) = caught.value.faults
    assert (fault.line, fault.key) == (line, "sentences.de.ftl")
    assert fault.message == message
