"""What a maker says in comments of a list's items goes with its item, and with no other."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.workshop.form.editing import ProfileDraft
from ledgerstone.workshop.reading.syntax import tables
from support.strategies.orders import cases

AT = ("pigments", 1, "samples")
BEFORE = '[[pigments]]\nname = "red"\n\n# Of the black one.\n[[pigments]]\nname = "black"\n'
AFTER = "\n# What is sealed.\n[[sealers]]\ncoats = 2\n"


@st.composite
def remarks(draw: st.DrawFn, count: int) -> list[tuple[int, str]]:
    """For each item how many lines of comment stand above it, and what stands beside it."""
    beside = st.sampled_from(["", "  # beside {n}", " # {n}: [b]"])
    return [(draw(st.integers(0, 2)), draw(beside).format(n=n)) for n in range(count)]


def on_lines(told: list[tuple[int, str]], *, last_comma: bool) -> str:
    """The items as inline tables, each on a line of its own."""
    lines = []
    for n, (above, beside) in enumerate(told):
        lines += [f"  # above {n}"] * above
        comma = "," if last_comma or n < len(told) - 1 else ""
        lines.append(f"  {{ dose_percent = {n}, b = 1.5 }}{comma}{beside}")
    return "\n".join([*BEFORE.splitlines(), "samples = [", *lines, "]"]) + "\n" + AFTER


def as_tables(told: list[tuple[int, str]], blank: int) -> str:
    """The items as tables; what stands above the first is of the whole list."""
    parts = [BEFORE, "\n# Of the list.\n"]
    for n, (above, beside) in enumerate(told):
        parts += [f"# above {n}\n"] * (above if n else 0)
        parts += [f"[[pigments.samples]]{beside}\n", f"dose_percent = {n}{beside}\n"]
        parts += [f"# b = {n}\n", "\n" * blank]
    return "".join(parts) + AFTER


def owners(text: str) -> list[tuple[int, int | None]]:
    """Each comment that names an item, and the item that it stands above, beside or under."""
    lines, found = text.splitlines(), []
    for i, line in enumerate(lines):
        comment = re.search(r"#( above| beside| b =)? (\d)", line)
        if comment is not None:
            is_under = comment[1] == " b ="
            near = reversed(lines[:i]) if is_under else iter(lines[i:])
            doses = (re.search(r"dose_percent = (\d)", one) for one in near)
            dose = next((int(one[1]) for one in doses if one), None)
            found.append((int(comment[2]), dose))
    return found


@pytest.mark.parametrize("shape", ["lines", "tables"])
@settings(max_examples=cases(60), deadline=None)
@given(st.data())
def test_a_remark_goes_with_its_item(shape: str, data: st.DataObject) -> None:
    """Whichever items are taken out, every remark that stays is of the item that it was of."""
    count = data.draw(st.integers(2, 5))
    told = data.draw(remarks(count))
    if shape == "lines":
        text = on_lines(told, last_comma=data.draw(st.booleans()))
    else:
        text = as_tables(told, data.draw(st.integers(0, 1)))
    assert all(name == dose for name, dose in owners(text))
    draft, left = ProfileDraft(text), list(range(count))
    for _ in range(data.draw(st.integers(1, count))):
        k = data.draw(st.integers(0, len(left) - 1))
        draft.leave_out((*AT, k))
        del left[k]
    samples = tables(draft.text)["pigments"][1].get("samples", [])
    assert [one["dose_percent"] for one in samples] == left
    assert all(name == dose for name, dose in owners(draft.text))
    kept = [name for name, _ in owners(text) if name in left]
    assert [name for name, _ in owners(draft.text)] == kept
    assert "# Of the black one.\n[[pigments]]" in draft.text
    assert "# What is sealed.\n[[sealers]]\ncoats = 2\n" in draft.text
    assert ("# Of the list.\n" in draft.text) == (shape == "tables" and bool(left))
