"""What sentences say without numbers: centred, behind the basin, undermount, round, no hob."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.lexicon import AXES, mark
from ledgerstone.enquiry.measures import Measure
from ledgerstone.enquiry.mentions import Mention
from ledgerstone.enquiry.scene import Opening, Piece, Span, Word
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.settle import longest_along
from ledgerstone.enquiry.subjects import ROUND_HOLES, Subjects, has_mark

_SMALL: Final = frozenset({*ROUND_HOLES, "hole"})
_BASINS: Final = frozenset({"sink", "basin"})
_OFFERS: Final = frozenset("we our us wir unser unsere".split())
_CENTRE_NOUNS: Final = frozenset({"middle", "centre", "center", "mitte", "line"})
_EDGES: Final = frozenset("edge edges corner corners kante kanten vorderkante ecke ecken rim arris sides".split())
_SHAPED: Final = frozenset("round rounded chamfer bevel radius bevelled beveled chamfered radiused eased fase gefast rund abgerundet gerundet cut off cropped".split())
_FEATURE_MM: Final = 60.0
_HEADS: Final = frozenset({"x", "×", "by"})


def read_shape(piece: Piece, mention: Mention, sentence: Sentence) -> None:
    """Take the slab's shape from the words about its name."""
    near = sentence.words[max(0, mention.start - 4) : mention.end + 4]
    before = sentence.words[max(0, mention.start - 3) : mention.end]
    if any(True for _ in mark("lshape").all_in(near)):
        piece.shape = "l-shape"
    elif not piece.shape and any(True for _ in mark("round").all_in(before)):
        piece.shape = "round"


def read_l(subjects: Subjects, sentence: Sentence) -> None:
    """Take the piece in hand for an L where a sentence calls it one."""
    if has_mark(sentence, "lshape"):
        subjects.current().shape = "l-shape"


def read_quantity(piece: Piece, mention: Mention, sentence: Sentence, sizes: list[Measure]) -> None:
    """Take how many of a piece are wanted."""
    if mention.count > 1 and piece.quantity == 1:
        atoms = sentence.atoms
        piece.quantity = min(mention.count, 24)
        low = max(0, mention.start - 4)
        piece.quantity_spans = ((atoms[low].start, atoms[mention.end - 1].end),)


def is_offer(sentence: Sentence) -> bool:
    """Whether the workshop speaks of what it does, not of what was asked."""
    return bool(_OFFERS & set(sentence.words)) or "longest" in sentence.words


def is_old_scope(sentence: Sentence, measure: Measure) -> bool:
    """Whether a size is of what is there now, or of somebody else's."""
    words = sentence.words
    renewed = [i for i, _, _ in mark("new").all_in(words)]
    for i, count, _ in mark("gone").all_in(words):
        if i < measure.at and not any(i + count <= j < measure.at for j in renewed):
            return True
        if i > measure.at and not any(j < measure.at for j in renewed):
            return True
    for i, _, _ in mark("old").all_in(words):
        apart = any(atom.word in {",", ";"} for atom in sentence.atoms[measure.at : i])
        if i > measure.at and not apart and not any(j < measure.at for j in renewed):
            return True
    return False


def is_renewed(sentence: Sentence, since: int, until: int) -> bool:
    """Whether words between two places turn from what is there to what is wanted."""
    return any(since <= i < until for i, _, _ in mark("new").all_in(sentence.words))


def is_feature(sentence: Sentence, measure: Measure, found: list[Mention]) -> bool:
    """Whether a size is of a chamfer, a rounding, a drip or an overhang."""
    for mention in found:
        if mention.kind == "feature":
            gap = mention.start - measure.at if mention.start > measure.at else measure.at - mention.end
            between = sentence.atoms[min(measure.at, mention.end) : max(measure.at, mention.start)]
            if gap <= 5 and not any(atom.word in ",;" and mention.end <= measure.at for atom in between) and (
                measure.of == 1 and not measure.role and not measure.side
            ):
                return True
    if measure.of > 1 or measure.role or measure.side:
        return False
    words = set(sentence.words)
    small = measure.size.unit in ("mm", None) and measure.size.amount <= 30 or (
        measure.size.unit == "in" and measure.size.amount <= 1
    )
    return small and bool(words & _EDGES) and bool(words & _SHAPED)


def is_beside(sentence: Sentence, measure: Measure) -> bool:
    """Whether a size is the distance of a row's openings from its middle."""
    after = sentence.words[measure.at + 1 : measure.at + 6]
    return any(True for _ in mark("sideways").all_in(after))


def is_reference(mention: Mention, sentence: Sentence, prepositions: frozenset[str]) -> bool:
    """Whether a hole is named only to say where another is: behind the sink, in line with it."""
    words = sentence.words
    if mention.preposition in prepositions and mention.preposition not in ("with", "as"):
        return True
    after = words[mention.end : mention.end + 3]
    if after[:1] == ["'s"] and set(after) & {"center", "centre", "centreline", "centerline"}:
        return after[2:3] in (["line"], []) or "centreline" in after or "centerline" in after
    near = words[max(0, mention.start - 8) : mention.start]
    led = any(True for _ in mark("behind").all_in(near))
    return led and not mention.is_indefinite and not mention.names_hole


def is_fitted_elsewhere(mention: Mention, sentence: Sentence, found: list[Mention]) -> bool:
    """Whether a tap comes out of the wall or stands on the sink, so that it needs no hole; whether
    a bowl only stands on the slab."""
    words = set(sentence.words)
    if mention.name == "tap" and not mention.names_hole:
        on_wall = {"wall", "wand"} & words and not any(atom.kind == "size" for atom in sentence.atoms)
        after = sentence.words[mention.end : mention.end + 8]
        on_sink = any(
            word in ("in", "on", "auf", "im", "into")
            and {"sink", "basin", "itself", "spüle", "becken"} & set(after[j + 1 : j + 3])
            for j, word in enumerate(after)
        )
        wall_named = mention.start > 0 and sentence.words[mention.start - 1] in ("wall", "mounted")
        return bool(on_wall or on_sink or wall_named)
    return False


def refuse(subjects: Subjects, mention: Mention, sentence: Sentence) -> None:
    """Note that a hole is not wanted."""
    piece = subjects.piece
    if piece is None or mention.kind == "hole":
        return
    near = sentence.words[max(0, mention.start - 5) : mention.start]
    if {"have", "know", "got", "haben", "weiß"} & set(near):
        return
    for opening in piece.openings:
        if opening.what == mention.name and not opening.has_size():
            opening.is_refused = True


def read(
    sentence: Sentence, found: list[Mention], sizes: list[Measure], subjects: Subjects, *, on_opening: bool
) -> None:
    """Read what a sentence says of places and rims without a number."""
    named = [m for m in found if m.kind in ("open", "hole") and not m.is_denied]
    _read_rims(sentence, named, subjects)
    _read_turns(sentence, sizes, subjects, on_opening=on_opening)
    _read_centred(sentence, named, sizes, subjects, on_opening=on_opening)
    _read_behind(sentence, named, subjects)
    _read_sideways(sentence, sizes, subjects)
    _read_rounds(sentence, subjects, on_opening=on_opening)
    _read_halves(sentence, subjects)


def _span(sentence: Sentence, start: int, end: int) -> Span:
    atoms = sentence.atoms
    return atoms[start].start, atoms[min(end, len(atoms)) - 1].end


def _read_rims(sentence: Sentence, named: list[Mention], subjects: Subjects) -> None:
    piece = subjects.piece
    if piece is None:
        return
    for tag in ("shown", "covered"):
        for i, count, _ in mark(tag).all_in(sentence.words):
            if any(sentence.words[j] and mark("not").at(sentence.words, j) for j in range(max(0, i - 2), i)):
                continue
            whose = [one for one in subjects.openings if one.what not in _SMALL - {"waste"}]
            if not whose:
                whose = [one for one in piece.openings if one.what in _BASINS or one.what == "hob"][-1:]
            if not whose and len(piece.openings) == 1:
                whose = list(piece.openings)
            for opening in whose:
                if opening.rim is None:
                    opening.rim = Word(tag, (_span(sentence, i, i + count),))


def _read_turns(sentence: Sentence, sizes: list[Measure], subjects: Subjects, *, on_opening: bool) -> None:
    """"With the long side along the worktop" lays a hole."""
    words = sentence.words
    for i, word in enumerate(words):
        if word not in ("long", "longer", "longest", "lange", "längere") or not on_opening:
            continue
        following = words[i + 1 : i + 3]
        if not ({"side", "way", "edge", "seite", "dimension"} & set(following)):
            continue
        for j in range(i + 1, min(i + 7, len(words))):
            axis = AXES.at(words, j) if words[j] else None
            if axis is not None and words[j] not in ("wide", "long", "deep"):
                for opening in subjects.openings:
                    longest_along(opening, axis[0])
                break


def _axis_near(sentence: Sentence, start: int) -> str:
    words = sentence.words
    joined = " ".join(words[start : start + 9])
    if "front and back" in joined or "front to back" in joined or "vorn" in joined:
        return "y"
    for j in range(start, min(start + 6, len(words))):
        if sentence.atoms[j].kind == "size":
            return ""
        axis = AXES.at(words, j) if words[j] else None
        if axis is not None and words[j] not in ("wide", "long", "deep", "lang", "breit", "tief", "quer"):
            return axis[0]
    return ""


def _read_centred(
    sentence: Sentence, named: list[Mention], sizes: list[Measure], subjects: Subjects, *, on_opening: bool
) -> None:
    words = sentence.words
    for i, count, _ in mark("centred").all_in(words):
        end = i + count
        if any(one.side and end <= one.at <= end + 2 for one in sizes):
            continue
        if {"on", "window", "fenster"} & set(words[end : end + 2]) or "window" in words[end : end + 5]:
            continue
        denied = any(words[j] in ("nothing", "no", "nichts", "without") for j in range(i, min(end + 2, len(words))))
        whose = _whose(sentence, named, i, subjects, on_opening=on_opening)
        if denied or not whose:
            continue
        axis = _axis_near(sentence, end) or _axis_before(sentence, i)
        span = _span(sentence, i, end + 3 if axis else end)
        for opening in whose:
            if axis:
                opening.centred[axis] = (span,)
            else:
                _centre_loosely(opening, span, [one for one in sizes if one.at < i])


def _axis_before(sentence: Sentence, at: int) -> str:
    joined = " ".join(sentence.words[max(0, at - 5) : at])
    if joined.endswith(("front to back", "front to back and", "left to right and front to back")):
        return "y" if "left to right" not in joined else ""
    return "x" if joined.endswith(("left to right", "side to side")) else ""


def _centre_loosely(opening: Opening, span: Span, before: list[Measure]) -> None:
    """In the middle, both ways; it contradicts only the distance that it is said to follow from."""
    opening.loosely_centred |= {"x": (span,), "y": (span,)}
    for one in before:
        if one.side in ("left", "right"):
            opening.centred["x"] = (span,)
        elif one.side in ("front", "back"):
            opening.centred["y"] = (span,)


def _whose(
    sentence: Sentence, named: list[Mention], at: int, subjects: Subjects, *, on_opening: bool
) -> list[Opening]:
    words = set(sentence.words)
    piece = subjects.piece
    if piece is None:
        return []
    if not named and {"both", "all", "each", "beide", "alle"} & words and on_opening:
        return [one for one in piece.openings if one.what not in ROUND_HOLES]
    if named or on_opening:
        return [one for one in subjects.openings if not one.is_refused]
    return []


def _read_behind(sentence: Sentence, named: list[Mention], subjects: Subjects) -> None:
    """Put a tap on the centre line of the basin that it stands behind."""
    piece = subjects.piece
    if piece is None:
        return
    for i, count, _ in mark("behind").all_in(sentence.words):
        small = [one for one in subjects.openings if one.what in _SMALL and not one.is_refused]
        if not small:
            continue
        ahead = [m for m in named if i <= m.start <= i + 8 and m.kind == "open" and m.name not in _SMALL]
        big = [
            one
            for one in piece.openings
            if (one.what not in _SMALL or one.claims.get("length")) and not one.is_refused
        ]
        small = [one for one in small if one not in big]
        if not small:
            continue
        whose = [one for one in big if ahead and one.what == ahead[0].name] or big
        if ahead and not [one for one in big if one.what == ahead[0].name] and ahead[0].name not in _BASINS:
            continue
        if not whose:
            continue
        span = _span(sentence, i, i + count + 2)
        _level(piece, small, whose, span, each="each" in sentence.words)
        subjects.openings = [one for one in piece.openings if one.what == small[0].what]


def _level(piece: Piece, small: list[Opening], whose: list[Opening], span: Span, *, each: bool) -> None:
    if each and len(whose) > len(small):
        for _ in range(len(whose) - len(small)):
            extra = Opening(small[0].what, kind=small[0].kind, rim=small[0].rim, names_hole=small[0].names_hole, is_asked=True)
            extra.claims = {key: list(claims) for key, claims in small[0].claims.items()}
            piece.openings.append(extra)
            small.append(extra)
    if len(small) == len(whose):
        for one, other in zip(small, whose, strict=True):
            one.level_with, one.level_spans = other, (span,)
    elif len(small) == 1 or len(small) % 2:
        small[len(small) // 2].level_with, small[len(small) // 2].level_spans = whose[-1], (span,)


def _read_sideways(sentence: Sentence, sizes: list[Measure], subjects: Subjects) -> None:
    """"The others 4 in to either side of it": a row of taps about a middle one."""
    row = subjects.openings
    for measure in sizes:
        if len(row) < 3 or len(row) % 2 == 0 or not is_beside(sentence, measure):
            continue
        middle = row[len(row) // 2]
        for i, opening in enumerate(row):
            if opening is not middle:
                opening.offset_sign = i - len(row) // 2
                opening.offset = measure.size
                opening.level_with, opening.level_spans = middle, ((measure.size.start, measure.size.end),)


def _read_rounds(sentence: Sentence, subjects: Subjects, *, on_opening: bool) -> None:
    if not on_opening:
        return
    words = sentence.words
    for i, word in enumerate(words):
        if word in ("round", "rund", "runde", "runder", "runden", "rundes") and words[i + 1 : i + 2] != ["ends"]:
            for opening in subjects.openings:
                opening.kind = opening.kind or ("circle" if not opening.claims.get("length") else "")


def _read_halves(sentence: Sentence, subjects: Subjects) -> None:
    piece = subjects.piece
    if piece is None:
        return
    for i, count, _ in mark("pieces").all_in(sentence.words):
        piece.halves = (_span(sentence, i, i + count + 2),)
