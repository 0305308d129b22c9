"""What a message was found to speak of: pieces, their openings, and each size with its words."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Final, Literal

from ledgerstone.enquiry.text.sizes import Size
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.quantities import Length

How = Literal["said", "worked-out"]
NOWHERE: TextSpan = (-1, -1)  # of what stands outside the text
MAX_CLAIMS = 24  # a size is said twice or three times
AGREE_MM = 0.5
_IMPERIAL: Final = frozenset({"in", "ft"})
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
        Whether it is only what someone thinks, so that it is taken for no more than a doubt.
    elsewhere
        What a number without a unit is in another one, where it is not on the slab in the first.
    """

    length: Length
    spans: tuple[TextSpan, ...]
    rank: tuple[int, int] = (0, 0)
    order: int = 0
    strong: bool = True
    about: bool = False
    how: How = "said"
    alternative: Length | None = None
    opinion: bool = False
    elsewhere: Length | None = None

    @property
    def mm(self) -> float:
        """The size in millimetres."""
        return self.length.mm

    def repeats(self, other: Claim) -> bool:
        """Return whether it says of a size what another claim says, in the same message."""
        return self._said() == other._said()

    def _said(self) -> tuple[object, ...]:
        kind = (self.rank, self.strong, self.about, self.how, self.opinion)
        return (self.length.mm, self.length.unit, self.alternative, kind)

    def agrees(self, other: Claim) -> bool:
        """Whether two sizes are one, a conversion between inches and millimetres among them."""
        one, another = self.length.mm, other.length.mm
        gap = abs(one - another)
        if gap <= AGREE_MM:
            return True
        is_near = gap <= CONVERTED_SHARE * max(one, another)
        return is_near and (self.length.unit in _IMPERIAL) != (other.length.unit in _IMPERIAL)


@dataclass(frozen=True, slots=True)
class SaidWord:
    """Something said in words: its value and where."""

    value: str
    spans: tuple[TextSpan, ...] = ()


Claims = dict[str, list[Claim]]


@dataclass(slots=True)
class SaidOpening:
    """A hole that the message asks for."""

    what: str
    kind: str = ""
    claims: Claims = field(default_factory=dict)
    rim: SaidWord | None = None
    centred: dict[str, tuple[TextSpan, ...]] = field(default_factory=dict)
    loosely_centred: dict[str, tuple[TextSpan, ...]] = field(default_factory=dict)
    at_side: str = ""
    is_beside: bool = False
    level_with: SaidOpening | None = None
    level_spans: tuple[TextSpan, ...] = ()
    in_depth_with: SaidOpening | None = None
    offset: Size | None = None
    offset_sign: int = 0
    behind_by: Size | None = None
    is_refused: bool = False
    is_asked: bool = False
    names_hole: bool = False
    by_template: bool = False
    oval: tuple[TextSpan, ...] = ()
    spans: list[TextSpan] = field(default_factory=list)

    def has_size(self) -> bool:
        """Return whether any size of the hole was said."""
        return any(self.claims.get(key) for key in ("length", "width", "diameter"))


@dataclass(slots=True)
class SaidPiece:
    """A slab that the message asks for."""

    use: str = ""
    shape: str = ""
    quantity: int = 1
    quantity_spans: tuple[TextSpan, ...] = ()
    claims: Claims = field(default_factory=dict)
    openings: list[SaidOpening] = field(default_factory=list)
    corner: SaidWord | None = None
    halves: tuple[TextSpan, ...] = ()
    ends_wall: set[str] = field(default_factory=set)
    spans: list[TextSpan] = field(default_factory=list)
    use_spans: tuple[TextSpan, ...] = ()
    label: str = ""
    names: set[str] = field(default_factory=set)
    called: set[str] = field(default_factory=set)
    nouns: set[str] = field(default_factory=set)
    group: frozenset[str] = frozenset()
    wants_least: bool = False
    like: SaidPiece | None = None
    like_in: frozenset[str] = frozenset()
    is_counted: bool = False  # whether its number is of its own length alone
    is_further: bool = False  # told as one more, by a list or by "another"

    def has_size(self) -> bool:
        """Return whether any size of the slab was said."""
        return any(self.claims.values())


@dataclass(slots=True)
class SaidOrder:
    """Everything found: the pieces, and what is said of all of them.

    ``is_split``: they are the legs of one L, the shorter of which ``turns`` left or right.
    ``left``: where sentences stand that were not read, for there are too many pieces. ``sizes``:
    where every size stands. ``aside``: why some of those are not of a slab.
    """

    pieces: list[SaidPiece] = field(default_factory=list)
    common: Claims = field(default_factory=dict)
    rooms: list[tuple[str, TextSpan, SaidPiece | None]] = field(default_factory=list)
    is_split: bool = False
    turns: SaidWord | None = None
    left: list[TextSpan] = field(default_factory=list)
    sizes: list[TextSpan] = field(default_factory=list)
    aside: dict[TextSpan, str] = field(default_factory=dict)

    def set_aside(self, sizes: Iterable[Size], why: str) -> None:
        """Note why sizes are no slab's; what was noted first stays."""
        for size in sizes:
            self.aside.setdefault((size.start, size.end), why)


def say(claims: Claims, key: str, claim: Claim) -> None:
    """Add a size to what is claimed of something, at most so many times; said again, it is one."""
    listed = claims.setdefault(key, [])
    if len(listed) < MAX_CLAIMS and not (listed and claim.repeats(listed[-1])):
        listed.append(claim)


def newest(claims: Iterable[Claim]) -> list[Claim]:
    """Return the claims that no later message or correction replaces; those agreeing once each."""
    listed = list(claims)
    if len(listed) < 2:
        return listed
    if not all(claim.opinion for claim in listed):
        listed = [claim for claim in listed if not claim.opinion]
    if any(claim.strong for claim in listed):
        listed = [claim for claim in listed if claim.strong]
    top = max((claim.rank for claim in listed), default=(0, 0))
    kept: list[Claim] = []
    standing = [claim for claim in listed if claim.rank == top]
    if top[1]:  # of several corrections the one that stands last in the text
        last = max((claim.spans[0] for claim in standing if claim.spans), default=NOWHERE)
        standing = [claim for claim in standing if claim.spans and claim.spans[0] == last][-1:]
    for claim in standing:
        if not any(claim.agrees(other) for other in kept):
            kept.append(claim)
    return kept
