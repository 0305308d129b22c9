"""The draft order, what was read, doubtful and missing for it, and the order completed."""
