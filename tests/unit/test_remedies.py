"""The customer's orders that can't be made, and what a good maker would answer."""

import copy
from dataclasses import replace

import jsonpatch
import pytest

from ledgerstone.application.answering import answer_order
from ledgerstone.application.context import QuoteContext
from ledgerstone.quantities import Length
from ledgerstone.quote import Quote, SentBack
from ledgerstone.remedies.offers import options
from ledgerstone.wording import Message, english
from ledgerstone.workshop import Workshop
from ledgerstone.workshop.records import Dose
from ledgerstone.workshop.review.second_looks import second_looks
from support.contexts import context_of
from support.documents import Json
from support.in_english import in_english
from support.remedied import FULL, TODAY, fixed, hole, rectangle, sent_back
from support.stages import Stages
from support.written import write_fixes, write_remedies


@pytest.fixture(scope="module")
def context(workshop: Workshop) -> QuoteContext:
    """A context that keeps its plates between the orders of this file."""
    return context_of(workshop, TODAY)


def test_a_basin_too_near_the_back_is_moved_forward(context: QuoteContext) -> None:
    """A back strip of a third of the rule: a good maker moves the basin, and changes no size."""
    order = rectangle("1450 mm", "560 mm", cutouts=[hole("basin", "360 mm", "700 mm", "360 mm")])
    says, mended, _ = fixed(context, order)
    assert says == ["Move the basin 40 mm towards the front."]
    assert mended["slabs"][0]["cutouts"][0]["centre"]["y"] == "320 mm"


def test_a_hob_too_deep_for_its_slab_makes_the_slab_deeper(context: QuoteContext) -> None:
    """A hob of 490 in 560 mm has no room for two strips of 50: the nearest is a deeper slab.

    A twentieth of 560 mm is not enough, so that is no fix of what was asked.
    """
    hob = {
        "kind": "rectangle",
        "label": "hob",
        "length": "560 mm",
        "width": "490 mm",
        "centre": {"x": "700 mm", "y": "280 mm"},
        "rim": "covered",
    }
    says, mended, _ = fixed(
        context, rectangle("1500 mm", "560 mm", cutouts=[hob]), "nearest_makeable"
    )
    assert any("deep instead of 560 mm" in sentence for sentence in says)
    assert mended["slabs"][0]["cutouts"][0]["length"] == "560 mm"


def _vanity(width: str, bowl: str, size_from: str = "finished") -> Json:
    """A washstand's top on a basin unit between two others."""
    units = [{"width": "300 mm"}, {"width": "600 mm", "for": "basin"}, {"width": "300 mm"}]
    rests = {"kind": "units", "units": units}
    cutouts = [hole("basin", bowl, "600 mm", "230 mm")]
    return rectangle("1200 mm", width, cutouts=cutouts, rests=rests, size_from=size_from)


@pytest.mark.parametrize(
    ("width", "bowl", "deeper"), [("460 mm", "360 mm", "480 mm"), ("18 in", "14 in", "18 3/4 in")]
)
def test_a_vanity_too_shallow_for_its_basin_is_made_deeper(
    width: str, bowl: str, deeper: str, context: QuoteContext
) -> None:
    """A bowl and two strips of 60 mm are a little more: units fix a run's length, not its depth."""
    _, mended, _ = fixed(context, _vanity(width, bowl))
    (slab,) = mended["slabs"]
    assert (slab["outline"]["length"], slab["outline"]["width"]) == ("1200 mm", deeper)
    assert slab["cutouts"][0]["diameter"] == bowl


def test_a_vanity_between_walls_has_a_smaller_basin(context: QuoteContext) -> None:
    """Where walls fix the depth the nearest is a bowl that leaves its strips, none is left out."""
    order = _vanity("460 mm", "360 mm", size_from="between-walls")
    found = sent_back(context, order).found
    assert found is not None
    assert found.fix_all is None
    _, mended, _ = fixed(context, order, "nearest_makeable")
    (slab,) = mended["slabs"]
    assert slab["outline"]["width"] == "460 mm"
    assert slab["cutouts"][0]["diameter"] == "340 mm"


def test_a_run_that_is_joined_keeps_its_depth(context: QuoteContext) -> None:
    """A deeper run would push the arm before it away from its wall."""
    order = _vanity("460 mm", "360 mm")
    arm = rectangle("900 mm", "460 mm")["slabs"][0]
    join = {"one": {"slab": 0, "side": "front"}, "other": {"slab": 1, "side": "left"}}
    joined = {"slabs": [*order["slabs"], arm], "joins": [{**join, "gap": "2 mm"}]}
    found = sent_back(context, joined).found
    assert found is not None
    assert found.fix_all is None


def test_an_island_with_too_much_overhang_is_thicker_or_hangs_less(context: QuoteContext) -> None:
    """An overhang of 380 mm, its corners stood on: a thicker top is offered, and a shorter one."""
    units = {
        "kind": "units",
        "units": [{"width": "600 mm"}] * 4,
        "overhang": {"front": "380 mm"},
    }
    order = rectangle("2400 mm", "1000 mm", rests=units)
    answer = sent_back(context, order)
    stop = next(finding for finding in answer.findings if finding.level == "stops")
    remedies = [r["says"] for r in write_remedies(order, answer.found, stop.id)]
    assert any("thick instead of 40 mm" in says for says in remedies)
    assert any("overhang" in says and "instead of 380 mm" in says for says in remedies)


def opened_to(answer: SentBack) -> set[object]:
    """To which sides the remedies shown would open an opening."""
    assert answer.found is not None
    shown = [r for each in answer.found.remedies.values() for r in each]
    return {c.new for r in shown for c in r.state.changes() if c.path[-1] == "open_to"}


def test_a_round_bowl_is_never_opened_to_a_side(context: QuoteContext) -> None:
    """A bowl over the front edge has a whole rim: it is moved, and no notch is offered for it."""
    bowl = hole("bowl", "360 mm", "700 mm", "60 mm")
    answer = sent_back(
        context, rectangle("1400 mm", "600 mm", cutouts=[bowl], rests={"kind": "full"})
    )
    assert opened_to(answer) == set()


def test_an_opening_off_one_side_is_never_opened_to_another(context: QuoteContext) -> None:
    """A sink over the front may be meant to be open to the front; to the back it cannot be."""
    sink = {
        "kind": "rectangle",
        "label": "sink",
        "length": "560 mm",
        "width": "400 mm",
        "centre": {"x": "700 mm", "y": "80 mm"},
    }
    answer = sent_back(
        context, rectangle("1400 mm", "600 mm", cutouts=[sink], rests={"kind": "full"})
    )
    assert opened_to(answer) == {"front"}
    stages = Stages(answer.order, context.workshop, None, TODAY)
    [off] = [finding for finding in answer.findings if finding.check == "cutout-off-slab"]
    tried = [
        o for o in options(off, stages.planned, stages.context, heavy=True) if o.effect == "open-to"
    ]
    assert [change.new for option in tried for change in option.changes] == ["front"]


def test_a_tap_is_moved_though_the_hob_beside_it_can_never_be(context: QuoteContext) -> None:
    """What cannot be put right elsewhere on the slab takes no remedy from what can be."""
    notch = {"corner": "back-right", "length": "1700 mm", "width": "500 mm"}
    outline = {"kind": "l-shape", "length": "2400 mm", "width": "1100 mm", "notch": notch}
    centre = {"x": "1500 mm", "y": "300 mm"}
    hob = {"kind": "rectangle", "length": "560 mm", "width": "560 mm", "centre": centre}
    tap = hole("tap", "35 mm", "300 mm", "20 mm", "covered")
    slab = {"outline": outline, "thickness": "40 mm", "cutouts": [hob, tap], "rests": FULL}
    answer = sent_back(context, {"slabs": [slab]})
    assert answer.found is not None
    shown = [in_english(r) for r in answer.found.remedies["strip-too-narrow.0.1-front"]]
    assert any(says.startswith("Move the tap") for says in shown)


def test_black_on_white_cement_beyond_the_limit_becomes_the_nearest_shade_cast(
    workshop: Workshop,
) -> None:
    """12 % black on white cement is past the 10 % of ASTM C979: graphite, the nearest, is offered.

    A maker who raises the limit to 14 % casts it, and the customer reads nothing of a standard.
    """
    jet = replace(
        workshop.palette[0],
        name="jet",
        colour="#2b2c2e",
        cement="white",
        doses=(Dose(pigment="black iron oxide", percent=12.0),),
    )
    shop = replace(workshop, palette=(*workshop.palette, jet))
    order = rectangle("900 mm", "500 mm", shade={"name": "jet"}, rests={"kind": "full"})
    says, mended, _ = fixed(context_of(shop, TODAY), order)
    assert says == ["Make the slab in graphite."]
    assert mended["slabs"][0]["shade"] == {"name": "graphite"}
    bolder = replace(shop, shade=replace(shop.shade, most_percent=14.0))
    quote = answer_order(order, context_of(bolder, TODAY), search=False)
    assert isinstance(quote, Quote)
    assert not any("C979" in in_english(finding) + finding.source for finding in quote.findings)
    assert any(
        look.name == "check-strong-shade" and look.values["shade"] == "jet"
        for look in second_looks(bolder)
    )


def test_a_sink_is_never_turned_nor_made_smaller(context: QuoteContext) -> None:
    """A sink of 350 by 450 in a top of 500 lies as it was drawn: the nearest is a deeper top."""
    sink = {
        "kind": "rectangle",
        "label": "sink",
        "length": "350 mm",
        "width": "450 mm",
        "centre": {"x": "600 mm", "y": "250 mm"},
    }
    order = rectangle("1200 mm", "500 mm", cutouts=[sink], rests={"kind": "full"})
    answer = sent_back(context, order)
    assert answer.found is not None
    assert answer.found.fix_all is None
    shown = [in_english(r) for each in answer.found.remedies.values() for r in each]
    assert not any("Turn" in says for says in shown)
    says, mended, _ = fixed(context, order, "nearest_makeable")
    sizes = {"now": Length.of_mm(570), "was": Length.of_mm(500)}
    deeper = Message("resize", thing=Message("slab-only"), size="width", **sizes)
    assert english(deeper) in says
    [kept] = mended["slabs"][0]["cutouts"]
    assert (kept["length"], kept["width"]) == ("350 mm", "450 mm")
    assert "turn_degrees" not in kept


def test_two_sinks_and_three_taps_are_laid_out_again(context: QuoteContext) -> None:
    """Openings that run into each other are moved apart, and all of them are kept."""
    openings = [
        hole("left sink", "350 mm", "300 mm", "250 mm"),
        hole("right sink", "350 mm", "640 mm", "250 mm"),
        hole("tap A", "35 mm", "300 mm", "480 mm", "covered"),
        hole("tap B", "35 mm", "320 mm", "500 mm", "covered"),
        hole("tap C", "35 mm", "660 mm", "540 mm", "covered"),
    ]
    says, mended, _ = fixed(context, rectangle("1200 mm", "560 mm", cutouts=openings))
    assert len(mended["slabs"][0]["cutouts"]) == 5
    assert all(sentence.startswith("Move the ") for sentence in says)


def test_a_sink_in_an_l_shapes_inner_corner_moves_into_the_wide_arm(context: QuoteContext) -> None:
    """A sink that hangs over the notch moves to where there is concrete round it."""
    notch = {"corner": "front-right", "length": "1200 mm", "width": "600 mm"}
    outline = {"kind": "l-shape", "length": "2000 mm", "width": "1200 mm", "notch": notch}
    sink = {
        "kind": "rectangle",
        "label": "sink",
        "length": "500 mm",
        "width": "400 mm",
        "centre": {"x": "850 mm", "y": "600 mm"},
    }
    order = {"slabs": [{"outline": outline, "thickness": "40 mm", "cutouts": [sink]}]}
    says, _, _ = fixed(context, order)
    assert len(says) == 1
    assert says[0].startswith("Move the sink")


def test_a_day_too_soon_becomes_the_day_it_can_be(
    context: QuoteContext, example_order: Json
) -> None:
    """A day that cannot be kept is answered with the first that can."""
    order = {**example_order, "needed_by": "2026-12-01"}
    says, mended, quote = fixed(context, order)
    assert mended["needed_by"] == quote.lead_time.arrives_latest.isoformat()
    assert says[0].startswith("Give us until ")


def test_a_remedy_speaks_in_the_units_of_the_order(context: QuoteContext) -> None:
    """Inches are answered in inches, to a sixteenth, and written back as inches."""
    basin = hole("basin", "14 in", "38 in", "15 in")
    says, mended, _ = fixed(context, rectangle("57 in", "22 in", "1 1/2 in", cutouts=[basin]))
    assert " in towards the front." in says[0]
    assert mended["slabs"][0]["cutouts"][0]["centre"]["y"].endswith(" in")


def test_a_member_that_was_left_out_is_added_after_a_test(context: QuoteContext) -> None:
    """A patch for a member that was not sent tests what stands around it, then adds it."""
    order = rectangle("900 mm", "500 mm") | {"delivery": {"kind": "pallet"}}
    answer = sent_back(context, order)
    fix = write_fixes(order, answer.found, [])["fix_all"]
    assert fix["patch"][0]["op"] == "test"
    jsonpatch.apply_patch(copy.deepcopy(order), fix["patch"])
    stale = rectangle("901 mm", "500 mm") | {"delivery": {"kind": "fitted"}}
    with pytest.raises(jsonpatch.JsonPatchTestFailed):
        jsonpatch.apply_patch(stale, fix["patch"])
