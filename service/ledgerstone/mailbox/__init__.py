"""The maker's mailbox (IMAP): a draft reply to each new enquiry, nothing sent or deleted."""

from ledgerstone.mailbox.passes import MailboxRun, PassResult, run_pass

__all__ = ["MailboxRun", "PassResult", "run_pass"]
