"""What the tests of recipes run with a copy of the package, changed, as their package."""

import json
import os
import subprocess
import sys
from functools import cache
from pathlib import Path
from typing import Final

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
from ledgerstone.drawing import DrawnSlab, TitleBlock, draw_plan, draw_view
from ledgerstone.wording import english, speech_in
from ledgerstone.workshop import DEMONSTRATION, load_profile
workshop = load_profile(DEMONSTRATION)
context = QuoteContext(workshop, date(2026, 11, 25), Tokens(["k" * 32]))
choices = write_choices(context, speech_in("en"))
def told(order):
    answer = answer_order(order, context, search=False)
    slab, shape = answer.order.slabs[0], answer.shapes[0]
    sealer = next(one for one in workshop.sealers if one.name == slab.finish.sealer)
    piece = DrawnSlab(slab, shape, seen_colour(slab, sealer, workshop), gloss_of(slab, sealer), "a")
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
from ledgerstone.contract.document import document
json.load(sys.stdin)
print(json.dumps(json.dumps(document())))
"""


READS: Final = """
import json, sys
from datetime import date
from ledgerstone.application.enquiries import read_enquiry_document
from ledgerstone.workshop import DEMONSTRATION, load_profile
asked = {"message": json.load(sys.stdin)}
read = read_enquiry_document(asked, load_profile(DEMONSTRATION), date(2026, 11, 25))
print(json.dumps(read["proposal"]["slabs"][0]["finish"]["surface"]))
"""

# A text of the page, of the form of a profile, or what a fault calls a field, in each language.
WORDS: Final = """
import json, sys
from ledgerstone.codec._strict import field_name
from ledgerstone.wording import speech_in
from ledgerstone.wording.page import page_messages
from ledgerstone.wording.profile import profile_texts
where, name = json.load(sys.stdin)
def said(language):
    if where == "fields":
        return speech_in(language).value(field_name(name))
    return (page_messages if where == "page" else profile_texts)(language)[name]
print(json.dumps([said(language) for language in ("en", "de")]))
"""

# Of an order what its maker's terminal says, and its job sheet's lines.
TERMINAL: Final = """
import json, sys
from datetime import date
from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.papers import make_paper
from ledgerstone.codec.tokens import Tokens
from ledgerstone.papers.kinds import JOB
from ledgerstone.papers.plain import pages_text, quote_text
from ledgerstone.wording import speech_in
from ledgerstone.workshop import DEMONSTRATION, load_profile
order, speech = json.load(sys.stdin), speech_in("en")
context = QuoteContext(load_profile(DEMONSTRATION), date(2026, 11, 25), Tokens(["k" * 32]))
told = quote_text(answer_order(order, context, search=False), "A", "-", "VAT", speech)
job = make_paper(JOB, {"order": order}, context)
print(json.dumps([told, pages_text(job.content["pages"], speech)]))
"""


PAPERS: Final = """
import json, sys
from datetime import date
from ledgerstone.application.context import QuoteContext
from ledgerstone.application.papers import FORMS, make_paper, render
from ledgerstone.codec.tokens import Tokens
from ledgerstone.contract.document import document
from ledgerstone.papers.templates import BUILT_IN, Templates
from ledgerstone.workshop import DEMONSTRATION, load_profile
context = QuoteContext(load_profile(DEMONSTRATION), date(2026, 11, 25), Tokens(["k" * 32]))
box = {"kind": "rectangle", "length": 900, "width": 500}
order = {"slabs": [{"outline": box, "thickness": 40}], "language": "de"}
paper = make_paper("thanks", {"order": order}, context)
told = [render(paper, form, Templates(BUILT_IN)) for form in FORMS]
print(json.dumps([one if isinstance(one, str) else one[:4].decode() for one in told]
                 + ["thanks" in json.dumps(document())]))
"""


# Reads a program and what it is given from each line, and prints what it says as a line.
_RUNS_EACH: Final = """
import io, json, sys
from contextlib import redirect_stdout
for line in sys.stdin:
    program, given = json.loads(line)
    asking, said = sys.stdin, io.StringIO()
    sys.stdin = io.StringIO(given)
    with redirect_stdout(said):
        exec(program, {})
    sys.stdin = asking
    print(said.getvalue().strip(), flush=True)
"""


PLAIN: Final = {
    "outline": {"kind": "rectangle", "length": 1200, "width": 600},
    "thickness": 40,
    "rests": {"kind": "full"},
}


def ask(package: Path, *slabs: Json) -> list[Json]:
    """Answer orders of one slab with the copy, and draw them."""
    told: list[Json] = run(package, DRAWS, [{"slabs": [{**PLAIN, **slab}]} for slab in slabs])
    return told


def run(package: Path, program: str, given: JSON) -> JSON:
    """What a program says with the copy as its package, both as JSON.

    All programs of one copy run in one process, which has the copy loaded after the first.
    """
    process = _process(package)
    assert process.stdin
    assert process.stdout
    process.stdin.write(json.dumps([program, json.dumps(given)]) + "\n")
    process.stdin.flush()
    said = process.stdout.readline()
    assert said, "the program ended in a fault, which stands above"
    return json.loads(said)


def end(package: Path) -> None:
    """End the process of a copy."""
    process = _process(package)
    process.communicate(timeout=120)
    _process.cache_clear()


@cache
def _process(package: Path) -> subprocess.Popen[str]:
    """The process that runs the programs of a copy."""
    return subprocess.Popen(
        [sys.executable, "-c", _RUNS_EACH],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": str(package.parent), "PYTHONDONTWRITEBYTECODE": "1"},
    )
