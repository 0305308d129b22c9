"""Where a message turns to another piece: numbered items, lines with sizes of their own."""

from __future__ import annotations

from typing import Final

from ledgerstone.enquiry.ownership import enumerations
from ledgerstone.enquiry.referents.appliances import is_appliances_line
from ledgerstone.enquiry.referents.slab_names import (
    begins_round,
    heading_label,
    is_label_of_sizes,
    is_led_by_mark,
    is_other_run,
    is_upright_item,
    named_in,
    row_label,
    turn_at_heading,
)
from ledgerstone.enquiry.referents.told_before import told_before
from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.sentence.measures import Measure
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Sentence
from ledgerstone.enquiry.words.lexicon import LABELS, NUMBERS
from ledgerstone.enquiry.words.word_sets import word_set

_ANNOUNCED: Final = word_set("pieces items things parts bits slabs tops teile stücke platten sizes")
_DEFINITE: Final = frozenset({"the", "die", "der", "das", "this"})
_PLACES: Final = ("slab", "room", "thing", "leg")
_NEXT: Final = word_set("second third fourth other next zweite dritte vierte andere nächste")
_WHICH: Final = word_set("left right middle long longer short shorter small large big last")
_NOW: Final = word_set("now new revised updated neu jetzt nun")
_MAX_OF_ONE: Final = 24
_TRIPLE: Final = 3
_HEADING: Final = 7  # atoms
_LED: Final = 3
_AFTER_QTY: Final = 4  # atoms: "qty: 2,", "Worktop 1: 2400 long"
_SIZE_ROLES: Final = frozenset({"long", "deep", "thick", "wide", "high"})


def begin(focus: Focus, parsed: ParsedSentence) -> None:
    """Begin a new piece where the sentence turns to one."""
    sentence, subjects = parsed.sentence, focus.subjects
    if sentence.starts_line and sentence.words[0] in _NOW and _labels_pair(parsed):
        focus.is_correcting, parsed.rank = True, (parsed.rank[0], 1)
    _await(focus, parsed)
    summing_up = enumerations.is_summing_up(sentence)
    focus.is_summary = summing_up or (focus.is_summary and not sentence.starts_paragraph)
    subjects.sums_up = focus.is_summary
    subjects.repeats = focus.is_correcting or focus.is_summary or focus.is_split
    if _labels_pair(parsed):
        subjects.keep_for_all()
    _take_heading(focus, sentence)
    told = told_before(focus, parsed)
    is_line = told is None and _is_another_line(focus, parsed)
    is_item = told is None and _is_item(focus, parsed)
    if is_line:
        focus.start_piece(label="line")
    if is_item:
        current = subjects.piece
        begun = current is not None and (current.has_size() or current.label or current.openings)
        if begun and not is_line:
            focus.start_piece()
        item = subjects.current()
        _count_item(focus, parsed)
        item.shape = "round" if begins_round(parsed) else item.shape
        item.label = sentence.item or row_label(sentence) or "line"
        first = min((size.at for size in parsed.sizes), default=len(sentence.atoms))
        item.names = {word for word in sentence.words[:first] if word}
    elif row_label(sentence) and _labels_pair(parsed) and not subjects.current().has_size():
        subjects.current().label = row_label(sentence)
    if _is_next_announced(focus, parsed):
        focus.start_piece(subjects.current().use)
    called = told or named_in(subjects.scene.pieces, sentence)
    if called is not None:
        subjects.piece, subjects.openings, focus.on_opening = called, [], False
        turn_at_heading(parsed, called)


def _take_heading(focus: Focus, sentence: Sentence) -> None:
    """Begin the slab that a line of its own calls by a letter or a number: "Run B (left)"."""
    heading, current = heading_label(sentence), focus.subjects.piece
    if not heading or focus.subjects.repeats or focus.is_l():
        return
    if current is not None and (current.has_size() or current.label):
        focus.start_piece()
    focus.subjects.current().label = heading


def _is_next_announced(focus: Focus, parsed: ParsedSentence) -> bool:
    """Whether a sentence begins with "the second", and two sizes, where slabs are still to come."""
    subjects, words = focus.subjects, parsed.sentence.words
    piece = subjects.piece
    outlined = [piece for piece in subjects.scene.pieces if piece.claims.get("length")]
    if piece is None or not piece.claims.get("length") or subjects.repeats or focus.is_l():
        return False
    is_led = len(words) > 1 and words[0] in _DEFINITE
    is_led = is_led and (words[1] in _NEXT or (words[1] in _WHICH and words[2:3] == ["one"]))
    holes = [mention.start for mention in parsed.found if mention.kind in ("open", "hole")]
    sized = [size.at for size in parsed.sizes if size.of > 1 or size.role in ("long", "wide")]
    early = bool(sized) and (not holes or sized[0] < holes[0])
    return is_led and early and (subjects.awaited > len(outlined) or focus.several)


def _count_item(focus: Focus, parsed: ParsedSentence) -> None:
    """Take the number of "bedside shelves x 2" for how many are wanted."""
    words = parsed.sentence.words
    for measure in parsed.sizes:
        is_count = measure.size.unit is None and measure.of == 1 and not measure.role
        is_multiplied = words[max(0, measure.at - 1)] in ("x", "×") and measure.at > 1
        alone = not any(other is not measure for other in parsed.sizes)
        if is_count and is_multiplied and alone and 1 < measure.size.amount <= _MAX_OF_ONE:
            piece, size = focus.subjects.current(), measure.size
            piece.quantity, piece.quantity_spans = int(size.amount), ((size.start, size.end),)
            measure.role = "=quantity"


def _await(focus: Focus, parsed: ParsedSentence) -> None:
    """Note that several pieces are announced: "these two", "three pieces"."""
    words, sizes = parsed.sentence.words, parsed.sizes
    for i, word in enumerate(words):
        counts = [NUMBERS.get(near, 0) for near in words[max(0, i - 3) : i]]
        if word in _ANNOUNCED and max(counts, default=0) > 1:
            focus.subjects.awaited = int(max(counts))
    for mention in parsed.found:
        is_plain = mention.kind == "slab" and (mention.is_plural or not mention.name)
        sized = [size for size in sizes if size.at > mention.end or size.of > 1]
        if enumerations.is_of_all(parsed.sentence):  # "two counters, both 25 in deep"
            sized = [one for one in sized if one.of > 1 or one.role not in ("deep", "thick")]
        if is_plain and mention.count > 1 and not sized:
            focus.subjects.awaited = mention.count
            atoms = parsed.sentence.atoms
            span = (atoms[max(0, mention.start - 1)].start, atoms[mention.end - 1].end)
            is_told = any(piece.has_size() for piece in focus.subjects.scene.pieces)
            if not is_told and not mention.preposition:
                focus.announced = (mention.count, span)
    these = [i for i, word in enumerate(words) if word in ("these", "folgende", "following")]
    if these:
        counted = any(NUMBERS.get(word, 0) > 1 for word in words[these[0] : these[0] + 3])
        if counted or not sizes:
            focus.subjects.awaited = max(focus.subjects.awaited, 2)


def _is_item(focus: Focus, parsed: ParsedSentence) -> bool:
    """Return whether a sentence is an item of those announced."""
    is_round = begins_round(parsed) and not focus.is_l()
    if is_round or (parsed.sentence.is_item and _begins_with_pair(parsed, is_l=focus.is_l())):
        return True
    if _is_labelled_length(focus, parsed) or is_upright_item(focus.subjects.piece, parsed):
        return True
    if _is_labelled_pair(focus, parsed) or _is_heading(focus, parsed):
        return True
    return focus.subjects.awaited > 1 and _is_announced(parsed)


def _is_labelled_length(focus: Focus, parsed: ParsedSentence) -> bool:
    """Whether a row's label leads to a length: "Worktop 1: 2400 long. Worktop 2: 1800 long."."""
    first = next((size for size in parsed.sizes if size.at >= _LED), None)
    is_led = first is not None and first.role == "long" and first.at <= _AFTER_QTY
    piece = focus.subjects.piece
    is_begun = piece is not None and bool(piece.claims.get("length"))
    if piece is not None and is_begun and is_other_run(parsed, piece.names):
        return not focus.is_correcting and not focus.is_l()
    is_led = is_led and (bool(row_label(parsed.sentence)) or is_led_by_mark(parsed))
    return is_led and is_begun and not focus.is_correcting


def _is_heading(focus: Focus, parsed: ParsedSentence) -> bool:
    """Return whether a line only names one more slab, whose sizes follow on lines of their own."""
    sentence, piece = parsed.sentence, focus.subjects.piece
    first = parsed.found[0] if parsed.found else None
    if piece is None or first is None or focus.is_l() or sentence.is_quoted:
        return False
    if any(size.size.unit is not None or size.size.amount > _MAX_OF_ONE for size in parsed.sizes):
        return False
    is_first = sentence.is_item or sentence.starts_paragraph or sentence.atoms[-1].word == ":"
    is_first = is_first or (sentence.starts_line and bool(piece.claims.get("thickness")))
    is_short = len(sentence.atoms) <= _HEADING and first.kind == "slab" and first.start <= _LED
    known = piece.claims.get("length") and piece.claims.get("width")
    repeats = focus.is_correcting or focus.is_summary
    return bool(known) and is_first and is_short and _is_new(first) and not repeats


def _is_announced(parsed: ParsedSentence) -> bool:
    """Return whether a sentence is one of several pieces that were announced."""
    sentence, sizes = parsed.sentence, parsed.sizes
    if sentence.is_item and any(c.isalnum() for c in sentence.item):
        return True
    own = [size for size in sizes if size.role in _SIZE_ROLES or size.of > 1]
    if len(own) < 2 or sentence.is_quoted:
        return False
    if enumerations.is_of_all(sentence) and all(one.role in ("deep", "thick") for one in own):
        return False  # "both 25 in deep and 1 1/2 in thick"
    slab = any(
        mention.kind == "slab"
        and not (mention.is_denied or mention.is_old or mention.determiner in _DEFINITE)
        for mention in parsed.found[:2]
    )
    holes = [one for one in parsed.found if one.kind in ("open", "hole") and one.start < own[0].at]
    labelled = not holes and any(atom.word == ":" for atom in sentence.atoms[:14])
    return is_label_of_sizes(sentence, sizes) or (sentence.starts_line and (slab or labelled))


def _is_labelled_pair(focus: Focus, parsed: ParsedSentence) -> bool:
    """Whether a line is a label of few words and a slab's own sizes: "Island: 1500 x 900"."""
    piece = focus.subjects.piece
    if piece is None or not piece.claims.get("length"):
        return False
    label = row_label(parsed.sentence)
    known = {one.label for one in focus.subjects.scene.pieces}
    is_other = bool(label and piece.label) and label not in known
    if ((focus.is_correcting or focus.is_summary) and not is_other) or focus.is_l():
        return False
    return _labels_pair(parsed)


def _labels_pair(parsed: ParsedSentence) -> bool:
    """Return whether a line begins with a name of no hole, a colon and two sizes."""
    sentence = parsed.sentence
    first_kind = parsed.found[0].kind if parsed.found and parsed.found[0].start <= 1 else ""
    begins = sentence.starts_line or first_kind == "room"
    begins = begins or bool(parsed.found and parsed.found[0].kind == "thing")
    begins = begins or bool(row_label(sentence))
    if sentence.is_quoted or not begins:
        return False
    pair = next((size for size in parsed.sizes if size.of > 1 and size.place == 1), None)
    if pair is not None and pair.at == 0 and pair.of == _TRIPLE:
        return True  # a line of its own under a heading
    first = parsed.sizes[0] if parsed.sizes else None
    if (
        pair is not None
        and first is not None
        and first.role == "quantity"
        and pair.at <= _AFTER_QTY
    ):
        return True  # "qty 2   1200 x 900"
    colon = next((i for i, atom in enumerate(sentence.atoms[:10]) if atom.word == ":"), None)
    if pair is None or colon is None or pair.at != colon + 1:
        return False
    others = [
        mention for mention in parsed.found if mention.start < colon and mention.kind not in _PLACES
    ]
    if any(is_appliances_line(sentence, mention) for mention in parsed.found):
        return False
    labels = [LABELS.at(sentence.words, i) for i in range(colon) if sentence.words[i]]
    return not others and not any(label and label[0] in ("size", "cutouts") for label in labels)


def _begins_with_pair(parsed: ParsedSentence, *, is_l: bool) -> bool:
    """Whether an item's own two sizes come before any hole or thing: "- left of it, 940 x 650"."""
    pair = [size.at for size in parsed.sizes if size.of > 1 and size.place == 1][:1]
    kinds = ("open", "hole", "leg") if is_l else ("open", "hole")
    others = [mention for mention in parsed.found if mention.kind in kinds]
    things = [one for one in parsed.found if one.kind == "thing" and not one.preposition]
    early = [other for other in (*others, *things) if pair and other.start < pair[0]]
    return bool(pair) and not early and not parsed.sentence.is_quoted


def _is_another_line(focus: Focus, parsed: ParsedSentence) -> bool:
    """Whether a line begins with a slab's name and its own two sizes, other than those known."""
    piece, sentence = focus.subjects.piece, parsed.sentence
    first = parsed.found[0] if parsed.found else None
    if piece is None or first is None or not piece.claims.get("length") or sentence.is_quoted:
        return False
    if first.kind != "slab" or first.start > 4 or not sentence.starts_line:
        return False
    if focus.is_correcting or focus.is_summary or not _is_new(first):
        return False
    pair = [size for size in parsed.sizes if size.of > 1 and size.place <= 2][:2]
    holes = [mention for mention in parsed.found if mention.kind in ("open", "hole")]
    if len(pair) < 2 or any(first.end <= hole.start < pair[0].at for hole in holes):
        return False
    lengths = [focus.assigner.claim(one, "width", (0, 0)) for one in pair]
    known = [*piece.claims.get("length", []), *piece.claims.get("width", [])]
    return not all(
        length is not None and any(length.agrees(other) for other in known) for length in lengths
    )


def _is_new(mention: Mention) -> bool:
    return not (mention.is_old or mention.preposition or mention.determiner in _DEFINITE)


def is_next_piece(focus: Focus, mention: Mention, sizes: list[Measure]) -> bool:
    """Return whether a slab is named with two sizes of its own after another had its sizes."""
    pair = any(
        size.of > 1 and size.place == 1 and mention.end <= size.at <= mention.end + 3
        for size in sizes
    )
    repeats = focus.is_correcting or focus.is_summary
    return pair and focus.subjects.pending and _is_new(mention) and not repeats
