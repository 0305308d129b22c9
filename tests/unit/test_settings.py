"""What the environment tells is read, or its fault is reported in one plain sentence."""

import hmac
import os
import re
import subprocess
from pathlib import Path

import pytest

from ledgerstone.errors import SettingsFault
from ledgerstone.settings import Settings, settings_from
from ledgerstone.wording import Message, english, speech_in
from ledgerstone.workshop import DEMONSTRATION
from support.programs import run_beside


def test_a_proxy_that_limits_spares_the_service() -> None:
    """The service limits clients by itself, unless a proxy is trusted to or it is told not to."""
    assert settings_from({}).rate_per_s == 10
    assert settings_from({"LEDGERSTONE_PROXIES": "1"}).rate_per_s is None
    assert settings_from({"LEDGERSTONE_RATE": "0"}).rate_per_s is None
    both = settings_from({"LEDGERSTONE_PROXIES": "1", "LEDGERSTONE_RATE": "3"})
    assert (both.proxies, both.rate_per_s) == (1, 3)


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("RATE", "-1"), ("RATE", "ten"), ("RATE", "1.5"), ("RATE", "1001"), ("RATE", "٣"),
        ("PROXIES", "9"), ("PROXIES", "true"), ("MOST_WAITING", "9999999999999"),
        ("MAKER_KEY", "swordfish"),
    ],
)  # fmt: skip
def test_what_cannot_be_meant_is_reported(name: str, said: str) -> None:
    """A setting that can't be used is named, with what would put it right."""
    with pytest.raises(SettingsFault) as fault:
        settings_from({f"LEDGERSTONE_{name}": said})
    assert re.match(f"LEDGERSTONE_{name} (is|has) .*[0-9]", english(fault.value.message))


def test_a_comma_parts_two_signing_keys() -> None:
    """Two keys stand with a comma between; a key that holds one is told of, and not shown."""
    old, new = "o" * 32, "n" * 32
    assert settings_from({"LEDGERSTONE_SIGNING_KEYS": f"{old}, {new}"}).signing_keys == (old, new)
    with pytest.raises(SettingsFault) as fault:
        settings_from({"LEDGERSTONE_SIGNING_KEYS": f"{old},{new[:20]}"})
    assert dict(fault.value.message.values) == {"number": 2, "of": 2, "least": 32}
    assert new[:20] not in english(fault.value.message)


def test_keys_are_not_shown() -> None:
    """Settings in print hold neither the maker's key nor a signing key."""
    settings = Settings(maker_key="m" * 40, signing_keys=("s" * 40,))
    assert "m" * 8 not in repr(settings)
    assert "s" * 8 not in repr(settings)


RATE = {"name": "LEDGERSTONE_RATE", "most": "1000", "given": "viel"}


@pytest.mark.parametrize(
    ("name", "value", "says"),
    [
        ("SIGNING_KEYS", "short", Message("settings-short-key", number=1, of=1, least=32)),
        ("MAKER_KEY", "short", Message("settings-maker-key", least=16)),
        ("WORKSHOP", "no/such.toml", Message("fault-no-file")),
        ("RATE", "viel", Message("settings-number", **RATE)),
    ],
)
def test_a_start_that_cannot_be_says_why(
    name: str, value: str, says: Message, tmp_path: Path
) -> None:
    """The server ends at once with a plain sentence, and prints no traceback.

    In the language of the profile, if there is one.
    """
    log = tmp_path / "log"
    with log.open("wb") as errors:
        is_german = name == "RATE"
        mine = DEMONSTRATION.with_name("germany.toml") if is_german else DEMONSTRATION
        named = {"LEDGERSTONE_WORKSHOP": str(mine), f"LEDGERSTONE_{name}": value}
        outputs = (subprocess.DEVNULL, errors)
        environment = {**os.environ, **named}
        assert run_beside("ledgerstone.api.wsgi", [], environment, outputs).wait(60) == 3
    told = log.read_text(encoding="utf-8")
    assert speech_in("de" if is_german else "en").say(says) in told
    assert "Traceback" not in told
    assert told.count("\n") <= 2


@pytest.mark.parametrize(("key", "right"), [("m" * 40, True), ("m" * 39, False), ("é", False)])
def test_a_key_is_compared_in_constant_time(
    monkeypatch: pytest.MonkeyPatch, key: str, *, right: bool
) -> None:
    """By the library's own comparison alone, of two hashes, so that no length is told either."""
    seen: list[tuple[int, int]] = []
    compare = hmac.compare_digest

    def counted(mine: bytes, theirs: bytes) -> bool:
        seen.append((len(mine), len(theirs)))
        return compare(mine, theirs)

    monkeypatch.setattr(hmac, "compare_digest", counted)
    assert Settings(maker_key="m" * 40, signing_keys=("s" * 40,)).is_makers(key) is right
    assert seen == [(32, 32)]
