"""Where an internal fault is contained: it costs one part of an answer, never the answer.

Who answers calls passes in what logs and counts such a fault and goes on. Without one a fault is
let through, as tests and commands want it. An error that informs the caller about what
was asked is never contained.
"""

from __future__ import annotations

from collections.abc import Callable
from contextlib import AbstractContextManager, suppress
from typing import Final, Literal, get_args

__all__ = ["CONTAINED_PARTS", "Contain", "Part", "uncontained"]

Part = Literal["check", "remedy", "saving", "drawing"]
CONTAINED_PARTS: Final[tuple[Part, ...]] = get_args(Part)
_NOTHING: Final[tuple[type[BaseException], ...]] = ()
Contain = Callable[[Part], AbstractContextManager[object, bool]]


def uncontained(_part: Part) -> AbstractContextManager[object, bool]:
    """Contain nothing: a fault reaches the caller."""
    return suppress(*_NOTHING)
