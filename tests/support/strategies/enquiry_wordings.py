"""Families of wordings found in messages from outside, each said in many ways with any sizes."""

from __future__ import annotations

from hypothesis import strategies as st

from support.strategies.enquiry_changes import Several

SLAB = "/slabs/0"
_GAPS = (" ", "\n\n", "\n")
_STARTS = ("starts", "begins", "that starts", "which starts", "that begins", "which begins")
_OVER = (
    "sits in the middle of the {w} {unit} {starts} {m} from the {side}",
    "is centred on the {w} {unit} {starts} {m} from the {side} end",
    "goes in the middle of the {w} {unit} {starts} {m} from the {side}-hand end",
    "goes over the middle of the {w} {unit} {starts} {m} from the {side}",
)
_IN_IT = (
    "The {w} {unit} {starts} {m} from the {side}. The sink goes in the middle of it",
    "The {w} {unit} {starts} {m} from the {side} and the sink is centred in it",
    "The {w} {unit} {starts} {m} from the {side} end. The sink sits in the middle of that",
)
_UNITS = ("unit", "cupboard", "cabinet", "base unit")


@st.composite
def a_slab(draw: st.DrawFn) -> tuple[int, int, int]:
    """Length, width and thickness of a worktop, mm."""
    length = draw(st.integers(180, 320)) * 10
    return length, draw(st.integers(58, 72)) * 10, draw(st.sampled_from((30, 40, 50)))


def sizes_of(length: float, width: float, thickness: float, at: str = SLAB) -> dict[str, float]:
    """Return the three sizes of the slab at a pointer by their own pointers, mm."""
    sizes = {"outline/length": length, "outline/width": width, "thickness": thickness}
    return {f"{at}/{key}": float(mm) for key, mm in sizes.items()}


def lengths_of(slab: tuple[float, float, float], **more: float) -> dict[str, float]:
    """Return a slab's three sizes, and those of its opening, by their pointers."""
    opening = {f"{SLAB}/cutouts/0/{key.replace('_', '/')}": mm for key, mm in more.items()}
    return sizes_of(*slab) | opening


@st.composite
def over_cupboards(draw: st.DrawFn) -> Several:
    """A sink in the middle of a cupboard whose width and near end are told; the sizes are its."""
    slab = draw(a_slab())
    wide = draw(st.sampled_from((450, 500, 600, 800, 900)))
    start = draw(st.integers(30, (slab[0] - wide - 300) // 10)) * 10
    side, back = draw(st.sampled_from(("left", "right"))), draw(st.integers(27, 32)) * 10
    along, deep = draw(st.integers(36, 44)) * 10, draw(st.integers(30, 40)) * 10
    starts = draw(st.sampled_from(_STARTS))
    two = draw(st.booleans())
    form = draw(st.sampled_from(_IN_IT if two else _OVER))
    place = form.format(
        w=f"{wide}{draw(st.sampled_from(('', ' mm', 'mm')))}",
        unit=draw(st.sampled_from(_UNITS)),
        starts=starts.rpartition(" ")[2] if two else starts if " " in starts else f"that {starts}",
        m=start,
        side=side,
    )
    hole = f"Its cut-out is {along} x {deep}, {back} from the front to its middle."
    text = f"Please quote for a worktop {slab[0]} x {slab[1]} x {slab[2]}. "
    text += (place if two else f"The sink {place}") + f". {hole}"
    x = start + wide / 2
    x = x if side == "left" else slab[0] - x
    return Several(text, lengths_of(slab, length=along, width=deep, centre_x=x, centre_y=back))


_ALONG_FIRST = (
    "On the {side}, {x} from the {side} end, there is a hole, {d} across, {y} from the front.",
    "At {x} from the {side} end there must be a round hole of {d}, {y} from the front.",
    "From the {side} end {x} in there should be a hole of {d} diameter, {y} from the front.",
)


@st.composite
def places_first(draw: st.DrawFn) -> Several:
    """A hole whose place along the slab is told before it is named."""
    slab = draw(a_slab())
    side, x = draw(st.sampled_from(("left", "right"))), draw(st.integers(20, 90)) * 10
    bore, y = draw(st.sampled_from((35, 50, 60, 80))), draw(st.integers(15, 40)) * 10
    hole = draw(st.sampled_from(_ALONG_FIRST)).format(
        side=side, x=f"{x} mm", d=f"{bore} mm", y=f"{y} mm"
    )
    text = f"I'd like a bar top, {slab[0]} x {slab[1]} x {slab[2]}. {hole}"
    along = x if side == "left" else slab[0] - x
    return Several(text, lengths_of(slab, diameter=bore, centre_x=along, centre_y=y))


_BLANKS = ("\u00a0", "\u2009", "\u202f", "'", "’")


@st.composite
def thousands(draw: st.DrawFn) -> Several:
    """A slab whose thousands are set apart by a blank or an apostrophe, as printers set them."""
    slab = draw(a_slab())
    blank = draw(st.sampled_from((*_BLANKS, " ")))
    length = f"{slab[0] // 1000}{blank}{slab[0] % 1000:03d}"
    if draw(st.booleans()):
        length = f"{slab[0] // 1000}.{slab[0] % 1000:03d}"
        text = f"Küchenarbeitsplatte {length} x {slab[1]} x {slab[2]} mm, Angebot bitte."
        return Several(text, lengths_of(slab))
    form = draw(
        st.sampled_from(
            (
                "Please quote for a worktop {l} x {w} x {t} mm.",
                "What costs the table plate from concrete, dimension {l} x {w} mm, thick {t} mm?",
                "We need a worktop: length {l} mm, depth {w} mm, thickness {t} mm.",
            )
        )
    )
    return Several(form.format(l=length, w=slab[1], t=slab[2]), lengths_of(slab))


_CONFIRMED = (
    "> You gave {l} x {w} for the top, is that finished?\n\nYes.",
    ">> You said {l} x {w} for the worktop, is that right?\n>\nYes, it is.",
    "> You asked for {l} x {w} for the top. Is it the finished size?\n\nIt is.",
)


@st.composite
def answers_between(draw: st.DrawFn) -> Several:
    """Answers between quoted questions, one of which says the two sizes again."""
    slab = draw(a_slab())
    blocks = [
        f"> What thickness did you have in mind?\n\n{slab[2]} mm please.",
        draw(st.sampled_from(_CONFIRMED)).format(l=slab[0], w=slab[1]),
        "> Will you collect?\n\nYes please.",
    ]
    order = draw(st.permutations(blocks))
    return Several("Hello, answers to your questions about the worktop:\n\n" + "\n\n".join(order)
                   + "\n\nGareth", lengths_of(slab))  # fmt: skip


_BORE_FIXES = (
    "Sorry, can the hole be {new} not {old}.",
    "Correction: the hole should be {new}, not {old}.",
    "And can we have the grommet hole {new} instead of {old}?",
)


@st.composite
def bores_corrected(draw: st.DrawFn) -> Several:
    """A bare number that replaces a hole's size is in the hole's unit."""
    slab = draw(a_slab())
    old, new = draw(st.permutations((45, 60, 70, 80)))[:2]
    x, y = draw(st.integers(20, 90)) * 10, draw(st.integers(10, 40)) * 10
    text = f"Please quote for a desk top {slab[0]} x {slab[1]} x {slab[2]}, with one {old} mm"
    text += f" cable hole, its centre {x} from the left and {y} from the front."
    fix = draw(st.sampled_from(_BORE_FIXES)).format(new=new, old=old)
    lengths = lengths_of(slab, diameter=new, centre_x=x, centre_y=y)
    return Several(text + draw(st.sampled_from(_GAPS)) + fix, lengths)


_NO_SIZE = (
    "What would a {one} and a {two} cost, roughly?",
    "Do you make a {one} with a matching {two}? What would they cost?",
    "We'd like a price for a {one} with a {two}. We haven't measured yet.",
    "I'm after a {one} and a {two}, could you quote?",
)


@st.composite
def without_sizes(draw: st.DrawFn) -> Several:
    """Two slabs named and not one size: both are drafted, and everything is asked."""
    one = draw(st.sampled_from(("worktop", "kitchen worktop", "vanity top")))
    two = draw(st.sampled_from(("splashback", "upstand")))
    text = draw(st.sampled_from(_NO_SIZE)).format(one=one, two=two)
    aside = draw(st.sampled_from(("", " Something pale.", " We are in HR0 6PP.")))
    return Several(f"Hello,\n\n{text}{aside}\n\nBecca", {}, {"second": two})


_NO_SIZES_AT_ALL = ("1e9 x {w} x {t}", "2E3 x {w} x {t}", "{n} x {w} x {t}")


@st.composite
def broken_numbers(draw: st.DrawFn) -> Several:
    """A group that begins with what is no size: nothing of it is sure, so nothing is taken."""
    group = draw(st.sampled_from(_NO_SIZES_AT_ALL)).format(
        n="9" * draw(st.integers(20, 60)), w=600, t=40
    )
    return Several(f"Please quote for a worktop {group} mm.", {})


_LETTERED = ("Size L x D x T: {g}", "L x W x T: {g}", "Size (L x D x T): {g}")


@st.composite
def lettered(draw: st.DrawFn) -> Several:
    """A form's field named by the letters of the three sizes, or a note that wants it thick."""
    slab = draw(a_slab())
    group = f"{slab[0]} x {slab[1]} x {slab[2]}"
    form = (
        f"Name: Jo\nWants: worktop\n{draw(st.sampled_from(_LETTERED)).format(g=group)}\nColour: oat"
    )
    note = f"Mr Pell rang about a worktop, {slab[0]} x {slab[1]}, wants it {slab[2]}. How much?"
    return Several(draw(st.sampled_from((form, note))), lengths_of(slab))


_SAID_AGAIN = (
    "> Length we have as {l} mm.\n\n{yes}",
    "> You said {l} mm for the length.\n\n{yes}",
    "> The length you gave was {l} mm, yes?\n\n{yes}",
)


@st.composite
def said_again(draw: st.DrawFn) -> Several:
    """One size that the workshop says again and the customer confirms, or does not answer."""
    slab = draw(a_slab())
    is_right = draw(st.booleans())
    yes = (
        draw(st.sampled_from(("That's right.", "Yep", "Correct.", "Yes"))) if is_right else "Grey."
    )
    text = (
        "Hello, about the worktop:\n\n> How deep is it?\n\n"
        f"{slab[1]} mm deep please.\n\n"
        + draw(st.sampled_from(_SAID_AGAIN)).format(l=slab[0], yes=yes)
        + f"\n\n> And how thick?\n\n{slab[2]} mm thick.\n\nTy"
    )
    lengths = lengths_of(slab)
    if not is_right:
        del lengths[f"{SLAB}/outline/length"]
    return Several(text, lengths)


_AT = "{x} mm from the left and {y} mm from the front."
_BOWLS = (
    f"The basin is a countertop bowl so it only needs a {{d}} mm waste, {_AT}",
    f"The bowl sits on top, so just a waste hole of {{d}} mm, {_AT}",
)


@st.composite
def bowls(draw: st.DrawFn) -> Several:
    """A bowl that stands on the slab: only its waste is cut."""
    slab = draw(a_slab())
    bore, x, y = draw(st.sampled_from((40, 45, 50))), 10 * draw(st.integers(30, 90)), 250
    text = f"Please quote for a vanity top, {slab[0]} x {slab[1]} x {slab[2]} mm. "
    text += draw(st.sampled_from(_BOWLS)).format(d=bore, x=x, y=y)
    return Several(text, lengths_of(slab, diameter=bore, centre_x=x, centre_y=y))


@st.composite
def inch_tables(draw: st.DrawFn) -> Several:
    """A table in inches whose last column is a whole number, and whose next row has any name."""
    thick = draw(st.sampled_from((1, 2, 3)))
    rows = [("counter", draw(st.integers(60, 96)), 25), ("island", draw(st.integers(60, 80)), 36)]
    rows += [(draw(st.sampled_from(("bar", "shelf", "ledge"))), draw(st.integers(40, 60)), 14)]
    lines = [f"{name}\t{long}\t{deep}\t{thick}" for name, long, deep in rows]
    text = "Sizes below in inches, please quote:\n\npiece\tlength\tdepth\tthick\n"
    lengths: dict[str, float] = {}
    for i, (_, long, deep) in enumerate(rows):
        sizes = {"outline/length": long, "outline/width": deep, "thickness": thick}
        lengths |= {f"/slabs/{i}/{key}": size * 25.4 for key, size in sizes.items()}
    return Several(text + "\n".join(lines) + "\n\nAll in grey.\n", lengths)


_AFTER_INCHES = (
    "Please quote for a worktop {l} in x {w} in with a sink, {t} in thick.",
    "I'd like a worktop {l} in by {w} in please, {t} in thick.",
    "A price for a worktop of {l} in x {w} in that is {t} in thick?",
    "We need a worktop {l} in x {w} in plus a splashback. It is {t} in thick.",
)


@st.composite
def inches_before_words(draw: st.DrawFn) -> Several:
    """Inches whose "in" a word follows that no distance is counted in from."""
    long, deep, thick = draw(st.integers(60, 110)), draw(st.integers(20, 30)), 2
    text = draw(st.sampled_from(_AFTER_INCHES)).format(l=long, w=deep, t=thick)
    return Several(
        text, {f"{SLAB}/outline/length": long * 25.4, f"{SLAB}/outline/width": deep * 25.4}
    )


_METRIC = {
    "m": lambda mm: f"{mm / 1000:g} m",
    "cm": lambda mm: f"{mm / 10:g} cm",
    "mm": lambda mm: f"{mm} mm",
}


@st.composite
def mixed_units(draw: st.DrawFn) -> Several:
    """A slab and its holes in metres, centimetres and millimetres, in any mixture."""
    slab = draw(a_slab())
    said = [_METRIC[draw(st.sampled_from(sorted(_METRIC)))](mm) for mm in slab]
    bore = _METRIC[draw(st.sampled_from(("cm", "mm")))](draw(st.sampled_from((35, 38))))
    text = f"Please quote for a worktop {said[0]} x {said[1]}, {said[2]} thick, with a sink and a"
    return Several(f"{text} tap hole of {bore}.", lengths_of(slab))
