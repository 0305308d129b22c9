"""Laws of orders: what is read, written back, checked and answered, for any order at all.

Two that sound true are not, and are not tested. *A cut-out removed never adds a stop*: an opening
that encloses an island may hide that it does, where another one covers the island; what holds is
that an order without a stop keeps having none. *Every order can be quoted by changing units*: it
holds only where the units are exact, so that the law is of an order said again in millimetres.
"""

import json
import math
import re
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.checks import Finding, check_plan
from ledgerstone.codec.canonical import canonical
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.order_out import write_order
from ledgerstone.errors import QuantityError
from ledgerstone.order import Order
from ledgerstone.quantities import Length
from ledgerstone.quote import Quote, SentBack, quote
from ledgerstone.stages import StageContext, plan
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.in_english import in_english
from support.strategies.awkward_orders import AWKWARD
from support.strategies.orders import TODAY, brief, modest_orders, orders, thorough, usual

awkward = pytest.mark.parametrize("name", AWKWARD)
NEVER_SAID = re.compile(
    r"please|sorry|invalid|illegal|forbidden|oops|error|\bnan\b|\binf\b", re.IGNORECASE
)
# A plate takes seconds on a busy machine: these are answered at every run, the rest in a long one.
AT_EVERY_RUN = {
    "a tenth of a millimetre too large",
    "an opening far away, open to the front",
    "an opening that takes the whole slab",
    "in feet and inches",
    "the narrowest that is cast",
    "words that need care",
}
answerable = pytest.mark.parametrize(
    "name",
    [pytest.param(n, marks=[] if n in AT_EVERY_RUN else [pytest.mark.long]) for n in AWKWARD],
)


def shape_findings(order: Order, workshop: Workshop) -> list[Finding]:
    """Run the first stage of checks."""
    return check_plan(plan(order, StageContext(workshop, None, TODAY)))


def stops(order: Order, workshop: Workshop) -> set[str]:
    """Ids of what stops an order at the first stage."""
    return {f.id for f in shape_findings(order, workshop) if f.level == "stops"}


# --- reading and writing --------------------------------------------------------------------


@thorough
@given(orders())
def test_a_random_order_is_understood(workshop: Workshop, document: Json) -> None:
    """Every order that the strategies make means a piece of concrete."""
    assert len(read_order(document, workshop).slabs) == len(document["slabs"])


@awkward
def test_an_awkward_order_is_understood(workshop: Workshop, name: str) -> None:
    """Every order of the gallery means a piece of concrete."""
    assert read_order(AWKWARD[name], workshop).slabs


def as_told(order: Order) -> Order:
    """The order as if all of it had been told."""
    slabs = (
        replace(
            slab, taken=(), cutouts=tuple(replace(one, rim_taken=False) for one in slab.cutouts)
        )
        for slab in order.slabs
    )
    return replace(order, slabs=tuple(slabs), delivery_taken=False)


@thorough
@given(orders())
def test_an_order_written_reads_back(workshop: Workshop, document: Json) -> None:
    """An order as understood, and one written compactly, read back to the same order."""
    order = read_order(document, workshop)
    for compact in (False, True):
        text = json.dumps(write_order(order, compact=compact))
        assert as_told(read_order(json.loads(text), workshop)) == as_told(order)


@usual
@given(orders())
def test_a_compact_order_is_no_longer(workshop: Workshop, document: Json) -> None:
    """What stands at its default is left out, and nothing is added."""
    order = read_order(document, workshop)
    full, compact = (canonical(write_order(order, compact=c)) for c in (False, True))
    assert len(compact) <= len(full)


@usual
@given(orders())
def test_an_order_is_spoken_back_as_it_came(workshop: Workshop, document: Json) -> None:
    """Every length that was typed stands in the answer in the unit in which it was typed."""
    order = read_order(document, workshop)
    for sent, told in zip(document["slabs"], write_order(order)["slabs"], strict=True):
        assert told["thickness"] == Length.parse(sent["thickness"]).wire()
        assert type(told["thickness"]) is type(sent["thickness"])


def in_millimetres(document: object) -> object:
    """Say every length of a document in plain millimetres, exactly."""
    if isinstance(document, dict):
        return {key: in_millimetres(value) for key, value in document.items()}
    if isinstance(document, list):
        return [in_millimetres(value) for value in document]
    if isinstance(document, str) and re.search(r"\d.*(mm|cm|m|in|ft)$", document):
        try:
            return float(Length.parse(document).exact_mm)
        except QuantityError:
            return document
    return document


@thorough
@given(orders())
def test_inches_and_millimetres_mean_the_same(workshop: Workshop, document: Json) -> None:
    """An order said again in millimetres is the same order, and so has the same price and day."""
    assert read_order(in_millimetres(document), workshop) == read_order(document, workshop)


# --- checks ---------------------------------------------------------------------------------


def resolve(document: object, pointer: str) -> object:
    """Follow a JSON Pointer (RFC 6901)."""
    for token in pointer.split("/")[1:]:
        key = token.replace("~1", "/").replace("~0", "~")
        document = document[int(key)] if isinstance(document, list) else document[key]  # type: ignore[index]  # any JSON
    return document


def assert_well_said(finding: Finding, document: Json) -> None:
    """A finding points into the order, in finite numbers and whole sentences."""
    for pointer in finding.at:
        assert resolve(document, pointer) is not None
    assert in_english(finding)[0].isupper() or not in_english(finding)[0].isalpha()
    assert in_english(finding).endswith(".")
    assert not NEVER_SAID.search(re.sub("“.*?”", "", in_english(finding)))
    for number in [*finding.measured.values(), *finding.limit.values()]:
        assert not isinstance(number, float) or math.isfinite(number)
    assert json.loads(canonical(finding.where_mm)) == json.loads(canonical(finding.where_mm))
    assert "NaN" not in canonical(finding.where_mm).decode()


@thorough
@given(orders())
def test_every_finding_points_into_the_order(workshop: Workshop, document: Json) -> None:
    """Findings of any order name places that are there, in sentences."""
    for finding in shape_findings(read_order(document, workshop), workshop):
        assert_well_said(finding, document)


@awkward
def test_findings_of_an_awkward_order_are_well_said(workshop: Workshop, name: str) -> None:
    """The gallery's findings name places that are there, in sentences."""
    for finding in shape_findings(read_order(AWKWARD[name], workshop), workshop):
        assert_well_said(finding, AWKWARD[name])


@usual
@given(modest_orders())
def test_findings_are_distinguished_by_their_ids(workshop: Workshop, document: Json) -> None:
    """No two findings on rectangular slabs have one id."""
    ids = [finding.id for finding in shape_findings(read_order(document, workshop), workshop)]
    assert len(ids) == len(set(ids))


def test_a_side_and_an_opening_of_one_number_are_distinguished(workshop: Workshop) -> None:
    """The strip to side 1 of a polygon and the strip to opening 1 have ids of their own."""
    document = AWKWARD["polygon sides and openings of the same numbers"]
    ids = [finding.id for finding in shape_findings(read_order(document, workshop), workshop)]
    assert len(ids) == len(set(ids))


@thorough
@given(modest_orders(), st.data())
def test_an_opening_left_out_stops_nothing(
    workshop: Workshop, document: Json, data: st.DataObject
) -> None:
    """An order without a stop of its shapes has none when any one opening is left out.

    Openings that stop nothing neither touch nor cross, so that the concrete round each is in one
    piece with what fills it, and no other strip changes.
    """
    slab = data.draw(st.sampled_from(document["slabs"]))
    if stops(read_order(document, workshop), workshop) or not slab.get("cutouts"):
        return
    slab["cutouts"].pop(data.draw(st.integers(0, len(slab["cutouts"]) - 1)))
    assert stops(read_order(document, workshop), workshop) == set()


@usual
@given(modest_orders())
def test_the_order_of_openings_does_not_matter(workshop: Workshop, document: Json) -> None:
    """Openings listed the other way round stop as many things."""
    before = stops(read_order(document, workshop), workshop)
    for slab in document["slabs"]:
        slab["cutouts"] = slab.get("cutouts", [])[::-1]
    assert len(stops(read_order(document, workshop), workshop)) == len(before)


# --- answers --------------------------------------------------------------------------------


def assert_answered(answer: Quote | SentBack) -> None:
    """An answer is a price and a day, or says what stops it; never both, never neither."""
    stopping = [finding for finding in answer.findings if finding.level == "stops"]
    if isinstance(answer, SentBack):
        assert stopping
    else:
        assert not stopping
        assert answer.price.total > 0
        assert answer.lead_time.ready_on > TODAY
        assert all(weight.slab_kg > 0 for weight in answer.weights)
        assert answer.packed_kg > sum(weight.slab_kg for weight in answer.weights)


@answerable
def test_an_awkward_order_is_answered(workshop: Workshop, name: str) -> None:
    """Every order of the gallery is quoted or sent back."""
    order = read_order(AWKWARD[name], workshop)
    assert_answered(quote(order, StageContext(workshop, None, TODAY)))


def assert_answered_alike(document: Json, workshop: Workshop) -> None:
    """An order is quoted or sent back, and the same order on the same day alike."""
    order = read_order(document, workshop)
    first, again = (quote(order, StageContext(workshop, None, TODAY)) for _ in range(2))
    assert_answered(first)
    assert first == again


@pytest.mark.long
@settings(brief, max_examples=200)
@given(orders())
def test_any_order_is_answered_the_same_twice(workshop: Workshop, document: Json) -> None:
    """Any order at all is quoted or sent back, twice alike."""
    assert_answered_alike(document, workshop)
