"""A text becomes tokens, in one pass: words, numbers, marks, line ends, and what is no size."""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from operator import itemgetter
from typing import Final, Literal

from ledgerstone.enquiry.words.lexicon import plain

TokenKind = Literal["word", "number", "vulgar", "mark", "line", "other"]
TextSpan = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Token:
    """A piece of the text: ``word`` is plain, ``other`` is a number that is no size."""

    kind: TokenKind
    start: int
    end: int
    word: str


# Thousands set apart by a blank or an apostrophe, as the page prints them. A plain blank may part
# a number of pieces from a size: it sets thousands apart only where mm ends the size or its group,
# and after a 1, for nobody counts one.
_GROUPED: Final = (
    r"(?<![\d.,])\d{1,3}(?:[\u00a0\u2009\u202f'’]\d{3})+(?![\d'’])"
    r"|(?<![\d.,] )(?<![\d.,])[1-9] \d{3}(?=(?:\s?[x×]\s?\d{2,4}){0,2}\s?mm\b)"
    r"|(?<![\d.,] )(?<![\d.,])1 \d{3}(?=\s?[x×]\s?\d)"
    r"|(?<![\d.,] )(?<![\d.,])(?:(?<!\w )|(?<=at )|(?<=is )|(?<=cent(?:er|re) )"
    r"|(?<=middle )|(?<=axis )|(?<=Achse )|(?<=Mitte ))[1-9] \d{3}"
    r"(?= (?:mm )?(?:from|off|von|vom) )"  # "tap 1 150 from the left" is of tap 1
    r"|(?:(?<=length )|(?<=length: )|(?<=Länge )|(?<=Länge: ))[1-9] \d{3}(?![\d,.]\d)"
)
_TOKEN: Final = re.compile(
    r"(?P<line>\n[^\S\n]*(?:>[> \t]*)?)|(?P<number>"
    + _GROUPED
    + r"|(?<![\d.,])\d{1,2}['’´]\d{1,2}(?=[^\S\n]?(?:m|met(?:er|re)s?)\b)"  # 1'30 m, as in Spain
    + r"|\d+(?:[.,]\d+)*|(?<![\w.,])\.\d{1,3}(?![\d.]))|(?P<vulgar>[½¼¾⅛⅜⅝⅞⅓⅔])"
    r"|(?P<unit>(?:mm|cm|m|in|ft)(?=[xX×]\s?\d))"
    r"|(?P<word>off[ -]white\b|[^\W\d_]+(?:['’](?!s\b)[^\W\d_]+)*|['’]s\b)"
    r"|(?P<hyphen>(?<=[^\W\d_])[-_](?=[^\W\d_]))"
    r"|(?P<leader>(?:\.{3,40}|_{3,40}|…{1,9})(?=[^\S\n]{0,3}\d)|(?<=[^\W\d_] )=(?= \d)"
    r"|\.{5,40}(?=[^\S\n]{1,3}[^\W\d_]))"
    r"|(?P<mark>\S)"
)
_MONTHS: Final = (
    r"(?:jan(?:uary|uar)?|feb(?:ruary|ruar)?|mar(?:ch)?|märz|apr(?:il)?|may|mai|june?|juni|july?"
    r"|juli|aug(?:ust)?|sept?(?:ember)?|o[ck]t(?:ober)?|nov(?:ember)?|de[cz](?:ember)?)"
)
_COUNTED: Final = (
    r"kgs?|kilos?|kilogramm?s?|lbs?|pounds?|tonnes?|g|grams?|quid|euros?|eur|gbp|usd|dollars?"
    r"|weeks?"
    r"|days?|months?|years?|yrs?|hours?|hrs?|mins?|minutes?|people|persons?|stairs?|flights?"
    r"|steps?(?!(?: for [^\d\n.;]{0,30})?[,: ]+\d{3})"
    r"|kw|kva|amps?|volts?|litres?|liters?|miles?|km|°c?|degrees?|deg|grad|wochen?|tagen?|tage"
    r"|monate?n?|jahren?|jahre|personen|leute|stufen|uhr|burners?|bolts?|screws?|times"
    r"|p\.m|a\.m"
    r"|pm|am|o'clock|%|£|€|\$|gsm|grit|watts?|bar|psi|sq\.? ?(?:m|ft|yd|metres?|meters?|feet"
    r"|foot|inches)|m²|m2|square (?:met|f|yard)\w*|qm"
    r"|below|year-old|st|nd|rd|th"
)
_NOT_SIZES: Final = tuple(
    re.compile(pattern, re.IGNORECASE)
    for pattern in (
        r"[\w.+%-]{1,64}@[\w-]{1,63}(?:\.[\w-]{1,63}){1,8}",
        r"(?:https?://|www\.)[^\s<>]{1,2000}",
        r"(?:£|€|\$|(?<!\w)(?:gbp|eur|usd)\s?)\s?\d[\d.,]*k?\b(?:\s?-\s?(?:£|€|\$)?\d[\d.,]*)?",
        r"(?<![\w.])(?:\+\d{1,3}[ -]?)?\(?0\d{2,5}\)?[ /-]?\d{3,8}(?:[ -]?\d{2,6}){0,3}(?!\w)",
        r"(?<![\w.])\+\d{1,3}(?:[ -]?\(?\d{2,6}\)?){2,5}",
        r"(?<![\w.])\(?\d{3}\)?[ .-]\d{3}[.-]\d{4}(?!\w)",
        r"\b[A-Z]{1,2}\d{1,2}[A-Z]? ?\d[A-Z]{2}\b|\b[A-Z]\d[A-Z] ?\d[A-Z]\d\b",
        r"(?<![\w.,-])\d{3}-\d{4}(?![\w.,-])",
        r"(?<![\d.,])0\d{4}\b(?!\s?(?:mm|cm|x|×))",
        r"(?<!\d)\d{1,2}(?:st|nd|rd|th|\.)?\s(?:of\s)?"
        + _MONTHS
        + r"\b\.?(?:,?\s(?:19|20)\d\d\b)?",
        r"\b"
        + _MONTHS
        + r"\.?\s\d{1,2}(?:st|nd|rd|th)?\b(?!\s?(?:mm|cm|in|x|\"))(?:,?\s(?:19|20)\d\d)?",
        r"\b" + _MONTHS + r"\s(?:19|20)\d\d\b",
        r"(?<![\d.,/])\d{1,2}[./-]\d{1,2}[./-](?:19|20)?\d\d(?![\d/])",
        (
            r"(?<![x×] )(?<![\d.,/x×])(?:[1-9]|[12]\d|3[01])/(?:[13579]|1[0-2])"
            r"(?!\d|[/.,]\d|\s?(?:mm|cm|in|x|×|thick|deep|long|wide)\b|\s?[\"”″])"
        ),
        (  # a day and an even month: no fraction of an inch is one or more
            r"(?<![x×] )(?<![\d.,/x×-])(?<!\d )(?:(?:[3-9]|[12]\d|3[01])/2|(?:[5-9]|[12]\d|3[01])/4"
            r"|(?:[7-9]|[12]\d|3[01])/6|(?:9|[12]\d|3[01])/8)"
            r"(?!\d|[/.,]\d|\s?(?:mm|cm|in|x|×|thick|deep|long|wide)\b|\s?[\"”″])"
        ),
        (
            r"(?:(?<=\b\d{5} )|(?<![\d\"”″'’] ))(?<!\bft )(?<!\b(?:in|mm|cm) )"
            r"\b(?:by|before|until)\s(?:the\s)?"
            r"(?:0?[1-9]|1[0-2])/(?:0?[1-9]|[12]\d|3[01])"
            r"(?!\d|[/.,]\d|\s?(?:mm|cm|in|x|×|thick|deep|long|wide)\b|\s?[\"”″])"
        ),
        r"(?<!\d)(?:19|20)\d\d-\d\d-\d\d(?:\s\d\d:\d\d)?",
        r"(?<![\d.,])\d{1,2}:\d\d(?::\d\d)?(?!\d)",
        r"(?<![\d.,])\d{1,3}(?:\.\d{1,3}){3}(?![\d.])",
        r"(?<![\d.,/x×])\d+(?:[.,]\d+)*[^\S\n]?-?(?:" + _COUNTED + r")(?![\w])",
        (
            r"\b(?:in|since|from|year|seit|von|of)\s(?:19|20)\d\d\b"
            r"(?!\s?(?:x|×|mm|by\b|the\b|left|right|long|in\b|overall|along|from|to\b))"
        ),
        r"\bRAL\s?\d{4}\b|(?-i:\b\d{1,3}A)\b(?=\s(?:cable|supply|feed|fuse|breaker|circuit))",
        (
            r"\b(?:at|to|live|is|am|unter|bei)\s(?:number|hausnummer)\s\d{1,4}[a-h]?\b"
            r"(?!\s?(?:mm|cm|m|x)\b)"
        ),
        (
            r"(?-i:(?<![\d.,x×] )(?<![\d.,x×])\b\d{1,4}[A-Ha-h]?,? (?:[A-Z][\w'’-]{1,20} ){1,3}"
            r"(?:Lane|Street|St|Road|Rd|Avenue|Ave|Close|Drive|Gardens|Court|Terrace|Crescent|Hill"
            r"|Place|Row|Mews|Way|Walk|Grove)\b)"
        ),
        r"\b(?:kw|kalenderwoche|week|wk)\.?\s?\d{1,2}\b",
        r"(?<![\d.,])\d{1,2}\.\s?(?:og|ug|stock|etage|obergeschoss|stockwerk)\b",
        (
            r"\b(?:i|he|she)(?:['’](?:m|s|ll)| am| is| shall be| will be| turns?| turned)"
            r"\s(?:be\s)?"
            r"\d{1,3}\b(?!\s?(?:mm|cm|m|x|by|from)\b)"
        ),
        (  # an age in words: "my wife turns forty"
            r"\b(?:turn(?:s|ed|ing)?|i['’]?m|i am|(?:s?he|they) (?:is|are|will be)|werden?|wird)"
            r"\s(?:be\s)?(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|\w+zig|dreißig)\b"
            r"(?!\s?(?:mm|cm|mil|x|by|from|long|deep|wide|thick|inch)\w*)"
        ),
        (  # a price by length: "£290 a metre", "280 pounds per foot run"
            r"(?:[£€$]\s?\d{1,5}(?:[.,]\d{1,3})?"
            r"|(?<![\d.,])\d{1,5}(?:[.,]\d{1,3})?\s?(?:pounds|quid|euros?|dollars|€|£))\s?"
            r"(?:an?|per|the|each|der|je|pro|/)\s?(?:[a-z]{2,8}\s)?"
            r"(?:m|met(?:re|er)|foot|ft|yard|inch|laufmeter)\b"
        ),
        (
            r"\b(?:drawing|drg|dwg|sketch|plan|plot|flat|apartment|apt|suite|house|page|sheet"
            r"|zeichnung|skizze|haus|wohnung|blatt|seite)\.?\s(?:no\.?|nr\.?|number)?\s?\d{1,5}"
            r"(?:-?[A-Z])?\b(?!\s?(?:m|mm|cm|in|x|×|by|wide|deep|long|thick)\b|[ -]\d{1,2}/\d"
            r"|\s?[\"”½¼¾])"
        ),
        (
            r"\b(?:invoice|reference|ref|order|rechnung|auftrag|kundennummer|account|vat|company"
            r"|ticket|enquiry|quote|job|po)\.?\s?(?:no\.?|number|nr\.?|#|:)?\s?:?\s?#?[A-Z-]{0,4}"
            r"\d{3,}\b(?!\s?(?:x|×|mm|by\b))"
        ),
        r"#\s?\d+\b",
        r"(?<![\d.,/x×])\d{1,4}/0\d{1,4}\b",
        r"(?<![\w.,])\d+(?:[.,]\d+)?e[+-]?\d+\b",
        r"(?<=[^\W\d_][ :])[-−]\d+(?:[.,]\d+)?\b",
        r"(?<![\d.,])\d{2,4}['’]?s\b",
        r"(?-i:\b(?![LWDTHB]\d{2})[A-Z]{1,2}\d{1,3})\b(?!\s?(?:mm|cm|in(?! [\"“„])|m|\"|x|×)\b)",
        r"(?-i:\b[A-Z]\d[\dW]\s?[A-Z0-9]{4})\b",
        (
            r"(?m:^)[ \t>*•-]{0,6}(?!(?:thick|thk|dick|stark|stärk|deep|depth|tief|leng"
            r"|läng|long|wid|breit|dia|durchm)\w*\s)[^\W\d_]{2,16}(?P<number>\s\d{1,2})"
            r"(?=\s?(?:\([^)\n]{1,40}\)\s?)?(?::|\s[-–]\s|\.\s))"
        ),
    )
)


def not_sizes(text: str) -> list[TextSpan]:
    """Return spans that hold numbers which are no lengths: money, telephones, dates, weights."""
    spans = sorted(
        found.span("number" if "number" in pattern.groupindex else 0)
        for pattern in _NOT_SIZES
        for found in pattern.finditer(text)
    )
    merged: list[TextSpan] = []
    for start, end in spans:
        if merged and start < merged[-1][1]:
            merged[-1] = (merged[-1][0], max(end, merged[-1][1]))
        else:
            merged.append((start, end))
    return merged


def tokens_of(text: str, start: int, end: int, masked: Sequence[TextSpan]) -> Iterator[Token]:
    """Yield the tokens of a stretch of text; a masked span is one token."""
    at = start
    for span in masked[bisect_right(masked, start, key=itemgetter(1)) :]:
        if span[0] >= end:
            break
        low, high = max(span[0], at), min(span[1], end)
        yield from _plain_tokens(text, at, low)
        yield Token("other", low, high, plain(text[low:high]))
        at = high
    yield from _plain_tokens(text, at, end)


def _plain_tokens(text: str, start: int, end: int) -> Iterator[Token]:
    for found in _TOKEN.finditer(text, start, end):
        if found.lastgroup == "hyphen":  # "cut-out" is two words
            continue
        if found.lastgroup == "leader":  # "Length ...... 2650"
            yield Token("mark", found.start(), found.end(), ":")
            continue
        kind: TokenKind = "word" if found.lastgroup == "unit" else found.lastgroup  # type: ignore[assignment]
        yield Token(kind, found.start(), found.end(), plain(found[0]))
