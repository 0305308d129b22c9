"""Families of enquiries: one slab said in many ways, so that no rule rests on one wording."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from hypothesis import strategies as st

MM_PER = {"mm": Fraction(1), "cm": Fraction(10), "m": Fraction(1000)}


@dataclass(frozen=True)
class SlabMessage:
    """A message, and the millimetres that a careful maker takes from it."""

    text: str
    length: float
    width: float
    thickness: float
    opening: Mapping[str, float] | None = None


def _decimal(amount: Fraction, mark: str) -> str:
    text = f"{float(amount):g}"
    return text.replace(".", mark)


@st.composite
def said(draw: st.DrawFn, mm: int, units: tuple[str, ...] = ("mm", "cm", "m")) -> str:
    """One size with its unit, as people write it; exact in that unit."""
    unit = draw(st.sampled_from(units))
    amount = mm / MM_PER[unit]
    mark = draw(st.sampled_from((".", ","))) if unit in ("m", "cm") else "."
    names = {
        "mm": ("mm", " mm", " millimetres", "mil"),
        "cm": ("cm", " cm", " centimetres"),
        "m": ("m", " m", " metres"),
    }
    return _decimal(amount, mark) + draw(st.sampled_from(names[unit]))


ENGLISH_LENGTH = ("{} long", "length {}", "length: {}", "a length of {}", "{} in length")
ENGLISH_WIDTH = ("{} deep", "{} front to back", "depth {}", "depth of {}", "{} from front to back")
ENGLISH_THICK = ("{} thick", "thickness {}", "{} in thickness", "a thickness of {}")
GERMAN_LENGTH = ("Länge {}", "{} lang")
GERMAN_WIDTH = ("Tiefe {}", "{} tief")
GERMAN_THICK = ("Stärke {}", "{} stark", "{} dick", "Dicke {}")
NAMES = ("worktop", "hearth", "shelf", "desk top", "vanity top", "window sill", "bar top", "slab")
GERMAN_NAMES = ("Arbeitsplatte", "Fensterbank", "Tischplatte", "Waschtischplatte", "Platte")
OPENINGS = ("Hello, ", "Hi there - ", "Good morning. ", "", "Dear all,\n\n")
ASKS = (
    "could you price a {name}, {sizes}?",
    "I'd like a {name}: {sizes}.",
    "Quote for a {name} {sizes}",
    "please quote: {name}, {sizes}. Thanks",
    "We need one {name}. It should be {sizes}.",
)
ASIDES = (
    "",
    " The room is 4.2 m by 3.6 m.",
    " The old one is 1111 x 444.",
    " Our door is 762 mm wide.",
    " I paid £1,234 for the last one.",
    " My number is 01632 960123.",
    " We are at HR0 7XX, with 3 steps.",
    " The cupboards below are 577 deep.",
    " It weighs 38 kg, the machine.",
    " The invoice was 20417.",
    " The ceiling is 2.4 m high.",
)
GERMAN_ASIDES = (
    "",
    " Das Zimmer ist 5,20 m lang.",
    " Die alte Platte war 1111 x 444 mm.",
    " Die Tür ist 80 cm breit.",
    " Preis bitte bis 3.500 €.",
)


@st.composite
def sizes_of(draw: st.DrawFn) -> tuple[int, int, int]:
    """Length, width and thickness, mm, of a slab that a workshop casts."""
    length = draw(st.integers(70, 300)) * 10
    width = draw(st.integers(20, 69)) * 10
    return max(length, width + 10), width, draw(st.sampled_from((20, 25, 30, 35, 40, 50, 60, 80)))


@st.composite
def _in_words(draw: st.DrawFn, sizes: tuple[int, int, int], *, german: bool) -> str:
    units = ("mm", "cm", "m")
    ways = (
        (GERMAN_LENGTH, GERMAN_WIDTH, GERMAN_THICK)
        if german
        else (ENGLISH_LENGTH, ENGLISH_WIDTH, ENGLISH_THICK)
    )
    thick = ("mm", "cm")
    noun = draw(st.booleans())
    parts = []
    for mm, forms, allowed in zip(sizes, ways, (units, units, thick), strict=True):
        before = [form for form in forms if not form.startswith("{}")]
        after = [form for form in forms if form.startswith("{}")]
        form = draw(st.sampled_from(before if noun else after))
        parts.append(form.format(draw(said(mm, allowed)).replace("mil", "mm" if german else "mil")))
    if draw(st.booleans()):
        parts = [parts[0], parts[2], parts[1]]
    last = (", ", " und " if german else " and ", ", ")
    return f"{parts[0]}, {parts[1]}{draw(st.sampled_from(last))}{parts[2]}"


@st.composite
def _in_a_group(draw: st.DrawFn, sizes: tuple[int, int, int]) -> str:
    mark = draw(st.sampled_from((" x ", "x", " × ", " by ", " X ")))
    way = draw(st.sampled_from(("bare", "each", "last")))
    length, width, thickness = sizes
    if draw(st.booleans()):
        length, width = width, length
    if way == "bare":
        return mark.join(str(mm) for mm in (length, width, thickness))
    unit = draw(st.sampled_from(("mm", "cm")))
    numbers = [f"{float(mm / MM_PER[unit]):g}" for mm in (length, width, thickness)]
    if way == "last":
        return mark.join(numbers) + unit
    return mark.join(f"{number}{unit}" for number in numbers)


@st.composite
def slabs(draw: st.DrawFn) -> SlabMessage:
    """A slab in words or in a group, with an aside that is none of it, in English or German."""
    sizes = draw(sizes_of())
    german = draw(st.booleans())
    said_sizes = draw(st.one_of(_in_words(sizes, german=german), _in_a_group(sizes)))
    if german:
        name = draw(st.sampled_from(GERMAN_NAMES))
        aside = draw(st.sampled_from(GERMAN_ASIDES))
        text = f"Guten Tag, ich hätte gern eine {name}: {said_sizes}.{aside}"
    else:
        asks = draw(st.sampled_from(ASKS)).format(
            name=draw(st.sampled_from(NAMES)), sizes=said_sizes
        )
        text = draw(st.sampled_from(OPENINGS)) + asks + draw(st.sampled_from(ASIDES))
    return SlabMessage(text, *sizes)


FORM_LABELS = (
    ("Length", "Width", "Thickness"),
    ("Length", "Depth", "Thickness"),
    ("Länge", "Tiefe", "Stärke"),
    ("Length (mm)", "Depth (mm)", "Thickness (mm)"),
)


@st.composite
def forms(draw: st.DrawFn) -> SlabMessage:
    """A slab in the fields of a form, in any order, colons, bars or tabs between."""
    sizes = draw(sizes_of())
    labels = draw(st.sampled_from(FORM_LABELS))
    mark = draw(st.sampled_from((": ", " | ", "\t", " : ")))
    bare = "(mm)" in labels[0]
    values = [str(mm) if bare else f"{mm} mm" for mm in sizes]
    lines = [f"{label}{mark}{value}" for label, value in zip(labels, values, strict=True)]
    lines += [f"Product{mark}worktop", f"Phone{mark}01632 960114", f"Colour{mark}charcoal"]
    order = draw(st.permutations(lines))
    return SlabMessage(f"Name{mark}Idris\n" + "\n".join(order), *sizes)


CORRECTIONS = (
    "Sorry, {new} not {old}.",
    "Sorry, I meant {new} instead of {old}.",
    "Correction: it should be {new}, not {old}.",
    "PS I measured again: {new} rather than {old}.",
    "Actually it is {new} and not {old}.",
)


@st.composite
def corrected(draw: st.DrawFn) -> SlabMessage:
    """A slab of which one size is corrected afterwards."""
    length, width, thickness = draw(sizes_of())
    new = length + draw(st.sampled_from((10, 20, 30, 50)))
    text = f"Please quote for a worktop {length} x {width} x {thickness} mm."
    gap = draw(st.sampled_from((" ", "\n\n")))
    fix = draw(st.sampled_from(CORRECTIONS)).format(new=f"{new} mm", old=f"{length} mm")
    return SlabMessage(text + gap + fix, new, width, thickness)


FROM_LEFT = (
    "{} from the left",
    "{} in from the left-hand end",
    "{} from the left end",
    "{} from LH end",
)
FROM_RIGHT = ("{} from the right", "{} in from the right-hand end", "{} off the RH end")
FROM_FRONT = ("{} from the front", "{} from the front edge", "{} back from the front")
FROM_BACK = ("{} from the back", "{} in from the back edge", "{} from the back edge")
HOLES = (
    "Sink cut-out {a} x {b}, its centre {x}, {y}.",
    "There's one sink, cut-out {a} x {b} mm, centre {x} and {y}.",
    "A hob goes in it, the hole is {a} x {b}. The middle of the hob is {x} and {y}.",
    "One cut-out for an undermount sink, {a} x {b}. Its middle is {x} and {y}.",
    "Hob hole {a} x {b} centred {x}, {y} to centre.",
)


@st.composite
def with_openings(draw: st.DrawFn) -> SlabMessage:
    """A slab with one opening, its place told from any of the four sides."""
    length, width, thickness = draw(sizes_of())
    length, width = max(length, 1400), max(width, 560)
    along, deep = draw(st.integers(30, 60)) * 10, draw(st.integers(28, 42)) * 10
    x = draw(st.integers(along // 2 + 80, length - along // 2 - 80))
    y = draw(st.integers(deep // 2 + 20, width - deep // 2 - 20))
    left, front = draw(st.booleans()), draw(st.booleans())
    across = draw(st.sampled_from(FROM_LEFT if left else FROM_RIGHT))
    back = draw(st.sampled_from(FROM_FRONT if front else FROM_BACK))
    hole = draw(st.sampled_from(HOLES)).format(
        a=along,
        b=deep,
        x=across.format(f"{x if left else length - x} mm"),
        y=back.format(f"{y if front else width - y} mm"),
    )
    text = f"Please quote for a worktop {length} x {width} x {thickness}. {hole}"
    opening = {"length": along, "width": deep, "x": x, "y": y}
    return SlabMessage(text, length, width, thickness, opening)


def dimensions(answer: dict[str, Any]) -> dict[str, float]:
    """Every length that an answer took, by its pointer."""
    return {entry["at"]: entry["mm"] for entry in answer["read"] if "mm" in entry}
