"""What a message says in words: who asks and when, told in many ways; sizes of what it is not."""

from datetime import date
from email.message import EmailMessage
from typing import Any

import pytest

from ledgerstone.enquiry import read_enquiry
from ledgerstone.enquiry.wishes.look import finishes_of, surface_in
from ledgerstone.message import Message
from ledgerstone.surfaces import SURFACES, Surface
from ledgerstone.wording import LANGUAGES, speech_in
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies.enquiry_families import dimensions

WORKSHOP = load_profile(DEMONSTRATION)
ASKS = "Could I have a price for a shelf, 900 x 220 x 40 mm, charcoal?"


def _read(text: str) -> dict[str, Any]:
    mail = EmailMessage()
    mail["From"] = "orders@elsewhere.example"
    mail["Subject"] = "enquiry"
    mail["Date"] = "Wed, 03 Feb 2027 13:37:00 +0000"
    mail["Message-ID"] = "<1@example.com>"
    mail.set_content(text)
    return read_enquiry(mail.as_bytes(), WORKSHOP)


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("surface", SURFACES)
def test_every_surface_is_read_by_its_own_word(surface: Surface, language: str) -> None:
    """As our own sentences call it, in either language."""
    finish = Message("change-finish-name", surface=surface, sealer="wax")
    (said, *_) = finishes_of(f"finish: {speech_in(language).say(finish)}", [(0, 80)])
    assert surface_in(said.value) == surface


@pytest.mark.parametrize("closing", ["Thanks", "Cheers", "Regards", "Thx", "Best"])
@pytest.mark.parametrize("mark", [" ", ", ", " - ", ",\n", "\n"])
@pytest.mark.parametrize("after", ["", ", idris@example.com"])
def test_a_name_after_closing_words(closing: str, mark: str, after: str) -> None:
    """Whatever stands between the closing words and the name, and an address after it."""
    read = _read(f"{ASKS}\n\n{closing}{mark}Idris Vaughan{after}")
    assert read["customer"]["name"] == "Idris Vaughan"


@pytest.mark.parametrize("name", ["Moss", "Olive Stone", "Ash"])
@pytest.mark.parametrize("before", ["\n\nta, ", " Soon as you can really. ta, ", "\nThanks\n"])
def test_a_writers_name_is_no_shade(name: str, before: str) -> None:
    """Signed on a line of its own or on the last of the text; a shade that is asked for stays."""
    read = _read(f"Could I have a price for a shelf, 900 x 220 x 40 mm?{before}{name}")
    assert read["customer"]["name"] == name
    assert [one["says"] for one in read["assumed"] if f"“{name}”" in one["says"]] == []
    shaded = _read(f"{ASKS}{before}{name}")
    assert any("“charcoal”" in one["says"] for one in shaded["assumed"])


@pytest.mark.parametrize("title", ["Mr", "Mrs", "Ms", "Dr"])
@pytest.mark.parametrize("line", ["{} 01632 960512", "Lady from the pottery ({}) 01632 960512"])
def test_a_titled_name_in_a_note(title: str, line: str) -> None:
    """A note of a call names the caller anywhere."""
    note = f"Phone message, Tues\n\n{line.format(f'{title} Ambler')}. shelf 900 x 220 x 40"
    assert read_enquiry(note, WORKSHOP)["customer"]["name"] == f"{title} Ambler"


@pytest.mark.parametrize(
    "week", ["w/c 28 June", "in the week of Sept 20", "week beginning 3 May", "KW 20", "week 22"]
)
@pytest.mark.parametrize("lead", ["Deliver it ", "We'd need it ", "Wanted: "])
def test_a_week_is_no_day(week: str, lead: str) -> None:
    """A week is named as a doubt, whatever numbers it is told in."""
    read = _read(f"{ASKS} {lead}{week}.")
    assert "needed_by" not in read["order"]
    assert [one["at"] for one in read["doubtful"]] == ["/needed_by"]


@pytest.mark.parametrize(
    ("said", "day"),
    [
        ("I need it a week on Saturday", date(2027, 2, 13)),
        ("by the 19th of next month if you can", date(2027, 3, 19)),
        ("It is my birthday on 22 May and I'd like it by then", date(2027, 5, 22)),
        ("We open on 10 July so it must be here by 2 July", date(2027, 7, 2)),
    ],
)
def test_a_day_counted_from_another(said: str, day: date) -> None:
    """Days are counted from the day of the message, or are those of what else is on."""
    assert _read(f"{ASKS} {said}.")["order"]["needed_by"] == day.isoformat()


@pytest.mark.parametrize(
    "aside",
    [
        "The shed is 1830 by 1220 inside.",
        "Our old one is 1005 x 300 and falling apart.",
        "The shepherd's hut is 4.8 x 2.2 m.",
        "I shall be 70.",
        "Originally we had 1100 x 250 x 30 in mind.",
        "The cooker is freestanding, 600 wide.",
    ],
)
@pytest.mark.parametrize("first", [True, False])
def test_what_is_no_slab_gives_no_size(aside: str, first: bool) -> None:
    """Sizes of rooms, of what is there now, and ages are not the slab's, before it or after."""
    words = [aside, ASKS] if first else [ASKS, aside]
    assert dimensions(_read(" ".join(words))) == {
        "/slabs/0/outline/length": 900,
        "/slabs/0/outline/width": 220,
        "/slabs/0/thickness": 40,
    }


@pytest.mark.parametrize(
    "sent",
    [
        "Posting to HR0 2AB.",
        "Could it be posted to HR0 2AB?",
        "Post it to HR0 2AB please.",
        "To be sent to HR0 2AB.",
        "By courier, HR0 2AB.",
        "Could you bring them to HR0 2AB?",
        "Would you drop it off? We are at HR0 2AB.",
        "Delivery to HR0 2AB.",
        "Bitte verschicken Sie es nach HR0 2AB.",
        "Versand nach HR0 2AB.",
        "Es soll angeliefert werden, HR0 2AB.",
    ],
)
def test_what_is_sent_is_not_collected(sent: str) -> None:
    """Whatever word says that it is to come: with a postcode a pallet is proposed, and said so."""
    read = _read(f"{ASKS} {sent}")
    assert read["proposal"]["delivery"] == {"kind": "pallet", "postcode": "HR0 2AB"}
    assert "/delivery/kind" in {one["at"] for one in read["assumed"]}


@pytest.mark.parametrize(
    "aside",
    ["I sent the drawing to you.", "We live in HR0 2AB.", "It goes round a post to the left."],
)
def test_what_speaks_of_no_delivery_is_collected(aside: str) -> None:
    """A drawing that was sent, an address, a post that it goes round."""
    assert _read(f"{ASKS} {aside}")["proposal"]["delivery"]["kind"] == "collect"


@pytest.mark.parametrize(
    "day",
    ["by the end of March", "by 14 February", "in six weeks", "by the 20th", "before 3 June"],
)
@pytest.mark.parametrize("today", [date(2027, 2, 3), date(2027, 3, 30), date(2027, 12, 28)])
def test_of_a_text_without_a_date_the_day_is_a_reading_and_not_taken(day: str, today: date) -> None:
    """It is the day that is taken where the same words stand in a message of today."""
    text = f"{ASKS} We need it {day}."
    mail = EmailMessage()
    mail["From"] = "orders@elsewhere.example"
    mail["Date"] = f"{today:%a, %d %b %Y} 09:00:00 +0000"
    mail.set_content(text)
    taken = read_enquiry(mail.as_bytes(), WORKSHOP)["order"]["needed_by"]
    read = read_enquiry(text, WORKSHOP, today)
    assert "needed_by" not in read["order"]
    (doubt,) = [one for one in read["doubtful"] if one["at"] == "/needed_by"]
    assert [one["value"] for one in doubt["readings"]] == [taken]
    (undated,) = read_enquiry(text, WORKSHOP)["doubtful"]
    assert [one["value"] for one in undated["readings"]] == [""]


def test_a_day_in_numbers_is_offered_both_ways() -> None:
    """Day first, or month first."""
    (doubt,) = read_enquiry(f"{ASKS} We need it by 05/06/2027.", WORKSHOP)["doubtful"]
    assert [one["value"] for one in doubt["readings"]] == ["2027-05-06", "2027-06-05"]
