"""A value as its maker types and reads it, in the units of the shop, and as TOML has it."""
