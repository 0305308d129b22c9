"""What an enquiry's answer says and asks, in the writer's language."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.draft.messages import MESSAGES
from ledgerstone.message import Listed, Message, Value
from ledgerstone.wording import workshop_speech
from ledgerstone.workshop.records import Workshop

_GERMAN: Final = re.compile(
    r"\b(?:und|der|die|das|ich|wir|eine?n?|mit|für|bitte|nicht|ist|sind|von|auf|grüßen?|gruß"
    r"|guten|hallo|länge|breite)\b",
    re.IGNORECASE,
)
_ENGLISH: Final = re.compile(
    r"\b(?:and|the|a|i|we|with|for|please|not|is|are|from|on|regards|hello|hi|thanks|length"
    r"|width|to|of)\b",
    re.IGNORECASE,
)


def language_of(text: str) -> str:
    """Return ``de`` where a text has more German than English small words, else ``en``."""
    sample = text[:20_000]
    return "de" if len(_GERMAN.findall(sample)) > len(_ENGLISH.findall(sample)) else "en"


class Asking:
    """Says and asks in one language, in the workshop's own words where it has any."""

    def __init__(self, language: str, workshop: Workshop) -> None:
        self.language = language
        self._speech = workshop_speech(language, workshop)

    def say(self, key: str, **values: Value) -> str:
        """Return a sentence with its values."""
        return self._speech.say(MESSAGES[key](**values))

    def spoken(self, message: Message) -> str:
        """Return a message as a sentence."""
        return self._speech.say(message)

    def listed(self, texts: Sequence[str]) -> str:
        """Return several things in one sentence."""
        return self._speech.value(Listed(tuple(texts)))

    def name(self, what: str) -> str:
        """Return a thing's name in this language."""
        return self._speech.say(Message("enquiry-name", key=what, what=what.replace("-", " ")))

    def slab(self, use: str, index: int, count: int) -> str:
        """Name a slab, by its number where there are several."""
        name = self.name(use) if use else self._speech.say(Message("enquiry-piece"))
        if count > 1:
            return self.say("slab_n", use=name, n=index + 1)
        return self.say("slab", use=name)

    def opening(self, what: str) -> str:
        """Name an opening."""
        return self.say("opening", what=self.name(what))
