"""The service's settings from the environment: profile, keys, clock and folders."""

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

from ledgerstone.codec.tokens import SHORTEST_KEY
from ledgerstone.errors import SettingsFault
from ledgerstone.message import Message
from ledgerstone.workshop import DEMONSTRATION

SHORTEST_MAKER_KEY = 16
_NAMES = (
    "WORKSHOP", "MAKER_KEY", "SIGNING_KEYS", "BASE_URL", "WEB", "PROXIES", "RATE", "MOST_WAITING",
    "SMTP_PASSWORD", "CALENDAR", "MAILBOX_PASSWORD", "WORKSHOP_WRITABLE",
)  # fmt: skip
_USUAL_RATE = 10.0
_MAX_FIGURES = 6


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
        Secrets for links, oldest first; by default one is generated for the run.
    smtp_password
        Of the profile's mail server, where someone signs in there.
    mailbox_password
        Of the profile's mailbox; drafts are put there where it is given.
    base_url
        The service's base URL, if it differs from the profile's.
    web_folder
        The page's folder, where this service serves it too.
    proxies
        Number of trusted proxies, each adding to ``X-Forwarded-For``; 0 trusts no header.
    rate_per_s, burst
        Requests per second of one client, for each worker; None if a proxy limits them.
    calendar_path
        The iCalendar file of bookings, if it differs from the profile's.
    most_waiting
        How many connections may wait to be accepted before who comes next is sent away.
    is_workshop_writable
        Whether the maker's form may write the profile's file.
    """

    workshop_path: Path = DEMONSTRATION
    maker_key: str = field(default_factory=_key, repr=False)
    signing_keys: tuple[str, ...] = field(default_factory=lambda: (_key(),), repr=False)
    smtp_password: str = field(default="", repr=False)
    mailbox_password: str = field(default="", repr=False)
    base_url: str | None = None
    web_folder: Path | None = None
    today: Callable[[str], date] = today_in
    proxies: int = 0
    rate_per_s: float | None = None
    burst: int = 60
    most_waiting: int = 16
    calendar_path: Path | None = None
    is_workshop_writable: bool = False

    def is_makers(self, key: str) -> bool:
        """Compare a key with the maker's, in constant time."""
        mine, theirs = (hashlib.sha256(k.encode()).digest() for k in (self.maker_key, key))
        return hmac.compare_digest(mine, theirs)


def settings_from(environment: Mapping[str, str] = os.environ) -> Settings:
    """Read the settings from the environment's ``LEDGERSTONE_…`` names.

    Raises
    ------
    SettingsFault
        One of them cannot be used.
    """
    given = {name: environment.get(f"LEDGERSTONE_{name}", "").strip() for name in _NAMES}
    proxies = int(_number(given, "PROXIES", 0, 8))
    rate_per_s = _number(given, "RATE", 0 if proxies else _USUAL_RATE, 1000)
    return Settings(
        workshop_path=Path(given["WORKSHOP"]) if given["WORKSHOP"] else DEMONSTRATION,
        maker_key=_long_enough(given["MAKER_KEY"]) or _key(),
        signing_keys=_signing_keys(given["SIGNING_KEYS"]) or (_key(),),
        smtp_password=given["SMTP_PASSWORD"],
        mailbox_password=given["MAILBOX_PASSWORD"],
        base_url=given["BASE_URL"].rstrip("/") or None,
        web_folder=Path(given["WEB"]) if given["WEB"] else None,
        proxies=proxies,
        rate_per_s=rate_per_s or None,
        most_waiting=int(_number(given, "MOST_WAITING", 16, 1000)),
        calendar_path=Path(given["CALENDAR"]) if given["CALENDAR"] else None,
        is_workshop_writable=_number(given, "WORKSHOP_WRITABLE", 0, 1) == 1,
    )


def _number(given: Mapping[str, str], name: str, usual: float, most: float) -> float:
    """Read one number from 0 to ``most``."""
    text = given[name]
    if not text:
        return usual
    plain = text.isascii() and text.isdigit() and len(text) <= _MAX_FIGURES
    if not plain or int(text) > most:
        values = {"name": f"LEDGERSTONE_{name}", "most": f"{most:g}", "given": text}
        raise SettingsFault(Message("settings-number", **values))
    return float(text)


def _signing_keys(text: str) -> tuple[str, ...]:
    """Read the keys between commas, oldest first; say which is too short, and that commas part."""
    keys = tuple(key.strip() for key in text.split(",") if key.strip())
    short = [n for n, key in enumerate(keys, start=1) if len(key.encode()) < SHORTEST_KEY]
    if not short:
        return keys
    counts = {"number": short[0], "of": len(keys), "least": SHORTEST_KEY}
    raise SettingsFault(Message("settings-short-key", **counts))


def _long_enough(maker_key: str) -> str:
    if maker_key and len(maker_key) < SHORTEST_MAKER_KEY:
        raise SettingsFault(Message("settings-maker-key", least=SHORTEST_MAKER_KEY))
    return maker_key
