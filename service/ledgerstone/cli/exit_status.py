"""The exit statuses of the commands; ``argparse`` leaves with 2 where its arguments are wrong."""

from __future__ import annotations

from typing import Final

DONE: Final = 0
NOT_DONE: Final = 1
NOT_READ: Final = 2  # nothing was begun: a file or the arguments cannot be read
