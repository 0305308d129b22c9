"""The one JSON loader: what it reads, and the sentence for everything that it does not."""

import time

import pytest

from ledgerstone.codec.strict_json import MAX_JSON_DEPTH, read_json
from ledgerstone.errors import NotJSON
from ledgerstone.wording import english


def refused(body: bytes) -> str:
    """Read a body that is not strict JSON, and return what is stated."""
    with pytest.raises(NotJSON) as caught:
        read_json(body)
    (fault,) = caught.value.faults
    assert fault.pointer == ""
    return english(fault.message)


@pytest.mark.parametrize(
    ("body", "value"),
    [
        (b'{"a": [1, 2.5, "x", true, null]}', {"a": [1, 2.5, "x", True, None]}),
        (b" 3 ", 3),
        ('"Küche — Ω"'.encode(), "Küche — Ω"),
        (b'"\\u00e9\\n[{"', "é\n[{"),
        (b"[" * MAX_JSON_DEPTH + b"]" * MAX_JSON_DEPTH, None),
        (b'["[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[["]', ["[" * 40]),
        (b"99999999999999999999", 99999999999999999999),
        (b"1e308", 1e308),
    ],
)
def test_json_is_read(body: bytes, value: object) -> None:
    """One document, brackets in texts not counted as depth."""
    found = read_json(body)
    assert value is None or found == value


@pytest.mark.parametrize(
    ("body", "word"),
    [
        (b"", "empty"),
        (b" \n ", "empty"),
        (b"\xff\xfe", "UTF-8"),
        (b"\xef\xbb\xbf{}", "not JSON"),
        (b"{'a': 1}", "not JSON"),
        (b'{"a": 1,}', "not JSON"),
        (b'{"a": 1} x', "not JSON"),
        (b'{"a": 1', "not JSON"),
        (b"nul", "not JSON"),
        (b'{"a": 1, "a": 2}', '"a" stands twice'),
        (b'{"b": {"a": 1, "a": 1}}', '"a" stands twice'),
        (b"NaN", "NaN is not a number"),
        (b"[Infinity]", "Infinity is not a number"),
        (b"[-Infinity]", "-Infinity is not a number"),
        (b"1e309", "too large a number"),
        (b"-1e999", "too large a number"),
        (b"1" * 400, "too large a number"),
        (b"[" * (MAX_JSON_DEPTH + 1) + b"]" * (MAX_JSON_DEPTH + 1), "deeper"),
        (b'{"a":' * 40 + b"1" + b"}" * 40, "deeper"),
    ],
)
def test_what_is_not_strict_json_is_refused(body: bytes, word: str) -> None:
    """Each in a sentence that says what it was."""
    assert word in refused(body)


@pytest.mark.parametrize(
    "body", [b"[" * 65_536, b'"' + b"\\" * 65_000, b'"' * 65_536, b"1" * 65_536, b"{" * 65_536]
)
def test_a_hostile_body_is_refused_at_once(body: bytes) -> None:
    """Nothing recurses, and no pattern goes back over what it has read: under a second."""
    began = time.process_time()
    refused(body)
    assert time.process_time() - began < 1.0


def test_the_place_of_a_slip_is_stated() -> None:
    """Line and column of where the text stops being JSON."""
    assert "line 2, column" in refused(b'{"a": 1,\n "b" 2}')
