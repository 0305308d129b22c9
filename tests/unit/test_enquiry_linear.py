"""Reading stays linear: no text, however hostile, keeps the reader long."""

import time
from collections.abc import Callable

import pytest

from ledgerstone.enquiry import read_enquiry
from ledgerstone.enquiry.answer import MAX_READ
from ledgerstone.json_types import JSON
from ledgerstone.workshop import Workshop
from support.reference import slowness

# Each is said once with its repeats; the reader's time for four times as many is about four times.
HOSTILE = {
    "sizes": "1 x 1 x 1 ",
    "units": "1 mm ",
    "fractions": "1/2 1 1/2 1-1/2 ",
    "number words": "twenty one hundred and ",
    "digits": "9",
    "marks": "1.1,1.",
    "feet": "6' 2\" ",
    "quotes": "> > > ",
    "quoted lines": "> 40 mm\n",
    "headers": "From: a\nTo: b\nSubject: c\n",
    "dates": "1 March by the 1st of ",
    "money": "£1 - £1 ",
    "phones": "01632 960 ",
    "addresses": "a@b.c.d.e.f.",
    "colours": "pale light dark grey colour ",
    "labels": "Length: Width: ",
    "tables": "Length\tWidth\tThick\n1\t2\t3\n",
    "closings": "Regards\n",
    "slabs": "a worktop a sink a tap hole behind the sink ",
    "delivery": "deliver or collect delivered to ",
    "edges": "round edge, bevel all round except ",
    "blanks": " ",
    "lines": "\n",
    "commas": "not, from the left, ",
    "apostrophes": "'s ",
    "bullets": "- 1 shelf 900 x 200\n",
    "shades": "1 in oatmeal, ",
    "corners": "the front left corner cut off 200 each way ",
    "differences": "make it 20 longer ",
    "legs": "two pieces l shaped long leg 2000 x 600 ",
    "streets": "14 Mill Lane\n",
    "sums": "units 600 + 600 + ",
    "turns": "in the first a sink, in the second a hob, ",
    "dashes": "the fridge - 600 x 600 - ",
    "legs by sides": "l shaped back 2000, right 600, ",
    "dots": "Length ..... 20 ",
    "called by length": "1) 900 x 600\nthe 900 has a sink in the 900 one ",
    "walls": "2000 long, the wall is 2100 exactly wall to wall ",
    "choices": "option 1 900 x 600 or 800 x 600, the second please ",
    "cupboards": "two 600 units 27 in cabinets either side 30 ",
    "pairs": "two basins 400 from the left and 400 from the right ",
}


def _seconds(text: str, workshop: Workshop) -> float:
    """Processor time of reading a text once, s."""
    began = time.process_time()
    read_enquiry(text, workshop)
    return time.process_time() - began


def _tries(holds: Callable[[], bool]) -> bool:
    """Return whether a bound on time holds, in the better of two tries: a machine may be busy."""
    return holds() or holds()


def _is_linear(unit: str, shorter: int, longer: int, workshop: Workshop) -> bool:
    """Return whether a text four times as long is read in about four times as long."""
    few, many = ("Quote for a worktop please " + unit * (n // len(unit)) for n in (shorter, longer))
    few_s, many_s = _seconds(few, workshop), _seconds(many, workshop)
    share = longer / MAX_READ  # of the second that the longest text may take
    return many_s < 8 * few_s + 0.15 * share and (
        many_s < 1.0 * share or many_s < share * slowness()  # as quiet
    )


@pytest.mark.parametrize("name", HOSTILE)
def test_hostile_repeats_are_read_in_linear_time(workshop: Workshop, name: str) -> None:
    """A text takes about as long as its length has it, and its share of a second.

    Those of 4 000 characters take at most eight times as long as those of 1 000, and 0.4 s.
    """
    assert _tries(lambda: _is_linear(HOSTILE[name], 1_000, 4_000, workshop))


@pytest.mark.long
@pytest.mark.parametrize("name", HOSTILE)
def test_the_longest_hostile_repeats_are_read_in_linear_time(workshop: Workshop, name: str) -> None:
    """So does the longest text that is read, 10 000 characters, which take under a second."""
    assert _tries(lambda: _is_linear(HOSTILE[name], 2_500, MAX_READ, workshop))


@pytest.mark.parametrize("first", range(4))
def test_a_hostile_text_is_read_as_far_as_any(workshop: Workshop, first: int) -> None:
    """Of a quarter of a megabyte 10 000 characters are read within a second; the rest is marked.

    Every fourth of the repeats stands in them.
    """
    units = list(HOSTILE.values())[first::4]
    one = "".join(unit * (MAX_READ // len(units) // len(unit)) for unit in units)
    text = "Quote for a worktop please\n" + one * (250_000 // len(one))
    answers: list[JSON] = []

    def in_time() -> bool:
        began = time.process_time()
        answers.append(read_enquiry(text, workshop))
        took_s = time.process_time() - began
        return took_s < 1.0 or took_s < slowness()  # as quiet

    assert _tries(in_time)
    answer = answers[-1]
    assert len(answer["text"]) >= 0.99 * len(text.strip())
    last = answer["ignored"][-1]
    assert (last["end"], last["why"]) == (len(answer["text"]), "longer than is read")


def test_five_megabytes_are_answered(workshop: Workshop) -> None:
    """A body of five megabytes is cut at the most text that is read."""
    began = time.process_time()
    answer = read_enquiry("A worktop 2000 x 600 x 40 please. " * 150_000, workshop)
    assert len(answer["text"]) <= 262_144
    assert time.process_time() - began < 60


def test_many_messages_of_junk_are_each_read_alone(workshop: Workshop) -> None:
    """Four times as many messages of 100 kB take about four times as long."""
    words = "lorem ipsum 12 dolor sit 40 mm amet, consectetur 7 x 3 adipiscing. "
    junk = [f"Message {i}. " + words * (100_000 // len(words)) for i in range(4)]
    began = time.process_time()
    for text in junk[:1]:
        read_enquiry(text, workshop)
    few = time.process_time() - began
    began = time.process_time()
    for text in junk:
        read_enquiry(text, workshop)
    assert time.process_time() - began < 8 * few
