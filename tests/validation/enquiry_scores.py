"""Scores answers to enquiries against what a careful maker would take from each message."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from validation.enquiry_dimensions import DimensionRow, Score, rows, score_dimensions
from validation.enquiry_words import score_asked, score_rest

__all__ = ["DimensionRow", "Score", "Scored", "rows", "scored", "table", "total"]

Scored = list[tuple[DimensionRow, Score]]


def scored(all_rows: Iterable[DimensionRow], read: Callable[[str], DimensionRow]) -> Scored:
    """Every message with its score."""
    found = []
    for row in all_rows:
        answer = read(row["raw"])
        score = score_dimensions(row, answer)
        score.add(score_asked(row, answer))
        score.add(score_rest(row, answer))
        found.append((row, score))
    return found


def total(found: Scored) -> Score:
    """All counts together."""
    score = Score()
    for _, one in found:
        score.add(one)
    return score


def _kind(row: DimensionRow) -> str:
    return str(row["kind"])


def _origin(row: DimensionRow) -> str:
    return str(row["notes"].get("origin", "-"))


def table(found: Scored) -> str:
    """The scores by kind and by origin, and what else was read."""
    head = [f"{'':18}{'rows':>5}{'wanted':>8}{'given':>7}{'right':>7}"]
    head.append(f"{'precision':>11}{'recall':>8}{'invented':>10}{'named':>9}{'alarms':>8}")
    lines = ["".join(head)]
    for named in (_kind, _origin):
        names = sorted({named(row) for row, _ in found})
        lines += [_line(name, [one for one in found if named(one[0]) == name]) for name in names]
        lines.append("")
    lines.append(_line("in all", found))
    score = total(found)
    names = sorted(key[:-1] for key in score.counts if key.endswith("?"))
    lines += [
        "",
        *(f"{name:20}{score.counts[name]:>5} of {score.counts[name + '?']}" for name in names),
    ]
    return "\n".join(lines)


def _line(name: str, found: Scored) -> str:
    score = total(found)
    counts = score.counts
    precision, recall = score.share("right", "given"), score.share("right", "wanted")
    return (
        f"{name:18}{len(found):>5}{counts['wanted']:>8}{counts['given']:>7}{counts['right']:>7}"
        f"{precision:>11.3f}{recall:>8.3f}{counts['invented']:>10}"
        f"{counts['named']:>5}/{counts['asked']:<3}"
        f"{counts['false_alarms']:>5}/{counts['entries']:<3}"
    )
