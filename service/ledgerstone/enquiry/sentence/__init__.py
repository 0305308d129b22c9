"""What one sentence says by itself: what it names, and its sizes with the words about them."""
