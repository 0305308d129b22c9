"""`init --ask`: short questions become a profile that loads; what was asked is the maker's."""

import io
import re
import tempfile
from decimal import Decimal
from functools import cache
from pathlib import Path

import pytest

from ledgerstone.application.profile_description import first_ask
from ledgerstone.cli.profiles import run
from ledgerstone.wording import speech_in
from ledgerstone.workshop import load_profile
from ledgerstone.workshop.reading.loader import example_for

QUESTIONS = 34
RIGHT, WRONG = ("j",) * 2, ("n",) * 2
JOBS = ("4,5 13 27", "150", "1200")
LEFT = ("",) * 7  # what stands in brackets is right
BAVARIA = (
    *("de", "Baiern", "Bayern", "", "Werkbank Beton", "Steinach", "moin@werkbank.example"),
    *("09999 1234", "2600 x 1200", "30, 40, 50", "52,50", "19", "40", ""),
    *("keine", "1", "7,5", "12", "", "963456, HR9", "96, 97", "85,00", "none", "180", *LEFT, *JOBS),
)
OREGON = (
    *("US", "Oregon", "America/Los_Angeles", "Burnt Ridge Concrete", "Alder Fork"),
    *("hello@burntridge.example", "(541) 555-0142", "120 × 48 1/2", "1 1/2, 2 in", "$65/hr"),
    *("none", "50", "5000", "", "3", "", "0", "48 72"),
    *("974, 97701-97799", "95", "80", "none"),
    *("14", "wood", "plain", "#3", "6 x 6", "10 gauge", "2", "300 lb"),
    *("", "", ""),
)


def asked(file: Path, answers: tuple[str, ...]) -> tuple[int, str]:
    """Answer every question of a new profile."""
    status, said, text = _begun(answers)
    if text is not None:
        file.write_text(text, encoding="utf-8")
    return status, said


@cache
def _begun(answers: tuple[str, ...]) -> tuple[int, str, str | None]:
    """Exit status, what was said, and the text of the file, if there is one: once for all tests."""
    out, given = io.StringIO(), io.StringIO("".join(f"{answer}\n" for answer in answers))
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "mine.toml"
        status = run(["init", "--ask", str(file)], out, io.StringIO(), {}, given)
        return status, out.getvalue(), file.read_text(encoding="utf-8") if file.exists() else None


def test_a_bavarian_maker_answers_in_the_way_of_the_country(tmp_path: Path) -> None:
    """A wrong answer is asked again; commas are decimal; the rest is usual there."""
    status, said = asked(tmp_path / "mine.toml", BAVARIA + RIGHT)
    assert status == 0
    assert said.count(f"2/{QUESTIONS} Landesteil") == 2
    wrong, _, example = said.partition("963456 oder HR9; ")[2].partition(": ")
    assert (bool(wrong), example[:6]) == (True, "26133.")
    shop = load_profile(tmp_path / "mine.toml")
    assert (shop.workshop.currency, shop.workshop.timezone) == ("EUR", "Europe/Berlin")
    assert (shop.tax.name, shop.tax.percent) == ("MwSt.", Decimal(19))
    assert shop.rates.hour == Decimal("52.50")
    assert shop.areas[0].postcodes == ("96", "97")
    assert (shop.areas[0].own_van, shop.areas[0].fitted) == (None, Decimal(180))
    assert shop.shaping.thicknesses_mm == (30, 40, 50)


def test_all_that_a_german_maker_is_asked_is_german(tmp_path: Path) -> None:
    """No English word, and no decimal point; the locale tells the country that is offered first.

    What is chosen goes by the words that are shown.
    """
    out, file = io.StringIO(), tmp_path / "mine.toml"
    given = ("", *BAVARIA[1 : -len(LEFT) - len(JOBS)], "", "Betonstahl", *[""] * 5, *JOBS, *WRONG)
    answers = io.StringIO("".join(f"{answer}\n" for answer in given))
    run(["init", "--ask", str(file)], out, io.StringIO(), {"LANG": "de_DE.UTF-8"}, answers)
    said = out.getvalue().partition(" ist geschrieben")[0]
    assert "[DE]" in said
    assert "Edelstahl, Betonstahl, Glasfaser" in said
    assert 'material = "plain"' in file.read_text(encoding="utf-8")
    assert re.findall(r"\d\.\d+", said) == []
    english = r"\b(?:the|plain|stainless|glass-fibre|cube|none|honed|polished|\w+doors|\w+-cast)\b"
    assert re.findall(english, said) == []


def test_an_american_maker_answers_in_inches_and_psi(tmp_path: Path) -> None:
    """Sizes are read in their own units; no tax is charged where none was named."""
    assert asked(tmp_path / "mine.toml", (*OREGON, *WRONG))[0] == 0
    shop = load_profile(tmp_path / "mine.toml")
    assert (shop.table.length_mm, shop.table.width_mm) == (3048, 1231.9)
    assert shop.shaping.thicknesses_mm == (38.1, 50.8)
    assert shop.recipe.fck_mpa == pytest.approx(34.474, abs=0.001)
    assert not shop.tax.registered
    assert shop.workshop.region == "OR"
    assert (shop.calendar.hands, shop.calendar.orders_ahead_days) == (3, 0)
    steel, ways = shop.steel, shop.handling.ways
    assert steel.material == "plain"
    assert steel.bar_mm == pytest.approx(9.525)
    assert steel.yield_mpa == pytest.approx(413.7, abs=0.1)  # 60 ksi, as its material has it
    assert steel.mesh_pitch_mm == pytest.approx(152.4)
    assert steel.mesh_wire_mm == pytest.approx(3.429)
    assert [round(way.most_kg / ways[0].most_kg, 1) for way in ways] == [1, 1, 2.2, 2.2]


def test_who_mixes_from_bags_answers_one_question(tmp_path: Path) -> None:
    """A bag's weight, water, yield and price in one line.

    80 lb are 36.287 kg, 0.7 gal 2.650 l and 0.6 ft³ 16.990 l: NIST SP 811 appendix B.8.
    """
    at = OREGON.index("5000") + 1
    told = ["80 lb", "0.7 gal", "0.6 ft³", "$14.75/bag"]
    answers = (*OREGON[:at], "80 lb, 14.75", ", ".join(told), *OREGON[at + 1 :], *("y",) * 2)
    status, said = asked(tmp_path / "mine.toml", answers)
    assert status == 0
    assert said.count(f"14/{QUESTIONS} ") == 2
    workshop = load_profile(tmp_path / "mine.toml")
    recipe = workshop.recipe
    assert recipe.bag is not None
    assert workshop.concrete.untested_percent == 75  # no strip of it was broken
    assert (recipe.constituents, recipe.face_coat) == ((), None)
    assert recipe.bag.bag_kg == pytest.approx(36.287, abs=0.001)
    assert recipe.bag.water_l_per_bag == pytest.approx(2.650, abs=0.001)
    assert recipe.bag.yield_l == pytest.approx(16.990, abs=0.005)  # a file has four digits
    assert (recipe.bag.cement_percent, recipe.bag.price_per_bag) == (None, Decimal("14.75"))


def test_a_bag_s_price_that_was_answered_stays(tmp_path: Path) -> None:
    """What is bought for a job moves the other prices alone."""
    at = OREGON.index("5000") + 1
    bag = ("90 lb, 0.8 gal, 0.7 ft³, 14.75",)
    answers = (*OREGON[:at], *bag, *OREGON[at + 1 : -3], "", "190", "", *("y",) * 2)
    assert asked(tmp_path / "mine.toml", answers)[0] == 0
    shop = load_profile(tmp_path / "mine.toml")
    was = load_profile(example_for("US"))
    assert shop.recipe.bag is not None
    assert shop.recipe.bag.price_per_bag == Decimal("14.75")
    assert shop.boards.price_per_sheet != was.boards.price_per_sheet


def test_who_reinforces_with_glass_fibre_is_asked_what_it_reaches(tmp_path: Path) -> None:
    """Until it is told: 145 ksi are 999.7 MPa, NIST SP 811 appendix B.8."""
    at = OREGON.index("plain")
    after = OREGON.index("10 gauge") + 1
    answers = (*OREGON[:at], "glass-fibre", *OREGON[at + 1 : after], "", "145", *OREGON[after:])
    status, said = asked(tmp_path / "mine.toml", (*answers, *WRONG))
    assert status == 0
    assert said.count("(ksi)") == 2
    steel = load_profile(tmp_path / "mine.toml").steel
    assert steel.material == "glass-fibre"
    assert steel.yield_mpa == pytest.approx(999.7, abs=0.1)


def test_that_no_bar_is_used_is_said_in_a_word(tmp_path: Path) -> None:
    """The question says which, as an empty answer keeps ours."""
    answers = tuple("none" if answer == "#3" else answer for answer in OREGON)
    status, said = asked(tmp_path / "mine.toml", (*answers, *WRONG))
    assert status == 0
    assert load_profile(tmp_path / "mine.toml").steel.bar_mm is None
    path, speech = ("steel", "bar_mm"), speech_in("en")
    in_terminal, on_form = (speech.say(first_ask(path, on)) for on in ("terminal", "form"))
    assert in_terminal in said
    assert on_form not in said


def test_the_workshop_s_warmth_is_asked_and_moves_its_months(tmp_path: Path) -> None:
    """48 °F in January and 72 °F in July: 8.9 and 22.2 °C, NIST SP 811 appendix B.8."""
    assert asked(tmp_path / "mine.toml", (*OREGON, *WRONG))[0] == 0
    by_month = load_profile(tmp_path / "mine.toml").handling.workshop_c
    assert (by_month[0], by_month[6]) == (8.9, 22.2)
    assert by_month[3] == pytest.approx((8.9 + 22.2) / 2, abs=0.1)
    assert list(by_month[:7]) == sorted(by_month[:7])


def test_what_was_asked_is_the_maker_s_and_all_else_is_not(tmp_path: Path) -> None:
    """Prices that nobody gave are still invented, and a value left as it stood was confirmed."""
    assert asked(tmp_path / "mine.toml", (*BAVARIA[:-3], "", "", "", *WRONG))[0] == 0
    standing = load_profile(tmp_path / "mine.toml").standing
    assert standing.trial
    assert standing.still_invented("hours")
    assert {"palette", "boards"} <= set(standing.priced)
    assert dict(standing.tables)["table"] == 1  # how many tables there are, which nobody asked
    assert not standing.still_invented("workshop")
    assert "# " in (tmp_path / "mine.toml").read_text(encoding="utf-8")


def test_who_finds_the_rest_right_has_no_trial(tmp_path: Path) -> None:
    """After all answers every price, hour and area is the maker's; hours follow three jobs."""
    status, said = asked(tmp_path / "mine.toml", BAVARIA + RIGHT)
    assert status == 0
    shop = load_profile(tmp_path / "mine.toml")
    assert not shop.standing.trial
    assert not shop.standing.still_invented("palette")
    assert not shop.standing.still_invented("areas")
    assert "Graphit" in said  # no shade is confirmed that was not shown
    before = load_profile(example_for("DE")).hours
    assert shop.hours.per_mould.cutout / before.per_mould.cutout == pytest.approx(
        shop.hours.per_job.set_up / before.per_job.set_up, rel=0.01
    )
    assert shop.hours.per_mould.cutout > 1.1 * before.per_mould.cutout
    was = load_profile(example_for("DE")).boards.price_per_sheet
    assert shop.boards.price_per_sheet > Decimal("1.05") * was  # by what is bought for one job
    assert shop.rates.margin_percent > 0
    assert f"{QUESTIONS}/{QUESTIONS}" in said


def test_answers_that_end_early_write_nothing(tmp_path: Path) -> None:
    """A maker who stops has no half profile."""
    assert asked(tmp_path / "mine.toml", BAVARIA[:5])[0] == 2
    assert not (tmp_path / "mine.toml").exists()


def test_a_country_that_is_none_begins_no_file(tmp_path: Path) -> None:
    """Two letters are asked for, and nothing is written."""
    err = io.StringIO()
    asked_for = ["init", str(tmp_path / "mine.toml"), "--country", "Oregon"]
    assert run(asked_for, io.StringIO(), err) == 2
    assert "Oregon" in err.getvalue()
    assert not (tmp_path / "mine.toml").exists()


def test_a_profile_starts_from_its_country_s_invented_workshop(tmp_path: Path) -> None:
    """Its values are invented still, whatever country it is moved to."""
    file = tmp_path / "mine.toml"
    assert run(["init", str(file), "--country", "de"], io.StringIO(), io.StringIO()) == 0
    shop = load_profile(file)
    assert (shop.workshop.country, shop.tax.percent) == ("DE", Decimal(19))
    text = file.read_text(encoding="utf-8")
    file.write_text(text.replace('country = "DE"', 'country = "AT"').replace('"BY"', '"1"'))
    moved = load_profile(file).standing
    assert moved.invented == shop.standing.invented - 1  # the region is its own
