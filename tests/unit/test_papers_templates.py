"""Templates: what a maker's own may do, and that ours keep to it."""

from pathlib import Path

import pytest

from ledgerstone.errors import ProfileError, TemplateFault
from ledgerstone.papers.templates import (
    BUILT_IN,
    Templates,
    folded,
    template_faults,
    templates_in,
)

WIDE = {"slabs": [1, 2], "name": "A", "deep": {"deeper": ["x"]}}

MAY_NOT = {
    "a range": "{% for i in range(9) %}{% endfor %}",
    "a text that repeats": "{{ 'a' * 1000000000 }}",
    "a power": "{{ 9 ** 9 ** 9 }}",
    "a wide format": "{{ '%1000000000d' % 1 }}",
    "a call": "{{ name.upper() }}",
    "a way out": "{{ name.__class__ }}",
    "a way out by item": "{{ ''.__class__.__mro__ }}",
    "a loop over a text": "{% for c in 'aaaaaaaa' %}{% endfor %}",
    "a loop over a list of its own": "{% for c in [1, 2, 3] %}{% endfor %}",
    "four loops deep": "{% for a in slabs %}{% for b in slabs %}{% for c in slabs %}"
    "{% for d in slabs %}{% endfor %}{% endfor %}{% endfor %}{% endfor %}",
    "a loop that calls itself": "{% for a in slabs recursive %}{{ loop(slabs) }}{% endfor %}",
    "a macro": "{% macro m() %}{{ m() }}{% endmacro %}{{ m() }}",
    "an assignment": "{% set a = name ~ name %}",
    "another file": "{% include '/etc/passwd' %}",
    "itself": "{% include 'reply.txt' %}",
    "an import": "{% import 'reply.txt' as r %}",
    "a parent": "{% extends 'reply.txt' %}",
    "a filter of no use here": "{{ name | center(1000000000) }}",
    "a block left open": "{% if name %}",
    "nonsense": "{{ name | }}",
}


@pytest.mark.parametrize("text", MAY_NOT.values(), ids=MAY_NOT.keys())
def test_a_template_may_not(text: str, tmp_path: Path) -> None:
    """What could loop, grow or reach outside is refused when the service starts, with its line."""
    assert list(template_faults(text))
    (tmp_path / "templates").mkdir()
    (tmp_path / "templates" / "reply.txt").write_text(f"first line\n{text}", encoding="utf-8")
    with pytest.raises(ProfileError) as refused:
        templates_in(tmp_path)
    [fault, *_] = refused.value.faults
    assert fault.key == "templates/reply.txt"
    assert fault.line == 2


MAY = {
    "a name": ("{{ name }}", "A"),
    "a choice": ("{% if slabs | length > 1 %}many{% else %}one{% endif %}", "many"),
    "loops": ("{% for a in slabs %}{% for b in deep.deeper %}{{ a ~ b }}{% endfor %}{% endfor %}",
              "1x2x"),
    "filters": ("{{ slabs | join(', ') }} {{ name | lower }}", "1, 2 a"),
    "joined texts": ("{{ 'a ' ~ name }}", "a A"),
    "a test": ("{% if nothing is defined %}x{% endif %}", ""),
}  # fmt: skip


@pytest.mark.parametrize(("text", "made"), MAY.values(), ids=MAY.keys())
def test_a_template_may(text: str, made: str) -> None:
    """Showing, choosing, repeating and joining are allowed."""
    assert list(template_faults(text)) == []
    assert Templates({"x.txt": text}).fill("x.txt", WIDE) == made


@pytest.mark.parametrize("name", BUILT_IN)
def test_ours_keep_to_it(name: str) -> None:
    """The templates that come with the service obey the rule: a maker may start from them."""
    assert list(template_faults(BUILT_IN[name])) == []


def test_html_is_escaped_and_text_is_not() -> None:
    """What fills an HTML template cannot be markup; plain text is left as it is."""
    templates = Templates({"x.html": "{{ name }}", "x.txt": "{{ name }}"})
    assert templates.fill("x.html", {"name": '<b>&"'}) == "&lt;b&gt;&amp;&#34;"
    assert templates.fill("x.txt", {"name": '<b>&"'}) == '<b>&"'


def test_filling_in_is_never_filling_in_twice() -> None:
    """What is filled in is not itself a template."""
    assert Templates({"x.txt": "{{ name }}"}).fill("x.txt", {"name": "{{ name }}"}) == "{{ name }}"


@pytest.mark.parametrize(
    "text", ["{{ nothing }}", "{{ name.nothing }}", "{{ slabs | join(name.x) }}"]
)
def test_what_is_not_there_is_reported(text: str) -> None:
    """A name that is not given is a fault that names the template."""
    with pytest.raises(TemplateFault, match=r"x\.txt"):
        Templates({"x.txt": text}).fill("x.txt", WIDE)


def test_without_a_folder_ours_are_used(tmp_path: Path) -> None:
    """A profile with no templates beside it has ours."""
    assert "Wilf" not in templates_in(tmp_path).fill(
        "reply.txt",
        {"trial": "", "greeting": "Hello", "thanks": "Thank you.", "options": [], "sent_back": None,
         "missing_ways": [], "terms": [], "full": True, "taken": "", "replaces": None,
         "asks": "", "questions": [], "signature": ["Ada"], "email": "a@b.example",
         "telephone": "1"},
    )  # fmt: skip


def test_a_template_that_is_no_text_is_reported(tmp_path: Path) -> None:
    """A file that is not UTF-8, or far too long, is refused by its name."""
    (tmp_path / "templates").mkdir()
    for content in (b"\xff\xfe", b"a" * 100_001):
        (tmp_path / "templates" / "reply.html").write_bytes(content)
        with pytest.raises(ProfileError):
            templates_in(tmp_path)


@pytest.mark.parametrize("unit", ["in", "mm", "kg", "%", "£"])
def test_a_fold_leaves_a_number_and_its_unit_together(unit: str) -> None:
    """Wherever the line's end comes; else the lines are as full as they can be."""
    for before in range(40, 72):
        folded_at = folded(
            f"{'x' * before} it needs 1 {unit} of room at the back of the basin there"
        )
        lines = folded_at.splitlines()
        assert max(map(len, lines)) <= 72
        assert f"1 {unit}" in folded_at
        assert folded_at.replace("\n", " ").split(" ")[1:5] == ["it", "needs", "1", unit]
