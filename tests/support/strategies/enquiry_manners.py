"""Families of how people write: forms, lines, corrections, asides, doubts, legs, halves."""

from __future__ import annotations

from typing import Any, Final

from hypothesis import strategies as st

from support.phrases import phrases
from support.strategies.enquiry_changes import LENGTH, THICKNESS, WIDTH, Several

SAID: Final[dict[str, Any]] = phrases("enquiry_manners")
_NOUNS: Final = ("window sills", "shelves", "worktops")
WorktopSizes = tuple[int, int, int]


@st.composite
def slab(draw: st.DrawFn) -> WorktopSizes:
    """Length, width and thickness of a worktop, mm."""
    length, width = draw(st.integers(120, 280)) * 10, draw(st.integers(45, 70)) * 10
    return length, width, draw(st.sampled_from((30, 40, 50, 60)))


def of(sizes: WorktopSizes, at: int = 0) -> dict[str, float]:
    """Return a slab's sizes by their pointers."""
    keys = ("outline/length", "outline/width", "thickness")
    return {f"/slabs/{at}/{key}": float(mm) for key, mm in zip(keys, sizes, strict=True)}


def said(draw: st.DrawFn, name: str) -> str:
    """Return one of a family's sentences."""
    return str(draw(st.sampled_from(SAID[name])))


@st.composite
def counted_labels(draw: st.DrawFn) -> Several:
    """A form whose lines begin with a name, a mark and how many there are."""
    a, b = draw(st.integers(35, 50)) * 10, draw(st.integers(110, 125)) * 10
    d, y = draw(st.integers(30, 40)) * 10, draw(st.integers(23, 28)) * 10
    m = said(draw, "marks")
    form = f"Item{m}double basin top\nSize{m}1600 x 520\nThickness{m}50\n"
    text = form + said(draw, "counted_labels").format(m=m, a=a, b=b, d=d, y=y) + "\nPrice please"
    lengths = of((1600, 520, 50))
    for i, x in enumerate((a, b)):
        at = f"/slabs/0/cutouts/{i}"
        lengths |= {f"{at}/diameter": float(d), f"{at}/centre/x": float(x)}
        lengths[f"{at}/centre/y"] = float(y)
    return Several(text, lengths)


@st.composite
def lines_of_lengths(draw: st.DrawFn) -> Several:
    """Slabs of one section, each on a line with how many are wanted and how long."""
    a, b = (
        10 * one
        for one in draw(st.lists(st.integers(60, 250), min_size=2, max_size=2, unique=True))
    )
    i, j = draw(st.integers(1, 6)), draw(st.integers(1, 6))
    width, thick = draw(st.integers(19, 40)) * 10, draw(st.sampled_from((30, 40)))
    text = said(draw, "lines_of_lengths").format(
        nouns=draw(st.sampled_from(_NOUNS)), w=width, t=thick, a=a, b=b, i=i, j=j
    )
    return Several(text, of((a, width, thick)) | of((b, width, thick), 1), {"counts": f"{i},{j}"})


@st.composite
def counted_rows(draw: st.DrawFn) -> Several:
    """Rows without a head that begin with how many are wanted."""
    form = said(draw, "counted_rows")
    rows, lengths, counts = [], dict[str, float](), list[int]()
    longs = draw(st.lists(st.integers(90, 200), min_size=2, max_size=4, unique=True))
    for at, long in enumerate(longs):
        one = long * 10, draw(st.integers(50, 85)) * 10, 40
        counts.append(draw(st.integers(1, 6)))
        rows.append(form.format(i=counts[-1], a=one[0], w=one[1], t=one[2]))
        lengths |= of(one, at)
    text = "Please quote for hearths:\n\n" + "\n".join(rows) + "\n"
    return Several(text, lengths, {"counts": ",".join(map(str, counts))})


@st.composite
def appliances(draw: st.DrawFn) -> Several:
    """A slab line by line, and a line about what stands on it or beside it."""
    sizes = draw(slab())
    lines = [f"Length: {sizes[0]} mm", f"Depth: {sizes[1]} mm", f"Thickness: {sizes[2]} mm"]
    line = said(draw, "appliances")
    form = "\n".join(["Hearth please, what would it cost?", "", *lines, line])
    whole = "Please quote: worktop {} x {} x {} mm.\n".format(*sizes) + line
    return Several(draw(st.sampled_from((form, whole))), of(sizes))


@st.composite
def should_have_been(draw: st.DrawFn) -> Several:
    """A size that is called by its number and put right."""
    length, width, thick = draw(slab())
    new = length - draw(st.sampled_from((20, 30, 70)))
    change = said(draw, "should_have_been").format(old=length, new=new)
    text = f"Please quote for a worktop {length} x {width} x {thick}.\n\n{change}"
    return Several(text, of((new, width, thick)))


@st.composite
def said_again(draw: st.DrawFn) -> Several:
    """The workshop says again what was told it, one size otherwise, and the answer leans on it."""
    length, width, thick = draw(slab())
    again = said(draw, "said_again").format(l=length, w=width, t=thick)
    first = f"Could you do me a worktop, {length} by {width - 50}, {thick} thick? Warm grey."
    text = (
        "From: Nat Osei <nat@example.com>\nTo: Orders <orders@workshop.example>\n"
        "Subject: Re: Re: worktop\nDate: Thu, 04 Mar 2027 08:15:00 +0000\n"
        "Content-Type: text/plain; charset=utf-8\n\n"
        f"{said(draw, 'leaning')}\n\nNat\n\n"
        "On 3 Mar 2027, at 17:40, Orders <orders@workshop.example> wrote:\n"
        f"> Hello Nat,\n>\n> {again}\n> Shall I write it up?\n>\n"
        ">> On 1 Mar 2027, at 09:12, Nat Osei <nat@example.com> wrote:\n"
        f">> {first}\n"
    )
    return Several(text, of((length, width, thick)))


@st.composite
def wishes(draw: st.DrawFn) -> Several:
    """A slab is asked for, with its sizes, beside words of other mail."""
    length, width, thick = sizes = draw(slab())
    text = said(draw, "wishes").format(l=length, w=width, t=thick, other=said(draw, "others"))
    return Several(text, of(sizes))


@st.composite
def no_wishes(draw: st.DrawFn) -> str:
    """Thanks, an invoice, a complaint, whatever sizes they have."""
    length, width, thick = draw(slab())
    return said(draw, "no_wishes").format(l=length, w=width, t=thick)


@st.composite
def metres(draw: st.DrawFn) -> Several:
    """Two sizes in metres, whole ones too, and a thickness in millimetres joined by "and"."""
    length, width = draw(st.integers(15, 30)) * 100, draw(st.sampled_from((600, 800, 1000, 1200)))
    thick = draw(st.sampled_from((30, 40, 60)))
    text = said(draw, "metres").format(l=f"{length / 1000:.2f}", w=f"{width / 1000:.2f}", t=thick)
    return Several(text, of((length, width, thick)))


@st.composite
def middles(draw: st.DrawFn) -> Several:
    """A hole half of the length from either end is one hole, less than that two."""
    length, width, thick = draw(slab())
    length -= length % 20
    is_one, y = draw(st.booleans()), draw(st.integers(20, 30)) * 10
    x = length // 2 if is_one else draw(st.integers(15, 40)) * 10
    hole = said(draw, "middles").format(x=x, y=y)
    lengths = of((length, width, thick))
    for i, place in enumerate((x,) if is_one else (x, length - x)):
        at = f"/slabs/0/cutouts/{i}"
        lengths |= {f"{at}/diameter": 45.0, f"{at}/centre/x": place, f"{at}/centre/y": float(y)}
    return Several(f"Please quote for a worktop {length} x {width} x {thick}. {hole}", lengths)


@st.composite
def themselves(draw: st.DrawFn) -> Several:
    """How large a hob is itself, its cut-out unsaid."""
    sizes = draw(slab())
    a, b = draw(st.integers(56, 80)) * 10, draw(st.integers(49, 53)) * 10
    hob = said(draw, "themselves").format(a=a, b=b)
    return Several("Please quote for a worktop {} x {} x {}. ".format(*sizes) + hob, of(sizes))


@st.composite
def slips(draw: st.DrawFn) -> Several:
    """A pair of which one size is in centimetres that only millimetres can be."""
    length, width = draw(st.integers(18, 30)) / 10, draw(st.integers(45, 80)) * 10
    text = said(draw, "slips").format(l=f"{length:g}m", w=width, t=50)
    return Several(text, {LENGTH: length * 1000, THICKNESS: 50.0}, {"width": str(width)})


@st.composite
def turned(draw: st.DrawFn) -> Several:
    """An L that is told as a way along two walls."""
    a, b = draw(st.integers(200, 300)) * 10, draw(st.integers(130, 190)) * 10
    d, t = draw(st.integers(58, 65)) * 10, draw(st.sampled_from((30, 40, 50)))
    side = draw(st.sampled_from(("left", "right")))
    text = said(draw, "turned").format(a=a, b=b, d=d, t=t, side=side)
    return Several(text, _l_of(a, b, d, t), {"corner": {"right": "left", "left": "right"}[side]})


@st.composite
def one_and_other(draw: st.DrawFn) -> Several:
    """An L of which nobody says which way it turns."""
    a, b = draw(st.integers(200, 300)) * 10, draw(st.integers(130, 190)) * 10
    d, t = draw(st.integers(58, 65)) * 10, draw(st.sampled_from((30, 40, 50)))
    text = said(draw, "one_and_other").format(a=a, b=b, d=d, t=t)
    return Several(text, _l_of(a, b, d, t))


def _l_of(a: int, b: int, d: int, t: int) -> dict[str, float]:
    notch = {"length": float(a - d), "width": float(b - d)}
    return of((a, b, t)) | {f"/slabs/0/outline/notch/{key}": mm for key, mm in notch.items()}


@st.composite
def of_another_stuff(draw: st.DrawFn) -> Several:
    """What is there, told by what it is made of, and the slab that replaces it."""
    length, width, thick = sizes = draw(slab())
    text = said(draw, "of_another_stuff").format(
        what=said(draw, "stuffs"), l=length, w=width, t=thick
    )
    return Several(text, of(sizes))


@st.composite
def at_odds(draw: st.DrawFn) -> Several:
    """Two people who want two widths."""
    length, width = draw(st.integers(20, 26)) * 100, draw(st.integers(85, 105)) * 10
    other = width - 50
    change = said(draw, "at_odds").format(o=other // 10, n=width // 10)
    text = f"Please quote for a table top {length} x {width} x 40 mm. {change}"
    return Several(text, {LENGTH: float(length), THICKNESS: 40.0})


@st.composite
def perhaps(draw: st.DrawFn) -> Several:
    """Two thicknesses, of which either may be."""
    length, width, _ = draw(slab())
    s, t = draw(st.sampled_from(((30, 40), (40, 50), (40, 60))))
    wanted = f"Please quote for a worktop {length} x {width} mm."
    text = f"{wanted} {said(draw, 'perhaps').format(s=s, t=t)}"
    return Several(text, {LENGTH: float(length), WIDTH: float(width)})


@st.composite
def halves(draw: st.DrawFn) -> Several:
    """One slab, that is to be two pieces only if it must be."""
    sizes = draw(slab())
    text = "Please quote for a worktop {} x {} x {} mm. ".format(*sizes) + said(draw, "halves")
    return Several(text, of(sizes))


@st.composite
def rows_of_taps(draw: st.DrawFn) -> Several:
    """Three holes of which only the middle one is in the middle."""
    length, width, thick = draw(slab())
    d, o, y = draw(st.integers(30, 40)), draw(st.sampled_from((90, 100, 120))), 70
    holes = said(draw, "rows_of_taps").format(d=d, o=o, y=y)
    lengths = of((length, width, thick))
    for i, x in enumerate((length / 2 - o, length / 2, length / 2 + o)):
        at = f"/slabs/0/cutouts/{i}"
        lengths |= {f"{at}/diameter": float(d), f"{at}/centre/x": x}
        lengths[f"{at}/centre/y"] = float(width - y)
    text = f"Please quote for a vanity top {length} x {width} x {thick} mm. {holes}"
    return Several(text, lengths)


@st.composite
def cut_unevenly(draw: st.DrawFn) -> Several:
    """A front corner cut off by one size along the front and another up the side."""
    length, width, thick = draw(slab())
    a, b = draw(st.integers(20, 40)) * 10, draw(st.integers(15, 35)) * 10
    side = draw(st.sampled_from(("left", "right")))
    cut = said(draw, "cut_unevenly").format(corner=f"front {side}", side=side, a=a, b=b)
    text = f"Hearth enquiry, price please. {length} wide x {width} deep x {thick} thick. {cut}"
    is_left = side == "left"
    new = ((a, 0), (0, b)) if is_left else ((length - a, 0), (length, b))
    kept = [(length, 0) if is_left else (0, 0), (length, width), (0, width)]
    points = ";".join(sorted(f"{x:g},{y:g}" for x, y in (*kept, *new)))
    return Several(text, of((length, width, thick)), {"points": points})


@st.composite
def beside_it(draw: st.DrawFn) -> Several:
    """A sink that stands beside the slab."""
    sizes = draw(slab())
    text = "Please quote for a worktop {} x {} x {} mm. ".format(*sizes) + said(draw, "beside_it")
    return Several(text, of(sizes))


@st.composite
def counted_pieces(draw: st.DrawFn) -> Several:
    """Two lengths in one sentence, each with its own number of pieces."""
    a, b = draw(st.integers(100, 180)), draw(st.integers(60, 95))
    i, j, width = draw(st.integers(1, 6)), draw(st.integers(1, 6)), draw(st.integers(20, 35))
    text = said(draw, "counted_pieces").format(i=i, j=j, a=a, b=b, w=width)
    lengths = of((10 * a, 10 * width, 30)) | of((10 * b, 10 * width, 30), 1)
    return Several(text, lengths, {"counts": f"{i},{j}"})
