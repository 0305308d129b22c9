"""What stands in for code of ours that fails."""

from typing import Any, Final

from support.demonstration import EXAMPLE_ORDER

LABEL: Final = str(EXAMPLE_ORDER["slabs"][0]["label"])  # in the order, and in each fault's message


def broken(*_: object, **__: object) -> Any:  # noqa: ANN401  stands in for anything
    """Fail as code of ours would, with what was sent in the message."""
    raise ZeroDivisionError(LABEL)
