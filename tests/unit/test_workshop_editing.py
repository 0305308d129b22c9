"""A profile's text while it is changed: what is changed is, and all else stays as it is written."""

import re
from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.errors import ProfileError
from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.entry.typed import is_list, toml_list_of, toml_of
from ledgerstone.workshop.form.confirming import confirm, unconfirm
from ledgerstone.workshop.form.describing import DescribedTable, DescribedValue, described
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.placed_text import NoSuchPlace
from ledgerstone.workshop.form.samples import sample_of
from ledgerstone.workshop.reading.lines import KeyLines
from ledgerstone.workshop.reading.loader import (
    DEMONSTRATION,
    load_profile,
    profile_text,
    read_profile,
    starting_tables,
)
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records.members import member_at
from ledgerstone.workshop.standing import standings
from ledgerstone.workshop.starting.profile_text import starting_profile
from support.strategies.orders import cases

METRIC = usual_in("GB").at_work()
COUNTRIES = [
    DEMONSTRATION.with_name(f"{name}.toml")
    for name in ("demonstration", "germany", "united_states")
]
MOST = 2 * len(COUNTRIES)


@cache
def text_of(n: int) -> str:
    """A country's profile, or the one that a workshop there starts with."""
    file = COUNTRIES[n % len(COUNTRIES)]
    return profile_text(file) if n < len(COUNTRIES) else starting_profile(load_profile(file))


def remarks(text: str) -> list[str]:
    """Every comment of a text that is one, and no key or table that is left out."""
    found = re.findall(r"(?:^|\s)#\s?(.*)$", text, re.MULTILINE)
    return [one for one in found if not re.match(r"\s*([a-z_0-9]+ *=|\[|\]|\")", one)]


def sample(path: KeyPath) -> list[str]:
    """What a table is added as where none is there."""
    member = member_at(path)
    assert member is not None
    assert member.inner is not None
    return sample_of(member.inner, path, is_item=member.kind == "items")


@cache
def shown(n: int) -> list[DescribedTable | DescribedValue]:
    """Every table and value of a text."""
    raw = tables(text_of(n))
    return list(described(text_of(n), raw, standings(raw, *starting_tables())))


@pytest.mark.parametrize("n", range(MOST))
def test_what_is_not_changed_is_the_same_to_the_byte(n: int) -> None:
    """Every value written again as it is written leaves the text as it was, comments and all."""
    text = text_of(n)
    draft, places = ProfileDraft(text), KeyLines(text)
    for path, (start, end) in places.values.items():
        draft.put(path, text[start:end])
    assert draft.text == text


@pytest.mark.parametrize("n", range(MOST))
def test_what_a_form_shows_is_read_back_as_it_was(n: int) -> None:
    """Every value as it is shown, typed again with either mark, is the value that it was."""
    text, raw = text_of(n), tables(text_of(n))
    for mark in ".,":
        draft = ProfileDraft(text)
        for one in shown(n):
            if isinstance(one, DescribedTable) or one.value is None:
                continue
            put_back(draft, one, mark)
        assert tables(draft.text) == raw
        assert remarks(draft.text) == remarks(text)


def put_back(draft: ProfileDraft, one: DescribedValue, mark: str) -> None:
    """Type a value as the form shows it where numbers have a mark."""
    texts = [str(each) for each in (one.value if isinstance(one.value, list) else [one.value])]
    if isinstance(one.value, bool):
        texts = [texts[0].lower()]
    if one.member.kind in ("number", "numbers", "money"):
        texts = [text.replace(".", mark) for text in texts]
    if is_list(one.member):
        draft.put(one.path, toml_list_of(one.member, texts, mark, METRIC))
    else:
        draft.put(one.path, toml_of(one.member, texts[0], mark, METRIC))


@pytest.mark.parametrize(
    ("typed", "mark", "written"),
    [
        ("52,00", ",", "52.00"),
        ("52.00", ",", "52.00"),
        ("1.200", ",", "1200"),
        ("1.200,50", ",", "1200.50"),
        ("1,200.5", ".", "1200.5"),
        ("0,35", ".", "0.35"),
        ("£45", ".", "45"),
        ("19 %", ",", "19"),
        ("007", ".", "7"),
        ("−3", ".", "-3"),
        ("47 1/4 in", ".", '"47 1/4 in"'),
        ("a lot", ".", '"a lot"'),
    ],
)
def test_a_number_is_read_as_it_is_typed_at_home(typed: str, mark: str, written: str) -> None:
    """Commas, thousands and signs of the maker's language become TOML; a unit stays with it."""
    member = member_at(("rates", "hour"))
    assert member is not None
    assert toml_of(member, typed, mark, METRIC) == written


def test_an_item_goes_alone() -> None:
    """Where the last of a list is taken out, what is stated above the next table stays."""
    draft = ProfileDraft(text_of(0))
    draft.leave_out(("palette", 4))
    draft.leave_out(("palette", 0))
    names = [one["name"] for one in tables(draft.text)["palette"]]
    assert names == ["chalk", "tarn slate", "fell clay"]
    lost = set(remarks(text_of(0))) - set(remarks(draft.text))
    assert lost == {"dark faces show every mark"}


def test_what_is_left_out_is_a_comment_and_is_used_again() -> None:
    """A key or a table that is left out stays as a comment, and comes back with its place."""
    draft = ProfileDraft(text_of(0))
    draft.leave_out(("tent",))
    draft.leave_out(("bench", "mixers"))
    assert "tent" not in tables(draft.text)
    assert "# mixers = 1" in draft.text
    draft.add(("tent",), sample(("tent",)))
    draft.put(("bench", "mixers"), "1")
    assert draft.text == text_of(0)


def test_a_new_item_has_what_it_needs_and_that_is_empty() -> None:
    """One more of a list, or the first of one, holds no value that nobody entered."""
    draft = ProfileDraft(text_of(0))
    draft.add(("areas",), sample(("areas",)))
    draft.add(("palette", 3, "doses"), sample(("palette", 3, "doses")))
    draft.add(("palette", 1, "doses"), sample(("palette", 1, "doses")))
    draft.add(("concrete", "tested"), sample(("concrete", "tested")))
    raw = tables(draft.text)
    assert raw["areas"][-1] == {"name": "", "postcodes": []}
    empty = {"pigment": "", "percent": ""}
    assert [raw["palette"][i]["doses"][-1] for i in (3, 1)] == [empty, empty]
    assert len(raw["palette"][3]["doses"]) == 3
    assert set(raw["concrete"]["tested"][0].values()) == {""}


def test_a_table_of_samples_is_begun_empty() -> None:
    """What a new file leaves out with samples is begun without them; all it needs is asked."""
    draft = ProfileDraft(starting_profile(load_profile(DEMONSTRATION)))
    draft.add(("mail",), sample(("mail",)))
    draft.add(("recipe", "bag"), sample(("recipe", "bag")))
    raw = tables(draft.text)
    assert set(raw["mail"].values()) == {""}
    assert raw["recipe"]["bag"]["price_per_bag"] == ""
    assert "yield_l" not in raw["recipe"]["bag"]
    with pytest.raises(ProfileError) as raised:
        read_profile(draft.text)
    asked = {fault.key for fault in raised.value.faults if fault.message.name == "fault-empty"}
    assert {"mail.host", "recipe.bag.price_per_bag", "recipe.bag.bag_kg"} <= asked


def test_ticks_are_the_makers_word() -> None:
    """A tick on a table or a value confirms it, and taken off it does not."""
    text = starting_profile(load_profile(DEMONSTRATION))
    draft = ProfileDraft(text)
    confirm(draft, ("hours",))
    confirm(draft, ("palette",))
    confirm(draft, ("rates", "hour"))
    confirm(draft, ("rates", "margin_percent"))
    found = standings(tables(draft.text), *starting_tables())
    yours = {path for path, word in found.items() if word == "yours"}
    assert {path[0] for path in yours} >= {"hours", "palette"}
    assert {path[1] for path in yours if path[0] == "rates"} == {"hour", "margin_percent"}
    assert not any(word == "invented" for path, word in found.items() if path[0] == "hours")
    unconfirm(draft, ("hours",))
    unconfirm(draft, ("palette",))
    unconfirm(draft, ("rates", "hour"))
    unconfirm(draft, ("rates", "margin_percent"))
    assert draft.text == text


def test_where_nothing_stands_nothing_is_changed() -> None:
    """A place that a profile does not have is refused, and the text stays."""
    draft = ProfileDraft(text_of(0))
    for change in (draft.leave_out, lambda path: confirm(draft, path)):
        with pytest.raises(NoSuchPlace):
            change(("nowhere",))
    with pytest.raises(NoSuchPlace):
        draft.put(("palette", 9, "name"), '"x"')
    assert member_at(("rates", "nothing")) is None
    assert member_at(("rates", 0)) is None
    assert draft.text == text_of(0)


@settings(max_examples=cases(12))
@given(st.data())
def test_any_changes_leave_every_remark(data: st.DataObject) -> None:
    """Whatever is set, added and ticked, it stays TOML, and no remark is lost or moved."""
    n = data.draw(st.integers(0, MOST - 1))
    text, raw, found = text_of(n), tables(text_of(n)), shown(n)
    draft = ProfileDraft(text)
    lists = [one for one in found if isinstance(one, DescribedTable) and one.member.kind == "items"]
    lists = [one for one in lists if not isinstance(one.path[-1], int)]
    written = [one for one in found if isinstance(one, DescribedValue) and one.value is not None]
    for one in data.draw(st.lists(st.sampled_from(written), max_size=4)):
        put_back(draft, one, ".")
        if one.path[0] != "offer":
            confirm(draft, one.path)
    for table in data.draw(st.lists(st.sampled_from(lists), max_size=3)):
        draft.add(table.path, sample(table.path))
    assert tables(draft.text).keys() >= raw.keys()
    told = iter(remarks(draft.text))
    assert all(remark in told for remark in remarks(text))
    headed = [line for line in text.splitlines() if line.startswith("[")]
    kept = iter(line for line in draft.text.splitlines() if line.startswith("["))
    assert all(line in kept for line in headed)


def test_the_demonstration_with_a_change_still_reads() -> None:
    """A profile that was changed in its text is read, and says what was changed."""
    draft = ProfileDraft(text_of(0))
    draft.put(("rates", "hour"), "44.00")
    draft.put(("offer", "payment"), '"by transfer"')
    changed = read_profile(draft.text)
    assert str(changed.rates.hour) == "44.00"
    assert changed.offer.payment == "by transfer"
