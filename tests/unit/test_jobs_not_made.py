"""The value by which a typical job can't be made is found, and named by form and check."""

import io
from datetime import date
from pathlib import Path

import pytest

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.jobs_not_made import jobs_not_made
from ledgerstone.application.typical_jobs import typical_jobs
from ledgerstone.cli.profiles import run
from ledgerstone.codec.tokens import Tokens
from ledgerstone.json_types import KeyPath
from ledgerstone.workshop import read_profile
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.editing import ProfileDraft
from ledgerstone.workshop.following import put_with_followers
from ledgerstone.workshop.standing import FIRST_LIFT
from support.profile_form import begun

PITCH: KeyPath = ("steel", "mesh_pitch_mm")
LENGTH: KeyPath = ("table", "length_mm")
GRAIN: KeyPath = ("recipe", "largest_aggregate_mm")


def blamed(text: str) -> set[KeyPath]:
    """Where a profile makes a typical job impossible."""
    context = QuoteContext(read_profile(text), date(2026, 11, 25), Tokens(("x" * 40,)))
    return {path for path, _ in jobs_not_made(typical_jobs(context), context)}


@pytest.mark.parametrize("country", ["GB", "DE", "US"])
def test_a_file_as_it_starts_makes_every_typical_job(country: str) -> None:
    """Nothing is to blame."""
    assert blamed(begun(country)) == set()


@pytest.mark.parametrize(
    ("path", "toml"), [(PITCH, "6"), (GRAIN, "20"), (FIRST_LIFT, "20"), (LENGTH, "1000")]
)
def test_the_value_without_which_it_is_made_is_named(path: KeyPath, toml: str) -> None:
    """A mesh that no grain passes, a grain too large, too few hands, a table too short."""
    draft = ProfileDraft(begun("GB"))
    if path == LENGTH:
        draft.put(("table", "width_mm"), "900")
    put_with_followers(draft, path, toml, usual_in("GB"))
    draft.settle()
    assert path in blamed(draft.text)


def test_check_names_the_key(tmp_path: Path) -> None:
    """Beside why it can't be made."""
    draft = ProfileDraft(begun("GB"))
    draft.put(PITCH, "6")
    file, out = tmp_path / "shop.toml", io.StringIO()
    file.write_text(draft.text, encoding="utf-8")
    assert run(["check", str(file)], out, io.StringIO(), {}) == 0
    assert "steel.mesh_pitch_mm: " in out.getvalue()


@pytest.mark.parametrize("country", ["GB", "US"])
def test_a_workshop_whose_thinnest_is_an_inch_size_makes_its_tops(country: str) -> None:
    """Told in millimetres 1 1/2 in is 38 mm, a tenth under it: as thick in that unit."""
    draft = ProfileDraft(begun(country))
    draft.put(("shaping", "thicknesses_mm"), '["1 1/2 in", "2 in"]')
    draft.put(("shaping", "thinnest_mm"), '"1 1/2 in"')
    draft.put(("shaping", "thickest_mm"), '"2 in"')
    draft.settle()
    assert blamed(draft.text) == set()
    context = QuoteContext(read_profile(draft.text), date(2026, 11, 25), Tokens(("x" * 40,)))
    assert all(job.total for job in typical_jobs(context))
