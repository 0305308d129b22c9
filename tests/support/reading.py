"""What is wrong with a sentence, by the house style."""

import re
from collections.abc import Iterable
from typing import Final

from ledgerstone.checks import Finding
from support.in_english import in_english

LONGEST: Final = 240

QUOTED: Final = re.compile(r"“[^”]*”")  # the customer's and the workshop's own names

# House style, "Sentences that people read"; then what is only a word inside the house.
NOT_SAID: Final = re.compile(
    r"\b(?:please|sorry|invalid|illegal|forbidden|oops|error|required|prohibited|must not"
    r"|none|nan|inf|null|true|false|verdict|utilisation|polygon|opening_|json|pointer|eurocode)\b",
    re.IGNORECASE,
)

# A tenth of a millimetre has four places in metres.
INTERNAL: Final = re.compile(r"[a-z]_[a-z]|[{}\[\]<>=]|\bNone\b|\.\d{4}(?! m\b)\d*|\d\.0\b")

MISCOUNTED: Final = re.compile(
    r"\b(?:1|one) (?:people|pieces|batches|days|steps|slabs)\b"
    r"|\b(?:[2-9]|\d\d+|two|three|four|five|six) (?:person|piece|batch|day|slab)\b"
)


def faults(text: str) -> list[str]:
    """List what is wrong with a sentence; the customer's own names are not ours to judge."""
    ours = QUOTED.sub("“”", text)
    found: list[str | None] = [
        f"{len(text)} long" if len(text) > LONGEST else None,
        None if text.endswith(".") else "no full stop",
        "double space" if "  " in text else None,
        None if ours.lstrip("“")[:1].isupper() or ours[0] in "“0123456789" else "no capital",
        *(f"says {match.group()}" for match in NOT_SAID.finditer(ours)),
        *(f"shows {match.group()}" for match in INTERNAL.finditer(ours)),
        *(f"counts {match.group()}" for match in MISCOUNTED.finditer(ours)),
    ]
    return [fault for fault in found if fault]


def read_aloud(findings: Iterable[Finding]) -> None:
    """Hold each sentence to the house style, and its finding to having a source and a place."""
    wrong = {(f.check, in_english(f)): faults(in_english(f)) for f in findings}
    assert {said: why for said, why in wrong.items() if why} == {}
    assert all(f.source and not f.source.startswith("/") for f in findings)
