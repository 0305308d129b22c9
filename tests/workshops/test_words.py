"""Every sentence there is, as it is said in the United States: no British word is left in any."""

import re
from collections.abc import Iterator

from ledgerstone.wording import speech_in
from ledgerstone.wording.page import PageText, page_differences, page_messages
from ledgerstone.workshop.countries import usual_in
from support.catalogue_reader import messages, samples
from workshops.strange_words import BRITISH

US = usual_in("US")


def texts(message: PageText) -> Iterator[str]:
    """Each text that a message of the page's may come to."""
    yield from [message] if isinstance(message, str) else message.values()


def test_no_sentence_of_the_service_is_british_in_the_united_states() -> None:
    """Each message, with values of every kind it chooses by."""
    american = speech_in("en", "", US)
    british = [
        (name, said)
        for name in sorted(messages("en").keys() & messages("de").keys())
        for message in samples(name)
        if re.search(BRITISH, said := american.say(message))
    ]
    assert british == []


def test_no_sentence_of_the_page_is_british_in_the_united_states() -> None:
    """What the page's file says, with what the service says in its place."""
    said = {**page_messages("en"), **page_differences("en", US)}
    british = [
        (key, text)
        for key, message in said.items()
        for text in texts(message)
        if re.search(BRITISH, re.sub(r"\{\w+\}", "", text))
    ]
    assert british == []
