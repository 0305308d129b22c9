"""Customers’ messages as tests write them."""

from email.message import EmailMessage

ASKS = "Could I have a price for a shelf, 900 x 220 x 40 mm, charcoal? Thanks, Gemma"


def mailed(text: str = ASKS, **headers: str) -> EmailMessage:
    """A message of a customer's."""
    mail = EmailMessage()
    mail["From"] = headers.get("sender", "Gemma Ridley <gemma@example.com>")
    mail["Subject"] = headers.get("subject", "shelves")
    mail["Date"] = "Wed, 02 Dec 2026 13:37:00 +0000"
    mail["Message-ID"] = "<1@example.com>"
    mail.set_content(text)
    return mail
