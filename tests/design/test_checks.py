"""The table of checks in DEVELOPERS.md is the registry, and no other."""

import re

from design.source import ROOT
from ledgerstone.checks import CHECK_GROUPS, GROUP_OF, PROMISE_CHECKS, SHAPE_CHECKS, STRENGTH_CHECKS
from ledgerstone.checks.audience import CARRIERS_OWN, MAKERS_OWN

TABLE = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8").split("\n## Checks\n")[1]
LEVELS = dict(re.findall(r"^\| `([a-z-]+)` \| [a-z]+ \| ([a-z, ]+) \|", TABLE, re.MULTILINE))
ROWS = re.findall(r"^\| `([a-z-]+)` \| ([a-z]+) \|", TABLE.split("\n## ")[0], re.MULTILINE)


def test_every_check_has_its_row() -> None:
    """Each name that a check may yield has one row, with the group it runs in, in their order."""
    assert sorted(ROWS) == sorted(GROUP_OF.items())
    groups = [CHECK_GROUPS.index(group) for _, group in ROWS]
    assert groups == sorted(groups)


def test_a_check_is_named_in_kebab_case_once() -> None:
    """No two checks share a name, and each is made of lower-case words and hyphens."""
    names = [name for check in SHAPE_CHECKS for name in check.names]
    names += [name for check in STRENGTH_CHECKS for name in check.names]
    names += [name for check in PROMISE_CHECKS for name in check.names]
    assert len(set(names)) == len(names)
    assert all(re.fullmatch(r"[a-z]+(-[a-z]+)*", name) for name in names)


def test_what_may_stop_an_order_is_known() -> None:
    """A check whose row has the level "stops" may stop an order, and no other may."""
    registered = {check.names: check.may_stop for check in SHAPE_CHECKS}
    registered |= {check.names: check.may_stop for check in STRENGTH_CHECKS}
    registered |= {check.names: check.may_stop for check in PROMISE_CHECKS}
    for names, may_stop in registered.items():
        assert may_stop == any("stops" in LEVELS[name] for name in names), names


def test_whom_a_check_is_told_is_in_its_row() -> None:
    """What is the workshop's own to see to, or the carrier's, says so, and nothing else does."""
    rows = re.findall(r"^\| `([a-z-]+)` \|.*; told (the workshop|who carries)", TABLE, re.MULTILINE)
    told = {whom: {name for name, told in rows if told == whom} for _, whom in rows}
    assert told == {"the workshop": set(MAKERS_OWN), "who carries": set(CARRIERS_OWN)}
