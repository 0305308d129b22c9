"""Rules for hours of hands, by what they are counted for."""

from __future__ import annotations

from dataclasses import dataclass, field

from ledgerstone.workshop._keys import about, at_least_0, documented, may_be_0


@dataclass(frozen=True, slots=True, kw_only=True)
class JobHours:
    """Hours of hands once an order, however many slabs it has."""

    set_up: float = at_least_0("boards and tools brought, the bench cleared")
    in_hand: float = may_be_0("templates, sinks and the signed drawing looked over")
    level: float = may_be_0("the casting table levelled and wiped")
    clean_up: float = may_be_0("mixer, tools and floor washed down after casting")


@dataclass(frozen=True, slots=True, kw_only=True)
class PourHours:
    """Hours of hands for what is mixed and placed together, shared by its pieces' litres."""

    each_batch: float = at_least_0("one filling of the mixer, weighed out and mixed")
    ready: float = may_be_0("scales and mixer made ready, and rinsed after")


@dataclass(frozen=True, slots=True, kw_only=True)
class MouldHours:
    """Hours of hands for each mould that is built; cast again, it is cleaned and oiled alone."""

    base: float = at_least_0("base board and squaring up")
    side_per_m: float = at_least_0("side strips, each metre of outline")
    cutout: float = at_least_0("one knockout former, made and fixed")
    plug: float = at_least_0("one turned plug, for a tap or a cable")
    relief: float = at_least_0("one relief's former")
    drop_per_m: float = at_least_0("a downstand, each metre")
    bead_per_m: float = may_be_0("bead, each metre of outline")
    release: float = may_be_0("release agent wiped on")
    again: float = field(
        default=0.5, metadata=about("cleaned and oiled for another cast", at_least=0, at_most=24)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceHours:
    """Hours of hands for each piece, from its steel until it is ready to pack."""

    steel_per_m2: float = at_least_0("mesh, cut and tied")
    place_per_m2: float = at_least_0("steel laid, back-fill")
    cutout_trim: float = at_least_0("knockout out, arris dressed, each")
    demould: float = at_least_0("sides off, base off")
    bar: float = field(
        default=0.05, metadata=about("each bar beside the mesh, cut and tied", at_least=0)
    )
    face_coat_per_m2: float = may_be_0("face coat, where the recipe has one")
    strike_off_per_m2: float = may_be_0("struck off and vibrated")
    cover: float = may_be_0("damp cover laid on")
    sand_back_per_m2: float = may_be_0("the back sanded flat, where it is cast proud")
    turn: float = may_be_0("turned over, the plainest way")
    wash: float = may_be_0("face washed")
    fill_per_m2: float = may_be_0("voids filled once, where the finish takes slurry")
    test: float = may_be_0("tested with water, weighed")


@dataclass(frozen=True, slots=True, kw_only=True)
class Hours:
    """Rules for hours of hands, by what they are counted for.

    What is left out is done within the step beside it.
    """

    per_job: JobHours = documented("once an order, however many slabs it has")
    per_pour: PourHours = documented("what is mixed and placed together, shared by litres")
    per_mould: MouldHours = documented("each mould that is built")
    per_piece: PieceHours = documented("each piece, from its steel until it is ready to pack")
