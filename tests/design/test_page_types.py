"""The page's types of what it sends and reads are made from the contract."""

import json
import subprocess
from pathlib import Path
from typing import Any

import pytest

from design.source import ROOT
from ledgerstone.contract.document import document
from ledgerstone.contract.page_types import page_types

TSC = ROOT / "tests/node_modules/.bin/tsc"
OWN = ROOT / "tests/web/types.js"
MADE = ROOT / "tests/web/contract.d.ts"


def check(folder: Path, text: str) -> str:
    """Let the type check read the page's types and this script; what it says of it."""
    assert TSC.exists(), "tests/run installs the type check"
    (folder / "reader.js").write_text(f"{text}\nexport {{}};\n")
    settings: dict[str, Any] = json.loads((ROOT / "tests/tsconfig.json").read_text())
    settings["include"] = [
        str(folder / "reader.js"),
        str(OWN),
        str(MADE),
        str(ROOT / "web/**/*.js"),
    ]
    (folder / "tsconfig.json").write_text(json.dumps(settings))
    done = subprocess.run(
        [TSC, "--project", folder / "tsconfig.json"], capture_output=True, text=True, check=False
    )
    return done.stdout + done.stderr


def test_the_types_are_made_from_the_contract() -> None:
    """The committed types are those that the contract's schemas make."""
    made = page_types(document()["components"]["schemas"])
    assert MADE.read_text(encoding="utf-8") == made, (
        "write it again: python -m ledgerstone.contract types > tests/web/contract.d.ts"
    )


def test_what_the_contract_has_is_read(tmp_path: Path) -> None:
    """A script that reads what is always there, and asks for what may not be, passes."""
    reads = "(quote) => quote.price.total + (quote.changes?.revision ?? quote.slabs[0]?.area_m2)"
    assert (
        check(tmp_path, f"/** @type {{(quote: Quote) => string}} */ export const f = {reads};")
        == ""
    )


@pytest.mark.parametrize(
    "wrong",
    [
        "/** @param {Quote} quote */ export const f = (quote) => quote.colour;",
        "/** @param {Quote} quote */ export const f = (quote) => quote.changes.revision;",
        '/** @type {Quote["standing"]} */ export const f = "promised";',
        "/** @type {Relief} */ export const f = {kind: 'drainer', depth: true};",
    ],
)
def test_a_member_that_has_drifted_is_found(tmp_path: Path, wrong: str) -> None:
    """A member that the contract has not, may not send, or has of another type fails the check."""
    assert "error TS" in check(tmp_path, wrong)
