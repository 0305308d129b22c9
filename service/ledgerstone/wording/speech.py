"""Messages become sentences, in one language and one place's formats."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from functools import lru_cache
from typing import Any, Final

from babel import Locale
from fluent.runtime.types import FluentType, fluent_number

from ledgerstone.errors import WordingError
from ledgerstone.message import (
    Listed,
    Message,
    People,
    Value,
)
from ledgerstone.order import Order, Polygon, Round
from ledgerstone.quantities import Marks, UnitName
from ledgerstone.wording.bench import written
from ledgerstone.wording.bundles import MessageBundle
from ledgerstone.wording.capitals import capital
from ledgerstone.wording.catalogues import USUAL_LANGUAGE, variant
from ledgerstone.wording.formats import Formats
from ledgerstone.wording.variants import SWISS_GERMAN, words_of
from ledgerstone.workshop.countries import LengthUnit, RegionalSettings, usual_in
from ledgerstone.workshop.records import Workshop

_MAX_SENTENCES: Final = 1024  # sentences that are kept, most of them under a kilobyte
_PLACES: Final = 6  # of a number that has no unit of its own, at most
_LOCALES: Final = {"en": "en-GB", "de": "de-DE"}
_BRITAIN: Final = usual_in("GB")
_LONGEST: Final = 2000  # letters of one value; fluent.runtime refuses 2500
_PRIVATE: Final = range(0xE000, 0xE100)  # letters that mean nothing (Unicode, private use)
_JOINED: Final = {
    "and": ("list-between", "list-last-and"),
    "or": ("list-between", "list-last-or"),
    "comma": ("list-between", "list-between"),
    "comma-and": ("list-between", "list-last-comma-and"),
    "semicolon": ("list-semicolon", "list-semicolon"),
    "sentences": ("list-sentences", "list-sentences"),
}


# Values that every message has: what its country is, and the units of the place.
ALWAYS_GIVEN: Final = ("country", "lengths", "masses", "volumes", "temperatures", "strengths")


class Speech:
    """Says messages in one language.

    Parameters
    ----------
    language
        One that there is a catalogue of.
    own
        The maker's own messages of that language, which replace ours.
    place
        The workshop's country: its units, its formats and its English words.
    """

    def __init__(self, language: str, own: str = "", place: RegionalSettings = _BRITAIN) -> None:
        self.language = language
        self.own = own
        self.place = place
        self.locale = locale_in(language, place)
        self.formats = Formats(Locale.parse(self.locale, sep="-"), place)
        functions = {"NAME": self._name, "START": _start, "HOWMANY": _how_many}
        words = words_of(language, place, variant(place.words))
        self._bundle = MessageBundle(language, self.locale, functions, own, words)
        self._formatted: dict[str, str] = {}
        lengths = "in" if place.lengths == "in" else "mm"
        units = (place.masses, place.volumes, place.temperatures, place.strengths)
        every = (place.country, lengths, *units)
        self._always: Final = dict(zip(ALWAYS_GIVEN, every, strict=True))

    def say(self, message: Message | str) -> str:
        """Format a message.

        A text is given back as it is: what is not yet in the catalogues.

        Raises
        ------
        WordingError
            The catalogue has no such message, or asks for a value that was not given.
        """
        if isinstance(message, str):
            return message
        # By all that is said of it: equal lengths may be in different units.
        key = repr(message)
        if key not in self._formatted:
            text = self.value(message)
            if len(self._formatted) >= _MAX_SENTENCES:
                self._formatted.pop(next(iter(self._formatted)))
            self._formatted[key] = text
        return self._formatted[key]

    def say_all(self, sentences: Iterable[Message | str]) -> str:
        """Format sentences one by one."""
        return " ".join(map(self.say, sentences))

    def value(self, value: Value, case: str = "nominative") -> str:
        """Write one value as it is in a sentence."""
        if isinstance(value, People):
            value = Message("people", count=value.count)
        if isinstance(value, Message):
            return self._filled(value, case)
        if isinstance(value, Listed):
            return self._listed(value, case)
        return written(self.formats, value)

    def _filled(self, message: Message, case: str) -> str:
        pattern = self._bundle.pattern(message.name)
        apart: list[str] = []
        given = {name: self._given(value, apart) for name, value in message.values.items()}
        text, faults = self._bundle.filled(pattern, {**self._always, **given, "case": case})
        if faults:
            raise WordingError(message.name, "; ".join(str(fault) for fault in faults))
        return _with_long(text, apart) if apart else text

    def _given(self, value: Value, apart: list[str]) -> str | FluentType:
        if isinstance(value, str):
            return _kept_apart(value, apart)
        if isinstance(value, int):
            return fluent_number(value, useGrouping=False)
        if isinstance(value, float):
            return fluent_number(value, useGrouping=False, maximumFractionDigits=_PLACES)
        return _Given(value, self, apart)

    def _listed(self, listed: Listed, case: str) -> str:
        parts = [self.value(thing, case) for thing in listed.things]
        if len(parts) < 2:
            return "".join(parts)
        if listed.most is not None and len(parts) > listed.most:
            return self.say(
                Message("list-more", one=parts[0], other=parts[1], count=len(parts) - 2)
            )
        between, last = _JOINED[listed.joined]
        first = parts[0]
        for other in parts[1:-1]:
            first = self.say(Message(between, one=first, other=other))
        return self.say(Message(last, one=first, other=parts[-1]))

    @staticmethod
    def _name(given: Any, case: str = "nominative", start: str = "no") -> str:  # noqa: ANN401  as _start
        """``NAME($thing, case: "dative", start: "yes")``: a name in its case, or at a start."""
        if isinstance(given, _Given):
            return given.shown(case, starts=start == "yes")
        return capital(str(given)) if start == "yes" else str(given)


class _Given(FluentType):
    """A value that is said only where it stands."""

    def __init__(self, value: Value, speech: Speech, apart: list[str]) -> None:
        self.value = value
        self._speech = speech
        self._apart = apart

    def format(self, locale: Locale) -> str:  # noqa: ARG002  fluent's own signature
        return self.shown("nominative")

    def shown(self, case: str, *, starts: bool = False) -> str:
        """Say the value in its case, or what stands for it where it is long."""
        text = self._speech.value(self.value, case)
        return _kept_apart(capital(text) if starts else text, self._apart)


def _kept_apart(text: str, apart: list[str]) -> str:
    """Return a letter that stands for a text, where the text is longer than fluent takes."""
    if len(text) <= _LONGEST or len(apart) >= len(_PRIVATE):
        return text
    apart.append(text)
    return chr(_PRIVATE[len(apart) - 1])


def _with_long(text: str, apart: Sequence[str]) -> str:
    """Put the texts that were kept apart where their letters stand."""
    return text.translate({_PRIVATE[i]: text for i, text in enumerate(apart)})


class _Count(int, FluentType):
    """A whole number: written without groups, and counted by the language's plurals."""

    def format(self, locale: Locale) -> str:  # noqa: ARG002  fluent's own signature
        return str(int(self))


def _start(given: Any) -> str:  # noqa: ANN401  whatever stands in a catalogue
    """``START($weight)``: what begins a sentence."""
    return (
        given.shown("nominative", starts=True) if isinstance(given, _Given) else capital(str(given))
    )


def _how_many(given: Any) -> _Count:  # noqa: ANN401  whatever stands in a catalogue
    """``HOWMANY($slabs)``: how many things are listed, to choose a plural by; one, if no list."""
    if isinstance(given, _Given) and isinstance(given.value, Listed):
        listed = given.value
        return _Count(len(listed.things) if listed.count is None else listed.count)
    return _Count(1)


def speech_of(order: Order, workshop: Workshop) -> Speech:
    """Return the speech of an order's language and unit, in the workshop's own words."""
    return workshop_speech(order.language, workshop, _typed_unit(order))


def _typed_unit(order: Order) -> UnitName | None:
    """The unit in which the first slab's size was typed; None where it came as numbers."""
    outline = order.slabs[0].outline
    if isinstance(outline, Polygon):
        size = max(point.x for point in outline.points)
    else:
        size = outline.diameter if isinstance(outline, Round) else outline.length
    return None if size.origin == "number" else size.unit


def workshop_speech(language: str, workshop: Workshop, unit: UnitName | None = None) -> Speech:
    """Return the speech of a language, in the workshop's own words.

    Parameters
    ----------
    unit
        What lengths that nobody typed are written in; None for the country's own. Feet are typed
        of large things, so that small ones beside them are in inches.
    """
    own = (sentence.text for sentence in workshop.sentences if sentence.language == language)
    lengths: LengthUnit = "in" if unit == "ft" else unit or workshop.place.lengths
    return speech_in(language, next(own, ""), replace(workshop.place, lengths=lengths))


def bench_speech(language: str, workshop: Workshop) -> Speech:
    """Return the speech in the units that the workshop works in."""
    own = (sentence.text for sentence in workshop.sentences if sentence.language == language)
    return speech_in(language, next(own, ""), workshop.place.at_work())


@lru_cache(maxsize=16)
def speech_in(language: str, own: str = "", place: RegionalSettings = _BRITAIN) -> Speech:
    """Return the speech of a language, cached; with British formats by default."""
    return Speech(language, own, place)


def locale_in(language: str, place: RegionalSettings) -> str:
    """Return the locale of numbers and days: the country's own, if the language is spoken there.

    Elsewhere English is written as in Britain and German as in Germany.
    """
    return f"{language}-{place.country}" if language in place.languages else _LOCALES[language]


@lru_cache(maxsize=8)
def number_marks(language: str, place: RegionalSettings) -> Marks:
    """Return what people set in numbers in a language and a place; Unicode's (CLDR) by Babel.

    Where a comma stands before tenths, a point is one of thousands beside the place's own mark.
    """
    symbols = Locale.parse(locale_in(language, place), sep="-").number_symbols
    latin = symbols.get("latn", symbols)
    point, group = (
        str(latin["decimal"]),
        str(latin["group"]).replace("\N{RIGHT SINGLE QUOTATION MARK}", "'"),
    )
    swiss = ("'",) if place.country in SWISS_GERMAN else ()  # whatever language is asked for
    groups = dict.fromkeys((group, ".") if point == "," else (group, *swiss))
    return Marks(point, tuple(group for group in groups if not group.isspace()))


def english(message: Message | str) -> str:
    """Format a message in English, with our own words: for logs, and for who has no customer."""
    return speech_in(USUAL_LANGUAGE).say(message)
