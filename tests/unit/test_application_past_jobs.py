"""A profile tried on jobs done: what it would have said, what really happened, where it is off."""

import json
from datetime import date
from io import StringIO
from pathlib import Path

import pytest

from ledgerstone.application.past_jobs import read_jobs, report, try_job
from ledgerstone.cli.past_jobs import run
from ledgerstone.errors import NotUnderstood
from ledgerstone.json_types import JSON
from ledgerstone.wording import Message, english, speech_in
from ledgerstone.workshop import Workshop
from support.contexts import context_of
from support.slabs import box, slab_json

ORDER = {"slabs": [slab_json(box(1000, 500), rests={"kind": "full"}, shade={"name": "chalk"})]}


def told(**really: object) -> str:
    """Write one past job."""
    rows = "".join(f"{key} = {value}\n" for key, value in really.items())
    return f'[[jobs]]\nname = "Bench"\nordered_on = 2026-03-02\norder = "bench.json"\n{rows}'


def never(name: str) -> JSON:
    """Open the one order."""
    assert name == "bench.json"
    return ORDER


def test_a_job_is_compared_by_what_really_happened(workshop: Workshop, today: date) -> None:
    """A slab of 20 litres of chalk weighs 48.1 kg here; on the scale it was 52: 7 or 8 % under."""
    (job,) = read_jobs(told(weighed_kg=52.0, hours=4), never)
    one = try_job(job, context_of(workshop, today))
    assert one.expected["weighed_kg"] == pytest.approx(48.1)
    assert one.off_percent("weighed_kg") == pytest.approx(100 * (48.1 - 52) / 52)
    says = report([one], workshop, speech_in("en"))
    assert "would 48.1, really 52.0 kg" in says
    assert "off: look at recipe.weighed_kg_per_m3" in says
    assert "price" not in says.partition("In all")[0]


def test_what_is_near_is_reported(workshop: Workshop, today: date) -> None:
    """Within 5 % in the middle nothing is to be looked at."""
    (job,) = read_jobs(told(weighed_kg=48.5), never)
    assert "near enough" in report(
        [try_job(job, context_of(workshop, today))], workshop, speech_in("en")
    )


def test_a_job_that_would_be_sent_back_says_why(workshop: Workshop, today: date) -> None:
    """A piece larger than the table was made all the same: the profile should be looked at."""
    big = {"slabs": [slab_json(box(5000, 500), rests={"kind": "full"})]}
    (job,) = read_jobs(told(hours=9), lambda _: big)
    assert english(Message("tried-stopped", why="")).strip() in report(
        [try_job(job, context_of(workshop, today))], workshop, speech_in("en")
    )


@pytest.mark.parametrize(
    ("text", "pointer"),
    [
        ("", "/jobs"),
        ("jobs = 3", "/jobs"),
        ("[[jobs", ""),
        (told(hours=-1), "/jobs/0/hours"),
        (told(hours="true"), "/jobs/0/hours"),
        (told(hurs=1), "/jobs/0/hurs"),
        ("[[jobs]]\norder = 'a.json'", "/jobs/0/ordered_on"),
        ("[[jobs]]\nordered_on = 2026-03-02", "/jobs/0/order"),
    ],
)
def test_a_list_that_does_not_read_is_reported_by_key(text: str, pointer: str) -> None:
    """Every fault has its place."""
    with pytest.raises(NotUnderstood) as caught:
        read_jobs(text, never)
    assert pointer in [fault.pointer for fault in caught.value.faults]


def test_the_command_reads_orders_beside_the_list(tmp_path: Path) -> None:
    """One line of shell, one report; a missing file has its own exit status."""
    (tmp_path / "bench.json").write_text(json.dumps(ORDER))
    (tmp_path / "past.toml").write_text(told(weighed_kg=48.5, hours=8, days=20, charged=700))
    out, err = StringIO(), StringIO()
    assert run([str(tmp_path / "past.toml")], out, err) == 0
    assert all(word in out.getvalue() for word in ("price", "mass", "hours", "days"))
    assert run([str(tmp_path / "none.toml")], out, err) == 2
