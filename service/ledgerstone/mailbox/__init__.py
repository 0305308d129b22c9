"""The maker's own mailbox: a draft reply to each new enquiry, and nothing sent, deleted or read."""

from ledgerstone.mailbox.passes import MailboxRun, look_through

__all__ = ["MailboxRun", "look_through"]
