"""Lines become sentences of atoms: words, marks, sizes, and numbers that are no sizes."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field
from fractions import Fraction
from itertools import islice, pairwise
from typing import Final, Literal

from ledgerstone.enquiry.text.lines import TextLine
from ledgerstone.enquiry.text.sizes import Size, SizeReader
from ledgerstone.enquiry.text.spoken import without_line_ends
from ledgerstone.enquiry.text.tokens import TextSpan, Token, tokens_of
from ledgerstone.enquiry.words.lexicon import NOUNS, mark
from ledgerstone.enquiry.words.spelling import spelled
from ledgerstone.enquiry.words.word_sets import word_set

_BULLET: Final = re.compile(
    r"[ \t]*(?:[-*•·–+▪●]|\(?\d{1,2}[.):](?!\d)|\d{1,2}[ \t][-–](?=[ \t])|\(?[A-Ha-h][.)](?=\s)"
    r"|#\d{1,2}\b[.:)]?"
    r"|(?:pos|piece|item|part|slab|top|worktop|teil|platte)\.?\s?(?:\d{1,2}|(?-i:[A-H]|[a-h](?=[.:,)])))\b"
    r"(?!\s?(?:m|mm|cm|met\w+|ft|feet|foot|in|inch\w*|off|x|×|by)\b|\s?[\"”″'’/])[.:,)]?"
    r"|(?:first|second|third|fourth|firstly|secondly|erstens|zweitens|drittens)[,:])[ \t]+",
    re.IGNORECASE,
)
_ABBREVIATIONS: Final = word_set(
    "no nr approx ca dia diam pos mr mrs ms dr e.g i.e st thk incl excl max min bzw ca inkl "
    "z.b etc tel"
)
_BEGINNINGS: Final = word_set("the our my we it this they i der die das wir ich unsere")
_WHICH: Final = word_set("the that those these this your")
_LAST_WORDS: Final = word_set(
    "thick thickness deep depth long length wide width high across diameter thanks please dick tief"
    " lang stark"
)
_COUNTS: Final = word_set("qty quantity quantities anzahl menge pcs stück count")
_PLURALS: Final = ("s", "en", "bänke", "regale")
_APART: Final = re.compile(r"[2-9] \d{3}")
MAX_ATOMS: Final = 12_000  # words and sizes that are read; an enquiry has a few hundred
LONGEST: Final = 300  # atoms: what looks about in a sentence looks at no more
_WIDEST_WRAP: Final = 90
_NARROWEST_WRAP: Final = 56
_NARROWEST_FLOW: Final = 40
_WIDEST_FLOW: Final = 100  # no program wraps a line later: common practice, no source
_ENDS_LINE: Final = frozenset(".!?:;")
_DANGLING: Final = word_set("and from the at x by of a und von vom der die mal")
_FOLLOWING: Final = word_set("from mm cm thick deep wide x by von vom")


@dataclass(slots=True)
class Atom:
    """A word, a mark, a size, or a number that is none."""

    kind: Literal["word", "mark", "size", "other"]
    start: int
    end: int
    word: str
    size: Size | None = None


@dataclass(slots=True)
class Sentence:
    """A run of atoms, with where it stands.

    ``is_item``: it begins a bulleted or numbered line. ``is_quoted``: it repeats an older message.
    ``starts_paragraph`` and ``starts_line`` say what comes before it.
    """

    atoms: list[Atom] = field(default_factory=list)
    is_item: bool = False
    item: str = ""
    is_quoted: bool = False
    starts_paragraph: bool = False
    starts_line: bool = False
    ends: str = ""
    _words: list[str] | None = None
    _marks: dict[str, list[tuple[int, int]]] = field(default_factory=dict)

    @property
    def words(self) -> list[str]:
        """The atoms' words, "" where an atom is no word, so that indices agree."""
        if self._words is None or len(self._words) != len(self.atoms):
            self._words = [atom.word if atom.kind == "word" else "" for atom in self.atoms]
        return self._words

    def marks(self, kind: str) -> list[tuple[int, int]]:
        """Where phrases of a kind begin, and how many words they have."""
        if kind not in self._marks:
            found = mark(kind).all_in(self.words)
            self._marks[kind] = [(start, count) for start, count, _ in found]
        return self._marks[kind]


def sentences_of(
    text: str,
    lines: Sequence[TextLine],
    masked: Sequence[TextSpan],
    *,
    has_inches: bool,
    most: int = MAX_ATOMS,
) -> list[Sentence]:
    """Divide lines into sentences of at most so many atoms in all; wrapped lines are joined."""
    sentences: list[Sentence] = []
    count = 0
    for block in _blocks(lines):
        for k, joined in enumerate(_unwrapped(block)):
            if count >= most:
                return sentences
            bullet = _BULLET.match(joined[0].words)
            made = _read(
                text, joined, masked, has_inches=has_inches, skip=len(bullet[0]) if bullet else 0
            )
            for i, sentence in enumerate(made):
                sentence.is_item = bullet is not None and i == 0
                sentence.item = bullet[0].strip() if bullet else ""
                sentence.is_quoted = joined[0].depth > 0
                sentence.starts_paragraph = k == 0 and i == 0
                sentence.starts_line = i == 0
            sentences += made
            count += sum(len(sentence.atoms) for sentence in made)
    return sentences


def flattened(text: str, lines: Sequence[TextLine]) -> str:
    """Return a text of the same length whose wrapped lines are one line each, quote marks blank."""
    chars = list(text)
    for block in _blocks(lines):
        for joined in _unwrapped(block):
            for before, line in pairwise(joined):
                own = line.end - len(line.words)
                chars[before.end : own] = " " * (own - before.end)
    return "".join(chars)


def _blocks(lines: Sequence[TextLine]) -> list[list[TextLine]]:
    """Paragraphs: runs of lines without a blank one, of one depth."""
    blocks: list[list[TextLine]] = [[]]
    for line in lines:
        if not line.words.strip():
            blocks.append([])
        elif blocks[-1] and (line.depth > 0) != (blocks[-1][-1].depth > 0):
            blocks.append([line])
        else:
            blocks[-1].append(line)
    return [block for block in blocks if block]


def _unwrapped(block: list[TextLine]) -> list[list[TextLine]]:
    """Join lines that a program wrapped; others stay apart."""
    widest = max(len(line.words) for line in block)
    is_wrapped = _is_wrapped(block, widest)
    joined = [[block[0]]]
    for before, line in pairwise(block):
        words = line.words.split(None, 1)
        filled = len(before.words.rstrip()) + 1 + len(words[0])
        wraps = (is_wrapped and filled > widest - 4) or _dangles(before.words, words[0])
        wraps = wraps or _flows(before.words, words[0])
        if (
            wraps
            and not _BULLET.match(line.words)
            and "\t" not in line.words
            and "|" not in line.words
        ):
            joined[-1].append(line)
        else:
            joined.append([line])
    return joined


def _dangles(before: str, word: str) -> bool:
    """Return whether a line ends in the middle of a phrase: "… and 240" before "from the front"."""
    last = before.rstrip().rpartition(" ")[2].lower()
    is_long = len(before) >= _NARROWEST_WRAP
    return is_long and (last in _DANGLING or (last[-1:].isdigit() and word.lower() in _FOLLOWING))


def _flows(before: str, word: str) -> bool:
    """Return whether a line runs on: it ends in a blank (RFC 3676), or the next begins small."""
    if len(before) < _NARROWEST_FLOW:
        return False
    is_soft = before.endswith(" ") and not before.endswith("  ")
    runs_on = word[:1].islower() and _NARROWEST_WRAP <= len(before) <= _WIDEST_FLOW
    return before.rstrip()[-1:] not in _ENDS_LINE and (is_soft or runs_on)


def _is_wrapped(block: list[TextLine], widest: int) -> bool:
    """Return whether most lines of a paragraph end where the next word had no room."""
    if not _NARROWEST_WRAP <= widest <= _WIDEST_WRAP:
        return False
    full = sum(
        len(before.words.rstrip()) + 1 + len(line.words.split(None, 1)[0]) > widest - 4
        for before, line in pairwise(block)
    )
    return 2 * full >= len(block) - 1


def _read(
    text: str, lines: list[TextLine], masked: Sequence[TextSpan], *, has_inches: bool, skip: int
) -> list[Sentence]:
    start = lines[0].end - len(lines[0].words) + skip
    read = tokens_of(text, min(start, lines[-1].end), lines[-1].end, masked)
    tokens = without_line_ends([*islice(read, MAX_ATOMS)])
    made = _split(text, _atoms([*tokens], has_inches=has_inches))
    for sentence in made:
        _join_thousands(text, sentence)
    return made


def _join_thousands(text: str, sentence: Sentence) -> None:
    """Read "2 400 x 600" as one number, unless two are asked for; where either may be, as none."""
    atoms = sentence.atoms
    for i in range(len(atoms) - 3):
        if i + 3 >= len(atoms) or not _may_be_thousands(text, atoms[i : i + 4]):
            continue
        words = sentence.words
        if (i and words[i - 1] in _COUNTS) or _names_several(words[i + 4 : i + 9]):
            continue
        start, end = atoms[i].start, atoms[i + 1].end
        joined = Atom("other", start, end, "")
        if not _names_several(words[:i]):
            amount = Fraction(text[start:end].replace(" ", ""))
            joined = Atom("size", start, end, "", Size(start, end, amount, None))
        atoms[i : i + 2] = [joined]


def _may_be_thousands(text: str, four: Sequence[Atom]) -> bool:
    """Return whether a digit, a blank and three digits lead to "x" and a size."""
    one, three, times, _ = four
    written = text[one.start : three.end]
    are_sizes = all(four[k].kind == "size" for k in (0, 1, 3))
    return are_sizes and times.word in ("x", "×") and bool(_APART.fullmatch(written))


def _names_several(words: Sequence[str]) -> bool:
    """Return whether words name slabs in the plural."""
    named = [NOUNS.at(words, i) for i, word in enumerate(words) if word.endswith(_PLURALS)]
    return any(tag is not None and tag[0].startswith("slab:") for tag in named)


def _atoms(tokens: list[Token], *, has_inches: bool) -> list[Atom]:
    reader = SizeReader(tokens, has_inches=has_inches)
    atoms: list[Atom] = []
    i = 0
    while i < len(tokens):
        token = tokens[i]
        found = reader.at(i)
        if found is not None:
            size, i = found
            atoms.append(Atom("size", size.start, size.end, "", size))
            continue
        if token.kind == "word":
            near = (atoms[-1].kind if atoms else "", *(one.kind for one in tokens[i + 1 : i + 2]))
            word = spelled(token.word, is_between=near == ("size", "number"))
            atoms.append(Atom("word", token.start, token.end, word))
        elif token.kind == "mark":
            atoms.append(Atom("mark", token.start, token.end, token.word))
        elif token.kind in ("other", "number", "vulgar"):
            atoms.append(Atom("other", token.start, token.end, token.word))
        i += 1
    return atoms


def _begins(text: str, atoms: Sequence[Atom], i: int) -> bool:
    """Whether a capital begins a sentence that no full stop parts: "… x 20 The old one is".

    So it does after a unit's full stop: "46 mm. From the left". "The 1480 I gave you" goes on.
    """
    before, atom = atoms[i - 1], atoms[i]
    if before.kind == "size" and text[before.end - 1] == "." and text[atom.start].isupper():
        return atom.kind == "word"
    if i > 1 and before.kind == "size" and atoms[i - 2].word in _WHICH:
        return False
    if atom.word not in _BEGINNINGS or not text[atom.start].isupper():
        return False
    return before.kind == "size" or (atom.word != "i" and before.word in _LAST_WORDS)


def _split(text: str, atoms: list[Atom]) -> list[Sentence]:
    """End a sentence at a full stop, a question or exclamation mark, or a semicolon."""
    sentences = [Sentence()]
    for i, atom in enumerate(atoms):
        if len(sentences[-1].atoms) >= LONGEST or (i and _begins(text, atoms, i)):
            sentences.append(Sentence())
        sentences[-1].atoms.append(atom)
        if atom.kind != "mark" or atom.word not in ".!?;":
            continue
        following = atoms[i + 1] if i + 1 < len(atoms) else None
        apart = following is None or following.start > atom.end
        apart = apart and not (following is not None and following.word == ")")
        before = atoms[i - 1].word if i else ""
        is_letter = len(before) == 1 and atoms[i - 1].kind == "word"
        if before == "i" and following is not None and text[following.start].isupper():
            is_letter = False  # "low, but so am I. The top is"
        short = atom.word == "." and (before in _ABBREVIATIONS or is_letter)
        if apart and not (short and following is not None):
            sentences[-1].ends = atom.word
            sentences.append(Sentence())
    return [sentence for sentence in sentences if sentence.atoms]
