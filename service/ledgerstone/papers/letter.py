"""What a letter holds: sentences in the customer's language that a template sets out."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import Final

from ledgerstone.checks import for_customers
from ledgerstone.order import Order
from ledgerstone.papers.advice import advice_of, conditions_of
from ledgerstone.papers.descriptions import size_of, slab_title, slab_titles
from ledgerstone.papers.letter_days import day_sentences, sent_back_day
from ledgerstone.papers.letter_slabs import join_facts, slab_facts
from ledgerstone.papers.own_terms import own_terms
from ledgerstone.papers.sheet import Content
from ledgerstone.papers.views import ChangeView, QuoteView, SentBackView
from ledgerstone.price import Price
from ledgerstone.shape import Shape
from ledgerstone.terms import trial_message
from ledgerstone.wording import Listed, Message, Money, Percent, Speech
from ledgerstone.workshop.records import Workshop

# Conditions that a short letter has too.
_ALWAYS: Final = ("estimate-", "calendar-")


@dataclass(frozen=True, slots=True)
class Letter:
    """A letter: its sender, addressee, language and length.

    Attributes
    ----------
    speech
        Says it in the customer's language.
    today
        The day on which it is written.
    taken
        The assumptions, as one paragraph.
    questions
        The questions to the customer.
    replaces
        The day of an earlier letter whose place this one takes.
    wished
        The day that the customer asked for, where the order has another since.
    is_linked
        Whether it has links: not where they would lead to this machine alone.
    """

    workshop: Workshop
    speech: Speech
    today: date
    customer: str = ""
    is_full: bool = True
    taken: str = ""
    questions: tuple[str, ...] = ()
    replaces: date | None = None
    wished: date | None = None
    is_linked: bool = True

    def content(self) -> Content:
        """Write what is in every letter."""
        identity, reply, say = self.workshop.workshop, self.workshop.reply, self.speech.say
        terms = own_terms(self.workshop)
        return {
            "language": self.speech.language,
            "greeting": self._greeting(),
            "trial": say(trial_message(self.workshop)) if self.workshop.standing.trial else "",
            "signature": list(reply.signature) or [identity.name, identity.town],
            "terms": [*self._terms_language(), *terms] if terms else [],
            "workshop": identity.name,
            "town": identity.town,
            "email": identity.email,
            "telephone": identity.ring,
            "full": self.is_full,
            "taken": self.taken,
            "asks": say(Message("letter-asks")),
            "questions": list(self.questions),
            "replaces": say(Message("letter-replaces", day=self.replaces)) if self.replaces else "",
        }

    def _greeting(self) -> str:
        """Greet in the maker's own words, where these are in the customer's language."""
        if self._is_own_language():
            return f"{self.workshop.reply.greeting} {self.customer}".strip()
        named = "yes" if self.customer else "no"
        return self.speech.say(Message("letter-greeting", named=named, customer=self.customer))

    def _is_own_language(self) -> bool:
        return self.speech.language == self.workshop.workshop.language

    def _terms_language(self) -> Iterator[str]:
        """State in which language the maker's own terms are, where that is not the customer's."""
        if not self._is_own_language():
            language = self.workshop.workshop.language
            yield self.speech.say(Message("letter-terms-in", language=language))

    # --- a quote ---------------------------------------------------------------------------

    def option(self, view: QuoteView) -> Content:
        """Describe one quote."""
        quote, price, say = view.quote, view.quote.price, self.speech.say
        return {
            "title": view.title,
            "changes": list(view.changes),
            "offer": say(self.offer(view)),
            "total": self._money(price, price.total),
            "tax": self._tax(price),
            "net": self._money(price, price.net),
            "net_label": say(Message("letter-net", taxed="yes" if price.tax else "no")),
            "deposit": self._money(price, price.deposit),
            "lines": [
                {"label": say(line.label), "amount": self._money(price, line.amount)}
                for line in (price.lines if view.whole else ())
            ],
            "note": quote.terms.note,
            "days": [say(day) for day in self._days(view)],
            "slabs": list(self._slabs(view)),
            "conditions": list(self._conditions(view)),
            "advice": list(self._advice(view)),
            "see": self._see(view.link),
            **self._linked(view.link),
        }

    def _see(self, link: str | None) -> str:
        """Introduce a quote's link, or state that it is too long for one."""
        if link and not self.is_linked:
            return ""
        return self.speech.say(Message("letter-link" if link else "letter-attached"))

    def _days(self, view: QuoteView) -> Iterator[Message]:
        return day_sentences(view, self.today, is_full=self.is_full, wished=self.wished)

    def offer(self, view: QuoteView) -> Message:
        """Name an offer by what it is and its reference."""
        return Message("letter-offer", standing=view.quote.standing, offer=view.name)

    def _money(self, price: Price, amount: Decimal) -> str:
        return self.speech.value(Money(price.currency, amount))

    def _tax(self, price: Price) -> str:
        if not price.tax:
            return ""
        tax, percent = Money(price.currency, price.tax), Percent(price.tax_percent)
        message = Message("letter-tax", tax=tax, name=self.workshop.tax.name, percent=percent)
        return self.speech.say(message)

    def _slabs(self, view: QuoteView) -> Iterator[Content]:
        quote = view.quote
        many, total = len(quote.order.slabs) > 1, Money(quote.price.currency, quote.price.total)
        slabs = self.slabs(quote.order, quote.shapes, view.pictures)
        for slab, weight in zip(slabs, quote.weights, strict=True):
            alt = Message(
                "letter-alt",
                slab=slab["name"],
                size=slab["size"],
                offer=self.offer(view),
                total=total,
            )
            sentence = self.speech.say(weight.message) if many else ""
            yield {**slab, "weighs": sentence, "alt": self.speech.say(alt)}

    def _conditions(self, view: QuoteView) -> Iterator[str]:
        for condition in conditions_of(view):
            if self.is_full or condition.name.startswith(_ALWAYS):
                yield self.speech.say(condition)

    def _advice(self, view: QuoteView) -> Iterator[Content]:
        """Yield the advice as paragraphs, each under when one acts on it."""
        paragraphs: dict[str, list[str]] = {"before-order": [], "on-delivery": [], "in-use": []}
        for advice in advice_of(view):
            following = advice.message if self.is_full else advice.in_short
            if following is not None:
                paragraphs[advice.when].append(self.speech.say(following))
        for when, sentences in paragraphs.items():
            if sentences:
                heading = self.speech.say(Message("letter-heading", when=when))
                yield {"heading": heading, "says": " ".join(sentences)}

    # --- a send-back -----------------------------------------------------------------------

    def sent_back(self, view: SentBackView) -> Content:
        """Describe a send-back."""
        say = self.speech.say
        slabs = self.slabs(view.sent.order, view.sent.shapes, view.pictures)
        change = Message("letter-bigger-change" if view.is_bigger else "letter-one-change")
        day = sent_back_day(view, self.today, self.wished)
        return {
            "slabs": [{**slab, "alt": say(_no_price(slab))} for slab in slabs],
            "findings": [
                {
                    "says": finding.says,
                    "following": list(finding.following),
                    "ways": [self._way(way) for way in finding.ways],
                }
                for finding in view.findings
            ],
            "good_to_know": say(Message("letter-good-to-know")),
            "cautions": self._other_cautions(view),
            "all_at_once": self._way(view.all_at_once) if view.all_at_once else None,
            "change": say(change),
            "why_not": view.why_not or "",
            "day": say(day) if day is not None else "",
        }

    def _other_cautions(self, view: SentBackView) -> list[str]:
        """Cautions of a send-back but for those that are said under what they follow from."""
        following = {sentence for finding in view.findings for sentence in finding.following}
        theirs = for_customers(view.sent.findings, view.sent.order.delivery)
        findings = (f for f in theirs if f.level == "caution")
        return [
            sentence for f in findings if (sentence := self.speech.say(f.message)) not in following
        ]

    def _way(self, way: ChangeView) -> Content:
        """Describe one way out of a send-back."""
        costs = self.speech.say(Message("letter-then-costs", price=way.price)) if way.price else ""
        linked = self._linked(way.link)
        see = Message("letter-see-change")
        at = Message("letter-see-change-at", host=linked["host"])
        return {
            "says": way.says,
            "costs": costs,
            "see": self.speech.say(see),
            **linked,
            "see_at": self.speech.say(at),
        }

    # --- both ------------------------------------------------------------------------------

    def slabs(
        self, order: Order, shapes: Sequence[Shape], pictures: Sequence[str]
    ) -> Iterable[Content]:
        """Describe each slab: its name, size, what it is, and its picture."""
        many = len(order.slabs)
        for i, (slab, shape) in enumerate(zip(order.slabs, shapes, strict=True)):
            facts = Listed((*slab_facts(slab, shape), *join_facts(order, i)), joined="semicolon")
            yield {
                "name": self.speech.value(slab_title(slab, i, many)),
                "quantity": slab.quantity,
                "size": self.speech.say(size_of(slab, shape)),
                "facts": self.speech.value(facts),
                "picture": pictures[i] if i < len(pictures) else "",
            }

    def _linked(self, link: str | None) -> Content:
        """Return a link, the host that stands in its visible words, and these."""
        link = link if self.is_linked else None
        host = (link or "").partition("#")[0].rstrip("/")
        see_at = self.speech.say(Message("letter-link-at", host=host)) if link else ""
        return {"link": link or "", "host": host, "see_at": see_at}


def names_of(order: Order) -> Listed:
    """Name an order's slabs, two at most."""
    return Listed(slab_titles(order), most=2)


def _no_price(slab: Content) -> Message:
    return Message("letter-alt-no-price", slab=slab["name"], size=slab["size"])
