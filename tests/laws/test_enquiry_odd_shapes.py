"""Laws of reading shapes: one whose sizes are not read is asked, not taken for a rectangle."""

from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies.orders import cases

WORKSHOP = load_profile(DEMONSTRATION)
ASK = "Please quote for a hearth 1100 x 450 x 50 mm. {}"
SHAPED = (
    "It goes back into the opening, so it is T-shaped.",
    "A T shape really: the back part is narrower.",
    "It should be hexagonal.",
    "Sie ist T-förmig.",
    "It's a U-shaped piece round the stove.",
    "Kidney-shaped, please.",
)
ELSEWHERE = (
    "We have a U-shaped kitchen.",
    "Not T-shaped, just the plain rectangle.",
    "It hangs on T-shaped brackets.",
    "In an L-shaped room.",
    "It stands in a pie shop.",
    "It goes on U-shaped steel legs.",
    "On U-shaped legs of black steel.",
    "The frame has T-shaped feet.",
    "Sie kommt auf ein U-förmiges Gestell.",
    "Auf T-förmigen Beinen aus Stahl.",
)


def asked(said: str) -> bool:
    """Whether the outline is asked about."""
    read = read_enquiry(ASK.format(said), WORKSHOP)
    return "/slabs/0/outline" in {one["at"] for one in read["missing"]}


@settings(max_examples=cases(6))
@given(st.sampled_from(SHAPED))
def test_a_shape_that_is_not_read_is_asked(said: str) -> None:
    """The sizes stand as read, and the answer is an estimate until the shape is told."""
    assert asked(said), said


@settings(max_examples=cases(10))
@given(st.sampled_from(ELSEWHERE))
def test_the_shape_of_another_thing_is_not_asked(said: str) -> None:
    """A kitchen, a bracket and a room have shapes of their own."""
    assert not asked(said), said
