"""What may be typed at any place of a profile's form, however little of it fits."""

from __future__ import annotations

from typing import Final

from hypothesis import strategies as st

from support.strategies.enquiry_jumbled import NUMBERS, UNITS

_TYPED: Final = (
    "none", "-", "keine", "12,50", "1.234,5", "1,234.5", "$18 a bag of 94 lb", "2 bags", "#3", "#0",
    "2,50 € je Sack zu 25 kg", "#99", "10 gauge", "6 x 6", "W2.9", "1/2 h", "5 to 0", "10–20",
    "20 to 10", "a morning", "NaN", "inf", "-inf", "1e400", "1e-400", "0x10", "true", "[]", "{}",
    '"', "'''", "#fff", "#zzzzzz", "2026-02-30", "2026-12-24", "24.12.", "24/12", "every Monday",
    "Mo-Fr", "Bayern", "NRW", "D2", "AB1 2CD; ;;", "90210-1234", "10000–9999", "150%", "-5%", "½ ½",
    "Europe/Berlin", "EUR", "£", "5 €", "5'6\"", "winter", "12;13;14", "summer 20 winter 5", "<b>",
)  # fmt: skip
HUGE: Final = (
    "9" * 23,
    "9" * 30 + "." + "9" * 30,
    "9" * 400,
    "1/" + "9" * 40,
    "0." + "0" * 40 + "1",
)
_BETWEEN: Final = (" ", "/", " to ", "-", ",", "")


SPANS: Final = tuple(f"12{joint}{HUGE[2]}" for joint in ("-", " to ", " bis "))


def typed_entries() -> st.SearchStrategy[str]:
    """An entry of a field, in no relation to its place."""
    measured = st.builds(
        "{}{}{}".format,
        st.sampled_from((*NUMBERS, *HUGE)),
        st.sampled_from(("", " ")),
        st.sampled_from(UNITS),
    )
    one = st.one_of(st.sampled_from(_TYPED), measured, st.sampled_from(HUGE))
    return st.one_of(one, st.builds("{}{}{}".format, one, st.sampled_from(_BETWEEN), one))
