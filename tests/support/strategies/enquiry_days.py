"""Messages that wish for a day in words which name none, or one of the moveable feasts."""

from __future__ import annotations

from calendar import monthrange
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from email.utils import format_datetime

from dateutil.easter import easter
from hypothesis import strategies as st

_ASKS = "Please quote for a shelf 900 x 220 x 40."
_ASKS_DE = "Was kostet ein Regal 900 x 220 x 40 mm?"
_FRAMES = (
    "{Said} would be ideal.",
    "{Said}.",
    "We need it {said}.",
    "Could you do it {said}?",
    "{Said} would suit us best.",
)
_FRAMES_DE = ("{Said} wäre schön.", "{Said}.", "Wir brauchen sie {said}.", "Fertig {said} bitte.")
_MONTHS = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
]
_MONTHS_DE = [
    "Januar",
    "Februar",
    "März",
    "April",
    "Mai",
    "Juni",
    "Juli",
    "August",
    "September",
    "Oktober",
    "November",
    "Dezember",
]
_WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"]
_PARTS = {"early": (1, 10), "mid": (11, 20), "late": (21, 31)}
_PARTS_DE = {"Anfang": (1, 10), "Mitte": (11, 20)}


@dataclass(frozen=True)
class Wished:
    """A whole message, the day taken or none, and the days that are offered."""

    text: str
    day: date | None
    readings: tuple[date, ...]


@st.composite
def _written(draw: st.DrawFn) -> date:
    return draw(st.dates(date(2026, 1, 1), date(2032, 12, 20)))


def _message(written: date, said: str, frame: str, asks: str) -> str:
    sent = format_datetime(datetime(written.year, written.month, written.day, 9, tzinfo=UTC))
    capital = said[0].upper() + said[1:]
    body = f"{asks} {frame.format(said=said, Said=capital)}"
    return f"From: Jo <jo@example.com>\nDate: {sent}\nSubject: shelf\n\n{body}\n"


@st.composite
def next_weekdays(draw: st.DrawFn) -> Wished:
    """“Next Friday” is the coming one or the one after it."""
    written, name = draw(_written()), draw(st.sampled_from(_WEEKDAYS))
    day = written + timedelta(days=1)
    while _WEEKDAYS[day.weekday()] != name:
        day += timedelta(days=1)
    text = _message(written, f"next {name}", draw(st.sampled_from(_FRAMES)), _ASKS)
    return Wished(text, None, (day, day + timedelta(days=7)))


@st.composite
def parts_of_months(draw: st.DrawFn) -> Wished:
    """“Mid February” is any day of the middle third of the next such month."""
    written, month = draw(_written()), draw(st.integers(1, 12))
    is_german = draw(st.booleans())
    part, (low, high) = draw(st.sampled_from(list((_PARTS_DE if is_german else _PARTS).items())))
    names = _MONTHS_DE if is_german else _MONTHS
    frames = _FRAMES_DE if is_german else _FRAMES
    asks = _ASKS_DE if is_german else _ASKS
    year = written.year + (month < written.month)
    days = (date(year, month, low), date(year, month, min(high, monthrange(year, month)[1])))
    said = f"{part} {names[month - 1]}"
    return Wished(_message(written, said, draw(st.sampled_from(frames)), asks), None, days)


_ASKED = (
    "Can you deliver it to us {said}?",
    "Could you deliver {said}?",
    "Delivery {said}, please.",
    "We are after it {said}.",
    "We'd like it {said}.",
)
_ASKED_DE = ("Können Sie {said} liefern?", "Lieferung {said} bitte.", "Wir brauchen sie {said}.")
_SOME_DAY = ("sometime in {m}", "some time in {m}", "some time during {m}", "sometime around {m}")
_OF_EASTER = ("around Easter", "sometime around Easter", "some time about Easter")


@st.composite
def some_days(draw: st.DrawFn) -> Wished:
    """“Sometime in January” is any day of the next January, “irgendwann im Januar” too."""
    written, month = draw(_written()), draw(st.integers(1, 12))
    is_german = draw(st.booleans())
    year = written.year + (month < written.month)
    days = (date(year, month, 1), date(year, month, monthrange(year, month)[1]))
    if is_german:
        said, frame = f"irgendwann im {_MONTHS_DE[month - 1]}", draw(st.sampled_from(_ASKED_DE))
        return Wished(_message(written, said, frame, _ASKS_DE), None, days)
    said = draw(st.sampled_from((*_SOME_DAY, "in {m}"))).format(m=_MONTHS[month - 1])
    return Wished(_message(written, said, draw(st.sampled_from(_ASKED)), _ASKS), None, days)


@st.composite
def about_easter(draw: st.DrawFn) -> Wished:
    """“Around Easter”, wished in a question, is about the next Easter Sunday."""
    written = draw(_written())
    sunday = easter(written.year)
    sunday = sunday if sunday > written else easter(written.year + 1)
    is_german = draw(st.booleans())
    said = "irgendwann um Ostern" if is_german else draw(st.sampled_from(_OF_EASTER))
    frame = draw(st.sampled_from(_ASKED_DE if is_german else _ASKED))
    asks = _ASKS_DE if is_german else _ASKS
    return Wished(_message(written, said, frame, asks), None, (sunday,))


@st.composite
def easters(draw: st.DrawFn) -> Wished:
    """Before, by, after and around the next Easter after the message; source: dateutil."""
    written = draw(_written())
    sunday = easter(written.year)
    if sunday <= written:
        sunday = easter(written.year + 1)
    thursday, saturday, tuesday = (sunday + timedelta(days=n) for n in (-3, -1, 2))
    said, day, readings = draw(
        st.sampled_from(
            (
                ("before Easter", thursday, (thursday, saturday)),
                ("by Easter", sunday, ()),
                ("in time for Easter", sunday, ()),
                ("after Easter", None, (tuesday,)),
                ("around Easter", None, (sunday,)),
            )
        )
    )
    text = _message(written, said, draw(st.sampled_from(_FRAMES)), _ASKS)
    return Wished(text, day, readings)


_EVENTS = ("baby", "game", "show", "move", "match", "party", "harvest", "wedding", "birthday")
_NAMED_SO = ("room", "table", "area", "house", "corner", "kitchen", "tent", "bar", "stand", "field")
_FOR = (
    "It is for {a} {n}.",
    "We need it for {a} {n}.",
    "The shelf is for {a} {n}, in grey.",
    "We'd like it for {a}'s {n}.",
    "It is wanted for {a}’s {n} and nothing else.",
)
_BY_EVENT = (
    "We need it for {a}.",
    "Could you do it before {a} please?",
    "We need it for {a}, if that can be done.",
    "It must be here by {a}.",
    "We would love it for {a} in the new house.",
)


def _about_event(draw: st.DrawFn, frames: tuple[str, ...], articles: tuple[str, ...]) -> Wished:
    written, article = draw(_written()), draw(st.sampled_from(articles))
    said = f"{article} {draw(st.sampled_from(_EVENTS))}"
    told = draw(st.sampled_from(frames)).format(a=said, n=draw(st.sampled_from(_NAMED_SO)))
    return Wished(_message(written, said, told, _ASKS), None, ())


@st.composite
def for_things(draw: st.DrawFn) -> Wished:
    """What the slab is for, called after an event: no day is wished for."""
    return _about_event(draw, _FOR, ("the", "our", "a"))


@st.composite
def for_events(draw: st.DrawFn) -> Wished:
    """An event that the slab is needed by, of which no day is told."""
    return _about_event(draw, _BY_EVENT, ("the", "our", "my"))
