"""Laws of reading edges: one that is shaped, without its side, is every edge of the slab."""

from hypothesis import given, settings
from hypothesis import strategies as st

from ledgerstone.enquiry import read_enquiry
from ledgerstone.workshop import DEMONSTRATION, load_profile
from support.strategies.orders import cases

WORKSHOP = load_profile(DEMONSTRATION)
SIDES = ("front", "back", "left", "right")
ENGLISH = "Hi, I need a price for a worktop 1800 x 600 x 40 mm. {}"
GERMAN = "Bitte ein Angebot für eine Arbeitsplatte 1800 x 600 x 40 mm, {}"
PROFILES = {
    ENGLISH: {
        "rounded": "round",
        "bullnosed": "round",
        "pencil round": "round",
        "bevelled": "bevel",
        "chamfered": "bevel",
        "square": "square",
        "eased": "square",
    },
    GERMAN: {"abgerundet": "round", "gefast": "bevel", "scharfkantig": "square"},
}
SHAPED = {
    ENGLISH: (
        "Polished, grey, {} edge.",
        "Mid grey, {} edges.",
        "It should have a {} edge.",
        "With {} edges, please.",
        "Edge {}, please.",
        "The edges to be {}.",
        "Edge detail: {}.",
        "Edges: {}",
        "Could the edge be {}?",
        "I'd like the edges {}.",
        "{} edge all round.",
    ),
    GERMAN: (
        "Kanten {}.",
        "die Kanten bitte {}.",
        "Kante {}.",
        "Kante: {}",
        "mit {}er Kante.",
        "mit {}en Kanten.",
    ),
}
ELSEWHERE = (
    "A square hole 300 x 300 mm, 100 mm from the edge.",
    "One round hole 35 mm dia, 60 mm from the edge.",
    "The tap is on a square plate near the edge.",
    "There is a round column 50 mm off the edge.",
    "The wall is not square, the edge follows it.",
)


@settings(max_examples=cases(25))
@given(st.data())
def test_an_edge_without_its_side_is_every_edge(data: st.DataObject) -> None:
    """One profile all round, worked out from the words that say it."""
    language = data.draw(st.sampled_from((ENGLISH, GERMAN)))
    word, profile = data.draw(st.sampled_from([*PROFILES[language].items()]))
    text = language.format(data.draw(st.sampled_from(SHAPED[language])).format(word))
    read = read_enquiry(text, WORKSHOP)
    edges = read["order"]["slabs"][0].get("edges", {})
    assert edges == {side: {"profile": profile} for side in SIDES}, text
    told = [one for one in read["read"] if "/edges/" in one["at"]]
    assert {one["how"] for one in told} == {"worked-out"}
    assert not [one for one in read["assumed"] if one["at"].endswith("/edges")]


@settings(max_examples=cases(5))
@given(st.sampled_from(ELSEWHERE))
def test_what_stands_off_an_edge_shapes_none(said: str) -> None:
    """The shape of an opening, or of what stands by an edge, is not the edge's."""
    assert "edges" not in read_enquiry(ENGLISH.format(said), WORKSHOP)["order"]["slabs"][0]


@settings(max_examples=cases(13))
@given(
    st.sampled_from(
        (
            ("With drip groove.", ["front"]),
            ("With a drip under the front edge.", ["front"]),
            ("It needs a drip along the front and both ends.", ["front", "left", "right"]),
            ("Drip groove underneath, please.", ["front"]),
            ("Drip channel at the back and front.", ["front", "back"]),
            ("Mit Wassernase vorn.", ["front"]),
            ("No drip groove.", []),
            ("We don't need a drip groove under it.", []),
            ("Is a drip groove needed?", []),
            ("Do you do a drip groove as standard?", []),
            ("Eine Wassernase ist nicht nötig.", []),
            ("Without a drip edge, it is indoors.", []),
            ("It stands behind a drip tray.", []),
        )
    )
)
def test_a_drip_runs_under_the_edges_that_are_named(told: tuple[str, list[str]]) -> None:
    """Under the front where none is; a drip that is refused or another thing's is none."""
    said, sides = told
    read = read_enquiry(f"Price for an outdoor sill 1400 x 250 x 40 mm. {said}", WORKSHOP)
    edges = read["order"]["slabs"][0].get("edges", {})
    assert sorted(side for side, edge in edges.items() if edge.get("drip")) == sorted(sides), said


@settings(max_examples=cases(6))
@given(
    st.sampled_from(
        (
            ("Next to an espresso machine. In dark grey.", "dark grey"),
            ("We have a white fridge and black taps; the top in sand.", "sand"),
            ("The chrome tap stays. Colour graphite.", "graphite"),
            ("There is a grey floor, so charcoal for the top.", "charcoal"),
        )
    )
)
def test_the_colour_of_another_thing_is_not_the_slabs(told: tuple[str, str]) -> None:
    """A machine, a fridge, a tap and a floor have colours of their own."""
    said, shade = told
    read = read_enquiry(ENGLISH.format(said), WORKSHOP)
    (value,) = (one["value"] for one in read["read"] if one["at"].endswith("/shade/name"))
    assert value.lower() == shade


@settings(max_examples=cases(6))
@given(
    st.sampled_from(
        (
            "It can come in two pieces if it has to.",
            "It may come in two pieces.",
            "In two pieces is fine too.",
            "If need be in two pieces.",
            "It could be in two halves.",
        )
    )
)
def test_leave_to_divide_a_slab_does_not_divide_it(said: str) -> None:
    """Two pieces that are allowed, not asked for, leave one slab as long as was said."""
    slab = read_enquiry(ENGLISH.format(said), WORKSHOP)["order"]["slabs"][0]
    assert slab["outline"]["length"] == "1800 mm"
    assert "quantity" not in slab


@settings(max_examples=cases(4))
@given(st.sampled_from(("approx", "about", "roughly", "ca.")))
def test_a_size_about_so_much_is_asked_as_that(about: str) -> None:
    """An opening of about a size is not said to lie off the slab."""
    said = f"With an undermount basin {about} 420 x 340 centred."
    doubts = read_enquiry(ENGLISH.format(said), WORKSHOP)["doubtful"]
    assert [one["at"] for one in doubts] == ["/slabs/0/cutouts/0/length"]
    assert "about" in doubts[0]["says"]


@settings(max_examples=cases(6))
@given(
    st.sampled_from(
        (
            ("With a 35 mm hole for a brushed brass tap. Honed, please.", "honed"),
            ("The sink is polished stainless steel; the top honed.", "honed"),
            ("A hole for the tap (brushed nickel), the face polished.", "polished"),
            ("Der Hahn ist Edelstahl gebürstet, eine geschliffene Platte bitte.", "honed"),
            ("Eine polierte Platte bitte.", "polished"),
        )
    )
)
def test_the_finish_of_a_metal_is_not_the_slabs(told: tuple[str, str]) -> None:
    """A tap's brass and a sink's steel are brushed or polished for themselves."""
    said, surface = told
    slab = read_enquiry(ENGLISH.format(said), WORKSHOP)["order"]["slabs"][0]
    assert slab["finish"]["surface"] == surface, said
