"""What a reader in one country would take for another country's words, formats or units."""

from typing import Final

BRITISH: Final = (
    r"\b(?:kerbs?|worktops?|hobs?|taps?|basins?|moulds?|demoulds?|colour\w*|grey\w*|\w*metres?"
    r"|litres?|centres?|postcodes?|VAT|aluminium|towards|cupboards?|trolley|plasterboard|fibres?"
    r"|enquir\w+|upstands?|drainers?|registered (?:gas|electrician|installer))\b|£"
)
_METRIC: Final = r"\d ?(?:mm|cm|m|kg|l|N/mm²|MPa|°C)\b|°C"
_ENGLISH: Final = r"\b(?:the|and|with|your|slab|from|before|until|which|each)\b|£|\bVAT\b"
_MONTH_AFTER: Final = r"\b\d{1,2} (?:January|February|March|April|May|June|July|August|September"
STRANGE: Final = {
    "demonstration": r"[$€]|\b(?:curb|countertop|cooktop|faucet|mold|color|gray|ZIP)\b|°F|\blb\b",
    "germany": rf"{_ENGLISH}|\b\d+\.\d{{1,2}} (?:mm|cm|m|kg|%|€)|[$]|°F|\blb\b|\d%",
    "united_states": rf"{BRITISH}|{_METRIC}|{_MONTH_AFTER}|October|November|December)\b|\d €",
}
