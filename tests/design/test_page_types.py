"""The page's types of what it sends and reads are made from the contract."""

import json
import subprocess
from pathlib import Path
from typing import Any

from design.source import ROOT
from ledgerstone.contract.document import document
from ledgerstone.contract.page_types import page_types

TSC = ROOT / "tests/node_modules/.bin/tsc"
OWN = ROOT / "tests/web/types.js"
MADE = ROOT / "tests/web/contract.d.ts"


def check(folder: Path, scripts: dict[str, str]) -> dict[str, str]:
    """Let the type check read the page's types and some scripts; what it says of each, by name."""
    assert TSC.exists(), "tests/run installs the type check"
    for name, text in scripts.items():
        (folder / f"{name}.js").write_text(f"{text}\nexport {{}};\n")
    settings: dict[str, Any] = json.loads((ROOT / "tests/tsconfig.json").read_text())
    settings["include"] = [str(folder / "*.js"), str(OWN), str(MADE), str(ROOT / "web/**/*.js")]
    (folder / "tsconfig.json").write_text(json.dumps(settings))
    done = subprocess.run(
        [TSC, "--project", folder / "tsconfig.json"], capture_output=True, text=True, check=False
    )
    lines = (done.stdout + done.stderr).splitlines()
    return {name: "\n".join(x for x in lines if f"{name}.js" in x) for name in scripts}


def test_the_types_are_made_from_the_contract() -> None:
    """The committed types are those that the contract's schemas make."""
    made = page_types(document()["components"]["schemas"])
    assert MADE.read_text(encoding="utf-8") == made, (
        "write it again: python -m ledgerstone.contract types > tests/web/contract.d.ts"
    )


def test_what_has_drifted_from_the_contract_is_found(tmp_path: Path) -> None:
    """A script that reads what is always there, and asks for what may not be, passes.

    A member that the contract has not, may not send, or has of another type fails the check.
    """
    reads = "(quote) => quote.price.total + (quote.changes?.revision ?? quote.slabs[0]?.area_m2)"
    said = check(
        tmp_path,
        {
            "right": f"/** @type {{(quote: Quote) => string}} */ export const f = {reads};",
            "unknown": "/** @param {Quote} quote */ export const f = (quote) => quote.colour;",
            "unasked": "/** @param {Quote} quote */ export const f = "
            "(quote) => quote.changes.revision;",
            "unlisted": '/** @type {Quote["standing"]} */ export const f = "promised";',
            "mistyped": "/** @type {Relief} */ export const f = {kind: 'drainer', depth: true};",
        },
    )
    assert said.pop("right") == ""
    assert [name for name, errors in said.items() if "error TS" not in errors] == []
