"""A draft completed as far as it honestly can be, with everything that was taken for it."""

from __future__ import annotations

import copy
from typing import Any, Final

from ledgerstone.enquiry.draft.openings import is_sized
from ledgerstone.enquiry.draft.proposed_places import site_all
from ledgerstone.enquiry.draft.slabs import join_of
from ledgerstone.enquiry.draft.taken import Taken
from ledgerstone.enquiry.draft.usual import (
    COVERING,
    nearest_shade,
    usual_edge_mm,
    usual_opening,
)
from ledgerstone.enquiry.shapes.ovals import oval_opening
from ledgerstone.enquiry.values.pieces import OpeningFound, PieceFound
from ledgerstone.enquiry.wishes.whose_look import said_of
from ledgerstone.json_types import Members
from ledgerstone.message import Message
from ledgerstone.transport import area_for, prices_of
from ledgerstone.wording.catalogues import USUAL_LANGUAGE
from ledgerstone.workshop.records.usual import usual_sealer, usual_thickness_mm

_CORNER: Final = "front-right"
_GAP_MM: Final = 3.0  # a joint between two tops: common practice, no source
_SIZES: Final = {
    "rectangle": ("length", "width"),
    "l-shape": ("length", "width", "notch_length", "notch_width"),
    "round": ("diameter",),
}


class Proposal(Taken):
    """Completes a draft, noting each thing taken."""

    def completed(self) -> Members | None:
        """Return the order completed; None if the sizes of an outline are unsaid."""
        found = self.entries.found.pieces
        if not found or not all(self._has_outline(piece) for piece in found):
            return None
        order: Members = copy.deepcopy(self.entries.draft.order)
        for i, piece in enumerate(found):
            self._slab(i, piece, order["slabs"][i])
        self._join(order)
        self._delivery(order)
        if self.asking.language != USUAL_LANGUAGE:
            order["language"] = self.asking.language
        order["slabs"] = self.one_unit.of(order["slabs"])
        return order

    def _has_outline(self, found: PieceFound) -> bool:
        if found.kind == "polygon":
            return bool(found.points)
        wanted = _SIZES.get(found.kind, ("length",))
        return all(
            key in found.values or (found.doubted(key) and not key.startswith("notch"))
            for key in wanted
        )

    # --- slabs --------------------------------------------------------------------------------

    def _slab(self, i: int, found: PieceFound, slab: Members) -> None:
        """Complete one slab."""
        at, piece = f"/slabs/{i}", found.piece
        name = self.asking.slab(piece.use, i, len(self.entries.found.pieces))
        self._doubtful(at, found, slab, name)
        if "thickness" not in slab:
            usual_mm = usual_thickness_mm(self.workshop, piece.use)
            slab["thickness"] = self.one_unit.ours(usual_mm)
            self.take(f"{at}/thickness", slab["thickness"], "took_thickness", slab=name)
        outline = slab["outline"]
        if found.kind == "l-shape" and "corner" not in outline["notch"]:
            outline["notch"]["corner"] = _CORNER
            self.take(f"{at}/outline/notch/corner", _CORNER, "took_corner")
        for j, opening in enumerate(found.openings):
            self._opening(f"{at}/cutouts/{j}", opening, slab["cutouts"][j])
        self._look(at, found, slab, name)
        site_all(self, at, found, slab)
        for j, opening in enumerate(found.openings):
            made = slab["cutouts"][j]
            if opening.opening.oval and made["kind"] == "rectangle":
                slab["cutouts"][j] = oval_opening(made)

    def _doubtful(self, at: str, found: PieceFound, slab: Members, name: str) -> None:
        """Take the first of two readings, and say so."""
        for doubt in found.doubts:
            key = doubt.at
            text = doubt.readings[0].length.text()
            if key == "thickness" and "thickness" not in slab:
                slab["thickness"] = text
                place = f"{at}/thickness"
            elif key in ("length", "width", "diameter") and key not in slab["outline"]:
                slab["outline"][key] = text
                place = f"{at}/outline/{key}"
            else:
                continue
            found.values[key] = doubt.readings[0]
            what = self.asking.say(f"what_{key}", slab=name)
            self.take(place, text, "took_doubtful", what=what)

    def _look(self, at: str, found: PieceFound, slab: Members, name: str) -> None:
        pieces = [piece.piece for piece in self.entries.found.pieces]
        said = said_of(found.piece, pieces, self.entries.found.shades, self.entries.text)
        if "shade" not in slab:
            shade = nearest_shade(self.workshop, said.value if said is not None else "")
            slab["shade"] = {"name": shade}
            key = "took_nearest" if said is not None else "took_shade"
            self.take(f"{at}/shade/name", shade, key, said=said.value if said is not None else "")
        if "place" not in slab:
            slab["place"] = "indoors"
            self.take(f"{at}/place", "indoors", "took_place", slab=name)
        finish = slab["finish"] = dict(slab.get("finish", {}))
        if "surface" not in finish:
            finish["surface"] = str(self.workshop.finishes[0].surface)
            self.take(f"{at}/finish/surface", finish["surface"], "took_surface")
        if "sealer" not in finish:
            finish["sealer"] = usual_sealer(self.workshop, slab["place"])
            self.take(f"{at}/finish/sealer", finish["sealer"], "took_sealer")
        edges = slab.setdefault("edges", {})
        if not any("profile" in edge for edge in edges.values()):
            self.take(f"{at}/edges", "square", "took_edges")
        for side, edge in edges.items():
            if edge.get("profile") in ("bevel", "round") and "size" not in edge:
                edge["size"] = self.one_unit.ours(usual_edge_mm(self.workshop, edge["profile"]))
                self.take(f"{at}/edges/{side}/size", edge["size"], "took_edge")

    def _opening(self, at: str, found: OpeningFound, made: Members) -> None:
        """Give an opening a kind and a size; until its template comes where neither was said."""
        name = self.asking.opening(found.opening.what)
        made["label"] = self.asking.name(found.opening.what)
        if "rim" not in made and found.opening.what in COVERING:
            made["rim"] = "covered"
            self.take(f"{at}/rim", "covered", "took_covered", opening=name)
        for doubt in found.doubts:
            if doubt.at in "xy":
                text = doubt.readings[0].length.text()
                made.setdefault("centre", {})[doubt.at] = text
                what = self.asking.say(f"what_{doubt.at}", opening=name)
                self.take(f"{at}/centre/{doubt.at}", text, "took_doubtful", what=what)
        made.setdefault("kind", found.kind or "rectangle")
        if is_sized(found):
            return
        said = next((doubt.readings[0] for doubt in found.doubts if doubt.at == "diameter"), None)
        kind, length_mm, width_mm = usual_opening(found.opening.what, found.kind, self.workshop)
        if said is not None:
            kind, length_mm, width_mm = "circle", said.mm, said.mm
        sizes: dict[str, Any] = {"diameter": self.one_unit.ours(length_mm)}
        if kind != "circle":
            sizes = {
                "length": self.one_unit.ours(length_mm),
                "width": self.one_unit.ours(width_mm),
            }
            for key in ("length", "width"):
                sizes[key] = made.get(key, sizes[key])
        for key in ("length", "width", "diameter"):
            made.pop(key, None)
        made |= {"kind": kind, **sizes}
        if said is None:
            made["size_from"] = "template-to-follow"
        value = " × ".join(str(self.one_unit.of(size)) for size in sizes.values())
        self.take(at, value, "took_size", opening=name)

    def _join(self, order: Members) -> None:
        """Complete the join of an L's legs with its side and its width."""
        if not self.entries.found.scene.is_split or len(order["slabs"]) != 2:
            return
        if "joins" not in order:
            order["joins"] = [join_of("right")]
            self.take("/joins/0", order["joins"][0], "took_turn")
        gap = self.one_unit.ours(_GAP_MM)
        order["joins"][0]["gap"] = gap
        self.take("/joins/0/gap", gap, "took_gap")

    # --- delivery -----------------------------------------------------------------------------

    def _delivery(self, order: Members) -> None:
        said = self.entries.found.delivery
        delivery = order["delivery"] = dict(order.get("delivery", {}))
        if "kind" not in delivery:
            delivered = said.is_delivered and "postcode" in delivery and not said.unsure
            kind = delivery["kind"] = self._way(delivery["postcode"]) if delivered else "collect"
            unplaced = said.is_asked and "postcode" not in delivery and not said.unsure
            known = "took_no_postcode" if unplaced else "took_collect"
            key = "took_delivery" if delivered else known
            self.take("/delivery/kind", kind, key, way=Message("change-way-name", way=kind))
        elif delivery["kind"] != "collect" and "postcode" not in delivery:
            delivery["kind"] = "collect"
            self.take("/delivery/kind", "collect", "took_no_postcode")

    def _way(self, postcode: str) -> str:
        """Choose the plainest way in which the workshop delivers there; a pallet where in none."""
        area = area_for(postcode, self.workshop)
        prices = {} if area is None else prices_of(area)
        return next((way for way, price in prices.items() if price is not None), "pallet")
