"""The commands that read an enquiry and that draft its answer."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator, Mapping
from pathlib import Path
from typing import Any, Final

from ledgerstone.application.enquiries import read_message
from ledgerstone.codec.plain_text import dotted
from ledgerstone.wording import Message, Speech
from ledgerstone.workshop.records import Workshop

LARGEST_MESSAGE_BYTES: Final = 25 * 1024 * 1024
_WIDTH: Final = 34
_AROUND: Final = 20  # characters before and after words that are shown where they stand
# Of these a message has whole lines, which nobody needs to see again.
_OF_WHOLE_LINES: Final = frozenset(
    {
        "signature",
        "footer",
        "quoted",
        "separator",
        "attribution",
        "header of an earlier message",
        "longer than is read",
    }
)


def read_file(path: str, workshop: Workshop) -> dict[str, Any]:
    """Read the message in a file, or from standard input if the path is ``-``.

    Raises
    ------
    NotUnderstood, OSError
    """
    if path == "-":
        return read_message(sys.stdin.buffer.read(LARGEST_MESSAGE_BYTES), workshop)
    with Path(path).open("rb") as file:
        return read_message(file.read(LARGEST_MESSAGE_BYTES), workshop)


def enquiry_text(read: Mapping[str, Any], speech: Speech) -> str:
    """Return what was read as text: each value beside its words, then the open questions."""
    return "".join(f"{line}\n" for line in _lines(read, speech.say))


def _lines(read: Mapping[str, Any], say: Callable[[Message], str]) -> Iterator[str]:
    customer = read["customer"]
    for key in ("name", "reply_to", "phone"):
        if customer[key]:
            yield say(Message("terminal-customer", row=key, text=dotted(customer[key])))
    if customer["reply_to_differs"]:
        yield f"  {say(Message('terminal-reply-differs'))}"
    if not read["is_enquiry"]:
        yield say(Message("terminal-no-slab"))
        return
    if read["attachments"]:
        files = dotted(", ".join(read["attachments"]))
        yield say(Message("terminal-attached", files=files))
    yield ""
    yield say(Message("terminal-list", of="read"))
    for entry in read["read"]:
        words = " … ".join(dotted(" ".join(span["text"].split())) for span in entry["from"])
        value = f"{entry['mm']:g} mm" if "mm" in entry else _value(entry["value"])
        how = say(Message("terminal-how", how=entry["how"], words=words))
        yield f"  {entry['at']:{_WIDTH}} {value:22} {how}"
    for of, mark, key in (
        ("doubtful", "?", "says"),
        ("missing", "!", "asks"),
        ("assumed", "~", "says"),
    ):
        rows = [f"{mark} {entry['at']:{_WIDTH}} {entry[key]}" for entry in read[of]]
        yield from _listed(say(Message("terminal-list", of=of)), rows)
    text = read["text"]
    yield from _listed(
        say(Message("terminal-list", of="unread")),
        [f"* {_in_context(text, size['start'], size['end'])}" for size in read["unread"]],
    )
    yield from _listed(
        say(Message("terminal-list", of="ignored")),
        [
            f"- {_in_context(text, part['start'], part['end']):{_WIDTH + 23}} {part['why']}"
            for part in read["ignored"]
            if part["why"] not in _OF_WHOLE_LINES
        ],
    )
    if read["proposal"] is None:
        yield ""
        yield say(Message("terminal-unpriced"))


def _in_context(text: str, start: int, end: int) -> str:
    """Give words in their place: marked, with a few of those before and after, on one line."""
    before = text[max(0, start - _AROUND) : start]
    after = text[end : end + _AROUND]
    if start > _AROUND:
        before = before.partition(" ")[2]
    if end + _AROUND < len(text):
        after = after.rpartition(" ")[0]
    return " ".join(f"… {before}“{text[start:end]}”{after} …".split())


def _value(value: object) -> str:
    if isinstance(value, Mapping):
        return " ".join(str(part) for part in value.values())
    return dotted(str(value))


def _listed(heading: str, lines: list[str]) -> Iterator[str]:
    if lines:
        yield ""
        yield heading
        yield from (f"  {dotted(line)}" for line in lines)
