"""The file that a new maker begins with."""
