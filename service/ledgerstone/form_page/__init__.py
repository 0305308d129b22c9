"""The page's form without a script: what it sends, read as an order, and the page that answers."""

from ledgerstone.form_page.answered import (
    SpokenFault,
    put_answer,
    put_title,
    show_faults,
    show_summary,
    without_scripts,
)
from ledgerstone.form_page.filling import Filling, fill
from ledgerstone.form_page.form import FIRST_SLAB, Control, Form
from ledgerstone.form_page.markup import HtmlElement, page_of
from ledgerstone.form_page.order import Habits, order_of, typed_of
from ledgerstone.form_page.sent import MAX_FIELDS, Pairs, Sent, Typed, read_sent

__all__ = [
    "FIRST_SLAB",
    "MAX_FIELDS",
    "Control",
    "Filling",
    "Form",
    "Habits",
    "HtmlElement",
    "Pairs",
    "Sent",
    "SpokenFault",
    "Typed",
    "fill",
    "order_of",
    "page_of",
    "put_answer",
    "put_title",
    "read_sent",
    "show_faults",
    "show_summary",
    "typed_of",
    "without_scripts",
]
