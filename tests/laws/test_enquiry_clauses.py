"""Laws of reading for clauses: where an aside ends, what a side names, what a question asks."""

from hypothesis import HealthCheck, given, settings

from laws.enquiry_reading import read_as_told
from support.strategies import enquiry_clauses as clauses
from support.strategies.enquiry_changes import Several
from support.strategies.orders import cases

MANY = settings(max_examples=cases(10), suppress_health_check=[HealthCheck.too_slow])


@MANY
@given(clauses.after_dashes())
def test_a_dash_ends_an_aside(told: Several) -> None:
    """What stands after a thing and a dash is the slab's again."""
    read_as_told(told)


@MANY
@given(clauses.sided_legs())
def test_a_side_names_a_leg(told: Several) -> None:
    """The side on which the shorter leg is says which corner is left out."""
    notch = read_as_told(told)["order"]["slabs"][0]["outline"]["notch"]
    assert notch["corner"] == {"left": "front-right", "right": "front-left"}[told.words["side"]]


@MANY
@given(clauses.asked_openings())
def test_what_is_only_asked_about_is_not_asked_for(told: Several) -> None:
    """One opening is left: the one that the customer answers with."""
    assert len(read_as_told(told)["order"]["slabs"][0]["cutouts"]) == 1


@MANY
@given(clauses.confirmed_in_part())
def test_of_two_sizes_one_may_stand(told: Several) -> None:
    """The one that is let stand is the one that the workshop said again."""
    read_as_told(told)


@MANY
@given(clauses.rows())
def test_each_of_a_row_has_its_place(told: Several) -> None:
    """The first and the second have each their own distance, and what is said of both."""
    read_as_told(told)


@MANY
@given(clauses.flowed())
def test_lines_flow_together(told: Several) -> None:
    """A line that a program broke is one with the next."""
    read_as_told(told)


@MANY
@given(clauses.no_holes())
def test_holes_of_others_are_none_of_ours(told: Several) -> None:
    """No opening is drafted for them."""
    assert "cutouts" not in read_as_told(told)["order"]["slabs"][0]


@MANY
@given(clauses.all_round())
def test_all_round_rounds_no_edge(told: Several) -> None:
    """What is so much all round is listed or set aside, and no edge is made of it."""
    assert "edges" not in read_as_told(told)["order"]["slabs"][0]


@MANY
@given(clauses.set_in())
def test_so_far_in_is_from_the_side_it_is_at(told: Several) -> None:
    """A distance, and no size of the hole."""
    read_as_told(told)


@MANY
@given(clauses.in_the_run())
def test_the_middle_of_a_run_lies_behind_the_notch(told: Several) -> None:
    """The middle of an L's long run is not the middle of the box round the L."""
    read_as_told(told)
