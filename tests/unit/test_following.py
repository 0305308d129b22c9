"""What follows from a value that is typed: other lifts, a steel's yield, a shade's reading."""

import pytest

from ledgerstone.json_types import KeyPath
from ledgerstone.workshop.countries import usual_in
from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.form.following import MATERIAL, YIELD, put_with_followers
from ledgerstone.workshop.reading.loader import read_profile, starting_tables
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.standing import FIRST_LIFT, standings
from support.profile_form import begun


@pytest.mark.parametrize(("country", "typed"), [("GB", "55"), ("US", '"360 lb"'), ("DE", "200")])
def test_other_ways_take_in_proportion_what_the_first_takes(country: str, typed: str) -> None:
    """Rounded to 5 in the file's unit, and all of them the maker's."""
    draft = ProfileDraft(begun(country))
    before = read_profile(draft.text).handling.ways
    put_with_followers(draft, FIRST_LIFT, typed, usual_in(country).at_work())
    draft.settle()
    after = read_profile(draft.text).handling.ways
    factor = after[0].most_kg / before[0].most_kg
    for was, way in zip(before, after, strict=True):
        assert way.most_kg == pytest.approx(was.most_kg * factor, abs=2.6)
    found = standings(tables(draft.text), *starting_tables())
    ways = [word for path, word in found.items() if path[-1] == "most_kg" and "ways" in path]
    assert set(ways) == {"yours"}


def test_a_small_way_never_follows_to_nothing() -> None:
    """One step of what people say is the least."""
    draft = ProfileDraft(begun("GB"))
    path = (*FIRST_LIFT[:2], 1, "most_kg")
    draft.put(path, "2")
    draft.put((*path[:-2], 1, "standing"), '{ most_kg = "invented" }')
    put_with_followers(draft, FIRST_LIFT, "40", usual_in("GB"))
    assert draft.written(path) == "5"


def test_a_lift_that_was_given_does_not_follow() -> None:
    """Whatever the first is then."""
    draft = ProfileDraft(begun("GB"))
    second = (*FIRST_LIFT[:2], 1, "most_kg")
    draft.put(second, "90")
    put_with_followers(draft, FIRST_LIFT, "55", usual_in("GB"))
    assert draft.written(second) == "90"


@pytest.mark.parametrize(
    ("country", "mpa"), [("GB", 500), ("DE", 500), ("US", pytest.approx(413.7, abs=0.1))]
)
def test_plain_steel_yields_as_it_is_sold(country: str, mpa: float) -> None:
    """BS 4449 and DIN 488 B500; ASTM A615 grade 60 is 60 ksi. A yield that was given stays."""
    place = usual_in(country).at_work()
    draft = ProfileDraft(begun(country))
    put_with_followers(draft, MATERIAL, '"plain"', place)
    draft.settle()
    assert read_profile(draft.text).steel.yield_mpa == mpa
    given = ProfileDraft(begun(country))
    given.put(YIELD, "450")
    put_with_followers(given, MATERIAL, '"plain"', place)
    assert given.written(YIELD) == "450"


def test_glass_fibre_is_asked_what_it_reaches() -> None:
    """No number of ours stands for it."""
    draft = ProfileDraft(begun("GB"))
    put_with_followers(draft, MATERIAL, '"glass-fibre"', usual_in("GB"))
    draft.settle()
    assert draft.written(YIELD) == '""'


@pytest.mark.parametrize(("key", "toml"), [("colour", '"#112233"'), ("cement", '"white"')])
def test_a_shade_that_was_read_and_is_changed_is_by_eye(key: str, toml: str) -> None:
    """Unless it is said in the same go that it was read again."""
    draft = ProfileDraft(begun("GB"))
    by_eye, path = ("palette", 0, "by_eye"), ("palette", 0, key)
    draft.put(by_eye, "false")
    again = ProfileDraft(draft.text)
    assert put_with_followers(draft, path, toml, usual_in("GB")) == {by_eye: "true"}
    assert put_with_followers(again, path, toml, usual_in("GB"), {by_eye}) == {}
    assert again.written(by_eye) == "false"


SEALER: KeyPath = ("sealers", 0)
SAYS: KeyPath = (*SEALER, "says")


@pytest.mark.parametrize(("key", "toml"), [("kind", '"film"'), ("name", '"clear coat"')])
def test_of_a_sealer_that_is_another_one_customers_read_what_holds_of_its_kind(
    key: str, toml: str
) -> None:
    """Where the line was said of the one that a file begins with, or of another kind."""
    draft = ProfileDraft(begun("US"))
    begins = draft.written(SAYS)
    line_of = "Holds of a {}.".format
    place = usual_in("US")
    as_is = draft.written((*SEALER, key))
    assert put_with_followers(draft, (*SEALER, key), as_is, place, line_of=line_of) == {}
    put_with_followers(draft, (*SEALER, key), toml, place, line_of=line_of)
    kind = draft.written((*SEALER, "kind")).strip('"')
    assert draft.written(SAYS) == f'"Holds of a {kind}."' != begins
    other = "penetrating" if kind == "film" else "film"
    put_with_followers(draft, (*SEALER, "kind"), f'"{other}"', place, line_of=line_of)
    assert draft.written(SAYS) == f'"Holds of a {other}."'
    draft.put(SAYS, '"Ours, three coats."')
    draft.settle()
    assert put_with_followers(draft, (*SEALER, "kind"), f'"{kind}"', place, line_of=line_of) == {}
    assert draft.written(SAYS) == '"Ours, three coats."'
