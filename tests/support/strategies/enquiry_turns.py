"""Families that turn from slab to slab, add widths up, name groups, and ask for nothing."""

from __future__ import annotations

from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import Several
from support.strategies.enquiry_wordings import SLAB, a_slab, lengths_of, sizes_of

SAID: Final[dict[str, Any]] = phrases("enquiry_turns")


def _of(at: int, slab: tuple[float, float, float]) -> dict[str, float]:
    """Return the sizes of one of several slabs by their pointers."""
    return sizes_of(*slab, at=f"/slabs/{at}")


@st.composite
def turns(draw: st.DrawFn) -> Several:
    """Two slabs in a list, and one sentence that tells of an opening in each."""
    one = draw(st.integers(220, 300)) * 10, 620, draw(st.sampled_from((30, 40)))
    two = draw(st.integers(140, 200)) * 10, 620, one[2]
    a, b = draw(st.integers(50, 120)) * 10, draw(st.integers(50, 80)) * 10
    heads = draw(st.sampled_from((("1) ", "2) "), ("- ", "- "), ("a. ", "b. "))))
    lines = [
        f"{head}{' x '.join(map(str, slab))}" for head, slab in zip(heads, (one, two), strict=True)
    ]
    text = "Please price two worktops:\n" + "\n".join(lines) + "\n\n"
    lengths = _of(0, one) | _of(1, two)
    for i, (x, y, hole) in enumerate(((a, 300, (560, 490)), (b, 310, (480, 400)))):
        own = f"/slabs/{i}/cutouts/0"
        lengths |= {f"{own}/length": float(hole[0]), f"{own}/width": float(hole[1])}
        lengths |= {f"{own}/centre/x": float(x), f"{own}/centre/y": float(y)}
    return Several(text + draw(st.sampled_from(SAID["turns"])).format(a=a, b=b), lengths)


@st.composite
def sums(draw: st.DrawFn) -> Several:
    """A slab over cupboards whose widths are added up: it is as long as all of them."""
    parts = [draw(st.sampled_from((300, 400, 450, 500, 600, 800, 900))) for _ in range(3)]
    width, thick = draw(st.integers(60, 66)) * 10, draw(st.sampled_from((30, 40, 50)))
    text = draw(st.sampled_from(SAID["sums"])).format(
        a=parts[0], b=parts[1], c=parts[2], l=sum(parts), w=width, t=thick
    )
    return Several(text, lengths_of((sum(parts), width, thick)))


@st.composite
def rows_of_lengths(draw: st.DrawFn) -> Several:
    """Three slabs of one section, their lengths in a row."""
    lengths = draw(st.lists(st.integers(90, 170), min_size=3, max_size=3, unique=True))
    width, thick = draw(st.integers(18, 40)) * 10, draw(st.sampled_from((20, 30)))
    a, b, c = (10 * one for one in lengths)
    text = draw(st.sampled_from(SAID["rows_of_lengths"])).format(a=a, b=b, c=c, w=width, t=thick)
    sizes: dict[str, float] = {}
    for i, long in enumerate((a, b, c)):
        sizes |= _of(i, (long, width, thick))
    return Several(text, sizes)


@st.composite
def named_groups(draw: st.DrawFn) -> Several:
    """A group whose sizes are named after it in their order, or before leaders of dots."""
    slab = draw(a_slab())
    text = draw(st.sampled_from(SAID["named_groups"])).format(l=slab[0], w=slab[1], t=slab[2])
    return Several(text, lengths_of(slab))


@st.composite
def lettered_places(draw: st.DrawFn) -> Several:
    """A sink whose place is told by letters: from L, from F, from the LHE."""
    slab = draw(a_slab())
    x, y = draw(st.integers(50, 120)) * 10, draw(st.integers(29, 32)) * 10
    text = draw(st.sampled_from(SAID["lettered_places"])).format(
        l=slab[0], w=slab[1], t=slab[2], x=x, y=y
    )
    return Several(text, lengths_of(slab, length=480, width=400, centre_x=x, centre_y=y))


@st.composite
def squares(draw: st.DrawFn) -> Several:
    """A round slab and a square hole in another one: the hole is not round."""
    slab = draw(a_slab())
    text = draw(st.sampled_from(SAID["squares"])).format(l=slab[0], w=slab[1], t=slab[2])
    lengths = _of(1, slab) | {"/slabs/0/outline/diameter": 800.0, "/slabs/0/thickness": 30.0}
    own = "/slabs/1/cutouts/0"
    return Several(text, lengths | {f"{own}/length": 400.0, f"{own}/width": 400.0})


@st.composite
def no_enquiries(draw: st.DrawFn) -> str:
    """Offers, applications and magazines, with sizes in them."""
    month = draw(st.sampled_from(("April", "Mai", "Oktober")))
    return str(draw(st.sampled_from(SAID["no_enquiries"]))).format(m=month)


@st.composite
def no_fitting(draw: st.DrawFn) -> Several:
    """A slab that others fit, or of which only the basin is built in."""
    slab = draw(a_slab())
    text = f"Please quote for a worktop {slab[0]} x {slab[1]} x {slab[2]} mm. "
    return Several(text + draw(st.sampled_from(SAID["no_fitting"])), lengths_of(slab))


@st.composite
def fitting(draw: st.DrawFn) -> Several:
    """A slab that the workshop is to fit, though not before a month, or that it should fit."""
    slab, month = draw(a_slab()), draw(st.sampled_from(("May", "Mai", "April")))
    text = f"Please quote for a worktop {slab[0]} x {slab[1]} x {slab[2]} mm. "
    return Several(text + draw(st.sampled_from(SAID["fitting"])).format(m=month), lengths_of(slab))


@st.composite
def terse(draw: st.DrawFn) -> str:
    """What is wanted and one size of it, and not a word of asking."""
    size = draw(st.sampled_from(SAID["terse_sizes"]))
    size = size.format(l=draw(st.integers(1, 4)), w=draw(st.integers(90, 180)) * 10)
    thing = draw(st.sampled_from(SAID["terse_things"]))
    return str(draw(st.sampled_from(SAID["terse"]))).format(thing=thing, n=size)


@st.composite
def standing(draw: st.DrawFn) -> str:
    """A slab that stands where it belongs, with one size, and nothing asked."""
    thing = draw(st.sampled_from(("bench", "worktop", "hearth", "table")))
    text = str(draw(st.sampled_from(SAID["standing"])))
    return text.format(thing=thing, l=f"{draw(st.integers(11, 29)) / 10}")


@st.composite
def walls(draw: st.DrawFn) -> Several:
    """A slab that is to fit a wall of another length than it was told with."""
    slab = draw(a_slab())
    wall = slab[0] + draw(st.sampled_from((-90, -60, 60, 90)))
    text = f"Please quote for a worktop {slab[0]} mm long, {slab[1]} mm deep, {slab[2]} mm thick. "
    lengths = lengths_of(slab)
    del lengths[f"{SLAB}/outline/length"]
    return Several(text + draw(st.sampled_from(SAID["walls"])).format(n=wall), lengths)


@st.composite
def in_inches(draw: st.DrawFn) -> str:
    """A slab told in inches alone, its thickness and the sizes of its holes left open."""
    long, deep = draw(st.integers(70, 110)), draw(st.integers(24, 28))
    return str(draw(st.sampled_from(SAID["in_inches"]))).format(l=long, w=deep)


@st.composite
def signed(draw: st.DrawFn) -> tuple[str, str]:
    """A body alone whose last line is a name and who that is, and the name."""
    slab, name = draw(a_slab()), draw(st.sampled_from(SAID["names"]))
    greeting = draw(st.sampled_from(("Hello, ", "Moin, ", "Morning, ", "")))
    text = f"{greeting}please quote for a worktop {slab[0]} x {slab[1]} x {slab[2]} mm.\n"
    last = draw(st.sampled_from(SAID["signed"]))
    return text + last.format(name=name, who=draw(st.sampled_from(SAID["who"]))), name


@st.composite
def numbered(draw: st.DrawFn) -> Several:
    """Slabs called by their number or their side, each opening in the one that it names."""
    a, b = draw(st.integers(240, 300)) * 10, draw(st.integers(160, 220)) * 10
    thick, x, y = draw(st.sampled_from((30, 40))), draw(st.integers(60, 160)) * 10, 600
    said = draw(st.sampled_from([*SAID["numbered"], *SAID["german_sides"], *SAID["lettered"]]))
    lengths = _of(0, (a, 640, thick)) | _of(1, (b, 640, thick))
    if said in SAID["numbered"]:
        lengths |= _of(2, (a, 450, 20))
    for i, (along, hole, back) in enumerate(((x, (750, 490), 300), (y, (500, 400), 260))):
        own = f"/slabs/{i}/cutouts/0"
        lengths |= {f"{own}/length": float(hole[0]), f"{own}/width": float(hole[1])}
        lengths |= {f"{own}/centre/x": float(along), f"{own}/centre/y": float(back)}
    return Several(said.format(a=a, b=b, t=thick, x=x, y=y), lengths)


@st.composite
def radii(draw: st.DrawFn) -> Several:
    """A round slab told by its radius, or by how far it is across."""
    radius, thick = draw(st.integers(30, 70)) * 10, draw(st.sampled_from((30, 40)))
    text = draw(st.sampled_from(SAID["radii"])).format(r=radius, d=2 * radius, t=thick)
    return Several(text, {f"{SLAB}/outline/diameter": 2.0 * radius, f"{SLAB}/thickness": thick})


@st.composite
def changes(draw: st.DrawFn) -> Several:
    """An offer that is to be made again, with one size told from what to what, one to what."""
    slab = draw(a_slab())
    old = slab[0] - draw(st.sampled_from((50, 100, 150)))
    text = draw(st.sampled_from(SAID["changes"])).format(old=old, l=slab[0], t=slab[2])
    offer = f"\n\n> Worktop {old} x {slab[1]} x 60, charcoal. £1,240.\n> Tarnside Casting\n"
    return Several(text + offer, lengths_of(slab))


@st.composite
def by_length(draw: st.DrawFn) -> Several:
    """Two slabs, of which one is called by its length."""
    a, b = draw(st.integers(230, 300)) * 10, draw(st.integers(150, 200)) * 10
    at = draw(st.sampled_from((0, 1)))
    text = f"Two worktops please, one {a} x 620 x 40 and one {b} x 620 x 40. "
    text += draw(st.sampled_from(SAID["by_length"])).format(x=(a, b)[at])
    own = f"/slabs/{at}/cutouts/0"
    lengths = _of(0, (a, 620, 40)) | _of(1, (b, 620, 40))
    lengths |= {f"{own}/length": 500.0, f"{own}/width": 400.0}
    return Several(text, lengths | {f"{own}/centre/x": 600.0, f"{own}/centre/y": 300.0})


@st.composite
def counted(draw: st.DrawFn) -> Several:
    """So many slabs of one size and so many of another, in one sentence."""
    a, b = draw(st.integers(70, 90)) * 10, draw(st.integers(110, 160)) * 10
    m, n = draw(st.integers(2, 8)), draw(st.integers(2, 8))
    text = draw(st.sampled_from(SAID["counted"])).format(a=a, b=b, m=m, n=n)
    counts = {"counts": f"{m},{n}"}
    return Several(text, _of(0, (a, 400, 50)) | _of(1, (b, 400, 50)), counts)


@st.composite
def behind_by(draw: st.DrawFn) -> Several:
    """A tap so far behind the middle of a basin."""
    slab = draw(a_slab())
    by = draw(st.integers(20, 24)) * 10
    text = (
        f"Worktop {slab[0]} x {slab[1]} x {slab[2]}, basin cut-out 400 x 300, centre 700 from left"
    )
    text += " and 240 from front. " + draw(st.sampled_from(SAID["behind_by"])).format(d=by)
    lengths = lengths_of(slab, length=400.0, width=300.0, centre_x=700.0, centre_y=240.0)
    tap = {"diameter": 35.0, "centre/x": 700.0, "centre/y": 240.0 + by}
    return Several(text, lengths | {f"{SLAB}/cutouts/1/{key}": mm for key, mm in tap.items()})
