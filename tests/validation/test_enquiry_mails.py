"""Laws of reading for whole mails: what is said is read, what is not is asked, nothing else is."""

import pytest

from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import Workshop
from support.strategies.enquiry_mails import write
from validation.enquiry_dimensions import Score, score_dimensions
from validation.enquiry_words import score_asked

SEEDS = range(2000, 2200)  # none of those that the rules were made on


@pytest.fixture(scope="module")
def score(workshop: Workshop) -> Score:
    """The scores of mails drawn from seeds that no rule was made on, added up."""
    added = Score()
    for seed in SEEDS:
        row = write(seed).row(seed)
        answer = read_enquiry(row["raw"], workshop)
        added.counts.update(mails=1, enquiries=int(answer["is_enquiry"]))
        added.add(score_dimensions(row, answer))
        added.add(score_asked(row, answer))
    return added


def test_whole_mails_are_enquiries(score: Score) -> None:
    """Every mail that asks for slabs is taken for one that does."""
    assert score.counts["enquiries"] == score.counts["mails"]


def test_whole_mails_are_read(score: Score) -> None:
    """Of the dimensions taken 99 in 100 are right, and of those said 97 in 100 are taken."""
    assert score.share("right", "given") >= 0.99, score.wrong
    assert score.share("right", "wanted") >= 0.97, score.wrong


def test_what_a_mail_leaves_out_is_asked(score: Score) -> None:
    """Nine in ten of what is left out are asked; under one in ten asks for what was said."""
    assert score.share("named", "asked") >= 0.9, score.wrong
    assert score.counts["false_alarms"] < 0.1 * score.counts["entries"], score.wrong
