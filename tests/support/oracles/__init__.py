"""Independent solutions, by general libraries, that our own numbers are held against."""
