"""A customer's message becomes a draft order: what was said, what was taken, what to ask."""

from ledgerstone.enquiry.answer import read_enquiry

__all__ = ["read_enquiry"]
