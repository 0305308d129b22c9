"""The maker's command: what it prints and how it leaves."""

import io
import re
import subprocess
import sys
from dataclasses import MISSING, fields
from pathlib import Path

import pytest

from ledgerstone.cli.profiles import run
from ledgerstone.wording import Message, english
from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile
from ledgerstone.workshop.keys.value_keys import AboutKey, KeyNumber

TEXT = DEMONSTRATION.read_text(encoding="utf-8")


def ran(*arguments: object) -> tuple[int, str, str]:
    """Return the status, what went to the output and what went to the errors."""
    out, err = io.StringIO(), io.StringIO()
    status = run([str(argument) for argument in arguments], out, err)
    return status, out.getvalue(), err.getvalue()


def test_check_prints_what_a_good_profile_says() -> None:
    """A good profile is told back: its name, table, sizes, palette, finishes, areas and rates."""
    status, out, err = ran("check", DEMONSTRATION)
    assert (status, err) == (0, "")
    for said in (
        "Tarnside Casting, Wethermoor (GB-ENG, GBP)",
        "1 of 2700 mm × 1200 mm",
        "25 mm, 30 mm, 40 mm, 50 mm, 60 mm",
        "graphite #55575a: grey cement, black iron oxide 4%",
        "chalk #e3dfd6: white cement",
        "Ground wet",
        "matt: penetrating, 3 coats, indoors, wet rooms, outdoors",
        "Around Wethermoor (6 beginnings of postcodes): pallet £68.00",
        "£38.00 an hour",
        "40%",
        "VAT 20%",
        "always from £6,000.00 on",
        load_profile(DEMONSTRATION).fingerprint,
    ):
        assert said in out
    assert "second look" not in out


def test_check_prints_each_fault_with_file_line_and_key(tmp_path: Path) -> None:
    """Faults come one a line, where an editor can jump to them, and the status is 1."""
    file = tmp_path / "profile.toml"
    file.write_text(
        TEXT.replace("relief = 0.8", 'relief = "long"').replace("hands = 2", "hands = 0")
    )
    lines = file.read_text().splitlines()
    status, out, err = ran("check", file)
    assert (status, err) == (1, "")
    relief, hands = (lines.index(row) + 1 for row in ('relief = "long"', "hands = 0"))
    unfit = Message("fault-unfit", wanted="hours", quoted="no", found="text", text="long")
    hands_key = {"record": "Calendar", "key": "hands"}
    bound = Message(
        "fault-bound",
        value=KeyNumber(**hands_key, amount=0, rounding="nearest"),
        bound="least",
        limit=KeyNumber(**hands_key, amount=1, rounding="up"),
    )
    assert out.splitlines() == [
        f"{file}:{relief}: hours.per_mould.relief: {english(unfit)}",
        f"{file}:{hands}: calendar.hands: {english(bound)}",
        f"2 faults in {file}.",
    ]


def test_a_fault_of_the_whole_file_has_no_line(tmp_path: Path) -> None:
    """A missing table is told beside the file's name alone, and an empty file misses them all."""
    file = tmp_path / "empty.toml"
    file.write_text("")
    status, out, _ = ran("check", file)
    assert status == 1
    about = AboutKey("Workshop", "hours", "rules for hours of hands")
    missing = Message("fault-table-missing", table="[hours]", about=about)
    assert f"{file}: hours: {english(missing)}\n" in out
    needed = [f for f in fields(Workshop) if f.default is MISSING and f.default_factory is MISSING]
    assert out.count("is missing") == len(needed)


@pytest.mark.parametrize(
    ("replaced", "by", "says"),
    [
        ("percent = 4.0 }]", "percent = 11 }]", "graphite takes 11% pigment; ASTM C979"),
        ('"wet-room", "outdoors"]', '"wet-room"]', "No sealer is for outdoors"),
        ("largest_aggregate_mm = 6", "largest_aggregate_mm = 10", "ACI 318-19"),
    ],
)
def test_what_may_be_a_slip_is_flagged(replaced: str, by: str, says: str, tmp_path: Path) -> None:
    """What can stand and is unusual is reported at the end, and the profile still passes."""
    file = tmp_path / "profile.toml"
    assert replaced in TEXT
    file.write_text(TEXT.replace(replaced, by))
    status, out, _ = ran("check", file)
    assert status == 0
    assert says in out.split("Worth a second look:")[1]


@pytest.mark.parametrize(("percent", "looks"), [("10", False), ("10.01", True)])
def test_ten_percent_pigment_is_the_last_that_passes_in_silence(
    percent: str, looks: bool, tmp_path: Path
) -> None:
    """ASTM C979/C979M-16 clause 1.4: all pigments together are at most 10 % of the cement."""
    file = tmp_path / "profile.toml"
    file.write_text(TEXT.replace("percent = 4.0 }]", f"percent = {percent} }}]"))
    assert ("C979" in ran("check", file)[1]) is looks


def test_a_file_that_cannot_be_read_is_reported_plainly(tmp_path: Path) -> None:
    """A missing file, a folder, a huge file and another encoding leave with 2 and one sentence."""
    huge, latin = tmp_path / "huge.toml", tmp_path / "latin.toml"
    huge.write_bytes(b"\n" * 1_000_001)
    latin.write_bytes(b"\n\nname = '\xe9'")
    for file, says in (
        (tmp_path / "none.toml", f"{tmp_path / 'none.toml'}: there is no such"),
        (tmp_path, f"{tmp_path}: {english(Message('fault-folder'))}"),
        (huge, f"{huge}: the file is larger"),
        (latin, f"{latin}:3: a character here is"),
    ):
        status, out, err = ran("check", file)
        assert (status, out) == (2, "")
        assert err.startswith(says)
        assert err.count("\n") == 1


def test_init_writes_a_profile_that_passes_check(tmp_path: Path) -> None:
    """What init writes is a profile as it stands, with a comment beside every key."""
    file = tmp_path / "mine.toml"
    status, out, err = ran("init", file)
    assert (status, err) == (0, "")
    assert f"check {file}" in out
    assert ran("check", file)[0] == 0
    text = file.read_text(encoding="utf-8")
    assert 'name = "Your workshop"  # the name customers know' in text
    assert "# revoke_before = 2026-01-31  # " in text
    assert max(len(line) for line in text.splitlines()) <= 120


def test_init_never_writes_over_a_file(tmp_path: Path) -> None:
    """A file that is there stays as it is."""
    file = tmp_path / "mine.toml"
    file.write_text("mine")
    status, out, err = ran("init", file)
    assert (status, out) == (1, "")
    assert "nothing was written" in err
    assert file.read_text() == "mine"


def test_init_says_where_it_cannot_write(tmp_path: Path) -> None:
    """A folder that is not there is reported, and nothing is made."""
    status, out, err = ran("init", tmp_path / "none" / "mine.toml")
    assert (status, out) == (2, "")
    assert "cannot be written" in err
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize("arguments", [[], ["chek", "x"], ["check"], ["init"], ["check", "a", "b"]])
def test_wrong_arguments_print_the_usage(
    arguments: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    """No command, an unknown one or a wrong number of files print the usage and leave."""
    with pytest.raises(SystemExit) as left:
        ran(*arguments)
    assert left.value.code == 2
    assert "usage: python -m ledgerstone.workshop" in capsys.readouterr().err


def test_module_runs_as_a_command() -> None:
    """The command stands under the name that the README gives."""
    command = [sys.executable, "-m", "ledgerstone.workshop", "check", str(DEMONSTRATION)]
    done = subprocess.run(command, capture_output=True, text=True, check=False, timeout=60)
    assert (done.returncode, done.stderr) == (0, "")
    assert done.stdout.startswith("Workshop     Tarnside Casting")


def test_check_names_a_faulty_sentence_with_its_own_file(tmp_path: Path) -> None:
    """A maker's sentence that could not be said is told with the file and the line it stands in."""
    file, own = tmp_path / "profile.toml", tmp_path / "sentences.de.ftl"
    file.write_text(TEXT)
    own.write_text("too-thin = Es ist { $dick } dick.\n", encoding="utf-8")
    status, out, err = ran("check", file)
    assert (status, err) == (1, "")
    given = {"name": "too-thin", "value": "$dick", "given": "$limit, $slab, $thickness"}
    not_given = Message("fault-own-value", **given)
    assert out.splitlines()[0] == (f"{own}:1: {english(not_given)}")


def test_a_profile_of_the_united_states_starts_in_no_state(tmp_path: Path) -> None:
    """No state, no sales tax and no state's holidays; one that is named then raises no fault."""
    file = tmp_path / "mine.toml"
    assert ran("init", file, "--country", "US")[0] == 0
    assert ran("check", file)[0] == 0
    started = load_profile(file)
    assert (started.workshop.region, started.tax.registered) == ("", False)
    assert started.tax.percent == 0
    text = file.read_text(encoding="utf-8")
    assert text.count("[[areas]]") == 1
    region = re.search(r"(?m)^# region = .*$", text)
    assert region is not None
    file.write_text(text.replace(region[0], 'region = "OR"'), encoding="utf-8")
    assert ran("check", file)[0] == 0


@pytest.mark.parametrize(
    ("country", "guess"),
    [("QQ", ""), ("USA", "US"), ("uk", "GB"), ("DEU", "DE"), ("Germany", "DE"), ("Schweiz", "CH")],
)
def test_no_file_is_begun_for_what_is_no_country(tmp_path: Path, country: str, guess: str) -> None:
    """Two letters are asked for, and those that were meant are named: by `check` too."""
    file = tmp_path / "mine.toml"
    status, out, err = ran("init", file, "--country", country)
    assert (status, out) == (2, "")
    assert not file.exists()
    file.write_text(TEXT.replace('country = "GB"', f'country = "{country}"'), encoding="utf-8")
    status, checked, _ = ran("check", file)
    assert status == 1
    for said in (err, checked):
        assert "Write two letters" in said
        assert (f'Perhaps "{guess}" was meant' in said) == bool(guess)


@pytest.mark.parametrize(("country", "known"), [("FR", "yes"), ("CA", "yes"), ("BR", "no")])
def test_a_file_begun_elsewhere_says_what_it_has_of_its_country(
    tmp_path: Path, country: str, known: str
) -> None:
    """As much as its country is known here, and no more."""
    file = tmp_path / "mine.toml"
    status, out, _ = ran("init", file, "--country", country)
    assert status == 0
    assert english(Message("init-elsewhere", land=country, known=known)) in out
    begun = load_profile(file)
    assert bool(begun.areas) == (known == "yes")
    assert begun.tax.registered == (known == "yes")


def test_a_holiday_of_another_state_is_advice_and_no_fault(tmp_path: Path) -> None:
    """What only Washington keeps is told in Oregon; what nobody keeps is a fault."""
    example = DEMONSTRATION.with_name("united_states.toml").read_text(encoding="utf-8")
    file = tmp_path / "mine.toml"
    file.write_text(example.replace('region = "WA"', 'region = "OR"'), encoding="utf-8")
    status, out, _ = ran("check", file)
    assert status == 0
    assert "Native American Heritage Day" in out
    file.write_text(
        example.replace("Native American Heritage Day", "Nowhere Day"), encoding="utf-8"
    )
    assert ran("check", file)[0] == 1
