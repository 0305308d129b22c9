"""Words of who was brought another slab than was ordered: a complaint, whatever sizes it has."""

from __future__ import annotations

import re
from typing import Final

_BROUGHT: Final = (
    r"(?:came|arrived|delivered|brought|dropped(?: off)?|unloaded|fitted|installed|driver|lads"
    r"|carrier|received|signed)"
)
_WRONG: Final = (
    r"(?:the wrong (?:one|size|slab|top|worktop|hearth|table|desk|shelf|sill|bench|counter|colour"
    r"|thing)|(?:somebody|someone) else['’]s)"
)
_GERMAN: Final = r"(?:geliefert|gekommen|gebracht|angekommen|\bist da|\bsind da)"
WRONG_GOODS: Final = (
    "wrong goods",
    6,
    re.compile(
        rf"\b{_BROUGHT}\b[^?]{{0,80}}?\b{_WRONG}|\b{_WRONG}[^?]{{0,60}}?\b{_BROUGHT}\b"
        r"|\b(?:not|refused to|won['’]t|haven['’]t) sign(?:ed)? for (?:it|them|this)\b"
        r"|\bwhen (?:are you|you are|will you|you will|can you|you can) (?:be )?(?:collect|fetch"
        r"|pick|tak)\w* (?:it|them|this|the wrong)\b"
        r"|\b(?:i|we) (?:had )?ordered\b[^?]{0,80}\b(?:what (?:came|arrived|i got|the driver)"
        r"|but (?:got|received)|and (?:got|received))\b"
        rf"|{_GERMAN}[^.?\n]{{0,40}}\bfalsche\b|\bfalsche\b[^.?\n]{{0,40}}{_GERMAN}"
        rf"|\bbestellt (?:hatten|haben|hatte|habe) (?:wir|ich)\b[^.?]{{0,80}}{_GERMAN}",
        re.IGNORECASE,
    ),
)
