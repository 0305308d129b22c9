"""Every error of ours has an answer on the wire."""

from collections.abc import Iterator

import pytest

from ledgerstone import errors
from ledgerstone.api.problems import STATUS_OF


def _leaves(kind: type[Exception]) -> Iterator[type[Exception]]:
    below = kind.__subclasses__()
    for child in below:
        yield from _leaves(child)
    if not below:
        yield kind


LEAVES = sorted(set(_leaves(errors.LedgerstoneError)), key=lambda kind: kind.__name__)


def test_the_tree_has_leaves() -> None:
    """The errors below the base are more than the base."""
    assert len(LEAVES) > 4


@pytest.mark.parametrize("kind", LEAVES, ids=lambda kind: kind.__name__)
def test_every_error_has_its_status(kind: type[Exception]) -> None:
    """An error, or the kind it is one of, is mapped to an HTTP status."""
    statuses = [STATUS_OF[parent] for parent in kind.__mro__ if parent in STATUS_OF]
    assert statuses
    assert 400 <= statuses[0] <= 599


def test_a_request_not_understood_is_the_askers() -> None:
    """A request that was not understood answers 400, and an internal fault never does."""
    assert STATUS_OF[errors.NotUnderstood] == 400
    assert all(kind is not errors.LedgerstoneError for kind in STATUS_OF)
