"""The README says what is so: its order is posted, and its answers are the real ones."""

import json
import re
import shlex
from collections.abc import Iterable, Iterator, Sequence
from datetime import date
from io import StringIO
from pathlib import Path
from typing import Any, Final

import pytest
from flask.testing import FlaskClient

from design.source import ROOT, is_ignored
from ledgerstone.api.keeping import backup_folder
from ledgerstone.cli.profiles import run as run_profiles
from ledgerstone.json_types import JSON
from support.commands import ran
from support.demonstration import MAKER_KEY

README = (ROOT / "README.md").read_text(encoding="utf-8")
BLOCKS = re.findall(r"```(sh|json)\n(.*?)```", README, re.DOTALL)
PYTHON: Final = ".venv/bin/python -m"
ANSWERS_ENDED: Final = 2
ANSWERS = [json.loads(text) for kind, text in BLOCKS if kind == "json"]


@pytest.fixture
def order() -> dict[str, Any]:
    """The order that the README's curl call sends."""
    sent = next(text for kind, text in BLOCKS if kind == "sh" and "curl" in text)
    (written,) = re.findall(r"cat > order\.json <<'END'\n(.*?)\nEND\n", sent, re.DOTALL)
    assert "-d @order.json" in sent
    body: dict[str, Any] = json.loads(written)
    return body


def _only(whole: JSON, shown: JSON) -> JSON:
    """The parts of an answer that the README shows of it: members may be left out, items not."""
    if isinstance(whole, dict) and isinstance(shown, dict):
        return {key: _only(whole.get(key), shown[key]) for key in shown}
    if isinstance(whole, list) and isinstance(shown, list) and len(whole) == len(shown):
        return [_only(*pair) for pair in zip(whole, shown, strict=True)]
    return whole


def test_the_two_commands_stand_under_the_job() -> None:
    """The title, one paragraph, then the two commands: nothing stands between."""
    title, job, commands = README.split("\n\n")[:3]
    assert title.startswith("# ")
    assert "worktop" in job
    assert [line.split()[0] for line in commands.splitlines()[1:-1]] == [
        "service/serve",
        "tests/run",
    ]


def test_the_answer_shown_is_the_answer(
    client: FlaskClient, order: dict[str, Any], today: date
) -> None:
    """What the README shows of the quote is what the service answers on that day."""
    answer = client.post("/v1/quotes", json=order)
    assert answer.status_code == 200
    assert ANSWERS[0]["issued"] == today.isoformat()
    assert _only(answer.json, ANSWERS[0]) == ANSWERS[0]


def test_the_finding_shown_is_the_finding(client: FlaskClient, order: dict[str, Any]) -> None:
    """The change that the README makes is sent back, with the finding that it shows."""
    moved = re.search(r'Move the basin to `"y": "([^"]+)"`', README)
    assert moved
    order["slabs"][0]["cutouts"][0]["centre"]["y"] = moved[1]
    answer = client.post("/v1/quotes", json=order)
    assert answer.status_code == 422
    findings = answer.get_json()["findings"]
    assert ANSWERS[1] in [_only(finding, ANSWERS[1]) for finding in findings]


def test_the_email_shown_becomes_an_offer(client: FlaskClient) -> None:
    """Pasted at the desk, the README's enquiry has a price, with a basin and a tap."""
    (email,) = re.findall(r"```text\n(.*?)```", README, re.DOTALL)
    maker = {"Authorization": f"Bearer {MAKER_KEY}"}
    read = client.post("/v1/enquiries", json={"message": email}, headers=maker).get_json()
    assert [one["label"] for one in read["order"]["slabs"][0]["cutouts"]] == ["basin", "tap"]
    answer = client.post("/v1/quotes", json=read["proposal"])
    assert answer.status_code == 200, answer.text


def _commands() -> Iterator[list[str]]:
    """The words of each command for our Python, those of the table last, as they stand."""
    for kind, text in BLOCKS:
        lines = text.splitlines() if kind == "sh" else []
        yield from (shlex.split(line, comments=True)[2:] for line in lines if PYTHON in line)
    table = README[README.index("| what | terminal, after `") :].split("\n\n")[0]
    for row in table.splitlines()[2:]:
        cell = row.split("|")[2].strip()
        if cell:
            yield ["ledgerstone", *shlex.split(cell.strip("`"))]


def test_its_commands_work_in_the_order_in_which_they_stand(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, order: dict[str, Any]
) -> None:
    """Each finds the files that it reads and writes no file that is there; one asks for answers."""
    monkeypatch.chdir(tmp_path)
    Path("order.json").write_text(json.dumps(order), encoding="utf-8")
    (email,) = re.findall(r"```text\n(.*?)```", README, re.DOTALL)
    Path("mail.eml").write_text(f"From: orla@example.com\n\n{email}", encoding="utf-8")
    done = []
    for module, *arguments in _commands():
        if arguments[0] == "mailbox":
            continue  # watches a mail server until it is stopped
        if "--help" in arguments:
            with pytest.raises(SystemExit) as ended:
                run_profiles(arguments, StringIO(), StringIO(), {}, StringIO())
            status = ended.value.code
        elif module == "ledgerstone.workshop":
            status = run_profiles(arguments, StringIO(), StringIO(), {}, StringIO())
        else:
            status = ran(*arguments)[0]
        done.append((arguments, status))
    begun = _begun([arguments for arguments, _ in done])
    assert len(done) >= 9
    assert len(begun) == len(set(begun)) == 2
    assert [
        (arguments, status)
        for arguments, status in done
        if status != (ANSWERS_ENDED if "--ask" in arguments else 0)
    ] == []
    assert [name for name in Path().iterdir() if not is_ignored(name)] == []


def _begun(commands: Iterable[Sequence[str]]) -> list[str]:
    """The files that commands begin a profile in."""
    return [arguments[1] for arguments in commands if arguments[0] == "init"]


def test_what_its_commands_write_is_ignored() -> None:
    """Who follows it at the top of a clone has no file more in the tree, nor in its checks."""
    profiles = ["shop.toml", *_begun(arguments for _, *arguments in _commands())]
    written = ["order.json", "mail.eml", "docker/.env", "docker/shop/workshop.toml", *profiles]
    written += [str(backup_folder(Path(profile))) for profile in profiles]
    assert len(profiles) == 3
    assert [name for name in written if not is_ignored(Path(name))] == []
    assert not is_ignored(Path("tests/data/order.json"))
    assert not is_ignored(Path("pyproject.toml"))
