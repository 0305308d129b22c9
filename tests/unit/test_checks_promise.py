"""Where the workshop delivers, in which way, and by which day."""

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest

from ledgerstone.checks import Finding, promise
from ledgerstone.wording import Message, speech_in
from ledgerstone.workshop import Workshop
from support.documents import Json
from support.slabs import box, order_of, slab_json, stages_of
from support.stages import Stages
from unit.checked import values_of

TODAY = date(2026, 11, 25)


def delivered(workshop: Workshop, delivery: Json) -> list[Finding]:
    """Check one order's delivery."""
    order = order_of(workshop, slab_json(box(900, 500)), delivery=delivery)
    return list(promise.delivery_served(stages_of(order, workshop, TODAY).judged))


@pytest.mark.parametrize(
    ("delivery", "check", "at"),
    [
        ({"kind": "collect"}, None, None),
        ({"kind": "collect", "postcode": "nowhere"}, None, None),
        ({"kind": "pallet", "postcode": "HR9 7XX"}, None, None),
        ({"kind": "pallet"}, "postcode-needed", "/delivery"),
        ({"kind": "pallet", "postcode": "HR9"}, "postcode-unknown", "/delivery/postcode"),
        ({"kind": "pallet", "postcode": "BT1 5GS"}, "area-not-served", "/delivery/postcode"),
        ({"kind": "fitted", "postcode": "EH1 1YZ"}, "way-not-served", "/delivery/kind"),
        ({"kind": "pallet", "postcode": "EH1 1YZ"}, None, None),
    ],
)
def test_a_delivery_is_served_or_says_why_not(
    workshop: Workshop, delivery: Json, check: str | None, at: str | None
) -> None:
    """A postcode that is missing, half, too far, or reached in another way only."""
    findings = delivered(workshop, delivery)
    assert [(f.check, f.level, f.at) for f in findings] == (
        [(check, "stops", (at,))] if check else []
    )


def test_a_way_not_served_names_the_area(workshop: Workshop) -> None:
    """The customer is told which area that is."""
    (finding,) = delivered(workshop, {"kind": "fitted", "postcode": "EH1 1YZ"})
    area = "Scotland, mainland south"
    assert finding.message == Message("way-not-served", way="fitted", area=area)


def test_a_way_that_costs_nothing_is_served(workshop: Workshop) -> None:
    """Free delivery is a price of zero, not none."""
    free = replace(workshop.areas[0], own_van=Decimal(0))
    shop = replace(workshop, areas=(free,))
    assert delivered(shop, {"kind": "own-van", "postcode": "HR9 7XX"}) == []


def usual_stages(workshop: Workshop) -> Stages:
    """What is known of a plain slab, ordered today."""
    order = order_of(workshop, slab_json(box(900, 500), rests={"kind": "full"}))
    return stages_of(order, workshop, TODAY)


def in_time(workshop: Workshop, needed_by: date | None) -> list[Finding]:
    """What is stated of that slab by the day it is needed."""
    stages = usual_stages(workshop)
    needed = replace(stages.planned, order=replace(stages.order, needed_by=needed_by))
    assessed = replace(stages.known, planned=needed)
    return list(
        promise.in_time(
            replace(stages.judged, scheduled=replace(stages.scheduled, assessed=assessed))
        )
    )


def test_a_day_is_kept_or_is_too_soon(workshop: Workshop) -> None:
    """The day it arrives is soon enough; the day before is not, by one day."""
    arrives = usual_stages(workshop).lead_time.arrives_latest
    assert in_time(workshop, None) == []
    (kept,) = in_time(workshop, arrives)
    assert (kept.check, kept.level) == ("in-time", "note")
    assert kept.message == Message("needed-by", way="collect", needed_by=arrives, arrives=arrives)
    (finding,) = in_time(workshop, arrives - timedelta(days=1))
    assert (finding.check, finding.level, finding.at) == (
        "needed-too-soon",
        "stops",
        ("/needed_by",),
    )
    day_before = arrives - timedelta(days=1)
    assert finding.message == Message(
        "needed-by", way="collect", needed_by=day_before, arrives=arrives
    )
    assert finding.measured == {"arrives_on": arrives.isoformat()}


def test_a_day_that_has_passed_is_reported_as_that(workshop: Workshop) -> None:
    """Nobody is asked for a year more: the day has passed, and a later one is to be entered."""
    [late] = in_time(workshop, TODAY - timedelta(days=356))
    assert late.message == Message("needed-by-past")
    [today] = in_time(workshop, TODAY)
    assert values_of(today, "needed-by")["needed_by"] == TODAY


@pytest.mark.parametrize("language", ["en", "de"])
def test_a_collected_order_has_no_words_of_delivery(language: str) -> None:
    """The day is the one to fetch it from, in any language."""
    days = {"needed_by": TODAY, "arrives": TODAY}
    speech = speech_in(language)
    fetched = speech.say(Message("needed-by", way="collect", **days))
    brought = speech.say(Message("needed-by", way="pallet", **days))
    with_you = {"en": "with you", "de": "bei Ihnen"}[language]
    assert with_you in brought
    assert with_you not in fetched
