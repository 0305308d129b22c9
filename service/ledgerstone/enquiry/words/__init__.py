"""Tables of words in both languages, and the phrases of them found in a run of words."""
