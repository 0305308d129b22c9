"""Slabs described by clauses: an L by its legs, a size that is struck, runs under headings."""

from __future__ import annotations

from typing import Final

from hypothesis import strategies as st

from support.strategies.enquiry_changes import Several

_BACKS: Final = (
    "The long part runs along the back wall, {length} including the corner",
    "The longer leg is {length} along the back wall",
    "The main run is {length} long",
    "It is {length} along the back wall",
)
_SIDES: Final = (
    ", and the short part comes back towards me on the {side}, {width} from the back corner.",
    ". The return on the {side} is {width}, measured from the back wall.",
    " and {width} down the {side}-hand side.",
    ", then it turns and comes forward on the {side}, {width} from the back wall.",
)
_DEPTHS: Final = (
    " Both are {depth} deep.",
    " Both legs {depth} deep.",
    " It is {depth} deep throughout.",
    " Both parts are {depth} deep.",
)
_TWO_DEPTHS: Final = (
    " The long part is {depth} deep, the short part {other}.",
    " The long run is {depth} deep and the return {other}.",
)
_GERMAN: Final = (
    (
        "Wir brauchen eine L-förmige Arbeitsplatte, {thick} mm stark. Der lange Schenkel läuft an"
        " der Rückwand und misst außen {length} mm, der kurze misst außen {width} mm und liegt"
        " {seite}. Beide sind {depth} mm tief."
    ),
    (
        "Wir hätten gern eine Arbeitsplatte über Eck, {thick} mm stark. Der längere Schenkel an der"
        " Rückwand ist {length} mm lang, der kürzere {seite} {width} mm, beide {depth} mm tief."
    ),
)


@st.composite
def legs_told(draw: st.DrawFn) -> Several:
    """An L whose legs are told one by one as one stands before it."""
    length, width = draw(st.integers(200, 320)) * 10, draw(st.integers(130, 195)) * 10
    depth, other = draw(st.integers(55, 70)) * 10, draw(st.integers(55, 70)) * 10
    thick, side = draw(st.sampled_from([30, 40, 50])), draw(st.sampled_from(["left", "right"]))
    if draw(st.booleans()):
        seite = {"left": "links", "right": "rechts"}[side]
        text, other = draw(st.sampled_from(_GERMAN)), depth
        text = text.format(length=length, width=width, depth=depth, thick=thick, seite=seite)
    else:
        tail = draw(st.sampled_from(_DEPTHS + _TWO_DEPTHS))
        other = other if tail in _TWO_DEPTHS else depth
        said = draw(st.sampled_from(_BACKS)) + draw(st.sampled_from(_SIDES)) + tail
        said = said.format(length=length, width=width, depth=depth, other=other, side=side)
        text = f"Could you quote for an L-shaped top? {said} {thick} mm thick, no holes."
    lengths = {
        "/slabs/0/outline/length": length,
        "/slabs/0/outline/width": width,
        "/slabs/0/outline/notch/length": length - other,
        "/slabs/0/outline/notch/width": width - depth,
        "/slabs/0/thickness": thick,
    }
    corner = {"left": "front-right", "right": "front-left"}[side]
    return Several(text, {at: float(mm) for at, mm in lengths.items()}, {"corner": corner})


_STRUCK: Final = (
    "Scratch the {old} mm depth, it's {new} mm. Length stays {length} mm, thickness {thick} mm.",
    "Forget the {old} mm depth, it is {new} mm now. Length {length} mm, thickness {thick} mm.",
)


@st.composite
def struck(draw: st.DrawFn) -> Several:
    """A size that is taken back, and the one that stands for it."""
    new = draw(st.integers(50, 70)) * 10
    old = draw(st.sampled_from([new - 30, new + 40]))
    length, thick = draw(st.integers(90, 300)) * 10, draw(st.sampled_from([30, 40, 50]))
    tail = draw(st.sampled_from(_STRUCK)).format(old=old, new=new, length=length, thick=thick)
    lengths = {"outline/length": length, "outline/width": new, "thickness": thick}
    text = f"I wrote about a vanity top, could you quote for it? {tail}"
    return Several(text, {f"/slabs/0/{at}": float(mm) for at, mm in lengths.items()})


@st.composite
def headed_runs(draw: st.DrawFn) -> Several:
    """Slabs that lines of their own call by a letter or a number, their sizes in a list below."""
    name = draw(st.sampled_from(["Run", "Piece", "Slab", "Part", "Section"]))
    letters = draw(st.sampled_from(["ABC", "123"]))
    about = draw(st.sampled_from(["", " (under the window)", " (left of the cooker)"]))
    deep, thick = draw(st.integers(55, 66)) * 10, draw(st.sampled_from([30, 40]))
    lines, lengths = ["These are the pieces for our kitchen, in mm. Please quote."], {}
    for i, letter in enumerate(letters):
        length = draw(st.integers(90, 260)) * 10
        lines += ["", f"{name} {letter}{about}", f"- {length} long, {deep} deep, {thick} thick"]
        for at, mm in (("outline/length", length), ("outline/width", deep), ("thickness", thick)):
            lengths[f"/slabs/{i}/{at}"] = float(mm)
    return Several("\n".join(lines), lengths)


_ONE_HOLE: Final = (
    (
        "No sink or anything, just one hole for the beer pump, {dia} mm across, {x} mm from the"
        " left end and {y} mm from the front."
    ),
    "We don't need a sink, only a {dia} mm hole, {x} mm from the left and {y} mm from the front.",
)


@st.composite
def denied_but_one(draw: st.DrawFn) -> Several:
    """A slab of which an opening is denied, and another asked for in the same breath."""
    length, width = draw(st.integers(150, 260)) * 10, draw(st.integers(50, 70)) * 10
    dia, x, y = 60, draw(st.integers(20, 120)) * 10, draw(st.integers(15, 35)) * 10
    text = f"Please price a bar top {length} x {width} x 40 mm. " + draw(st.sampled_from(_ONE_HOLE))
    lengths = {"outline/length": length, "outline/width": width, "thickness": 40}
    lengths |= {"cutouts/0/diameter": dia, "cutouts/0/centre/x": x, "cutouts/0/centre/y": y}
    return Several(
        text.format(dia=dia, x=x, y=y), {f"/slabs/0/{at}": float(mm) for at, mm in lengths.items()}
    )


@st.composite
def two_systems(draw: st.DrawFn) -> Several:
    """A thickness in inches, and in a bracket in millimetres, that agrees or does not."""
    inches = draw(st.sampled_from([1.25, 1.5, 2.0]))
    agrees = draw(st.booleans())
    mm = round(inches * 25.4) + (0 if agrees else draw(st.sampled_from([-11, 9])))
    text = (
        f'I\'d like to order a bar top, 80" long x 16" deep. Thickness {inches:g} inches ({mm} mm).'
    )
    lengths = {"/slabs/0/outline/length": 2032.0, "/slabs/0/outline/width": 406.4}
    return Several(
        text, lengths | ({"/slabs/0/thickness": 25.4 * inches} if agrees else {}), {"mm": str(mm)}
    )


_THINGS: Final = ("frame", "base", "pedestal", "trestle")


@st.composite
def other_things(draw: st.DrawFn) -> Several:
    """A slab, and beside it the sizes of what it stands on or what will carry it home."""
    length, width = draw(st.integers(120, 260)) * 10, draw(st.integers(70, 110)) * 10
    thing = draw(st.sampled_from(_THINGS))
    before = f"We only lack the table top now, the {thing} is ready."
    own = f"It is galvanised, {length - 300} mm long and {width - 200} mm wide."
    asks = f"The top should be {length} x {width} mm and 50 mm thick."
    way = f"We will fetch it with our trailer (loading bed {length + 400} x {width + 200} mm)."
    text = " ".join(["Could you quote?", before, own, asks, *draw(st.sampled_from([[], [way]]))])
    lengths = {"outline/length": length, "outline/width": width, "thickness": 50}
    return Several(text, {f"/slabs/0/{at}": float(mm) for at, mm in lengths.items()})


@st.composite
def cut_up(draw: st.DrawFn) -> Several:
    """An older message's slab that newer words cut into two that add up to it."""
    left, right = draw(st.integers(90, 150)) * 10, draw(st.integers(160, 190)) * 10
    newer = (
        "Forget the single top from Monday, it'll never go round the stairs. We'd like it in two"
        f" pieces instead.\n\nLeft-hand piece: {left} x 620\nRight-hand piece: {right} x 620\n\n"
        "Both still 40 thick.\n\nYusuf\n\n"
    )
    older = (
        "On Mon, 15 Feb 2027 at 20:44, Yusuf <yusuf@example.com> wrote:\n\n"
        f"> Hello, could you quote for a kitchen worktop {left + right} x 620 x 40, pale grey?\n"
    )
    lengths = {}
    for i, length in enumerate((left, right)):
        for at, mm in (("outline/length", length), ("outline/width", 620), ("thickness", 40)):
            lengths[f"/slabs/{i}/{at}"] = float(mm)
    return Several(newer + older, lengths)


_NOW: Final = (
    "We have since had the boiler moved, so now it's {new} mm long.",
    "The wall has been taken out, and now it is {new} mm long.",
)


@st.composite
def now_so(draw: st.DrawFn) -> Several:
    """A size of an earlier quote, and what it is now."""
    old, width = draw(st.integers(150, 260)) * 10, draw(st.integers(55, 65)) * 10
    new = old + draw(st.sampled_from([-150, 120, 200]))
    text = f"Last month you quoted {old} x {width} x 40 mm for our utility top."
    text = f"{text} {draw(st.sampled_from(_NOW)).format(new=new)} What is the new price?"
    lengths = {"outline/length": new, "outline/width": width, "thickness": 40}
    return Several(text, {f"/slabs/0/{at}": float(mm) for at, mm in lengths.items()})


@st.composite
def aside_in_brackets(draw: st.DrawFn) -> Several:
    """A bracket about another thing in the middle of a slab's sizes."""
    length, width = draw(st.integers(110, 180)) * 10, draw(st.integers(40, 70)) * 10
    gap, thick = draw(st.sampled_from([20, 50, 80])), draw(st.sampled_from([30, 40]))
    text = (
        "Could you price a shelf? The shelf needs to be"
        f" {length} mm wide (there's a {gap} mm gap), {width} mm deep and {thick} mm thick."
    )
    lengths = {"outline/length": length, "outline/width": width, "thickness": thick}
    return Several(text, {f"/slabs/0/{at}": float(mm) for at, mm in lengths.items()})
