"""Which constants hypothesis draws beside random values."""

import pytest
from hypothesis.internal import constants_ast
from hypothesis.internal.conjecture import providers


def draw_without_our_constants(patch: pytest.MonkeyPatch) -> None:
    """Draw no constants that hypothesis finds in our own modules.

    They are those of the modules that are imported: a file alone would draw other cases than the
    same file in the whole suite, and a change anywhere in the code would draw others everywhere.
    """
    patch.setattr(providers, "_get_local_constants", constants_ast.Constants)
