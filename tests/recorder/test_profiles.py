"""Every workshop that orders are recorded at has a profile that loads."""

from pathlib import Path

import pytest

from ledgerstone.workshop import DEMONSTRATION, load_profile
from recorder.profiles import WORKSHOPS, profile
from support.strategies.other_workshops import OTHERS

TEXT = DEMONSTRATION.read_text(encoding="utf-8")


def test_every_workshop_that_trips_a_check_is_there() -> None:
    """The workshops of the orders that trip each check have a profile each."""
    assert set(OTHERS) == set(WORKSHOPS)


@pytest.mark.parametrize("name", WORKSHOPS)
def test_a_profile_loads(name: str, tmp_path: Path) -> None:
    """Each is a profile without faults, and none but the usual is the demonstration's."""
    path = tmp_path / "workshop.toml"
    path.write_text(profile(name, TEXT), encoding="utf-8")
    load_profile(path)
    assert (profile(name, TEXT) == TEXT) is (name == "usual")


def test_a_profile_that_lost_a_key_is_reported() -> None:
    """An edit that finds nothing to change is an error, never the usual workshop by mistake."""
    with pytest.raises(LookupError, match="pale"):
        profile("pale", TEXT.replace("most_percent = 10", "most_percent = 11"))
