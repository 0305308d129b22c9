"""A name has one meaning: no two classes or type aliases of the package share one."""

import ast
import re
from collections import defaultdict
from collections.abc import Iterator, Mapping
from typing import Final

from design.source import modules, python_files

# An alias as we write them: a name in capital words, or letters that stand for a built-in type.
_CAPITAL_WORDS: Final = re.compile(r"_?[A-Z][A-Za-z0-9]*[a-z][A-Za-z0-9]*")
# Words that an engineer of the field would have to learn; DEVELOPERS.md says how names are chosen.
_RETIRED: Final = frozenset(
    {
        "cares",
        "crowd",
        "drafter",
        "everybody",
        "foreman",
        "gathered",
        "hair",
        "helped",
        "remembered",
    }
    | {"ripe", "shed", "stepped", "vain", "worth"}
)
_BUILT_IN: Final = frozenset({"dict", "frozenset", "list", "set", "tuple"})


def aliases(tree: ast.Module) -> Iterator[str]:
    """The names that a module gives to types of others."""
    for node in tree.body:
        match node:
            case ast.Assign(targets=[ast.Name(id=name)]) if _CAPITAL_WORDS.fullmatch(name):
                yield name
            case ast.Assign(
                targets=[ast.Name(id=name)], value=ast.Subscript(value=ast.Name(id=of))
            ) if of in _BUILT_IN:  # XY = tuple[float, float]
                yield name


def classes(tree: ast.Module) -> Iterator[str]:
    """The names of a module's classes."""
    yield from (node.name for node in tree.body if isinstance(node, ast.ClassDef))


def names_given(tree: ast.Module) -> Iterator[str]:
    """The names that a module gives to functions, classes, arguments and values."""
    for node in ast.walk(tree):
        match node:
            case ast.FunctionDef(name=name) | ast.ClassDef(name=name) | ast.arg(arg=name):
                yield name
            case ast.Name(id=name, ctx=ast.Store()) | ast.Attribute(attr=name, ctx=ast.Store()):
                yield name


def retired(tree: ast.Module) -> list[str]:
    """The names of a module in which a retired word stands."""
    words = re.compile(r"[a-z]+|[A-Z][a-z]*|[A-Z]+")
    return [
        name
        for name in names_given(tree)
        if _RETIRED & {word.lower() for word in words.findall(name)}
    ]


def shared(trees: Mapping[str, ast.Module]) -> dict[str, list[str]]:
    """The names that several modules give to classes or types of their own, with those modules."""
    owners = defaultdict(list)
    for name, tree in trees.items():
        for own in (*classes(tree), *aliases(tree)):
            owners[own].append(name)
    return {name: those for name, those in owners.items() if len(those) > 1}


def test_no_two_classes_or_types_share_a_name() -> None:
    """What is found by its name is found in one place."""
    assert shared(modules()) == {}


def test_a_tests_types_have_names_of_their_own() -> None:
    """An alias of the tests is defined once, and is no alias or class of the package."""
    package = {name for tree in modules().values() for name in (*classes(tree), *aliases(tree))}
    owners = defaultdict(list)
    for file, tree in python_files("tests").items():
        for name in aliases(tree):
            owners[name].append(file.as_posix())
    assert len(owners) > 30
    assert {name: those for name, those in owners.items() if len(those) > 1} == {}
    assert owners.keys() & package == set()


def test_a_shared_name_is_seen() -> None:
    """Two classes of one name are reported; a nested class does not count."""
    here, there = ast.parse("class Cut: ..."), ast.parse("class Cut:\n    class Meta: ...")
    alias = ast.parse("Cut = Literal['turned', 'carried']")
    assert shared({"mould": here, "remedies": there}) == {"Cut": ["mould", "remedies"]}
    assert shared({"mould": here, "outline": alias}) == {"Cut": ["mould", "outline"]}
    assert shared({"a": ast.parse("XY = tuple[int, int]"), "b": ast.parse("XY = tuple[str]")})
    assert shared({"mould": there, "outline": ast.parse("CUT = 3\nMeta = dict[str, int]")}) == {}


def test_no_retired_word_is_in_a_name() -> None:
    """A name is the field's own term, in the package and in the tests."""
    files = {**python_files("service"), **python_files("tests")}
    found = {file.as_posix(): names for file, tree in files.items() if (names := retired(tree))}
    assert len(files) > 1000
    assert found == {}


def test_a_retired_word_is_seen() -> None:
    """As a word of a name, whichever kind of name it is; not as a part of a word."""
    text = "class Foreman: ...\ndef a(ripe_days, watershed):\n    self.net_worth = chair = 1"
    assert sorted(retired(ast.parse(text))) == ["Foreman", "net_worth", "ripe_days"]
