"""Whether fitting that is spoken of is ours to do: it may be refused, or be someone else's."""

from __future__ import annotations

import re
from typing import Final

_NOT_FITTED: Final = re.compile(
    r"(?:our|my|the|own|a|kitchen) (?:\w+ )?fitter|we(?:'ll|’ll| will| can)? (?:fit"
    r"|install) (?:it|them)|fit (?:it|them) (?:ourselves|myself)|plot \d+ fits|so it fits"
    r"|it fits\b|no fitting|without fitting|fitter has|fits on|if it fits|(?:i|we)(?:'ll|’ll"
    r"| will| can| shall) (?:be )?(?:fitting|installing)|outfit|fit(?:ting)?[ -]out|fits in"
    r"|no need to (?:fit|install)"
    r"|fitted kitchen"
    r"|selbst ein|fitt\w* (?:required|needed|wanted)?\W{0,4}(?:no|nein)\b"
    r"|(?:fit|install) (?:it |them )?(?:ourselves|myself|themselves)|(?:fit|install)\w* by (?:our"
    r"|my|others)|(?:einbau|montage) (?:macht|übernimmt|übernehmen|durch(?! sie\b| euch)|machen)"
    r"|(?:spüle|becken|kochfeld|armatur)\b[^.\n]{0,40}eingebaut|(?:von unten|bündig) eingebaut"
    r"|fitted wardrobe|have (?:it|them) fitted by our|to fit (?:the|our|my|in"
    r"|between|under|over|round|a|on|an|onto)\b",
    re.IGNORECASE,
)
# After what is not wanted: "Montage brauchen wir nicht". "Nicht vor Mai" only puts it off.
REFUSED: Final = re.compile(
    r"[^.;,:\n]{0,30}?(?:\b(?:nicht|not) (?:(?!(?:vor|bis|am|im|ab|before|until|till|on)\b)\w+ )?"
    r"(?:nötig|erforderlich|notwendig|gewünscht|gebraucht|benötigt|gewollt|vorgesehen|geplant|dabei"
    r"|(?:durch|von) (?:sie|ihnen|euch|(?:ihr|eur)\w* \w+)|by (?:you|your \w+)|in frage|needed"
    r"|required|necessary|wanted)\b"
    r"(?! (?:before|until|till|yet|on|vor)\b)"
    r"|\b(?:brauch|benötig|wünsch|woll|möcht|will)\w* (?:\w+ ){0,2}nicht\b"
    r"(?! (?:vor|bis|am|im|ab|in der)\b)|\bnicht[ \t]*(?:[.;)!\n]|,(?! (?:bevor|ehe)\b)|\Z)"
    r"|\b(?:selbst|selber|bauseits|ourselves|myself)\b)",
    re.IGNORECASE,
)
# Before what is not wanted: "we'd rather not have it fitted".
_RATHER_NOT: Final = re.compile(
    r"\b(?:rather not|(?:rather|prefer) (?:that )?you (?:didn['’]t|did not|don['’]t)|prefer not to"
    r"|(?:do not|don['’]t|won['’]t|will not|wouldn['’]t) (?:want|need|be needing|like)|no need"
    r"|nicht (?:durch|von) (?:sie|ihnen|euch|(?:ihr|eur)\w* \w+))(?: [\w'’]+){0,5} \Z",
    re.IGNORECASE,
)
# Before "fit": what must fit somewhere, or who fits it in our stead; "you should fit it" is ours.
_FITS_ITSELF: Final = re.compile(
    r"(?P<who>\b\w+ |\A|\W)(?:must|should|would|might|(?:(?:would|will) )?"
    r"(?:has|have|ought|needs?) to) \Z",
    re.IGNORECASE,
)
_ITSELF_OR_THEIRS: Final = re.compile(
    r"\b(?:it|that|which|this|i|we|(?:our|my|the) (?:\w+ ){0,2}?\w+) (?:must|should|would|might"
    r"|(?:has|have|ought|needs?) to) \Z",
    re.IGNORECASE,
)


def is_left_to_others(text: str, start: int, end: int, found: re.Match[str]) -> bool:
    """Return whether fitting is refused, is others', or a thing must only fit: "it must fit"."""
    before, after = text[max(start, found.start() - 40) : found.start()], text[found.end() : end]
    must = _FITS_ITSELF.search(before)
    if REFUSED.match(after[:60]) or _RATHER_NOT.search(before):
        return True
    if must and must["who"].lower() == "you ":
        return False
    is_others = bool(_NOT_FITTED.search(before + found[0] + after[:24]))
    if not must or is_others:
        return is_others
    is_done_to_it = re.match(r" (?:it|them)\b", after, re.IGNORECASE)
    return not is_done_to_it or bool(_ITSELF_OR_THEIRS.search(before))
