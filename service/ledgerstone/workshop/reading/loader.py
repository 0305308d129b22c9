"""A profile's TOML text becomes records; every fault comes at once, with its line and key."""

from __future__ import annotations

import dataclasses
import hashlib
import json
import re
from collections.abc import Iterable
from decimal import Decimal
from functools import cache, lru_cache
from pathlib import Path
from typing import Any

from ledgerstone.errors import ProfileError, ProfileFault
from ledgerstone.file_faults import file_fault
from ledgerstone.json_types import JSON, KeyPath, value_at
from ledgerstone.message import Message
from ledgerstone.workshop.consistency import inconsistencies
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.keys import values
from ledgerstone.workshop.reading import lines
from ledgerstone.workshop.reading.intended import intended
from ledgerstone.workshop.reading.syntax import country_of, tables
from ledgerstone.workshop.records import Workshop
from ledgerstone.workshop.records.members import member_at
from ledgerstone.workshop.records.schemas import loaded
from ledgerstone.workshop.standing import (
    is_demonstration,
    standing_faults,
    standing_of_profile,
    without_standing,
)
from ledgerstone.workshop.starting.beginning import without_maker
from ledgerstone.workshop.starting.profile_text import profile_text_of

DEMONSTRATION = Path(__file__).parents[1] / "demonstration.toml"
# The invented workshop whose values a new profile starts with; elsewhere the demonstration's.
EXAMPLES = {
    **dict.fromkeys(("DE", "AT", "CH", "LI", "LU"), DEMONSTRATION.with_name("germany.toml")),
    "US": DEMONSTRATION.with_name("united_states.toml"),
}
LARGEST_PROFILE_BYTES = 1_000_000
_TEXTS_KEPT = 4  # a form reads its file as it is, as it is changed, and a price less or more


def load_profile(path: Path) -> Workshop:
    """Return the workshop of a profile in a file.

    Raises
    ------
    ProfileError
        With every fault: what kept the file from being read, or what is wrong in it.
    """
    return read_profile(profile_text(path))


def profile_text(path: Path) -> str:
    """Return the text of a profile's file.

    Raises
    ------
    ProfileError
        With one fault: the file is missing, a folder, too large or not UTF-8.
    """
    content = _content(path)
    try:
        return content.decode("utf-8-sig")
    except UnicodeDecodeError as reason:
        line = content.count(b"\n", 0, reason.start) + 1
        raise ProfileError([ProfileFault(line, "", Message("fault-not-utf8"))]) from reason


@lru_cache(maxsize=_TEXTS_KEPT)
def read_profile(text: str) -> Workshop:
    """Return the workshop that a profile's text describes: its records are frozen.

    Those of the last few texts are kept.

    Raises
    ------
    ProfileError
        With every fault, sorted by line. Where the text is not TOML, with that alone; whether
        a table's keys agree is looked at once each of them reads well by itself.
    """
    language = language_of(text)
    try:
        raw = tables(text)
    except ProfileError as error:
        raise ProfileError(error.faults, language) from error
    profile = loaded(without_standing(raw))
    found = [*profile.found, *inconsistencies(profile.sections), *standing_faults(raw)]
    if profile.workshop is None or found:
        meant = [(path, _meant(raw, path, why, country_of(text))) for path, why in found]
        invalid = ProfileError(_faults(meant, lines.KeyLines(text)), language)
        invalid.tables = raw
        raise invalid
    workshop = profile.workshop
    if not is_demonstration(raw):
        standing = standing_of_profile(raw, *starting_tables())
        workshop = dataclasses.replace(workshop, standing=standing)
    return dataclasses.replace(workshop, fingerprint=fingerprint(workshop))


def language_of(text: str) -> str:
    """Return a profile's language, else its country, even from a faulty text.

    An empty text if it has neither.
    """
    found = re.search(r"""(?m)^\s*language\s*=\s*["'](\w+)""", text)
    if found is not None:
        return found[1]
    country = country_of(text)
    spoken = usual_in(country).languages if country else ()
    return "".join(spoken[:1])


def example_for(country: str) -> Path:
    """Return the file of the invented workshop that a profile of a country starts from."""
    return EXAMPLES.get(country, DEMONSTRATION)


def starting_tables() -> tuple[dict[str, Any], ...]:
    """Return the tables of each country's profile that nobody has filled in."""
    return tuple(map(_started, dict.fromkeys((DEMONSTRATION, *EXAMPLES.values()))))


@cache
def _started(example: Path) -> dict[str, Any]:
    """The tables of an example: values that are the same may be nobody's yet, copied or started."""
    return tables(profile_text_of(without_maker(load_profile(example))))


def fingerprint(workshop: Workshop) -> str:
    """Return the fingerprint of a profile's values, 16 hexadecimal digits, whatever its layout.

    They are the first of the SHA-256 of the records as JSON with sorted keys: comments, spacing,
    the order of tables and the way a number is written (``1.50`` or ``1.5``) change nothing.
    Nor do the tables that change no answer, ``reply``, ``mail`` and ``mailbox``, or sentences of
    the maker's.
    """
    content = dataclasses.asdict(workshop)
    for without in ("fingerprint", "standing", "reply", "mail", "mailbox", "sentences"):
        del content[without]
    content["trial"] = workshop.standing.trial
    canonical = json.dumps(content, sort_keys=True, ensure_ascii=False, default=_canonical)
    return hashlib.sha256(canonical.encode()).hexdigest()[:16]


def _canonical(value: object) -> str:
    return format(value.normalize(), "f") if isinstance(value, Decimal) else str(value)


def key_text(path: KeyPath) -> str:
    """Return a key's path in print: ``palette[2].name`` is in the second ``[[palette]]``."""
    parts = (f"[{p + 1}]" if isinstance(p, int) else f".{values.shortened(p)}" for p in path)
    return "".join(parts).removeprefix(".")


def _meant(raw: JSON, path: KeyPath, why: Message, country: str) -> Message:
    """Return what to write where a value is in quotation marks that is a number or a day."""
    member = member_at(path) if why.name == "fault-unfit" else None
    if member is None:
        return why
    value = value_at(raw, path)
    is_written = isinstance(value, str | Decimal) and why.values.get("quoted") != "yes"
    return (is_written and intended(str(value), member, country)) or why


def _faults(found: Iterable[tuple[KeyPath, Message]], where: lines.KeyLines) -> set[ProfileFault]:
    return {ProfileFault(where.line(path), key_text(path), why, path) for path, why in found}


def _whole_file(message: Message) -> ProfileError:
    return ProfileError([ProfileFault(0, "", message)])


def _content(path: Path) -> bytes:
    if path.is_dir():
        raise _whole_file(Message("fault-folder"))
    try:
        with path.open("rb") as file:
            content = file.read(LARGEST_PROFILE_BYTES + 1)
    except FileNotFoundError:
        raise _whole_file(Message("fault-no-file")) from None
    except (OSError, ValueError) as reason:
        raise _whole_file(Message("fault-unreadable", reason=file_fault(reason))) from reason
    if len(content) > LARGEST_PROFILE_BYTES:
        raise _whole_file(Message("fault-too-large"))
    return content
