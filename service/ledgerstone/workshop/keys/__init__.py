"""What may stand at one key of a profile: its bounds, its unit, numbers as people write them."""
