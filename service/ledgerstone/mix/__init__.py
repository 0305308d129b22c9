"""What goes into the piece: mixes, batches, slurry and sealer, from an order and a profile."""

from ledgerstone.mix.batches import (
    Batch,
    Batches,
    Weighing,
    batch_minutes,
    batches,
    open_minutes,
    pour_minutes,
    weighing,
)
from ledgerstone.mix.mixes import (
    Coat,
    Mix,
    Tint,
    hardened_kg_per_m3,
    largest_aggregate_mm,
    mixes_of,
    palette_tint,
)
from ledgerstone.mix.naming import part_name
from ledgerstone.mix.plan import (
    BatchPlan,
    Pour,
    Purchase,
    SlabConcrete,
    batch_plan,
    late_pours,
)
from ledgerstone.mix.pouring import (
    CoatLitres,
    PourGroup,
    batches_alone,
    coat_litres,
    placed_l,
    pour_groups,
)
from ledgerstone.mix.slurry import Slurry, repair_pot, sealer_l, slurry_of

__all__ = [
    "Batch",
    "BatchPlan",
    "Batches",
    "Coat",
    "CoatLitres",
    "Mix",
    "Pour",
    "PourGroup",
    "Purchase",
    "SlabConcrete",
    "Slurry",
    "Tint",
    "Weighing",
    "batch_minutes",
    "batch_plan",
    "batches",
    "batches_alone",
    "coat_litres",
    "hardened_kg_per_m3",
    "largest_aggregate_mm",
    "late_pours",
    "mixes_of",
    "open_minutes",
    "palette_tint",
    "part_name",
    "placed_l",
    "pour_groups",
    "pour_minutes",
    "repair_pot",
    "sealer_l",
    "slurry_of",
    "weighing",
]
