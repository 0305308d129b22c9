"""Which slab or opening a name, a pronoun or a size refers to: one known already, or a new one."""
