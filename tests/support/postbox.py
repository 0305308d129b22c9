"""A mail server on this machine that keeps what it takes, and a profile that names it."""

from email.message import EmailMessage
from email.parser import BytesParser
from email.policy import default
from pathlib import Path

from aiosmtpd.smtp import SMTP, Envelope, Session

from ledgerstone.workshop import DEMONSTRATION

ASKED = {"name": "Odile Ångström", "reach": "odile@example.org", "note": "Two of them?\n½ inch?"}


class Postbox:
    """Keeps what a mail server took, or refuses it."""

    def __init__(self) -> None:
        self.taken: list[Envelope] = []
        self.answer = "250 taken"

    async def handle_DATA(self, _server: SMTP, _session: Session, envelope: Envelope) -> str:  # noqa: N802  aiosmtpd's name
        """Take one letter."""
        self.taken.append(envelope)
        return self.answer

    def letter(self) -> EmailMessage:
        """The only letter there is, as Python's email package reads it."""
        [envelope] = self.taken
        content = envelope.content
        assert isinstance(content, bytes)
        letter = BytesParser(policy=default).parsebytes(content)
        assert isinstance(letter, EmailMessage)
        assert not letter.defects
        return letter


def mailing_profile(folder: Path, port: int, more: str = "") -> Path:
    """Write the demonstration's profile with a mail server."""
    path = folder / "workshop.toml"
    text = DEMONSTRATION.read_text(encoding="utf-8")
    table = f'[mail]\nhost = "127.0.0.1"\nport = {port}\nsecurity = "none"\n{more}'
    path.write_text(f"{text}\n{table}", encoding="utf-8")
    return path
