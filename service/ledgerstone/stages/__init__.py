"""The stages of a quote: each a pure function that returns a frozen record of what it worked out.

``plan`` → ``assess`` → ``schedule`` → ``judge`` → ``price_work``. A stage takes the records of the
stages before it; a check takes the record of its stage and nothing else, so that no check of a
shape can set the plate solver off.
"""

from __future__ import annotations

from ledgerstone.stages.assessed import (
    Assessed,
    Unassessed,
    assess,
    assess_handling,
    assess_in_place,
)
from ledgerstone.stages.cache import StageCache
from ledgerstone.stages.context import StageContext
from ledgerstone.stages.judged import Judged, TooYoung, judge
from ledgerstone.stages.planned import Planned, plan
from ledgerstone.stages.priced import Priced, price_work
from ledgerstone.stages.scheduled import Scheduled, schedule

__all__ = [
    "Assessed",
    "Judged",
    "Planned",
    "Priced",
    "Scheduled",
    "StageCache",
    "StageContext",
    "TooYoung",
    "Unassessed",
    "assess",
    "assess_handling",
    "assess_in_place",
    "judge",
    "plan",
    "price_work",
    "schedule",
]
