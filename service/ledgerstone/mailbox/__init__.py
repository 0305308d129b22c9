"""The maker's own mailbox: a draft reply to each new enquiry, and nothing sent, deleted or read."""

from ledgerstone.mailbox.passes import Looked, MailboxRun, look_through

__all__ = ["Looked", "MailboxRun", "look_through"]
