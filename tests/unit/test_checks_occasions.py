"""When a customer acts on a finding: every name in the table is a check's."""

from ledgerstone.checks import GROUP_OF, OCCASIONS
from ledgerstone.checks.occasions import IN_USE, ON_DELIVERY, occasion_of


def test_only_checks_have_an_occasion() -> None:
    """No name is unknown or stands twice, and each occasion has some."""
    assert set(GROUP_OF) >= ON_DELIVERY | IN_USE
    assert not ON_DELIVERY & IN_USE
    assert {occasion_of(name, "note") for name in GROUP_OF} == set(OCCASIONS)


def test_what_stops_an_order_is_settled_before_it() -> None:
    """A slab that cracks in place stops the order; one that holds it barely is told for its use."""
    assert occasion_of("cracks-in-place", "stops") == "before-order"
    assert occasion_of("cracks-in-place", "caution") == "in-use"
