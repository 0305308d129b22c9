"""What a message says in words: who asks and when, told in many ways; sizes of what it is not."""

from datetime import date
from email.message import EmailMessage
from typing import Any

import pytest

from ledgerstone.enquiry import read_enquiry
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


@pytest.mark.parametrize("closing", ["Thanks", "Cheers", "Regards", "Thx", "Best"])
@pytest.mark.parametrize("mark", [" ", ", ", " - ", ",\n", "\n"])
@pytest.mark.parametrize("after", ["", ", idris@example.com"])
def test_a_name_after_closing_words(closing: str, mark: str, after: str) -> None:
    """Whatever stands between the closing words and the name, and an address after it."""
    read = _read(f"{ASKS}\n\n{closing}{mark}Idris Vaughan{after}")
    assert read["customer"]["name"] == "Idris Vaughan"


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
