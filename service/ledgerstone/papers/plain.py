"""Answers and job sheets as plain text, for those who live in a terminal."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from ledgerstone.checks import Finding
from ledgerstone.papers.words import arrives_text, size_text, slab_name, tax_text
from ledgerstone.quote import Quote, SentBack
from ledgerstone.remedies import Fix, Found, Saving
from ledgerstone.wording import day_text, english, money_text, weight_text


def quote_text(quote: Quote, name: str, link: str, tax_name: str) -> str:
    """Say a quote."""
    price, lead, many = quote.price, quote.lead_time, len(quote.order.slabs)
    slabs = zip(quote.order.slabs, quote.shapes, quote.weights, strict=True)
    rows = [
        (quote.standing.capitalize(), f"{name}, until {day_text(quote.valid_until)}"),
        ("Price", money_text(price.currency, price.total)),
        ("", tax_text(price, tax_name)),
        *((f"  {line.label}", money_text(price.currency, line.amount)) for line in price.lines),
        ("Deposit", money_text(price.currency, price.deposit)),
        ("Ready", f"{day_text(lead.ready_on)}, if ordered by {day_text(lead.if_ordered_by)}"),
        ("", arrives_text(lead, quote.order.delivery.kind)),
        *(
            (slab_name(slab, i, many), f"{size_text(slab, shape)}; {weight_text(weight.slab_kg)}")
            for i, (slab, shape, weight) in enumerate(slabs)
        ),
        ("Packed", weight_text(quote.packed_kg)),
        ("Link", link),
    ]
    wide = max(len(label) for label, _ in rows) + 2
    told = "".join(f"{label:<{wide}}{says}\n" for label, says in rows if says)
    rests_on = "".join(f"          - {english(one)}\n" for one in quote.depends_on)
    rests_on = f"\nThe price and the day rest on this:\n{rests_on}" if rests_on else ""
    return told + rests_on + _findings_text(quote.findings) + _ways_text(quote)


def _ways_text(quote: Quote) -> str:
    told = "".join(f"          - {way.says} ({', '.join(_saved(way))})\n" for way in quote.ways)
    return f"\nWays to save:\n{told}" if told else ""


def _saved(way: Saving) -> Iterator[str]:
    """What is then asked, and what else is saved."""
    yield money_text(way.price.currency, way.price.total)
    if way.lighter_kg:
        yield f"{weight_text(way.lighter_kg)} lighter"
    if way.sooner_days:
        days = "1 day" if way.sooner_days == 1 else f"{way.sooner_days} days"
        yield f"{days} sooner"


def sent_back_text(sent: SentBack) -> str:
    """Say a send-back: what stops it, what settles it, and what settles all."""
    lines = ["Not to be made as asked.\n"]
    found = sent.found if sent.found is not None else Found()
    for finding in sent.findings:
        if finding.level == "stops" and finding.follows_from is not None:
            lines.append(f"          {finding.says}\n")
        elif finding.level == "stops":
            lines.append(f"\nstops     {finding.says}\n")
            lines += [f"          - {remedy.says}\n" for remedy in found.beside_the_fix(finding.id)]
    lines += list(_fix_lines("All at once", found.fix_all))
    lines += list(_fix_lines("Nearest makeable", found.nearest_makeable))
    lines += [f"\n{english(found.why_not)}\n"] if found.why_not else []
    others = [finding for finding in sent.findings if finding.level != "stops"]
    return "".join(lines) + _findings_text(others)


def _fix_lines(title: str, fix: Fix | None) -> Sequence[str]:
    if fix is None:
        return ()
    total = money_text(fix.price.currency, fix.price.total)
    return (f"\n{title}, for {total}:\n", *(f"          - {says}\n" for says in fix.says))


def _findings_text(findings: Sequence[Finding]) -> str:
    told = "".join(f"{finding.level:<10}{finding.says}\n" for finding in findings)
    return f"\n{told}" if told else ""


def pages_text(pages: Iterable[dict[str, Any]]) -> str:
    """Say a job sheet's pages, its drawings by their words."""
    return "\n".join("\n".join(_page_lines(page)) + "\n" for page in pages)


def _page_lines(page: dict[str, Any]) -> Iterator[str]:
    yield page["title"]
    yield "=" * len(page["title"])
    for block in page["blocks"]:
        yield from _block_lines(block)


def _block_lines(block: dict[str, Any]) -> Iterator[str]:
    said = block.get("says", [])
    lines = [said] if isinstance(said, str) else said
    if block["kind"] == "heading":
        yield ""
        yield from lines
    elif block["kind"] == "drawing":
        yield f"(drawing) {block['words']}"
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
