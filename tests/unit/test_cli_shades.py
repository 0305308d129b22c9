"""The maker's command: readings of tiles become lines that a profile takes, the misses shown."""

import io
import re
from pathlib import Path

import pytest

from ledgerstone.cli.shades import run
from ledgerstone.wording import Message, english, speech_in
from ledgerstone.workshop import DEMONSTRATION, read_profile

TEXT = DEMONSTRATION.read_text(encoding="utf-8")
HEADING = "pigment,cement,dose_percent,lightness,a,b\n"
GOOD = HEADING + (
    ",grey,0,66.0,-0.5,4.0\n,grey,0,66.4,-0.7,4.2\n"
    "soot,grey,1,52.0,-0.5,1.0\nsoot,grey,3,41.0,-0.4,-0.8\nsoot,grey,6,34.5,-0.2,-1.2\n"
)


def ran(tmp_path: Path, text: str) -> tuple[int, str, str]:
    """Return the status, what went to the output and what went to the errors."""
    file, out, err = tmp_path / "tiles.csv", io.StringIO(), io.StringIO()
    file.write_text(text, encoding="utf-8")
    return run(["fit", str(file)], out, err), out.getvalue(), err.getvalue()


def test_fit_prints_lines_that_a_profile_takes(tmp_path: Path) -> None:
    """The samples printed load where they are put, and the misses stand beside them as comments."""
    status, out, err = ran(tmp_path, GOOD)
    assert (status, err) == (0, "")
    assert "lightness = 66.2\na = -0.6\nb = 4.1" in out
    assert out.count("#   grey") == 3
    samples = out[out.index("samples = [") :]
    green = 'name = "chromium oxide green"'
    profile = read_profile(
        TEXT.replace(f"[[pigments]]\n{green}\n", f"[[pigments]]\n{green}\n{samples}")
    )
    read = next(p for p in profile.pigments if p.name == "chromium oxide green").samples
    assert [(one.dose_percent, one.lightness) for one in read] == [(1, 52), (3, 41), (6, 34.5)]


def test_fit_points_at_a_tile_that_does_not_fit(tmp_path: Path) -> None:
    """A reading far off the others' curve is marked to be looked at again."""
    text = GOOD + "soot,white,2,30.0,0,0\n,white,0,89,0,5\nsoot,grey,4,52.0,-0.5,1.0\n"
    _, out, _ = ran(tmp_path, text)
    again = english(Message("shades-again"))
    assert again in out
    assert again not in ran(tmp_path, GOOD)[1]


def test_fit_says_when_doses_are_few(tmp_path: Path) -> None:
    """Two doses make a curve that is a guess, and that is stated."""
    few = "\n".join(GOOD.splitlines()[:-1])
    assert "this is a guess" in ran(tmp_path, few)[1]
    assert "this is a guess" not in ran(tmp_path, GOOD)[1]


@pytest.mark.parametrize(
    ("text", "line", "says"),
    [
        ("", 1, "line is the heading"),
        ("a,b\n1,2\n", 1, "line is the heading"),
        (HEADING + "soot,gray,1,50,0,0\n", 2, 'here stands "gray"'),
        (HEADING + ",grey,0,66,0,4\nsoot,grey,x,50,0,0\n", 3, "dose_percent is a number"),
        (HEADING + "soot,grey,1,150,0,0\n", 2, "lies between 0 and 100"),
        (HEADING + "soot,grey,1,nan,0,0\n", 2, "lies between 0 and 100"),
        (HEADING + ",grey,1,50,0,0\n", 2, "needs its pigment’s name"),
    ],
)
def test_fit_tells_a_line_that_does_not_read(
    text: str, line: int, says: str, tmp_path: Path
) -> None:
    """Each fault stands beside its file and line, and the status is 1."""
    status, out, _ = ran(tmp_path, text)
    assert status == 1
    assert f"tiles.csv:{line}: " in out
    assert says in out


def test_fit_needs_a_tile_without_pigment(tmp_path: Path) -> None:
    """A cement's own colour is where every curve begins; without it, that is asked for."""
    status, out, _ = ran(tmp_path, HEADING + "soot,grey,1,50,0,0\n")
    assert status == 1
    assert english(Message("shades-no-bare", cement="grey")) in out


def test_fit_tells_a_file_that_cannot_be_read(tmp_path: Path) -> None:
    """A missing file and a folder leave with 2 and one sentence."""
    for path in (tmp_path / "none.csv", tmp_path):
        out, err = io.StringIO(), io.StringIO()
        assert run(["fit", str(path)], out, err) == 2
        assert err.getvalue().startswith(f"{path}: the file cannot")


def test_tiles_of_a_german_spreadsheet_are_read_and_answered_in_german(tmp_path: Path) -> None:
    """Semicolons and decimal commas; the misses have the profile's, the file's lines a point."""
    file, out = tmp_path / "tiles.csv", io.StringIO()
    file.write_text(GOOD.replace(",", ";").replace(".", ","), encoding="utf-8")
    profile = str(DEMONSTRATION.with_name("germany.toml"))
    assert run(["fit", str(file), "--workshop", profile], out, out, {}) == 0
    assert "lightness = 66.2" in out.getvalue()
    assert re.findall(r"#   grau (\d) %: \d+,\d", out.getvalue()) == ["1", "3", "6"]
    assert "Kurve" in out.getvalue()


@pytest.mark.parametrize(("name", "why"), [("none.csv", "not-there"), ("", "folder")])
def test_a_file_that_cannot_be_read_is_told_without_the_machine_s_words(
    name: str, why: str, tmp_path: Path
) -> None:
    """In the language of the place, with what is the matter."""
    out, err = io.StringIO(), io.StringIO()
    assert run(["fit", str(tmp_path / name)], out, err, {"LANG": "de_DE.UTF-8"}) == 2
    reason = Message("file-fault", why=why)
    unread = Message("cli-unreadable", file=str(tmp_path / name), reason=reason)
    assert err.getvalue() == f"{speech_in('de').say(unread)}\n"
