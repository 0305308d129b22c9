"""Files that nobody would wish in a workshop's folder: what is in them, and what may come of it.

The last kinds of the field notes' list: calendars, reply templates and profiles; and where each of
its 35 kinds is tried. Data, not code.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from ledgerstone.workshop import DEMONSTRATION
from support.calendars import calendar

PROFILE = DEMONSTRATION.read_bytes()
_DAY = "DTSTART;VALUE=DATE:20261201\r\nSUMMARY:table"
_TIME = "DTSTART:20261201T080000\r\nSUMMARY:table"
_UP_TO_59 = ",".join(map(str, range(60)))
_DEEP = 3000


@dataclass(frozen=True, slots=True)
class Calendar:
    """A calendar file: its bytes, and whether it is read or told to be unreadable."""

    name: str
    content: bytes
    read: bool


def _entry(name: str, event: str, *, read: bool) -> Calendar:
    return Calendar(name, calendar(event).encode(), read)


CALENDARS = (
    Calendar("empty", b"", read=False),
    Calendar("a page of a web site", b"<html>Sign in first</html>", read=False),
    Calendar("a picture", b"\x89PNG\r\n\x1a\n" + bytes(range(256)) * 40, read=False),
    Calendar("noughts", b"\x00" * 100_000, read=False),
    Calendar("UTF-16", calendar(_DAY).encode("utf-16"), read=False),
    Calendar("Latin-1", calendar(_DAY + " caf\u00e9").encode("latin-1"), read=False),
    Calendar("cut off", calendar(_DAY).encode()[:-40], read=False),
    Calendar("a tail after its end", calendar(_DAY).encode() + b"x", read=False),
    Calendar("5 MB", calendar("X-LONG:" + "x" * 5_000_000).encode(), read=False),
    Calendar("a line of 2 MB", calendar(f"{_DAY}{'x' * 2_000_000}").encode(), read=True),
    Calendar("a byte order mark", b"\xef\xbb\xbf" + calendar(_DAY).encode(), read=True),
    Calendar("bare line feeds", calendar(_DAY).replace("\r\n", "\n").encode(), read=True),
    Calendar("20 001 entries", calendar(*[_DAY] * 20_001).encode()[:4_000_000], read=False),
    Calendar("30 000 boxes in one another",
             b"BEGIN:VCALENDAR\r\n" + b"BEGIN:X-A\r\n" * 30_000 + b"END:X-A\r\n" * 30_000
             + b"END:VCALENDAR\r\n", read=True),
    _entry("no day", "SUMMARY:table", read=False),
    _entry("a day that is none", "DTSTART:never\r\nSUMMARY:table", read=False),
    _entry("the year zero", "DTSTART;VALUE=DATE:00000101\r\nSUMMARY:table", read=False),
    _entry("the year 9999", "DTSTART;VALUE=DATE:99991231\r\nSUMMARY:table", read=False),
    _entry("ends before it begins", f"{_DAY}\r\nDTEND;VALUE=DATE:20261101", read=True),
    _entry("a stay of a million days", f"{_DAY}\r\nDURATION:P1000000D", read=False),
    _entry("every second", f"{_DAY}\r\nRRULE:FREQ=SECONDLY", read=False),
    _entry("every day for ever", f"{_DAY}\r\nRRULE:FREQ=DAILY", read=True),
    _entry("a billion days", f"{_DAY}\r\nRRULE:FREQ=DAILY;COUNT=1000000000", read=True),
    Calendar("300 daily for ever", calendar(*[f"{_DAY}\r\nRRULE:FREQ=DAILY"] * 300).encode(),
             read=False),
    _entry("every second, by parts of a day",
           f"{_TIME}\r\nRRULE:FREQ=DAILY;BYMINUTE={_UP_TO_59};BYSECOND={_UP_TO_59}", read=False),
    _entry("every day of every year, since the year 1", "DTSTART;VALUE=DATE:00010101\r\n"
           "SUMMARY:table\r\nRRULE:FREQ=DAILY", read=True),
    _entry("a day that never comes", f"{_DAY}\r\nRRULE:FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30",
           read=True),
    _entry("an interval of zero", f"{_DAY}\r\nRRULE:FREQ=DAILY;INTERVAL=0", read=False),
    _entry("a rule that is none", f"{_DAY}\r\nRRULE:FREQ=SOMETIMES", read=False),
    _entry("a thirtieth of February", f"{_DAY}\r\nRRULE:FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=30",
           read=True),
    _entry("an unknown zone", "DTSTART;TZID=Mars/Olympus:20261201T080000\r\nSUMMARY:table",
           read=True),
    _entry("a path as a zone", "DTSTART;TZID=../../etc/passwd:20261201T080000\r\nSUMMARY:table",
           read=True),
    _entry("a file to fetch", f"{_DAY}\r\nATTACH:file:///etc/passwd", read=True),
    _entry("a new property in the title", f"{_DAY}\\nBEGIN:VEVENT\\nX", read=False),
    _entry("markup in the title", f"{_DAY} <script>alert(1)</script>", read=True),
    _entry("a right-to-left title", f"{_DAY} \u202egpj.exe", read=True),
)  # fmt: skip

# A reply's template, all of it; each is refused before anything is served.
TEMPLATES = {
    "a picture": b"\x89PNG\r\n\x1a\n\xff",
    "UTF-16": "{{ greeting }}".encode("utf-16"),
    "100 001 letters": b"x" * 100_001,
    "a loop without end": b"{% for a in range(10**9) %}{% endfor %}",
    "a text that repeats": b"{{ 'a' * 10**9 }}",
    "a tower of powers": b"{{ 9 ** 9 ** 9 }}",
    "the machine's own files": b"{% include '/etc/passwd' %}",
    "a way to the machine": b"{{ ''.__class__.__mro__[1].__subclasses__() }}",
    "a way by a filter": b"{{ ''|attr('__class__') }}",
    "a way by a cycler": b"{{ cycler.__init__.__globals__.os.popen('id').read() }}",
    "a block left open": b"{% if greeting %}",
    "brackets in brackets": b"{{ " + b"(" * _DEEP + b"1" + b")" * _DEEP + b" }}",
    "conditions in conditions": b"{% if greeting %}" * _DEEP + b"{% endif %}" * _DEEP,
}

# A profile, all of it; each is refused before anything is served.
PROFILES = {
    "empty": b"",
    "a picture": b"\x89PNG\r\n\x1a\n\xff",
    "UTF-16": PROFILE.decode().encode("utf-16"),
    "noughts": b"\x00" * 1000,
    "over a million bytes": PROFILE + b"#" * 1_000_000,
    "cut off in a text": PROFILE[:2000] + b'x = "',
    "JSON": b'{"workshop": {}}',
    "a key twice": PROFILE + b"\n[workshop]\n",
    "a table that is unknown": PROFILE + b"\n[surprise]\nx = 1\n",
    "3 000 lists in one another": b"x = " + b"[" * _DEEP + b"]" * _DEEP,
    "3 000 tables in one another": b"[" + b".".join([b"a"] * _DEEP) + b"]",
    "a number of 5 000 figures": PROFILE.replace(b"hands = 2", b"hands = " + b"9" * 5000),
    "the hands of a giant": PROFILE.replace(b"hands = 2", b"hands = 1e308"),
    "not a number": PROFILE.replace(b"hands = 2", b"hands = nan"),
    "a path as a zone": PROFILE.replace(b'"Europe/London"', b'"../../etc/passwd"'),
    "a new header in the address": PROFILE.replace(
        b'email = "', b'email = "a@b.example\\r\\nBcc: '
    ),
    "markup as a colour": PROFILE.replace(b'"#55575a"', b'"red\\"><script>"'),
    "a control character": PROFILE.replace(b"hands = 2", b"hands = 2\x01"),
}

# Where each of the field notes' 35 kinds is tried: rows of `bad_input_table`, files' rows above,
# or tests by file and name.
KINDS: dict[int, tuple[str, ...]] = {
    1: ("length: NaN",),
    2: ("length: Infinity", "length: minus Infinity"),
    3: ("length: past the largest double",),
    4: ("length: 1e308", "a point a light year away"),
    5: ("length: minus zero", "length: the smallest double"),
    6: ("length: 5 000 figures", "length: 50 000 figures"),
    7: ("a key twice", "a key twice, inside"),
    8: ("1 000 lists deep", "30 000 lists deep, never closed", "10 000 objects deep"),
    9: ("empty", "null", "a list", "a text", "a number"),
    10: ("something after the end", "a byte order mark", "a comment"),
    11: ("UTF-16", "UTF-32", "Latin-1", "half a character in a label"),
    12: ("a zero in a label", "a bell in a label", "a C1 control in a label", "a non-character"),
    13: ("length: full-width figures", "length: Arabic figures", "length: a superscript"),
    14: ("right-to-left override", "an isolate", "a tower of accents", "10 000 letters"),
    15: ("a Cyrillic o", "__proto__", "constructor"),
    16: ("test_bad_input.py::test_markup_in_a_label_is_drawn_as_text",),
    17: ("test_bad_input.py::test_markup_in_a_label_is_drawn_as_text",
         "a tab at the start of a label"),
    18: ("a mail header in a label", "a new header in the address"),
    19: ("a number as text", "true as a number", "one and a half pieces"),
    20: ("an unknown key", "the wrong case", "a member of another shape"),
    21: ("length: negative", "length: zero", "length: a ten-thousandth of a millimetre",
         "thicker than wide"),
    22: ("a bow tie", "a spike", "points on one line", "a point twice", "two points"),
    23: ("test_bad_input.py::test_the_way_round_of_a_polygon_makes_no_difference",
         "a closed ring"),
    24: ("a cut-out off the slab", "two cut-outs in one place", "a hole as large as the slab",
         "500 cut-outs"),
    25: ("201 points", "1 500 points", "a knot of 200 points",
         "test_bad_input.py::test_a_comb_of_200_points_is_answered"),
    26: ("length: two readings of a comma", "length: two readings of a blank",
         "length: a tower of exponents", "length: a fraction over zero"),
    27: ("a path as a shade", "a zero in a shade", "a path as a sealer"),
    28: ("64 kB and one byte", "a packed bomb", "Brotli by its own word",
         "test_problems.py::test_a_large_body_is_refused_by_the_server_too"),
    29: ("no type", "plain text", "a form", "parts", "UTF-16 by its own word"),
    30: ("images only", "nothing at all", "8 kB of other types"),
    31: ("../faults/test_proxy.py::test_half_sent_bodies_block_nobody",
         "../faults/test_proxy.py::test_one_byte_a_second_is_cut_off"),
    32: ("test_problems.py::test_method_not_offered",
         "test_problems.py::test_a_method_cannot_be_overridden",
         "test_headers.py::test_a_forged_host_changes_no_link"),
    33: ("test_links.py::test_no_spoilt_link_opens",
         "test_links.py::test_an_expired_link_still_opens",
         "test_links.py::test_a_future_date_is_refused",
         "../unit/test_codec_token_bytes.py::test_nothing_is_inflated_before_its_signature_is_known",
         "../unit/test_codec_token_bytes.py::test_an_endless_token_is_refused_at_once"),
    34: ("test_pictures.py::test_a_width_that_is_no_number_is_a_problem",
         "test_pictures.py::test_a_width_beyond_its_bounds_is_brought_within"),
    35: ("test_headers.py::test_no_other_site_may_ask",),
}  # fmt: skip


def rows() -> Iterator[str]:
    """The names of all rows of this table."""
    yield from (one.name for one in CALENDARS)
    yield from TEMPLATES
    yield from PROFILES
