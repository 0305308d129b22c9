"""Whatever is typed in the form's fields is answered, with a sentence where it does not fit."""

from re import sub

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.application.profile_changes import path_of
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.entry.typed import taken_of, toml_of
from ledgerstone.workshop.keys.measures import canonical
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records.members import member_at
from support.profile_form import ASKED, NewForm, tried
from support.strategies.enquiry_jumbled import UNITS
from support.strategies.orders import cases
from support.strategies.typed_entries import HUGE, SPANS, typed_entries

LISTS = frozenset({"lines", "words", "numbers", "wholes", "choices"})
FITTED = {"fit-hours": "/hours", "fit-money": "/rates"}


@pytest.mark.parametrize(("country", "language"), [("US", "en"), ("DE", "de"), ("CH", "de")])
def test_whatever_is_typed_is_answered(new_form: NewForm, country: str, language: str) -> None:
    """Ten to forty fields at a time; what cannot be read or kept is a fault beside its field."""
    client = new_form(country, language)
    values = client.get(ASKED).get_json()["values"]
    alike = {sub(r"/\d+", "", value["pointer"]): value for value in values}  # one of each list
    kinds = {value["pointer"]: value["kind"] for value in alike.values()}
    pointers = st.lists(st.sampled_from(sorted(kinds)), min_size=10, max_size=40, unique=True)

    @settings(max_examples=cases(4))
    @given(st.data())
    def is_answered(data: st.DataObject) -> None:
        changes = []
        for pointer in data.draw(pointers):
            entry = data.draw(typed_entries())
            value = {"values": [entry]} if kinds[pointer] in LISTS else {"value": entry}
            changes.append({"op": "set", "pointer": pointer, **value})
        assert all(fault["says"] for fault in tried(client, *changes)["faults"])

    is_answered()


@pytest.mark.parametrize(("country", "mark"), [("US", "."), ("DE", ",")])
def test_no_number_is_too_large_to_be_read_at_any_place(
    new_form: NewForm, country: str, mark: str
) -> None:
    """Alone, with a unit or as the end of a span: it is written as TOML and compared."""
    place = usual_in(country).at_work()
    told = new_form(country).get(ASKED).get_json()["values"]
    members = {
        (member.name, member.kind): member
        for one in told
        if (member := member_at(path_of(one["pointer"]))) is not None
    }
    assert len(members) > 150
    numbers = [*HUGE, *SPANS, *(f"{HUGE[2]} {unit}" for unit in UNITS if unit)]
    for member in members.values():
        for entry in numbers:
            canonical(tables(f"x = {toml_of(member, entry, mark, place)}")["x"], member.name)
            taken_of(member, [entry], mark, place, "EUR")


@pytest.mark.parametrize("operation", FITTED)
def test_whatever_is_told_of_the_known_job_is_answered(new_form: NewForm, operation: str) -> None:
    """Its hours and its money: nothing is changed by what cannot be read."""
    client = new_form("US")
    count = len(tried(client)["jobs"]) if operation == "fit-hours" else 2

    @settings(max_examples=cases(8))
    @given(st.lists(typed_entries(), min_size=count, max_size=count))
    def is_answered(told: list[str]) -> None:
        assert tried(client, {"op": operation, "pointer": FITTED[operation], "values": told})[
            "jobs"
        ]

    is_answered()
