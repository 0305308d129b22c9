"""The profile's form in three countries: its units, its words, and the way to a first quote."""

import re
from pathlib import Path
from typing import Final

import pytest

from ledgerstone.workshop import DEMONSTRATION
from support.documents import Json
from support.profile_form import ASKED, NewForm, form, started, tried
from support.strategies.orders import cases
from workshops.strange_words import BRITISH, STRANGE

# What has no other unit in the United States either.
_STANDARDS: Final = r"ΔE00"
_METRIC_UNITS: Final = re.compile(r"(?:mm|(?<![a-z])m|m²|m³|kg|(?<![a-z])l|MPa|N|°C)(?![a-z])")
_KEYS: Final = r"\[\[?\w+|\b[a-z]+_[a-z_0-9]+\b"
EVERY: Final = ("GB", "DE", "US")
MOST_ANSWERS: Final = 28  # each of them short, and none of them a number of ours


MONEY: Final = ["190", "1600"]  # what is bought for the job, and what is asked for it


def texts_of(told: Json) -> dict[str, str]:
    """What the form says of each table and value, its help and what is chosen from among it."""
    found = {}
    for one in [*told["tables"], *told["values"]]:
        choices = one.get("choices_say", [])
        shown = re.sub(r"\(.*\)", "", one["help"])  # what a new file lists is in the choices
        found[one["pointer"]] = " | ".join([one["label"], shown, *choices])
    found |= {f"step {one['name']}": one["title"] for one in told["steps"]}
    found |= {f"rests on {one['pointer']}": one["says"] for one in told["invented"]}
    return found | {f"job {i}": one["name"] for i, one in enumerate(told["jobs"])}


def test_an_american_form_has_neither_metric_unit_nor_british_word(new_form: NewForm) -> None:
    """Labels, help and units are the workshop's own, and so are its examples."""
    told = tried(new_form("US"), described=True)
    units = {one["unit"] for one in told["values"]}
    assert {"in", "lb", "ft²/gal", "psi", "°F", "h/ft²"} <= units
    assert [unit for unit in units if _METRIC_UNITS.fullmatch(unit.partition("/")[0] or "-")] == []
    strange = (
        rf"{BRITISH}|\b(?:ENG|GBP|Europe/|HR0?|LD1)\b|\d ?(?:mm|kg|MPa|°C)\b|\bstone\b|\bEN \d"
    )
    texts = {at: re.sub(_STANDARDS, "", text) for at, text in texts_of(told).items()}
    assert {at: text for at, text in texts.items() if re.search(strange, text)} == {}


def test_a_german_form_is_german(tmp_path: Path) -> None:
    """Of a new file as of the invented workshop's own, whose comments are English."""
    for file in (started(tmp_path, "DE"), DEMONSTRATION.with_name("germany.toml")):
        told = tried(form(file, language="de"), described=True)
        told["values"] = [v for v in told["values"] if not v["pointer"].startswith("/conventions")]
        english = {at: t for at, t in texts_of(told).items() if re.search(STRANGE["germany"], t)}
        assert english == {}


@pytest.mark.parametrize("country", ["GB", "DE", "US"])
def test_no_fault_on_the_form_names_a_key_of_the_file(new_form: NewForm, country: str) -> None:
    """A fault speaks of the labels that stand there, in any language."""
    client = new_form(country, "de" if country == "DE" else "en")
    changes: list[Json] = [
        {"op": "set", "pointer": "/palette/0/doses/0/pigment", "value": "moonlight"},
        {"op": "set", "pointer": "/shaping/thicknesses_mm", "values": ["900"]},
        {"op": "set", "pointer": "/table/width_mm", "value": "9000"},
        {"op": "set", "pointer": "/recipe/fck_mpa", "value": "x"},
        {"op": "leave-out", "pointer": "/areas/0/pallet"},
        {"op": "leave-out", "pointer": "/areas/0/own_van"},
        {"op": "leave-out", "pointer": "/areas/0/fitted"},
        {"op": "leave-out", "pointer": "/tax/percent"},
    ]
    told = [tried(client, one)["faults"] for one in changes[:4]]
    told += [tried(client, *changes[4:])["faults"]]
    assert all(told)
    says = [fault["says"] for faults in told for fault in faults]
    assert [text for text in says if re.search(_KEYS, text)] == []


def first_quote(told: Json) -> tuple[list[Json], int]:
    """The answers of the shortest way as changes, each value as it is shown, and how many."""
    values = {one["pointer"]: one for one in told["values"]}
    changes: list[Json] = []
    for step in told["steps"]:
        for pointer in step["asks"]:
            kept = {
                key: values[pointer][key] for key in ("value", "values") if key in values[pointer]
            }
            changes.append({"op": "set" if kept else "leave-out", "pointer": pointer, **kept})
        if step["name"] == "job":
            changes.append({"op": "fit-hours", "pointer": "/hours", "values": ["", "14", ""]})
            changes.append({"op": "fit-money", "pointer": "/rates", "values": MONEY})
        elif step["rest"]:
            changes.append({"op": "confirm", "pointer": "", "values": step["rest"]})
    answers = sum(2 if one["op"] == "fit-money" else 1 for one in changes)
    return changes, answers


@pytest.mark.parametrize("country", EVERY)
def test_the_first_honest_quote_takes_some_thirty_answers(new_form: NewForm, country: str) -> None:
    """After them nothing is a trial; any step left out keeps every answer one.

    Every day each step is left out in one of the countries, in a long search in all of them.
    """
    client = new_form(country)
    before = tried(client, described=True)
    assert before["share"]["trial"]
    assert [step["name"] for step in before["steps"] if step["done"]] == []
    changes, answers = first_quote(before)
    print(f"{country}: {answers} answers of {len(before['values'])} values")
    assert answers <= MOST_ANSWERS
    after = tried(client, *changes)
    assert after["faults"] == []
    assert not after["share"]["trial"]
    assert [step["name"] for step in after["steps"] if not step["done"]] == []
    (known,) = (job for job in after["jobs"] if "materials" in job)
    assert [float(known[key]) for key in ("materials", "asked")] == pytest.approx(
        [float(amount) for amount in MONEY], rel=0.01
    )
    steps = [i for i, one in enumerate(changes) if one["op"] not in ("set", "leave-out")]
    apart = cases(len(EVERY), long=1)
    for i in steps[EVERY.index(country) % apart :: apart]:
        assert tried(client, *changes[:i], *changes[i + 1 :])["share"]["trial"]


def test_hours_of_typical_jobs_scale_every_rate_of_hours(new_form: NewForm) -> None:
    """Three jobs at 1.5 times their hours: each rate is half as much again, and no other value."""
    client = new_form("US")
    before = tried(client, described=True)
    wanted = [f"{1.5 * job['hands_hours']:.2f}" for job in before["jobs"]]
    fit = {"op": "fit-hours", "pointer": "/hours", "values": wanted}
    after = tried(client, fit, described=True)
    for job, hours in zip(after["jobs"], wanted, strict=True):
        assert job["hands_hours"] == pytest.approx(float(hours), rel=0.02)
    was = {one["pointer"]: one.get("value") for one in before["values"]}
    changed = {
        one["pointer"]: one["value"]
        for one in after["values"]
        if one.get("value") != was[one["pointer"]]
    }
    assert len(changed) > 40
    ratios = [float(now) / float(str(was[at])) for at, now in changed.items()]
    assert max(ratios) / min(ratios) == pytest.approx(1, abs=0.01)
    assert all("hours" in at for at in changed)
    for untold in (["", "", ""], ["-5", "0", "-2 h"]):
        assert tried(client, {**fit, "values": untold})["text"] == before["text"]


def test_what_is_added_is_empty_and_asked_for(new_form: NewForm) -> None:
    """No price of 1 and no name of dots comes with one more area, shade or sealer."""
    client = new_form("US")
    values = {one["pointer"] for one in client.get(ASKED).get_json()["values"]}
    added = [
        {"op": "add", "pointer": f"/{table}"} for table in ("areas", "palette", "sealers", "mail")
    ]
    told = tried(client, *added, described=True)
    new = [one for one in told["values"] if one["pointer"] not in values and one["needed"]]
    assert len(new) > 15
    filled = [one["pointer"] for one in new if one.get("value") or one.get("values")]
    assert [at for at in filled if not at.endswith("food_declared")] == []
    asked = {fault["pointer"] for fault in told["faults"]}
    assert {"/areas/1/name", "/sealers/3/price_per_l", "/mail/host"} <= asked
