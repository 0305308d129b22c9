"""``python -m ledgerstone.contract document``, ``… types``, ``… messages.en``: what is made.

From the schemas: ``service/ledgerstone/api/openapi.yaml`` and ``tests/web/contract.d.ts``. From the
catalogues: ``… desk-messages.en`` for ``web/desk/messages.en.js``,
``… workshop-messages.en`` for ``web/desk/workshop/messages.en.js``, and, from the page's document
too, ``… messages.en < web/index.html`` for ``web/messages.en.js`` and ``… index.de`` likewise
for ``web/index.de.html``.
"""

import argparse
import sys
from collections.abc import Callable
from functools import partial

from ledgerstone.contract.document import document, document_text
from ledgerstone.contract.page_document import document_in
from ledgerstone.contract.page_messages import messages_script
from ledgerstone.contract.page_types import page_types
from ledgerstone.wording import LANGUAGES
from ledgerstone.wording.page import DESK_TEXTS, WORKSHOP_TEXTS


def _page_in(language: str) -> str:
    return document_in(language, sys.stdin.read())


def _messages_of(language: str) -> str:
    return messages_script(language, document=sys.stdin.read())


MADE: dict[str, Callable[[], str]] = {
    "document": document_text,
    "types": lambda: page_types(document()["components"]["schemas"]),
    **{f"index.{language}": partial(_page_in, language) for language in LANGUAGES[1:]},
    **{f"messages.{language}": partial(_messages_of, language) for language in LANGUAGES},
    **{
        f"{folder}-messages.{language}": partial(messages_script, language, folder)
        for folder in (DESK_TEXTS, WORKSHOP_TEXTS)
        for language in LANGUAGES
    },
}

if __name__ == "__main__":
    parser = argparse.ArgumentParser(prog="python -m ledgerstone.contract")
    parser.add_argument("what", choices=MADE, help="what is written to standard output")
    sys.stdout.write(MADE[parser.parse_args().what]())
