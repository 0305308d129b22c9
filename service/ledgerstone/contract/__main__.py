"""``python -m ledgerstone.contract > service/ledgerstone/api/openapi.yaml``."""

import sys

from ledgerstone.contract.document import document_text

if __name__ == "__main__":
    sys.stdout.write(document_text())
