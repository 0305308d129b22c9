"""The largest stress of each case, and the first place of equals."""

from __future__ import annotations

import numpy as np

from ledgerstone.strength.governing import first_largest


def test_the_first_of_those_that_round_alike_is_the_largest() -> None:
    """Two values a ten-millionth apart are one, two a hundred-thousandth apart are not."""
    fields = np.array([[1.0, 1.0], [1.0 + 1e-7, 1.0 + 1e-5], [0.5, 1.0]])
    assert first_largest(fields, 1e-6, 6).tolist() == [0, 1]


def test_each_column_has_its_own_largest() -> None:
    """Random columns: their argmax, whatever their signs."""
    fields = np.random.default_rng(5).normal(size=(40, 30)) - 3.0
    assert first_largest(fields, 1e-6, 6).tolist() == fields.argmax(axis=0).tolist()
