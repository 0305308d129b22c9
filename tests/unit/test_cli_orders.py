"""The command line: an order's quote or its reply from a file, readable or as JSON."""

import email
import email.policy
import json
import subprocess
import sys
from collections.abc import Callable
from decimal import Decimal
from pathlib import Path
from typing import Any

import pytest

from ledgerstone.codec.tokens import Tokens
from ledgerstone.wording import Message, english
from support.calendars import FORTNIGHT, calendar
from support.commands import DAY, KEY, KEYS, ran
from support.demonstration import EXAMPLE_ORDER
from support.offered import MAKER, service

OrderFile = Callable[..., Path]


@pytest.fixture
def order(tmp_path: Path, example_order: dict[str, Any]) -> OrderFile:
    """Writes the example order to a file, with its basin where it is wanted."""

    def written(basin_y: str = "270 mm", place: str = "outdoors") -> Path:
        example_order["slabs"][0]["cutouts"][0]["centre"]["y"] = basin_y
        example_order["slabs"][0]["place"] = place
        path = tmp_path / "order.json"
        path.write_text(json.dumps(example_order), encoding="utf-8")
        return path

    return written


def test_a_quote_is_readable(order: OrderFile) -> None:
    """Standing, price, lines, day, size, mass, link and cautions stand in lines of their own."""
    status, said, told = ran("quote", order())
    members = json.loads(ran("quote", order(), "--json")[1])
    assert status == 0
    assert told == ""
    price = members["price"]
    amounts = [price["total"], price["deposit"], *(line["amount"] for line in price["lines"])]
    wanted = [members["reference"], members["link"], "1450 mm × 560 mm",
              *(f"£{abs(Decimal(amount)):,.2f}" for amount in amounts),
              f"{members['weight']['packed_kg']} kg", "Quotation",
              *(finding["says"] for finding in members["findings"])]  # fmt: skip
    assert [one for one in wanted if one not in said] == []


def test_json_is_what_the_service_answers(order: OrderFile) -> None:
    """With --json the quote is the one that a service with the same key gives the maker."""
    members = json.loads(ran("quote", order(), "--json")[1])
    answer = service(DAY, keys=(KEY,)).post("/v1/quotes", json=EXAMPLE_ORDER, headers=MAKER)
    assert members == answer.get_json()
    assert Tokens([KEY]).open("quote", members["token"])["total"] == members["price"]["total"]


def test_a_send_back_says_what_to_change(order: OrderFile) -> None:
    """An order that cannot be made ends with status 1, its findings, and what settles them."""
    status, said, _ = ran("quote", order("218 mm"))
    members = json.loads(ran("quote", order("218 mm"), "--json")[1])
    assert status == 1
    for finding in members["findings"]:
        assert finding["says"] in said
        assert all(remedy["says"] in said for remedy in finding["remedies"])
    assert f"All at once, for £{Decimal(members['fix_all']['price']['total']):,.2f}:" in said
    assert all(says in said for says in members["fix_all"]["says"])


def test_a_reply_is_a_letter(order: OrderFile) -> None:
    """A reply greets by name and holds the price and the link; --json has its HTML."""
    status, said, _ = ran("reply", order(), "--to", "Odile", "--short")
    made = json.loads(ran("reply", order(), "--to", "Odile", "--short", "--json")[1])
    assert status == 0
    assert said == f"Subject: {made['subject']}\n\n{made['text']}"
    assert "Hello Odile," in said
    assert made["html"].startswith("<!DOCTYPE html>")


def test_a_draft_is_written_once(order: OrderFile, tmp_path: Path) -> None:
    """--draft writes a file that mail programs open, and never over another."""
    file = tmp_path / "reply.eml"
    assert ran("reply", order(), "--draft", file)[0] == 0
    mail = email.message_from_bytes(file.read_bytes(), policy=email.policy.default)
    assert not mail.defects
    kept = file.read_bytes()
    status, _, told = ran("reply", order(), "--draft", file)
    assert status == 2
    assert str(file) in told
    assert file.read_bytes() == kept


def test_a_job_sheet_is_readable(order: OrderFile, tmp_path: Path) -> None:
    """A job sheet's pages stand one by one, every text of its JSON among them."""
    status, said, _ = ran("job-sheet", order())
    made = json.loads(ran("job-sheet", order(), "--json")[1])
    assert status == 0
    for page in made["pages"]:
        assert f"{page['title']}\n{'=' * len(page['title'])}\n" in said
        for block in page["blocks"]:
            texts = block.get("says", [])
            cells = [cell for row in block.get("rows", []) for cell in row]
            for text in [*([texts] if isinstance(texts, str) else texts), *cells]:
                assert text in said
    pdf = tmp_path / "job.pdf"
    assert ran("job-sheet", order(), "--pdf", pdf)[0] == 0
    assert pdf.read_bytes().startswith(b"%PDF")


def test_a_job_that_cannot_be_made_is_sent_back(order: OrderFile) -> None:
    """There is no job sheet of an order that is sent back: what to change is reported instead."""
    status, said, _ = ran("job-sheet", order("218 mm"))
    assert status == 1
    assert said == ran("quote", order("218 mm"))[1]


@pytest.mark.parametrize("command", ["quote", "reply", "job-sheet"])
def test_what_is_not_understood_is_reported_by_pointer(order: OrderFile, command: str) -> None:
    """Faults of an order are told one a line, with the file and the pointer, and nothing else."""
    file = order(place="moon")
    status, said, told = ran(command, file)
    assert status == 2
    assert said == ""
    assert told.startswith(f"{file}: /slabs/0/place: ")


@pytest.mark.parametrize(
    ("content", "says"),
    [(b"{", "not JSON"), (b"\xff", "UTF-8"), (b"", "empty"), (b"[]", "JSON object")],
)
def test_a_file_that_is_no_order_is_reported(tmp_path: Path, content: bytes, says: str) -> None:
    """A file that holds no order says why, without a trace of what runs underneath."""
    file = tmp_path / "x.json"
    file.write_bytes(content)
    status, _, told = ran("quote", file)
    assert status == 2
    assert says in told
    assert "Traceback" not in told


def test_a_file_that_is_not_there_is_reported(tmp_path: Path) -> None:
    """A missing order, or a missing profile, is named."""
    file = tmp_path / "none.json"
    status, _, told = ran("quote", file)
    assert status == 2
    not_there = Message("file-fault", why="not-there")
    assert english(Message("cli-unreadable", file=str(file), reason=not_there)) in told
    status, _, told = ran("quote", tmp_path / "none.json", "--workshop", tmp_path / "mine.toml")
    assert status == 2
    assert "no such file" in told


def test_without_keys_the_command_states_that_links_open_nowhere(order: OrderFile) -> None:
    """Without the service's keys the quote is made, and a line says that its link opens nowhere."""
    status, said, told = ran("quote", order(), keys={})
    assert status == 0
    assert "Quotation" in said
    assert "LEDGERSTONE_SIGNING_KEYS is not set" in told


@pytest.mark.parametrize("arguments", [(), ("bake",), ("quote",), ("quote", "a", "--wrong")])
def test_wrong_arguments_are_reported(
    arguments: tuple[str, ...], capsys: pytest.CaptureFixture[str]
) -> None:
    """Arguments that mean nothing end with status 2 and how to write them."""
    with pytest.raises(SystemExit) as ended:
        ran(*arguments)
    assert ended.value.code == 2
    assert "usage: python -m ledgerstone" in capsys.readouterr().err


def test_days_already_taken_are_read_from_the_calendars_file(
    order: OrderFile, tmp_path: Path
) -> None:
    """With the table booked for a fortnight it is ready later; without the file that is told."""
    file = tmp_path / "bookings.ics"
    file.write_text(calendar(FORTNIGHT), encoding="utf-8")
    keys = {**KEYS, "LEDGERSTONE_CALENDAR": str(file)}
    free, busy = (
        json.loads(ran("quote", order(), "--json", keys=one)[1])["lead_time"]["ready_on"]
        for one in (KEYS, keys)
    )
    assert busy > free
    file.unlink()
    lost = json.loads(ran("quote", order(), "--json", keys=keys)[1])
    assert "file is not there" in lost["depends_on"][0]
    assert "file is not there" in ran("quote", order(), keys=keys)[1]
    assert lost["standing"] == "estimate"


def test_it_runs_as_a_module(order: OrderFile) -> None:
    """``python -m ledgerstone quote -`` reads an order from its input."""
    content = order("218 mm").read_bytes()
    ended = subprocess.run(
        [sys.executable, "-m", "ledgerstone", "quote", "-"],
        input=content,
        capture_output=True,
        check=False,
    )
    assert ended.returncode == 1
    assert "Not to be made" in ended.stdout.decode()
