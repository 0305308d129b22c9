"""Everything that one message says, and whether it asks for a slab at all."""
