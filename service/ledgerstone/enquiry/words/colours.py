"""Colours in words: how they are called, and about what colour is meant."""

from __future__ import annotations

from typing import Final

TONES: Final = (
    "pale|light|lighter|dark|darker|mid|medium|middle|warm|cool|cold|soft|deep|off|storm|slate"
    "|smoke|smoky|silver|dove|ash"
    "|pearl|steel|charcoal|stone|bone|warm|bright|natural|plain|ordinary|standard|normal"
    "|classic|usual|concrete|sandy|bluish"
    "|greenish|very|blue|green|brown|jet|pure|mouse|any|same|typical|cement|raw|a little"
    "|helles|helle|heller|hellen|dunkles|dunkle"
    "|dunkler|dunklen|warmes|mittleres|mittel"
)
COLOURS: Final = (
    "greys?|grays?|white|black|charcoal|anthracite|anthrazit|graphite|graphit|ivory|cream|sand"
    "|oat|putty|mushroom|basalt|pewter"
    "|slate|terracotta|espresso|brown|beige|taupe|greige|buff|chalk|clay|lichen|onyx|limestone"
    "|sandstone|rust|ochre|red|green"
    "|blue|pink|stone|mocha|latte|smoke|silver|pearl|ash|flint|granite|lead|gunmetal|ebony"
    "|alabaster|linen|biscuit|honey|sable"
    "|grau|hellgrau|dunkelgrau|mittelgrau|weiß|weiss|schwarz|sandfarben|braun|creme|betongrau"
    "|steingrau|schiefer|lichtgrau|silbergrau"
    r"|storm|almond|amber|aqua|aubergine|azure|blush|blush pink|bronze|burgundy|butter|camel"
    r"|caramel"
    r"|cashmere|chestnut|chocolate|cinnamon|cobalt|coffee|copper|coral|denim|ecru|eggshell"
    r"|emerald|fawn|fern|forest|ginger|gold|heather|indigo|ink|jade|khaki|lavender|lemon|lilac"
    r"|lime|magnolia|mahogany|maroon|marble|midnight|mint|moss|mustard|navy|nickel|nutmeg"
    r"|oatmeal|olive|orange|oxblood|oxide red|oyster|parchment|peach|pebble|pine|plum|porcelain"
    r"|portland|portland stone|purple|rose|russet|saffron|sage|salmon|scarlet|seal|sepia"
    r"|shell|sienna|tan|tangerine|tar|teal|thunder|toffee|truffle|turquoise|umber|vanilla"
    r"|violet|walnut|wheat|wine|yellow|bordeaux|oliv|petrol|türkis|ocker|rost|ziegelrot"
    r"|[a-zäöüß]{2,14}(?:grau|beige|weiß|weiss|schwarz|braun|rot|grün|blau|gelb)|beige|rot|grün"
    r"|blau|gelb"
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


def colour_of(words: str) -> str | None:
    """Give about the colour that words mean, as ``#rrggbb``.

    Source
    ------
    Judged by eye.
    """
    lowered = words.lower()
    return next((colour for name, colour in _HEX if name in lowered), None)
