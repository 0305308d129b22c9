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
