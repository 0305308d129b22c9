"""A relay on loopback between a client and a server, which can end the client at a chosen place."""

from __future__ import annotations

import os
import signal
import socket
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass, field
from typing import Literal

from support.ports import free_port

RelayMoment = Literal["before", "half", "after"]


@dataclass(frozen=True, slots=True)
class End:
    """Where the client is ended by SIGKILL.

    Attributes
    ----------
    when
        Before the server gets what the client sent, once it has half of it, or once the server has
        answered and before the client gets that.
    text
        What the client sends there; the first time, or so many times later.
    """

    when: RelayMoment
    text: bytes
    later: int = 0


@dataclass(slots=True)
class Relay:
    """What went through, and where the client is to be ended.

    Attributes
    ----------
    rewritten
        Is given all that the server sends, and gives what the client gets.
    """

    port: int
    server_port: int
    rewritten: Callable[[bytes], bytes] = bytes
    end: End | None = None
    victim: int = 0
    sent: list[bytes] = field(default_factory=list)
    got_bytes: int = 0
    _open: list[socket.socket] = field(default_factory=list)
    _seen: int = 0
    _is_armed: bool = False

    def ends_at(self, end: End | None) -> None:
        """Choose where the next client is ended, from the start of a new conversation."""
        self.end, self._seen, self._is_armed = end, 0, False
        self.sent, self.got_bytes = [], 0

    def cut(self) -> None:
        """Break every conversation that there is."""
        for one in self._open:
            with suppress(OSError):
                one.shutdown(socket.SHUT_RDWR)
        self._open.clear()

    def converse(self, client: socket.socket) -> None:
        """Carry one conversation until one side leaves."""
        with client, socket.create_connection(("127.0.0.1", self.server_port)) as server:
            self._open += [client, server]
            back = threading.Thread(target=self._carry_back, args=(server, client), daemon=True)
            back.start()
            with suppress(OSError):
                while chunk := client.recv(65536):
                    self.sent.append(chunk)
                    if not self._carry(chunk, server):
                        break
            with suppress(OSError):  # also where the client was ended: the server lets it go
                server.shutdown(socket.SHUT_RDWR)

    def _carry(self, chunk: bytes, server: socket.socket) -> bool:
        end = self.end
        if end is None or end.text not in chunk or not self._is_turn(end):
            server.sendall(chunk)
            return True
        if end.when == "after":
            self._is_armed = True
            server.sendall(chunk)
            return True
        if end.when == "half":
            server.sendall(chunk[: len(chunk) // 2])
        os.kill(self.victim, signal.SIGKILL)
        return False

    def _is_turn(self, end: End) -> bool:
        self._seen += 1
        return self._seen == end.later + 1

    def _carry_back(self, server: socket.socket, client: socket.socket) -> None:
        with suppress(OSError):
            while chunk := server.recv(65536):
                if self._is_armed:
                    os.kill(self.victim, signal.SIGKILL)
                    return
                self.got_bytes += len(chunk)
                client.sendall(self.rewritten(chunk))
            client.shutdown(socket.SHUT_RDWR)


@contextmanager
def relay_to(server_port: int) -> Iterator[Relay]:
    """Relay to a server until the end."""
    relay = Relay(free_port(), server_port)
    with socket.create_server(("127.0.0.1", relay.port)) as listener:
        threading.Thread(target=_accept, args=(listener, relay), daemon=True).start()
        yield relay
        with suppress(OSError):
            listener.shutdown(socket.SHUT_RDWR)


def _accept(listener: socket.socket, relay: Relay) -> None:
    with suppress(OSError):
        while True:
            client, _ = listener.accept()
            threading.Thread(target=relay.converse, args=(client,), daemon=True).start()
