"""The findings of an order's checks, and the records of its stages."""

from __future__ import annotations

from dataclasses import dataclass

from ledgerstone.checks.finding import Finding
from ledgerstone.schedule import LeadTime
from ledgerstone.stages import Assessed, Judged, Planned, Priced, Scheduled


@dataclass(frozen=True, slots=True)
class StageRecords:
    """The records of every stage, of an order that nothing stops."""

    judged: Judged
    priced: Priced

    @property
    def planned(self) -> Planned:
        """The plans of its slabs."""
        return self.judged.planned

    @property
    def assessed(self) -> Assessed:
        """The stresses, the steel and the ways of handling."""
        return self.judged.assessed

    @property
    def scheduled(self) -> Scheduled:
        """The operations and the days."""
        return self.judged.scheduled

    @property
    def lead_time(self) -> LeadTime:
        """The ready and arrival days; an error if there are none."""
        return self.scheduled.promised


@dataclass(frozen=True, slots=True)
class Checked:
    """The findings of all checks that ran, and the stages that did not run.

    Attributes
    ----------
    planned
        The slabs' plans; None if an internal fault lost them.
    records
        None if something stops the order, or not every stage was run.
    """

    findings: tuple[Finding, ...]
    not_checked: tuple[str, ...] = ()
    planned: Planned | None = None
    records: StageRecords | None = None

    @property
    def stops(self) -> tuple[Finding, ...]:
        """The findings for which the order cannot be done as asked."""
        return tuple(finding for finding in self.findings if finding.level == "stops")
