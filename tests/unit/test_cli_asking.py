"""`init --ask`: twenty questions become a profile that loads, and what was asked is the maker's."""

import io
from decimal import Decimal
from pathlib import Path

import pytest

from ledgerstone.cli.profiles import run
from ledgerstone.workshop import load_profile

BAVARIA = (
    *("de", "Bayern?", "by", "", "Werkbank Beton", "Steinach", "moin@werkbank.example"),
    *("09999 1234", "", "2600 x 1200", "30, 40, 50", "", "52,50", "35", "19", "40", "96, 97"),
    *("85,00", "none", "180", "https://platten.werkbank.example"),
)
OREGON = (
    *("US", "OR", "America/Los_Angeles", "Burnt Ridge Concrete", "Alder Fork"),
    *("hello@burntridge.example", "(541) 555-0142", "", "120 in × 48 in"),
    *("1 1/2 in, 2 in", "5000 psi", "65", "", "none", "50", "974, 97701-97799"),
    *("95", "80", "none", "https://slabs.burntridge.example"),
)


def asked(file: Path, answers: tuple[str, ...]) -> tuple[int, str]:
    """Answer every question of a new profile."""
    out, given = io.StringIO(), io.StringIO("".join(f"{answer}\n" for answer in answers))
    return run(["init", "--ask", str(file)], out, io.StringIO(), {}, given), out.getvalue()


def test_a_bavarian_maker_answers_in_the_way_of_the_country(tmp_path: Path) -> None:
    """A wrong answer is asked again; commas are decimal; the rest is usual there."""
    status, said = asked(tmp_path / "mine.toml", BAVARIA)
    assert status == 0
    assert said.count("2/20 Landesteil") == 2
    shop = load_profile(tmp_path / "mine.toml")
    assert (shop.workshop.currency, shop.workshop.timezone) == ("EUR", "Europe/Berlin")
    assert (shop.tax.name, shop.tax.percent) == ("MwSt.", Decimal(19))
    assert shop.rates.hour == Decimal("52.50")
    assert shop.areas[0].postcodes == ("96", "97")
    assert (shop.areas[0].own_van, shop.areas[0].fitted) == (None, Decimal(180))
    assert shop.shaping.thicknesses_mm == (30, 40, 50)


def test_an_american_maker_answers_in_inches_and_psi(tmp_path: Path) -> None:
    """Sizes are read in their own units; no tax is charged where none was named."""
    assert asked(tmp_path / "mine.toml", OREGON)[0] == 0
    shop = load_profile(tmp_path / "mine.toml")
    assert (shop.table.length_mm, shop.table.width_mm) == (3048, 1219.2)
    assert shop.shaping.thicknesses_mm == (38.1, 50.8)
    assert shop.recipe.fck_mpa == pytest.approx(34.474, abs=0.001)
    assert not shop.tax.registered
    assert shop.workshop.region == "OR"


def test_what_was_asked_is_the_maker_s_and_all_else_is_not(tmp_path: Path) -> None:
    """Prices that nobody gave are still invented, and a value left as it stood was confirmed."""
    assert asked(tmp_path / "mine.toml", BAVARIA)[0] == 0
    standing = load_profile(tmp_path / "mine.toml").standing
    assert standing.trial
    assert standing.still_invented("hours")
    assert dict(standing.tables)["table"] == 1  # how many tables there are, which nobody asked
    assert not standing.still_invented("workshop")
    assert "# " in (tmp_path / "mine.toml").read_text(encoding="utf-8")


def test_answers_that_end_early_write_nothing(tmp_path: Path) -> None:
    """A maker who stops has no half profile."""
    assert asked(tmp_path / "mine.toml", BAVARIA[:5])[0] == 2
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
