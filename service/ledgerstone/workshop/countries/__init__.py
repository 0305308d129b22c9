"""What is usual in each country: its languages, units, paper, postcodes and English words.

A profile's ``[conventions]`` say otherwise where a workshop does. Units and paper are Unicode's
(CLDR ``measurementData`` and ``paperSize``). Which words are spoken is common knowledge, no source.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Final, Literal

from ledgerstone.workshop.countries.postcodes import POSTCODES, Postcodes

LengthUnit = Literal["mm", "cm", "m", "in"]
WorkLengthUnit = Literal["mm", "in"]
MassUnit = Literal["kg", "lb"]
TemperatureUnit = Literal["C", "F"]
VolumeUnit = Literal["l", "gal"]
StrengthUnit = Literal["N/mm2", "MPa", "psi"]
PaperFormat = Literal["A4", "Letter"]
English = Literal["british", "american", "canadian", "australian"]


@dataclass(frozen=True, slots=True)
class RegionalSettings:
    """What is usual in a workshop's country, or what its profile says instead.

    Attributes
    ----------
    country
        ISO 3166-1 letters.
    languages
        Of ours, those that are spoken there: they are written as that country writes them.
    words
        Whose English words are used, and ``replaced``, the workshop's own in the place of some.
    work_lengths
        And the other units beginning so: what the workshop works in, where it is not what its
        customers read.
    """

    country: str
    languages: tuple[str, ...] = ()
    postcodes: Postcodes | None = None
    tax_name: str = "VAT"
    lengths: LengthUnit = "mm"
    masses: MassUnit = "kg"
    temperatures: TemperatureUnit = "C"
    volumes: VolumeUnit = "l"
    strengths: StrengthUnit = "MPa"
    paper: PaperFormat = "A4"
    words: English = "british"
    replaced: tuple[tuple[str, str], ...] = ()
    work_lengths: WorkLengthUnit | None = None
    work_masses: MassUnit | None = None
    work_volumes: VolumeUnit | None = None
    work_temperatures: TemperatureUnit | None = None
    work_strengths: StrengthUnit | None = None

    @property
    def is_month_first(self) -> bool:
        """Whether 3/5 is March 5: CLDR's yMd of en-US, and of no other English here."""
        return self.country == "US"

    @property
    def decimal_mark(self) -> str:
        """What stands between whole and tenth: CLDR's of the first language of the country."""
        return "," if self.country in COUNTRIES and self.country not in _POINTS else "."

    def at_work(self) -> RegionalSettings:
        """Return the same with the units that the workshop works in: by default its customers'.

        A workshop whose customers read centimetres works in millimetres.
        """
        lengths = self.work_lengths or ("in" if self.lengths == "in" else "mm")
        return replace(
            self,
            lengths=lengths,
            masses=self.work_masses or self.masses,
            volumes=self.work_volumes or self.volumes,
            temperatures=self.work_temperatures or self.temperatures,
            strengths=self.work_strengths or self.strengths,
        )


_NEWTONS: Final = frozenset({"GB", "IE", "DE", "AT", "CH", "LI"})  # strengths in N/mm² there
_POINTS: Final = frozenset({"GB", "IE", "US", "CA", "AU", "NZ", "CH", "LI"})  # 1.5, not 1,5


def _of(country: str, tax_name: str = "VAT", *languages: str) -> RegionalSettings:
    place = RegionalSettings(country, languages, POSTCODES[country], tax_name)
    return replace(place, strengths="N/mm2") if country in _NEWTONS else place


_UNITED_STATES = RegionalSettings(
    *("US", ("en",), POSTCODES["US"], "sales tax", "in", "lb", "F", "gal", "psi", "Letter"),
    words="american",
)

COUNTRIES: Final[Mapping[str, RegionalSettings]] = MappingProxyType(
    {
        place.country: place
        for place in (
            _of("GB", "VAT", "en"),
            _of("IE", "VAT", "en"),
            _of("DE", "MwSt.", "de"),
            _of("AT", "USt.", "de"),
            _of("CH", "MWST", "de"),
            _of("LI", "MWST", "de"),
            _of("LU", "TVA", "de"),
            _of("BE", "BTW"),
            _of("NL", "btw"),
            _of("FR", "TVA"),
            _of("IT", "IVA"),
            _of("ES", "IVA"),
            _of("PT", "IVA"),
            _of("DK", "moms"),
            _of("SE", "moms"),
            _of("NO", "mva"),
            _of("FI", "ALV"),
            _of("PL", "VAT"),
            _of("CZ", "DPH"),
            _of("ZA", "VAT", "en"),
            _of("NZ", "GST", "en"),
            replace(_of("AU", "GST", "en"), words="australian"),
            replace(_of("CA", "GST", "en"), words="canadian", paper="Letter"),
            _UNITED_STATES,
        )
    }
)

# Standard rates of each country's tax in 2026; the maker is asked to check them. Statutes, from
# memory: AT UStG § 10(1), CH and LI MWSTG art. 25(1), LU TVA law art. 39, IE VATCA 2010 s. 46, NZ
# GST Act 1985 s. 8, AU GST Act 1999 s. 9-70, CA Excise Tax Act s. 165 (the federal part alone), ZA
# VAT Act 1991 s. 7; the others by the European Commission's list of VAT rates.
TAX_PERCENT: Final[Mapping[str, str]] = MappingProxyType({
    "AT": "20", "BE": "21", "NL": "21", "FR": "20", "IT": "22", "ES": "21", "PT": "23", "DK": "25",
    "SE": "25", "NO": "25", "FI": "25.5", "PL": "23", "CZ": "21", "LU": "17", "IE": "23",
    "CH": "8.1", "LI": "8.1", "ZA": "15", "NZ": "15", "AU": "10", "CA": "5",
})  # fmt: skip


# South of the equator, where July is the coldest month.
SOUTHERN: Final = frozenset({"AU", "NZ", "ZA"})

# Where the tax is each part's own and no rate is the country's: a profile starts without one.
TAXED_BY_PART: Final = frozenset({"US"})


def usual_in(country: str) -> RegionalSettings:
    """Return what is usual in a country; of one that is not known here, what most of them do."""
    return COUNTRIES.get(country, RegionalSettings(country))
