"""The page's files of messages, one a language, made from the catalogues of the service."""

from __future__ import annotations

import json

from ledgerstone.wording.page import page_messages

__all__ = ["messages_script"]

_HEAD = """\
/** Made from catalogues/page/{language}.ftl: python -m ledgerstone.contract messages.{language} */

/** @type {{Messages}} */
export const messages = {{
"""


def messages_script(language: str) -> str:
    """Write the module of one language, as it lies in ``web/``."""
    lines = [
        f"  {json.dumps(key)}: {json.dumps(text, ensure_ascii=False)},\n"
        for key, text in page_messages(language).items()
    ]
    return _HEAD.format(language=language) + "".join(lines) + "};\n"
