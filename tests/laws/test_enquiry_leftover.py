"""Laws of what is left over: what a message tells is read, asked, set aside with why, or listed."""

import re
from collections.abc import Iterator, Mapping
from typing import Any

from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import WORKSHOP
from ledgerstone.enquiry import read_enquiry
from support.strategies import enquiry_strange as strange
from support.strategies.enquiry_phrases import compose
from support.strategies.orders import cases

MANY = settings(max_examples=cases(12), suppress_health_check=[HealthCheck.too_slow])


def _accounted(read: Mapping[str, Any]) -> Iterator[tuple[int, int]]:
    """Every stretch of a text that some list of its answer speaks of."""
    for entry in read["read"]:
        yield from ((one["start"], one["end"]) for one in entry["from"])
    for entry in read["doubtful"]:
        for reading in entry["readings"]:
            yield from ((one["start"], one["end"]) for one in reading["from"])
    for one in (*read["ignored"], *read["unread"]):
        yield one["start"], one["end"]


def _lost(read: Mapping[str, Any], word: str) -> list[str]:
    """Where a number stands in a text and no list speaks of it."""
    spans = list(_accounted(read))
    found = re.finditer(rf"(?<!\d){re.escape(word)}(?!\d)", read["text"])
    return [
        read["text"][max(0, at.start() - 20) : at.end() + 20]
        for at in found
        if not any(start < at.end() and at.start() < end for start, end in spans)
    ]


@MANY
@given(strange.strange_sizes())
def test_no_size_is_lost(told: strange.Strange) -> None:
    """A size that no rule understands is listed, and the slab's own are read as ever."""
    read = read_enquiry(told.text, WORKSHOP)
    for word in told.words:
        assert not _lost(read, word), told.text


@MANY
@given(strange.strange_openings())
def test_no_opening_is_lost(told: strange.Strange) -> None:
    """An opening of which only the name is told is drafted and asked, or listed."""
    read = read_enquiry(told.text, WORKSHOP)
    is_drafted = bool(read["order"]["slabs"][0].get("cutouts"))
    assert is_drafted or not _lost(read, told.words[0]), told.text


def test_what_is_read_is_not_listed() -> None:
    """Of messages that are read whole, with asides that are none of the slab's, none is lost."""
    for seed in range(40):
        one = compose(seed)
        read = read_enquiry(one.text, WORKSHOP)
        for number in re.findall(r"(?<![\d£,.:/])\d{3,4}(?![\d,.:/])", one.text):
            assert not _lost(read, number) or _is_masked(one.text, number), one.text


def _is_masked(text: str, number: str) -> bool:
    """Return whether a number is a telephone's, a year or a sum of money, which are no sizes."""
    return bool(
        re.search(rf"(?:07700 |01632 |£[\d,]*|20){number}|in {number}|{number} after", text)
    )
