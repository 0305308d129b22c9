"""The loader of a workshop's profile: what it accepts, and every fault with its line and key."""

import tomllib
from collections.abc import Iterator
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.errors import ProfileError, ProfileFault
from ledgerstone.surfaces import SURFACES
from ledgerstone.wording import english
from ledgerstone.workshop import DEMONSTRATION, load_profile, read_profile
from unit.profile_fault_table import ELSEWHERE, FAULTY, MISSING, SHAPES, SYNTAX, TIMING

TEXT = DEMONSTRATION.read_text(encoding="utf-8")


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
    """The demonstration profile has what the contract's example order asks for; every surface."""
    workshop = load_profile(DEMONSTRATION)
    assert workshop.workshop.name == "Tarnside Casting"
    assert workshop.workshop.currency == "GBP"
    assert "graphite" in [shade.name for shade in workshop.palette]
    assert len(workshop.palette) == 5
    assert {finish.surface for finish in workshop.finishes} == set(SURFACES)
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


@pytest.mark.parametrize(("old", "new", "key", "says"), FAULTY, ids=lambda part: part[:30])
def test_a_faulty_key_is_named_with_its_line_and_what_would_do(
    old: str, new: str, key: str, says: str
) -> None:
    """Each fault comes alone, on the line where its key stands, and says what would do."""
    text, line = changed(old, new)
    faults = faults_of(text)
    about = [fault for fault in faults if fault.key == key]
    assert len(about) == 1, faults
    assert says in english(about[0].message)
    assert about[0].line == line + ELSEWHERE.get(key, 0)


@pytest.mark.parametrize(("old", "key", "header", "says"), MISSING)
def test_a_missing_key_is_reported_at_its_table(old: str, key: str, header: str, says: str) -> None:
    """What is not there is told on the line of the table that misses it, with what it is for."""
    text, _ = changed(old, "")
    (fault,) = (fault for fault in faults_of(text) if fault.key == key)
    assert says in english(fault.message)
    assert (text.splitlines()[fault.line - 1] if fault.line else "") == header


@pytest.mark.parametrize(("old", "new", "key", "says"), [*SHAPES, *TIMING])
def test_a_table_of_the_wrong_shape_is_named(old: str, new: str, key: str, says: str) -> None:
    """Brackets, lists and tables that stand where another belongs are reported by key.

    So is time that no bench has, and a word that would hold everything.
    """
    text, _ = changed(old, new)
    assert any(f.key == key and says in english(f.message) and f.line for f in faults_of(text))


def test_an_item_of_an_inline_list_has_its_own_line() -> None:
    """The second dose of a list that is folded over lines is reported on its own line."""
    text, line = changed('{ pigment = "red iron oxide"', '{ pigment = "rust"')
    (fault,) = faults_of(text)
    assert (fault.line, fault.key) == (line, "palette[4].doses[2].pigment")


@pytest.mark.parametrize(("old", "new", "further", "says"), SYNTAX, ids=lambda p: str(p)[:20])
def test_text_that_is_not_toml_is_reported_by_its_line(
    old: str, new: str, further: int, says: str
) -> None:
    """A slip of the pen is reported on its own line, in plain words."""
    text, line = changed(old, new)
    (fault,) = faults_of(text)
    assert (fault.line, fault.key) == (line + further, "")
    assert says in english(fault.message)


def test_all_faults_come_at_once_sorted_by_line() -> None:
    """Faults of several tables, and across tables, come together and in the file's order."""
    text = TEXT
    for old, new in (
        ('currency = "GBP"', 'currency = "pounds"'),
        ("length_mm = 2700", "length_mm = -1"),
        ('colour = "#e3dfd6"', 'colour = "off-white"'),
        ("relief = 0.8", 'reliefs = "0.8"'),
        ("hands = 2", "hands = 0"),
    ):
        text = text.replace(old, new, 1)
    faults = faults_of(text)
    assert [fault.key for fault in faults] == [
        "workshop.currency",
        "table.length_mm",
        "palette[2].colour",
        "hours.per_mould.relief",
        "hours.per_mould.reliefs",
        "calendar.hands",
    ]
    assert [fault.line for fault in faults] == sorted(fault.line for fault in faults)


@pytest.mark.parametrize("section", ["palette", "finishes", "sealers", "edges"])
def test_at_least_one_of_what_customers_choose(section: str) -> None:
    """A palette, finishes, sealers and edges each need one entry."""
    raw = tomllib.loads(TEXT)
    without = (
        TEXT.split("[workshop]")[0] + f"{section} = []\n[workshop]" + TEXT.split("[workshop]")[1]
    )
    kept = "\n".join(_without(without, section))
    assert section in raw
    assert any(f.key == section and "at least one" in english(f.message) for f in faults_of(kept))


def _without(text: str, section: str) -> Iterator[str]:
    """Yield the lines of a text but for the tables of one section."""
    inside = False
    for line in text.splitlines():
        if line.startswith("["):
            inside = line.strip("[]").split(".")[0] == section
        if not inside:
            yield line


# --- the file -------------------------------------------------------------------------------


def test_files_that_cannot_be_read_are_reported_in_words(tmp_path: Path) -> None:
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
        assert says in english(caught.value.faults[0].message)


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
