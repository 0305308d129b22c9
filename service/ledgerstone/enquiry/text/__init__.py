"""A message's bytes become text: its parts, who wrote each, and their sentences of atoms."""
