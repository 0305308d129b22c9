"""Ledgerstone answers whether a slab can be made, what it costs, weighs, and when it is ready."""

__version__ = "0.1.0"
