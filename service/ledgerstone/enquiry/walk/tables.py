"""Tables in a text: a row of labels, then a row for each piece."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import Final

from ledgerstone.enquiry.scene.said import SaidOpening, SaidPiece, say
from ledgerstone.enquiry.sentence.measures import measures_of
from ledgerstone.enquiry.sentence.mentions import mentions_of
from ledgerstone.enquiry.text.lines import TextLine
from ledgerstone.enquiry.text.sentences import Sentence, sentences_of
from ledgerstone.enquiry.text.size_words import UNITS
from ledgerstone.enquiry.text.tokens import TextSpan
from ledgerstone.enquiry.walk.cells import cells_of
from ledgerstone.enquiry.walk.walk import Walker
from ledgerstone.enquiry.words.lexicon import LABELS, NOUNS, mark
from ledgerstone.quantities import UnitName

_LONGEST_LABEL: Final = 6  # words
_WORDS: Final = re.compile(r"[^\W\d_]+")
_UNIT: Final = re.compile(r"\b(mm|cm|in|inches|m)\b", re.IGNORECASE)
_KEYS: Final = {
    "long": "length",
    "wide": "wide",
    "deep": "width",
    "thick": "thickness",
    "high": "high",
    "dia": "diameter",
}
_ROLE: Final = {
    "length": "length",
    "width": "width",
    "wide": "width",
    "thickness": "thickness",
    "high": "width",
    "diameter": "diameter",
}
_BY_LENGTH: Final = {"long": "long", "longer": "long", "short": "wide", "shorter": "wide"}
_HOLES: Final = frozenset({"hole", "cutout", "loch", "bohrung"})
_NUMBERED: Final = frozenset({*_KEYS, "size", "quantity"})
Row = list[tuple[int, int]]


@dataclass(slots=True)
class Table:
    """Its lines, the label of each column, and each row's cells by column."""

    lines: list[TextLine]
    labels: list[str]
    units: list[str]
    rows: list[Row]
    sentences: list[Sentence] = field(default_factory=list)


def tables_in(text: str, lines: Sequence[TextLine]) -> list[Table]:
    """Find tables: a line with two or more labels, one of them a size's, and the rows below it."""
    tables: list[Table] = []
    i = 0
    while i < len(lines):
        heads = cells_of(lines[i])
        labels = _labels([text[a:b] for a, b in heads])
        if len(heads) >= 3 and sum(map(bool, labels)) >= 2 and set(labels) & {*_KEYS, "size"}:
            rows, j = _rows(lines, i + 1, len(heads))
            if rows:
                labels = _without_openings(_by_values(text, labels, rows))
                units = [(_UNIT.search(text[a:b]) or [""])[0] for a, b in heads]
                tables.append(Table([lines[i], *lines[i + 1 : j]], labels, units, rows))
                i = j
                continue
        i += 1
    return tables


def _labels(heads: Sequence[str]) -> list[str]:
    """Give what each column holds; of German letters "D" is the thickness, and "T" the depth."""
    letters = {head.strip().lower() for head in heads}
    labels = [_label(head) for head in heads]
    if "d" in letters and letters & {"b", "t"}:
        german = {"d": "thick", "t": "deep"}
        labels = [
            german.get(head.strip().lower(), label)
            for head, label in zip(heads, labels, strict=True)
        ]
    return labels


def _by_values(text: str, labels: list[str], rows: Sequence[Row]) -> list[str]:
    """Return labels with the thickness and the depth changed over, where all rows are so.

    "D" and "T" beside one another are a depth and a thickness, or German for the two the other way.
    """
    if labels.count("thick") != 1 or labels.count("deep") != 1:
        return labels
    thick, deep = labels.index("thick"), labels.index("deep")
    pairs = [(_first(text, row, thick), _first(text, row, deep)) for row in rows]
    if not all(one is not None and two is not None and one > two for one, two in pairs):
        return labels
    turned = {"thick": "deep", "deep": "thick"}
    return [turned.get(label, label) for label in labels]


def _first(text: str, row: Row, column: int) -> float | None:
    """Return the number that a cell is, None for any other cell."""
    cell = text[slice(*row[column])].strip() if column < len(row) else ""
    return float(cell) if cell.isdecimal() else None


def _without_openings(labels: list[str]) -> list[str]:
    """Return labels without the width of what a slab goes into; its height is its thickness."""
    if "thick" not in labels and "long" in labels and {"wide", "deep"} & set(labels):
        labels = ["thick" if label == "high" else label for label in labels]
    is_whole = {"long", "deep"} <= set(labels)
    return ["" if label == "wide" and is_whole else label for label in labels]


def _rows(
    lines: Sequence[TextLine], i: int, columns: int
) -> tuple[list[list[tuple[int, int]]], int]:
    rows = []
    end = i
    while i < len(lines):
        cells = cells_of(lines[i])
        if len(cells) >= max(2, columns - 2):
            rows.append(cells)
            end = i + 1
        elif (lines[i].words.strip() and not re.fullmatch(r"[-+|=\s:]+", lines[i].words)) or (
            not lines[i].words.strip() and rows
        ):
            break
        i += 1
    return rows, end


def _label(cell: str) -> str:
    """Give what a column holds; a number stands in no label: "150h" is a row's."""
    if any(char.isdigit() for char in cell):
        return ""
    words = [word.lower() for word in _WORDS.findall(cell)]
    if words[-1:] == ["side"] and words[0] in _BY_LENGTH:
        return _BY_LENGTH[words[0]]
    tags = [tag for _, _, tag in LABELS.all_in(words[:_LONGEST_LABEL])]
    if len({tag for tag in tags if tag in _KEYS}) > 1:
        return "size"  # "mm (long x deep x thick)"
    return tags[0] if tags else "cutouts" if _HOLES & set(words) else ""


def read_table(
    text: str,
    table: Table,
    masked: Sequence[TextSpan],
    walker: Walker,
    layer: int,
    *,
    has_inches: bool,
) -> None:
    """Make a piece of each row that has a size."""
    shared = _shared_unit(table)
    use = walker.subjects.keep_before_table()
    for row, more in _with_rest(text, table):
        cells = dict(zip(range(len(table.labels)), row, strict=False))
        sized = [
            i for i, label in enumerate(table.labels) if label in (*_KEYS, "size") and i in cells
        ]
        if not any(re.search(r"\d", text[slice(*cells[i])]) for i in sized):
            continue
        named = [
            cells[i] for i, label in enumerate(table.labels) if label == "piece" and i in cells
        ]
        lettered = [one for one in named if _WORDS.search(text[slice(*one)])]
        name = next(iter(lettered or named), None)
        piece = _begin_row(walker, _use_named(text[slice(*name)]) if name else "", use)
        first = text[slice(*row[0])].strip()
        is_letter = len(first) <= 2 and first.isalnum() and table.labels[0] not in _NUMBERED
        piece.label = first if is_letter else text[slice(*name)] if name else "row"
        told = [i for i, label in enumerate(table.labels) if label not in _KEYS and i in cells]
        piece.names = {
            word.lower() for i in told for word in _WORDS.findall(text[slice(*cells[i])])
        }
        order = sorted(
            cells, key=lambda i: (table.labels[i] != "piece", table.labels[i] not in _KEYS, i)
        )
        for i in order:
            label = table.labels[i]
            spans = [cells[i], *(one[i] for one in more if i < len(one))]
            for k, sentence in enumerate(_cell(text, spans, masked, has_inches=has_inches)):
                if label not in _NUMBERED:
                    _in_columns_unit(sentence, shared)
                if label in _KEYS or label == "quantity":
                    _number_cell(sentence, label, table.units[i], walker, layer)
                else:
                    sentence.starts_line = False
                    if label == "cutouts" and not k and _sizes_only(sentence):
                        _begin_hole(walker, piece)
                    walker.read(sentence, layer)
    walker.subjects.awaited = 0
    walker.focus.is_told = False


def _begin_row(walker: Walker, own: str, use: str) -> SaidPiece:
    """Return a row's slab: of its own use where its name tells one, else of the table's."""
    if walker.subjects.piece is None or walker.subjects.current().has_size():
        walker.subjects.start_piece(own or use)
    walker.focus.on_opening = False
    piece = walker.subjects.current()
    piece.use = own or piece.use
    return piece


def _sizes_only(sentence: Sentence) -> bool:
    """Return whether a cell of holes has a size and names no hole: "in the middle, dia 4.5"."""
    has_size = any(atom.kind == "size" for atom in sentence.atoms)
    return has_size and not any(one.kind in ("open", "hole") for one in mentions_of(sentence))


def _begin_hole(walker: Walker, piece: SaidPiece) -> None:
    """Put a hole of a row's slab in hand, of which its cell tells no more than sizes."""
    made = SaidOpening("hole", is_asked=True, names_hole=True)
    piece.openings.append(made)
    walker.subjects.openings, walker.focus.on_opening = [made], True


def _use_named(cell: str) -> str:
    """Return the use of the slab that a cell names last; "" for none."""
    words = [word.lower() for word in _WORDS.findall(cell)]
    named = [tag for _, _, tag in NOUNS.all_in(words) if tag.startswith("slab:")]
    return named[-1].removeprefix("slab:") if named else ""


def _shared_unit(table: Table) -> UnitName | None:
    """Return the one unit that the labels of a table's sizes have; None where they differ."""
    said = {unit.lower() for i, unit in enumerate(table.units) if unit and table.labels[i] in _KEYS}
    return UNITS.get(said.pop()) if len(said) == 1 else None


def _in_columns_unit(sentence: Sentence, unit: UnitName | None) -> None:
    """Give bare sizes in a cell of words the unit of the columns: not a count that leads it."""
    for i, atom in enumerate(sentence.atoms):
        if atom.size is None or atom.size.unit is not None or unit is None:
            continue
        follows = sentence.atoms[i + 1 : i + 2]
        if i or not follows or follows[0].kind == "mark":
            atom.size = replace(atom.size, unit=unit)


def _with_rest(text: str, table: Table) -> list[tuple[Row, list[Row]]]:
    """Give each row with those below it that only go on with its cells: their first is empty."""
    found: list[tuple[Row, list[Row]]] = []
    for row in table.rows:
        is_rest = bool(row) and not text[slice(*row[0])].strip()
        if is_rest and found:
            found[-1][1].append(row)
        else:
            found.append((row, []))
    return found


def _cell(
    text: str, spans: Sequence[TextSpan], masked: Sequence[TextSpan], *, has_inches: bool
) -> list[Sentence]:
    """Read a cell that may go on in the rows below its own: a sentence may run over them."""
    made: list[Sentence] = []
    for low, high in spans:
        line = TextLine(low, high, 0, text[low:high])
        told = sentences_of(text, [line], masked, has_inches=has_inches) if high > low else []
        if made and told and not made[-1].ends:
            first = told.pop(0)
            made[-1].atoms += first.atoms
            made[-1].ends = first.ends
        made += told
    return made


def _number_cell(sentence: Sentence, label: str, unit: str, walker: Walker, layer: int) -> None:
    """Take a cell's size as what its column says it is."""
    piece = walker.subjects.current()
    for measure in measures_of(sentence)[:1]:
        if label == "quantity":
            amount = measure.size.amount
            if measure.size.unit is None and amount.denominator == 1 and 1 <= amount <= 24:
                piece.quantity = int(amount)
                piece.quantity_spans = ((measure.size.start, measure.size.end),)
            return
        measure.unit_from_label = measure.unit_from_label or unit.lower()
        key = "diameter" if measure.role == "dia" else _KEYS[label]  # "750 dia" under "Length"
        if key in ("wide", "high"):
            key = "width"
        claim = walker.assigner.claim(measure, _ROLE[key], (layer, 0))
        if claim is not None:
            say(piece.claims, key, claim)
    if any(True for _ in mark("round").all_in(sentence.words)):
        piece.shape = piece.shape or "round"
