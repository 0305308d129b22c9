"""Whose a size is where the words beside it leave that open: one slab's, all slabs', or none's."""
