"""Places said without a number: in the middle, behind the basin, in line, to either side."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.places.above import is_under
from ledgerstone.enquiry.places.beside import note_beside, read_beside, read_sideways
from ledgerstone.enquiry.places.middles import is_on_one_unit
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence, openings_at
from ledgerstone.enquiry.scene.said import SaidOpening, SaidPiece, say
from ledgerstone.enquiry.scene.subjects import ROUND_HOLES
from ledgerstone.enquiry.sentence.axes import axis_after, axis_before
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.sentence.sided import side_of_middle
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.words.lexicon import NOUNS
from ledgerstone.enquiry.words.word_sets import word_set

_SMALL: Final = frozenset({*ROUND_HOLES, "hole"})
_BASINS: Final = frozenset({"sink", "basin"})
_SLABS: Final = word_set(
    "width depth side run slab top worktop length table shelf island counter edge back rear piece"
)
_AND: Final = frozenset({"and", "und", ",", "/", "&"})
_DENIED: Final = frozenset(["nothing", "no", "nichts", "without"])
_UNITS: Final = frozenset({"unit", "cabinet", "cupboard", "unterschrank", "schrank", "drawer"})
_EACH: Final = frozenset({"each", "je", "jeweils"})
_ALL: Final = frozenset(["both", "all", "each", "beide", "alle"])
_MIDDLE: Final = word_set("center centre middle mitte central mittig")
_ONES: Final = (["one"], ["piece"], ["top"], ["slab"])
_MIDDLE_ONE: Final = frozenset(
    {("middle", "one"), ("centre", "one"), ("center", "one"), ("die", "mittlere")}
)
_EQUAL: Final = word_set("same equal equally gleich gleichviel")
_EITHER: Final = {
    "y": (word_set("before front vorn vorne"), word_set("behind back hinten dahinter")),
    "x": (word_set("left links"), word_set("right rechts")),
}
_SIZES: Final = word_set("length depth width länge tiefe breite")
_ENDS: Final = frozenset({",", ";", ":"})
_SIDES: Final = {"x": ("left", "right"), "y": ("front", "back")}
_IN_LINE: Final = 12  # atoms: "in line with the middle of the sink front to back"
_IN_DEPTH: Final = ("front to back", "front and back", "vorn nach hinten", "in der tiefe")
_ANOTHER: Final = word_set("and a an one two und ein eine einem einen zwei")


def read_places(focus: Focus, parsed: ParsedSentence) -> None:
    """Read where a sentence puts openings without a number."""
    named = [
        mention
        for mention in parsed.found
        if mention.kind in ("open", "hole") and not mention.is_denied
    ]
    _read_over_cupboards(focus, parsed)
    _read_centred(focus, parsed, named)
    if focus.subjects.piece is not None:
        _read_behind(focus, parsed, focus.subjects.piece, named)
        read_sideways(focus, parsed)
        read_beside(focus, parsed, focus.subjects.piece, named)
        note_beside(focus, parsed)


def span_of(sentence: Sentence, start: int, end: int) -> TextSpan:
    """Return where in the text a run of atoms stands."""
    atoms = sentence.atoms
    return atoms[start].start, atoms[min(end, len(atoms)) - 1].end


# --- over a cupboard ----------------------------------------------------------------------------


def _read_over_cupboards(focus: Focus, parsed: ParsedSentence) -> None:
    """Put an opening over the middle of a cupboard, where it is said how far that is."""
    for i, cupboard in parsed.middles.items():
        middle = cupboard.middle()
        for opening in _whose(focus, parsed, i) if middle is not None else ():
            if middle is not None and opening.what not in ROUND_HOLES:
                say(opening.claims, cupboard.side, middle)


# --- in the middle ------------------------------------------------------------------------------


def _read_centred(focus: Focus, parsed: ParsedSentence, named: list[Mention]) -> None:
    sentence = parsed.sentence
    _read_equal(focus, parsed)
    for i, count in (*sentence.marks("centred"), *_alone_in_clause(sentence)):
        end = i + count
        is_which = sentence.words[end : end + 1] in _ONES  # "the sink is in the middle one"
        is_which = is_which and not any(
            end < one.start <= end + 2 and all(sentence.words[end : one.start]) for one in named
        )
        is_on_unit = not focus.has_row and is_on_one_unit(sentence.words, end)
        over = [parsed.middles[k] for k in range(i, end) if k in parsed.middles]
        if is_which or any(not is_on_unit or one.start is not None for one in over):
            continue
        whose = _whose(focus, parsed, i)
        other = _named_after(focus, sentence, end, whose)
        is_about = other is not None or is_on_unit or _is_on_slab(parsed, i, end)
        if not whose or not is_about or any(begin == end for begin, _ in sentence.marks("behind")):
            continue
        axis = parsed.ways.get(end) or axis_after(sentence, end) or axis_before(sentence, i)
        axis = "x" if is_on_unit and not axis else axis
        axis = "x" if "along" in sentence.words[i:end] else axis
        axis = "y" if {"front", "back"} <= set(sentence.words[i:end]) else axis
        axis = "x" if {"left", "right"} <= set(sentence.words[i:end]) else axis
        span = span_of(sentence, i, end + 3 if axis else end)
        of_side = side_of_middle(sentence, i, end) if axis != "y" else None
        for opening in whose:
            if of_side is not None:
                opening.at_side = of_side.side
            if other is not None:
                opening.level_with, opening.level_spans = other, (span,)
            elif axis:
                opening.centred[axis] = (span,)
                for side in _SIDES[axis]:  # an older message's places no longer count
                    claims = opening.claims.get(side, [])
                    claims[:] = [claim for claim in claims if claim.rank[0] >= parsed.rank[0]]
            elif of_side is not None:
                whole = span_of(sentence, of_side.start, of_side.end)
                opening.loosely_centred["x"] = (whole,)
            else:
                _centre_loosely(opening, span, [size for size in parsed.sizes if size.at < i])


def _read_equal(focus: Focus, parsed: ParsedSentence) -> None:
    """Centre what has "the same amount before it as behind it", or as much left as right."""
    words = set(parsed.sentence.words)
    if not _EQUAL & words or any(size.side for size in parsed.sizes):
        return
    for axis, (near, far) in _EITHER.items():
        at = next((i for i, word in enumerate(parsed.sentence.words) if word in _EQUAL), 0)
        piece = focus.subjects.piece
        alone = piece.openings if piece is not None and len(piece.openings) == 1 else []
        whose = _whose(focus, parsed, at) or alone
        for opening in whose if near & words and far & words else ():
            opening.centred.setdefault(axis, (span_of(parsed.sentence, at, at + 1),))


def _alone_in_clause(sentence: Sentence) -> list[tuple[int, int]]:
    """Return where a clause says "center" and nothing else: "yes, 2 inches, center"."""
    atoms, words = sentence.atoms, sentence.words
    return [
        (i, 1)
        for i in range(1, len(atoms))
        if words[i] in _MIDDLE
        and (_is_of_dimension(words, i) or atoms[i - 1].word in _ENDS)
        and (_is_of_dimension(words, i) or i + 1 == len(atoms) or atoms[i + 1].word in ".;!")
        and not any(i == start for start, _ in sentence.marks("centred"))
    ]


def _is_of_dimension(words: list[str], i: int) -> bool:
    """Return whether a middle is of one of the slab's sizes: "middle of the length"."""
    return words[i + 1 : i + 2] in (["of"], ["der"]) and bool(_SIZES & set(words[i + 2 : i + 4]))


def _is_on_slab(parsed: ParsedSentence, start: int, end: int) -> bool:
    """Whether "centred" is about the slab: not so far from an end, not on a window, not denied."""
    words = parsed.sentence.words
    if end in parsed.ways:
        return True  # "centred on the 920"
    if _UNITS & set(words[end : end + 5]) and words[end : end + 1] != ["between"]:
        return False  # "in the middle of the sink unit"
    near = [size.at for size in parsed.sizes if size.side and end <= size.at <= end + 2]
    if near and not _AND & {atom.word for atom in parsed.sentence.atoms[end : near[0]]}:
        return False
    if any(mention.kind == "slab" and end <= mention.start <= end + 3 for mention in parsed.found):
        return not _DENIED & set(words[start : end + 2])
    on_other = {"on", "window", "fenster"} & set(words[end : end + 2])
    if (on_other and not _SLABS & set(words[end : end + 4])) or is_under(words, end):
        return False
    return not _DENIED & set(words[start : end + 2])


def _whose(focus: Focus, parsed: ParsedSentence, at: int) -> list[SaidOpening]:
    piece, held = focus.subjects.piece, focus.held
    if piece is None:
        return []
    words = parsed.sentence.words
    if _ALL & set(words[max(0, at - 2) : at]) and len(piece.openings) > 1:
        return [
            opening
            for opening in piece.openings
            if opening.what not in ROUND_HOLES and not opening.is_refused
        ]
    if not held and focus.on_opening and _ALL & set(parsed.sentence.words):
        return [opening for opening in piece.openings if opening.what not in ROUND_HOLES]
    current = focus.subjects.openings if held or focus.on_opening else []
    named = [opening for opening in openings_at(held, at) or current if not opening.is_refused]
    is_odd = len(named) % 2 == 1 and tuple(words[max(0, at - 2) : at]) in _MIDDLE_ONE
    return [named[len(named) // 2]] if is_odd else named  # of a row of three


def _named_after(
    focus: Focus, sentence: Sentence, end: int, whose: list[SaidOpening]
) -> SaidOpening | None:
    """Return the opening in "central to the sink", other than the one that is central."""
    piece = focus.subjects.piece
    for i in range(end, min(end + 4, len(sentence.words))):
        if sentence.atoms[i].kind == "mark" or sentence.words[i] in _ANOTHER:
            return None  # the words in brackets are about the one that they stand behind
        found = NOUNS.at(sentence.words, i) if sentence.words[i] else None
        if found is not None and found[0].startswith("open:") and piece is not None:
            what = found[0].removeprefix("open:")
            named = [
                opening
                for opening in piece.openings
                if opening.what == what and opening not in whose
            ]
            return named[-1] if named else None
    return None


def _centre_loosely(opening: SaidOpening, span: TextSpan, before: list[Measure]) -> None:
    """In the middle, both ways; it contradicts only the distance that it is said to follow from."""
    opening.loosely_centred |= {"x": (span,), "y": (span,)}
    for one in before:
        if one.side in ("left", "right"):
            opening.centred["x"] = (span,)
        elif one.side in ("front", "back"):
            opening.centred["y"] = (span,)


# --- behind and beside another ------------------------------------------------------------------


def _read_behind(
    focus: Focus, parsed: ParsedSentence, piece: SaidPiece, named: list[Mention]
) -> None:
    """Put a tap on the centre line of the basin that it stands behind."""
    sentence = parsed.sentence
    for i, count in sentence.marks("behind"):
        if _level_in_depth(focus, parsed, piece, i):
            continue
        standing = [opening for opening in piece.openings if not opening.is_refused]
        big = [one for one in standing if one.what not in _SMALL or one.claims.get("length")]
        current = focus.subjects.openings
        small = [
            one for one in current if one.what in _SMALL and one in standing and one not in big
        ]
        ahead = [one for one in named if i <= one.start <= i + 8 and one.name not in _SMALL]
        ahead = [one for one in ahead if one.kind == "open"]
        whose = [one for one in big if ahead and one.what == ahead[0].name]
        if ahead and not whose and ahead[0].name not in _BASINS:
            continue
        whose = whose or big
        if small and whose:
            if _EACH & set(sentence.words):
                _repeat(piece, small, len(whose))
            _level(small, whose, span_of(sentence, i, i + count + 2))
            by = [size for size in parsed.sizes if size.role == "behind" and size.at + 1 == i]
            for one in small if by else ():
                one.behind_by = by[0].size
            focus.subjects.openings = [
                opening for opening in piece.openings if opening.what == small[0].what
            ]


def _level_in_depth(focus: Focus, parsed: ParsedSentence, piece: SaidPiece, at: int) -> bool:
    """Note what is as far from the front as another: "in line with the sink front to back"."""
    sentence = parsed.sentence
    ahead = " ".join(sentence.words[at : at + _IN_LINE])
    if not any(way in ahead for way in _IN_DEPTH):
        return False
    names = [one.name for one in parsed.found if at <= one.start < at + _IN_LINE]
    others = [one for one in piece.openings if one.what in names]
    placed = [one for one in focus.subjects.openings if one.what not in names]
    if len(others) != 1 or not placed:
        return False
    for one in placed:
        one.in_depth_with, one.level_spans = others[0], (span_of(sentence, at, at + _IN_LINE),)
    return True


def _repeat(piece: SaidPiece, small: list[SaidOpening], count: int) -> None:
    """Make as many of an opening as there are basins: "one behind each"."""
    first = small[0]
    while len(small) < count:
        more = SaidOpening(first.what, first.kind, rim=first.rim, is_asked=True)
        more.names_hole = first.names_hole
        more.claims = {key: list(claims) for key, claims in first.claims.items()}
        piece.openings.append(more)
        small.append(more)


def _level(small: list[SaidOpening], whose: list[SaidOpening], span: TextSpan) -> None:
    for one in small:
        one.loosely_centred.pop("y", None)
    if len(small) == len(whose):
        for one, other in zip(small, whose, strict=True):
            one.level_with, one.level_spans = other, (span,)
    elif len(small) % 2:
        middle = small[len(small) // 2]
        middle.level_with, middle.level_spans = whose[-1], (span,)
