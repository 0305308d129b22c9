"""What goes to the customer and beside the piece: replies by email, and sheets of paper."""

from ledgerstone.papers.letter import Letter
from ledgerstone.papers.message import Enclosed, message
from ledgerstone.papers.reply import Reply, Tone, reply
from ledgerstone.papers.templates import BUILT_IN, Templates
from ledgerstone.papers.views import ChangeView, FindingView, QuoteView, SentBackView

__all__ = [
    "BUILT_IN",
    "ChangeView",
    "Enclosed",
    "FindingView",
    "Letter",
    "QuoteView",
    "Reply",
    "SentBackView",
    "Templates",
    "Tone",
    "message",
    "reply",
]
