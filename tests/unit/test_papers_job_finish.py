"""The job sheet's steps of a finish: each is ticked, and what frees dust is cautioned about.

Source: silica dust comes of any working of hardened concrete, wet or dry; common practice, no
source (safety bodies of every country say the same of grinding, cutting and hammering).
"""

from dataclasses import replace
from datetime import date

import pytest

from ledgerstone.papers.job_finish import finish_cautions, finish_ticks
from ledgerstone.surfaces import Surface
from ledgerstone.workshop import Workshop
from support.jobs import job_of
from support.slabs import box, slab_json


def without_grits(workshop: Workshop, surface: Surface) -> Workshop:
    """The workshop, which works a surface by other means than grits."""
    finishes = (replace(f, grits=()) if f.surface == surface else f for f in workshop.finishes)
    return replace(workshop, finishes=tuple(finishes))


@pytest.mark.parametrize(
    ("surface", "dust"), [("as-cast", False), ("honed", True), ("polished", True)]
)
def test_a_finish_without_grits_is_a_step_with_its_dust_caution(
    workshop: Workshop, today: date, surface: Surface, *, dust: bool
) -> None:
    """However a face is worked, there is a line to tick; grinding or striking it frees dust."""
    order = {
        "slabs": [slab_json(box(1000, 500), finish={"surface": surface, "sealer": "matt"})],
        "delivery": {"kind": "collect"},
    }
    job = job_of(order, without_grits(workshop, surface), today)
    assert "job-face" in repr(finish_ticks(job, 0))
    assert ("job-silica" in repr([*finish_cautions(job)])) is dust
