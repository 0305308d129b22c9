"""What would bring an order there by the day it is needed, each proved by every check."""

from dataclasses import replace
from datetime import date, timedelta
from typing import Final

import jsonpatch
import pytest

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.quote import Quote, SentBack
from ledgerstone.wording import Message, english
from ledgerstone.workshop import Workshop
from support.contexts import context_of
from support.documents import Json
from support.in_english import parts_in_english
from support.written import write_remedies
from unit.checked import plain

TODAY: Final = date(2026, 11, 25)
FULL: Final = {"rests": {"kind": "full"}}
PALLET: Final = {"kind": "pallet", "postcode": "HR9 7XX"}
COLLECT: Final = english(Message("deliver-by", way="collect"))
IN_TENT: Final = english(Message("cure-in-tent"))


def sealed_with(sealer: str) -> Message:
    """Another sealer for the slab."""
    return Message("refinish", slab=Message("slab-only"), surface="same", sealer=sealer)


def offers(
    context: QuoteContext, document: Json, days_sooner: int
) -> tuple[dict[str, Quote], SentBack]:
    """What is offered for an order needed so many days sooner, by what it says; and the answer."""
    usual = answer_order(document, context, search=False)
    assert isinstance(usual, Quote)
    day = usual.lead_time.arrives_latest - timedelta(days=days_sooner)
    needed = {**document, "needed_by": day.isoformat()}
    answer = answer_order(needed, context)
    assert isinstance(answer, SentBack)
    (stop,) = (f for f in answer.findings if f.level == "stops")
    assert stop.check == "needed-too-soon"
    shown = {}
    for remedy in write_remedies(needed, answer.found, stop.id):
        after = answer_order(jsonpatch.apply_patch(needed, remedy["patch"]), context, search=False)
        assert isinstance(after, Quote)
        assert f"{after.price.total:.2f}" == remedy["price"]["total"]
        assert after.order.needed_by is not None
        assert after.lead_time.arrives_latest <= after.order.needed_by
        shown[remedy["says"]] = after
    return shown, answer


@pytest.fixture(scope="module")
def context(workshop: Workshop) -> QuoteContext:
    """A context that keeps its plates between the orders of this file."""
    return context_of(workshop, TODAY)


def test_a_day_too_soon_is_met_by_collecting(context: QuoteContext) -> None:
    """The carrier's days are saved, and the piece stays as it was asked."""
    document = {"slabs": [plain(**FULL)], "delivery": PALLET}
    shown, answer = offers(context, document, 1)
    assert COLLECT in shown
    assert answer.found is not None
    assert answer.found.fix_all is not None
    assert parts_in_english(answer.found.fix_all) == (COLLECT,)


def test_a_slow_sealer_gives_way_to_one_that_goes_on_sooner(context: QuoteContext) -> None:
    """Satin waits for concrete of 21 days, and the first sealer that is in time is offered."""
    document = {"slabs": [plain(**FULL, finish={"sealer": "satin"})], "delivery": PALLET}
    shown, _ = offers(context, document, 5)
    (sealer,) = (says for says in shown if "sealer" in says)
    assert sealer == english(sealed_with("hard wax oil"))
    shown, _ = offers(context, document, 12)
    (sealer,) = (says for says in shown if "sealer" in says)
    assert sealer == english(sealed_with("matt"))


def test_a_sealer_is_only_offered_where_its_sheet_allows_it(context: QuoteContext) -> None:
    """In a wet room the wax is not offered, nor for any slab of an order in one."""
    wet = plain(**FULL, finish={"sealer": "satin"}, place="wet-room")
    shown, _ = offers(context, {"slabs": [wet], "delivery": PALLET}, 5)
    assert [says for says in shown if "wax" in says] == []
    assert english(sealed_with("matt")) in shown


@pytest.mark.parametrize(("day", "surface"), [(25, "honed"), (27, "as-cast")])
def test_a_plainer_surface_takes_fewer_days(workshop: Workshop, day: int, surface: str) -> None:
    """Where no sealer's age hides it, a polish of four days gives way to a quicker face.

    Voids filled twice harden a day each: honing takes three days. Ordered on a Wednesday it is in
    time; on a Friday it ends with the polish, after midwinter, and only the face as cast is.
    """
    ageless = tuple(replace(sealer, youngest_days=0) for sealer in workshop.sealers)
    context = context_of(replace(workshop, sealers=ageless), date(2026, 11, day))
    document = {"slabs": [plain(**FULL, finish={"surface": "polished"})], "delivery": PALLET}
    shown, _ = offers(context, document, 1)
    assert f"Give the slab the {surface} surface." in shown


def test_a_later_day_is_what_is_left(context: QuoteContext) -> None:
    """Needed tomorrow, nothing brings it on: the day it can be there is the one change."""
    document = {"slabs": [plain(**FULL)], "delivery": {"kind": "collect"}}
    needed = {**document, "needed_by": (TODAY + timedelta(days=1)).isoformat()}
    answer = answer_order(needed, context)
    assert isinstance(answer, SentBack)
    assert answer.found is not None
    assert answer.found.fix_all is not None
    (says,) = parts_in_english(answer.found.fix_all)
    assert says.startswith("Give us until ")


def test_what_the_workshop_can_do_itself_is_offered_first(workshop: Workshop) -> None:
    """Where no sealer's age hides it, the heated tent keeps the piece and its delivery as asked."""
    ageless = tuple(replace(sealer, youngest_days=0) for sealer in workshop.sealers)
    context = context_of(replace(workshop, sealers=ageless), date(2027, 1, 11))
    document = {"slabs": [plain(**FULL)], "delivery": PALLET}
    shown, answer = offers(context, document, 1)
    assert next(iter(shown)) == IN_TENT
    assert answer.found is not None
    assert answer.found.fix_all is not None
    assert parts_in_english(answer.found.fix_all) == (IN_TENT,)
    unheated = context_of(replace(workshop, sealers=ageless, tent=None), date(2027, 1, 11))
    assert IN_TENT not in offers(unheated, document, 1)[0]


def test_the_tent_and_collection_are_offered_together(workshop: Workshop) -> None:
    """Where neither is enough by itself, both are one change."""
    ageless = tuple(replace(sealer, youngest_days=0) for sealer in workshop.sealers)
    context = context_of(replace(workshop, sealers=ageless), date(2027, 1, 11))
    document = {"slabs": [plain(**FULL)], "delivery": PALLET}
    shown, _ = offers(context, document, 6)
    assert f"{IN_TENT} {COLLECT}" in shown
