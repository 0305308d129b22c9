"""What people call the parts of a country besides their own names: in English, by short forms.

Common knowledge, no source.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

PARTS_CALLED: Final[Mapping[str, Mapping[str, str]]] = MappingProxyType({
    "DE": {
        "Bavaria": "BY", "Hesse": "HE", "Lower Saxony": "NI", "North Rhine-Westphalia": "NW",
        "Nordrhein Westfalen": "NW", "NRW": "NW", "Rhineland-Palatinate": "RP", "RLP": "RP",
        "Saxony": "SN", "Saxony-Anhalt": "ST", "LSA": "ST", "Thuringia": "TH", "BaWü": "BW",
        "Mecklenburg-Western Pomerania": "MV", "MeckPomm": "MV", "NDS": "NI", "SLH": "SH",
    },
    "AT": {
        "Carinthia": "2", "Lower Austria": "3", "Upper Austria": "4", "Styria": "6", "Tyrol": "7",
        "Vienna": "9",
    },
    "CH": {
        "Zurich": "ZH", "Geneva": "GE", "Genf": "GE", "Lucerne": "LU", "St. Gallen": "SG",
        "Grisons": "GR", "Neuenburg": "NE", "Waadt": "VD", "Tessin": "TI", "Basel": "BS",
        "Baselland": "BL", "Baselbiet": "BL", "Basel City": "BS",
    },
    "US": {"DC": "DC", "Washington DC": "DC", "Washington D.C.": "DC", "Calif.": "CA"},
    "GB": {
        "Schottland": "SCT", "Nordirland": "NIR", "NI": "NIR", "Ulster": "NIR", "Cymru": "WLS",
        "Alba": "SCT",
    },
    "CA": {"Newfoundland": "NL", "PEI": "PE", "BC": "BC"},
    "FR": {"Elsass": "6AE", "Alsace-Moselle": "6AE"},
})  # fmt: skip
