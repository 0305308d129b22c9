"""A profile's text to records, and every fault in it with its line."""
