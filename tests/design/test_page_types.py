"""The page's own types, held to the contract by the type check."""

import json
import subprocess
from pathlib import Path
from typing import Any

import pytest
import yaml

from design.contract_types import declarations
from design.source import ROOT

TSC = ROOT / "tests/node_modules/.bin/tsc"
TYPES = ROOT / "tests/web/types.js"

# What the page calls it, and what the contract does.
SENT = {
    "Order": "Order",
    "Slab": "Slab",
    "Outline": "Rectangle | LShape | Round | Polygon",
    "Cutout": "CircleCutout | RectangleCutout | SlotCutout | PolygonCutout",
    "Relief": "Drainer | Relief",
    "Join": "Join",
    "JoinEnd": "JoinEnd",
    "Place": "Point",
}
ANSWERED = {
    "Choices": "Choices",
    "Quote": "Quote",
    "Changes": "Changes",
    "SentBack": "SentBack",
    "NotUnderstood": "NotUnderstood",
    "Fault": 'NotUnderstood["faults"][number]',
    "Opened": "OpenedQuote",
    "Finding": "Finding",
    "Remedy": "Remedy | Fix",
    "Price": "Price",
    "Money": "Money",
    "LeadTime": 'Quote["lead_time"]',
    "Drawings": "Drawings",
}
HELD = """
type KeyOf<T> = T extends unknown ? keyof T : never;
type Own<Page, Contract> = Exclude<KeyOf<Page>, KeyOf<Contract>>;
declare function same<Page, Contract extends Page>(
  ...own: [Own<Page, Contract>] extends [never] ? [] : [Own<Page, Contract>]
): void;
"""


def check(folder: Path, text: str) -> str:
    """Let the type check read the page's types and this text; what it says of it."""
    assert TSC.exists(), "tests/run installs the type check"
    (folder / "held.ts").write_text(text)
    settings: dict[str, Any] = json.loads((ROOT / "tests/tsconfig.json").read_text())
    settings["include"] = [
        str(folder / "held.ts"),
        str(TYPES),
        str(ROOT / "web/**/*.js"),
    ]
    (folder / "tsconfig.json").write_text(json.dumps(settings))
    done = subprocess.run(
        [TSC, "--project", folder / "tsconfig.json"], capture_output=True, text=True, check=False
    )
    return done.stdout + done.stderr


def contract() -> str:
    """Write the contract's schemas as types."""
    document = yaml.safe_load((ROOT / "openapi/openapi.yaml").read_text(encoding="utf-8"))
    return declarations(document["components"]["schemas"])


def held(pairs: dict[str, str]) -> str:
    """Ask of each pair whether the contract gives what the page expects, and knows all of it."""
    lines = []
    for page, names in pairs.items():
        whole = " | ".join(f"Contract.{name}" for name in names.split(" | "))
        lines.append(f"same<{page}, {whole}>();")
    return "\n".join(lines)


def test_the_pages_types_are_the_contracts(tmp_path: Path) -> None:
    """What the contract sends fits what the page reads, and the page names no member of its own."""
    assert check(tmp_path, contract() + HELD + held(SENT | ANSWERED)) == ""


@pytest.mark.parametrize(
    "wrong",
    [
        "same<{kind: string, colour?: string}, Contract.Relief>();",
        "same<{depth: boolean}, Contract.Relief>();",
        'same<{standing: "estimate"}, Contract.Quote>();',
    ],
)
def test_a_type_that_has_drifted_is_found(tmp_path: Path, wrong: str) -> None:
    """A member the contract has not, of another type, or narrower, fails the check."""
    assert "error TS" in check(tmp_path, contract() + HELD + wrong)
