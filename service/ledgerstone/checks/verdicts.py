"""From a verdict of the plate to a finding: its level, its numbers and its place."""

from __future__ import annotations

from shapely.geometry import Point

from ledgerstone.checks.finding import Finding, Level, geojson
from ledgerstone.strength.verdict import Verdict
from ledgerstone.wording import Message

_PLATE = "thin plate against EN 1992-1-1 3.1.8 and 2.4.2.4"
CAUTION_UTILISATION = 0.8  # from this utilisation on the customer is warned: methods §1.4


def finding_of(
    check: str, i: int, verdict: Verdict, message: Message, level: Level | None = None
) -> Finding:
    """Return the finding of a verdict; above 1.0 it stops, unless a level is given."""
    return Finding(
        check,
        level or ("stops" if verdict.utilisation > 1.0 else "caution"),
        message,
        _PLATE,
        slab=i,
        at=(f"/slabs/{i}",),
        measured={"stress_mpa": round(verdict.stress_mpa, 2)},
        limit={"stress_mpa": round(verdict.limit_mpa, 2)},
        where_mm=geojson(Point(verdict.where_mm)),
        key=verdict.case,
    )
