"""For the maker: what of a customer's answer depends on each table of a profile."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

RESTS_ON: Final[Mapping[str, str]] = MappingProxyType(
    {
        "workshop": "customers write to it, and letters are signed by it",
        "table": "it decides what is too large to cast",
        "recipe": "weight, strength and every price rest on it",
        "mixer": "it decides how many batches a pour takes",
        "slurry": "the price of filling rests on it",
        "boards": "the price of each mould rests on it",
        "palette": "customers choose from these colours",
        "pigments": "the colours of pictures rest on these readings",
        "shade": "the colours of pictures rest on these readings",
        "finishes": "customers choose from these, and pay for their hours",
        "sealers": "customers choose from these, and pay for them",
        "edges": "customers pay for their hours",
        "hours": "every price and every day rests on it",
        "rates": "every price rests on it",
        "tax": "every total rests on it",
        "services": "templates and cover are charged by it",
        "sample": "sample tiles are charged by it",
        "areas": "it decides where you deliver, and for how much",
        "calendar": "every day that is promised rests on it",
        "web": "links in letters lead to it",
        "tent": "days in the warm rest on it",
        "handling": "it decides what you can lift and turn",
        "steel": "the price of bars and mesh rests on it",
        "rails": "the price of rails and posts that you fit rests on it",
        "packing": "the price of packing and its hours rest on it",
        "lifting": "it decides how a slab travels",
        "offer": "the least order rests on it",
        "reply": "letters end with it",
    }
)
