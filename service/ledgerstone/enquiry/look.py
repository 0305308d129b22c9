"""Shade, finish and edges as the writer says them."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene import Span, Word

_TONES: Final = (
    "pale|light|lighter|dark|darker|mid|medium|middle|warm|cool|cold|soft|deep|off|storm|slate"
    "|smoke|smoky|silver|dove|ash"
    "|pearl|steel|charcoal|stone|bone|warm|bright|natural|plain|ordinary|standard|normal"
    "|classic|usual|concrete|sandy|bluish"
    "|greenish|very|blue|green|brown|jet|pure|mouse|any|same|typical|cement|raw|a little"
    "|helles|helle|heller|hellen|dunkles|dunkle"
    "|dunkler|dunklen|warmes|mittleres|mittel"
)
_COLOURS: Final = (
    "greys?|grays?|white|black|charcoal|anthracite|anthrazit|graphite|graphit|ivory|cream|sand"
    "|oat|putty|mushroom|basalt|pewter"
    "|slate|terracotta|espresso|brown|beige|taupe|greige|buff|chalk|clay|lichen|onyx|limestone"
    "|sandstone|rust|ochre|red|green"
    "|blue|pink|stone|mocha|latte|smoke|silver|pearl|ash|flint|granite|lead|gunmetal|ebony"
    "|alabaster|linen|biscuit|honey|sable"
    "|grau|hellgrau|dunkelgrau|mittelgrau|weiß|weiss|schwarz|sandfarben|braun|creme|betongrau"
    "|steingrau|schiefer|lichtgrau|silbergrau"
)
_SHADE: Final = re.compile(
    rf"\b(?:(?:{_TONES})[ -]){{0,3}}(?:{_COLOURS})\b(?:[ -](?:{_COLOURS})\b)?(?:,? (?:eher"
    rf"|rather|quite|but|though) \w+)?|\b(?:concrete|cement|natural) colou?r\b",
    re.IGNORECASE,
)
_SHADE_LABEL: Final = re.compile(
    r"(?:^|[\s(.])(?:colou?r|shade|farbe|farbton|tone)(?:/finish|wise)?[ \t]{0,4}(?:[:=|\t]"
    r"|is\b|must be\b|should be\b|would be\b|wanted\b)[ \t]*"
    r"(?P<value>[^\n.;|]{2,80})",
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
_ONLY_DARK: Final = re.compile(
    r"(?:^|[.\n,][ \t]*)(?P<value>(?:probably |quite |something |fairly )?(?:dark|light|pale"
    r"|dunkel|hell))(?=[,.\n]|$)",
    re.IGNORECASE,
)
_FINISH_LABEL: Final = re.compile(
    r"(?:^|[\s(.])(?:finish|seal(?:er)?|surface|oberfläche|versiegelung"
    r"|treatment)[ \t]{0,4}(?:[:=|\t]|is\b|should be\b|to be\b|,)?[ \t]*(?P<value>(?!(?:sizes?"
    r"|measurements?)\b)[^\n.;|:]{2,70})",
    re.IGNORECASE,
)
_FINISHES: Final = (
    "matt sealed|matte sealed|satin sealed|satin sealer|matt sealer|matt|matte|mat|satin|honed"
    "|polished|sealed|waxed|glossy|gloss"
    "|smooth|as cast|as-cast|brushed|low sheen|oiled|no sealer|unsealed|not shiny|not glossy"
    "|nothing glossy|not polished|nothing shiny"
    "|geschliffen und versiegelt|matt versiegelt|geschliffen|versiegelt|poliert|gewachst|geölt"
    "|glatt|unbehandelt|nicht poliert|seidenmatt"
)
_FINISH: Final = re.compile(
    rf"\b(?:{_FINISHES})\b(?:,? (?:and|und|&) (?:{_FINISHES})\b)?(?: finish)?", re.IGNORECASE
)
_SURFACES: Final = (
    ("honed", re.compile(r"\bhoned\b|\bgeschliffen\b|\bsmooth\b", re.IGNORECASE)),
    (
        "polished",
        re.compile(r"(?<!not )(?<!nicht )\bpolished\b|(?<!nicht )\bpoliert\b", re.IGNORECASE),
    ),
    (
        "as-cast",
        re.compile(r"\bas[ -]cast\b|\bstraight from the mould\b|\bschalungsglatt\b", re.IGNORECASE),
    ),
)
_SEALERS: Final = (
    ("matt", re.compile(r"\bmatte?\b|\bmat\b|\bmatt versiegelt\b", re.IGNORECASE)),
    ("satin", re.compile(r"\bsatin\b|\bseidenmatt\b|\blow sheen\b", re.IGNORECASE)),
    ("wax", re.compile(r"\bwax(?:ed)?\b|\bgewachst\b|\bhard wax\b", re.IGNORECASE)),
)
_HEX: Final = (
    ("black", "#2b2b2c"),
    ("schwarz", "#2b2b2c"),
    ("charcoal", "#45474a"),
    ("anthra", "#45474a"),
    ("graphit", "#55575a"),
    ("basalt", "#4c4e50"),
    ("slate", "#6b7073"),
    ("schiefer", "#6b7073"),
    ("storm", "#6a6e72"),
    ("espresso", "#4a3a32"),
    ("pewter", "#82858a"),
    ("smoke", "#8a8c8e"),
    ("steel", "#7d8285"),
    ("dove", "#a9aaa9"),
    ("silver", "#b3b5b5"),
    ("silber", "#b3b5b5"),
    ("ash", "#a5a6a3"),
    ("dark", "#5c5e60"),
    ("dunkel", "#5c5e60"),
    ("mid", "#8b8d8d"),
    ("pale", "#c4c4c0"),
    ("light", "#c4c4c0"),
    ("hell", "#c4c4c0"),
    ("off", "#e0ddd4"),
    ("warm white", "#e4dfd4"),
    ("white", "#e6e3dc"),
    ("weiß", "#e6e3dc"),
    ("bone", "#ded5c4"),
    ("ivory", "#e6dfcd"),
    ("cream", "#e3d8c0"),
    ("chalk", "#e3dfd6"),
    ("oat", "#d3c6ae"),
    ("putty", "#b9ac97"),
    ("sand", "#d0bb95"),
    ("sable", "#d0bb95"),
    ("mushroom", "#a89a8b"),
    ("terracotta", "#b5714f"),
    ("brown", "#7a5f4c"),
    ("braun", "#7a5f4c"),
    ("clay", "#cd9f7b"),
    ("green", "#a3ab92"),
    ("lichen", "#a3ab92"),
    ("grey", "#8b8d8d"),
    ("gray", "#8b8d8d"),
    ("grau", "#8b8d8d"),
    ("concrete", "#8b8d8d"),
    ("stone", "#a8a499"),
)


def shade_of(text: str, spans: Sequence[Span], palette: Sequence[str]) -> Word | None:
    """Give the shade in the writer's words, the newest part first."""
    names = [re.compile(rf"\b{re.escape(name)}\b", re.IGNORECASE) for name in palette]
    for start, end in spans:
        for pattern in (_SHADE_LABEL, *names, _SHADE, _SHADE_LOOSE, _ONLY_DARK):
            for found in pattern.finditer(text, start, end):
                value = _trimmed(found["value"] if "value" in found.re.groupindex else found[0])
                if value and not _is_of_another(text, start, found):
                    at = (
                        text.index(value, found.start())
                        if value in text[found.start() : found.end()]
                        else found.start()
                    )
                    return Word(" ".join(value.split()), ((at, at + len(value)),))
        tile = _TILE.search(text, start, end)
        if tile and re.search(
            r"colou?r|shade|farbe",
            text[max(start, tile.start() - 60) : tile.end() + 20],
            re.IGNORECASE,
        ):
            return Word(" ".join(tile[0].split()), (tile.span(),))
    return None


def _trimmed(value: str) -> str:
    """Leave a finish, an undecided colour and blanks off a shade."""
    value = re.split(
        rf",\s(?=(?:surface|oberfläche|please|all|finish|edges?|matt|honed|sealed"
        rf"|{_FINISHES})\b)|\s(?:please|bitte)\b|\sand not\b|,?\s(?:and|und)\s(?:{_FINISHES})\b",
        value,
        flags=re.IGNORECASE,
    )[0]
    value = value.strip(' \t,:-|\n«»"')
    if re.search(
        r"\b(?:not decided|undecided|don't know|any)\b|^(?:not fussed|tbc|open|\?)",
        value,
        re.IGNORECASE,
    ) and not re.search(rf"\b(?:{_COLOURS})\b", value, re.IGNORECASE):
        return ""
    return value


def _is_of_another(text: str, start: int, found: re.Match[str]) -> bool:
    """Whether a colour is of the legs, a sink or a cupboard, or part of another word."""
    after = text[found.end() : found.end() + 24]
    before = text[max(start, found.start() - 30) : found.start()]
    if re.match(
        r"[ -]?(?:steel|iron|legs?|sink|cabinets?|units?|tiles?|walls?|ceramic|cement|oak"
        r"|plastic|enamel|farm|barn|road|house|lion|horse|street)\b",
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
    if found.re is _SHADE and re.match(
        r"(?:sand|stone|clay|ash|lead|slate|smoke|honey|linen|granite|limestone|sandstone|oil"
        r"|rust|chalk|pearl|silver|flint)\Z",
        found[0].strip(),
        re.IGNORECASE,
    ):
        return not re.search(r"(?:in|colou?r:?|,|shade:?)\s*\Z", before, re.IGNORECASE) or bool(
            re.match(r"\s?(?:and|or|by|wall|roof|floor)\b", after, re.IGNORECASE)
        )
    return bool(re.match(r"['’]s\b", after))


def finish_of(text: str, spans: Sequence[Span]) -> Word | None:
    """Give the finish in the writer's words."""
    for start, end in spans:
        labelled = _FINISH_LABEL.finditer(text, start, end)
        for found in labelled:
            if _FINISH.search(found["value"]):
                value = found["value"].strip(" \t,:-")
                at = text.index(value, found.start())
                return Word(" ".join(value.split()), ((at, at + len(value)),))
        for found in _FINISH.finditer(text, start, end):
            before = text[max(start, found.start() - 24) : found.start()]
            named = found[0][:1].isupper() and re.match(
                r"\s[A-Z]", text[found.end() : found.end() + 2]
            )
            if not named and not re.search(
                r"(?:door|place|welcome|bath)[ -]?\Z|if it(?:'s| is) \Z", before, re.IGNORECASE
            ):
                return Word(" ".join(found[0].split()), (found.span(),))
    return None


def surface_in(words: str) -> str:
    """Give the surface of the contract that words name, or nothing."""
    return next((name for name, pattern in _SURFACES if pattern.search(words)), "")


def sealer_in(words: str) -> str:
    """Give the beginning of the sealer's name that words name, or nothing."""
    return next((name for name, pattern in _SEALERS if pattern.search(words)), "")


def colour_of(words: str) -> str | None:
    """Give about the colour that words mean, as ``#rrggbb``. Judged by eye, no source."""
    lowered = words.lower()
    return next((colour for name, colour in _HEX if name in lowered), None)
