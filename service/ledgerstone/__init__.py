"""Ledgerstone answers whether a slab can be made, what it costs, weighs, and when it is ready."""

import os

# The plate's systems are small and banded. Shared between BLAS threads they have taken up to a
# hundred times as long on a busy machine, so one thread it is, unless someone has said otherwise
# before numpy is loaded.
for _name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS"):
    os.environ.setdefault(_name, "1")

__version__ = "0.1.0"
