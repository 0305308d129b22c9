"""All sentences that people read: named in the core, formatted at the edge from catalogues.

Below the edge (checks, remedies, schedule, price, quote) nothing makes a sentence. It yields a
``Message``: a name and its values, each of its own type, in no language::

    Message("too-thin", slab=slab_name(slab, i, n), thickness=slab.thickness, limit=limit)

Values are a text of the customer's or a word to choose by (``str``), a count (``int``), another
number (``float``), a day (``date``), a ``Length`` in the customer's unit, ``Money``, ``Percent``,
``Weight``, ``Temperature``, ``Volume``, ``Strength`` (in the units of the workshop's country),
``People``, the name of a thing (``slab_name``, ``cutout_name``, ``relief_name``, ``side_name``),
several things (``Listed``), or another ``Message`` where that is a whole clause. Any message may
also choose by ``$country``, such as who decides on gas there.

At the edge ``Speech.say(message)`` makes the sentence; ``speech_of(order, workshop)`` gives the
speech of an order's language, ``speech_in(language)`` that of any. The sentences stand in
``catalogues/LANGUAGE/AREA.ftl`` in Project Fluent's format (https://projectfluent.org), one
message a line::

    too-thin = { NAME($slab, start: "yes") } is { $thickness } thick; the thinnest is { $limit }.
    too-thin = { NAME($slab, start: "yes") } ist { $thickness } dick; dünner als …

``NAME($thing, case: "dative", start: "yes")`` says a name in a case (``nominative``, ``genitive``,
``dative``, ``accusative``), with a capital where it begins a sentence; ``START($weight)`` gives
any value a capital; ``HOWMANY($slabs)`` counts what is listed, to choose a plural by. What differs
by a value is chosen inside a sentence (``{ $way -> [pallet] … *[fitted] … }``) or is a message of
its own. No sentence is put together from fragments: whole sentences can be translated.

A message's name is written out where it is made, so that ``tests/unit/test_catalogues.py`` finds
what is missing, unused, untranslated or given other values than its sentence asks for.

A maker's own sentences stand in ``sentences.LANGUAGE.ftl`` beside the profile.
"""

from __future__ import annotations

from ledgerstone.message import (
    DateRange,
    DayMonth,
    Figure,
    Listed,
    MassPerLength,
    Message,
    Money,
    People,
    Percent,
    Strength,
    Temperature,
    Value,
    Volume,
    Weekday,
    Weight,
)
from ledgerstone.wording.capitals import capital
from ledgerstone.wording.catalogues import LANGUAGES, known_language
from ledgerstone.wording.formats import percent_of
from ledgerstone.wording.naming import (
    MAX_NAMED,
    cut_short,
    cutout_name,
    relief_name,
    side_name,
    slab_name,
    slabs_name,
)
from ledgerstone.wording.speech import (
    Speech,
    bench_speech,
    english,
    number_marks,
    speech_in,
    speech_of,
    workshop_speech,
)

__all__ = [
    "LANGUAGES",
    "MAX_NAMED",
    "DateRange",
    "DayMonth",
    "Figure",
    "Listed",
    "MassPerLength",
    "Message",
    "Money",
    "People",
    "Percent",
    "Speech",
    "Strength",
    "Temperature",
    "Value",
    "Volume",
    "Weekday",
    "Weight",
    "bench_speech",
    "capital",
    "cut_short",
    "cutout_name",
    "english",
    "known_language",
    "number_marks",
    "percent_of",
    "relief_name",
    "side_name",
    "slab_name",
    "slabs_name",
    "speech_in",
    "speech_of",
    "workshop_speech",
]
