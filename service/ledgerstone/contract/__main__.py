"""``python -m ledgerstone.contract document`` and ``… types``: what is made from the schemas.

The first is ``service/ledgerstone/api/openapi.yaml``, the second ``tests/web/contract.d.ts``.
"""

import argparse
import sys
from collections.abc import Callable

from ledgerstone.contract.document import document, document_text
from ledgerstone.contract.page_types import page_types

MADE: dict[str, Callable[[], str]] = {
    "document": document_text,
    "types": lambda: page_types(document()["components"]["schemas"]),
}

if __name__ == "__main__":
    parser = argparse.ArgumentParser(prog="python -m ledgerstone.contract")
    parser.add_argument("what", choices=MADE, help="what is written to standard output")
    sys.stdout.write(MADE[parser.parse_args().what]())
