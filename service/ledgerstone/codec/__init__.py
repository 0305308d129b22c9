"""JSON to records and back, patches, signed tokens, problem bodies: usable without flask."""
