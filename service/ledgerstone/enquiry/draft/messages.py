"""What is said and asked of an enquiry, by what it is about: each a message of the catalogues."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final

from ledgerstone.errors import QuantityError
from ledgerstone.message import Message, Value
from ledgerstone.quantities import Length


def _length(written: Value) -> Value:
    """A length as the draft order has it, to be said as the language does; what is none stays."""
    try:
        return Length.parse(written)
    except QuantityError:
        return written


MESSAGES: Final[Mapping[str, Callable[..., Message]]] = {
    "length": lambda *, slab, **_: Message("enquiry-length", slab=slab),
    "width": lambda *, slab, **_: Message("enquiry-width", slab=slab),
    "diameter": lambda *, slab, **_: Message("enquiry-diameter", slab=slab),
    "outline": lambda *, slab, **_: Message("enquiry-outline", slab=slab),
    "thickness": lambda *, slab, **_: Message("enquiry-thickness", slab=slab),
    "corner": lambda **_: Message("enquiry-corner"),
    "legs": lambda **_: Message("enquiry-legs"),
    "size": lambda *, opening, **_: Message("enquiry-size", opening=opening),
    "place": lambda *, opening, **_: Message("enquiry-place", opening=opening),
    "x": lambda *, opening, **_: Message("enquiry-x", opening=opening),
    "y": lambda *, opening, **_: Message("enquiry-y", opening=opening),
    "postcode": lambda **_: Message("enquiry-postcode"),
    "units": lambda **_: Message("enquiry-units"),
    "plate": lambda **_: Message("enquiry-plate"),
    "steps": lambda *, said, **_: Message("enquiry-steps", said=said),
    "some_steps": lambda *, said, **_: Message("enquiry-some-steps", said=said),
    "two": lambda *, what, readings, **_: Message("enquiry-two", what=what, readings=readings),
    "impossible": lambda *, what, readings, **_: Message(
        "enquiry-impossible", what=what, readings=readings
    ),
    "about": lambda *, what, readings, **_: Message("enquiry-about", what=what, readings=readings),
    "delivery": lambda **_: Message("enquiry-delivery"),
    "ask_two": lambda *, what, readings, **_: Message(
        "enquiry-ask-two", what=what, readings=readings
    ),
    "ask_impossible": lambda *, what, readings, **_: Message(
        "enquiry-ask-impossible", what=what, readings=readings
    ),
    "ask_about": lambda *, what, readings, **_: Message(
        "enquiry-ask-about", what=what, readings=readings
    ),
    "ask_delivery": lambda **_: Message("enquiry-ask-delivery"),
    "ask_day": lambda *, said, **_: Message("enquiry-ask-day", said=said),
    "what_length": lambda *, slab, **_: Message("enquiry-what-length", slab=slab),
    "what_width": lambda *, slab, **_: Message("enquiry-what-width", slab=slab),
    "what_diameter": lambda *, slab, **_: Message("enquiry-what-diameter", slab=slab),
    "what_thickness": lambda *, slab, **_: Message("enquiry-what-thickness", slab=slab),
    "what_size": lambda *, opening, **_: Message("enquiry-what-size", opening=opening),
    "what_x": lambda *, opening, **_: Message("enquiry-what-x", opening=opening),
    "what_y": lambda *, opening, **_: Message("enquiry-what-y", opening=opening),
    "took_thickness": lambda *, slab, value, **_: Message(
        "enquiry-took-thickness", slab=slab, value=_length(value)
    ),
    "took_shade": lambda *, value, **_: Message("enquiry-took-shade", value=value),
    "took_nearest": lambda *, value, said, **_: Message(
        "enquiry-took-nearest", value=value, said=said
    ),
    "took_surface": lambda *, value, **_: Message("enquiry-took-surface", surface=value),
    "took_sealer": lambda *, value, **_: Message("enquiry-took-sealer", value=value),
    "took_place": lambda *, slab, **_: Message("enquiry-took-place", slab=slab),
    "took_collect": lambda **_: Message("enquiry-took-collect"),
    "took_delivery": lambda **v: Message("enquiry-took-delivery", way=v["way"]),
    "took_corner": lambda *, value, **_: Message("enquiry-took-corner", value=value),
    "took_site": lambda *, opening, x, y, **_: Message(
        "enquiry-took-site", opening=opening, x=_length(x), y=_length(y)
    ),
    "took_size": lambda *, opening, value, **_: Message(
        "enquiry-took-size", opening=opening, value=_length(value)
    ),
    "took_turn": lambda **_: Message("enquiry-took-turn"),
    "took_gap": lambda *, value, **_: Message("enquiry-took-gap", value=_length(value)),
    "took_edge": lambda *, value, **_: Message("enquiry-took-edge", value=_length(value)),
    "took_edges": lambda **_: Message("enquiry-took-edges"),
    "took_no_postcode": lambda **_: Message("enquiry-took-no-postcode"),
    "took_covered": lambda **v: Message("enquiry-took-covered", opening=v["opening"]),
    "took_doubtful": lambda *, value, what, **_: Message(
        "enquiry-took-doubtful", value=value, what=what
    ),
    "opening": lambda *, what, **_: Message("enquiry-opening", what=what),
    "slab": lambda *, use, **_: Message("enquiry-slab", use=use),
    "slab_n": lambda *, n, use, **_: Message("enquiry-slab-n", n=n, use=use),
}
