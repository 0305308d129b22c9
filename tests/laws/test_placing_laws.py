"""What the page's buttons place can be made wherever any place of it can.

Every start with every pair of openings beside its own, on slabs of many sizes. Where a layout is
stopped, or none is found, a coarse search of all places (``support.oracles.coarse_placing``) proves
that none is better: the search knows nothing of how a layout is found. The whole matrix is done by
``laws.placing_run``, in parts.
"""

from collections import Counter
from datetime import date

import numpy as np
import pytest

from laws.placing_run import Case, matrix, verdict
from ledgerstone.order import Slab
from ledgerstone.stages import StageContext
from ledgerstone.workshop import Workshop
from support.slabs import box, slab_of

DAILY = 4
# Found by the whole matrix: three openings that go in only with the narrowest strips between them,
# and openings that crack wherever the strips about them are not alike.
TIGHT = Case("hob", ("basin", "round"), 620, 1200)
EVEN = Case("hob", ("basin", "round"), 650, 1200)
# Of openings that crack at the first places tried: one at a later of the usual places, one where
# what nearly fills the depth is in the middle of it, one about none of the usual places.
LATER = Case("basin", ("tap", "slot"), 560, 800)
CENTRED = Case("hob", ("basin", "round"), 600, 1200)
ANYWHERE = Case("basin", ("basin", "round"), 600, 1000)
STEADY = Case("l-right", ("sink", "tap"), 560, 1400)  # all seats but those that tip are known
NOWHERE = Case("outdoor", ("rectangle", "rectangle"), 650, 1200)  # cracks wherever they stand


@pytest.fixture(name="like")
def _like(workshop: Workshop) -> Slab:
    return slab_of(workshop, box(1500, 600))


@pytest.fixture(name="context")
def _context(workshop: Workshop, today: date) -> StageContext:
    return StageContext(workshop, (), today)


def test_what_is_added_can_be_made(like: Slab, context: StageContext) -> None:
    """Of a few cases of the matrix none is stopped where any place can be made."""
    cases = matrix()
    assert len(cases) == 17_640
    drawn = np.random.default_rng(4).choice(len(cases), DAILY, replace=False)
    found = Counter(verdict(cases[k], like, context) for k in drawn)
    assert found["missed"] == 0
    assert found["made"] >= DAILY / 4


def test_openings_that_go_in_only_tightly_are_placed(like: Slab, context: StageContext) -> None:
    """Where wider strips leave no room for the last opening, all of them are placed nearer."""
    assert verdict(TIGHT, like, context) == "made"


def test_openings_that_crack_beside_uneven_strips_are_placed_evenly(
    like: Slab, context: StageContext
) -> None:
    """Where a strip wide enough to cast still cracks, it is shared with its neighbours."""
    assert verdict(EVEN, like, context) == "made"


@pytest.mark.long
def test_openings_that_crack_wherever_they_stand_are_not_missed(
    like: Slab, context: StageContext
) -> None:
    """Where every strip wide enough to cast cracks, no place of a coarse search does not."""
    assert verdict(NOWHERE, like, context) != "missed"


@pytest.mark.parametrize(
    "case", [pytest.param(LATER, marks=pytest.mark.long), CENTRED, ANYWHERE, STEADY]
)
def test_openings_that_crack_at_the_first_places_are_placed_elsewhere(
    case: Case, like: Slab, context: StageContext
) -> None:
    """Where the first places that have room crack, others are tried before none is found."""
    assert verdict(case, like, context) == "made"


@pytest.mark.long
def test_the_whole_matrix_can_be_made(like: Slab, context: StageContext) -> None:
    """Of the whole matrix none is stopped where any place can be made; what stops is counted."""
    missed, counted = [], Counter[str]()
    for case in matrix():
        found = verdict(case, like, context)
        counted[found] += 1
        missed += [case] if found == "missed" else []
    print(dict(counted), missed[:20])
    assert not missed
