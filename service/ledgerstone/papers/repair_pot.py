"""The repair pot: what is in it, how much water, how long; one set of figures for every paper.

Thirty minutes, two days damp and six months on the shelf are common practice, no source; cement of
class 42.5 begins to set after an hour at the earliest (EN 197-1, table 3).
"""

from __future__ import annotations

from typing import Final

from ledgerstone.message import Message, Value
from ledgerstone.mix import Slurry
from ledgerstone.quantities import KG_PER_LB
from ledgerstone.workshop.records import Workshop

USE_WITHIN_MINUTES: Final = 30
DAMP_DAYS: Final = 2
KEEPS_MONTHS: Final = 6
_OUNCE_KG: Final = KG_PER_LB / 16
_TEASPOON_G: Final = 5.0


def water_g(pot: Slurry, workshop: Workshop) -> float:
    """Water for the whole pot, grams: the slurry's own ratio to the cement that is in it."""
    return 1000 * workshop.slurry.water_cement_ratio * pot.kg("cement")


def pot_label(reference: str, shade: str, pot: Slurry, workshop: Workshop) -> Message:
    """State what stands on the pot."""
    whole_g, kg = water_g(pot, workshop), workshop.slurry.repair_pot_kg
    return Message(
        "card-pot-label",
        reference=reference,
        shade=shade,
        kg=kg,
        oz=round(kg / _OUNCE_KG),
        **_mixed(whole_g, kg),
        minutes=USE_WITHIN_MINUTES,
        days=DAMP_DAYS,
    )


def pot_care(pot: Slurry, workshop: Workshop) -> list[Value]:
    """State how a pot is used: the label's figures again."""
    whole_g, kg = water_g(pot, workshop), workshop.slurry.repair_pot_kg
    return [
        Message("care-pot-holds", kg=kg, oz=round(kg / _OUNCE_KG)),
        Message("care-pot-skin"),
        Message(
            "care-pot-mix",
            **_mixed(whole_g, kg),
            minutes=USE_WITHIN_MINUTES,
        ),
        Message("care-pot-rub", days=DAMP_DAYS),
        Message("care-pot-keeps", months=KEEPS_MONTHS),
        Message("care-pot-not"),
    ]


def pot_skin() -> Message:
    """State what the label warns of."""
    return Message("card-pot-skin", months=KEEPS_MONTHS)


def _mixed(whole_g: float, kg: float) -> dict[str, Value]:
    """Water for the whole pot and powder for a teaspoon of it, in grams and in ounces."""
    powder_g = _powder_g(whole_g, kg)
    return {
        "water_g": round(whole_g),
        "water_oz": round(whole_g / 1000 / _OUNCE_KG, 1),
        "spoon_g": round(_TEASPOON_G),
        "powder_g": powder_g,
        "powder_oz": round(powder_g / 1000 / _OUNCE_KG, 1),
    }


def _powder_g(whole_g: float, kg: float) -> int:
    """Powder for a teaspoon of water, grams."""
    return round(_TEASPOON_G * 1000 * kg / whole_g)
