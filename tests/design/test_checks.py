"""The table of checks in DEVELOPERS.md is the registry, and no other."""

import re

from design.source import ROOT
from ledgerstone.checks import PROMISE_CHECKS, SHAPE_CHECKS, STAGE_OF, STAGES, STRENGTH_CHECKS

TABLE = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8").split("\n## Checks\n")[1]
ROWS = re.findall(r"^\| `([a-z-]+)` \| ([a-z]+) \|", TABLE.split("\n## ")[0], re.MULTILINE)


def test_every_check_has_its_row() -> None:
    """Each name that a check may yield has one row, with the stage it runs in, in stage order."""
    assert sorted(ROWS) == sorted(STAGE_OF.items())
    stages = [STAGES.index(stage) for _, stage in ROWS]
    assert stages == sorted(stages)


def test_a_check_is_named_in_kebab_case_once() -> None:
    """No two checks share a name, and each is made of lower-case words and hyphens."""
    names = [name for check in SHAPE_CHECKS for name in check.names]
    names += [name for check in STRENGTH_CHECKS for name in check.names]
    names += [name for check in PROMISE_CHECKS for name in check.names]
    assert len(set(names)) == len(names)
    assert all(re.fullmatch(r"[a-z]+(-[a-z]+)*", name) for name in names)
