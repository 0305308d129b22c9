"""What stands in an answer to a message beside the sizes: who asks, and what was left out."""

from datetime import date
from email.message import EmailMessage
from pathlib import Path
from typing import Any

import pytest

from ledgerstone.application.enquiries import read_message
from ledgerstone.codec.order_in import read_order
from ledgerstone.quantities import Length
from ledgerstone.quote import Quote, quote
from ledgerstone.stages import StageContext
from ledgerstone.workshop import Workshop
from support.commands import ran
from support.mails import mailed

TOP = "Could you price a worktop, 1800 x 600 x 40 mm, in charcoal? We'd collect.\n"


def _left(read: dict[str, Any]) -> dict[str, str]:
    """Each part that was left out, with why."""
    text = read["text"]
    return {text[one["start"] : one["end"]].strip(): one["why"] for one in read["ignored"]}


def _read(workshop: Workshop, text: str, **headers: str) -> dict[str, Any]:
    return read_message(mailed(text, **headers).as_bytes(), workshop)


def test_what_was_left_out_is_marked_with_why(workshop: Workshop) -> None:
    """A signature, a footer, a quote that nothing rests on, and what a correction replaced."""
    text = (
        f"{TOP}Sorry, the length is 1850 mm not 1800 mm.\n\nRegards\nGemma Ridley\n\n"
        "This email is confidential.\n\nOn 1 December 2026 Tarnside wrote:\n> We are away until"
        " Monday.\n"
    )
    left = _left(_read(workshop, text))
    assert left["1800"] == "superseded"
    assert {"signature", "footer", "quoted"} <= set(left.values())
    assert left["> We are away until Monday."] == "quoted"


def test_slabs_past_the_most_are_marked_and_change_none_before(workshop: Workshop) -> None:
    """Eight slabs are read; what follows is marked as left out, and takes nothing from them."""
    shelves = [f"- 1 shelf {800 + 10 * i} x 200 x 30\n" for i in range(12)]
    text = "Could you price these shelves please?\n\n" + "".join(shelves) + "\nThanks, Gemma\n"
    read = _read(workshop, text)
    lengths = [slab["outline"]["length"] for slab in read["order"]["slabs"]]
    assert lengths == [f"{800 + 10 * i} mm" for i in range(8)]
    (rest,) = (words for words, why in _left(read).items() if why == "more slabs than are read")
    assert "890 x 200" in rest
    assert "870 x 200" not in rest


def test_a_quote_that_the_newer_mail_leans_on_is_not_left_out(workshop: Workshop) -> None:
    """What was taken from an older mail is no part that was left out."""
    text = "Make it 50 mm longer please, 1850 in all.\n\nOn 1 Dec 2026 Gemma wrote:\n> " + TOP
    read = _read(workshop, text)
    taken = [span for entry in read["read"] for span in entry["from"]]
    for one in read["ignored"]:
        if one["why"] == "quoted":
            assert not any(one["start"] <= span["start"] < one["end"] for span in taken)


def test_an_address_that_differs_is_pointed_out(workshop: Workshop) -> None:
    """An answer wanted elsewhere than where the mail came from is told as that."""
    asks = _read(workshop, f"{TOP}Please reply to gemma@work.example.\n")["customer"]
    assert (asks["reply_to"], asks["reply_to_differs"]) == ("gemma@work.example", True)
    plain = _read(workshop, TOP)["customer"]
    assert (plain["reply_to"], plain["reply_to_differs"]) == ("gemma@example.com", False)


@pytest.mark.parametrize(
    ("said", "day"),
    [
        ("I need it in six weeks.", date(2027, 1, 13)),
        ("I need it by the 14th.", date(2026, 12, 14)),
        ("Please have it ready by the end of January.", date(2027, 1, 31)),
        ("We need it by 3 February.", date(2027, 2, 3)),
    ],
)
def test_a_day_counts_from_the_messages_own(workshop: Workshop, said: str, day: date) -> None:
    """Days count from the Date header, 2 December 2026, whenever the message is read."""
    assert _read(workshop, TOP + said)["order"]["needed_by"] == day.isoformat()


def test_a_day_without_a_date_to_count_from_is_a_doubt(workshop: Workshop) -> None:
    """A body alone has no date, and today is not taken for one."""
    read = read_message(f"{TOP}I need it in six weeks.", workshop)
    assert "needed_by" not in read["order"]
    assert [one["at"] for one in read["doubtful"]] == ["/needed_by"]


def _with_files() -> EmailMessage:
    mail = mailed(f"{TOP}The hole is where the sketch shows it, see attached.\n")
    mail.add_attachment(b"a", "image", "jpeg", filename="sketch.jpg")
    return mail


def test_attachments_are_listed_and_what_rests_on_them_is_marked(workshop: Workshop) -> None:
    """The names are told, and that the message speaks of what is attached."""
    read = read_message(_with_files().as_bytes(), workshop)
    assert read["attachments"] == ["sketch.jpg"]
    assert read["rests_on_attachment"]
    assert not _read(workshop, TOP)["rests_on_attachment"]


def test_the_letter_never_says_that_an_attachment_was_read(
    tmp_path: Path,
) -> None:
    """The draft speaks of no sketch, and of nothing attached by the customer."""
    path = tmp_path / "mail.eml"
    path.write_bytes(_with_files().as_bytes())
    draft = tmp_path / "draft.eml"
    assert ran("answer", path, "--draft", draft)[0] == 0
    assert b"sketch" not in draft.read_bytes().lower()


def test_a_mail_of_25_mb_is_read_at_the_command_line(tmp_path: Path) -> None:
    """Photographs are left out before anything is read."""
    mail = mailed(TOP)
    mail.add_attachment(bytes(17_000_000), "image", "jpeg", filename="kitchen.jpg")
    path = tmp_path / "mail.eml"
    path.write_bytes(mail.as_bytes())
    assert path.stat().st_size > 22_000_000
    status, said, _ = ran("enquiry", path)
    assert status == 0
    assert "kitchen.jpg" in said
    assert "1800 mm" in said


def test_what_is_absent_is_null(workshop: Workshop) -> None:
    """Nobody's telephone or address is made up."""
    customer = read_message("A shelf 900 x 220 x 40 mm, charcoal, please quote", workshop)[
        "customer"
    ]
    absent = ("name", "reply_to", "phone", "address", "subject", "message_id", "written")
    assert [customer[key] for key in absent] == [None] * len(absent)


@pytest.mark.parametrize(
    ("text", "language"),
    [
        (TOP, "en"),
        ("Guten Tag, bitte ein Angebot für eine Arbeitsplatte 1800 x 600 x 40 mm. Danke", "de"),
    ],
)
def test_an_answer_is_in_the_language_of_the_message(
    workshop: Workshop, text: str, language: str
) -> None:
    """What was taken is said in it, and the proposal asks for its letter in it."""
    read = _read(workshop, text)
    assert read["customer"]["language"] == language
    assert read["proposal"].get("language", "en") == language
    assert all(("Wir" in one["says"]) == (language == "de") for one in read["assumed"])


def test_openings_are_named_in_the_language_of_the_message(workshop: Workshop) -> None:
    """What is proposed goes into a German letter, so a sink and a tap have their German names."""
    text = (
        "Guten Tag, ich hätte gern eine Arbeitsplatte, 2350 x 630 x 40 mm, mit Spülenausschnitt 500"
        " x 400 mm, Mitte 800 mm von links und 300 mm von vorn, und einem Hahnloch 35 mm dahinter."
    )
    cutouts = _read(workshop, text)["proposal"]["slabs"][0]["cutouts"]
    assert [one["label"] for one in cutouts] == ["Spüle", "Hahnloch"]


@pytest.mark.parametrize("said", ["Fossil, honed", "Thunder, matt sealed", "pewter, polished"])
def test_a_shade_of_no_table_stands_before_a_finish(said: str, workshop: Workshop) -> None:
    """A shade that our palette has not is read as written: "Fossil, honed."."""
    read = _read(workshop, f"Worktop please, 2000 x 600 x 40 mm.\n\n{said}. We'd collect.\n")
    values = {one["at"]: one.get("value") for one in read["read"]}
    assert values["/slabs/0/shade/name"] == said.split(",", maxsplit=1)[0]


def test_one_l_is_one_slab_and_edges_are_spread_over_sides(workshop: Workshop) -> None:
    """An L stays one slab; all visible edges are each side's, as worked out."""
    l_shape = _read(workshop, "Price for an L-shaped worktop please, 2400 x 1800, legs 600 deep, 40"
                    " thick, the short leg on the right.")  # fmt: skip
    (slab,) = l_shape["order"]["slabs"]
    assert slab["outline"]["kind"] == "l-shape"
    edges = _read(workshop, TOP + "All edges bevelled 5 mm please.")
    sides = edges["order"]["slabs"][0]["edges"]
    assert sorted(sides) == ["back", "front", "left", "right"]
    how = {one["how"] for one in edges["read"] if "/edges/" in one["at"]}
    assert how == {"worked-out"}


@pytest.mark.parametrize("hole", ["basins", "bowls", "sinks", "holes", "cut-outs"])
@pytest.mark.parametrize("size", ["600 mm front to back", "600 mm deep, the front open"])
def test_what_is_round_in_a_slab_is_no_edge(workshop: Workshop, hole: str, size: str) -> None:
    """Round basins do not round the front edge, whatever the sentence says of its front."""
    text = f"Please quote: a top 1800 mm long, {size}, 40 mm thick, for two round {hole}. Charcoal."
    assert "edges" not in _read(workshop, text)["order"]["slabs"][0]


@pytest.mark.parametrize("said", ["sealed matt", "matt sealed", "polished", "matt, please"])
def test_a_finish_is_whole_words(workshop: Workshop, said: str) -> None:
    """No finish begins in the middle of a word."""
    read = _read(workshop, f"{TOP}It should be {said}.")
    (finish,) = [one for one in read["read"] if one["at"] == "/slabs/0/finish"]
    start = finish["from"][0]["start"]
    assert not read["text"][start - 1].isalpha()


def test_a_place_that_nobody_said_is_proposed_and_never_read(workshop: Workshop) -> None:
    """The proposal has it, `assumed` tells it, `missing` asks it; order and `read` have none."""
    read = _read(workshop, TOP + "One round basin, cut-out 380 mm across.")
    at = "/slabs/0/cutouts/0/centre"
    assert "centre" not in read["order"]["slabs"][0]["cutouts"][0]
    assert read["proposal"]["slabs"][0]["cutouts"][0]["centre"]
    assert at in {one["at"] for one in read["assumed"]}
    assert at in {one["at"] for one in read["missing"]}
    assert not any(one["at"].startswith(at) for one in read["read"])


def test_a_doubtful_value_is_in_neither_order_nor_read(workshop: Workshop) -> None:
    """Two widths are two readings, and the proposal takes the first and says so."""
    read = _read(workshop, "Please quote: worktop 1800 mm long, 600 mm deep, 40 thick. I think the"
                 " depth is 620 mm. Charcoal.")  # fmt: skip
    outline = read["order"]["slabs"][0]["outline"]
    (doubt,) = [one for one in read["doubtful"] if one["at"].endswith("/outline/width")]
    assert "width" not in outline
    assert [one["value"] for one in doubt["readings"]] == ["600 mm", "620 mm"]
    assert read["proposal"]["slabs"][0]["outline"]["width"] == "600 mm"


@pytest.mark.parametrize(
    ("sizes", "unit"),
    [("1800 x 600 x 40 mm", "mm"), ("180 x 60 x 4 cm", "cm"), ("71 in x 24 in x 1 1/2 in", "in")],
)
def test_a_proposed_place_is_in_the_unit_of_the_slab(
    workshop: Workshop, sizes: str, unit: str
) -> None:
    """On a grid that a person would measure by, on the slab, and such that it can be made."""
    text = f"Could you price a worktop, {sizes}, in charcoal, with a sink and a tap? We'd collect."
    proposal = _read(workshop, text)["proposal"]
    cutouts = proposal["slabs"][0]["cutouts"]
    places = [one["centre"][axis] for one in cutouts for axis in "xy"]
    assert len(places) == 4
    assert {place.split()[-1] for place in places} == {unit}
    step_mm = 25.4 / 16 if unit == "in" else 1
    for place in places:
        steps = Length.parse(place).mm / step_mm
        assert steps == pytest.approx(round(steps), abs=1e-6), place
    order = read_order(proposal, workshop)
    assert isinstance(quote(order, StageContext(workshop, (), date(2026, 11, 25))), Quote)
