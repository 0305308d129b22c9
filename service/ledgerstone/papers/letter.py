"""What a letter holds, as plain texts and lists that a template fills in."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from ledgerstone.order import Order
from ledgerstone.papers.views import ChangeView, QuoteView, SentBackView
from ledgerstone.papers.words import (
    arrives_text,
    shade_text,
    size_text,
    slab_name,
    stage_text,
    tax_text,
)
from ledgerstone.quote import Quote
from ledgerstone.shape import Shape
from ledgerstone.wording import day_text, english, money_text, weight_text
from ledgerstone.workshop.records import Workshop

Content = dict[str, Any]
_STANDING = {"estimate": "Estimate", "quotation": "Quotation"}


@dataclass(frozen=True, slots=True)
class Letter:
    """Whose letter it is, to whom, and how much it says.

    Attributes
    ----------
    taken
        What was taken that the customer did not say, as one paragraph.
    questions
        What the customer is asked.
    replaces
        The day of an earlier letter whose place this one takes.
    """

    workshop: Workshop
    customer: str = ""
    is_full: bool = True
    taken: str = ""
    questions: tuple[str, ...] = ()
    replaces: date | None = None

    def content(self) -> Content:
        """Say what stands in every letter."""
        mine, reply = self.workshop.workshop, self.workshop.reply
        return {
            "greeting": f"{reply.greeting} {self.customer}".strip(),
            "signature": list(reply.signature) or [mine.name, mine.town],
            "terms": list(reply.terms),
            "workshop": mine.name,
            "town": mine.town,
            "email": mine.email,
            "telephone": mine.telephone,
            "full": self.is_full,
            "taken": self.taken,
            "questions": list(self.questions),
            "replaces": day_text(self.replaces) if self.replaces else "",
        }

    def option(self, view: QuoteView) -> Content:
        """Say one quote."""
        quote, price = view.quote, view.quote.price
        return {
            "title": view.title,
            "changes": list(view.changes),
            "name": view.name,
            "standing": _STANDING[quote.standing],
            "total": money_text(price.currency, price.total),
            "net": money_text(price.currency, price.net),
            "tax": tax_text(price, self.workshop.tax.name),
            "deposit": money_text(price.currency, price.deposit),
            "lines": [
                {"label": line.label, "amount": money_text(price.currency, line.amount)}
                for line in (price.lines if view.whole else ())
            ],
            "note": quote.terms.note,
            "ready": day_text(quote.lead_time.ready_on),
            "ordered_by": day_text(quote.lead_time.if_ordered_by),
            "arrives": arrives_text(quote.lead_time, quote.order.delivery.kind)
            if view.whole
            else "",
            "weeks": [
                f"{english(stage.name)}: {stage_text(stage)}"
                for stage in (quote.lead_time.stages if view.whole else ())
            ],
            "issued": day_text(quote.issued),
            "valid_until": day_text(quote.valid_until),
            "packed": weight_text(quote.packed_kg),
            "slabs": self._slabs(view),
            "cautions": [f.says for f in quote.findings if f.level == "caution"],
            "notes": [f.says for f in quote.findings if f.level == "note"],
            "depends_on": [english(one) for one in quote.depends_on],
            **linked(view.link),
        }

    def _slabs(self, view: QuoteView) -> list[Content]:
        quote = view.quote
        return [
            {
                **slab,
                "weight": weight_text(weight.slab_kg),
                "people": weight.people_to_lift,
                "alt": f"Plan of {slab['name']}: {slab['size']}. {self._priced(quote)}",
            }
            for slab, weight in zip(
                slabs_content(quote.order, quote.shapes, view.pictures), quote.weights, strict=True
            )
        ]

    def _priced(self, quote: Quote) -> str:
        total = money_text(quote.price.currency, quote.price.total)
        return f"{_STANDING[quote.standing]} {total}."

    def sent_back(self, view: SentBackView) -> Content:
        """Say a send-back."""
        slabs = slabs_content(view.sent.order, view.sent.shapes, view.pictures)
        return {
            "slabs": [
                {**slab, "alt": f"Plan of {slab['name']}: {slab['size']}. No price yet."}
                for slab in slabs
            ],
            "findings": [
                {
                    "says": finding.says,
                    "following": list(finding.following),
                    "ways": [way_content(way) for way in finding.ways],
                }
                for finding in view.findings
            ],
            "cautions": _other_cautions(view),
            "all_at_once": way_content(view.all_at_once) if view.all_at_once else None,
            "bigger": view.is_bigger,
            "why_not": view.why_not or "",
        }


def _other_cautions(view: SentBackView) -> list[str]:
    """Cautions of a send-back but for those that are said under what they follow from."""
    said = {says for finding in view.findings for says in finding.following}
    cautions = [f.says for f in view.sent.findings if f.level == "caution"]
    return [says for says in cautions if says not in said]


def slabs_content(order: Order, shapes: Sequence[Shape], pictures: Sequence[str]) -> list[Content]:
    """Say each slab: its name, size, look and picture."""
    many = len(order.slabs)
    return [
        {
            "name": slab_name(slab, i, many),
            "quantity": slab.quantity,
            "size": size_text(slab, shape),
            "look": shade_text(slab),
            "picture": pictures[i] if i < len(pictures) else "",
        }
        for i, (slab, shape) in enumerate(zip(order.slabs, shapes, strict=True))
    ]


def way_content(way: ChangeView) -> Content:
    """Say one way out of a send-back."""
    return {"says": way.says, "price": way.price or "", **linked(way.link)}


def linked(link: str | None) -> Content:
    """Give a link, and the host that stands in its visible words."""
    if link is None:
        return {"link": "", "host": ""}
    return {"link": link, "host": link.partition("#")[0].rstrip("/")}
