"""The shades that a message asks for, in the writer's words."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from typing import Final

from ledgerstone.enquiry.scene.said import SaidWord
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.wishes.look import FINISHES
from ledgerstone.enquiry.words.colours import COLOURS, TONES
from ledgerstone.enquiry.words.lexicon import AXES, LABELS, NOUNS, PLACES, ROLES, SIDES, plain
from ledgerstone.enquiry.words.word_sets import word_set

MAX_SHADES: Final = 40
# A shade of no table: after the size of a slab, "… x 30 in oatmeal", and then a mark or no more.
_IN_SHADE: Final = re.compile(
    r"(?:\d|\b(?:mm|cm|m|inch|inches|thick|thk|deep|wide|long|each|dick|stark|one|all|both|everything|alles))"
    r"(?: each)?,? in (?:a |an |our |your )?(?P<value>[a-zäöüß]{3,14}(?:[ -][a-zäöüß]{3,12})?)"
    r"(?=\s*(?:[.,:;!?)\n]|\Z|and\b|please\b|too\b|or\b|und\b))",
    re.IGNORECASE,
)
# A shade of no table that begins a sentence, a finish or a way of delivery after it.
_BEFORE_FINISH: Final = re.compile(
    rf"(?:^|[.\n][ \t]*)(?P<value>[a-zäöüß]{{3,14}}),[ ]"
    rf"(?:{FINISHES}|fitted|delivered|collect\w*|to be (?:fitted|delivered|collected))\b",
    re.IGNORECASE,
)
_NO_SHADE: Final = word_set(
    "total all both the pieces piece parts part halves half sections section from kitchen concrete"
    " beton place line advance time size der die das dem den stock full case general use wood oak"
    " timber steel question order length width depth situ position plan two three one single and"
    " it that this my our your house each every any here there work progress mind touch position"
    " spring summer autumn winter january february march april may june july august september"
    " october november december shape"
)
_SHADE: Final = re.compile(
    rf"\b(?=[^\W\d_]{{3}})(?:(?:{TONES})[ -]){{0,3}}(?:{COLOURS})\b(?:[ -](?:{COLOURS})\b)?"
    rf"(?: colou?r\b)?(?:,? (?:eher|rather|quite|but|though) \w+)?"
    r"|\b(?:concrete|cement|natural) colou?r\b",
    re.IGNORECASE,
)
_SHADE_LABEL: Final = re.compile(
    r"(?:^|[\s(.])(?:colou?r|shade|farbe|farbton|tone)(?:/finish|wise)?[ \t]{0,4}(?:[:=|\t]"
    r"|is\b|must be\b|should be\b|would be\b|wanted\b)[ \t]*"
    r"(?P<value>[^\n.;|]{2,80})",
    re.IGNORECASE,
)
_QUOTED: Final = re.compile(
    r"\b(?:colou?r|shade|farbe|farbton)\b[^.\n]{0,60}[\"“„](?P<value>[^\"”“\n]{2,30})[\"”“]",
    re.IGNORECASE,
)
_SHADE_LOOSE: Final = re.compile(
    r"(?:^|[.\n][ \t]*|[,(] ?)(?:colou?r|shade|farbe)[ ,]+(?P<value>(?!matches|is\b|sample"
    r"|of the sample|chart)[^\n.;:|]{2,70})",
    re.IGNORECASE,
)
_TILE: Final = re.compile(
    r"(?:something like|similar to|like)\s(?:a|an|the)\s[^\n.,;]{3,40}", re.IGNORECASE
)
# What is also a thing: a shade only where it is led to and stands alone.
_AMBIGUOUS: Final = re.compile(
    r"(?=[^\W\d_]{3})(?:(?:concrete|natural|plain|any|ordinary|usual|standard|very|same) )?"
    r"(?:sand|stone|clay|ash|lead|slate|smoke|honey|linen|granite|limestone|sandstone|oil|rust"
    r"|chalk|pearl|silver|flint|almond|bronze|butter|camel|chestnut|chocolate|cinnamon|coffee"
    r"|copper|coral|denim|eggshell|fern|forest|ginger|gold|heather|ink|jade|lavender|lemon|lime"
    r"|mahogany|marble|midnight|mint|moss|mustard|nickel|nutmeg|olive|orange|oyster|parchment"
    r"|peach|pebble|pine|plum|porcelain|portland|rose|sage|salmon|seal|shell|tan|tar|thunder"
    r"|toffee|truffle|vanilla|walnut|wheat|wine|petrol|ocker|rost|storm)",
    re.IGNORECASE,
)
_ONLY_DARK: Final = re.compile(
    r"(?:^|[.\n,][ \t]*)(?P<value>(?:probably |quite |something |fairly )?(?:dark|light|pale"
    r"|dunkel|hell)(?: colou?r| shade| one)?)(?=[,.\n]|$)"
    r"|\b(?:(?:something|anything|etwas) (?:very |quite |rather |fairly |really )?(?:dark|light"
    r"|pale|dunkles|helles))\b",
    re.IGNORECASE,
)


def shades_of(text: str, spans: Sequence[TextSpan], palette: Sequence[str]) -> list[SaidWord]:
    """Return the shades in the writer's words; the first is of the newest part and the surest."""
    names = [re.compile(rf"\b{re.escape(name)}\b", re.IGNORECASE) for name in palette]
    patterns = (
        *(_SHADE_LABEL, _QUOTED, *names, _SHADE, _SHADE_LOOSE, _IN_SHADE),
        *(_BEFORE_FINISH, _ONLY_DARK),
    )
    for start, end in spans:
        said = [word for pattern in patterns for word in _found(text, start, end, pattern)]
        if said:
            return _apart(said)
    sampled = _sampled(text, spans)
    return [sampled] if sampled is not None else []


def _found(text: str, start: int, end: int, pattern: re.Pattern[str]) -> Iterator[SaidWord]:
    for found in pattern.finditer(text, start, end):
        named = found["value"] if "value" in found.re.groupindex else None
        value = _trimmed(named or found[0])
        is_named = found.re not in (_IN_SHADE, _BEFORE_FINISH) or _may_be_shade(value)
        if value and is_named and not _is_of_another(text, start, found):
            inside = value in text[found.start() : found.end()]
            at = text.index(value, found.start()) if inside else found.start()
            yield SaidWord(" ".join(value.split()), ((at, at + len(value)),))


def _may_be_shade(value: str) -> bool:
    """Whether words after "in" may be a shade: none of them is a size's, a side's, a room's."""
    words = [plain(word) for word in re.split(r"[ -]", value)]
    tables = (ROLES, AXES, SIDES, LABELS, NOUNS, PLACES)
    return not any(
        word in _NO_SHADE or any(table.at([word], 0) is not None for table in tables)
        for word in words
    )


def _apart(said: Sequence[SaidWord]) -> list[SaidWord]:
    """Leave out what stands inside what was found before it."""
    kept: list[SaidWord] = []
    for word in said[:MAX_SHADES]:
        (low, high) = word.spans[0]
        if not any(low < other.spans[0][1] and other.spans[0][0] < high for other in kept):
            kept.append(word)
    return kept


def _sampled(text: str, spans: Sequence[TextSpan]) -> SaidWord | None:
    """Return a shade that is said to be like something else's."""
    for start, end in spans:
        tile = _TILE.search(text, start, end)
        if tile and re.search(
            r"colou?r|shade|farbe",
            text[max(start, tile.start() - 60) : tile.end() + 20],
            re.IGNORECASE,
        ):
            return SaidWord(" ".join(tile[0].split()), (tile.span(),))
    return None


def _trimmed(value: str) -> str:
    """Leave a finish, an undecided colour and blanks off a shade."""
    value = re.split(
        rf",\s(?=(?:surface|oberfläche|please|all|finish|edges?|matt|honed|sealed"
        rf"|{FINISHES})\b)|\s(?:please|bitte)\b|\sand not\b|,?\s(?:and|und)\s(?:{FINISHES})\b",
        value,
        flags=re.IGNORECASE,
    )[0]
    value = value.strip(' \t,:-|\n«»"')
    if re.search(
        r"\b(?:not decided|undecided|don't know|any)\b|^(?:not fussed|tbc|open|\?)",
        value,
        re.IGNORECASE,
    ) and not re.search(rf"\b(?:{COLOURS})\b", value, re.IGNORECASE):
        return ""
    return value


def _is_of_another(text: str, start: int, found: re.Match[str]) -> bool:
    """Return whether a colour is of the legs, a sink or a cupboard, or part of another word."""
    after = text[found.end() : found.end() + 24]
    before = text[max(start, found.start() - 30) : found.start()]
    if re.match(
        r"[ -]?(?:steel|iron|legs?|sink|cabinets?|units?|tiles?|walls?|ceramic|cement|oak"
        r"|plastic|enamel|farm|barn|road|house|lion|horse|street|machines?|fridges?|freezer|ovens?"
        r"|cookers?|stoves?|boiler|taps?|faucets?|mixers?|doors?|windows?|floors?|flooring|carpets?"
        r"|chairs?|stools?|sofas?|handles?|bricks?|brickwork|metro|grout|paint(?:ed)?|fronts?"
        r"|maschinen?|kühlschrank|backofen|armatur\w*|türe?n?|fenster|böden|boden|fronten|stühle)"
        r"\b",
        after,
        re.IGNORECASE,
    ):
        return True
    if re.search(r"\b(?:not|nicht|no)\s(?:\w+\s)?\Z", before, re.IGNORECASE):
        return True
    if found[0][:1].isupper() and (
        re.match(r"\s[A-Z]", after) or re.search(r"[A-Z][\w'’]*\s\Z", before)
    ):
        return True
    if found.re is _SHADE and _AMBIGUOUS.fullmatch(found[0].strip()):
        is_introduced = re.search(
            r"(?:\bin(?: an?)?|colou?r:?|,|shade:?|[.!?;]\s)\s*\Z", before, re.IGNORECASE
        )
        ends = re.match(
            r"\s*(?:[.,;!?)\n]|\Z|(?:and|or|und|please|too|if|with)\b)", after, re.IGNORECASE
        )
        is_thing = re.match(
            r"\s?(?:(?:and|or) (?!\w+ed)|by|wall|roof|floor)\b", after, re.IGNORECASE
        )
        return not is_introduced or not ends or bool(is_thing)
    return bool(re.match(r"['’]s\b", after))
