"""Whom a finding is told: what a customer acts on, and what is the workshop's own to see to."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from ledgerstone.checks.finding import Finding
from ledgerstone.order import Delivery

# What the workshop alone acts on: it stands on the job sheet, and in the answer to the maker.
MAKERS_OWN: Final = frozenset({"young-concrete"})
# What only who carries a slab in acts on.
CARRIERS_OWN: Final = frozenset({"carry-on-edge"})


def for_customers(findings: Iterable[Finding], delivery: Delivery) -> tuple[Finding, ...]:
    """Return what a customer acts on: no task of the workshop's, nor how it carries in itself."""
    ours = MAKERS_OWN | (CARRIERS_OWN if delivery.kind == "fitted" else frozenset())
    return tuple(finding for finding in findings if finding.check not in ours)
