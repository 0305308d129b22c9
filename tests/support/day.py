"""The day on which the tests take place, whenever they run."""

from datetime import date
from typing import Final

TODAY: Final = date(2026, 11, 25)  # a working Wednesday
