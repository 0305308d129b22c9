"""The sizes that one sentence gives to one thing become its length, width, thickness and so on."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.scene.opening_sizes import opening_key, turn
from ledgerstone.enquiry.scene.piece_keys import (
    by_group,
    has_sides,
    is_depth_and_thickness,
    is_round_by,
    piece_key,
    told_again,
)
from ledgerstone.enquiry.scene.said import Claim, SaidOpening, SaidPiece, say
from ledgerstone.enquiry.scene.subjects import ROUND_HOLES
from ledgerstone.enquiry.sentence.amounts import Amounts
from ledgerstone.enquiry.sentence.measure import Measure, in_other_unit
from ledgerstone.order import UPRIGHT_USES
from ledgerstone.quantities import Length

_PLAUSIBLE_AS: Final = {
    **{key: key for key in ("thickness", "diameter", "width")},
    **dict.fromkeys(("edge:left", "edge:right"), "width"),
}
_THIN_MM: Final = 130.0
_TIMES_DEEPER: Final = 4.0  # how much a width known is more than "depth of the slab two inches"
_LENGTH_MM: Final = 400.0
_FLAT: Final = frozenset({"worktop", "table", "hearth", "sill", "shelf"})


class SizeAssigner:
    """Assigns sizes to pieces and openings, each with its words and how recent it is."""

    def __init__(self, amounts: Amounts) -> None:
        self.amounts = amounts
        self.order = 0

    def claim(
        self, measure: Measure, role: str, rank: tuple[int, int], *, strong: bool = True
    ) -> Claim | None:
        """Make the claim of one size in one role; None if it could not be that."""
        found = self.amounts.length(measure, role)
        if found is None:
            return None
        self.order += 1
        return Claim(
            found[0],
            ((measure.size.start, measure.size.end),),
            rank,
            self.order,
            strong=strong,
            about=measure.about,
            opinion=measure.opinion,
            how="worked-out" if measure.is_sum else "said",
            alternative=found[1],
            elsewhere=in_other_unit(measure, found[0]),
        )

    def is_thin(self, measure: Measure) -> bool:
        """Return whether a size with a unit can only be a thickness."""
        has_unit = bool(measure.size.unit or self.amounts.declared)
        found = self.amounts.length(measure, "thickness") if has_unit else None
        return found is not None and found[0].mm <= _THIN_MM

    def piece(self, piece: SaidPiece, measures: Sequence[Measure], rank: tuple[int, int]) -> None:
        """Give a slab its sizes of one sentence."""
        roles = {measure.role for measure in measures}
        pairs: list[Measure] = []
        for measure in measures:
            key = "diameter" if is_round_by(piece, measure, roles) else piece_key(piece, measure)
            key = "" if key == "diameter" and has_sides(piece, rank) else key
            if key == "diameter":
                piece.shape = piece.shape or "round"
            if key in ("radius", "square"):
                self._doubled(piece, measure, rank, key)
            elif key == "deep":
                self._deep(piece, measure, rank)
            elif key == "wide":
                self._wide(piece, measure, roles, rank)
            elif key == "pair":
                pairs.append(measure)
            elif key == "alone":
                self._alone(piece, measure, measures, rank)
            elif key and not (key == "high" and self._stands(piece, measure)):
                lies = bool({"width", "diameter"} & set(piece.claims)) or self.is_thin(measure)
                as_what = (
                    "thickness" if key == "high" and lies else _PLAUSIBLE_AS.get(key, "length")
                )
                self._say(piece, key, measure, as_what, rank)
        for pair in by_group(pairs):  # "1800 x 600 or 1600 x 600"
            self._pair(piece, pair, rank)
        self._unnamed(piece, measures, rank)

    def _stands(self, piece: SaidPiece, measure: Measure) -> bool:
        """Return whether a height is how far a flat slab is from the floor."""
        claim = self.claim(measure, "length", (0, 0)) if piece.use in _FLAT else None
        return claim is not None and claim.mm > _THIN_MM and measure.of == 1

    def _say(
        self,
        piece: SaidPiece,
        key: str,
        measure: Measure,
        role: str,
        rank: tuple[int, int],
    ) -> None:
        if role == "width" and piece.use not in UPRIGHT_USES:
            role = "deep"
        claim = self.claim(measure, role, rank)
        if claim is not None:
            say(piece.claims, key, claim)

    def _doubled(self, piece: SaidPiece, measure: Measure, rank: tuple[int, int], key: str) -> None:
        """A round slab is twice its radius across; a square's sides are one size."""
        if key == "square":
            for side in ("length", "width"):
                self._say(piece, side, measure, "length", rank)
            return
        half = self.claim(measure, "hole", rank)
        if half is not None:
            whole = half.length.in_unit(2 * half.mm)
            across = Claim(whole, half.spans, rank, half.order, how="worked-out")
            say(piece.claims, "diameter", across)

    def _deep(self, piece: SaidPiece, measure: Measure, rank: tuple[int, int]) -> None:
        """Front to back; where that is far too little it is the thickness: 1200 x 500 x 50 deep."""
        claim = self.claim(measure, "deep", rank)
        wide = [claim.mm for claim in piece.claims.get("width", [])[-1:]]
        is_first = bool(wide) and "thickness" not in piece.claims
        if is_first and claim is not None and wide[0] >= _TIMES_DEEPER * claim.mm:
            claim = None
        if claim is None and (measure.place == 3 or is_first):
            self._say(piece, "thickness", measure, "thickness", rank)
        elif claim is not None:
            say(piece.claims, "width", claim)

    def _wide(
        self, piece: SaidPiece, measure: Measure, roles: set[str], rank: tuple[int, int]
    ) -> None:
        """The length where the depth or the height is told apart from it, else the width."""
        known = piece.claims
        claim = self.claim(measure, "length", (0, 0)) if measure.of == 1 else None
        again = told_again(known, claim) if claim is not None else ""
        if again:
            key = again
        elif "long" in roles or ("length" in known and not known.get("width")):
            key = "width"
        elif roles & {"deep", "high", "y"} or "width" in known:
            key = "length"
        elif measure.of > 1:
            key = "length" if self._is_longest(measure) else "width"
        else:
            key = "breadth" if measure.is_breadth and measure.of == 1 else "wide"
        self._say(piece, key, measure, "length" if key != "width" else "width", rank)

    def _is_longest(self, measure: Measure) -> bool:
        sizes = [self.claim(member, "length", (0, 0)) for member in measure.members[:2]]
        lengths = [size.mm if size else 0.0 for size in sizes]
        return (
            lengths[measure.place - 1] >= max(lengths) if measure.place <= len(lengths) else False
        )

    def _pair(
        self,
        piece: SaidPiece,
        pairs: list[Measure],
        rank: tuple[int, int],
    ) -> None:
        """Of two bare numbers the longer is the length; beside a named one it is the other."""
        grouped = pairs[0].members[:2]
        named = {one.role for one in grouped} - {"", "size"}
        if len(pairs) == 1 and named == {"dia"}:
            self._say(piece, "thickness", pairs[0], "thickness", rank)
            return
        if len(pairs) == 1 and named:
            is_length = named & {"deep", "high", "wide"} and not named & {"long"}
            if named & {"wide"}:
                is_length = not self._is_longest(next(one for one in grouped if one.role == "wide"))
            key = "length" if is_length else "width"
            if is_length and self.claim(pairs[0], key, rank) is None:
                key = "thickness"  # "600 deep x 40"
            self._say(piece, key, pairs[0], key, rank)
            return
        role = "width" if piece.use in UPRIGHT_USES else "deep"
        claims = (self.claim(one, role, rank) or self.claim(one, "length", rank) for one in pairs)
        both = [(claim, one) for claim, one in zip(claims, pairs[:2], strict=False) if claim]
        if len(both) < 2:
            return
        (first, one), (second, other) = both
        keys = ("length", "width") if first.mm >= second.mm else ("width", "length")
        keys = ("width", "thickness") if is_depth_and_thickness(piece, first, second) else keys
        for key, measure in zip(keys, (one, other), strict=True):
            self._say(piece, key, measure, key, rank)

    def _unnamed(
        self, piece: SaidPiece, measures: Sequence[Measure], rank: tuple[int, int]
    ) -> None:
        """In a list of sizes the one without a word, beside a depth, is the length."""
        bare = [
            measure
            for measure in measures
            if measure.of == 1 and measure.role == "" and not measure.axis
        ]
        others = {measure.role for measure in measures if measure.of == 1} & {"deep", "thick"}
        if (
            len(bare) != 1
            or "deep" not in others
            or piece.claims.get("length")
            or piece.shape == "round"
        ):
            return
        claim = self.claim(bare[0], "length", rank)
        if claim is not None and claim.mm > _THIN_MM:
            say(piece.claims, "length", claim)

    def _alone(
        self,
        piece: SaidPiece,
        measure: Measure,
        measures: Sequence[Measure],
        rank: tuple[int, int],
    ) -> None:
        """A single size without a word: a thickness if so thin, a round top's diameter if wide."""
        is_new = all(one.rank < rank for one in piece.claims.get("length", []))
        if measure.is_subject and is_new and piece.shape != "round":
            whole = self.claim(measure, "length", rank)
            if whole is not None and whole.mm >= _LENGTH_MM:
                say(piece.claims, "length", whole)
                return
        if measure.is_attribute and not piece.claims.get("length") and piece.shape != "round":
            whole = self.claim(measure, "length", rank, strong=False)
            if whole is not None and whole.mm >= 2 * _LENGTH_MM:
                say(piece.claims, "length", whole)  # "a 3 metre worktop"
                return
        if not (measure.size.unit or measure.unit_from_label or measure.is_attribute):
            return
        claim = self.claim(measure, "thickness", rank)
        known = piece.claims.get("thickness", [])
        is_newer = all(one.rank[0] < rank[0] for one in known)
        if claim is not None and claim.mm <= _THIN_MM and is_newer:
            led = piece.has_size() or len(measures) > 1 or measure.is_attribute
            if led or piece.use in UPRIGHT_USES:
                key = "width" if piece.use in UPRIGHT_USES and claim.mm > 60 else "thickness"
                say(piece.claims, key, claim)
        elif piece.shape == "round" and "diameter" not in piece.claims:
            self._say(piece, "diameter", measure, "diameter", rank)

    # --- openings ---------------------------------------------------------------------------

    def openings(
        self,
        openings: Sequence[SaidOpening],
        measures: Sequence[Measure],
        rank: tuple[int, int],
    ) -> None:
        """Give openings their sizes of one sentence, each of them the same."""
        for opening in openings:
            roles = {measure.role for measure in measures}
            for measure in measures:
                if measure.role == "square":
                    self._square(opening, measure, rank)
                key = opening_key(opening, measure, roles, measures)
                if not key:
                    continue
                strong = measure.on_hole if measure.on_hole is not None else opening.names_hole
                is_small = (
                    key == "diameter" or opening.what in ROUND_HOLES or opening.kind == "slot"
                )
                claim = self.claim(measure, "hole" if is_small else "opening", rank, strong=strong)
                if (
                    claim is None
                    and measure.role in ("wide", "deep")
                    and "length" in opening.claims
                ):
                    claim = self.claim(measure, "hole", rank, strong=strong)  # a slot "6 cm wide"
                if claim is None:
                    continue
                known = opening.claims.get("length", []) + opening.claims.get("width", [])
                if measure.of == 1 and measure.axis and any(claim.agrees(one) for one in known):
                    turn(opening, claim, measure.axis)
                else:
                    say(opening.claims, key, claim)

    def _square(self, opening: SaidOpening, measure: Measure, rank: tuple[int, int]) -> None:
        """Give a square hole its two sides: "14 1/4 square"."""
        strong = measure.on_hole if measure.on_hole is not None else opening.names_hole
        claim = self.claim(measure, "opening", rank, strong=strong)
        if claim is None:
            return
        for key in ("length", "width"):
            say(opening.claims, key, claim)


def worked_out(length: Length, mm: float, claims: Sequence[Claim]) -> Claim:
    """Make a claim that follows from others by arithmetic, with the words of all of them."""
    spans = tuple(span for claim in claims for span in claim.spans)
    return Claim(length.in_unit(mm), spans, how="worked-out")
