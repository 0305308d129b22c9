"""A mail server for the tests of a process, its account empty for each of them."""

import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest

from support.imap_server import ImapServer, imap_server


@pytest.fixture(scope="session")
def mail_server() -> Iterator[ImapServer]:
    """A server; its sockets need a short path. To stop it takes a second."""
    with tempfile.TemporaryDirectory(prefix="imap") as folder, imap_server(Path(folder)) as running:
        yield running


@pytest.fixture
def server(mail_server: ImapServer) -> Iterator[ImapServer]:
    """The server, with an empty account."""
    yield mail_server
    mail_server.clear()
