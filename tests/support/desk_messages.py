"""Five messages as a workshop gets them; the last asks for what cannot be made."""

from typing import Final

POTTING: Final = """Hello,

I'm after a concrete top for a potting bench in my greenhouse, 1650 x 560 mm and 40mm thick,
in a mid grey. There's a round sink of 380 mm in the middle.
Could you deliver to HR0 4XX? It would be good by the end of March.

Thanks
Tamsin
"""

GERMAN: Final = """Guten Tag,

für unser Gartenhaus suche ich eine Platte als Ablage, 140 x 45 cm und 4 cm stark, hellgrau.
Ich hole sie selbst ab.

Viele Grüße
Henrike Moosbach
"""

INCHES: Final = """Hi there

could you cast me a shelf 48 in long and 10 in deep, 1 1/2 in thick? Two of them please,
in charcoal. Posting to HR0 2AB.

cheers, Bram
"""

HEARTH: Final = """Dear workshop,

We need a hearth for our stove: 1100 mm x 900 mm, 50 mm thick, honed, in a warm light grey.
No cut-outs. We can collect it with our trailer.

Kind regards,
Ines Fallow
"""

TOO_THIN: Final = """Hello

I'd like a concrete worktop in a single piece, 3100 x 620 mm and 15 mm thick, no cut-outs,
dark grey. Please deliver it to HR0 4XX.

Rupert Quill
"""

MESSAGES: Final = (POTTING, GERMAN, INCHES, HEARTH, TOO_THIN)
