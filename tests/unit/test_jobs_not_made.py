"""The value by which a typical job can't be made is found, and named by form and check."""

import io
from datetime import date
from pathlib import Path

import pytest

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.jobs_not_made import FIELD_OF_SUSPECT, jobs_not_made, not_made
from ledgerstone.application.typical_jobs import typical_jobs
from ledgerstone.cli.profiles import run
from ledgerstone.codec.tokens import Tokens
from ledgerstone.json_types import KeyPath
from ledgerstone.wording import bench_speech
from ledgerstone.workshop import read_profile
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.form.describing import DescribedValue, described
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.following import put_with_followers
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.standing import FIRST_LIFT
from support.profile_form import begun

PITCH: KeyPath = ("steel", "mesh_pitch_mm")
LENGTH: KeyPath = ("table", "length_mm")
GRAIN: KeyPath = ("recipe", "largest_aggregate_mm")


def context_of(text: str) -> QuoteContext:
    """A context of a profile's text."""
    return QuoteContext(read_profile(text), date(2026, 11, 25), Tokens(("x" * 40,)))


def blamed(text: str) -> set[KeyPath]:
    """Where a profile makes a typical job impossible."""
    context = context_of(text)
    return {one.path for one in jobs_not_made(typical_jobs(context), context)}


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


@pytest.mark.parametrize("psi", [3500, 4000, 5000, 5500, 6000, 8000])
def test_bars_and_mesh_as_builders_merchants_sell_them_make_every_job(psi: int) -> None:
    """ASTM A615 No. 3 bars and a 6 x 6 mesh of 10 gauge wire, in concrete of any usual strength."""
    draft = ProfileDraft(begun("US"))
    put_with_followers(draft, ("steel", "material"), '"plain"', usual_in("US"))
    for key, toml in (("bar_mm", "9.525"), ("mesh_pitch_mm", '"6 in"'), ("mesh_wire_mm", "3.43")):
        draft.put(("steel", key), toml)
    draft.put(("recipe", "fck_mpa"), f'"{psi} psi"')
    draft.settle()
    jobs = typical_jobs(context_of(draft.text))
    assert [job.stops for job in jobs] == [None] * 3
    known, bench = jobs[1], bench_speech("en", context_of(draft.text).workshop)
    assert (known.remark is None) == (psi > 5000)
    if known.remark is not None:
        said = bench.say(known.remark)
        assert "At your usual 1 1/2 in: " in said
        assert "beside the sink" in said


@pytest.mark.parametrize("path", [FIRST_LIFT, ("lifting", "most_people")])
def test_where_a_job_is_too_heavy_another_way_to_lift_is_offered(path: KeyPath) -> None:
    """A new file holds no hoist: who has one adds it; of what is not too heavy nothing is said."""
    draft = ProfileDraft(begun("US"))
    draft.put(FIRST_LIFT, '"200 lb"')
    draft.put(("lifting", "most_people"), "2")
    if path == FIRST_LIFT:
        draft.put(("handling", "ways", 1, "most_kg"), '"30 lb"')
        draft.put(FIRST_LIFT, '"30 lb"')
    draft.settle()
    context = context_of(draft.text)
    told = [
        (one.path, bench_speech("en", context.workshop).say(one.says))
        for one in jobs_not_made(typical_jobs(context), context)
    ]
    assert told
    assert all("Add a hoist" in says for _, says in told)
    draft.put(("lifting", "most_people"), "4")
    draft.put(FIRST_LIFT, '"240 lb"')
    draft.put(PITCH, '"0.2 in"')
    draft.settle()
    context = context_of(draft.text)
    says = [one.says for one in jobs_not_made(typical_jobs(context), context)]
    assert says
    assert not any("hoist" in bench_speech("en", context.workshop).say(one) for one in says)


def test_every_place_that_is_blamed_is_a_field() -> None:
    """No table and no list: a sentence stands beside a value."""
    text = begun("GB")
    values = {e.path for e in described(text, tables(text), {}) if isinstance(e, DescribedValue)}
    assert set(FIELD_OF_SUSPECT.values()) - values == set()


def test_check_names_a_job_once(tmp_path: Path) -> None:
    """Also one that is blamed on the share of an untested strength; without a key to blame, so."""
    weak = ProfileDraft(begun("GB"))
    weak.put(("concrete", "untested_percent"), "3")
    lone = ProfileDraft(begun("GB"))
    lone.put(PITCH, "6")
    lone.put(GRAIN, "20")
    for name, draft in (("weak", weak), ("lone", lone)):
        file, out = tmp_path / f"{name}.toml", io.StringIO()
        file.write_text(draft.text, encoding="utf-8")
        assert run(["check", str(file)], out, io.StringIO(), {}) == 0
        context = context_of(draft.text)
        speech = bench_speech(context.workshop.workshop.language, context.workshop)
        stopped = [job for job in typical_jobs(context) if job.stops is not None]
        assert stopped
        for job in stopped:
            named = speech.say(not_made(job)).partition(": ")[2].partition(". ")[0]
            assert out.getvalue().count(named) == 1


def test_on_the_form_others_are_tried_for_what_the_first_was_blamed_on() -> None:
    """A job that is sent back by the same value is named there too."""
    draft = ProfileDraft(begun("GB"))
    draft.put(PITCH, "6")
    context = context_of(draft.text)
    jobs = typical_jobs(context)
    whole, brief = (
        list(jobs_not_made(jobs, context, is_brief=is_brief)) for is_brief in (False, True)
    )
    assert brief == whole
    assert len(brief) > 1


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
    context = context_of(draft.text)
    assert all(job.total for job in typical_jobs(context))
