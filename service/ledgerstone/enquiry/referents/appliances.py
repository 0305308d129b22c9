"""What stands on a slab, under it or beside it, by a line that tells its own sizes."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

_APPLIANCES: Final = word_set(
    "stove oven cooker range fridge freezer dishwasher dryer washer machine burner woodburner"
    " mirror cupboard cupboards cabinet cabinets unit units pedestal trestles sofa bed bath"
    " kaminofen ofen herd kühlschrank spülmaschine waschmaschine trockner backofen schrank"
    " unterschrank spiegel"
)


def is_appliances_line(sentence: Sentence, mention: Mention) -> bool:
    """Return whether a label tells the sizes of what is no slab: "Stove: 465 x 410 mm"."""
    is_named = mention.kind == "thing" and sentence.words[mention.end - 1] in _APPLIANCES
    led = sentence.atoms[mention.end : mention.end + 1]
    is_led = bool(led) and led[0].word == ":"
    return is_named and is_led and mention.start <= 1
