"""Look, place, delivery and day of a draft, as said."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from ledgerstone.enquiry.draft.entries import Entries
from ledgerstone.enquiry.scene.said import Claim, SaidWord
from ledgerstone.enquiry.scene.whereabouts import place_of
from ledgerstone.enquiry.values.pieces import PieceFound
from ledgerstone.enquiry.wishes.look import sealer_in, surface_in
from ledgerstone.enquiry.wishes.under_it import one_under, unit_row
from ledgerstone.enquiry.wishes.whose_look import said_of
from ledgerstone.json_types import Members
from ledgerstone.order import UPRIGHT_USES, USES


def draft_look(entries: Entries, at: str, found: PieceFound) -> Members:
    """Write shade, finish, edges and place of one slab."""
    made: Members = {}
    pieces = [piece.piece for piece in entries.found.pieces]
    shade = said_of(found.piece, pieces, entries.found.shades, entries.text)
    finish = said_of(found.piece, pieces, entries.found.finishes, entries.text)
    if shade is not None:
        offered = {shade.name.lower(): shade.name for shade in entries.workshop.palette}
        name = offered.get(shade.value.lower())
        entries.value(f"{at}/shade/name", shade.value, shade.spans)
        if name is not None:
            made["shade"] = {"name": name}
    if finish is not None:
        entries.value(f"{at}/finish", finish.value, finish.spans)
        known = _finish(entries, finish)
        if known:
            made["finish"] = known
    edges = _edges(entries, at, found)
    if edges:
        made["edges"] = edges
    place = place_of(entries.found.scene, found.piece)
    if place is not None:
        made["place"] = place[0]
        entries.value(f"{at}/place", place[0], [place[1]])
    return made


def _finish(entries: Entries, finish: SaidWord) -> Mapping[str, str]:
    surface = surface_in(finish.value)
    sealer = sealer_in(finish.value)
    sealers = [one.name for one in entries.workshop.sealers if sealer and sealer in one.name]
    surfaces = {str(finish.surface) for finish in entries.workshop.finishes}
    return {
        **({"surface": surface} if surface in surfaces else {}),
        **({"sealer": sealers[0]} if sealers else {}),
    }


def _edges(entries: Entries, at: str, found: PieceFound) -> Members:
    made: Members = {}
    sides = ("rim",) if found.kind == "round" else ("front", "back", "left", "right")
    said = {edge.side: edge for edge in entries.found.edges}
    if found.kind == "round" and said:
        said = {"rim": next(iter(said.values()))}
    for side in sides:
        edge = said.get(side)
        if edge is None or found.kind == "polygon":
            continue
        made[side] = {"profile": edge.profile}
        if edge.size is not None:
            made[side]["size"] = edge.size.text()
        entries.value(f"{at}/edges/{side}", made[side], edge.spans, edge.how)
    return made | _drip(entries, at, sides, made, found)


def _drip(
    entries: Entries, at: str, sides: Sequence[str], made: Members, found: PieceFound
) -> Members:
    """Write the edges under which a drip is asked for, as they are otherwise."""
    drip = entries.found.drip
    if drip is None or found.kind == "polygon":
        return {}
    under = [side for side in sides if side in drip.sides or side == "rim"]
    edges: Members = {side: {**made.get(side, {}), "drip": True} for side in under}
    for side, edge in edges.items():
        entries.value(f"{at}/edges/{side}/drip", edge["drip"], [drip.span])
    return edges


def draft_rests(entries: Entries) -> None:
    """Write the units that slabs lie on; of widths unsaid, which strength depends on, ask."""
    for i, found in enumerate(entries.found.pieces):
        if _draft_units(entries, i, found):
            return
    if _draft_pedestal(entries):
        return
    said, lying = entries.found.on_units, _lying_on_units(entries.found.pieces)
    if said is None or not lying:
        return
    for i in lying:
        entries.draft.order["slabs"][i]["rests"] = {"kind": "units"}
        entries.value(f"/slabs/{i}/rests/kind", "units", said.spans)
    entries.miss(f"/slabs/{lying[0]}/rests", "units")


def _draft_pedestal(entries: Entries) -> bool:
    """Write the pedestal that a message's table stands on; of a plate unsaid, ask how wide it is.

    Which of several slabs stands on it is plain of a single table alone.
    """
    said, pieces = entries.found.pedestal, entries.found.pieces
    tables = [i for i, found in enumerate(pieces) if found.piece.use == "table"]
    flat = [i for i, found in enumerate(pieces) if found.piece.use not in UPRIGHT_USES]
    which = tables or flat
    if said is None or len(which) != 1:
        return False
    (i,) = which
    if said.plate is None:
        entries.miss(f"/slabs/{i}/rests", "plate")
        return True
    entries.draft.order["slabs"][i]["rests"] = {"kind": "pedestal", "plate": said.plate.text()}
    entries.value(f"/slabs/{i}/rests", f"pedestal, {said.plate.text()}", [said.span])
    return True


def _lying_on_units(pieces: Sequence[PieceFound]) -> list[int]:
    """Return which slabs lie on the units that a message speaks of: its worktops, else the first.

    What stands upright lies on none.
    """
    uses = [found.piece.use for found in pieces]
    tops = [i for i, use in enumerate(uses) if use == "worktop" or use not in USES]
    return tops or [i for i, use in enumerate(uses) if use not in UPRIGHT_USES][:1]


def _draft_units(entries: Entries, i: int, found: PieceFound) -> bool:
    """Write the cupboards that a slab lies on, where their widths are told."""
    length = found.values.get("length")
    slab = entries.draft.order["slabs"][i]
    if length is None or found.kind != "rectangle":
        return False
    row = unit_row(entries.text, entries.found.told, length.mm)
    if row is None:
        return _draft_one_unit(entries, i, found, length)
    widths = [width.text() for width in row.widths]
    slab["rests"] = {"kind": "units", "units": [{"width": width} for width in widths]}
    entries.value(f"/slabs/{i}/rests", " + ".join(widths), [row.span])
    return True


def _draft_one_unit(entries: Entries, i: int, found: PieceFound, length: Claim) -> bool:
    """Write the one unit that a slab is for; a slab that is longer lies in the middle of it."""
    under = one_under(entries.text, entries.found.told, length.mm)
    if under is None or found.piece.use in UPRIGHT_USES:
        return False
    at, width = f"/slabs/{i}/rests", under.width.text()
    rests: Members = {"kind": "units", "units": [{"width": width}]}
    entries.draft.order["slabs"][i]["rests"] = rests
    entries.value(at, width, [under.span])
    over_mm = (length.mm - under.width.mm) / 2
    if over_mm > 0:
        over = length.length.in_unit(over_mm).text()
        rests["overhang"] = {"left": over, "right": over}
        entries.value(f"{at}/overhang", over, [under.span, *length.spans], "worked-out")
    return True


def draft_delivery(entries: Entries) -> None:
    """Write how it is to come."""
    said = entries.found.delivery
    made: Members = {}
    for key in ("kind", "postcode", "steps", "floor"):
        word: SaidWord | None = getattr(said, key)
        if word is not None:
            value = int(word.value) if key in ("steps", "floor") else word.value
            made[key] = value
            entries.value(f"/delivery/{key}", value, word.spans)
    if made:
        entries.draft.order["delivery"] = made
    if said.unsure:
        words = entries.words(said.unsure)
        readings = [{"value": kind, "from": words} for kind in ("collect", "pallet")]
        entries.draft.doubtful.append(
            {
                "at": "/delivery/kind",
                "says": entries.asking.say("delivery"),
                "asks": entries.asking.say("ask_delivery"),
                "readings": readings,
            }
        )
    is_collected = said.kind is not None and said.kind.value == "collect"
    if said.climb is not None and said.steps is None and not is_collected:
        stairs = said.climb.value
        entries.draft.doubtful.append(
            {
                "at": "/delivery/steps",
                "says": entries.asking.say("some_steps", said=stairs),
                "asks": entries.asking.say("steps", said=stairs),
                "readings": [{"value": "", "from": entries.words(said.climb.spans)}],
            }
        )
    is_delivered = said.kind is not None or (said.is_asked and not said.unsure)
    if said.postcode is None and is_delivered and not is_collected:
        entries.miss("/delivery/postcode", "postcode")


def draft_needed(entries: Entries) -> None:
    """Write the day it is needed by, or why that is not known."""
    needed = entries.found.needed
    if needed.day is not None:
        entries.draft.order["needed_by"] = needed.day.isoformat()
        entries.value("/needed_by", needed.day.isoformat(), needed.spans, "worked-out")
    if needed.doubt:
        days = [day.isoformat() for day in needed.readings()] or [""]
        readings = [{"value": day, "from": entries.words(needed.spans)} for day in days]
        said = " ".join(word["text"] for word in entries.words(needed.spans))
        entries.draft.doubtful.append(
            {
                "at": "/needed_by",
                "says": entries.asking.spoken(needed.doubt),
                "asks": entries.asking.say("ask_day", said=" ".join(said.split()).strip(" .,;:!?")),
                "readings": readings,
            }
        )
