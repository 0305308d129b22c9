"""What is claimed of each slab and opening becomes one value, or a doubt between readings."""
