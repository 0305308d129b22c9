"""A fix keeps what the customer asked for: openings at their size, walls where they stand."""

import copy
import re
from typing import Any, Final

import jsonpatch
from flask.testing import FlaskClient

from ledgerstone.quantities import Length
from ledgerstone.wording import Listed, Message, english
from support.documents import Json
from support.remedied import hole, rectangle

FRAME: Final = {"kind": "frame", "sides": ["front", "right", "back", "left"], "width": "40 mm"}
HOB: Final = ("560 mm", "490 mm")
SINK: Final = ("500 mm", "400 mm")


def opening(label: str, size: tuple[str, str], x: str, y: str, rim: str = "shown") -> Json:
    """A rectangular cut-out."""
    return {
        "kind": "rectangle",
        "label": label,
        "length": size[0],
        "width": size[1],
        "centre": {"x": x, "y": y},
        "rim": rim,
    }


def ell(length: str, width: str, notch: tuple[str, str]) -> Json:
    """An order of one L, its notch at the back right."""
    bite = {"corner": "back-right", "length": notch[0], "width": notch[1]}
    outline = {"kind": "l-shape", "length": length, "width": width, "notch": bite}
    return {"slabs": [{"outline": outline, "thickness": "40 mm"}]}


def answered(client: FlaskClient, order: Json) -> dict[str, Any]:
    """The send-back of an order."""
    response = client.post("/v1/quotes", json=order)
    assert response.status_code == 422, response.json
    told: dict[str, Any] = response.get_json()
    return told


def fixed(client: FlaskClient, order: Json, name: str = "fix_all") -> tuple[list[str], Json, Json]:
    """What a fix says, the order that an independent library makes of it, and its quote."""
    fix = answered(client, order)[name]
    made: Json = jsonpatch.apply_patch(copy.deepcopy(order), fix["patch"])
    quote = client.post("/v1/quotes", json=made)
    told: Json = quote.get_json()
    assert quote.status_code == 200, told
    assert told["price"]["total"] == fix["price"]["total"]
    return fix["says"], made, told


def sizes(order: Json) -> list[Json]:
    """Every cut-out of an order without its place and what it is open to, by label."""
    kept = [
        {key: value for key, value in cutout.items() if key not in ("centre", "points", "open_to")}
        for slab in order["slabs"]
        for cutout in slab.get("cutouts", [])
    ]
    return sorted(kept, key=str)


def test_a_bowl_half_off_a_vanity_is_moved(client: FlaskClient) -> None:
    """Two bowls of 340 on a framed vanity of 1200 by 480, one half off: the bowl moves in."""
    bowls = [
        hole("left bowl", "340 mm", "300 mm", "240 mm"),
        hole("right bowl", "340 mm", "900 mm", "480 mm"),
    ]
    order = rectangle("1200 mm", "480 mm", rests=FRAME, cutouts=bowls)
    says, made, _ = fixed(client, order)
    assert len(says) == 1
    assert says[0].startswith("Move the right bowl ")
    assert sizes(made) == sizes(order)
    assert made["slabs"][0]["outline"] == order["slabs"][0]["outline"]


def test_an_l_too_large_to_cast_comes_in_two_pieces(client: FlaskClient) -> None:
    """2700 by 1900 with arms of 600: two rectangles and a join, at the size that was asked for."""
    says, made, quote = fixed(client, ell("2700 mm", "1900 mm", ("2100 mm", "1300 mm")))
    assert len(says) == 1
    assert "two pieces" in says[0]
    assert len(made["slabs"]) == 2
    assert len(made["joins"]) == 1
    area = sum(slab["area_m2"] for slab in quote["slabs"])
    assert abs(area - (2.7 * 1.9 - 2.1 * 1.3)) < 0.003


def test_an_l_with_one_arm_too_deep_keeps_both_arms(client: FlaskClient) -> None:
    """2400 by 1500: two pieces, and neither arm is shorter."""
    says, made, quote = fixed(client, ell("2400 mm", "1500 mm", ("1800 mm", "900 mm")))
    assert any("two pieces" in each for each in says)
    assert len(made["slabs"]) == 2
    area = sum(slab["area_m2"] for slab in quote["slabs"])
    assert abs(area - (2.4 * 1.5 - 1.8 * 0.9)) < 0.003


def test_a_top_between_walls_comes_in_two_pieces_and_still_fills_them(client: FlaskClient) -> None:
    """3 m between walls is two pieces: what walls fix does not change, gaps and joint in it."""
    order = rectangle("3000 mm", "620 mm", size_from="between-walls")
    says, made, quote = fixed(client, order)
    assert any("two pieces" in each for each in says)
    lengths = [slab["finished_mm"]["length_mm"] for slab in quote["slabs"]]
    assert len(made["slabs"]) == 2
    assert made["joins"][0]["gap"] == "2 mm"
    assert sum(lengths) + 2 == 3000 - 2 * 3  # a fitting gap of 3 mm beside each wall
    assert "1500 mm" in says[0]


def test_a_hob_over_the_end_is_moved_and_not_turned(client: FlaskClient) -> None:
    """A hob of 560 by 490 drawn at x = 100 moves along, as it lies."""
    cutouts = [opening("hob", HOB, "100 mm", "310 mm", "covered")]
    order = rectangle("2000 mm", "620 mm", cutouts=cutouts)
    says, made, _ = fixed(client, order)
    assert len(says) == 1
    assert says[0].startswith("Move the hob ")
    assert says[0].endswith(" to the right.")
    assert sizes(made) == sizes(order)
    told = answered(client, order)
    offered = [one["says"] for finding in told["findings"] for one in finding["remedies"]]
    assert not any("Turn" in each for each in offered)


def test_a_long_run_with_a_hob_and_a_sink_keeps_both(client: FlaskClient) -> None:
    """3600 with a hob and a sink: two pieces in round numbers, every opening where it was."""
    cutouts = [
        opening("hob", HOB, "900 mm", "310 mm", "covered"),
        opening("sink", SINK, "2700 mm", "310 mm"),
    ]
    order = rectangle("3600 mm", "620 mm", cutouts=cutouts)
    says, made, _ = fixed(client, order)
    assert "1800 mm and 1798 mm" in says[0]
    assert sizes(made) == sizes(order)
    centres = [slab["cutouts"][0]["centre"]["x"] for slab in made["slabs"]]
    assert centres == ["900 mm", "898 mm"]


def test_the_legs_of_a_round_table_move_with_it(client: FlaskClient) -> None:
    """A table of 1100 on four legs that became 1300: they move in with it, and it is stated why.

    The casting table is 1200 mm wide, and a round top is not made in pieces.
    """
    at = [(300, 300), (800, 300), (800, 800), (300, 800)]
    rests = {"kind": "legs", "pad": "80 mm", "at": [{"x": x, "y": y} for x, y in at]}
    outline = {"kind": "round", "diameter": "1300 mm"}
    order: Json = {
        "slabs": [{"use": "table", "outline": outline, "thickness": "40 mm", "rests": rests}]
    }
    why = Message(
        "cast-in-one-piece",
        slab=Message("slab-only"),
        shape="round",
        length=Length.of_mm(2700),
        width=Length.of_mm(1200),
    )
    assert answered(client, order)["why_no_fix"] == english(why)
    _, made, _ = fixed(client, order, "nearest_makeable")
    slab = made["slabs"][0]
    middle = float(slab["outline"]["diameter"].removesuffix(" mm")) / 2
    legs = slab["rests"]["at"]
    for axis in ("x", "y"):
        assert abs(sum(float(leg[axis]) for leg in legs) / len(legs) - middle) <= 5


def test_a_length_in_another_unit_is_brought_back(client: FlaskClient) -> None:
    """A sink and its tap told 25 times too far off come back onto the slab together."""
    cutouts = [
        opening("sink", SINK, "600 mm", "7620 mm"),
        hole("tap", "35 mm", "600 mm", "7900 mm", "covered"),
        opening("hob", HOB, "1700 mm", "310 mm", "covered"),
    ]
    order = rectangle("2400 mm", "650 mm", rests={"kind": "full"}, cutouts=cutouts)
    says, made, _ = fixed(client, order)
    assert len(says) == 1
    assert says[0].startswith("Move the sink ")
    assert "hob" not in says[0]
    assert sizes(made) == sizes(order)
    sink, tap = (made["slabs"][0]["cutouts"][k]["centre"] for k in (0, 1))
    away = float(tap["y"].removesuffix(" mm")) - float(sink["y"].removesuffix(" mm"))
    assert 200 < away < 300 or tap["x"] != sink["x"]


def test_an_l_is_cut_from_its_inside_corner(client: FlaskClient) -> None:
    """With arms of 550 mm both pieces are straight, and the first has a round size."""
    says, made, _ = fixed(client, ell("2320 mm", "2400 mm", ("1770 mm", "1850 mm")))
    assert [slab["outline"]["kind"] for slab in made["slabs"]] == ["rectangle", "rectangle"]
    assert "550 mm" in says[0]


def test_movements_are_round_in_the_customers_unit(client: FlaskClient) -> None:
    """An order in inches is moved by quarters of an inch."""
    hob = opening("hob", ("22 in", "19 1/4 in"), "20 in", "15 15/16 in", "covered")
    order = rectangle("78 in", "26 in", "1 1/2 in", rests={"kind": "full"}, cutouts=[hob])
    told = answered(client, order)
    says = [one["says"] for finding in told["findings"] for one in finding["remedies"]]
    says += told.get("fix_all", {"says": []})["says"]
    moves = [one for one in says if one.startswith("Move")]
    assert moves
    assert all(re.fullmatch(r"Move the hob (\d+ )?(1/2|1/4|3/4|\d+) in .*", one) for one in moves)


def units(*widths: str, basin: int) -> Json:
    """Base units, one of them the basin's."""
    every: list[Json] = [{"width": width} for width in widths]
    every[basin]["for"] = "basin"
    return {"kind": "units", "units": every}


def test_a_sink_keeps_over_its_own_unit(client: FlaskClient) -> None:
    """A sink over the side of its unit moves back over it, though another has more room."""
    sink = opening("sink", SINK, "640 mm", "300 mm")
    rests = units("500 mm", "600 mm", "900 mm", basin=1)
    says, made, _ = fixed(client, rectangle("2000 mm", "600 mm", rests=rests, cutouts=[sink]))
    assert says == ["Move the sink 130 mm to the right."]
    assert made["slabs"][0]["rests"] == rests


def test_a_sink_moves_together_with_its_unit(client: FlaskClient) -> None:
    """A sink too near the end of the slab, whose unit leaves it no way, takes its unit along."""
    sink = opening("sink", ("540 mm", "400 mm"), "300 mm", "300 mm")
    rests = units("600 mm", "600 mm", "600 mm", basin=0)
    says, made, _ = fixed(client, rectangle("1800 mm", "600 mm", rests=rests, cutouts=[sink]))
    assert says[:2] == [
        "Move the sink 590 mm to the right.",
        english(Message("exchange-units", units=Listed((1, 2)), slab=Message("slab-only"))),
    ]
    uses = [unit.get("for", "base") for unit in made["slabs"][0]["rests"]["units"]]
    assert uses == ["base", "basin", "base"]


def test_cabinets_stay_where_a_thicker_slab_will_do(client: FlaskClient) -> None:
    """Masonry under a sink's run is no fix of a slab that is only too thin, by little or much."""
    for thickness, length_mm in (("20 mm", 1800), ("30 mm", 2400)):
        units = [{"width": 600}, {"width": length_mm - 600, "for": "basin"}]
        sink = opening("sink", ("540 mm", "440 mm"), f"{length_mm / 2 + 300} mm", "310 mm")
        rests = {"kind": "units", "units": units}
        order = rectangle(f"{length_mm} mm", "620 mm", thickness, rests=rests, cutouts=[sink])
        says, made, _ = fixed(client, order)
        assert made["slabs"][0]["rests"] == rests, says
        assert Length.parse(made["slabs"][0]["thickness"]).mm > Length.parse(thickness).mm


def test_cabinets_stay_where_only_the_thickest_slab_will_do(client: FlaskClient) -> None:
    """The page's own sink top at 20 mm: a remedy of the finding takes the place of masonry."""
    sink = opening("sink", ("490 mm", "390 mm"), "900 mm", "310 mm")
    rests = units("600 mm", "600 mm", "600 mm", basin=1)
    order = rectangle("1800 mm", "620 mm", "20 mm", rests=rests, cutouts=[sink])
    says, made, _ = fixed(client, order)
    assert made["slabs"][0]["rests"] == rests, says
