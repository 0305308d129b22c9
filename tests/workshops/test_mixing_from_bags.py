"""Who mixes from bags: what goes, what follows from a bag's weight, a batch told in bags."""

import pytest

from support.documents import Json
from support.profile_form import NewForm, described, setting, tried


def test_who_mixes_from_bags_is_told_which_shades_go(new_form: NewForm) -> None:
    """Those of another cement than the bag's."""
    client = new_form("US")
    told = tried(client, {"op": "mix-from-bags", "pointer": "/recipe/bag"}, described=True)
    for shade in ("chalk", "clay", "sage"):
        assert shade in told["also"]
    assert "charcoal" not in told["also"]


@pytest.mark.parametrize(
    ("country", "typed", "batch"),
    [("US", "2 bags", "1.2"), ("US", "one and a half bags", "0.9"), ("DE", "drei Säcke", "36")],
)
def test_a_batch_is_told_in_bags(new_form: NewForm, country: str, typed: str, batch: str) -> None:
    """It makes so many times what a bag does, and what is taken is told beside it."""
    client = new_form(country, "de" if country == "DE" else "en")
    by_bag: Json = {"op": "mix-from-bags", "pointer": "/recipe/bag"}
    told = tried(client, by_bag, setting("/mixer/working_l", typed), described=True)
    assert described(told)["/mixer/working_l"]["value"] == batch
    (says,) = [one["says"] for one in told["taken"] if one["pointer"] == "/mixer/working_l"]
    assert batch in says
    by_volume = tried(client, setting("/mixer/working_l", typed))
    assert [fault["pointer"] for fault in by_volume["faults"]] == ["/mixer/working_l"]


def test_a_batch_of_three_decimals_is_no_thousand(new_form: NewForm) -> None:
    """One and a half bags of 12.25 l are 18.375 l, in Germany too."""
    client = new_form("DE", "de")
    by_bag: Json = {"op": "mix-from-bags", "pointer": "/recipe/bag"}
    one, batch = setting("/recipe/bag/yield_l", "12,25"), setting("/mixer/working_l", "1,5 Säcke")
    told = tried(client, by_bag, one, batch, described=True)
    assert described(told)["/mixer/working_l"]["value"] == "18.375"


def test_what_a_bag_makes_follows_from_its_weight(new_form: NewForm) -> None:
    """60 lb make three quarters of what 80 lb do, unless the maker's bag says otherwise."""
    client = new_form("US")
    by_bag: Json = {"op": "mix-from-bags", "pointer": "/recipe/bag"}
    price, weight = setting("/recipe/bag/price_per_bag", "7"), setting("/recipe/bag/bag_kg", "60")
    told = tried(client, by_bag, price, weight, described=True)
    assert told["faults"] == []
    bag = described(told)
    assert bag["/recipe/bag/yield_l"]["value"] == "0.45"
    assert bag["/recipe/bag/yield_l"]["standing"] == "usual"
    assert bag["/recipe/bag/bag_kg"]["standing"] == "yours"
    own = setting("/recipe/bag/yield_l", "0.5")
    bag = described(tried(client, by_bag, price, own, weight, described=True))
    assert bag["/recipe/bag/yield_l"]["value"] == "0.5"
    assert bag["/recipe/bag/yield_l"]["standing"] == "yours"
