"""What the maker's form does with a profile: shows it, asks for it and changes its text."""
