"""Messages of customers that are hard to read, and changes that may make them harder."""

from __future__ import annotations

import random
import re
from typing import Final

LARGEST: Final = 500_000  # letters: the contract takes 512 kB

# What sizes, places, prices, people and quoted mail look like; each is repeated, cut and mixed.
PHRASES: Final = (
    "Hello,\n\nwe want a worktop 1450 x 560 mm, 40 mm thick, in graphite.\n",
    "an L: long leg 2.4 m by 600, short leg 1200 by 60 cm, and 1 shelf 900 x 200\n",
    "a basin 360 across, 980 from the left and 270 from the front, a tap hole behind it, ",
    "the 900 has a sink in the 900 one, in the first a hob 560 x 490, in the second two basins ",
    "4' 9\" by 22 1/16 in, 1-1/2 in thick; 47 1/4\" and 3/5 or 2/20 ",
    "units 600 + 600 + 800 with a gap of 60.0 cm, wall to wall 2100 exactly, ",
    "delivered by Friday 12 March 2027 to HR0 7XX, 3rd floor, 14 steps, doorway 762 mm\n",
    "Length\tWidth\tThick\n1200\t600\t40\n900\t300\t30\n",
    "Length: 1200 mm\nWidth: 600 mm\nColour: chalk\n",
    "zwei Platten 180 cm x 65 cm, 4 cm stark, Ausschnitt für Spülbecken mittig, Steckdose links\n",
    "not the first but the second, as I said, make it 20 longer all round except at the back, ",
    "> On 3 Mar 2027 A wrote:\n>> the top is 1450 x 560\n> no, 1540\n",
    "From: a@example.com\nTo: b@example.com\nSubject: Re: Re: worktop\n\n",
    "one hundred and twenty one by twenty one and a half, about £1,200 - £1,500, 01632 960123\n",
    "<div><p>Top <b>1200</b> x <i>600</i></p><table><tr><td>40</td><td>mm</td></tr></table>",
    "<blockquote><span style='display:none'>900 x 300</span>",
    "Kind regards\nOdile\n--\nExample Ltd, 14 Mill Lane\n",
    "1 x 1 x 1 ", "1.1,1.", "'s ", " - ", "\n", "\t", "> ", "(", "„", "½ ", "9", "mm ", "\u202e",
)  # fmt: skip
KINDS: Final = ("text/plain", "message/rfc822")
_NUMBER: Final = re.compile(r"\d+(?:[.,]\d+)?")


def beginnings() -> list[str]:
    """Each phrase many times over, all of them in turn, and a mail of nested parts."""
    each = [phrase * (20_000 // len(phrase)) for phrase in PHRASES]
    heads = "From: a@example.com\nSubject: worktop\nMIME-Version: 1.0\nContent-Type: text/html\n\n"
    nested = heads + "<div>" * 4000 + "1200 x 600 mm" + "</div>" * 4000
    return [*each, "".join(PHRASES) * 40, nested, heads + "".join(PHRASES) * 100]


def changed(rng: random.Random, text: str) -> str:
    """Repeat, move, cut or put in a piece of a message, or change its numbers."""
    for _ in range(rng.randint(1, 4)):
        text = rng.choice((_repeated, _put_in, _put_in, _cut, _renumbered, _joined))(rng, text)
    return text[:LARGEST]


def _span(rng: random.Random, text: str) -> tuple[int, int]:
    start = rng.randrange(max(1, len(text)))
    return start, min(len(text), start + int(10 ** rng.uniform(0, 4)))


def _repeated(rng: random.Random, text: str) -> str:
    start, end = _span(rng, text)
    times = int(10 ** rng.uniform(0, 3))
    return text[:end] + text[start:end] * min(times, LARGEST // max(1, end - start)) + text[end:]


def _put_in(rng: random.Random, text: str) -> str:
    at, times = rng.randrange(len(text) + 1), int(10 ** rng.uniform(0, 3))
    return text[:at] + rng.choice(PHRASES) * times + text[at:]


def _cut(rng: random.Random, text: str) -> str:
    start, end = _span(rng, text)
    return text[:start] + text[end:]


def _renumbered(rng: random.Random, text: str) -> str:
    """Give a stretch other numbers, each another one: nothing in it is like anything else."""
    start, end = _span(rng, text)
    other = _NUMBER.sub(lambda _: str(rng.randint(1, 3000)), text[start:end])
    return text[:start] + other + text[end:]


def _joined(rng: random.Random, text: str) -> str:
    """Take the ends of lines out of a stretch, or put them between its words."""
    start, end = _span(rng, text)
    old, new = rng.choice((("\n", " "), (" ", "\n"), (" ", ""), (". ", " ")))
    return text[:start] + text[start:end].replace(old, new) + text[end:]
