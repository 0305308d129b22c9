"""The profile's form as it is asked over HTTP: the key, faults, prices, and what is written."""

import json
from itertools import pairwise
from pathlib import Path

import pytest

from ledgerstone.api.keeping import MAX_BACKUPS, backup_folder, replace_file
from ledgerstone.application.workshop_form import version_of
from ledgerstone.workshop import DEMONSTRATION
from ledgerstone.workshop.reading.loader import profile_text
from support.documents import Json
from support.profile_form import ASKED, form, tried


@pytest.fixture
def file(tmp_path: Path) -> Path:
    """The demonstration's text as a file of one's own."""
    path = tmp_path / "workshop.toml"
    path.write_text(profile_text(DEMONSTRATION), encoding="utf-8")
    return path


def setting(pointer: str, value: str) -> Json:
    """A change that sets a value."""
    return {"op": "set", "pointer": pointer, "value": value}


def test_only_the_maker_reads_the_profile(file: Path) -> None:
    """Neither call answers without the maker's key."""
    client = form(file)
    none = {"Authorization": "Bearer none of ours"}
    assert client.get(ASKED, headers=none).status_code == 401
    assert client.post(ASKED, json={}, headers=none).status_code == 401
    assert file.read_text(encoding="utf-8") == profile_text(DEMONSTRATION)


def test_every_value_is_described(file: Path) -> None:
    """A value has its kind, unit, help, choices and standing; a table its help and subject."""
    told = form(file).get(ASKED).get_json()
    values = {one["pointer"]: one for one in told["values"]}
    assert values["/rates/hour"]["kind"] == "money"
    assert values["/finishes/1/hours_per_m2"]["unit"] == "h/m²"
    assert values["/shaping/fitting_gap_mm"]["unit"] == "mm"
    assert values["/shaping/fitting_gap_mm"]["help"] in profile_text(DEMONSTRATION)
    assert values["/steel/material"]["choices"] == ["stainless", "plain", "glass-fibre"]
    assert len(values["/steel/material"]["choices_say"]) == 3
    assert values["/palette/0/colour"]["kind"] == "colour"
    assert values["/calendar/weekdays"]["values"][0] == "monday"
    assert values["/palette/0/name"]["standing"] == "invented"
    assert values["/palette/0/doses/0/percent"]["standing"] == "usual"
    assert "value" not in values["/offer/payment"]
    tables = {one["pointer"]: one for one in told["tables"]}
    assert tables["/palette"]["help"].startswith("The palette.")
    assert tables["/mail"]["there"] is False
    assert tables["/hours"]["subject"] == "hours"
    assert told["writable"] is False
    share = told["share"]
    assert share["invented"] == sum(one["values"] for one in told["invented"])
    counted = [one["pointer"] for one in told["values"] if "standing" in one]
    counted += ["/palette/1/doses"]  # a list that is there and empty is a value too
    assert share["yours"] + share["usual"] + share["invented"] == len(counted)


def test_a_change_is_priced_and_not_written(file: Path) -> None:
    """A dearer hour makes three typical jobs dearer; the text has it, and the file does not."""
    client = form(file)
    before, after = tried(client), tried(client, setting("/rates/hour", "76.00"))
    assert len(before["jobs"]) == 3
    for was, now in zip(before["jobs"], after["jobs"], strict=True):
        assert float(now["total"]) > float(was["total"])
        assert now["hands_hours"] == was["hands_hours"]
    parts = {one["pointer"]: one["hands_hours"] for one in before["jobs"][1]["parts"]}
    assert parts["/hours/per_job/set_up"] == 0.3
    assert sum(parts.values()) <= before["jobs"][1]["hands_hours"]
    assert "hour = 76.00" in after["text"]
    assert "hour = 76.00" not in file.read_text(encoding="utf-8")
    assert after["saved"] is False


def test_hours_that_change_are_in_the_jobs(file: Path) -> None:
    """Twice the time for each knockout is so much more in a top with one, at the same pointer."""
    client = form(file)
    at = "/hours/per_mould/cutout"
    jobs = [tried(client)["jobs"][1], tried(client, setting(at, "2"))["jobs"][1]]
    parts = [next(p["hands_hours"] for p in job["parts"] if p["pointer"] == at) for job in jobs]
    assert parts[1] == pytest.approx(2.0)
    more = jobs[1]["hands_hours"] - jobs[0]["hands_hours"]
    assert more == pytest.approx(parts[1] - parts[0], abs=0.05)  # minutes are whole


def test_faults_come_at_their_places(file: Path) -> None:
    """All that is wrong comes at its pointer, with the text that has it; prices leave it out."""
    told = tried(
        form(file),
        setting("/rates/hour", "a lot"),
        setting("/table/length_mm", "0"),
        setting("/workshop/country", "QQ"),
        save=False,
    )
    assert {one["pointer"] for one in told["faults"]} >= {"/rates/hour", "/table/length_mm"}
    assert told["jobs"] == tried(form(file), save=False)["jobs"] != []
    assert 'hour = "a lot"' in told["text"]


def test_numbers_are_read_in_the_makers_language(file: Path) -> None:
    """In German a comma parts the tenths and a point the thousands."""
    client = form(file, language="de")
    told = tried(client, setting("/rates/hour", "52,50"), setting("/table/length_mm", "2.800"))
    assert told["faults"] == []
    assert "hour = 52.50" in told["text"]
    assert "length_mm = 2800" in told["text"]


@pytest.mark.parametrize(
    "change",
    [
        setting("/nowhere/at_all", "1"),
        setting("/palette", "1"),
        setting("/palette/99/name", "x"),
        setting("/rates/__class__", "x"),
        {"op": "confirm", "pointer": "/nowhere"},
        {"op": "add", "pointer": "/rates/hour"},
        {"op": "leave-out", "pointer": "/palette/99"},
        {"op": "leave-out", "pointer": ""},
    ],
)
def test_a_place_that_is_none_is_refused_by_its_change(file: Path, change: Json) -> None:
    """What no profile has is refused at the change that asks for it."""
    client = form(file)
    version = client.get(ASKED).get_json()["version"]
    changes = [setting("/rates/hour", "40"), change]
    answer = client.post(ASKED, json={"version": version, "changes": changes})
    assert answer.status_code == 400
    assert [one["pointer"] for one in answer.get_json()["faults"]] == ["/changes/1/pointer"]


def test_a_service_that_may_not_does_not_write(file: Path) -> None:
    """Saving is refused where it is not allowed, and for the invented workshop's own file."""
    for client in (form(file), form(DEMONSTRATION, is_writable=True)):
        version = client.get(ASKED).get_json()["version"]
        asked = {"version": version, "changes": [], "save": True}
        answer = client.post(ASKED, json=asked)
        assert [one["pointer"] for one in answer.get_json()["faults"]] == ["/save"]


def test_a_folder_that_nothing_may_be_put_into_is_not_written(
    file: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """As where a container has it for reading: the form then gives the file to download."""
    client = form(file, is_writable=True)
    assert client.get(ASKED).get_json()["writable"] is True
    monkeypatch.setattr("os.access", lambda path, _: Path(path) != file.parent)
    assert client.get(ASKED).get_json()["writable"] is False


def test_what_is_saved_is_written_whole_and_what_was_is_kept(file: Path) -> None:
    """The file has the change and every comment; the one before is kept; a fault writes nothing."""
    before = file.read_bytes()
    client = form(file, is_writable=True)
    told = tried(client, setting("/rates/hour", "44.00"), save=True)
    assert told["saved"] is True
    after = file.read_text(encoding="utf-8")
    assert after == before.decode().replace("hour = 38.00", "hour = 44.00")
    assert [one.read_bytes() for one in backup_folder(file).iterdir()] == [before]
    assert told["version"] == client.get(ASKED).get_json()["version"]
    assert tried(client, setting("/rates/hour", "a lot"), save=True)["saved"] is False
    assert file.read_text(encoding="utf-8") == after


def test_a_file_that_changed_since_is_not_overwritten(file: Path) -> None:
    """Changes of another version are refused, tried or saved, and what is there stays."""
    client = form(file, is_writable=True)
    version = client.get(ASKED).get_json()["version"]
    mine = file.read_text(encoding="utf-8").replace("count = 1", "count = 2")
    file.write_text(mine, encoding="utf-8")
    asked = {"version": version, "changes": [], "save": True}
    answer = client.post(ASKED, json=asked)
    assert [one["pointer"] for one in answer.get_json()["faults"]] == ["/version"]
    assert file.read_text(encoding="utf-8") == mine
    assert not replace_file(file, "x = 1", version)


def test_the_last_ten_are_kept(file: Path) -> None:
    """Of thirteen saved, ten that were before are kept, the newest; nothing else lies about."""
    texts = [f"count = {i}\n" for i in range(14)]
    file.write_text(texts[0], encoding="utf-8")
    for old, new in pairwise(texts):
        assert replace_file(file, new, version_of(old))
    kept = sorted(backup_folder(file).iterdir())
    assert [one.read_text(encoding="utf-8") for one in kept] == texts[-1 - MAX_BACKUPS : -1]
    assert {one.name for one in file.parent.iterdir()} == {file.name, backup_folder(file).name}


def test_a_write_that_fails_leaves_the_file(file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Where the new file can't be put in place, the old one stands whole, and nothing beside it."""
    before = file.read_bytes()
    client = form(file, is_writable=True)
    version = client.get(ASKED).get_json()["version"]

    def full(_path: Path, _target: Path) -> Path:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(Path, "replace", full)
    asked = {"version": version, "changes": [setting("/rates/hour", "44.00")], "save": True}
    answer = client.post(ASKED, json=asked)
    assert answer.status_code == 503
    assert file.read_bytes() == before
    assert [one for one in file.parent.rglob("*") if one.is_file()] == [file]


def test_a_file_that_is_no_toml_is_reported(file: Path) -> None:
    """A file spoilt by hand while the service runs is told as a fault, and described as nothing."""
    client = form(file)
    file.write_text("[rates\nhour = 1", encoding="utf-8")
    told = client.get(ASKED).get_json()
    assert len(told["faults"]) == 1
    assert all("value" not in one for one in told["values"])
    json.dumps(told)
