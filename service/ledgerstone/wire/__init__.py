"""JSON to records and back, problem bodies, tokens: usable without flask."""
