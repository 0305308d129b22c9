"""The profile's records, and the starting profile that is printed from them."""

import dataclasses
import types
import typing
from collections.abc import Iterator
from dataclasses import replace

from ledgerstone.workshop import DEMONSTRATION, Workshop, load_profile, read_profile
from ledgerstone.workshop.starting import starting_profile
from ledgerstone.workshop.summary import second_looks
from ledgerstone.workshop.values import READERS

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
    """The starting profile loads, and differs from its example in who the workshop is, alone."""
    example, started = load_profile(DEMONSTRATION), read_profile(STARTING)
    assert started.workshop.name == "Your workshop"
    same = dataclasses.replace(
        started,
        workshop=example.workshop,
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


def test_what_customers_read_is_told_of_while_it_is_invented(workshop: Workshop) -> None:
    """A workshop of another name that still signs as the demonstration does is asked to look."""
    ours = replace(workshop, workshop=replace(workshop.workshop, name="Fell Slabs"))
    looks = second_looks(ours)
    assert any("Tarnside Casting" in says and "[reply]" in says for says in looks)
    assert any("example.com" in says for says in looks)
    own = replace(ours.workshop, email="hello@fellslabs.test")
    signed = replace(ours.reply, signature=("Ada", "Fell Slabs"))
    assert second_looks(replace(ours, workshop=own, reply=signed)) == ()
