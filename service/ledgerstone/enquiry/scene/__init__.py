"""What a message speaks of: the pieces and openings found so far, and which is current."""
