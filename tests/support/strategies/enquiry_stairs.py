"""What a slab goes up and lies on: steps and units, told with their numbers or without."""

from __future__ import annotations

from dataclasses import dataclass

from hypothesis import strategies as st

_ASKS = "Please quote for a shelf 900 x 220 x 40, delivered to HR0 2AB."
_WORDS = {1: "one", 2: "two", 3: "three", 4: "four"}


@dataclass(frozen=True)
class WayIn:
    """A message, the steps that it counts, and the words of stairs that it does not count."""

    text: str
    steps: int | None
    said: str | None


@st.composite
def counted(draw: st.DrawFn) -> WayIn:
    """Steps, or flights of so many each."""
    each, flights = draw(st.integers(2, 18)), draw(st.integers(2, 4))
    said, steps = draw(
        st.sampled_from(
            (
                (f"There are {each} steps.", each),
                (f"It is up {each} stone steps.", each),
                (f"Up {_WORDS[flights]} flights of {each} stairs.", flights * each),
                (f"It goes up {flights} flights of {each}.", flights * each),
                (f"{flights} flights of {each} steps each, no lift.", flights * each),
            )
        )
    )
    return WayIn(f"{_ASKS} {said}", steps, None)


@st.composite
def uncounted(draw: st.DrawFn) -> WayIn:
    """Flights, a few steps, a staircase: how many steps is not said."""
    flights = draw(st.sampled_from(("two", "three", "2", "3")))
    said = draw(
        st.sampled_from(
            (
                f"{flights} flights of stairs",
                f"{flights} flights of stone steps",
                f"{flights} flights up",
                "a few steps",
                "some steep steps",
                "several steps",
                "a flight of stairs",
                "a couple of steps",
                "up the stairs",
                "down a narrow staircase",
            )
        )
    )
    form = draw(
        st.sampled_from(("It has to go {}.", "The flat is {}.", "Mind, {}.", "There is {}."))
    )
    return WayIn(f"{_ASKS} {form.format(said)}", None, said)


_ON_UNITS = (
    "It sits on {units}.",
    "It will rest on {units}.",
    "They go on {units}.",
    "The top goes over {units}.",
    "It is supported by {units}.",
    "In a plain grey, on {units}.",
    "On {units}, along one wall.",
    "No overhang (on {units}).",
    "Sitting on {units}, against a wall.",
)
_UNITS = (
    *("cabinets", "base units", "our cupboards", "three cupboards", "the kitchen units"),
    *("base cabinets", "our new kitchen cabinets", "vanity units"),
)


@st.composite
def on_units(draw: st.DrawFn) -> tuple[str, str]:
    """A message whose slab lies on units without widths, and the words for them."""
    units = draw(st.sampled_from(_UNITS))
    form = draw(st.sampled_from(_ON_UNITS))
    return f"{_ASKS} {form.format(units=units)}", units
