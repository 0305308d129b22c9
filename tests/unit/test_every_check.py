"""Every check trips on some order, and what it then says is read: plain, short and never wrong."""

import re
from datetime import date
from functools import cache
from typing import Any, Final

import pytest

from ledgerstone.checks import GROUP_OF, Finding
from ledgerstone.codec.order_in import read_order
from ledgerstone.quote import run_stages
from ledgerstone.stages import StageContext
from ledgerstone.wording import MAX_NAMED, Listed
from support.documents import Json
from support.in_english import in_english
from support.reading import read_aloud
from support.slabs import hole
from support.strategies.other_workshops import WORKSHOPS
from support.strategies.tripping_orders import PALLET, TRIPS, of, plain, units
from support.written import write_finding
from unit.checked import values_of

TODAY: Final = date(2026, 11, 25)
NAMES: Final = list(GROUP_OF)
SAID: Final = re.compile(r"(\d+(?:\.\d+)?) (mm|kg|%|minutes|°C)")
_TIMES: Final = {"hours": ("minutes", 60.0)}


@cache
def tripped(name: str) -> tuple[Finding, ...]:
    """Return everything that is found of the order that trips a check, through every stage."""
    at, document = TRIPS[name]
    order = read_order(document, WORKSHOPS[at])
    return run_stages(order, StageContext(WORKSHOPS[at], None, TODAY)).findings


@pytest.mark.parametrize("name", NAMES)
def test_every_check_has_an_order_that_trips_it(name: str) -> None:
    """Each finding that a check may yield is yielded for an order that could be sent."""
    assert name in {finding.check for finding in tripped(name)}


def test_no_order_is_kept_for_a_check_that_is_gone() -> None:
    """The table has a row for each name and no other."""
    assert set(TRIPS) == set(NAMES)


@pytest.mark.parametrize("name", NAMES)
def test_what_is_then_said_is_plain(name: str) -> None:
    """Within 240 characters, in no words of our own, and counted right."""
    read_aloud(tripped(name))


@pytest.mark.parametrize("name", NAMES)
def test_what_is_found_points_into_the_order(name: str) -> None:
    """Every pointer leads to something that was sent or that stands where it would be sent."""
    document: Any = TRIPS[name][1]
    for finding in tripped(name):
        for pointer in finding.at:
            here, *rest = pointer.split("/")[1:]
            assert here in {"slabs", "delivery", "joins", "needed_by", "templating"}
            if here in ("slabs", "joins"):
                assert not rest or int(rest[0]) < len(document[here])


@pytest.mark.parametrize("name", NAMES)
def test_numbers_are_stated_outward(name: str) -> None:
    """What was measured is rounded away from its limit, so that no sentence gainsays its check."""
    for finding in tripped(name):
        for key, limit in finding.limit.items():
            unit, times = _unit(key)
            measured = finding.measured.get(key)
            if not isinstance(measured, float):
                continue
            number, under = measured * times, measured < limit
            said = [float(n) for n, u in SAID.findall(in_english(finding)) if u == unit]
            about = [n for n in said if abs(n - number) < 1.0]
            outward = [n for n in about if (n <= number if under else n >= number)]
            assert outward or not about, (in_english(finding), number)


def _unit(key: str) -> tuple[str, float]:
    ending = key.rsplit("_", 1)[-1]
    return _TIMES.get(ending, ({"percent": "%", "c": "°C"}.get(ending, ending), 1.0))


@pytest.mark.parametrize("name", [name for name, stage in GROUP_OF.items() if stage == "strength"])
def test_a_finding_of_strength_has_its_place(name: str) -> None:
    """Each has a pin on the drawing, but those that are about a whole slab."""
    whole = {
        "strength-unknown",
        "rests-not-told",
        "too-heavy-to-handle",
        "young-concrete",
        "sags",
        "sun-on-fixed",
    }
    for finding in tripped(name):
        if finding.check == name:
            written = write_finding(finding)
            assert ("where_mm" in written) is (name not in whole)


def test_twenty_cutouts_in_one_place_are_one_finding() -> None:
    """Eight slabs, each with twenty cut-outs on one spot, are answered in a few words each."""
    slab = plain(1400, 600, *[hole(100, 700, 300)] * 20)
    order = read_order(of(*[slab] * 8), WORKSHOPS["usual"])
    findings = run_stages(order, StageContext(WORKSHOPS["usual"], None, TODAY)).findings
    overlaps = [finding for finding in findings if finding.check == "cutouts-overlap"]
    assert len(overlaps) == 8
    message = overlaps[0].message
    assert message.name == "cutouts-overlap"
    named = message.values["cutouts"]
    assert isinstance(named, Listed)
    assert (len(named.things), named.most) == (20, MAX_NAMED)
    assert "18 more" in in_english(overlaps[0])
    assert len(repr([write_finding(finding) for finding in findings])) < 60_000
    read_aloud(findings)


def test_many_alike_are_stated_once() -> None:
    """Twenty taps too near each other's edge are one finding that points at all of them."""
    taps = [hole(35, 100 + 60 * i, "582 mm", label=f"tap {i + 1}") for i in range(20)]
    findings = _found(of(plain(1400, 600, *taps)))
    (repeated,) = [one for one in findings if one.check == "strip-too-narrow"]
    assert values_of(repeated, "finding-repeated")["more"] == 19
    assert {f"/slabs/0/cutouts/{i}" for i in range(20)} <= set(repeated.at)


@pytest.mark.parametrize(
    ("check", "slab"),
    [
        ("young-concrete", plain()),
        ("load-on-units", plain(1200, 600, rests=units(600, 600))),
        ("fall-advised", plain(place="outdoors")),
        ("rests-not-told", plain(rests=None)),
        ("odd-thickness", plain(thickness=35)),
    ],
)
def test_what_is_true_of_every_slab_is_stated_once(check: str, slab: Json) -> None:
    """Three slabs alike have one note, which speaks of them all."""
    slab = {key: value for key, value in slab.items() if value is not None}
    (one,) = [f for f in _found(of(slab)) if f.check == check]
    (three,) = [f for f in _found(of(slab, slab, slab)) if f.check == check]
    assert (one.slab, three.slab, len(three.at)) == (0, None, 3)
    read_aloud([one, three])


@pytest.mark.parametrize("count", [1, 2, 3, 5])
def test_one_and_several_are_counted_right(count: int) -> None:
    """One hand, one day, one slab; several of each."""
    lifted = plain(140 * count, 400)
    for findings in (
        _found(of(lifted, delivery=PALLET)),
        _found(of(*[plain(place="outdoors")] * count)),
    ):
        read_aloud(findings)


def _found(document: Json) -> tuple[Finding, ...]:
    order = read_order(document, WORKSHOPS["usual"])
    return run_stages(order, StageContext(WORKSHOPS["usual"], None, TODAY)).findings
