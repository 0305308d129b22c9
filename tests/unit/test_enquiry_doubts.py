"""What stays doubtful in a message: told in the letter that answers it, or asked."""

import email
import email.policy
from datetime import date

import pytest

from ledgerstone.application.context import QuoteContext
from ledgerstone.application.enquiries import make_answer, read_message
from ledgerstone.codec.tokens import Tokens
from ledgerstone.papers.asking import chosen_questions
from ledgerstone.papers.templates import BUILT_IN, Templates
from ledgerstone.workshop import Workshop

TODAY = date(2026, 11, 25)
DOUBTS = [
    "We need it by 19 December.",
    "We need it in week 51.",
    "It is wanted by Easter.",
    "Delivery to HR0 2AB or we collect, whichever is cheaper.",
    "The length might be 1850 mm.",
    "Um 19. Dezember brauchen wir es.",
]


@pytest.mark.parametrize("doubt", DOUBTS)
def test_what_stays_doubtful_is_told_or_asked(workshop: Workshop, doubt: str) -> None:
    """Each entry has its question, or what was taken for it stands among what is told."""
    text = f"Could you price a worktop, 1800 x 600 x 40 mm, in charcoal? {doubt}\n"
    read = read_message(text, workshop)
    taken = {one["at"] for one in read["assumed"]}
    for one in read["doubtful"]:
        assert ("asks" in one) != (one["at"] in taken)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("We are redoing our kitchen this winter. We need it by spring.", "by spring"),
        ("We need it this winter, or by spring.", "by spring"),
        ("Wir brauchen es bis zum Frühjahr, gebaut wird diesen Winter.", "bis zum Frühjahr"),
    ],
)
def test_of_two_seasons_the_last_day_is_asked_for(text: str, said: str, workshop: Workshop) -> None:
    """Beside a season in which building goes on, "by spring" is the wish; its day is asked."""
    read = read_message(f"A worktop, 1800 x 600 x 40 mm, in charcoal. {text}\n", workshop)
    (asked,) = [one for one in read["doubtful"] if one["at"] == "/needed_by"]
    assert asked["readings"][0]["from"][0]["text"] == said
    assert said in asked["asks"]


def test_a_doubtful_day_is_among_the_three_that_are_asked(workshop: Workshop) -> None:
    """However many places of openings are open: nothing is taken for it, so it must be asked."""
    text = (
        "Could you quote for a worktop, 2000 x 800 mm, 50 mm thick? There is a sink, a tap, a hob"
        " and a socket. We need it by 19 December.\n"
    )
    read = read_message(text, workshop)
    (doubt,) = (one for one in read["doubtful"] if one["at"] == "/needed_by")
    assert len(read["missing"]) > 3
    assert doubt["asks"] in chosen_questions([*read["missing"], doubt])
    assert "19 December" in doubt["asks"]
    draft = make_answer(
        read, QuoteContext(workshop, TODAY, Tokens(("k" * 32,))), Templates(BUILT_IN)
    )
    body = email.message_from_bytes(draft, policy=email.policy.default).get_body(("plain",))
    assert body is not None
    assert doubt["asks"] in " ".join(body.get_content().split())
