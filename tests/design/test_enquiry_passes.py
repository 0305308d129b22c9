"""The passes of the enquiry's reader run one way, as the head of its package says."""

from typing import Final

from design.source import imports_of, modules

READER: Final = "enquiry."
# A pass imports none that stands after it; `answer` runs them all.
PASSES: Final = (
    "words",
    "text",
    "sentence",
    "scene",
    "ownership",
    "places",
    "shapes",
    "referents",
    "walk",
    "values",
    "wishes",
    "sender",
    "facts",
    "draft",
    "answer",
)


def _pass_of(module: str) -> str:
    return module.removeprefix(READER).partition(".")[0]


def test_a_pass_imports_only_passes_before_it() -> None:
    """Each module of the reader is in a pass, and imports none of a later one."""
    own = [name for name in modules() if name.startswith(READER)]
    assert {_pass_of(name) for name in own} == set(PASSES)
    assert [
        (module, name)
        for module in own
        for name in imports_of(module)
        if name.startswith(READER) and PASSES.index(_pass_of(name)) > PASSES.index(_pass_of(module))
    ] == []
