"""Families of lists: how many of each length, sums beside a size, thousands set apart by blanks."""

from __future__ import annotations

from hypothesis import strategies as st

from support.strategies.enquiry_changes import Several

_NOUNS = {"upstands": "upstand", "sills": "sill", "shelves": "shelf", "splashbacks": "splashback"}
_ORDERS = (
    "How much for {nouns}, {t} thick and {w} {high}: {each}?",
    "Price please. {Nouns} {t}mm thick, {w} {high}: {each}.",
    "Please quote for {nouns} {w} {high}, {t} thick, {each}. Grey.",
)


@st.composite
def counted_lengths(draw: st.DrawFn) -> Several:
    """Slabs of one section in several lengths, each with how many of it are wanted."""
    nouns = draw(st.sampled_from(sorted(_NOUNS)))
    high = "high" if nouns in ("upstands", "splashbacks") else "deep"
    wide, thick = draw(st.integers(16, 40)) * 10, draw(st.sampled_from((20, 30)))
    mark = draw(st.sampled_from(("@", "off")))
    lengths = draw(st.lists(st.integers(60, 260), min_size=2, max_size=4, unique=True))
    counts = [draw(st.integers(1, 6)) for _ in lengths]
    each = [f"{count} {mark} {long * 10}" for count, long in zip(counts, lengths, strict=True)]
    order = draw(st.sampled_from(_ORDERS))
    text = order.format(
        nouns=nouns, Nouns=nouns.capitalize(), t=thick, w=wide, high=high, each=", ".join(each)
    )
    sizes: dict[str, float] = {}
    for i, long in enumerate(lengths):
        at = f"/slabs/{i}"
        sizes |= {f"{at}/outline/length": long * 10.0, f"{at}/outline/width": float(wide)}
        sizes[f"{at}/thickness"] = float(thick)
    return Several(text, sizes, {"counts": ",".join(map(str, counts))})


@st.composite
def one_thickness(draw: st.DrawFn) -> Several:
    """Two or three pairs under one name, and one thickness at their end: it is each one's."""
    nouns = draw(st.sampled_from(sorted(_NOUNS)))
    join = draw(st.sampled_from((" & ", " and ", ", ")))
    pairs = [(draw(st.integers(90, 240)) * 10, draw(st.integers(20, 60)) * 10)]
    pairs.append((pairs[0][0] + 250, pairs[0][1] + 90))
    thick = draw(st.sampled_from((20, 30, 40)))
    said = join.join(f"{long} x {deep}" for long, deep in pairs)
    text = f"Price for {nouns} please: {said}, {thick} thk, white."
    sizes: dict[str, float] = {}
    for i, (long, deep) in enumerate(pairs):
        at = f"/slabs/{i}"
        sizes |= {f"{at}/outline/length": float(long), f"{at}/outline/width": float(deep)}
        sizes[f"{at}/thickness"] = float(thick)
    return Several(text, sizes)


_SUMS = (
    "{whole}, less {part} for the tiles, so {rest}",
    "{whole} less {part} so {rest}",
    "{whole} minus {part} makes {rest}",
    "{whole} - {part} = {rest}",
)


@st.composite
def worked_out(draw: st.DrawFn) -> Several:
    """A length told with the sum that it comes from: the result alone is the slab's."""
    rest, part = draw(st.integers(120, 280)) * 10, draw(st.integers(1, 12)) * 5
    width, thick = draw(st.integers(55, 70)) * 10, draw(st.sampled_from((30, 40, 50)))
    sum_said, whole = draw(st.sampled_from(_SUMS)), rest + part
    if draw(st.booleans()):
        sum_said, whole = "{whole} less {part} each side so {rest}", rest + 2 * part
    length = sum_said.format(whole=whole, part=part, rest=rest)
    form = draw(
        st.sampled_from(
            (
                "The worktop should be {l}, by {w} and {t} thick. Please quote.",
                "Please quote for a worktop {l} long, {w} deep and {t} thick.",
                "A price for a worktop please: length {l}, depth {w}, thickness {t}.",
            )
        )
    )
    at = "/slabs/0"
    sizes = {f"{at}/outline/length": float(rest), f"{at}/outline/width": float(width)}
    text = form.format(l=length, w=width, t=thick)
    return Several(text, sizes | {f"{at}/thickness": float(thick)})


@st.composite
def blank_thousands(draw: st.DrawFn) -> Several:
    """A blank after the thousands and no unit: one number of one slab, or so many of several."""
    head, tail = draw(st.integers(2, 3)), draw(st.integers(40, 90)) * 10
    width, thick = draw(st.integers(22, 30)) * 10, draw(st.sampled_from((30, 40)))
    group = f"{head} {tail:03d} x {width}"
    one = f"Please quote for a shelf, {group}, {thick} thick."
    single = f"{group} x {thick} shelf please, how much?"
    either = f"Please quote for shelves {group} x {thick}."
    two = f"Please quote for {group} shelves, {thick} thick."
    text = draw(st.sampled_from((one, single, either, two)))
    length = {one: head * 1000.0 + tail, single: head * 1000.0 + tail, two: float(tail)}.get(text)
    if length is None:
        return Several(text, {})
    at = "/slabs/0"
    longer, shorter = max(length, width), min(length, width)
    sizes = {f"{at}/outline/length": longer, f"{at}/outline/width": float(shorter)}
    return Several(text, sizes | {f"{at}/thickness": float(thick)})
