"""What holds of every answer to an order that people got wrong, by readings of others' making."""

from collections.abc import Iterator

from laws.every_call import Service, faults_of
from ledgerstone.application.context import QuoteContext
from ledgerstone.codec.order_in import read_order
from ledgerstone.codec.order_out import write_order
from ledgerstone.quote import Quote, SentBack
from support.documents import Json
from support.oracles.patched_orders import liberties
from support.oracles.remedy_laws import hold_the_laws, patched, stops
from support.oracles.said_changes import unsaid
from support.written import write_fixes, write_remedies


def broken(
    order: Json, context: QuoteContext, service: Service | None = None, *, remedies: bool = True
) -> list[str]:
    """List the laws that the answers to one order break; none is the law.

    Parameters
    ----------
    remedies
        Whether the remedies of findings are applied and tried too, and not the fix alone.
    service
        Asked by every call where it is given: the quote twice, drawings, reply, sheets and job
        sheet.
    """
    wrong: list[str] = []
    try:
        answer = hold_the_laws(order, context, twice=service is not None, remedies=remedies)
        if not isinstance(answer, Quote):
            wrong += read_again(order, answer, context)
    except Exception as fault:  # noqa: BLE001  whatever it is, it is what is looked for
        wrong.append(
            f"{type(fault).__name__}: {str(fault).splitlines()[0][:200] if str(fault) else ''}"
        )
    return wrong + (faults_of(service.answers(order)) if service is not None else [])


def read_again(order: Json, answer: SentBack, context: QuoteContext) -> Iterator[str]:
    """Read every change shown a second time: what it does, and whether that is what it says."""
    fixes = write_fixes(order, answer.found, sorted(stops(answer)))
    shown = [(name, one) for name, one in fixes.items() if name != "why_no_fix"]
    for finding in answer.findings:
        shown += [(finding.id, one) for one in write_remedies(order, answer.found, finding.id)]
    for name, change in shown:
        made = patched(order, change["patch"])
        says = change["says"] if isinstance(change["says"], list) else [change["says"]]
        if name == "fix_all":
            yield from (f"{name} takes a liberty: {what}" for what in liberties(order, made))
        told = unsaid(_understood(order, context), _understood(made, context), says)
        yield from (f"{name}: {what} ({' '.join(says)})" for what in told)


def _understood(document: Json, context: QuoteContext) -> Json:
    """The order with what the workshop usually does written out."""
    return write_order(read_order(document, context.workshop))
