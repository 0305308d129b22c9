"""What a reader in one country would take for another country's words, formats or units."""

from typing import Final

BRITISH: Final = (
    r"\b(?:[Kk]erbs?|[Ww]orktops?|[Hh]obs?|[Tt]aps?|[Bb]asins?|\w*[Mm]oulds?|[Cc]olour\w*"
    r"|[Gg]rey\w*|\w*[Mm]etres?|[Ll]itres?|[Cc]entres?|[Pp]ostcodes?|VAT|[Aa]luminium|[Tt]owards"
    r"|[Tt]ail lifts?|(?:[Oo]ur|own) vans?|[Mm]asses"
    r"|[Cc]upboards?|[Tt]rolley|[Pp]lasterboard|[Ff]ibres?|[Ee]nquir\w+|[Uu]pstands?|[Dd]rainers?"
    r"|[Ll]orr(?:y|ies)|[Tt]imber|[Pp]olythene|[Ss]kirting|RCD|ear defenders|[Tt]elephone number"
    r"|cheque|[Qq]uotations?(?! mark)|[Aa]rris(?:es)?|[Dd]ownstands?|pairs? of hands"
    r"|[Cc]ollect(?:s|ed|ion)?|[Ff]itt(?:ed|ing)|[Aa]nticlockwise|[Tt]ick|[Aa]ll round"
    r"|gets round|way round|round (?:it|each)|[Gg]as [Ss]afe|NICEIC|pence"
    r"|registered (?:gas|electrician|installer))\b|£"
)
_MONTHS: Final = (
    "(?:January|February|March|April|May|June|July|August|September|October|November|December)"
)
_SLASHED: Final = r"\b(?:1[3-9]|2\d|3[01])/\d\d?/\d{2,4}"  # the day first
_METRIC: Final = r"\d ?(?:mm|cm|m|kg|g|ml|l|m²|N/mm²|N/m²|MPa|°C)\b|\d N\b|°C|, (?:mm|kg)\b"
_DAY_FIRST: Final = rf"\b\d{{1,2}} {_MONTHS}\b(?! \d\d?\b)|{_SLASHED}"
_ENGLISH: Final = r"\b(?:the|and|with|your|slab|from|before|until|which|each)\b|£|\bVAT\b"
_AMERICAN_UNITS: Final = (
    r"°F|\b(?:lb|oz|psi|gal|qt|ft²)\b|\d ?(?:in|ft)\b|\b(?:AM|PM)\b|\d:\d\d[ap]\b"
)
STRANGE: Final = {
    "demonstration": (
        r"[$€]|\b(?:[Cc]urbs?|[Cc]ountertops?|[Cc]ooktops?|[Ff]aucets?|[Mm]olds?|[Cc]olors?|[Gg]ray"
        rf"|ZIP|GFCI|drywall|MPa)\b|{_AMERICAN_UNITS}|\b{_MONTHS} \d{{1,2}},"
    ),
    "germany": (
        rf"{_ENGLISH}|\b\d+\.\d{{1,2}} (?:mm|cm|m|kg|%|€)|[$]|{_AMERICAN_UNITS}|\d%"
        r"|\b(?:January|February|March|May|June|July|October|December)\b|\bMPa\b"
    ),
    "united_states": rf"{BRITISH}|{_METRIC}|{_DAY_FIRST}|\d €",
}
