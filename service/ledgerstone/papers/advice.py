"""What a letter advises: an order's findings and conditions, merged by when one acts on them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Final

from ledgerstone.checks import Finding, Occasion, for_customers
from ledgerstone.papers.views import QuoteView
from ledgerstone.quote import Quote
from ledgerstone.terms import MAKERS_CONDITIONS
from ledgerstone.wording import Listed, Message, People, Value, Weight

# Said in the short letter too, beside every caution: how it is lifted, how the lorry leaves it,
# what the units must bear.
NEEDED: Final = frozenset(
    {"hands-needed", "load-on-units", "set-down-at-kerb", "vehicle-to-collect"}
)
_MAX_NAMED: Final = 3
_ARRIVES: Final = ("set-down-at-kerb", "vehicle-to-collect")  # before how it is carried on
# Conditions that a letter says in its own sentences, or that one of its findings says already.
_SAID_ELSEWHERE: Final = frozenset(
    {"trial", "day-is-for", "quotation-fixed", "rails-before", "you-collect"}
)
_LABELLED: Final = "slab-labelled"


@dataclass(frozen=True, slots=True)
class Advice:
    """A sentence or two of advice.

    Attributes
    ----------
    findings
        The ids of what it says.
    in_short
        What a short letter says of it; nothing if it is left out there.
    """

    when: Occasion
    message: Message
    findings: tuple[str, ...]
    in_short: Message | None = None


def advice_of(view: QuoteView) -> tuple[Advice, ...]:
    """Return what to advise of a quote, in the order of its findings.

    Where the letter gives the days it says that they are in time.
    """
    quote = view.quote
    theirs = for_customers(quote.findings, quote.order.delivery)
    findings = [one for one in theirs if not (view.whole and one.check == "in-time")]
    merged = [*_kerb(findings, quote), *_carried(findings, quote), *_people(findings)]
    by_id = {name: advice for advice in merged for name in advice.findings}
    alone = len(quote.order.slabs) == 1
    briefs = dict.fromkeys(by_id.get(finding.id) or _of(finding) for finding in findings)
    first = sorted(briefs, key=lambda brief: brief.findings[0] not in _ARRIVES)
    return tuple(_plainly(advice) if alone else advice for advice in first)


def conditions_of(view: QuoteView) -> Iterator[Message]:
    """Yield the conditions of price and day that a letter does not state elsewhere."""
    left_out = _SAID_ELSEWHERE | MAKERS_CONDITIONS
    yield from (depend for depend in view.quote.depends_on if depend.name not in left_out)


def _of(finding: Finding) -> Advice:
    needed = finding.level == "caution" or finding.check in NEEDED
    message = _briefly(finding)
    return Advice(finding.when, message, (finding.id,), message if needed else None)


def _briefly(finding: Finding) -> Message:
    """Return what to do, without the reason, which is on the page."""
    values = _values(finding)
    brief: Message | None = None
    if _is(finding, "way-in-not-told"):
        brief = Message("advice-way-in", missing=values["missing"])
    elif _is(finding, "mix-for-place") and values["unproven"] == "yes" and not _short(values):
        brief = Message("advice-mix", frost=values["frost"])
    elif _is(finding, "rails-needed"):
        brief = Message("advice-rails", fitted=values["fitted"], slab=values["slab"])
    elif _is(finding, "drip-advised"):
        brief = Message("advice-drip")
    elif _is(finding, "fall-advised"):
        brief = Message("advice-fall", slabs=values["slabs"], fall=values["fall"])
    elif _is(finding, "dark-outdoors"):
        brief = Message("advice-dark", shades=values["shades"])
    elif _is(finding, "food-not-declared"):
        brief = Message("advice-food")
    return brief or finding.message


def _short(values: Mapping[str, Value]) -> bool:
    """Return whether a mix falls short of its standard by other things than frost."""
    short = values["short"]
    return isinstance(short, Listed) and bool(short.things)


def _kerb(findings: Iterable[Finding], quote: Quote) -> Iterator[Advice]:
    """The pallet, with its weight."""
    for finding in findings:
        if finding.check == "set-down-at-kerb":
            kerb = Message("advice-kerb", packed=Weight(quote.packed_kg))
            yield replace(_of(finding), message=kerb, in_short=kerb)


def _carried(findings: Sequence[Finding], quote: Quote) -> Iterator[Advice]:
    """One weight, one number of people, and whether on edge."""
    edges = [
        finding for finding in findings if _is(finding, "carry-on-edge", "carry-on-edge-or-it-tips")
    ]
    hands = next((finding for finding in findings if _is(finding, "hands-needed")), None)
    ids = tuple(edge.id for edge in edges)
    if edges and hands is not None and len(quote.order.slabs) == 1:
        carried = _on_edge(hands)
        yield Advice("on-delivery", carried, (*ids, hands.id), carried)
    elif len(edges) > 1:
        names = tuple(_values(edge)["slab"] for edge in edges)
        message = Message("advice-on-edge", slabs=Listed(names, most=_MAX_NAMED))
        yield Advice("on-delivery", message, ids, message)


def _on_edge(hands: Finding) -> Message:
    values = _values(hands)
    people = values["people"]
    return Message(
        "advice-carry",
        slab=values["slab"],
        weight=values["weight"],
        people=people,
        count=people.count if isinstance(people, People) else 1,
        assess=values["assess"],
    )


def _people(findings: Sequence[Finding]) -> Iterator[Advice]:
    """From when people may be on a slab, and that it then holds with little to spare."""
    close = {
        finding.slab: finding for finding in findings if _is(finding, "near-cracking-in-place")
    }
    for finding in findings:
        near = close.get(finding.slab)
        if near is None or not _is(finding, "young-for-people"):
            continue
        if not str(_values(near)["load"]).startswith("somebody-"):
            continue
        values = _values(finding)
        message = Message(
            "advice-people", doing=values["doing"], slab=values["slab"], day=values["day"]
        )
        short = Message(
            "advice-people-young", doing=values["doing"], slab=values["slab"], day=values["day"]
        )
        yield Advice("in-use", message, (near.id, finding.id), short)


def _is(finding: Finding, *names: str) -> bool:
    return finding.message.name in names


def _values(finding: Finding) -> Mapping[str, Value]:
    return finding.message.values


def _plainly(advice: Advice) -> Advice:
    """Describe “the slab” of an order's only one."""
    short = None if advice.in_short is None else _unnamed(advice.in_short)
    return replace(advice, message=_unnamed(advice.message), in_short=short)


def _unnamed(message: Message) -> Message:
    if message.name == "load-on-units":
        values = message.values
        return Message("advice-units", level=values["level"], weight=values["weight"])
    return message.with_values({name: _without(value) for name, value in message.values.items()})


def _without(value: Value) -> Value:
    """A value without a slab's own name in it."""
    if isinstance(value, Listed):
        return replace(value, things=tuple(map(_without, value.things)))
    if not isinstance(value, Message):
        return value
    if value.name == _LABELLED:
        return Message("slab-only")
    return value.with_values({name: _without(inner) for name, inner in value.values.items()})
