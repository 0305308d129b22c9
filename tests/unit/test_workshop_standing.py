"""Whose each value of a profile is: the maker's own, a usual one, or still the demonstration's."""

import io
import tomllib
from decimal import Decimal
from pathlib import Path

import pytest

from ledgerstone.cli import profiles
from ledgerstone.errors import ProfileError
from ledgerstone.json_types import KeyPath
from ledgerstone.wording import Message, english, speech_in
from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile, read_profile
from ledgerstone.workshop.form.confirming import confirm
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.reading.loader import starting_tables
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.review.rests_on import RESTS_ON
from ledgerstone.workshop.review.summary import open_values
from ledgerstone.workshop.standing import PRICED_TABLES, is_priced, standings
from ledgerstone.workshop.standing.usual_values import is_small_price
from ledgerstone.workshop.starting.beginning import without_maker
from ledgerstone.workshop.starting.profile_text import profile_text_of, starting_profile


@pytest.fixture(scope="module")
def started() -> str:
    """A profile as `init` writes it, nothing filled in."""
    return starting_profile(load_profile(DEMONSTRATION))


def invented(text: str) -> dict[str, int]:
    """How many values of each table are still invented."""
    return dict(read_profile(text).standing.tables)


def test_the_demonstration_quotes_as_if_it_were_someones() -> None:
    """The invented workshop is headed as one, and none of its values waits for a maker."""
    found = load_profile(DEMONSTRATION)
    assert found.workshop.demonstration
    assert found.standing.tables == ()
    assert not found.standing.trial


def test_a_started_profile_is_a_trial(started: str) -> None:
    """Prices, hours and areas are nobody's yet; factors and waits may stand as they are."""
    found = read_profile(started).standing
    by_table = dict(found.tables)
    assert found.trial
    assert {"rates", "hours", "areas", "palette", "pigments", "recipe", "table"} <= set(by_table)
    assert not {"concrete", "loads", "shaping", "days"} & set(by_table)
    whose = standings(tables(started), *starting_tables())
    assert whose[("workshop", "region")] == whose[("tax", "percent")] == "invented"
    assert by_table["tax"] == 1
    assert found.yours + found.usual + found.invented > 300
    assert found.usual > 50


def test_every_price_that_nobody_gave_is_invented(started: str) -> None:
    """Whatever the profile keeps as an amount of money, but for shares, steps and small prices.

    Nothing is charged beside the making and no pallet is sent, where a file starts.
    """
    profile, raw = load_profile(DEMONSTRATION), tomllib.loads(started, parse_float=Decimal)
    found = standings(raw, *starting_tables())
    amounts = {path: whose for path, whose in found.items() if _is_amount(profile, path)}
    assert len(amounts) > 30
    stand = {path for path, whose in amounts.items() if whose != "invented"}
    pallets = {
        ("lifting", "pallets", k, "price_percent") for k in range(len(raw["lifting"]["pallets"]))
    }
    assert {path for path in stand if not is_small_price(path, raw)} - pallets <= {
        ("areas", 0, "fitting_per_slab"),
        ("services", "templating_per_slab"),
        ("services", "templating_visit"),
        ("offer", "smallest_order"),
        ("packing", "pallet", "crate", "materials"),
        ("tax", "percent"),
        ("offer", "deposit_percent"),
        ("offer", "round_to"),
        ("offer", "deposit_round_to"),
    }


def _is_amount(profile: Workshop, path: KeyPath) -> bool:
    """Return whether the record that a path leads to keeps a decimal there."""
    value: object = profile
    for step in path:
        if isinstance(step, int):
            value = value[step] if isinstance(value, tuple) and step < len(value) else None
        else:
            value = getattr(value, step, None)
    return isinstance(value, Decimal)


def test_a_value_that_differs_is_the_makers(started: str) -> None:
    """Who changes one price of a table owns that one; the rest is still invented."""
    before = invented(started)["rates"]
    mine = started.replace("\nhour = ", "\nhour = 1", 1)
    assert mine != started
    assert invented(mine)["rates"] == before - 1


def test_a_table_is_confirmed_by_a_word(started: str) -> None:
    """`standing = "yours"` in a table says that its values were looked at and are right."""
    mine = started.replace("\n[rates]\n", '\n[rates]\nstanding = "yours"\n', 1)
    assert "rates" not in invented(mine)
    assert read_profile(mine).rates == read_profile(started).rates


def test_a_value_of_a_confirmed_table_may_still_be_open(started: str) -> None:
    """A table's word holds for each of its values but those that have a word of their own."""
    told = '\n[rates]\nstanding = {all = "yours", machine_hour = "invented"}\n'
    assert invented(started.replace("\n[rates]\n", told, 1))["rates"] == 1


def test_a_profile_with_its_prices_confirmed_is_no_trial(started: str) -> None:
    """What is left, such as the mixer's size or a pigment's readings, takes no offer its footing.

    Each other price, such as of the least order, does.
    """
    draft, example = ProfileDraft(started), load_profile(DEMONSTRATION)
    draft.put(("offer", "smallest_order"), str(example.offer.smallest_order))
    for table in filter(tables(started).__contains__, PRICED_TABLES):
        confirm(draft, (table,))
    found = standings(tables(draft.text), *starting_tables())
    prices = [path for path in found if _is_amount(example, path) and found[path] == "invented"]
    assert {path[0] for path in prices} >= {"offer"}
    assert set(read_profile(draft.text).standing.priced) >= {path[0] for path in prices}
    for path in filter(is_priced, [path for path, word in found.items() if word == "invented"]):
        confirm(draft, path)
    left = read_profile(draft.text).standing
    assert not left.trial
    assert {"table", "mixer", "pigments", "reply"} <= set(dict(left.tables))
    assert left.still_invented("pigments")  # so no shade is told as read from a tile
    said = [message.name for message in open_values(read_profile(draft.text))]
    assert said[0] == "check-may-stay"  # first that nothing is a trial, then what is still ours
    assert set(said[1:]) == {"check-invented-table"}


@pytest.mark.parametrize(
    ("told", "key", "says"),
    [
        ('"mine"', "rates.standing", 'Write "yours"'),
        ('{hour = "own"}', "rates.standing.hour", 'Write "yours"'),
        ('{houre = "yours"}', "rates.standing.houre", 'Perhaps "hour" was meant.'),
    ],
)
def test_a_word_that_is_no_standing_is_a_fault(
    started: str, told: str, key: str, says: str
) -> None:
    """What is written is one of three words, for a key that the table has."""
    with pytest.raises(ProfileError) as raised:
        read_profile(started.replace("\n[rates]\n", f"\n[rates]\nstanding = {told}\n", 1))
    [fault] = raised.value.faults
    assert fault.key == key
    assert fault.line > 1
    assert says in english(fault.message)


def test_check_lists_what_is_invented_and_what_rests_on_it(started: str, tmp_path: Path) -> None:
    """The maker reads each table, how many of its values are open, and what they do to quotes."""
    file, out = tmp_path / "mine.toml", io.StringIO()
    file.write_text(started, encoding="utf-8")
    assert profiles.run(["check", str(file)], out, io.StringIO()) == 0
    said = out.getvalue()
    assert "Still invented" in said
    assert "[rates]" in said
    assert "every price rests on it" in said
    assert "headed as a trial" in said


def test_what_rests_on_each_table_is_reported(started: str) -> None:
    """Every table that can hold an invented value has a line that says what it does to quotes."""
    assert set(invented(started)) <= set(RESTS_ON)


def test_a_new_profile_holds_nothing_of_the_makers(started: str) -> None:
    """Before a maker has written anything, no value counts as theirs."""
    assert read_profile(started).standing.yours == 0


def test_what_a_new_file_leaves_out_is_nobody_s_in_a_copy_of_the_example() -> None:
    """Areas, closed days, rails and a weighed slab of the demonstration make no maker's price."""
    raw = tomllib.loads(profile_text_of(without_maker(load_profile(DEMONSTRATION))))
    found = standings(raw, *starting_tables())
    places = [
        *(("areas", k, "pallet") for k in range(len(raw["areas"]))),
        ("calendar", "closures", 0, "first"),
        ("rails", "hardwood", "fitted"),
        ("recipe", "weighed_kg_per_m3"),
    ]
    assert {found[place] for place in places if place in found} == {"invented"}
    assert len([place for place in places if place in found]) > 4


@pytest.mark.parametrize("name", ["check-invented", "check-may-stay"])
@pytest.mark.parametrize(
    ("language", "one", "several"),
    [("en", "1 is yours.", "2 are yours."), ("de", "1 ist Ihrer.", "2 sind Ihre.")],
)
def test_one_value_is_counted_as_one(name: str, language: str, one: str, several: str) -> None:
    """`check` tells how many values are the maker's, be it a single one."""
    counts = {"invented": 3, "usual": 2, "every": 7}
    say = speech_in(language).say
    assert say(Message(name, **counts, yours=1)).endswith(one)
    assert say(Message(name, **counts, yours=2)).endswith(several)
