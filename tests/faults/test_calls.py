"""The page of calls to paste does what it says, pasted as it stands, against a real server."""

import email.policy
import json
import os
import re
import subprocess
import sys
from collections.abc import Iterator
from email.parser import BytesParser
from pathlib import Path

import pytest

from support.demonstration import MAKER_KEY
from support.serving import ROOT, Served, served

PAGE = (ROOT / "openapi/calls.md").read_text(encoding="utf-8")
SHELL = "\n".join(re.findall(r"(?s)```sh\n(.*?)```", PAGE))
AGAIN, MERGE = re.findall(r"(?s)```python\n(.*?)```", PAGE)


@pytest.fixture(scope="module")
def service() -> Iterator[Served]:
    """A server for one who pastes."""
    with served(RATE="0") as running:
        yield running


@pytest.fixture
def pasted(service: Served, tmp_path: Path) -> dict[str, str]:
    """The environment in which the page's first block has been pasted; its shell has run."""
    environment = {**os.environ, "BASE": f"http://127.0.0.1:{service.port}", "KEY": MAKER_KEY}
    subprocess.run(
        ["sh", "-euc", SHELL], cwd=tmp_path, env=environment, check=True, capture_output=True
    )
    return environment


def _python(script: str, folder: Path, environment: dict[str, str]) -> str:
    done = subprocess.run(
        [sys.executable, "-c", script],
        cwd=folder,
        env=environment,
        check=True,
        capture_output=True,
        text=True,
    )
    return done.stdout


def test_the_curls_give_a_quote_a_reply_and_a_job_sheet(
    pasted: dict[str, str], tmp_path: Path
) -> None:
    """What the shell's blocks leave behind is a quote, a draft with pictures and a PDF."""
    assert pasted["KEY"] == MAKER_KEY
    assert json.loads((tmp_path / "answer.json").read_text())["price"]["total"]
    draft = BytesParser(policy=email.policy.default).parsebytes(
        (tmp_path / "reply.eml").read_bytes()
    )
    assert draft["subject"]
    assert "Ada" in draft.get_body(("plain",)).get_content()  # type: ignore[union-attr]  # there is one
    assert (tmp_path / "job-sheet.pdf").read_bytes().startswith(b"%PDF-")


def test_the_python_mends_an_order_and_quotes_it(pasted: dict[str, str], tmp_path: Path) -> None:
    """The first script prints the finding on the strip, applies the fix, and prints the price."""
    said = _python(AGAIN, tmp_path, pasted)
    assert "stops The strip" in said
    assert re.search(r"(?m)^200 [\d.]+ GBP \d{4}-\d\d-\d\d$", said)


def test_the_mail_merge_writes_a_draft_each(pasted: dict[str, str], tmp_path: Path) -> None:
    """Of three enquiries, two become named drafts, and the third's fault is reported."""
    enquiries = tmp_path / "enquiries"
    enquiries.mkdir()
    for name in ("Ada", "Zoë"):
        (enquiries / f"{name}.json").write_text((tmp_path / "order.json").read_text())
    (enquiries / "Nobody.json").write_text('{"slabs": []}')
    said = _python(MERGE, tmp_path, pasted)
    assert said.startswith("Nobody.json ")
    assert {path.name for path in (tmp_path / "replies").iterdir()} == {"Ada.eml", "Zoë.eml"}
