"""The recipes of DEVELOPERS.md for adding a thing, each followed to the letter in a copy."""

import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Final

import pytest

from design.source import PACKAGE
from ledgerstone.json_types import JSON
from support.documents import Json

DRAWS: Final = """
import json, sys
from datetime import date
from ledgerstone.application.answering import answer_order
from ledgerstone.application.choices import write_choices
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.seen import gloss_of, seen_colour
from ledgerstone.codec.tokens import Tokens
from ledgerstone.drawing import Piece, TitleBlock, draw_plan, draw_view
from ledgerstone.wording import english, speech_in
from ledgerstone.workshop import DEMONSTRATION, load_profile
workshop = load_profile(DEMONSTRATION)
context = QuoteContext(workshop, date(2026, 11, 25), Tokens(["k" * 32]))
choices = write_choices(workshop, speech_in("en"))
def told(order):
    answer = answer_order(order, context, search=False)
    slab, shape = answer.order.slabs[0], answer.shapes[0]
    sealer = next(one for one in workshop.sealers if one.name == slab.finish.sealer)
    piece = Piece(slab, shape, seen_colour(slab, sealer, workshop), gloss_of(slab, sealer), "a")
    view = draw_view([piece], title="A slab")
    return {
        "answer": type(answer).__name__,
        "findings": [(f.check, english(f.message)) for f in answer.findings],
        "total": str(answer.price.total) if hasattr(answer, "price") else None,
        "choices": [f["surface"] for f in choices["finishes"]],
        "sealers": [s["name"] for s in choices["sealers"]],
        "net_mm2": shape.net_area_mm2, "outline_mm2": shape.outline_area_mm2,
        "plan": draw_plan(slab, shape, title=TitleBlock()), "view": len(view),
    }
print(json.dumps([told(order) for order in json.load(sys.stdin)]))
"""


CONTRACT: Final = """
import json, sys
from ledgerstone.contract.document import document_text
json.load(sys.stdin)
print(json.dumps(document_text()))
"""


@pytest.fixture
def package(tmp_path: Path) -> Path:
    """A copy of the package, to be changed."""
    copy = tmp_path / "service" / "ledgerstone"
    shutil.copytree(
        PACKAGE, copy
    )  # what is compiled of it too: only what is changed is compiled again
    return copy


def put(file: Path, before: str, after: str) -> None:
    """Replace the one place in a file where a text stands."""
    text = file.read_text(encoding="utf-8")
    assert text.count(before) == 1, f"{file.name} has {before!r} {text.count(before)} times"
    file.write_text(text.replace(before, after), encoding="utf-8")


def ask(package: Path, *slabs: Json) -> list[Json]:
    """Answer orders of one slab with the copy, and draw them."""
    plain = {
        "outline": {"kind": "rectangle", "length": 1200, "width": 600},
        "thickness": 40,
        "rests": {"kind": "full"},
    }
    told: list[Json] = _run(package, DRAWS, [{"slabs": [{**plain, **slab}]} for slab in slabs])
    return told


def _run(package: Path, program: str, given: JSON) -> JSON:
    """What a program says with the copy as its package, both as JSON."""
    done = subprocess.run(
        [sys.executable, "-c", program],
        input=json.dumps(given),
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
        env={**os.environ, "PYTHONPATH": str(package.parent), "PYTHONDONTWRITEBYTECODE": "1"},
    )
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


@pytest.fixture(scope="module")
def as_it_is() -> Json:
    """The answer of the package itself to an order that asks for nothing new."""
    (told,) = ask(PACKAGE, {})
    return told


def answered_alike(one: Json, other: Json) -> bool:
    """Return whether two answers find the same and cost the same."""
    return all(one[key] == other[key] for key in ("answer", "findings", "total"))


def add_surface(package: Path) -> None:
    """Add the surface “scoured”: name, record, words, and its rows in the workshop's file."""
    file, record = package / "surfaces.py", '        "honed": SurfaceKind('
    put(file, "Surface = Literal[", 'Surface = Literal["scoured", ')
    put(file, record, f'        "scoured": SurfaceKind(0.1, 200, 8.0, frees_dust=True),\n{record}')
    for catalogue in (package / "wording" / "catalogues").glob("*/*.ftl"):
        text = catalogue.read_text(encoding="utf-8")
        text = re.sub(r"\n( +\*?\[polished\])", r"\n    [scoured] scour\n\1", text)
        catalogue.write_text(text, encoding="utf-8")
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
    for language, word, before in (("en", "diamond", "rectangle"), ("de", "Raute", "Rechteck")):
        plan = package / "wording" / "catalogues" / language / "plan.ftl"
        put(plan, f"[rectangle] {before}", f"[diamond] {word}\n    [rectangle] {before}")


def add_check(package: Path) -> None:
    """Add the check “very-square”: its function, and its place in the table of its stage."""
    (package / "checks" / "square.py").write_text(
        '"""A check of proportions."""\n\n'
        "from ledgerstone.checks.finding import Finding\n\n\n"
        "def not_square(planned):\n"
        "    for i, _slab, shape in planned.slabs():\n"
        "        if shape.length_mm == shape.width_mm:\n"
        '            yield Finding("very-square", "note", "It is square.", "geometry", slab=i)\n',
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


PAPERS: Final = """
import json, sys
from datetime import date
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.papers import FORMS, make_paper, render
from ledgerstone.codec.tokens import Tokens
from ledgerstone.contract.document import document_text
from ledgerstone.papers.templates import BUILT_IN, Templates
from ledgerstone.workshop import DEMONSTRATION, load_profile
context = QuoteContext(load_profile(DEMONSTRATION), date(2026, 11, 25), Tokens(["k" * 32]))
box = {"kind": "rectangle", "length": 900, "width": 500}
order = {"slabs": [{"outline": box, "thickness": 40}], "language": "de"}
paper = make_paper("thanks", {"order": order}, context)
told = [render(paper, form, Templates(BUILT_IN)) for form in FORMS]
print(json.dumps([one if isinstance(one, str) else one[:4].decode() for one in told]
                 + ["thanks" in document_text()]))
"""


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
    """It is offered, priced, drawn, and holds its edge to the upright face that it needs."""
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
    assert answered_alike(plain, as_it_is)


def test_a_kind_of_cutout_is_added_in_one_module(package: Path, as_it_is: Json) -> None:
    """It is read, taken out of the slab by its own area, drawn, and stands in the contract."""
    add_cutout_kind(package)
    diamond = {"kind": "diamond", "length": 300, "width": 200, "centre": {"x": 600, "y": 300}}
    told, plain = ask(package, {"cutouts": [diamond]}, {})
    assert told["answer"] == "Quote"
    assert told["outline_mm2"] - told["net_mm2"] == pytest.approx(300 * 200 / 2)
    assert "diamond 300 mm by 200 mm" in told["plan"]
    assert "DiamondCutout" in _run(package, CONTRACT, None)
    assert answered_alike(plain, as_it_is)


def test_a_check_is_added_in_its_file_and_its_stage(package: Path, as_it_is: Json) -> None:
    """It is run with its stage."""
    add_check(package)
    square = {"outline": {"kind": "rectangle", "length": 600, "width": 600}}
    told, plain = ask(package, square, {})
    assert ["very-square", "It is square."] in told["findings"]
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
    written, page, printed, is_in_contract = _run(package, PAPERS, None)
    assert json.loads(written)["title"] == "Vielen Dank"
    assert "<h1>Vielen Dank</h1>" in page
    assert (printed, is_in_contract) == ("%PDF", True)
