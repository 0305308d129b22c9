"""Fourth stage: the verdicts of every slab in place, once it is scheduled."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from ledgerstone.order import Slab
from ledgerstone.shape import Shape
from ledgerstone.stages.assessed import Assessed
from ledgerstone.stages.planned import Planned
from ledgerstone.stages.scheduled import Scheduled
from ledgerstone.strength.slabs import SlabStrength


@dataclass(frozen=True, slots=True)
class Judged:
    """An order whose verdicts are final."""

    assessed: Assessed
    scheduled: Scheduled
    strength: tuple[SlabStrength, ...]

    @property
    def planned(self) -> Planned:
        """The plans of its slabs."""
        return self.assessed.planned

    def slabs(self) -> Iterator[tuple[int, Slab, Shape, SlabStrength]]:
        """Each slab by its index, with its plan and its verdicts."""
        return (
            (i, slab, shape, self.strength[i]) for i, slab, shape in self.assessed.planned.slabs()
        )


def judge(assessed: Assessed, scheduled: Scheduled) -> Judged:
    """Return the verdicts in place: at the age that concrete is trusted at in use.

    Source
    ------
    EN 1992-1-1 3.1.2(5), strength is specified at 28 days.
    """
    return Judged(assessed, scheduled, assessed.strength)
