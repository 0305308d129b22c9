"""What answers say, in English, for tests that read a sentence."""

from ledgerstone.checks import Finding
from ledgerstone.remedies import Remedy, Saving
from ledgerstone.remedies.found import Fix
from ledgerstone.shade.seen import SeenShade
from ledgerstone.wording import Value, english, speech_in


def in_english(one: Finding | SeenShade | Remedy | Saving) -> str:
    """What a finding, a colour or a change says."""
    if isinstance(one, Remedy | Saving):
        return " ".join(english(sentence) for part in one.sentences for sentence in part)
    return english(one.message)


def value_in_english(value: Value) -> str:
    """How a value is written in a sentence."""
    return speech_in("en").value(value)


def parts_in_english(fix: Fix) -> tuple[str, ...]:
    """What a change of a whole order says, part by part."""
    return tuple(" ".join(map(english, part)) for part in fix.sentences)
