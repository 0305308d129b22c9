"""What a message was found to speak of: pieces, their openings, and each size with its words."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Literal

from ledgerstone.enquiry.sizes import Size
from ledgerstone.quantities import Length

Span = tuple[int, int]
How = Literal["said", "worked-out"]
NOWHERE: Span = (-1, -1)  # of what stands outside the text
MOST_CLAIMS = 60  # a size is said twice or three times
AGREE_MM = 0.5
CONVERTED_SHARE = 0.004  # 72 in and 1829 mm are one size said twice


@dataclass(frozen=True, slots=True)
class Claim:
    """One size that the message gives to something.

    Attributes
    ----------
    rank
        The message it stands in, the oldest first, then whether it corrects what was said before.
    strong
        Whether its words name the hole itself, not only what goes into it.
    about
        Whether it is said to be approximate.
    opinion
        Whether it is only what somebody thinks, so that it is taken for no more than a doubt.
    """

    length: Length
    spans: tuple[Span, ...]
    rank: tuple[int, int] = (0, 0)
    order: int = 0
    strong: bool = True
    about: bool = False
    how: How = "said"
    alternative: Length | None = None
    opinion: bool = False

    @property
    def mm(self) -> float:
        """The size in millimetres."""
        return self.length.mm

    def agrees(self, other: Claim) -> bool:
        """Whether two sizes are one, a conversion between inches and millimetres among them."""
        gap = abs(self.mm - other.mm)
        imperial = {self.length.unit in ("in", "ft"), other.length.unit in ("in", "ft")}
        return gap <= AGREE_MM or (
            len(imperial) == 2 and gap <= CONVERTED_SHARE * max(self.mm, other.mm)
        )


@dataclass(frozen=True, slots=True)
class Word:
    """Something said in words: its value and where."""

    value: str
    spans: tuple[Span, ...] = ()


Claims = dict[str, list[Claim]]


@dataclass(slots=True)
class Opening:
    """A hole that the message asks for."""

    what: str
    kind: str = ""
    claims: Claims = field(default_factory=dict)
    rim: Word | None = None
    centred: dict[str, tuple[Span, ...]] = field(default_factory=dict)
    loosely_centred: dict[str, tuple[Span, ...]] = field(default_factory=dict)
    level_with: Opening | None = None
    level_spans: tuple[Span, ...] = ()
    offset: Size | None = None
    offset_sign: int = 0
    is_refused: bool = False
    is_asked: bool = False
    names_hole: bool = False
    by_template: bool = False
    spans: list[Span] = field(default_factory=list)

    def has_size(self) -> bool:
        """Whether any size of the hole was said."""
        return any(self.claims.get(key) for key in ("length", "width", "diameter"))


@dataclass(slots=True)
class Piece:
    """A slab that the message asks for."""

    use: str = ""
    shape: str = ""
    quantity: int = 1
    quantity_spans: tuple[Span, ...] = ()
    claims: Claims = field(default_factory=dict)
    openings: list[Opening] = field(default_factory=list)
    corner: Word | None = None
    halves: tuple[Span, ...] = ()
    ends_wall: set[str] = field(default_factory=set)
    spans: list[Span] = field(default_factory=list)
    use_spans: tuple[Span, ...] = ()
    label: str = ""
    names: set[str] = field(default_factory=set)
    called: set[str] = field(default_factory=set)
    group: frozenset[str] = frozenset()
    wants_least: bool = False
    like: Piece | None = None
    like_in: frozenset[str] = frozenset()

    def has_size(self) -> bool:
        """Whether any size of the slab was said."""
        return any(self.claims.values())


@dataclass(slots=True)
class Scene:
    """Everything found: the pieces, and what is said of all of them.

    ``is_split``: they are the legs of one L, the shorter of which ``turns`` left or right.
    """

    pieces: list[Piece] = field(default_factory=list)
    common: Claims = field(default_factory=dict)
    rooms: list[tuple[str, Span, Piece | None]] = field(default_factory=list)
    is_split: bool = False
    turns: Word | None = None


def say(claims: Claims, key: str, claim: Claim) -> None:
    """Add a size to what is claimed of something, at most so many times."""
    listed = claims.setdefault(key, [])
    if len(listed) < MOST_CLAIMS:
        listed.append(claim)


def newest(claims: Iterable[Claim]) -> list[Claim]:
    """Give the claims that no later message or correction replaces; those agreeing once each."""
    listed = list(claims)
    if not all(claim.opinion for claim in listed):
        listed = [claim for claim in listed if not claim.opinion]
    if any(claim.strong for claim in listed):
        listed = [claim for claim in listed if claim.strong]
    top = max((claim.rank for claim in listed), default=(0, 0))
    kept: list[Claim] = []
    standing = [claim for claim in listed if claim.rank == top]
    if top[1]:  # of several corrections the last one stands
        standing = standing[-1:]
    for claim in standing:
        if not any(claim.agrees(other) for other in kept):
            kept.append(claim)
    return kept
