"""Pours: which pieces are mixed and placed together, and in how many batches."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from ledgerstone.mix.batches import open_minutes, split
from ledgerstone.mix.mixes import Mix, Tint, mixes_of
from ledgerstone.quantities import MM3_PER_L
from ledgerstone.shape import Shape
from ledgerstone.workshop.records import Workshop


@dataclass(frozen=True, slots=True)
class CoatLitres:
    """What is mixed for one piece, with waste: its face coat, zero without one, and the rest."""

    face: float
    backing: float

    @property
    def total(self) -> float:
        """Both together, litres.

        Source
        ------
        Arithmetic.
        """
        return self.face + self.backing


@dataclass(frozen=True, slots=True)
class PourGroup:
    """Pieces that are mixed and placed together, by slab index, and their batches of each coat."""

    slabs: tuple[int, ...]
    tint: Tint
    mixes: tuple[Mix, ...]
    litres: CoatLitres
    face_batches: int
    backing_batches: int

    @property
    def batches(self) -> int:
        """How often the mixer is filled."""
        return self.face_batches + self.backing_batches


def placed_l(shape: Shape, workshop: Workshop) -> float:
    """Volume in the mould of one piece, litres: the slab, and what is sanded off its back.

    Source
    ------
    Geometry; what is sanded off is the profile's ``boards.sanding_mm``.
    """
    proud_mm3 = shape.net_area_mm2 * workshop.boards.sanding_mm
    return (shape.volume_mm3 + proud_mm3) / MM3_PER_L


def coat_litres(shape: Shape, workshop: Workshop) -> CoatLitres:
    """Litres mixed for one piece, with waste, as face coat and backing.

    Source
    ------
    Geometry, as `placed_l`; ``recipe.face_coat`` and ``recipe.waste_percent`` of the profile.
    """
    litres = placed_l(shape, workshop)
    coat = workshop.recipe.face_coat
    face = min(litres, shape.net_area_mm2 * coat.thickness_mm / MM3_PER_L) if coat else 0.0
    more = 1 + workshop.recipe.waste_percent / 100
    return CoatLitres(face * more, (litres - face) * more)


def pour_groups(
    pieces: Sequence[int],
    litres: Sequence[CoatLitres],
    tints: Sequence[Tint],
    workshop: Workshop,
    areas_mm2: Sequence[float] | None = None,
) -> Iterator[PourGroup]:
    """Put pieces together into pours, by slab index and in the order given.

    Parameters
    ----------
    litres, tints, areas_mm2
        Of one piece of each slab: volume, litres, colour and area, mm². With areas, the tables'
        area limits what is poured together; without, all pieces are on the tables at once already.

    Notes
    -----
    Pieces of one mix are poured together as long as the last batch is placed within the open time.
    A single piece is one pour however long it takes.
    """
    by_tint: dict[Tint, list[int]] = {}
    for i in pieces:
        by_tint.setdefault(tints[i], []).append(i)
    table = workshop.table
    room_mm2 = table.length_mm * table.width_mm * table.count
    for tint, same in by_tint.items():
        mixes = mixes_of(tint, workshop)
        here = _group(same[:1], tint, mixes, litres, workshop)
        for i in same[1:]:
            more = _group((*here.slabs, i), tint, mixes, litres, workshop)
            area_mm2 = sum(areas_mm2[k] for k in more.slabs) if areas_mm2 is not None else 0.0
            if _waits(more, workshop) > workshop.mixer.open_minutes or area_mm2 > room_mm2:
                yield here
                more = _group((i,), tint, mixes, litres, workshop)
            here = more
        yield here


def batches_alone(litres: CoatLitres, tint: Tint, workshop: Workshop) -> int:
    """Number of batches of a piece that is poured by itself; ``litres`` as `coat_litres`."""
    return _group((0,), tint, mixes_of(tint, workshop), (litres,), workshop).batches


def _waits(group: PourGroup, workshop: Workshop) -> float:
    return open_minutes(group.face_batches, group.backing_batches, workshop.mixer)


def _group(
    pieces: Sequence[int],
    tint: Tint,
    mixes: tuple[Mix, ...],
    litres: Sequence[CoatLitres],
    workshop: Workshop,
) -> PourGroup:
    recipe, mixer = workshop.recipe, workshop.mixer
    face_l, backing_l = (
        sum(litres[i].face for i in pieces),
        sum(litres[i].backing for i in pieces),
    )
    face = split(mixes[0], face_l, recipe, mixer)[0] if len(mixes) > 1 else 0
    backing = split(mixes[-1], backing_l, recipe, mixer)[0]
    return PourGroup(tuple(pieces), tint, mixes, CoatLitres(face_l, backing_l), face, backing)
