"""The recipes of DEVELOPERS.md for adding a thing, each followed to the letter in a copy."""

import json
import re
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest

from design.recipe_programs import CONTRACT, PAPERS, PLAIN, READS, TERMINAL, WORDS, ask, end, run
from design.source import PACKAGE
from ledgerstone.surfaces import SURFACES
from ledgerstone.wording import LANGUAGES
from support.documents import Json

PAGES = ("page", "profile")


@pytest.fixture
def package(tmp_path: Path) -> Iterator[Path]:
    """A copy of the package, to be changed."""
    copy = tmp_path / "service" / "ledgerstone"
    shutil.copytree(
        PACKAGE, copy
    )  # what is compiled of it too: only what is changed is compiled again
    yield copy
    end(copy)


def put(file: Path, before: str, after: str) -> None:
    """Replace the one place in a file where a text stands."""
    text = file.read_text(encoding="utf-8")
    assert text.count(before) == 1, f"{file.name} has {before!r} {text.count(before)} times"
    file.write_text(text.replace(before, after), encoding="utf-8")


def test_the_words_of_a_surface_stand_in_one_file_of_each_language() -> None:
    """No other catalogue of messages chooses by a surface, nor says one in an attribute."""
    chosen = re.compile(rf"(?m)^ +(?:\*?\[|\.)(?:{'|'.join(SURFACES)})\b")
    found = (PACKAGE / "wording" / "catalogues").glob("*/*.ftl")
    by_surface = {file for file in found if chosen.search(file.read_text(encoding="utf-8"))}
    assert by_surface == set(surface_catalogues(PACKAGE))


@pytest.fixture(scope="module")
def as_it_is() -> Json:
    """The answer of the package itself to an order that asks for nothing new."""
    (told,) = ask(PACKAGE, {})
    end(PACKAGE)
    return told


def answered_alike(one: Json, other: Json) -> bool:
    """Return whether two answers find the same and cost the same."""
    return all(one[key] == other[key] for key in ("answer", "findings", "total"))


def surface_catalogues(package: Path) -> list[Path]:
    """Where a surface's words stand: one file of a language's messages, and those of two pages."""
    catalogues = package / "wording" / "catalogues"
    pages = (catalogues / page / f"{language}.ftl" for page in PAGES for language in LANGUAGES)
    return [*(catalogues / language / "surfaces.ftl" for language in LANGUAGES), *pages]


def add_surface(package: Path) -> None:
    """Add the surface “scoured”: name, record, words, customers' words, rows in the file."""
    file, record = package / "surfaces.py", '        "honed": SurfaceKind('
    put(file, "Surface = Literal[", 'Surface = Literal["scoured", ')
    put(file, record, f'        "scoured": SurfaceKind(0.1, 200, 8.0, frees_dust=True),\n{record}')
    for catalogue in surface_catalogues(package):
        text = catalogue.read_text(encoding="utf-8")
        text = re.sub(r"\n( +\*?\[polished\])", r"\n    [scoured] scoured\n\1", text)
        text = re.sub(r"(surface-verb = (?:.*\n)*?    \[scoured\] )scoured", r"\1scour", text)
        for record in ("surface", "Choices"):  # of the page, and of the form of a profile
            before = rf"(?m)(^{record} =\n(?:    .*\n)*?)(    \.honed = )"
            text = re.sub(before, r"\1    .scoured = scoured\n\2", text)
        catalogue.write_text(text, encoding="utf-8")
    look = package / "enquiry" / "wishes" / "look.py"
    put(look, '        "honed": "', f'        "scoured": "scoured",\n{" " * 8}"honed": "')
    profile = package / "workshop" / "demonstration.toml"
    put(
        profile,
        '[[finishes]]\nsurface = "honed"',
        '[[finishes]]\nsurface = "scoured"\nsays = "Scoured while green."\nhours_per_m2 = 1.0\n'
        'consumables_per_m2 = 5.00\ndays = 1\n\n[[finishes]]\nsurface = "honed"',
    )
    put(
        profile,
        '  { surface = "honed", l_per_m2 = 0.3 },',
        '  { surface = "scoured", l_per_m2 = 0.1 },\n  { surface = "honed", l_per_m2 = 0.3 },',
    )


def add_cutout_kind(package: Path) -> None:
    """Add the kind “diamond”: its module, and its place in the table of kinds."""
    text = (package / "cutouts" / "slot.py").read_text(encoding="utf-8")
    for before, after in (
        ("SLOT", "DIAMOND"),
        ('name="slot"', 'name="diamond"'),
        (
            "return placed_box(cutout, min(boxed_size_mm(cutout)) / 2)",
            (
                "(x, y), (a, b) = centre_mm(cutout), boxed_size_mm(cutout)\n"
                "    points = ((x, y - b / 2), (x + a / 2, y), (x, y + b / 2), (x - a / 2, y))\n"
                "    return Polygon(points), a * b / 2"
            ),
        ),
        ("import boxed_size_mm, placed_box", "import boxed_size_mm, centre_mm"),
    ):
        assert before in text
        text = text.replace(before, after)
    (package / "cutouts" / "diamond.py").write_text(text, encoding="utf-8")
    put(
        package / "cutouts" / "__init__.py",
        "from ledgerstone.cutouts.kind import",
        "from ledgerstone.cutouts.diamond import DIAMOND\nfrom ledgerstone.cutouts.kind import",
    )
    put(package / "cutouts" / "__init__.py", "SLOT, POLYGON)", "SLOT, POLYGON, DIAMOND)")
    for file, language, word, before in (
        ("plan", "en", "diamond", "rectangle"),
        ("plan", "de", "Raute", "Rechteck"),
        ("names", "en", "diamond", "rectangular"),
        ("names", "de", "rautenförmig", "rechteckig"),
    ):
        words = package / "wording" / "catalogues" / language / f"{file}.ftl"
        put(words, f"[rectangle] {before}", f"[diamond] {word}\n    [rectangle] {before}")
    for language, name in (("en", "a cut-out diamond"), ("de", "ein Ausschnitt als Raute")):
        words, slot = (
            package / "wording" / "catalogues" / language / "fields.ftl",
            "[a-slot-cut-out]",
        )
        put(words, slot, f"[a-diamond-cut-out] {name}\n    {slot}")


def add_check(package: Path) -> None:
    """Add the check “very-square”: its function, its place in its stage's table, its message."""
    (package / "checks" / "square.py").write_text(
        '"""A check of proportions."""\n\n'
        "from ledgerstone.checks.finding import Finding\n"
        "from ledgerstone.wording import Message, slab_name\n\n\n"
        "def not_square(planned):\n"
        "    for i, slab, shape in planned.slabs():\n"
        "        if shape.length_mm == shape.width_mm:\n"
        "            named = slab_name(slab, i, len(planned.order.slabs))\n"
        '            message = Message("very-square", slab=named, length=slab.outline.length)\n'
        '            yield Finding("very-square", "note", message, "geometry", slab=i)\n',
        encoding="utf-8",
    )
    registry = package / "checks" / "__init__.py"
    put(registry, "    size,\n", "    size,\n    square,\n")
    put(
        registry,
        '    Check(("sliver",), size.wide_enough),',
        '    Check(("sliver",), size.wide_enough),\n'
        '    Check(("very-square",), square.not_square),',
    )
    name, length = '{ NAME($slab, start: "yes") }', "{ $length }"
    for language, says in (
        ("en", f"{name} is square, {length} each way."),
        ("de", f"{name} ist quadratisch, {length} in jeder Richtung."),
    ):
        file = package / "wording" / "catalogues" / language / "checks-square.ftl"
        file.write_text(f"very-square = {says}\n", encoding="utf-8")


def add_sheet(package: Path) -> None:
    """Add the sheet “thanks”: its content, its entry, and its words in each language."""
    (package / "papers" / "thanks.py").write_text(
        '"""A sheet that says thanks."""\n\n'
        "from ledgerstone.message import Message\n"
        "from ledgerstone.papers.sheet import section, sheet\n\n\n"
        "def thanks_sheet(records):\n"
        '    title = Message("thanks-title")\n'
        "    return sheet(title, [], [section(title, says=[records.name])], records)\n",
        encoding="utf-8",
    )
    kinds = package / "papers" / "kinds.py"
    put(
        kinds,
        "from ledgerstone.papers.records import PaperRecords\n",
        "from ledgerstone.papers.records import PaperRecords\n"
        "from ledgerstone.papers.thanks import thanks_sheet\n",
    )
    put(
        kinds,
        "        JOB: PaperKind(",
        '        "thanks": PaperKind(thanks_sheet),\n        JOB: PaperKind(',
    )
    for language, word in (("en", "Many thanks"), ("de", "Vielen Dank")):
        words = package / "wording" / "catalogues" / language / "papers-thanks.ftl"
        words.write_text(f"thanks-title = {word}\n", encoding="utf-8")


def add_sealer(package: Path) -> None:
    """Add the sealer “beeswax”: its rows in the workshop's file."""
    profile = package / "workshop" / "demonstration.toml"
    text = profile.read_text(encoding="utf-8")
    start = text.index('[[sealers]]\nname = "hard wax oil"')
    table = text[start : text.index("\n\n", start)]
    put(profile, table, f"{table}\n\n{table.replace('hard wax oil', 'beeswax')}")


def test_a_surface_is_added_in_one_record_and_the_workshops_file(
    package: Path, as_it_is: Json
) -> None:
    """It is offered, priced, drawn, read in an email, and has the upright edge that it needs.

    The terminal names it, and the job sheet has a step to tick, which for want of grits is one.
    """
    add_surface(package)
    finish = {"finish": {"surface": "scoured"}}
    thin = {"thickness": 20, "edges": {"front": {"profile": "bevel", "size": "13 mm"}}}
    told, stopped, plain = ask(package, finish, {**finish, **thin}, {})
    choices = plain["choices"]
    assert (told["answer"], choices[choices.index("honed") - 1]) == ("Quote", "scoured")
    assert told["total"] != plain["total"]
    assert told["view"] > 1000
    says = [says for check, says in stopped["findings"] if check == "edge-too-thin-for-finish"]
    assert len(says) == 1
    assert says[0].startswith("To scour the slab we need 8 mm")
    assert run(package, READS, "A worktop 1500 x 600 mm, 40 mm thick, scoured.") == "scoured"
    quoted, job = run(package, TERMINAL, {"slabs": [{**PLAIN, **finish}]})
    assert "40 mm thick, scoured;" in quoted
    assert "[ ] Finish the face (scoured)" in job
    assert run(package, WORDS, ["page", "surface.scoured"]) == ["scoured"] * 2
    assert run(package, WORDS, ["profile", "Choices.scoured"]) == ["scoured"] * 2
    assert answered_alike(plain, as_it_is)


def test_a_kind_of_cutout_is_added_in_one_module(package: Path, as_it_is: Json) -> None:
    """It is read, taken out of the slab by its own area, drawn, and stands in the contract."""
    add_cutout_kind(package)
    diamond = {"kind": "diamond", "length": 300, "width": 200, "centre": {"x": 600, "y": 300}}
    off = {**diamond, "centre": {"x": 3000, "y": 300}}
    told, stopped, plain = ask(package, {"cutouts": [diamond]}, {"cutouts": [off]}, {})
    assert told["answer"] == "Quote"
    assert told["outline_mm2"] - told["net_mm2"] == pytest.approx(300 * 200 / 2)
    assert "diamond 300 mm by 200 mm" in told["plan"]
    (says,) = (says for check, says in stopped["findings"] if check == "cutout-off-slab")
    assert says.startswith("The diamond cut-out ")
    assert "DiamondCutout" in run(package, CONTRACT, None)
    named = run(package, WORDS, ["fields", "a-diamond-cut-out"])
    assert named == ["a cut-out diamond", "ein Ausschnitt als Raute"]
    assert answered_alike(plain, as_it_is)


def test_a_check_is_added_in_its_file_and_its_stage(package: Path, as_it_is: Json) -> None:
    """It is run with its stage, and says its message of what the customer typed."""
    add_check(package)
    square = {"outline": {"kind": "rectangle", "length": "60 cm", "width": "60 cm"}}
    told, plain = ask(package, square, {})
    assert ["very-square", "The slab is square, 60 cm each way."] in told["findings"]
    assert answered_alike(plain, as_it_is)


def test_a_sealer_is_added_in_the_workshops_file(package: Path) -> None:
    """It is offered and priced."""
    add_sealer(package)
    (told,) = ask(package, {"finish": {"surface": "honed", "sealer": "beeswax"}})
    assert told["answer"] == "Quote"
    assert "beeswax" in told["sealers"]


def test_a_sheet_is_added_in_its_content_and_one_entry(package: Path) -> None:
    """It is written in every form, in its order's language, and stands in the contract."""
    add_sheet(package)
    written, page, printed, is_in_contract = run(package, PAPERS, None)
    assert json.loads(written)["title"] == "Vielen Dank"
    assert "<h1>Vielen Dank</h1>" in page
    assert (printed, is_in_contract) == ("%PDF", True)
