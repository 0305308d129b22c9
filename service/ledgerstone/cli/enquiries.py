"""The maker's commands for a message: what it asks, and the draft that answers it."""

from __future__ import annotations

import sys
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any, Final

from ledgerstone.application.enquiries import read_message
from ledgerstone.codec.plain_text import dotted
from ledgerstone.workshop.records import Workshop

LARGEST_FILE_BYTES: Final = 25 * 1024 * 1024
_WIDTH: Final = 34


def read_file(path: str, workshop: Workshop) -> dict[str, Any]:
    """Read the message in a file, or at the standard input where the path is ``-``.

    Raises
    ------
    NotUnderstood, OSError
    """
    if path == "-":
        return read_message(sys.stdin.buffer.read(LARGEST_FILE_BYTES), workshop)
    with Path(path).open("rb") as file:
        return read_message(file.read(LARGEST_FILE_BYTES), workshop)


def enquiry_text(read: Mapping[str, Any]) -> str:
    """Write what was read for a person: each value beside its words, then what is to be asked."""
    return "".join(f"{line}\n" for line in _lines(read))


def _lines(read: Mapping[str, Any]) -> Iterator[str]:
    customer = read["customer"]
    for name, key in (("From", "name"), ("Answer to", "reply_to"), ("Telephone", "phone")):
        if customer[key]:
            yield f"{name}: {dotted(customer[key])}"
    if customer["reply_to_differs"]:
        yield "  The answer goes to another address than the one it came from."
    if not read["is_enquiry"]:
        yield "This message asks for no slab."
        return
    if read["attachments"]:
        yield f"Attached, and not read: {dotted(', '.join(read['attachments']))}"
    yield ""
    yield "Read:"
    for entry in read["read"]:
        words = " … ".join(dotted(" ".join(span["text"].split())) for span in entry["from"])
        value = f"{entry['mm']:g} mm" if "mm" in entry else _value(entry["value"])
        yield f"  {entry['at']:{_WIDTH}} {value:22} {entry['how']}: “{words}”"
    yield from _listed(
        "Doubtful:", [f"? {one['at']:{_WIDTH}} {one['says']}" for one in read["doubtful"]]
    )
    yield from _listed(
        "Missing:", [f"! {one['at']:{_WIDTH}} {one['asks']}" for one in read["missing"]]
    )
    yield from _listed(
        "Assumed:", [f"~ {one['at']:{_WIDTH}} {one['says']}" for one in read["assumed"]]
    )
    if read["proposal"] is None:
        yield ""
        yield "Nothing can be priced yet: a size of the outline is missing."


def _value(value: object) -> str:
    if isinstance(value, Mapping):
        return " ".join(str(one) for one in value.values())
    return dotted(str(value))


def _listed(heading: str, lines: list[str]) -> Iterator[str]:
    if lines:
        yield ""
        yield heading
        yield from (f"  {dotted(line)}" for line in lines)
