"""Two sizes of another slab than the current one: each outline that is given is a slab."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from ledgerstone.enquiry.referents.one_differs import tell_sizes_apart
from ledgerstone.enquiry.referents.slab_names import row_label
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence, Target
from ledgerstone.enquiry.scene.identity import telling_words
from ledgerstone.enquiry.scene.said import Claim, SaidPiece, newest
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.sentence.noun_phrases import is_noun
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.word_sets import word_set

# Sizes of two readings of one slab are this near: 600 and 620. Common practice, no source.
_ALIKE: Final = 1.08
_JOINS: Final = word_set(", ; and und plus & sowie also another other second third one then")
_OR: Final = frozenset({"or", "oder"})
_TAKEN_OFF: Final = word_set(
    "corner corners ecke cut cropped clipped chopped notch notched missing mitred angled"
    " ausklinkung"
)
_ALONG: Final = frozenset({"long", "wide"})
_FURTHER: Final = word_set(
    "another other second third one zweite dritte andere weitere his hers theirs mine"
)
_MORE: Final = word_set(
    "also plus and und both each two three four zwei drei vier sowie dazu außerdem left right"
    " links rechts linke rechte qty quantity pcs anzahl menge stück"
)
_THE: Final = frozenset({"the", "die", "der", "das"})
_PAIR: Final = 2
_NEAR: Final = 12

Said = Sequence[tuple[Target, Measure]]


def aimed_at(
    focus: Focus,
    parsed: ParsedSentence,
    measure: Measure,
    aimed: tuple[Mention | None, Target],
    said: Said,
) -> Target:
    """Give what a size is of: what it was aimed at, or the other slab that it begins.

    Parameters
    ----------
    aimed
        What was named last before the size, and what the size is of by that.
    """
    active, target = aimed
    apart = tell_sizes_apart(focus, parsed, measure, target)
    if apart is not None:
        return apart
    if other_outline(focus, parsed, measure, target, said):
        return begin_other(focus, parsed, measure, active)
    return target


def other_outline(
    focus: Focus, parsed: ParsedSentence, measure: Measure, target: Target, said: Said
) -> bool:
    """Return whether a size begins the outline of another slab than the one that it was aimed at.

    Parameters
    ----------
    said
        What the sizes before it in the sentence are of.
    """
    subjects = focus.subjects
    is_bound = focus.is_l() or focus.is_split or subjects.repeats or parsed.sentence.is_quoted
    if not isinstance(target, SaidPiece) or is_bound or measure.side or measure.replaced:
        return False
    if measure.of >= _PAIR and measure.place == 1:
        return _is_other_pair(focus, parsed, measure, target, said)
    if measure.of > 1 or measure.role not in _ALONG:
        return False
    return _is_told_again(focus, parsed, measure, [one for whose, one in said if whose is target])


def _is_other_pair(
    focus: Focus, parsed: ParsedSentence, measure: Measure, piece: SaidPiece, said: Said
) -> bool:
    """Return whether a pair differs from the outline known, and words or a list lead on to it."""
    pairs = (one for whose, one in reversed(said) if whose is piece and one.of >= _PAIR)
    pair = next((pair for pair in pairs if pair.place == 1), None)
    if not _may_be_other(parsed, measure, pair):
        return False
    known = _known(focus, piece, pair)
    own = [focus.assigner.claim(member, "length", (0, 0)) for member in measure.members[:2]]
    if known is None or None in own:
        return False
    new = sorted((one.mm for one in own if one is not None), reverse=True)
    return any(max(a, b) > _ALIKE * min(a, b) for a, b in zip(new, known, strict=True))


def _may_be_other(parsed: ParsedSentence, measure: Measure, pair: Measure | None) -> bool:
    """Whether words or a list lead on to a pair, from the pair before it in the sentence if any."""
    if pair is not None:
        return _leads_on(parsed, pair.members[-1].at, measure.at)
    words = parsed.sentence.words[max(0, measure.at - _NEAR) : measure.at]
    names = any(
        mention.kind == "slab"
        and not mention.is_old
        and (mention.name or mention.determiner not in _THE)
        and mention.start <= measure.members[-1].at + 4
        for mention in parsed.found
    )
    return names or bool(_FURTHER & set(words)) or parsed.sentence.starts_line


def _known(focus: Focus, piece: SaidPiece, pair: Measure | None) -> list[float] | None:
    """Return the two sizes that a slab has so far, mm, the larger first."""
    claims: list[Claim | None]
    if pair is not None:
        claims = [focus.assigner.claim(member, "length", (0, 0)) for member in pair.members[:2]]
    else:
        keys = ("diameter",) * 2 if "diameter" in piece.claims else ("length", "width")
        listed = [newest(piece.claims.get(key, [])) for key in keys]
        claims = [one[-1] if one else None for one in listed]
    sizes = [claim.mm for claim in claims if claim is not None]
    return sorted(sizes, reverse=True) if len(sizes) == _PAIR else None


def _leads_on(parsed: ParsedSentence, since: int, until: int) -> bool:
    """Whether the words between two pairs go on to another slab: to no corner, and to no choice."""
    between = {atom.word for atom in parsed.sentence.atoms[since + 1 : until]}
    return bool(between & _JOINS) and not between & (_TAKEN_OFF | _OR)


def _is_told_again(
    focus: Focus, parsed: ParsedSentence, measure: Measure, before: Sequence[Measure]
) -> bool:
    """Whether a length and a depth are told again after both: "1600 wide and 700 deep, his …"."""
    again = [one for one in before if one.role == measure.role and one.of == 1]
    later = {size.role for size in parsed.sizes if size.at > measure.at and size.of == 1}
    if not again or not ({one.role for one in before} & later & {"deep", "wide"}):
        return False
    claims = [focus.assigner.claim(one, "length", (0, 0)) for one in (again[-1], measure)]
    known, new = claims
    return known is not None and new is not None and not known.agrees(new)


def begin_other(
    focus: Focus, parsed: ParsedSentence, measure: Measure, active: Mention | None
) -> SaidPiece:
    """Begin the slab that a size tells of; it is called by the words that lead to the size."""
    piece = focus.subjects.current()
    told = [size for size in parsed.sizes if size.of > 1 or size.role or size.size.unit is not None]
    sizes = [one.members[-1].at if one.members else one.at for one in told]
    since = max((at for at in sizes if at < measure.at), default=-1)
    heads = [
        mention
        for mention in parsed.found
        if mention.kind == "slab" and since < mention.start < measure.at
    ]
    heads = [head for head in heads if not head.preposition and head.name] or [
        one for one in (active,) if one is not None and one.kind == "slab"
    ]
    focus.subjects.pending, focus.named = True, None
    made = focus.start_piece(heads[0].name if heads else piece.use)
    if parsed.sentence.is_item and not made.names:
        made.names = {word for word in parsed.sentence.words[: measure.at] if word}
    made.called |= telling_words(parsed.sentence.words[since + 1 : measure.at])
    made.nouns |= _noun_before(parsed, since, measure.at)
    first = parsed.sizes[0].at if parsed.sizes else 0
    if len(focus.subjects.scene.pieces) == _PAIR and first < measure.at:
        piece.called |= telling_words(parsed.sentence.words[:first])
    return made


def _noun_before(parsed: ParsedSentence, since: int, at: int) -> set[str]:
    """Return the words right before a size, by which what it is of is called: "a modesty panel"."""
    words = parsed.sentence.words
    named = [i for i in range(max(since + 1, at - _PAIR), at) if is_noun(parsed.sentence, i)]
    return {" ".join(words[named[0] : at])} if named and named[-1] == at - 1 else set()


def note_further(made: Sequence[SaidPiece], sentence: Sentence) -> None:
    """Note that slabs are told as more than those before: by a list, or as "another"."""
    words = set(sentence.words)
    is_more = sentence.is_item or bool(row_label(sentence)) or bool(words & (_FURTHER | _MORE))
    for piece in made:
        piece.is_further = is_more or len(made) > 1
