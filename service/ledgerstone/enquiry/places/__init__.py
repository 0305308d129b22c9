"""Where openings are: from a side, from an end, in the middle, beside another."""
