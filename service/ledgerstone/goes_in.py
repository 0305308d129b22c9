"""The appliance in an opening, recognised by the name its customer gave it.

Names as people write them in English, German, French, Spanish and Italian: common knowledge, no
source. German sets words together, so that a basin may end in a longer word (Aufsatzbecken).
"""

from __future__ import annotations

import re
from typing import Final

from ledgerstone.order import Cutout, UnitFor

# An opening no longer than this takes a tap or a cable, which is led past a unit's side or a rail
# where a bowl is not; common practice, no source.
TAP_SIZED_MM: Final = 60.0

_BOWLS: Final = (
    r"sinks?|basins?|bowls?|washbasins?|tub|trough|\w*sp[üu]e?len?|\w*becken|[ée]vier|vasque|lavabo"
    r"|fregadero|lavello|lavandino"
)
_COOKTOPS: Final = r"hobs?|cooktops?|\w*kochfeld(?:er)?|plaque|table de cuisson|placa|piano cottura"
_HOBS: Final = rf"{_COOKTOPS}|cooker|stove|range|burner|fire|\w*herd"
_TAPS: Final = (
    r"taps?|faucets?|mixer|spout|\w*wasserhahn|\w*armatur(?:en)?|robinet|mitigeur|grifo|rubinetto"
)
_WET: Final = (
    rf"{_BOWLS}|{_TAPS}|shower|bath|bathtub|\w*dusche|\w*badewanne|douche|baignoire|ducha|doccia"
)
_LIVE: Final = (
    r"sockets?|outlets?|receptacles?|switch|switches|cables?|lights?|hobs?|cooktops?|oven"
    r"|\w*steckdosen?|\w*schalter|\w*kabel\w*|\w*leuchten?|\w*licht|\w*kochfeld(?:er)?|\w*herd"
    r"|\w*backofen|prises?|interrupteurs?|c[âa]bles?|enchufes?|interruptor(?:es)?|pres[ae]"
    r"|interruttor[ei]|cav[oi]"
)
_NO_TAP: Final = (
    r"\w*cables?|\w*sockets?|outlets?|\w*plugs?|\w*pipes?|\w*posts?|\w*umbrellas?|parasols?"
    r"|\w*kabel\w*|\w*steckdosen?|\w*rohre?|\w*pfosten|\w*schirm\w*"
)


def _names(words: str) -> re.Pattern[str]:
    return re.compile(rf"\b(?:{words})\b", re.IGNORECASE)


_BOWL, _HOB, _TAP = _names(_BOWLS), _names(_HOBS), _names(_TAPS)
_COOKTOP = _names(_COOKTOPS)
_NEAR_WATER, _OF_ELECTRICITY, _OF_NO_BOWL = _names(_WET), _names(_LIVE), _names(_NO_TAP)


def is_hob(cutout: Cutout) -> bool:
    """Return whether a hob or another hot appliance goes into an opening."""
    return cutout.heat or _HOB.search(cutout.label) is not None


def is_cooktop(cutout: Cutout) -> bool:
    """Return whether a hob with a flat top goes into an opening, by its name."""
    return _COOKTOP.search(cutout.label) is not None


def is_bowl(cutout: Cutout) -> bool:
    """Return whether a basin or a sink goes into an opening, by its name."""
    return _BOWL.search(cutout.label) is not None


def is_tap(cutout: Cutout) -> bool:
    """Return whether a tap goes into an opening, by its name."""
    return _TAP.search(cutout.label) is not None


def is_wet(cutout: Cutout) -> bool:
    """Return whether water runs at an opening, by its name."""
    return _NEAR_WATER.search(cutout.label) is not None


def is_live(cutout: Cutout) -> bool:
    """Return whether electricity comes to an opening, by its name."""
    return _OF_ELECTRICITY.search(cutout.label) is not None


def is_apart(cutout: Cutout) -> bool:
    """Return whether a small opening beside a bowl is unrelated to it, by its name."""
    return _OF_NO_BOWL.search(cutout.label) is not None


def unit_for(cutout: Cutout) -> UnitFor | None:
    """State for which unit an opening is, by what goes into it."""
    if is_hob(cutout):
        return "hob"
    return "basin" if is_bowl(cutout) else None
