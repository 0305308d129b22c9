"""The command ``mailbox`` at work on a server on loopback: messages, profiles and runs."""

from __future__ import annotations

import email
import email.policy
import io
import os
import subprocess
import sys
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from email.message import EmailMessage
from email.utils import format_datetime
from pathlib import Path

from ledgerstone.cli.orders import run
from ledgerstone.workshop import DEMONSTRATION
from support.commands import KEYS
from support.imap_server import PASSWORD, USER, ImapServer, Letter

ASKS = (
    "Could you price a worktop for our utility room, 1.83 m by 620 mm and 40 mm thick, in"
    " graphite? We'd collect.\n\nThanks\nGemma Ridley\n"
)
SERVICE = Path(__file__).resolve().parents[2] / "service"
ENVIRONMENT = {**KEYS, "LEDGERSTONE_MAILBOX_PASSWORD": PASSWORD}


def post(number: int, text: str = ASKS, **headers: str) -> EmailMessage:
    """Return a new message; its number is in its Message-ID and its subject."""
    mail = EmailMessage()
    given = {
        "From": "Gemma Ridley <gemma@example.com>",
        "To": f"Tarnside Casting <{USER}>",
        "Subject": f"Worktop {number}",
        "Date": format_datetime(datetime.now().astimezone()),
        "Message-ID": f"<{number}@example.com>",
        **{name.replace("_", "-"): value for name, value in headers.items()},
    }
    for name, value in given.items():
        if value:
            mail[name] = value
    mail.set_content(text)
    return mail


def profile_for(server: ImapServer, folder: Path, port: int | None = None, **keys: str) -> Path:
    """Write the demonstration's profile with a mailbox on this server."""
    given = {"host": "127.0.0.1", "security": "none", "user": USER, **keys}
    lines = [f"port = {port or server.port}", *(f'{k} = "{v}"' for k, v in given.items())]
    path = folder / "workshop.toml"
    text = DEMONSTRATION.read_text(encoding="utf-8")
    path.write_text("\n".join([text, "[mailbox]", *lines, ""]), encoding="utf-8")
    return path


def looked(
    profile: Path, *arguments: object, environment: Mapping[str, str] = ENVIRONMENT
) -> tuple[int, list[str], str]:
    """Run the command once in the test: its status, the lines it printed, its errors."""
    out, err = io.StringIO(), io.StringIO()
    asked = ["mailbox", "--once", "--workshop", profile, *arguments]
    status = run([str(one) for one in asked], out, err, environment)
    return status, out.getvalue().splitlines(), err.getvalue()


def started(profile: Path, how: str = "--once") -> subprocess.Popen[str]:
    """Start the command in a process of its own."""
    return subprocess.Popen(
        [sys.executable, "-m", "ledgerstone", "mailbox", how, "--workshop", str(profile)],
        env={**os.environ, **ENVIRONMENT, "PYTHONPATH": str(SERVICE)},
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    )


@dataclass(frozen=True, slots=True)
class Draft:
    """A draft as a mail program reads it."""

    letter: Letter
    mail: EmailMessage

    @property
    def answers(self) -> str:
        """The message that it answers."""
        return str(self.mail["In-Reply-To"])

    @property
    def text(self) -> str:
        """Its plain text, on one line."""
        body = self.mail.get_body(("plain",))
        assert body is not None
        return " ".join(str(body.get_content()).split())


def drafts(server: ImapServer) -> list[Draft]:
    """Return the drafts on a server."""
    parsed = [
        email.message_from_bytes(one.content, policy=email.policy.default)
        for one in server.written()
    ]
    return [Draft(one, mail) for one, mail in zip(server.written(), parsed, strict=True)]
