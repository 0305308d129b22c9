"""What the maker's commands say of themselves, in English and in German."""

import io
from collections.abc import Callable, Mapping
from pathlib import Path

import pytest

from ledgerstone.cli import orders, past_jobs, profiles, shades, strips

COMMANDS: Mapping[str, tuple[Callable[..., int], list[str]]] = {
    "workshop": (profiles.run, []),
    "check": (profiles.run, ["check"]),
    "init": (profiles.run, ["init"]),
    "try": (past_jobs.run, []),
    "order": (orders.run, []),
    "quote": (orders.run, ["quote"]),
    "reply": (orders.run, ["reply"]),
    "answer": (orders.run, ["answer"]),
    "mailbox": (orders.run, ["mailbox"]),
    "shade": (shades.run, ["fit"]),
    "strips": (strips.run, []),
}
ENGLISH = ("usage", "options", "show this", "arguments", "the ", "print", "write", "message")


def help_shown(name: str, language: str, capsys: pytest.CaptureFixture[str]) -> str:
    """What a command's --help prints in a language."""
    run, arguments = COMMANDS[name]
    with pytest.raises(SystemExit) as left:
        run([*arguments, "--help"], io.StringIO(), io.StringIO(), {"LANG": language})
    assert left.value.code == 0
    return capsys.readouterr().out


@pytest.mark.parametrize("name", COMMANDS)
def test_each_command_s_help_is_in_the_maker_s_language(
    name: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """Usage, options and what each is for; nothing of it is English in German."""
    english = help_shown(name, "en_GB.UTF-8", capsys)
    german = help_shown(name, "de_DE.UTF-8", capsys)
    assert english.startswith("usage: ")
    assert german.startswith("Aufruf: ")
    assert "diese Hilfe ausgeben" in german
    words = german.partition("[[jobs]]")[0].lower().replace("--", "")
    assert [word for word in ENGLISH if f" {word}" in words] == []


@pytest.mark.parametrize("language", ["en", "de"])
def test_the_message_about_wrong_arguments_is_in_the_maker_s_language(
    language: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """The usage, and that --help says more."""
    with pytest.raises(SystemExit) as left:
        profiles.run(["check"], io.StringIO(), io.StringIO(), {"LANG": language})
    assert left.value.code == 2
    said = capsys.readouterr().err
    assert "--help" in said.splitlines()[-1]
    assert ("required" in said, "passen nicht" in said) == (False, language == "de")


def test_shades_and_strips_answer_in_german(tmp_path: Path) -> None:
    """What is wrong in a table, and the cautions before the next strip."""
    file, told = tmp_path / "a.csv", {"LC_ALL": "de_DE.UTF-8"}
    file.write_text("a,b\n1,2\n", encoding="utf-8")
    out, err = io.StringIO(), io.StringIO()
    assert shades.run(["fit", str(file)], out, err, told) == 1
    assert "Zeile ist die Kopfzeile" in out.getvalue()
    assert strips.run([str(file)], out, err, told) == 2
    assert "in der Spalte age_days eine Zahl" in err.getvalue()
    rows = "age_days,width_mm,thickness_mm,span_mm,load_kg\n7,100,40,600,110\n"
    file.write_text(rows, encoding="utf-8")
    assert strips.run([str(file)], out, err, told) == 0
    assert "Schutzbrille" in out.getvalue()
    assert "1 Streifen brach" in out.getvalue()
