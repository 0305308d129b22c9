"""The loader of a workshop's profile: what it accepts, and every fault with its line and key."""

import dataclasses
import tomllib
import types
import typing
from collections.abc import Iterator
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.errors import ProfileError, ProfileFault
from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile, read_profile
from ledgerstone.workshop.lines import KeyLines
from ledgerstone.workshop.starting import starting_profile
from ledgerstone.workshop.values import READERS

TEXT = DEMONSTRATION.read_text(encoding="utf-8")
STARTING = starting_profile(load_profile(DEMONSTRATION))


def faults_of(text: str) -> tuple[ProfileFault, ...]:
    """Return the faults of a profile that has some."""
    with pytest.raises(ProfileError) as caught:
        read_profile(text)
    return caught.value.faults


def changed(old: str, new: str) -> tuple[str, int]:
    """Return the demonstration with its first ``old`` replaced, and the line on which it stood."""
    at = TEXT.index(old)
    line = TEXT.count("\n", 0, at + len(old) - len(old.lstrip("\n"))) + 1
    return TEXT[:at] + new + TEXT[at + len(old) :], line


# --- what loads -----------------------------------------------------------------------------


def test_demonstration_loads() -> None:
    """The demonstration profile has what the contract's example order asks for."""
    workshop = load_profile(DEMONSTRATION)
    assert workshop.workshop.name == "Tarnside Casting"
    assert workshop.workshop.currency == "GBP"
    assert "graphite" in [shade.name for shade in workshop.palette]
    assert len(workshop.palette) == 5
    assert {finish.surface for finish in workshop.finishes} == {"as-cast", "honed", "polished"}
    (matt,) = (sealer for sealer in workshop.sealers if sealer.name == "matt")
    assert set(matt.places) == {"indoors", "wet-room", "outdoors"}
    (bevel,) = (edge for edge in workshop.edges if edge.profile == "bevel")
    assert bevel.smallest_mm <= 5 <= bevel.largest_mm
    assert 40 in workshop.shaping.thicknesses_mm
    assert any("HR" in area.postcodes and area.pallet for area in workshop.areas)


def test_strip_rules_of_the_demonstration() -> None:
    """The demonstration's strip rules are the three agreed ones (common practice, no source)."""
    rules = [
        (r.beside, r.opening_up_to_mm, r.rim, r.stops_mm, r.cautions_mm)
        for r in load_profile(DEMONSTRATION).shaping.strips
    ]
    assert rules == [
        ("a hole up to 60 mm", 60, "any", 25, 25),
        ("a hob or covered rim", 20_000, "covered", 50, 75),
        ("a basin or open rim", 20_000, "shown", 60, 80),
    ]


def test_nothing_is_delivered_to_northern_ireland_or_unbridged_islands() -> None:
    """No delivery area of the demonstration begins with an area across water."""
    letters = {
        "".join(c for c in beginning.split("-")[0] if c.isalpha())
        for area in load_profile(DEMONSTRATION).areas
        for beginning in area.postcodes
    }
    assert letters.isdisjoint({"BT", "GY", "JE", "IM", "HS", "ZE", "IV", "KW"})


def test_values_have_the_types_of_the_records() -> None:
    """Lengths become floats, money exact decimals, days dates and lists tuples."""
    workshop = load_profile(DEMONSTRATION)
    assert type(workshop.table.length_mm) is float
    assert workshop.rates.machine_hour == Decimal("4.50")
    assert type(workshop.offer.round_to) is Decimal
    assert workshop.calendar.closures[0].first == date(2026, 12, 24)
    assert isinstance(workshop.areas[0].postcodes, tuple)
    assert type(workshop.calendar.hands) is int


def test_a_key_with_a_default_may_be_left_out() -> None:
    """Leaving out a key that has a default gives the default."""
    text, _ = changed("extra_per_m3 = 290.00", "")
    assert read_profile(text).palette[1].extra_per_m3 == 0


def test_windows_line_ends_and_a_byte_order_mark_load(tmp_path: Path) -> None:
    """A file saved by a Windows editor says the same thing."""
    file = tmp_path / "profile.toml"
    file.write_bytes(b"\xef\xbb\xbf" + TEXT.replace("\n", "\r\n").encode())
    assert load_profile(file) == load_profile(DEMONSTRATION)


# --- the fingerprint ------------------------------------------------------------------------


def test_fingerprint_is_sixteen_hexadecimal_digits() -> None:
    """A fingerprint is short enough for a link."""
    found = load_profile(DEMONSTRATION).fingerprint
    assert len(found) == 16
    assert int(found, 16) >= 0


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("# Tarnside Casting, the demonstration workshop.", "# Another comment"),
        ("length_mm = 2700\nwidth_mm = 1200", "width_mm   =  1_200.0\n\nlength_mm = 2.7e3"),
        ("price_per_kg = 0.38", "price_per_kg = 0.380"),
        ('name = "Tarnside Casting"', "name = 'Tarnside Casting'"),
    ],
)
def test_fingerprint_keeps_when_only_the_layout_changes(old: str, new: str) -> None:
    """Comments, spacing, order and the way a number is written leave the fingerprint as it is."""
    text, _ = changed(old, new)
    assert read_profile(text).fingerprint == load_profile(DEMONSTRATION).fingerprint


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("hour = 38.00", "hour = 38.01"),
        ('name = "graphite"', 'name = "graphit"'),
        ("registered = true", "registered = false"),
        ("first = 2026-12-24", "first = 2026-12-23"),
        ("thicknesses_mm = [25, 30", "thicknesses_mm = [25, 31"),
    ],
)
def test_fingerprint_changes_with_the_content(old: str, new: str) -> None:
    """Whatever an answer may rest on changes the fingerprint."""
    text, _ = changed(old, new)
    assert read_profile(text).fingerprint != load_profile(DEMONSTRATION).fingerprint


# --- faults ---------------------------------------------------------------------------------

FAULTY: list[tuple[str, str, str, str]] = [
    # what is replaced, by what, the key, part of the sentence
    ('timezone = "Europe/London"', 'timezon = "Europe/London"', "workshop.timezon", '"timezone"'),
    ("cutout = 0.6", 'cutout = "three"', "hours.cutout", "a number of hours, like 0.75"),
    ("cutout = 0.6", 'cutout = "0.6"', "hours.cutout", "Take the quotation marks off"),
    ("cutout = 0.6", "cutout = true", "hours.cutout", "here stands true"),
    ("cutout = 0.6", "cutout = -0.6", "hours.cutout", "this is -0.6; it needs at least 0"),
    ("cutout = 0.6", "cutout = inf", "hours.cutout", "write a number up to"),
    ("cutout = 0.6", "cutout = nan", "hours.cutout", "write a number up to"),
    ("cutout = 0.6", "cutout = 1e400", "hours.cutout", "write a number up to"),
    ("length_mm = 2700", "length_mm = 0", "table.length_mm", "it needs to be above 0"),
    ("length_mm = 2700", "length_mm = [2700]", "table.length_mm", "here stands a list"),
    ("length_mm = 2700", "length_mm = 900", "table.width_mm", "longer than length_mm"),
    ("hands = 2", "hands = 11", "calendar.hands", "this is 11; it can be 10 at most"),
    ("hands = 2", "hands = 1.5", "calendar.hands", "a whole number"),
    ("fck_mpa = 40", "fck_mpa = 400", "recipe.fck_mpa", "this is 400; it can be 90 at most"),
    ("weighed_kg_per_m3 = 2350", "weighed_kg_per_m3 = 900", "recipe.weighed_kg_per_m3", "1500"),
    ('cement = "grey"', 'cement = "gray"', "recipe.cement", 'Perhaps "grey" was meant'),
    ("price_per_kg = 0.38", "price_per_kg = 1e-9", "recipe.constituents[3].price_per_kg",
     "9 decimals"),
    ("registered = true", 'registered = "yes"', "tax.registered", "true or false"),
    ("registered = true", 'registered = "true"', "tax.registered", "quotation marks off"),
    ("percent = 20", "percent = 120", "tax.percent", "this is 120; it can be 100 at most"),
    ("deposit_percent = 40", "deposit_percent = -1", "offer.deposit_percent", "at least 0"),
    ('country = "GB"', 'country = "QQ"', "workshop.country", "no public holidays are known"),
    ('region = "ENG"', 'region = "ENGLAND"', "workshop.region", "Known here: ENG, NIR"),
    ('"Europe/London"', '"Europe/Londen"', "workshop.timezone", '"Europe/London"'),
    ('currency = "GBP"', 'currency = "gbp"', "workshop.currency", "three capital letters"),
    ('email = "hello@', 'email = "hello.', "workshop.email", "email address"),
    ('town = "Wethermoor"', 'town = "  "', "workshop.town", "this is empty"),
    ('town = "Wethermoor"', 'town = "Wether\\u202Emoor"', "workshop.town", "does not print"),
    ('colour = "#55575a"', 'colour = "grey"', "palette[1].colour", "six digits"),
    ('name = "chalk"', 'name = "Graphite"', "palette[2].name", "stands twice"),
    ("thinnest_mm = 25", "thinnest_mm = 28", "shaping.thicknesses_mm[1]", "25 does not lie"),
    ("[25, 30, 40, 50, 60]", "[25, 40, 30]", "shaping.thicknesses_mm", "thinnest first"),
    ("[25, 30, 40, 50, 60]", "[]", "shaping.thicknesses_mm", "at least one thickness"),
    ("[25, 30, 40, 50, 60]", '[25, "30"]', "shaping.thicknesses_mm[2]", "in millimetres"),
    ("cautions_mm = 75", "cautions_mm = 45", "shaping.strips[2].cautions_mm", "stops_mm, 50"),
    ('places = ["indoors"]', 'places = ["inside"]', "sealers[3].places[1]", '"indoors"'),
    ('places = ["indoors"]', 'places = "indoors"', "sealers[3].places", "square brackets"),
    ("smallest_mm = 3\nlargest_mm = 15", "smallest_mm = 16\nlargest_mm = 15",
     "edges[2].smallest_mm", "more than largest_mm"),
    ("last = 2027-01-03", "last = 2026-01-03", "calendar.closures[1].last", "before the first"),
    ("first = 2026-12-24", 'first = "2026-12-24"', "calendar.closures[1].first", "like 2027"),
    ("first = 2026-12-24", "first = 2026-12-24T10:00:00", "calendar.closures[1].first", "a day"),
    ('"monday", "tuesday"', '"monday", "tuseday"', "calendar.weekdays[2]", '"tuesday"'),
    ('"monday", "tuesday"', '"monday", "monday"', "calendar.weekdays[2]", "stands twice"),
    ('"HR", "LD", "SY"', '"HR", "ld", "SY"', "areas[1].postcodes[2]", "LD1-6"),
    ('"HR", "LD", "SY"', '"HR", "LD6-1", "SY"', "areas[1].postcodes[2]", "LD1-6"),
    ('"HR", "LD", "SY"', '"HR", "10-19", "SY"', "areas[1].postcodes[2]", "LD1-6"),
    ('"FK1-16", "G"', '"FK1-16", "HR"', "areas[3].postcodes[5]", '"Around Wethermoor"'),
    ('base_url = "http://', 'base_url = "', "web.base_url", "a web address"),
    ("origins = []", 'origins = ["https://example.com/page"]', "web.origins[1]", "without a path"),
    ("workshop_c = [8, 8,", "workshop_c = [8,", "handling.workshop_c", "here stand 11"),
    ("longest_cover_days = 14", "longest_cover_days = 3", "handling.longest_cover_days", "4"),
    ("mesh_pitch_mm = 50", "mesh_pitch_mm = 2", "steel.mesh_pitch_mm", "mesh_wire_mm"),
    ('held = "flat"', 'held = "hanging"', "handling.ways[5].held", '"on-edge", "flat"'),
]  # fmt: skip


ELSEWHERE = {"table.width_mm": 1, "shaping.thicknesses_mm[1]": -1}  # lines from what was changed


@pytest.mark.parametrize(("old", "new", "key", "says"), FAULTY, ids=lambda part: part[:30])
def test_a_faulty_key_is_named_with_its_line_and_what_would_do(
    old: str, new: str, key: str, says: str
) -> None:
    """Each fault comes alone, on the line where its key stands, and says what would do."""
    text, line = changed(old, new)
    faults = faults_of(text)
    about = [fault for fault in faults if fault.key == key]
    assert len(about) == 1, faults
    assert says in about[0].says
    assert about[0].line == line + ELSEWHERE.get(key, 0)


MISSING: list[tuple[str, str, str, str]] = [
    # what is taken out, the key, the beginning of the line the fault stands on, the sentence
    ("cutout = 0.6\n", "hours.cutout", "[hours]", "this key is missing: one knockout former"),
    ('name = "graphite"\n', "palette[1].name", "[[palette]]", "this key is missing"),
    ("first = 2026-12-24\n", "calendar.closures[1].first", "[[calendar.closures]]", "first day"),
    ("[hours]\n", "hours", "", "the table [hours] is missing: rules for hours of hands"),
]


@pytest.mark.parametrize(("old", "key", "header", "says"), MISSING)
def test_a_missing_key_is_told_at_its_table(old: str, key: str, header: str, says: str) -> None:
    """What is not there is told on the line of the table that misses it, with what it is for."""
    text, _ = changed(old, "")
    (fault,) = (fault for fault in faults_of(text) if fault.key == key)
    assert says in fault.says
    assert (text.splitlines()[fault.line - 1] if fault.line else "") == header


_RED = "{{ pigment = 'red iron oxide', percent = {} }}"
SHAPES: list[tuple[str, str, str, str]] = [
    ("[recipe]", "[[recipe]]", "recipe", "single brackets"),
    ('[[areas]]\nname = "Scot', '[areas_too]\nname = "Scot', "areas_too", 'Perhaps "areas"'),
    ("[tax]\n", "[tax]\nfingerprint = 1\n", "tax.fingerprint", "no such key"),
    ("[workshop]", "fingerprint = 'x'\n[workshop]", "fingerprint", "no such key"),
    ("doses = []", 'doses = "none"', "palette[2].doses", "square brackets"),
    ("doses = []", "doses = [4]", "palette[2].doses[1]", "this is a table; here stands the number"),
    ("doses = []", "doses = [{ pigment = 'black iron oxide' }]", "palette[2].doses[1].percent",
     "missing"),
    ("doses = []", "doses = [{ pigment = 'black oxide', percent = 1 }]",
     "palette[2].doses[1].pigment", '"black iron oxide"'),
    ("doses = []", "doses = [{ pigment = 'black iron oxide', percent = 16 }]",
     "palette[2].doses[1].percent", "15 at most"),
    ("doses = []", f"doses = [{_RED.format(9)}, {_RED.format(9)}]", "palette[2].doses", "18 %"),
    ("doses = []", f"doses = [{_RED.format(1)},\n{_RED.format(1)}]",
     "palette[2].doses[2].pigment", "twice"),
    ("pallet = 145.00\n", "", "areas[3]", "no price"),
]  # fmt: skip


@pytest.mark.parametrize(("old", "new", "key", "says"), SHAPES)
def test_a_table_of_the_wrong_shape_is_named(old: str, new: str, key: str, says: str) -> None:
    """Brackets, lists and tables that stand where another belongs are told by key."""
    text, _ = changed(old, new)
    assert any(f.key == key and says in f.says and f.line for f in faults_of(text))


def test_an_item_of_an_inline_list_has_its_own_line() -> None:
    """The second dose of a list that is folded over lines is told on its own line."""
    text, line = changed('{ pigment = "red iron oxide"', '{ pigment = "rust"')
    (fault,) = faults_of(text)
    assert (fault.line, fault.key) == (line, "palette[4].doses[2].pigment")


SYNTAX: list[tuple[str, str, int, str]] = [
    ("hands = 2", "hands 2", 0, "needs = and its value"),
    ("hands = 2", "hands = two", 0, "Text needs quotation marks"),
    ("hands = 2", "hands = 2 hours", 0, "Write one to a line"),
    ("hands = 2", "hands = 2\nhands = 3", 1, "stands twice"),
    ("[calendar]", "[tax]", 0, "stands twice"),
    ("[calendar]", "[calendar", 0, "closing bracket"),
    ("hands = 2", "= 2", 0, "no [table], key = value or # comment"),
    ('why = "summer"', 'why = "summer', 0, "does not end"),
    ('why = "summer"', 'why = "sum\\mer"', 0, "backslash"),
    ("first = 2026-12-24", "first = 2026-02-30", 0, "no such day"),
    ("hands = 2", "hands = " + "9" * 5000, 0, "too long to read"),
    ("origins = []", "origins = [", 0, "has no end"),
    ("origins = []", 'origins = ["""', 0, "has no end"),
]


@pytest.mark.parametrize(("old", "new", "further", "says"), SYNTAX, ids=lambda p: str(p)[:20])
def test_text_that_is_not_toml_is_told_by_its_line(
    old: str, new: str, further: int, says: str
) -> None:
    """A slip of the pen is told on its own line, in plain words."""
    text, line = changed(old, new)
    (fault,) = faults_of(text)
    assert (fault.line, fault.key) == (line + further, "")
    assert says in fault.says


def test_all_faults_come_at_once_sorted_by_line() -> None:
    """Faults of several tables, and across tables, come together and in the file's order."""
    text = TEXT
    for old, new in (
        ('currency = "GBP"', 'currency = "pounds"'),
        ("length_mm = 2700", "length_mm = -1"),
        ('colour = "#e3dfd6"', 'colour = "off-white"'),
        ("cutout = 0.6", 'cutouts = "0.6"'),
        ("hands = 2", "hands = 0"),
    ):
        text = text.replace(old, new, 1)
    faults = faults_of(text)
    assert [fault.key for fault in faults] == [
        "workshop.currency",
        "table.length_mm",
        "palette[2].colour",
        "hours.cutout",
        "hours.cutouts",
        "calendar.hands",
    ]
    assert list(faults) == sorted(faults)


@pytest.mark.parametrize("section", ["palette", "finishes", "sealers", "edges"])
def test_at_least_one_of_what_customers_choose(section: str) -> None:
    """A palette, finishes, sealers and edges each need one entry."""
    raw = tomllib.loads(TEXT)
    without = (
        TEXT.split("[workshop]")[0] + f"{section} = []\n[workshop]" + TEXT.split("[workshop]")[1]
    )
    kept = "\n".join(_without(without, section))
    assert section in raw
    assert any(f.key == section and "at least one" in f.says for f in faults_of(kept))


def _without(text: str, section: str) -> Iterator[str]:
    """Yield the lines of a text but for the tables of one section."""
    inside = False
    for line in text.splitlines():
        if line.startswith("["):
            inside = line.strip("[]").split(".")[0] == section
        if not inside:
            yield line


# --- the file -------------------------------------------------------------------------------


def test_files_that_cannot_be_read_are_told_in_words(tmp_path: Path) -> None:
    """A missing file, a folder, a huge file and another encoding are each told as what they are."""
    huge = tmp_path / "huge.toml"
    huge.write_bytes(b"#" * 1_000_001)
    latin = tmp_path / "latin.toml"
    latin.write_bytes("# one\nname = 'Höhne'".encode("latin-1"))
    for path, line, says in (
        (tmp_path / "none.toml", 0, "no such file"),
        (tmp_path, 0, "a folder"),
        (huge, 0, "larger than 1 MB"),
        (latin, 2, "not UTF-8"),
        (Path("nul\0"), 0, "cannot be read"),
    ):
        with pytest.raises(ProfileError) as caught:
            load_profile(path)
        assert [(f.line, f.key) for f in caught.value.faults] == [(line, "")]
        assert says in caught.value.faults[0].says


@pytest.mark.parametrize("depth", [50, 300, 480, 495, 500, 700, 5000])
@pytest.mark.parametrize(("left", "right"), [("[", "]"), ("{a=", "}")])
def test_deep_nesting_is_a_fault(left: str, right: str, depth: int) -> None:
    """However deep lists and tables stand, the answer is a fault."""
    assert faults_of(f"[web]\nbase_url = {left * depth}1{right * depth}\n")


@settings(deadline=None, max_examples=60)
@given(st.data())
def test_a_damaged_profile_loads_or_has_faults(data: st.DataObject) -> None:
    """Whatever is cut out of a profile or put in, it loads or its faults stand on its lines."""
    start = data.draw(st.integers(0, len(TEXT)))
    end = data.draw(st.integers(start, min(len(TEXT), start + 400)))
    put = data.draw(st.text(alphabet="[]{}=\"'#.,\\\n\t ae10é\0", max_size=8))
    text = TEXT[:start] + put + TEXT[end:]
    assert _loads_or_has_faults_on_its_lines(text)


def _loads_or_has_faults_on_its_lines(text: str) -> bool:
    try:
        return bool(read_profile(text).fingerprint)
    except ProfileError as error:
        last = text.count("\n") + 1
        return bool(error.faults) and all(0 <= fault.line <= last for fault in error.faults)


# --- lines ----------------------------------------------------------------------------------


def _paths(value: object, path: tuple[str | int, ...] = ()) -> Iterator[tuple[str | int, ...]]:
    """Yield the path of every key in a parsed TOML document."""
    if isinstance(value, dict):
        for key, inner in value.items():
            yield (*path, key)
            yield from _paths(inner, (*path, key))
    elif isinstance(value, list):
        for i, inner in enumerate(value):
            yield from _paths(inner, (*path, i))


@pytest.mark.parametrize("text", [TEXT, STARTING], ids=["demonstration", "starting"])
def test_every_key_is_found_on_a_line_that_names_it(text: str) -> None:
    """The line of every key of a whole profile holds that key."""
    where, rows = KeyLines(text), text.splitlines()
    paths = list(_paths(tomllib.loads(text)))
    assert len(paths) > 200
    for path in paths:
        assert str(path[-1]) in rows[where.line(path) - 1], path


AWKWARD = r'''# [not.a.table]
a.b . "c d" = 1
x = """
[no] = 'table'
y = 2"""
z = [ # a ] in a comment
  "]", ']',
  { k = 1, "l" = [2,
    3] },
]
s = '\'
[t."u.v"] # a table
w = """a \""" b"""""
[[t.r]]
n = 1
[[t.r]]
n = 2
[t.r.q]
m = 3
[[t.r]]
'''


@pytest.mark.parametrize(
    ("path", "line"),
    [
        (("a", "b", "c d"), 2),
        (("a",), 2),
        (("x",), 3),
        (("y",), 0),
        (("z",), 6),
        (("z", 0), 7),
        (("z", 1), 7),
        (("z", 2, "k"), 8),
        (("z", 2, "l", 1), 9),
        (("s",), 11),
        (("t", "u.v"), 12),
        (("t", "u.v", "w"), 13),
        (("t", "r", 0, "n"), 15),
        (("t", "r", 1, "n"), 17),
        (("t", "r", 1, "q", "m"), 19),
        (("t", "r", 2, "n"), 20),
        (("nothing",), 0),
    ],
)
def test_awkward_toml_is_followed(path: tuple[str | int, ...], line: int) -> None:
    """Dotted and quoted keys, long strings, comments in lists and tables in lists are followed."""
    assert tomllib.loads(AWKWARD)["t"]["r"][1]["q"]["m"] == 3
    assert KeyLines(AWKWARD).line(path) == line


@given(st.text(alphabet="[]{}=\"'#.,\\\n\r ab1", max_size=60))
def test_any_text_comes_to_its_end(text: str) -> None:
    """The lines of any text at all are found in the time of one pass, none beyond its end."""
    assert 1 <= KeyLines(text).last_statement <= text.count("\n") + 1


# --- the records ----------------------------------------------------------------------------


def _records(kind: type) -> Iterator[type]:
    """Yield a record and every record inside it."""
    yield kind
    for hint in typing.get_type_hints(kind).values():
        for inner in (hint, *typing.get_args(hint)):
            if dataclasses.is_dataclass(inner) and isinstance(inner, type):
                yield from _records(inner)


def _fields() -> list[tuple[type, str]]:
    return [
        (record, f.name)
        for record in dict.fromkeys(_records(Workshop))
        for f in dataclasses.fields(record)
        if not f.metadata.get("computed")
    ]


def test_every_field_says_what_it_is_about() -> None:
    """Every field of every record has the comment that the starting profile prints."""
    assert len(_fields()) > 100
    lacking = [
        (record.__name__, f.name)
        for record in dict.fromkeys(_records(Workshop))
        for f in dataclasses.fields(record)
        if not f.metadata.get("computed") and not f.metadata.get("about")
    ]
    assert not lacking


def test_every_type_in_the_records_can_be_read() -> None:
    """Every field is a value that the loader reads, one of some words, a record, or a list."""
    for record in dict.fromkeys(_records(Workshop)):
        for hint in typing.get_type_hints(record).values():
            inner = hint
            if isinstance(hint, types.UnionType):
                (inner,) = (one for one in typing.get_args(hint) if one is not types.NoneType)
            if typing.get_origin(inner) is tuple:
                inner = typing.get_args(inner)[0]
            literal = typing.get_origin(inner) is typing.Literal
            assert literal or dataclasses.is_dataclass(inner) or inner in READERS


# --- the starting profile -------------------------------------------------------------------


def test_starting_profile_says_what_the_demonstration_says() -> None:
    """The starting profile loads, and differs from its example in who the workshop is, alone."""
    example, started = load_profile(DEMONSTRATION), read_profile(STARTING)
    assert started.workshop.name == "Your workshop"
    same = dataclasses.replace(started, workshop=example.workshop, fingerprint=example.fingerprint)
    assert same == example


@pytest.mark.parametrize(
    ("record", "name"), _fields(), ids=lambda part: getattr(part, "__name__", part)
)
def test_every_field_stands_in_the_starting_profile(record: type, name: str) -> None:
    """A maker finds every key of the record in the table it belongs to, some commented out."""
    assert name in _keys_by_header()[record]


def _keys_by_header() -> dict[type, set[str]]:
    """Keys that stand under each record's headers in the starting profile, comments included."""
    headers = dict(_headers(Workshop, ""))
    keys: dict[type, set[str]] = {record: set() for record in headers.values()}
    inside: type = Workshop
    for row in STARTING.splitlines():
        bare = row.removeprefix("# ")
        if bare.startswith("["):
            path = bare.strip("[]")
            inside = headers[path]
            outer, _, last = path.rpartition(".")
            keys[headers[outer]].add(last)
        elif " = " in bare:
            keys[inside].add(bare.split(" = ")[0])
    return keys


def _headers(record: type, path: str) -> Iterator[tuple[str, type]]:
    """Yield the path of every header with the record that stands under it."""
    yield path, record
    for name, hint in typing.get_type_hints(record).items():
        for inner in (hint, *typing.get_args(hint)):
            if dataclasses.is_dataclass(inner) and isinstance(inner, type):
                yield from _headers(inner, f"{path}.{name}".removeprefix("."))
