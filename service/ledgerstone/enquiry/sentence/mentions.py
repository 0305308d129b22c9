"""What a sentence names: slabs, holes, rooms and things that are none of ours."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise
from typing import Final

from ledgerstone.enquiry.sentence import denied_holes, kinds
from ledgerstone.enquiry.sentence.joined_names import joined_names
from ledgerstone.enquiry.sentence.kinds import by_rim, is_asked_for, is_of_premises
from ledgerstone.enquiry.sentence.mention import Mention
from ledgerstone.enquiry.text.sentences import Atom, Sentence
from ledgerstone.enquiry.words.lexicon import LABELS, NOUNS, NUMBERS, SIDES, mark, noun_ending
from ledgerstone.enquiry.words.word_sets import word_set

_PREPOSITIONS: Final = word_set(
    "for in of to at under over behind beside against between on along with into from by near "
    "onto per pro cover covers covering replace replacing match matching suit support supports fit"
    " above"
    " below underneath around inside outside off beneath fits past through für im am an auf "
    "unter über hinter neben zwischen mit bei zum zur vom von aus ins vor ab gegen"
)
_DETERMINERS: Final = word_set(
    "a an the this that these those my our your his her its their one another each every some "
    "any ein eine einen einem einer der die das den dem des unser unsere unserem unserer mein "
    "meine diese dieser dieses"
)
_LET: Final = frozenset({"drop", "let", "built", "set", "sit", "lay"})
_VERBS: Final = word_set(
    "is are has have be goes go wants needs need want should would will can sits stands ist "
    "sind hat wird soll muss and or und oder but so then please like sure price quote "
    "quotation make"
)
_AT_WALL: Final = frozenset({"an", "am", "von", "vom", "ab", "zur", "gegen"})
_CLAUSE: Final = 8
_MAX_STEPS: Final = 5
_TURNS_BACK: Final = word_set("but sondern so how where what said just only nur bloß lediglich")
_MEASURES: Final = word_set("is are measures measure ist sind misst hat")
_NOW: Final = (["present"], ["jetzige"], ["jetzigen"])
_GONE: Final = word_set("gone cancelled dropped deleted omitted scrapped entfällt entfallen")
_STANDS_FOR: Final = frozenset({("does", "for"), ("do", "for"), ("serves", "as"), ("does", "as")})
_NO_SUBJECT: Final = word_set(
    "first second third fourth last latter former erste zweite dritte"
    " template leaflet instructions paper drawing plan sketch spec datasheet datenblatt brochure"
    " manual schablone skizze zeichnung itself run leg length width depth height thickness"
    " diameter return he it sie er es wir ihr man form grundform rechteck quadrat kreis rectangle"
    " shape that this they these those there which what she you all both each everything overall"
    " mine ours total rest who whole other others same piece centre size sizes measurement"
    " measurements one dimension dimensions edge end side run outside inside finish colour color"
    " shade dies das alles beide welche alle ganze kante seite one's something anything figure"
    " figures answer correct centreline centerline centrelines line lines axis achse new right"
    " thing things it's his her whatever where here how wish only now"
    " davon daran dafür dazu darin"
)
_BREAKS: Final = frozenset(
    {"so", "whose", "dessen", "deren", "it", "comes", "come", "kommt"}
)  # "a stand whose frame is 890"
_ROUND: Final = word_set("round circular rund runde runden runder rundes")
_WHICH: Final = frozenset({"that", "which"})
_PAIRS: Final = frozenset({"double", "twin", "pair", "doppel"})
_COUNTS: Final = frozenset({"two", "three", "four", "zwei", "drei", "vier"})
_PLURALS: Final = word_set(
    "holes cutouts outs basins taps sinks bowls faucets tops slabs shelves worktops tables "
    "löcher ausschnitte tischplatten platten pieces teile worktops benches sills upstands "
    "hobs openings slots cables fensterbänke plates wastes parasols counters countertops "
    "hearths splashbacks sockets outlets switches steckdosen"
)


def mentions_of(sentence: Sentence) -> list[Mention]:
    """Give what a sentence names, in order, holes joined to what goes into them."""
    words = sentence.words
    found: list[Mention] = []
    i = 0
    while i < len(words):
        taken = NOUNS.at(words, i) if words[i] else None
        tag, count = taken if taken is not None else (noun_ending(words[i]) or "", 1)
        if taken is None and tag:
            tag = kinds.whole_word(words[i], tag)
        if not tag or tag == "idiom:" or kinds.is_verb(words, i):
            i += count
            continue
        kind, _, name = tag.partition(":")
        mention = Mention(i, i + count, kind, name)
        last = words[i + count - 1]
        mention.is_plural = last in _PLURALS or (
            kind == "slab" and last.endswith("s") and len(last) > 4
        )
        _describe(sentence, mention)
        if not (last == "ones" and kinds.are_counted(sentence, mention)):
            _settle(sentence, mention, found)
            found.append(mention)
        i = max(i + count, mention.end)
    found += _unknown(sentence, found) + by_rim(sentence, found)
    ordered = sorted(found, key=lambda one: one.start)
    starts = {one.start for one in ordered if one.kind == "slab"}
    ordered = [one for one in ordered if one.kind != "thing" or one.end not in starts]
    ordered = [one for one in ordered if not kinds.tells_trade(words, one)]
    return joined_names(sentence, ordered)  # "an alcove shelf" is no alcove


def _settle(sentence: Sentence, mention: Mention, found: list[Mention]) -> None:
    """Take a name for what the words around it make of it."""
    words, kind = sentence.words, mention.kind
    before = found[-1] if found else None
    if before is not None and before.preposition in ("between", "zwischen"):
        led = words[max(0, mention.start - 2) : mention.start]
        if {"and", "und"} & set(led) and not mention.preposition:
            mention.preposition = before.preposition  # "between the unit and the wall"
    if kind == "thing" and before is not None and kinds.is_along(words, before, mention.start):
        mention.preposition = "along"  # "down the left wall"
    if kind == "thing" and kinds.is_cookers_hole(words, before, mention):
        mention.kind, mention.name = "open", "hob"
    if kind == "thing" and kinds.is_let_in(sentence, mention):
        mention.kind, mention.name = "open", "socket"
    if mention.kind == "thing" and is_asked_for(sentence, mention):
        mention.kind, mention.name = "slab", ""
    if kind in ("thing", "open") and words[mention.end : mention.end + 1] in kinds.PIECES:
        mention.kind, mention.name = "slab", ""  # "a drainer piece"
        mention.end += 1
    if is_of_premises(sentence, mention) or kinds.is_of_support(sentence, found, mention):
        mention.kind, mention.name = "thing", "premises"


def _unknown(sentence: Sentence, found: list[Mention]) -> list[Mention]:
    """Return things that no table knows: the subject of a size, and what is called old."""
    words, atoms = sentence.words, sentence.atoms
    taken = {i for mention in found for i in range(mention.start, mention.end)}
    last = max((i for i, atom in enumerate(atoms) if atom.kind == "size"), default=-1)
    made = []
    for i in range(1, last):
        j = i - 2 if i > 1 and words[i - 1] in _WHICH else i - 1
        is_verb = words[i] in _MEASURES or (words[i] == "'s" and j == i - 2)
        if is_verb and j - 1 not in taken and _is_unknown(sentence, j, taken):
            made.append(Mention(j, j + 1, "thing", "unknown"))
    starts = {mention.start for mention in found}
    for i, count in sentence.marks("old"):
        after = range(i + count, min(i + count + 3, len(words)))
        is_like = bool({"like", "wie"} & set(words[max(0, i - 2) : i]))  # "like my sister's"
        if not is_like and not taken & {i} and not any(j in starts for j in after):
            made.append(Mention(i, i + count, "thing", "old"))
    return made


def _is_unknown(sentence: Sentence, i: int, taken: set[int]) -> bool:
    """Whether a word is a noun that no table has: led by an article, or first in its clause."""
    words = sentence.words
    word = words[i]
    if word in _DETERMINERS or word in _PREPOSITIONS or word in _VERBS:
        return False
    if (
        kinds.is_size_for(words, i)
        or i in taken
        or len(word) < 3
        or word in _NO_SUBJECT
        or LABELS.at(words, i) is not None
    ):
        return False
    if SIDES.at(words, i) is not None or mark("middle").at(words, i) is not None:
        return False
    before = sentence.atoms[i - 1].word if i else ","
    if (
        i > 1
        and words[i - 1]
        and words[i - 2] in _DETERMINERS
        and words[i - 1] not in _PREPOSITIONS
    ):
        before = words[i - 2]  # "a plan chest that's 1150 by 820"
    return before in _DETERMINERS or before in {",", ";", ":", "(", "-", "and", "und"}


def _count_before(sentence: Sentence, mention: Mention, i: int, steps: int) -> None:
    """Take a small bare number as a count, or the number before a size: "two 60mm holes"."""
    size, words = sentence.atoms[i].size, sentence.words
    if size is None:
        return
    whole = size.unit is None and size.amount.denominator == 1
    whole = whole and words[max(0, i - 1)] not in ("item", "pos", "position", "piece", "teil")
    if not mention.determiner and whole and 0 < size.amount < 13 and steps <= 3:
        mention.count = mention.count or int(size.amount)
    elif i and words[i - 1] in _COUNTS:
        mention.count = mention.count or int(NUMBERS[words[i - 1]])


def _is_determiner(word: str, mention: Mention) -> bool:
    """Return whether a word is an article; "an" before another one is the German preposition."""
    return word in _DETERMINERS and not (word == "an" and bool(mention.determiner))


def _describe(sentence: Sentence, mention: Mention) -> None:
    """Look back over adjectives for an article, a number, a preposition, a denial."""
    words = sentence.words
    _look_back(sentence, mention)
    mention.count = mention.count or kinds.labelled_count(sentence, mention)
    _describe_kind(words, mention)
    if mention.preposition in _AT_WALL and "rückwand" in words[mention.start : mention.end]:
        mention.kind, mention.name = "thing", ""  # the wall at the back
    mention.is_denied = (
        _is_denied(sentence, mention)
        or _is_gone(sentence, mention)
        or denied_holes.is_denied_after(sentence, mention)
    )
    mention.is_denied = mention.is_denied or denied_holes.is_taken_out(sentence, mention)
    near = words[max(0, mention.start - 3) : mention.start]
    mention.is_old = any(tag == "old" for _, _, tag in mark("old").all_in(near))
    mention.is_old = mention.is_old or sentence.words[mention.start - 1 : mention.start] in _NOW
    mention.is_old = mention.is_old or kinds.is_of_other_stuff(sentence, mention)


def _look_back(sentence: Sentence, mention: Mention) -> None:
    """Look back over adjectives for an article, a number and a preposition."""
    atoms = sentence.atoms
    i, steps = mention.start - 1, 0
    while i >= 0 and steps < _MAX_STEPS:
        atom = atoms[i]
        if atom.kind == "size" and atom.size is not None:
            _count_before(sentence, mention, i, steps)
            break
        if atom.kind in ("mark", "other") and atom.word not in "-/" and not _is_number_of(atoms, i):
            break
        word = atom.word
        if (
            word in NUMBERS
            and not kinds.tells_kind(atoms, i, mention)
            and not mention.determiner
            and word not in ("a", "an", "one", "half", "ein", "eine", "einen", "einem")
        ):
            mention.count = mention.count or int(NUMBERS[word])
        elif _is_determiner(word, mention):
            mention.determiner = mention.determiner or word
        elif word in ("off", "no", "nr", "pcs", "x") and i and atoms[i - 1].kind == "size":
            i -= 1  # "3 off shelves", "2 no. shelves"
            continue
        elif _is_number_of(atoms, i):
            i -= 1
            continue
        elif word in _PREPOSITIONS and not _is_adjective(atoms, i):
            mention.preposition = word
            break
        elif word in _BREAKS or (word in _VERBS and steps):
            break
        i -= 1
        steps += 1


def _is_adjective(atoms: Sequence[Atom], i: int) -> bool:
    """Whether a preposition is part of a word: "a matching splashback", "two drop-in basins"."""
    before = atoms[i - 1].word if i else ""
    if atoms[i].word in ("in", "on"):
        return before in _LET
    if atoms[i].word in ("outside", "inside"):  # "3 outside sills", "an outside bench"
        is_counted = bool(i) and atoms[i - 1].kind == "size"
        return is_counted or before in _DETERMINERS or before in NUMBERS
    return atoms[i].word == "matching" and before in _DETERMINERS


def _describe_kind(words: Sequence[str], mention: Mention) -> None:
    """Take "a round basin" for a round hole, and "double sinks" for two."""
    words_before = words[max(0, mention.start - 2) : mention.start]
    if _PAIRS & set(words_before) and mention.kind in ("open", "hole") and mention.is_plural:
        mention.count = mention.count or 2
    if mention.kind in ("open", "hole") and _ROUND & set(words_before) and not mention.hole_kind:
        mention.hole_kind = "circle"
    after = words[mention.end : mention.end + 2]
    if mention.kind == "open" and after[:1] == [""] and _ROUND & set(after[1:]):
        mention.hole_kind = mention.hole_kind or "circle"  # "a small sink, round, 34 cm"


def _is_number_of(atoms: Sequence[Atom], i: int) -> bool:
    """Return whether a full stop ends "2 no."."""
    return (
        atoms[i].word == "."
        and i > 1
        and atoms[i - 1].word in ("no", "nr", "pcs")
        and (atoms[i - 2].kind == "size")
    )


def _is_gone(sentence: Sentence, mention: Mention) -> bool:
    """Return whether a hole is no longer wanted: "two sockets gone, she doesn't want them"."""
    after = sentence.words[mention.end : mention.end + 2]
    led = set(pairwise(sentence.words[max(0, mention.start - 4) : mention.start]))
    return mention.kind == "open" and bool(_GONE & set(after) or _STANDS_FOR & led)


def _is_denied(sentence: Sentence, mention: Mention) -> bool:
    words, atoms = sentence.words, sentence.atoms
    for i in range(mention.start - 1, max(-1, mention.start - 7), -1):
        if atoms[i].kind in ("size", "other") or atoms[i].word in ",;:(":
            return False
        if words[i] == "no" and words[i + 1] in ("wait", "sorry", "actually", "hang"):
            return False
        if words[i] == "no" and i and atoms[i - 1].kind == "size":
            return False  # "2 no. shelves"
        if words[i] and mark("not").at(words, i) is not None:
            return words[i : i + 2] not in (["not", "only"], ["never", "mind"])
        if words[i] in _TURNS_BACK and words[i - 1 : i] not in (["not"], ["nicht"]):
            return False
    return False
