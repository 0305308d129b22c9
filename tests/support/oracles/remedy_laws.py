"""The laws of remedies, held on one order at one workshop."""

import contextlib
import copy
import re
from typing import Any

import jsonpatch

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.quote import Quote, SentBack
from ledgerstone.wording import cut_short
from support.contexts import context_of
from support.documents import Json
from support.oracles.patched_orders import liberties
from support.reading import faults
from support.written import write_fixes, write_remedies


def stops(answer: Quote | SentBack) -> set[str]:
    """Ids of what stops an order."""
    return {finding.id for finding in answer.findings if finding.level == "stops"}


def patched(order: Json, patch: list[dict[str, Any]]) -> Json:
    """The order with a patch applied by the independent library; applied twice, no more comes."""
    made: Json = jsonpatch.apply_patch(copy.deepcopy(order), patch)
    # Mostly what it tested is no longer so: then it fails loudly, and changes nothing.
    with contextlib.suppress(jsonpatch.JsonPatchException, jsonpatch.JsonPointerException):
        assert jsonpatch.apply_patch(copy.deepcopy(made), patch) == made
    return made


def hold_the_laws(
    order: Json, context: QuoteContext, *, twice: bool = True, remedies: bool = True
) -> Quote | SentBack:
    """Every remedy settles what it says and adds no stop; a fix quotes at the price it named.

    Parameters
    ----------
    twice
        Whether a context that has answered nothing yet is asked too, and answers the same.
    remedies
        Whether the remedies of findings are applied, and not the fix alone.
    """
    answer = answer_order(order, context)
    if isinstance(answer, Quote):
        return answer
    if twice:
        again = answer_order(order, context_of(context.workshop, context.today))
        assert isinstance(again, SentBack)
        assert again.found == answer.found
    if remedies:
        _hold_the_remedies(order, context, answer)
    hold_the_fix(order, context, answer)
    return answer


def _hold_the_remedies(order: Json, context: QuoteContext, answer: SentBack) -> None:
    """Each remedy, applied by others, settles what it says it does, at its price."""
    before = stops(answer)
    for finding in answer.findings:
        shown = write_remedies(order, answer.found, finding.id)
        assert len(shown) <= 3
        assert len({remedy["says"] for remedy in shown}) == len(shown)
        for remedy in shown:
            assert remedy["verified"] is True
            assert not _badly_said(order, [remedy["says"]]), remedy["says"]
            after = answer_order(patched(order, remedy["patch"]), context, search=False)
            assert finding.id not in stops(after)
            assert not stops(after) & set(remedy["settles"])
            assert stops(after) <= before
            if "price" in remedy:
                assert isinstance(after, Quote)
                assert f"{after.price.total:.2f}" == remedy["price"]["total"]


def hold_the_fix(order: Json, context: QuoteContext, answer: SentBack) -> None:
    """A fix, or the nearest makeable, quotes at its price; where there is none it says why."""
    fixes = write_fixes(order, answer.found, sorted(stops(answer)))
    for name in {"fix_all", "nearest_makeable"} & set(fixes):
        made = patched(order, fixes[name]["patch"])
        quote = answer_order(made, context, search=False)
        assert isinstance(quote, Quote)
        assert f"{quote.price.total:.2f}" == fixes[name]["price"]["total"]
        assert fixes[name]["says"]
        assert not _badly_said(order, fixes[name]["says"]), fixes[name]["says"]
        assert name == "nearest_makeable" or not list(liberties(order, made))
    assert {"fix_all", "nearest_makeable", "why_no_fix"} & set(fixes)


def _badly_said(order: Json, says: list[str]) -> list[str]:
    """What is wrong with sentences that say changes; the customer's own names are left out."""
    wrong = []
    for text in says:
        for label in _labels(order):
            text = text.replace(cut_short(label), "thing")  # noqa: PLW2901  one after another
        for part in re.findall(r"[^.]*(?:\.\d[^.]*)*\.", text):
            nothing = re.match(r"\s*Change (?:the|what) ", part)
            wrong += [*faults(part.strip()), *(["says nothing"] if nothing else [])]
    return wrong


def _labels(order: Json) -> list[str]:
    parts = [slab.get(name, []) for slab in order["slabs"] for name in ("cutouts", "reliefs")]
    return [part["label"] for each in parts for part in each if "label" in part]
