"""Rules for hours of hands, by what they are counted for."""

from __future__ import annotations

from dataclasses import dataclass, field

from ledgerstone.workshop.records._keys import about, at_least_0, documented, may_be_0


@dataclass(frozen=True, slots=True, kw_only=True)
class JobHours:
    """Hours of hands once an order, however many slabs it has."""

    set_up: float = at_least_0("bring boards and tools, clear the bench")
    in_hand: float = may_be_0("look over templates, sinks and the signed drawing")
    level: float = may_be_0("level and wipe the casting table")
    clean_up: float = may_be_0("wash mixer, tools and floor after casting")


@dataclass(frozen=True, slots=True, kw_only=True)
class PourHours:
    """Hours of hands for what is mixed and placed together, shared by its pieces' litres."""

    each_batch: float = at_least_0("weigh out and mix one filling of the mixer")
    ready: float = may_be_0("make scales and mixer ready, and rinse after")


@dataclass(frozen=True, slots=True, kw_only=True)
class MouldHours:
    """Hours of hands for each mould that is built; cast again, it is cleaned and oiled alone."""

    base: float = at_least_0("base board, squared up")
    side_per_m: float = at_least_0("side strips, each metre of outline")
    cutout: float = at_least_0("make and fix one knockout former")
    plug: float = at_least_0("turn and fix one plug, for a tap or a cable")
    relief: float = at_least_0("make one relief's former")
    drop_per_m: float = at_least_0("build a downstand, each metre")
    bead_per_m: float = may_be_0("run the bead, each metre of outline")
    release: float = may_be_0("wipe on release agent")
    again: float = field(
        default=0.5, metadata=about("clean and oil it for another cast", at_least=0, at_most=24)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class PieceHours:
    """Hours of hands for each piece, from its steel until it is ready to pack."""

    steel_per_m2: float = at_least_0("cut and tie mesh")
    place_per_m2: float = at_least_0("lay steel and fill the back")
    cutout_trim: float = at_least_0("take out a knockout and dress its arris, each")
    demould: float = at_least_0("take off sides and base")
    bar: float = field(
        default=0.05, metadata=about("cut and tie a bar beside the mesh, each", at_least=0)
    )
    face_coat_per_m2: float = may_be_0("lay the face coat, where the recipe has one")
    strike_off_per_m2: float = may_be_0("strike off and vibrate")
    cover: float = may_be_0("lay on the damp cover")
    sand_back_per_m2: float = may_be_0("sand the back flat, where it is cast proud")
    turn: float = may_be_0("turn it over, the plainest way")
    wash: float = may_be_0("wash the face")
    fill_per_m2: float = may_be_0("fill voids once, where the finish takes slurry")
    test: float = may_be_0("test with water and weigh")


@dataclass(frozen=True, slots=True, kw_only=True)
class Hours:
    """Rules for hours of hands, by what they are counted for.

    What is left out is done within the step beside it.
    """

    per_job: JobHours = documented("once an order, however many slabs it has")
    per_pour: PourHours = documented("what is mixed and placed together, shared by litres")
    per_mould: MouldHours = documented("each mould that is built")
    per_piece: PieceHours = documented("each piece, from its steel until it is ready to pack")
