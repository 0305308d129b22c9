"""Enquiries with truths: what is taken, what is never invented, who asks; the table is printed.

Source: invented messages, each with what a careful maker would take from it: those of
``tests/data/enquiries.jsonl``, and where a larger set lies at ``shared/enquiries`` beside this
checkout, those too, by the rules of scoring that its README gives.
"""

import time

import pytest

from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import Workshop
from validation.enquiry_scores import Scored, rows, scored, table, total


@pytest.fixture(scope="module")
def found(workshop: Workshop) -> Scored:
    """Every message of the set with its score."""
    return scored(rows(), lambda raw: read_enquiry(raw, workshop))


def test_the_table_is_printed(found: Scored, capsys: pytest.CaptureFixture[str]) -> None:
    """Scores by kind and by origin stand in the tests' own output."""
    with capsys.disabled():
        print("\n" + table(found))
        print("\n".join(total(found).wrong))
    assert found


def test_dimensions_are_right_and_found(found: Scored) -> None:
    """Of the dimensions taken 99 in 100 are right, and 95 in 100 of those said are taken."""
    score = total(found)
    assert score.share("right", "given") >= 0.99, score.wrong
    assert score.share("right", "wanted") >= 0.95, score.wrong


def test_nothing_is_invented(found: Scored) -> None:
    """No size is given where none is said, and none of a door, an old top or a price is taken."""
    score = total(found)
    assert score.counts["invented"] == 0, score.wrong
    assert score.counts["trapped"] == 0, score.wrong


def test_enquiries_are_told_from_other_mail(found: Scored) -> None:
    """Every invoice, newsletter, complaint and thanks is told apart, and no enquiry is lost."""
    score = total(found)
    assert score.share("no enquiry", "no enquiry?") == 1.0, score.wrong
    assert score.share("enquiry", "enquiry?") == 1.0, score.wrong


def test_customers_and_their_addresses_are_found(found: Scored) -> None:
    """Of customers and of the addresses they want the answer at, 95 in 100 are right."""
    score = total(found)
    assert score.share("customer", "customer?") >= 0.95, score.wrong
    assert score.share("reply_to", "reply_to?") >= 0.95, score.wrong


def test_what_is_missing_or_doubtful_is_named(found: Scored) -> None:
    """Four in five of what must be asked are named; under one in ten asks what was said."""
    score = total(found)
    assert score.share("named", "asked") >= 0.8, score.wrong
    assert score.counts["false_alarms"] < 0.1 * score.counts["entries"], score.wrong


def test_a_message_is_read_in_under_a_second(workshop: Workshop) -> None:
    """No message of the set takes a second of processor time."""
    for row in rows():
        began = time.process_time()
        read_enquiry(row["raw"], workshop)
        assert time.process_time() - began < 1.0, row["id"]


def test_every_span_holds_its_words(workshop: Workshop) -> None:
    """What an answer says it read stands in its text at those places, by Unicode code points."""
    for row in rows():
        answer = read_enquiry(row["raw"], workshop)
        spans = [span for entry in answer["read"] for span in entry["from"]]
        readings = [one for entry in answer["doubtful"] for one in entry["readings"]]
        spans += [span for one in readings for span in one["from"]]
        for span in spans:
            assert answer["text"][span["start"] : span["end"]] == span["text"], row["id"]
