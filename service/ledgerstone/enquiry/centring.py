"""Places said without a number: in the middle, behind the basin, in line, to either side."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry import scope
from ledgerstone.enquiry.focus import Focus, Heard, Held
from ledgerstone.enquiry.lexicon import AXES, NOUNS
from ledgerstone.enquiry.measures import Measure
from ledgerstone.enquiry.mention import Mention
from ledgerstone.enquiry.scene import Opening, Piece, Span
from ledgerstone.enquiry.sentences import Sentence
from ledgerstone.enquiry.subjects import ROUND_HOLES
from ledgerstone.enquiry.word_sets import word_set

_SMALL: Final = frozenset({*ROUND_HOLES, "hole"})
_BASINS: Final = frozenset({"sink", "basin"})
_NO_AXIS: Final = word_set("wide long deep lang breit tief quer")
_SLABS: Final = word_set("width depth side run slab top worktop length table shelf island counter")
_AND: Final = frozenset({"and", "und", ",", "/", "&"})
_DENIED: Final = frozenset(["nothing", "no", "nichts", "without"])
_ALL: Final = frozenset(["both", "all", "each", "beide", "alle"])
_SIDES: Final = {"x": ("left", "right"), "y": ("front", "back")}
_IT: Final = frozenset(["it", "this", "davon", "daneben", "first", "other", "ersten"])


def read_places(focus: Focus, heard: Heard) -> None:
    """Read where a sentence puts openings without a number."""
    named = [one for one in heard.found if one.kind in ("open", "hole") and not one.is_denied]
    _read_centred(focus, heard)
    if focus.subjects.piece is not None:
        _read_behind(focus, heard, focus.subjects.piece, named)
        _read_sideways(focus, heard)
        _read_beside(focus, heard, focus.subjects.piece, named)


def span_of(sentence: Sentence, start: int, end: int) -> Span:
    """Give where in the text a run of atoms stands."""
    atoms = sentence.atoms
    return atoms[start].start, atoms[min(end, len(atoms)) - 1].end


def held_at(held: Held, at: int) -> list[Opening]:
    """Give the openings taken up last before a word, or right after it."""
    before = [openings for start, openings in held if start <= at]
    after = [openings for start, openings in held if at < start <= at + 4]
    return before[-1] if before else after[0] if after else []


# --- in the middle ------------------------------------------------------------------------------


def _read_centred(focus: Focus, heard: Heard) -> None:
    sentence = heard.sentence
    for i, count in sentence.marks("centred"):
        end = i + count
        whose = _whose(focus, heard, i)
        if (
            not whose
            or not _is_on_slab(heard, i, end)
            or sentence.words[end : end + 1] == ["behind"]
        ):
            continue
        other = _named_after(focus, sentence, end, whose)
        axis = _axis_after(sentence, end) or _axis_before(sentence, i)
        axis = "x" if "along" in sentence.words[i:end] else axis
        span = span_of(sentence, i, end + 3 if axis else end)
        for opening in whose:
            if other is not None:
                opening.level_with, opening.level_spans = other, (span,)
            elif axis:
                opening.centred[axis] = (span,)
                for side in _SIDES[axis]:  # an older message's places no longer count
                    claims = opening.claims.get(side, [])
                    claims[:] = [one for one in claims if one.rank[0] >= heard.rank[0]]
            else:
                _centre_loosely(opening, span, [one for one in heard.sizes if one.at < i])


def _is_on_slab(heard: Heard, start: int, end: int) -> bool:
    """Whether "centred" is about the slab: not so far from an end, not on a window, not denied."""
    words = heard.sentence.words
    near = [one.at for one in heard.sizes if one.side and end <= one.at <= end + 2]
    if near and not _AND & {atom.word for atom in heard.sentence.atoms[end : near[0]]}:
        return False
    on_other = {"on", "window", "fenster"} & set(words[end : end + 2])
    if (on_other and not _SLABS & set(words[end : end + 4])) or "window" in words[end : end + 5]:
        return False
    return not _DENIED & set(words[start : end + 2])


def _whose(focus: Focus, heard: Heard, at: int) -> list[Opening]:
    piece, held = focus.subjects.piece, focus.held
    if piece is None:
        return []
    if not held and focus.on_opening and _ALL & set(heard.sentence.words):
        return [one for one in piece.openings if one.what not in ROUND_HOLES]
    in_hand = focus.subjects.openings if held or focus.on_opening else []
    return [one for one in held_at(held, at) or in_hand if not one.is_refused]


def _axis_after(sentence: Sentence, start: int) -> str:
    words = sentence.words
    axis = AXES.at(words, start) if words[start : start + 1] and words[start] else None
    if axis is not None and words[start] not in _NO_AXIS:
        return axis[0]
    joined = " ".join(words[start : start + 9])
    if "front and back" in joined or "front to back" in joined or "vorn" in joined:
        return "y"
    for i in range(start, min(start + 6, len(words))):
        if sentence.atoms[i].kind == "size":
            return ""
        axis = AXES.at(words, i) if words[i] else None
        if axis is not None and words[i] not in _NO_AXIS:
            return axis[0]
    return ""


def _axis_before(sentence: Sentence, at: int) -> str:
    joined = " ".join(sentence.words[max(0, at - 5) : at]).removesuffix(" and")
    if joined.endswith("front to back"):
        return "" if "left to right" in joined else "y"
    return "x" if joined.endswith(("left to right", "side to side")) else ""


def _named_after(
    focus: Focus, sentence: Sentence, end: int, whose: list[Opening]
) -> Opening | None:
    """Give the opening in "central to the sink", other than the one that is central."""
    piece = focus.subjects.piece
    for i in range(end, min(end + 4, len(sentence.words))):
        found = NOUNS.at(sentence.words, i) if sentence.words[i] else None
        if found is not None and found[0].startswith("open:") and piece is not None:
            what = found[0].removeprefix("open:")
            named = [one for one in piece.openings if one.what == what and one not in whose]
            return named[-1] if named else None
    return None


def _centre_loosely(opening: Opening, span: Span, before: list[Measure]) -> None:
    """In the middle, both ways; it contradicts only the distance that it is said to follow from."""
    opening.loosely_centred |= {"x": (span,), "y": (span,)}
    for one in before:
        if one.side in ("left", "right"):
            opening.centred["x"] = (span,)
        elif one.side in ("front", "back"):
            opening.centred["y"] = (span,)


# --- behind and beside another ------------------------------------------------------------------


def _read_behind(focus: Focus, heard: Heard, piece: Piece, named: list[Mention]) -> None:
    """Put a tap on the centre line of the basin that it stands behind."""
    sentence = heard.sentence
    standing = [one for one in piece.openings if not one.is_refused]
    for i, count in sentence.marks("behind"):
        big = [one for one in standing if one.what not in _SMALL or one.claims.get("length")]
        in_hand = focus.subjects.openings
        small = [
            one for one in in_hand if one.what in _SMALL and one in standing and one not in big
        ]
        ahead = [one for one in named if i <= one.start <= i + 8 and one.name not in _SMALL]
        ahead = [one for one in ahead if one.kind == "open"]
        whose = [one for one in big if ahead and one.what == ahead[0].name]
        if ahead and not whose and ahead[0].name not in _BASINS:
            continue
        whose = whose or big
        if small and whose:
            if "each" in sentence.words:
                _repeat(piece, small, len(whose))
            _level(small, whose, span_of(sentence, i, i + count + 2))
            focus.subjects.openings = [one for one in piece.openings if one.what == small[0].what]


def _repeat(piece: Piece, small: list[Opening], count: int) -> None:
    """Make as many of an opening as there are basins: "one behind each"."""
    first = small[0]
    while len(small) < count:
        more = Opening(first.what, first.kind, rim=first.rim, is_asked=True)
        more.names_hole = first.names_hole
        more.claims = {key: list(claims) for key, claims in first.claims.items()}
        piece.openings.append(more)
        small.append(more)


def _level(small: list[Opening], whose: list[Opening], span: Span) -> None:
    for one in small:
        one.loosely_centred.pop("y", None)
    if len(small) == len(whose):
        for one, other in zip(small, whose, strict=True):
            one.level_with, one.level_spans = other, (span,)
    elif len(small) % 2:
        middle = small[len(small) // 2]
        middle.level_with, middle.level_spans = whose[-1], (span,)


def _read_sideways(focus: Focus, heard: Heard) -> None:
    """Set a row of taps about a middle one: "the others 4 in to either side of it"."""
    row = focus.subjects.openings
    for measure in heard.sizes:
        if len(row) < 3 or len(row) % 2 == 0 or not scope.is_beside(heard.sentence, measure):
            continue
        middle = len(row) // 2
        for i, opening in enumerate(row):
            if i != middle:
                opening.offset, opening.offset_sign = measure.size, i - middle
                opening.level_with = row[middle]
                opening.level_spans = ((measure.size.start, measure.size.end),)


def _read_beside(focus: Focus, heard: Heard, piece: Piece, named: list[Mention]) -> None:
    """Put an opening so far to the right or the left of the slab's middle or of another one."""
    words = heard.sentence.words
    for measure in heard.sizes:
        if not measure.beside or measure.cue is None:
            continue
        end = measure.cue[1]
        ahead = [one for one in named if end <= one.start <= end + 4 and one.kind == "open"]
        others = [one for one in piece.openings if ahead and one.what == ahead[0].name]
        if not others and _IT & set(words[end - 1 : end + 2]):
            others = [one for one in piece.openings if one not in focus.subjects.openings][-1:]
        for opening in focus.subjects.openings:
            if opening not in others:
                opening.offset, opening.offset_sign = measure.size, measure.beside
                opening.level_with = others[0] if others else None
                opening.level_spans = ((measure.size.start, measure.size.end),)
                opening.loosely_centred.pop("x", None)
