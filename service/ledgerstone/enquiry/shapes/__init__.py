"""Shapes of slabs: an L and its legs, ovals, corners cut off, and what is said without numbers."""
