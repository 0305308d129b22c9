"""What is usual in each country: its languages, units, paper, postcodes and English words.

A profile's ``[conventions]`` say otherwise where a workshop does. The postcodes are those of the
address data that Google's libaddressinput publishes; units and paper are Unicode's (CLDR
``measurementData`` and ``paperSize``). Which words are spoken is common knowledge, no source.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType
from typing import Final, Literal

LengthUnit = Literal["mm", "cm", "m", "in"]
WorkLengthUnit = Literal["mm", "in"]
MassUnit = Literal["kg", "lb"]
TemperatureUnit = Literal["C", "F"]
VolumeUnit = Literal["l", "gal"]
StrengthUnit = Literal["N/mm2", "MPa", "psi"]
PaperFormat = Literal["A4", "Letter"]
English = Literal["british", "american", "canadian", "australian"]


@dataclass(frozen=True, slots=True)
class Postcodes:
    """How a country's postcodes are written.

    Attributes
    ----------
    pattern
        What one is in capital letters and digits alone; its groups are its parts.
    joint
        What is written between its parts.
    parts
        How many of its parts say where it is, for an area to begin with.
    lead
        Letters that are written before it abroad, and that say nothing of where it is.
    example
        One such, to show how it is written.
    """

    pattern: str
    example: str
    joint: str = " "
    parts: int = 9
    lead: tuple[str, ...] = ()

    def read(self, text: str) -> tuple[str, str] | None:
        """Return a postcode as it is usually written, and the part that says where it is.

        Blanks, hyphens and dots are passed over; None if it is no postcode of the country.
        """
        letters = re.sub(r"[\s.\-–]", "", text).upper()
        for lead in self.lead:
            if letters.startswith(lead) and letters[len(lead) :].isdigit():
                letters = letters.removeprefix(lead)
                break
        found = re.fullmatch(self.pattern, letters)
        if found is None:
            return None
        parts = [part for part in found.groups() if part]
        return self.joint.join(parts), "".join(parts[: self.parts])


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


# The BS 7666 v2.0 schema's pattern, with P added to the third letter of A9A districts (N1P and W1P
# are in use); GIR 0AA is no place a slab goes to.
_BRITISH = Postcodes(
    r"([A-PR-UWYZ][0-9][0-9]?|[A-PR-UWYZ][A-HK-Y][0-9][0-9]?|[A-PR-UWYZ][0-9][A-HJKPSTUW]"
    r"|[A-PR-UWYZ][A-HK-Y][0-9][ABEHMNPRVWXY])([0-9][ABD-HJLNP-UW-Z]{2})",
    "HR0 1AA",
    parts=1,
)
_CANADIAN = Postcodes(
    r"([ABCEGHJ-NPRSTVXY][0-9][ABCEGHJ-NPRSTV-Z])([0-9][ABCEGHJ-NPRSTV-Z][0-9])",
    "H3Z 2Y7",
    parts=1,
)
_IRISH = Postcodes(r"([0-9A-Z]{3})([0-9A-Z]{4})", "A65 F4E2", parts=1)
_DUTCH = Postcodes(r"([1-9][0-9]{3})([A-Z]{2})", "1234 AB", parts=1)
_ZIP = Postcodes(r"([0-9]{5})([0-9]{4})?", "95014", "-", parts=1)
_NEWTONS: Final = frozenset({"GB", "IE", "DE", "AT", "CH", "LI"})  # strengths in N/mm² there
_POINTS: Final = frozenset({"GB", "IE", "US", "CA", "AU", "NZ", "CH", "LI"})  # 1.5, not 1,5
_FOUR, _FIVE = r"([0-9]{4})", r"([0-9]{5})"


def _of(
    country: str, postcodes: Postcodes, tax_name: str = "VAT", *languages: str
) -> RegionalSettings:
    place = RegionalSettings(country, languages, postcodes, tax_name)
    return replace(place, strengths="N/mm2") if country in _NEWTONS else place


_UNITED_STATES = RegionalSettings(
    *("US", ("en",), _ZIP, "sales tax", "in", "lb", "F", "gal", "psi", "Letter", "american")
)

COUNTRIES: Final[Mapping[str, RegionalSettings]] = MappingProxyType(
    {
        place.country: place
        for place in (
            _of("GB", _BRITISH, "VAT", "en"),
            _of("IE", _IRISH, "VAT", "en"),
            _of("DE", Postcodes(_FIVE, "26133", lead=("DE", "D")), "MwSt.", "de"),
            _of("AT", Postcodes(_FOUR, "1010", lead=("AT", "A")), "USt.", "de"),
            _of("CH", Postcodes(_FOUR, "2544", lead=("CH",)), "MWST", "de"),
            _of("LI", Postcodes("(94[89][0-9])", "9490", lead=("LI", "FL")), "MWST", "de"),
            _of("LU", Postcodes(_FOUR, "4750", lead=("LU", "L")), "TVA", "de"),
            _of("BE", Postcodes(_FOUR, "4000", lead=("BE", "B")), "BTW"),
            _of("NL", _DUTCH, "btw"),
            _of("FR", Postcodes(_FIVE, "33380", lead=("FR", "F")), "TVA"),
            _of("IT", Postcodes(_FIVE, "00144", lead=("IT", "I")), "IVA"),
            _of("ES", Postcodes(_FIVE, "28039", lead=("ES", "E")), "IVA"),
            _of("PT", Postcodes("([0-9]{4})([0-9]{3})", "2725-079", "-"), "IVA"),
            _of("DK", Postcodes(_FOUR, "8660", lead=("DK",)), "moms"),
            _of("SE", Postcodes("([0-9]{3})([0-9]{2})", "114 55", lead=("SE", "S")), "moms"),
            _of("NO", Postcodes(_FOUR, "0025", lead=("NO", "N")), "mva"),
            _of("FI", Postcodes(_FIVE, "00550", lead=("FI", "FIN")), "ALV"),
            _of("PL", Postcodes("([0-9]{2})([0-9]{3})", "00-950", "-", lead=("PL",)), "VAT"),
            _of("CZ", Postcodes("([0-9]{3})([0-9]{2})", "100 00", lead=("CZ",)), "DPH"),
            _of("ZA", Postcodes(_FOUR, "0083"), "VAT", "en"),
            _of("NZ", Postcodes(_FOUR, "6001"), "GST", "en"),
            replace(_of("AU", Postcodes(_FOUR, "2060"), "GST", "en"), words="australian"),
            replace(_of("CA", _CANADIAN, "GST", "en"), words="canadian", paper="Letter"),
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


def beginnings_like(country: str) -> tuple[str, ...]:
    """Return how postcodes of a country may begin, as an area of a profile has them.

    ``98``, ``98801`` and ``98801-98899``, where they are figures alone.
    """
    known = COUNTRIES.get(country)
    read = known.postcodes.read(known.postcodes.example) if known and known.postcodes else None
    if read is None:
        return ("10", "1010", "1010-1099")
    place = read[1]
    if place.isdecimal():
        return place[:2], place, f"{place}-{place[:-2]}99"
    letters = place.rstrip("0123456789") if place[-1].isdecimal() else place[0]
    return (letters, place, f"{letters}1-6") if country == "GB" else (letters, place)


def usual_in(country: str) -> RegionalSettings:
    """Return what is usual in a country; of one that is not known here, what most of them do."""
    return COUNTRIES.get(country, RegionalSettings(country))
