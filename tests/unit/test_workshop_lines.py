"""The line on which each key of a profile stands."""

import tomllib
from collections.abc import Iterator

import pytest
from hypothesis import given
from hypothesis import strategies as st

from ledgerstone.workshop import DEMONSTRATION, load_profile
from ledgerstone.workshop.reading.lines import KeyLines
from ledgerstone.workshop.starting.profile_text import starting_profile

TEXT = DEMONSTRATION.read_text(encoding="utf-8")
STARTING = starting_profile(load_profile(DEMONSTRATION))


def _paths(value: object, path: tuple[str | int, ...] = ()) -> Iterator[tuple[str | int, ...]]:
    """Yield the path of every key in a parsed TOML document."""
    if isinstance(value, dict):
        for key, inner in value.items():
            yield (*path, key)
            yield from _paths(inner, (*path, key))
    elif isinstance(value, list):
        for i, inner in enumerate(value):
            yield from _paths(inner, (*path, i))


@pytest.mark.parametrize("text", [TEXT, STARTING], ids=["demonstration", "starting"])
def test_every_key_is_found_on_a_line_that_names_it(text: str) -> None:
    """The line of every key of a whole profile holds that key."""
    where, rows = KeyLines(text), text.splitlines()
    paths = list(_paths(tomllib.loads(text)))
    assert len(paths) > 200
    for path in paths:
        assert str(path[-1]) in rows[where.line(path) - 1], path


AWKWARD = r'''# [not.a.table]
a.b . "c d" = 1
x = """
[no] = 'table'
y = 2"""
z = [ # a ] in a comment
  "]", ']',
  { k = 1, "l" = [2,
    3] },
]
s = '\'
[t."u.v"] # a table
w = """a \""" b"""""
[[t.r]]
n = 1
[[t.r]]
n = 2
[t.r.q]
m = 3
[[t.r]]
'''


@pytest.mark.parametrize(
    ("path", "line"),
    [
        (("a", "b", "c d"), 2),
        (("a",), 2),
        (("x",), 3),
        (("y",), 0),
        (("z",), 6),
        (("z", 0), 7),
        (("z", 1), 7),
        (("z", 2, "k"), 8),
        (("z", 2, "l", 1), 9),
        (("s",), 11),
        (("t", "u.v"), 12),
        (("t", "u.v", "w"), 13),
        (("t", "r", 0, "n"), 15),
        (("t", "r", 1, "n"), 17),
        (("t", "r", 1, "q", "m"), 19),
        (("t", "r", 2, "n"), 20),
        (("nothing",), 0),
    ],
)
def test_awkward_toml_is_followed(path: tuple[str | int, ...], line: int) -> None:
    """Dotted and quoted keys, long strings, comments in lists and tables in lists are followed."""
    assert tomllib.loads(AWKWARD)["t"]["r"][1]["q"]["m"] == 3
    assert KeyLines(AWKWARD).line(path) == line


@given(st.text(alphabet="[]{}=\"'#.,\\\n\r ab1", max_size=60))
def test_any_text_comes_to_its_end(text: str) -> None:
    """The lines of any text at all are found in the time of one pass, none beyond its end."""
    assert 1 <= KeyLines(text).last_statement <= text.count("\n") + 1
