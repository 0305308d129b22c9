"""What a profile says, in words for its maker to check, and what in it to look at again."""
