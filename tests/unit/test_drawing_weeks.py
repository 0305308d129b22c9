"""The plan of the weeks: a bar a phase on a strip of days, and the same in words."""

import re
import xml.etree.ElementTree as ET
from datetime import date, timedelta
from itertools import pairwise
from typing import get_args

import pytest

from ledgerstone.drawing.lettering import text_width
from ledgerstone.drawing.weeks import draw_weeks, say_weeks
from ledgerstone.schedule import LeadTime, PhaseDays
from ledgerstone.schedule.phases import Wait
from ledgerstone.wording import Message, english, speech_in
from ledgerstone.work import Phase

SVG = "{http://www.w3.org/2000/svg}"
MONDAY = date(2026, 11, 30)


def lead(*phases: tuple[Phase | Wait, int, int], arrives: tuple[int, int] = (21, 22)) -> LeadTime:
    """A lead time of phases by their days from that Monday, ready on the twentieth."""
    day = [MONDAY + timedelta(days=n) for n in range(400)]
    told = tuple(PhaseDays(name, day[a], day[b], ()) for name, a, b in phases)
    ready = max(phase.ends for phase in told)
    first, last = (day[n] for n in arrives)
    return LeadTime(ready, MONDAY - timedelta(days=1), first, last, told)


ENGLISH = speech_in("en")
ROAD = english(Message("weeks-road"))
USUAL = lead(
    ("queue", 0, 4),
    ("mould", 7, 8),
    ("cast", 8, 8),
    ("cover", 8, 12),
    ("pack", 18, 20),
)


def drawn(told: LeadTime) -> ET.Element:
    """The plan as an XML reader reads it."""
    return ET.fromstring(draw_weeks(told, ENGLISH))  # noqa: S314  our own drawing


def bars(root: ET.Element) -> list[tuple[float, float]]:
    """Left and right of every bar, from the top."""
    found = root.findall(f"{SVG}rect")
    return [(float(r.attrib["x"]), float(r.attrib["x"]) + float(r.attrib["width"])) for r in found]


def test_bars_stand_where_their_days_are() -> None:
    """Every bar begins at its first day and ends after its last, on one scale of days."""
    root = drawn(USUAL)
    spans = [(0, 5), (7, 9), (8, 9), (8, 13), (18, 21), (21, 23)]  # the last one: on the road
    found = bars(root)
    assert len(found) == len(spans)
    left, right = found[0][0], found[-1][1]
    for (x0, x1), (a, b) in zip(found, spans, strict=True):
        assert x0 == pytest.approx(left + (right - left) * a / 23, abs=0.02)
        assert x1 == pytest.approx(left + (right - left) * b / 23, abs=0.02)


def test_hands_and_waits_are_distinguished_without_colour() -> None:
    """What hands do is filled, and what only takes time is an outline."""
    waits = {"queue", "cover", "road"}
    names = ["queue", "mould", "cast", "cover", "pack", "road"]
    filled = [r.attrib["fill"] != "none" for r in drawn(USUAL).findall(f"{SVG}rect")]
    assert filled == [name not in waits for name in names]


def test_what_is_collected_has_no_days_on_the_road() -> None:
    """There it is ready, and nothing is on its way."""
    told = lead(("cast", 0, 0), ("pack", 3, 4), arrives=(4, 4))
    assert len(bars(drawn(told))) == 2
    assert ROAD not in say_weeks(told, ENGLISH)


def test_the_words_say_every_stage_with_its_days() -> None:
    """The text alternative is whole: whoever does not see the strip loses nothing."""
    says = say_weeks(USUAL, ENGLISH)
    assert says == (
        "From Monday 30 November to Tuesday 22 December 2026. Waiting its turn: Monday 30 November"
        " to Friday 4 December. Making the mould: Monday 7 December to Tuesday 8 December."
        " Casting: Tuesday 8 December. Curing under cover: Tuesday 8 December to Saturday 12"
        " December. Packing: Friday 18 December to Sunday 20 December."
        f" {ROAD}: Monday 21 December to Tuesday 22 December."
    )
    root = drawn(USUAL)
    assert root.findtext(f"{SVG}desc") == says
    assert root.attrib["role"] == "img"


@pytest.mark.parametrize("days", [1, 3, 8, 30, 75, 200, 380])
def test_mondays_are_written_where_there_is_room(days: int) -> None:
    """No two dates run into each other, and none out of the sheet, however long it takes."""
    root = drawn(lead(("cast", 0, 0), ("pack", days - 1, days), arrives=(days + 1, days + 2)))
    width = float(root.attrib["viewBox"].split()[2])
    dates = [t for t in root.iter(f"{SVG}text") if re.fullmatch(r"\d+ [A-Z][a-z]+", t.text or "")]
    places = [
        (float(t.attrib["x"]), text_width(t.text or "", float(t.attrib["font-size"])))
        for t in dates
    ]
    assert dates
    assert all(x + wide <= width for x, wide in places)
    assert all(a + wide < b for (a, wide), (b, _) in pairwise(places))


@pytest.mark.parametrize("phase", [*get_args(Phase), *get_args(Wait)])
def test_a_name_keeps_to_its_column(phase: Phase | Wait) -> None:
    """Every phase's name ends before the strip begins."""
    root = drawn(lead((phase, 0, 3)))
    said = english(Message("stage", stage=phase))
    (name,) = (t for t in root.iter(f"{SVG}text") if said.startswith((t.text or "-").rstrip("…")))
    wide = text_width(name.text or "", float(name.attrib["font-size"]))
    assert float(name.attrib["x"]) + wide < bars(root)[0][0]


def test_nothing_is_drawn_of_no_stages() -> None:
    """Without a phase there is no plan, and no fault."""
    assert draw_weeks(LeadTime(MONDAY, MONDAY, MONDAY, MONDAY, ()), ENGLISH) == ""
