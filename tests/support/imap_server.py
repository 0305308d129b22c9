"""A real IMAP server, Debian's Dovecot, on loopback: with one account, whose mail lies in a folder.

It is looked at by the standard library's client and by its own tool, not by what is tested.
"""

from __future__ import annotations

import grp
import imaplib
import os
import pwd
import re
import shutil
import signal
import socket
import subprocess
import tempfile
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from support.ports import free_port
from support.serving import TIMEOUT_S

USER = "post@tarnside.example.com"
PASSWORD = "for-loopback-alone"  # noqa: S105 - of a server that lives for a test
_SBIN = ("/usr/sbin", "/usr/bin", "/usr/local/sbin")
_CONFIGURATION = """\
protocols = imap
base_dir = {folder}/run
state_dir = {folder}/state
log_path = {folder}/log
ssl = {tls}
ssl_cert = <{folder}/fullchain.pem
ssl_key = <{folder}/privkey.pem
disable_plaintext_auth = no
auth_mechanisms = plain login
default_internal_user = {runner}
default_login_user = {runner}
default_internal_group = {group}
mail_uid = {owner}
mail_gid = {group}
first_valid_uid = 1
last_valid_uid = 0
first_valid_gid = 1
mail_location = maildir:{folder}/mail:LAYOUT=fs
mail_fsync = never
passdb {{
  driver = static
  args = password={password}
}}
userdb {{
  driver = static
  args = uid={owner} gid={group} home={folder}
}}
service anvil {{
  chroot =
}}
service imap-login {{
  chroot =
  inet_listener imap {{
    address = 127.0.0.1
    port = {port}
  }}
  inet_listener imaps {{
    address = 127.0.0.1
    port = {tls_port}
    ssl = yes
  }}
}}
service stats {{
  chroot =
}}
namespace inbox {{
  inbox = yes
  separator = /
  mailbox {drafts} {{
    auto = create
    special_use = \\Drafts
  }}
  mailbox {sent} {{
    auto = create
    special_use = \\Sent
  }}
}}
"""


@dataclass(frozen=True, slots=True)
class Letter:
    """A message in a folder."""

    uid: int
    flags: frozenset[str]
    content: bytes


@dataclass(frozen=True, slots=True)
class ImapServer:
    """A server that runs: its ports, where its mail lies, what its folders are called."""

    port: int
    tls_port: int
    folder: Path
    drafts: str
    sent: str

    @contextmanager
    def signed_in(self) -> Iterator[imaplib.IMAP4]:
        """Sign in with the standard library's client."""
        with imaplib.IMAP4("127.0.0.1", self.port, timeout=TIMEOUT_S) as client:
            client.login(USER, PASSWORD)
            yield client

    def deliver(
        self,
        *messages: bytes,
        folder: str = "INBOX",
        flags: str = "",
        came: datetime | None = None,
    ) -> None:
        """Put messages into a folder, as they would arrive."""
        with self.signed_in() as client:
            for one in messages:
                when = imaplib.Time2Internaldate(came or datetime.now().astimezone())
                status, _ = client.append(f'"{folder}"', f"({flags})", when, one)
                assert status == "OK"

    def letters(self, folder: str = "INBOX") -> list[Letter]:
        """Return what lies in a folder, without leaving a mark."""
        with self.signed_in() as client:
            client.select(f'"{folder}"', readonly=True)
            _, found = client.uid("SEARCH", "ALL")
            return [self._letter(client, uid.decode()) for uid in found[0].split()]

    @staticmethod
    def _letter(client: imaplib.IMAP4, uid: str) -> Letter:
        _, got = client.uid("FETCH", uid, "(FLAGS BODY.PEEK[])")
        (head, content), *rest = [one for one in got if isinstance(one, tuple)]
        assert not rest
        flags = imaplib.ParseFlags(head + b" ".join(one for one in got if isinstance(one, bytes)))
        return Letter(int(uid), frozenset(flag.decode() for flag in flags), content)

    def written(self) -> list[Letter]:
        """Return the drafts."""
        return self.letters(self.drafts)

    def clear(self) -> None:
        """Empty the account: what lay in it is moved aside, and whoever comes next finds none."""
        mail = self.folder / "mail"
        mail.rename(Path(tempfile.mkdtemp(prefix="left-", dir=self.folder)) / "mail")
        _make_mail_folder(mail)

    def renew_uids(self) -> None:
        """Give the folder of arrivals another UIDVALIDITY, and every message another UID."""
        (listed,) = [p for p in (self.folder / "mail").rglob("dovecot-uidlist") if _is_inbox(p)]
        head = listed.read_text(encoding="utf-8").splitlines()[0]
        renewed = re.sub(r"V(\d+) N\d+", lambda m: f"V{int(m[1]) + 1000} N100", head)
        for path in listed.parent.glob("dovecot*"):
            if path.name != "dovecot-keywords":
                path.unlink()
        listed.write_text(f"{renewed}\n", encoding="utf-8")
        if os.getuid() == 0:
            shutil.chown(listed, *_owner())


def _is_inbox(path: Path) -> bool:
    return path.parent.name in ("mail", "INBOX")


def _program() -> str:
    found = shutil.which("dovecot", path=os.pathsep.join((os.environ["PATH"], *_SBIN)))
    assert found, "Debian's dovecot-imapd is missing; tests/run installs it"
    return found


def _owner() -> tuple[str, str]:
    """Whose the mail is: nobody's where the tests are root's, which the server is not for."""
    name = "nobody" if os.getuid() == 0 else pwd.getpwuid(os.getuid()).pw_name
    return name, grp.getgrgid(pwd.getpwnam(name).pw_gid).gr_name


def _make_mail_folder(folder: Path) -> None:
    folder.mkdir()
    if os.getuid() == 0:
        shutil.chown(folder, *_owner())


@contextmanager
def imap_server(
    folder: Path, drafts: str = "Drafts", sent: str = "Sent", certificate: Sequence[str] = ()
) -> Iterator[ImapServer]:
    """Run the server until the end.

    Parameters
    ----------
    folder
        Where all of it lies. Its sockets do too, whose paths must be short.
    certificate
        A command that writes ``fullchain.pem`` and ``privkey.pem`` there, where it speaks TLS.
    """
    owner, group = _owner()
    for name in ("run", "state"):
        (folder / name).mkdir()
    if certificate:
        subprocess.run(certificate, cwd=folder, check=True, capture_output=True)
    else:
        for name in ("fullchain.pem", "privkey.pem"):
            (folder / name).touch()
    if os.getuid() == 0:
        folder.chmod(0o755)
    _make_mail_folder(folder / "mail")
    server = ImapServer(free_port(), free_port(), folder, drafts, sent)
    text = _CONFIGURATION.format(
        folder=folder, tls="yes" if certificate else "no", password=PASSWORD, owner=owner,
        group=group, runner=owner, port=server.port, tls_port=server.tls_port,
        drafts=drafts, sent=sent,
    )  # fmt: skip
    path = folder / "dovecot.conf"
    path.write_text(text, encoding="utf-8")
    running = subprocess.Popen([_program(), "-F", "-c", str(path)], stderr=subprocess.PIPE)
    try:
        _await(server, running)
        yield server
    finally:
        running.send_signal(signal.SIGTERM)
        running.communicate(timeout=TIMEOUT_S)


def _await(server: ImapServer, running: subprocess.Popen[bytes]) -> None:
    until = time.monotonic() + TIMEOUT_S
    while time.monotonic() < until:
        assert running.poll() is None, running.communicate()[1].decode()
        with suppress(OSError), socket.create_connection(("127.0.0.1", server.port), timeout=1):
            return
        time.sleep(0.05)
    raise AssertionError((server.folder / "log").read_text(encoding="utf-8"))
