"""From pigment to colour and back: what a recipe looks like, and which recipe comes nearest.

The preview shows what the recipe makes, not what was wished for, and says how sure it is. There is
no open table of mortar colour against dose, so the numbers are fitted to the workshop's own tiles.
"""

from ledgerstone.shade.colour import (
    Lab,
    delta_e_2000,
    lab_to_srgb,
    lightness,
    srgb_to_lab,
)
from ledgerstone.shade.curve import PigmentCurve, fit_curve
from ledgerstone.shade.layer import (
    Appearance,
    absorption_ratio,
    appearance,
    reflectance,
    through_film,
)
from ledgerstone.shade.match import Match, dose_step_percent, nearest_recipe
from ledgerstone.shade.model import ShadeModel, model_of, shade_model
from ledgerstone.shade.seen import (
    SeenShade,
    ShadeRecipe,
    matched_shade_seen,
    nearest_palette_shade,
    palette_shade_seen,
    sealed_as,
    shade_recipe,
    shade_seen,
    tint_of,
)
from ledgerstone.shade.words import SCREENS_DIFFER, certainty_of, difference_message

__all__ = [
    "SCREENS_DIFFER",
    "Appearance",
    "Lab",
    "Match",
    "PigmentCurve",
    "SeenShade",
    "ShadeModel",
    "ShadeRecipe",
    "absorption_ratio",
    "appearance",
    "certainty_of",
    "delta_e_2000",
    "difference_message",
    "dose_step_percent",
    "fit_curve",
    "lab_to_srgb",
    "lightness",
    "matched_shade_seen",
    "model_of",
    "nearest_palette_shade",
    "nearest_recipe",
    "palette_shade_seen",
    "reflectance",
    "sealed_as",
    "shade_model",
    "shade_recipe",
    "shade_seen",
    "srgb_to_lab",
    "through_film",
    "tint_of",
]
