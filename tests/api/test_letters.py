"""Letters in half the words: merged by when one acts on them, and in the customer's language."""

import re
from datetime import date
from typing import TYPE_CHECKING, Any

import pytest

from ledgerstone.checks import OCCASIONS
from ledgerstone.codec.order_in import read_order
from ledgerstone.papers.advice import NEEDED, advice_of
from ledgerstone.papers.views import QuoteView
from ledgerstone.quantities import Length
from ledgerstone.quote import Quote, quote
from ledgerstone.stages import StageContext
from ledgerstone.wording import Message
from ledgerstone.wording.speech import speech_in
from ledgerstone.workshop import Workshop
from support.asking import changed
from support.calibration import JOBS
from support.demonstration import EXAMPLE_ORDER
from support.offered import MAKER, slabs_order
from support.slabs import box, cut, slab_json

if TYPE_CHECKING:
    from flask.testing import FlaskClient

MAX_WORDS = {"full": 320, "short": 150}
ON_EDGE_TOGETHER = changed(("/slabs/-", EXAMPLE_ORDER["slabs"][0] | {"label": "Second"}))
STOPPED = changed(("/slabs/0/cutouts/0/centre/y", "218 mm"))
GERMAN = {"language": "de"}
# Words of the templates' own that a German letter may not hold.
ENGLISH = re.compile(r"\b(?:the|and|with|you|your|before|order|price|ready|slab|thick|deposit)\b")


def _letter(client: "FlaskClient", order: dict[str, Any], tone: str = "full") -> dict[str, str]:
    ask = {"order": order, "customer": "Ada", "tone": tone}
    answer = client.post("/v1/replies", json=ask, headers=MAKER)
    assert answer.status_code == 200, answer.text
    made: dict[str, str] = answer.get_json()
    return made


def _seen(html: str) -> str:
    """What of a letter's HTML is read on a screen; its title and pictures' words are not."""
    body = html[html.index("<body") :]
    within = re.sub(r"</?[ab]\b[^>]*>", "", body)
    return " ".join(re.sub(r"<[^>]+>", " ", within).split())


def test_a_letter_names_a_narrow_strip_once(client: "FlaskClient") -> None:
    """The letter tells its width and limit, and not that our concrete's grains would stick too."""
    near = changed(("/slabs/0/cutouts/1/centre/y", "480 mm"))
    answer = client.post("/v1/quotes", json=near, headers=MAKER).get_json()
    checks = {one["check"]: one["says"] for one in answer["findings"]}
    assert {"strip-too-narrow", "aggregate-too-large"} <= set(checks)
    text = " ".join(_letter(client, near)["text"].split())
    assert checks["strip-too-narrow"] in text
    assert checks["aggregate-too-large"] not in text


def _asked(order: dict[str, Any], workshop: Workshop, today: date) -> QuoteView:
    made = quote(read_order(order, workshop), StageContext(workshop, None, today))
    assert isinstance(made, Quote)
    return QuoteView(quote=made, name="", link=None)


@pytest.mark.parametrize("tone", MAX_WORDS)
def test_the_letter_of_the_example_is_half_as_long(client: "FlaskClient", tone: str) -> None:
    """320 words in full and 150 in short, whatever stands between two spaces being one."""
    made = _letter(client, EXAMPLE_ORDER, tone)
    counts = {"text": len(made["text"].split()), "html": len(_seen(made["html"]).split())}
    print(f"{tone}: {counts}; before: {'789' if tone == 'full' else '221'}")
    assert max(counts.values()) <= MAX_WORDS[tone]


@pytest.mark.parametrize("order", [EXAMPLE_ORDER, ON_EDGE_TOGETHER, slabs_order(3)])
def test_no_finding_is_left_out(order: dict[str, Any], workshop: Workshop, today: date) -> None:
    """Each is in one piece of advice, once; but for that it is in time, and that a strip is tested.

    A short letter has every caution, the lift, the kerb and what the units must bear.
    """
    view = _asked(order, workshop, today)
    advice = advice_of(view)
    told = [name for one in advice for name in one.findings]
    found = {one.id: one for one in view.quote.findings}
    left_out = {found[name].check for name in set(found) - set(told)}
    assert left_out <= {"in-time", "young-concrete"}
    assert len(told) == len(set(told))
    for one in advice:
        of = [found[name] for name in one.findings]
        must = any(each.level == "caution" or each.check in NEEDED for each in of)
        assert must is (one.in_short is not None)
        assert {each.when for each in of} == {one.when}
    assert {one.when for one in advice} <= set(OCCASIONS)


def test_a_short_letter_has_the_lift_the_kerb_and_the_units(client: "FlaskClient") -> None:
    """The slab's own weight and people, how the pallet is left, what a metre of units carries."""
    answer = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    by_check = {one["check"]: one for one in answer["findings"]}
    said = " ".join(_letter(client, EXAMPLE_ORDER, "short")["text"].split())
    slab_kg, metre_kg = (
        by_check[check]["measured"][key]
        for check, key in (("hands-needed", "slab_kg"), ("load-on-units", "metre_kg"))
    )
    assert "kerb" in said
    assert f"{slab_kg:g} kg" in said
    assert f"{metre_kg:g} kg" in said
    assert "no safe limit" in said


def test_one_weight_and_one_number_of_people(client: "FlaskClient") -> None:
    """A letter of one slab says its weight and its people once each, the pallet's once."""
    answer = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    said = " ".join(_letter(client, EXAMPLE_ORDER)["text"].split())
    [slab] = answer["weight"]["slabs"]
    assert said.count(f"{slab['slab_kg']:g} kg") == 1
    assert said.count(f"{answer['weight']['packed_kg']:g} kg") == 1
    assert re.findall(r"\b(?:\w+ )(?:people|person)\b", said) == ["Three people"]


@pytest.mark.parametrize("order", [EXAMPLE_ORDER, STOPPED, ON_EDGE_TOGETHER])
@pytest.mark.parametrize("tone", MAX_WORDS)
def test_a_german_customers_letter_is_german(
    client: "FlaskClient", order: dict[str, Any], tone: str
) -> None:
    """Of an English workshop too, but for its own words: terms, signature, shades, rails, areas."""
    made = _letter(client, order | GERMAN, tone)
    ours = made["text"].partition("Unsere Bedingungen")[0]
    ours = re.sub(r"http\S+|steel box section \(.*?on edge\)|Wilf and", "", ours, flags=re.DOTALL)
    assert ENGLISH.findall(ours) == []
    assert not re.search(r"£\d", ours)
    assert 'lang="de"' in made["html"]
    assert not ENGLISH.search(made["subject"])


def test_questions_alone_are_in_the_language_asked_for(client: "FlaskClient") -> None:
    """A letter that only asks has no order whose language it could have: it is named."""
    ask = {"missing": [{"asks": "Wie lang soll sie sein?"}], "language": "de-AT"}
    made = client.post("/v1/replies", json=ask, headers=MAKER).get_json()
    assert ENGLISH.findall(made["text"].partition("Unsere Bedingungen")[0]) == []
    assert 'lang="de"' in made["html"]


def test_a_finding_says_when_one_acts_on_it(client: "FlaskClient") -> None:
    """Before the order, as it comes, or in use; what stops an order is settled before it."""
    answer = client.post("/v1/quotes", json=EXAMPLE_ORDER).get_json()
    when = {one["check"]: one["when"] for one in answer["findings"]}
    assert when["mix-for-place"] == "before-order"
    assert when["set-down-at-kerb"] == when["hands-needed"] == "on-delivery"
    assert when["young-in-place"] == "in-use"
    stopped = client.post("/v1/quotes", json=STOPPED).get_json()
    assert {f["when"] for f in stopped["findings"] if f["level"] == "stops"} == {"before-order"}


_LENGTHS = {"length", "width", "diameter", "thickness", "x", "y", "depth", "front", "left", "right"}


def _in_metres(value: object) -> object:
    """Write every length of a slab as somebody who measures in metres does."""
    if isinstance(value, dict):
        return {
            key: f"{one / 1000:g} m"
            if key in _LENGTHS and isinstance(one, int | float)
            else _in_metres(one)
            for key, one in value.items()
        }
    return [_in_metres(one) for one in value] if isinstance(value, list) else value


@pytest.mark.parametrize("name", JOBS)
def test_who_measures_in_metres_reads_small_lengths_in_millimetres(
    client: "FlaskClient", name: str
) -> None:
    """No sentence has a length under a metre in metres: trade practice is 620 mm, not 0.62 m."""
    order = {"slabs": _in_metres(JOBS[name]["slabs"]), "delivery": {"kind": "collect"}}
    answer = client.post("/v1/quotes", json=order).get_json()
    text = _letter(client, order)["text"]
    said = [text, *(one["says"] for one in answer["findings"])]
    assert not re.findall(r"(?<![\d.])0\.\d+ m\b", " ".join(said))


def test_a_letter_says_what_was_assumed_joined_and_mounted_from_below(
    client: "FlaskClient",
) -> None:
    """Assumed units are told as ours, an undermount sink and a join as they were ordered."""
    sink = cut("rectangle", (500, 400), (900, 300), label="sink", rim="shown")
    slabs = [
        slab_json(box(1800, 600), sink, rests={"kind": "units"}),
        slab_json(box(900, 600), rests={"kind": "units", "units": [{"width": 900}]}),
    ]
    joins = [{"one": {"slab": 0, "side": "front"}, "other": {"slab": 1, "side": "right"}, "gap": 2}]
    order = {"slabs": slabs, "joins": joins, "delivery": {"kind": "collect"}}
    text = " ".join(_letter(client, order)["text"].split())
    speech = speech_in("en")
    assert speech.say(Message("letter-from-below")) in text
    assert speech.say(Message("letter-on-assumed", rests="|")).split("|")[0] in text
    assert text.count(speech.say(Message("letter-on-assumed", rests="|")).split("|")[0]) == 1
    gap = Length.of_mm(2)
    one = Message("slab-numbered", number=1)
    said = Message("letter-joined", side="the right", other="the front", that=one, gap=gap)
    assert speech.say(said) in text
