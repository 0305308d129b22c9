"""What a running service is told from outside: its profile, keys, clock and folders."""

from __future__ import annotations

import hashlib
import hmac
import os
import secrets
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

from ledgerstone.workshop import DEMONSTRATION


def today_in(timezone: str) -> date:
    """Return the day it is in the workshop's time zone."""
    return datetime.now(ZoneInfo(timezone)).date()


def _key() -> str:
    return secrets.token_urlsafe(32)


@dataclass(frozen=True, slots=True, kw_only=True)
class Settings:
    """Everything that ``create_app`` needs to know.

    Attributes
    ----------
    signing_keys
        Secrets for links, oldest first; one is made for the run where none is given.
    base_url
        The service's own address, where it is not the profile's.
    web_folder
        The page's folder, where this service serves it too.
    """

    workshop_path: Path = DEMONSTRATION
    maker_key: str = field(default_factory=_key, repr=False)
    signing_keys: tuple[str, ...] = field(default_factory=lambda: (_key(),), repr=False)
    base_url: str | None = None
    web_folder: Path | None = None
    today: Callable[[str], date] = today_in

    def is_makers(self, key: str) -> bool:
        """Compare a key with the maker's, in constant time."""
        mine, theirs = (hashlib.sha256(k.encode()).digest() for k in (self.maker_key, key))
        return hmac.compare_digest(mine, theirs)


def settings_from(environment: Mapping[str, str] = os.environ) -> Settings:
    """Read the settings from the environment's ``LEDGERSTONE_…`` names."""
    given = {
        name: environment.get(f"LEDGERSTONE_{name}", "").strip()
        for name in ("WORKSHOP", "MAKER_KEY", "SIGNING_KEYS", "BASE_URL", "WEB")
    }
    keys = tuple(key.strip() for key in given["SIGNING_KEYS"].split(",") if key.strip())
    return Settings(
        workshop_path=Path(given["WORKSHOP"]) if given["WORKSHOP"] else DEMONSTRATION,
        maker_key=given["MAKER_KEY"] or _key(),
        signing_keys=keys or (_key(),),
        base_url=given["BASE_URL"].rstrip("/") or None,
        web_folder=Path(given["WEB"]) if given["WEB"] else None,
    )
