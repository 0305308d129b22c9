"""The profile's records, and the starting profile that is printed from them."""

import dataclasses
import io
import re
import types
import typing
from collections.abc import Iterator
from dataclasses import replace
from functools import partial
from pathlib import Path

import pytest
from babel.core import get_global
from babel.numbers import get_territory_currencies

from ledgerstone.cli.profiles import run
from ledgerstone.wording.profile import about_in, profile_texts
from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile, read_profile
from ledgerstone.workshop.countries import COUNTRIES, usual_in
from ledgerstone.workshop.keys.values import READERS
from ledgerstone.workshop.reading.loader import EXAMPLES, example_for
from ledgerstone.workshop.reading.syntax import tables
from ledgerstone.workshop.records.members import members_of
from ledgerstone.workshop.review.rests_on import RESTS_ON
from ledgerstone.workshop.review.second_looks import second_looks
from ledgerstone.workshop.starting.profile_text import attribute_of, starting_profile

STARTING = starting_profile(load_profile(DEMONSTRATION))


def _records(kind: type) -> Iterator[type]:
    """Yield a record and every record inside it that a profile writes."""
    yield kind
    hints = typing.get_type_hints(kind)
    for hint in (hints[f.name] for f in dataclasses.fields(kind) if not f.metadata.get("computed")):
        for inner in (hint, *typing.get_args(hint)):
            if dataclasses.is_dataclass(inner) and isinstance(inner, type):
                yield from _records(inner)


def _fields() -> list[tuple[type, str]]:
    return [
        (record, f.name)
        for record in dict.fromkeys(_records(Workshop))
        for f in dataclasses.fields(record)
        if not f.metadata.get("computed")
    ]


def test_every_field_says_what_it_is_about() -> None:
    """Every field of every record has the comment that the starting profile prints."""
    assert len(_fields()) > 100
    lacking = [
        (record.__name__, f.name)
        for record in dict.fromkeys(_records(Workshop))
        for f in dataclasses.fields(record)
        if not f.metadata.get("computed") and not f.metadata.get("about")
    ]
    assert not lacking


def test_every_type_in_the_records_can_be_read() -> None:
    """Every field is a value that the loader reads, one of some words, a record, or a list."""
    for record in dict.fromkeys(_records(Workshop)):
        for hint in typing.get_type_hints(record).values():
            inner = hint
            if isinstance(hint, types.UnionType) or typing.get_origin(hint) is typing.Union:
                (inner,) = (one for one in typing.get_args(hint) if one is not types.NoneType)
            if typing.get_origin(inner) is tuple:
                inner = typing.get_args(inner)[0]
            literal = typing.get_origin(inner) is typing.Literal
            assert literal or dataclasses.is_dataclass(inner) or inner in READERS


# --- the starting profile -------------------------------------------------------------------


def test_starting_profile_says_what_the_demonstration_says() -> None:
    """The starting profile loads, and differs from its example in who and where it is, alone.

    What a maker would have to take out is not in it: other areas, closed days, a price for rails, a
    slab that was weighed, gear to lift with, what is charged beside the making or sold before it,
    work that was taken on, what is said of payment and at a letter's end, a declaration for food.
    """
    example, started = load_profile(DEMONSTRATION), read_profile(STARTING)
    assert started.workshop.name == "Your workshop"
    assert (len(started.areas), started.calendar.closures) == (1, ())
    assert (started.rails.hardwood.fitted, started.rails.steel.fitted) == (None, None)
    assert (started.rails.post_fitted, started.recipe.weighed_kg_per_m3) == (None, None)
    assert {way.held for way in started.handling.ways} == {"on-edge"}
    area, services, offer = started.areas[0], started.services, started.offer
    assert area.fitting_per_slab == services.templating_per_slab == services.templating_visit == 0
    assert (area.pallet, started.sample, started.tent) == (None, None, None)
    assert offer.smallest_order == 0
    assert (offer.payment, offer.balance_due, started.reply.terms) == (None, None, ())
    assert started.calendar.orders_ahead_days == 0
    assert not any(sealer.food_declared for sealer in started.sealers)
    weighed = example.recipe.weighed_kg_per_m3
    of_first = ("name", "pallet", "fitting_per_slab")
    first = replace(area, **{key: getattr(example.areas[0], key) for key in of_first})
    of_offer = ("payment", "balance_due", "smallest_order")
    same = dataclasses.replace(
        started,
        rails=example.rails,
        recipe=replace(started.recipe, weighed_kg_per_m3=weighed),
        calendar=replace(
            started.calendar,
            closures=example.calendar.closures,
            orders_ahead_days=example.calendar.orders_ahead_days,
        ),
        offer=replace(offer, **{key: getattr(example.offer, key) for key in of_offer}),
        sample=example.sample,
        tent=example.tent,
        workshop=example.workshop,
        reply=replace(
            started.reply,
            **{key: getattr(example.reply, key) for key in ("who", "signature", "terms")},
        ),
        areas=(first, *example.areas[1:]),
        handling=replace(started.handling, ways=example.handling.ways),
        services=example.services,
        sealers=example.sealers,
        standing=example.standing,
        fingerprint=example.fingerprint,
    )
    assert same == example


def test_every_field_stands_in_the_starting_profile() -> None:
    """A maker finds every key of a record in the table it belongs to, some commented out."""
    keys = _keys_by_header()
    assert [(record, name) for record, name in _fields() if name not in keys[record]] == []


def _keys_by_header() -> dict[type, set[str]]:
    """Keys that stand under each record's headers in the starting profile, comments included."""
    headers = dict(_headers(Workshop, ""))
    keys: dict[type, set[str]] = {record: set() for record in headers.values()}
    inside: type = Workshop
    for row in STARTING.splitlines():
        bare = row.removeprefix("# ")
        if bare.startswith("["):
            path = bare.strip("[]")
            inside = headers[path]
            outer, _, last = path.rpartition(".")
            keys[headers[outer]].add(last)
        elif " = " in bare:
            keys[inside].add(bare.split(" = ")[0])
    return keys


def _headers(record: type, path: str) -> Iterator[tuple[str, type]]:
    """Yield the path of every header with the record that stands under it."""
    yield path, record
    for name, hint in typing.get_type_hints(record).items():
        for inner in (hint, *typing.get_args(hint)):
            if dataclasses.is_dataclass(inner) and isinstance(inner, type):
                yield from _headers(inner, f"{path}.{name}".removeprefix("."))


def test_what_customers_read_is_flagged_while_it_is_invented(workshop: Workshop) -> None:
    """A workshop of another name that still signs as the demonstration does is asked to look."""
    ours = replace(workshop, workshop=replace(workshop.workshop, name="Fell Slabs"))
    looks = second_looks(ours)
    assert [look.name for look in looks] == ["check-signature", "check-email"]
    own = replace(ours.workshop, email="hello@fellslabs.test")
    signed = replace(ours.reply, signature=("Ada", "Fell Slabs"))
    assert second_looks(replace(ours, workshop=own, reply=signed)) == ()


@pytest.mark.parametrize("record", dict.fromkeys(_records(Workshop)))
def test_every_key_is_reported_in_german(record: type) -> None:
    """What a key is stands in German for every record, and nothing for a key that is none."""
    texts = profile_texts("de")
    told = {key.partition(".")[2] for key in texts if key.partition(".")[0] == record.__name__}
    assert told == {member.name for member in members_of(record)}


@pytest.mark.parametrize("language", ["en", "de"])
def test_every_word_that_is_chosen_is_named(language: str) -> None:
    """In each language, and nothing else is; a new file says beside a key what it chooses from."""
    members = [one for record in dict.fromkeys(_records(Workshop)) for one in members_of(record)]
    words = {word for one in members for word in one.choices}
    texts = profile_texts(language)
    assert {key.removeprefix("Choices.") for key in texts if key.startswith("Choices.")} == {
        attribute_of(word) for word in words
    }
    written = starting_profile(load_profile(example_for("DE")), partial(about_in, language))
    told = re.sub(r"\n#? +", " ", written)
    for word in words - {"N/mm2", "gal"}:
        assert re.search(rf"[(;] ?{word}(:|;|\))", re.sub(r"\n# ", " ", told)), word


def test_a_german_file_is_in_german_and_reads_the_same() -> None:
    """The comments of a new German file are German; its values are those of the English one."""
    example = load_profile(example_for("DE"))
    german = starting_profile(example, partial(about_in, "de"))
    assert tables(german) == tables(starting_profile(example))
    assert f"# {profile_texts('de')['Rates.hour']}" in german
    shared = {line for line in german.splitlines() if line.startswith("# ")}
    shared &= set(starting_profile(example).splitlines())
    assert [line for line in shared if " = " not in line and "[" not in line] == []
    assert set(RESTS_ON) == {
        key.partition(".")[2] for key in profile_texts("de") if "RestsOn" in key
    }


@pytest.mark.parametrize("country", [*COUNTRIES, "BR", "JP"])
def test_a_started_profile_is_of_its_country_and_of_no_invented_person(
    tmp_path: Path, country: str
) -> None:
    """Its money, clock, tax and postcodes are the country's; nobody invented is named in it."""
    file = tmp_path / "workshop.toml"
    assert run(["init", str(file), "--country", country], io.StringIO(), io.StringIO(), {}) == 0
    started = load_profile(file)
    who = started.workshop
    assert who.country == country
    assert who.currency == next(iter(get_territory_currencies(country)))
    assert not re.search(r"\d", who.telephone)  # no other country's number
    assert who.timezone in get_global("territory_zones")[country]
    assert started.tax.name == usual_in(country).tax_name
    texts = list(_texts(tables(file.read_text(encoding="utf-8"))))
    for example in map(load_profile, {DEMONSTRATION, *EXAMPLES.values()}):
        people = re.findall(r"[A-Z]\w{2,}", example.reply.who)
        assert len(people) > 1
        names = {example.workshop.name, example.workshop.town, *people}
        assert [text for text in texts if any(name in text for name in names)] == []
    assert bool(started.areas) == (usual_in(country).postcodes is not None)
    assert not started.areas or "areas" in started.standing.priced
    looks = {look.name for look in second_looks(started)}
    assert ("check-law" in looks) == (country not in ("GB", "DE", "US"))
    assert "check-postcodes" not in looks


def _texts(value: object) -> Iterator[str]:
    """Every text that a document holds."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict | list):
        for one in value.values() if isinstance(value, dict) else value:
            yield from _texts(one)
