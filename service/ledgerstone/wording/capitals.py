"""A capital at the beginning of a sentence."""


def capital(sentence: str) -> str:
    """Begin a sentence with a capital, past an opening quotation mark."""
    at = 1 if sentence[:1] in ("“", "„") else 0
    return sentence[:at] + sentence[at : at + 1].upper() + sentence[at + 1 :]
