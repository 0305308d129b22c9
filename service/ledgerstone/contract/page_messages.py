"""The files of messages of the page and of the desk, one a language, made from the catalogues."""

from __future__ import annotations

import json

from ledgerstone.contract.page_document import message_keys_in
from ledgerstone.wording.page import CUSTOMERS_TEXTS, page_messages

__all__ = ["messages_script"]

_HEAD = """\
/** Made from catalogues/{folder}/{file}.ftl: python -m ledgerstone.contract {made}.{file} */

/** @type {{Messages}} */
export const messages = {{
"""


def messages_script(language: str, folder: str = CUSTOMERS_TEXTS, document: str = "") -> str:
    """Write the module of one language, as it lies in ``web/``, or in ``web/desk/``.

    Parameters
    ----------
    document
        The page's own. What it says itself is read from it, and stands in no file again.
    """
    there = message_keys_in(document)
    made = "messages" if folder == CUSTOMERS_TEXTS else f"{folder}-messages"
    lines = [
        f"  {json.dumps(key)}: {json.dumps(text, ensure_ascii=False)},\n"
        for key, text in page_messages(language, folder).items()
        if key not in there
    ]
    return _HEAD.format(file=language, folder=folder, made=made) + "".join(lines) + "};\n"
