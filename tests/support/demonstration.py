"""The demonstration workshop's service, as the tests call it."""

from datetime import date
from typing import TYPE_CHECKING

from ledgerstone.contract.example_orders import BENCH
from ledgerstone.workshop import DEMONSTRATION

if TYPE_CHECKING:
    from flask import Flask

MAKER_KEY = "a maker's key for the tests"
SIGNING_KEYS = ("a signing key for the tests, of no use elsewhere",)
EXAMPLE_ORDER = BENCH  # the README's


def demonstration_app(today: date) -> "Flask":
    """The service with the demonstration workshop and no page."""
    from ledgerstone.api import Settings, create_app  # noqa: PLC0415 - only its tests need flask

    settings = Settings(
        workshop_path=DEMONSTRATION,
        maker_key=MAKER_KEY,
        signing_keys=SIGNING_KEYS,
        today=lambda _zone: today,
    )
    return create_app(settings)
