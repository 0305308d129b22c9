"""What a change costs within its kind: the one table of it, each figure with its reason.

A cost is a pure number. It orders the changes of one kind that settle one finding, and how far one
of them goes; a heavier kind comes after a lighter one whatever it costs (`policy.KINDS`). So two
figures are only ever compared within a kind, and mostly within a paragraph below. Common practice,
no source: the order is that in which a maker would offer the changes on the telephone, what the
customer would notice least before what they would notice more.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Final

COST: Final[Mapping[str, float]] = MappingProxyType(
    {
        # Rests. What is there stays where it is, and is made stiffer or comes to concrete.
        "rails": 0.5,
        "move-leg": 0.5,
        "end-panels": 0.8,  # one more panel to buy
        # The same legs elsewhere: all by one distance, before each by its own.
        "legs-to-the-middle": 1.0,
        "legs-on-a-ring": 2.0,
        "legs-at-the-best": 3.0,
        "more-legs": 5.0,  # two more to buy, and in the way of knees
        "frame": 7.0,  # a frame to have made
        "base": 12.0,  # a base under all of it that does not bend, in place of units or a frame
        "base-for-legs": 19.0,  # the same where there is least to begin with
        # Delivery.
        "deliver": 2.0,  # another way of ours, at another price
        "collect": 3.0,  # the customer needs a vehicle and hands
        "left-at-door": 50.0,  # added: after all that makes it pass, for it only hands the stop on
        # Sooner: what the workshop does, before what the customer goes without.
        "heated": 1.0,
        "no-tile": 1.5,  # the colour is not seen before
        "collect-sooner": 2.0,
        "sealer-sooner": 2.5,
        "surface-sooner": 3.0,
        "heated-and-collect": 3.2,
        "later": 4.0,  # last: it keeps everything but the day that was asked for
        # Looks.
        "shade": 1.0,
        "sealer": 1.0,
        # Where an opening or a relief lies.
        "move": 1.0,
        "units-changed": 2.0,  # two units change places: the customer's kitchen, not only the slab
        "relief-in": 1.0,
        "relief-centred": 3.0,  # further than need be, where nothing nearer has room
        # Rims, edges, reliefs.
        "round": 0.2,  # a radius that nobody named
        "edge-size": 1.0,
        "shallower": 1.0,
        "plainer-finish": 2.0,  # seen and touched, unlike an edge's few millimetres
        "overhang": 2.0,
        "without-drip": 3.0,  # it does something: water runs back without it
        # Thickness, another size.
        "thickness": 1.0,
        "size": 1.0,
        "smaller-opening": 2.0,
        # Where a slab is cut, the least seen first.
        "cut-over-a-side": 1.0,  # over a unit's side panel, which carries both pieces
        "cut-at-a-corner": 1.5,  # at an L's inner corner, where a joint is expected
        "cut-clear": 2.0,  # anywhere clear of the openings
        "cut-over-a-unit": 3.0,  # where nothing is under the joint
        "cut-close": 4.0,  # added: nearer to an opening than it should be
        "cut-through-an-opening": 10.0,  # the weakest place, and two joints to seal
        "one-piece-more": 2.0,  # added: than the fewest
        # Only the nearest that can be made: never in a fix.
        "turn": 1.0,
        "open-to": 6.0,  # asked, not assumed
        "relief-out": 8.0,
        "fewer": 30.0,  # for each opening that is left out
        "plain": 400.0,  # a plain slab in its place: the last resort
    }
)

# How the cost of a change grows with how far it goes.
PER_MM_MOVED: Final = 0.01  # of an opening: 100 mm count like another kind of place
MM_OF_DEPTH: Final = 10.0  # of an edge, a relief, the slab: so many cost 1, for they are seen
PER_SHARE: Final = 20.0  # of a size: a twentieth counts like 100 mm of movement
PER_SHARE_OF_OPENING: Final = 50.0  # what goes in may not fit a smaller opening
PER_SHARE_OF_OVERHANG: Final = 8.0  # the units come out further: hardly seen
PER_SHARE_OF_PLAIN: Final = 100.0  # a plain slab of less than its box
PER_CHANGE: Final = 0.1  # each opening that is touched
DELTA_E: Final = 100.0  # CIEDE2000 from the shade that was asked for: black for white costs 1
PER_DAY_LATER: Final = 0.01  # but at most MOST_FOR_DAYS, or "later" would leave its place
MOST_FOR_DAYS: Final = 0.9  # under 1, what lies between two figures above
NEXT_OF_SEVERAL: Final = 0.1  # the second of several sealers, surfaces or rails, and each after it
SECOND_PLACES: Final = 0.5  # the second-best places for legs
UNEVEN: Final = 0.1  # a first piece in no round number, where an L leaves the choice of arm
