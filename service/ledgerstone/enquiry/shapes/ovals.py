"""Ovals: which openings are, and the polygon that an oval is proposed as."""

from __future__ import annotations

import math
from typing import Final

from ledgerstone.enquiry.scene.focus import Focus, ParsedSentence
from ledgerstone.enquiry.scene.said import Claim, SaidOpening
from ledgerstone.enquiry.words.word_sets import word_set
from ledgerstone.json_types import Members
from ledgerstone.quantities import Length

OVALS: Final = word_set(
    "oval ovals elliptical ellipse ovale ovaler ovales ovalen ovalem elliptische elliptischer"
    " elliptischen ellipsen"
)

_NEAR: Final = 3
_CORNERS: Final = 72  # 5 degrees apart: within 0.1 % of the oval


def read_ovals(focus: Focus, parsed: ParsedSentence) -> None:
    """Note which openings a sentence calls oval."""
    for i, word in enumerate(parsed.sentence.words):
        if word not in OVALS:
            continue
        atom = parsed.sentence.atoms[i]
        for opening in _whose(focus, parsed, i):
            opening.oval = opening.oval or ((atom.start, atom.end),)


def _whose(focus: Focus, parsed: ParsedSentence, at: int) -> list[SaidOpening]:
    """Return the openings that a word is said of: those named after it, else those before it."""
    following = [one for one in parsed.found if at < one.end and one.start <= at + _NEAR]
    if following and following[0].kind == "slab":
        return []  # "an oval table"
    after = [openings for start, openings in focus.held if at <= start <= at + _NEAR]
    before = [openings for start, openings in focus.held if start <= at]
    if after or before:
        return (after or before[-1:])[0]
    return focus.subjects.openings if focus.on_opening else []


def oval_opening(made: Members) -> Members:
    """Return a rectangle's cut-out as the polygon of the oval in it, mm; its label and rim stay."""
    length, width, x, y = (
        Length.parse(text)
        for text in (made["length"], made["width"], made["centre"]["x"], made["centre"]["y"])
    )
    points = [
        {
            "x": Length.of_mm(round(x.mm - length.mm / 2 + across.mm, 1)).text(),
            "y": Length.of_mm(round(y.mm - width.mm / 2 + along.mm, 1)).text(),
        }
        for across, along in oval_points(Claim(length, ()), Claim(width, ()))
    ]
    kept = {key: value for key, value in made.items() if key not in ("length", "width", "centre")}
    return {**kept, "kind": "polygon", "points": points}


def oval_points(length: Claim, width: Claim) -> list[tuple[Length, Length]]:
    """Return an ellipse's corners, anticlockwise from its right end, in the units it is told in."""
    points = []
    for i in range(_CORNERS):
        turn = 2 * math.pi * i / _CORNERS
        x_mm = length.mm / 2 * (1 + math.cos(turn))
        y_mm = width.mm / 2 * (1 + math.sin(turn))
        points.append((Length.of_mm(round(x_mm, 1)), Length.of_mm(round(y_mm, 1))))
    return points
