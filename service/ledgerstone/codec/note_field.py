"""A few lines of text."""

from __future__ import annotations

import unicodedata
from typing import Any, Final

from marshmallow import fields

from ledgerstone.codec.fields import field_name, refused
from ledgerstone.codec.plain_text import text_fault
from ledgerstone.json_types import JSON
from ledgerstone.message import Message

LONGEST_NOTE: Final = 1000


class NoteField(fields.Field[str]):
    """A few lines of text without hidden characters."""

    longest = LONGEST_NOTE

    def __init__(self, *, about: str) -> None:
        super().__init__(metadata={"description": about})

    def _deserialize(self, value: JSON, *_: Any, **__: Any) -> str:
        note = field_name("note")
        if not isinstance(value, str):
            raise refused(Message("text-not-text", field=note))
        if len(value) > LONGEST_NOTE:
            raise refused(Message("text-too-long", field=note, longest=LONGEST_NOTE))
        lines = unicodedata.normalize("NFC", value).replace("\r\n", "\n").split("\n")
        for line in lines:
            if fault := text_fault(line.replace("\t", " "), note):
                raise refused(fault)
        return "\n".join(lines).strip()
