"""Answers and job sheets as plain text, for those who live in a terminal."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from ledgerstone.checks import Finding
from ledgerstone.drawing.frame import leading_length, shown
from ledgerstone.order import Round, Slab
from ledgerstone.price import Price
from ledgerstone.quote import Quote, SentBack
from ledgerstone.remedies import Fix, Found, Saving
from ledgerstone.schedule import LeadTime
from ledgerstone.shape import Shape
from ledgerstone.wording import Message, Money, Percent, Speech, Value, Weight, slab_name

_INDENT = " " * 10


def quote_text(quote: Quote, name: str, link: str, tax_name: str, speech: Speech) -> str:
    """Describe a quote."""
    rows = [(speech.value(row), speech.value(says)) for row, says in _rows(quote, name, tax_name)]
    rows.append((speech.say(Message("terminal-label", row="link")), link))
    wide = max(len(label) for label, _ in rows) + 2
    text = "".join(f"{label:<{wide}}{says}\n" for label, says in rows)
    rests_on = _items(speech.say(depend) for depend in quote.depends_on)
    rests_on = f"\n{speech.say(Message('terminal-rests'))}\n{rests_on}" if rests_on else ""
    return text + rests_on + _findings_text(quote.findings, speech) + _ways_text(quote, speech)


def _rows(quote: Quote, name: str, tax_name: str) -> Iterator[tuple[Value, Value]]:
    """Yield the rows of a quote, label and text; an empty label continues the row above."""
    price, lead = quote.price, quote.lead_time
    until = Message("terminal-until", name=name, day=quote.valid_until)
    yield Message("terminal-label", row=quote.standing), until
    yield Message("terminal-label", row="price"), Money(price.currency, price.total)
    if price.tax:
        yield "", _tax(price, tax_name)
    for line in price.lines:
        yield line.label, Money(price.currency, line.amount)
    yield Message("terminal-label", row="deposit"), Money(price.currency, price.deposit)
    ready = Message("terminal-ready", ready=lead.ready_on, by=lead.if_ordered_by)
    yield Message("terminal-label", row="ready"), ready
    yield "", _arrives(lead, quote.order.delivery.kind)
    slabs = zip(quote.order.slabs, quote.shapes, quote.weights, strict=True)
    for i, (slab, shape, weight) in enumerate(slabs):
        named = slab_name(slab, i, len(quote.order.slabs))
        yield named, _size(slab, shape, Weight(weight.slab_kg))
    yield Message("terminal-label", row="packed"), Weight(quote.packed_kg)


def _tax(price: Price, name: str) -> Message:
    amount, percent = Money(price.currency, price.tax), Percent(price.tax_percent)
    return Message("terminal-tax", amount=amount, tax=name, percent=percent)


def _arrives(lead: LeadTime, kind: str) -> Message:
    """State when an order arrives, or that it is collected."""
    first, last = lead.arrives_earliest, lead.arrives_latest
    if kind == "collect":
        return Message("terminal-arrives", way="collect", first=lead.ready_on, last=lead.ready_on)
    way = "day" if first == last else "days"
    return Message("terminal-arrives", way=way, first=first, last=last)


def _size(slab: Slab, shape: Shape, weight: Weight) -> Message:
    """Describe a slab's finished size in the customer's own units, its surface and its mass."""
    like = leading_length(slab)
    length, width = shown(like, shape.length_mm), shown(like, shape.width_mm)
    each = {"thickness": slab.thickness, "surface": slab.finish.surface, "weight": weight}
    if isinstance(slab.outline, Round):
        return Message("terminal-across", length=length, **each)
    return Message("terminal-size", length=length, width=width, **each)


def _items(sentences: Iterable[str]) -> str:
    return "".join(f"{_INDENT}- {sentence}\n" for sentence in sentences)


def _ways_text(quote: Quote, speech: Speech) -> str:
    text = _items(
        f"{speech.say_all(_flat(way.sentences))} ({', '.join(_saved(way, speech))})"
        for way in quote.ways
    )
    return f"\n{speech.say(Message('terminal-ways'))}\n{text}" if text else ""


def _flat(sentences: Iterable[Iterable[Message]]) -> list[Message]:
    return [sentence for part in sentences for sentence in part]


def _saved(way: Saving, speech: Speech) -> Iterator[str]:
    """Return the price of a way to save, and what else it saves."""
    yield speech.value(Money(way.price.currency, way.price.total))
    if way.lighter_kg:
        yield speech.say(Message("terminal-lighter", weight=Weight(way.lighter_kg)))
    if way.sooner_days:
        yield speech.say(Message("terminal-sooner", count=way.sooner_days))


def sent_back_text(sent: SentBack, speech: Speech) -> str:
    """Describe a send-back: what stops it, what settles it, and what settles all."""
    lines = [f"{speech.say(Message('terminal-not-made'))}\n"]
    found = sent.found if sent.found is not None else Found()
    for finding in sent.findings:
        if finding.level == "stops" and finding.follows_from is not None:
            lines.append(f"{_INDENT}{speech.value(finding.message)}\n")
        elif finding.level == "stops":
            lines.append(f"\n{_finding_text(finding, speech)}")
            beside = found.beside_the_fix(finding.id)
            lines.append(_items(speech.say_all(_flat(advice.sentences)) for advice in beside))
    lines += _fix_lines("terminal-fix", found.fix_all, speech)
    lines += _fix_lines("terminal-nearest", found.nearest_makeable, speech)
    lines += [f"\n{speech.value(found.why_not)}\n"] if found.why_not else []
    others = [finding for finding in sent.findings if finding.level != "stops"]
    return "".join(lines) + _findings_text(others, speech)


def _fix_lines(name: str, fix: Fix | None, speech: Speech) -> Iterator[str]:
    if fix is None:
        return
    total = Money(fix.price.currency, fix.price.total)
    titles = {
        "terminal-fix": Message("terminal-fix", total=total),
        "terminal-nearest": Message("terminal-nearest", total=total),
    }
    yield f"\n{speech.say(titles[name])}\n"
    yield _items(speech.say_all(part) for part in fix.sentences)


def _findings_text(findings: Sequence[Finding], speech: Speech) -> str:
    text = "".join(_finding_text(finding, speech) for finding in findings)
    return f"\n{text}" if text else ""


def _finding_text(finding: Finding, speech: Speech) -> str:
    level = speech.say(Message("terminal-level", level=finding.level))
    return f"{level:<{len(_INDENT)}}{speech.value(finding.message)}\n"


def pages_text(pages: Iterable[dict[str, Any]], speech: Speech) -> str:
    """Describe a job sheet's pages, its drawings by their words."""
    return "\n".join("\n".join(_page_lines(page, speech)) + "\n" for page in pages)


def _page_lines(page: dict[str, Any], speech: Speech) -> Iterator[str]:
    yield page["title"]
    yield "=" * len(page["title"])
    for block in page["blocks"]:
        yield from _block_lines(block, speech)


def _block_lines(block: dict[str, Any], speech: Speech) -> Iterator[str]:
    sentences = block.get("says", [])
    lines = [sentences] if isinstance(sentences, str) else sentences
    if block["kind"] == "heading":
        yield ""
        yield from lines
    elif block["kind"] == "drawing":
        yield speech.say(Message("terminal-drawing", words=block["words"]))
    elif "rows" in block:
        yield from _table_lines(
            [*([block["columns"]] if "columns" in block else []), *block["rows"]]
        )
    else:
        mark = {"ticks": "[ ] ", "flag": "! "}.get(block["kind"], "")
        yield from (f"{mark}{line}" for line in lines)


def _table_lines(rows: Sequence[Sequence[str]]) -> Iterator[str]:
    wide = [max(len(str(row[i])) for row in rows if i < len(row)) for i in range(len(rows[0]))]
    for row in rows:
        cells = (f"{cell!s:<{width}}" for cell, width in zip(row, wide, strict=False))
        yield "  " + "  ".join(cells).rstrip()
