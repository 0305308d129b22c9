"""What is asked for beside sizes: look, edges, what carries the slab, delivery and day."""
